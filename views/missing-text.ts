import type { Missing } from '../src/domain/missing-for-hand-over.ts'
import { words } from './words/en.ts'

/** What is missing before hand-over, in a sentence. */
export function missingText(missing: Missing): string {
  const { kind, faceKind, section, with: count, survey } = missing
  const w = words.workOrders.missing
  if (survey !== undefined) {
    return w['open-survey'](words.trade.characteristic[survey.characteristic])
  }
  if (section !== undefined) {
    return w['other-section'](words.trade.section[section].toLowerCase())
  }
  if (kind === 'decontamination' || kind === 'static-test') return w[kind]
  if (faceKind === undefined) return w.noFace
  const face = words.trade.faceKind[faceKind].toLowerCase()
  if (kind !== 'second-direction') return w[kind](face)
  return w[kind](face, count?.neededCount ?? 2, count?.readCount ?? 1)
}

/** Where on the order's page it is made good. */
export function missingPlace({ kind }: Missing): string {
  if (kind === 'decontamination') return 'decontamination'
  if (kind === 'open-survey') return 'open-surveys'
  return kind === 'static-test' ? 'tests' : 'readings'
}
