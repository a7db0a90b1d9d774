/** How a test volume was found: a known volume was filled, then opened to it. */
export type VolumeExpansion = {
  readonly knownVolumeL: number
  /** Of the known volume before it was opened. */
  readonly filledKPaAbs: number
  /** Of the test volume before. */
  readonly beforeKPaAbs: number
  /** Of both, come to rest. */
  readonly joinedKPaAbs: number
  /** As typed, in the unit of the gauge; absent where a program sent absolute pressures. */
  readonly typed?: {
    readonly knownVolumeL: string
    readonly filled: string
    readonly before: string
    readonly joined: string
  }
}
