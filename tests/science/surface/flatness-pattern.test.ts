import { describe, expect, it } from 'vitest'
import {
  flatnessForms,
  flatnessPatterns,
  formOfPattern,
} from '../../../src/science/surface/flatness-pattern.ts'

describe('formOfPattern', () => {
  it('names a form for every pattern but the unreadable one', () => {
    expect(Object.keys(formOfPattern).sort()).toEqual(
      flatnessPatterns.filter((pattern) => pattern !== 'unreadable').sort(),
    )
    for (const form of Object.values(formOfPattern)) expect(flatnessForms).toContain(form)
  })

  it('does not claim hill or hollow for rings', () => {
    expect(formOfPattern.rings).toBe('undetermined')
  })
})
