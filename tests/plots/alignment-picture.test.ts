import { describe, expect, it } from 'vitest'
import { alignmentPicture } from '../../src/plots/alignment-picture.ts'
import type { AlignmentPictureOptions } from '../../src/plots/alignment-picture-options.ts'
import type { PathShape } from '../../src/plots/drawing.ts'
import { coordinates, subpaths } from './path-points.ts'
import { pathsOf, textsOf } from './shapes-of.ts'
import { expectOnCanvas } from './stays-on-canvas.ts'

const options: AlignmentPictureOptions = {
  widthPx: 340,
  shaft: { offsetUm: 10, directionDeg: 180 },
  sleeve: { offsetUm: 20, directionDeg: 90 },
  register: { offsetUm: 50, directionDeg: 90 },
  chamberFace: { heightUm: 80, highDeg: 30 },
  seatFace: { heightUm: 20, highDeg: 210 },
  texts: {
    mark: 'mark',
    angle: (deg) => `${deg} deg`,
    endView: 'end',
    sideView: 'side',
    scale: (um) => `bar ${um}`,
    amount: (um) => `${um} um`,
    move: 'move',
    afterMove: 'after',
    register: 'register',
    shaft: 'shaft',
    runOutCircle: 'runs',
    sleeve: 'sleeve',
    shim: 'shim',
    square: 'square',
    chamberFace: 'chamber',
    seatFace: 'seat',
    high: (deg) => `high ${deg}`,
    low: (deg) => `low ${deg}`,
  },
}
const nothing = { shaft: null, sleeve: null, register: null, chamberFace: null, seatFace: null }
const middle = ({ d }: PathShape) => {
  const [left = 0, y = 0, , , right = 0] = coordinates(d)
  return { x: (left + right) / 2, y }
}
const middleOf = (of: AlignmentPictureOptions, part: string) =>
  middle(pathsOf(alignmentPicture(of), part)[0] as PathShape)
const axis = { x: 170, y: 24 + 170 }
/** The largest offset, 50 um, is drawn 0.095 of the width. */
const pxPerUm = (340 * 0.095) / 50

describe('alignmentPicture', () => {
  it('keeps on its canvas whatever was surveyed and wherever it lies', () => {
    for (const widthPx of [320, 340, 600]) {
      for (const deg of [0, 45, 90, 180, 300]) {
        const register = { offsetUm: 50, directionDeg: deg }
        expectOnCanvas(alignmentPicture({ ...options, widthPx, register }))
      }
      for (const name of ['shaft', 'register', 'chamberFace', 'seatFace'] as const) {
        expectOnCanvas(alignmentPicture({ ...options, ...nothing, widthPx, [name]: options[name] }))
      }
    }
  })

  it('lays each part where its axis lies, all in one scale', () => {
    expect(middleOf(options, 'register').x - axis.x).toBeCloseTo(50 * pxPerUm, 1)
    expect(middleOf(options, 'sleeve').x - axis.x).toBeCloseTo(20 * pxPerUm, 1)
    // 180 degrees is down.
    expect(middleOf(options, 'shaft').y - axis.y).toBeCloseTo(10 * pxPerUm, 1)
    expect(middleOf(options, 'shaft').x).toBeCloseTo(axis.x, 1)
  })

  it('leads the register back onto the axis, and shows where it will lie', () => {
    const [head] = pathsOf(alignmentPicture(options), 'move head')
    const [x, y] = coordinates(head?.d ?? '')
    expect(x).toBeCloseTo(axis.x, 1)
    expect(y).toBeCloseTo(axis.y, 1)
    expect(middleOf(options, 'after the move')).toEqual(axis)
    expect(textsOf(alignmentPicture(options))).toContain('50 um')
  })

  it('runs the middle of the shaft round the axis on a circle of its offset', () => {
    const [circle] = pathsOf(alignmentPicture(options), 'run-out circle')
    expect(coordinates(circle?.d ?? '')[2]).toBeCloseTo(10 * pxPerUm, 1)
  })

  it('tilts the chamber face towards the seal on its high side, as far as its scale says', () => {
    const [top, bottom] = subpaths(pathsOf(alignmentPicture(options), 'chamber')[0]?.d ?? '')
    const topOuter = Math.min(...(top ?? []).map((p) => p.x))
    const bottomOuter = bottom?.at(-1)?.x ?? 0
    // The larger tilt is drawn 26 px out of square over the outside of the chamber.
    expect(bottomOuter - topOuter).toBeCloseTo(26, 1)
    const [wedge] = pathsOf(alignmentPicture(options), 'shim')
    expect(wedge).toBeDefined()
    expect(textsOf(alignmentPicture(options))).toContain('high 30')
    expect(textsOf(alignmentPicture(options))).toContain('low 210')
  })

  it('tilts a seat that is high on the other side the other way, in the same scale', () => {
    const [top, bottom] = subpaths(pathsOf(alignmentPicture(options), 'seat')[0]?.d ?? '')
    const [topOuter, bottomOuter] = [top, bottom].map((one) => one?.at(-1)?.x ?? 0) as [
      number,
      number,
    ]
    expect(topOuter - bottomOuter).toBeCloseTo((26 * 20) / 80, 1)
  })

  it('names only what it shows', () => {
    const faceAlone = textsOf(
      alignmentPicture({ ...options, ...nothing, chamberFace: options.chamberFace }),
    )
    expect(faceAlone).toContain('chamber')
    for (const text of ['end', 'move', 'register', 'sleeve', 'runs', 'seat']) {
      expect(faceAlone).not.toContain(text)
    }
  })

  it('refuses a width out of range', () => {
    expect(() => alignmentPicture({ ...options, widthPx: 200 })).toThrow(RangeError)
  })
})
