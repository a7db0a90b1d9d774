import type { FaceState } from '../../../src/domain/face-state.ts'
import { finishWords } from './finish.ts'

/**
 * How a face was when its finish was read: as stated, else by the log, and both where they differ.
 * '' where neither says it.
 */
export function faceStateText(stated: FaceState | null, byLog: FaceState | null): string {
  const { readOn, byLog: fromLog, unlikeLog } = finishWords
  if (stated === null) return byLog === null ? '' : fromLog(readOn[byLog])
  const said = readOn[stated]
  return byLog === null || byLog === stated ? said : unlikeLog(said, byLog)
}
