import { createHash } from 'node:crypto'
import { copyFileSync } from 'node:fs'
import { join } from 'node:path'
import type { AuditEntry } from '../../src/domain/audit.ts'
import { projectRoot } from '../../src/project-root.ts'
import type { Store } from '../../src/store/open.ts'
import { alternate } from './tools/alternate.ts'
import type { Benchmark, Measured } from './tools/benchmark.ts'
import { importBuilt } from './tools/import-built.ts'
import { msPerCall } from './tools/ms-per-call.ts'
import { withScratchFolder } from './tools/scratch-folder.ts'

type Open = typeof import('../../src/store/open.ts')
type Verify = typeof import('../../src/store/verify-audit.ts')

/** What each line's hash covers, as bytes that lie ready. */
function hashedBytes(store: Store): readonly Buffer[] {
  const lines = store.raw
    .prepare(
      `SELECT hash, previous_hash AS previousHash, at, user_id AS userId, actor, act, subject,
        detail FROM audit ORDER BY id`,
    )
    .all() as Omit<AuditEntry, 'id'>[]
  return lines.map(({ hash, ...covered }) => {
    const bytes = Buffer.from(JSON.stringify(Object.values(covered)))
    if (hashPlainly([bytes]) !== hash) throw new Error('verify-audit requires the hashed bytes')
    return bytes
  })
}

function hashPlainly(lines: readonly Buffer[]): string {
  const hash = createHash('sha256')
  for (const line of lines) hash.update(line)
  return hash.digest('hex')
}

async function run(folder: string): Promise<Measured> {
  const file = join(folder, 'ringproof.sqlite')
  copyFileSync(join(projectRoot(), '.build/demo.sqlite'), file)
  const { openStore } = await importBuilt<Open>('src/store/open.ts')
  const { verifyAudit } = await importBuilt<Verify>('src/store/verify-audit.ts')
  const store = openStore(file, join(projectRoot(), 'migrations'), '2026-11-25T09:00:00.000Z')
  const lines = hashedBytes(store)
  if (verifyAudit(store).length > 0) throw new Error('verify-audit requires a sound trail')
  const perThousand = 1000 / lines.length
  const measured = await alternate({
    ours: () => msPerCall(() => verifyAudit(store), 100) * perThousand,
    peer: () => msPerCall(() => hashPlainly(lines), 100) * perThousand,
    rounds: 15,
    warmUpRounds: 3,
  })
  store.close()
  return measured
}

export const benchmark: Benchmark = {
  name: 'verify-audit',
  unit: 'ms per 1000 lines',
  peerName: 'node:crypto SHA-256 of the same bytes, an update a line',
  run: () => withScratchFolder(run),
}
