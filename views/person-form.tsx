import type { FC } from 'hono/jsx'
import type { Customer } from '../src/domain/customer.ts'
import type { Fault } from '../src/domain/fault.ts'
import { passwordLength } from '../src/domain/password-length.ts'
import { roles } from '../src/domain/role.ts'
import { Button } from './components/button.tsx'
import { ButtonRow } from './components/button-row.tsx'
import { ErrorSummary } from './components/error-summary.tsx'
import { Field } from './components/field.tsx'
import { SelectField } from './components/select-field.tsx'
import { ownErrorOf, ownSentence } from './own-error-of.ts'
import { personSentences } from './words/en/people.ts'
import { words } from './words/en.ts'

export type PersonFormProps = {
  /** Without the password: it never comes back. */
  readonly typed: Readonly<
    Record<'name' | 'displayName' | 'role' | 'department' | 'customerId', string>
  >
  readonly faults: readonly Fault[]
  readonly formKey: string
  readonly customers: readonly Customer[]
}

/** Adds a person: who they are, what they may do, and the first password. */
export const PersonForm: FC<PersonFormProps> = ({ typed, faults, formKey, customers }) => {
  const { people: w, chrome } = words
  const own = (name: string) => ownErrorOf(faults, name, personSentences)
  const plain = (name: 'name' | 'displayName' | 'department') => ({
    name,
    value: typed[name],
    ...own(name),
  })
  return (
    <form method="post" action="/people" class="stack">
      <ErrorSummary
        title={chrome.faultsTitle}
        faults={faults.map((one) => ({
          fieldId: one.field,
          message: ownSentence(one, personSentences),
        }))}
      />
      <input type="hidden" name="formKey" value={formKey} />
      <div class="field-pair">
        <Field
          {...plain('displayName')}
          label={w.displayName}
          hint={w.displayNameHint}
          isRequired
        />
        <Field {...plain('name')} label={w.name} hint={w.nameHint} isRequired />
      </div>
      <div class="field-pair">
        <SelectField
          name="role"
          label={w.role}
          emptyLabel={w.chooseRole}
          value={typed.role}
          options={roles.map((value) => ({ value, label: chrome.roles[value] }))}
          isRequired
          {...own('role')}
        />
        <SelectField
          name="customerId"
          label={w.customer}
          hint={w.customerHint}
          emptyLabel={w.noCustomer}
          value={typed.customerId}
          options={customers.map((one) => ({ value: String(one.id), label: one.name }))}
          {...own('customerId')}
        />
      </div>
      <div class="field-pair">
        <Field {...plain('department')} label={w.department} hint={w.departmentHint} />
        <Field
          name="password"
          label={w.password}
          hint={w.passwordHint(passwordLength.min)}
          type="password"
          autocomplete="new-password"
          isRequired
          {...own('password')}
        />
      </div>
      <ButtonRow>
        <Button label={w.submit} kind="main" />
      </ButtonRow>
    </form>
  )
}
