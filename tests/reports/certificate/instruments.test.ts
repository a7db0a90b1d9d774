import { describe, expect, it } from 'vitest'
import { instrumentBlocks } from '../../../reports/certificate/instruments.ts'
import type { CertificateRecord } from '../../../src/domain/certificate.ts'
import type { InstrumentUse, UsedException } from '../../../src/domain/instrument.ts'
import { buildInstrumentUse } from '../../support/build-instrument.ts'
import { buildStaticTest } from '../../support/build-static-test.ts'
import { ordinaryEvidence, ordinaryRecord } from '../../support/sample-certificate.ts'

const exception: UsedException = {
  id: 7,
  fault: 'overdue',
  reason: 'Compared with G-02 that morning.',
  allowedByName: 'Ian Ives',
  allowedAt: '2026-11-23T08:00:00.000Z',
}

/** One test a gauge, on the days that follow each other. */
function recordOf(gauges: readonly Partial<InstrumentUse>[]): CertificateRecord {
  const staticTests = gauges.map((changes, index) =>
    buildStaticTest({
      id: 1 + index,
      startedAt: `2026-11-2${4 + index}T10:00:00.000Z`,
      gauge: buildInstrumentUse('pressure-gauge', { status: 'overdue', ...changes }),
    }),
  )
  return ordinaryRecord({ evidence: ordinaryEvidence({ staticTests }) })
}
const textOf = (record: CertificateRecord) => JSON.stringify(instrumentBlocks(record))

describe('an instrument that was not in calibration', () => {
  it('stands beside the exception that it was used by: who, when and why', () => {
    const text = textOf(recordOf([{ exception }]))
    expect(text).toContain('by exception: calibration overdue')
    expect(text).toContain('allowed by Ian Ives, 2026-11-23 08:00 UTC: “Compared with G-02')
    expect(text).toContain('Not in calibration on the day of use: G-01.')
    expect(text).not.toContain('No acknowledgement')
  })

  it('is said to lack one where nobody allowed or acknowledged it', () => {
    const text = textOf(recordOf([{}]))
    expect(text).toContain('No acknowledgement was recorded on release, and no exception')
    expect(text).not.toContain('by exception')
  })

  it('has a line for the use that was covered and one for the use that was not', () => {
    const record = recordOf([{ exception }, {}])
    const lines = record.instruments.filter((one) => one.number === 'G-01')
    expect(lines.map((one) => [one.exception?.reason, one.usedOn])).toEqual([
      [exception.reason, ['2026-11-24']],
      [undefined, ['2026-11-25']],
    ])
    const text = textOf(record)
    expect(text.split('by exception')).toHaveLength(2)
    expect(text).toContain('beside the use: G-01.')
  })

  it('names the exception of one that was in calibration and out of its range', () => {
    const beyond = { status: 'in-calibration', exception: { ...exception, fault: 'out-of-range' } }
    const text = textOf(recordOf([beyond as Partial<InstrumentUse>]))
    expect(text).toContain('by exception: used out of its range')
    expect(text).not.toContain('Not in calibration')
  })

  it('finds it in an older record, which kept exceptions in their own list alone', () => {
    const record = recordOf([{ exception }])
    const older = record.instruments.map(({ exception: _, ...kept }) => kept)
    expect(textOf({ ...record, instruments: older })).toContain('allowed by Ian Ives')
    const none = { ...record, instruments: older, exceptions: [] }
    expect(textOf(none)).toContain('No acknowledgement was recorded')
  })
})
