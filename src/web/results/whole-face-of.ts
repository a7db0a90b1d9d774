import type { WholeFaceShown } from '../../../views/results/whole-face-section.tsx'
import { AppError } from '../../domain/app-error.ts'
import type { Evidence } from '../../domain/evidence.ts'
import type { ShownResult } from '../../domain/shown-result.ts'
import { listFacePhotos } from '../../store/list-face-photos.ts'
import type { AppContext } from '../context.ts'
import { viewer } from '../viewer.ts'
import { isSameAgain } from './is-same-again.ts'

/** What a reading of a whole face has beside its figure; null for any other result. */
export async function wholeFaceOf(
  c: AppContext,
  evidence: Evidence,
  result: ShownResult,
): Promise<WholeFaceShown | null> {
  if (result.kind !== 'flatness-reading') return null
  const reading = evidence.flatnessReadings.find((one) => one.id === result.id)
  const wholeFace = reading?.wholeFace ?? null
  if (reading === undefined || wholeFace === null) return null
  const { source } = wholeFace
  const photos = listFacePhotos(c.var.shop.store, evidence.workOrder.id)
  const photo = 'photoId' in source ? photos.find((one) => one.id === source.photoId) : undefined
  const order = `/work-orders/${evidence.workOrder.number}`
  const asked = c.req.query('repeat')
  if (asked !== undefined && asked !== 'yes') throw new AppError('not-found', 'no-page')
  // It takes the time of a reading, and those at the lamp wait for it: customers are not asked.
  const mayRepeat = viewer(c).role !== 'customer'
  if (asked !== undefined && !mayRepeat) throw new AppError('forbidden', 'wrong-role')
  return {
    wholeFace,
    photo: photo ?? null,
    photoHref: `${order}/face-photos/${photo?.id}/picture`,
    isSameAgain: asked === undefined ? null : await isSameAgain(c, evidence, reading),
    repeatHref: mayRepeat ? `${order}/results/${result.kind}/${result.id}?repeat=yes#map` : null,
  }
}
