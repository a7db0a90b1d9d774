import type { ReleaseFault } from '../../domain/release-faults.ts'

/** The rules forbid this release; the page says which ones. */
export class ReleaseRefused extends Error {
  readonly faults: readonly ReleaseFault[]

  constructor(faults: readonly ReleaseFault[]) {
    super(`release refused: ${faults.map((one) => one.id).join(', ')}`)
    this.faults = faults
  }
}
