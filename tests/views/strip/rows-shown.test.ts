import { expect, test } from 'vitest'
import { rowsShown } from '../../../views/strip/rows-shown.ts'

const count = { least: 3, most: 12 }
const shown = (...names: readonly string[]) =>
  rowsShown({ values: Object.fromEntries(names.map((name) => [name, '4.2'])) }, 'widths', count)

test('a fresh form shows the least, whatever stands in other lists', () => {
  expect(shown()).toBe(3)
  expect(shown('widths', 'loads[7].mm', 'more.widths[7].mm', 'widthsToo[7].mm')).toBe(3)
  expect(rowsShown({ values: { 'widths[7].mm': '' } }, 'widths', count)).toBe(3)
})

test('each row that holds something is shown, and one more to go on with', () => {
  expect(shown('widths[1].mm')).toBe(3)
  expect(shown('widths[2].mm')).toBe(4)
  expect(shown('widths[0].mm', 'widths[9].other')).toBe(11)
})

test('no more are shown than a record takes', () => {
  expect(shown('widths[10].mm')).toBe(12)
  expect(shown('widths[11].mm')).toBe(12)
})
