/** A picture with what is true of it: the public suite and our own faces alike. */
export interface PhotoCase {
  readonly id: string
  readonly category: 'core' | 'hard' | 'maybe' | 'refuse'
  readonly expect: 'answer' | 'refuse' | 'either'
  readonly why: string
  readonly pvLS: number
  readonly pvMZ: number
  readonly outerRing: readonly (readonly [number, number])[]
  readonly innerRing: readonly (readonly [number, number])[]
  readonly clicks: {
    readonly outer: readonly (readonly [number, number])[]
    readonly inner: readonly (readonly [number, number])[]
  }
  readonly jpeg: () => Promise<Uint8Array>
}
