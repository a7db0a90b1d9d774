import type { Equipment } from '../../src/domain/equipment.ts'

export function buildEquipment(changes: Partial<Equipment> = {}): Equipment {
  return { id: 1, customerId: 1, tag: 'P-101', description: '', serviceFluid: '', ...changes }
}
