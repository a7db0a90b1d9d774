import { completeSpringCheck } from '../../domain/complete-spring-check.ts'
import { completeWearTrack } from '../../domain/complete-wear-track.ts'
import { parseAssembly } from '../../domain/parse-assembly.ts'
import { parseSpringCheck } from '../../domain/parse-spring-check.ts'
import { parseWearTrack } from '../../domain/parse-wear-track.ts'
import { addAssembly } from '../../store/add-assembly.ts'
import { addSpringCheck } from '../../store/add-spring-check.ts'
import { addWearTrack } from '../../store/add-wear-track.ts'
import type { AppContext } from '../context.ts'
import { openStripDesk } from '../strip/desk.ts'
import { actor } from '../viewer.ts'
import { answerOnce } from './answer-once.ts'
import { mustParse } from './must-parse.ts'
import { readJson } from './read-json.ts'

export async function apiCreateWearTrack(c: AppContext): Promise<Response> {
  const body = await readJson(c)
  const desk = openStripDesk(c)
  const { id: workOrderId } = desk.evidence.workOrder
  return answerOnce(c, body, () => {
    const parsed = mustParse(parseWearTrack(body.input, desk))
    const track = completeWearTrack({ ...parsed, workOrderId }, desk)
    return { status: 201, body: addWearTrack(c.var.shop.store, track, actor(c)) }
  })
}

export async function apiCreateSpringCheck(c: AppContext): Promise<Response> {
  const body = await readJson(c)
  const desk = openStripDesk(c)
  const { id: workOrderId } = desk.evidence.workOrder
  return answerOnce(c, body, () => {
    const parsed = mustParse(parseSpringCheck(body.input, desk))
    const check = completeSpringCheck({ ...parsed, workOrderId }, desk)
    return { status: 201, body: addSpringCheck(c.var.shop.store, check, actor(c)) }
  })
}

export async function apiCreateAssembly(c: AppContext): Promise<Response> {
  const body = await readJson(c)
  const { evidence } = openStripDesk(c)
  const { id: workOrderId } = evidence.workOrder
  return answerOnce(c, body, () => {
    const parsed = mustParse(parseAssembly(body.input, evidence.springChecks))
    const assembly = addAssembly(c.var.shop.store, { ...parsed, workOrderId }, actor(c))
    return { status: 201, body: assembly }
  })
}
