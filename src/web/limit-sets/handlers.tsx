import { LimitSetsPage } from '../../../views/limit-sets-page.tsx'
import type { Fault } from '../../domain/fault.ts'
import type { LimitSet } from '../../domain/limit-set.ts'
import { nextLimitSetVersion } from '../../domain/next-limit-set-version.ts'
import { parseLimitSet } from '../../domain/parse-limit-set.ts'
import { addLimitSet } from '../../store/add-limit-set.ts'
import { listLimitSets as everyLimitSet } from '../../store/list-limit-sets.ts'
import type { AppContext } from '../context.ts'
import { faultOfConflict } from '../fault-of-conflict.ts'
import { ownFields } from '../own-fields.ts'
import { readForm } from '../read-form.ts'
import { recordOnce } from '../record-once.ts'
import { frameOf, sendPage } from '../send-page.ts'
import { today } from '../today.ts'
import { typedText } from '../typed-text.ts'
import { actor, viewer } from '../viewer.ts'
import { freshLimitSet, sendLimitSetForm, typedLimitSet, withOneMore } from './form-page.tsx'
import { setOf } from './set-of.ts'
import { limitSetLines, mayWriteLimits, sendSetPage } from './set-page.tsx'

export function listLimitSets(c: AppContext): Promise<Response> {
  const page = (
    <LimitSetsPage frame={frameOf(c)} lines={limitSetLines(c)} mayWrite={mayWriteLimits(c)} />
  )
  return sendPage(c, page)
}

export function showLimitSet(c: AppContext): Promise<Response> {
  return sendSetPage(c, setOf(c))
}

export function newLimitSet(c: AppContext): Promise<Response> {
  return sendLimitSetForm(c, undefined, {
    typed: freshLimitSet(undefined),
    faults: [],
    formKey: '',
  })
}

export function createLimitSet(c: AppContext): Promise<Response> {
  return recordLimitSet(c, undefined)
}

export function newLimitSetVersion(c: AppContext): Promise<Response> {
  const set = setOf(c)
  // Refuses here already what storing would refuse: an older version is not followed.
  nextLimitSetVersion(set, everyLimitSet(c.var.shop.store))
  return sendLimitSetForm(c, set, { typed: freshLimitSet(set), faults: [], formKey: '' })
}

export function createLimitSetVersion(c: AppContext): Promise<Response> {
  return recordLimitSet(c, setOf(c))
}

const nameTaken: Fault = { field: 'name', kind: 'taken' }

async function recordLimitSet(c: AppContext, followed: LimitSet | undefined): Promise<Response> {
  const { store } = c.var.shop
  const input = await readForm(c)
  const typed = typedLimitSet(input)
  const formKey = typedText(input.formKey)
  const again = (faults: readonly Fault[]) =>
    sendLimitSetForm(c, followed, { typed, faults, formKey })
  if (input.more !== undefined) {
    return sendLimitSetForm(c, followed, { typed: withOneMore(typed), faults: [], formKey })
  }
  const parsed = parseLimitSet(ownFields(input), { name: followed?.name ?? null })
  if (!parsed.ok) return again(parsed.faults)
  const answer = faultOfConflict(followed === undefined ? { 'version-taken': nameTaken } : {}, () =>
    recordOnce(c, input, () => {
      const version =
        followed === undefined ? 1 : nextLimitSetVersion(followed, everyLimitSet(store))
      const { id } = addLimitSet(
        store,
        {
          ...parsed.value,
          version,
          datedOn: today(c),
          writtenById: viewer(c).id,
          writtenByName: viewer(c).displayName,
        },
        actor(c),
      )
      return `/limit-sets/${id}?recorded`
    }),
  )
  return answer instanceof Response ? answer : again([answer])
}
