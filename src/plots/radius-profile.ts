import type { PolarMap } from '../science/surface/polar-map.ts'
import type { Drawing } from './drawing.ts'
import { heightSteps } from './height-steps.ts'
import { profileFrame } from './profile-frame.ts'

export interface RadiusProfileOptions {
  /** Radii in mm, heights in um. */
  readonly map: PolarMap
  /** Rays to draw beside the mean around; each the nearest ray of the map. */
  readonly anglesDeg: readonly number[]
  readonly widthPx: number
  readonly heightPx: number
  readonly lowUm?: number | undefined
  readonly highUm?: number | undefined
  readonly heightText: (heightUm: number) => string
  readonly radiusText: (radiusMm: number) => string
  readonly texts: {
    readonly mean: string
    /** One a ray, in their order. */
    readonly rays: readonly string[]
    readonly across: string
    readonly unit: string
  }
}

/**
 * The profile of a land across, from the inner to the outer edge: the mean around as a heavy line,
 * and single rays, the first dashed, the others dotted.
 *
 * @param options up to four rays, with a text each
 * @returns the drawing
 * @throws RangeError for another count of texts or rays, and as profileFrame
 */
export function radiusProfile(options: RadiusProfileOptions): Drawing {
  const { map, anglesDeg, texts } = options
  if (!(anglesDeg.length <= 4 && anglesDeg.length === texts.rays.length)) {
    throw new RangeError(`radiusProfile requires up to 4 rays with texts, got ${anglesDeg.length}`)
  }
  const { radii, heights } = map
  const count = map.anglesDeg.length
  const across = (heightAt: (row: readonly number[]) => number) =>
    radii.map((at, i) => ({ at, heightUm: heightAt(heights[i] as readonly number[]) }))
  const ray = (deg: number) => ((Math.round((deg * count) / 360) % count) + count) % count
  const [from, to] = [radii[0] as number, radii.at(-1) as number]
  const steps = heightSteps({ lowUm: from, highUm: to }, { mostCount: 5 })
  return profileFrame({
    ...options,
    from,
    to,
    ticks: steps.levelsUm.map((at) => ({ at, text: options.radiusText(at) })),
    acrossText: texts.across,
    unitText: texts.unit,
    lines: [
      {
        points: across((row) => row.reduce((a, b) => a + b, 0) / row.length),
        strokePx: 2.2,
        dash: 'solid',
        text: texts.mean,
      },
      ...anglesDeg.map((deg, i) => ({
        points: across((row) => row[ray(deg)] as number),
        strokePx: 1.2,
        dash: i === 0 ? ('dashed' as const) : ('dotted' as const),
        text: texts.rays[i] as string,
      })),
    ],
  })
}
