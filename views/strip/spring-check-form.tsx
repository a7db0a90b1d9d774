import type { FC } from 'hono/jsx'
import { readingConditions } from '../../src/domain/flatness.ts'
import { springCheckBounds } from '../../src/domain/spring-check.ts'
import { ChoiceCards } from '../components/choice-cards.tsx'
import type { Frame } from '../page.tsx'
import type { InstrumentChoice } from '../recording/instrument-field.tsx'
import { Question } from '../recording/question.tsx'
import { words } from '../words/en.ts'
import { BenchNumber, type BenchTyped, benchProps } from './bench-fields.tsx'
import { type BenchForm, BenchFormPage } from './bench-form-page.tsx'
import { BenchMore } from './bench-more.tsx'
import { rowsShown } from './rows-shown.ts'
import type { StripAnswerProps } from './strip-answer.tsx'

const loadRows = { least: 4, most: springCheckBounds.loadCount.max }

const w = words.springCheck
const mm = words.trade.unit.mm

/** Lengths and stiffness of springs, as found or as they go in. */
export const SpringCheckFormPage: FC<{
  frame: Frame
  form: BenchForm
  choice: InstrumentChoice
  answer: StripAnswerProps
}> = ({ frame, form, choice, answer }) => {
  const { typed } = form
  return (
    <BenchFormPage frame={frame} form={form} own={w} labels={labels} answer={answer}>
      <Question number={1} title={w.whichTitle}>
        <ChoiceCards
          {...benchProps(typed, 'condition')}
          legend={w.condition}
          choices={readingConditions.map((value) => ({
            value,
            label: words.trade.condition[value],
          }))}
        />
        <BenchNumber typed={typed} name="springsCount" label={w.count} hint={w.countHint} />
      </Question>
      <Lengths typed={typed} />
      <Loads typed={typed} />
      <BenchMore typed={typed} choice={choice} />
    </BenchFormPage>
  )
}

const Lengths: FC<{ typed: BenchTyped }> = ({ typed }) => (
  <Question number={2} title={w.lengthsTitle}>
    <div class="field-pair">
      <BenchNumber
        typed={typed}
        name="freeLengthMm"
        label={w.freeLength}
        hint={w.freeLengthHint}
        unit={mm}
        isRequired
      />
      <BenchNumber
        typed={typed}
        name="newLengthMm"
        label={w.newLength}
        hint={w.newLengthHint}
        unit={mm}
      />
    </div>
    <div class="field-pair">
      <BenchNumber
        typed={typed}
        name="workingLengthMm"
        label={w.workingLength}
        hint={w.workingLengthHint}
        unit={mm}
        isRequired
      />
      <BenchNumber
        typed={typed}
        name="solidLengthMm"
        label={w.solidLength}
        hint={w.solidLengthHint}
        unit={mm}
      />
    </div>
  </Question>
)

const Loads: FC<{ typed: BenchTyped }> = ({ typed }) => (
  <Question number={3} title={w.loadsTitle}>
    <p class="field-hint">{w.loadsHint}</p>
    {Array.from({ length: rowsShown(typed, 'loads', loadRows) }, (_, index) => (
      <div class="field-pair">
        <BenchNumber
          typed={typed}
          name={`loads[${index}].lengthMm`}
          label={w.loadLength(index + 1)}
          unit={mm}
          {...(index === 0 ? { also: 'loads' } : {})}
        />
        <BenchNumber
          typed={typed}
          name={`loads[${index}].loadN`}
          label={w.load(index + 1)}
          unit="N"
        />
      </div>
    ))}
    <BenchNumber typed={typed} name="rateNPerMm" label={w.rate} unit={w.rateUnit} />
  </Question>
)

const labels: Readonly<Record<string, string>> = {
  springsCount: w.count,
  freeLengthMm: w.freeLength,
  newLengthMm: w.newLength,
  workingLengthMm: w.workingLength,
  solidLengthMm: w.solidLength,
  lengthMm: w.loadLength(1),
  loadN: w.load(1),
  rateNPerMm: w.rate,
  instrumentId: w.instrument,
  note: w.note,
}
