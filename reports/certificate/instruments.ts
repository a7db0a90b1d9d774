import type { CertificateRecord, CertifiedInstrument } from '../../src/domain/certificate.ts'
import type { CertifiedException } from '../../src/domain/certified-decision.ts'
import { certificateWords } from '../../views/words/en/certificate.ts'
import { certificateDecisionWords } from '../../views/words/en/certificate-decisions.ts'
import type { Block, Cell, Line } from '../document.ts'
import { printMoment } from './print-when.ts'

const { instruments: words } = certificateWords
const { faults } = certificateDecisionWords.exceptions

/** The instruments, and in plain words which of them were out of calibration. */
export function instrumentBlocks(record: CertificateRecord): readonly Block[] {
  return [
    { kind: 'heading', text: words.heading },
    {
      kind: 'table',
      columns: words.columns.map((title, index) => ({
        title,
        share: [150, 110, 80, 120][index] ?? 1,
      })),
      rows: record.instruments.map((one) => ({ cells: instrumentCells(one, record) })),
    },
    ...overdueBlocks(record),
  ]
}

function instrumentCells(
  instrument: CertifiedInstrument,
  record: CertificateRecord,
): readonly Cell[] {
  const { number, name, serial, kind, certificateNumber, dueOn, status, usedOn } = instrument
  const isFine = status === 'in-calibration'
  return [
    {
      lines: [
        { text: words.numbered(number, words.kinds[kind]), style: 'strong' },
        { text: words.nameAndSerial(name, serial), style: 'small' },
      ],
    },
    { lines: [{ text: certificateNumber ?? words.noCertificate }] },
    { lines: [{ text: dueOn ?? words.noDue }] },
    {
      lines: [
        isFine
          ? { text: words.status[status] }
          : { text: words.status[status], style: 'strong', mark: 'missing' },
        { text: words.usedOn(usedOn.join(', ')), style: 'small' },
        ...exceptionLines(exceptionOf(instrument, record)),
      ],
    },
  ]
}

/**
 * The exception that these uses were recorded under; null where there was none. Older records
 * don't keep it here: there the one of the same instrument and fault holds.
 */
function exceptionOf(
  instrument: CertifiedInstrument,
  { exceptions }: CertificateRecord,
): CertifiedException | null {
  const { number, status, exception } = instrument
  if (exception !== undefined) return exception
  const found = exceptions.find((one) => one.instrumentNumber === number && one.fault === status)
  return found ?? null
}

function exceptionLines(exception: CertifiedException | null): readonly Line[] {
  if (exception === null) return []
  const { fault, reason, allowedByName, allowedAt } = exception
  return [
    { text: words.exception(faults[fault]) },
    { text: words.allowed(allowedByName, printMoment(allowedAt), reason), style: 'small' },
  ]
}

function overdueBlocks(record: CertificateRecord): readonly Block[] {
  const { instruments, release } = record
  const overdue = instruments.filter((one) => one.status !== 'in-calibration')
  const { acknowledgement, byName } = release
  const isSilent = acknowledgement.trim() === ''
  if (overdue.length === 0) {
    return isSilent ? [] : [{ kind: 'paragraph', text: words.remark(byName, acknowledgement) }]
  }
  const uncovered = overdue.filter((one) => exceptionOf(one, record) === null)
  return [
    { kind: 'paragraph', text: words.overdue(numbersOf(overdue)), style: 'strong' },
    ...(isSilent ? [] : [paragraph(words.acknowledged(byName, acknowledgement))]),
    ...(isSilent && uncovered.length > 0
      ? [paragraph(words.notAcknowledged(numbersOf(uncovered)))]
      : []),
  ]
}

function paragraph(text: string): Block {
  return { kind: 'paragraph', text }
}

function numbersOf(instruments: readonly CertifiedInstrument[]): string {
  return [...new Set(instruments.map((one) => one.number))].join(', ')
}
