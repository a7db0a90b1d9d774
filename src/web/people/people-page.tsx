import { PeoplePage } from '../../../views/people-page.tsx'
import type { Fault } from '../../domain/fault.ts'
import type { Input } from '../../domain/fields.ts'
import { listCustomers } from '../../store/list-customers.ts'
import { listUsers } from '../../store/list-users.ts'
import type { AppContext } from '../context.ts'
import { newFormKey } from '../record-once.ts'
import { frameOf, sendPage } from '../send-page.ts'
import { typedFields } from '../typed-fields.ts'
import { typedText } from '../typed-text.ts'
import { viewer } from '../viewer.ts'

/** What comes back into the form; the password does not. */
const shownFields = ['name', 'displayName', 'role', 'department', 'customerId'] as const

/** Everyone, and the form of a new person; with `refused` as the answer to it. */
export function sendPeople(
  c: AppContext,
  refused?: { readonly input: Input; readonly faults: readonly Fault[] },
): Promise<Response> {
  const { store, randomBytes } = c.var.shop
  const input = refused?.input ?? {}
  const formKey = typedText(input.formKey)
  const page = (
    <PeoplePage
      frame={frameOf(c)}
      people={listUsers(store)}
      customers={listCustomers(store)}
      selfId={viewer(c).id}
      isRecorded={c.req.query('recorded') !== undefined}
      form={{
        typed: typedFields(input, shownFields),
        faults: refused?.faults ?? [],
        formKey: formKey === '' ? newFormKey(randomBytes) : formKey,
      }}
    />
  )
  return sendPage(c, page, refused === undefined ? 200 : 422)
}
