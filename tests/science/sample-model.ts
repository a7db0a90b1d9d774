import type {
  MeasurementModel,
  ModelQuantity,
} from '../../src/science/uncertainty/measurement-model.ts'
import { compileModel } from './compile-model.ts'
import { seededNormal, seededUniform } from './seeded-random.ts'

/**
 * Mean and standard deviation of a model's result by seeded trials, JCGM 101:2008, 6.4. A t
 * distribution scatters by its standard uncertainty times sqrt(v / (v - 2)).
 */
export function sampleModel(
  model: MeasurementModel,
  { seed, trials }: { readonly seed: number; readonly trials: number },
): { mean: number; deviation: number } {
  const run = compileModel(model)
  const normal = seededNormal(seed)
  const uniform = seededUniform(seed + 1)
  const results: number[] = []
  for (let trial = 0; trial < trials; trial++) {
    results.push(
      run(...model.quantities.map((one) => one.value + one.standardUncertainty * draw(one))),
    )
  }
  const mean = results.reduce((sum, value) => sum + value, 0) / trials
  const squares = results.reduce((sum, value) => sum + (value - mean) ** 2, 0)
  return { mean, deviation: Math.sqrt(squares / (trials - 1)) }

  function draw({ distribution, degreesOfFreedom }: ModelQuantity): number {
    if (distribution === 'normal') return normal()
    if (distribution === 'rectangular') return (2 * uniform() - 1) * Math.sqrt(3)
    if (distribution !== 't' || degreesOfFreedom === null) {
      throw new Error(`sampleModel has no ${distribution}`)
    }
    let squared = 0
    for (let each = 0; each < degreesOfFreedom; each++) squared += normal() ** 2
    return normal() / Math.sqrt(squared / degreesOfFreedom)
  }
}
