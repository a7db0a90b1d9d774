import type { FC } from 'hono/jsx'
import type { FaceFigureChange } from '../../src/domain/face-figure-changes.ts'
import { figure } from '../../src/domain/figure.ts'
import { DataTable } from '../components/data-table.tsx'
import { VerdictMark } from '../components/verdict-mark.tsx'
import { words } from '../words/en.ts'
import type { ComparedPair } from './page-props.ts'
import { changeText, umText } from './um-text.ts'

/** Whether the two figures agree, by which rule, and all figures with their change. */
export const AgreementSection: FC<{ pair: ComparedPair }> = ({ pair }) => {
  const w = words.wholeFaces
  const { comparison, isBeforeAfter } = pair
  return (
    <section class="stack" aria-labelledby="agree-title">
      <div class="section-head">
        <h2 id="agree-title">{isBeforeAfter ? w.changeTitle : w.agreeTitle}</h2>
      </div>
      <Agreement pair={pair} />
      <DataTable
        caption={w.tableTitle}
        isCaptionHidden
        columns={[
          { label: w.table.figure },
          { label: w.earlier, kind: 'number' },
          { label: w.later, kind: 'number' },
          { label: w.table.change, kind: 'number' },
        ]}
        rows={comparison.changes.map((one) => ({ cells: [w.figure[one.name], ...valuesOf(one)] }))}
      />
      <p class="small soft">{w.tableHint}</p>
      <p class="small soft">{w.rule}</p>
    </section>
  )
}

const Agreement: FC<{ pair: ComparedPair }> = ({ pair: { comparison, isBeforeAfter } }) => {
  const w = words.wholeFaces
  const { agreement } = comparison
  if (agreement === null) return <p>{w.noAgreement}</p>
  const { differenceUm, expandedUm, enNumber, isWithin } = agreement
  const texts = [
    changeText(differenceUm),
    umText(expandedUm),
    figure(enNumber, { decimals: 2 }).text,
  ] as const
  if (isBeforeAfter) return <p>{(isWithin ? w.unchanged : w.changed)(...texts)}</p>
  return (
    <p class="faces-agreement">
      <VerdictMark
        verdict={isWithin ? 'pass' : 'fail'}
        word={isWithin ? w.agreeWord : w.disagreeWord}
      />
      <span>{(isWithin ? w.agree : w.disagree)(...texts)}</span>
    </p>
  )
}

function valuesOf({ firstUm, secondUm, changeUm, expandedUm }: FaceFigureChange): string[] {
  const w = words.wholeFaces
  const text = (um: number | null, expanded: number | undefined, print: (um: number) => string) => {
    if (um === null) return w.notKnown
    return expanded === undefined ? w.um(print(um)) : w.plusMinus(print(um), umText(expanded))
  }
  return [
    text(firstUm, expandedUm?.[0], umText),
    text(secondUm, expandedUm?.[1], umText),
    text(changeUm, expandedUm?.[2], changeText),
  ]
}
