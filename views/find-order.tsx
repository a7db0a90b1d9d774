import type { FC } from 'hono/jsx'
import { Button } from './components/button.tsx'
import { Field } from './components/field.tsx'
import { words } from './words/en.ts'

/** Opens an order by its number: a scanner types into the field and presses Enter. */
export const FindOrder: FC<{ typed: string; isEmpty: boolean }> = ({ typed, isEmpty }) => {
  const w = words.bench
  return (
    <search>
      <form method="get" action="/work-orders/find" class="find">
        <Field
          name="number"
          label={w.find}
          hint={w.findHint}
          value={typed}
          inputMode="search"
          attributes={{ autofocus: '', enterkeyhint: 'go', spellcheck: 'false' }}
          {...(isEmpty ? { error: w.findEmpty } : {})}
        />
        <Button label={w.findSubmit} kind="main" size="large" />
      </form>
    </search>
  )
}
