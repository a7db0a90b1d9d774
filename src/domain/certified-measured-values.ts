import { certifiedJudgement } from './certified-judgement.ts'
import type { CertifiedMeasuredValue } from './certified-measured-value.ts'
import { measuredCharacteristics } from './characteristic.ts'
import type { Evidence } from './evidence.ts'
import { figure, optionalFigure } from './figure.ts'
import { finishTraces } from './finish-traces.ts'
import { instrumentsOfValue } from './instruments-of-value.ts'
import { type JudgedValue, judgedValues } from './judged-evidence.ts'
import { printedResult } from './printed-result.ts'
import { printedUnit } from './printed-unit.ts'
import { standingValues } from './standing.ts'

/** The values that no correction replaced, by what was measured, each oldest first. */
export function certifiedMeasuredValues(evidence: Evidence): readonly CertifiedMeasuredValue[] {
  const standing = standingValues(evidence.measuredValues)
  const valid = judgedValues(evidence).filter((one) => one.replacedBy === null)
  return measuredCharacteristics.flatMap((characteristic) =>
    valid
      .filter((one) => one.measured.characteristic === characteristic)
      .map((one) => certifiedValue(one, evidence, standing.includes(one.measured))),
  )
}

function certifiedValue(
  { measured, judged, faceByLog }: JudgedValue,
  evidence: Evidence,
  isNewest: boolean,
): CertifiedMeasuredValue {
  const { characteristic, componentId, valueUm, uncertainty } = measured
  const { unit, storedPerPrinted, rounding } = printedUnit[characteristic]
  const bound = (stored: number | null) =>
    optionalFigure(stored === null ? null : stored / storedPerPrinted, rounding)
  const { components } = evidence.seal
  const { value, text } = printedResult({ characteristic, value: valueUm, uncertainty })
  const traces = finishTraces(measured, judged.upper)
  return {
    ...certifiedJudgement(judged),
    characteristic,
    componentKind: components.find((one) => one.id === componentId)?.kind ?? null,
    condition: measured.condition,
    isNewest,
    unit,
    value,
    text,
    coverageFactor: uncertainty.coverageFactor,
    lower: bound(judged.lower),
    upper: bound(judged.upper),
    ...setUpOf(measured),
    ...(traces === null
      ? {}
      : {
          faceByLog,
          traces: {
            count: traces.count,
            largest: figure(traces.largestUm / storedPerPrinted, rounding),
            rule: traces.rule,
          },
        }),
    note: measured.note,
    method: measured.method,
    instrumentNumbers: instrumentsOfValue(measured).map((one) => one.number),
    recordedByName: measured.recordedByName,
    recordedAt: measured.recordedAt,
  }
}

/** What was read, as typed, and what was stated of how. */
function setUpOf({ readings, unit, sizeMm, budgetInput }: JudgedValue['measured']) {
  const stated = (value: number | null) => optionalFigure(value, 'as-entered')
  return {
    readings: readings.map((one) => one.typed),
    readingUnit: unit,
    sizeMm: stated(sizeMm),
    leverAngleDeg: stated(budgetInput.leverAngleDeg),
    cutOffMm: stated(budgetInput.cutOffMm),
    traceDirection: budgetInput.traceDirection ?? null,
    tipRadiusUm: stated(budgetInput.tipRadiusUm ?? null),
    evaluationLengthMm: stated(budgetInput.evaluationLengthMm ?? null),
    faceState: budgetInput.faceState ?? null,
    temperatureHalfWidthK: stated(budgetInput.temperatureHalfWidthK),
    settingStandardUncertaintyUm: stated(budgetInput.settingStandardUncertaintyUm),
  }
}
