import { createHash } from 'node:crypto'

/** SHA-256, hex: the name of a file is what is in it. */
export function fileHash(bytes: Buffer): string {
  return createHash('sha256').update(bytes).digest('hex')
}
