import type { FC } from 'hono/jsx'
import { describedBy, FieldFrame } from './field-frame.tsx'

export interface StepperLabels {
  readonly lessBand: string
  readonly lessQuarter: string
  readonly moreQuarter: string
  readonly moreBand: string
}

/**
 * The count of bands, entered by touch (four large buttons), by arrow keys, or typed. Works as a
 * plain text input without script; `views/browser/stepper.ts` gives the buttons their life.
 */
export const BandStepper: FC<{
  name: string
  label: string
  value?: string | undefined
  id?: string
  hint?: string | undefined
  unit: string
  error?: string | undefined
  labels: StepperLabels
  /** `stacked` puts the figure above the buttons, for a narrow column. */
  layout?: 'line' | 'stacked'
  attributes?: Readonly<Record<string, string>>
}> = (props) => {
  const { name, label, value, id = name, hint, unit, error, labels, attributes } = props
  const stacked = props.layout === 'stacked' ? ' stepper-stacked' : ''
  return (
    <FieldFrame id={id} label={label} hint={hint} error={error}>
      <div class={`stepper-line${stacked}`} data-stepper>
        <StepButton step="-1" sign="−1" label={labels.lessBand} inputId={id} />
        <StepButton step="-0.25" sign="−¼" label={labels.lessQuarter} inputId={id} />
        <div class="stepper-value">
          <input
            class="stepper-input"
            id={id}
            name={name}
            type="text"
            value={value ?? ''}
            inputmode="decimal"
            autocomplete="off"
            data-stepper-input
            aria-required="true"
            aria-invalid={error ? 'true' : undefined}
            aria-describedby={describedBy({ id, hint, error })}
            {...attributes}
          />
          <span class="stepper-unit" aria-hidden="true">
            {unit}
          </span>
        </div>
        <StepButton step="0.25" sign="+¼" label={labels.moreQuarter} inputId={id} />
        <StepButton step="1" sign="+1" label={labels.moreBand} inputId={id} />
      </div>
    </FieldFrame>
  )
}

const StepButton: FC<{ step: string; sign: string; label: string; inputId: string }> = (props) => (
  <button
    class="stepper-button"
    type="button"
    data-step={props.step}
    aria-label={`${props.sign} ${props.label}`}
    aria-controls={props.inputId}
  >
    {props.sign}
  </button>
)
