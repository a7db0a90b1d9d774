import { beforeAll, describe, expect, it } from 'vitest'
import { drawCertificate } from '../../../reports/certificate/draw.ts'
import { pdfPages, pdfText } from '../../support/pdf-text.ts'
import { longRecord, ordinaryRecord } from '../../support/sample-certificate.ts'

/**
 * ISO/IEC 17025:2017, 7.8, read as a checklist over the text of the certificate (item letters
 * and wording paraphrased, from memory and from published summaries of the clause).
 */
const record = ordinaryRecord()
let text = ''
let longText = ''
let pages: readonly { readonly text: string }[] = []

beforeAll(async () => {
  const pdf = await drawCertificate(record)
  pages = pdfPages(pdf)
  text = pdfText(pdf)
  longText = pdfText(await drawCertificate(longRecord()))
})

const checklist: readonly (readonly [string, readonly string[]])[] = [
  ['7.8.2.1 a) a title', ['Test certificate']],
  [
    '7.8.2.1 b) name and address of the laboratory',
    ['Tidewater Seal Workshop', 'Old Ropewalk 4, Mudflat Quay, Estuary Town'],
  ],
  ['7.8.2.1 c) where the work was done', ['Place of work Tidewater Seal Workshop, Old']],
  ['7.8.2.1 d) a clear end', ['End of certificate C-2026-0042-K7QX3M, revision 0']],
  [
    '7.8.2.1 e) name and contact of the customer',
    ['Saltmarsh Sugar Works', 'Canal Road 11, Saltmarsh', 'Cora Ebb, maintenance'],
  ],
  [
    '7.8.2.1 f) the methods used',
    ['Flatness by line count (flatness/counted 2)', 'Static air test (leak/pressure-change 1)'],
  ],
  [
    '7.8.2.1 g) description, identity and condition of the item',
    ['Serial number SW-0117', 'TS-4471, revision C', 'stated clean on receipt', 'as found'],
  ],
  ['7.8.2.1 h) date of receipt', ['Received 2026-03-12']],
  ['7.8.2.1 i) dates of the work', ['Tested 2026-03-13 to 2026-03-18']],
  ['7.8.2.1 j) date of issue', ['Issued 2026-03-19']],
  ['7.8.2.1 k) sampling', ['Sampling: none, the seal itself was tested']],
  [
    '7.8.2.1 l) results concern only the items tested',
    ['The results concern only the seal named in this certificate'],
  ],
  [
    '7.8.2.1 m) results with their units',
    ['0.367 µm', '14.5 µin', '1.25 helium bands', '3.20 kPa', '0.0228 Pa·m³/s', '13.5 mL/min'],
  ],
  [
    '7.8.2.1 n) additions, deviations, exclusions',
    ['Additions to, deviations or exclusions from the methods: none but those in the notes'],
  ],
  [
    '7.8.2.1 o) who authorises',
    ['Reviewed and released by Ian Ives Inspector Department: Inspection 2026-03-19'],
  ],
  ['7.8.2.1 p) results from outside', ['Results from outside providers: none']],
  [
    '7.8.2.2 customer-supplied data are marked, with a disclaimer',
    [
      'Sealed pressure, gauge † 450 kPa',
      '† As stated by the customer, not checked by the workshop',
    ],
  ],
  ['7.8.3.1 a) test conditions', ['soaked 45 min', '20.5 °C', 'volume 5 L', 'held 600 s (10 min)']],
  ['7.8.3.1 b) statement of conformity', ['Meets its limits']],
  [
    '7.8.3.1 c) uncertainty where evaluated, and where not',
    ['(k = 2)', 'Uncertainty budgets', 'Left out, because nobody stated it'],
  ],
  [
    '7.8.6 decision rule, its risk, to which results, against which limits',
    [
      'Simple acceptance',
      'the risk of a wrong verdict is up to',
      'It was applied before rounding to every result in this certificate that has a limit',
      'at most 0.881 µm (34.7 µin)',
      'Published: Installation leaflets of several seal makers',
    ],
  ],
]

describe('the certificate against ISO/IEC 17025:2017, 7.8', () => {
  it.each(checklist)('has %s', (_, parts) => {
    for (const part of parts) expect(text).toContain(part)
  })

  it('has 7.8.2.1 d) an identification on every page by which it is part of the whole', () => {
    expect(pages.length).toBeGreaterThan(1)
    for (const page of pages) expect(page.text).toContain('C-2026-0042-K7QX3M, revision 0')
  })

  it('has 7.8.8 an amended issue that says what it replaces and why', () => {
    expect(longText).toContain('This revision replaces revision 1')
    expect(longText).toContain('Reason: the drawing revision was misread on receipt.')
    expect(text).not.toContain('This revision replaces')
  })
})
