import { describe, expect, it } from 'vitest'
import { flow, type Piece } from '../../../reports/paper/flow.ts'
import { pageSize } from '../../../reports/paper/page-size.ts'
import { openPaper } from '../../../reports/paper/paper.ts'

type Placed = { readonly name: string; readonly page: number; readonly y: number }

/** Sets the pieces on a real document and tells where each one went. */
function placed(
  pieces: readonly (Partial<Piece> & { readonly name: string; readonly head?: Piece })[],
): readonly Placed[] {
  const paper = openPaper({
    title: '',
    subject: '',
    author: '',
    language: 'en',
    createdAt: '2026-01-01T00:00:00.000Z',
  })
  paper.pdf.addPage()
  const places: Placed[] = []
  const put = (name: string, y: number) => {
    places.push({ name, page: paper.pdf.bufferedPageRange().count, y })
  }
  const headed = (name: string): Piece => ({
    heightPt: 20,
    beforePt: 0,
    draw: (y) => put(`head of ${name}`, y),
  })
  const set = pieces.map(({ name, ...piece }) => ({
    heightPt: 100,
    beforePt: 0,
    ...piece,
    ...(piece.head === undefined ? {} : { head: headed(name) }),
    draw: (y: number) => put(name, y),
  }))
  flow(paper, set, 100)
  return places
}

const anyHead: Piece = { heightPt: 20, beforePt: 0, draw: () => undefined }
const freePt = pageSize.bottomPt - 100

describe('the flow of pieces over pages', () => {
  it('sets one under the other with the space before it, but none at the top', () => {
    const places = placed([
      { name: 'a', beforePt: 30 },
      { name: 'b', beforePt: 30 },
    ])
    expect(places).toEqual([
      { name: 'a', page: 1, y: 100 },
      { name: 'b', page: 1, y: 230 },
    ])
  })

  it('starts a page where a piece does not fit, to the last point', () => {
    const full = { name: 'a', heightPt: freePt - 100 }
    expect(placed([full, { name: 'b' }]).map((one) => one.page)).toEqual([1, 1])
    const over = { name: 'a', heightPt: freePt - 99.9 }
    expect(placed([over, { name: 'b' }])).toContainEqual({
      name: 'b',
      page: 2,
      y: pageSize.laterTopPt,
    })
  })

  it('takes a heading along to the page of what it stands over', () => {
    const pages = placed([
      { name: 'a', heightPt: freePt - 60 },
      { name: 'heading', heightPt: 20, isKeptWithNext: true },
      { name: 'subheading', heightPt: 20, isKeptWithNext: true },
      { name: 'b', heightPt: 40 },
    ]).map((one) => one.page)
    expect(pages).toEqual([1, 2, 2, 2])
  })

  it('draws the head of a table again where a row starts a page', () => {
    const names = placed([
      { name: 'a', heightPt: freePt, head: anyHead },
      { name: 'b', head: anyHead },
      { name: 'c', head: anyHead },
    ]).map((one) => one.name)
    expect(names).toEqual(['a', 'head of b', 'b', 'c'])
  })

  it('sets a piece that no page can hold rather than turning pages for ever', () => {
    expect(placed([{ name: 'a', heightPt: 5000 }, { name: 'b' }]).map((one) => one.page)).toEqual([
      1, 2,
    ])
  })
})
