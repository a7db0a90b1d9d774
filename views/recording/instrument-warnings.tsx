import type { FC } from 'hono/jsx'
import type { InstrumentUse } from '../../src/domain/instrument.ts'
import { words } from '../words/en.ts'

/** One sentence for each instrument that is not in calibration: refused, or allowed and by whom. */
export const InstrumentWarnings: FC<{ uses: readonly InstrumentUse[] }> = ({ uses }) => (
  <>
    {uses
      .filter((use) => use.status !== 'in-calibration' || use.exception !== undefined)
      .map((use) => (
        <p class="notice notice-note">{sentenceOf(use)}</p>
      ))}
  </>
)

function sentenceOf({ number, status, exception }: InstrumentUse): string {
  const { recording: w, trade } = words
  const standing = trade.calibrationStatus[status]
  return exception === undefined
    ? w.refused(number, standing)
    : w.allowed(number, standing, exception.allowedByName)
}
