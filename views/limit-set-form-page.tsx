import type { FC } from 'hono/jsx'
import type { Fault } from '../src/domain/fault.ts'
import type { LimitEntry } from '../src/domain/limit-entry.ts'
import { Button } from './components/button.tsx'
import { ButtonRow } from './components/button-row.tsx'
import { ErrorSummary } from './components/error-summary.tsx'
import { Field } from './components/field.tsx'
import { PageHead } from './components/page-head.tsx'
import { TextAreaField } from './components/text-area-field.tsx'
import { LimitFields } from './limit-fields.tsx'
import { ownErrorOf, ownSentence } from './own-error-of.ts'
import { type Frame, Page } from './page.tsx'
import { limitSetSentences } from './words/en/limit-forms.ts'
import { words } from './words/en.ts'

export type LimitSetTyped = {
  readonly name: string
  readonly note: string
  readonly directionsRequiredCount: string
  readonly uncertaintySharePercent: string
  readonly limits: readonly LimitEntry[]
}

export type LimitSetFormPageProps = {
  readonly frame: Frame
  /** What the form makes a new version of; null for a set with a name of its own. */
  readonly next: {
    readonly id: number
    readonly name: string
    readonly version: number
    readonly today: string
  } | null
  readonly typed: LimitSetTyped
  readonly faults: readonly Fault[]
  readonly formKey: string
}

/** A set as a form: the first of a name, or the version that follows one. */
export const LimitSetFormPage: FC<LimitSetFormPageProps> = (props) => {
  const { frame, next, typed, faults, formKey } = props
  const { limitForms: w, chrome } = words
  const title = next === null ? w.newTitle : w.nextTitle(next.name)
  const lead = next === null ? w.newLead : w.nextLead(next.version, next.today)
  const own = (field: string) => ownErrorOf(faults, field, limitSetSentences)
  return (
    <Page frame={frame} title={title}>
      <PageHead title={title} lead={lead} />
      <form
        method="post"
        action={next === null ? '/limit-sets' : `/limit-sets/${next.id}/next`}
        class="stack-loose"
      >
        <input type="hidden" name="formKey" value={formKey} />
        <ErrorSummary
          title={chrome.faultsTitle}
          faults={faults.map((one) => ({
            fieldId: one.field,
            message: ownSentence(one, limitSetSentences),
          }))}
        />
        <section>
          {next === null ? (
            <Field
              name="name"
              label={w.name}
              hint={w.nameHint}
              value={typed.name}
              isRequired
              {...own('name')}
            />
          ) : null}
          <TextAreaField
            name="note"
            label={w.noteLabel}
            hint={w.noteHint}
            value={typed.note}
            rows={2}
            {...own('note')}
          />
          <Field
            name="directionsRequiredCount"
            label={w.directions}
            hint={w.directionsHint}
            value={typed.directionsRequiredCount}
            inputMode="numeric"
            width="number"
            isRequired
            {...own('directionsRequiredCount')}
          />
          <Field
            name="uncertaintySharePercent"
            label={w.share}
            hint={w.shareHint}
            value={typed.uncertaintySharePercent}
            unit={w.sharePercent}
            inputMode="decimal"
            width="number"
            {...own('uncertaintySharePercent')}
          />
        </section>
        <section id="limits" aria-labelledby="limits-title">
          <div class="section-head">
            <h2 id="limits-title">{w.limitsTitle}</h2>
          </div>
          <ol class="job-list">
            {typed.limits.map((entry, index) => (
              <li class="job">
                <LimitFields entry={entry} index={index} faults={faults} />
              </li>
            ))}
          </ol>
        </section>
        <ButtonRow>
          <Button label={next === null ? w.submit : w.submitNext} kind="main" size="large" />
          <Button label={w.more} name="more" value="yes" size="large" />
        </ButtonRow>
      </form>
    </Page>
  )
}
