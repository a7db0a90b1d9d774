import type { FC } from 'hono/jsx'
import type { WholeFaceAnswer } from '../../src/domain/whole-face-answer.ts'
import type { FacePhotoForm } from './page-props.ts'

/** What can be said of a photograph as it is set now. */
export const FacePhotoAnswerView: FC<{ form: FacePhotoForm; answer: WholeFaceAnswer }> = ({
  answer,
}) => <p>{answer.outcome.kind}</p>
