import type { FC } from 'hono/jsx'
import { figure, type Rounding } from '../../src/domain/figure.ts'
import { distributionPlot } from '../../src/plots/distribution-plot.ts'
import type { MonteCarloResult } from '../../src/science/uncertainty/monte-carlo.ts'
import { SvgDrawing } from '../components/svg-drawing.tsx'

/** What stands in the drawing besides the trials themselves. */
export type TrialsPlotWords = {
  readonly title: string
  readonly linear: (text: string) => string
  readonly shortest: (text: string) => string
  readonly symmetric: (text: string) => string
  readonly interval: (low: string, high: string) => string
}

/** Decimals that show some three digits of the spread; powers of ten where it is very small. */
function roundingFor(spread: number): Rounding {
  if (!(spread > 0)) return { decimals: 3 }
  const decimals = Math.max(0, 2 - Math.floor(Math.log10(spread)))
  return decimals > 8 ? { digits: 4 } : { decimals }
}

/**
 * Trials beside the budget, drawn. Nothing where all trials gave the same.
 * @param linear value and uncertainties of the budget, in the unit that is printed
 */
export const TrialsPlot: FC<{
  trials: MonteCarloResult
  linear: {
    readonly value: number
    readonly standardUncertainty: number
    readonly expandedUncertainty: number
  }
  unitText: string
  widthPx: number
  texts: TrialsPlotWords
}> = ({ trials, linear, unitText, widthPx, texts }) => {
  const { histogram, shortestInterval, symmetricInterval } = trials
  if (!(histogram.from < histogram.to)) return null
  const { value, standardUncertainty, expandedUncertainty } = linear
  const rounding = roundingFor(trials.standardDeviation)
  const text = (number: number) => figure(number, rounding).text
  const between = ([low, high]: readonly [number, number]) => texts.interval(text(low), text(high))
  const budget = [value - expandedUncertainty, value + expandedUncertainty] as const
  const bar = (interval: readonly [number, number], label: string, dash: 'solid' | 'dashed') => {
    return { low: interval[0], high: interval[1], label, dash }
  }
  return (
    <SvgDrawing
      id="trials-plot"
      title={texts.title}
      drawing={distributionPlot({
        widthPx,
        histogram,
        trials: trials.trials,
        normal: { mean: value, standardDeviation: standardUncertainty },
        intervals: [
          bar(budget, texts.linear(between(budget)), 'dashed'),
          bar(symmetricInterval, texts.symmetric(between(symmetricInterval)), 'solid'),
          bar(shortestInterval, texts.shortest(between(shortestInterval)), 'solid'),
        ],
        axis: [histogram.from, trials.mean, histogram.to].map((at) => ({ at, text: text(at) })),
        unitText,
      })}
    />
  )
}
