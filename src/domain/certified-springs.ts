import { certifiedHand } from './certified-hand.ts'
import type { CertifiedLine, CertifiedSpring } from './certified-strip.ts'
import { computeSpring, type SpringFigures } from './complete-spring-check.ts'
import { currentOnly } from './current-only.ts'
import type { Evidence } from './evidence.ts'
import { figure, optionalFigure } from './figure.ts'
import type { SpringCheck } from './spring-check.ts'
import { springOf } from './spring-of.ts'

/** The standing checks of springs of an order. */
export function certifiedSprings({ springChecks }: Evidence): readonly CertifiedSpring[] {
  return currentOnly(springChecks).map((check) => certifiedSpring(check, springChecks))
}

/** One of them, also while it is being entered. */
export function certifiedSpring(check: SpringCheck, all: readonly SpringCheck[]): CertifiedSpring {
  const { setMm, newLength, solidLength, statedRateNPerMm } = check
  const entered = 'as-entered'
  return {
    condition: check.condition,
    springsCount: check.springsCount,
    freeLengthMm: figure(check.freeLength.mm, entered),
    newLengthMm: optionalFigure(newLength?.mm ?? null, entered),
    setMm: optionalFigure(setMm, { decimals: 2 }),
    rateNPerMm: optionalFigure(check.rateNPerMm, { digits: 3 }),
    isRateStated: statedRateNPerMm !== null,
    workingLengthMm: figure(check.workingLength.mm, entered),
    solidLengthMm: optionalFigure(solidLength?.mm ?? null, entered),
    loadN: optionalFigure(check.workingLoadN, { decimals: 1 }),
    expandedUncertaintyN: optionalFigure(check.expandedUncertaintyN, { decimals: 1 }),
    coverageFactor: check.coverageFactor,
    facePressureMPa: optionalFigure(check.facePressureMPa, { decimals: 3 }),
    remainingTravelMm: optionalFigure(check.remainingTravelMm, { decimals: 2 }),
    loadPerMmN: optionalFigure(check.loadPerMmN, { decimals: 1 }),
    line: lineOf(check),
    cautions: computeSpring(check, { components: [], lengthStandardUncertaintyUm: null }).cautions,
    instrumentNumber: check.instrument?.number ?? null,
    ...certifiedHand(check, all),
  }
}

/** Of all springs together; null where nothing says how stiff they are. */
export function lineOf(check: SpringFigures): CertifiedLine | null {
  const spring = springOf(check)
  if (spring === null) return null
  const { springsCount, loads } = check
  return {
    freeLengthMm: spring.freeLengthMm,
    loadPerMmN: springsCount * spring.rateNPerMm,
    points: loads.map(({ length, load }) => ({
      lengthMm: length.mm,
      loadN: springsCount * load.n,
    })),
  }
}
