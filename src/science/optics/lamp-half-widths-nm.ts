import type { LampId } from './lamps.ts'

/**
 * How far the wavelength of a lamp may be from that of the table, to either side, in nm. Single
 * lines are known far better; 0.05 is half of the tenth that the trade quotes them to. The two D
 * lines of sodium lie 0.3 from their mean. LEDs are sold by nominal peaks and move with current
 * and warmth; what the eye takes white light for is wider still (both common practice, no source).
 */
export const lampHalfWidthsNm: Readonly<Record<LampId, number>> = {
  helium: 0.05,
  sodium: 0.3,
  'sodium-d1': 0.05,
  'sodium-d2': 0.05,
  'mercury-green': 0.05,
  'mercury-blue': 0.05,
  'cadmium-red': 0.05,
  'helium-neon-red': 0.05,
  'helium-neon-green': 0.05,
  'green-led-520': 5,
  'green-led-525': 5,
  'green-led-530': 5,
  white: 30,
}
