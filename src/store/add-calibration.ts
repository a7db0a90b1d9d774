import type { Actor } from '../domain/actor.ts'
import { AppError } from '../domain/app-error.ts'
import type { Calibration } from '../domain/instrument.ts'
import { addAudit } from './add-audit.ts'
import type { Store } from './open.ts'
import { requireInstrument } from './require-instrument.ts'
import { calibration } from './schema/calibration.ts'

/**
 * @throws AppError not-found `no-instrument`; conflict `instrument-withdrawn`;
 *   invalid `due-not-later` where the calibration would be due before it was made
 */
export function addCalibration(
  store: Store,
  fresh: Omit<Calibration, 'id'>,
  actor: Actor,
): Calibration {
  return store.transact(() => {
    const of = requireInstrument(store, fresh.instrumentId)
    if (of.withdrawnOn !== null) {
      throw new AppError('conflict', 'instrument-withdrawn', { number: of.number })
    }
    if (fresh.dueOn <= fresh.calibratedOn) throw new AppError('invalid', 'due-not-later')
    const added = store.db.insert(calibration).values(fresh).returning().get()
    const subject = `instrument ${of.number}`
    addAudit(store, actor, { act: 'add-calibration', subject, detail: added })
    return added
  })
}
