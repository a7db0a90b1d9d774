/**
 * Reads a cursor, which is opaque to those who pass it back: the id of the last row of the page
 * before. One that we never gave stands before the first row, so that nothing follows it.
 */
export function cursorId(cursor: string): number {
  return /^\d{1,15}$/.test(cursor) ? Number(cursor) : 0
}
