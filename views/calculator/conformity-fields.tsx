import type { FC } from 'hono/jsx'
import type { Fault } from '../../src/domain/fault.ts'
import { words } from '../words/en.ts'
import { SwappedField } from './swapped-field.tsx'

/** The numbers of the calculator of conformity, by the names of their fields. */
export const conformityNumbers = [
  'value',
  'standardUncertainty',
  'lowerLimit',
  'upperLimit',
  'probability',
  'expandedUncertainty',
  'uncertaintyShareAtMost',
  'prior.mean',
  'prior.standardDeviation',
] as const
export type ConformityNumber = (typeof conformityNumbers)[number]
export type ConformityTyped = Readonly<
  Record<ConformityNumber | 'rule' | 'nonNegative' | 'prior.shape', string>
>

const w = words.conformity
const texts: Readonly<Record<ConformityNumber, { label: string; hint?: string }>> = {
  value: { label: w.value, hint: w.valueHint },
  standardUncertainty: { label: w.standardUncertainty, hint: w.standardHint },
  lowerLimit: { label: w.lowerLimit, hint: w.limitHint },
  upperLimit: { label: w.upperLimit, hint: w.limitHint },
  probability: { label: w.probability, hint: w.probabilityHint },
  expandedUncertainty: { label: w.expandedUncertainty, hint: w.expandedHint },
  uncertaintyShareAtMost: { label: w.share, hint: w.shareHint },
  'prior.mean': { label: w.mean },
  'prior.standardDeviation': { label: w.deviation },
}

/** Some of the numbers, each with its own place, so that its fault can come and go. */
export const ConformityFields: FC<{
  names: readonly ConformityNumber[]
  typed: ConformityTyped
  faults: readonly Fault[]
  isSwap?: boolean
}> = ({ names, typed, faults, isSwap }) => (
  <>
    {names.map((name) => (
      <SwappedField
        name={name}
        value={typed[name]}
        faults={faults}
        isSwap={isSwap}
        {...texts[name]}
      />
    ))}
  </>
)
