import { describe, expect, it } from 'vitest'
import { addInstrumentAmendment } from '../../src/store/add-instrument-amendment.ts'
import { addInstrumentFile } from '../../src/store/add-instrument-file.ts'
import { listInstrumentAmendments } from '../../src/store/list-instrument-amendments.ts'
import { listInstrumentFiles } from '../../src/store/list-instrument-files.ts'
import { listInstrumentHolders } from '../../src/store/list-instrument-holders.ts'
import { listInstruments } from '../../src/store/list-instruments.ts'
import { readStoredFile } from '../../src/store/read-stored-file.ts'
import { requireInstrument } from '../../src/store/require-instrument.ts'
import { setInstrumentHolder } from '../../src/store/set-instrument-holder.ts'
import { verifyRecords } from '../../src/store/verify-records.ts'
import { withdrawInstrument } from '../../src/store/withdraw-instrument.ts'
import { numbersOf } from '../support/build-instrument.ts'
import { buildShop } from '../support/build-shop.ts'
import { actorOf, operator } from '../support/cast.ts'

const pdf = (text: string) =>
  ({
    kind: 'file',
    name: 'certificate.pdf',
    mediaType: 'application/pdf',
    bytes: Buffer.from(text),
  }) as const

describe('the numbers of an instrument', () => {
  it('are those that were amended last; what stood before stays beside them', () => {
    const { store, cast, gauge } = buildShop()
    const ian = actorOf(cast.ian)
    const numbers = { ...numbersOf(gauge), unit: 'kPa', rangeTo: 400, largestError: 1 } as const
    const of = { instrumentId: gauge.id, reason: 'from its data sheet' }
    const first = addInstrumentAmendment(store, { ...of, ...numbers, seenId: 0 }, ian)
    expect(requireInstrument(store, gauge.id)).toEqual({ ...gauge, ...numbers })
    expect(listInstruments(store).find((one) => one.id === gauge.id)).toMatchObject(numbers)
    const finer = { ...numbers, largestError: 0.5 }
    addInstrumentAmendment(store, { ...of, ...finer, seenId: first.id }, ian)
    expect(requireInstrument(store, gauge.id).largestError).toBe(0.5)
    const history = listInstrumentAmendments(store, gauge.id)
    expect(history.map((one) => [one.was.largestError, one.became.largestError])).toEqual([
      [1, 0.5],
      [gauge.largestError, 1],
    ])
    expect(verifyRecords(store)).toEqual([])
  })

  it('are not gone over by someone who did not see what stands, nor of one withdrawn', () => {
    const { store, cast, gauge, lamp } = buildShop()
    const ian = actorOf(cast.ian)
    const amend = (of: typeof gauge, seenId: number) => () =>
      addInstrumentAmendment(
        store,
        {
          ...numbersOf(of),
          instrumentId: of.id,
          range: 'wide',
          reason: 'from its data sheet',
          seenId,
        },
        ian,
      )
    amend(gauge, 0)()
    expect(amend(gauge, 0)).toThrow('instrument-amended')
    expect(amend(gauge, 1)).toThrow('instrument-not-changed')
    withdrawInstrument(store, { instrumentId: lamp.id, on: '2026-11-25', reason: 'x' }, operator)
    expect(amend(lamp, 0)).toThrow('instrument-withdrawn')
  })

  it('stand as they were registered, whoever goes round the program', () => {
    const { store, gauge } = buildShop()
    const run = (sql: string) => () => store.raw.exec(`${sql} WHERE id = ${gauge.id}`)
    expect(run('UPDATE instrument SET largest_error = 9')).toThrow('keeps what was registered')
    expect(run("UPDATE instrument SET kind = 'lamp'")).toThrow('keeps what was registered')
    expect(run('DELETE FROM instrument')).toThrow('withdrawn, not removed')
  })
})

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
