import type { FC } from 'hono/jsx'
import type { UncertaintyAnswer } from '../../src/domain/answer-uncertainty.ts'
import { figure } from '../../src/domain/figure.ts'
import { coverageFactorText, uncertainFigure } from '../../src/domain/uncertain-figure.ts'
import type { MonteCarloResult } from '../../src/science/uncertainty/monte-carlo.ts'
import { DataTable } from '../components/data-table.tsx'
import { Facts } from '../components/facts.tsx'
import { Notice } from '../components/notice.tsx'
import { numberText } from '../figures/number-text.ts'
import { words } from '../words/en.ts'
import { TrialsPlot } from './trials-plot.tsx'
import type { UncertaintyQuestion } from './uncertainty-typed.ts'

const w = words.uncertainty
const digits = { digits: 4 } as const

/** The result with its uncertainty, the budget, and the trials where they were asked for. */
export const UncertaintyAnswerPart: FC<{ question: UncertaintyQuestion }> = ({ question }) => {
  const { answer, trials } = question
  if (answer === null) {
    return (
      <>
        <p class="result-label">{w.answer}</p>
        <p class="lead">{w.faulty}</p>
      </>
    )
  }
  const { effectiveDegreesOfFreedom: degrees, secondOrderStandardUncertainty: second } = answer
  return (
    <>
      <p class="result-label">{w.answer}</p>
      <p class="lead strong">{uncertainFigure(answer).text}</p>
      <p>
        {w.factor(
          coverageFactorText(answer.coverageFactor),
          degrees === null ? null : figure(degrees, { digits: 3 }).text,
        )}
      </p>
      {answer.isNonlinear ? <Notice kind="note" text={w.nonlinear} /> : null}
      <Facts
        layout="rows"
        pairs={[
          { label: w.standard, value: figure(answer.standardUncertainty, digits).text },
          {
            label: w.secondOrder,
            value: second === null ? w.noSecondOrder : figure(second, digits).text,
          },
        ]}
      />
      {trials === null ? null : <TrialsPart answer={answer} trials={trials} />}
    </>
  )
}

const TrialsPart: FC<{ answer: UncertaintyAnswer; trials: MonteCarloResult }> = (props) => {
  const { answer, trials } = props
  return (
    <section class="stack" aria-labelledby="trials-title">
      <h2 id="trials-title" class="section-head">
        {w.trialsTitle}
      </h2>
      <TrialsPlot
        trials={trials}
        linear={answer}
        unitText=""
        widthPx={384}
        texts={{ ...w, title: w.drawing }}
      />
      <Facts
        layout="rows"
        pairs={[
          { label: w.mean, value: figure(trials.mean, digits).text },
          { label: w.deviation, value: figure(trials.standardDeviation, digits).text },
        ]}
      />
      <p class="small soft">
        {w.trialsCount(trials.trials.toLocaleString('en'), numberText(trials.seed))}
      </p>
    </section>
  )
}

/** Line by line: what each quantity adds. */
export const UncertaintyBudget: FC<{ answer: UncertaintyAnswer }> = ({ answer }) => {
  const { table } = w
  const degreesText = (degrees: number | null) =>
    degrees === null ? table.infinite : figure(degrees, { digits: 3 }).text
  return (
    <DataTable
      caption={table.caption}
      columns={[
        { label: table.quantity },
        { label: table.standard, kind: 'number' },
        { label: table.distribution },
        { label: table.sensitivity, kind: 'number' },
        { label: table.contribution, kind: 'number' },
        { label: table.degrees, kind: 'number' },
      ]}
      rows={[
        ...answer.budget.map((line) => ({
          cells: [
            line.source,
            figure(line.value, digits).text,
            words.trade.distribution[line.distribution],
            figure(line.sensitivity, digits).text,
            figure(line.contribution, digits).text,
            degreesText(line.degreesOfFreedom),
          ],
        })),
        {
          cells: [
            <strong>{table.combined}</strong>,
            '',
            '',
            '',
            <strong>{figure(answer.standardUncertainty, digits).text}</strong>,
            degreesText(answer.effectiveDegreesOfFreedom),
          ],
        },
      ]}
    />
  )
}
