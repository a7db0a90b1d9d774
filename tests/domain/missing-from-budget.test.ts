import { expect, test } from 'vitest'
import { missingFromBudget } from '../../src/domain/missing-from-budget.ts'
import { sourceWord } from '../../views/words/en/uncertainty-sources.ts'

test('an instrument whose accuracy nobody stated is missing from a budget', () => {
  expect(missingFromBudget({ leftOut: ['repeatability', 'instrument'] })).toEqual(['instrument'])
  expect(missingFromBudget({ leftOut: ['volume', 'temperature-error'] })).toEqual([
    'volume',
    'temperature-error',
  ])
})

test('what belongs to the method can be left out', () => {
  expect(missingFromBudget({ leftOut: ['thermal-bow', 'viewing-angle', 'alignment'] })).toEqual([])
})

test('each source that a budget cannot do without has a word', () => {
  for (const source of ['instrument', 'optical-flat', 'pressure-error', 'volume-error']) {
    expect(missingFromBudget({ leftOut: [source] })).toEqual([source])
    expect(sourceWord(source)).not.toBe(source)
  }
})
