import type { FC } from 'hono/jsx'
import type { CertifiedFinding, CertifiedPart } from '../../src/domain/certified-findings.ts'
import { findingPicture } from '../../src/plots/finding-picture.ts'
import { DataTable } from '../components/data-table.tsx'
import { SvgDrawing } from '../components/svg-drawing.tsx'
import { causeText, certifiedPartTexts, findingText, partText } from '../words/en/finding-texts.ts'
import { words } from '../words/en.ts'

type Props = {
  readonly findings: readonly CertifiedFinding[]
  readonly parts: readonly CertifiedPart[]
}

/** What was seen, what became of the parts, and apart from both the opinions; nothing of nothing. */
export const CertifiedFindings: FC<Props> = ({ findings, parts }) => {
  const w = words.findings
  const { certificate } = w
  const opinions = findings.filter((one) => causeText(one) !== null)
  if (findings.length === 0 && parts.length === 0) return null
  const table = (titles: readonly string[]) => titles.map((label) => ({ label }))
  return (
    <section class="card stack">
      {findings.length === 0 ? null : <h2>{certificate.seenHeading}</h2>}
      {findings.map((one) => (
        <div class="finding">
          <SvgDrawing drawing={findingPicture(one.term, 56)} />
          <div>
            <p>
              <strong>{w.parts[one.part]}:</strong> {findingText(one)}
            </p>
            {one.observation === '' ? null : <p>{one.observation}</p>}
          </div>
        </div>
      ))}
      {parts.length === 0 ? null : (
        <DataTable
          caption={certificate.partsHeading}
          columns={table(certificate.partsColumns)}
          rows={parts.map((one) => ({
            cells: [partText(one), w.fates[one.fate], certifiedPartTexts(one).join('. ')],
          }))}
        />
      )}
      {opinions.length === 0 ? null : (
        <>
          <DataTable
            caption={certificate.opinionHeading}
            columns={table(certificate.opinionColumns)}
            rows={opinions.map((one) => ({
              cells: [`${w.parts[one.part]}: ${w.terms[one.term]}`, causeText(one) ?? ''],
            }))}
          />
          <p class="small soft">{certificate.opinionNote}</p>
        </>
      )}
    </section>
  )
}
