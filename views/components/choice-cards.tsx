import type { Child, FC } from 'hono/jsx'
import { describedBy } from './field-frame.tsx'

export interface CardChoice {
  readonly value: string
  readonly label: string
  readonly detail?: string
  /** A drawing that only repeats the label, hidden from assistive technology. */
  readonly picture?: Child
}

/**
 * One of a few, as cards the size of a thumb. Native radio buttons, so arrow keys and form
 * posts work without script; the id of a card is the group's id, a dash and its number.
 */
export const ChoiceCards: FC<{
  name: string
  legend: string
  choices: readonly CardChoice[]
  value?: string | undefined
  id?: string
  hint?: string | undefined
  error?: string | undefined
  size?: 'picture' | 'word'
  isLegendHidden?: boolean
  attributes?: Readonly<Record<string, string>>
}> = (props) => {
  const { name, legend, choices, value, id = name, hint, error, size = 'word' } = props
  const described = describedBy({ id, hint, error })
  return (
    <fieldset
      class={`choices choices-${size}${error ? ' field-faulty' : ''}`}
      id={id}
      aria-describedby={described}
    >
      <legend class={props.isLegendHidden ? 'visually-hidden' : 'choices-legend'}>{legend}</legend>
      {hint ? (
        <p class="field-hint" id={`${id}-hint`}>
          {hint}
        </p>
      ) : null}
      {error ? (
        <p class="field-error" id={`${id}-error`}>
          {error}
        </p>
      ) : null}
      <div class="choices-list">
        {choices.map((choice, index) => (
          <label class="choice" for={`${id}-${index + 1}`}>
            <input
              class="choice-dot"
              type="radio"
              id={`${id}-${index + 1}`}
              name={name}
              value={choice.value}
              checked={choice.value === value}
              {...props.attributes}
            />
            {choice.picture ? (
              <span class="choice-picture" aria-hidden="true">
                {choice.picture}
              </span>
            ) : null}
            <span class="choice-words">
              {choice.label}
              {choice.detail ? <span class="choice-detail">{choice.detail}</span> : null}
            </span>
          </label>
        ))}
      </div>
    </fieldset>
  )
}
