import { describe, expect, it } from 'vitest'
import { heightSteps } from '../../src/plots/height-steps.ts'

describe('heightSteps', () => {
  it('gives round heights that hold 0 where it lies between the ends', () => {
    const { stepUm, levelsUm } = heightSteps({ lowUm: -0.31, highUm: 0.52 }, { mostCount: 5 })
    expect(stepUm).toBe(0.2)
    expect(levelsUm.map((one) => one.toFixed(1))).toEqual(['-0.2', '0.0', '0.2', '0.4'])
    expect(levelsUm).toContain(0)
    expect(levelsUm.some((one) => Object.is(one, -0))).toBe(false)
  })

  it('keeps to as many as asked, at every size', () => {
    for (let i = 0; i < 200; i++) {
      const highUm = 1e-4 * 1.1 ** i
      const { stepUm, levelsUm } = heightSteps({ lowUm: -highUm / 3, highUm }, { mostCount: 10 })
      expect(levelsUm.length).toBeLessThanOrEqual(11) // ten steps have eleven ends at most
      expect(levelsUm.length).toBeGreaterThanOrEqual(3)
      expect(Number(stepUm.toPrecision(1))).toBe(stepUm)
    }
  })

  it('includes ends that are multiples', () => {
    const { levelsUm } = heightSteps({ lowUm: 0.1, highUm: 0.3 }, { stepUm: 0.1 })
    expect(levelsUm).toHaveLength(3)
  })

  it('takes a step that two pictures share, and may find no level for it', () => {
    expect(heightSteps({ lowUm: 0.1, highUm: 0.2 }, { stepUm: 0.5 }).levelsUm).toEqual([])
  })

  it('refuses ends in the wrong order, hundreds of levels and no level', () => {
    expect(() => heightSteps({ lowUm: 1, highUm: 1 }, { mostCount: 5 })).toThrow('lowUm below')
    expect(() => heightSteps({ lowUm: 0, highUm: 1 }, { mostCount: 1 })).toThrow('mostCount')
    expect(() => heightSteps({ lowUm: 0, highUm: 1 }, { stepUm: 0.001 })).toThrow('stepUm')
    expect(() => heightSteps({ lowUm: 0, highUm: 1 }, { stepUm: 0 })).toThrow('stepUm')
  })
})
