import type { FC } from 'hono/jsx'
import { Field } from '../components/field.tsx'
import { SelectField } from '../components/select-field.tsx'
import { TextAreaField } from '../components/text-area-field.tsx'
import { ConfirmBeyond } from '../confirm-beyond.tsx'
import { minuteText } from '../figures/time-text.ts'
import { LampAndFlat } from '../recording/lamp-and-flat.tsx'
import { words } from '../words/en.ts'
import type { FacePhotoValues } from './form-values.ts'
import type { FacePhotoForm } from './page-props.ts'
import { photoError } from './photo-error.ts'

/** With what the photograph was taken, and the second one that may tell which side the gap opens. */
export const MorePhotoFields: FC<{ form: FacePhotoForm }> = ({ form }) => {
  const { facePhoto: w, flatness, trade } = words
  const { values, faults, choice, others, orderNumber, face } = form
  const common = (name: keyof FacePhotoValues & string) => {
    return { name, value: values[name] as string, ...photoError(faults, name) }
  }
  const number = { inputMode: 'decimal', width: 'number' } as const
  return (
    <section class="question" id="how">
      <h2 class="section-head">{w.moreTitle}</h2>
      <LampAndFlat
        lamp={common('lampInstrumentId')}
        flat={common('opticalFlatInstrumentId')}
        choice={choice}
      />
      <div class="field-pair">
        <Field
          {...common('outerDiameterMm')}
          {...number}
          label={w.outerDiameter}
          unit={trade.unit.mm}
          isRequired
        />
        <Field
          {...common('innerDiameterMm')}
          {...number}
          label={w.innerDiameter}
          unit={trade.unit.mm}
          isRequired
        />
      </div>
      <div class="photo-kind photo-kind-photo stack">
        <SelectField
          {...common('pressedPhotoId')}
          label={w.pressed}
          hint={w.pressedHint}
          emptyLabel={w.pressedNone}
          options={others.map((one) => ({
            value: String(one.id),
            label: w.pressedPhoto(minuteText(one.recordedAt)),
          }))}
        />
        <a class="link-line" href={`/work-orders/${orderNumber}/face-photos/new?face=${face.id}`}>
          {w.takeSecond}
        </a>
      </div>
      <div class="field-pair">
        <Field
          {...common('soakMin')}
          {...number}
          label={flatness.soak}
          unit={trade.unit.min}
          hint={flatness.soakHint}
        />
        <Field
          {...common('temperatureC')}
          {...number}
          label={flatness.temperature}
          unit={trade.unit.c}
          hint={flatness.temperatureHint}
        />
      </div>
      <ConfirmBeyond faults={faults} typed={values.confirmBeyondWindow} />
      <TextAreaField {...common('note')} label={w.note} rows={2} />
    </section>
  )
}
