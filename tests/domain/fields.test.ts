import { describe, expect, test } from 'vitest'
import { type Fields, type Input, openFields } from '../../src/domain/fields.ts'

const tenth = { min: 0, max: 10 } as const

/** The faults of one reading of an input, as `field kind`. */
function faultsOf(input: Input, read: (fields: Fields) => unknown, isConfirmed = false): string[] {
  const fields = openFields(input, isConfirmed)
  read(fields)
  return fields.faults.map((one) => `${one.field} ${one.kind}`)
}

describe('decimal', () => {
  test('reads a text and a JSON number alike', () => {
    expect(openFields({ a: '2,5' }).decimal('a', tenth)).toBe(2.5)
    expect(openFields({ a: 2.5 }).decimal('a', tenth)).toBe(2.5)
  })

  test('reads small and large JSON numbers that JavaScript prints with an exponent', () => {
    expect(openFields({ a: 1e-7 }).decimal('a', tenth)).toBe(1e-7)
    expect(openFields({ a: 1.1e-7 }).decimal('a', tenth)).toBe(1.1e-7)
    expect(openFields({ a: 1e21 }).decimal('a', { min: 0, max: 1e22 })).toBe(1e21)
    expect(openFields({ a: 1.1e-7 }).typed('a')).toBe('0.00000011')
    // More digits than a text may have: what JSON says is the number, no text stands between.
    for (const a of [1.380649123456789e-23, 5e-324, -1.7e-200]) {
      expect(openFields({ a }).decimal('a', { min: -1, max: 1 })).toBe(a)
    }
    expect(Object.is(openFields({ a: -0 }).decimal('a', tenth), 0)).toBe(true)
  })

  test('takes bounds as allowed values and refuses what is beyond them', () => {
    expect(
      faultsOf({ a: '0', b: '10' }, (f) => [f.decimal('a', tenth), f.decimal('b', tenth)]),
    ).toEqual([])
    expect(faultsOf({ a: '-0.01' }, (f) => f.decimal('a', tenth))).toEqual(['a below'])
    expect(faultsOf({ a: '10.01' }, (f) => f.decimal('a', tenth))).toEqual(['a above'])
  })

  test('tells its bounds with the fault', () => {
    const fields = openFields({ a: '11' })
    fields.decimal('a', tenth)
    expect(fields.faults).toEqual([{ field: 'a', kind: 'above', with: { min: 0, max: 10 } }])
  })

  test('refuses an empty, blank, absent or null field instead of reading zero', () => {
    for (const input of [{ a: '' }, { a: '  ' }, {}, { a: null }]) {
      expect(faultsOf(input, (f) => f.decimal('a', tenth))).toEqual(['a empty'])
    }
  })

  test('refuses what is no number: words, booleans, lists, objects', () => {
    for (const a of ['abc', '1e5', true, false, [1], {}, ['1', '2']]) {
      expect(faultsOf({ a }, (f) => f.decimal('a', tenth))).toEqual(['a not-a-number'])
    }
  })
})

describe('optional fields', () => {
  test('are null or empty text where nothing was entered', () => {
    const fields = openFields({ a: ' ', b: null })
    expect(fields.optionalDecimal('a', tenth)).toBeNull()
    expect(fields.optionalWhole('b', tenth)).toBeNull()
    expect(fields.optionalChoice('c', ['x'])).toBeNull()
    expect(fields.optionalDay('d')).toBeNull()
    expect(fields.optionalWindowed('e', tenth)).toBeNull()
    expect(fields.optionalText('f', 5)).toBe('')
    expect(fields.faults).toEqual([])
  })

  test('are refused, not skipped, where something wrong was entered', () => {
    expect(faultsOf({ a: 'x' }, (f) => f.optionalDecimal('a', tenth))).toEqual(['a not-a-number'])
    expect(faultsOf({ a: false }, (f) => f.optionalDecimal('a', tenth))).toEqual(['a not-a-number'])
    expect(faultsOf({ a: '1.5' }, (f) => f.optionalWhole('a', tenth))).toEqual([
      'a not-a-whole-number',
    ])
    expect(faultsOf({ a: 'y' }, (f) => f.optionalChoice('a', ['x']))).toEqual(['a not-a-choice'])
    expect(faultsOf({ a: 'soon' }, (f) => f.optionalDay('a'))).toEqual(['a not-a-date'])
    expect(faultsOf({ a: [] }, (f) => f.optionalText('a', 5))).toEqual(['a not-text'])
  })
})

describe('whole', () => {
  test('names one fault where a fraction is out of bounds too', () => {
    expect(faultsOf({ a: '0.5' }, (f) => f.whole('a', { min: 1, max: 3 }))).toEqual(['a below'])
    expect(faultsOf({ a: '1.5' }, (f) => f.whole('a', { min: 1, max: 3 }))).toEqual([
      'a not-a-whole-number',
    ])
  })

  test('reads 3.0 as three', () => {
    expect(openFields({ a: '3.0' }).whole('a', tenth)).toBe(3)
  })
})

describe('windowed', () => {
  const window = { min: 5, max: 500 }
  const possible = { min: 0.1, max: 5000 }

  test('accepts the ends of the window', () => {
    expect(
      faultsOf({ a: '5', b: 500 }, (f) => [f.windowed('a', window), f.windowed('b', window)]),
    ).toEqual([])
  })

  test('asks beyond the window, and tells the window', () => {
    const fields = openFields({ a: '500.1' })
    fields.windowed('a', window)
    expect(fields.faults).toEqual([{ field: 'a', kind: 'beyond-window', with: window }])
    expect(faultsOf({ a: '4.9' }, (f) => f.windowed('a', window))).toEqual(['a beyond-window'])
  })

  test('lets the value stand once the user has confirmed it', () => {
    const fields = openFields({ a: '600' }, true)
    expect(fields.windowed('a', window)).toBe(600)
    expect(fields.faults).toEqual([])
  })

  test('never accepts the impossible, confirmed or not', () => {
    expect(faultsOf({ a: '-5' }, (f) => f.windowed('a', window, possible), true)).toEqual([
      'a below',
    ])
    expect(faultsOf({ a: '5001' }, (f) => f.windowed('a', window, possible), true)).toEqual([
      'a above',
    ])
    expect(faultsOf({ a: '-5' }, (f) => f.windowed('a', window, possible))).toEqual(['a below'])
  })

  test('names one fault for an empty field', () => {
    expect(faultsOf({}, (f) => f.windowed('a', window))).toEqual(['a empty'])
  })
})

describe('text and choice', () => {
  test('text is trimmed and may not be empty', () => {
    expect(openFields({ a: '  S-1 ' }).text('a', 5)).toBe('S-1')
    expect(faultsOf({ a: '   ' }, (f) => f.text('a', 5))).toEqual(['a empty'])
    expect(faultsOf({}, (f) => f.text('a', 5))).toEqual(['a empty'])
  })

  test('text has a longest length, which is allowed', () => {
    expect(faultsOf({ a: '12345' }, (f) => f.text('a', 5))).toEqual([])
    expect(faultsOf({ a: '123456' }, (f) => f.text('a', 5))).toEqual(['a too-long'])
  })

  test('text refuses lists and objects with one fault', () => {
    expect(faultsOf({ a: ['x'] }, (f) => f.text('a', 5))).toEqual(['a not-text'])
  })

  test('a choice is one of its list, to the letter', () => {
    const read = (f: Fields) => f.choice('a', ['gauge', 'absolute'])
    expect(openFields({ a: 'absolute' }).choice('a', ['gauge', 'absolute'])).toBe('absolute')
    expect(faultsOf({ a: 'Gauge' }, read)).toEqual(['a not-a-choice'])
    expect(faultsOf({ a: true }, read)).toEqual(['a not-a-choice'])
    expect(faultsOf({}, read)).toEqual(['a empty'])
  })
})

describe('day and instant', () => {
  test('a day exists in the calendar', () => {
    expect(openFields({ a: '2028-02-29' }).day('a')).toBe('2028-02-29')
    for (const a of ['2026-02-29', '2026-13-01', '2026-4-1', '25.11.2026', 'today']) {
      expect(faultsOf({ a }, (f) => f.day('a'))).toEqual(['a not-a-date'])
    }
    expect(faultsOf({ a: '' }, (f) => f.day('a'))).toEqual(['a empty'])
  })

  test('an instant is told in UTC, whatever its offset', () => {
    const read = (a: string) => openFields({ a }).instant('a')
    expect(read('2026-11-25T13:45:00+02:00')).toBe('2026-11-25T11:45:00.000Z')
    expect(read('2026-11-25T13:45')).toBe('2026-11-25T13:45:00.000Z')
    expect(read('2026-11-25T13:45:10.5Z')).toBe('2026-11-25T13:45:10.500Z')
  })

  test('an instant without time, or on a day that is none, is refused', () => {
    for (const a of ['2026-11-25', '2026-02-30T10:00:00Z', '2026-11-25T25:00Z', 'now', '5']) {
      expect(faultsOf({ a }, (f) => f.instant('a'))).toEqual(['a not-a-date'])
    }
    expect(faultsOf({}, (f) => f.instant('a'))).toEqual(['a empty'])
  })
})

describe('lists and groups', () => {
  const readBands = (f: Fields) =>
    f.list('readings', { min: 1, max: 3 }).map((part) => part.decimal('bands', tenth))

  test('name the path of a fault within them', () => {
    const input = { readings: [{ bands: '2' }, { bands: 'x' }], start: { timeS: '' } }
    expect(faultsOf(input, readBands)).toEqual(['readings[1].bands not-a-number'])
    expect(faultsOf(input, (f) => f.group('start').decimal('timeS', tenth))).toEqual([
      'start.timeS empty',
    ])
  })

  test('refuse an absent list, too few and too many parts', () => {
    expect(faultsOf({}, readBands)).toEqual(['readings empty'])
    expect(faultsOf({ readings: [] }, readBands)).toEqual(['readings empty'])
    expect(faultsOf({ readings: [{}] }, (f) => f.list('readings', { min: 2, max: 3 }))).toEqual([
      'readings too-few',
    ])
    const four = Array.from({ length: 4 }, () => ({ bands: '1' }))
    expect(faultsOf({ readings: four }, readBands)).toEqual(['readings too-many'])
  })

  test('refuse what is no list or no object, even where nothing is needed', () => {
    const none = (f: Fields) => f.list('readings', { min: 0, max: 3 })
    expect(faultsOf({}, none)).toEqual([])
    expect(faultsOf({ readings: 'abc' }, none)).toEqual(['readings not-a-list'])
    expect(faultsOf({ readings: { bands: 1 } }, none)).toEqual(['readings not-a-list'])
    expect(faultsOf({ readings: [5] }, none)).toEqual(['readings[0] not-an-object'])
    expect(faultsOf({ start: 5 }, (f) => f.group('start').decimal('timeS', tenth))).toEqual([
      'start not-an-object',
    ])
  })

  test('see a hole in a list as an empty part', () => {
    const readings: unknown[] = [{ bands: '1' }]
    readings[2] = { bands: '1' }
    expect(faultsOf({ readings }, readBands)).toEqual(['readings[1] empty'])
  })

  test('carry the confirmation into their parts', () => {
    const input = { components: [{ d: '600' }] }
    const read = (f: Fields) =>
      f.list('components', { min: 1, max: 3 }).map((part) => part.windowed('d', tenth))
    expect(faultsOf(input, read)).toEqual(['components[0].d beyond-window'])
    expect(faultsOf(input, read, true)).toEqual([])
  })
})

test('refuses unknown fields by name and path', () => {
  const fields = openFields({ a: 1, lmap: 'helium', readings: [{ band: 2 }] })
  fields.only('a', 'readings')
  for (const part of fields.list('readings', { min: 1, max: 3 })) part.only('bands')
  expect(fields.faults).toEqual([
    { field: 'lmap', kind: 'unknown-field', with: { name: 'lmap' } },
    { field: 'readings[0].band', kind: 'unknown-field', with: { name: 'band' } },
  ])
})

test('finishes with the value, or with every fault and no value', () => {
  expect(openFields({}).finish(7)).toEqual({ ok: true, value: 7 })
  const fields = openFields({})
  fields.text('a', 5)
  fields.text('b', 5)
  expect(fields.finish(7)).toEqual({
    ok: false,
    faults: [
      { field: 'a', kind: 'empty' },
      { field: 'b', kind: 'empty' },
    ],
  })
})
