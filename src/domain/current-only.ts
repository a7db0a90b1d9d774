/** The records that no correction has replaced, in the order they came in. */
export function currentOnly<T extends { readonly replacedById: number | null }>(
  records: readonly T[],
): readonly T[] {
  return records.filter((one) => one.replacedById === null)
}
