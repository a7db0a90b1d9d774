import { execFileSync, spawnSync } from 'node:child_process'
import { createHash } from 'node:crypto'
import { mkdtempSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { fileURLToPath } from 'node:url'
import { beforeAll, describe, expect, it } from 'vitest'
import { drawCertificate } from '../../../reports/certificate/draw.ts'
import type { CertificateRecord } from '../../../src/domain/certificate.ts'
import { certificateWords } from '../../../views/words/en/certificate.ts'
import { pdfPages, pdfText } from '../../support/pdf-text.ts'
import { failingRecord, longRecord, ordinaryRecord } from '../../support/sample-certificate.ts'

const records = {
  ordinary: ordinaryRecord(),
  long: longRecord(),
  failing: failingRecord(),
} as const
const names = Object.keys(records) as (keyof typeof records)[]
/** A second opinion where the tool is there; the checks do not rest on it. */
const hasPdftotext = spawnSync('pdftotext', ['-v']).error === undefined
const pdfs = new Map<string, Buffer>()

beforeAll(async () => {
  for (const name of names) pdfs.set(name, await drawCertificate(records[name]))
})

const pdfOf = (name: string): Buffer => pdfs.get(name) ?? Buffer.alloc(0)
const squeezed = (text: string): string => text.normalize('NFC').replace(/\s/g, '')

/** Every figure as printed, and every text that a person wrote or a number names. */
function printedValues(record: CertificateRecord): readonly string[] {
  const figures: string[] = []
  JSON.stringify(record, (_, value) => {
    if (typeof value?.text === 'string' && typeof value.value === 'number') figures.push(value.text)
    return value
  })
  const { workshop, customer, workOrder, seal, limitSet, release, equipment } = record
  const limits = [
    ...record.faces.map((one) => one.limit),
    ...record.staticTests.flatMap((one) => [one.drop.limit, one.leak.limit]),
  ].filter((one) => one !== null)
  return [
    ...figures,
    ...Object.values(workshop),
    ...Object.values(customer),
    ...Object.values(equipment ?? {}),
    ...[record.number, record.verifyUrl, record.changeReason, limitSet.name, limitSet.datedOn],
    ...[workOrder.number, workOrder.customerOrder, workOrder.reasonForRemoval, workOrder.lastFluid],
    ...[seal.serial, seal.drawing, seal.size, release.byName, release.byDepartment],
    release.acknowledgement,
    ...limits.flatMap((one) => [one.asWritten, one.source]),
    ...record.instruments.flatMap((one) => [
      one.number,
      one.name,
      one.dueOn,
      one.serial,
      one.certificateNumber,
    ]),
    ...record.corrections.flatMap((one) => [one.reason, one.byName]),
    ...record.testers.flatMap((one) => [one.name, ...one.did.map((act) => act.on)]),
    ...record.faces.flatMap((one) => [one.asFound?.note, one.asLeft?.note]),
    ...record.staticTests.flatMap((one) => [
      one.typed.startPressure,
      one.typed.endPressure,
      one.note,
    ]),
    ...[record.handOver?.byName, record.handOver?.note],
  ].filter((one) => typeof one === 'string' && one !== '') as string[]
}

describe('the drawn certificate', () => {
  it.each(names)('prints every figure and text of the %s record', (name) => {
    const text = squeezed(pdfText(pdfOf(name)))
    const values = printedValues(records[name])
    expect(values.length).toBeGreaterThan(40)
    const named = (value: string) => squeezed(value.replace(/[中村]/g, nameOf))
    expect(values.filter((value) => !text.includes(named(value)))).toEqual([])
  })

  it.each(names)('leaves no character of the %s record without a glyph', (name) => {
    const text = pdfText(pdfOf(name))
    expect(text).not.toContain('\uFFFD')
    expect(text).not.toContain('\u0000')
  })

  it('names characters that the font does not have instead of leaving them blank', () => {
    expect(pdfText(pdfOf('long'))).toContain('Škoda-Đurić [U+4E2D][U+6751]')
  })

  it('prints the signs of the trade and accented names', async () => {
    const signs = [...'≤≥λµΔ°θσ³·−×⁻†₀₁₂ØżŻółćŃĘÑăîțșğİőßÆŠđ'].join(' ')
    const record = { ...records.ordinary, changeReason: signs, revision: 1 }
    expect(pdfText(await drawCertificate(record))).toContain(signs)
  })

  it.each(names)('has number, revision and page x of y on every page of the %s one', (name) => {
    const pages = pdfPages(pdfOf(name))
    expect(pages.length).toBeGreaterThan(1)
    pages.forEach(({ text }, index) => {
      expect(text).toContain(`Page ${index + 1} of ${pages.length}`)
      expect(text).toContain(`${records[name].number}, revision ${records[name].revision}`)
    })
  })

  it('fits six pages when ordinary, and needs more for many corrections', () => {
    expect(pdfPages(pdfOf('ordinary'))).toHaveLength(6)
    expect(pdfPages(pdfOf('long')).length).toBeGreaterThanOrEqual(7)
  })

  it('marks invented data at head and foot of every page, and real data nowhere', () => {
    const count = (name: string) =>
      pdfPages(pdfOf(name)).map(({ text }) => text.split(certificateWords.invented).length - 1)
    expect(new Set(count('ordinary'))).toEqual(new Set([2]))
    expect(new Set(count('long'))).toEqual(new Set([2]))
    expect(new Set(count('failing'))).toEqual(new Set([0]))
  })

  it.each(names)('keeps everything of the %s one inside the paper and off the foot', (name) => {
    for (const { runs } of pdfPages(pdfOf(name))) {
      expect(runs.length).toBeGreaterThan(10)
      for (const run of runs) {
        expect(run.x, run.text).toBeGreaterThanOrEqual(24)
        expect(run.x, run.text).toBeLessThan(571)
        expect(run.y, run.text).toBeGreaterThan(13)
      }
    }
  })

  it('cuts nothing off when hundreds of characters have to be named', async () => {
    const { ordinary } = records
    const reasonForRemoval = '密封泄漏'.repeat(100)
    const record = { ...ordinary, workOrder: { ...ordinary.workOrder, reasonForRemoval } }
    const pages = pdfPages(await drawCertificate(record))
    const runs = pages.flatMap((page) => page.runs)
    const named = runs.filter((run) => run.text.includes('U+'))
    expect(squeezed(named.map((run) => run.text).join('')).match(/\[U\+/g)).toHaveLength(400)
    expect(Math.min(...named.map((run) => run.y))).toBeGreaterThan(60)
    // Wraps some two thousand characters named one by one: a second or two, more beside other work.
  }, 30_000)

  it('never leaves a heading as the last line above the foot', () => {
    const { results, item, conditions, instruments, methods, cautions } = certificateWords
    const headings = [results, item, conditions, instruments, methods, cautions].map(
      (one) => one.heading as string,
    )
    const lasts = names.flatMap((name) =>
      pdfPages(pdfOf(name)).map(({ runs }) => {
        // Between the foot and the running head, points from the lower edge.
        const body = runs.filter((run) => run.y > 64 && run.y < 775)
        return body.at(-1)?.text ?? ''
      }),
    )
    expect(lasts.length).toBeGreaterThan(8)
    expect(lasts.filter((text) => text === '')).toEqual([])
    expect(lasts.filter((text) => headings.includes(text))).toEqual([])
  })

  it('repeats the head of a table on the page that it continues on', () => {
    const pages = pdfPages(pdfOf('long'))
    const [head] = certificateWords.conditions.readingColumns
    const heads = pages.filter(({ text }) => text.includes(head))
    expect(heads.length).toBeGreaterThanOrEqual(2)
  })

  it('ends with its end mark, once', () => {
    const end = certificateWords.end(records.long.number, records.long.revision)
    const pages = pdfPages(pdfOf('long'))
    expect(pages.filter(({ text }) => text.includes(end))).toEqual([pages.at(-1)])
  })

  it('is tagged, in English, titled, with embedded fonts only', () => {
    const text = pdfOf('ordinary').toString('latin1')
    for (const part of [
      '/Marked true',
      '/Lang (en)',
      '/DisplayDocTitle true',
      '/S /H1',
      '/S /TH',
    ]) {
      expect(text).toContain(part)
    }
    expect(text).toContain('/Alt (')
    expect(text).not.toMatch(/Helvetica|\/Subtype \/Type1\b/)
    expect(text.match(/\/FontFile2/g)).toHaveLength(2)
  })

  it('gives the same bytes for the same record, in another process too', async () => {
    const pdf = pdfOf('ordinary')
    expect(await drawCertificate(ordinaryRecord())).toEqual(pdf)
    const { href } = new URL('../../../', import.meta.url)
    const script = `
      const { drawCertificate } = await import('${href}reports/certificate/draw.ts')
      const { ordinaryRecord } = await import('${href}tests/support/sample-certificate.ts')
      const { createHash } = await import('node:crypto')
      const pdf = await drawCertificate(ordinaryRecord())
      process.stdout.write(createHash('sha256').update(pdf).digest('hex'))`
    const theirs = execFileSync(process.execPath, ['--input-type=module', '--eval', script], {
      cwd: fileURLToPath(href),
      env: { ...process.env, TZ: 'Pacific/Auckland', LANG: 'de_DE.UTF-8' },
      encoding: 'utf8',
    })
    expect(theirs).toBe(createHash('sha256').update(pdf).digest('hex'))
  }, 30_000)

  it.runIf(hasPdftotext)('is read by a PDF reader as by our own', () => {
    const file = join(mkdtempSync(join(tmpdir(), 'certificate-')), 'one.pdf')
    writeFileSync(file, pdfOf('ordinary'))
    const theirs = squeezed(execFileSync('pdftotext', ['-raw', file, '-'], { encoding: 'utf8' }))
    const values = printedValues(records.ordinary)
    expect(values.filter((value) => !theirs.includes(squeezed(value)))).toEqual([])
  })

  it('is drawn from its JSON again byte for byte', async () => {
    const stored = JSON.parse(JSON.stringify(records.long)) as CertificateRecord
    expect(await drawCertificate(stored)).toEqual(pdfOf('long'))
  })
})

function nameOf(character: string): string {
  return `[U+${character.codePointAt(0)?.toString(16).toUpperCase()}]`
}
