import type { FC } from 'hono/jsx'
import { figure } from '../../src/domain/figure.ts'
import type { OtherLimit } from '../../src/domain/other-limits.ts'
import { DataTable } from '../components/data-table.tsx'
import { limitText } from '../figures/limit-text.ts'
import { words } from '../words/en.ts'
import type { AlignedSurvey } from './page-props.ts'

const w = words.alignment

/** What every set in force would say of one result, the order's own first. */
export const OtherLimits: FC<{
  conflict: NonNullable<AlignedSurvey['conflict']>
  survey: AlignedSurvey['survey']
}> = ({ conflict, survey }) => {
  const { limits, ratio, isContested } = conflict
  const others = limits.filter((one) => !one.isOwn)
  if (others.length === 0) return <p class="soft">{w.alone}</p>
  return (
    <div class="stack">
      {isContested ? <p class="survey-caution">{w.contested}</p> : null}
      {ratio === null || ratio <= 1.005 ? null : (
        <p>{w.ratio(figure(ratio, { decimals: 1 }).text)}</p>
      )}
      <details class="fold">
        <summary>{w.setsSay(limits.length)}</summary>
        <div class="fold-body">
          <DataTable
            caption={`${w.limitsTitle}: ${words.trade.characteristic[survey.characteristic]}`}
            isCaptionHidden
            columns={[
              { label: w.limitColumns.set },
              { label: w.limitColumns.limit, kind: 'number' },
              { label: w.limitColumns.basis },
              { label: w.limitColumns.says },
            ]}
            rows={limits.map((one) => ({ cells: cellsOf(one, survey) }))}
          />
        </div>
      </details>
    </div>
  )
}

function cellsOf(
  { set, applied, isWithin, isOwn }: OtherLimit,
  { characteristic }: AlignedSurvey['survey'],
) {
  const { limit, lower, upper, isSizeKnown } = applied
  const name = words.workOrders.limitSet(set.name, set.version)
  const whence = [limit.source, limit.edition, limit.clause].filter((one) => one !== '').join(', ')
  const { says } = w
  return [
    isOwn ? `${name}, ${w.own}` : name,
    isSizeKnown
      ? limitText({ characteristic, lower, upper })
      : limitText({ ...limit, characteristic }),
    [words.trade.limitBasis[limit.basis], whence].filter((one) => one !== '').join(': '),
    isWithin === null ? says.unknown : isWithin ? says.within : says.beyond,
  ]
}
