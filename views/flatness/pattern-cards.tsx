import type { FC } from 'hono/jsx'
import { type BandPattern, bandPatterns } from '../../src/domain/flatness.ts'
import { unreadableCauses } from '../../src/domain/unreadable-cause.ts'
import { bandPicture } from '../../src/plots/band-picture.ts'
import type { Drawing } from '../../src/plots/drawing.ts'
import { ChoiceCards } from '../components/choice-cards.tsx'
import { SvgDrawing } from '../components/svg-drawing.tsx'
import { words } from '../words/en.ts'

const drawn = new Map<BandPattern, Drawing>()

/** The same every time, so each is drawn once. */
function pictureOf(pattern: BandPattern): Drawing {
  const picture = drawn.get(pattern) ?? bandPicture({ pattern, sizePx: 96 })
  drawn.set(pattern, picture)
  return picture
}

/** The patterns as pictures to compare with what is seen; nothing is chosen beforehand. */
export const PatternCards: FC<{ value: string; error?: string | undefined }> = (props) => (
  <ChoiceCards
    name="pattern"
    legend={words.flatness.pattern}
    isLegendHidden
    hint={words.flatness.patternHint}
    size="picture"
    value={props.value}
    error={props.error}
    choices={bandPatterns.map((pattern) => ({
      value: pattern,
      label: words.trade.pattern[pattern],
      detail: words.flatness.patternDetail[pattern],
      picture: <SvgDrawing drawing={pictureOf(pattern)} />,
    }))}
  />
)

/** Asked of rings only; the style sheet hides it beside another pattern. */
export const RingQuestion: FC<{ value: string }> = ({ value }) => (
  <div class="ring-question">
    <ChoiceCards
      name="ringCentre"
      legend={words.flatness.ringCentre}
      hint={words.flatness.ringCentreHint}
      value={value}
      choices={[
        { value: 'high', label: words.trade.ringCentre.high },
        { value: 'low', label: words.trade.ringCentre.low },
        { value: '', label: words.flatness.ringNotKnown },
      ]}
    />
  </div>
)

/** Asked of an unreadable face only; the style sheet hides it beside another pattern. */
export const CauseQuestion: FC<{ value: string; error?: string | undefined }> = (props) => (
  <div class="unreadable-advice stack">
    <p class="notice notice-note">{words.flatness.unreadableAdvice}</p>
    <ChoiceCards
      name="unreadableCause"
      legend={words.flatness.cause}
      hint={words.flatness.causeHint}
      value={props.value}
      error={props.error}
      choices={unreadableCauses.map((cause) => ({
        value: cause,
        label: words.trade.unreadableCause[cause],
        detail: words.flatness.causeAdvice[cause],
      }))}
    />
  </div>
)
