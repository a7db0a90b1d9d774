import { createHash } from 'node:crypto'

/** Tokens are long and random, so a plain SHA-256 keeps them: the store holds no secret itself. */
export function secretHash(secret: string): string {
  return createHash('sha256').update(secret).digest('hex')
}
