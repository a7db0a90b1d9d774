import type { ClipState } from '../../../src/domain/assembly.ts'
import type { AssemblyStanding } from '../../../src/domain/assembly-standing.ts'
import type { CertifiedAssembly } from '../../../src/domain/certified-strip.ts'
import type { AssemblyVerdict } from '../../../src/domain/judge-assembly.ts'
import { stripCommonWords } from './strip-common.ts'

/** How a seal was put together. */
export const assemblyWords = {
  ...stripCommonWords,
  act: 'Assembly',
  title: 'Assembly',
  correctionTitle: 'Correct an assembly',
  cautionTitle: 'compressed springs and brittle faces',
  caution: [
    'A compressed spring lets go at once: keep face and hands out of its way until clips or screws hold it.',
    'Carbon and ceramic faces break when they are knocked or pinched. Never press on a face, never tighten a screw against one.',
    'Tighten by the maker’s instructions, in their order, with a torque wrench; thread locking and lubricants by their data sheets. Site rules come first.',
  ],
  lengthTitle: 'Set to which length?',
  workingLength: 'Working length, as set',
  designLength: 'Length asked for',
  tolerance: 'Tolerance, ±',
  loadTitle: 'Which spring load?',
  loadHint: 'Left empty, it follows from the newest check of the springs at this working length.',
  measuredLoad: 'Load, measured',
  designLoad: 'Load asked for',
  sourceTitle: 'Where do these values stand?',
  source: 'Drawing and revision, or fitting instructions',
  sourceHint: 'Needed where a value is asked for.',
  toleranceHint: 'What is asked for comes with its tolerance: without it nothing is compared.',
  taken: (at: string, name: string) =>
    `Values asked for are those of the last assembly of this seal (${name}, ${at}). Compare them with the drawing.`,
  screwsTitle: 'Set screws and other screws',
  moreScrews: (index: number) => `More screws, no. ${index}`,
  screws: {
    name: 'Screws',
    nameHint: 'Place and size',
    quantityCount: 'Count',
    torqueNm: 'Torque',
    designTorqueNm: 'Torque asked for',
  },
  torqueTolerance: 'Tolerance of the torques, ±',
  fitTitle: 'Clips, lubricant, free turning',
  clipsLegend: 'Setting clips and retainers',
  clips: {
    fitted: 'Fitted',
    'none-needed': 'None belong to it',
    'not-fitted': 'Not fitted',
  } satisfies Record<ClipState, string>,
  clipsCount: 'How many',
  lubricant: 'Lubricant',
  lubricantHint: 'On O-rings and threads; faces stay dry unless the maker says otherwise.',
  turning: 'Turns freely by hand?',
  turns: { yes: 'Turns freely', no: 'Does not' },
  partsTitle: 'Parts that go in',
  moreTitle: 'Note',
  ask: 'Enter length, clips, whether it turns, and a tolerance with each value asked for, to see it against its design.',
  standing: {
    amiss: 'Not as asked for',
    'as-asked': 'As asked for',
    'not-all-compared': 'Not all compared',
    'nothing-asked': 'Nothing asked for',
  } satisfies Record<AssemblyStanding, string>,
  verdict: {
    within: 'within',
    beyond: 'beyond',
    'not-stated': 'not compared',
  } satisfies Record<AssemblyVerdict, string>,
  from: {
    measured: 'measured',
    'spring-check': 'by the check of the springs',
    'corrected-check': 'by a check of the springs that was corrected since',
  } satisfies Record<NonNullable<CertifiedAssembly['loadFrom']>, string>,
  outdated:
    'The check of the springs was corrected after the assembly, so its load holds no longer. Correct the assembly: its load is then reckoned by the check as it stands.',
  noLoad: 'Load not known: no check of springs, none measured',
  against: (value: string, asked: string, verdict: string) =>
    `${value}, asked for ${asked}: ${verdict}`,
  plusMinus: (value: string, unit: string, tolerance: string) => `${value} ± ${tolerance} ${unit}`,
  percent: (value: string, unit: string, percent: string) => `${value} ${unit} ± ${percent} %`,
  alone: (value: string, unit: string) => `${value} ${unit}`,
  length: (text: string) => `Working length ${text}`,
  load: (text: string, from: string) => `Spring load ${text} (${from})`,
  screw: (count: number, name: string, text: string) => `${count} × ${name}: ${text}`,
  noTorque: 'torque not noted',
  clipsText: (state: string, count: number | null) =>
    count === null ? `Clips: ${state}` : `Clips: ${state}, ${count}`,
  lubricantText: (text: string) => `Lubricant: ${text}`,
  sourceText: (text: string) => `Asked for by: ${text}`,
  blocksNothing: 'Held against the values typed with it; it blocks no release.',
  faults: {
    'workingLengthMm empty': 'Enter the working length that was set.',
    'workingLengthMm below': 'No seal is set to so short a length. Enter it in mm, as it was set.',
    'clips empty': 'Say whether clips are fitted.',
    'isTurningFree empty': 'Say whether it turns freely.',
    'designSource empty': 'Say where the values stand that are asked for.',
    'clipsCount not-here': 'A number of clips belongs to clips that are fitted.',
    'name empty': 'Say which screws these are.',
  } as Readonly<Record<string, string>>,
} as const
