import { type DialSurvey, surveyKindOf } from './dial-survey.ts'
import type { SurveyCaution, SurveyPlane } from './survey-result.ts'

/** Fewer positions hide lobes and half of the direction (formulas of run-out: 8, better 12). */
const fewPositions = 8

/** What to know before a survey is believed. */
export function surveyCautionsOf(
  { setUp, characteristic }: Pick<DialSurvey, 'setUp' | 'characteristic'>,
  planes: readonly SurveyPlane[],
): readonly SurveyCaution[] {
  const isFace = surveyKindOf[characteristic] === 'face'
  const isFloatOpen = setUp.floatHeld === 'not-held' && setUp.secondInstrumentId === null
  const told: Readonly<Record<SurveyCaution, boolean>> = {
    drift: planes.some((plane) => plane.turns.some((one) => one.isDriftLarge)),
    'few-positions': setUp.anglesDeg.length < fewPositions,
    'positions-bunched': planes.some((one) => one.figures.areBunched),
    'float-not-held': isFace && isFloatOpen,
    'vee-blocks': setUp.place === 'vee-blocks',
    'direction-unsure': planes.some(
      ({ figures }) => figures.eccentricityDirectionDeg === null && !figures.areBunched,
    ),
    // Of two opposite indicators only odd waves of the face remain.
    'lobes-unseen': setUp.secondInstrumentId !== null,
  }
  return (Object.keys(told) as SurveyCaution[]).filter((one) => told[one])
}
