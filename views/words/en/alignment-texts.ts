import type { AlignedPlace, Alignment, AlignmentMove } from '../../../src/domain/alignment.ts'
import { figure } from '../../../src/domain/figure.ts'
import { alignmentWords as w } from './alignment.ts'

/** To a tenth below 10 um: nobody moves a casing by less. */
export function umText(um: number): string {
  return figure(um, { decimals: um < 10 ? 1 : 0 }).text
}

export function degreesText(deg: number): string {
  return String(Math.round(deg) % 360)
}

/** In mm, as the results of such surveys are printed. */
export function totalText(um: number): string {
  return figure(um / 1000, { decimals: 3 }).text
}

/** What stands in the combined picture; no line longer than 44 letters, for phones. */
export function alignmentTexts(alignment: Alignment) {
  const { shaft, sleeve, register, chamberFace, seatFace } = alignment
  const d = w.drawing
  const um = (place: AlignedPlace | null) => umText(place?.amountUm ?? 0)
  const deg = (place: AlignedPlace | null, turn = 0) => degreesText((place?.clockDeg ?? 0) + turn)
  const cut = chamberFace ?? seatFace
  return {
    mark: d.mark,
    angle: (angleDeg: number) => `${degreesText(angleDeg)}°`,
    endView: d.endView,
    sideView: cut === null ? d.sideView : d.sideCut(deg(cut), deg(cut, 180)),
    scale: (value: number) => `${figure(value, 'as-entered').text} µm`,
    amount: (value: number) => `${umText(value)} µm`,
    move: d.move(um(register), deg(register, 180)),
    afterMove: d.afterMove,
    register: d.register(um(register), deg(register)),
    shaft: d.shaft,
    runOutCircle: d.runOutCircle(um(shaft)),
    sleeve: d.sleeve(um(sleeve)),
    shim: d.shim(um(chamberFace), deg(chamberFace, 180)),
    square: d.square,
    chamberFace: d.chamberFace(um(chamberFace)),
    seatFace: d.seatFace(um(seatFace), deg(seatFace)),
    high: (angleDeg: number) => d.high(degreesText(angleDeg)),
    low: (angleDeg: number) => d.low(degreesText(angleDeg)),
  }
}

/** What to do, as one sentence. */
export function moveText(move: AlignmentMove): string {
  const um = umText(move.amountUm)
  const deg = degreesText(move.clockDeg)
  if (move.kind === 'turn-sleeve') return w.turnSleeve(deg)
  if (move.kind === 'move') return w.move({ um, deg })
  if (move.kind === 'straighten') {
    return move.characteristic === 'sleeve-run-out'
      ? w.straighten['sleeve-run-out']({ um, deg })
      : w.straighten['shaft-run-out']({ um, deg })
  }
  const { atDiameterMm } = move
  const over = atDiameterMm === null ? '' : w.over(figure(atDiameterMm, 'as-entered').text)
  const high = degreesText(move.clockDeg + 180)
  const say =
    w.shim[
      move.characteristic === 'seat-face-squareness'
        ? 'seat-face-squareness'
        : 'chamber-face-squareness'
    ]
  return say({ high, deg, um, over })
}
