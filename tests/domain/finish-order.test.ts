import { describe, expect, it } from 'vitest'
import { finishOrder } from '../../src/domain/finish-order.ts'
import type { LapPurpose } from '../../src/domain/lap-cycle.ts'
import { finishTexts } from '../../views/words/en/finish-texts.ts'
import { buildFlatnessReading } from '../support/build-flatness-reading.ts'
import { buildLapCycle } from '../support/build-lap-cycle.ts'
import { buildMeasuredValue } from '../support/build-measured-value.ts'

const at = (hour: number) => ({ recordedAt: `2026-11-24T${hour}:00:00.000Z` })
const cycle = (id: number, hour: number, purpose: LapPurpose) =>
  buildLapCycle({ id, componentId: 11, purpose, ...at(hour) })
const flat = (hour: number) => buildFlatnessReading({ id: 1, componentId: 11, ...at(hour) })
const rough = (hour: number) =>
  buildMeasuredValue({ id: 1, componentId: 11, characteristic: 'roughness', ...at(hour) })
const cycles = [cycle(1, 10, 'lap'), cycle(2, 11, 'polish'), cycle(3, 13, 'matt')]

describe('the order of reading and matting', () => {
  it('says nothing of a face that was not matted', () => {
    const of = { flatnessReadings: [flat(12)], measuredValues: [], lapCycles: cycles.slice(0, 2) }
    expect(finishOrder(of, 11)).toBeNull()
    expect(finishOrder({ ...of, lapCycles: cycles }, 12)).toBeNull()
  })

  it('sees flatness on the polished face, the matting, and the finish of the matted face', () => {
    const of = { flatnessReadings: [flat(12)], measuredValues: [rough(14)], lapCycles: cycles }
    const order = finishOrder(of, 11)
    expect(order).toEqual({
      mattedAt: at(13).recordedAt,
      polishedAt: at(11).recordedAt,
      flatness: { at: at(12).recordedAt, isBeforeMatting: true },
      finish: { at: at(14).recordedAt, isAfterMatting: true },
    })
    const texts = finishTexts(order ?? undefined, (one) => one.slice(11, 13))
    expect(texts).toEqual([
      'Flatness was read on the polished face (polished 11, read 12); it was matted afterwards (13).',
      'Its finish was read on the matted face (14).',
    ])
  })

  it('says so where flatness was read after the matting, or the finish before it', () => {
    const of = { flatnessReadings: [flat(15)], measuredValues: [rough(12)], lapCycles: cycles }
    const order = finishOrder(of, 11)
    expect(order?.flatness?.isBeforeMatting).toBe(false)
    expect(order?.finish?.isAfterMatting).toBe(false)
    const [first, second] = finishTexts(order ?? undefined, (one) => one.slice(11, 13))
    expect(first).toContain('read after the face was matted')
    expect(second).toContain('says nothing of the matted face')
  })

  it('counts neither what was read as found nor what a correction replaced', () => {
    const found = { ...flat(12), condition: 'as-found' as const }
    const of = {
      flatnessReadings: [found],
      measuredValues: [{ ...rough(14), replacedById: 9 }],
      lapCycles: cycles,
    }
    const order = finishOrder(of, 11)
    expect(order).toMatchObject({ flatness: null, finish: null })
    expect(finishTexts(order ?? undefined, () => 'then')).toEqual([
      'The face was matted (then); its flatness as left was not read.',
      'Its finish was not read since.',
    ])
  })
})
