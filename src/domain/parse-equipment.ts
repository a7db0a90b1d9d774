import type { Equipment } from './equipment.ts'
import { type Input, openFields } from './fields.ts'
import type { Parsed } from './parsed.ts'

export const equipmentFields = ['tag', 'description', 'serviceFluid'] as const
export const equipmentTextLength = { tag: 60, description: 200, serviceFluid: 120 } as const

export type ParsedEquipment = Pick<Equipment, (typeof equipmentFields)[number]>

/** Reads a position at the customer's plant: its tag is needed, the rest where it is known. */
export function parseEquipment(input: Input): Parsed<ParsedEquipment> {
  const fields = openFields(input)
  fields.only(...equipmentFields)
  return fields.finish({
    tag: fields.text('tag', equipmentTextLength.tag),
    description: fields.optionalText('description', equipmentTextLength.description),
    serviceFluid: fields.optionalText('serviceFluid', equipmentTextLength.serviceFluid),
  })
}
