/**
 * Lines of a budget that come from the picture or the hand that read it; all others come from what
 * stood under the lamp.
 */
export const pictureSources: readonly string[] = [
  'photo-statistical',
  'photo-form',
  'photo-edge',
  'photo-perspective',
  'photo-view',
  'photo-floor',
  'marks',
]

/**
 * Those among them that a second photograph draws anew. What the fit can't follow, the land that is
 * not seen at the edges, and what is left in a perfect picture belong to face and method: they are
 * as large in every photograph and may be the same error each time.
 */
export const renewedSources: readonly string[] = [
  'photo-statistical',
  'photo-perspective',
  'photo-view',
  'marks',
]
