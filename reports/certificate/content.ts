import type { CertificateRecord } from '../../src/domain/certificate.ts'
import { certificateWords as words } from '../../views/words/en/certificate.ts'
import type { PaperDocument } from '../document.ts'
import { budgetBlocks } from './budgets.ts'
import { conditionBlocks } from './conditions.ts'
import { decisionBlocks, waiverBlocks } from './decisions.ts'
import { findingBlocks } from './finding-blocks.ts'
import { flatnessBlocks } from './flatness-results.ts'
import { instrumentBlocks } from './instruments.ts'
import { itemBlocks } from './item.ts'
import { lappingBlocks } from './lapping-results.ts'
import { measuredConditionBlocks } from './measured-conditions.ts'
import { measuredBlocks } from './measured-results.ts'
import { signatureBlocks } from './signatures.ts'
import { correctionBlocks, methodBlocks, statementBlocks } from './statements.ts'
import { staticBlocks } from './static-results.ts'
import { stripBlocks } from './strip-results.ts'
import { certificateLetterhead, certificateSummary } from './summary.ts'
import { surveyBlocks } from './survey-blocks.ts'
import { wholeFaceBlocks } from './whole-face-blocks.ts'

/** The certificate as a document: everything it says, in order, from its record alone. */
export function certificateContent(record: CertificateRecord): PaperDocument {
  const { number, revision, seal, workshop, limitSet } = record
  return {
    title: words.documentTitle(number, revision),
    subject: words.documentSubject(seal.serial),
    author: workshop.name,
    language: words.language,
    createdAt: record.issuedAt,
    letterhead: certificateLetterhead(record),
    runningHead: words.runningHead(number, revision, seal.serial),
    footer: { left: words.footer(number, revision, workshop.name), right: words.page },
    marking: record.isInvented ? words.invented : null,
    blocks: [
      certificateSummary(record),
      { kind: 'heading', text: words.results.heading },
      {
        kind: 'paragraph',
        text: words.results.limitSet(limitSet.name, limitSet.version, limitSet.datedOn),
      },
      ...flatnessBlocks(record),
      ...wholeFaceBlocks(record),
      ...staticBlocks(record),
      ...measuredBlocks(record),
      ...surveyBlocks(record),
      ...findingBlocks(record),
      ...lappingBlocks(record),
      ...stripBlocks(record),
      ...decisionBlocks(record),
      ...waiverBlocks(record),
      ...itemBlocks(record),
      ...conditionBlocks(record),
      ...measuredConditionBlocks(record),
      ...instrumentBlocks(record),
      ...methodBlocks(record),
      ...budgetBlocks(record),
      ...correctionBlocks(record),
      ...statementBlocks(record),
      ...signatureBlocks(record),
    ],
  }
}
