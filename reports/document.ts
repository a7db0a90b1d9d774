import type { Drawing } from '../src/plots/drawing.ts'
import type { VerdictKind } from '../src/plots/verdict-shape.ts'

/** A document as data: what is said and in which order. Where it lands is the drawing's affair. */
export type PaperDocument = {
  readonly title: string
  readonly subject: string
  readonly author: string
  readonly language: string
  /** RFC 3339; the only date in the file, so the same document gives the same bytes. */
  readonly createdAt: string
  readonly letterhead: Letterhead
  /** Printed small at the top of every page but the first. */
  readonly runningHead: string
  /** `{page}` and `{pages}` are filled in. */
  readonly footer: { readonly left: string; readonly right: string }
  /** A marking on every page, top and bottom; null where the data are real. */
  readonly marking: string | null
  readonly blocks: readonly Block[]
}

export type Letterhead = {
  readonly mark: Picture
  readonly name: string
  readonly lines: readonly string[]
  /** Flush right: number, revision, date. */
  readonly identity: readonly Line[]
  readonly title: string
  readonly subtitle: string
}

/** `alternative` says in words what the drawing shows. */
export type Picture = { readonly drawing: Drawing; readonly alternative: string }

/** `small` is second rank; `value` the figure that a row is about. */
export type LineStyle = 'plain' | 'strong' | 'small' | 'value'

export type Line = {
  readonly text: string
  readonly style?: LineStyle
  /** The sign of a verdict, in front of its word. */
  readonly mark?: VerdictKind
}

export type Cell = {
  readonly lines: readonly Line[]
  /** Stands at the right of the lines. */
  readonly picture?: Picture
  /** Stands under the lines. */
  readonly bar?: Picture
}

export type Column = { readonly title: string; readonly share: number }
export type Fact = { readonly label: string; readonly value: string }

export type ParagraphStyle = 'plain' | 'strong' | 'small'

export type Block =
  | { readonly kind: 'heading'; readonly text: string }
  | { readonly kind: 'subheading'; readonly text: string }
  | { readonly kind: 'paragraph'; readonly text: string; readonly style?: ParagraphStyle }
  | { readonly kind: 'list'; readonly items: readonly string[] }
  | { readonly kind: 'facts'; readonly facts: readonly Fact[] }
  | TableBlock
  | FiguresBlock
  | FigureFactsBlock
  | SummaryBlock
  | SignaturesBlock
  | { readonly kind: 'end'; readonly text: string }

export type TableBlock = {
  readonly kind: 'table'
  readonly columns: readonly Column[]
  /** Each row has as many cells as there are columns; `note` runs under them over all. */
  readonly rows: readonly { readonly cells: readonly Cell[]; readonly note?: string }[]
}

export type CaptionedPicture = { readonly picture: Picture; readonly caption: string }

/** A large picture beside smaller ones, which belong together. */
export type FiguresBlock = {
  readonly kind: 'figures'
  readonly large: CaptionedPicture
  readonly small: readonly CaptionedPicture[]
}

/** A picture beside what it says. */
export type FigureFactsBlock = {
  readonly kind: 'figure-facts'
  /** An empty caption takes no room. */
  readonly figure: CaptionedPicture
  readonly facts: readonly Fact[]
}

export type SummaryBlock = {
  readonly kind: 'summary'
  readonly verdict: VerdictKind
  readonly word: string
  readonly sentence: string
  readonly facts: readonly Fact[]
  readonly code: {
    readonly url: string
    readonly alternative: string
    /** How to check without a camera. */
    readonly sentence: string
  }
}

export type SignaturesBlock = {
  readonly kind: 'signatures'
  readonly people: readonly { readonly heading: string; readonly lines: readonly Line[] }[]
}
