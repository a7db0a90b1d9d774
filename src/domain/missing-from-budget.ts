import type { Characteristic } from './characteristic.ts'
import type { Uncertainty } from './uncertainty.ts'

/**
 * How far off the instruments themselves may be. A source of the method, such as thermal bow, may
 * be left out with a word; without these a budget is no more than the step of a display, and a
 * guard band made of it would guard nothing.
 */
const essential: readonly string[] = [
  'instrument',
  'optical-flat',
  'pressure',
  'pressure-error',
  'volume',
  'volume-error',
  'temperature-error',
]

/** In these, `temperature` is the thermometer; in a height, how warm the part was: the method's. */
const byThermometer: readonly Characteristic[] = ['static-drop', 'static-leak-rate']

/** Ids of sources that a budget leaves out and cannot do without; most often none. */
export function missingFromBudget(
  { leftOut }: Pick<Uncertainty, 'leftOut'>,
  characteristic: Characteristic,
): readonly string[] {
  const isMissing = (source: string) =>
    essential.includes(source) ||
    (source === 'temperature' && byThermometer.includes(characteristic))
  return leftOut.filter(isMissing)
}
