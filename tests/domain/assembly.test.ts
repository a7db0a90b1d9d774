import { describe, expect, test } from 'vitest'
import { completeAssembly } from '../../src/domain/complete-assembly.ts'
import { judgeAssembly } from '../../src/domain/judge-assembly.ts'
import { parseAssembly } from '../../src/domain/parse-assembly.ts'
import { buildAssembly } from '../support/build-assembly.ts'
import { buildSpringCheck } from '../support/build-spring-check.ts'
import { accepted, faultsOf } from '../support/faults-of.ts'

const least = { workingLengthMm: '14,0', clips: 'none-needed', isTurningFree: 'yes' }
const parse = (changes: Record<string, unknown> = {}) =>
  parseAssembly({ ...least, ...changes }, [buildSpringCheck()])
const faults = (changes: Record<string, unknown>) => faultsOf(parse(changes))

describe('reading an assembly', () => {
  test('asks for working length, clips and whether it turns, and makes nothing of the rest', () => {
    expect(accepted(parse())).toMatchObject({
      workingLength: { mm: 14, typed: '14,0' },
      designLoadN: null,
      measuredLoad: null,
      setScrews: [],
      clips: 'none-needed',
      clipsCount: null,
      isTurningFree: true,
      designSource: '',
    })
    expect(faultsOf(parseAssembly({}, []))).toEqual([
      'workingLengthMm empty',
      'clips empty',
      'isTurningFree empty',
    ])
  })

  test('takes a word of a form and a truth of a program alike', () => {
    expect(accepted(parse({ isTurningFree: false })).isTurningFree).toBe(false)
    expect(accepted(parse({ isTurningFree: 'no' })).isTurningFree).toBe(false)
    expect(faults({ isTurningFree: 'perhaps' })).toEqual(['isTurningFree not-a-choice'])
  })

  test('refuses a design value of which nobody says where it stands', () => {
    const load = { designLoadN: '110', loadTolerancePercent: '10' }
    expect(faults(load)).toEqual(['designSource empty'])
    const length = { designWorkingLengthMm: '14', workingLengthToleranceMm: '0,5' }
    expect(faults(length)).toEqual(['designSource empty'])
    const setScrews = [{ name: 'M6', torqueNm: '9', designTorqueNm: '10' }]
    const torque = { setScrews, torqueTolerancePercent: '10' }
    expect(faults(torque)).toEqual(['designSource empty'])
    expect(faults({ ...load, ...length, ...torque, designSource: 'drawing 12' })).toEqual([])
  })

  test('refuses a design value without its tolerance, but takes a torque nobody asks for', () => {
    const designSource = 'drawing 12'
    const setScrews = [{ name: 'M6', torqueNm: '9', designTorqueNm: '10' }]
    const asked = { designSource, designWorkingLengthMm: '14', designLoadN: '110', setScrews }
    expect(faults(asked)).toEqual([
      'workingLengthToleranceMm tolerance-needed',
      'loadTolerancePercent tolerance-needed',
      'torqueTolerancePercent tolerance-needed',
    ])
    // None at all is a tolerance too; what is no number is told as such alone.
    expect(
      faults({ ...least, designSource, designLoadN: '110', loadTolerancePercent: '0' }),
    ).toEqual([])
    expect(faults({ designSource, designLoadN: '110', loadTolerancePercent: 'a tenth' })).toEqual([
      'loadTolerancePercent not-a-number',
    ])
    expect(faults({ setScrews: [{ name: 'M6', torqueNm: '9' }] })).toEqual([])
  })

  test('keeps torques as typed, also of a program, which sends numbers', () => {
    const asked = { designSource: 'drawing 12', torqueTolerancePercent: '10' }
    const torques = (torqueNm: unknown, designTorqueNm?: unknown) =>
      accepted(parse({ setScrews: [{ name: 'M6', torqueNm, designTorqueNm }], ...asked }))
        .setScrews[0]
    expect(torques(' 9,0 ', '10.50')).toMatchObject({
      torqueTyped: '9,0',
      designTorqueTyped: '10.50',
    })
    expect(torques(9.5)).toMatchObject({ torqueTyped: '9.5', designTorqueTyped: '' })
  })

  test('refuses a length below that at which its springs are solid', () => {
    expect(faults({ workingLengthMm: '9' })).toEqual([])
    expect(faults({ workingLengthMm: '8.99' })).toEqual(['workingLengthMm shorter-than-solid'])
    expect(faults({ workingLengthMm: '0.05' })).toEqual(['workingLengthMm below'])
    const unknown = buildSpringCheck({ solidLength: null })
    const short = { ...least, workingLengthMm: '8' }
    expect(faultsOf(parseAssembly(short, [unknown]))).toEqual([])
    const none = { ...least, workingLengthMm: '0.05' }
    expect(faultsOf(parseAssembly(none, []))).toEqual(['workingLengthMm below'])
  })

  test('is refused by the name of what is wrong', () => {
    expect(faults({ clips: 'none-needed', clipsCount: '2' })).toEqual(['clipsCount not-here'])
    expect(faults({ setScrews: [{ torqueNm: '9' }] })).toEqual(['setScrews[0].name empty'])
    expect(faults({ setScrews: [{ name: 'M6', quantityCount: '0' }] })).toEqual([
      'setScrews[0].quantityCount below',
    ])
    expect(faults({ loadTolerancePercent: '101' })).toEqual(['loadTolerancePercent above'])
    expect(faults({ replacesId: '1' })).toEqual(['reason reason-needed'])
  })
})

describe('the load of an assembly', () => {
  const of = (changes = {}, checks = [buildSpringCheck()]) =>
    completeAssembly(buildAssembly(changes), checks)

  test('is that of the springs at its own working length', () => {
    expect(of()).toMatchObject({ loadN: 108, loadFrom: 'spring-check', springCheckId: 1 })
    expect(of({ workingLength: { mm: 15, typed: '15' } }).loadN).toBeCloseTo(90, 9) // doubles
  })

  test('is nothing where the springs are shorter than that', () => {
    expect(of({ workingLength: { mm: 21, typed: '21' } }).loadN).toBe(0)
  })

  test('is the measured one where it was measured', () => {
    const measured = of({ measuredLoad: { n: 101, typed: '101' } })
    expect(measured).toMatchObject({ loadN: 101, loadFrom: 'measured', springCheckId: null })
  })

  test('goes by the springs that go in, and by none that was replaced', () => {
    const found = buildSpringCheck({ id: 1, condition: 'as-found', springsCount: 5 })
    const left = buildSpringCheck({ id: 2 })
    const later = buildSpringCheck({ id: 3, condition: 'as-found', springsCount: 4 })
    expect(of({}, [found, left, later]).springCheckId).toBe(2)
    expect(of({}, [found, { ...left, replacedById: 9 }]).springCheckId).toBe(1)
  })

  test('is not known without springs, or of springs nobody pressed', () => {
    const nothing = { loadN: null, loadFrom: null, springCheckId: null }
    expect(of({}, [])).toMatchObject(nothing)
    expect(of({}, [buildSpringCheck({ statedRateNPerMm: null })])).toMatchObject(nothing)
  })
})

describe('an assembly against its design', () => {
  const judge = (changes = {}, after = [buildSpringCheck()]) =>
    judgeAssembly(completeAssembly(buildAssembly(changes), [buildSpringCheck()]), after)
  const screw = { name: 'M6', quantityCount: 4, torqueNm: 9, designTorqueNm: 10 }

  test('is not judged where design or tolerance is not stated', () => {
    expect(judge({ designLoadN: 100, designWorkingLengthMm: 15, setScrews: [screw] })).toEqual({
      workingLength: 'not-stated',
      load: 'not-stated',
      torques: ['not-stated'],
      isAmiss: false,
    })
  })

  test('is within up to the tolerance itself, and beyond after it', () => {
    const at = (designLoadN: number) => judge({ designLoadN, loadTolerancePercent: 10 }).load
    expect([120, 120.1, 98.2, 98.1].map(at)).toEqual(['within', 'beyond', 'within', 'beyond'])
    const length = (mm: number) =>
      judge({
        workingLength: { mm, typed: '' },
        designWorkingLengthMm: 14.3,
        workingLengthToleranceMm: 0.3,
      }).workingLength
    expect([14, 14.6, 13.99, 14.61].map(length)).toEqual(['within', 'within', 'beyond', 'beyond'])
    const torque = (torqueNm: number) =>
      judge({ setScrews: [{ ...screw, torqueNm }], torqueTolerancePercent: 10 }).torques
    expect([9, 8.9].flatMap(torque)).toEqual(['within', 'beyond'])
  })

  test('holds no load against it by a check of springs that was corrected since', () => {
    const asked = { designLoadN: 108, loadTolerancePercent: 5 }
    const corrected = [buildSpringCheck({ replacedById: 2 }), buildSpringCheck({ id: 2 })]
    expect(judge(asked).load).toBe('within')
    expect(judge(asked, corrected).load).toBe('not-stated')
    // Beyond by the check that was wrong is nothing either.
    expect(judge({ ...asked, designLoadN: 50 }, corrected).isAmiss).toBe(false)
    const measured = { measuredLoad: { n: 108, typed: '108' } }
    expect(judge({ ...asked, ...measured }, corrected).load).toBe('within')
  })

  test('is amiss where something is beyond, does not turn, or misses its clips', () => {
    expect(judge().isAmiss).toBe(false)
    expect(judge({ designLoadN: 200, loadTolerancePercent: 10 }).isAmiss).toBe(true)
    expect(judge({ isTurningFree: false }).isAmiss).toBe(true)
    expect(judge({ clips: 'not-fitted' }).isAmiss).toBe(true)
  })
})
