import type { CertificateRecord, CertifiedInstrument } from '../../src/domain/certificate.ts'
import { certificateWords } from '../../views/words/en/certificate.ts'
import type { Block, Cell } from '../document.ts'

const { instruments: words } = certificateWords

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
      rows: record.instruments.map((one) => ({ cells: instrumentCells(one) })),
    },
    ...overdueBlocks(record),
  ]
}

function instrumentCells(instrument: CertifiedInstrument): readonly Cell[] {
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
      ],
    },
  ]
}

function overdueBlocks({ instruments, release }: CertificateRecord): readonly Block[] {
  const overdue = instruments.filter((one) => one.status !== 'in-calibration')
  const { acknowledgement, byName } = release
  const isSilent = acknowledgement.trim() === ''
  if (overdue.length === 0) {
    return isSilent ? [] : [{ kind: 'paragraph', text: words.remark(byName, acknowledgement) }]
  }
  const numbers = [...new Set(overdue.map((one) => one.number))].join(', ')
  return [
    { kind: 'paragraph', text: words.overdue(numbers), style: 'strong' },
    {
      kind: 'paragraph',
      text: isSilent ? words.notAcknowledged : words.acknowledged(byName, acknowledgement),
    },
  ]
}
