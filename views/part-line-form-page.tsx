import type { FC } from 'hono/jsx'
import { partFates } from '../src/domain/part-line.ts'
import { stripParts } from '../src/domain/strip-part.ts'
import { Button } from './components/button.tsx'
import { ButtonRow } from './components/button-row.tsx'
import { ChoiceCards } from './components/choice-cards.tsx'
import { ErrorSummary } from './components/error-summary.tsx'
import { Field } from './components/field.tsx'
import { PageHead } from './components/page-head.tsx'
import { SelectField } from './components/select-field.tsx'
import { TextAreaField } from './components/text-area-field.tsx'
import { QuarantineStop } from './findings/caution.tsx'
import { type PartLineValues, type StripTyped, stripProps } from './findings/form-values.ts'
import { ownSentence } from './own-error-of.ts'
import { type Frame, Page } from './page.tsx'
import { CorrectionFields, type Replaced } from './recording/correction-fields.tsx'
import { Question } from './recording/question.tsx'
import { words } from './words/en.ts'

export type PartLineForm = {
  readonly orderNumber: string
  readonly sealSerial: string
  readonly isQuarantined: boolean
  readonly typed: StripTyped<PartLineValues>
  readonly formKey: string
  readonly replaced: Replaced | null
}

const w = words.findings

/** Asks what becomes of one part, and of a new one by what it is known. */
export const PartLineFormPage: FC<{ frame: Frame; form: PartLineForm }> = ({ frame, form }) => {
  const { orderNumber, typed, replaced } = form
  const title = replaced === null ? w.partTitle : w.partCorrectionTitle
  return (
    <Page frame={frame} title={`${title} ${orderNumber}`}>
      <PageHead title={title} over={`${orderNumber} · ${form.sealSerial}`}>
        <a href={`/work-orders/${orderNumber}/strip`}>{w.toStrip}</a>
      </PageHead>
      {form.isQuarantined ? (
        <QuarantineStop orderNumber={orderNumber} />
      ) : (
        <form method="post" action={`/work-orders/${orderNumber}/part-lines`} class="stack-loose">
          <input type="hidden" name="formKey" value={form.formKey} />
          <ErrorSummary
            title={words.chrome.faultsTitle}
            faults={typed.faults.map((fault) => ({
              fieldId: fault.field === 'fate' ? 'fate-1' : fault.field,
              message: ownSentence(fault, w.faults),
            }))}
          />
          {replaced === null ? null : (
            <CorrectionFields
              replaced={replaced}
              reason={typed.values.reason}
              error={stripProps(typed, 'reason').error}
            />
          )}
          <PartFields typed={typed} />
          <ButtonRow>
            <Button label={w.partSubmit} kind="main" size="large" />
          </ButtonRow>
        </form>
      )}
    </Page>
  )
}

const PartFields: FC<{ typed: StripTyped<PartLineValues> }> = ({ typed }) => (
  <>
    <Question number={1} title={w.part}>
      <div class="field-pair">
        <SelectField
          {...stripProps(typed, 'part')}
          label={w.part}
          emptyLabel={words.recording.choose}
          options={stripParts.map((value) => ({ value, label: w.parts[value] }))}
        />
        <Field
          {...stripProps(typed, 'description')}
          label={w.description}
          hint={w.descriptionHint}
        />
        <Field
          {...stripProps(typed, 'quantityCount')}
          label={w.quantity}
          inputMode="numeric"
          width="number"
        />
      </div>
    </Question>
    <Question number={2} title={w.fateQuestion}>
      <ChoiceCards
        {...stripProps(typed, 'fate')}
        legend={w.fateQuestion}
        isLegendHidden
        hint={w.secondaryHint}
        choices={partFates.map((value) => ({
          value,
          label: w.fates[value],
          detail: w.fateDetail[value],
        }))}
      />
    </Question>
    <Question number={3} title={w.newPartTitle}>
      <div class="field-pair">
        <Field {...stripProps(typed, 'batch')} label={w.batch} />
        <Field {...stripProps(typed, 'certificate')} label={w.paper} />
        <Field {...stripProps(typed, 'compound')} label={w.compound} />
        <Field
          {...stripProps(typed, 'curedOn')}
          label={w.curedOn}
          hint={w.curedOnHint}
          type="date"
        />
      </div>
      <TextAreaField {...stripProps(typed, 'note')} label={w.note} rows={2} />
    </Question>
  </>
)
