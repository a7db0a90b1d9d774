import type { LimitEntry } from '../src/domain/limit-entry.ts'

/** What one field of a limit needs: its name in the list, what was typed, its fault. */
export type LimitFieldAt = (name: keyof LimitEntry) => {
  readonly name: string
  readonly value: string
  readonly error?: string
}
