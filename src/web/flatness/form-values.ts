import type { DirectionValues, FlatnessFormValues } from '../../../views/flatness/form-values.ts'
import type { Input } from '../../domain/fields.ts'
import type { FlatnessReading } from '../../domain/flatness.ts'
import { lastFlatnessSetUp } from '../../store/last-flatness-set-up.ts'
import { lastInstruments } from '../../store/last-instruments.ts'
import { listFlatnessReadings } from '../../store/list-flatness-readings.ts'
import type { AppContext } from '../context.ts'
import { typedText } from '../typed-text.ts'
import { viewer } from '../viewer.ts'
import { budgetOfInput, budgetOfReading, freshBudget } from './budget-values.ts'
import type { FlatnessDesk } from './desk.ts'

/** Every face is asked for in two directions at right angles. */
const askedDirections: readonly DirectionValues[] = ['0', '90'].map((directionDeg) => ({
  directionDeg,
  bands: '',
  bowMm: '',
  spacingMm: '',
}))

/**
 * A fresh form. Lamp and flat are those in hand last; soak, temperature and angle come from the
 * same person's last reading on this order today, since they belong to that hour and bench.
 * Nothing is chosen for the pattern, so that no face is flat by accident.
 */
export function freshValues(c: AppContext, desk: FlatnessDesk): FlatnessFormValues {
  const { store } = c.var.shop
  const user = viewer(c)
  const last = lastInstruments(store, user.id)
  const before = listFlatnessReadings(store, desk.workOrder.id).findLast(
    (one) =>
      one.wholeFace === null &&
      one.recordedById === user.id &&
      one.recordedAt.startsWith(desk.today),
  )
  const asked = c.req.query('face')
  const onlyFace = desk.faces.length === 1 ? desk.faces[0] : undefined
  const face = desk.faces.find((one) => String(one.id) === asked) ?? onlyFace
  return {
    faceId: text(face?.id),
    condition: 'as-left',
    pattern: '',
    ringCentre: '',
    unreadableCause: '',
    readings: askedDirections,
    lampInstrumentId: text(last.lampInstrumentId),
    opticalFlatInstrumentId: text(last.flatInstrumentId),
    viewingAngleDeg: text(before?.viewingAngleDeg ?? 0),
    soakMin: text(before?.soakMin),
    temperatureC: text(before?.temperatureC),
    budget: freshBudget(lastFlatnessSetUp(store, user.id), desk.workOrder.id),
    note: '',
    reason: '',
    confirmBeyondWindow: '',
  }
}

/** The form filled with what an earlier reading says, to be corrected. */
export function valuesOfReading(reading: FlatnessReading): FlatnessFormValues {
  const read = reading.directions.map(directionOf)
  const unread = askedDirections.filter(
    (asked) => !read.some((one) => one.directionDeg === asked.directionDeg),
  )
  return {
    faceId: text(reading.componentId),
    condition: reading.condition,
    pattern: reading.pattern,
    ringCentre: reading.ringCentre ?? '',
    unreadableCause: reading.unreadableCause ?? '',
    readings: [...read, ...unread].slice(0, Math.max(read.length, askedDirections.length)),
    lampInstrumentId: text(reading.lampInstrumentId),
    opticalFlatInstrumentId: text(reading.flatInstrumentId),
    viewingAngleDeg: text(reading.viewingAngleDeg),
    soakMin: text(reading.soakMin),
    temperatureC: text(reading.temperatureC),
    budget: budgetOfReading(reading.budgetInput),
    note: reading.note,
    reason: '',
    confirmBeyondWindow: '',
  }
}

/** A bow over a spacing is kept as `4.5 mm / 6.0 mm`. */
function directionOf(one: FlatnessReading['directions'][number]): DirectionValues {
  const bow = /^(\S+) mm \/ (\S+) mm$/.exec(one.bandsTyped)
  return {
    directionDeg: text(one.directionDeg),
    bands: bow === null ? one.bandsTyped : '',
    bowMm: bow?.[1] ?? '',
    spacingMm: bow?.[2] ?? '',
  }
}

/** What was typed, to be shown again. */
export function valuesOfInput(input: Input): FlatnessFormValues {
  const parts: readonly unknown[] = Array.isArray(input.readings) ? input.readings : []
  const count = Math.min(8, Math.max(askedDirections.length, parts.length))
  return {
    faceId: typedText(input.faceId),
    condition: typedText(input.condition),
    pattern: typedText(input.pattern),
    ringCentre: typedText(input.ringCentre),
    unreadableCause: typedText(input.unreadableCause),
    readings: Array.from({ length: count }, (_, index) => typedDirection(parts[index], index)),
    lampInstrumentId: typedText(input.lampInstrumentId),
    opticalFlatInstrumentId: typedText(input.opticalFlatInstrumentId),
    viewingAngleDeg: typedText(input.viewingAngleDeg),
    soakMin: typedText(input.soakMin),
    temperatureC: typedText(input.temperatureC),
    budget: budgetOfInput(input),
    note: typedText(input.note),
    reason: typedText(input.reason),
    confirmBeyondWindow: typedText(input.confirmBeyondWindow),
  }
}

function typedDirection(part: unknown, index: number): DirectionValues {
  const values = (typeof part === 'object' && part !== null ? part : {}) as Input
  const asked = askedDirections[index]?.directionDeg ?? ''
  return {
    directionDeg: typedText(values.directionDeg) || asked,
    bands: typedText(values.bands),
    bowMm: typedText(values.bowMm),
    spacingMm: typedText(values.spacingMm),
  }
}

function text(value: number | null | undefined): string {
  return value === null || value === undefined ? '' : String(value)
}
