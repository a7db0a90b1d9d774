import type { Figure } from '../../../src/domain/certified-results.ts'
import type {
  CertifiedAssembly,
  CertifiedHand,
  CertifiedSpring,
  CertifiedTrack,
} from '../../../src/domain/certified-strip.ts'
import type { AssemblyVerdict } from '../../../src/domain/judge-assembly.ts'
import { coverageFactorText } from '../../../src/domain/uncertain-figure.ts'
import { alignmentWords } from './alignment.ts'
import { assemblyWords } from './assembly.ts'
import { springCheckWords, wearTrackWords } from './strip-records.ts'

/** Texts of one record: what was read or set, and what follows from it. */
export type StripTexts = { readonly read: readonly string[]; readonly follows: readonly string[] }

/** A worn track, as page and document say it. */
export function trackTexts(one: CertifiedTrack): StripTexts {
  const w = wearTrackWords
  const { movementUm, expandedUncertaintyUm: doubt, offsetMm, foundUm, verdict } = one
  const isNarrower = movementUm.value < 0
  const size = movementUm.text.replace('−', '')
  return {
    read: [
      w.widths(one.trackWidthMm.text, one.noseWidthMm.text),
      ...(offsetMm === null ? [] : [w.offsetText(offsetMm.text, one.offsetHour)]),
      ...instrumentText(one.instrumentNumber),
    ],
    follows: [
      isNarrower
        ? w.narrowerText(size)
        : w.movementText(size, doubt === null ? '' : w.doubt(doubt.text)),
      ...(foundUm === null ? [] : [w.found(foundUm.least.text, foundUm.most.text)]),
      isNarrower ? w.finding : alignmentWords.verdict[verdict],
    ],
  }
}

/** A check of springs. */
export function springTexts(one: CertifiedSpring): StripTexts {
  const w = springCheckWords
  const { setMm, rateNPerMm, loadN, facePressureMPa, remainingTravelMm, loadPerMmN } = one
  const some = (figure: Figure | null, say: (text: string) => string) =>
    figure === null ? [] : [say(figure.text)]
  const isLonger = (setMm?.value ?? 0) < 0
  return {
    read: [
      w.springs(one.springsCount),
      w.lengths(one.freeLengthMm.text, one.workingLengthMm.text),
      ...some(setMm, (text) => (isLonger ? w.longer(text.replace('−', '')) : w.set(text))),
      ...instrumentText(one.instrumentNumber),
    ],
    follows: [
      ...some(rateNPerMm, (text) => w.rateText(text, one.isRateStated)),
      ...(loadN === null ? [w.noRate] : [w.loadText(loadN.text, springDoubt(one))]),
      ...some(facePressureMPa, w.pressure),
      ...some(remainingTravelMm, w.travel),
      ...some(loadPerMmN, w.perMm),
      ...one.cautions.map((caution) => w.cautions[caution]),
    ],
  }
}

function springDoubt({ expandedUncertaintyN: doubt, coverageFactor }: CertifiedSpring): string {
  if (doubt === null || coverageFactor === null) return ''
  return springCheckWords.doubt(doubt.text, coverageFactorText(coverageFactor))
}

/** An assembly: what was set, beside what its design asks for. */
export function assemblyTexts(one: CertifiedAssembly): StripTexts {
  const w = assemblyWords
  const { loadN, loadFrom, designLoadN, loadTolerancePercent, clipsCount } = one
  const within = (asked: Figure | null, percent: Figure | null, unit: string) => {
    if (asked === null) return null
    return percent === null ? w.alone(asked.text, unit) : w.percent(asked.text, unit, percent.text)
  }
  const length = against(one.workingLengthMm.text, 'mm', lengthAsked(one), one.workingLength)
  const loadAsked = within(designLoadN, loadTolerancePercent, 'N')
  return {
    read: [
      w.length(length),
      loadN === null || loadFrom === null
        ? besideAsked(w.noLoad, loadAsked, one.load)
        : w.load(against(loadN.text, 'N', loadAsked, one.load), w.from[loadFrom]),
      ...(one.designSource === '' ? [] : [w.sourceText(one.designSource)]),
    ],
    follows: [
      ...one.setScrews.map((screw) => {
        const { name, quantityCount, torqueNm, designTorqueNm, verdict } = screw
        const asked = within(designTorqueNm, one.torqueTolerancePercent, 'N·m')
        const text =
          torqueNm === null
            ? besideAsked(w.noTorque, asked, verdict)
            : against(torqueNm.text, 'N·m', asked, verdict)
        return w.screw(quantityCount, name, text)
      }),
      w.clipsText(w.clips[one.clips].toLowerCase(), clipsCount),
      ...(one.lubricant === '' ? [] : [w.lubricantText(one.lubricant)]),
      one.isTurningFree ? w.turns.yes : w.turns.no,
    ],
  }
}

function lengthAsked({
  designWorkingLengthMm: asked,
  workingLengthToleranceMm: tolerance,
}: {
  readonly designWorkingLengthMm: Figure | null
  readonly workingLengthToleranceMm: Figure | null
}): string | null {
  if (asked === null) return null
  return tolerance === null
    ? assemblyWords.alone(asked.text, 'mm')
    : assemblyWords.plusMinus(asked.text, 'mm', tolerance.text)
}

function against(
  value: string,
  unit: string,
  asked: string | null,
  verdict: AssemblyVerdict,
): string {
  return besideAsked(assemblyWords.alone(value, unit), asked, verdict)
}

/** What was set, or that it is not known, beside what the design asks for. */
function besideAsked(set: string, asked: string | null, verdict: AssemblyVerdict): string {
  const w = assemblyWords
  return asked === null ? set : w.against(set, asked, w.verdict[verdict])
}

/** Who recorded it, the note, and why it took another's place. */
export function handTexts(one: CertifiedHand, when: (at: string) => string): readonly string[] {
  const w = assemblyWords
  return [
    w.recordedBy(one.recordedByName, when(one.recordedAt)),
    ...(one.note === '' ? [] : [one.note]),
    ...one.corrections.map(({ byName, at, reason }) => w.corrected(byName, when(at), reason)),
  ]
}

function instrumentText(number: string | null): readonly string[] {
  return number === null ? [] : [assemblyWords.readWith(number)]
}
