import type { Child } from 'hono/jsx'
import { describe, expect, it } from 'vitest'
import { mapOfWholeFace } from '../../../src/domain/map-of-whole-face.ts'
import { wholeFaceDrawings } from '../../../src/plots/whole-face-drawings.ts'
import { SeenPicture } from '../../../views/whole-face/seen-picture.tsx'
import { WholeFaceFacts } from '../../../views/whole-face/whole-face-facts.tsx'
import { WholeFaceFigure } from '../../../views/whole-face/whole-face-figure.tsx'
import { wholeFaceWords } from '../../../views/words/en/whole-face.ts'
import { wholeFaceTexts } from '../../../views/words/en/whole-face-texts.ts'
import { dish, madeSurface, madeWholeReading } from '../../domain/made-whole-reading.ts'
import { buildLineGrid } from '../../support/build-line-grid.ts'
import { buildWholeFace } from '../../support/build-whole-face.ts'

const html = (child: Child) => String(child)
const photo = { widthPx: 1000, heightPx: 800 }
const edges = {
  outer: { cx: 500, cy: 400, rx: 300, ry: 298, rotationDeg: 0 },
  inner: { cx: 500, cy: 400, rx: 240, ry: 239, rotationDeg: 0 },
}
const lineGrid = buildLineGrid()

describe('WholeFaceFigure', () => {
  const { wholeFace } = madeWholeReading(1, madeSurface(5))

  it('shows the very paths of the drawings, with names that differ', () => {
    const map = mapOfWholeFace(wholeFace)
    if (map === null) throw new Error('nothing was fitted')
    const page = html(<WholeFaceFigure wholeFace={wholeFace} id="face" />)
    const paths = Object.values(wholeFaceDrawings(map, wholeFaceTexts)).flatMap((drawing) =>
      drawing.shapes.flatMap((one) => (one.kind === 'path' ? [one.d] : [])),
    )
    expect(paths.length).toBeGreaterThan(20)
    for (const d of paths) expect(page).toContain(`d="${d}"`)
    for (const id of ['face-map', 'face-across', 'face-around']) {
      expect(page).toContain(`aria-labelledby="${id}-title"`)
    }
  })

  it('tells who does not see it the highest and the lowest place and the edges', () => {
    const page = html(<WholeFaceFigure wholeFace={madeWholeReading(1, dish).wholeFace} id="face" />)
    const [title] = /Contour lines of the face[^<]*/.exec(page) ?? []
    expect(title).toMatch(/Highest: 0\.4\d\d µm at \d+°\. Lowest: −0\.5\d\d µm at \d+°/)
    expect(page).toMatch(/the mean around is −0\.5\d\d µm at the inner and 0\.4\d\d µm/)
    expect(page).toMatch(/its outer edge lies from 0\.4\d\d to 0\.4\d\d µm, its inner edge from/)
  })

  it('says that it may be upside down only where the sign is not known', () => {
    const upsideDown = wholeFaceWords.upsideDown
    expect(html(<WholeFaceFigure wholeFace={wholeFace} id="a" />)).not.toContain(upsideDown)
    const open = { ...wholeFace, isSignKnown: false }
    expect(html(<WholeFaceFigure wholeFace={open} id="a" />)).toContain(upsideDown)
  })

  it('says that a narrow land is drawn wider than it is, and of a wide one nothing', () => {
    const wide = { ...wholeFace, surface: { ...dish, radiusRatio: 0.5, seenFrom: 0.52 } }
    const { drawnWider } = wholeFaceWords
    expect(html(<WholeFaceFigure wholeFace={wholeFace} id="a" />)).toContain(drawnWider)
    expect(html(<WholeFaceFigure wholeFace={wide} id="a" />)).not.toContain(drawnWider)
  })

  it('says what was read with a grid of lines instead of a map', () => {
    const page = html(<WholeFaceFigure wholeFace={lineGrid} id="a" />)
    expect(page).toContain('1.25 bands one way and 0.50 bands the other way')
    expect(page).not.toContain('<svg')
  })

  it('says so of a certificate too, which knows no source', () => {
    const certified = {
      surface: null,
      outerDiameterMm: 60,
      isSignKnown: false,
      lineGridBands: {
        oneWay: { value: 2, text: '2.00' },
        otherWay: { value: 0, text: '0.00' },
      },
    }
    const page = html(<WholeFaceFigure wholeFace={certified} id="a" />)
    expect(page).toContain('2.00 bands one way and 0.00 bands the other way')
  })
})

describe('WholeFaceFacts', () => {
  const facts = (wholeFace: Parameters<typeof WholeFaceFacts>[0]['wholeFace']) =>
    html(<WholeFaceFacts wholeFace={wholeFace} />)

  it('says how it was read, and gives minimum zone, RMS, taper, waves and diameters', () => {
    const page = facts(madeWholeReading(1, dish).wholeFace)
    for (const said of ['read from a photograph', '1.000 µm', '90 %', '60.00 and 45.00 mm']) {
      expect(page).toContain(said)
    }
    expect(page).toContain('Flatness, minimum zone')
    expect(page).toContain('RMS')
    expect(page).toContain('Three waves around')
  })

  it('gives a taper of unknown direction its size, and a wave both its places', () => {
    const open = madeWholeReading(1, dish, { isSignKnown: false }).wholeFace
    expect(facts(open)).toContain('1.000 µm, direction not determined')
    const waves = { ...open, lobes: [{ order: 2, amplitudeUm: 0.1, phaseDeg: 33.4 }] }
    expect(facts(waves)).toContain('± 0.100 µm, high or low at 33°')
    expect(facts({ ...waves, isSignKnown: true })).toContain('± 0.100 µm, high at 33°')
  })

  it('gives a wave of no height no place', () => {
    const none = buildWholeFace({ lobes: [{ order: 3, amplitudeUm: 0.0002, phaseDeg: 77 }] })
    expect(facts(none)).toContain('± 0.000 µm<')
    expect(facts(none)).not.toContain('77°')
  })

  it('asks to look at a place that does not follow, and says where it is', () => {
    const doubtful = buildWholeFace({ cautions: ['local-defect-or-step'] })
    const { seen } = doubtful
    if (seen === null) throw new Error('nothing was seen')
    const page = facts({ ...doubtful, seen: { ...seen, doubtfulDeg: [41.6] } })
    expect(page).toContain('Look at it before the face is released')
    expect(page).toContain('At 42°')
  })
})

describe('SeenPicture', () => {
  const seen = (wholeFace: Parameters<typeof SeenPicture>[0]['wholeFace']) =>
    html(<SeenPicture wholeFace={wholeFace} photo={photo} href="/picture" />)

  it('lays the bands over the photograph, and the residuals beside it', () => {
    const page = seen(buildWholeFace())
    expect(page).toContain('src="/picture"')
    expect(page).toContain('viewBox="0 0 1000 800"')
    // Of three seen cells two differ by 5 % or more.
    expect(page).toContain('67 % of what was seen differs by 5 % of the swing or more')
    expect(page).toContain('not seen')
    expect(page).not.toContain(wholeFaceWords.doubtful)
  })

  it('marks doubtful places and says what the sign means', () => {
    const whole = buildWholeFace()
    if (whole.seen === null) throw new Error('nothing was seen')
    const page = seen({ ...whole, seen: { ...whole.seen, doubtfulDeg: [10] } })
    expect(page).toContain(wholeFaceWords.doubtful)
    expect(page).toContain('>?</text>')
  })

  it('shows the places that were marked with their orders, and no residuals', () => {
    const points = [{ x: 500, y: 130, order: 2.5 }]
    const source = {
      kind: 'marked',
      photoId: 1,
      ...edges,
      points,
      increasingTowards: null,
      viewingAngleDeg: null,
    } as const
    const page = seen({ source, seen: null })
    expect(page).toContain('>2.5</text>')
    expect(page).toContain(wholeFaceWords.seenTitle.marked)
    expect(page).not.toContain('id="residuals-title"')
  })

  it('shows the grid as it was laid', () => {
    const page = seen(lineGrid)
    expect(page).toContain(wholeFaceWords.seenText['line-grid'])
    expect(page).toContain('M0 400L1000 400')
  })

  it('has no style or script of its own in the page', () => {
    expect(seen(buildWholeFace())).not.toMatch(/ style=|<script|on\w+=/)
  })
})
