import type { FC } from 'hono/jsx'
import type { SurveyRecord } from '../../src/domain/dial-survey.ts'
import type { SurveyCaution, SurveyPlane, SurveyResult } from '../../src/domain/survey-result.ts'
import { formatFixed } from '../../src/science/rounding/format-fixed.ts'
import { Facts } from '../components/facts.tsx'
import { numberText } from '../figures/number-text.ts'
import { surveyCautionWords } from '../words/en/survey-cautions.ts'
import { words } from '../words/en.ts'
import { SurveyPolarPlot } from './polar-plot.tsx'
import { angleText } from './spot-text.ts'
import { umText } from './um-text.ts'

type Pair = { readonly label: string; readonly value: string }
const w = words.surveys
const f = w.figures

/** Everything that the readings of a survey say: each plane drawn beside its figures, then the whole. */
export const SurveyFigures: FC<{
  survey: SurveyRecord
  result: SurveyResult
  limitUm: number | null
  /** Whether it is still read: then what would mend it is told too. */
  isOpen: boolean
}> = ({ survey, result, limitUm, isOpen }) => (
  <div class="stack">
    {result.planes.map((plane, planeIndex) => (
      <div class="stack-tight">
        {plane.positionMm === null ? null : <h3>{w.planeAt(numberText(plane.positionMm))}</h3>}
        <div class="survey-plane">
          <SurveyPolarPlot
            survey={survey}
            result={result}
            planeIndex={planeIndex}
            limitUm={limitUm}
          />
          <Facts pairs={planePairs(plane)} />
        </div>
      </div>
    ))}
    {wholePairs(result).length === 0 ? null : <Facts pairs={wholePairs(result)} />}
    {result.cautions.length === 0 ? null : (
      <ul class="stack-tight">
        {result.cautions.map((one) => (
          <li>{cautionText(one, isOpen)}</li>
        ))}
      </ul>
    )}
  </div>
)

function cautionText(caution: SurveyCaution, isOpen: boolean): string {
  const { what, act } = surveyCautionWords[caution]
  return isOpen && act !== '' ? `${what} ${act}` : what
}

function planePairs({ figures, turns, floatRangeUm }: SurveyPlane): readonly Pair[] {
  const um = (label: string, value: number, u: number | null = null): Pair => ({
    label,
    value: w.umText(u === null ? umText(value) : `${umText(value)} ± ${umText(2 * u)}`),
  })
  const wave = (order: number) => figures.harmonics.find((one) => one.order === order)
  const [oval, three] = [wave(2), wave(3)]
  const u = figures.eccentricityStandardUncertaintyUm
  return [
    um(f.total, figures.totalUm),
    ...(turns.length > 1 ? turns.map((one, i) => um(f.ofTurn(i + 1), one.totalUm)) : []),
    um(f.fitted, figures.fittedRunOutUm, u === null ? null : 2 * u),
    um(f.eccentricity, figures.eccentricityUm, u),
    { label: f.direction, value: directionText(figures) },
    um(f.roundnessLeastSquares, figures.roundnessLeastSquaresUm),
    um(f.roundnessMinimumZone, figures.roundnessMinimumZoneUm),
    ...(oval === undefined ? [] : [um(f.ovality, 2 * oval.amplitudeUm)]),
    ...(three === undefined ? [] : [um(f.threeLobes, 2 * three.amplitudeUm)]),
    um(f.missed, figures.couldBeMissedUm),
    ...(floatRangeUm === null ? [] : [um(f.float, floatRangeUm)]),
    ...turns.flatMap((one, i) =>
      one.closingDriftUm === null ? [] : [um(f.drift(i + 1), one.closingDriftUm)],
    ),
  ]
}

function directionText(figures: SurveyPlane['figures']): string {
  const { eccentricityDirectionDeg: deg, directionStandardUncertaintyDeg: u } = figures
  if (deg === null) return f.directionUnsure
  return w.degText(angleText(deg), u === null ? null : angleText(2 * u))
}

function wholePairs({ tilt, straightness, readingStandardUncertaintyUm: u }: SurveyResult) {
  const pairs: Pair[] = []
  if (tilt !== null) {
    const [mrad, deg, slope] = [
      formatFixed({ value: tilt.tiltMrad, decimals: 3 }),
      formatFixed({ value: tilt.tiltDeg, decimals: 4 }),
      formatFixed({ value: tilt.mmPerM, decimals: 3 }),
    ]
    pairs.push({ label: f.tilt, value: w.tiltText(mrad, deg, slope) })
    if (tilt.movementAtSealUm !== null) {
      pairs.push({ label: f.movementAtSeal, value: w.umText(umText(tilt.movementAtSealUm)) })
    }
  }
  if (straightness !== null) {
    const { minimumZoneUm, leastSquaresUm, bow } = straightness
    pairs.push({ label: f.straightnessMinimumZone, value: w.umText(umText(minimumZoneUm)) })
    pairs.push({ label: f.straightnessLeastSquares, value: w.umText(umText(leastSquaresUm)) })
    const { departureUm, positionMm, directionDeg } = bow
    const at = [umText(departureUm), numberText(positionMm), angleText(directionDeg)] as const
    pairs.push({ label: f.bow, value: f.bowAt(...at) })
  }
  if (u !== null) pairs.push({ label: f.readingUncertainty, value: w.umText(umText(u)) })
  return pairs
}
