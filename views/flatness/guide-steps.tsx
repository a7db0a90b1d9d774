import type { FC } from 'hono/jsx'
import type { Drawing } from '../../src/plots/drawing.ts'
import { SvgDrawing } from '../components/svg-drawing.tsx'
import { words } from '../words/en.ts'

/** Belongs to no form that is sent: the radio buttons of the steps must not join the reading. */
export const guideFormId = 'guide-steps'

export type GuideFigure = { readonly drawing: Drawing; readonly caption: string }

/**
 * Pictures of a scene, side by side or one at a time in the same place, so that the movement is
 * seen. Native radio buttons choose; a browser that can't follow them shows all.
 */
export const GuideSteps: FC<{
  id: string
  title: string
  figures: readonly GuideFigure[]
}> = ({ id, title, figures }) => {
  const w = words.flatnessGuide
  const choices = [...figures.map((_, index) => w.step(index + 1)), w.all]
  return (
    <article class="guide-scene stack-tight" aria-labelledby={`${id}-title`}>
      <h3 id={`${id}-title`}>{title}</h3>
      <fieldset class="guide-choices">
        <legend class="visually-hidden">{w.stepsLegend(title)}</legend>
        {choices.map((label, index) => (
          <label class="guide-choice">
            <input
              type="radio"
              form={guideFormId}
              class={index < figures.length ? `guide-at-${index + 1}` : 'guide-at-all'}
              name={`${id}-at`}
              value={String(index + 1)}
              checked={index === figures.length}
            />
            <span>{label}</span>
          </label>
        ))}
      </fieldset>
      <GuideFigures figures={figures} />
    </article>
  )
}

/** Pictures with their captions, in order. */
export const GuideFigures: FC<{ figures: readonly GuideFigure[] }> = ({ figures }) => (
  <ol class="guide-figures">
    {figures.map(({ drawing, caption }) => (
      <li class="guide-figure">
        <SvgDrawing drawing={drawing} />
        <p class="small">{caption}</p>
      </li>
    ))}
  </ol>
)
