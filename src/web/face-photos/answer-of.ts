import { AppError } from '../../domain/app-error.ts'
import { computeWholeFace } from '../../domain/compute-whole-face.ts'
import type { Input } from '../../domain/fields.ts'
import { flatAccuracy } from '../../domain/flat-accuracy.ts'
import type { Instrument } from '../../domain/instrument.ts'
import { judgeFlatness } from '../../domain/judge-flatness.ts'
import {
  type NewWholeFaceReading,
  parseWholeFaceReading,
} from '../../domain/parse-whole-face-reading.ts'
import { useOf } from '../../domain/use-of.ts'
import type { WholeFaceAnswer } from '../../domain/whole-face-answer.ts'
import { lampIds } from '../../science/optics/lamps.ts'
import { readStoredFile } from '../../store/read-stored-file.ts'
import type { AppContext } from '../context.ts'
import { readWholeFace, type WholeFaceRead } from '../read-whole-face.ts'
import type { PhotoLimits } from '../run-photo-thread.ts'
import { typedText } from '../typed-text.ts'
import type { PhotoDesk } from './desk.ts'

type Outcome = WholeFaceAnswer['outcome']

/** What can be said of a photograph while it is being read. */
export async function answerOfPhoto(
  c: AppContext,
  desk: PhotoDesk,
  input: Input,
  limits: PhotoLimits = {},
): Promise<WholeFaceAnswer> {
  return { uses: usesOf(desk, input), outcome: await outcomeOf(c, desk, input, limits) }
}

/** Lamp and flat as far as they are chosen. */
export function usesOf(desk: PhotoDesk, input: Input): WholeFaceAnswer['uses'] {
  const { today: day, exceptions } = desk
  const chosen = [input.lampInstrumentId, input.opticalFlatInstrumentId].flatMap((id) =>
    desk.instruments.filter((one) => String(one.id) === typedText(id)),
  )
  return chosen.map((one) => useOf(one, { day, recordedOn: day, exceptions }))
}

async function outcomeOf(
  c: AppContext,
  desk: PhotoDesk,
  input: Input,
  limits: PhotoLimits,
): Promise<Outcome> {
  const parsed = parseWholeFaceReading(input, desk)
  if (!parsed.ok) {
    const faulty = (...names: string[]) =>
      parsed.faults.some((one) => names.includes(one.field) && isMissing(one.kind))
    if (faulty('lampInstrumentId', 'opticalFlatInstrumentId')) return { kind: 'ask', ask: 'lamp' }
    if (faulty('outer', 'inner')) return { kind: 'ask', ask: 'edges' }
    if (faulty('grid.oneWayBands', 'grid.otherWayBands')) return { kind: 'ask', ask: 'departures' }
    if (faulty('points') && !Array.isArray(input.points)) return { kind: 'ask', ask: 'marks' }
    if (Array.isArray(input.points) && input.points.length === 0)
      return { kind: 'ask', ask: 'marks' }
    return { kind: 'faulty', faults: parsed.faults }
  }
  const result = await readOrStop(() => readAsked(c, desk, parsed.value, limits))
  return result.kind === 'stopped' ? result : outcomeOfRead(desk, parsed.value, result)
}

/** The program may have no time for a photograph: that is an answer, and loses nothing. */
export async function readOrStop(
  read: () => Promise<WholeFaceRead>,
): Promise<WholeFaceRead | Extract<Outcome, { kind: 'stopped' }>> {
  try {
    return await read()
  } catch (error) {
    const reason = error instanceof AppError ? error.reason : ''
    if (reason === 'photo-busy' || reason === 'photo-too-long') return { kind: 'stopped', reason }
    throw error
  }
}

/** Reads the photograph as it was asked, from its stored bytes. */
export function readAsked(
  c: AppContext,
  desk: PhotoDesk,
  asked: NewWholeFaceReading,
  limits: PhotoLimits = {},
): Promise<WholeFaceRead> {
  const bytesOf = (photoId: number) => {
    const photo = desk.photos.find((one) => one.id === photoId)
    if (photo === undefined) throw new AppError('not-found', 'no-face-photo')
    return readStoredFile(c.var.shop.store, photo.sha256).bytes
  }
  return readWholeFace(asked, bytesOf, limits)
}

function isMissing(kind: string): boolean {
  return kind === 'empty' || kind === 'edges-not-set'
}

/** What came of a photograph, with its figures and what they are held against. */
export function outcomeOfRead(
  desk: PhotoDesk,
  asked: NewWholeFaceReading,
  result: WholeFaceRead,
): Outcome {
  if (result.kind === 'faulty') return result
  if (result.kind === 'refused') {
    const { reason, measured, limit } = result.refusal
    return { kind: 'refused', reason, isSecond: result.isSecond, measured, limit }
  }
  const lamp = instrumentOf(desk, asked.lampInstrumentId)
  const flat = instrumentOf(desk, asked.flatInstrumentId)
  const lampId = lampIds.find((id) => id === lamp.lampId)
  if (lampId === undefined) throw new RangeError('answerOfPhoto requires a lamp of the table')
  const accuracy = flatAccuracy(flat, desk.today)
  const { computed, wholeFace } = computeWholeFace(asked, result.read, { lampId, ...accuracy })
  const { componentId } = asked
  const judged = judgeFlatness({ ...computed, componentId }, desk)
  return { kind: 'figures', computed, wholeFace, judged, press: result.press }
}

function instrumentOf(desk: PhotoDesk, id: number): Instrument {
  const found = desk.instruments.find((one) => one.id === id)
  if (found === undefined) throw new RangeError('answerOfPhoto requires an instrument of the shop')
  return found
}
