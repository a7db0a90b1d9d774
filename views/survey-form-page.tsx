import type { FC } from 'hono/jsx'
import { Button } from './components/button.tsx'
import { ButtonRow } from './components/button-row.tsx'
import { ErrorSummary } from './components/error-summary.tsx'
import { PageHead } from './components/page-head.tsx'
import { ownSentence } from './own-error-of.ts'
import { type Frame, Page } from './page.tsx'
import { CorrectionFields, type Replaced } from './recording/correction-fields.tsx'
import type { InstrumentChoice } from './recording/instrument-field.tsx'
import { SurveyCaution } from './surveys/caution.tsx'
import { type SurveyTyped, surveyProps } from './surveys/form-values.ts'
import { SurveyMoreFields } from './surveys/more-fields.tsx'
import { SurveyQuestions } from './surveys/questions.tsx'
import { words } from './words/en.ts'

export type SurveyForm = {
  readonly orderNumber: string
  readonly sealSerial: string
  readonly choice: InstrumentChoice
  readonly typed: SurveyTyped
  readonly formKey: string
  readonly replaced: Replaced | null
}

/** How a survey is set up, before the first reading. */
export const SurveyFormPage: FC<{ frame: Frame; form: SurveyForm }> = ({ frame, form }) => {
  const { typed, replaced } = form
  const { surveys: w, chrome } = words
  const title = replaced === null ? w.title : w.correctionTitle
  return (
    <Page frame={frame} title={`${title} ${form.orderNumber}`}>
      <PageHead title={title} over={`${form.orderNumber} · ${form.sealSerial}`} />
      <form
        method="post"
        action={`/work-orders/${form.orderNumber}/run-out-surveys`}
        class="stack-loose"
      >
        <input type="hidden" name="formKey" value={form.formKey} />
        <ErrorSummary
          title={chrome.faultsTitle}
          faults={typed.faults.map((fault) => ({
            fieldId: cards.includes(fault.field) ? `${fault.field}-1` : fault.field,
            message: ownSentence(fault, w.faults),
          }))}
        />
        <SurveyCaution survey={null} />
        {replaced === null ? null : (
          <CorrectionFields
            replaced={replaced}
            reason={typed.values.reason}
            error={surveyProps(typed, 'reason').error}
          />
        )}
        <SurveyQuestions typed={typed} />
        <SurveyMoreFields typed={typed} choice={form.choice} />
        <p class="soft">{w.beginHint}</p>
        <ButtonRow>
          <Button label={w.begin} kind="main" size="large" />
        </ButtonRow>
      </form>
    </Page>
  )
}

/** Groups of cards: the summary leads to their first one. */
const cards: readonly string[] = ['characteristic', 'condition', 'place', 'turned', 'direction']
