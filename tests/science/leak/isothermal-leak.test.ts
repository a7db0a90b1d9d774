import { describe, expect, it } from 'vitest'
import { isothermalLeak } from '../../../src/science/leak/isothermal-leak.ts'
import { twoPointLeak } from '../../../src/science/leak/two-point-leak.ts'
import { throughputUnits } from '../../../src/science/units/throughput-units.ts'
import { readReference } from '../read-reference.ts'

const { assemblyTest, corrected, sccmLimit } = readReference<{
  assemblyTest: { volumeL: number; dropKPa: number; durationS: number; paM3PerS: number }
  corrected: { uncompensated: number }
  sccmLimit: { sccm0C: number; volumeL: number; paPerS: number; secondsFor100Pa: number }
}>('leak/worked-leaks.json')

describe('isothermalLeak', () => {
  it('gives the leak that the assembly test of API 682 allows', () => {
    const { volumeL, dropKPa, durationS, paM3PerS } = assemblyTest
    // Printed to five digits.
    expect(isothermalLeak({ volumeL, pressureDropKPa: dropKPa, durationS })).toBeCloseTo(
      paM3PerS,
      4,
    )
  })

  it('gives the worked uncorrected leak', () => {
    expect(
      isothermalLeak({ volumeL: 5, pressureDropKPa: 271.325 - 268.1, durationS: 600 }),
    ).toBeCloseTo(corrected.uncompensated, 8) // printed digits
  })

  it('turns a limit of 5 sccm into the worked fall of pressure', () => {
    // 5 sccm as gas at 0 C in 1 L: the leak of a fall of 8.444 Pa/s, printed to four digits.
    const { volumeL, paPerS, secondsFor100Pa, sccm0C } = sccmLimit
    const leak = isothermalLeak({ volumeL, pressureDropKPa: paPerS / 1000, durationS: 1 })
    const { leakSccm0C } = throughputUnits({ leakPaM3PerS: leak, referenceTemperatureC: 0 })
    expect(leakSccm0C).toBeCloseTo(sccm0C, 3)
    const slow = isothermalLeak({ volumeL, pressureDropKPa: 0.1, durationS: secondsFor100Pa })
    expect(slow / leak).toBeCloseTo(1, 2) // 11.8 s is printed to three digits
  })

  it('equals the two-point leak when nothing changed temperature', () => {
    const state = (timeS: number, pressureKPaAbs: number) => ({
      timeS,
      pressureKPaAbs,
      temperatureC: 20,
    })
    const exact = twoPointLeak({
      volumeL: 3,
      referenceTemperatureC: 20,
      start: state(0, 300),
      end: state(100, 299),
    })
    expect(isothermalLeak({ volumeL: 3, pressureDropKPa: 1, durationS: 100 })).toBeCloseTo(
      exact,
      12,
    ) // rounding
  })

  it.each([
    { volumeL: 0, pressureDropKPa: 1, durationS: 1 },
    { volumeL: 1, pressureDropKPa: Number.NaN, durationS: 1 },
    { volumeL: 1, pressureDropKPa: 1, durationS: 0 },
  ])('refuses %o', (input) => {
    expect(() => isothermalLeak(input)).toThrow(RangeError)
  })
})
