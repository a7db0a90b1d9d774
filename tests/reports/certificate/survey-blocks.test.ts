import { beforeEach, describe, expect, it, vi } from 'vitest'
import { certificateContent } from '../../../reports/certificate/content.ts'
import { surveyBlocks } from '../../../reports/certificate/survey-blocks.ts'
import type { FigureFactsBlock } from '../../../reports/document.ts'
import { drawDocument } from '../../../reports/draw-document.ts'
import type { CertificateRecord } from '../../../src/domain/certificate.ts'
import type { Instrument } from '../../../src/domain/instrument.ts'
import { addDial, addSurvey } from '../../support/add-survey.ts'
import { buildShop, type Shop } from '../../support/build-shop.ts'
import { pdfText } from '../../support/pdf-text.ts'
import { workAndRelease } from '../../support/shop-steps.ts'
import { testApp } from '../../support/test-app.ts'

// Drawing a document takes 0.2 s alone and ten times that on a busy machine.
vi.setConfig({ testTimeout: 60_000 })

let shop: Shop
let dial: Instrument
beforeEach(() => {
  shop = buildShop()
  dial = addDial(shop)
})

const figuresOf = (record: CertificateRecord) =>
  surveyBlocks(record).filter((one): one is FigureFactsBlock => one.kind === 'figure-facts')
const pathsOf = (record: CertificateRecord) =>
  figuresOf(record).flatMap(({ figure }) =>
    figure.picture.drawing.shapes.flatMap((one) => (one.kind === 'path' ? [one.d] : [])),
  )

describe('the dial surveys of a certificate', () => {
  it('are drawn with the same paths on paper and on the page of the certificate', async () => {
    addSurvey(shop, dial, { characteristic: 'shaft-run-out' })
    const setUp = { sweptDiameterMm: 140 }
    addSurvey(shop, dial, { characteristic: 'chamber-face-squareness', setUp })
    const { certificate } = workAndRelease(shop)
    const paths = pathsOf(certificate.record)
    expect(paths.length).toBeGreaterThan(40)
    const app = testApp(shop.store)
    const page = await (await app.get(`/certificates/${certificate.number}`, 'cora')).text()
    for (const d of paths) expect(page).toContain(`d="${d}"`)
  })

  it('say figures, set-up, every reading and what was not measured, in the document', async () => {
    const setUp = { turnsCount: 2, isClosed: true, turned: 'indicator' } as const
    addSurvey(shop, dial, { characteristic: 'shaft-run-out', eccentricityUm: 20, setUp })
    const { certificate } = workAndRelease(shop)
    const text = pdfText(await drawDocument(certificateContent(certificate.record)))
    expect(text).toContain('Dial surveys')
    expect(text).toContain('fitted circle, 20.0 µm off the axis')
    expect(text).toContain('LO-17')
    expect(text).toContain('the indicator, carried round by the shaft')
    expect(text).toContain('Sag of the bracket not corrected')
    expect(text).toContain('0°, closing 6.8 6.8')
    expect(text).toContain('Not measured by these surveys')
  })

  it('tell both ends of a float without a plot', () => {
    const umAt = (deg: number) => (deg === 180 ? 120 : 0)
    addSurvey(shop, dial, { characteristic: 'end-play', umAt, setUp: { anglesDeg: [0, 180] } })
    const { record } = workAndRelease(shop).certificate
    expect(figuresOf(record)).toEqual([])
    expect(JSON.stringify(surveyBlocks(record))).toContain('second end, moved')
  })

  it('say nothing where there are none, as in older records', () => {
    const { record } = workAndRelease(shop).certificate
    expect(surveyBlocks(record)).toEqual([])
    const { surveys: _, ...older } = record
    expect(surveyBlocks(older)).toEqual([])
  })
})
