import type { CertifiedAssembly, CertifiedSpring } from '../../../src/domain/certified-strip.ts'
import { figure } from '../../../src/domain/figure.ts'
import { shareOf } from '../../../src/domain/share-of.ts'
import { stripRecordsWords } from './strip-records.ts'

/**
 * What the drawing of springs shows, the same on page and document: their line as they were read;
 * null where nothing says how stiff they are.
 */
export function springLineOf(one: CertifiedSpring, widthPx: number) {
  if (one.line === null) return null
  const { workingLengthMm, solidLengthMm, loadN } = one
  return {
    ...one.line,
    workingLengthMm: workingLengthMm.value,
    solidLengthMm: solidLengthMm?.value ?? null,
    design: null,
    widthPx,
    texts: textsOf(one.line.freeLengthMm, {
      working: workingLengthMm.text,
      solid: solidLengthMm?.text ?? '',
      load: loadN?.text ?? '',
      design: '',
    }),
  }
}

/** The line with what the design asks for; null where the load follows from no check of springs. */
export function assemblyLineOf(one: CertifiedAssembly, widthPx: number) {
  if (one.line === null) return null
  const { workingLengthMm, loadN, designLoadN, loadTolerancePercent: percent } = one
  // Of the drawing as of the verdict: the same band.
  const toleranceN = shareOf(designLoadN?.value ?? null, percent?.value ?? null)
  return {
    ...one.line,
    workingLengthMm: workingLengthMm.value,
    solidLengthMm: null,
    design: designLoadN === null ? null : { loadN: designLoadN.value, toleranceN },
    widthPx,
    texts: textsOf(one.line.freeLengthMm, {
      working: workingLengthMm.text,
      solid: '',
      load: loadN?.text ?? '',
      design: designLoadN?.text ?? '',
    }),
  }
}

function textsOf(
  freeMm: number,
  said: Readonly<Record<'working' | 'solid' | 'load' | 'design', string>>,
) {
  const w = stripRecordsWords.drawing
  return {
    lengthAxis: w.lengthAxis,
    loadAxis: w.loadAxis,
    free: w.free(figure(freeMm, { decimals: 1 }).text),
    working: w.working(said.working),
    solid: w.solid(said.solid),
    load: w.load(said.load),
    design: w.design(said.design),
  }
}
