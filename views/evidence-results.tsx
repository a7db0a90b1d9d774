import type { FC } from 'hono/jsx'
import type { EvidenceResult } from '../src/domain/evidence-results.ts'
import { faceKinds } from '../src/domain/seal.ts'
import { VerdictMark } from './components/verdict-mark.tsx'
import type { EvidencePageProps } from './evidence-page-props.ts'
import { OtherResults } from './other-results.tsx'
import { ResultCard } from './result-card.tsx'
import { words } from './words/en.ts'

const w = words.inspection

/** Every result that counts, what is missing among them, and the rest folded away. */
export const EvidenceResults: FC<EvidencePageProps> = (props) => {
  const { evidence, results, concession } = props
  return (
    <section class="stack" aria-labelledby="results">
      <h2 id="results">{w.results}</h2>
      <div class="result-cards">
        {results.map((one, index) => (
          <ResultCard
            evidence={evidence}
            result={one}
            refused={concession.refusedFor?.(one.counted) ?? null}
            formKey={concession.formKey}
            isRepeated={isSameRecord(one, results[index + 1])}
          />
        ))}
        {missingTitles(props).map((title) => (
          <article class="result-card">
            <h3 class="result-card-title">{title}</h3>
            <div class="result-card-verdict">
              <VerdictMark verdict="missing" word={w.notMeasured} />
            </div>
          </article>
        ))}
      </div>
      <OtherResults {...props} />
    </section>
  )
}

/** The two figures of a static test stand one after the other. */
function isSameRecord(one: EvidenceResult, next: EvidenceResult | undefined): boolean {
  return (
    next !== undefined &&
    one.counted.subjectKind === next.counted.subjectKind &&
    one.counted.subjectId === next.counted.subjectId
  )
}

function missingTitles({ evidence, results }: EvidencePageProps): readonly string[] {
  const faces = faceKinds.filter(
    (kind) =>
      evidence.seal.components.some((one) => one.kind === kind) &&
      !results.some(
        ({ counted }) =>
          counted.subjectKind === 'flatness-reading' && counted.componentKind === kind,
      ),
  )
  const isTested = results.some(({ counted }) => counted.subjectKind === 'static-test')
  return [
    ...faces.map((kind) => w.missingFace(words.trade.faceKind[kind])),
    ...(isTested ? [] : [w.staticTest]),
  ]
}
