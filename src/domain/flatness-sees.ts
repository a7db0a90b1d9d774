/**
 * What a method of reading flatness looks at. A count along straight lines gauges how a face is
 * bowed or coned across its width and is nearly blind to waves around it; a whole-surface figure
 * is a height over all of the face. The two are different quantities and never stand side by side.
 */
export const flatnessSights = ['taper', 'whole-surface'] as const
export type FlatnessSees = (typeof flatnessSights)[number]

const seenByMethod: Readonly<Record<string, FlatnessSees>> = {
  'flatness/counted': 'taper',
  'flatness/marked': 'whole-surface',
  'flatness/photo': 'whole-surface',
  'flatness/line-grid': 'whole-surface',
  'flatness/combined': 'whole-surface',
}

/**
 * What the method of a record sees, by its name; versions of a method see the same.
 * @param method as it is kept with the record, `flatness/counted 2`
 * @throws RangeError for a method that is none of flatness
 */
export function flatnessSees(method: string): FlatnessSees {
  const [name = ''] = method.split(' ')
  const sees = Object.hasOwn(seenByMethod, name) ? seenByMethod[name] : undefined
  if (sees === undefined) throw new RangeError(`flatnessSees requires a method, got ${method}`)
  return sees
}
