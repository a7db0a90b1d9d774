import type {
  ContactPoint,
  FloatHold,
  SurveyPlace,
  SweptSurface,
  TurnedPart,
} from '../../../src/domain/dial-survey.ts'
import type { LengthUnit } from '../../../src/domain/measured-value.ts'

/** The words of a survey as it is shown and certified. */
export const surveyFiguresWords = {
  heading: 'Dial surveys',
  showPlot: 'Plot, figures and readings',
  howToRead:
    'Polar plots show the needle, not the part: outwards is a higher reading, 0° is the mark, seen from the seal towards the drive. Total is the largest less the smallest reading of a turn. The fitted circle or tilt is the first wave of the readings; roundness is what it leaves. The shaded ring is the limit about the axis of turning: readings within it keep the limit.',
  titleOf: (what: string, when: string) => `${what}, ${when}`,
  overtaken: 'a later one counts',
  planeAt: (mm: string) => `at ${mm} mm`,
  alternative: (of: {
    readonly total: string
    readonly fitted: string
    readonly direction: string | null
    readonly limit: string | null
  }) =>
    [
      `Polar plot: total ${of.total} µm`,
      `fitted ${of.fitted} µm`,
      of.direction === null ? 'no sure direction' : `highest at ${of.direction}°`,
      ...(of.limit === null ? [] : [`limit ${of.limit} µm`]),
    ].join(', '),
  um: (text: string) => `${text} µm`,
  degrees: (text: string) => `${text}°`,
  mm: (text: string) => `${text} mm`,
  figures: {
    total: 'Total, as judged',
    planeTotal: 'Total here',
    eccentricity: 'Off the axis',
    tiltHeight: 'Tilt, up and down',
    direction: 'Highest at',
    noDirection: 'not determined: too small against its uncertainty',
    fitted: 'Total of the fitted circle',
    roundnessLs: 'Roundness, least squares',
    roundnessMz: 'Roundness, minimum zone',
    missed: 'May lie between positions',
    missedAtMost: (um: string) => `at most ${um} µm of the total, of the fitted part`,
    drift: 'Closing reading less first',
    float: 'Float of the shaft meanwhile',
    tilt: 'Tilt of the face',
    tiltText: (mrad: string, mmPerM: string) => `${mrad} mrad, ${mmPerM} mm per m`,
    atSeal: 'Movement at the seal',
    straightness: 'Straightness of the centre line',
    bow: 'Bow from the ends',
    bowText: (um: string, mm: string) => `${um} µm at ${mm} mm`,
  },
  setUp: {
    title: 'Set-up',
    place: 'Where',
    places: {
      machine: 'on the machine',
      'between-centres': 'on the bench between centres',
      'vee-blocks': 'on the bench in vee-blocks',
    } satisfies Record<SurveyPlace, string>,
    turned: 'What turned',
    turnedParts: {
      part: 'the part, under a standing indicator',
      indicator: 'the indicator, carried round by the shaft',
      both: 'part and indicator together',
    } satisfies Record<TurnedPart, string>,
    surface: 'Swept on',
    surfaces: { outside: 'the outside', inside: 'the bore', face: 'the face' } satisfies Record<
      SweptSurface,
      string
    >,
    contact: 'Tip',
    contacts: { ball: 'ball', flat: 'flat', roller: 'roller', point: 'point' } satisfies Record<
      ContactPoint,
      string
    >,
    sweptDiameter: 'Swept diameter',
    sealDiameter: 'Mean diameter of the seal face',
    float: 'Axial float held',
    floats: {
      'towards-seal': 'towards the seal',
      'towards-drive': 'towards the drive',
      'not-held': 'not held',
    } satisfies Record<FloatHold, string>,
    second: 'Second indicator',
    secondText: (number: string | null) =>
      `${number === null ? '' : `${number}, `}opposite the first, to take the float out`,
    lever: 'Angle of the lever',
    sag: 'Sag of the bracket',
    sagText: (um: string, top: string) => `${um} µm, corrected; on top at ${top}°`,
    noSag: 'not corrected',
    direction: 'Angles rise',
    clockwise: 'clockwise, seen from the seal',
    counter: 'counter-clockwise, seen from the seal',
    lockOut: 'Lock-out, tag or permit',
    indicator: 'Indicator',
    readBy: 'Read by',
    notStated: 'not stated',
  },
  readings: {
    title: 'Readings as typed',
    position: 'Position',
    turn: (number: number) => `Turn ${number}`,
    repeat: (number: number) => `Repeat ${number}`,
    closing: (angle: string) => `${angle}°, closing`,
    second: (angle: string) => `${angle}°, second indicator`,
    firstEnd: 'first end, at rest',
    secondEnd: 'second end, moved',
    plane: (mm: string, angle: string) => `${mm} mm, ${angle}`,
    units: {
      um: 'µm',
      mm: 'mm',
      in: 'in',
      uin: 'µin',
      graduations: 'graduations',
    } satisfies Record<LengthUnit, string>,
    in: (unit: string) => `in ${unit}`,
  },
  notMeasured:
    'Not measured by these surveys: what lies between positions, other sections than those swept, the machine under load, speed or temperature, pipe strain.',
} as const
