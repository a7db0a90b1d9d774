import type { ListedReading } from '../../../views/whole-faces/page-props.ts'
import { AppError } from '../../domain/app-error.ts'
import { cycleBefore } from '../../domain/cycle-before.ts'
import type { Evidence } from '../../domain/evidence.ts'
import { pairToCompare, type WholeReading, wholeReadings } from '../../domain/pair-to-compare.ts'
import { type Component, faceKinds } from '../../domain/seal.ts'
import { maySeeResults } from '../../domain/who-may-see.ts'
import { readEvidence } from '../../store/read-evidence.ts'
import { requireWorkOrder } from '../../store/require-work-order.ts'
import type { AppContext } from '../context.ts'
import { idOf } from '../id-of.ts'
import { viewer } from '../viewer.ts'

export type WholeFacesDesk = {
  readonly evidence: Evidence
  /** Those that were read whole, rotating face first; null where none was. */
  readonly faces: readonly Component[]
  readonly face: Component | null
  /** Of that face, that no correction replaced, oldest first. */
  readonly readings: readonly WholeReading[]
  /** The earlier one first; null with fewer than two, or where one was chosen twice. */
  readonly pair: readonly [WholeReading, WholeReading] | null
}

/** What was chosen, as an address or a form says it. */
export type WholeFacesAsked = {
  readonly face?: string | undefined
  readonly first?: string | undefined
  readonly second?: string | undefined
}

/** @throws AppError not-found where the order, the face or a reading of it is not there */
export function openWholeFacesDesk(c: AppContext, asked: WholeFacesAsked): WholeFacesDesk {
  const { store } = c.var.shop
  const user = viewer(c)
  const order = requireWorkOrder(store, c.req.param('number') ?? '', user)
  // A customer sees results once the order is released.
  if (!maySeeResults(user, order.stage)) throw new AppError('not-found', 'no-result')
  const evidence = readEvidence(store, order.id)
  const all = wholeReadings(evidence.flatnessReadings)
  const { components } = evidence.seal
  const faces = faceKinds
    .flatMap((kind) => components.filter((one) => one.kind === kind))
    .filter((one) => all.some((reading) => reading.componentId === one.id))
  const chosen = [asked.first, asked.second].filter(isGiven).map((id) => requireOne(all, id))
  const face = faceOf(faces, asked.face, chosen, all)
  const readings = all.filter((one) => one.componentId === face?.id)
  if (chosen.some((one) => !readings.includes(one))) throw new AppError('not-found', 'no-result')
  return { evidence, faces, face, readings, pair: pairOf(readings, chosen) }
}

/** With the lap cycle before it. */
export function listedReading(evidence: Evidence, reading: WholeReading): ListedReading {
  const { flatnessReadings: readings, lapCycles: cycles } = evidence
  return { reading, afterCycle: cycleBefore(reading, { readings, cycles })?.number ?? null }
}

function isGiven(text: string | undefined): text is string {
  return text !== undefined && text !== ''
}

function requireOne(all: readonly WholeReading[], id: string): WholeReading {
  const found = all.find((one) => one.id === idOf(id, 'no-result'))
  if (found === undefined) throw new AppError('not-found', 'no-result')
  return found
}

function faceOf(
  faces: readonly Component[],
  id: string | undefined,
  [chosen]: readonly WholeReading[],
  all: readonly WholeReading[],
): Component | null {
  if (isGiven(id)) {
    const face = faces.find((one) => one.id === idOf(id, 'no-result'))
    if (face === undefined) throw new AppError('not-found', 'no-result')
    return face
  }
  const ofChosen = faces.find((one) => one.id === chosen?.componentId)
  const withTwo = faces.find(
    (one) => all.filter((reading) => reading.componentId === one.id).length >= 2,
  )
  return ofChosen ?? withTwo ?? faces[0] ?? null
}

function pairOf(
  readings: readonly WholeReading[],
  chosen: readonly WholeReading[],
): WholeFacesDesk['pair'] {
  const [first, second] = chosen
  if (first === undefined) return pairToCompare(readings)
  const other = second ?? readings.findLast((one) => one.id !== first.id)
  if (other === undefined || other.id === first.id) return null
  const place = (reading: WholeReading) => readings.findIndex((one) => one.id === reading.id)
  return place(first) < place(other) ? [first, other] : [other, first]
}
