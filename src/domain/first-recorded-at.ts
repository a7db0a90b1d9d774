type Corrected = {
  readonly id: number
  readonly replacesId: number | null
  readonly recordedAt: string
}

/**
 * The instant at which a record was first written down: a correction says anew what was done then,
 * and stands at the place of what it replaced.
 * @param records all of its kind and order, replaced ones too
 */
export function firstRecordedAt(records: readonly Corrected[], one: Corrected): string {
  const byId = new Map(records.map((record) => [record.id, record]))
  let first = one
  for (let was = earlier(first, byId); was !== undefined; was = earlier(first, byId)) first = was
  return first.recordedAt
}

/** What it replaced; a record replaces only what came before it, so this ends. */
function earlier(
  { id, replacesId }: Corrected,
  byId: ReadonlyMap<number, Corrected>,
): Corrected | undefined {
  return replacesId === null || replacesId >= id ? undefined : byId.get(replacesId)
}
