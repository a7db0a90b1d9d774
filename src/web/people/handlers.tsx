import { AuditPage } from '../../../views/audit-page.tsx'
import { AppError } from '../../domain/app-error.ts'
import type { Fault } from '../../domain/fault.ts'
import { openFields } from '../../domain/fields.ts'
import { parsePerson } from '../../domain/parse-person.ts'
import { addUser } from '../../store/add-user.ts'
import { listAudit } from '../../store/list-audit.ts'
import { listCustomers } from '../../store/list-customers.ts'
import { requireUser } from '../../store/require-user.ts'
import { setActive } from '../../store/set-active.ts'
import type { AppContext } from '../context.ts'
import { faultOfConflict } from '../fault-of-conflict.ts'
import { idOf } from '../id-of.ts'
import { ownFields } from '../own-fields.ts'
import { readForm } from '../read-form.ts'
import { recordOnce } from '../record-once.ts'
import { frameOf, sendPage } from '../send-page.ts'
import { actor, viewer } from '../viewer.ts'
import { sendPeople } from './people-page.tsx'

export function listPeople(c: AppContext): Promise<Response> {
  return sendPeople(c)
}

const nameTaken: Fault = { field: 'name', kind: 'taken' }

export async function createPerson(c: AppContext): Promise<Response> {
  const { store, hashPassword } = c.var.shop
  const input = await readForm(c)
  const customerIds = listCustomers(store).map((one) => one.id)
  const parsed = parsePerson(ownFields(input), { customerIds })
  if (!parsed.ok) return sendPeople(c, { input, faults: parsed.faults })
  const { person, password } = parsed.value
  const passwordHash = await hashPassword(password)
  // What is kept to know a resent form again must not be a way to the password.
  const { password: _, ...kept } = input
  const answer = faultOfConflict({ 'name-taken': nameTaken }, () =>
    recordOnce(c, kept, () => {
      addUser(store, { ...person, passwordHash }, actor(c))
      return '/people?recorded'
    }),
  )
  return answer instanceof Response ? answer : sendPeople(c, { input, faults: [answer] })
}

/** Gives access or ends it, with every session of theirs. Nobody ends their own. */
export async function setPersonActive(c: AppContext): Promise<Response> {
  const { store } = c.var.shop
  const { id } = requireUser(store, idOf(c.req.param('id'), 'no-user'))
  const input = await readForm(c)
  const fields = openFields(ownFields(input))
  fields.only('isActive')
  const isActive = fields.choice('isActive', ['yes', 'no']) === 'yes'
  if (fields.faults.length > 0) throw new AppError('invalid', 'not-a-form')
  if (id === viewer(c).id) throw new AppError('conflict', 'not-oneself')
  return recordOnce(c, input, () => {
    setActive(store, { userId: id, isActive }, actor(c))
    return '/people?recorded'
  })
}

const pageLength = 50

/** The trail as its address asks for it. */
export function showAudit(c: AppContext): Promise<Response> {
  const subject = c.req.query('subject')?.trim().slice(0, 120) ?? ''
  const cursor = c.req.query('cursor') ?? ''
  const { items, nextCursor } = listAudit(c.var.shop.store, {
    limit: pageLength,
    ...(subject === '' ? {} : { subject }),
    ...(cursor === '' ? {} : { cursor }),
  })
  const page = (
    <AuditPage
      frame={frameOf(c)}
      entries={items}
      subject={subject}
      isFirstPage={cursor === ''}
      nextCursor={nextCursor}
    />
  )
  return sendPage(c, page)
}
