import { describe, expect, it } from 'vitest'
import type { Drawing } from '../../src/plots/drawing.ts'
import { endsPicture } from '../../src/plots/ends-picture.ts'
import { planesPicture } from '../../src/plots/planes-picture.ts'
import { surveyDial } from '../../src/plots/survey-dial.ts'
import { surveyPolar } from '../../src/plots/survey-polar.ts'
import { polarOptions } from './survey-polar-options.ts'

const dial = {
  sizePx: 320,
  anglesDeg: [0, 90, 180, 270],
  isClockwise: true,
  isIndicatorStanding: false,
  doneIndexes: [],
  nextIndex: 0,
  isClosed: true,
  texts: { position: String, mark: 'mark' },
}
const planes = { plane: String, positionMm: String }
const drawings: Readonly<Record<string, Drawing>> = {
  polar: surveyPolar({ ...polarOptions, limitUm: 50 }),
  shaft: surveyDial({ ...dial, surface: 'outside' }).drawing,
  bore: surveyDial({ ...dial, surface: 'inside' }).drawing,
  ends: endsPicture({
    widthPx: 320,
    movement: 'up',
    end: 1,
    texts: { first: 'first', second: 'second' },
  }),
  planes: planesPicture({
    widthPx: 320,
    place: 'machine',
    planesMm: [0, 9],
    doneIndexes: [],
    nextIndex: 0,
    texts: planes,
  }),
}

describe('drawings of surveys', () => {
  it.each(Object.entries(drawings))('lay no ink on what is as light as it: %s', (_, drawing) => {
    // In the dark views ink is white and a face in the light of the lamp is nearly so.
    const fills = drawing.shapes.map((one) => (one.kind === 'path' ? one.fill : undefined))
    expect(fills).toContain('faint')
    expect(fills).not.toContain('bright')
  })
})
