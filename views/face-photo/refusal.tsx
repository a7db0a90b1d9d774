import type { FC } from 'hono/jsx'
import type { WholeFaceAnswer } from '../../src/domain/whole-face-answer.ts'
import { VerdictMark } from '../components/verdict-mark.tsx'
import { photoWords } from '../words/en/photo.ts'
import { words } from '../words/en.ts'
import type { FacePhotoForm } from './page-props.ts'
import { RatioLine } from './ratio-line.tsx'

type Refused = Extract<WholeFaceAnswer['outcome'], { kind: 'refused' }>

/** Why a photograph gives no honest figure, and what can be done instead. */
export const FacePhotoRefusal: FC<{ form: FacePhotoForm; refused: Refused }> = ({
  form,
  refused,
}) => {
  const w = words.facePhoto
  const { orderNumber, face } = form
  const order = `/work-orders/${orderNumber}`
  return (
    <>
      <p class="result-label">{w.answerTitle}</p>
      <p class="result-verdict">
        <VerdictMark verdict="undecidable" word={w.refusedTitle} size="large" />
      </p>
      {refused.isSecond ? <p>{w.secondRefused}</p> : null}
      <p class="strong">{photoWords.refusal[refused.reason]}</p>
      {refused.reason === 'edges-not-found' ? <RatioLine values={form.values} /> : null}
      <p>{w.refusedNext}:</p>
      <ul class="plain-list">
        <li>
          <a href={`${order}/face-photos/new?face=${face.id}`}>{w.acts.again}</a>
        </li>
        <li>{w.acts.mark}</li>
        <li>{w.acts.grid}</li>
        <li>
          <a href={`${order}/flatness/new?face=${face.id}&pattern=unreadable`}>
            {w.acts.unreadable}
          </a>
        </li>
      </ul>
    </>
  )
}
