import type { Instrument } from '../../src/domain/instrument.ts'
import { lampIds } from '../../src/science/optics/lamps.ts'
import { numberText } from '../figures/number-text.ts'
import { lampLabel } from '../instrument-form.tsx'
import { instrumentUnitSigns } from '../words/en/instrument-range.ts'
import { words } from '../words/en.ts'

/** What an instrument is, label by label; the range in numbers where it is known so. */
export function instrumentFacts(instrument: Instrument, withdrawalReason: string | null) {
  const { instruments: w, trade, chrome } = words
  const { lampId, flatToleranceUm, withdrawnOn, unit, resolutionStep, largestError } = instrument
  const lamp = lampIds.find((one) => one === lampId)
  const stated = (text: string) => (text === '' ? chrome.notStated : text)
  const sign = unit === '' ? '' : instrumentUnitSigns[unit]
  const inUnit = (value: number) => `${numberText(value)} ${sign}`
  return [
    { label: w.serial, value: stated(instrument.serial) },
    ...(lamp === undefined ? [] : [{ label: w.lamp, value: lampLabel(lamp) }]),
    ...(flatToleranceUm === null
      ? []
      : [{ label: w.tolerance, value: `${numberText(flatToleranceUm)} ${trade.unit.um}` }]),
    { label: w.range, value: rangeText(instrument, sign) ?? stated(instrument.range) },
    {
      label: w.resolution,
      value: resolutionStep === null ? stated(instrument.resolution) : inUnit(resolutionStep),
    },
    ...(largestError === null ? [] : [{ label: w.largestError, value: inUnit(largestError) }]),
    ...(withdrawnOn === null ? [] : [{ label: w.withdrawnOn, value: withdrawnOn }]),
    ...(withdrawalReason === null ? [] : [{ label: w.withdrawnBecause, value: withdrawalReason }]),
  ]
}

function rangeText({ rangeFrom, rangeTo }: Instrument, sign: string): string | null {
  const w = words.instruments
  if (rangeFrom === null && rangeTo === null) return null
  const end = (value: number | null) => (value === null ? w.below : numberText(value))
  return w.inNumbers(end(rangeFrom), end(rangeTo), sign)
}
