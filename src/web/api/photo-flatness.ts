import { photoWords } from '../../../views/words/en/photo.ts'
import { answerPhotoFlatness } from '../../domain/answer-photo-flatness.ts'
import { parsePhotoFlatnessRequest } from '../../domain/parse-photo-flatness-request.ts'
import type { PhotoRefusal } from '../../science/photo/photo-refusal.ts'
import type { AppContext } from '../context.ts'
import { problem } from '../problem.ts'
import { runPhoto } from '../run-photo.ts'
import { mustParse } from './must-parse.ts'
import { readPhotoUpload } from './read-photo-upload.ts'

/** Reads the flatness of a whole face from a photograph of its bands. */
export async function apiPhotoFlatness(c: AppContext): Promise<Response> {
  const { bytes, input } = await readPhotoUpload(c)
  const request = mustParse(parsePhotoFlatnessRequest(input))
  const { outer, inner, wedge, viewingAngleDeg, innerDiameterMm, outerDiameterMm } = request
  const radiusRatio = innerDiameterMm / outerDiameterMm
  const answer = await runPhoto(bytes, { outer, inner, wedge, viewingAngleDeg, radiusRatio })
  if (answer.kind === 'refused') return unreadablePicture(answer)
  return c.json(answerPhotoFlatness(request, answer))
}

/** A picture that gives no honest figure: why, and what to do. */
export function unreadablePicture({ reason, measured, limit }: PhotoRefusal): Response {
  return problem('invalid', 422, 'unreadable-picture', {
    extra: { reason, detail: photoWords.refusal[reason], measured, limit },
  })
}
