import { type LightChannel, lightAt } from '../light-at.ts'

/**
 * Gives how much brightness swings along a closed curve: a wave once around, as uneven light makes
 * it, is taken away first.
 *
 * @param channel linear light
 * @param places along the curve, in even steps, 8 or more; those off the picture are left out
 * @returns what separates the brightest quarter from the darkest, in square roots of light; null
 *   when more than a tenth of the curve lies off the picture
 * Source: own measure.
 * @example bandSwing({ light: new Float32Array(9), width: 3, height: 3 },
 *   Array.from({ length: 8 }, () => [1, 1])) // 0
 */
export function bandSwing(
  channel: LightChannel,
  places: readonly (readonly [number, number])[],
): number | null {
  const count = places.length
  const { width, height } = channel
  const inside = places.filter(
    ([x, y]) => x >= 0 && y >= 0 && x <= width - 1 && y <= height - 1,
  ).length
  if (inside < 0.9 * count) return null
  const values = places.map(([x, y]) => Math.sqrt(Math.max(0, lightAt(channel, x, y))))
  let [mean, cosine, sine] = [0, 0, 0]
  values.forEach((value, i) => {
    const angle = (2 * Math.PI * i) / count
    mean += value / count
    cosine += (2 * value * Math.cos(angle)) / count
    sine += (2 * value * Math.sin(angle)) / count
  })
  const left = values
    .map((value, i) => {
      const angle = (2 * Math.PI * i) / count
      return value - mean - cosine * Math.cos(angle) - sine * Math.sin(angle)
    })
    .sort((a, b) => a - b)
  const at = (share: number) => left[Math.floor(share * count)] as number
  return at(0.8) - at(0.2)
}
