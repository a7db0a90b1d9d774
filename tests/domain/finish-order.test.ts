import { describe, expect, it } from 'vitest'
import { finishOrder } from '../../src/domain/finish-order.ts'
import type { LapCycle, LapPurpose } from '../../src/domain/lap-cycle.ts'
import { finishTexts } from '../../views/words/en/finish-texts.ts'
import { buildFlatnessReading } from '../support/build-flatness-reading.ts'
import { buildLapCycle } from '../support/build-lap-cycle.ts'
import { buildMeasuredValue } from '../support/build-measured-value.ts'

const at = (hour: number) => ({ recordedAt: `2026-11-24T${hour}:00:00.000Z` })
const cycle = (id: number, hour: number, purpose: LapPurpose, changes: Partial<LapCycle> = {}) =>
  buildLapCycle({ id, componentId: 11, purpose, ...at(hour), ...changes })
const flat = (hour: number, id = 1) =>
  buildFlatnessReading({ id, componentId: 11, ...at(hour), recordedById: id })
const rough = (hour: number, id = 1) =>
  buildMeasuredValue({
    id,
    componentId: 11,
    characteristic: 'roughness',
    readings: [{ um: 0.21, typed: '0.21' }],
    uncertainty: { ...buildMeasuredValue().uncertainty, expandedUncertainty: 0.02 },
    ...at(hour),
  })
const cycles = [cycle(1, 10, 'lap'), cycle(2, 11, 'polish'), cycle(3, 13, 'matt')]
const told = (...of: Parameters<typeof finishOrder>) =>
  finishTexts(finishOrder(...of) ?? undefined, (one) => one.slice(11, 13))
const texts = (...of: Parameters<typeof finishOrder>) => told(...of).map((one) => one.text)

describe('the order of reading and matting', () => {
  it('says nothing of a face that was not matted', () => {
    const of = { flatnessReadings: [flat(12)], measuredValues: [], lapCycles: cycles.slice(0, 2) }
    expect(finishOrder(of, 11)).toBeNull()
    expect(finishOrder({ ...of, lapCycles: cycles }, 12)).toBeNull()
    expect(texts(of, 11)).toEqual([])
  })

  it('sees flatness on the polished face, the matting, and the finish of the matted face', () => {
    const of = { flatnessReadings: [flat(12)], measuredValues: [rough(14)], lapCycles: cycles }
    expect(finishOrder(of, 11)).toEqual({
      mattedAt: at(13).recordedAt,
      flatness: {
        at: at(12).recordedAt,
        state: 'polished',
        isSinceMatting: false,
        isReshapedSince: false,
      },
      finish: {
        at: at(14).recordedAt,
        state: 'matted',
        isSinceMatting: true,
        isReshapedSince: false,
        text: '0.210 ± 0.020',
      },
    })
    const [flatness, finish] = texts(of, 11)
    expect(flatness).toBe(
      'Flatness was read on the polished face (12); it was matted afterwards (13).',
    )
    expect(finish).toBe('Finish Ra 0.210 ± 0.020 µm was read on the matted face (14).')
  })

  it('says so where flatness was read after the matting, or the finish before it', () => {
    const of = { flatnessReadings: [flat(15)], measuredValues: [rough(12)], lapCycles: cycles }
    const [first, second] = texts(of, 11)
    expect(first).toContain('Flatness was read on the matted face (matted 13, read 15)')
    expect(second).toContain('was read before that (12): it says nothing of the matted face')
  })

  it('takes what was written down at the same instant as read after it', () => {
    const of = { flatnessReadings: [flat(13)], measuredValues: [rough(13)], lapCycles: cycles }
    expect(finishOrder(of, 11)).toMatchObject({
      flatness: { isSinceMatting: true, state: 'matted' },
      finish: { isSinceMatting: true },
    })
  })

  it('calls no face polished that was polished only after it was read, or lapped since', () => {
    const read = (lapCycles: readonly LapCycle[]) =>
      texts({ flatnessReadings: [flat(12)], measuredValues: [], lapCycles }, 11)[0]
    const reshaped = [cycle(1, 10, 'lap'), cycle(2, 13, 'polish'), cycle(3, 14, 'matt')]
    expect(read(reshaped)).toContain('flatness was not read since')
    const lapped = [cycle(1, 10, 'polish'), cycle(2, 11, 'lap'), cycle(3, 14, 'matt')]
    expect(read(lapped)).toContain('on the lapped face (12), no polishing is in the log')
    expect(read([cycle(3, 14, 'matt')])).toBe(
      'Flatness was read (12) before the face was matted (14).',
    )
    const twice = [cycle(1, 10, 'matt'), cycle(2, 14, 'matt')]
    expect(read(twice)).toContain('on a face that was matted already (12)')
  })

  it('marks what is missing or was done the wrong way round, and nothing else', () => {
    const marks = (flatHour: number | null, roughHour: number | null) =>
      told(
        {
          flatnessReadings: flatHour === null ? [] : [flat(flatHour)],
          measuredValues: roughHour === null ? [] : [rough(roughHour)],
          lapCycles: cycles,
        },
        11,
      ).map((one) => one.isAmiss)
    expect(marks(12, 14)).toEqual([false, false])
    expect(marks(14, 12)).toEqual([true, true])
    expect(marks(null, null)).toEqual([true, true])
  })

  it('says nothing of a matting that was lapped or polished away', () => {
    for (const purpose of ['lap', 'polish'] as const) {
      const lapCycles = [...cycles, cycle(4, 15, purpose)]
      expect(finishOrder({ flatnessReadings: [], measuredValues: [], lapCycles }, 11)).toBeNull()
    }
  })

  it('counts neither what was read as found nor what a correction replaced', () => {
    const found = { ...flat(12), condition: 'as-found' as const }
    const of = {
      flatnessReadings: [found],
      measuredValues: [{ ...rough(14), replacedById: 9 }],
      lapCycles: cycles,
    }
    expect(finishOrder(of, 11)).toMatchObject({ flatness: null, finish: null })
    expect(texts(of, 11)).toEqual([
      'The face was matted (13); its flatness as left was not read.',
      'Its finish was not read since.',
    ])
  })

  it('puts a correction where what it replaced stood, of readings and of cycles', () => {
    const corrected = { ...flat(16, 2), replacesId: 1, reason: 'wrong lamp' }
    const matting = cycle(4, 17, 'matt', { replacesId: 3, reason: 'it was matted' })
    const of = {
      flatnessReadings: [{ ...flat(12), replacedById: 2 }, corrected],
      measuredValues: [rough(14)],
      lapCycles: [...cycles.slice(0, 2), cycle(3, 13, 'lap', { replacedById: 4 }), matting],
    }
    expect(finishOrder(of, 11)).toMatchObject({
      mattedAt: at(13).recordedAt,
      flatness: { at: at(12).recordedAt, state: 'polished', isSinceMatting: false },
      finish: { isSinceMatting: true },
    })
  })

  it('speaks of the whole face where a line count was read beside it', () => {
    const whole = { ...flat(12), sees: 'whole-surface' } as const
    const of = {
      flatnessReadings: [whole, flat(14, 2)],
      measuredValues: [],
      lapCycles: cycles,
    }
    expect(finishOrder(of, 11)?.flatness?.at).toBe(at(12).recordedAt)
  })
})
