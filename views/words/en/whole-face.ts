import type { WholeFaceKind } from '../../../src/domain/whole-face.ts'
import type { PhotoCaution } from '../../../src/science/photo/photo-reading.ts'

/** What is said of a face that was read as a whole. */
export const wholeFaceWords = {
  mapTitle: 'Map of the face',
  mapOf: (face: string, condition: string, at: string) => `Map: ${face}, ${condition}, ${at}`,
  contours: 'Contours of the face',
  mapText: (peak: string, valley: string) =>
    `Contour lines of the face: highest ${peak} µm, lowest ${valley} µm from the least-squares plane.`,
  legend:
    'Heights in µm from the least-squares plane, 0° to the right of the photograph. Solid lines stand above the plane, dashed ones below, where it is shaded; the heavy line is the plane. The full triangle is the highest place, the hollow one the lowest.',
  drawnWider: 'The land is drawn wider than it is, so that its lines have room.',
  upsideDown:
    'Which way up is not determined: nobody saw which way the gap opens. The map may be upside down; flatness, waves and the size of the taper are not touched by that.',
  acrossTitle: 'Across the land',
  acrossText: 'Profile across the land, from the inner to the outer edge.',
  aroundTitle: 'Around the land',
  aroundText: 'Profile around the land, at its outer edge, its middle and its inner edge.',
  height: 'µm',
  across: { mean: 'mean', ray: (deg: string) => `at ${deg}°`, across: 'radius, mm', unit: 'µm' },
  around: {
    outer: 'outer edge',
    middle: 'middle',
    inner: 'inner edge',
    across: 'angle',
    unit: 'µm',
  },
  figures: {
    how: 'How it was read',
    minimumZone: 'Flatness, minimum zone',
    rms: 'RMS',
    taper: 'Taper, outer less inner edge',
    lobe: (count: number) =>
      count === 2 ? 'Two waves around' : `${count === 3 ? 'Three' : count} waves around`,
    wave: (amplitude: string, phase: string) => `± ${amplitude} µm, high at ${phase}°`,
    quality: 'Seen and explained',
    percent: (share: string) => `${share} %`,
    diameters: 'Face, outer and inner diameter',
    diametersMm: (outer: string, inner: string) => `${outer} and ${inner} mm`,
  },
  notDetermined: 'direction not determined',
  sizeOnly: (um: string) => `${um} µm, direction not determined`,
  reference:
    'Flatness is the height from the lowest to the highest place over the least-squares plane.',
  kind: {
    photo: 'read from a photograph',
    marked: 'fitted to bands that were marked on a photograph',
    'line-grid': 'read with a grid of lines on a photograph',
    combined: 'combined from several readings',
  } satisfies Readonly<Record<WholeFaceKind, string>>,
  kindSentence: {
    photo: 'The program found the bands in a photograph.',
    marked: 'Bands were marked on a photograph.',
    'line-grid': 'A grid of lines was laid over a photograph.',
    combined: 'Several readings of this face were combined.',
  } satisfies Readonly<Record<WholeFaceKind, string>>,
  lineGrid: (one: string, other: string) =>
    `The largest departures of a band from its line were ${one} bands one way and ${other} bands the other way. No surface was fitted, so there is no map.`,
  caution: {
    'local-defect-or-step':
      'A place does not follow the surface: a chip, a scratch or a step? Look at it before the face is released.',
    'outer-edge-as-set':
      'The outer edge could not be followed in the photograph: it stands as it was set.',
    'inner-edge-as-set':
      'The inner edge could not be followed in the photograph: it stands as it was set.',
  } satisfies Readonly<Record<PhotoCaution, string>>,
  cautionAt: (degrees: string) => `At ${degrees}, counter-clockwise from the right.`,
  seenTitle: 'What was seen',
  seenText:
    'The photograph with the middles of the dark bands as they were found, each with its order.',
  residualTitle: 'What the surface leaves unexplained',
  residualText: (light: string, middle: string, dark: string) =>
    `By rings and sectors: light, middle and dark where the light differs from the fitted bands by ${light}, ${middle} and ${dark} % of their swing or more. Crossed: not seen.`,
  sourceTitle: 'Where it comes from',
  photo: 'Photograph',
  openPhoto: 'Open the photograph',
  marks: (count: number) => `${count} places were marked.`,
  repeat: 'Compute it again from the record',
  repeated: 'Computed again from what is stored: every figure is the same, bit for bit.',
  repeatedOther:
    'Computed again from what is stored, the figures differ from the record. The record stands as it was made by its own version of the method.',
} as const
