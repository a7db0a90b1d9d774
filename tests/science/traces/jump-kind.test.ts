import { expect, it } from 'vitest'
import { jumpKind } from '../../../src/science/traces/jump-kind.ts'
import { seededNormal } from '../seeded-random.ts'

const times = Array.from({ length: 20 }, (_, i) => 10 * i)
const ask = (nextValue: number, values: readonly number[], count = 20) =>
  jumpKind({
    timesS: times.slice(0, count),
    values: values.slice(0, count),
    stepS: 3610,
    usualStepS: 10,
    nextValue,
  })

it('tells a gap from a clock that was set, through noise', () => {
  const normal = seededNormal(8)
  let [gaps, sets] = [0, 0]
  for (let trial = 0; trial < 300; trial++) {
    const values = times.map((t) => 100 - 0.01 * t + 0.02 * normal())
    const at = (t: number) => 100 - 0.01 * t + 0.02 * normal()
    if (ask(at(190 + 3610), values) === 'gap') gaps++
    if (ask(at(190 + 10), values) === 'clock-forward') sets++
  }
  // Four times the scatter is passed by less than 2 in 1000 with 18 degrees of freedom.
  expect(gaps).toBeGreaterThan(295)
  expect(sets).toBeGreaterThan(295)
})

it('does not say where the value stands still, jumps elsewhere, or too few are known', () => {
  expect(
    ask(
      5,
      times.map(() => 5),
    ),
  ).toBe('jump-unknown')
  expect(
    ask(
      70,
      times.map((t) => 100 - 0.01 * t),
    ),
  ).toBe('jump-unknown')
  expect(
    ask(
      97.9,
      times.map((t) => 100 - 0.01 * t),
      4,
    ),
  ).toBe('jump-unknown')
})
