import type { CertifiedSurvey, CertifiedSurveyPlane } from '../../../src/domain/certified-survey.ts'
import { figure } from '../../../src/domain/figure.ts'
import { certificateDecisionWords } from './certificate-decisions.ts'
import { surveyFiguresWords as w } from './survey-figures.ts'

type Pair = { readonly label: string; readonly value: string }

const { figures: f, setUp: s } = w

/** Label and value of what one swept circle says: page and document say the same. */
export function surveyPlanePairs(
  survey: CertifiedSurvey,
  plane: CertifiedSurveyPlane,
): readonly Pair[] {
  const isFace = survey.surface === 'face'
  const { closingDriftUm, floatRangeUm, directionText } = plane
  return [
    ...(plane.positionMm === null
      ? []
      : [{ label: f.planeTotal, value: w.um(plane.totalUm.text) }]),
    { label: isFace ? f.tiltHeight : f.eccentricity, value: w.um(plane.eccentricityText) },
    {
      label: f.direction,
      value: directionText === null ? f.noDirection : w.degrees(directionText),
    },
    { label: f.fitted, value: w.um(plane.fittedRunOutUm.text) },
    { label: f.roundnessLs, value: w.um(plane.roundnessLeastSquaresUm.text) },
    { label: f.roundnessMz, value: w.um(plane.roundnessMinimumZoneUm.text) },
    { label: f.missed, value: f.missedAtMost(plane.couldBeMissedUm.text) },
    ...(closingDriftUm === null ? [] : [{ label: f.drift, value: w.um(closingDriftUm.text) }]),
    ...(floatRangeUm === null ? [] : [{ label: f.float, value: w.um(floatRangeUm.text) }]),
  ]
}

/** What the survey says as a whole. */
export function surveyPairs(survey: CertifiedSurvey): readonly Pair[] {
  const { tilt, straightness, text, unit } = survey
  return [
    { label: f.total, value: `${text} ${certificateDecisionWords.units[unit]}` },
    ...(tilt === null
      ? []
      : [
          { label: f.tilt, value: f.tiltText(tilt.mrad.text, tilt.mmPerM.text) },
          ...(tilt.movementAtSealUm === null
            ? []
            : [{ label: f.atSeal, value: w.um(tilt.movementAtSealUm.text) }]),
        ]),
    ...(straightness === null
      ? []
      : [
          { label: f.straightness, value: w.um(straightness.minimumZoneUm.text) },
          {
            label: f.bow,
            value: f.bowText(straightness.bowUm.text, straightness.bowAtMm.text),
          },
        ]),
  ]
}

/** How it was set up, as far as it was stated. */
export function surveySetUpPairs(survey: CertifiedSurvey): readonly Pair[] {
  const { sweptDiameterMm, sealMeanDiameterMm, leverAngleDeg, sagUm, topAngleDeg } = survey
  const isCircle = survey.planes.length > 0
  const said = (text: string | null) => text ?? s.notStated
  const isCarried = survey.turned !== 'part'
  return [
    { label: s.place, value: survey.place === null ? s.notStated : s.places[survey.place] },
    { label: s.indicator, value: survey.instrumentNumber },
    { label: s.readBy, value: survey.recordedByName },
    { label: s.contact, value: survey.contact === null ? s.notStated : s.contacts[survey.contact] },
    ...(isCircle
      ? [
          { label: s.turned, value: s.turnedParts[survey.turned] },
          { label: s.surface, value: s.surfaces[survey.surface] },
          { label: s.sweptDiameter, value: said(sweptDiameterMm && w.mm(sweptDiameterMm.text)) },
          { label: s.direction, value: survey.isClockwise ? s.clockwise : s.counter },
          { label: s.float, value: s.floats[survey.floatHeld] },
        ]
      : []),
    ...(sealMeanDiameterMm === null
      ? []
      : [{ label: s.sealDiameter, value: w.mm(sealMeanDiameterMm.text) }]),
    ...(survey.hasSecondIndicator
      ? [{ label: s.second, value: s.secondText(survey.secondInstrumentNumber ?? null) }]
      : []),
    ...(leverAngleDeg === null ? [] : [{ label: s.lever, value: w.degrees(leverAngleDeg.text) }]),
    ...(isCarried && isCircle
      ? [
          {
            label: s.sag,
            value: sagUm === null ? s.noSag : s.sagText(sagUm.text, topAngleDeg?.text ?? '0'),
          },
        ]
      : []),
    {
      label: s.lockOut,
      value: survey.lockOutReference === '' ? s.notStated : survey.lockOutReference,
    },
  ]
}

/** Where a row of readings was read. */
export function surveyRowText(
  survey: CertifiedSurvey,
  row: CertifiedSurvey['rows'][number],
): string {
  const { readings: r } = w
  if (row.spot === 'first-end') return r.firstEnd
  if (row.spot === 'second-end') return r.secondEnd
  const angle = String(row.angleDeg ?? 0)
  const here =
    row.spot === 'closing'
      ? r.closing(angle)
      : row.indicator === 'second'
        ? r.second(angle)
        : w.degrees(angle)
  const plane = survey.planes[row.planeIndex]
  if (plane === undefined || plane.positionMm === null) return here
  return r.plane(String(plane.positionMm), here)
}

/** What a plot shows, for who can't see it. */
export function surveyAlternative(survey: CertifiedSurvey, plane: CertifiedSurveyPlane): string {
  return w.alternative({
    total: plane.totalUm.text,
    fitted: plane.eccentricityText,
    direction: plane.directionText,
    limit: survey.limitUm === null ? null : figure(survey.limitUm, { decimals: 1 }).text,
  })
}
