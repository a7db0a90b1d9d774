import type { StatedRule } from './agreed-rule.ts'
import { confirmField, isConfirmed } from './confirmed.ts'
import { type Fields, type Input, openFields } from './fields.ts'
import { agreedRuleFields, statedRule } from './parse-agreed-rule.ts'
import type { Parsed } from './parsed.ts'
import { services } from './service.ts'
import { tradeWindow } from './trade-window.ts'
import { decontaminationStates, type WorkOrder } from './work-order.ts'

export const receiptFields = [
  'customerOrder',
  'reasonForRemoval',
  'decontamination',
  'lastFluid',
  'sealedPressureKPa',
  'serviceTemperatureC',
  'shaftSpeedPerMin',
  'dueOn',
  'limitSetId',
  'service',
  ...agreedRuleFields,
] as const

export const receiptTextLength = {
  customerOrder: 60,
  reasonForRemoval: 400,
  lastFluid: 120,
} as const

/** What no confirmation can make possible: below vacuum, below absolute zero, turning backwards. */
export const serviceBounds = {
  sealedPressureKPa: { min: -110, max: 1_000_000 },
  serviceTemperatureC: { min: -273.15, max: 3000 },
  shaftSpeedPerMin: { min: 0, max: 1_000_000 },
} as const

/** `limitSetId` is null where none was chosen: the default set of the day then holds. */
export type ParsedReceipt = Pick<
  WorkOrder,
  | 'customerOrder'
  | 'reasonForRemoval'
  | 'decontamination'
  | 'lastFluid'
  | 'sealedPressureKPa'
  | 'serviceTemperatureC'
  | 'shaftSpeedPerMin'
  | 'dueOn'
  | 'service'
> & {
  readonly limitSetId: number | null
  /** Null where none was stated: what is agreed with the customer, or the house's rule, holds. */
  readonly statedRule: StatedRule | null
}

export type ReceiptContext = {
  /** Of the seal received; null or absent where it is not known. */
  readonly shaftDiameterMm?: number | null
}

/**
 * Reads what is stated when a seal comes in. Service data beyond the trade's window need the
 * user's confirmation; a shaft speed is held against the window by the sliding speed it means.
 */
export function parseReceipt(input: Input, context: ReceiptContext = {}): Parsed<ParsedReceipt> {
  const fields = openFields(input, isConfirmed(input))
  fields.only(...receiptFields, confirmField)
  const { sealedPressureKPa, temperatureC } = tradeWindow
  return fields.finish({
    customerOrder: fields.optionalText('customerOrder', receiptTextLength.customerOrder),
    reasonForRemoval: fields.optionalText('reasonForRemoval', receiptTextLength.reasonForRemoval),
    decontamination:
      fields.optionalChoice('decontamination', decontaminationStates) ?? 'not-stated',
    lastFluid: fields.optionalText('lastFluid', receiptTextLength.lastFluid),
    sealedPressureKPa: fields.optionalWindowed(
      'sealedPressureKPa',
      sealedPressureKPa,
      serviceBounds.sealedPressureKPa,
    ),
    serviceTemperatureC: fields.optionalWindowed(
      'serviceTemperatureC',
      temperatureC,
      serviceBounds.serviceTemperatureC,
    ),
    shaftSpeedPerMin: parseSpeed(fields, context.shaftDiameterMm ?? null, isConfirmed(input)),
    dueOn: fields.optionalDay('dueOn'),
    limitSetId: fields.optionalWhole('limitSetId', { min: 1, max: Number.MAX_SAFE_INTEGER }),
    service: fields.optionalChoice('service', services) ?? 'not-stated',
    statedRule: statedRule(fields),
  })
}

function parseSpeed(fields: Fields, diameterMm: number | null, isStanding: boolean): number | null {
  const speedPerMin = fields.optionalDecimal('shaftSpeedPerMin', serviceBounds.shaftSpeedPerMin)
  if (speedPerMin === null || diameterMm === null || isStanding) return speedPerMin
  const window = tradeWindow.slidingSpeedMPerS
  if (slidingSpeedMPerS(speedPerMin, diameterMm) > window.max) {
    // The window is told in the field's own unit, for this shaft.
    const max = Math.floor(window.max / slidingSpeedMPerS(1, diameterMm))
    fields.fault('shaftSpeedPerMin', 'beyond-window', { min: window.min, max })
  }
  return speedPerMin
}

/** v = pi x d x n / 60, d in m: the speed of the shaft's surface. */
function slidingSpeedMPerS(speedPerMin: number, diameterMm: number): number {
  return (Math.PI * (diameterMm / 1000) * speedPerMin) / 60
}
