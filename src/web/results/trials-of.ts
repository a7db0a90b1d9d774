import type { Trials } from '../../../views/results/trials-section.tsx'
import type { ShownResult } from '../../domain/shown-result.ts'
import type { AppContext } from '../context.ts'

export async function trialsOf(_c: AppContext, _result: ShownResult): Promise<Trials> {
  return { kind: 'none' }
}
