import { minuteText } from '../figures/time-text.ts'
import { uncertainText } from '../figures/uncertain-text.ts'
import { words } from '../words/en.ts'
import type { ListedReading } from './page-props.ts'

/** `As left after lap cycle 2`. */
export function stateText({ reading, afterCycle }: ListedReading): string {
  const condition = words.trade.condition[reading.condition]
  return afterCycle === null ? condition : words.wholeFaces.afterCycle(condition, afterCycle)
}

/** The flatness of a reading with its uncertainty. */
export function flatnessText({ reading }: ListedReading): string {
  const { value, unit } = uncertainText('flatness', reading.flatnessUm ?? 0, reading.uncertainty)
  return `${value} ${unit}`
}

/** A reading as a line of a select. */
export function readingOption(listed: ListedReading): string {
  const { reading } = listed
  return words.wholeFaces.option(
    stateText(listed),
    minuteText(reading.recordedAt),
    words.wholeFace.kind[reading.wholeFace.source.kind],
    flatnessText(listed),
  )
}
