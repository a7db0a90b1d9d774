import type { FC } from 'hono/jsx'
import { AgreedRuleFields, agreedRuleLabels } from './agreed-rule-fields.tsx'
import { Button } from './components/button.tsx'
import { ButtonRow } from './components/button-row.tsx'
import { ErrorSummary } from './components/error-summary.tsx'
import type { SmallForm } from './customers-page.tsx'
import { summaryFaults } from './summary-faults.ts'
import { words } from './words/en.ts'

/** Agrees on a rule, for a customer or for one order; folded away until it is wanted. */
export const AgreedRuleForm: FC<{
  action: string
  summary: string
  note: string
  form: SmallForm
}> = ({ action, summary, note, form }) => {
  const { typed, faults, formKey } = form
  return (
    <details class="fold" open={faults.length > 0}>
      <summary>{summary}</summary>
      <form method="post" action={action} class="fold-body stack">
        <ErrorSummary
          title={words.chrome.faultsTitle}
          faults={summaryFaults(faults, (field) => agreedRuleLabels[field])}
        />
        <input type="hidden" name="formKey" value={formKey} />
        <p class="soft">{note}</p>
        <AgreedRuleFields typed={typed} faults={faults} />
        <ButtonRow>
          <Button label={words.agreedRules.submit} kind="main" />
        </ButtonRow>
      </form>
    </details>
  )
}
