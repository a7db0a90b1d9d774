import type { LapPurpose } from './lap-cycle.ts'

/** How a face was when something was read on it. */
export const faceStates = ['lapped', 'polished', 'matted'] as const
export type FaceState = (typeof faceStates)[number]

/** What a cycle leaves. */
export const stateAfter: Readonly<Record<LapPurpose, FaceState>> = {
  lap: 'lapped',
  polish: 'polished',
  matt: 'matted',
}
