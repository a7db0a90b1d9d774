/** One part of the form of a land; heights in bands, + is material high, outer radius 1. */
export type FormPart =
  | { readonly kind: 'sphere' | 'cone' | 'crown'; readonly height: number }
  | { readonly kind: 'cylinder'; readonly height: number; readonly angle: number }
  | {
      readonly kind: 'lobes'
      readonly height: number
      readonly count: number
      readonly angle: number
    }
  | {
      readonly kind: 'fall'
      readonly height: number
      readonly at: 'outer' | 'inner'
      readonly width: number
    }
  | {
      readonly kind: 'bump'
      readonly height: number
      readonly x: number
      readonly y: number
      readonly size: number
    }

/** A distant pinhole looking at the middle of the face. Angles in radians, lengths in radii. */
export interface CameraRecipe {
  readonly width: number
  readonly height: number
  readonly viewAngle: number
  readonly towards: number
  readonly roll: number
  readonly distance: number
  readonly radiusPx: number
  readonly middleX: number
  readonly middleY: number
  /** Radial distortion: share of a radius at one radius from the middle of the picture. */
  readonly distortion: number
}

/** Gaussian spots: glare, smears and dust. Size and place in radii, strength relative. */
export interface Spot {
  readonly x: number
  readonly y: number
  readonly size: number
  readonly strength: number
}

export interface Scratch {
  readonly x: number
  readonly y: number
  readonly angle: number
  readonly length: number
  readonly width: number
  readonly strength: number
}

/** What lies around the land: light relative to the mean light of the land. */
export interface SceneRecipe {
  readonly bench: 'plain' | 'wood' | 'cloth' | 'plate'
  readonly benchLight: number
  readonly benchContrast: number
  readonly benchAngle: number
  readonly boreLight: number
  /** Bands that the optical flat shows against whatever lies below it. */
  readonly strayBands: number
  readonly chamferWidth: number
  readonly chamferLight: number
  /** The ring below its raised land, or no such step. */
  readonly body: { readonly outer: number; readonly inner: number; readonly light: number } | null
  readonly flatRim: {
    readonly radius: number
    readonly x: number
    readonly y: number
    readonly width: number
    readonly light: number
  } | null
}

/** How light becomes bytes. */
export interface FilmRecipe {
  readonly exposure: number
  readonly gradient: readonly [number, number]
  readonly bowl: number
  readonly contrast: number
  readonly contrastGradient: readonly [number, number]
  readonly veil: number
  readonly blurPx: number
  readonly motionPx: number
  readonly motionAngle: number
  readonly shotNoise: number
  readonly readNoise: number
  readonly gamma: number
  readonly shoulder: number
  readonly rgb: readonly [number, number, number]
  readonly flicker: number
  readonly localTone: number
  readonly quality: number
  readonly orientation: 1 | 3 | 6 | 8
}

export const refusalKinds = [
  'no-bands',
  'under-1.5-bands',
  'aliased',
  'overexposed',
  'out-of-focus',
  'half-covered',
  'height-step',
  'oblique',
  'second-fringes',
  'wrong-circles',
  'white-lamp',
  'motion',
  'cut-by-frame',
  'low-contrast',
] as const

export type RefusalKind = (typeof refusalKinds)[number]
export type Category = 'core' | 'hard' | 'maybe' | 'refuse'

/** All that a picture is computed from. */
export interface FaceRecipe {
  readonly seed: number
  readonly category: Category
  readonly refusal: RefusalKind | null
  readonly form: string
  readonly level: 'mild' | 'medium' | 'harsh'
  readonly radiusRatio: number
  readonly parts: readonly FormPart[]
  /** Bands per outer radius, and gap at the middle in bands, at normal view. */
  readonly tilt: readonly [number, number]
  readonly gap: number
  readonly step: { readonly angle: number; readonly offset: number; readonly height: number } | null
  readonly covered: { readonly angle: number; readonly half: number } | null
  readonly ghost: { readonly strength: number; readonly x: number; readonly y: number } | null
  readonly phone: {
    readonly x: number
    readonly y: number
    readonly angle: number
    readonly strength: number
  } | null
  /** Orders of red, green and blue for one order of the lamp, and bands until they fade. */
  readonly white: {
    readonly orders: readonly [number, number, number]
    readonly fade: number
  } | null
  readonly camera: CameraRecipe
  readonly scene: SceneRecipe
  readonly film: FilmRecipe
  readonly glare: readonly Spot[]
  readonly smears: readonly Spot[]
  readonly dust: readonly Spot[]
  readonly chips: readonly Spot[]
  readonly scratches: readonly Scratch[]
}
