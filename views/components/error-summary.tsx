import type { FC } from 'hono/jsx'

/** All faults of a form in one place, each a link to its field; nothing when there is none. */
export const ErrorSummary: FC<{
  title: string
  faults: readonly { readonly fieldId: string; readonly message: string }[]
}> = ({ title, faults }) =>
  faults.length === 0 ? null : (
    <div class="faults" role="alert" id="faults">
      <h2 class="faults-title">{title}</h2>
      <ul class="faults-list">
        {faults.map((fault) => (
          <li>
            <a href={`#${fault.fieldId}`}>{fault.message}</a>
          </li>
        ))}
      </ul>
    </div>
  )
