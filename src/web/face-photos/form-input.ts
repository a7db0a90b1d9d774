import type { Input } from '../../domain/fields.ts'
import { typedText } from '../typed-text.ts'

const edgeNames = ['cx', 'cy', 'rx', 'ry', 'rotationDeg'] as const
const common = [
  'kind',
  'condition',
  'lampInstrumentId',
  'opticalFlatInstrumentId',
  'outerDiameterMm',
  'innerDiameterMm',
  'soakMin',
  'temperatureC',
  'note',
  'replacesId',
  'reason',
  'confirmBeyondWindow',
] as const

/**
 * What the form of a photograph says, as the machine interface would say it. Only the fields of the
 * kind that was chosen count; those of the others wait in the page.
 */
export function formInput(input: Input): Input {
  const given = Object.fromEntries(
    common.filter((name) => name in input).map((name) => [name, input[name]]),
  )
  const kind = typedText(input.kind)
  if (kind === 'line-grid') return { ...given, grid: gridOf(input) }
  const edges = { ...edgeOf(input, 'outer'), ...edgeOf(input, 'inner') }
  if (kind === 'marked') {
    const increasingTowards = typedText(input.increasingTowards)
    return { ...given, ...edges, points: marksOf(typedText(input.points)), increasingTowards }
  }
  const opensTowardsDeg = typedText(input.opensTowardsDeg).trim()
  const pressedPhotoId = typedText(input.pressedPhotoId).trim()
  return {
    ...given,
    ...edges,
    ...(opensTowardsDeg === '' ? {} : { wedge: { opensTowardsDeg } }),
    ...(pressedPhotoId === '' ? {} : { pressedPhotoId }),
  }
}

/** An edge of which nothing was typed is the one that was found. */
function edgeOf(input: Input, name: 'outer' | 'inner'): Input {
  const part = input[name]
  if (typeof part !== 'object' || part === null || Array.isArray(part)) return {}
  const typed = Object.fromEntries(edgeNames.map((one) => [one, typedText((part as Input)[one])]))
  return Object.values(typed).every((one) => one.trim() === '') ? {} : { [name]: typed }
}

/** A mark a line: across, down, order; a line that is none is a mark with its faults. */
function marksOf(text: string): readonly Input[] {
  return text
    .split('\n')
    .map((line) => line.trim())
    .filter((line) => line !== '')
    .map((line) => {
      const [x = '', y = '', order = '', ...more] = line.split(/[\s;]+/)
      return { x, y, order: more.length === 0 ? order : more.join(' ') }
    })
}

function gridOf(input: Input): Input {
  return {
    directionDeg: typedText(input.gridDirectionDeg),
    spacingPx: typedText(input.gridSpacingPx),
    offsetPx: typedText(input.gridOffsetPx),
    oneWayBands: typedText(input.oneWayBands),
    otherWayBands: typedText(input.otherWayBands),
  }
}
