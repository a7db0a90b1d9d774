import { describe, expect, it } from 'vitest'
import { certificateContent } from '../../../reports/certificate/content.ts'
import { measuredConditionBlocks } from '../../../reports/certificate/measured-conditions.ts'
import { measuredBlocks } from '../../../reports/certificate/measured-results.ts'
import type { Block } from '../../../reports/document.ts'
import type { Limit } from '../../../src/domain/limit-set.ts'
import type { MeasuredValue } from '../../../src/domain/measured-value.ts'
import { certificateWords } from '../../../views/words/en/certificate.ts'
import { buildInstrumentUse } from '../../support/build-instrument.ts'
import { buildLimit } from '../../support/build-limit-set.ts'
import { buildMeasuredValue } from '../../support/build-measured-value.ts'
import { ordinaryEvidence, ordinaryRecord } from '../../support/sample-certificate.ts'

function recordOf(
  values: readonly Partial<MeasuredValue>[],
  limits: readonly Partial<Limit>[] = [],
) {
  const { limitSet } = ordinaryEvidence()
  const own = limits.map((one, index) => buildLimit({ id: 50 + index, ...one }))
  return ordinaryRecord({
    evidence: ordinaryEvidence({
      limitSet: { ...limitSet, limits: [...limitSet.limits, ...own] },
      measuredValues: values.map((one, index) => buildMeasuredValue({ id: 1 + index, ...one })),
    }),
  })
}

/** The lines of every cell, row by row. */
function rowsOf(blocks: readonly Block[]): string[][] {
  return blocks.flatMap((one) =>
    one.kind === 'table'
      ? one.rows.map((row) =>
          row.cells.map((cell) => cell.lines.map((line) => line.text).join(' | ')),
        )
      : [],
  )
}

const runOut = { characteristic: 'shaft-run-out', upper: 125, source: 'Own' } as const
const worn = { condition: 'as-found', readings: [{ um: 150, typed: '0,15' }] } as const

describe('what the certificate says of values read with an instrument', () => {
  it('stands before and after the work, each with U, k and its verdict, beside the limit', () => {
    const record = recordOf([worn, {}], [runOut])
    // u² = 10²/6 + 13²·2/3 µm², two readings of one dial: U = 2 x 11.4 = 23 µm (JCGM 100, 4.3.7).
    expect(rowsOf(measuredBlocks(record))).toEqual([
      [
        'Shaft run-out',
        'Fail | 0.150 ± 0.023 mm | ± U, k = 2',
        'Pass | 0.040 ± 0.023 mm | ± U, k = 2',
        expect.stringContaining('at most 0.125 mm'),
      ],
    ])
  })

  it('states a lower limit, the face, and what was not measured', () => {
    const height = {
      characteristic: 'face-height',
      componentId: 11,
      readings: [{ um: 2200, typed: '2.2' }],
    } as const
    const lower = { characteristic: 'face-height', upper: null, lower: 2400 } as const
    const [row] = rowsOf(measuredBlocks(recordOf([height], [lower])))
    expect(row?.slice(0, 2)).toEqual(['Face height | rotating face', 'not measured'])
    expect(row?.[2]).toMatch(/^Fail \| 2\.2\d* ± /)
    expect(row?.[3]).toContain('at least 2.400 mm')
  })

  it('gives a limit per millimetre of bore also as it holds here', () => {
    const square = { characteristic: 'chamber-face-squareness', sizeMm: 100 } as const
    const limit = {
      characteristic: 'chamber-face-squareness',
      upper: 0.5,
      perMmOf: 'bore',
    } as const
    const [row] = rowsOf(measuredBlocks(recordOf([square], [limit])))
    expect(row?.[3]).toContain('µm per mm of chamber bore')
    expect(row?.[3]).toContain('here: at most 0.050 mm')
  })

  it('is nothing where nothing was read', () => {
    const record = ordinaryRecord()
    expect(measuredBlocks(record)).toEqual([])
    expect(measuredConditionBlocks(record)).toEqual([])
  })

  it('tells how each was read, an overtaken one too, with the readings as typed', () => {
    const first = { recordedAt: '2026-11-23T08:00:00.000Z' } as const
    const again = {
      readings: [
        { um: 40, typed: '0,04' },
        { um: 60, typed: '0.06' },
      ],
      instrument: buildInstrumentUse('lever-indicator'),
      note: 'Coupling off.',
    }
    const blocks = measuredConditionBlocks(recordOf([first, again]))
    const [older, newer] = rowsOf(blocks)
    expect(older?.[0]).toContain('overtaken by a later reading')
    expect(newer?.[0]).not.toContain('overtaken')
    expect(newer?.[1]).toContain('0,04; 0.06 mm')
    expect(newer?.slice(2)).toEqual(['E-01', 'by Tess'])
    expect(JSON.stringify(blocks)).toContain('Note: Coupling off.')
  })
})

describe('the methods of what was read', () => {
  const finish = (cutOffMm: number | null) =>
    ({
      characteristic: 'roughness',
      componentId: 11,
      readings: [{ um: 0.3, typed: '0.3' }],
      budgetInput: { ...buildMeasuredValue().budgetInput, cutOffMm },
    }) as const
  const textOf = (values: readonly Partial<MeasuredValue>[]) =>
    JSON.stringify(certificateContent(recordOf(values)).blocks)

  it('name the cut-off of Ra as recorded, also of what was only found', () => {
    const text = textOf([finish(0.8), { ...finish(0.25), condition: 'as-found' }])
    expect(text).toContain('Cut-off as recorded: 0.8 mm, 0.25 mm')
    expect(text).toContain('cut-off 0.25 mm')
    expect(textOf([finish(null)])).toContain('The cut-off was not recorded')
  })

  it('say of a finish how it was traced, on which face, and what its traces say', () => {
    const limit = { characteristic: 'roughness', upper: 0.2, lower: null } as const
    const traced = {
      ...finish(0.25),
      readings: [0.1, 0.21, 0.12].map((um) => ({ um, typed: String(um) })),
      budgetInput: {
        ...finish(0.25).budgetInput,
        evaluationLengthMm: 1.25,
        traceDirection: 'radial',
        tipRadiusUm: 2,
        faceState: 'matted',
      },
    } as const
    const record = recordOf([traced], [limit])
    const [row] = rowsOf(measuredConditionBlocks(record))
    expect(row?.[1]).toContain('3 traces, largest 0.210 µm')
    expect(row?.[1]).toContain('16 % rule: decided with 6 traces, 1 of 3 above the limit')
    expect(row?.[3]).toBe(
      [
        'cut-off 0.25 mm',
        'traced radially',
        'evaluated over 1.25 mm',
        'stylus of 2 µm radius',
        'read on the matted face',
        'by Tess',
      ].join(' | '),
    )
    const { sixteen } = certificateWords.methods
    expect(JSON.stringify(certificateContent(record).blocks)).toContain(sixteen)
    expect(textOf([finish(0.25)])).not.toContain(sixteen)
  })

  it('say what of a finish was not recorded, and only of a finish', () => {
    const [row] = rowsOf(measuredConditionBlocks(recordOf([finish(null)])))
    expect(row?.[3]).toBe(
      [
        'cut-off not recorded',
        'direction of the trace not recorded',
        'how the face was is not recorded',
        'by Tess',
      ].join(' | '),
    )
  })

  it('are told of records from before single traces as they were written', () => {
    const record = recordOf([finish(0.8)])
    const early = record.measuredValues.map((one) => {
      const { traces: _1, faceState: _2, faceByLog: _3, evaluationLengthMm: _4, ...rest } = one
      return rest
    })
    const blocks = measuredConditionBlocks({ ...record, measuredValues: early })
    expect(rowsOf(blocks)[0]?.[3]).toContain('cut-off 0.8 mm')
    expect(JSON.stringify(blocks)).not.toContain('traces')
  })

  it('are those of the results alone: neither bands nor air where there were none', () => {
    const { flatnessCounted } = certificateWords.methods
    const start = flatnessCounted('').slice(0, 'Flatness by line count'.length)
    expect(textOf([])).toContain(`${start} (`)
    const bare = ordinaryEvidence({ flatnessReadings: [], staticTests: [] })
    const text = JSON.stringify(certificateContent(ordinaryRecord({ evidence: bare })).blocks)
    expect(text).not.toContain(`${start} (`)
    expect(text).not.toContain('Leak rate = ')
    expect(text).toContain('No static air test was made: not measured.')
    const full = JSON.stringify(certificateContent(ordinaryRecord()).blocks)
    expect(full).toContain(`"${start} (`)
    expect(full).toContain('Leak rate = ')
  })

  it('do not say that the machine was left alone where it was measured', () => {
    const { machineRead, machineNotRead } = certificateWords.limitsOfTests
    expect(textOf([{}])).toContain(machineRead)
    expect(textOf([{}])).not.toContain(machineNotRead)
    expect(textOf([finish(0.8)])).toContain(machineNotRead)
    expect(textOf([])).toContain(machineNotRead)
  })
})
