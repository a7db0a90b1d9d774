/** Fires when the server is about to leave: what would go on for ever ends by itself. */
export const leaving = new AbortController()
