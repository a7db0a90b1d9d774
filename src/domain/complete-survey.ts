import { shortDecimal } from '../science/rounding/short-decimal.ts'
import { type CompleteMeasuredValue, completeMeasuredValue } from './complete-measured-value.ts'
import { computeSurvey } from './compute-survey.ts'
import type { SurveyRecord, SurveySpot } from './dial-survey.ts'
import type { Instrument } from './instrument.ts'
import { measuredAccuracy } from './measured-accuracy.ts'
import type { NewMeasuredValue } from './measured-value.ts'
import { methods } from './methods.ts'
import type { MeasuredValueContext } from './parse-measured-value.ts'
import { readingUncertaintyUm } from './reading-uncertainty-um.ts'
import { surveyProgress } from './survey-progress.ts'
import type { SurveyResult } from './survey-result.ts'
import { spotKey } from './survey-spots.ts'
import { umPerUnit } from './um-per-unit.ts'
import { useOf } from './use-of.ts'

/** What a finished survey is recorded as. */
export type CompleteSurvey = {
  readonly measured: CompleteMeasuredValue
  readonly result: SurveyResult
}

/**
 * Computes a survey of which every spot was read, and the measured value that it becomes: the
 * totals of its turns are repeats of one figure.
 * @param statedUncertaintyUm of one reading, standard, as a program states it
 * @throws RangeError where a spot has no reading, or the instrument is none of the context
 */
export function completeSurvey(
  survey: Pick<
    SurveyRecord,
    | 'workOrderId'
    | 'characteristic'
    | 'condition'
    | 'setUp'
    | 'note'
    | 'replacesId'
    | 'reason'
    | 'readings'
  >,
  context: MeasuredValueContext,
  statedUncertaintyUm = 0,
): CompleteSurvey {
  const { setUp } = survey
  const instrument = requireInstrument(context, setUp.instrumentId)
  const { secondInstrumentId: secondId } = setUp
  const second = secondId === null ? null : requireInstrument(context, secondId)
  // What a program states of its indicator may be more than its papers say, and never less. Half the
  // difference of two indicators is no less sure than the worse of them.
  const ofPapers = [instrument, ...(second === null ? [] : [second])].map((one) =>
    uncertaintyOf(survey, one, context),
  )
  const readingUm = Math.max(...ofPapers, statedUncertaintyUm)
  const result = computeSurvey(survey, umReader(survey), readingUm)
  const factor = umPerUnit(setUp.unit, instrument) ?? 1
  const measured: NewMeasuredValue = {
    workOrderId: survey.workOrderId,
    characteristic: survey.characteristic,
    componentId: null,
    condition: survey.condition,
    instrumentId: setUp.instrumentId,
    unit: setUp.unit,
    readings: result.totalsUm.map((um) => ({ um, typed: String(shortDecimal(um / factor)) })),
    sizeMm: setUp.sizeMm,
    budgetInput: {
      leverAngleDeg: setUp.leverAngleDeg,
      cutOffMm: null,
      temperatureHalfWidthK: null,
      settingStandardUncertaintyUm: null,
    },
    note: survey.note,
    replacesId: survey.replacesId,
    reason: survey.reason,
  }
  const complete = completeMeasuredValue(measured, context, statedUncertaintyUm)
  return {
    measured: {
      ...complete,
      ...(second === null
        ? {}
        : withSecond(complete, second, { survey, context, statedUncertaintyUm })),
      method: methods.runOut,
    },
    result,
  }
}

/** The second indicator as it stood on the day, and the budget of the worse of both. */
function withSecond(
  complete: CompleteMeasuredValue,
  second: Instrument,
  of: {
    readonly survey: Pick<SurveyRecord, 'readings'>
    readonly context: MeasuredValueContext
    readonly statedUncertaintyUm: number
  },
): Pick<CompleteMeasuredValue, 'secondInstrument' | 'uncertainty'> {
  const { today: day, exceptions } = of.context
  const read = of.survey.readings.filter((one) => one.indicator === 'second')
  const bySecond = completeMeasuredValue(
    { ...complete, instrumentId: second.id },
    of.context,
    of.statedUncertaintyUm,
  )
  const isWorse =
    bySecond.uncertainty.expandedUncertainty > complete.uncertainty.expandedUncertainty
  return {
    secondInstrument: useOf(second, {
      day,
      recordedOn: day,
      exceptions,
      // A needle may stand left of its zero: its range is what it can travel.
      readings: { base: 'um', ways: [read.map(({ um }) => Math.abs(um))] },
    }),
    uncertainty: isWorse ? bySecond.uncertainty : complete.uncertainty,
  }
}

function umReader(survey: Pick<SurveyRecord, 'setUp' | 'characteristic' | 'readings'>) {
  const { current } = surveyProgress(survey)
  return (spot: SurveySpot): number => {
    const reading = current.get(spotKey(spot))
    if (reading === undefined) {
      throw new RangeError(`completeSurvey requires a reading of every spot, got ${spotKey(spot)}`)
    }
    return reading.um
  }
}

function uncertaintyOf(
  { setUp, readings }: Pick<SurveyRecord, 'setUp' | 'readings'>,
  instrument: Instrument,
  { today }: MeasuredValueContext,
): number {
  return readingUncertaintyUm(measuredAccuracy(instrument, today, { unit: setUp.unit, readings }))
}

function requireInstrument({ instruments }: MeasuredValueContext, id: number): Instrument {
  const instrument = instruments.find((one) => one.id === id)
  if (instrument === undefined) {
    throw new RangeError(`completeSurvey requires an instrument of its context, got id ${id}`)
  }
  return instrument
}
