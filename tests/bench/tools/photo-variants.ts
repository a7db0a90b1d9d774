import sharp from 'sharp'
import type { PhotoCase } from './photo-case.ts'

type Place = readonly [number, number]
type Clicks = { readonly outer: readonly Place[]; readonly inner: readonly Place[] }

/** The same face seen otherwise: its figures must not mind. */
export interface PhotoVariant {
  readonly of: 'turned' | 'mirrored' | 'clicked again' | 'camera rolled'
  readonly jpeg: Uint8Array
  readonly clicks: Clicks
}

/** Clicks are good to so much of the outer radius. */
const clickShare = 0.006
const quality = 97

/** A small generator of its own, so that every run clicks alike. */
function chance(seed: number): () => number {
  let state = seed >>> 0
  return () => {
    state = (Math.imul(state, 1_664_525) + 1_013_904_223) >>> 0
    return state / 2 ** 32
  }
}

function moved({ outer, inner }: Clicks, to: (place: Place) => Place): Clicks {
  return { outer: outer.map(to), inner: inner.map(to) }
}

function clickedAgain(clicks: Clicks, seed: number): Clicks {
  const next = chance(seed)
  const xs = clicks.outer.map(([x]) => x)
  const radius = (Math.max(...xs) - Math.min(...xs)) / 2
  return moved(clicks, ([x, y]) => {
    const angle = 2 * Math.PI * next()
    const off = clickShare * radius * Math.sqrt(next())
    return [x + off * Math.cos(angle), y + off * Math.sin(angle)]
  })
}

/** A quarter turn, a mirror image, and two more sets of clicks within 0.6 % of the radius. */
export async function photoVariants(one: PhotoCase, seed: number): Promise<PhotoVariant[]> {
  const jpeg = await one.jpeg()
  const upright = await sharp(jpeg).autoOrient().toBuffer({ resolveWithObject: true })
  const { width, height } = upright.info
  const { clicks } = one
  return [
    {
      of: 'turned',
      jpeg: await sharp(upright.data).rotate(90).jpeg({ quality }).toBuffer(),
      clicks: moved(clicks, ([x, y]) => [height - 1 - y, x]),
    },
    {
      of: 'mirrored',
      jpeg: await sharp(upright.data).flop().jpeg({ quality }).toBuffer(),
      clicks: moved(clicks, ([x, y]) => [width - 1 - x, y]),
    },
    ...[1, 2].map((time) => ({
      of: 'clicked again' as const,
      jpeg,
      clicks: clickedAgain(clicks, 97 * seed + time),
    })),
  ]
}
