import type { Input } from '../../domain/fields.ts'
import { typedText } from '../typed-text.ts'

/** A plate that was typed counts over the card that was chosen, and is the plate. */
export function withPlate(input: Input): Input {
  const { otherPlate, ...own } = input
  return typedText(otherPlate).trim() === '' ? own : { ...own, plate: otherPlate }
}
