import { cycleBefore } from './cycle-before.ts'
import type { Evidence } from './evidence.ts'
import type { FlatnessReading } from './flatness.ts'
import { lapSteps } from './lap-steps.ts'

/** What the log says of a face between two readings of it. */
export type LappedBetween = {
  readonly cycleCount: number
  /** What all of these cycles took off; null where one doesn't say, or there was none. */
  readonly removedUm: number | null
  /** Another ring was fitted: the two readings are of two rings. */
  readonly isNewRing: boolean
}

/**
 * The lap cycles between two readings of one face and order, with what they took off by the heights
 * of the log, else by what was stated. Matting is no lap: it leaves the form as it is.
 * @param first the earlier one
 */
export function lappedBetween(
  first: FlatnessReading,
  second: FlatnessReading,
  records: Pick<Evidence, 'flatnessReadings' | 'lapCycles' | 'measuredValues'>,
): LappedBetween {
  const { flatnessReadings: readings, lapCycles: cycles } = records
  const numberOf = (one: FlatnessReading) => cycleBefore(one, { readings, cycles })?.number ?? 0
  const [from, to] = [numberOf(first), numberOf(second)]
  const steps = lapSteps(records, first.componentId).filter(
    (one) => one.number > from && one.number <= to && one.cycle.purpose !== 'matt',
  )
  const stocks = steps.map((one) => one.removedUm).filter((um) => um !== null)
  const isKnown = steps.length > 0 && stocks.length === steps.length
  return {
    cycleCount: steps.length,
    removedUm: isKnown ? stocks.reduce((sum, one) => sum + one, 0) : null,
    isNewRing: steps.some((one) => one.cycle.isNewRing),
  }
}
