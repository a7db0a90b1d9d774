import { printedRounding } from '../../src/domain/certified-judgement.ts'
import { figure } from '../../src/domain/figure.ts'

/**
 * The pressure that a limit of drop is written for, in kPa gauge, as the certificate prints it.
 * @example startPressureText(172.36893) // 172.4
 */
export function startPressureText(startKPaGauge: number): string {
  return figure(startKPaGauge, printedRounding.startAtLeastKPaGauge).text
}
