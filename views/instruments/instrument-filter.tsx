import type { FC } from 'hono/jsx'
import { type InstrumentKind, instrumentKinds } from '../../src/domain/instrument.ts'
import {
  type InstrumentStanding,
  type InstrumentState,
  instrumentState,
  instrumentStates,
} from '../../src/domain/instrument-standing.ts'
import { ButtonLink } from '../components/button-link.tsx'
import { words } from '../words/en.ts'

/** Fewer than this are seen at a glance: by how they stand only many are narrowed down. */
const many = 12

type Props = {
  readonly standings: readonly InstrumentStanding[]
  readonly kind: InstrumentKind | ''
  readonly state: InstrumentState | ''
}

/** One tap each, of what there is; the address says what is shown. */
export const InstrumentFilter: FC<Props> = ({ standings, kind, state }) => {
  const { instruments: w, trade } = words
  const kinds = instrumentKinds.filter((one) => standings.some((of) => of.instrument.kind === one))
  const states = instrumentStates.filter((one) =>
    standings.some((of) => instrumentState(of) === one),
  )
  return (
    <div class="stack">
      <nav class="cluster" aria-label={w.filterTitle}>
        <Choice label={w.anyKind} href={hrefOf('', state)} isChosen={kind === ''} />
        {kinds.map((one) => (
          <Choice
            label={trade.instrumentKind[one]}
            href={hrefOf(one, state)}
            isChosen={kind === one}
          />
        ))}
      </nav>
      {standings.length < many && state === '' ? null : (
        <nav class="cluster" aria-label={w.stateFilterTitle}>
          <Choice label={w.anyState} href={hrefOf(kind, '')} isChosen={state === ''} />
          {states.map((one) => (
            <Choice label={w.states[one]} href={hrefOf(kind, one)} isChosen={state === one} />
          ))}
        </nav>
      )}
    </div>
  )
}

const Choice: FC<{ label: string; href: string; isChosen: boolean }> = (props) => {
  const { label, href, isChosen } = props
  return (
    <ButtonLink
      href={href}
      label={label}
      kind={isChosen ? 'main' : 'plain'}
      {...(isChosen ? { attributes: { 'aria-current': 'true' } } : {})}
    />
  )
}

function hrefOf(kind: string, state: string): string {
  const asked = [
    ...(kind === '' ? [] : [`kind=${kind}`]),
    ...(state === '' ? [] : [`state=${state}`]),
  ]
  return asked.length === 0 ? '/instruments' : `/instruments?${asked.join('&')}`
}
