import { copyFileSync } from 'node:fs'
import { join } from 'node:path'
import Database from 'better-sqlite3'
import { projectRoot } from '../../src/project-root.ts'
import type { Store } from '../../src/store/open.ts'
import { alternate } from './tools/alternate.ts'
import type { Benchmark, Measured } from './tools/benchmark.ts'
import { importBuilt } from './tools/import-built.ts'
import { withScratchFolder } from './tools/scratch-folder.ts'

type AddReading = typeof import('../../src/store/add-flatness-reading.ts')
type AddOrder = typeof import('../../src/store/add-work-order.ts')
type ListReadings = typeof import('../../src/store/list-flatness-readings.ts')
type Open = typeof import('../../src/store/open.ts')

/** As many readings as an order of two faces has after a rework or two. */
const readingsPerOrder = 10
const at = '2026-11-25T09:00:00.000Z'

/** Saves ten readings of a fresh order in a workshop that is a year old; ms of one. */
async function ourSaves(store: Store): Promise<{ readonly ms: () => number; row: string }> {
  const { addFlatnessReading } = await importBuilt<AddReading>('src/store/add-flatness-reading.ts')
  const { addWorkOrder } = await importBuilt<AddOrder>('src/store/add-work-order.ts')
  const { listFlatnessReadings } = await importBuilt<ListReadings>(
    'src/store/list-flatness-readings.ts',
  )
  const ask = (sql: string, ...of: number[]) => store.raw.prepare(sql).get(...of)
  const technician = ask("SELECT id, display_name AS name FROM user WHERE role = 'technician'")
  const { id: userId, name } = technician as { id: number; name: string }
  const actor = { userId, name, at }
  const known = ask(
    `SELECT id, customer_id AS customerId, seal_id AS sealId, limit_set_id AS limitSetId
      FROM work_order WHERE stage = 'dispatched' ORDER BY id DESC`,
  ) as { id: number; customerId: number; sealId: number; limitSetId: number }
  const { id: oldId, ...of } = known
  const sample = listFlatnessReadings(store, oldId).find((one) => one.replacesId === null)!
  const {
    id: _,
    faceKind,
    recordedById,
    recordedByName,
    recordedAt,
    replacedById,
    ...fresh
  } = sample
  const received = {
    ...{ customerOrder: '', reasonForRemoval: '', decontamination: 'stated-clean' as const },
    ...{ lastFluid: 'Water', sealedPressureKPa: null, serviceTemperatureC: null },
    ...{ shaftSpeedPerMin: null, service: 'not-stated' as const, receivedAt: at },
    ...{ dueOn: null, isInvented: true },
  }
  const ms = () => {
    const { id: workOrderId } = addWorkOrder(store, { ...received, ...of }, actor)
    const startedAt = performance.now()
    for (let count = 0; count < readingsPerOrder; count++) {
      addFlatnessReading(store, { ...fresh, workOrderId }, actor)
    }
    return (performance.now() - startedAt) / readingsPerOrder
  }
  return { ms, row: JSON.stringify(sample) }
}

/** One INSERT a transaction of the same row as text, on the same disk and as durable. */
function rawInserts(file: string, row: string) {
  const raw = new Database(file)
  raw.pragma('journal_mode = WAL')
  raw.pragma('synchronous = FULL')
  raw.exec('CREATE TABLE reading (id INTEGER PRIMARY KEY, row TEXT NOT NULL) STRICT')
  const insert = raw.prepare('INSERT INTO reading (row) VALUES (?)')
  const ms = () => {
    const startedAt = performance.now()
    for (let count = 0; count < readingsPerOrder; count++) insert.run(row)
    return (performance.now() - startedAt) / readingsPerOrder
  }
  return { ms, close: () => raw.close() }
}

async function run(folder: string): Promise<Measured> {
  const file = join(folder, 'ringproof.sqlite')
  copyFileSync(join(projectRoot(), '.build/demo.sqlite'), file)
  const { openStore } = await importBuilt<Open>('src/store/open.ts')
  const store = openStore(file, join(projectRoot(), 'migrations'), at)
  const ours = await ourSaves(store)
  const peer = rawInserts(join(folder, 'raw.sqlite'), ours.row)
  const measured = await alternate({ ours: ours.ms, peer: peer.ms, rounds: 25, warmUpRounds: 5 })
  peer.close()
  store.close()
  return measured
}

export const benchmark: Benchmark = {
  name: 'save-reading',
  unit: 'ms',
  peerName: 'better-sqlite3, one INSERT of the same row, synchronous FULL',
  run: () => withScratchFolder(run),
}
