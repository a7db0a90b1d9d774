import { and, desc, eq, inArray, isNull } from 'drizzle-orm'
import type { MeasuredCharacteristic } from '../domain/characteristic.ts'
import type { LengthUnit } from '../domain/measured-value.ts'
import type { Store } from './open.ts'
import { instrument } from './schema/instrument.ts'
import { measuredValue } from './schema/measured-value.ts'

/** With what a user measured, and the unit it was typed in. */
export type MeasuringInstrument = { readonly instrumentId: number; readonly unit: LengthUnit }

/**
 * What a user took in hand last for one of these: the form offers it again. Undefined where there
 * was none yet, or it was withdrawn since.
 */
export function lastMeasuringInstrument(
  store: Store,
  userId: number,
  characteristics: readonly MeasuredCharacteristic[],
): MeasuringInstrument | undefined {
  const last = store.db
    .select({ instrumentId: measuredValue.instrumentId, unit: measuredValue.unit })
    .from(measuredValue)
    .where(
      and(
        eq(measuredValue.recordedById, userId),
        inArray(measuredValue.characteristic, [...characteristics]),
      ),
    )
    .orderBy(desc(measuredValue.id))
    .limit(1)
    .get()
  if (last === undefined) return undefined
  const isInService = and(eq(instrument.id, last.instrumentId), isNull(instrument.withdrawnOn))
  const found = store.db.select({ id: instrument.id }).from(instrument).where(isInService).get()
  return found === undefined ? undefined : last
}
