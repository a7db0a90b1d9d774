import { describe, expect, it } from 'vitest'
import { WholeFaceSection } from '../../../views/results/whole-face-section.tsx'
import { wholeFaceWords } from '../../../views/words/en/whole-face.ts'
import { dish, madeWholeReading } from '../../domain/made-whole-reading.ts'

const { wholeFace } = madeWholeReading(1, dish)
const shown = {
  wholeFace,
  photo: null,
  photoHref: '/photo',
  isSameAgain: null,
  repeatHref: '/again',
}
const combined = {
  ...wholeFace,
  source: {
    kind: 'combined',
    parts: [
      { readingId: 3, turnDeg: 0, isUpsideDown: false, weight: 0.5 },
      { readingId: 4, turnDeg: 90, isUpsideDown: false, weight: 0.5 },
    ],
  },
} as const
const section = (changes: Partial<Parameters<typeof WholeFaceSection>[0]['shown']>) =>
  String(<WholeFaceSection shown={{ ...shown, ...changes }} method="flatness/photo 1" />)

describe('a whole face on the page of its result', () => {
  it('says that it can be computed again, by which method, and offers it', () => {
    const page = section({})
    expect(page).toContain(wholeFaceWords.kept('flatness/photo 1'))
    expect(page).toContain('href="/again"')
  })

  it('says whether it came out the same', () => {
    expect(section({ isSameAgain: true })).toContain(wholeFaceWords.repeated)
    expect(section({ isSameAgain: false })).toContain(wholeFaceWords.repeatedOther)
    expect(section({ isSameAgain: true })).not.toContain('href="/again"')
  })

  it('shows no photograph of a combination, but where its parts are', () => {
    const page = section({ wholeFace: combined })
    expect(page).toContain(wholeFaceWords.keptParts('flatness/photo 1'))
    for (const href of ['./3', './4']) expect(page).toContain(`href="${href}"`)
    expect(page).not.toContain('<img')
  })
})
