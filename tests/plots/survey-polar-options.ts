import type { SurveyPolarOptions } from '../../src/plots/survey-polar-options.ts'

const eight = [0, 45, 90, 135, 180, 225, 270, 315]

/** Readings of a true circle that lies off its axis. */
export function offCircle(of: {
  readonly meanUm: number
  readonly eccentricityUm: number
  readonly directionDeg: number
}) {
  const { meanUm, eccentricityUm, directionDeg } = of
  return eight.map((angleDeg) => ({
    angleDeg,
    valueUm: meanUm + eccentricityUm * Math.cos(((angleDeg - directionDeg) * Math.PI) / 180),
  }))
}

const wave = { meanUm: 5, eccentricityUm: 20, directionDeg: 90 }

/** A shaft 20 um off its axis towards 90 degrees, read in one turn. */
export const polarOptions: SurveyPolarOptions = {
  sizePx: 320,
  isClockwise: true,
  turns: [offCircle(wave)],
  closing: [],
  points: offCircle(wave),
  fit: wave,
  minimumZone: null,
  limitUm: null,
  sweptDiameterMm: 50,
  texts: {
    angle: (deg) => `${deg} degrees`,
    mark: 'mark',
    scale: (um) => `bar ${um}`,
    timesLarger: (times) => `times ${Math.round(times)}`,
    turn: (index) => `turn ${index + 1}`,
    closing: 'closing',
    joined: 'joined',
    fitted: 'fitted',
    highest: 'highest',
    limit: 'limit',
    minimumZone: 'zone',
  },
}
