/**
 * A duration as a clock shows it: minutes, and the seconds over.
 * @param durationS seconds, 0 or more
 * @example durationText(630.5) // 10 min 30.5 s
 */
export function durationText(durationS: number): string {
  const minutes = Math.floor(durationS / 60)
  const seconds = Number((durationS - minutes * 60).toFixed(1))
  if (minutes === 0) return `${seconds} s`
  return seconds === 0 ? `${minutes} min` : `${minutes} min ${seconds} s`
}
