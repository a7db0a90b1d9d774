import type { TrackVerdict } from '../../../src/domain/compare-worn-track.ts'

/** The combined view of a machine: where its parts lie and which way to move what. */
export const alignmentWords = {
  title: 'Shaft, register and face',
  link: 'Shaft, register and face in one picture',
  lead: 'The newest surveys of this order in one picture, and what would bring each part true.',
  caution: {
    title: 'a machine that is opened and moved',
    lines: [
      'Lock out and tag out drive and process, and check that nothing moves. Turn the shaft by hand only.',
      'A chamber, casing or bearing housing is heavy: hold it by lifting gear before its screws are loosened, and keep fingers out of its joints.',
      'The site rules and local codes come first. What is said here helps who knows the machine, and replaces nobody.',
    ],
  },
  pictureTitle: 'The picture',
  pictureNote:
    'Seen from the seal towards the drive, 0° at the mark of each survey. The picture is right only where all surveys had one mark. Offsets and heights are drawn larger, each view in its own scale; sizes of shaft and chamber are not those of this machine.',
  none: 'Nothing to draw yet',
  noneText:
    'Record a dial survey of shaft, sleeve, register or face as found or as left: then it stands here.',
  movesTitle: 'What would bring it true',
  movesNote:
    'Needed where a result is beyond its limit, or the customer asks for it. Expected is what the readings hold beside the first wave; sweep again after every move.',
  noMoves: 'No survey here has a direction to move in.',
  withoutDirection: (what: string) =>
    `${what}: too small against its uncertainty to say which way.`,
  columns: { what: 'What', now: 'Total now', after: 'Expected', act: 'Do' },
  move: (of: { readonly um: string; readonly deg: string }) =>
    `Move the chamber or gland by ${of.um} µm towards ${of.deg}°: pry or tap it over with its screws just nipped, and watch the indicator.`,
  shim: {
    'chamber-face-squareness': (of: Shim) =>
      `The face stands out at ${of.high}°. Shim the joint of the chamber at ${of.deg}° by ${of.um} µm${of.over}, or have the face machined; after each loosening sweep the register again.`,
    'seat-face-squareness': (of: Shim) =>
      `The seat stands out at ${of.high}°, by ${of.um} µm${of.over}. Take it out, look for dirt, burrs and a twisted ring in its seating, and press it in again evenly.`,
  },
  over: (mm: string) => ` over ${mm} mm`,
  straighten: {
    'shaft-run-out': (of: { readonly um: string; readonly deg: string }) =>
      `The shaft runs ${of.um} µm off its axis, out at ${of.deg}° of its mark. No housing can follow it: look at bearings and fits, and have it straightened or renewed.`,
    'sleeve-run-out': (of: { readonly um: string; readonly deg: string }) =>
      `The sleeve runs ${of.um} µm off the axis, out at ${of.deg}° of its mark. Look for burrs and dirt under it, and at its fit on the shaft.`,
  },
  turnSleeve: (deg: string) =>
    `Or turn the sleeve on the shaft by ${deg}° clockwise, where no key holds it: its own offset then works against that of the shaft.`,
  mm: (text: string) => `${text} mm`,
  about: (text: string) => `about ${text} mm`,

  limitsTitle: 'What other limits say',
  limitsNote:
    'Published limits differ. This order is judged by its own set alone; the others are told by plain comparison, without uncertainty, so that nobody is surprised by them.',
  setsSay: (count: number) =>
    count === 1 ? 'What one limit set in force says' : `What ${count} limit sets in force say`,
  ratio: (times: string) => `The largest of these limits is ${times} times the smallest.`,
  contested: 'One set passes what another refuses: agree with the customer which one holds.',
  limitColumns: { set: 'Limit set', limit: 'Limit', basis: 'How well founded', says: 'Would say' },
  own: 'of this order',
  says: { within: 'within', beyond: 'beyond', unknown: 'not known: its size was not measured' },
  alone: 'No other set in force limits this.',

  trackTitle: 'The worn track against what moves',
  trackNote:
    'A track is wider than the nose by the total movement. On the seat that is the run-out of what carries the turning face; on the rotating face the register that holds the standing one. Lift in the bearings may add.',
  trackOf: (face: string) => `Track on the ${face}`,
  nose: (mm: string) => `nose ${mm} mm`,
  track: (mm: string) => `track ${mm} mm`,
  noseSwings: 'the nose at the other end of its swing',
  wider: (um: string) => `wider by ${um} µm`,
  narrower: (um: string) => `narrower by ${um} µm`,
  foundOne: (um: string) => `movement found: ${um} µm`,
  foundRange: (least: string, most: string) => `movement found: ${least} to ${most} µm`,
  foundNone: 'no movement was surveyed',
  counted: (what: readonly string[]) => `Counted: ${what.join('; ')}.`,
  verdict: {
    agrees: 'The movement found explains the track.',
    wider:
      'The track is wider than the movement found explains: look for vibration, bearings that give under load, pipe strain, or a face that moved in its holder.',
    narrower:
      'The track is narrower than the movement found would make it: what was found came later, or the faces did not run together for long.',
    'no-movement':
      'The track is no wider than the nose: no sideways movement, or the faces were not closed over their whole width.',
    'not-surveyed': 'Nothing that widens this track was surveyed.',
  } satisfies Record<TrackVerdict, string>,

  drawing: {
    mark: '0° at the mark',
    endView: 'From the seal',
    sideView: 'From the side',
    sideCut: (high: string, low: string) => `From the side, cut at ${high}° and ${low}°`,
    shaft: 'shaft',
    runOutCircle: (um: string) => `its middle runs round here, ${um} µm off`,
    sleeve: (um: string) => `sleeve, ${um} µm off`,
    register: (um: string, deg: string) => `register, ${um} µm off towards ${deg}°`,
    move: (um: string, deg: string) => `move it ${um} µm towards ${deg}°`,
    afterMove: 'register after the move',
    chamberFace: (um: string) => `chamber face, ${um} µm out of square`,
    seatFace: (um: string, deg: string) => `seat face, ${um} µm, out at ${deg}°`,
    square: 'square to the shaft',
    shim: (um: string, deg: string) => `shim ${um} µm at ${deg}°`,
    high: (deg: string) => `out, ${deg}°`,
    low: (deg: string) => `in, ${deg}°`,
  },
} as const

type Shim = {
  readonly high: string
  readonly deg: string
  readonly um: string
  readonly over: string
}
