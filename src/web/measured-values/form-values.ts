import {
  type MeasuredFormValues,
  type MeasuredValueName,
  measuredValueNames,
} from '../../../views/measured-values/form-values.ts'
import { measuredCharacteristics } from '../../domain/characteristic.ts'
import type { Input } from '../../domain/fields.ts'
import { familyOf, type MeasuredFamily } from '../../domain/measured-family.ts'
import { type MeasuredValue, measuredValueBounds } from '../../domain/measured-value.ts'
import { lastMeasuringInstrument } from '../../store/last-measuring-instrument.ts'
import type { AppContext } from '../context.ts'
import { nestedText } from '../nested-text.ts'
import { typedText } from '../typed-text.ts'
import { viewer } from '../viewer.ts'
import type { MeasuredDesk } from './desk.ts'

/** What an unknown or no characteristic is asked as: the form that offers most of them. */
export function familyAsked(characteristic: string | undefined): MeasuredFamily {
  const known = measuredCharacteristics.find((one) => one === characteristic)
  return known === undefined ? 'dial' : familyOf[known]
}

/**
 * A fresh form: the instrument and its unit are those in hand last for the like. Nothing that is
 * read is filled in.
 */
export function freshValues(c: AppContext, desk: MeasuredDesk): MeasuredFormValues {
  const asked = c.req.query('characteristic')
  const family = familyAsked(asked)
  const alike = measuredCharacteristics.filter((one) => familyOf[one] === family)
  const last = lastMeasuringInstrument(c.var.shop.store, viewer(c).id, alike)
  const onlyFace = desk.faces.length === 1 ? desk.faces[0] : undefined
  const face = desk.faces.find((one) => String(one.id) === c.req.query('face')) ?? onlyFace
  return {
    ...valuesBy(() => ''),
    characteristic: alike.find((one) => one === asked) ?? '',
    componentId: family === 'dial' ? '' : text(face?.id),
    condition: 'as-left',
    instrumentId: text(last?.instrumentId),
    unit: last?.unit ?? usualUnits[family],
    readings: padded([]),
  }
}

const usualUnits = { roughness: 'um', height: 'mm', dial: 'mm' } as const

/** The form filled with what an earlier record says, to be corrected. */
export function valuesOfRecord(measured: MeasuredValue): MeasuredFormValues {
  const { budgetInput } = measured
  return {
    ...valuesBy(() => ''),
    characteristic: measured.characteristic,
    componentId: text(measured.componentId),
    condition: measured.condition,
    instrumentId: text(measured.instrumentId),
    unit: measured.unit,
    sizeMm: text(measured.sizeMm),
    leverAngleDeg: text(budgetInput.leverAngleDeg),
    cutOffMm: text(budgetInput.cutOffMm),
    traceDirection: budgetInput.traceDirection ?? '',
    tipRadiusUm: text(budgetInput.tipRadiusUm),
    evaluationLengthMm: text(budgetInput.evaluationLengthMm),
    faceState: budgetInput.faceState ?? '',
    temperatureHalfWidthK: text(budgetInput.temperatureHalfWidthK),
    settingStandardUncertaintyUm: text(budgetInput.settingStandardUncertaintyUm),
    note: measured.note,
    readings: padded(measured.readings.map((one) => one.typed)),
  }
}

/** What was typed, to be shown again. */
export function valuesOfInput(input: Input): MeasuredFormValues {
  const parts: readonly unknown[] = Array.isArray(input.readings) ? input.readings : []
  const { max } = measuredValueBounds.readingCount
  return {
    ...valuesBy((name) => typedText(input[name])),
    readings: padded(parts.slice(0, max).map((part) => nestedText(part, 'value'))),
  }
}

/** Six fields, and always one more than was read. */
function padded(read: readonly string[]): readonly string[] {
  const { max } = measuredValueBounds.readingCount
  const count = Math.min(max, Math.max(6, read.length + 1))
  return Array.from({ length: count }, (_, index) => read[index] ?? '')
}

function valuesBy(
  textOf: (name: MeasuredValueName) => string,
): Readonly<Record<MeasuredValueName, string>> {
  const pairs = measuredValueNames.map((name) => [name, textOf(name)] as const)
  return Object.fromEntries(pairs) as Record<MeasuredValueName, string>
}

function text(value: number | null | undefined): string {
  return value === null || value === undefined ? '' : String(value)
}
