import type { WholeFaceKind } from '../../../src/domain/whole-face.ts'
import type { PhotoCaution } from '../../../src/science/photo/photo-reading.ts'

/** What is said of a face that was read as a whole. */
export const wholeFaceWords = {
  mapTitle: 'Map of the face',
  mapOf: (face: string, condition: string, at: string) => `Map: ${face}, ${condition}, ${at}`,
  contours: 'Contours of the face',
  mapText: (peak: string, valley: string) =>
    `Contour lines of the face. Highest: ${peak}. Lowest: ${valley}. Heights from the least-squares plane, angles counter-clockwise from the right.`,
  heightAt: (um: string, deg: string) => `${um} µm at ${deg}°`,
  fromTo: (low: string, high: string) => `from ${low} to ${high} µm`,
  legend:
    'Heights in µm from the least-squares plane, 0° to the right of the photograph. Solid lines stand above the plane, dashed ones below, where it is shaded; the heavy line is the plane. The full triangle is the highest place, the hollow one the lowest.',
  drawnWider: 'The land is drawn wider than it is, so that its lines have room.',
  narrowDrawnWider: 'A narrow land is drawn wider than it is, so that its lines have room.',
  upsideDownMap:
    'A map whose direction is not determined may be upside down: nobody saw which way the gap opens. Its flatness, its waves and the size of its taper are not touched by that.',
  upsideDown:
    'Which way up is not determined: nobody saw which way the gap opens. The map may be upside down; flatness, waves and the size of the taper are not touched by that.',
  acrossTitle: 'Across the land',
  acrossText: (inner: string, outer: string) =>
    `Profile across the land: the mean around is ${inner} µm at the inner and ${outer} µm at the outer edge.`,
  aroundTitle: 'Around the land',
  aroundText: (outer: string, inner: string) =>
    `Profile around the land: its outer edge lies ${outer}, its inner edge ${inner}.`,
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
    taper: 'Taper, outer − inner',
    lobe: (count: number) =>
      count === 2 ? 'Two waves around' : `${count === 3 ? 'Three' : count} waves around`,
    um: (text: string) => `${text} µm`,
    wave: (amplitude: string, phase: string) => `± ${amplitude} µm, high at ${phase}°`,
    waveEitherWay: (amplitude: string, phase: string) =>
      `± ${amplitude} µm, high or low at ${phase}°`,
    noWave: (amplitude: string) => `± ${amplitude} µm`,
    flatness: 'Flatness, least squares',
    flatnessByLines: 'Flatness, grid of lines',
    quality: 'Seen and explained',
    percent: (share: string) => `${share} %`,
    diameters: 'Face, outer and inner diameter',
    diametersMm: (outer: string, inner: string) => `${outer} and ${inner} mm`,
  },
  notDetermined: 'direction not determined',
  sizeOnly: (um: string) => `${um} µm, direction not determined`,
  reference:
    'Flatness of the whole surface is the height from its lowest to its highest place, over the least-squares plane. The minimum zone, between the two closest parallel planes, is given beside it. Neither may be compared with a flatness by line count.',
  referenceLineGrid:
    'Flatness of the whole surface is here the sum of the largest departures both ways, from straight lines laid by hand. It may not be compared with a flatness by line count.',
  judged: (um: string, uncertainty: string) => `${um} ± ${uncertainty} µm, this one was judged`,
  kind: {
    photo: 'read from a photograph',
    marked: 'fitted to bands that were marked on a photograph',
    'line-grid': 'read with a grid of lines on a photograph',
    combined: 'combined from several readings',
  } satisfies Readonly<Record<WholeFaceKind, string>>,
  marksAlone: 'A program sent marked bands, without the photograph that they were marked on.',
  keptMarks: (method: string) =>
    `The marks are kept with all that was set, and can be computed again (${method}); the photograph itself was not sent.`,
  sign: {
    seen: 'Which side the gap opens was seen at the lamp, by the way in which the bands moved.',
    pressed:
      'Which side the gap opens follows from a second photograph, taken while the flat was pressed.',
    orders: 'Which side the gap opens was stated with the orders of the marked bands.',
  },
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
  seenTitle: {
    photo: 'What was seen',
    marked: 'What was marked',
    'line-grid': 'How the lines were laid',
    combined: '',
  } satisfies Readonly<Record<WholeFaceKind, string>>,
  seenText: {
    photo:
      'The photograph with both edges, and with the middles of the dark bands as they were found, each with its order.',
    marked:
      'The photograph with both edges, and with the places that were marked, each with the order of its band; halves are bright.',
    'line-grid': 'The photograph with the grid of lines as it was laid.',
    combined: '',
  } satisfies Readonly<Record<WholeFaceKind, string>>,
  doubtful: 'A place with a question mark does not follow the surface.',
  residualTitle: 'What the surface leaves unexplained',
  residualText:
    'By rings and sectors, as the face lies in the photograph: the larger a block, the more the light differs from that of the fitted bands, in percent of their swing.',
  residualAlternative: (share: string, least: string) =>
    `Map of the residuals: ${share} % of what was seen differs by ${least} % of the swing or more.`,
  residualKey: {
    from: (percent: string) => `${percent} % or more`,
    unseen: 'not seen',
  },
  sourceTitle: 'Where it comes from',
  photo: 'Photograph',
  openPhoto: 'Open the photograph',
  marks: (count: number) => `${count} places were marked.`,
  kept: (method: string) =>
    `The photograph is kept with all that was set on it, and so is the version of the method, ${method}: every figure can be computed again, bit for bit.`,
  keptParts: (method: string) =>
    `The readings that it was combined from are kept, and so is the version of the method, ${method}.`,
  repeat: 'Compute it again from the record',
  repeated: 'Computed again from what is stored: every figure is the same, bit for bit.',
  repeatedOther:
    'Computed again from what is stored, the figures differ from the record. The record stands as it was made by its own version of the method.',
} as const
