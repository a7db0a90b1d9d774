import { AppError } from '../../domain/app-error.ts'
import { combineWholeFaces } from '../../domain/combine-whole-faces.ts'
import { combinedParts } from '../../domain/combined-parts.ts'
import { computeWholeFace } from '../../domain/compute-whole-face.ts'
import type { Evidence } from '../../domain/evidence.ts'
import type { FlatnessReading } from '../../domain/flatness.ts'
import { noFlatnessBudgetInput } from '../../domain/flatness-budget-input.ts'
import type { WholeFace } from '../../domain/whole-face.ts'
import { lampIds, lamps } from '../../science/optics/lamps.ts'
import { listFacePhotos } from '../../store/list-face-photos.ts'
import { readStoredFile } from '../../store/read-stored-file.ts'
import type { AppContext } from '../context.ts'
import { readWholeFace } from '../read-whole-face.ts'

/**
 * Computes a whole face again from the stored photograph and what was set on it, and holds it
 * against the record: flatness, map and all further figures, bit for bit. Its uncertainty depends
 * on the papers of instruments and is kept, not computed again.
 */
export async function isSameAgain(
  c: AppContext,
  evidence: Evidence,
  reading: FlatnessReading,
): Promise<boolean> {
  const { store } = c.var.shop
  const { wholeFace } = reading
  if (wholeFace === null) return false
  if (wholeFace.source.kind === 'combined') return isSameMean(evidence, reading)
  const photos = listFacePhotos(store, evidence.workOrder.id)
  const bytesOf = (photoId: number) => {
    const photo = photos.find((one) => one.id === photoId)
    if (photo === undefined) throw new AppError('not-found', 'no-face-photo')
    return readStoredFile(store, photo.sha256).bytes
  }
  const asked = {
    ...reading,
    ...wholeFace,
    source: wholeFace.source,
    budgetInput: reading.budgetInput ?? noFlatnessBudgetInput,
  }
  const again = await readWholeFace(asked, bytesOf)
  const lampId = lampIds.find((id) => lamps[id].wavelengthNm === reading.wavelengthNm)
  if (again.kind !== 'read' || lampId === undefined) return false
  const flat = { flatToleranceUm: null, flatStandardUncertaintyUm: null }
  const { computed, wholeFace: found } = computeWholeFace(asked, again.read, { lampId, ...flat })
  return computed.flatnessUm === reading.flatnessUm && asText(found) === asText(wholeFace)
}

/** A combination again from the records of its parts. */
function isSameMean({ flatnessReadings }: Evidence, reading: FlatnessReading): boolean {
  const parts = combinedParts([reading], flatnessReadings)
  const { computed, wholeFace } = combineWholeFaces(parts)
  if (reading.wholeFace === null || computed.flatnessUm !== reading.flatnessUm) return false
  return asText(wholeFace) === asText(reading.wholeFace)
}

/** As it is stored: a number that JSON gives back is the number that it was given. */
function asText(wholeFace: WholeFace): string {
  return JSON.stringify(sorted(wholeFace))
}

function sorted(value: unknown): unknown {
  if (Array.isArray(value)) return value.map(sorted)
  if (typeof value !== 'object' || value === null) return value
  const entries = Object.entries(value).map(([key, one]) => [key, sorted(one)] as const)
  return Object.fromEntries(entries.sort(([a], [b]) => (a < b ? -1 : 1)))
}
