import { judgeFlatness } from '../../../src/domain/judge-flatness.ts'
import type { WholeFace } from '../../../src/domain/whole-face.ts'
import type { WholeFaceAnswer } from '../../../src/domain/whole-face-answer.ts'
import type { FacePhotoValues } from '../../../views/face-photo/form-values.ts'
import type { FacePhotoForm } from '../../../views/face-photo/page-props.ts'
import { buildFlatnessReading } from '../../support/build-flatness-reading.ts'
import { buildJudgeContext } from '../../support/build-judge-context.ts'
import { buildComponent } from '../../support/build-seal.ts'
import { buildWholeFace } from '../../support/build-whole-face.ts'

type Figures = Extract<WholeFaceAnswer['outcome'], { kind: 'figures' }>

const edges = {
  outer: { cx: 500, cy: 400, rx: 300, ry: 298, rotationDeg: 0 },
  inner: { cx: 500, cy: 400, rx: 240, ry: 239, rotationDeg: 0 },
}
const texts = { cx: '500', cy: '400', rotationDeg: '0' }

/** The form of a photograph of 1000 by 800 pixels on which both edges were found, 60 by 48 mm. */
export function buildPhotoForm(
  values: Partial<FacePhotoValues> = {},
  changes: Partial<FacePhotoForm> = {},
): FacePhotoForm {
  return {
    orderNumber: 'W-2026-0001',
    sealSerial: 'S-1',
    limitSetName: 'House',
    photo: {
      id: 1,
      workOrderId: 1,
      componentId: 11,
      faceKind: 'rotating-face',
      sha256: 'a'.repeat(64),
      mediaType: 'image/jpeg',
      widthPx: 1000,
      heightPx: 800,
      foundEdges: edges,
      note: '',
      recordedById: 1,
      recordedByName: 'Tess',
      recordedAt: '2026-11-24T09:00:00.000Z',
    },
    pictureHref: '/work-orders/W-2026-0001/face-photos/1/picture',
    face: buildComponent({ outerDiameterMm: 60, innerDiameterMm: 48 }),
    others: [],
    choice: { orderNumber: 'W-2026-0001', instruments: [], exceptions: [], day: '2026-11-24' },
    values: {
      kind: 'photo',
      condition: 'as-left',
      lampInstrumentId: '1',
      opticalFlatInstrumentId: '2',
      outerDiameterMm: '60',
      innerDiameterMm: '48',
      outer: { ...texts, rx: '300', ry: '298' },
      inner: { ...texts, rx: '240', ry: '239' },
      points: '',
      increasingTowards: '',
      opensTowardsDeg: '',
      pressedPhotoId: '',
      gridDirectionDeg: '',
      gridSpacingPx: '',
      gridOffsetPx: '',
      oneWayBands: '',
      otherWayBands: '',
      soakMin: '',
      temperatureC: '',
      note: '',
      reason: '',
      confirmBeyondWindow: '',
      ...values,
    },
    formKey: 'k',
    faults: [],
    answer: null,
    replaced: null,
    ...changes,
  }
}

/** What the program says of a face of 2 bands. */
export function buildFigures(
  wholeFace: Partial<WholeFace> = {},
  press: Figures['press'] = null,
): WholeFaceAnswer {
  const computed = buildFlatnessReading()
  const judged = judgeFlatness(computed, buildJudgeContext())
  const figures = { computed, judged, press, wholeFace: buildWholeFace(wholeFace) }
  return { uses: [], outcome: { kind: 'figures', ...figures } }
}
