import type { Fault } from '../../src/domain/fault.ts'
import { ownSentence } from '../own-error-of.ts'
import { flatnessWords } from '../words/en/flatness.ts'

/** Straight bands are 0 by their pattern; another count beside them is told in those words. */
export function straightSentence(fault: Fault, pattern: string): string | undefined {
  const isCount = fault.field.endsWith('.bands') && ['above', 'below'].includes(fault.kind)
  return isCount && pattern === 'straight' ? flatnessWords.straightFault : undefined
}

/** The sentence for a fault of this form. */
export function flatnessSentence(fault: Fault, pattern: string): string {
  return straightSentence(fault, pattern) ?? ownSentence(fault, flatnessWords.faults)
}

const cardFields = ['faceId', 'condition', 'pattern', 'ringCentre', 'unreadableCause']

/** The element that a fault belongs to, for the links above the form. */
export function flatnessFieldId(field: string): string {
  if (cardFields.includes(field)) return `${field}-1`
  // A list as a whole (a saddle read one way only) is mended in its second part.
  const [, index = '1', name = 'bands'] = /^readings(?:\[(\d+)\](?:\.(\w+))?)?$/.exec(field) ?? []
  if (!field.startsWith('readings')) return field
  return `${name === 'directionDeg' ? 'bands' : name}-${index}`
}
