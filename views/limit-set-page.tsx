import type { FC } from 'hono/jsx'
import type { Limit, LimitSet } from '../src/domain/limit-set.ts'
import type { LimitSetStanding } from '../src/domain/limit-set-standing.ts'
import { ButtonLink } from './components/button-link.tsx'
import { Facts } from './components/facts.tsx'
import { Notice } from './components/notice.tsx'
import { PageHead } from './components/page-head.tsx'
import { percentText } from './figures/percent-text.ts'
import { LimitList } from './limit-list.tsx'
import { LimitSetStepFaults, LimitSetSteps, type LimitSetStepsProps } from './limit-set-steps.tsx'
import { LimitStandingMark } from './limit-standing-mark.tsx'
import { LimitTies } from './limit-ties.tsx'
import { type Frame, Page } from './page.tsx'
import { words } from './words/en.ts'

type Version = { readonly set: LimitSet; readonly standing: LimitSetStanding }

export type LimitSetPageProps = {
  readonly frame: Frame
  readonly set: LimitSet
  readonly standing: LimitSetStanding
  /** The newest set of this name, which may be this one. */
  readonly newest: Version
  /** Another version of this name that is in force. */
  readonly inForceInstead: Version | null
  /** Pairs of its limits between which chance would decide. */
  readonly ties: readonly (readonly [Limit, Limit])[]
  readonly offered: 'no' | 'yes' | 'first'
  readonly mayWrite: boolean
  readonly done: 'recorded' | 'approved' | 'retired' | null
  readonly steps: LimitSetStepsProps
}

/** One set: how it stands, each limit in the units of the trade, and how it is founded. */
export const LimitSetPage: FC<LimitSetPageProps> = (props) => {
  const { frame, set, newest, inForceInstead, offered, mayWrite, done } = props
  const w = words.limitSets
  const isNewest = newest.set.id === set.id
  const others = [newest, ...(inForceInstead === null ? [] : [inForceInstead])]
  const notices = {
    recorded: words.chrome.saved,
    approved: w.approvedNow,
    retired: w.retiredNow,
  } as const
  return (
    <Page frame={frame} title={set.name} width="wide">
      <PageHead title={set.name} over={w.over(set.version, set.datedOn)}>
        {mayWrite && isNewest ? (
          <ButtonLink href={`/limit-sets/${set.id}/next`} label={w.nextVersion} />
        ) : null}
      </PageHead>
      <div class="stack-loose">
        <LimitSetStepFaults faults={props.steps.faults} refusal={props.steps.refusal} />
        {done === null ? null : <Notice kind="done" text={notices[done]} />}
        {[...new Set(others)]
          .filter((one) => one.set.id !== set.id)
          .map((one) => (
            <p>
              <a href={`/limit-sets/${one.set.id}`}>{versionText(one)}</a>
            </p>
          ))}
        {offered === 'no' ? null : (
          <p class="strong">{offered === 'first' ? w.offeredFirst : w.offered}</p>
        )}
        <SetFacts set={set} standing={props.standing} />
        <LimitTies limits={set.limits} ties={props.ties} />
        <LimitList limits={set.limits} />
        <LimitSetSteps {...props.steps} />
        {mayWrite ? (
          <p>
            <a href={`/audit?subject=${encodeURIComponent(`limit-set ${set.id}`)}`}>{w.trail}</a>
          </p>
        ) : null}
      </div>
    </Page>
  )
}

const SetFacts: FC<{ set: LimitSet; standing: LimitSetStanding }> = ({ set, standing }) => {
  const w = words.limitSets
  const retired = set.steps.find((one) => one.step === 'retired')
  return (
    <Facts
      layout="rows"
      pairs={[
        { label: w.state, value: <LimitStandingMark standing={standing} set={set} /> },
        { label: w.writtenBy, value: set.writtenByName === '' ? w.notRecorded : set.writtenByName },
        { label: w.approvedBy, value: approvedBy(set) },
        ...(retired === undefined
          ? []
          : [
              {
                label: w.retiredBy,
                value: `${w.byOn(retired.byName, retired.at.slice(0, 10))}: ${retired.reason}`,
              },
            ]),
        { label: w.note, value: set.note === '' ? w.noNote : set.note },
        {
          label: w.directions,
          value: withSource(String(set.directionsRequiredCount), w.directionsSource),
        },
        {
          label: w.share,
          value: withSource(w.shareOfLimit(percentText(set.uncertaintyShareAtMost)), w.shareSource),
        },
      ]}
    />
  )
}

function versionText({ set, standing }: Version): string {
  const step = set.steps.find(
    (one) => one.step === (standing === 'retired' ? 'retired' : 'approved'),
  )
  return words.limitSets.newer[standing](set.version, step?.effectiveOn ?? '')
}

function withSource(value: string, source: string) {
  return (
    <>
      {value} <span class="soft">({source})</span>
    </>
  )
}

function approvedBy({ steps }: LimitSet): string {
  const w = words.limitSets
  const step = steps.find((one) => one.step === 'approved')
  if (step === undefined) return w.notApproved
  return step.byName === '' ? w.beforeApprovals : w.byOn(step.byName, step.at.slice(0, 10))
}
