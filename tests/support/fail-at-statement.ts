import type Database from 'better-sqlite3'
import { type Store, storeOf } from '../../src/store/open.ts'

export class InjectedFault extends Error {}

/**
 * The same database through a store whose Nth executed statement fails before it runs, as on a
 * full disk; `ran` counts them. The transaction's own BEGIN and COMMIT are not counted: a COMMIT
 * that fails is what `kill -9` tests.
 */
export function failAtStatement(raw: Database.Database, n: number): Store & { ran: () => number } {
  let count = 0
  const step = () => {
    count += 1
    if (count === n) throw new InjectedFault(`statement ${n}`)
  }
  const faulty = new Proxy(raw, {
    get(target, name) {
      const value = Reflect.get(target, name, target)
      if (name === 'prepare') return (sql: string) => countingStatement(target.prepare(sql), step)
      return typeof value === 'function' ? value.bind(target) : value
    },
  })
  return { ...storeOf(faulty), ran: () => count }
}

const executing: readonly PropertyKey[] = ['run', 'get', 'all', 'iterate']

function countingStatement(statement: Database.Statement, step: () => void): Database.Statement {
  const proxy: Database.Statement = new Proxy(statement, {
    get(target, name) {
      const value = Reflect.get(target, name, target)
      if (typeof value !== 'function') return value
      return (...args: unknown[]) => {
        if (executing.includes(name)) step()
        const answer = value.apply(target, args)
        return answer === target ? proxy : answer
      }
    },
  })
  return proxy
}
