import type { FC } from 'hono/jsx'
import type { Customer } from '../src/domain/customer.ts'
import type { User } from '../src/domain/user.ts'
import { Button } from './components/button.tsx'
import { Notice } from './components/notice.tsx'
import { PageHead } from './components/page-head.tsx'
import { VerdictMark } from './components/verdict-mark.tsx'
import { type Frame, Page } from './page.tsx'
import { PersonForm, type PersonFormProps } from './person-form.tsx'
import { words } from './words/en.ts'

export type PeoplePageProps = {
  readonly frame: Frame
  readonly people: readonly User[]
  readonly customers: readonly Customer[]
  /** Who looks: nobody ends their own access. */
  readonly selfId: number
  readonly isRecorded: boolean
  readonly form: Omit<PersonFormProps, 'customers'>
}

/** Everyone with access, and those who had it. */
export const PeoplePage: FC<PeoplePageProps> = (props) => {
  const { frame, customers, isRecorded, form } = props
  const w = words.people
  const isFaulty = form.faults.length > 0
  const add = (
    <details class="fold" open={isFaulty}>
      <summary>{w.add}</summary>
      <div class="fold-body">
        <PersonForm {...form} customers={customers} />
      </div>
    </details>
  )
  return (
    <Page frame={frame} title={w.title} width="wide">
      <PageHead title={w.title} lead={w.lead} />
      <div class="stack-loose">
        {isRecorded ? <Notice kind="done" text={words.chrome.saved} /> : null}
        {isFaulty ? add : null}
        <PeopleList {...props} />
        {isFaulty ? null : add}
      </div>
    </Page>
  )
}

const PeopleList: FC<PeoplePageProps> = ({ people, customers, selfId, form }) => {
  const w = words.people
  return (
    <ul class="job-list" aria-label={w.caption}>
      {people.map((one) => (
        <li class="job record-row">
          <div>
            <h2 class="person-name">{one.displayName}</h2>
            <p class="soft">{w.signsInAs(one.name)}</p>
          </div>
          <div>
            <p>{words.chrome.roles[one.role]}</p>
            <p class="soft">{placeOf(one, customers)}</p>
          </div>
          <div class="cluster">
            <VerdictMark
              verdict={one.isActive ? 'pass' : 'refused'}
              word={one.isActive ? w.hasAccess : w.noAccess}
            />
            {one.id === selfId ? (
              <span class="soft">{w.you}</span>
            ) : (
              <AccessForm person={one} formKey={form.formKey} />
            )}
          </div>
        </li>
      ))}
    </ul>
  )
}

/** The customer whose seals they see, and the department where it is stated. */
function placeOf(person: User, customers: readonly Customer[]): string {
  const customer = customers.find((one) => one.id === person.customerId)
  return [customer?.name ?? '', person.department].filter((text) => text !== '').join(' · ')
}

const AccessForm: FC<{ person: User; formKey: string }> = ({ person, formKey }) => {
  const w = words.people
  const { id, displayName, isActive } = person
  return (
    <form method="post" action={`/people/${id}/active`}>
      <input type="hidden" name="formKey" value={`${formKey}-${id}`} />
      <input type="hidden" name="isActive" value={isActive ? 'no' : 'yes'} />
      <Button
        label={isActive ? w.deactivate : w.reactivate}
        attributes={{
          'aria-label': isActive ? w.deactivateLabel(displayName) : w.reactivateLabel(displayName),
        }}
      />
    </form>
  )
}
