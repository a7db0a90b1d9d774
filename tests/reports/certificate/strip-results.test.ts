import { describe, expect, it } from 'vitest'
import { drawCertificate } from '../../../reports/certificate/draw.ts'
import { signatureBlocks } from '../../../reports/certificate/signatures.ts'
import { stripBlocks } from '../../../reports/certificate/strip-results.ts'
import type { Evidence } from '../../../src/domain/evidence.ts'
import { buildAssembly } from '../../support/build-assembly.ts'
import { buildSpringCheck } from '../../support/build-spring-check.ts'
import { buildWearTrack } from '../../support/build-wear-track.ts'
import { pdfText } from '../../support/pdf-text.ts'
import { ordinaryEvidence, ordinaryRecord } from '../../support/sample-certificate.ts'

const recordOf = (changes: Partial<Evidence>) =>
  ordinaryRecord({ evidence: ordinaryEvidence(changes) })

const assembly = buildAssembly({
  loadN: 108,
  loadFrom: 'spring-check',
  springCheckId: 1,
  designLoadN: 110,
  loadTolerancePercent: 10,
  designSource: 'drawing 12 B',
  setScrews: [{ name: 'M6', quantityCount: 4, torqueNm: 8, designTorqueNm: 10 }],
  torqueTolerancePercent: 10,
  replacesId: 9,
  reason: 'torque wrench misread',
})
const all = {
  wearTracks: [buildWearTrack()],
  springChecks: [buildSpringCheck({ recordedByName: 'Sam Spring' })],
  assemblies: [assembly],
}

/** Every line of the table, with the notes. */
function linesOf(changes: Partial<Evidence>): readonly string[] {
  return stripBlocks(recordOf(changes)).flatMap((block) =>
    block.kind === 'table'
      ? block.rows.flatMap((row) => [
          ...row.cells.flatMap((cell) => cell.lines.map((line) => line.text)),
          row.note ?? '',
        ])
      : [],
  )
}

describe('what the certificate says of tracks, springs and assembly', () => {
  it('is nothing where none was recorded', () => {
    expect(stripBlocks(recordOf({}))).toEqual([])
    expect(recordOf({})).not.toHaveProperty('assembly')
  })

  it('is the movement that a track tells, beside what surveys found', () => {
    const lines = linesOf({ wearTracks: all.wearTracks })
    expect(lines).toContain('track 4.2 mm, nose 3.95 mm')
    expect(lines).toContain('movement 250 µm')
    expect(lines).toContain('Nothing that widens this track was surveyed.')
    const narrow = buildWearTrack({ movementUm: -50 })
    expect(linesOf({ wearTracks: [narrow] })).toContain('narrower than the nose by 50 µm')
  })

  it('is what springs press with, their set, and the travel that is left', () => {
    const lines = linesOf({ springChecks: all.springChecks })
    for (const text of [
      'six springs',
      'presses with 108.0 N',
      '5.00 mm of travel left to solid',
      'shorter than a new one by 0.50 mm',
    ]) {
      expect(lines).toContain(text.replace('six', '6'))
    }
  })

  it('is the assembly against its design, with what was corrected and what is amiss', () => {
    const lines = linesOf(all)
    expect(lines).toContain('Not as asked for')
    expect(lines).toContain(
      'Spring load 108.0 N, asked for 110 N ± 10 %: within (by the check of the springs)',
    )
    expect(lines).toContain('4 × M6: 8 N·m, asked for 10 N·m ± 10 %: beyond')
    expect(lines.join('\n')).toContain('torque wrench misread')
  })

  it('is no load as asked for by a check of springs that was corrected since', () => {
    const asked = { ...assembly, designLoadN: 108, setScrews: [] }
    const [check] = all.springChecks
    const later = buildSpringCheck({ id: 2, replacesId: 1, springsCount: 2, workingLoadN: 36 })
    const lines = (springChecks: Evidence['springChecks']) =>
      linesOf({ springChecks, assemblies: [asked] })
    expect(lines([check!])).toContain('As asked for')
    const after = lines([{ ...check!, replacedById: 2 }, later])
    expect(after).toContain('presses with 36.0 N')
    expect(after).toContain(
      'Spring load 108.0 N, asked for 108 N ± 10 %: not compared (by a check of the springs that was corrected since)',
    )
    expect(after).toContain('Not all compared')
    expect(after).not.toContain('As asked for')
  })

  it('is printed, with its drawings told in words, and says who did it', async () => {
    const record = recordOf(all)
    const text = pdfText(await drawCertificate(record))
    expect(text).toContain('Worn tracks, springs and assembly')
    expect(text).toContain('movement 250')
    const signed = JSON.stringify(signatureBlocks(record))
    expect(signed).toContain('Sam Spring')
    expect(signed).toContain('springs: ')
  })
})
