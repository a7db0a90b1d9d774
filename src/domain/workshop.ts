/** The workshop that does the work and issues the certificates. */
export type Workshop = {
  readonly name: string
  readonly address: string
}
