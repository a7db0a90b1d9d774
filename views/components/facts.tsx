import type { Child, FC } from 'hono/jsx'

/** Label and value, dense; never a blank value: the caller writes "not recorded". */
export const Facts: FC<{
  pairs: readonly { readonly label: string; readonly value: Child }[]
  layout?: 'columns' | 'rows'
}> = ({ pairs, layout = 'columns' }) => (
  <dl class={`facts facts-${layout}`}>
    {pairs.map((pair) => (
      <div class="fact">
        <dt class="fact-label">{pair.label}</dt>
        <dd class="fact-value">{pair.value}</dd>
      </div>
    ))}
  </dl>
)
