import type { FC } from 'hono/jsx'
import { TextAreaField } from '../components/text-area-field.tsx'
import { minuteText } from '../figures/time-text.ts'
import { words } from '../words/en.ts'

export type Replaced = {
  readonly id: number
  readonly recordedByName: string
  readonly recordedAt: string
}

/** What is replaced, by whom it was recorded, and the reason that a correction must give. */
export const CorrectionFields: FC<{
  replaced: Replaced
  reason: string
  error?: string | undefined
}> = ({ replaced, reason, error }) => (
  <section class="card">
    <input type="hidden" name="replacesId" value={String(replaced.id)} />
    <p class="soft">
      {words.recording.replaces}: {replaced.recordedByName}, {minuteText(replaced.recordedAt)}
    </p>
    <TextAreaField
      name="reason"
      label={words.recording.reason}
      hint={words.recording.reasonHint}
      value={reason}
      error={error}
      rows={2}
      isRequired
    />
  </section>
)
