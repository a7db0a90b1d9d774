import { cameraOf } from './camera.ts'
import type { FaceRecipe } from './face-recipe.ts'
import { landLight } from './land-light.ts'
import { sceneLight } from './scene-light.ts'

/** Places taken across a pixel near an edge or on the land, along each side. */
const side = 2

/** The share of the lamp that falls on a place, and what shines over it. */
function lampOn(recipe: FaceRecipe, x: number, y: number, row: number) {
  const { film, glare } = recipe
  const even = 1 + film.gradient[0] * x + film.gradient[1] * y + film.bowl * (x * x + y * y)
  const lit = Math.max(0.15, even) * (1 + film.flicker * Math.sin(2 * Math.PI * 7.3 * row))
  let shine = film.veil
  for (const spot of glare) {
    const square = ((x - spot.x) ** 2 + (y - spot.y) ** 2) / spot.size ** 2
    if (square < 20) shine += spot.strength * Math.exp(-square)
  }
  return { lit, shine }
}

/**
 * Linear light that falls on the sensor, rows from the top: one plane for a lamp of one colour, red,
 * green and blue for a white one. The mean light of a land at full exposure is 0.4.
 */
export function paintLight(recipe: FaceRecipe): Float32Array<ArrayBuffer>[] {
  const { camera: view, radiusRatio, scene, film, white } = recipe
  const camera = cameraOf(view)
  const { width, height } = view
  const planes = Array.from(
    { length: white === null ? 1 : 3 },
    () => new Float32Array(width * height),
  )
  const margin = 1.5 / view.radiusPx + scene.chamferWidth
  for (let py = 0; py < height; py++) {
    for (let px = 0; px < width; px++) {
      const [mx, my] = camera.toFace(px, py)
      const middle = Math.hypot(mx, my)
      const count = middle < 1 + margin && middle > radiusRatio - margin ? side : 1
      const sums: [number, number, number] = [0, 0, 0]
      for (let k = 0; k < count * count; k++) {
        const sx = px + ((k % count) + 0.5) / count - 0.5
        const sy = py + (Math.floor(k / count) + 0.5) / count - 0.5
        const [x, y] = count === 1 ? [mx, my] : camera.toFace(sx, sy)
        const r = Math.hypot(x, y)
        if (r <= 1 && r >= radiusRatio) {
          const land = landLight(recipe, x, y, camera.cosine(x, y))
          for (let c = 0; c < planes.length; c++) sums[c] = (sums[c] ?? 0) + (land[c] ?? 0)
        } else {
          const beside = sceneLight(scene, radiusRatio, x, y)
          for (let c = 0; c < planes.length; c++) sums[c] = (sums[c] ?? 0) + beside
        }
      }
      const { lit, shine } = lampOn(recipe, mx, my, py / height)
      planes.forEach((plane, c) => {
        const mean = (sums[c] ?? 0) / (count * count)
        plane[py * width + px] = 0.4 * film.exposure * (lit * mean + shine)
      })
    }
  }
  return planes
}
