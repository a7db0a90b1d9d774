import type { CertificateRecord } from '../../src/domain/certificate.ts'
import type { CertifiedSurvey, CertifiedSurveyPlane } from '../../src/domain/certified-survey.ts'
import { surveyPicture } from '../../src/plots/survey-picture.ts'
import { certificateWords } from '../../views/words/en/certificate.ts'
import { certificateDecisionWords as decisions } from '../../views/words/en/certificate-decisions.ts'
import { surveyCautionWords } from '../../views/words/en/survey-cautions.ts'
import { surveyFiguresWords as words } from '../../views/words/en/survey-figures.ts'
import {
  surveyAlternative,
  surveyPairs,
  surveyPlanePairs,
  surveyRowText,
  surveySetUpPairs,
} from '../../views/words/en/survey-pairs.ts'
import { surveyTexts } from '../../views/words/en/survey-texts.ts'
import type { Block, Cell, Fact } from '../document.ts'

const { results } = certificateWords

/** The dial surveys with their polar plots, figures, set-up and readings; nothing without one. */
export function surveyBlocks({ surveys = [] }: CertificateRecord): readonly Block[] {
  if (surveys.length === 0) return []
  return [
    { kind: 'heading', text: words.heading },
    { kind: 'paragraph', text: words.howToRead, style: 'small' },
    ...surveys.flatMap(blocksOf),
    { kind: 'paragraph', text: words.notMeasured, style: 'small' },
  ]
}

function blocksOf(survey: CertifiedSurvey): readonly Block[] {
  const cautions = survey.cautions.map((one) => surveyCautionWords[one].what)
  return [
    { kind: 'subheading', text: titleOf(survey) },
    ...(cautions.length === 0
      ? []
      : [{ kind: 'paragraph', text: cautions.join(' '), style: 'strong' } as const]),
    ...survey.planes.map((plane, index) => planeBlock(survey, plane, index)),
    ...(survey.planes.length === 1 ? [] : [{ kind: 'facts', facts: wholeFacts(survey) } as const]),
    readingsBlock(survey),
  ]
}

function titleOf({ characteristic, condition, isNewest }: CertifiedSurvey): string {
  const when = condition === 'as-found' ? results.asFound : results.asLeft
  const title = words.titleOf(decisions.characteristics[characteristic], when.toLowerCase())
  return isNewest ? title : `${title} (${words.overtaken})`
}

/** What has no place beside a plot: with several planes, and with none. */
function wholeFacts(survey: CertifiedSurvey): readonly Fact[] {
  const setUp = surveySetUpPairs(survey)
  return survey.planes.length === 0 ? [...surveyPairs(survey), ...setUp] : setUp
}

/** The same plot as on the page of the certificate; what holds for all planes beside the first. */
function planeBlock(survey: CertifiedSurvey, plane: CertifiedSurveyPlane, index: number): Block {
  const { isClockwise, limitUm, surface } = survey
  const sweptDiameterMm = survey.sweptDiameterMm?.value ?? null
  const isFace = surface === 'face'
  const drawing = surveyPicture(
    { plane, isClockwise, isFace, limitUm, sweptDiameterMm },
    surveyTexts,
  )
  return {
    kind: 'figure-facts',
    figure: {
      picture: { drawing, alternative: surveyAlternative(survey, plane) },
      caption: plane.positionMm === null ? '' : words.planeAt(String(plane.positionMm)),
    },
    facts: [
      ...(index === 0 ? surveyPairs(survey) : []),
      ...surveyPlanePairs(survey, plane),
      ...(survey.planes.length === 1 ? surveySetUpPairs(survey) : []),
    ],
  }
}

/** Every reading as typed, two positions to a row where one turn leaves room. */
function readingsBlock(survey: CertifiedSurvey): Block {
  const { readings: w } = words
  const turnCount = Math.max(1, ...survey.rows.map((one) => one.typed.length))
  const isTwoEnds = survey.planes.length === 0
  const perRow = turnCount === 1 ? 3 : turnCount === 2 ? 2 : 1
  const cellsOf = (row: CertifiedSurvey['rows'][number] | undefined): readonly Cell[] =>
    row === undefined
      ? Array.from({ length: turnCount + 1 }, () => text(''))
      : [text(surveyRowText(survey, row)), ...row.typed.map(text)]
  const rowCount = Math.ceil(survey.rows.length / perRow)
  const unit = w.in(w.units[survey.readingUnit])
  const titles = [
    w.position,
    ...Array.from(
      { length: turnCount },
      (_, turn) => `${isTwoEnds ? w.repeat(turn + 1) : w.turn(turn + 1)}, ${unit}`,
    ),
  ]
  return {
    kind: 'table',
    columns: Array.from({ length: perRow }, () => titles)
      .flat()
      .map((title) => ({ title, share: 1 })),
    rows: Array.from({ length: rowCount }, (_, row) => ({
      cells: Array.from({ length: perRow }, (_, part) =>
        cellsOf(survey.rows[row + part * rowCount]),
      ).flat(),
    })),
  }
}

function text(content: string): Cell {
  return { lines: [{ text: content }] }
}
