export type AppErrorKind =
  | 'invalid'
  | 'not-found'
  | 'forbidden'
  | 'conflict'
  | 'too-many'
  | 'too-large'

/**
 * An expected refusal. `reason` names the sentence in `views/words`; `details` fills it.
 * A stranger's record is `not-found`, never `forbidden`.
 */
export class AppError extends Error {
  readonly kind: AppErrorKind
  readonly reason: string
  readonly details: Readonly<Record<string, string | number>>

  constructor(
    kind: AppErrorKind,
    reason: string,
    details: Readonly<Record<string, string | number>> = {},
  ) {
    super(`${kind}: ${reason}`)
    this.name = 'AppError'
    this.kind = kind
    this.reason = reason
    this.details = details
  }
}
