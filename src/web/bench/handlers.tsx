import type { AppContext } from '../context.ts'
import { sendBench } from './bench-page.tsx'

export function showBench(c: AppContext): Promise<Response> {
  return sendBench(c, { typed: '', isEmpty: false })
}
