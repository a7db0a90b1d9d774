import type { CertifiedDoubt, CertifiedException, CertifiedResult } from './certified-decision.ts'
import { certifiedLimit } from './certified-judgement.ts'
import type { Figure } from './certified-results.ts'
import { type CountedResult, countedResults } from './counted-results.ts'
import { currentOnly } from './current-only.ts'
import type { Evidence } from './evidence.ts'
import { figure, optionalFigure } from './figure.ts'
import { instrumentsUsed } from './instruments-used.ts'
import type { Judged } from './judged.ts'
import { printedResult } from './printed-result.ts'
import { printedUnit } from './printed-unit.ts'
import { type ShownResult, type ShownResultKind, shownResult } from './shown-result.ts'

/** Every result that counts for the release, as it was decided. */
export function certifiedResults(evidence: Evidence): readonly CertifiedResult[] {
  return countedResults(evidence).map((counted) => {
    const shown = shownResult(evidence, shownKindOf(counted), counted.subjectId)
    if (shown === undefined) throw new Error('certifiedResults requires the record of a result')
    return certifiedResult(counted, shown)
  })
}

function certifiedResult(counted: CountedResult, shown: ShownResult): CertifiedResult {
  const { judged, concession } = counted
  const { characteristic, value, limit } = judged
  const { unit, storedPerPrinted, rounding } = printedUnit[characteristic]
  const bound = (stored: number | null) =>
    optionalFigure(stored === null ? null : stored / storedPerPrinted, rounding)
  const printed = printedResult({
    characteristic,
    value: value ?? 0,
    uncertainty: shown.uncertainty,
  })
  return {
    characteristic,
    componentKind: counted.componentKind,
    section: counted.section,
    unit,
    value: value === null ? null : printed.value,
    text: value === null ? '' : printed.text,
    uncertainty: withoutModel(shown),
    lower: bound(judged.lower),
    upper: bound(judged.upper),
    limit: limit === null ? null : certifiedLimit(limit),
    verdict: judged.verdict,
    why: judged.why,
    decision: judged.decision,
    ...percentsOf(judged),
    largestSource: judged.largestSource,
    concession:
      concession === null
        ? null
        : {
            reason: concession.reason,
            customerReference: concession.customerReference,
            byName: concession.byName,
            at: concession.at,
          },
    instrumentNumbers: shown.instruments.map((one) => one.number),
    method: shown.method,
    recordedByName: shown.recordedByName,
    recordedAt: shown.recordedAt,
  }
}

function percentsOf({ decision, verdict }: Judged) {
  if (decision === null) {
    return { conformancePercent: null, beyondPercent: null, riskPercent: null }
  }
  const { conformanceProbability, falseAcceptRisk, falseRejectRisk } = decision
  const risk = verdict === 'undecidable' ? null : Math.max(falseAcceptRisk, falseRejectRisk)
  return {
    conformancePercent: percentOf(conformanceProbability),
    beyondPercent: percentOf(1 - conformanceProbability),
    riskPercent: risk === null ? null : percentOf(risk),
  }
}

/** A tenth of a percent is as fine as a stated uncertainty bears. */
function percentOf(share: number): Figure {
  const value = share * 100
  if (value < 0.1) return { value, text: '< 0.1' }
  if (value > 99.9) return { value, text: '> 99.9' }
  return figure(value, { decimals: 1 })
}

function withoutModel({ uncertainty }: ShownResult) {
  if (uncertainty === null) return null
  const { model: _, ...kept } = uncertainty
  return kept
}

function shownKindOf({ subjectKind, judged }: CountedResult): ShownResultKind {
  if (subjectKind !== 'static-test') return subjectKind
  return judged.characteristic === 'static-drop' ? 'static-test-drop' : 'static-test-leak'
}

/** Each exception once, whatever was read under it. */
export function certifiedExceptions(evidence: Evidence): readonly CertifiedException[] {
  const known = new Map<number, CertifiedException>()
  for (const { number, exception } of instrumentsUsed(evidence)) {
    if (exception === undefined) continue
    const { id, fault, reason, allowedByName, allowedAt } = exception
    known.set(id, { instrumentNumber: number, fault, reason, allowedByName, allowedAt })
  }
  return [...known.values()]
}

/** What was said about records that an instrument found out of tolerance was used for. */
export function certifiedDoubts(evidence: Evidence): readonly CertifiedDoubt[] {
  const counted = countedResults(evidence)
  const onBench = {
    'wear-track': currentOnly(evidence.wearTracks),
    'spring-check': currentOnly(evidence.springChecks),
  } as const
  const isCounted = ({ subjectKind: kind, subjectId }: Evidence['doubts'][number]) =>
    kind === 'wear-track' || kind === 'spring-check'
      ? onBench[kind].some((one) => one.id === subjectId)
      : counted.some((one) => one.subjectKind === kind && one.subjectId === subjectId)
  return evidence.doubts
    .filter(isCounted)
    .map(({ instrumentNumber, foundOn, answer, reason, byName }) => {
      return { instrumentNumber, foundOn, answer, reason, byName }
    })
}
