import { amendedNames, type InstrumentNumbers } from '../../src/domain/instrument-amendment.ts'

export type NumbersTyped = Readonly<Record<(typeof amendedNames)[number], string>>

/** An instrument's numbers as a form shows them; '' where one is not known. */
export function numbersText(numbers: InstrumentNumbers): NumbersTyped {
  const pairs = amendedNames.map((name) => [name, String(numbers[name] ?? '')])
  return Object.fromEntries(pairs) as NumbersTyped
}
