import type { FC } from 'hono/jsx'
import { currentOnly } from '../../src/domain/current-only.ts'
import type { Evidence } from '../../src/domain/evidence.ts'
import { findingText } from '../words/en/finding-texts.ts'
import { words } from '../words/en.ts'

/** What was found when the seal was stripped, in short, with the way to the strip bench. */
export const FindingsLine: FC<{ evidence: Evidence }> = ({ evidence }) => {
  const w = words.findings
  const findings = currentOnly(evidence.findings)
  const parts = currentOnly(evidence.partLines)
  return (
    <section class="records" aria-labelledby="findings-title">
      <div class="section-head">
        <h2 id="findings-title">{w.orderTitle}</h2>
      </div>
      {findings.length + parts.length === 0 ? (
        <p class="soft">{w.orderNone}</p>
      ) : (
        <>
          <p>{w.counts(findings.length, parts.length)}</p>
          <ul class="stack-tight">
            {findings.map((one) => (
              <li>
                {w.parts[one.part]}: {findingText(one)}
              </li>
            ))}
          </ul>
        </>
      )}
      <p>
        <a href={`/work-orders/${evidence.workOrder.number}/strip`}>{w.toStrip}</a>
      </p>
    </section>
  )
}
