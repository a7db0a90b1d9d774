import type { FC } from 'hono/jsx'
import { readingConditions } from '../src/domain/flatness.ts'
import { Button } from './components/button.tsx'
import { ButtonRow } from './components/button-row.tsx'
import { Caution } from './components/caution.tsx'
import { ChoiceCards } from './components/choice-cards.tsx'
import { EnterButton } from './components/enter-button.tsx'
import { ErrorSummary } from './components/error-summary.tsx'
import { PageHead } from './components/page-head.tsx'
import { FacePhotoAnswerView } from './face-photo/answer.tsx'
import { EdgeFields } from './face-photo/edge-fields.tsx'
import { GridFields, MarkFields, ShowButton } from './face-photo/kind-fields.tsx'
import { MorePhotoFields } from './face-photo/more-fields.tsx'
import type { FacePhotoForm } from './face-photo/page-props.ts'
import { photoField, photoFieldId, photoSentence } from './face-photo/photo-fault.ts'
import { PhotoStage } from './face-photo/stage.tsx'
import { minuteText } from './figures/time-text.ts'
import { type Frame, Page } from './page.tsx'
import { CorrectionFields } from './recording/correction-fields.tsx'
import { LimitsHead } from './recording/limits-head.tsx'
import { Question } from './recording/question.tsx'
import { words } from './words/en.ts'

const kinds = ['photo', 'marked', 'line-grid'] as const

/** Where a photograph is read: edges, bands, and what the picture cannot know. */
export const FacePhotoPage: FC<{ frame: Frame; form: FacePhotoForm }> = ({ frame, form }) => {
  const { facePhoto: w, chrome, trade } = words
  const { orderNumber, photo, faults } = form
  const action = `/work-orders/${orderNumber}/face-photos/${photo.id}`
  const title = form.replaced === null ? w.title : w.correctionTitle
  return (
    <Page frame={frame} title={`${title} ${orderNumber}`} width="wide">
      <PageHead
        title={title}
        over={`${orderNumber} · ${form.sealSerial} · ${trade.faceKind[photo.faceKind]}`}
        lead={w.taken(photo.recordedByName, minuteText(photo.recordedAt))}
      />
      <form
        method="post"
        action={`${action}/reading`}
        class="reading photo-reading"
        data-face-photo={`${action}/preview`}
      >
        <EnterButton label={w.submit} />
        <input type="hidden" name="formKey" value={form.formKey} />
        <div class="photo-work">
          <ErrorSummary
            title={chrome.faultsTitle}
            faults={faults.map((fault) => ({
              fieldId: photoFieldId(fault),
              message: photoSentence(fault),
            }))}
          />
          <PhotoStage form={form} />
          <Questions form={form} action={action} />
        </div>
        <aside class="reading-answer photo-answer" aria-label={w.answerTitle}>
          <div id="face-photo-answer" class="stack" aria-live="polite">
            <FacePhotoAnswerView form={form} answer={form.answer} />
          </div>
          <ButtonRow>
            <Button label={w.submit} kind="main" size="large" />
          </ButtonRow>
        </aside>
      </form>
    </Page>
  )
}

const Questions: FC<{ form: FacePhotoForm; action: string }> = ({ form, action }) => {
  const { facePhoto: w, flatness, chrome, trade } = words
  const { values, faults } = form
  const error = (name: string) => {
    const fault = faults.find((one) => photoField(one) === name)
    return fault === undefined ? {} : { error: photoSentence(fault) }
  }
  return (
    <>
      {form.replaced === null ? null : (
        <CorrectionFields replaced={form.replaced} reason={values.reason} {...error('reason')} />
      )}
      {form.isQuarantined ? (
        <Caution sign={chrome.caution} title={flatness.quarantineTitle}>
          <p>{flatness.quarantine}</p>
        </Caution>
      ) : null}
      <Question number={1} title={w.kind}>
        <ChoiceCards
          name="kind"
          legend={w.kind}
          isLegendHidden
          value={values.kind}
          choices={kinds.map((value) => ({ value, ...w.kinds[value] }))}
          {...error('kind')}
        />
        <div class="photo-kind photo-kind-photo photo-kind-marked stack">
          <EdgeFields values={values} faults={faults} areFound={form.photo.foundEdges !== null} />
        </div>
        <MarkFields values={values} faults={faults} />
        <GridFields values={values} faults={faults} />
        <ShowButton action={action} />
      </Question>
      <Question number={2} title={w.condition}>
        <ChoiceCards
          name="condition"
          legend={w.condition}
          isLegendHidden
          value={values.condition}
          choices={readingConditions.map((value) => ({
            value,
            label: trade.condition[value],
            detail: w.conditionDetail[value],
          }))}
          {...error('condition')}
        />
      </Question>
      <MorePhotoFields form={form} />
      <section class="question stack">
        <LimitsHead setName={form.limitSetName} number={form.orderNumber} />
        <Caution sign={chrome.caution} title={flatness.cautionTitle}>
          {flatness.caution.map((text) => (
            <p>{text}</p>
          ))}
        </Caution>
      </section>
    </>
  )
}
