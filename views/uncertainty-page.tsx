import type { FC } from 'hono/jsx'
import { CalculatorTabs } from './calculator/calculator-tabs.tsx'
import { QuantityFields } from './calculator/quantity-fields.tsx'
import { UncertaintyAnswerPart, UncertaintyBudget } from './calculator/uncertainty-answer.tsx'
import type { UncertaintyQuestion } from './calculator/uncertainty-typed.ts'
import { Button } from './components/button.tsx'
import { ButtonRow } from './components/button-row.tsx'
import { CheckField } from './components/check-field.tsx'
import { EnterButton } from './components/enter-button.tsx'
import { Field } from './components/field.tsx'
import { PageHead } from './components/page-head.tsx'
import { errorOf } from './error-of.ts'
import { type Frame, Page } from './page.tsx'
import { words } from './words/en.ts'

const w = words.uncertainty
/** As many as JCGM 101:2008, 7.2.2 expects for an interval of 95 % with two digits. */
const usualTrials = '1000000'

/** Asks for quantities and how they are joined, and evaluates them both ways. */
export const UncertaintyPage: FC<{ frame: Frame; question: UncertaintyQuestion }> = (props) => {
  const { frame, question } = props
  const { typed, faults, answer } = question
  const { error: ofList } = errorOf(faults, 'quantities')
  return (
    <Page frame={frame} title={w.title}>
      <PageHead title={w.title} lead={w.lead} />
      <CalculatorTabs current="uncertainty" />
      <form method="get" action="/calculator/uncertainty" class="calculator">
        <EnterButton label={w.submit} />
        <div class="stack">
          <Field
            name="model"
            label={w.model}
            hint={w.modelHint}
            value={typed.model}
            {...errorOf(faults, 'model')}
          />
          <h2 class="section-head">{w.quantities}</h2>
          {ofList === undefined ? null : (
            <p class="field-error" id="quantities-error">
              {ofList}
            </p>
          )}
          {typed.quantities.map((one, index) => (
            <QuantityFields typed={one} index={index} faults={faults} />
          ))}
          <ButtonRow>
            <Button label={w.more} name="more" value="yes" />
          </ButtonRow>
          <HowToEvaluate typed={typed} faults={faults} />
        </div>
        <aside class="card calculator-answer" aria-label={w.answer}>
          <div class="stack">
            <UncertaintyAnswerPart question={question} />
          </div>
          <ButtonRow>
            <Button label={w.submit} kind="main" size="large" />
          </ButtonRow>
        </aside>
      </form>
      {answer === null ? null : (
        <section class="calculator-more">
          <UncertaintyBudget answer={answer} />
        </section>
      )}
    </Page>
  )
}

/** What is the same for all quantities: the probability, and whether trials are run. */
const HowToEvaluate: FC<Pick<UncertaintyQuestion, 'typed' | 'faults'>> = ({ typed, faults }) => (
  <>
    <div class="field-pair">
      <Field
        name="probability"
        label={w.probability}
        hint={w.probabilityHint}
        value={typed.probability}
        inputMode="decimal"
        width="number"
        {...errorOf(faults, 'probability')}
      />
      <Field
        name="seed"
        label={w.seed}
        hint={w.seedHint}
        value={typed.seed}
        inputMode="numeric"
        width="number"
        {...errorOf(faults, 'monteCarlo.seed')}
      />
    </div>
    <CheckField
      name="trials"
      value={usualTrials}
      label={w.alsoTrials}
      hint={w.trialsHint}
      isChecked={typed.trials !== ''}
      {...errorOf(faults, 'monteCarlo.trials')}
    />
  </>
)
