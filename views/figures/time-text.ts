/**
 * An instant of the record as pages show it: day and minute, the zone named.
 * @param at RFC 3339 in UTC, as stored
 * @example minuteText('2026-11-25T13:45:12.000Z') // 2026-11-25 13:45 UTC
 */
export function minuteText(at: string): string {
  return `${at.slice(0, 10)} ${at.slice(11, 16)} UTC`
}

/**
 * The day of an instant, in UTC.
 * @param at RFC 3339 in UTC, as stored
 * @example dayText('2026-11-25T13:45:12.000Z') // 2026-11-25
 */
export function dayText(at: string): string {
  return at.slice(0, 10)
}
