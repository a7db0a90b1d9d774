import { radialPlaces } from '../../src/domain/finding.ts'
import type { ClockSketchOptions } from '../../src/plots/clock-sketch.ts'

/**
 * What the clock face shows of the fields of a place as they stand in the form. The page is drawn
 * with it, and the script of the page draws anew with the same.
 */
export function typedPlace(typed: {
  readonly fromHour: string
  readonly toHour: string
  readonly radialPlace: string
}): Pick<ClockSketchOptions, 'place' | 'loneHour' | 'across'> {
  const [fromHour, toHour] = [hourOf(typed.fromHour), hourOf(typed.toHour)]
  const isWhole = fromHour !== null && toHour !== null
  return {
    place: isWhole ? { fromHour, toHour } : null,
    loneHour: isWhole ? null : (fromHour ?? toHour),
    across: radialPlaces.find((one) => one === typed.radialPlace) ?? null,
  }
}

function hourOf(text: string): number | null {
  const isHour = /^\d{1,2}(?:[.,]\d+)?$/.test(text.trim())
  const hour = Number(text.trim().replace(',', '.'))
  return isHour && hour <= 12 ? hour : null
}
