/** One line of the trail. Its hash covers the line and the hash of the one before. */
export type AuditEntry = {
  readonly id: number
  readonly at: string
  /** Null for the operator at the machine. */
  readonly userId: number | null
  readonly actor: string
  readonly act: string
  readonly subject: string
  /** JSON: what was recorded, before and after where something changed. */
  readonly detail: string
  readonly previousHash: string
  readonly hash: string
}
