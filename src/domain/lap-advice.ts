import { lappedSagUm } from '../science/lapping/lapped-sag-um.ts'
import type { Abrasive, NewLapCycle } from './lap-cycle.ts'
import type { Component } from './seal.ts'

/** What a cycle may do to its face beside taking stock off. */
export type LapAdvice = {
  /** Grains embed in carbon and then cut the hard face (a training note on lapping). */
  readonly isLooseOnCarbon: boolean
  /** How far the plate's form would leave the ring convex (or concave, below zero), in µm. */
  readonly sagUm: number | null
}

const looseAbrasives: readonly Abrasive[] = [
  'diamond-loose',
  'silicon-carbide-loose',
  'alumina-loose',
  'boron-carbide-loose',
]

/** What is known beforehand of how a plate and its abrasive suit a face. */
export function lapAdvice(
  cycle: Pick<NewLapCycle, 'abrasive' | 'plateForm' | 'plateSagUm' | 'plateDiameterMm'>,
  face: Pick<Component, 'material' | 'outerDiameterMm'>,
): LapAdvice {
  const isLoose = looseAbrasives.some((one) => one === cycle.abrasive)
  return {
    isLooseOnCarbon: isLoose && face.material === 'carbon-graphite',
    sagUm: sagOf(cycle, face.outerDiameterMm),
  }
}

function sagOf(
  {
    plateForm,
    plateSagUm,
    plateDiameterMm,
  }: Pick<NewLapCycle, 'plateForm' | 'plateSagUm' | 'plateDiameterMm'>,
  partDiameterMm: number | null,
): number | null {
  if (plateForm === null || plateSagUm === null) return null
  if (plateDiameterMm === null || partDiameterMm === null) return null
  if (partDiameterMm < 1 || partDiameterMm > plateDiameterMm) return null
  const signed = plateForm === 'concave' ? -plateSagUm : plateForm === 'convex' ? plateSagUm : 0
  return lappedSagUm({ plateSagUm: signed, plateDiameterMm, partDiameterMm })
}
