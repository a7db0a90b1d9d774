import type { FC } from 'hono/jsx'
import type { Fault } from '../src/domain/fault.ts'
import type { UseException } from '../src/domain/use-exception.ts'
import { Button } from './components/button.tsx'
import { ButtonRow } from './components/button-row.tsx'
import { Caution } from './components/caution.tsx'
import { ChoiceCards } from './components/choice-cards.tsx'
import { ErrorSummary } from './components/error-summary.tsx'
import { Field } from './components/field.tsx'
import { Notice } from './components/notice.tsx'
import { TextAreaField } from './components/text-area-field.tsx'
import { minuteText } from './figures/time-text.ts'
import { ownErrorOf, ownSentence } from './own-error-of.ts'
import { exceptionSentences } from './words/en/exceptions.ts'
import { words } from './words/en.ts'

/** An answer that was typed and refused, of one of the requests. */
export type ExceptionAnswerTyped = {
  readonly id: number
  readonly answer: string
  readonly validUntil: string
  readonly reason: string
  readonly formKey: string
  readonly faults: readonly Fault[]
}

export type OpenExceptionsProps = {
  /** Oldest first. */
  readonly open: readonly UseException[]
  /** What stands in every fresh form; null for who may look only. */
  readonly form: {
    readonly viewerId: number
    readonly formKey: string
    /** Offered as the last day. */
    readonly today: string
  } | null
  readonly refused: ExceptionAnswerTyped | null
  readonly isAnswered: boolean
}

/** What waits for an inspector's word before anything is recorded; nothing when none waits. */
export const OpenExceptions: FC<OpenExceptionsProps> = (props) => {
  const { open, refused, isAnswered } = props
  const { exceptions: w, chrome } = words
  return (
    <>
      {isAnswered ? <Notice kind="done" text={chrome.saved} /> : null}
      {open.length === 0 ? null : (
        <section id="exceptions" class="stack" aria-labelledby="exceptions-title">
          <div class="section-head">
            <h2 id="exceptions-title">{w.openTitle}</h2>
          </div>
          <ErrorSummary
            title={chrome.faultsTitle}
            faults={(refused?.faults ?? []).map((one) => ({
              fieldId: fieldId(one.field, refused?.id ?? 0),
              message: ownSentence(one, exceptionSentences),
            }))}
          />
          <Caution sign={chrome.caution} title={w.cautionTitle}>
            <p>{w.caution}</p>
          </Caution>
          {open.map((one) => (
            <OpenException {...props} asked={one} />
          ))}
        </section>
      )}
    </>
  )
}

const OpenException: FC<OpenExceptionsProps & { asked: UseException }> = (props) => {
  const { asked, form, refused } = props
  const w = words.exceptions
  const isOwn = form !== null && form.viewerId === asked.askedById
  return (
    <div class="card stack">
      <h3>
        <a href={`/instruments/${asked.instrumentId}`}>{asked.instrumentNumber}</a>
        {' · '}
        <a href={`/work-orders/${asked.workOrderNumber}`}>{asked.workOrderNumber}</a>
      </h3>
      <p>
        <strong>{w.faults[asked.fault]}</strong>. {asked.reason}
      </p>
      <p class="small soft">{w.asked(asked.askedByName, minuteText(asked.askedAt))}</p>
      {isOwn ? <p class="strong">{w.ownRequest}</p> : null}
      {form === null || isOwn ? null : (
        <AnswerForm asked={asked} form={form} refused={refused?.id === asked.id ? refused : null} />
      )}
    </div>
  )
}

const AnswerForm: FC<{
  asked: UseException
  form: NonNullable<OpenExceptionsProps['form']>
  refused: ExceptionAnswerTyped | null
}> = ({ asked, form, refused }) => {
  const w = words.exceptions
  const own = (field: string) => ownErrorOf(refused?.faults ?? [], field, exceptionSentences)
  return (
    <form method="post" action={`/exceptions/${asked.id}/answer`} class="stack">
      <input
        type="hidden"
        name="formKey"
        value={refused?.formKey || `${form.formKey}-exception-${asked.id}`}
      />
      <ChoiceCards
        name="answer"
        id={`answer-${asked.id}`}
        legend={w.answer}
        value={refused?.answer}
        choices={[
          { value: 'allowed', label: w.answers.allowed, detail: w.allowedDetail },
          { value: 'declined', label: w.answers.declined, detail: w.declinedDetail },
        ]}
        {...own('answer')}
      />
      <Field
        name="validUntil"
        id={`validUntil-${asked.id}`}
        label={w.validUntil}
        hint={w.validUntilHint}
        type="date"
        width="short"
        value={refused?.validUntil ?? form.today}
        {...own('validUntil')}
      />
      <TextAreaField
        name="reason"
        id={`reason-${asked.id}`}
        label={w.answerReason}
        hint={w.answerReasonHint}
        value={refused?.reason}
        isRequired
        {...own('reason')}
      />
      <ButtonRow>
        <Button label={w.submitAnswer} />
      </ButtonRow>
    </form>
  )
}

function fieldId(field: string, id: number): string {
  return field === 'answer' ? `answer-${id}-1` : `${field}-${id}`
}
