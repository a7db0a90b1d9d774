import { describe, expect, it } from 'vitest'
import { addInstrumentFile } from '../../src/store/add-instrument-file.ts'
import { listInstrumentFiles } from '../../src/store/list-instrument-files.ts'
import { listInstrumentHolders } from '../../src/store/list-instrument-holders.ts'
import { readStoredFile } from '../../src/store/read-stored-file.ts'
import { setInstrumentHolder } from '../../src/store/set-instrument-holder.ts'
import { verifyRecords } from '../../src/store/verify-records.ts'
import { withdrawInstrument } from '../../src/store/withdraw-instrument.ts'
import { buildShop } from '../support/build-shop.ts'
import { actorOf, operator } from '../support/cast.ts'

const pdf = (text: string) =>
  ({
    kind: 'file',
    name: 'certificate.pdf',
    mediaType: 'application/pdf',
    bytes: Buffer.from(text),
  }) as const

describe('the holder of an instrument', () => {
  it('is who was named last; the earlier ones stay below', () => {
    const { store, cast, lamp, flat } = buildShop()
    const tess = actorOf(cast.tess)
    expect(listInstrumentHolders(store, lamp.id)).toEqual([])
    setInstrumentHolder(store, { instrumentId: lamp.id, holder: 'Bench 2' }, tess)
    const ian = actorOf(cast.ian, '2026-11-26T09:00:00.000Z')
    setInstrumentHolder(store, { instrumentId: lamp.id, holder: 'Calibration room' }, ian)
    expect(listInstrumentHolders(store, lamp.id)).toEqual([
      { holder: 'Calibration room', byName: cast.ian.displayName, at: ian.at },
      { holder: 'Bench 2', byName: cast.tess.displayName, at: tess.at },
    ])
    expect(listInstrumentHolders(store, flat.id)).toEqual([])
    expect(verifyRecords(store)).toEqual([])
  })

  it('is not named for an instrument that is withdrawn, nor for one that there is not', () => {
    const { store, cast, lamp } = buildShop()
    withdrawInstrument(store, { instrumentId: lamp.id, on: '2026-11-25', reason: 'x' }, operator)
    const name = (instrumentId: number) => () =>
      setInstrumentHolder(store, { instrumentId, holder: 'Bench 2' }, actorOf(cast.tess))
    expect(name(lamp.id)).toThrow('instrument-withdrawn')
    expect(name(999)).toThrow('no-instrument')
  })
})

describe('the files of an instrument', () => {
  it('are listed with what they are and read back byte by byte', () => {
    const { store, cast, lamp, flat } = buildShop()
    const calibrationId = lamp.calibrations[0]!.id
    const of = { instrumentId: lamp.id, calibrationId }
    const added = addInstrumentFile(store, { ...of, ...pdf('%PDF-1') }, actorOf(cast.tess))
    expect(listInstrumentFiles(store, lamp.id)).toEqual([added])
    expect(added).toMatchObject({ ...of, name: 'certificate.pdf', mediaType: 'application/pdf' })
    expect(readStoredFile(store, added.sha256).bytes.toString()).toBe('%PDF-1')
    expect(listInstrumentFiles(store, flat.id)).toEqual([])
    expect(verifyRecords(store)).toEqual([])
  })

  it('keep the same bytes once, under as many names as they were added', () => {
    const { store, cast, lamp, flat } = buildShop()
    for (const { id: instrumentId } of [lamp, flat]) {
      const fresh = { instrumentId, calibrationId: null, ...pdf('%PDF-2') }
      addInstrumentFile(store, fresh, actorOf(cast.tess))
    }
    const count = store.raw.prepare('SELECT count(*) AS n FROM stored_file').get()
    expect(count).toEqual({ n: 1 })
    expect(listInstrumentFiles(store, flat.id)).toHaveLength(1)
  })

  it('belong to no calibration of another instrument', () => {
    const { store, cast, lamp, flat } = buildShop()
    const of = { instrumentId: lamp.id, calibrationId: flat.calibrations[0]!.id }
    const add = () => addInstrumentFile(store, { ...of, ...pdf('%PDF-3') }, actorOf(cast.tess))
    expect(add).toThrow('not-of-instrument')
    expect(listInstrumentFiles(store, lamp.id)).toEqual([])
  })
})
