import type { FC } from 'hono/jsx'
import type { WholeFaceAnswer } from '../../src/domain/whole-face-answer.ts'
import { SvgDrawing } from '../components/svg-drawing.tsx'
import { InstrumentWarnings } from '../recording/instrument-warnings.tsx'
import { errorSentences } from '../words/en/errors.ts'
import { words } from '../words/en.ts'
import { FacePhotoFigures } from './figures.tsx'
import { overlayOf } from './overlay-of.ts'
import type { FacePhotoForm } from './page-props.ts'
import { photoSentence } from './photo-fault.ts'
import { FacePhotoRefusal } from './refusal.tsx'

/** What can be said of a photograph as it is set now; drawn anew whenever something changes. */
export const FacePhotoAnswerView: FC<{ form: FacePhotoForm; answer: WholeFaceAnswer | null }> = ({
  form,
  answer,
}) => {
  const w = words.facePhoto
  if (answer === null) return <Said text={w.notAsked} />
  const { outcome, uses } = answer
  const overlay = overlayOf(form, outcome)
  return (
    <>
      {outcome.kind === 'ask' ? <Said text={w.ask[outcome.ask]} /> : null}
      {outcome.kind === 'stopped' ? (
        <Said text={errorSentences[outcome.reason]?.({}) ?? outcome.reason} />
      ) : null}
      {outcome.kind === 'faulty'
        ? outcome.faults
            .slice(0, 2)
            .map((fault) => <p class="field-error">{photoSentence(fault)}</p>)
        : null}
      {outcome.kind === 'refused' ? <FacePhotoRefusal form={form} refused={outcome} /> : null}
      {outcome.kind === 'figures' ? <FacePhotoFigures form={form} shown={outcome} /> : null}
      <InstrumentWarnings uses={uses} />
      {overlay === null ? null : (
        <template data-overlay="">
          <SvgDrawing drawing={overlay} />
        </template>
      )}
    </>
  )
}

const Said: FC<{ text: string }> = ({ text }) => (
  <>
    <p class="result-label">{words.facePhoto.answerTitle}</p>
    <p class="lead">{text}</p>
  </>
)
