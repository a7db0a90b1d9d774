import type { FC } from 'hono/jsx'
import { wearTrackBounds } from '../../src/domain/wear-track.ts'
import { ChoiceCards } from '../components/choice-cards.tsx'
import { SelectField } from '../components/select-field.tsx'
import type { LapFace } from '../lap-cycles/questions.tsx'
import type { Frame } from '../page.tsx'
import type { InstrumentChoice } from '../recording/instrument-field.tsx'
import { Question } from '../recording/question.tsx'
import { tradeWord } from '../words/en/trade.ts'
import { words } from '../words/en.ts'
import { BenchNumber, type BenchTyped, benchProps } from './bench-fields.tsx'
import { type BenchForm, BenchFormPage } from './bench-form-page.tsx'
import { BenchMore } from './bench-more.tsx'
import { rowsShown } from './rows-shown.ts'
import type { StripAnswerProps } from './strip-answer.tsx'

const widthRows = { least: 3, most: wearTrackBounds.widthCount.max }

/** Face, nose and track of a worn face, as found. */
export const WearTrackFormPage: FC<{
  frame: Frame
  form: BenchForm
  faces: readonly LapFace[]
  choice: InstrumentChoice
  answer: StripAnswerProps
}> = ({ frame, form, faces, choice, answer }) => {
  const w = words.wearTrack
  const { typed } = form
  return (
    <BenchFormPage frame={frame} form={form} own={w} labels={labels} answer={answer}>
      <Question number={1} title={w.face}>
        <ChoiceCards
          {...benchProps(typed, 'componentId')}
          legend={w.face}
          hint={w.faceHint}
          isLegendHidden
          choices={faces.map((one) => ({
            value: String(one.id),
            label: words.trade.faceKind[one.kind],
            detail: tradeWord(words.trade.faceMaterial, one.material),
          }))}
        />
      </Question>
      <Widths typed={typed} />
      <Question number={3} title={w.offsetTitle}>
        <div class="field-pair">
          <BenchNumber typed={typed} name="offsetMm" label={w.offset} unit={words.trade.unit.mm} />
          <SelectField
            {...benchProps(typed, 'offsetHour')}
            label={w.offsetHour}
            hint={w.offsetHint}
            emptyLabel={w.noHour}
            options={hours.map((hour) => ({ value: String(hour), label: w.hour(hour) }))}
          />
        </div>
      </Question>
      <BenchMore typed={typed} choice={choice} />
    </BenchFormPage>
  )
}

const Widths: FC<{ typed: BenchTyped }> = ({ typed }) => {
  const w = words.wearTrack
  const mm = words.trade.unit.mm
  return (
    <Question number={2} title={w.widthsTitle}>
      <BenchNumber
        typed={typed}
        name="noseWidthMm"
        label={w.nose}
        hint={w.noseHint}
        unit={mm}
        isRequired
      />
      <div class="field-pair">
        {Array.from({ length: rowsShown(typed, 'trackWidths', widthRows) }, (_, index) => (
          <BenchNumber
            typed={typed}
            name={`trackWidths[${index}].widthMm`}
            label={w.width(index + 1)}
            unit={mm}
            {...(index === 0 ? { also: 'trackWidths', isRequired: true, hint: w.widthHint } : {})}
          />
        ))}
      </div>
    </Question>
  )
}

const hours = Array.from({ length: wearTrackBounds.hour.max }, (_, index) => index + 1)

const labels: Readonly<Record<string, string>> = {
  noseWidthMm: words.wearTrack.nose,
  widthMm: words.wearTrack.width(1),
  offsetMm: words.wearTrack.offset,
  offsetHour: words.wearTrack.offsetHour,
  instrumentId: words.wearTrack.instrument,
  note: words.wearTrack.note,
}
