import type { Trials } from '../../../views/results/trials-section.tsx'
import { compareTrials, probabilityOf } from '../../domain/compared-trials.ts'
import { openFields } from '../../domain/fields.ts'
import type { ShownResult } from '../../domain/shown-result.ts'
import { ModelFault } from '../../science/uncertainty/expression/model-fault.ts'
import { monteCarloTrials } from '../../science/uncertainty/monte-carlo.ts'
import type { AppContext } from '../context.ts'
import { nestFields } from '../read-form.ts'
import { runMonteCarlo } from '../run-monte-carlo.ts'
import { typedText } from '../typed-text.ts'

/** The same trials every time, unless another seed is asked for. */
const firstSeed = '1'
const seedBounds = { min: 0, max: 0xffffffff } as const

/** The trials that the address asks for, of the formula that was kept with the result. */
export async function trialsOf(c: AppContext, result: ShownResult): Promise<Trials> {
  const { uncertainty, characteristic, judged } = result
  const { value } = judged
  if (uncertainty === null || value === null || uncertainty.standardUncertainty === 0) {
    return { kind: 'none' }
  }
  const { model } = uncertainty
  if (model === null) return { kind: 'no-model' }
  const input = nestFields(new URL(c.req.url).searchParams)
  if (input.trials === undefined) return { kind: 'ask', seed: firstSeed }
  const seed = typedText(input.seed)
  const fields = openFields(input)
  const { from: min, to: max } = monteCarloTrials
  const asked = {
    seed: fields.whole('seed', seedBounds),
    trials: fields.whole('trials', { min, max }),
  }
  if (fields.faults.length > 0) return { kind: 'faulty', seed, faults: fields.faults }
  try {
    const run = await runMonteCarlo(model, { ...asked, probability: probabilityOf(uncertainty) })
    return {
      kind: 'done',
      seed,
      compared: compareTrials({ characteristic, value, uncertainty }, run),
    }
  } catch (error) {
    if (error instanceof ModelFault) return { kind: 'failed', seed }
    throw error
  }
}
