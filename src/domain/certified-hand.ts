import type { CertifiedHand } from './certified-strip.ts'

type Hand = {
  readonly id: number
  readonly note: string
  readonly replacesId: number | null
  readonly reason: string
  readonly recordedByName: string
  readonly recordedAt: string
}

/** Who recorded what stands, and every reason for which it took another's place. */
export function certifiedHand(record: Hand, all: readonly Hand[]): CertifiedHand {
  const { note, recordedByName, recordedAt } = record
  return { note, recordedByName, recordedAt, corrections: corrections(record, all) }
}

function corrections(record: Hand, all: readonly Hand[]): CertifiedHand['corrections'] {
  const { replacesId, reason, recordedByName: byName, recordedAt: at } = record
  if (replacesId === null) return []
  const before = all.find((one) => one.id === replacesId)
  return [{ reason, byName, at }, ...(before === undefined ? [] : corrections(before, all))]
}
