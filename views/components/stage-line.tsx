import type { FC } from 'hono/jsx'

export interface Stage {
  readonly label: string
  readonly state: 'done' | 'current' | 'to-come'
  /** The state in a word, for those who do not see the mark. */
  readonly stateWord: string
  readonly detail?: string | undefined
}

/** The way of a work order from receipt to dispatch. */
export const StageLine: FC<{ label: string; stages: readonly Stage[] }> = ({ label, stages }) => (
  <ol class="stages" aria-label={label}>
    {stages.map((stage) => (
      <li
        class={`stage stage-${stage.state}`}
        aria-current={stage.state === 'current' ? 'step' : undefined}
      >
        {stage.label}
        <span class="visually-hidden"> ({stage.stateWord})</span>
        {stage.detail ? <span class="stage-detail">{stage.detail}</span> : null}
      </li>
    ))}
  </ol>
)
