import type { EdgeValues, FacePhotoValues } from '../../../views/face-photo/form-values.ts'
import type { Input } from '../../domain/fields.ts'
import type { FlatnessReading } from '../../domain/flatness.ts'
import type { Ellipse } from '../../science/photo/ellipse.ts'
import { lastInstruments } from '../../store/last-instruments.ts'
import type { AppContext } from '../context.ts'
import { nestedText } from '../nested-text.ts'
import { typedText } from '../typed-text.ts'
import { viewer } from '../viewer.ts'
import type { PhotoDesk } from './desk.ts'

const nothing = { cx: '', cy: '', rx: '', ry: '', rotationDeg: '' }

/** A fresh form: the program reads the photograph, with its own edges and the tools in hand last. */
export function freshPhotoValues(c: AppContext, desk: PhotoDesk): FacePhotoValues {
  const last = lastInstruments(c.var.shop.store, viewer(c).id)
  const { foundEdges } = desk.photo
  return {
    ...photoValuesOfInput({ kind: 'photo', condition: 'as-left' }),
    lampInstrumentId: text(last.lampInstrumentId),
    opticalFlatInstrumentId: text(last.flatInstrumentId),
    outerDiameterMm: text(desk.face.outerDiameterMm),
    innerDiameterMm: text(desk.face.innerDiameterMm),
    outer: edgeValues(foundEdges?.outer),
    inner: edgeValues(foundEdges?.inner),
  }
}

/** The form filled with what an earlier reading says, to be corrected. */
export function photoValuesOfReading(reading: FlatnessReading, desk: PhotoDesk): FacePhotoValues {
  const { wholeFace } = reading
  const source = wholeFace?.source
  const values: FacePhotoValues = {
    ...photoValuesOfInput({ kind: 'photo', condition: reading.condition }),
    lampInstrumentId: text(reading.lampInstrumentId),
    opticalFlatInstrumentId: text(reading.flatInstrumentId),
    outerDiameterMm: text(wholeFace?.outerDiameterMm ?? desk.face.outerDiameterMm),
    innerDiameterMm: text(wholeFace?.innerDiameterMm ?? desk.face.innerDiameterMm),
    outer: edgeValues(desk.photo.foundEdges?.outer),
    inner: edgeValues(desk.photo.foundEdges?.inner),
    soakMin: text(reading.soakMin),
    temperatureC: text(reading.temperatureC),
    note: reading.note,
  }
  if (source === undefined || source.kind === 'combined') return values
  if (source.kind === 'line-grid') {
    return {
      ...values,
      kind: source.kind,
      gridDirectionDeg: text(source.directionDeg),
      gridSpacingPx: text(source.spacingPx),
      gridOffsetPx: text(source.offsetPx),
      oneWayBands: text(source.oneWayBands),
      otherWayBands: text(source.otherWayBands),
    }
  }
  const edges = { outer: edgeValues(source.outer), inner: edgeValues(source.inner) }
  if (source.kind === 'marked') {
    const points = source.points.map(({ x, y, order }) => `${x} ${y} ${order}`).join('\n')
    const increasingTowards = source.increasingTowards ?? ''
    return { ...values, ...edges, kind: source.kind, points, increasingTowards }
  }
  const { wedge, pressed } = source
  const opensTowardsDeg =
    wedge !== null && 'opensTowardsDeg' in wedge ? text(wedge.opensTowardsDeg) : ''
  return { ...values, ...edges, opensTowardsDeg, pressedPhotoId: text(pressed?.photoId) }
}

/** What was typed, to be shown again. */
export function photoValuesOfInput(input: Input): FacePhotoValues {
  return {
    kind: typedText(input.kind),
    condition: typedText(input.condition),
    lampInstrumentId: typedText(input.lampInstrumentId),
    opticalFlatInstrumentId: typedText(input.opticalFlatInstrumentId),
    outerDiameterMm: typedText(input.outerDiameterMm),
    innerDiameterMm: typedText(input.innerDiameterMm),
    outer: typedEdge(input.outer),
    inner: typedEdge(input.inner),
    points: typedText(input.points),
    increasingTowards: typedText(input.increasingTowards),
    opensTowardsDeg: typedText(input.opensTowardsDeg),
    pressedPhotoId: typedText(input.pressedPhotoId),
    gridDirectionDeg: typedText(input.gridDirectionDeg),
    gridSpacingPx: typedText(input.gridSpacingPx),
    gridOffsetPx: typedText(input.gridOffsetPx),
    oneWayBands: typedText(input.oneWayBands),
    otherWayBands: typedText(input.otherWayBands),
    soakMin: typedText(input.soakMin),
    temperatureC: typedText(input.temperatureC),
    note: typedText(input.note),
    reason: typedText(input.reason),
    confirmBeyondWindow: typedText(input.confirmBeyondWindow),
  }
}

function typedEdge(part: unknown): EdgeValues {
  return {
    cx: nestedText(part, 'cx'),
    cy: nestedText(part, 'cy'),
    rx: nestedText(part, 'rx'),
    ry: nestedText(part, 'ry'),
    rotationDeg: nestedText(part, 'rotationDeg'),
  }
}

function edgeValues(edge: Ellipse | undefined): EdgeValues {
  if (edge === undefined) return nothing
  return {
    cx: text(edge.cx),
    cy: text(edge.cy),
    rx: text(edge.rx),
    ry: text(edge.ry),
    rotationDeg: text(edge.rotationDeg),
  }
}

function text(value: number | null | undefined): string {
  return value === null || value === undefined ? '' : String(value)
}
