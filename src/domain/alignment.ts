import { axisOffset } from '../science/runout/axis-offset.ts'
import { sleeveOnShaft } from '../science/runout/sleeve-on-shaft.ts'
import type { SurveyCharacteristic } from './characteristic.ts'
import { type SweptSurface, surveyKindOf } from './dial-survey.ts'

/** What a survey that stands says about where its part lies. */
export type AlignmentSurvey = {
  readonly measuredValueId: number
  readonly characteristic: SurveyCharacteristic
  readonly surface: SweptSurface
  /** Whether its angles rise clockwise, seen from the seal towards the drive. */
  readonly isClockwise: boolean
  /** What is judged: mean of the totals of the turns. */
  readonly totalUm: number
  readonly eccentricityUm: number
  /** Of the highest reading, as the survey counts its angles; null: it has no direction. */
  readonly directionDeg: number | null
  /** What no move takes away: peak to valley without the first wave. */
  readonly roundnessUm: number
  readonly sweptDiameterMm: number | null
}

/** A place of the part seen from the seal, clockwise from the mark of its survey. */
export type AlignedPlace = { readonly amountUm: number; readonly clockDeg: number }

/**
 * What would bring a part true, and what to expect then. `move`: the whole part towards there;
 * `shim`: under its joint there, so much over the swept diameter; `straighten`: the shaft stands
 * out there and no housing can follow it; `turn-sleeve`: on its shaft, by so many degrees.
 */
export type AlignmentMove = {
  readonly kind: 'move' | 'shim' | 'straighten' | 'turn-sleeve'
  readonly characteristic: SurveyCharacteristic
  readonly measuredValueId: number
  /** Of the move or shim, um; of the sleeve 0. */
  readonly amountUm: number
  /** Where to, or how far a sleeve is turned, degrees clockwise. */
  readonly clockDeg: number
  /** Over which the amount of a shim holds. */
  readonly atDiameterMm: number | null
  readonly totalNowUm: number
  readonly totalAfterUm: number
}

export type Alignment = {
  /** Where each part lies off, and where each face stands out: what the picture shows. */
  readonly shaft: AlignedPlace | null
  readonly sleeve: AlignedPlace | null
  readonly register: AlignedPlace | null
  readonly chamberFace: AlignedPlace | null
  readonly seatFace: AlignedPlace | null
  readonly moves: readonly AlignmentMove[]
  /** Surveys whose direction means nothing: there is nothing to move that would help. */
  readonly withoutDirection: readonly SurveyCharacteristic[]
}

/**
 * Where the parts of a machine lie, which way to move what and the total reading to expect after
 * it: the part of the readings that is no first wave.
 * @param surveys those that stand, at most one of each characteristic
 */
export function alignment(surveys: readonly AlignmentSurvey[]): Alignment {
  const of = (characteristic: SurveyCharacteristic) =>
    surveys.find((one) => one.characteristic === characteristic)
  const shaft = of('shaft-run-out')
  const sleeve = of('sleeve-run-out')
  return {
    shaft: offsetOf(shaft),
    sleeve: offsetOf(sleeve),
    register: offsetOf(of('register-concentricity')),
    chamberFace: tiltOf(of('chamber-face-squareness')),
    seatFace: tiltOf(of('seat-face-squareness')),
    moves: [...surveys.flatMap(movesOf), ...turnedSleeve(shaft, sleeve)],
    withoutDirection: surveys
      .filter((one) => hasPlace(one) && one.directionDeg === null)
      .map((one) => one.characteristic),
  }
}

/** Surveys round one circle; ends and planes have no one direction. */
function hasPlace({ characteristic }: AlignmentSurvey): boolean {
  return characteristic in moveKinds
}

const moveKinds: Partial<Record<SurveyCharacteristic, 'move' | 'shim' | 'straighten'>> = {
  'register-concentricity': 'move',
  'chamber-face-squareness': 'shim',
  'seat-face-squareness': 'shim',
  'shaft-run-out': 'straighten',
  'sleeve-run-out': 'straighten',
}

/** Where the axis of a part lies: not where its readings are highest, in a bore. */
function offsetOf(survey: AlignmentSurvey | undefined): AlignedPlace | null {
  if (survey === undefined || survey.directionDeg === null) return null
  const { eccentricityUm, directionDeg } = survey
  const surface = survey.surface === 'inside' ? 'inside' : 'outside'
  const offset = axisOffset({ eccentricityUm, directionDeg, surface })
  return { amountUm: offset.offsetUm, clockDeg: clockOf(survey, offset.directionDeg) }
}

/** How high a face stands out over the swept circle, and where. */
function tiltOf(survey: AlignmentSurvey | undefined): AlignedPlace | null {
  if (survey === undefined || survey.directionDeg === null) return null
  return {
    amountUm: 2 * survey.eccentricityUm,
    clockDeg: clockOf(survey, survey.directionDeg),
  }
}

function movesOf(survey: AlignmentSurvey): readonly AlignmentMove[] {
  const kind = moveKinds[survey.characteristic]
  const place = surveyKindOf[survey.characteristic] === 'face' ? tiltOf(survey) : offsetOf(survey)
  if (kind === undefined || place === null) return []
  const { characteristic, measuredValueId, totalUm, roundnessUm, sweptDiameterMm } = survey
  return [
    {
      kind,
      characteristic,
      measuredValueId,
      amountUm: place.amountUm,
      // A part moves, and a shim goes, where the part lies or stands least.
      clockDeg: turned(place.clockDeg + (kind === 'straighten' ? 0 : 180)),
      atDiameterMm: kind === 'shim' ? sweptDiameterMm : null,
      totalNowUm: totalUm,
      totalAfterUm: Math.min(totalUm, roundnessUm),
    },
  ]
}

/** Offered where it takes away a tenth of the movement at least: less is not worth a loosened screw. */
function turnedSleeve(
  shaft: AlignmentSurvey | undefined,
  sleeve: AlignmentSurvey | undefined,
): readonly AlignmentMove[] {
  const [under, over] = [offsetOf(shaft), offsetOf(sleeve)]
  if (sleeve === undefined || under === null || over === null) return []
  const best = sleeveOnShaft({ shaft: under, sleeve: over })
  const totalAfterUm = 2 * best.offsetUm + sleeve.roundnessUm
  if (totalAfterUm > 0.9 * sleeve.totalUm) return []
  const { characteristic, measuredValueId, totalUm } = sleeve
  const still = { characteristic, measuredValueId, amountUm: 0, atDiameterMm: null }
  const change = { totalNowUm: totalUm, totalAfterUm }
  return [{ kind: 'turn-sleeve', ...still, clockDeg: best.turnDeg, ...change }]
}

function clockOf({ isClockwise }: AlignmentSurvey, angleDeg: number): number {
  return turned(isClockwise ? angleDeg : -angleDeg)
}

function turned(deg: number): number {
  return ((deg % 360) + 360) % 360
}
