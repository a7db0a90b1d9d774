import { belongsToFace } from '../../src/domain/belongs-to-face.ts'
import type { Characteristic } from '../../src/domain/characteristic.ts'
import type { LimitConditions } from '../../src/domain/limit-set.ts'
import { typedPressure } from '../../src/domain/pressure-units.ts'
import { limitSetsWords as w } from '../words/en/limit-sets.ts'
import { tradeWord, tradeWords } from '../words/en/trade.ts'
import { numberText } from './number-text.ts'

/**
 * What a limit holds for, in words.
 * @example conditionsText(limit) // carbon-graphite, face up to 75 mm
 */
export function conditionsText(
  limit: LimitConditions & { readonly characteristic: Characteristic },
): string {
  const { faceMaterial, componentKind, service, characteristic } = limit
  const { pressureOverKPa, pressureUpToKPa, speedOverPerMin, speedUpToPerMin } = limit
  const parts = [
    faceMaterial === null ? '' : tradeWord(tradeWords.faceMaterial, faceMaterial).toLowerCase(),
    componentKind === null ? '' : tradeWords.componentKind[componentKind].toLowerCase(),
    diameterText(limit, belongsToFace(characteristic)),
    rangeText([pressureOverKPa, pressureUpToKPa], pressureText, {
      between: w.pressureBetween,
      over: w.pressureOver,
      upTo: w.pressureUpTo,
    }),
    rangeText([speedOverPerMin, speedUpToPerMin], numberText, {
      between: w.speedBetween,
      over: w.speedOver,
      upTo: w.speedUpTo,
    }),
    service === null ? '' : tradeWords.service[service].toLowerCase(),
  ].filter((part) => part !== '')
  if (parts.length > 0) return parts.join(', ')
  return belongsToFace(characteristic) ? w.everyFace : w.always
}

function diameterText(limit: LimitConditions, isFace: boolean): string {
  const { diameterOverMm, diameterUpToMm } = limit
  return rangeText(
    [diameterOverMm, diameterUpToMm],
    numberText,
    isFace
      ? { between: w.faceBetween, over: w.faceOver, upTo: w.faceUpTo }
      : { between: w.shaftBetween, over: w.shaftOver, upTo: w.shaftUpTo },
  )
}

/** In the unit in which it would be typed: 20 bar, not 2000 kPa. */
export function pressureText(kPa: number): string {
  const { value, unit } = typedPressure(kPa)
  return `${numberText(Number(value))} ${w.pressureUnits[unit]}`
}

function rangeText(
  [over, upTo]: readonly [number | null, number | null],
  text: (value: number) => string,
  said: {
    readonly between: (over: string, upTo: string) => string
    readonly over: (text: string) => string
    readonly upTo: (text: string) => string
  },
): string {
  if (over !== null && upTo !== null) return said.between(text(over), text(upTo))
  if (over !== null) return said.over(text(over))
  return upTo === null ? '' : said.upTo(text(upTo))
}
