import { requireRange } from '../check/require-range.ts'
import { exactFactors } from '../units/exact-factors.ts'
import { requireTrace, type TraceSample } from './require-trace.ts'

/**
 * Gives the pressures of a trace as they would be at the reference temperature, in kPa absolute.
 *
 * p Tref / T for each reading, temperatures in K; p itself when no temperatures were taken
 *
 * @param input trace: see requireTrace; referenceTemperatureC: from -270 to 2000
 * @returns kPa absolute, one for each reading
 * @throws RangeError outside these ranges
 * Validity: ideal gas, rigid volume, temperature of the gas. Without temperatures the gas is taken
 *   to have stayed at the reference temperature.
 * Source: ideal gas law.
 * @example compensatedPressuresKPa({ trace: [0, 1, 2, 3, 4, 5].map((timeS) => ({ timeS,
 *   pressureKPaAbs: 300, temperatureC: 25 })), referenceTemperatureC: 20 })[0] // 294.97
 */
export function compensatedPressuresKPa(input: {
  readonly trace: readonly TraceSample[]
  readonly referenceTemperatureC: number
}): number[] {
  const { referenceTemperatureC } = input
  requireRange('compensatedPressuresKPa', 'referenceTemperatureC', referenceTemperatureC, {
    from: -270,
    to: 2000,
  })
  const zeroK = exactFactors.celsiusZero.value
  return requireTrace('compensatedPressuresKPa', input.trace).map((sample) =>
    sample.temperatureC === undefined
      ? sample.pressureKPaAbs
      : (sample.pressureKPaAbs * (referenceTemperatureC + zeroK)) / (sample.temperatureC + zeroK),
  )
}
