import { expect, test } from 'vitest'
import { hourOptions } from '../../../views/findings/hour-options.ts'
import { typedPlace } from '../../../views/findings/typed-place.ts'

const typed = (fromHour: string, toHour: string, radialPlace = '') =>
  typedPlace({ fromHour, toHour, radialPlace })

test('two hours are a place, one is a lone hour, none is neither', () => {
  expect(typed('10', '2', 'middle')).toEqual({
    place: { fromHour: 10, toHour: 2 },
    loneHour: null,
    across: 'middle',
  })
  expect(typed('3,5', '')).toEqual({ place: null, loneHour: 3.5, across: null })
  expect(typed('', '0')).toEqual({ place: null, loneHour: 0, across: null })
  expect(typed('', '')).toEqual({ place: null, loneHour: null, across: null })
})

test('what is no hour draws nothing', () => {
  for (const odd of ['13', '-1', 'noon', '1e1', '12.1', ' ']) {
    expect(typed(odd, odd, 'everywhere'), odd).toEqual({
      place: null,
      loneHour: null,
      across: null,
    })
  }
})

test('twelve hours are offered, and one between two of them where it stands', () => {
  const values = (stands: string) => hourOptions(stands).map((one) => one.value)
  expect(values('')).toHaveLength(12)
  expect(values('4')).toHaveLength(12)
  expect(values('3.5').slice(0, 5)).toEqual(['12', '1', '2', '3', '3.5'])
  expect(values('0,25').slice(0, 2)).toEqual(['12', '0,25'])
  for (const odd of ['13.5', '12.5', 'noon', '99']) expect(values(odd), odd).toHaveLength(12)
})
