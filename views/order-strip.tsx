import type { FC } from 'hono/jsx'
import type { CertificateRecord } from '../src/domain/certificate.ts'
import type { Evidence } from '../src/domain/evidence.ts'
import { Notice } from './components/notice.tsx'
import { minuteText } from './figures/time-text.ts'
import { hasStripRecords, StripLines } from './strip-lines.tsx'
import { words } from './words/en.ts'

type Records = Pick<CertificateRecord, 'wearTracks' | 'springs' | 'assembly'>

/** What was read on the strip bench and how the seal was put together; replaced ones are struck. */
export const OrderStrip: FC<{
  evidence: Evidence
  records: Records
  /** Where a correction is begun; null where this person may record none. */
  correctHref: string | null
}> = ({ evidence, records, correctHref }) => {
  const w = words.stripRecords
  return (
    <section id="strip-records" class="records" aria-labelledby="strip-records-title">
      <div class="section-head">
        <h2 id="strip-records-title">{w.title}</h2>
      </div>
      {hasStripRecords(records) ? (
        <div class="stack">
          <StripLines {...records} />
          {correctHref === null ? null : (
            <>
              {records.assembly?.loadFrom === 'corrected-check' ? (
                <Notice kind="note" text={words.assembly.outdated} />
              ) : null}
              <Corrections evidence={evidence} href={correctHref} />
            </>
          )}
        </div>
      ) : (
        <p class="soft">{w.none}</p>
      )}
    </section>
  )
}

const Corrections: FC<{ evidence: Evidence; href: string }> = ({ evidence, href }) => {
  const { stripRecords: w, wearTrack, springCheck, assembly } = words
  const lists = [
    { place: 'wear-tracks', what: wearTrack.act, records: evidence.wearTracks },
    { place: 'spring-checks', what: springCheck.act, records: evidence.springChecks },
    { place: 'assembly', what: assembly.act, records: evidence.assemblies },
  ] as const
  return (
    <ul class="stack-tight">
      {lists.flatMap(({ place, what, records }) =>
        records
          .filter((one) => one.replacedById === null)
          .map((one) => (
            <li>
              <a href={`${href}/${place}/new?replaces=${one.id}`}>
                {w.correct(what, minuteText(one.recordedAt))}
              </a>
            </li>
          )),
      )}
    </ul>
  )
}
