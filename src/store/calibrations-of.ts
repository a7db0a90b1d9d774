import { asc, eq, sql } from 'drizzle-orm'
import { prepared } from './prepared.ts'
import { calibration } from './schema/calibration.ts'

export const calibrationsOf = prepared((store) =>
  store.db
    .select()
    .from(calibration)
    .where(eq(calibration.instrumentId, sql.placeholder('id')))
    .orderBy(asc(calibration.calibratedOn), asc(calibration.id))
    .prepare(),
)
