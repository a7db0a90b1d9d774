/**
 * What a fit of bands works on. phi: terms of the surface at each sample, a constant first, one row
 * a sample; quadratic: six terms of a quadratic, one row a sample.
 */
export interface BandTables {
  readonly count: number
  readonly termCount: number
  readonly phi: Float64Array
  readonly quadratic: Float64Array
  readonly relative: Float64Array
}

/**
 * relative = A + B (cos 2 pi W + k cos 4 pi W), W = phi . gap, A = phi . background,
 * B = quadratic . swing. gap in bands; its first coefficient is the order at the middle.
 */
export interface BandModel {
  readonly gap: Float64Array
  readonly background: Float64Array
  readonly swing: Float64Array
  readonly second: number
}
