import { describe, expect, it } from 'vitest'
import { conditionBlocks } from '../../../reports/certificate/conditions.ts'
import { certificateContent } from '../../../reports/certificate/content.ts'
import { drawCertificate } from '../../../reports/certificate/draw.ts'
import { flatnessBlocks } from '../../../reports/certificate/flatness-results.ts'
import { lappingBlocks } from '../../../reports/certificate/lapping-results.ts'
import { signatureBlocks } from '../../../reports/certificate/signatures.ts'
import type { Block } from '../../../reports/document.ts'
import type { CertificateRecord } from '../../../src/domain/certificate.ts'
import type { LapCycle } from '../../../src/domain/lap-cycle.ts'
import { liftCertificateRecord } from '../../../src/domain/lift-certificate-record.ts'
import { buildLapCycle } from '../../support/build-lap-cycle.ts'
import { pdfText } from '../../support/pdf-text.ts'
import { ordinaryEvidence, ordinaryRecord } from '../../support/sample-certificate.ts'

/** The rotating face was found at 8:05 on the 13th and read as left at 9:10 on the 17th. */
const at = (hour: number) => `2026-03-16T${String(hour).padStart(2, '0')}:00:00.000Z`
const cycle = (id: number, changes: Partial<LapCycle> = {}) =>
  buildLapCycle({ id, recordedAt: at(9 + id), recordedByName: 'Lena Lapper', ...changes })

function recordOf(lapCycles: readonly LapCycle[], minimumNoseHeightMm: number | null = 1.5) {
  const evidence = ordinaryEvidence({ lapCycles })
  const components = evidence.seal.components.map((one) =>
    one.id === 11 ? { ...one, minimumNoseHeightMm } : { ...one, minimumNoseHeightMm: null },
  )
  return ordinaryRecord({ evidence: { ...evidence, seal: { ...evidence.seal, components } } })
}

/** The lines of every cell, row by row, and the note of a row after them. */
function rowsOf(blocks: readonly Block[]): string[][] {
  return blocks.flatMap((one) =>
    one.kind === 'table'
      ? one.rows.map((row) => [
          ...row.cells.map((cell) => cell.lines.map((line) => line.text).join(' | ')),
          ...(row.note === undefined ? [] : [row.note]),
        ])
      : [],
  )
}

const worked = [
  cycle(1, { heightBeforeMm: 1.62, stockUm: 25, replacedById: 3 }),
  cycle(2, { heightAfterMm: 1.581 }),
  cycle(3, { heightBeforeMm: 1.62, stockUm: 22, replacesId: 1, reason: 'slip of the key' }),
]

describe('what the certificate says of the lapping', () => {
  it('is nothing where nothing was lapped, as in records from before the log', () => {
    expect(lappingBlocks(recordOf([]))).toEqual([])
    const { lapping: _, ...early } = recordOf(worked)
    expect(lappingBlocks(liftCertificateRecord(early as CertificateRecord))).toEqual([])
    const format = { ...early.format, version: 1 }
    const oldest = { ...early, format } as unknown as CertificateRecord
    expect(lappingBlocks(liftCertificateRecord(oldest))).toEqual([])
  })

  it('is cycles, relaps, stock and heights, against the minimum, and what was corrected', () => {
    expect(rowsOf(lappingBlocks(recordOf(worked)))).toEqual([
      [
        'Rotating face',
        '2 cycles in this order | relapped once | 39.0 µm removed',
        'Height 1.620 to 1.581 mm (read)',
        'Above the minimum | 0.081 mm above the minimum | smallest allowed 1.5 mm',
        expect.stringMatching(/^Corrected by Lena Lapper on .*12:00.*: slip of the key$/),
      ],
    ])
  })

  it('says at most, reckoned or not recorded where that is so, and below where it is', () => {
    const cells = (cycles: readonly LapCycle[], minimum: number | null = 1.5) =>
      rowsOf(lappingBlocks(recordOf(cycles, minimum)))[0]?.slice(1)
    expect(cells([cycle(1)])).toEqual([
      '1 cycle in this order | relapped once | stock removed not known in full',
      'height not recorded',
      'Not held against a minimum | smallest allowed 1.5 mm',
    ])
    expect(cells([cycle(1, { heightBeforeMm: 1.52 }), cycle(2, { stockUm: 30 })])).toEqual([
      '2 cycles in this order | relapped once | stock removed not known in full',
      'Height 1.520 to at most 1.490 mm (reckoned)',
      'Below the minimum | 0.010 mm below the minimum | smallest allowed 1.5 mm',
    ])
    expect(cells([cycle(1, { heightAfterMm: 1.4, isNewRing: true })], null)).toEqual([
      '1 cycle in this order | a new ring | stock removed not known in full',
      'Height 1.400 mm (read)',
      'no smallest height stated',
    ])
  })

  it('ties each reading to the cycle before it, and none as found', () => {
    const record = recordOf([cycle(1), cycle(2)])
    const readings = rowsOf(conditionBlocks(record)).map((row) => row[0])
    expect(readings.filter((one) => one?.includes('after lap cycle 2'))).toHaveLength(1)
    expect(readings.find((one) => one?.includes('after lap cycle'))).toContain('Rotating face')
    expect(readings.filter((one) => one?.includes('after lap cycle 1'))).toEqual([])
  })

  it('says under the flatness in which order a face was read and matted', () => {
    // Read as left on the 17th, and matted the day after.
    const matted = cycle(2, { purpose: 'matt', recordedAt: '2026-03-18T10:00:00.000Z' })
    const notes = (lapCycles: readonly LapCycle[]) =>
      rowsOf(flatnessBlocks(recordOf(lapCycles))).map((row) => row[4])
    expect(notes([cycle(1)])).toEqual([undefined, undefined])
    const [note, other] = notes([cycle(1, { purpose: 'polish' }), matted])
    expect(note).toMatch(/^Flatness was read on the polished face \(.*\); it was matted afterwards/)
    expect(note).toContain('Its finish was not read since.')
    expect(other).toBeUndefined()
    const early = cycle(2, { purpose: 'matt' })
    expect(notes([cycle(1), early])[0]).toContain('Flatness was read on the matted face')
  })

  it('names who lapped among those who did the work, who then can not be independent', () => {
    const record = recordOf([cycle(1, { recordedById: 9 })])
    expect(record.release.isIndependent).toBe(false)
    expect(recordOf([cycle(1)]).release.isIndependent).toBe(true)
    expect(JSON.stringify(signatureBlocks(record))).toContain('lapping: 2026-03-16')
  })

  it('stands in the document, drawn with signs of its typeface alone', async () => {
    const text = pdfText(await drawCertificate(recordOf(worked))).replace(/\s+/g, ' ')
    expect(JSON.stringify(certificateContent(recordOf(worked)))).toContain('Lapping of the faces')
    expect(text).toContain('Lapping of the faces')
    expect(text).toContain('Height 1.620 to 1.581 mm (read)')
    expect(text).toContain('after lap cycle 2')
  })
})
