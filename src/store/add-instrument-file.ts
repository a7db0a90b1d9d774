import type { Actor } from '../domain/actor.ts'
import { AppError } from '../domain/app-error.ts'
import type { InstrumentFile } from '../domain/instrument.ts'
import { addAudit } from './add-audit.ts'
import { addStoredFile } from './add-stored-file.ts'
import type { Store } from './open.ts'
import { requireInstrument } from './require-instrument.ts'
import { requireUserId } from './require-user-id.ts'
import { instrumentFile } from './schema/instrument-file.ts'

export type FreshInstrumentFile = Pick<
  InstrumentFile,
  'instrumentId' | 'calibrationId' | 'kind' | 'name' | 'mediaType'
> & { readonly bytes: Buffer }

/**
 * Keeps a photo or a document of an instrument, of a calibration of it where one is named.
 * @throws AppError not-found `no-instrument`; conflict `not-of-instrument` for the calibration of
 *   another
 */
export function addInstrumentFile(
  store: Store,
  fresh: FreshInstrumentFile,
  actor: Actor,
): InstrumentFile {
  const byId = requireUserId(actor, 'addInstrumentFile')
  const { instrumentId, calibrationId, kind, name, mediaType, bytes } = fresh
  return store.transact(() => {
    const of = requireInstrument(store, instrumentId)
    const isItsOwn = of.calibrations.some((one) => one.id === calibrationId)
    if (calibrationId !== null && !isItsOwn) throw new AppError('conflict', 'not-of-instrument')
    const sha256 = addStoredFile(store, { bytes, mediaType }, actor)
    const by = { byId, byName: actor.name, at: actor.at }
    const row = { instrumentId, calibrationId, kind, name, sha256, ...by }
    const added = store.db.insert(instrumentFile).values(row).returning().get()
    const subject = `instrument ${of.number}`
    addAudit(store, actor, { act: 'add-instrument-file', subject, detail: added })
    const { byId: _, ...file } = added
    return { ...file, mediaType }
  })
}
