import { expect, test } from 'vitest'
import { monteCarlo } from '../../src/science/uncertainty/monte-carlo.ts'
import { runMonteCarlo } from '../../src/web/run-monte-carlo.ts'

const model = {
  expression: 'a^2',
  quantities: [
    {
      name: 'a',
      value: 2,
      distribution: 'normal',
      standardUncertainty: 0.1,
      degreesOfFreedom: null,
    },
  ],
} as const
const options = { trials: 20_000, seed: 3, probability: 0.95 }

test('a thread gives what the science gives', async () => {
  expect(await runMonteCarlo(model, options)).toEqual(monteCarlo(model, options))
})

test('a model without finite results comes back as its fault', async () => {
  const strange = { ...model, expression: 'sqrt(a - 2)' }
  await expect(runMonteCarlo(strange, options)).rejects.toMatchObject({ kind: 'not-finite' })
})

test('two run at once, a third is asked to wait, and later all is free again', async () => {
  const both = [runMonteCarlo(model, options), runMonteCarlo(model, options)]
  await expect(runMonteCarlo(model, options)).rejects.toMatchObject({
    kind: 'too-many',
    reason: 'trials-busy',
  })
  await Promise.all(both)
  await runMonteCarlo(model, options)
})

test('a run that takes too long is stopped, says so, and leaves its place to the next', async () => {
  // A thread takes longer than a millisecond to begin.
  const slow = () => runMonteCarlo(model, { ...options, trials: 5_000_000 }, { longestMs: 1 })
  const stopped = { kind: 'too-many', reason: 'trials-too-long' }
  const both = [expect(slow()).rejects.toMatchObject(stopped), expect(slow()).rejects.toThrow()]
  await Promise.all(both)
  await runMonteCarlo(model, options)
})
