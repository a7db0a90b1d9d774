import type { ComponentKind } from './seal.ts'
import type { Service } from './service.ts'

/**
 * What is known about a result, for limits to match: null where it is not known, and a limit that
 * asks for it then does not match.
 */
export type LimitCase = {
  readonly faceMaterial: string | null
  readonly componentKind: ComponentKind | null
  readonly service: Service | null
  /** Of the face for what belongs to a face, of the shaft for the rest. */
  readonly diameterMm: number | null
  readonly pressureKPa: number | null
  /** Of the shaft. */
  readonly speedPerMin: number | null
  /** What limits per millimetre are multiplied by. */
  readonly sizesMm: {
    readonly bore: number | null
    readonly shaft: number | null
    readonly face: number | null
  }
}
