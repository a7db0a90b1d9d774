import sharp from 'sharp'
import { describe, expect, it } from 'vitest'
import { cameraOf } from './synthetic-faces/camera.ts'
import { chooseRecipe } from './synthetic-faces/choose-recipe.ts'
import { refusalKinds } from './synthetic-faces/face-recipe.ts'
import { formTruth } from './synthetic-faces/face-truth.ts'
import { formHeight } from './synthetic-faces/form-height.ts'
import { gapBands, landLight } from './synthetic-faces/land-light.ts'
import { syntheticFace } from './synthetic-faces/synthetic-face.ts'

const truthOf = (parts: Parameters<typeof formHeight>[0], radiusRatio: number) =>
  formTruth(radiusRatio, (x, y) => formHeight(parts, radiusRatio, x, y))

describe('the truth of a synthetic face', () => {
  it('is that of the closed form for a sphere', () => {
    // h = 1 - r^2 on a ring: PV (1 - e^2), area-weighted rms (1 - e^2) / sqrt 12, no plane.
    const truth = truthOf([{ kind: 'sphere', height: 2 }], 0.7)
    const span = 2 * (1 - 0.49)
    expect(truth.pvLS).toBeCloseTo(span, 9)
    expect(truth.pvMZ).toBeCloseTo(span, 6)
    // 41 circles: the trapezoids err by some 1e-3 of the span.
    expect(Math.abs(truth.rmsLS - span / Math.sqrt(12))).toBeLessThan(2e-3 * span)
    expect(truth.lobes['2']?.amp).toBeLessThan(1e-9)
  })

  it('is that of the closed forms for a cone, a saddle and three lobes', () => {
    const cone = truthOf([{ kind: 'cone', height: 3 }], 0.8)
    expect(cone.pvLS).toBeCloseTo(0.6, 9)
    expect(cone.coningIDminusOD).toBeCloseTo(0.6, 9) // inner edge high: convex
    const saddle = truthOf([{ kind: 'lobes', count: 2, height: 0.5, angle: 0.3 }], 0.6)
    // The crest lies between two of 360 rays: cos of half a degree of two waves.
    expect(Math.abs(saddle.pvLS - 1)).toBeLessThan(2e-4)
    const three = truthOf([{ kind: 'lobes', count: 3, height: 0.5, angle: 0.3 }], 0.6)
    // Area mean of r^3 over the ring: (2 / 5) (1 - e^5) / (1 - e^2).
    const mean = (0.4 * (1 - 0.6 ** 5)) / (1 - 0.36)
    expect(Math.abs((three.lobes['3']?.amp ?? 0) - 0.5 * mean)).toBeLessThan(1e-3)
    expect(Math.abs((three.lobes['3']?.phaseDeg ?? 0) - (0.3 * 180) / Math.PI)).toBeLessThan(1e-6)
  })
})

describe('the picture of a synthetic face', () => {
  it('has dark bands one wedge step apart, and bright ones between', () => {
    const recipe = { ...chooseRecipe(3, 'core'), parts: [], tilt: [6, 0] as const, gap: 8 }
    const film = { ...recipe.film, contrastGradient: [0, 0] as const }
    const bare = { ...recipe, film, dust: [], scratches: [], smears: [], chips: [], phone: null }
    // gap 8 + 6 x is whole at x = -0.5 and at every sixth of a radius from there.
    const lightAt = (x: number) => landLight({ ...bare, ghost: null }, x, 0.6, 1)[0]
    const dark = lightAt(-0.5)
    expect(lightAt(-0.5 + 1 / 6)).toBeCloseTo(dark, 9)
    expect(lightAt(-0.5 + 1 / 12)).toBeGreaterThan(dark + 0.3)
    expect(dark).toBeLessThan(1)
    // Seen obliquely the same gap holds fewer bands: cos q.
    expect(gapBands(bare, 0.2, 0.3, 0.9)).toBeCloseTo(0.9 * gapBands(bare, 0.2, 0.3, 1), 12)
  })

  it('shows a place where its camera puts it, and back', () => {
    for (const seed of [1, 2, 3, 4, 5]) {
      const camera = cameraOf(chooseRecipe(seed, 'hard').camera)
      const [x, y] = camera.toFace(...camera.toPixel(0.4, -0.8))
      // The lens is turned back in four rounds.
      expect(Math.hypot(x - 0.4, y + 0.8)).toBeLessThan(1e-8)
    }
  })

  it('has the forms, bands and views of its recipe', () => {
    for (let seed = 0; seed < 40; seed++) {
      const recipe = chooseRecipe(seed, 'core')
      const bands = 2 * Math.hypot(...recipe.tilt)
      const { pvLS } = truthOf(recipe.parts, recipe.radiusRatio)
      expect(bands).toBeGreaterThanOrEqual(5)
      expect(bands).toBeLessThanOrEqual(15)
      expect(pvLS).toBeGreaterThan(0.099)
      expect(pvLS).toBeLessThanOrEqual(Math.min(3, bands / 2) + 1e-9)
      expect(recipe.camera.distance).toBeGreaterThanOrEqual(16)
    }
    const kinds = Array.from({ length: 14 }, (_, i) => chooseRecipe(i, 'refuse').refusal)
    expect(kinds.toSorted()).toEqual(refusalKinds.toSorted())
  })

  it('is the same, byte by byte, for the same seed, and another for another', async () => {
    const first = await syntheticFace(7, 'hard', 400)
    const again = await syntheticFace(7, 'hard', 400)
    expect(again.jpeg.equals(first.jpeg)).toBe(true)
    expect(again.record).toEqual(first.record)
    expect((await syntheticFace(8, 'hard', 400)).jpeg.equals(first.jpeg)).toBe(false)
  })

  it('stands upright once it is turned as its EXIF says', async () => {
    const seed = [...Array(60).keys()].find((one) => {
      return chooseRecipe(one, 'core').film.orientation === 6
    }) as number
    const { jpeg, recipe, record } = await syntheticFace(seed, 'core', 400)
    const { autoOrient, width } = await sharp(jpeg).metadata()
    expect(width).toBe(recipe.camera.height)
    expect(autoOrient.width).toBe(recipe.camera.width)
    const xs = record.outerRing.map(([x]) => x)
    expect(Math.min(...xs)).toBeGreaterThan(0)
    expect(Math.max(...xs)).toBeLessThan(autoOrient.width)
  })
})
