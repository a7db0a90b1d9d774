import type { Fault } from '../../src/domain/fault.ts'
import { ownSentence } from '../own-error-of.ts'
import { facePhotoWords } from '../words/en/face-photo.ts'

const formNames: Readonly<Record<string, string>> = {
  'grid.directionDeg': 'gridDirectionDeg',
  'grid.spacingPx': 'gridSpacingPx',
  'grid.offsetPx': 'gridOffsetPx',
  'grid.oneWayBands': 'oneWayBands',
  'grid.otherWayBands': 'otherWayBands',
  'wedge.opensTowardsDeg': 'opensTowardsDeg',
  outer: 'outer.cx',
  inner: 'inner.cx',
}
const cards = ['kind', 'condition', 'increasingTowards', 'faceId']

/** The field of the form that a fault is about. */
export function photoField({ field }: Fault): string {
  if (field.startsWith('points')) return 'points'
  return formNames[field] ?? field
}

/** Its element. */
export function photoFieldId(fault: Fault): string {
  const name = photoField(fault)
  return cards.includes(name) ? `${name}-1` : name
}

/** Its sentence; of a mark with the line that it is about. */
export function photoSentence(fault: Fault): string {
  const sentence = ownSentence(fault, facePhotoWords.faults)
  const mark = /^points\[(\d+)\]/.exec(fault.field)?.[1]
  return mark === undefined ? sentence : facePhotoWords.inMark(String(Number(mark) + 1), sentence)
}
