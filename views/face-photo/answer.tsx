import type { FC } from 'hono/jsx'
import type { Fault } from '../../src/domain/fault.ts'
import { markedFlatnessBounds } from '../../src/domain/parse-marked-flatness-request.ts'
import type { WholeFaceAnswer } from '../../src/domain/whole-face-answer.ts'
import { SvgDrawing } from '../components/svg-drawing.tsx'
import { InstrumentWarnings } from '../recording/instrument-warnings.tsx'
import { errorSentences } from '../words/en/errors.ts'
import { words } from '../words/en.ts'
import { FacePhotoFigures } from './figures.tsx'
import { overlayOf } from './overlay-of.ts'
import type { FacePhotoForm } from './page-props.ts'
import { photoSentence } from './photo-fault.ts'
import { RatioLine } from './ratio-line.tsx'
import { FacePhotoRefusal } from './refusal.tsx'

type Outcome = WholeFaceAnswer['outcome']
type Asked = Extract<Outcome, { kind: 'ask' }>['ask']

/** What can be said of a photograph as it is set now; drawn anew whenever something changes. */
export const FacePhotoAnswerView: FC<{ form: FacePhotoForm; answer: WholeFaceAnswer | null }> = ({
  form,
  answer,
}) => {
  const w = words.facePhoto
  if (answer === null) {
    return (
      <>
        <Said text={w.notAsked} />
        <KeptDirection form={form} outcome={null} />
      </>
    )
  }
  const { outcome, uses } = answer
  const overlay = overlayOf(form, outcome)
  return (
    <>
      {outcome.kind === 'ask' ? <Said text={askText(form, outcome.ask)} /> : null}
      {outcome.kind === 'stopped' ? (
        <Said text={errorSentences[outcome.reason]?.({}) ?? outcome.reason} />
      ) : null}
      {outcome.kind === 'faulty' ? <Faulty form={form} faults={outcome.faults} /> : null}
      {outcome.kind === 'refused' ? <FacePhotoRefusal form={form} refused={outcome} /> : null}
      {outcome.kind === 'figures' ? <FacePhotoFigures form={form} shown={outcome} /> : null}
      <KeptDirection form={form} outcome={outcome} />
      <InstrumentWarnings uses={uses} />
      {overlay === null ? null : (
        <template data-overlay="">
          <SvgDrawing drawing={overlay} />
        </template>
      )}
    </>
  )
}

const Faulty: FC<{ form: FacePhotoForm; faults: readonly Fault[] }> = ({ form, faults }) => {
  if (faults.every((one) => one.field === 'points' && one.kind === 'too-few')) {
    return <Said text={missingText(form)} />
  }
  return (
    <>
      {faults.slice(0, 2).map((fault) => (
        <p class="field-error">{photoSentence(fault)}</p>
      ))}
      {faults.some((one) => one.kind === 'edges-not-one-ring') ? (
        <RatioLine values={form.values} />
      ) : null}
    </>
  )
}

function askText(form: FacePhotoForm, ask: Asked): string {
  const isBegun = ask === 'marks' && markCount(form) > 0
  return isBegun ? missingText(form) : words.facePhoto.ask[ask]
}

function missingText(form: FacePhotoForm): string {
  const set = markCount(form)
  return words.facePhoto.marksMissing(
    String(set),
    String(Math.max(1, markedFlatnessBounds.pointCount.min - set)),
  )
}

function markCount({ values }: FacePhotoForm): number {
  return values.points.split('\n').filter((line) => line.trim() !== '').length
}

/**
 * Where the question is not asked its answer waits: a refusal in between must not lose it. What two
 * photographs decided needs none.
 */
const KeptDirection: FC<{ form: FacePhotoForm; outcome: Outcome | null }> = ({ form, outcome }) => {
  const { opensTowardsDeg } = form.values
  const isRead = outcome?.kind === 'figures' && outcome.wholeFace.source.kind === 'photo'
  if (isRead || opensTowardsDeg === '') return null
  return <input type="hidden" name="opensTowardsDeg" value={opensTowardsDeg} />
}

const Said: FC<{ text: string }> = ({ text }) => (
  <>
    <p class="result-label">{words.facePhoto.answerTitle}</p>
    <p class="lead">{text}</p>
  </>
)
