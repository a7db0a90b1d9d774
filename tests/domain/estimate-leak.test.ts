import { describe, expect, it } from 'vitest'
import { estimateLeak } from '../../src/domain/estimate-leak.ts'

const test = {
  leakPaM3PerS: 0.02,
  startPressureKPaAbs: 302,
  endPressureKPaAbs: 298,
  barometerKPa: 100,
}
const ask = (changes: Record<string, string> = {}) =>
  estimateLeak({ testGas: 'air', gas: 'air', pressureKPaGauge: '200', ...changes }, test)
const leak = (changes: Record<string, string> = {}) => {
  const got = ask(changes)
  return got.ok ? got.value?.leakPaM3PerS : got.faults.map((one) => one.field)
}

describe('a leak told for another gas or pressure', () => {
  it('is itself under the pressure it was tested at', () => {
    expect(leak()).toBeCloseTo(0.02, 12)
  })

  it('goes with the squares of the pressures and against the viscosity', () => {
    // (500^2 - 100^2) / (300^2 - 100^2) = 3
    expect(leak({ pressureKPaGauge: '400' })).toBeCloseTo(0.06, 12)
    // Printed for viscous flow: helium to air 1.08.
    expect(leak({ testGas: 'helium' })).toBeCloseTo(0.02 * 1.08, 3)
    expect(leak({ testViscosityUPaS: '36', viscosityUPaS: '18' })).toBeCloseTo(0.04, 12)
  })

  it('is refused beside the field, and none where nothing drove it', () => {
    expect(leak({ gas: 'steam', pressureKPaGauge: 'much' })).toEqual(['gas', 'pressureKPaGauge'])
    expect(leak({ pressureKPaGauge: '0' })).toEqual(['pressureKPaGauge'])
    const hardly = { ...test, startPressureKPaAbs: 100.5, endPressureKPaAbs: 100.5 }
    expect(estimateLeak({ testGas: 'air', gas: 'air', pressureKPaGauge: '200' }, hardly)).toEqual({
      ok: true,
      value: null,
    })
    const vacuum = { ...test, startPressureKPaAbs: 20, endPressureKPaAbs: 21 }
    const input = { testGas: 'air', gas: 'air', pressureKPaGauge: '200' }
    expect(estimateLeak(input, vacuum)).toEqual({ ok: true, value: null })
  })
})
