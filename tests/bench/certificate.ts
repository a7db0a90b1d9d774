import { join } from 'node:path'
import Database from 'better-sqlite3'
import PDFDocument from 'pdfkit'
import { fontFile } from '../../reports/fonts/font-file.ts'
import type { CertificateRecord } from '../../src/domain/certificate.ts'
import { projectRoot } from '../../src/project-root.ts'
import { pdfPages } from '../support/pdf-text.ts'
import { alternate } from './tools/alternate.ts'
import type { Benchmark, Measured } from './tools/benchmark.ts'
import { importBuilt } from './tools/import-built.ts'

type Draw = typeof import('../../reports/certificate/draw.ts')

/** The longest record of the invented workshop. */
function demoRecord(): CertificateRecord {
  const raw = new Database(join(projectRoot(), '.build/demo.sqlite'), { readonly: true })
  const longest = 'SELECT record FROM certificate ORDER BY length(record) DESC, id'
  const record = raw.prepare(longest).pluck().get() as string
  raw.close()
  return JSON.parse(record) as CertificateRecord
}

/** The texts of each page as one paragraph, its first in the strong font, and nothing drawn. */
async function setPlainly(pages: readonly (readonly string[])[]): Promise<Buffer> {
  const pdf = new PDFDocument({ size: 'A4', margin: 48, autoFirstPage: false, font: '' })
  const parts: Uint8Array[] = []
  const isFinished = new Promise((resolve) => pdf.on('end', resolve))
  pdf.on('data', (part: Uint8Array) => parts.push(part))
  for (const name of ['regular', 'strong'] as const) pdf.registerFont(name, fontFile(name))
  for (const [first = '', ...rest] of pages) {
    pdf.addPage()
    pdf.font('strong').fontSize(9).text(first)
    pdf.font('regular').fontSize(8).text(rest.join(' '))
  }
  pdf.end()
  await isFinished
  return Buffer.concat(parts)
}

async function msOf(draw: () => Promise<unknown>): Promise<number> {
  const startedAt = performance.now()
  await draw()
  return performance.now() - startedAt
}

async function run(): Promise<Measured> {
  const { drawCertificate } = await importBuilt<Draw>('reports/certificate/draw.ts')
  const record = demoRecord()
  const pages = pdfPages(await drawCertificate(record)).map((page) =>
    page.runs.map((one) => one.text),
  )
  const plainCount = pdfPages(await setPlainly(pages)).length
  if (plainCount !== pages.length) {
    throw new RangeError(`certificate requires ${pages.length} plain pages, got ${plainCount}`)
  }
  const ours = () => msOf(() => drawCertificate(record))
  const peer = () => msOf(() => setPlainly(pages))
  return alternate({ ours, peer, rounds: 15, warmUpRounds: 4 })
}

export const benchmark: Benchmark = {
  name: 'certificate',
  unit: 'ms',
  peerName: 'PDFKit, the same text plain, same fonts and pages',
  run,
}
