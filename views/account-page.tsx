import type { FC } from 'hono/jsx'
import type { Fault } from '../src/domain/fault.ts'
import { passwordLength } from '../src/domain/password-length.ts'
import type { User } from '../src/domain/user.ts'
import { Button } from './components/button.tsx'
import { Facts } from './components/facts.tsx'
import { Field } from './components/field.tsx'
import { Notice } from './components/notice.tsx'
import { PageHead } from './components/page-head.tsx'
import { errorOf } from './error-of.ts'
import { type Frame, Page } from './page.tsx'
import { words } from './words/en.ts'

export const AccountPage: FC<{
  frame: Frame
  user: User
  faults: readonly Fault[]
  isChanged: boolean
}> = ({ frame, user, faults, isChanged }) => {
  const w = words.signIn
  return (
    <Page frame={frame} title={w.accountTitle} width="narrow">
      <PageHead title={user.displayName} over={w.accountTitle} />
      {isChanged ? <Notice kind="done" text={w.changed} /> : null}
      <Facts
        pairs={[
          { label: w.name, value: user.name },
          { label: w.role, value: words.chrome.roles[user.role] },
          { label: w.department, value: user.department || words.chrome.notStated },
        ]}
      />
      <form method="post" action="/account/password" class="stack">
        <p>{w.accountLead(passwordLength.min)}</p>
        <Field
          name="old"
          label={w.oldPassword}
          type="password"
          autocomplete="current-password"
          isRequired
          {...errorOf(faults, 'old')}
        />
        <Field
          name="new"
          label={w.newPassword}
          type="password"
          autocomplete="new-password"
          isRequired
          {...errorOf(faults, 'new')}
        />
        <Button label={w.change} />
      </form>
    </Page>
  )
}
