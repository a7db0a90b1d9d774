/** Heights over a ring on rings and rays: heights[i][j] at radii[i], anglesDeg[j]. */
export interface PolarMap {
  /** Rising, first the inner edge, last the outer edge. */
  readonly radii: readonly number[]
  /** Even steps once around, counter-clockwise as the picture shows it, 0 to the right. */
  readonly anglesDeg: readonly number[]
  readonly heights: readonly (readonly number[])[]
}
