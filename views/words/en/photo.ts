import type { PhotoRefusalReason } from '../../../src/science/photo/photo-refusal.ts'

/** What is said of photographs of light bands. */
export const photoWords = {
  /** Why a picture gives no honest figure, and what to do about it. */
  refusal: {
    'edges-not-found':
      'The edges of the face were not found, or are not those of one ring. Set the outer and the inner edge, each by six places or more.',
    'face-cut-by-frame':
      'A part of the face lies outside the picture. The whole ring must be in it.',
    'face-too-small': 'The face is too small in the picture. Move closer, or crop less.',
    'view-too-oblique':
      'The face was seen at a slant. Photograph it squarely, from eight diameters away or more, and zoom in.',
    overexposed: 'Too much of the face is burnt out. Lower the exposure.',
    'no-clear-bands':
      'There are no clear bands. Clean face and flat, look at the lamp, and see that the flat lies on the face.',
    'lamp-of-many-colours':
      'Red, green and blue show the bands in different places: the lamp shines in more than one colour, or white light is stronger. Use a lamp of one colour, and keep other light out.',
    'too-few-bands':
      'There are too few bands to tell forms apart. Lift one side until five to twelve bands cross the face.',
    'bands-too-fine':
      'The bands are too fine for this picture. Press the wedge flatter, or zoom in.',
    'face-partly-hidden': 'Glare, a hand or dirt hides a part of the face. Take it again without.',
    'model-does-not-fit':
      'The bands do not follow one smooth surface. Look at the edges as they were set, and at the face for steps, dirt or something that hides it.',
    noisy: 'The picture is too noisy or not sharp. Take a sharper or brighter one.',
    ambiguous:
      'Two different surfaces explain this picture as well. Lift one side for more bands, or mark some bands by hand.',
    'uncertainty-too-large':
      'No useful figure comes from this picture: its uncertainty is too large. Take a sharper one with more bands.',
  } satisfies Readonly<Record<PhotoRefusalReason, string>>,
} as const
