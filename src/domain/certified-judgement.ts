import { throughputUnits } from '../science/units/throughput-units.ts'
import { umToUin } from '../science/units/um-to-uin.ts'
import type { CertifiedJudgement, CertifiedLimit } from './certified-results.ts'
import type { Characteristic } from './characteristic.ts'
import { optionalFigure } from './figure.ts'
import { leakLimitTemperatureC } from './judge-static-test.ts'
import type { Judged } from './judged.ts'
import type { Limit } from './limit-set.ts'
import { printedUnit } from './printed-unit.ts'
import { type OverallVerdict, worstVerdict } from './worst-verdict.ts'

/** How the results of a characteristic are printed; the limit beside them the same way. */
export const printedRounding = {
  flatness: { decimals: 3 },
  'static-drop': { decimals: 2 },
  'static-leak-rate': { digits: 3 },
  startAtLeastKPaGauge: { decimals: 1 },
  uin: { decimals: 1 },
  mlPerMin: { digits: 3 },
} as const

/** One judged result as the certificate states it. */
export function certifiedJudgement(judged: Judged): CertifiedJudgement {
  const { verdict, why, limit } = judged
  return { verdict, why, limit: limit === null ? null : certifiedLimit(limit) }
}

/**
 * One verdict over the drop and the leak rate of a test: one limit is enough where the set has no
 * other, but a limit that could not be applied to the test leaves it open.
 */
export function testVerdict(
  drop: Pick<CertifiedJudgement, 'verdict' | 'why'>,
  leak: Pick<CertifiedJudgement, 'verdict' | 'why'>,
): OverallVerdict {
  return worstVerdict(
    [drop, leak].filter((one) => one.why !== 'no-limit').map((one) => one.verdict),
  )
}

/** A limit in the units it is printed in. */
export function certifiedLimit(limit: Limit): CertifiedLimit {
  const { characteristic, upper, asWritten, basis, source } = limit
  const { storedPerPrinted, rounding } = printedUnit[characteristic]
  // A limit per millimetre stays as it is written: µm for each of them.
  const per = limit.perMmOf === null ? storedPerPrinted : 1
  const bound = (stored: number | null) =>
    optionalFigure(stored === null ? null : stored / per, rounding)
  return {
    upper: bound(upper),
    lower: bound(limit.lower),
    perMmOf: limit.perMmOf,
    upperUin: optionalFigure(uinOf(characteristic, upper), printedRounding.uin),
    upperMlPerMin: optionalFigure(mlPerMinOf(characteristic, upper), printedRounding.mlPerMin),
    asWritten,
    withinS: limit.withinS,
    volumeAtMostL: limit.volumeAtMostL,
    startAtLeastKPaGauge: optionalFigure(
      limit.startAtLeastKPaGauge,
      printedRounding.startAtLeastKPaGauge,
    ),
    basis,
    source,
    edition: limit.edition,
    clause: limit.clause,
  }
}

function uinOf(characteristic: Characteristic, upper: number | null): number | null {
  return characteristic === 'flatness' && upper !== null ? umToUin(upper) : null
}

function mlPerMinOf(characteristic: Characteristic, upper: number | null): number | null {
  if (characteristic !== 'static-leak-rate' || upper === null) return null
  return throughputUnits({ leakPaM3PerS: upper, referenceTemperatureC: leakLimitTemperatureC })
    .leakMlPerMin
}
