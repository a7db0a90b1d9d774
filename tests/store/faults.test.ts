import { readdirSync, readFileSync } from 'node:fs'
import { fileURLToPath } from 'node:url'
import { expect, test } from 'vitest'
import { addAssembly } from '../../src/store/add-assembly.ts'
import { addCalibration } from '../../src/store/add-calibration.ts'
import { addConcession } from '../../src/store/add-concession.ts'
import { addCustomer } from '../../src/store/add-customer.ts'
import { addDynamicRun } from '../../src/store/add-dynamic-run.ts'
import { addEquipment } from '../../src/store/add-equipment.ts'
import { addFacePhoto } from '../../src/store/add-face-photo.ts'
import { addFinding } from '../../src/store/add-finding.ts'
import { addFlatnessReading } from '../../src/store/add-flatness-reading.ts'
import { addHandOver } from '../../src/store/add-hand-over.ts'
import { addInstrument } from '../../src/store/add-instrument.ts'
import { addInstrumentAmendment } from '../../src/store/add-instrument-amendment.ts'
import { addInstrumentFile } from '../../src/store/add-instrument-file.ts'
import { addLapCycle } from '../../src/store/add-lap-cycle.ts'
import { addLimitSet } from '../../src/store/add-limit-set.ts'
import { addLimitSetStep } from '../../src/store/add-limit-set-step.ts'
import { addMeasuredValue } from '../../src/store/add-measured-value.ts'
import { addPartLine } from '../../src/store/add-part-line.ts'
import { addRunSamples } from '../../src/store/add-run-samples.ts'
import { addSeal } from '../../src/store/add-seal.ts'
import { addSession } from '../../src/store/add-session.ts'
import { addSignInFailure } from '../../src/store/add-sign-in-failure.ts'
import { addSpringCheck } from '../../src/store/add-spring-check.ts'
import { addStaticTest } from '../../src/store/add-static-test.ts'
import { addSurveyReading } from '../../src/store/add-survey-reading.ts'
import { addToken } from '../../src/store/add-token.ts'
import { addUseException } from '../../src/store/add-use-exception.ts'
import { addUser } from '../../src/store/add-user.ts'
import { addWearTrack } from '../../src/store/add-wear-track.ts'
import { addWholeSurvey } from '../../src/store/add-whole-survey.ts'
import { addWorkOrder } from '../../src/store/add-work-order.ts'
import { agreeCustomerRule } from '../../src/store/agree-customer-rule.ts'
import { agreeOrderRule } from '../../src/store/agree-order-rule.ts'
import { answerDoubts } from '../../src/store/answer-doubts.ts'
import { answerUseException } from '../../src/store/answer-use-exception.ts'
import { calibrationsOf } from '../../src/store/calibrations-of.ts'
import { clearSignInFailures } from '../../src/store/clear-sign-in-failures.ts'
import { giveUpDialSurvey } from '../../src/store/end-dial-survey.ts'
import { latestHandOver } from '../../src/store/latest-hand-over.ts'
import { listFacePhotos } from '../../src/store/list-face-photos.ts'
import { moveWorkOrder } from '../../src/store/move-work-order.ts'
import { once } from '../../src/store/once.ts'
import { type Store, storeOf } from '../../src/store/open.ts'
import { pruneExpired } from '../../src/store/prune-expired.ts'
import { refuse } from '../../src/store/refuse.ts'
import { release } from '../../src/store/release.ts'
import { removeSession } from '../../src/store/remove-session.ts'
import { revokeToken } from '../../src/store/revoke-token.ts'
import { setActive } from '../../src/store/set-active.ts'
import { setInstrumentHolder } from '../../src/store/set-instrument-holder.ts'
import { setPassword } from '../../src/store/set-password.ts'
import { startDialSurvey } from '../../src/store/start-dial-survey.ts'
import { stateDecontamination } from '../../src/store/state-decontamination.ts'
import { withdrawInstrument } from '../../src/store/withdraw-instrument.ts'
import { freshFinding, freshPartLine } from '../support/build-finding.ts'
import { newCalibration, newInstrument, numbersOf } from '../support/build-instrument.ts'
import { buildShop, newLimitSet, newSeal, newWorkOrder, type Shop } from '../support/build-shop.ts'
import { freshSurvey, surveyContext } from '../support/build-survey.ts'
import { actorOf, castAt, operator } from '../support/cast.ts'
import { dumpStore } from '../support/dump-store.ts'
import { failAtStatement, InjectedFault } from '../support/fail-at-statement.ts'
import { openImage } from '../support/open-test-store.ts'
import {
  doTheWork,
  freshCycle,
  freshPhoto,
  freshReading,
  freshRelease,
  freshRun,
  freshTest,
  freshValue,
  freshWholeFace,
  workAndHandOver,
} from '../support/shop-steps.ts'
import { freshAssembly, freshSpring, freshTrack } from '../support/strip-steps.ts'

type Case = {
  readonly before?: (shop: Shop) => void
  readonly act: (store: Store, shop: Shop) => void
}

const hash = 'ab'.repeat(32)
const session = (shop: Shop) => ({
  tokenHash: hash,
  userId: shop.cast.tess.id,
  expiresAt: '2026-11-26T09:00:00.000Z',
})
const token = (shop: Shop) => ({ userId: shop.cast.tess.id, label: 'rig', tokenHash: hash })
const failure = { name: 'tess', address: '10.0.0.7' }
const handOverOf = ({ store, workOrder }: Shop) => latestHandOver(store, workOrder.id)!
const bare = newInstrument('thermometer', { number: 'T-02' })

const guard = { rule: 'guard-u95', probability: 0.95, reference: 'Contract 12' } as const
/** Of a face, so that the order moves; the store does not ask what it was read with. */
const onFace = ({ seal }: Shop) => ({
  characteristic: 'roughness' as const,
  componentId: seal.components.find((one) => one.kind === 'rotating-face')!.id,
})
const failing = (shop: Shop) =>
  freshReading(shop, 'rotating-face', {
    directions: [{ directionDeg: 0, bands: 9, bandsTyped: '9' }],
  })
const conceded = {
  subjectKind: 'flatness-reading',
  subjectId: 1,
  characteristic: 'flatness',
  reason: 'runs on water at 2 bar',
  customerReference: 'Letter 4711',
} as const

const foundBeyond = ({ store, lamp }: Shop) =>
  addCalibration(
    store,
    newCalibration({
      instrumentId: lamp.id,
      calibratedOn: '2026-11-25',
      dueOn: '2027-11-25',
      asFound: 'beyond',
    }),
    operator,
  )

const ask = (store: Store, { gauge, workOrder, cast }: Shop) => {
  const of = { instrumentId: gauge.id, workOrderId: workOrder.id, by: cast.tess }
  const wish = { fault: 'out-of-range', reason: 'the other one is away' } as const
  return addUseException(store, { ...of, ...wish }, actorOf(cast.tess))
}

/** Every file of the store that writes in a transaction, with an act that makes it do so. */
const cases: Readonly<Record<string, Case>> = {
  'add-customer': {
    act: (store) =>
      addCustomer(store, { name: 'C', address: '', contact: '', isInvented: true }, operator),
  },
  'add-equipment': {
    act: (store, { customer }) =>
      addEquipment(
        store,
        { customerId: customer.id, tag: 'P-2', description: '', serviceFluid: '' },
        operator,
      ),
  },
  'add-seal': {
    act: (store, { customer }) => addSeal(store, newSeal(customer.id, { serial: 'S-2' }), operator),
  },
  'add-limit-set': {
    act: (store) => addLimitSet(store, newLimitSet({ version: 2 }), operator),
  },
  'add-limit-set-step': {
    before: ({ store }) => addLimitSet(store, newLimitSet({ version: 2 }), operator),
    act: (store, { cast }) =>
      addLimitSetStep(
        store,
        { limitSetId: 2, step: 'approved', effectiveOn: '2026-11-25', reason: '', by: cast.ian },
        actorOf(cast.ian),
      ),
  },
  'add-instrument': { act: (store) => addInstrument(store, bare, operator) },
  'add-calibration': {
    act: (store, { lamp }) =>
      addCalibration(
        store,
        newCalibration({ instrumentId: lamp.id, calibratedOn: '2026-11-01', dueOn: '2027-11-01' }),
        operator,
      ),
  },
  'withdraw-instrument': {
    act: (store, { lamp }) =>
      withdrawInstrument(
        store,
        { instrumentId: lamp.id, on: '2026-11-25', reason: 'broken' },
        operator,
      ),
  },
  'add-instrument-amendment': {
    act: (store, { lamp, cast }) =>
      addInstrumentAmendment(
        store,
        {
          ...numbersOf(lamp),
          instrumentId: lamp.id,
          range: '60 mm',
          reason: 'measured',
          seenId: 0,
        },
        actorOf(cast.ian),
      ),
  },
  'set-instrument-holder': {
    act: (store, { lamp, cast }) =>
      setInstrumentHolder(store, { instrumentId: lamp.id, holder: 'Bench 2' }, actorOf(cast.tess)),
  },
  'add-instrument-file': {
    act: (store, { lamp, cast }) =>
      addInstrumentFile(
        store,
        {
          instrumentId: lamp.id,
          calibrationId: lamp.calibrations[0]!.id,
          kind: 'file',
          name: 'K-1.pdf',
          mediaType: 'application/pdf',
          bytes: Buffer.from('%PDF-1.7'),
        },
        actorOf(cast.tess),
      ),
  },
  'add-use-exception': { act: ask },
  'answer-use-exception': {
    before: (shop) => ask(shop.store, shop),
    act: (store, { cast }) => {
      const allowed = { answer: 'allowed', validUntil: '2026-11-30', reason: 'compared' } as const
      const of = { useExceptionId: 1, by: cast.ian }
      answerUseException(store, { ...of, ...allowed }, actorOf(cast.ian))
    },
  },
  'answer-doubts': {
    before: (shop) => {
      doTheWork(shop)
      foundBeyond(shop)
    },
    act: (store, { lamp, cast }) =>
      answerDoubts(
        store,
        {
          instrumentId: lamp.id,
          calibrationId: calibrationsOf(store).all({ id: lamp.id }).at(-1)!.id,
          subjects: [
            { subjectKind: 'flatness-reading', subjectId: 1 },
            { subjectKind: 'flatness-reading', subjectId: 2 },
          ],
          answer: 'stands',
          reason: 'the error changes nothing here',
          seenAnswerId: 0,
          by: cast.ian,
        },
        actorOf(cast.ian),
      ),
  },
  'add-work-order': {
    before: ({ store, customer, cast }) =>
      agreeCustomerRule(store, { customerId: customer.id, stated: guard }, actorOf(cast.ian)),
    act: (store, { customer, seal, limitSet, cast }) =>
      addWorkOrder(
        store,
        newWorkOrder({ customerId: customer.id, sealId: seal.id, limitSetId: limitSet.id }),
        actorOf(cast.tess),
      ),
  },
  'move-work-order': {
    act: (store, { workOrder }) =>
      moveWorkOrder(store, { workOrderId: workOrder.id, to: 'stripped', reason: '' }, operator),
  },
  'state-decontamination': {
    act: (store, { workOrder }) =>
      stateDecontamination(
        store,
        { workOrderId: workOrder.id, decontamination: 'not-needed', lastFluid: 'water' },
        operator,
      ),
  },
  'add-flatness-reading': {
    before: (shop) => addFacePhoto(shop.store, freshPhoto(shop), actorOf(shop.cast.tess)),
    act: (store, shop) => {
      const [photo] = listFacePhotos(store, shop.workOrder.id)
      addFlatnessReading(store, freshWholeFace(shop, photo!), actorOf(shop.cast.tess))
    },
  },
  'add-face-photo': {
    act: (store, shop) => addFacePhoto(store, freshPhoto(shop), actorOf(shop.cast.tess)),
  },
  'add-static-test': {
    act: (store, shop) => addStaticTest(store, freshTest(shop), actorOf(shop.cast.tess)),
  },
  'add-measured-value': {
    act: (store, shop) =>
      addMeasuredValue(store, freshValue(shop, shop.lamp, onFace(shop)), actorOf(shop.cast.tess)),
  },
  'add-finding': {
    act: (store, { workOrder, cast }) =>
      addFinding(store, freshFinding({ workOrderId: workOrder.id }), actorOf(cast.tess)),
  },
  'add-part-line': {
    act: (store, { workOrder, cast }) =>
      addPartLine(store, freshPartLine({ workOrderId: workOrder.id }), actorOf(cast.tess)),
  },
  'start-dial-survey': {
    act: (store, shop) => {
      const { survey } = freshSurvey(shop.lamp, { workOrderId: shop.workOrder.id })
      startDialSurvey(store, survey, actorOf(shop.cast.tess))
    },
  },
  'add-survey-reading': {
    before: (shop) => {
      const { survey } = freshSurvey(shop.lamp, { workOrderId: shop.workOrder.id })
      startDialSurvey(shop.store, survey, actorOf(shop.cast.tess))
    },
    act: (store, shop) => {
      const of = { workOrderId: shop.workOrder.id, surveyId: 1 }
      const [first] = freshSurvey(shop.lamp, of).readings
      addSurveyReading(store, of, first!, actorOf(shop.cast.tess))
    },
  },
  'end-dial-survey': {
    before: (shop) => {
      const { survey } = freshSurvey(shop.lamp, { workOrderId: shop.workOrder.id })
      startDialSurvey(shop.store, survey, actorOf(shop.cast.tess))
    },
    act: (store, { workOrder, cast }) => {
      const ended = { workOrderId: workOrder.id, surveyId: 1, reason: 'slipped' }
      giveUpDialSurvey(store, ended, actorOf(cast.tess))
    },
  },
  'add-whole-survey': {
    act: (store, shop) => {
      const fresh = freshSurvey(shop.lamp, { workOrderId: shop.workOrder.id })
      addWholeSurvey(store, fresh, surveyContext(shop, [shop.lamp]), actorOf(shop.cast.tess))
    },
  },
  'add-lap-cycle': {
    before: (shop) => addLapCycle(shop.store, freshCycle(shop), actorOf(shop.cast.tess)),
    act: (store, shop) => {
      const correction = { replacesId: 1, reason: 'misread', stockUm: 12 }
      addLapCycle(store, freshCycle(shop, correction), actorOf(shop.cast.tess))
    },
  },
  'add-dynamic-run': {
    act: (store, shop) =>
      addDynamicRun(store, freshRun(shop), [{ timeS: 0, massG: 1 }], actorOf(shop.cast.tess)),
  },
  'add-run-samples': {
    before: (shop) => addDynamicRun(shop.store, freshRun(shop), [], actorOf(shop.cast.tess)),
    act: (store, shop) => {
      const run = { id: 1, workOrderId: shop.workOrder.id }
      return addRunSamples(store, run, [{ timeS: 0, massG: 1 }], actorOf(shop.cast.tess))
    },
  },
  'add-wear-track': {
    act: (store, shop) => addWearTrack(store, freshTrack(shop), actorOf(shop.cast.tess)),
  },
  'add-spring-check': {
    act: (store, shop) => addSpringCheck(store, freshSpring(shop), actorOf(shop.cast.tess)),
  },
  'add-assembly': {
    before: (shop) => addSpringCheck(shop.store, freshSpring(shop), actorOf(shop.cast.tess)),
    act: (store, shop) => addAssembly(store, freshAssembly(shop), actorOf(shop.cast.tess)),
  },
  'agree-customer-rule': {
    act: (store, { customer, cast }) =>
      agreeCustomerRule(store, { customerId: customer.id, stated: guard }, actorOf(cast.ian)),
  },
  'agree-order-rule': {
    act: (store, { workOrder, cast }) =>
      agreeOrderRule(store, { workOrderId: workOrder.id, stated: guard }, actorOf(cast.ian)),
  },
  'add-concession': {
    before: (shop) => addFlatnessReading(shop.store, failing(shop), actorOf(shop.cast.tess)),
    act: (store, { workOrder, cast }) =>
      addConcession(
        store,
        { workOrderId: workOrder.id, asked: conceded, by: cast.ian },
        actorOf(cast.ian),
      ),
  },
  'add-hand-over': {
    before: doTheWork,
    act: (store, { workOrder, cast }) =>
      addHandOver(store, { workOrderId: workOrder.id, note: '' }, actorOf(cast.tess)),
  },
  refuse: {
    before: workAndHandOver,
    act: (store, shop) =>
      refuse(
        store,
        { handOverId: handOverOf(shop).id, reason: 'scratched', by: shop.cast.ian },
        actorOf(shop.cast.ian),
      ),
  },
  release: {
    before: workAndHandOver,
    act: (store, shop) =>
      release(store, freshRelease(shop, handOverOf(shop)), actorOf(shop.cast.ian)),
  },
  'add-user': {
    act: (store) =>
      addUser(
        store,
        {
          name: 'ned',
          displayName: 'Ned',
          role: 'manager',
          department: '',
          customerId: null,
          passwordHash: 'x',
        },
        operator,
      ),
  },
  'set-password': {
    before: (shop) => addSession(shop.store, session(shop), operator),
    act: (store, { cast }) =>
      setPassword(store, { userId: cast.tess.id, passwordHash: 'y' }, operator),
  },
  'set-active': {
    before: (shop) => addSession(shop.store, session(shop), operator),
    act: (store, { cast }) => setActive(store, { userId: cast.tess.id, isActive: false }, operator),
  },
  'add-session': { act: (store, shop) => addSession(store, session(shop), operator) },
  'remove-session': {
    before: (shop) => addSession(shop.store, session(shop), operator),
    act: (store) => removeSession(store, hash, operator),
  },
  'add-token': { act: (store, shop) => addToken(store, token(shop), operator) },
  'revoke-token': {
    before: (shop) => addToken(shop.store, token(shop), operator),
    act: (store) => revokeToken(store, { userName: 'tess', label: 'rig' }, operator),
  },
  'add-sign-in-failure': { act: (store) => addSignInFailure(store, failure, operator) },
  'clear-sign-in-failures': {
    before: ({ store }) => addSignInFailure(store, failure, operator),
    act: (store) => clearSignInFailures(store, 'tess'),
  },
  once: {
    act: (store, shop) =>
      once(store, { userId: 1, key: 'k', requestHash: hash, at: castAt }, () => {
        addFlatnessReading(store, freshReading(shop), actorOf(shop.cast.tess))
        return { status: 201, body: '{}' }
      }),
  },
  'prune-expired': {
    before: (shop) => {
      addSession(shop.store, session(shop), operator)
      addSignInFailure(shop.store, failure, operator)
      const request = { userId: 1, key: 'k', requestHash: hash, at: castAt }
      once(shop.store, request, () => ({ status: 201, body: '{}' }))
    },
    act: (store) => pruneExpired(store, '2027-06-01T00:00:00.000Z'),
  },
}

test('every file of the store that opens a transaction has a case here', () => {
  const folder = fileURLToPath(new URL('../../src/store', import.meta.url))
  const writing = readdirSync(folder)
    .filter((name) => name.endsWith('.ts') && name !== 'open.ts')
    .filter((name) => readFileSync(`${folder}/${name}`, 'utf8').includes('.transact('))
    .map((name) => name.slice(0, -'.ts'.length))
  expect(writing.length).toBeGreaterThan(20)
  expect(Object.keys(cases).sort()).toEqual(writing.sort())
})

test('the harness sees an act that is two transactions', () => {
  const shop = buildShop()
  const before = dumpStore(shop.store)
  // One customer takes four statements: look up, insert, last hash, audit line.
  const faulty = failAtStatement(shop.store.raw, 5)
  const twoActs = () => {
    for (const name of ['A', 'B']) {
      addCustomer(faulty, { name, address: '', contact: '', isInvented: true }, operator)
    }
  }
  expect(twoActs).toThrow(InjectedFault)
  expect(dumpStore(shop.store)).not.toBe(before)
})

test.each(Object.keys(cases))('%s leaves the store as it was when any statement fails', (name) => {
  const { before, act } = cases[name]!
  const shop = buildShop()
  before?.(shop)
  const image = shop.store.raw.serialize()
  const untouched = dumpStore(shop.store)
  let n = 0
  let isDone = false
  while (!isDone) {
    n += 1
    expect(n, 'passes at last').toBeLessThan(200)
    const raw = openImage(image)
    try {
      act(failAtStatement(raw, n), shop)
      isDone = true
    } catch (error) {
      if (!(error instanceof InjectedFault)) throw error
      expect(raw.inTransaction).toBe(false)
      expect(dumpStore(storeOf(raw)), `after statement ${n}`).toBe(untouched)
    }
    if (isDone) expect(dumpStore(storeOf(raw))).not.toBe(untouched)
    raw.close()
  }
  expect(n, 'something was made to fail').toBeGreaterThan(1)
})
