import type {
  CertifiedJudgement,
  CertifiedLimit,
  Figure,
} from '../../src/domain/certified-results.ts'
import { limitBar } from '../../src/plots/limit-bar.ts'
import { certificateWords } from '../../views/words/en/certificate.ts'
import type { Cell, Line, Picture } from '../document.ts'
import { orElse } from './or-else.ts'
import { printDuration } from './print-when.ts'

const { results: words } = certificateWords

const barWidthPx = 205

/** The word of a verdict with its sign; the reason where the word alone does not say it. */
export function verdictLine({ verdict, why }: CertifiedJudgement): Line {
  const word = words.verdict[verdict]
  const isPlain = why === 'within-limit' || why === 'beyond-limit' || why === 'unreadable'
  const text = isPlain ? word : words.verdictWithReason(word, words.reasons[why])
  return { text, style: 'strong', mark: verdict }
}

/**
 * A limit with what it is founded on.
 * @param unit the unit of the limit
 */
export function limitCell(limit: CertifiedLimit | null, unit: string): Cell {
  if (limit === null) return { lines: [{ text: words.noLimit }] }
  const place = [limit.source, limit.edition ?? '', limit.clause ?? ''].filter((one) => one !== '')
  const source = orElse(place.join(', '), certificateWords.notStated)
  const lines: Line[] = [
    { text: bounds(limit, unit), style: 'strong' },
    ...applies(limit),
    ...(limit.asWritten === ''
      ? []
      : [{ text: words.asWritten(limit.asWritten), style: 'small' } as const]),
    { text: words.source(words.basis[limit.basis], source), style: 'small' },
  ]
  return { lines }
}

function bounds(limit: CertifiedLimit, unit: string): string {
  const { upper, lower = null, perMmOf = null } = limit
  const at = perMmOf === null ? unit : words.perMm[perMmOf]
  const sides = [
    ...(lower === null ? [] : [words.atLeast(lower.text, at)]),
    ...(upper === null ? [] : [atMost(limit, upper, at)]),
  ]
  return sides.join(', ')
}

function atMost(limit: CertifiedLimit, upper: Figure, unit: string): string {
  const { upperUin, upperMlPerMin } = limit
  if (upperUin !== null) return words.atMostBoth(upper.text, unit, words.uin(upperUin.text))
  if (upperMlPerMin === null) return words.atMost(upper.text, unit)
  return words.atMostBoth(upper.text, unit, words.flow(upperMlPerMin.text))
}

/** How a test must be held for the limit to apply, in one line. */
function applies({ withinS, volumeAtMostL, startAtLeastKPaGauge }: CertifiedLimit): Line[] {
  const parts = [
    ...(withinS === null ? [] : [words.within(printDuration(withinS))]),
    ...(volumeAtMostL === null ? [] : [words.volumeAtMost(String(volumeAtMostL))]),
    ...(startAtLeastKPaGauge === null ? [] : [words.startAtLeast(startAtLeastKPaGauge.text)]),
  ]
  return parts.length === 0 ? [] : [{ text: parts.join(', ') }]
}

/** The bar that shows a result beside its limit. */
export function limitPicture({ upper }: CertifiedLimit, result: Figure): Picture | undefined {
  if (upper === null) return undefined
  return {
    drawing: limitBar({
      value: result.value,
      upperLimit: upper.value,
      widthPx: barWidthPx,
      valueText: result.text,
      limitText: words.barLimit(upper.text),
    }),
    alternative: words.barAlternative(result.text, upper.text),
  }
}
