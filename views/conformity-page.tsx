import type { FC } from 'hono/jsx'
import type { Fault } from '../src/domain/fault.ts'
import { priorShapes } from '../src/domain/parse-conformity-request.ts'
import { decisionRules } from '../src/science/acceptance/decision-rule.ts'
import { CalculatorTabs } from './calculator/calculator-tabs.tsx'
import { ConformityAnswerPart, type Decided } from './calculator/conformity-answer.tsx'
import {
  ConformityFields,
  type ConformityTyped,
  conformityNumbers,
} from './calculator/conformity-fields.tsx'
import { Button } from './components/button.tsx'
import { ButtonRow } from './components/button-row.tsx'
import { CheckField } from './components/check-field.tsx'
import { ChoiceCards } from './components/choice-cards.tsx'
import { PageHead } from './components/page-head.tsx'
import { SelectField } from './components/select-field.tsx'
import { errorOf } from './error-of.ts'
import { type Frame, Page } from './page.tsx'
import { liveLookUp } from './recording/live-answer.ts'
import { words } from './words/en.ts'

export type ConformityQuestion = {
  readonly typed: ConformityTyped
  readonly faults: readonly Fault[]
  readonly decided: Decided | 'faulty' | 'asked'
}

const w = words.conformity
const address = '/calculator/conformity'
const rows = [
  ['value', 'standardUncertainty'],
  ['lowerLimit', 'upperLimit'],
] as const

/** Asks for a result, its uncertainty, its limits and a rule, and decides. */
export const ConformityPage: FC<{ frame: Frame; question: ConformityQuestion }> = (props) => {
  const { frame, question } = props
  const { typed, faults, decided } = question
  return (
    <Page frame={frame} title={w.title}>
      <PageHead title={w.title} lead={w.lead} />
      <CalculatorTabs current="conformity" />
      <form method="get" action={address} class="calculator">
        <div class="stack">
          {rows.map((names) => (
            <div class="field-pair">
              <ConformityFields names={names} typed={typed} faults={faults} />
            </div>
          ))}
          <CheckField
            name="nonNegative"
            value="yes"
            label={w.nonNegative}
            hint={w.nonNegativeHint}
            isChecked={typed.nonNegative === 'yes'}
            {...errorOf(faults, 'nonNegative')}
          />
          <ChoiceCards
            name="rule"
            legend={w.rule}
            value={typed.rule}
            choices={decisionRules.map((rule) => ({
              value: rule,
              label: words.decision.rule[rule],
              detail: words.decision.ruleSentence[rule],
            }))}
            {...errorOf(faults, 'rule')}
          />
          <ConformityFields names={['probability']} typed={typed} faults={faults} />
          <More typed={typed} faults={faults} />
        </div>
        <aside class="card calculator-answer" aria-label={w.answer}>
          <div id="answer" class="stack" aria-live="polite" {...liveLookUp(address)}>
            <ConformityAnswerPart decided={decided} />
          </div>
          <ButtonRow>
            <Button label={w.submit} kind="main" size="large" />
          </ButtonRow>
        </aside>
      </form>
    </Page>
  )
}

/** What is seldom asked; open where something stands in it. */
const More: FC<{ typed: ConformityTyped; faults: readonly Fault[] }> = ({ typed, faults }) => {
  const names = ['expandedUncertainty', 'uncertaintyShareAtMost'] as const
  const ofMany = ['prior.mean', 'prior.standardDeviation'] as const
  const isUsed = [...names, ...ofMany, 'prior.shape' as const].some((name) => typed[name] !== '')
  return (
    <details class="fold" open={isUsed}>
      <summary>{w.more}</summary>
      <div class="fold-body stack">
        <div class="field-pair">
          <ConformityFields names={names} typed={typed} faults={faults} />
        </div>
        <h2 class="section-head">{w.many}</h2>
        <p class="small soft">{w.manyLead}</p>
        <div class="field-pair">
          <ConformityFields names={ofMany} typed={typed} faults={faults} />
        </div>
        <SelectField
          name="prior.shape"
          label={w.shape}
          value={typed['prior.shape']}
          emptyLabel={w.shapeNone}
          options={priorShapes.map((value) => ({ value, label: w.shapes[value] }))}
          {...errorOf(faults, 'prior.shape')}
        />
      </div>
    </details>
  )
}

/** What the server sends while the form is filled in. */
export const ConformityFragment: FC<{ question: ConformityQuestion }> = ({ question }) => (
  <>
    <ConformityAnswerPart decided={question.decided} />
    <ConformityFields names={conformityNumbers} {...question} isSwap />
  </>
)
