import { expect, it } from 'vitest'
import { distinctAngles } from '../../../src/science/runout/distinct-angles.ts'

it('counts a turn once, whichever way round and however often', () => {
  expect(distinctAngles([0, 90, 360, -90, 450])).toEqual([0, 90, 270])
  expect(distinctAngles([-1e-9, 0, 359.9999999])).toEqual([0])
})

it('refuses an angle that is none', () => {
  expect(() => distinctAngles([Number.POSITIVE_INFINITY])).toThrow('angleDeg')
})
