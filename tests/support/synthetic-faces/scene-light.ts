import type { SceneRecipe } from './face-recipe.ts'

/** A value from 0 to 1 for a place of a grid: the grain of cloth and wood. */
function grain(i: number, j: number): number {
  const mixed = Math.imul(i * 374761393 + j * 668265263, 1274126177)
  return ((mixed ^ (mixed >>> 15)) >>> 0) / 4294967296
}

function benchLight(scene: SceneRecipe, x: number, y: number): number {
  const { bench, benchContrast, benchAngle } = scene
  const u = x * Math.cos(benchAngle) + y * Math.sin(benchAngle)
  const v = -x * Math.sin(benchAngle) + y * Math.cos(benchAngle)
  const texture = {
    plain: () => 0,
    wood: () => Math.sin(23 * u + 2.5 * Math.sin(1.7 * v) + grain(Math.floor(40 * u), 0)),
    cloth: () =>
      Math.sin(190 * u) * Math.sin(190 * v) + grain(Math.floor(60 * u), Math.floor(60 * v)) - 0.5,
    // A table's edge across the picture, and what lies beyond it.
    plate: () => (u > 0.9 ? 1 : -0.2),
  }[bench]()
  return scene.benchLight * Math.max(0.1, 1 + benchContrast * texture)
}

/** Light that comes from beside the land, relative to the mean light of the land. */
export function sceneLight(scene: SceneRecipe, radiusRatio: number, x: number, y: number): number {
  const r = Math.hypot(x, y)
  const { body, chamferWidth, chamferLight, flatRim, strayBands, benchAngle } = scene
  const isOutside = r > 1
  const off = isOutside ? r - 1 : radiusRatio - r
  if (off < chamferWidth) return chamferLight
  const stray =
    strayBands * Math.cos(9 * (x * Math.cos(benchAngle + 1) + y * Math.sin(benchAngle + 1)))
  if (body !== null && r < body.outer && r > body.inner) return body.light * (1 + stray)
  if (!isOutside) return scene.boreLight * (1 + stray)
  let light = benchLight(scene, x, y)
  if (flatRim !== null) {
    const from = Math.hypot(x - flatRim.x, y - flatRim.y) - flatRim.radius
    if (from < 0) light = 0.9 * light * (1 + stray)
    else if (from < flatRim.width) light = flatRim.light
  } else light *= 1 + stray
  return light
}
