import { printedRounding } from '../../src/domain/certified-judgement.ts'
import { figure } from '../../src/domain/figure.ts'
import { leakLimitTemperatureC } from '../../src/domain/judge-static-test.ts'
import type { Characteristic } from '../../src/domain/limit-set.ts'
import { throughputUnits } from '../../src/science/units/throughput-units.ts'
import { umToUin } from '../../src/science/units/um-to-uin.ts'
import { tradeWords } from '../words/en/trade.ts'

export type ResultText = { readonly value: string; readonly unit: string }

const { unit } = tradeWords
const unitOf: Readonly<Record<Characteristic, string>> = {
  flatness: unit.um,
  'static-drop': unit.kPa,
  'static-leak-rate': unit.paM3PerS,
}

/**
 * A result or a limit as pages show it, rounded as the certificate rounds it.
 * @param value in the unit of its limit: flatness µm, drop kPa, leak rate Pa·m³/s
 * @example resultText('flatness', 0.88134).value // 0.881
 */
export function resultText(characteristic: Characteristic, value: number): ResultText {
  const { text } = figure(value, printedRounding[characteristic])
  return { value: text, unit: unitOf[characteristic] }
}

/**
 * The same in the other unit of the trade: flatness in µin, a leak rate in mL/min of gas at
 * 20 °C, for which its limits are written, and 101.325 kPa; a drop has no other one.
 * @example secondResultText('flatness', 0.88134)?.value // 34.7
 */
export function secondResultText(
  characteristic: Characteristic,
  value: number,
): ResultText | undefined {
  if (characteristic === 'flatness') {
    return { value: figure(umToUin(value), printedRounding.uin).text, unit: unit.uin }
  }
  if (characteristic === 'static-drop') return undefined
  const { leakMlPerMin } = throughputUnits({
    leakPaM3PerS: value,
    referenceTemperatureC: leakLimitTemperatureC,
  })
  return { value: figure(leakMlPerMin, printedRounding.mlPerMin).text, unit: unit.mlPerMin }
}
