import { describe, expect, test } from 'vitest'
import { certifiedMeasuredValues } from '../../src/domain/certified-measured-values.ts'
import { measuredPairs } from '../../src/domain/measured-pairs.ts'
import { buildEvidence } from '../support/build-evidence.ts'
import { buildMeasuredValue } from '../support/build-measured-value.ts'

const certified = (...values: Parameters<typeof buildMeasuredValue>[0][]) =>
  certifiedMeasuredValues(
    buildEvidence({
      measuredValues: values.map((one, index) => buildMeasuredValue({ id: 1 + index, ...one })),
    }),
  )

describe('the values that a certificate tells', () => {
  test('are those that no correction replaced, by what was measured', () => {
    const told = certified(
      { replacedById: 2 },
      { replacesId: 1, readings: [{ um: 50, typed: '50' }], unit: 'um' },
      { characteristic: 'roughness', componentId: 11, readings: [{ um: 0.3, typed: '0,3' }] },
    )
    expect(told.map((one) => [one.characteristic, one.componentKind, one.readings])).toEqual([
      ['roughness', 'rotating-face', ['0,3']],
      ['shaft-run-out', null, ['50']],
    ])
    // 50 µm in mm, to the place of its U.
    expect(told[1]).toMatchObject({ unit: 'mm', value: { value: 0.05, text: '0.050' } })
    expect(told[1]?.text).toMatch(/^0\.050 ± 0\.0\d\d$/)
  })

  test('say which one a later one has overtaken', () => {
    const told = certified(
      {},
      { recordedAt: '2026-11-25T10:00:00.000Z' },
      { condition: 'as-found' },
    )
    expect(told.map((one) => one.isNewest)).toEqual([false, true, true])
  })

  test('stand in pairs, before and after, of what was measured at one place', () => {
    const onFace = { characteristic: 'roughness', readings: [{ um: 0.3, typed: '0.3' }] } as const
    const told = certified(
      { ...onFace, componentId: 11, condition: 'as-found' },
      { ...onFace, componentId: 11 },
      { ...onFace, componentId: 12 },
      {},
      { recordedAt: '2026-11-25T10:00:00.000Z' },
    )
    const pairs = measuredPairs(told)
    expect(
      pairs.map((one) => [one.characteristic, one.componentKind, one.asFound !== null]),
    ).toEqual([
      ['roughness', 'rotating-face', true],
      ['roughness', 'stationary-seat', false],
      ['shaft-run-out', null, false],
    ])
    expect(pairs[2]?.asLeft?.recordedAt).toBe('2026-11-25T10:00:00.000Z')
  })
})
