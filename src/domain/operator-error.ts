import type { StoreFault } from './store-fault.ts'

/** What an operator is refused for, as data; the sentences stand in `views/words`. */
export type OperatorFault =
  | SettingFault
  | { readonly kind: 'newer-database'; readonly doneCount: number; readonly knownCount: number }
  | { readonly kind: 'migration-changed'; readonly name: string }
  /** Rows that point nowhere once the migrations are applied. */
  | { readonly kind: 'broken-keys'; readonly rowCount: number }
  | { readonly kind: 'backup-file-exists'; readonly file: string }
  | { readonly kind: 'restore-folder-filled'; readonly folder: string }
  | {
      readonly kind: 'backup-unsound' | 'restore-unsound'
      readonly file: string
      readonly faults: readonly StoreFault[]
    }

/** A variable of the environment that says what it can't say: `text` is what it says. */
export type SettingFault = { readonly name: string; readonly text: string } & (
  | { readonly kind: 'not-a-port'; readonly max: number }
  | { readonly kind: 'not-a-setting'; readonly choices: readonly string[] }
  | { readonly kind: 'not-an-address' }
  | { readonly kind: 'more-than-a-host' }
)

/** A refusal that the operator at the machine reads, at the start or at a command. */
export class OperatorError extends Error {
  readonly fault: OperatorFault

  constructor(fault: OperatorFault) {
    super(fault.kind)
    this.name = 'OperatorError'
    this.fault = fault
  }
}
