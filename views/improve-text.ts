import type { Judged } from '../src/domain/judged.ts'
import { sourceWord } from './words/en/uncertainty-sources.ts'
import { words } from './words/en.ts'

/** What would have to improve before anything can be decided; null where nothing is named. */
export function improveText({ why, largestSource }: Judged): string | null {
  if (largestSource === null) return null
  const { missing, improve } = words.inspection
  return (why === 'incomplete-budget' ? missing : improve)(sourceWord(largestSource))
}
