import type { FC } from 'hono/jsx'
import type { InstrumentUse } from '../../src/domain/instrument.ts'
import { words } from '../words/en.ts'

/** One sentence for each instrument that is used although it is not in calibration. */
export const InstrumentWarnings: FC<{ uses: readonly InstrumentUse[] }> = ({ uses }) => (
  <>
    {uses
      .filter((use) => use.status !== 'in-calibration')
      .map((use) => (
        <p class="notice notice-note">
          {words.recording.warning(use.number, words.trade.calibrationStatus[use.status])}
        </p>
      ))}
  </>
)
