import type { AnnularSurface } from '../science/surface/annular-surface.ts'
import { mapRms } from '../science/surface/map-rms.ts'
import { peakAndValley } from '../science/surface/peak-and-valley.ts'
import type { PolarMap } from '../science/surface/polar-map.ts'
import { surfaceMap } from '../science/surface/surface-map.ts'
import { withoutPlane } from '../science/surface/without-plane.ts'

const size = { ringCount: 17, angleCount: 180 } as const

/** How much of a surface marks its position: what differs around, and not only across. */
export type AroundOfSurface = {
  /** Peak to valley of the whole surface, and of it less the mean of each circle. */
  readonly peakToValley: number
  readonly aroundPeakToValley: number
  /** Share of the mean square that lies around, from 0 to 1; 0 for a plane. */
  readonly share: number
}

/** What turning a surface about its middle changes, and what not: a dish looks the same. */
export function aroundOfSurface(surface: AnnularSurface): AroundOfSurface {
  const { map } = withoutPlane(surfaceMap(surface, size))
  const around: PolarMap = {
    ...map,
    heights: map.heights.map((row) => {
      const mean = row.reduce((a, b) => a + b, 0) / row.length
      return row.map((height) => height - mean)
    }),
  }
  const [all, part] = [mapRms(map), mapRms(around)]
  return {
    peakToValley: peakAndValley(map).peakToValley,
    aroundPeakToValley: peakAndValley(around).peakToValley,
    share: all === 0 ? 0 : (part / all) ** 2,
  }
}
