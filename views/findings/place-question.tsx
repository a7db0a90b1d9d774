import type { FC } from 'hono/jsx'
import { radialPlaces } from '../../src/domain/finding.ts'
import { clockSketch } from '../../src/plots/clock-sketch.ts'
import { SelectField } from '../components/select-field.tsx'
import { SvgDrawing } from '../components/svg-drawing.tsx'
import { Question } from '../recording/question.tsx'
import { words } from '../words/en.ts'
import { type FindingValues, type StripTyped, stripProps } from './form-values.ts'
import { hourOptions } from './hour-options.ts'
import { typedPlace } from './typed-place.ts'

const w = words.findings

/** Where it lies, on a clock face: two lists, and a sketch that shows them and takes taps. */
export const PlaceQuestion: FC<{ typed: StripTyped<FindingValues> }> = ({ typed }) => (
  <Question number={4} title={w.placeQuestion}>
    <div class="finding-place" data-clock data-says={JSON.stringify(w.clockSays)}>
      <SvgDrawing
        drawing={clockSketch({ sizePx: 240, hasNumbers: true, ...typedPlace(typed.values) })}
        id="finding-clock"
        title={w.clockTitle}
      />
      <div class="stack">
        <p class="field-hint">{w.clockHint}</p>
        <p class="strong" data-clock-says role="status" hidden></p>
        <div class="field-pair">
          <HourField typed={typed} name="fromHour" label={w.fromHour} />
          <HourField typed={typed} name="toHour" label={w.toHour} />
        </div>
        <SelectField
          {...stripProps(typed, 'radialPlace')}
          label={w.radialPlace}
          emptyLabel={w.radialNotSaid}
          options={radialPlaces.map((value) => ({ value, label: w.radialPlaces[value] }))}
        />
      </div>
    </div>
  </Question>
)

const HourField: FC<{
  typed: StripTyped<FindingValues>
  name: 'fromHour' | 'toHour'
  label: string
}> = ({ typed, name, label }) => (
  <SelectField
    {...stripProps(typed, name)}
    label={label}
    emptyLabel={w.noHour}
    options={hourOptions(typed.values[name])}
    width="short"
  />
)
