import type { Store } from './open.ts'

/**
 * Prepares a hot statement once for each store and keeps it: building and preparing a query costs
 * several times as much as running it.
 */
export function prepared<T>(build: (store: Store) => T): (store: Store) => T {
  const kept = new WeakMap<Store, T>()
  return (store) => {
    const known = kept.get(store)
    if (known !== undefined) return known
    const built = build(store)
    kept.set(store, built)
    return built
  }
}
