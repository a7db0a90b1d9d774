// Run by a test in several processes at once: opens the store and prints how many steps it applied.
import { openStore } from '../../src/store/open.ts'
import { castAt } from './cast.ts'
import { migrationsFolder } from './open-test-store.ts'

const at = `${castAt.slice(0, -1)}${process.pid}Z`
const store = openStore(process.argv[2] ?? '', migrationsFolder, at)
const query = 'SELECT count(*) FROM migration WHERE applied_at = ?'
process.stdout.write(String(store.raw.prepare(query).pluck().get(at)))
store.close()
