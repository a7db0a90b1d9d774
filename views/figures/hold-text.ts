import { words } from '../words/en.ts'

/** A hold in words, never shorter than it is: seconds up to two minutes, then minutes, then hours. */
export function holdText(seconds: number): string {
  const w = words.staticTests.plan
  if (seconds <= 120) return w.seconds(String(Math.ceil(seconds)))
  if (seconds <= 2 * 3600) return w.minutes(String(Math.ceil(seconds / 60)))
  return w.hours(String(Math.ceil(seconds / 3600)))
}
