import { figure } from '../../src/domain/figure.ts'
import { printedUnit } from '../../src/domain/printed-unit.ts'
import { minuteText } from '../figures/time-text.ts'
import { sixteenPercentText } from '../words/en/sixteen-percent-text.ts'
import { words } from '../words/en.ts'
import type { MeasuredFiguresShown } from './answer.tsx'

/** What is said of a finish beside its mean: its traces, and how the face is by the log. */
export function finishPairs({ traces, face }: MeasuredFiguresShown) {
  const { finish: w } = words
  return [
    ...(traces === null || traces.count === 1
      ? []
      : [{ label: w.largestLabel, value: `${largestText(traces.largestUm)} µm` }]),
    ...(traces === null || traces.rule === null
      ? []
      : [
          {
            label: `${w.ruleLabel} (${w.rule.source})`,
            value: sixteenPercentText(traces.rule, traces.count),
          },
        ]),
    ...(face === null ? [] : [{ label: w.byLogLabel, value: faceText(face) }]),
  ]
}

function largestText(um: number): string {
  return figure(um, printedUnit.roughness.rounding).text
}

function faceText({ byLog, at, stated }: NonNullable<MeasuredFiguresShown['face']>): string {
  const { finish: w } = words
  const said = w.lastMade(w.states[byLog].toLowerCase(), minuteText(at))
  return stated === null || stated === byLog ? said : w.notAsSaid(said)
}
