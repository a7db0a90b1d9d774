import { expect, it } from 'vitest'
import { dropLeak } from '../../../src/science/leak/drop-leak.ts'
import { readReference } from '../read-reference.ts'

interface Case {
  readonly id: string
  readonly input: Readonly<Record<'n' | 'dt' | 'Vd' | 'uVd' | 'udt', number>>
  readonly expect: { readonly q: number; readonly u: number }
}

it('is that of the worked example and of the verified value', () => {
  // E32 of the facts: 2 drops a minute of 20 to the mL.
  const told = dropLeak({ dropsCount: 2, elapsedS: 60, dropVolumeML: 0.05 })
  expect(told.leakMlPerH).toBeCloseTo(6, 12)
  const { input, expect: known } = readReference<Case[]>('leak/dynamic-cases.json').find(
    (one) => one.id === 'drop-1',
  )!
  const got = dropLeak({
    dropsCount: input.n,
    elapsedS: input.dt,
    dropVolumeML: input.Vd * 1e6,
    dropVolumeStandardUncertaintyML: input.uVd * 1e6,
    elapsedStandardUncertaintyS: input.udt,
  })
  // 1 m3/s are 3.6e9 mL/h.
  expect(got.leakMlPerH / (known.q * 3.6e9)).toBeCloseTo(1, 9)
  expect(got.standardUncertaintyMlPerH / (known.u * 3.6e9)).toBeCloseTo(1, 7)
})

it('refuses what no count is', () => {
  const two = { dropsCount: 2, elapsedS: 60, dropVolumeML: 0.05 }
  expect(() => dropLeak({ ...two, dropsCount: 0 })).toThrow('dropsCount')
  expect(() => dropLeak({ ...two, elapsedS: 0 })).toThrow('elapsedS')
  expect(() => dropLeak({ ...two, dropVolumeML: 2 })).toThrow('dropVolumeML')
})
