import type { CertifiedWholeFace } from './certified-results.ts'
import { figure, optionalFigure } from './figure.ts'
import { taperSizeUm } from './taper-size-um.ts'
import type { WholeFace } from './whole-face.ts'

const heights = { decimals: 3 } as const
const bands = { decimals: 2 } as const

/** As it is printed, on pages and in documents: the surface as it is stored, its figures rounded. */
export function certifiedWholeFace(wholeFace: WholeFace): CertifiedWholeFace {
  const { source, surface, outerDiameterMm, innerDiameterMm, isSignKnown, cautions } = wholeFace
  const { quality } = wholeFace
  return {
    kind: source.kind,
    surface,
    outerDiameterMm,
    innerDiameterMm,
    isSignKnown,
    minimumZoneUm: optionalFigure(wholeFace.minimumZoneUm, heights),
    rmsUm: optionalFigure(wholeFace.rmsUm, heights),
    taperUm: optionalFigure(wholeFace.taperUm, heights),
    ...sizeOfTaper(wholeFace),
    lobes: wholeFace.lobes.map(({ order, amplitudeUm, phaseDeg }) => ({
      order,
      amplitudeUm: figure(amplitudeUm, heights),
      phaseDeg: figure(phaseDeg, { decimals: 0 }),
    })),
    ...(quality === null ? {} : { seenPercent: figure(100 * quality, { decimals: 0 }) }),
    ...(source.kind === 'line-grid'
      ? {
          lineGridBands: {
            oneWay: figure(source.oneWayBands, bands),
            otherWay: figure(source.otherWayBands, bands),
          },
        }
      : {}),
    cautions,
    hasPhotograph: source.kind !== 'combined',
  }
}

function sizeOfTaper(wholeFace: WholeFace): Pick<CertifiedWholeFace, 'taperSizeUm'> {
  if (wholeFace.isSignKnown) return {}
  const sizeUm = taperSizeUm(wholeFace)
  return sizeUm === null ? {} : { taperSizeUm: figure(sizeUm, heights) }
}
