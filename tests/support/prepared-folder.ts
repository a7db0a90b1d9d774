import { join } from 'node:path'
import { addToken } from '../../src/store/add-token.ts'
import { secretHash } from '../../src/store/secret-hash.ts'
import { buildShop, type Shop } from './build-shop.ts'
import { addCast, operator } from './cast.ts'
import { temporaryFolder } from './machine.ts'
import { openDataFolder } from './open-data-folder.ts'

/** Tess's bearer token in a prepared folder. */
export const tessToken = 'rp_token-of-tess-for-machine-tests'

/**
 * A data folder with a small workshop in it, made through the store itself; nobody has it open.
 * @param more what else is recorded before it is closed
 */
export function preparedFolder(more: (shop: Shop) => void = () => undefined): {
  readonly folder: string
  readonly storeFile: string
  /** As built: its store is closed. */
  readonly shop: Shop
} {
  const folder = join(temporaryFolder(), 'data')
  const store = openDataFolder(folder)
  addCast(store)
  const shop = buildShop(store)
  const tokenHash = secretHash(tessToken)
  addToken(store, { userId: shop.cast.tess.id, label: 'rig', tokenHash }, operator)
  more(shop)
  store.close()
  return { folder, storeFile: join(folder, 'ringproof.sqlite'), shop }
}

/** A reading as a program sends it: convex, 2 bands and as many as asked. */
export function readingBody(shop: Shop, second = 1): Record<string, unknown> {
  const face = shop.seal.components.find((one) => one.kind === 'rotating-face')
  return {
    faceId: face!.id,
    condition: 'as-left',
    lampInstrumentId: shop.lamp.id,
    opticalFlatInstrumentId: shop.flat.id,
    pattern: 'convex',
    readings: [
      { directionDeg: 0, bands: 2 },
      { directionDeg: 90, bands: second },
    ],
  }
}

/** A static test as a rig sends it. */
export function testBody(shop: Shop, endKPaAbs = 270): Record<string, unknown> {
  return {
    volumeL: 2,
    start: { timeS: 0, pressureKPaAbs: 271, temperatureC: 20 },
    end: { timeS: 300, pressureKPaAbs: endKPaAbs, temperatureC: 20 },
    gaugeInstrumentId: shop.gauge.id,
    thermometerInstrumentId: shop.thermometer.id,
  }
}

/** Posts JSON to the machine interface with a bearer token. */
export function postJson(
  url: string,
  body: unknown,
  key?: string,
  token: string = tessToken,
): Promise<Response> {
  return fetch(url, {
    method: 'POST',
    headers: {
      authorization: `Bearer ${token}`,
      'content-type': 'application/json',
      ...(key === undefined ? {} : { 'idempotency-key': key }),
    },
    body: JSON.stringify(body),
  })
}
