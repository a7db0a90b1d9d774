import { expect, test } from 'vitest'
import { findingBlocks } from '../../../reports/certificate/finding-blocks.ts'
import { readEvidence } from '../../../src/store/read-evidence.ts'
import { fillShop } from '../../support/fill-shop.ts'
import { ordinaryEvidence, ordinaryRecord } from '../../support/sample-certificate.ts'

const text = (value: unknown) => JSON.stringify(value)

test('what was seen and opinions stand apart, and new parts are named by their batch', () => {
  const { store } = fillShop()
  const evidence = [1, 2, 3]
    .map((id) => readEvidence(store, id))
    .find((one) => one.findings.length > 0)!
  const { findings, partLines } = evidence
  const record = ordinaryRecord({ evidence: ordinaryEvidence({ findings, partLines }) })
  expect(record.findings).toHaveLength(1) // the corrected one is left out
  const blocks = findingBlocks(record)
  const [, seen, , parts, , opinions] = blocks
  expect(text(seen)).toContain('Track wider than the nose, marked, 2 to 5 o’clock')
  expect(text(seen)).not.toContain('Run-out of the shaft')
  expect(text(parts)).toContain('batch B-18, certificate Z-4, FKM 75, cured 2026-03-01')
  expect(text(opinions)).toContain('Run-out of the shaft')
  expect(text(blocks)).toContain('opinions, not results')
})

test('a record from before the strip bench says nothing of it', () => {
  expect(findingBlocks(ordinaryRecord())).toEqual([])
})
