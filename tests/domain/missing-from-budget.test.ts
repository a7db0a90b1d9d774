import { expect, test } from 'vitest'
import { missingFromBudget } from '../../src/domain/missing-from-budget.ts'
import { sourceWord } from '../../views/words/en/uncertainty-sources.ts'

test('an instrument whose accuracy nobody stated is missing from a budget', () => {
  expect(
    missingFromBudget({ leftOut: ['repeatability', 'instrument'] }, 'static-leak-rate'),
  ).toEqual(['instrument'])
  expect(
    missingFromBudget({ leftOut: ['volume', 'temperature-error'] }, 'static-leak-rate'),
  ).toEqual(['volume', 'temperature-error'])
})

test('what belongs to the method can be left out', () => {
  expect(
    missingFromBudget(
      { leftOut: ['thermal-bow', 'viewing-angle', 'alignment'] },
      'static-leak-rate',
    ),
  ).toEqual([])
})

test('how warm the part of a height was is of the method, a thermometer of a test is not', () => {
  const lacks = { leftOut: ['setting', 'temperature', 'alignment'] }
  expect(missingFromBudget(lacks, 'face-height')).toEqual([])
  expect(missingFromBudget(lacks, 'static-leak-rate')).toEqual(['temperature'])
})

test('each source that a budget cannot do without has a word', () => {
  for (const source of ['instrument', 'optical-flat', 'pressure-error', 'volume-error']) {
    expect(missingFromBudget({ leftOut: [source] }, 'static-leak-rate')).toEqual([source])
    expect(sourceWord(source)).not.toBe(source)
  }
})
