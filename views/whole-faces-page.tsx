import type { FC } from 'hono/jsx'
import { EmptyState } from './components/empty-state.tsx'
import { ErrorSummary } from './components/error-summary.tsx'
import { PageHead } from './components/page-head.tsx'
import { type Frame, Page } from './page.tsx'
import { AgreementSection } from './whole-faces/agreement-section.tsx'
import { ChooseForm } from './whole-faces/choose-form.tsx'
import { CombineSection } from './whole-faces/combine-section.tsx'
import { DifferenceSection } from './whole-faces/difference-section.tsx'
import { FiguresSection } from './whole-faces/figures-section.tsx'
import type { WholeFacesForm } from './whole-faces/page-props.ts'
import { SideBySide } from './whole-faces/side-by-side.tsx'
import { words } from './words/en.ts'

/** Two readings of one face side by side, held against each other, and their mean. */
export const WholeFacesPage: FC<{ frame: Frame; form: WholeFacesForm }> = ({ frame, form }) => {
  const { wholeFaces: w, trade } = words
  const { orderNumber, sealSerial, face, readings, pair, refused } = form
  const kind = trade.faceKind[face?.kind === 'stationary-seat' ? face.kind : 'rotating-face']
  return (
    <Page frame={frame} title={`${w.title} ${orderNumber}`} width="wide">
      <PageHead
        title={w.title}
        over={[orderNumber, sealSerial, ...(face === null ? [] : [kind])].join(' · ')}
        lead={w.lead}
      >
        <a href={form.back.href}>{words.results.back[form.back.to]}</a>
      </PageHead>
      <div class="stack-loose">
        <ErrorSummary
          title={w.combineTitleRefused}
          faults={
            refused === null
              ? []
              : [{ fieldId: pair === null ? 'first' : 'combined', message: w.refusal[refused] }]
          }
        />
        <FaceTabs form={form} />
        {readings.length >= 2 ? <ChooseForm form={form} /> : <TooFew count={readings.length} />}
        {pair === null ? (
          readings.length >= 2 ? (
            <p>{w.same}</p>
          ) : null
        ) : (
          <>
            <AgreementSection pair={pair} />
            <SideBySide pair={pair} orderNumber={orderNumber} />
            <DifferenceSection pair={pair} />
            <FiguresSection pair={pair} />
            <CombineSection form={form} pair={pair} />
          </>
        )}
      </div>
    </Page>
  )
}

const FaceTabs: FC<{ form: WholeFacesForm }> = ({ form: { faces, face, orderNumber } }) => {
  const { wholeFaces: w, trade } = words
  if (faces.length < 2) return null
  return (
    <nav class="tabs" aria-label={w.faces}>
      <ul class="tabs-list">
        {faces.map((one) => (
          <li>
            <a
              class="tab"
              href={`/work-orders/${orderNumber}/whole-faces?face=${one.id}`}
              aria-current={one.id === face?.id ? 'page' : undefined}
            >
              {trade.componentKind[one.kind]}
            </a>
          </li>
        ))}
      </ul>
    </nav>
  )
}

const TooFew: FC<{ count: number }> = ({ count }) => {
  const w = words.wholeFaces
  return count === 0 ? (
    <EmptyState title={w.none} text={w.noneText} />
  ) : (
    <EmptyState title={w.one} text={w.oneText} />
  )
}
