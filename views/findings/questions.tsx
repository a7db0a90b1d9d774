import type { FC } from 'hono/jsx'
import { severities, suspectedCauses } from '../../src/domain/finding.ts'
import { type StripPart, stripParts } from '../../src/domain/strip-part.ts'
import { termHints } from '../../src/domain/term-hints.ts'
import { termsOf } from '../../src/domain/term-parts.ts'
import { findingPicture } from '../../src/plots/finding-picture.ts'
import { ChoiceCards } from '../components/choice-cards.tsx'
import { FileField } from '../components/file-field.tsx'
import { SelectField } from '../components/select-field.tsx'
import { SvgDrawing } from '../components/svg-drawing.tsx'
import { TextAreaField } from '../components/text-area-field.tsx'
import { Question } from '../recording/question.tsx'
import { words } from '../words/en.ts'
import { type FindingValues, type StripTyped, stripProps } from './form-values.ts'
import { PlaceQuestion } from './place-question.tsx'
import { WithoutPhoto } from './without-photo.tsx'

type Typed = StripTyped<FindingValues>
const w = words.findings

/** On which part, what, how much, where, in whose words; and last, apart, why. */
export const FindingQuestions: FC<{ typed: Typed; isCorrection: boolean }> = (props) => {
  const { typed, isCorrection } = props
  const part = stripParts.find((one) => one === typed.values.part)
  return (
    <>
      <PartQuestion typed={typed} />
      <TermQuestion typed={typed} part={part} />
      <Question number={3} title={w.severityQuestion}>
        <ChoiceCards
          {...stripProps(typed, 'severity')}
          legend={w.severityQuestion}
          isLegendHidden
          choices={severities.map((value) => ({
            value,
            label: w.severity[value],
            detail: w.severityDetail[value],
          }))}
        />
        <ChoiceCards
          {...stripProps(typed, 'isBeforeCleaning')}
          legend={w.cleaning}
          choices={(['yes', 'no'] as const).map((value) => ({
            value,
            label: w.cleanings[value],
          }))}
        />
      </Question>
      <PlaceQuestion typed={typed} />
      <Question number={5} title={w.observationQuestion}>
        <TextAreaField
          {...stripProps(typed, 'observation')}
          label={w.observation}
          hint={w.observationHint}
          rows={3}
        />
        <FileField
          name="file"
          label={w.photo}
          accept="image/jpeg,image/png,image/webp"
          hint={isCorrection ? `${w.photoHint} ${w.photoKept}` : w.photoHint}
          error={fileError(typed)}
        />
        <WithoutPhoto typed={typed} isCorrection={isCorrection} />
      </Question>
      <OpinionQuestion typed={typed} />
    </>
  )
}

function fileError(typed: Typed): string | undefined {
  return stripProps({ ...typed, values: { file: '' } }, 'file').error
}

const PartQuestion: FC<{ typed: Typed }> = ({ typed }) => (
  <Question number={1} title={w.partQuestion}>
    <ChoiceCards
      {...stripProps(typed, 'part')}
      legend={w.partQuestion}
      isLegendHidden
      choices={stripParts.map((value) => ({ value, label: w.parts[value] }))}
    />
  </Question>
)

/** The words that are said of the part; of all parts while none is chosen. */
const TermQuestion: FC<{ typed: Typed; part: StripPart | undefined }> = ({ typed, part }) => {
  const all = stripParts.flatMap(termsOf)
  const terms = part === undefined ? [...new Set(all)] : termsOf(part)
  const hinted = terms.filter((one) => termHints[one] !== undefined)
  return (
    <Question number={2} title={w.termQuestion}>
      <ChoiceCards
        {...stripProps(typed, 'term')}
        legend={w.termQuestion}
        isLegendHidden
        size="picture"
        choices={terms.map((value) => ({
          value,
          label: w.terms[value],
          picture: <SvgDrawing drawing={findingPicture(value, 72)} />,
        }))}
      />
      {hinted.length === 0 ? null : (
        <details class="fold">
          <summary>{w.hintsTitle}</summary>
          <dl class="fold-body">
            {hinted.map((one) => {
              const basis = termHints[one]
              return (
                <div>
                  <dt>
                    <strong>{w.terms[one]}</strong>
                  </dt>
                  <dd>
                    {w.hints[one]}{' '}
                    <span class="small soft">
                      ({basis === undefined ? '' : w.hintBasis[basis]})
                    </span>
                  </dd>
                </div>
              )
            })}
          </dl>
        </details>
      )}
    </Question>
  )
}

/** Apart from what was seen, on the page as on paper. */
const OpinionQuestion: FC<{ typed: Typed }> = ({ typed }) => (
  <Question number={6} title={w.opinionQuestion}>
    <p class="field-hint">{w.opinionHint}</p>
    <SelectField
      {...stripProps(typed, 'suspectedCause')}
      label={w.cause}
      options={suspectedCauses.map((value) => ({ value, label: w.causes[value] }))}
    />
    <TextAreaField {...stripProps(typed, 'causeNote')} label={w.causeNote} rows={2} />
  </Question>
)
