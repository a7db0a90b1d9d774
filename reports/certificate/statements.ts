import type { CertificateRecord, CertifiedCorrection } from '../../src/domain/certificate.ts'
import type { CertifiedMeasuredValue } from '../../src/domain/certified-measured-value.ts'
import type { CertifiedFlatness } from '../../src/domain/certified-results.ts'
import { figure } from '../../src/domain/figure.ts'
import { flatnessSees } from '../../src/domain/flatness-sees.ts'
import { figureKindOf, measuredFamilies } from '../../src/domain/measured-family.ts'
import { printedUnit } from '../../src/domain/printed-unit.ts'
import { certificateWords } from '../../views/words/en/certificate.ts'
import { certificateDecisionWords } from '../../views/words/en/certificate-decisions.ts'
import { flatnessSeesWords } from '../../views/words/en/flatness-sees.ts'
import type { Block } from '../document.ts'
import { printMoment } from './print-when.ts'

const { methods, corrections, item, results, ...words } = certificateWords
const decisions = certificateDecisionWords

/** How results were obtained and judged: what was not used is not told. */
export function methodBlocks(record: CertificateRecord): readonly Block[] {
  const readings = record.faces
    .flatMap((one) => [one.asFound, ...one.earlier, ...(one.beside ?? []), one.asLeft])
    .filter((one) => one !== null)
  const [test] = record.staticTests
  return [
    { kind: 'heading', text: methods.heading },
    ...(readings.length === 0 ? [] : [paragraph(flatnessMethod(readings))]),
    ...(test === undefined
      ? []
      : [paragraph(methods.static(namesOf(record.staticTests), test.leakTemperatureC.text))]),
    ...measuredMethods(record).map(paragraph),
    { kind: 'paragraph', text: methods.deviations },
    { kind: 'paragraph', text: methods.uncertainty },
    { kind: 'subheading', text: methods.ruleHeading },
    ...ruleBlocks(record),
  ]
}

/** How bands were read, and what such a figure of flatness sees. */
function flatnessMethod(readings: readonly CertifiedFlatness[]): string {
  const sights = [...new Set(readings.map((one) => flatnessSees(one.method)))]
  const counted = readings.filter((one) => flatnessSees(one.method) === 'taper')
  const whole = readings.filter((one) => !counted.includes(one)).map((one) => one.method)
  return [
    ...(counted.length === 0 ? [] : [methods.flatnessCounted(namesOf(counted))]),
    ...[...new Set(whole)].flatMap((method) => {
      const say = methods.flatnessWhole[method.split(' ')[0] ?? '']
      return say === undefined ? [] : [say(method)]
    }),
    methods.flatnessBands,
    ...sights.map((sees) => `${flatnessSeesWords[sees].name}: ${flatnessSeesWords[sees].what}`),
  ].join(' ')
}

function paragraph(text: string): Block {
  return { kind: 'paragraph', text }
}

/** How finish, heights and run-out were read, each where the certificate has a result of it. */
function measuredMethods({ measuredValues }: CertificateRecord): readonly string[] {
  return measuredFamilies.flatMap((kind) => {
    const used = measuredValues.filter((one) => figureKindOf[one.characteristic] === kind)
    if (used.length === 0) return []
    const method = methods.measured[kind](namesOf(used))
    const setUp = methods.cutOffs(statedOf(used, 'cutOffMm'), statedOf(used, 'tipRadiusUm'))
    if (kind !== 'roughness') return [method]
    const isRuleTold = used.some((one) => one.traces != null && one.traces.rule !== null)
    return [[method, setUp, ...(isRuleTold ? [methods.sixteen] : [])].join(' ')]
  })
}

function statedOf(
  used: readonly CertifiedMeasuredValue[],
  name: 'cutOffMm' | 'tipRadiusUm',
): readonly string[] {
  return [...new Set(used.flatMap((one) => one[name]?.text ?? []))]
}

/** Which rule, what it risks, and where it was agreed. */
function ruleBlocks({ rule, limitSet }: CertificateRecord): readonly Block[] {
  const w = decisions.rule
  const { uncertaintyShareAtMost: share } = limitSet
  return [
    { kind: 'paragraph', text: w.stated(w.names[rule.rule], w.sentences[rule.rule]) },
    ...(rule.rule === 'guard-probability'
      ? [{ kind: 'paragraph', text: w.probability(String(rule.probability)) } as const]
      : []),
    {
      kind: 'paragraph',
      text: `${share === null ? w.tooLargeInSet : w.tooLarge(`${figure(100 * share, { decimals: 1 }).text} %`)} ${w.unknown[rule.rule]}`,
    },
    { kind: 'paragraph', text: w.agreed(w.scopes[rule.scope], rule.reference) },
    { kind: 'paragraph', text: w.applied },
  ]
}

function namesOf(used: readonly { readonly method: string }[]): string {
  return [...new Set(used.map((one) => one.method))].join(', ')
}

/** Every record that was replaced, with both values and the reason. */
export function correctionBlocks(record: CertificateRecord): readonly Block[] {
  const heading: Block = { kind: 'heading', text: corrections.heading }
  if (record.corrections.length === 0) {
    return [heading, { kind: 'paragraph', text: corrections.none }]
  }
  const items = record.corrections.map(printCorrection)
  return [heading, { kind: 'paragraph', text: corrections.intro }, { kind: 'list', items }]
}

function printCorrection(correction: CertifiedCorrection): string {
  const { subject, was, became, byName, at, reason } = correction
  const print = (figure: typeof was.figure): string => {
    if (figure === null) return corrections.unreadable
    return `${figure.text} ${unitOf(subject)}`
  }
  return corrections.item({
    subject: nameOf(subject),
    was: print(was.figure),
    became: print(became.figure),
    by: byName,
    at: printMoment(at),
    reason: reason.trim() === '' ? words.notStated : reason,
  })
}

function nameOf(subject: CertifiedCorrection['subject']): string {
  if (subject.kind === 'static-test') return corrections.static(results.sections[subject.section])
  const what =
    subject.kind === 'flatness'
      ? item.componentKinds[subject.face]
      : decisions.characteristics[subject.characteristic]
  return corrections.flatness(
    what,
    subject.condition === 'as-found' ? results.asFound : results.asLeft,
  )
}

function unitOf(subject: CertifiedCorrection['subject']): string {
  if (subject.kind === 'flatness') return decisions.units.um
  if (subject.kind === 'static-test') return decisions.units.paM3PerS
  return decisions.units[printedUnit[subject.characteristic].unit]
}

/** What the tests leave open, how to handle the seal, and what the certificate claims. */
export function statementBlocks(record: CertificateRecord): readonly Block[] {
  const { limitsOfTests, cautions, statements } = words
  const { isIndependent } = record.release
  const isMachineRead = record.measuredValues.some((one) => one.componentKind === null)
  return [
    { kind: 'heading', text: limitsOfTests.heading },
    {
      kind: 'list',
      items: [
        ...limitsOfTests.items,
        isMachineRead ? limitsOfTests.machineRead : limitsOfTests.machineNotRead,
      ],
    },
    { kind: 'heading', text: cautions.heading },
    { kind: 'paragraph', text: cautions.intro },
    { kind: 'list', items: cautions.items },
    { kind: 'heading', text: statements.heading },
    {
      kind: 'list',
      items: [
        isMachineRead ? statements.sealAndMachine : statements.sealAlone,
        statements.inFull,
        isIndependent ? statements.independent : statements.notIndependent,
        ...(record.revision === 0 ? [] : [replacement(record)]),
      ],
    },
  ]
}

function replacement({ revision, changeReason }: CertificateRecord): string {
  const reason = changeReason.trim() === '' ? words.notStated : changeReason
  return words.replaces(revision - 1, reason)
}
