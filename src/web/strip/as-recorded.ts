/** What the store adds: stands in while a record is only being entered. */
export const notRecorded = {
  id: 0,
  recordedById: 0,
  recordedByName: '',
  recordedAt: '',
  replacedById: null,
} as const

/** A number as text; '' where there is none. */
export function numberValue(value: number | null | undefined): string {
  return value === null || value === undefined ? '' : String(value)
}
