import type { FC } from 'hono/jsx'
import type { Customer } from '../src/domain/customer.ts'
import type { User } from '../src/domain/user.ts'
import { Button } from './components/button.tsx'
import { DataTable } from './components/data-table.tsx'
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
        {isRecorded ? <Notice kind="done" text={w.recorded} /> : null}
        {isFaulty ? add : null}
        <PeopleTable {...props} />
        {isFaulty ? null : add}
      </div>
    </Page>
  )
}

const PeopleTable: FC<PeoplePageProps> = ({ people, customers, selfId, form }) => {
  const w = words.people
  const { column } = w
  return (
    <DataTable
      caption={w.caption}
      isCaptionHidden
      columns={[
        { label: column.displayName },
        { label: column.name },
        { label: column.role },
        { label: column.department },
        { label: column.access },
        { label: column.act, kind: 'act', isLabelHidden: true },
      ]}
      rows={people.map((one) => ({
        mark: one.isActive ? undefined : 'quiet',
        cells: [
          one.displayName,
          one.name,
          <>
            {words.chrome.roles[one.role]}
            {one.customerId === null ? null : (
              <p class="soft">{customers.find((of) => of.id === one.customerId)?.name}</p>
            )}
          </>,
          one.department === '' ? <span class="soft">{w.notStated}</span> : one.department,
          <VerdictMark
            verdict={one.isActive ? 'pass' : 'refused'}
            word={one.isActive ? w.hasAccess : w.noAccess}
          />,
          one.id === selfId ? (
            <span class="soft">{w.you}</span>
          ) : (
            <AccessForm person={one} formKey={form.formKey} />
          ),
        ],
      }))}
    />
  )
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
