import { describe, expect, test } from 'vitest'
import { completeWearTrack } from '../../src/domain/complete-wear-track.ts'
import { parseWearTrack } from '../../src/domain/parse-wear-track.ts'
import { buildInstrument } from '../support/build-instrument.ts'
import { buildSeal } from '../support/build-seal.ts'
import { accepted, faultsOf } from '../support/faults-of.ts'

const micrometer = buildInstrument('micrometer', {
  unit: 'mm',
  rangeFrom: 0,
  rangeTo: 25,
  resolutionStep: 0.001,
  largestError: 0.004,
})
const context = {
  components: buildSeal().components,
  instruments: [micrometer],
  today: '2026-11-25',
}
const least = { componentId: '11', noseWidthMm: '3.95', trackWidths: [{ widthMm: '4,20' }] }
const parse = (changes: Record<string, unknown> = {}) =>
  parseWearTrack({ ...least, ...changes }, context)
const faults = (changes: Record<string, unknown>) => faultsOf(parse(changes))
const complete = (changes: Record<string, unknown> = {}) =>
  completeWearTrack({ ...accepted(parse(changes)), workOrderId: 1 }, context)

describe('a worn track', () => {
  test('of 4.20 mm from a nose of 3.95 mm tells a movement of 0.25 mm (E31)', () => {
    const track = complete()
    expect(track.movementUm).toBeCloseTo(250, 9) // doubles alone
    expect(track).toMatchObject({
      noseWidth: { mm: 3.95, typed: '3.95' },
      trackWidths: [{ mm: 4.2, typed: '4,20' }],
      standardUncertaintyUm: null,
      instrument: null,
    })
  })

  test('tells it by its widest place', () => {
    const trackWidths = ['4.0', '4.2', '4.1'].map((widthMm) => ({ widthMm }))
    expect(complete({ trackWidths }).movementUm).toBeCloseTo(250, 9) // doubles alone
  })

  test('narrower than the nose tells no movement, and is kept as what was read', () => {
    const track = complete({ trackWidths: [{ widthMm: '3.80' }] })
    expect(track.movementUm).toBeCloseTo(-150, 9) // doubles alone
  })

  test('read with a micrometer is uncertain by its error and step, of track and nose', () => {
    const track = complete({ instrumentId: String(micrometer.id) })
    expect(track.instrument?.number).toBe('M-01')
    const one = Math.hypot(4 / Math.sqrt(3), 1 / Math.sqrt(12))
    expect(track.standardUncertaintyUm).toBeCloseTo(one * Math.SQRT2, 9) // doubles alone
  })

  test('is refused by the name of what is wrong', () => {
    expect(faultsOf(parseWearTrack({}, context))).toEqual([
      'componentId empty',
      'noseWidthMm empty',
      'trackWidths empty',
    ])
    expect(faults({ componentId: '99' })).toEqual(['componentId not-known'])
    expect(faults({ noseWidthMm: '0' })).toEqual(['noseWidthMm below'])
    expect(faults({ trackWidths: [{ widthMm: 'wide' }] })).toEqual([
      'trackWidths[0].widthMm not-a-number',
    ])
    expect(faults({ trackWidths: [{ widthMm: 4, at: 12 }] })).toEqual([
      'trackWidths[0].at unknown-field',
    ])
    expect(faults({ offsetMm: '0.2' })).toEqual(['offsetHour empty'])
    expect(faults({ offsetHour: '3' })).toEqual(['offsetMm empty'])
    expect(faults({ offsetMm: '0.2', offsetHour: '13' })).toEqual(['offsetHour above'])
    expect(faults({ instrumentId: '99' })).toEqual(['instrumentId not-known'])
    expect(faults({ replacesId: '3' })).toEqual(['reason reason-needed'])
  })

  test('refuses a micrometer that is overdue or does not reach so far', () => {
    const instrumentId = String(micrometer.id)
    const late = { ...context, today: '2027-02-01' }
    expect(faultsOf(parseWearTrack({ ...least, instrumentId }, late))).toEqual([
      'instrumentId overdue-instrument',
    ])
    expect(faults({ instrumentId, trackWidths: [{ widthMm: '26' }] })).toEqual([
      'instrumentId out-of-range-instrument',
    ])
  })
})
