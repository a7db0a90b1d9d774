import type { NewPartLine } from '../../src/domain/part-line.ts'
import type { FreshFinding } from '../../src/store/add-finding.ts'

type OfOrder = { readonly workOrderId: number }
const photo = { bytes: Buffer.from('a picture of a track'), mediaType: 'image/jpeg' }

/** A track wider than the nose, before cleaning, with a photograph, ready to be stored. */
export function freshFinding(changes: Partial<FreshFinding> & OfOrder): FreshFinding {
  return {
    part: 'stationary-seat',
    term: 'wide-track',
    severity: 'marked',
    fromHour: null,
    toHour: null,
    radialPlace: null,
    isBeforeCleaning: true,
    observation: 'wider by a quarter of a millimetre',
    suspectedCause: 'shaft-run-out',
    causeNote: '',
    photo,
    isPhotoTakenOut: false,
    replacesId: null,
    reason: '',
    ...changes,
  }
}

/** A new O-ring with its papers, ready to be stored. */
export function freshPartLine(changes: Partial<NewPartLine> & OfOrder): NewPartLine {
  return {
    part: 'rotating-secondary',
    description: 'O-ring 50 x 4',
    fate: 'replaced',
    quantityCount: 1,
    batch: 'B-17',
    certificate: 'Z-4',
    compound: 'FKM 75',
    curedOn: '2026-03-01',
    note: '',
    replacesId: null,
    reason: '',
    ...changes,
  }
}
