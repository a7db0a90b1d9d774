import type { Decision, HandOver } from '../../src/domain/release.ts'

export function buildHandOver(changes: Partial<HandOver> = {}): HandOver {
  return {
    id: 1,
    workOrderId: 1,
    byId: 1,
    byName: 'Tess',
    note: '',
    at: '2026-11-24T11:00:00.000Z',
    ...changes,
  }
}

export function buildDecision(changes: Partial<Decision> = {}): Decision {
  return {
    id: 1,
    workOrderId: 1,
    handOverId: 1,
    outcome: 'released',
    reason: '',
    byId: 2,
    byName: 'Ian',
    byDepartment: 'Inspection',
    at: '2026-11-25T09:00:00.000Z',
    ...changes,
  }
}
