import { houseRule } from './agreed-rule.ts'
import { type CertificateRecord, certificateFormat } from './certificate.ts'
import type { CertifiedResult } from './certified-decision.ts'
import type { CertifiedMeasuredValue } from './certified-measured-value.ts'
import { measuredCharacteristics } from './characteristic.ts'

/**
 * A stored record in the form of today. Version 1 knew simple acceptance alone, kept no budgets,
 * and no concessions, exceptions or doubts: it is shown as what it was. Early records of version 2
 * don't say which share of a limit an uncertainty could take up, and of values read with an
 * instrument keep those that count, and know no lapping log. What was stored stays.
 */
export function liftCertificateRecord(stored: CertificateRecord): CertificateRecord {
  const version: number = stored.format.version
  const limitSet = { ...unstatedShare, ...stored.limitSet }
  if (version === certificateFormat.version) {
    const measuredValues = stored.measuredValues ?? stored.results.flatMap(countedValue)
    return { ...stored, limitSet, measuredValues, lapping: stored.lapping ?? [] }
  }
  return {
    ...stored,
    limitSet,
    rule: houseRule,
    results: [],
    measuredValues: [],
    lapping: [],
    exceptions: [],
    doubts: [],
  }
}

const unstatedShare = { uncertaintyShareAtMost: null } as const

/** What counts is the newest as left; how it was read, the result doesn't say. */
function countedValue(result: CertifiedResult): readonly CertifiedMeasuredValue[] {
  const characteristic = measuredCharacteristics.find((one) => one === result.characteristic)
  if (characteristic === undefined || result.value === null) return []
  const { componentKind, unit, value, text, lower, upper, limit, verdict, why } = result
  return [
    {
      ...{ verdict, why, limit, characteristic, componentKind, unit, value, text, lower, upper },
      ...unstatedSetUp,
      coverageFactor: result.uncertainty?.coverageFactor ?? null,
      method: result.method,
      instrumentNumbers: result.instrumentNumbers,
      recordedByName: result.recordedByName,
      recordedAt: result.recordedAt,
    },
  ]
}

const unstatedSetUp = {
  condition: 'as-left',
  isNewest: true,
  readings: [],
  readingUnit: 'um',
  sizeMm: null,
  leverAngleDeg: null,
  cutOffMm: null,
  traceDirection: null,
  tipRadiusUm: null,
  evaluationLengthMm: null,
  faceState: null,
  temperatureHalfWidthK: null,
  settingStandardUncertaintyUm: null,
  note: '',
} as const
