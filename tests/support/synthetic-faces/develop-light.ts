import { seededUniform } from '../../science/seeded-random.ts'
import { blurPlane, smearPlane } from './blur-light.ts'
import type { FaceRecipe } from './face-recipe.ts'

/** Light as a camera's curve turns it into a byte. */
function toned(light: number, gamma: number, shoulder: number): number {
  const v = Math.min(1, Math.max(0, light))
  const coded = v <= 0.0031308 ? 12.92 * v : 1.055 * v ** (1 / 2.4) - 0.055
  const bent = coded ** gamma
  const share = bent + shoulder * bent * (1 - bent) * (2 * bent - 1)
  return Math.round(255 * Math.min(1, Math.max(0, share)))
}

/** Light divided by a power of what lies around, as phones do to open shadows. */
function locallyToned(
  plane: Float32Array,
  size: { readonly width: number; readonly height: number },
  strength: number,
): Float32Array {
  if (strength === 0) return plane
  const around = blurPlane({ values: plane, ...size }, size.width / 12)
  const mean = plane.reduce((a, b) => a + b, 0) / plane.length
  return plane.map((value, i) => value * ((around[i] as number) / mean + 0.05) ** -strength)
}

const whiteLamp = [1, 0.97, 0.92] as const

/** Turns light into bytes: focus, motion, what a phone does to it, noise, the camera's curve. */
export function developLight(light: readonly Float32Array[], recipe: FaceRecipe): Uint8Array {
  const { film, seed, white } = recipe
  const { width, height } = recipe.camera
  const size = { width, height }
  const planes = light.map((values) => {
    const soft = blurPlane({ values, ...size }, film.blurPx)
    const moved = smearPlane({ values: soft, ...size }, film.motionPx, film.motionAngle)
    return locallyToned(moved, size, film.localTone)
  })
  const uniform = seededUniform(seed + 0x9e3779b9)
  const rgb = white === null ? film.rgb : whiteLamp
  const bytes = new Uint8Array(3 * width * height)
  for (let i = 0; i < width * height; i++) {
    for (let c = 0; c < 3; c++) {
      const plane = planes[c] ?? (planes[0] as Float32Array)
      const value = (rgb[c] as number) * (plane[i] as number)
      const sd = Math.sqrt(film.shotNoise ** 2 * Math.max(0, value) + film.readNoise ** 2)
      // The sum of three even numbers is normal enough for a pixel, and quick.
      const noise = 2 * (uniform() + uniform() + uniform() - 1.5)
      bytes[3 * i + c] = toned(value + sd * noise, film.gamma, film.shoulder)
    }
  }
  return bytes
}
