/** What a seal runs on, as limits tell services apart; stated at receipt. */
export const services = [
  'general-liquid',
  'light-hydrocarbon',
  'slurry',
  'dry-gas',
  'drive-train',
  'not-stated',
] as const
export type Service = (typeof services)[number]
