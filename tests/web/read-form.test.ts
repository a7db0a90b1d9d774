import { describe, expect, test } from 'vitest'
import { AppError } from '../../src/domain/app-error.ts'
import { nestFields } from '../../src/web/read-form.ts'
import { testApp } from '../support/test-app.ts'

const nested = (form: string) => nestFields(new URLSearchParams(form))

describe('the fields of a form', () => {
  test('become lists and objects by their names', () => {
    expect(nested('faceId=3&readings[0].bands=1,25&readings[1].bands=2')).toEqual({
      faceId: '3',
      readings: [{ bands: '1,25' }, { bands: '2' }],
    })
  })

  test('keep every value of a repeated name', () => {
    expect(nested('a=1&a=2&a=3')).toEqual({ a: ['1', '2', '3'] })
  })

  test.each([
    'readings[0].bands=1&readings.length=5',
    'readings[0].bands=1&readings.findLastIndex=5',
    'readings[0].bands=1&readings[constructor][prototype][x]=1',
    'readings=hello&readings[0].bands=1',
    'readings[0].bands=1&readings[0]=hello',
    '__proto__.polluted=1',
    'a.b.c.d.e.f.g=1',
    '=1',
  ])('are refused where no page of ours could have sent them: %s', (form) => {
    expect(() => nested(form)).toThrow(AppError)
    expect(Object.prototype).not.toHaveProperty('polluted')
  })

  test('of a full body that repeats one name are all read', () => {
    // Copying the list for each value took two minutes here: the runner ends a test after 5 s.
    const { a } = nested('a&'.repeat(125_000))
    expect(a).toHaveLength(125_000)
  })

  test('that make no sense are answered as a form that was not accepted', async () => {
    const { post } = testApp()
    const answer = await post('/sign-in', { 'name[0]': 'a', 'name.length': '9' })
    expect(answer.status).toBe(422)
  })
})
