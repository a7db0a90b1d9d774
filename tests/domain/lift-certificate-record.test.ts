import { expect, test } from 'vitest'
import type { CertificateRecord } from '../../src/domain/certificate.ts'
import { liftCertificateRecord } from '../../src/domain/lift-certificate-record.ts'
import { buildMeasuredValue } from '../support/build-measured-value.ts'
import { ordinaryEvidence, ordinaryRecord } from '../support/sample-certificate.ts'

test('a record of today stays as it was stored', () => {
  const record = ordinaryRecord()
  expect(liftCertificateRecord(record)).toEqual(record)
})

test('an early record of version 2 states no share, whatever the limit set says today', () => {
  const record = ordinaryRecord()
  const { uncertaintyShareAtMost: _, ...limitSet } = record.limitSet
  const early = { ...record, limitSet } as CertificateRecord
  expect(liftCertificateRecord(early)).toEqual({
    ...record,
    limitSet: { ...limitSet, uncertaintyShareAtMost: null },
  })
})

test('an early record of version 2 tells of values read with an instrument what counted', () => {
  const measuredValues = [
    buildMeasuredValue({ condition: 'as-found' }),
    buildMeasuredValue({ id: 2 }),
  ]
  const record = ordinaryRecord({ evidence: ordinaryEvidence({ measuredValues }) })
  const { measuredValues: kept, ...early } = record
  const lifted = liftCertificateRecord(early as CertificateRecord)
  expect(lifted.measuredValues).toEqual([{ ...kept[1], readings: [], readingUnit: 'um' }])
})

test('a record of version 1 is shown by simple acceptance, without budgets', () => {
  const record = ordinaryRecord()
  const format = { ...record.format, version: 1 } as unknown as CertificateRecord['format']
  const lifted = liftCertificateRecord({ ...record, format })
  expect(lifted.rule.rule).toBe('simple')
  expect(lifted.results).toEqual([])
  expect(lifted.faces).toEqual(record.faces)
})
