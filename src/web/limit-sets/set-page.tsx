import { LimitSetPage } from '../../../views/limit-set-page.tsx'
import type { LimitSetLine } from '../../../views/limit-sets-page.tsx'
import { errorSentence } from '../../../views/words/en/errors.ts'
import type { AppError } from '../../domain/app-error.ts'
import type { Fault } from '../../domain/fault.ts'
import type { LimitSet } from '../../domain/limit-set.ts'
import { limitSetStanding } from '../../domain/limit-set-standing.ts'
import { limitTies } from '../../domain/limit-ties.ts'
import { newestVersion } from '../../domain/next-limit-set-version.ts'
import { offeredLimitSets } from '../../domain/offered-limit-sets.ts'
import { listLimitSets } from '../../store/list-limit-sets.ts'
import type { AppContext } from '../context.ts'
import { newFormKey } from '../record-once.ts'
import { frameOf, sendPage } from '../send-page.ts'
import { today } from '../today.ts'
import { viewer } from '../viewer.ts'

/** What came of an act on the page; empty where it is only looked at. */
export type SetPageState = {
  readonly typed?: Readonly<Record<string, string>>
  readonly faults?: readonly Fault[]
  readonly refusal?: AppError
}

/** One set with what may be done with it; also the answer to an act that was refused. */
export function sendSetPage(
  c: AppContext,
  set: LimitSet,
  state: SetPageState = {},
): Promise<Response> {
  const { typed = {}, faults = [], refusal } = state
  const lines = limitSetLines(c)
  const named = lines.filter((one) => one.set.name === set.name)
  const own = named.find((one) => one.set.id === set.id)
  if (own === undefined) throw new Error(`limit set ${set.id} is not among all of them`)
  const version = newestVersion(
    set.name,
    lines.map((one) => one.set),
  )
  const newest = named.find((one) => one.set.version === version)
  const inForce = named.find((one) => one.standing === 'in-force' && one.set.id !== set.id)
  const status = refusal === undefined ? (faults.length > 0 ? 422 : 200) : statusOf(refusal)
  const page = (
    <LimitSetPage
      frame={frameOf(c)}
      set={set}
      standing={own.standing}
      newest={newest ?? own}
      inForceInstead={inForce ?? null}
      ties={limitTies(set.limits)}
      offered={own.offered}
      mayWrite={mayWriteLimits(c)}
      done={doneOf(c)}
      steps={{
        id: set.id,
        ...actsOn(c, set),
        typed,
        faults,
        refusal: refusal === undefined ? '' : errorSentence(refusal.reason, refusal.details),
        formKeys: {
          approval: newFormKey(c.var.shop.randomBytes),
          retirement: newFormKey(c.var.shop.randomBytes),
        },
      }}
    />
  )
  return sendPage(c, page, status)
}

/** Every set with how it stands today, newest first. */
export function limitSetLines(c: AppContext): readonly LimitSetLine[] {
  const sets = listLimitSets(c.var.shop.store)
  const offered = offeredLimitSets(sets, today(c))
  const offeredOf = (set: LimitSet) => {
    const index = offered.findIndex((one) => one.id === set.id)
    if (index < 0) return 'no'
    return index === 0 ? 'first' : 'yes'
  }
  return sets.map((set) => ({
    set,
    standing: limitSetStanding(set, sets, today(c)),
    offered: offeredOf(set),
  }))
}

/** Who may by the route table; to others the ways there are not shown. */
export function mayWriteLimits(c: AppContext): boolean {
  return ['inspector', 'manager'].includes(viewer(c).role)
}

type Acts = { readonly approval: 'none' | 'form' | 'own-draft'; readonly mayRetire: boolean }

function actsOn(c: AppContext, set: LimitSet): Acts {
  const { id, role } = viewer(c)
  const has = (step: string) => set.steps.some((one) => one.step === step)
  if (role !== 'inspector' || has('retired')) return { approval: 'none', mayRetire: false }
  if (has('approved')) return { approval: 'none', mayRetire: true }
  return { approval: set.writtenById === id ? 'own-draft' : 'form', mayRetire: true }
}

function doneOf(c: AppContext): 'recorded' | 'approved' | 'retired' | null {
  const done = (['recorded', 'approved', 'retired'] as const).find(
    (one) => c.req.query(one) !== undefined,
  )
  return done ?? null
}

function statusOf(refusal: AppError): 403 | 409 {
  return refusal.kind === 'forbidden' ? 403 : 409
}
