import { describe, expect, it } from 'vitest'
import { faceStateText } from '../../../views/words/en/face-state-text.ts'
import { sixteenPercentText } from '../../../views/words/en/sixteen-percent-text.ts'

describe('how a face was when its finish was read', () => {
  it('is told as stated, else by the log, and both where they differ', () => {
    expect(faceStateText('matted', null)).toBe('read on the matted face')
    expect(faceStateText('matted', 'matted')).toBe('read on the matted face')
    expect(faceStateText(null, 'polished')).toBe('read on the polished face, by the lapping log')
    expect(faceStateText('polished', 'matted')).toBe(
      'read on the polished face, as its reader says; by the lapping log it was matted last',
    )
    expect(faceStateText(null, null)).toBe('')
  })
})

describe('what the 16 % rule says', () => {
  it('is its answer and how many lie above', () => {
    expect(sixteenPercentText({ kind: 'accepted', beyondCount: 0 }, 3)).toBe(
      'kept, none above the limit',
    )
    expect(sixteenPercentText({ kind: 'refused', beyondCount: 3 }, 5)).toBe(
      'not kept, 3 of 5 above the limit',
    )
    expect(sixteenPercentText({ kind: 'more', untilCount: 6, beyondCount: 1 }, 3)).toBe(
      'decided with 6 traces, 1 of 3 above the limit',
    )
  })
})
