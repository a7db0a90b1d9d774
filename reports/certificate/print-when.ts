import { certificateWords } from '../../views/words/en/certificate.ts'

const { results: words } = certificateWords

/** A day as ISO 8601 writes it, from a day or an instant; days are those of UTC. */
export function printDay(at: string): string {
  return at.length === 10 ? at : new Date(at).toISOString().slice(0, 10)
}

/** @example printMoment('2026-11-25T09:05:00.000Z') // 2026-11-25 09:05 UTC */
export function printMoment(at: string): string {
  return `${new Date(at).toISOString().slice(0, 16).replace('T', ' ')} UTC`
}

/** A time in minutes and seconds. */
export function printDuration(durationS: number): string {
  const min = Math.floor(durationS / 60)
  const s = durationS - 60 * min
  if (min === 0) return words.seconds(s)
  return s === 0 ? words.minutes(min) : words.minutesSeconds(min, s)
}
