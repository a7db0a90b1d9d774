import type { CertifiedJudgement, CertifiedLimit, Figure } from '../../src/domain/certificate.ts'
import { limitBar } from '../../src/plots/limit-bar.ts'
import { certificateWords } from '../../views/words/en/certificate.ts'
import type { Cell, Line } from '../document.ts'
import { printDuration } from './print-when.ts'

const { results: words } = certificateWords

const barWidthPx = 205

/** The word of a verdict with its sign; the reason where the word alone does not say it. */
export function verdictLine({ verdict, why }: CertifiedJudgement): Line {
  const word = words.verdict[verdict]
  const isPlain = why === 'within-limit' || why === 'beyond-limit'
  const text = isPlain ? word : words.verdictWithReason(word, words.reasons[why])
  return { text, style: 'strong', mark: verdict }
}

/**
 * A limit with what it is founded on, and the bar that shows the result beside it.
 * @param result the value that counts; null where there is none
 * @param unit the unit of both
 */
export function limitCell(limit: CertifiedLimit | null, result: Figure | null, unit: string): Cell {
  if (limit === null) return { lines: [{ text: words.noLimit }] }
  const lines: Line[] = [
    { text: words.atMost(limit.upper.text, unit), style: 'strong' },
    ...conversions(limit).map((text) => ({ text })),
    ...applies(limit).map((text) => ({ text })),
    ...(limit.asWritten === ''
      ? []
      : [{ text: words.asWritten(limit.asWritten), style: 'small' } as const]),
    { text: words.source(limit.source || certificateWords.notStated), style: 'small' },
    { text: words.basis[limit.basis], style: 'small' },
  ]
  return result === null ? { lines } : { lines, bar: barOf(limit, result) }
}

function conversions({ upperUin, upperMlPerMin }: CertifiedLimit): readonly string[] {
  return [
    ...(upperUin === null ? [] : [words.uin(upperUin.text)]),
    ...(upperMlPerMin === null ? [] : [words.limitMlPerMin(upperMlPerMin.text)]),
  ]
}

function applies({ withinS, volumeAtMostL }: CertifiedLimit): readonly string[] {
  if (withinS === null && volumeAtMostL === null) return []
  if (withinS === null) return [words.volumeOnly(String(volumeAtMostL))]
  const duration = printDuration(withinS)
  if (volumeAtMostL === null) return [words.withinOnly(duration)]
  return [words.within(duration, String(volumeAtMostL))]
}

function barOf(limit: CertifiedLimit, result: Figure) {
  return {
    drawing: limitBar({
      value: result.value,
      upperLimit: limit.upper.value,
      widthPx: barWidthPx,
      valueText: result.text,
      limitText: words.barLimit(limit.upper.text),
    }),
    alternative: words.barAlternative(result.text, limit.upper.text),
  }
}
