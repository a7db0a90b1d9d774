import type { CertificateRecord } from '../../src/domain/certificate.ts'
import { brandMark } from '../../src/plots/brand-mark.ts'
import { certificateWords } from '../../views/words/en/certificate.ts'
import type { Letterhead, SummaryBlock } from '../document.ts'
import { printDrawing } from './item.ts'
import { orElse } from './or-else.ts'
import { printDay } from './print-when.ts'

const { summary: words, ...common } = certificateWords

/** Who issues it, and which certificate this is. */
export function certificateLetterhead(record: CertificateRecord): Letterhead {
  return {
    mark: { drawing: brandMark(64), alternative: common.markAlternative },
    name: record.workshop.name,
    lines: [record.workshop.address],
    identity: [
      { text: common.number(record.number), style: 'strong' },
      { text: common.revision(record.revision) },
      { text: common.issued(printDay(record.issuedAt)) },
    ],
    title: common.title,
    subtitle: common.subtitle,
  }
}

/** The answer at a glance: verdict, seal, order, and how to check the certificate. */
export function certificateSummary(record: CertificateRecord): SummaryBlock {
  const { seal, equipment, workOrder, customer, verifyUrl, verdict, release } = record
  return {
    kind: 'summary',
    verdict,
    word: words.verdict[verdict],
    sentence: words.sentence[verdict],
    facts: [
      { label: words.seal, value: seal.serial },
      { label: words.workOrder, value: workOrder.number },
      { label: words.drawing, value: printDrawing(seal.drawing, seal.drawingRevision) },
      { label: words.customerOrder, value: orElse(workOrder.customerOrder, common.notStated) },
      { label: words.customer, value: customer.name },
      { label: words.position, value: equipment?.tag ?? common.notStated },
      { label: words.releasedBy, value: release.byName },
      { label: words.issued, value: printDay(record.issuedAt) },
    ],
    code: {
      url: verifyUrl,
      alternative: words.verifyAlternative(verifyUrl),
      sentence: words.verifyHow(verifyUrl),
    },
  }
}
