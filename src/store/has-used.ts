import type { Store } from './open.ts'
import { prepared } from './prepared.ts'

const anyUse = prepared((store) =>
  store.raw.prepare(`
    SELECT EXISTS (
      SELECT 1 FROM flatness_reading
      WHERE work_order_id = @workOrderId
        AND @instrumentId IN (lamp_instrument_id, flat_instrument_id)
      UNION ALL
      SELECT 1 FROM static_test
      WHERE work_order_id = @workOrderId AND @instrumentId
        IN (gauge_instrument_id, thermometer_instrument_id, volume_instrument_id)
      UNION ALL
      SELECT 1 FROM measured_value
      WHERE work_order_id = @workOrderId AND instrument_id = @instrumentId
      UNION ALL
      SELECT 1 FROM wear_track
      WHERE work_order_id = @workOrderId AND instrument_id = @instrumentId
      UNION ALL
      SELECT 1 FROM spring_check
      WHERE work_order_id = @workOrderId AND instrument_id = @instrumentId
    ) AS isUsed`),
)

/** Says, at the price of one look, whether anything of an order was measured with an instrument. */
export function hasUsed(
  store: Store,
  of: { readonly workOrderId: number; readonly instrumentId: number },
): boolean {
  const found = anyUse(store).get(of) as { readonly isUsed: 0 | 1 }
  return found.isUsed === 1
}
