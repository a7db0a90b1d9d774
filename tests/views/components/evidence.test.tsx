import type { JSX } from 'hono/jsx/jsx-runtime'
import { describe, expect, it } from 'vitest'
import { limitBar } from '../../../src/plots/limit-bar.ts'
import { verdictKinds } from '../../../src/plots/verdict-shape.ts'
import { Caution } from '../../../views/components/caution.tsx'
import { DataTable } from '../../../views/components/data-table.tsx'
import { Facts } from '../../../views/components/facts.tsx'
import { InventedBanner } from '../../../views/components/invented-banner.tsx'
import { Pager } from '../../../views/components/pager.tsx'
import { ResultFigure } from '../../../views/components/result-figure.tsx'
import { StageLine } from '../../../views/components/stage-line.tsx'
import { SvgDrawing } from '../../../views/components/svg-drawing.tsx'
import { TopBar } from '../../../views/components/top-bar.tsx'
import { VerdictMark } from '../../../views/components/verdict-mark.tsx'

const html = (element: JSX.Element): string => String(element)
const bar = limitBar({
  value: 0.66,
  upperLimit: 0.88,
  widthPx: 200,
  valueText: '<0.66>',
  limitText: '0.88',
})

describe('VerdictMark', () => {
  it.each(verdictKinds)('says %s in a word and repeats it by a shape', (verdict) => {
    const page = html(<VerdictMark verdict={verdict} word={`word ${verdict}`} />)
    expect(page).toContain(`<span>word ${verdict}</span>`)
    expect(page).toContain('<svg aria-hidden="true"')
  })

  it('draws a shape of its own for every verdict', () => {
    const shapes = verdictKinds.map((verdict) =>
      html(<VerdictMark verdict={verdict} word="" />).replace(/class="[^"]*"/g, ''),
    )
    expect(verdictKinds.length).toBeGreaterThan(5)
    expect(new Set(shapes).size).toBe(verdictKinds.length)
  })
})

describe('SvgDrawing', () => {
  it('writes no inline style and escapes the texts of a drawing', () => {
    const page = html(<SvgDrawing drawing={bar} />)
    expect(page).not.toContain('style=')
    expect(page).toContain('&lt;0.66&gt;')
  })

  it('is an image with a name when it has a title, decoration when not', () => {
    const named = html(<SvgDrawing drawing={bar} id="bar" title="Flatness" description="Inside" />)
    expect(named).toContain('role="img" aria-labelledby="bar-title"')
    expect(named).toContain('<title id="bar-title">Flatness</title><desc>Inside</desc>')
    expect(html(<SvgDrawing drawing={bar} />)).toContain('aria-hidden="true"')
  })

  it('paints every shape of the drawing', () => {
    const page = html(<SvgDrawing drawing={bar} />)
    expect(page.match(/<(?:path|line|text) /g)).toHaveLength(bar.shapes.length)
  })
})

describe('DataTable', () => {
  const table = (
    <DataTable
      caption="Results"
      columns={[{ label: 'Measured' }, { label: 'Value', kind: 'number' }]}
      rows={[{ cells: ['Flatness', '0.66 µm'] }, { cells: ['<b>', '1'], mark: 'quiet' }]}
    />
  )

  it('scrolls in a named region that the keyboard reaches', () => {
    expect(html(table)).toContain(
      '<div class="table-frame" role="group" aria-label="Results" tabindex="0">',
    )
  })

  it('heads columns and rows', () => {
    const page = html(table)
    expect(page.match(/scope="col"/g)).toHaveLength(2)
    expect(page.match(/scope="row"/g)).toHaveLength(2)
    expect(page).toContain(
      '<td role="cell" class="cell-number" data-heading="Value"><div>0.66 µm</div></td>',
    )
    expect(page).toContain('&lt;b&gt;')
  })
})

describe('the small parts', () => {
  it('tell the current stage and every state in words', () => {
    const page = html(
      <StageLine
        label="Way"
        stages={[
          { label: 'Receipt', state: 'done', stateWord: 'done' },
          { label: 'Lapping', state: 'current', stateWord: 'now' },
        ]}
      />,
    )
    expect(page.match(/aria-current="step"/g)).toHaveLength(1)
    expect(page).toContain(' (done)')
  })

  it('pair labels with values', () => {
    const page = html(<Facts pairs={[{ label: 'Serial', value: '<1>' }]} />)
    expect(page).toContain('>Serial</dt><dd class="fact-value">&lt;1&gt;</dd>')
  })

  it('read a live result out when it changes', () => {
    const live = html(<ResultFigure label="Flatness" value="0.66" unit="µm" isLive />)
    expect(live).toContain('role="status"')
    expect(html(<ResultFigure label="F" value="1" unit="µm" />)).not.toContain('role=')
  })

  it('show a caution as a note with its word', () => {
    const page = html(
      <Caution sign="Caution" title="air">
        <p>Stand clear.</p>
      </Caution>,
    )
    expect(page).toContain('role="note"')
    expect(page).toContain('Caution: air')
  })

  it('leave out the way that leads nowhere', () => {
    const page = html(<Pager label="Pages" position="1 of 1" />)
    expect(page).not.toContain('<a ')
  })

  it('name the band of invented data', () => {
    expect(html(<InventedBanner text="Invented data" />)).toContain('aria-label="Invented data"')
  })
})

describe('TopBar', () => {
  const view = {
    action: '/view',
    legend: 'View',
    returnTo: '/bench?q="',
    choices: [
      { value: 'light', label: 'Light', isCurrent: false },
      { value: 'lamp', label: 'Lamp', isCurrent: true },
    ],
  } as const
  const nav = [
    { href: '/bench', label: 'Bench', isCurrent: true },
    { href: '/seals', label: 'Seals', isCurrent: false },
  ]
  const bar = { brand: 'R', homeHref: '/', navLabel: 'Main', menuLabel: 'Menu', view }

  it('marks the current page and the current view, each once', () => {
    const page = html(<TopBar {...bar} nav={nav} />)
    expect(page.match(/aria-current="page"/g)).toHaveLength(1)
    expect(page).toMatch(/value="lamp" aria-pressed="true"/)
    expect(page.match(/aria-pressed="true"/g)).toHaveLength(1)
  })

  it('changes the view by a plain form that comes back to the page', () => {
    const page = html(<TopBar {...bar} nav={nav} />)
    expect(page).toContain('<form class="view-switcher" method="post" action="/view">')
    expect(page).toContain('name="returnTo" value="/bench?q=&quot;"')
  })

  it('shows who is signed in and the way out, or the way in', () => {
    const person = { name: 'Tess <R>', role: 'Technician' }
    const signOut = { action: '/sign-out', label: 'Sign out' }
    const inside = html(<TopBar {...bar} nav={nav} person={person} signOut={signOut} />)
    expect(inside).toContain('Tess &lt;R&gt;')
    expect(inside).toContain('<form method="post" action="/sign-out">')
    const outside = html(
      <TopBar {...bar} nav={[]} signIn={{ href: '/sign-in', label: 'Sign in' }} />,
    )
    expect(outside).toContain('href="/sign-in"')
    expect(outside).not.toContain('<nav')
  })
})
