import type { FC } from 'hono/jsx'
import type { WholeFace } from '../../src/domain/whole-face.ts'
import type { WholeFaceAnswer } from '../../src/domain/whole-face-answer.ts'
import { ChoiceCards } from '../components/choice-cards.tsx'
import { words } from '../words/en.ts'
import { arrowDeg } from './arrow-deg.ts'
import type { FacePhotoForm } from './page-props.ts'

/**
 * The one thing that a picture cannot know: which side the gap opens. Asked with two arrows on the
 * photograph; two photographs that decided need no question.
 */
export const DirectionQuestion: FC<{
  form: FacePhotoForm
  wholeFace: WholeFace
  press: Extract<WholeFaceAnswer['outcome'], { kind: 'figures' }>['press']
}> = ({ form, wholeFace, press }) => {
  const w = words.facePhoto
  const { source, seen } = wholeFace
  if (source.kind !== 'photo' || seen === null || press?.isDecided === true) return null
  const a = arrowDeg(seen.tiltDirectionDeg)
  const typed = form.values.opensTowardsDeg
  return (
    <ChoiceCards
      name="opensTowardsDeg"
      legend={w.direction}
      hint={w.directionHint}
      value={typed === '' ? '' : String(nearer(Number(typed), a))}
      choices={[
        { value: String(a), label: w.towards(w.arrow[0]), detail: w.towardsDeg(String(a)) },
        {
          value: String(a + 180),
          label: w.towards(w.arrow[1]),
          detail: w.towardsDeg(String(a + 180)),
        },
        { value: '', label: w.couldNotTell },
      ]}
    />
  )
}

/** A refit turns the arrows by a little: an answer stays with the one that it meant. */
function nearer(chosenDeg: number, a: number): number {
  return Math.cos(((chosenDeg - a) * Math.PI) / 180) >= 0 ? a : a + 180
}
