import type { FC } from 'hono/jsx'
import { type Assembly, clipStates } from '../../src/domain/assembly.ts'
import type { PartLine } from '../../src/domain/part-line.ts'
import { ChoiceCards } from '../components/choice-cards.tsx'
import { Field } from '../components/field.tsx'
import { Notice } from '../components/notice.tsx'
import { minuteText } from '../figures/time-text.ts'
import { PartsTable } from '../findings/parts-table.tsx'
import type { Frame } from '../page.tsx'
import { Question } from '../recording/question.tsx'
import { words } from '../words/en.ts'
import { BenchNumber, type BenchTyped, benchProps } from './bench-fields.tsx'
import { type BenchForm, BenchFormPage } from './bench-form-page.tsx'
import { BenchMore } from './bench-more.tsx'
import { ScrewRows } from './screw-rows.tsx'
import type { StripAnswerProps } from './strip-answer.tsx'

const w = words.assembly
const mm = words.trade.unit.mm

/** How the seal is put together, beside what its design asks for. */
export const AssemblyFormPage: FC<{
  frame: Frame
  form: BenchForm
  /** Whose design values were filled in; null: none. */
  taken: Pick<Assembly, 'recordedByName' | 'recordedAt'> | null
  /** What becomes of the parts, with their batches. */
  parts: readonly PartLine[]
  answer: StripAnswerProps
}> = ({ frame, form, taken, parts, answer }) => {
  const { typed } = form
  return (
    <BenchFormPage frame={frame} form={form} own={w} labels={labels} answer={answer}>
      {taken === null ? null : (
        <div class="question">
          <Notice kind="note" text={w.taken(minuteText(taken.recordedAt), taken.recordedByName)} />
        </div>
      )}
      <LengthAndLoad typed={typed} />
      <Question number={3} title={w.screwsTitle}>
        <ScrewRows typed={typed} />
        <BenchNumber
          typed={typed}
          name="torqueTolerancePercent"
          label={w.torqueTolerance}
          hint={w.toleranceHint}
          unit="%"
        />
      </Question>
      <Question number={4} title={w.sourceTitle}>
        <Field {...benchProps(typed, 'designSource')} label={w.source} hint={w.sourceHint} />
      </Question>
      <Fit typed={typed} />
      {parts.length === 0 ? null : (
        <section class="question">
          <h2>{w.partsTitle}</h2>
          <PartsTable lines={parts} orderNumber={form.orderNumber} canCorrect={false} />
        </section>
      )}
      <BenchMore typed={typed} choice={null} />
    </BenchFormPage>
  )
}

const LengthAndLoad: FC<{ typed: BenchTyped }> = ({ typed }) => (
  <>
    <Question number={1} title={w.lengthTitle}>
      <BenchNumber
        typed={typed}
        name="workingLengthMm"
        label={w.workingLength}
        unit={mm}
        isRequired
      />
      <p class="field-hint">{w.toleranceHint}</p>
      <div class="field-pair">
        <BenchNumber typed={typed} name="designWorkingLengthMm" label={w.designLength} unit={mm} />
        <BenchNumber typed={typed} name="workingLengthToleranceMm" label={w.tolerance} unit={mm} />
      </div>
    </Question>
    <Question number={2} title={w.loadTitle}>
      <BenchNumber
        typed={typed}
        name="measuredLoadN"
        label={w.measuredLoad}
        hint={w.loadHint}
        unit="N"
      />
      <p class="field-hint">{w.toleranceHint}</p>
      <div class="field-pair">
        <BenchNumber typed={typed} name="designLoadN" label={w.designLoad} unit="N" />
        <BenchNumber typed={typed} name="loadTolerancePercent" label={w.tolerance} unit="%" />
      </div>
    </Question>
  </>
)

const Fit: FC<{ typed: BenchTyped }> = ({ typed }) => (
  <Question number={5} title={w.fitTitle}>
    <ChoiceCards
      {...benchProps(typed, 'clips')}
      legend={w.clipsLegend}
      choices={clipStates.map((value) => ({ value, label: w.clips[value] }))}
    />
    <BenchNumber typed={typed} name="clipsCount" label={w.clipsCount} />
    <Field {...benchProps(typed, 'lubricant')} label={w.lubricant} hint={w.lubricantHint} />
    <ChoiceCards
      {...benchProps(typed, 'isTurningFree')}
      legend={w.turning}
      choices={[
        { value: 'yes', label: w.turns.yes },
        { value: 'no', label: w.turns.no },
      ]}
    />
  </Question>
)

const labels: Readonly<Record<string, string>> = {
  workingLengthMm: w.workingLength,
  designWorkingLengthMm: w.designLength,
  workingLengthToleranceMm: `${w.designLength}, ${w.tolerance.toLowerCase()}`,
  measuredLoadN: w.measuredLoad,
  designLoadN: w.designLoad,
  loadTolerancePercent: `${w.designLoad}, ${w.tolerance.toLowerCase()}`,
  designSource: w.source,
  name: w.screws.name,
  quantityCount: w.screws.quantityCount,
  torqueNm: w.screws.torqueNm,
  designTorqueNm: w.screws.designTorqueNm,
  torqueTolerancePercent: w.torqueTolerance,
  clipsCount: w.clipsCount,
  lubricant: w.lubricant,
  note: w.note,
}
