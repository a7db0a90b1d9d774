import { type SurveyFormValues, surveyValueNames } from '../../../views/surveys/form-values.ts'
import { surveyCharacteristics } from '../../domain/characteristic.ts'
import type { DialSurvey } from '../../domain/dial-survey.ts'
import type { Input } from '../../domain/fields.ts'
import type { MeasuredValue } from '../../domain/measured-value.ts'
import { faceKinds } from '../../domain/seal.ts'
import { lastMeasuringInstrument } from '../../store/last-measuring-instrument.ts'
import type { AppContext } from '../context.ts'
import { typedText } from '../typed-text.ts'
import { viewer } from '../viewer.ts'
import type { SurveyDesk } from './desk.ts'

/** A fresh set-up: eight positions once round, with the indicator in hand last. */
export function freshSurveyValues(c: AppContext, desk: SurveyDesk): SurveyFormValues {
  const asked = surveyCharacteristics.find((one) => one === c.req.query('characteristic'))
  const last = lastMeasuringInstrument(c.var.shop.store, viewer(c).id, surveyCharacteristics)
  const before = desk.surveys.at(-1)
  return {
    ...valuesBy(() => ''),
    ...(before === undefined ? {} : remembered(before)),
    lockOutReference: lockOutOfToday(c, desk),
    characteristic: asked ?? '',
    condition: 'as-left',
    instrumentId: text(before?.setUp.instrumentId ?? last?.instrumentId),
    unit: before?.setUp.unit ?? last?.unit ?? 'mm',
    positionCount: '8',
    turnsCount: '1',
    closing: 'yes',
    sealMeanDiameterMm: text(before?.setUp.sealMeanDiameterMm ?? meanDiameterOf(desk)),
  }
}

/**
 * A number from an earlier day, or of somebody else, says that a machine is locked out which may
 * turn by now: it is asked anew. Only who locked out this order's machine today finds it again.
 */
function lockOutOfToday(c: AppContext, { surveys, today }: SurveyDesk): string {
  const own = surveys.findLast(
    (one) => one.startedById === viewer(c).id && one.startedAt.slice(0, 10) === today,
  )
  return own?.setUp.lockOutReference ?? ''
}

/** What stays the same from survey to survey of one order. */
function remembered({ setUp }: DialSurvey): Partial<SurveyFormValues> {
  return {
    place: setUp.place ?? '',
    turned: setUp.turned,
    direction: setUp.isClockwise ? 'clockwise' : 'counter-clockwise',
    contact: setUp.contact ?? '',
    sizeMm: text(setUp.sizeMm),
  }
}

/** Of the narrower face, which the seal turns on. */
function meanDiameterOf({ components }: SurveyDesk): number | null {
  const widths = components.flatMap((one) =>
    faceKinds.some((kind) => kind === one.kind) &&
    one.outerDiameterMm !== null &&
    one.innerDiameterMm !== null
      ? [{ outer: one.outerDiameterMm, inner: one.innerDiameterMm }]
      : [],
  )
  const narrow = widths.sort((a, b) => a.outer - a.inner - (b.outer - b.inner))[0]
  return narrow === undefined ? null : (narrow.outer + narrow.inner) / 2
}

/** The set-up of the survey that is to be corrected, or what is known of a figure without one. */
export function surveyValuesOf(
  c: AppContext,
  replaced: MeasuredValue,
  desk: SurveyDesk,
): SurveyFormValues {
  const survey = desk.surveys.find((one) => one.end?.measuredValueId === replaced.id)
  const known = {
    ...valuesBy(() => ''),
    characteristic: replaced.characteristic,
    condition: replaced.condition,
    instrumentId: text(replaced.instrumentId),
    unit: replaced.unit,
    sizeMm: text(replaced.sizeMm),
    lockOutReference: lockOutOfToday(c, desk),
    positionCount: '8',
    turnsCount: '1',
    closing: 'yes',
  }
  if (survey === undefined) return known
  const { setUp } = survey
  return {
    ...known,
    ...remembered(survey),
    surface: setUp.surface,
    anglesDeg: setUp.anglesDeg.map(text).join(' '),
    positionCount: '',
    turnsCount: text(setUp.turnsCount),
    closing: setUp.isClosed ? 'yes' : '',
    planesMm: setUp.planesMm.map(text).join(' '),
    leverAngleDeg: text(setUp.leverAngleDeg),
    sweptDiameterMm: text(setUp.sweptDiameterMm),
    sealMeanDiameterMm: text(setUp.sealMeanDiameterMm),
    floatHeld: setUp.floatHeld,
    sagUm: text(setUp.sagUm),
    topAngleDeg: text(setUp.topAngleDeg),
    secondInstrumentId: text(setUp.secondInstrumentId),
    note: survey.note,
  }
}

/** What was typed, to be shown again. */
export function surveyValuesOfInput(input: Input): SurveyFormValues {
  return valuesBy((name) => typedText(input[name]))
}

function valuesBy(textOf: (name: (typeof surveyValueNames)[number]) => string): SurveyFormValues {
  const pairs = surveyValueNames.map((name) => [name, textOf(name)] as const)
  return Object.fromEntries(pairs) as SurveyFormValues
}

function text(value: number | null | undefined): string {
  return value === null || value === undefined ? '' : String(value)
}
