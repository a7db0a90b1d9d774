import type { FC } from 'hono/jsx'
import { Button } from './components/button.tsx'
import { ButtonRow } from './components/button-row.tsx'
import { ErrorSummary } from './components/error-summary.tsx'
import { PageHead } from './components/page-head.tsx'
import { QuarantineStop, StripCaution } from './findings/caution.tsx'
import { type FindingValues, type StripTyped, stripProps } from './findings/form-values.ts'
import { FindingQuestions } from './findings/questions.tsx'
import { ownSentence } from './own-error-of.ts'
import { type Frame, Page } from './page.tsx'
import { CorrectionFields, type Replaced } from './recording/correction-fields.tsx'
import { words } from './words/en.ts'

export type FindingForm = {
  readonly orderNumber: string
  readonly sealSerial: string
  readonly isQuarantined: boolean
  readonly typed: StripTyped<FindingValues>
  readonly formKey: string
  readonly replaced: Replaced | null
}

/** Asks for what is seen on a part, and apart from it for an opinion. */
export const FindingFormPage: FC<{ frame: Frame; form: FindingForm }> = ({ frame, form }) => {
  const { orderNumber, typed, replaced } = form
  const { findings: w, chrome } = words
  const title = replaced === null ? w.title : w.correctionTitle
  return (
    <Page frame={frame} title={`${title} ${orderNumber}`}>
      <PageHead title={title} over={`${orderNumber} · ${form.sealSerial}`}>
        <a href={`/work-orders/${orderNumber}/strip`}>{w.toStrip}</a>
      </PageHead>
      {form.isQuarantined ? (
        <QuarantineStop orderNumber={orderNumber} />
      ) : (
        <form
          method="post"
          action={`/work-orders/${orderNumber}/findings`}
          enctype="multipart/form-data"
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
          <StripCaution />
          {replaced === null ? null : (
            <CorrectionFields
              replaced={replaced}
              reason={typed.values.reason}
              error={stripProps(typed, 'reason').error}
            />
          )}
          <FindingQuestions typed={typed} isCorrection={replaced !== null} />
          <ButtonRow>
            <Button label={w.submit} kind="main" size="large" />
          </ButtonRow>
        </form>
      )}
    </Page>
  )
}

/** Groups of cards: the summary leads to their first one. */
const cards: readonly string[] = ['part', 'term', 'severity', 'isBeforeCleaning']
