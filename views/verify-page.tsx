import type { FC } from 'hono/jsx'
import type { PublicCertificate } from '../src/domain/public-certificate.ts'
import { Button } from './components/button.tsx'
import { Facts } from './components/facts.tsx'
import { Field } from './components/field.tsx'
import { Notice } from './components/notice.tsx'
import { PageHead } from './components/page-head.tsx'
import { VerdictMark } from './components/verdict-mark.tsx'
import { minuteText } from './figures/time-text.ts'
import { type Frame, Page } from './page.tsx'
import { words } from './words/en.ts'

const w = words.certificates

export type VerifyState =
  | { readonly kind: 'start'; readonly isEmpty: boolean }
  | { readonly kind: 'unknown'; readonly typed: string }
  | { readonly kind: 'known'; readonly certificate: PublicCertificate }

/** Where anyone who holds a certificate can check it. */
export const VerifyPage: FC<{ frame: Frame; state: VerifyState }> = ({ frame, state }) => {
  const title = state.kind === 'unknown' ? w.unknownTitle : w.verifyTitle
  return (
    <Page frame={frame} title={title} width="narrow">
      <div class="stack-loose">
        {state.kind === 'known' ? <Known certificate={state.certificate} /> : null}
        {state.kind === 'unknown' ? (
          <div>
            <PageHead title={title} lead={w.unknown} />
            <p>{w.asked(state.typed)}</p>
          </div>
        ) : null}
        {state.kind === 'start' ? <PageHead title={title} lead={w.verifyLead} /> : null}
        <form method="get" action="/verify" class="stack">
          {state.kind === 'known' ? <h2>{w.another}</h2> : null}
          <Field
            name="number"
            label={w.number}
            hint={w.numberHint}
            value={state.kind === 'unknown' ? state.typed : ''}
            isRequired
            attributes={{ autocapitalize: 'characters', spellcheck: 'false' }}
            {...(state.kind === 'start' && state.isEmpty ? { error: w.emptyNumber } : {})}
          />
          <Button label={w.check} kind={state.kind === 'known' ? 'plain' : 'main'} size="large" />
        </form>
      </div>
    </Page>
  )
}

const Known: FC<{ certificate: PublicCertificate }> = ({ certificate }) => {
  const { number, verdict, revision } = certificate
  return (
    <div>
      <PageHead over={w.known} title={number} lead={certificate.workshopName}>
        <VerdictMark size="large" verdict={verdict} word={words.trade.overall[verdict]} />
      </PageHead>
      <div class="stack">
        <Facts
          layout="rows"
          pairs={[
            { label: w.verifyFacts.seal, value: certificate.sealSerial },
            {
              label: w.verifyFacts.drawing,
              value: certificate.sealDrawing || words.chrome.notStated,
            },
            { label: w.verifyFacts.order, value: certificate.workOrderNumber },
            { label: w.verifyFacts.issued, value: minuteText(certificate.issuedAt) },
            { label: w.verifyFacts.released, value: certificate.releasedByName },
            { label: w.verifyFacts.revision, value: String(revision) },
          ]}
        />
        <Notice kind="note" text={w.current} />
        <Compare sha256={certificate.sha256} />
      </div>
    </div>
  )
}

const Compare: FC<{ sha256: string }> = ({ sha256 }) => (
  <section class="card stack">
    <h2>{w.compareTitle}</h2>
    <p>{w.compare}</p>
    <p>
      <code class="hash">{sha256}</code>
    </p>
    <details class="fold">
      <summary>{w.commandsTitle}</summary>
      <div class="fold-body stack">
        <p>{w.commandsLead}</p>
        {w.commands.map((command) => (
          <p>
            <code class="hash">{command}</code>
          </p>
        ))}
      </div>
    </details>
  </section>
)
