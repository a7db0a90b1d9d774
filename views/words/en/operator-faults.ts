import type { OperatorFault } from '../../../src/domain/operator-error.ts'
import type { StoreFault } from '../../../src/domain/store-fault.ts'
import { adminWords } from './admin.ts'
import { storeFaultSentence } from './store-faults.ts'

/** What the operator is refused for, in one line. */
export function operatorSentence(fault: OperatorFault): string {
  switch (fault.kind) {
    case 'not-a-port':
      return `${fault.name} takes a whole number from 0 to ${fault.max}, got "${fault.text}"`
    case 'not-a-setting':
      return `${fault.name} takes ${fault.choices.join(' or ')}, got "${fault.text}"`
    case 'not-an-address':
      return `${fault.name} takes an address such as https://seals.example, got "${fault.text}"`
    case 'more-than-a-host':
      return `${fault.name} takes scheme and host alone, got "${fault.text}"`
    case 'newer-database':
      return (
        `the database has ${fault.doneCount} migrations and this version knows ` +
        `${fault.knownCount}: start the newer version that wrote it`
      )
    case 'migration-changed':
      return `migration ${fault.name} was changed after it was applied`
    case 'broken-keys':
      return `${fault.rowCount} rows point to rows that are not there`
    case 'backup-file-exists':
      return adminWords.fileExists(fault.file)
    case 'backup-unsound':
      return `The backup ${fault.file} was not kept, it is not sound: ${listed(fault.faults)}`
    case 'restore-folder-filled':
      return adminWords.folderNotEmpty(fault.folder)
    case 'restore-unsound':
      return `The backup ${fault.file} was not restored, it is not sound: ${listed(fault.faults)}`
  }
}

function listed(faults: readonly StoreFault[]): string {
  return faults.map(storeFaultSentence).join('; ')
}
