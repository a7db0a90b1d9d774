import type { Fault } from '../../domain/fault.ts'
import type { Input } from '../../domain/fields.ts'
import { componentKinds } from '../../domain/seal.ts'
import { ownFields } from '../own-fields.ts'

/** Which position of the form each component that was filled in stands at. */
export type SealInput = { readonly input: Input; readonly places: readonly number[] }

/**
 * The form shows all five components; those left blank are not there. The rest closes up, and
 * `faultsInForm` leads a fault back to the place it was typed at.
 */
export function sealInput(form: Input): SealInput {
  const parts: readonly unknown[] = Array.isArray(form.components) ? form.components : []
  const filled = componentKinds.flatMap((kind, place) => {
    const part = partOf(parts[place])
    return Object.values(part).some(isFilled) ? [{ place, part: { ...part, kind } }] : []
  })
  return {
    input: { ...ownFields(form, 'equipmentId', 'next'), components: filled.map((one) => one.part) },
    places: filled.map((one) => one.place),
  }
}

/** The faults of the parsed input, at the names of the form's fields. */
export function faultsInForm(faults: readonly Fault[], { places }: SealInput): readonly Fault[] {
  return faults.map((fault) => ({
    ...fault,
    field: fault.field.replace(/^components\[(\d+)\]/, (_, index: string) => {
      return `components[${places[Number(index)] ?? index}]`
    }),
  }))
}

/** The kind stands in the form for its reader; it alone does not make a component. */
function partOf(part: unknown): Record<string, unknown> {
  if (typeof part !== 'object' || part === null) return {}
  return Object.fromEntries(Object.entries(part).filter(([name]) => name !== 'kind'))
}

function isFilled(value: unknown): boolean {
  return typeof value !== 'string' || value.trim() !== ''
}
