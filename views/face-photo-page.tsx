import type { FC } from 'hono/jsx'
import { Button } from './components/button.tsx'
import { ButtonRow } from './components/button-row.tsx'
import { ChoiceCards } from './components/choice-cards.tsx'
import { EnterButton } from './components/enter-button.tsx'
import { ErrorSummary } from './components/error-summary.tsx'
import { PageHead } from './components/page-head.tsx'
import { FacePhotoAnswerView } from './face-photo/answer.tsx'
import { EdgeFields } from './face-photo/edge-fields.tsx'
import { GridFields } from './face-photo/grid-fields.tsx'
import { MarkFields } from './face-photo/mark-fields.tsx'
import { MorePhotoFields } from './face-photo/more-fields.tsx'
import type { FacePhotoForm } from './face-photo/page-props.ts'
import { photoError } from './face-photo/photo-error.ts'
import { photoFieldId, photoSentence } from './face-photo/photo-fault.ts'
import { PhotoStage } from './face-photo/stage.tsx'
import { minuteText } from './figures/time-text.ts'
import { type Frame, Page } from './page.tsx'
import { ConditionQuestion } from './recording/condition-question.tsx'
import { CorrectionFields } from './recording/correction-fields.tsx'
import { LampCaution } from './recording/lamp-caution.tsx'
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
        <div class="photo-place-stage stack">
          <ErrorSummary
            title={chrome.faultsTitle}
            faults={faults.map((fault) => ({
              fieldId: photoFieldId(fault),
              message: photoSentence(fault),
            }))}
          />
          <PhotoStage form={form} />
        </div>
        <div class="photo-place-kind">
          <KindQuestion form={form} action={action} />
        </div>
        <aside class="reading-answer photo-answer" aria-label={w.answerTitle}>
          <div id="face-photo-answer" class="stack" aria-live="polite">
            <FacePhotoAnswerView form={form} answer={form.answer} />
          </div>
        </aside>
        <div class="photo-place-rest">
          <RestQuestions form={form} />
        </div>
        <div class="photo-record">
          <ButtonRow>
            <Button label={w.submit} kind="main" size="large" />
          </ButtonRow>
        </div>
      </form>
    </Page>
  )
}

const KindQuestion: FC<{ form: FacePhotoForm; action: string }> = ({ form, action }) => {
  const w = words.facePhoto
  const { values, faults, photo } = form
  return (
    <Question number={1} title={w.kind}>
      <ChoiceCards
        name="kind"
        legend={w.kind}
        isLegendHidden
        value={values.kind}
        choices={kinds.map((value) => ({ value, ...w.kinds[value] }))}
        {...photoError(faults, 'kind')}
      />
      <div class="photo-kind photo-kind-photo photo-kind-marked stack">
        <EdgeFields values={values} faults={faults} areFound={photo.foundEdges !== null} />
      </div>
      <MarkFields values={values} faults={faults} />
      <GridFields values={values} faults={faults} />
      <div class="photo-show">
        <Button label={w.show} attributes={{ formaction: `${action}/preview`, 'data-show': '' }} />
      </div>
    </Question>
  )
}

const RestQuestions: FC<{ form: FacePhotoForm }> = ({ form }) => {
  const { values, faults } = form
  return (
    <>
      {form.replaced === null ? null : (
        <CorrectionFields
          replaced={form.replaced}
          reason={values.reason}
          {...photoError(faults, 'reason')}
        />
      )}
      <ConditionQuestion number={2} value={values.condition} {...photoError(faults, 'condition')} />
      <MorePhotoFields form={form} />
      <section class="question stack">
        <LimitsHead setName={form.limitSetName} number={form.orderNumber} />
        <LampCaution />
      </section>
    </>
  )
}
