import type { Child, FC } from 'hono/jsx'

export interface Column {
  readonly label: string
  readonly kind?: 'text' | 'number' | 'act'
  /** Keeps the heading for assistive technology only: a column of links or signs. */
  readonly isLabelHidden?: boolean
}

export interface Row {
  readonly cells: readonly Child[]
  /** `stop` marks what needs a look, `quiet` what was replaced or is over. */
  readonly mark?: 'stop' | 'quiet' | undefined
}

/**
 * A table that scrolls inside its frame, never the page; the frame takes the focus, so it can be
 * scrolled by keys. The first cell of a row heads it.
 */
export const DataTable: FC<{
  caption: string
  columns: readonly Column[]
  rows: readonly Row[]
  isCaptionHidden?: boolean
  id?: string
}> = ({ caption, columns, rows, isCaptionHidden, id }) => (
  // Focusable, since what scrolls must be reachable by key; a group, since its heading's section
  // is the landmark already.
  // biome-ignore lint/a11y/useSemanticElements: a fieldset is for controls, not for a table
  <div class="table-frame" role="group" aria-label={caption} tabindex={0} id={id}>
    <table class="table">
      <caption class={isCaptionHidden ? 'visually-hidden' : 'table-caption'}>{caption}</caption>
      <thead>
        <tr>
          {columns.map((column) => (
            <th scope="col" class={`cell-${column.kind ?? 'text'}`}>
              {column.isLabelHidden ? (
                <span class="visually-hidden">{column.label}</span>
              ) : (
                column.label
              )}
            </th>
          ))}
        </tr>
      </thead>
      <tbody>
        {rows.map((row) => (
          <tr class={row.mark ? `row-${row.mark}` : undefined}>
            {row.cells.map((cell, index) => {
              const kind = `cell-${columns[index]?.kind ?? 'text'}`
              return index === 0 ? (
                <th scope="row" class={kind}>
                  {cell}
                </th>
              ) : (
                <td class={kind}>{cell}</td>
              )
            })}
          </tr>
        ))}
      </tbody>
    </table>
  </div>
)
