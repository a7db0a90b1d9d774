import { asc, eq } from 'drizzle-orm'
import type { InstrumentFile } from '../domain/instrument.ts'
import type { Store } from './open.ts'
import { instrumentFile as file } from './schema/instrument-file.ts'
import { storedFile } from './schema/stored-file.ts'

/** Photos and documents of an instrument, oldest first, without their bytes. */
export function listInstrumentFiles({ db }: Store, instrumentId: number): InstrumentFile[] {
  return db
    .select({
      id: file.id,
      instrumentId: file.instrumentId,
      calibrationId: file.calibrationId,
      kind: file.kind,
      name: file.name,
      mediaType: storedFile.mediaType,
      sha256: file.sha256,
      byName: file.byName,
      at: file.at,
    })
    .from(file)
    .innerJoin(storedFile, eq(storedFile.sha256, file.sha256))
    .where(eq(file.instrumentId, instrumentId))
    .orderBy(asc(file.id))
    .all()
}
