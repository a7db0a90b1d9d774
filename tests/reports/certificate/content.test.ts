import { describe, expect, it } from 'vitest'
import { certificateContent } from '../../../reports/certificate/content.ts'
import type { Block, PaperDocument } from '../../../reports/document.ts'
import type { CertifiedFlatness } from '../../../src/domain/certified-results.ts'
import { certificateWords } from '../../../views/words/en/certificate.ts'
import { buildMeasuredValue } from '../../support/build-measured-value.ts'
import {
  failingRecord,
  longRecord,
  ordinaryEvidence,
  ordinaryRecord,
} from '../../support/sample-certificate.ts'

const textOf = (document: PaperDocument): string => JSON.stringify(document.blocks)

/** The same reading of a face that was too matte. */
function unreadable(reading: CertifiedFlatness | null): CertifiedFlatness | null {
  if (reading === null) return null
  const figures = { flatnessUm: null, flatnessUin: null, bands: null }
  return { ...reading, ...figures, pattern: 'unreadable', unreadableCause: 'matte' }
}

function blocksOf<K extends Block['kind']>(document: PaperDocument, kind: K) {
  return document.blocks.filter((one): one is Extract<Block, { kind: K }> => one.kind === kind)
}

describe('the content of the certificate', () => {
  it('answers first: verdict, seal, order and how to check it', () => {
    const content = certificateContent(ordinaryRecord())
    const [first] = content.blocks
    if (first?.kind !== 'summary') throw new Error('the first block is not the summary')
    expect(first.verdict).toBe('pass')
    expect(first.word).toBe('Meets its limits')
    expect(first.facts.map((one) => one.value)).toContain('W-2026-0042')
    expect(first.code.url).toBe('https://ringproof.example/verify/C-2026-0042-K7QX3M')
  })

  it('shows the as-found verdict beside the as-left one, each with word and shape', () => {
    const [flatness] = blocksOf(certificateContent(ordinaryRecord()), 'table')
    const [, asFound, asLeft] = flatness?.rows[0]?.cells ?? []
    expect(asFound?.lines[0]).toEqual({ text: 'Fail', style: 'strong', mark: 'fail' })
    expect(asLeft?.lines[0]).toEqual({ text: 'Pass', style: 'strong', mark: 'pass' })
    // 4.5 helium bands are 4.5 · 587.5618 nm / 2 = 1.322 µm = 52.0 µin.
    expect(asFound?.lines.map((one) => one.text)).toEqual(
      expect.arrayContaining([
        '1.322 µm',
        '52.0 µin, by line count',
        '4.50 helium bands',
        'form: convex',
      ]),
    )
  })

  it('calls a line count one, says what it sees, and never the flatness of a face', () => {
    const text = textOf(certificateContent(ordinaryRecord()))
    expect(text).toContain('Flatness by line count, stationary seat')
    expect(text).toContain('it is no figure of the whole surface')
    expect(text).not.toContain('"Flatness, stationary seat"')
  })

  it('says why a face could not be read, where that was kept', () => {
    const record = ordinaryRecord()
    const faces = record.faces.map((face) => ({ ...face, asFound: unreadable(face.asFound) }))
    const text = textOf(certificateContent({ ...record, faces }))
    expect(text).toContain('face too matte')
  })

  it('has as many cells in every row as the table has columns, and a picture says what it shows', () => {
    const tables = [ordinaryRecord(), longRecord(), failingRecord()].flatMap((record) =>
      blocksOf(certificateContent(record), 'table'),
    )
    expect(tables.length).toBeGreaterThan(10)
    for (const { columns, rows } of tables) {
      for (const { cells } of rows) {
        expect(cells).toHaveLength(columns.length)
        for (const { picture, bar } of cells) {
          expect(picture?.alternative).not.toBe('')
          expect(bar?.alternative).not.toBe('')
        }
      }
    }
  })

  it('leaves nothing blank', () => {
    const content = certificateContent(failingRecord())
    const facts = blocksOf(content, 'facts').flatMap((one) => one.facts)
    expect(facts.length).toBeGreaterThan(15)
    expect(facts.filter((one) => one.value.trim() === '')).toEqual([])
    const cells = blocksOf(content, 'table').flatMap((one) => one.rows.flatMap((row) => row.cells))
    const blank = cells.filter((one) => one.bar === undefined && one.lines.length === 0)
    expect(blank).toEqual([])
    const texts = cells.flatMap((one) => one.lines.map((line) => line.text))
    expect(texts.filter((text) => text.trim() === '')).toEqual([])
    expect(texts).toContain('not measured')
  })

  it('says plainly which instrument was out of calibration, with the acknowledgement', () => {
    const text = textOf(certificateContent(longRecord()))
    expect(text).toContain('Not in calibration on the day of use: G-07.')
    expect(text).toContain('Ian Ives acknowledged this on release: “Gauge G-07 is three')
    expect(textOf(certificateContent(ordinaryRecord()))).not.toContain('Not in calibration')
  })

  it('says that nobody acknowledged it where nobody did', () => {
    const record = { ...longRecord() }
    const silent = { ...record, release: { ...record.release, acknowledgement: '' } }
    expect(textOf(certificateContent(silent))).toContain('No acknowledgement was recorded')
  })

  it('states the independence of the releaser only where it is so', () => {
    const { independent, notIndependent } = certificateWords.statements
    const own = ordinaryRecord({
      decision: { byId: 1, byName: 'Tess Holm', byDepartment: '', at: '2026-03-19T13:20:00.000Z' },
    })
    expect(textOf(certificateContent(ordinaryRecord()))).toContain(independent)
    expect(textOf(certificateContent(own))).toContain(notIndependent)
    expect(textOf(certificateContent(own))).not.toContain(independent)
  })

  it('names each correction with both values, who, when and why', () => {
    const lists = blocksOf(certificateContent(longRecord()), 'list')
    const corrected = lists.flatMap((one) => one.items).filter((one) => one.includes('became'))
    expect(corrected).toHaveLength(12)
    expect(corrected[0]).toContain('Rotating face, as left: 0.955 µm became 0.955 µm; by Jürgen')
    expect(corrected[0]).toContain('Reason: Counted along the wrong diameter')
  })

  it('draws no bar for a limit that does not hold for the test, and says why', () => {
    const text = textOf(certificateContent(longRecord()))
    expect(text).toContain('Not judged: the volume is larger than the limit allows for')
  })

  it('prints the start that a drop is written for, and judges no test that began lower', () => {
    const plain = textOf(certificateContent(ordinaryRecord()))
    expect(plain).toContain(
      'in a hold of at least 5 min, volume at most 28 L, started at 170.0 kPa gauge or above',
    )
    const staticTests = ordinaryEvidence().staticTests.map((one) => ({
      ...one,
      startPressureKPaAbs: 121.325,
      endPressureKPaAbs: 121,
    }))
    const low = ordinaryRecord({ evidence: ordinaryEvidence({ staticTests }) })
    expect(low.staticTests[0]?.drop.limit?.startAtLeastKPaGauge).toEqual({
      value: 170,
      text: '170.0',
    })
    expect(textOf(certificateContent(low))).toContain(
      'Not judged: started below the pressure the limit is written for',
    )
  })

  it('says how finish, heights and run-out were read, each only where it was', () => {
    const { roughness, height, dial } = certificateWords.methods.measured
    const startOf = (method: (names: string) => string) => method('').split(' (')[0] ?? ''
    const without = textOf(certificateContent(ordinaryRecord()))
    for (const method of [roughness, height, dial]) expect(without).not.toContain(startOf(method))
    const evidence = ordinaryEvidence({ measuredValues: [buildMeasuredValue()] })
    const text = textOf(certificateContent(ordinaryRecord({ evidence })))
    expect(text).toContain(dial('dial/figure 2'))
    expect(text).not.toContain(startOf(roughness))
    expect(text).not.toContain(startOf(height))
  })

  it('says above which share of a limit nothing is decided, if the record knows', () => {
    const record = ordinaryRecord()
    expect(textOf(certificateContent(record))).toContain('more than 33.3 % of the limit')
    const limitSet = { ...record.limitSet, uncertaintyShareAtMost: null }
    const text = textOf(certificateContent({ ...record, limitSet }))
    expect(text).toContain('more of the limit than the limit set allows')
    expect(text).not.toContain('33.3 %')
  })

  it('says of a result without its instrument’s accuracy that its uncertainty is incomplete', () => {
    const record = ordinaryRecord()
    const [first, ...others] = record.results
    const kept = first!.uncertainty!
    expect(textOf(certificateContent(record))).not.toContain('missing from the budget')
    const incomplete = {
      ...first!,
      uncertainty: { ...kept, leftOut: [...kept.leftOut, 'instrument'] },
      ...{ decision: null, conformancePercent: null, beyondPercent: null, riskPercent: null },
    }
    const content = certificateContent({ ...record, results: [incomplete, ...others] })
    const text = textOf(content)
    expect(text).toContain('missing from the budget: error of the instrument')
    expect(text).toContain('no probability is stated')
    // The picture would draw an interval that is too narrow.
    const barsOf = (document: PaperDocument) => textOf(document).split('"bar":').length
    expect(barsOf(content)).toBe(barsOf(certificateContent(record)) - 1)
  })

  it('makes no claim of a type of inspection document', () => {
    const text = JSON.stringify(certificateContent(ordinaryRecord()))
    expect(text).not.toMatch(/EN 10204|type 3\.1|accredit/i)
  })

  it('gives the cautions, and puts the rules of the site before them', () => {
    const lists = blocksOf(certificateContent(ordinaryRecord()), 'list')
    const items = lists.flatMap((one) => one.items)
    expect(items).toEqual(expect.arrayContaining([...certificateWords.cautions.items]))
    expect(items).toEqual(expect.arrayContaining([...certificateWords.limitsOfTests.items]))
    expect(certificateWords.cautions.intro).toMatch(/rules of the site, local codes/)
  })

  it('counts bands under a lamp outside the table by its wavelength', () => {
    const { flatnessReadings } = ordinaryEvidence()
    const evidence = ordinaryEvidence({
      flatnessReadings: flatnessReadings.map((one) => ({ ...one, wavelengthNm: 600 })),
    })
    expect(textOf(certificateContent(ordinaryRecord({ evidence })))).toContain('1.25 600 nm bands')
  })
})
