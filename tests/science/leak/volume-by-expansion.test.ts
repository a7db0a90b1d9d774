import { describe, expect, it } from 'vitest'
import { volumeByExpansion } from '../../../src/science/leak/volume-by-expansion.ts'
import { readReference } from '../read-reference.ts'

interface Case {
  readonly id: string
  readonly input: Readonly<Record<'Vr' | 'p0' | 'pu' | 'pf' | 'uVr' | 'up', number>>
  readonly expect: number
}
const cases = readReference<Case[]>('leak/dynamic-cases.json')
const find = (id: string) => cases.find((one) => one.id === id)!

describe('a volume by expansion', () => {
  it('is that of the verified value, with its uncertainty', () => {
    const { input, expect: volumeM3 } = find('volume-0.0005')
    const { input: doubt, expect: u } = find('uvolume-0.0005')
    const got = volumeByExpansion({
      knownVolumeL: input.Vr * 1000,
      filledKPaAbs: input.p0 / 1000,
      joinedKPaAbs: input.pf / 1000,
      beforeKPaAbs: input.pu / 1000,
      knownVolumeStandardUncertaintyL: doubt.uVr * 1000,
      pressureStandardUncertaintyKPa: doubt.up / 1000,
    })
    expect(got.volumeL / (volumeM3 * 1000)).toBeCloseTo(1, 10)
    expect((got.standardUncertaintyL ?? 0) / (u * 1000)).toBeCloseTo(1, 5)
  })

  it('works into a vacuum and out of one', () => {
    const filled = { knownVolumeL: 2, filledKPaAbs: 300, joinedKPaAbs: 100, beforeKPaAbs: 0 }
    expect(volumeByExpansion(filled)).toEqual({ volumeL: 4, standardUncertaintyL: null })
    const empty = { knownVolumeL: 2, filledKPaAbs: 0, joinedKPaAbs: 60, beforeKPaAbs: 100 }
    expect(volumeByExpansion(empty).volumeL).toBeCloseTo(3, 12)
  })

  it('refuses pressures that no opening gives', () => {
    const at = { knownVolumeL: 1, filledKPaAbs: 300, joinedKPaAbs: 310, beforeKPaAbs: 100 }
    expect(() => volumeByExpansion(at)).toThrow('between')
    expect(() => volumeByExpansion({ ...at, joinedKPaAbs: 100 })).toThrow('between')
    expect(() => volumeByExpansion({ ...at, knownVolumeL: 0 })).toThrow('knownVolumeL')
  })
})
