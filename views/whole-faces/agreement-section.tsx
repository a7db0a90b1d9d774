import type { FC } from 'hono/jsx'
import { figure } from '../../src/domain/figure.ts'
import { VerdictMark } from '../components/verdict-mark.tsx'
import { words } from '../words/en.ts'
import type { ComparedPair } from './page-props.ts'
import { changeText, umText } from './um-text.ts'

/** Whether the two figures agree, or how they changed: the answer, before all drawings. */
export const AgreementSection: FC<{ pair: ComparedPair }> = ({ pair }) => {
  const w = words.wholeFaces
  return (
    <section class="stack" aria-labelledby="agree-title">
      <h2 id="agree-title">{pair.isBeforeAfter ? w.changeTitle : w.agreeTitle}</h2>
      <Agreement pair={pair} />
    </section>
  )
}

const Agreement: FC<{ pair: ComparedPair }> = ({ pair: { comparison, isBeforeAfter } }) => {
  const w = words.wholeFaces
  const { agreement } = comparison
  if (agreement === null) return <p>{w.noAgreement}</p>
  const { differenceUm, expandedUm, enNumber, isWithin } = agreement
  const beside = [umText(expandedUm), figure(enNumber, { decimals: 2 }).text] as const
  if (isBeforeAfter) {
    return <p>{(isWithin ? w.unchanged : w.changed)(changeText(differenceUm), ...beside)}</p>
  }
  const size = umText(Math.abs(differenceUm))
  return (
    <p class="faces-agreement">
      <VerdictMark
        verdict={isWithin ? 'pass' : 'fail'}
        word={isWithin ? w.agreeWord : w.disagreeWord}
      />
      <span>{(isWithin ? w.agree : w.disagree)(size, ...beside)}</span>
    </p>
  )
}
