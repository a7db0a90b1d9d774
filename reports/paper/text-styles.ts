import type { Tone } from '../../src/plots/drawing.ts'
import type { FontName } from '../fonts/font-file.ts'

export type TextStyle = {
  readonly font: FontName
  readonly sizePt: number
  /** Distance of base lines. */
  readonly leadingPt: number
  readonly tone: Tone
}

function style(font: FontName, sizePt: number, leadingPt: number, tone: Tone = 'ink'): TextStyle {
  return { font, sizePt, leadingPt, tone }
}

/** Every way in which text is set on our paper. */
export const textStyles = {
  title: style('strong', 23, 26),
  subtitle: style('regular', 10.5, 14, 'soft'),
  workshop: style('strong', 13, 16),
  verdict: style('strong', 19, 23),
  heading: style('strong', 12.5, 16, 'accent'),
  subheading: style('strong', 10, 13),
  plain: style('regular', 9, 12),
  strong: style('strong', 9, 12),
  value: style('strong', 11.5, 14.5),
  small: style('regular', 8, 10.4, 'soft'),
  label: style('regular', 8, 12, 'soft'),
  tableHead: style('strong', 8, 10.4, 'soft'),
  furniture: style('regular', 8, 10.4, 'soft'),
  marking: style('strong', 9, 12),
} as const

export type StyleName = keyof typeof textStyles
