import type { Child } from 'hono/jsx'
import { describe, expect, it } from 'vitest'
import type { WholeFaceAnswer } from '../../../src/domain/whole-face-answer.ts'
import { photoRefusals } from '../../../src/science/photo/photo-refusal.ts'
import { FacePhotoAnswerView } from '../../../views/face-photo/answer.tsx'
import { arrowDeg } from '../../../views/face-photo/arrow-deg.ts'
import type { FacePhotoForm } from '../../../views/face-photo/page-props.ts'
import { PhotoStage } from '../../../views/face-photo/stage.tsx'
import { photoWords } from '../../../views/words/en/photo.ts'
import { buildWholeFace } from '../../support/build-whole-face.ts'
import { buildFigures, buildPhotoForm } from './build-photo-form.ts'

const html = (child: Child) => String(child)
const drawn = (form: FacePhotoForm, answer: WholeFaceAnswer | null) =>
  html(<FacePhotoAnswerView form={form} answer={answer} />)
const outcome = (one: WholeFaceAnswer['outcome']): WholeFaceAnswer => ({ uses: [], outcome: one })
const checked = (page: string) =>
  [...page.matchAll(/name="opensTowardsDeg" value="(\d*)" checked/g)].map((one) => one[1])
const hidden = (page: string) =>
  /type="hidden" name="opensTowardsDeg" value="(\d+)"/.exec(page)?.[1] ?? null
const refused = (reason: (typeof photoRefusals)[number], isSecond = false) =>
  outcome({ kind: 'refused', reason, isSecond, measured: null, limit: null })

describe('the answer of a photograph', () => {
  it('asks which way the bands move, with the two arrows that lie on the picture', () => {
    const page = drawn(buildPhotoForm(), buildFigures())
    // The wedge of the built face opens towards 20 degrees.
    expect(page).toMatch(/value="20"/)
    expect(page).toMatch(/value="200"/)
    expect(checked(page)).toEqual([''])
    const overlay = page.slice(page.indexOf('<template data-overlay'))
    expect(overlay).toMatch(/>A<\/text>/)
    expect(overlay).toMatch(/>B<\/text>/)
    expect(overlay).toContain('viewBox="0 0 1000 800"')
  })

  it('keeps the arrow that was chosen while the reading turns it by a little', () => {
    expect(checked(drawn(buildPhotoForm({ opensTowardsDeg: '22' }), buildFigures()))).toEqual([
      '20',
    ])
    expect(checked(drawn(buildPhotoForm({ opensTowardsDeg: '195' }), buildFigures()))).toEqual([
      '200',
    ])
  })

  it('keeps it through a refusal, an open question and a page without an answer', () => {
    const form = buildPhotoForm({ opensTowardsDeg: '200' })
    expect(hidden(drawn(form, refused('noisy')))).toBe('200')
    expect(hidden(drawn(form, outcome({ kind: 'ask', ask: 'lamp' })))).toBe('200')
    expect(hidden(drawn(form, null))).toBe('200')
    // Where the question is there, there is no second field of its name.
    expect(hidden(drawn(form, buildFigures()))).toBeNull()
    expect(hidden(drawn(buildPhotoForm(), refused('noisy')))).toBeNull()
  })

  it('asks nothing that two photographs decided, and asks where they did not', () => {
    const form = buildPhotoForm({ pressedPhotoId: '2' })
    const decided = drawn(form, buildFigures({}, { isDecided: true, movedBands: -0.2 }))
    expect(decided).not.toContain('name="opensTowardsDeg"')
    expect(decided).toContain('decides which side the gap opens')
    const open = drawn(form, buildFigures({}, { isDecided: false, movedBands: -0.02 }))
    expect(open.match(/name="opensTowardsDeg"/g)).toHaveLength(3)
    expect(open).toContain('does not decide')
  })

  it('says of marks how many are missing', () => {
    const points = Array.from({ length: 13 }, (_, k) => `${k} ${k} 1`).join('\n')
    const form = buildPhotoForm({ kind: 'marked', points: `${points}\n\n` })
    const fault = { field: 'points', kind: 'too-few', with: { min: 20 } } as const
    const page = drawn(form, outcome({ kind: 'faulty', faults: [fault] }))
    expect(page).toContain('13 marks are set: at least 7 more')
    const none = buildPhotoForm({ kind: 'marked' })
    expect(drawn(none, outcome({ kind: 'ask', ask: 'marks' }))).toContain('20 places or more')
  })

  it('names the mark that is wrong', () => {
    const fault = { field: 'points[6].order', kind: 'mark-does-not-fit' } as const
    const page = drawn(
      buildPhotoForm({ kind: 'marked', points: '1 1 1' }),
      outcome({ kind: 'faulty', faults: [fault] }),
    )
    expect(page).toContain('Mark 7: ')
  })

  it.each(photoRefusals)('says what to do where it is refused: %s', (reason) => {
    const page = drawn(buildPhotoForm(), refused(reason))
    expect(page).toContain(photoWords.refusal[reason])
    expect(page).toContain('/work-orders/W-2026-0001/face-photos/new?face=11')
    expect(page).toContain('/flatness/new?face=11&amp;pattern=unreadable')
    expect(page).not.toContain('data-overlay')
  })

  it('shows both ratios where the rings may lie well and the diameters be wrong', () => {
    const form = buildPhotoForm({ outerDiameterMm: '93', innerDiameterMm: '83,0' })
    // 240 × 239 by 300 × 298: the root is 0.801; 83 by 93 is 0.892.
    expect(drawn(form, refused('edges-not-found'))).toMatch(/0\.801 in the picture, 0\.892 by/)
    expect(drawn(form, refused('noisy'))).not.toContain('in the picture,')
    const unset = buildPhotoForm({ innerDiameterMm: 'about 40' })
    expect(drawn(unset, refused('edges-not-found'))).not.toContain('in the picture,')
  })

  it('draws nothing over the picture where nothing was seen', () => {
    const { source } = buildWholeFace()
    const grid = buildFigures({ seen: null, source })
    expect(drawn(buildPhotoForm(), grid)).not.toContain('data-overlay')
  })
})

describe('arrow A', () => {
  it.each([
    [20, 20],
    [200, 20],
    [-30, 150],
    [180, 0],
    [179.8, 0],
    [359.7, 0],
  ])('of a wedge towards %s degrees points to %s', (deg, expected) => {
    expect(arrowDeg(deg)).toBe(expected)
  })
})

describe('the stage', () => {
  it('draws the rings as typed, and none of what is no number', () => {
    const page = html(<PhotoStage form={buildPhotoForm()} />)
    expect(page.match(/<ellipse/g)).toHaveLength(4)
    expect(page).toMatch(/rx="300"/)
    const inner = { cx: '500', cy: '', rx: 'x', ry: '1', rotationDeg: '0' }
    expect(html(<PhotoStage form={buildPhotoForm({ inner })} />).match(/<ellipse/g)).toHaveLength(2)
  })

  it('shows what was seen without a script, and leaves it to the script otherwise', () => {
    const page = html(<PhotoStage form={buildPhotoForm({}, { answer: buildFigures() })} />)
    const quiet = /<noscript>(.*)<\/noscript>/s.exec(page)?.[1] ?? ''
    expect(quiet.match(/<path/g)?.length).toBeGreaterThan(4)
    expect(page).toContain('<g data-seen=""></g>')
  })
})
