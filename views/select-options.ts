/** Ids and their words as the options of a select. */
export function selectOptions<Id extends string>(
  ids: readonly Id[],
  named: Readonly<Record<Id, string>>,
): readonly { readonly value: Id; readonly label: string }[] {
  return ids.map((value) => ({ value, label: named[value] }))
}
