/**
 * The one small vocabulary of our drawings. A drawing is data: the page paints it as SVG, a
 * document paints it with the same coordinates, so both always show the same picture.
 */

/** What a line or area means; page and document each decide how that looks. */
export type Tone =
  | 'ink' // the thing itself: outlines, marks, words
  | 'soft' // second-rank lines and words
  | 'faint' // hairlines, areas that only carry something
  | 'paper' // whatever the drawing lies on
  | 'accent' // the one thing the drawing wants to show
  | 'bright' // a lapped face in the light of the lamp
  | 'half' // the flank of a light band
  | 'dark' // the middle of a light band

export type Dash = 'solid' | 'dashed' | 'dotted'

interface Stroke {
  readonly stroke?: Tone
  readonly strokePx?: number
  readonly dash?: Dash
}

export interface PathShape extends Stroke {
  readonly kind: 'path'
  /** Absolute M, L, A, Q, C and Z only: what SVG and PDF both understand. */
  readonly d: string
  /** Areas are filled by the even-odd rule, so a hole is a second outline. */
  readonly fill?: Tone
  /** Names the part for who must find it again: a component of the seal, a band by its order. */
  readonly part?: string
}

export interface LineShape extends Stroke {
  readonly kind: 'line'
  readonly x1: number
  readonly y1: number
  readonly x2: number
  readonly y2: number
}

export interface TextShape {
  readonly kind: 'text'
  readonly x: number
  /** Height of the base line. */
  readonly y: number
  readonly text: string
  readonly sizePx: number
  readonly anchor: 'start' | 'middle' | 'end'
  readonly tone: Tone
  readonly isStrong?: boolean
}

export type Shape = PathShape | LineShape | TextShape

export interface Drawing {
  readonly widthPx: number
  readonly heightPx: number
  readonly shapes: readonly Shape[]
}
