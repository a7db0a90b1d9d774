import type { MeasurementModel } from '../../src/science/uncertainty/measurement-model.ts'
import { compileModel } from './compile-model.ts'

/** Value and standard uncertainty of a model from central differences, JCGM 100:2008, 5.1.3. */
export function linearByDifferences(model: MeasurementModel): { value: number; u: number } {
  const run = compileModel(model)
  const centre = model.quantities.map((quantity) => quantity.value)
  const contributions = model.quantities.map(({ standardUncertainty }, index) => {
    // A thousandth of u: the error of the difference is of second order in it.
    const step = standardUncertainty / 1000
    if (step === 0) return 0
    const moved = (by: number) =>
      run(...centre.map((value, at) => (at === index ? value + by : value)))
    return ((moved(step) - moved(-step)) / (2 * step)) * standardUncertainty
  })
  return { value: run(...centre), u: Math.hypot(...contributions) }
}
