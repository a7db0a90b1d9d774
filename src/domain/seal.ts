/** The five components of a face seal. */
export const componentKinds = [
  'rotating-face',
  'rotating-secondary',
  'spring',
  'stationary-seat',
  'stationary-secondary',
] as const
export type ComponentKind = (typeof componentKinds)[number]

/** The two components that carry a lapped face. */
export const faceKinds = ['rotating-face', 'stationary-seat'] as const
export type FaceKind = (typeof faceKinds)[number]

export const faceMaterials = [
  'carbon-graphite',
  'silicon-carbide-sintered',
  'silicon-carbide-reaction-bonded',
  'tungsten-carbide',
  'alumina',
  'cobalt-chromium-hardfacing',
  'nickel-iron',
  'other',
] as const
export type FaceMaterial = (typeof faceMaterials)[number]

export const arrangements = ['single', 'dual', 'cartridge-single', 'cartridge-dual'] as const
export type Arrangement = (typeof arrangements)[number]

/** Dimensions are null where nobody has measured or stated them: empty is not zero. */
export type Component = {
  readonly id: number
  readonly sealId: number
  readonly kind: ComponentKind
  /** A face material for faces; free text (compound, wire) for the rest. */
  readonly material: string
  readonly outerDiameterMm: number | null
  readonly innerDiameterMm: number | null
  readonly noseHeightMm: number | null
  readonly minimumNoseHeightMm: number | null
}

export type Seal = {
  readonly id: number
  readonly customerId: number
  readonly equipmentId: number | null
  readonly serial: string
  readonly drawing: string
  readonly drawingRevision: string
  readonly arrangement: Arrangement
  readonly shaftDiameterMm: number
  readonly size: string
  readonly components: readonly Component[]
}

export type NewComponent = Omit<Component, 'id' | 'sealId'>
export type NewSeal = Omit<Seal, 'id' | 'components'> & {
  readonly components: readonly NewComponent[]
}
