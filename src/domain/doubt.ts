import type { UsedSubject } from './result-subject.ts'

export const doubtAnswers = ['stands', 'repeat', 'withdraw-certificate'] as const
export type DoubtAnswer = (typeof doubtAnswers)[number]

/**
 * A record made with an instrument that was later found out of tolerance, after its last good
 * calibration; and what the inspector says about it, null where nothing was said yet.
 */
export type Doubt = UsedSubject & {
  readonly calibrationId: number
  readonly instrumentId: number
  readonly instrumentNumber: string
  readonly foundOn: string
  readonly answer: DoubtAnswer | null
  readonly reason: string
  readonly byName: string
  readonly at: string
}
