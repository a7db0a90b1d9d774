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
 * scrolled by keys. The first cell of a row heads it. On a phone each row stands as a card, its
 * cells beside their headings: the roles are written out, since a table that is laid out
 * otherwise is none any more to assistive technology.
 */
export const DataTable: FC<{
  caption: string
  columns: readonly Column[]
  rows: readonly Row[]
  isCaptionHidden?: boolean
  /** Stays in columns on a phone too: what is compared across them. */
  keepsColumns?: boolean
  id?: string
}> = ({ caption, columns, rows, isCaptionHidden, keepsColumns, id }) => (
  // Focusable, since what scrolls must be reachable by key; a group, since its heading's section
  // is the landmark already.
  // biome-ignore lint/a11y/useSemanticElements: a fieldset is for controls, not for a table
  <div class="table-frame" role="group" aria-label={caption} tabindex={0} id={id}>
    <table class={keepsColumns ? 'table' : 'table table-cards'} role="table">
      <caption class={isCaptionHidden ? 'visually-hidden' : 'table-caption'}>{caption}</caption>
      <thead role="rowgroup">
        <tr role="row">
          {columns.map((column) => (
            <th scope="col" role="columnheader" class={`cell-${column.kind ?? 'text'}`}>
              {column.isLabelHidden ? (
                <span class="visually-hidden">{column.label}</span>
              ) : (
                column.label
              )}
            </th>
          ))}
        </tr>
      </thead>
      <tbody role="rowgroup">
        {rows.map((row) => (
          <tr role="row" class={row.mark ? `row-${row.mark}` : undefined}>
            {row.cells.map((cell, index) => {
              const { kind: sort = 'text', label, isLabelHidden } = columns[index] ?? {}
              const kind = `cell-${sort}`
              return index === 0 ? (
                <th scope="row" role="rowheader" class={kind}>
                  {cell}
                </th>
              ) : (
                <td role="cell" class={kind} data-heading={isLabelHidden ? undefined : label}>
                  <div>{cell}</div>
                </td>
              )
            })}
          </tr>
        ))}
      </tbody>
    </table>
  </div>
)
