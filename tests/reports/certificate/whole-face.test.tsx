import { beforeAll, describe, expect, it } from 'vitest'
import { certificateContent } from '../../../reports/certificate/content.ts'
import { drawCertificate } from '../../../reports/certificate/draw.ts'
import type { Block } from '../../../reports/document.ts'
import type { CertificateRecord } from '../../../src/domain/certificate.ts'
import type { FlatnessReading } from '../../../src/domain/flatness.ts'
import type { Drawing } from '../../../src/plots/drawing.ts'
import { SealResults } from '../../../views/seal-results.tsx'
import { WholeFaceFigure } from '../../../views/whole-face/whole-face-figure.tsx'
import { buildLineGrid } from '../../support/build-line-grid.ts'
import { pdfPages, pdfText } from '../../support/pdf-text.ts'
import { readSuitePhoto } from '../../support/read-suite-photo.ts'
import { ordinaryEvidence, ordinaryRecord } from '../../support/sample-certificate.ts'

const pathsOf = (drawing: Drawing) =>
  drawing.shapes.flatMap((one) => (one.kind === 'path' ? [one.d] : []))
const figuresOf = (record: CertificateRecord) =>
  certificateContent(record).blocks.filter(
    (one): one is Extract<Block, { kind: 'figures' }> => one.kind === 'figures',
  )
const drawingsOf = ({ large, small }: Extract<Block, { kind: 'figures' }>) =>
  [large, ...small].map((one) => one.picture.drawing)

/** The rotating face of the sample, as found and as left, each read whole. */
function recordOf(readings: readonly FlatnessReading[]): CertificateRecord {
  const { flatnessReadings } = ordinaryEvidence()
  const others = flatnessReadings.filter((one) => one.faceKind !== 'rotating-face')
  return ordinaryRecord({
    evidence: ordinaryEvidence({ flatnessReadings: [...readings, ...others] }),
  })
}

let found: FlatnessReading
let left: FlatnessReading
let record: CertificateRecord
let pdf: Buffer

// Two photographs are read, a second each alone and several beside other work.
beforeAll(async () => {
  const face = { componentId: 11, faceKind: 'rotating-face' } as const
  found = await readSuitePhoto('core-001', { ...face, id: 1, condition: 'as-found' })
  left = await readSuitePhoto('core-000', {
    ...face,
    id: 2,
    condition: 'as-left',
    opensTowardsDeg: 30,
  })
  record = recordOf([found, left])
  pdf = await drawCertificate(record)
}, 60_000)

describe('a face that was read whole, on its certificate', () => {
  it('is drawn with the very paths of the page of its reading', () => {
    const blocks = figuresOf(record)
    expect(blocks).toHaveLength(2)
    for (const [index, reading] of [found, left].entries()) {
      const block = blocks[index]
      if (reading.wholeFace === null || block === undefined) throw new Error('no map')
      const page = String(<WholeFaceFigure wholeFace={reading.wholeFace} id="face" />)
      const paths = drawingsOf(block).flatMap(pathsOf)
      expect(paths.length).toBeGreaterThan(20)
      for (const d of paths) expect(page).toContain(`d="${d}"`)
    }
  })

  it('is drawn the same from the stored record, and on the pages of seal and certificate', () => {
    const stored = JSON.parse(JSON.stringify(record)) as CertificateRecord
    expect(figuresOf(stored)).toEqual(figuresOf(record))
    const page = String(<SealResults {...stored} />)
    const [, asLeft] = figuresOf(record)
    if (asLeft === undefined) throw new Error('no map')
    for (const d of drawingsOf(asLeft).flatMap(pathsOf)) expect(page).toContain(`d="${d}"`)
  })

  it('prints the judged figure beside the others, and which plane it is over', () => {
    const text = pdfText(pdf)
    const [face] = record.faces
    for (const reading of [face?.asFound, face?.asLeft]) {
      const whole = reading?.wholeFace
      if (reading === undefined || reading === null || whole === undefined) throw new Error('none')
      const { flatnessUm, expandedUncertaintyUm } = reading
      expect(text).toContain(`${flatnessUm?.text} ± ${expandedUncertaintyUm?.text} µm`)
      expect(text).toContain(`${whole.minimumZoneUm?.text} µm`)
      expect(text).toContain(`${whole.rmsUm?.text} µm`)
      for (const lobe of whole.lobes) expect(text).toContain(`± ${lobe.amplitudeUm.text} µm`)
    }
    expect(text).toContain('over the least-squares plane')
    expect(text).toContain('Neither may be compared with a flatness by line count')
  })

  it('says which map may be upside down, since nobody saw which way the gap opens', () => {
    const text = pdfText(pdf)
    expect(text).toContain('Rotating face, as found (direction not determined)')
    expect(text).toMatch(/Rotating face, as left(?! \(direction)/)
    expect(text.match(/may be upside down/g)).toHaveLength(1)
  })

  it('puts two maps with their figures on one page', () => {
    const pages = pdfPages(pdf).map((one) => one.text)
    const [page, ...others] = pages.filter((text) => text.includes('Map of the face'))
    expect(others).toEqual([])
    expect(page?.match(/Contours of the face/g)).toHaveLength(2)
    expect(page?.match(/Three waves around/g)).toHaveLength(2)
  })

  it('gives every drawing an alternative with its figures', () => {
    for (const { large, small } of figuresOf(record)) {
      for (const { picture } of [large, ...small]) expect(picture.alternative).toMatch(/\d µm/)
    }
  })

  it('says what was read with a grid of lines, without a map', async () => {
    const wholeFace = buildLineGrid()
    const grid = recordOf([{ ...left, method: 'flatness/line-grid 1', wholeFace }])
    expect(figuresOf(grid)).toEqual([])
    const text = pdfText(await drawCertificate(grid))
    expect(text).toContain('1.25 bands one way and 0.50 bands the other way')
    expect(text).toContain('from straight lines laid by hand')
    expect(text).not.toContain('over the least-squares plane')
  })

  it('says nothing of maps where bands were counted', () => {
    expect(JSON.stringify(certificateContent(ordinaryRecord()))).not.toContain('Map of the face')
    expect(JSON.stringify(ordinaryRecord())).not.toContain('wholeFace')
  })
})
