import { combinationRefusal } from '../../domain/combination-refusal.ts'
import { completeCombination } from '../../domain/complete-combination.ts'
import { addFlatnessReading } from '../../store/add-flatness-reading.ts'
import { requireOpenOrder } from '../../store/require-open-order.ts'
import type { AppContext } from '../context.ts'
import { readForm } from '../read-form.ts'
import { recordOnce } from '../record-once.ts'
import { typedText } from '../typed-text.ts'
import { actor } from '../viewer.ts'
import { CombinationRefused } from './combination-refused.ts'
import { openWholeFacesDesk, type WholeFacesDesk } from './desk.ts'
import { sendWholeFaces } from './send-whole-faces.tsx'

/** Two readings of a face side by side: for the staff, and for a customer once released. */
export function showWholeFaces(c: AppContext): Promise<Response> {
  const { face, first, second, lay } = c.req.query()
  return sendWholeFaces(c, openWholeFacesDesk(c, { face, first, second }), { lay })
}

/** Records the mean of two readings as a reading of its own. */
export async function combineReadings(c: AppContext): Promise<Response> {
  const input = await readForm(c)
  const asked = { first: typedText(input.first), second: typedText(input.second) }
  const desk = openWholeFacesDesk(c, asked)
  try {
    return recordOnce(c, input, () => recordCombination(c, desk))
  } catch (error) {
    if (error instanceof CombinationRefused) {
      return sendWholeFaces(c, desk, { refused: error.refusal })
    }
    throw error
  }
}

function recordCombination(c: AppContext, { evidence, pair }: WholeFacesDesk): string {
  const { store } = c.var.shop
  const { workOrder, flatnessReadings } = evidence
  requireOpenOrder(store, workOrder.id)
  const refusal = pair === null ? 'one-reading' : combinationRefusal(pair, evidence)
  if (refusal !== null || pair === null) throw new CombinationRefused(refusal ?? 'one-reading')
  const { faceKind: _, ...fresh } = completeCombination(pair, flatnessReadings)
  addFlatnessReading(store, fresh, actor(c))
  return `/work-orders/${workOrder.number}?recorded=flatness`
}
