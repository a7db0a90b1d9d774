import { printedRounding } from '../../src/domain/certified-judgement.ts'
import type { Characteristic } from '../../src/domain/characteristic.ts'
import { figure } from '../../src/domain/figure.ts'
import { leakLimitTemperatureC } from '../../src/domain/judge-static-test.ts'
import { printedUnit } from '../../src/domain/printed-unit.ts'
import { throughputUnits } from '../../src/science/units/throughput-units.ts'
import { umToUin } from '../../src/science/units/um-to-uin.ts'
import { tradeWords } from '../words/en/trade.ts'

export type ResultText = { readonly value: string; readonly unit: string }

const { unit: unitWords } = tradeWords

/**
 * A result or a limit as pages show it, rounded as the certificate rounds it.
 * @param value in the stored unit of its characteristic
 * @example resultText('flatness', 0.88134).value // 0.881
 */
export function resultText(characteristic: Characteristic, value: number): ResultText {
  const { unit, storedPerPrinted, rounding } = printedUnit[characteristic]
  return { value: figure(value / storedPerPrinted, rounding).text, unit: unitWords[unit] }
}

/**
 * The same in the other unit of the trade: flatness and roughness in µin, a leak rate in mL/min of
 * gas at 20 °C, for which its limits are written, and 101.325 kPa; the rest have no other one.
 * @example secondResultText('flatness', 0.88134)?.value // 34.7
 */
export function secondResultText(
  characteristic: Characteristic,
  value: number,
): ResultText | undefined {
  if (characteristic === 'flatness' || characteristic === 'roughness') {
    return { value: figure(umToUin(value), printedRounding.uin).text, unit: unitWords.uin }
  }
  if (characteristic !== 'static-leak-rate') return undefined
  const { leakMlPerMin } = throughputUnits({
    leakPaM3PerS: value,
    referenceTemperatureC: leakLimitTemperatureC,
  })
  return { value: figure(leakMlPerMin, printedRounding.mlPerMin).text, unit: unitWords.mlPerMin }
}
