import type { WholeFace } from '../../src/domain/whole-face.ts'
import { wholeFaceWords } from '../words/en/whole-face.ts'

/** What the side on which the gap opens rests on; null where it is not known, or nobody asks. */
export function howSignText({ source, isSignKnown }: WholeFace): string | null {
  const { sign } = wholeFaceWords
  if (!isSignKnown || source.kind === 'combined' || source.kind === 'line-grid') return null
  if (source.kind === 'marked') return sign.orders
  return source.pressed === null ? sign.seen : sign.pressed
}
