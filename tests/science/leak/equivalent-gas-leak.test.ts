import { expect, it } from 'vitest'
import { equivalentGasLeak } from '../../../src/science/leak/equivalent-gas-leak.ts'

const air = { upstreamKPaAbs: 300, downstreamKPaAbs: 100, viscosityUPaS: 18.2 }

it('turns helium into air and nitrogen by their viscosities', () => {
  // Printed for viscous flow: helium to air 1.08, to nitrogen 1.12. Viscosities at 20 C from memory:
  // helium 19.6, air 18.2, nitrogen 17.6 uPa s.
  const helium = { ...air, viscosityUPaS: 19.6 }
  expect(equivalentGasLeak(1, helium, air)).toBeCloseTo(1.08, 2)
  expect(equivalentGasLeak(1, helium, { ...air, viscosityUPaS: 17.6 })).toBeCloseTo(1.12, 1)
})

it('goes with the difference of the squares of the pressures, and back', () => {
  const more = { ...air, upstreamKPaAbs: 500 }
  expect(equivalentGasLeak(2, air, more)).toBeCloseTo(6, 12)
  expect(equivalentGasLeak(equivalentGasLeak(-0.3, air, more), more, air)).toBeCloseTo(-0.3, 12)
})

it('refuses pressures that drive nothing', () => {
  expect(() => equivalentGasLeak(1, air, { ...air, upstreamKPaAbs: 100 })).toThrow('upstream above')
  expect(() => equivalentGasLeak(1, { ...air, viscosityUPaS: 0 }, air)).toThrow('viscosityUPaS')
})
