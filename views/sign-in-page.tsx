import type { FC } from 'hono/jsx'
import { Button } from './components/button.tsx'
import { DataTable } from './components/data-table.tsx'
import { Field } from './components/field.tsx'
import { Notice } from './components/notice.tsx'
import { PageHead } from './components/page-head.tsx'
import { type Frame, Page } from './page.tsx'
import { tradeWord } from './words/en/trade.ts'
import { words } from './words/en.ts'

type DemoAccount = { readonly name: string; readonly role: string; readonly password: string }

export const SignInPage: FC<{
  frame: Frame
  name: string
  next: string
  isRefused: boolean
  hasUsers: boolean
  demoAccounts: readonly DemoAccount[]
}> = ({ frame, name, next, isRefused, hasUsers, demoAccounts }) => {
  const w = words.signIn
  return (
    <Page frame={frame} title={w.title} width="narrow">
      <div class="stack-loose">
        <PageHead title={w.title} lead={w.lead} />
        {hasUsers ? null : (
          <section class="card">
            <h2>{w.nobodyTitle}</h2>
            <p>{w.nobody}</p>
            <p>
              <code>{w.nobodyCommand}</code>
            </p>
          </section>
        )}
        <form method="post" action="/sign-in" class="stack-loose">
          <input type="hidden" name="next" value={next} />
          <Field
            name="name"
            label={w.name}
            value={name}
            autocomplete="username"
            isRequired
            {...(isRefused ? { error: w.refused } : {})}
          />
          <Field
            name="password"
            label={w.password}
            type="password"
            autocomplete="current-password"
            isRequired
          />
          <Button label={w.submit} kind="main" size="large" />
        </form>
        {demoAccounts.length === 0 ? null : (
          <section class="stack">
            <h2>{w.demoTitle}</h2>
            <Notice kind="note" text={w.demoLead} />
            <DataTable
              caption={w.demoTitle}
              isCaptionHidden
              keepsColumns
              columns={[{ label: w.name }, { label: w.demoRole }, { label: w.password }]}
              rows={demoAccounts.map((one) => ({
                key: one.name,
                cells: [
                  <code>{one.name}</code>,
                  tradeWord(words.chrome.roles, one.role),
                  <code>{one.password}</code>,
                ],
              }))}
            />
          </section>
        )}
        <p>
          <a href="/verify">{w.verifyLink}</a>
        </p>
      </div>
    </Page>
  )
}
