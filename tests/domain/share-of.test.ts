import { expect, test } from 'vitest'
import { assemblyAsPrinted } from '../../src/domain/certified-assembly.ts'
import { judgeAssembly } from '../../src/domain/judge-assembly.ts'
import { shareOf } from '../../src/domain/share-of.ts'
import { assemblyLineOf } from '../../views/words/en/spring-line-texts.ts'
import { buildAssembly } from '../support/build-assembly.ts'
import { buildSpringCheck } from '../support/build-spring-check.ts'

test('a share in percent is of the value asked for, and none where either is not stated', () => {
  expect(shareOf(110, 10)).toBe(11)
  expect(shareOf(110, 0)).toBe(0)
  expect(shareOf(0, 10)).toBe(0)
  expect(shareOf(null, 10)).toBeNull()
  expect(shareOf(110, null)).toBeNull()
})

test('the drawing of an assembly shows the band that its load is judged by', () => {
  const springChecks = [buildSpringCheck()]
  const asked = { designLoadN: 110, springCheckId: 1, loadFrom: 'spring-check' } as const
  for (const loadTolerancePercent of [1, 12.5, 100]) {
    const bandN = (110 * loadTolerancePercent) / 100
    const at = (loadN: number) => buildAssembly({ ...asked, loadTolerancePercent, loadN })
    const line = assemblyLineOf(assemblyAsPrinted(at(110), { assemblies: [], springChecks }), 320)
    expect(line?.design).toEqual({ loadN: 110, toleranceN: bandN })
    expect(judgeAssembly(at(110 + bandN), springChecks).load).toBe('within')
    expect(judgeAssembly(at(110 + bandN + 0.01), springChecks).load).toBe('beyond')
  }
})
