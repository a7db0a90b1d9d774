/** Who does a thing and when: handed to every storing function, written to the audit trail. */
export type Actor = {
  /** Null for the operator at the machine (admin commands, demo). */
  readonly userId: number | null
  readonly name: string
  /** RFC 3339 in UTC; the only clock is in `main.ts`. */
  readonly at: string
}
