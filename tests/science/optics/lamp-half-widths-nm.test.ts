import { expect, it } from 'vitest'
import { lampHalfWidthsNm } from '../../../src/science/optics/lamp-half-widths-nm.ts'
import { lampIds, lamps } from '../../../src/science/optics/lamps.ts'

it('takes in both D lines of sodium around their mean', () => {
  const { sodium, 'sodium-d1': d1, 'sodium-d2': d2 } = lamps
  for (const line of [d1, d2]) {
    const apart = Math.abs(line.wavelengthNm - sodium.wavelengthNm)
    expect(apart).toBeLessThanOrEqual(lampHalfWidthsNm.sodium)
  }
})

it('takes in the wavelengths as the trade quotes them, to a tenth of a nanometre', () => {
  const quoted = { helium: 587.6, 'mercury-green': 546.1, 'helium-neon-red': 632.8 } as const
  for (const id of ['helium', 'mercury-green', 'helium-neon-red'] as const) {
    const apart = Math.abs(quoted[id] - lamps[id].wavelengthNm)
    expect(apart, id).toBeLessThanOrEqual(lampHalfWidthsNm[id])
  }
})

it('is above nought and below a twentieth for every lamp but white light', () => {
  expect(Object.keys(lampHalfWidthsNm)).toEqual([...lampIds])
  for (const id of lampIds) {
    const relative = lampHalfWidthsNm[id] / lamps[id].wavelengthNm
    expect(relative, id).toBeGreaterThan(0)
    expect(relative, id).toBeLessThan(id === 'white' ? 0.1 : 0.05)
  }
})
