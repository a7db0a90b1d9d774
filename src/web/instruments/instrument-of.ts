import type { Instrument } from '../../domain/instrument.ts'
import { requireInstrument } from '../../store/require-instrument.ts'
import type { AppContext } from '../context.ts'
import { idOf } from '../id-of.ts'

/** The instrument of the address, or 'not found'. */
export function instrumentOf(c: AppContext): Instrument {
  return requireInstrument(c.var.shop.store, idOf(c.req.param('id'), 'no-instrument'))
}
