import {
  type FindingValues,
  findingNames,
  type PartLineValues,
  partLineNames,
} from '../../../views/findings/form-values.ts'
import type { Fault } from '../../domain/fault.ts'
import type { Input } from '../../domain/fields.ts'
import type { Finding } from '../../domain/finding.ts'
import type { PartLine } from '../../domain/part-line.ts'
import { stripParts } from '../../domain/strip-part.ts'
import { typedText } from '../typed-text.ts'

/** A fresh finding of the part that was asked for: before cleaning, and no cause said. */
export function freshFindingValues(part: string | undefined): FindingValues {
  return {
    ...findingValuesBy(() => ''),
    part: stripParts.find((one) => one === part) ?? '',
    isBeforeCleaning: 'yes',
    suspectedCause: 'not-said',
  }
}

/** The form filled with what an earlier finding says, to be corrected. */
export function findingValuesOf(one: Finding): FindingValues {
  return {
    ...findingValuesBy(() => ''),
    part: one.part,
    term: one.term,
    severity: one.severity ?? '',
    fromHour: hourText(one.fromHour),
    toHour: hourText(one.toHour),
    radialPlace: one.radialPlace ?? '',
    isBeforeCleaning: one.isBeforeCleaning ? 'yes' : 'no',
    observation: one.observation,
    suspectedCause: one.suspectedCause,
    causeNote: one.causeNote,
  }
}

/**
 * What was typed, to be shown again. A severity of nothing is taken back: a card that was chosen
 * can't be unchosen by hand.
 */
export function refusedFindingValues(input: Input, faults: readonly Fault[]): FindingValues {
  const values = findingValuesBy((name) => typedText(input[name]))
  const isOfNothing = faults.some((one) => one.kind === 'not-of-nothing')
  return isOfNothing ? { ...values, severity: '' } : values
}

export function freshPartLineValues(part: string | undefined): PartLineValues {
  return {
    ...partLineValuesBy(() => ''),
    part: stripParts.find((one) => one === part) ?? '',
    quantityCount: '1',
  }
}

export function partLineValuesOf(one: PartLine): PartLineValues {
  return {
    ...partLineValuesBy(() => ''),
    part: one.part,
    description: one.description,
    fate: one.fate,
    quantityCount: String(one.quantityCount),
    batch: one.batch,
    certificate: one.certificate,
    compound: one.compound,
    curedOn: one.curedOn ?? '',
    note: one.note,
  }
}

export function partLineValuesOfInput(input: Input): PartLineValues {
  return partLineValuesBy((name) => typedText(input[name]))
}

/** 0 and 12 are one place on a clock. */
function hourText(hour: number | null): string {
  return hour === null ? '' : String(hour === 0 ? 12 : hour)
}

function findingValuesBy(textOf: (name: (typeof findingNames)[number]) => string): FindingValues {
  return Object.fromEntries(findingNames.map((name) => [name, textOf(name)])) as FindingValues
}

function partLineValuesBy(textOf: (name: (typeof partLineNames)[number]) => string) {
  return Object.fromEntries(partLineNames.map((name) => [name, textOf(name)])) as PartLineValues
}
