// Run by a test beside a backup: goes on adding customers until it is stopped, or for ten seconds.
import { addCustomer } from '../../src/store/add-customer.ts'
import { openStore } from '../../src/store/open.ts'
import { castAt, operator } from './cast.ts'
import { migrationsFolder } from './open-test-store.ts'

const store = openStore(process.argv[2] ?? '', migrationsFolder, castAt)
const endMs = performance.now() + 10_000
for (let count = 0; performance.now() < endMs; count += 1) {
  addCustomer(
    store,
    { name: `Invented ${count}`, address: '', contact: '', isInvented: true },
    operator,
  )
  if (count === 5) process.stdout.write('writing\n')
}
store.close()
