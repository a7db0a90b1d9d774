/** How sure a wavelength is; shown wherever the lamp is chosen. */
export type LampBasis = 'published' | 'from memory' | 'common practice, no source'

/** How sure a half width is. */
export type HalfWidthBasis = 'own derivation' | 'common practice, no source'

/** A lamp and the wavelength in air its bands are counted with. */
export interface Lamp {
  readonly wavelengthNm: number
  readonly basis: LampBasis
  readonly source: string
  /** How far the wavelength of the lamp in use may be from this one, to either side. */
  readonly halfWidthNm: number
  readonly halfWidthBasis: HalfWidthBasis
}

export const lampIds = [
  'helium',
  'sodium',
  'sodium-d1',
  'sodium-d2',
  'mercury-green',
  'mercury-blue',
  'cadmium-red',
  'helium-neon-red',
  'helium-neon-green',
  'green-led-520',
  'green-led-525',
  'green-led-530',
  'white',
] as const

export type LampId = (typeof lampIds)[number]

const lines = 'Optics encyclopedia, table of standard spectral lines'
const ledPractice = 'Nominal value; read the peak wavelength from the data of the lamp in use'

/** A line of a discharge lamp or laser is far narrower than this; so much a table may round. */
const line = { halfWidthNm: 0.05, halfWidthBasis: 'common practice, no source' } as const
/** From lamp to lamp and as it warms; its own band is wider and blurs, but shifts no fringe. */
const led = { halfWidthNm: 5, halfWidthBasis: 'common practice, no source' } as const
const white = { halfWidthNm: 10, halfWidthBasis: 'common practice, no source' } as const
/** Both D lines shine, unequally: the mean lies within half their distance of 0.597 nm. */
const bothLines = { halfWidthNm: 0.3, halfWidthBasis: 'own derivation' } as const

type HalfWidth = Pick<Lamp, 'halfWidthNm' | 'halfWidthBasis'>

function published(wavelengthNm: number, source: string, halfWidth: HalfWidth = line): Lamp {
  return { wavelengthNm, basis: 'published', source, ...halfWidth }
}

function remembered(wavelengthNm: number, source: string): Lamp {
  return { wavelengthNm, basis: 'from memory', source, ...line }
}

function practice(wavelengthNm: number, source: string): Lamp {
  return { wavelengthNm, basis: 'common practice, no source', source, ...led }
}

/**
 * The lamps of the trade. Wavelengths are those in air, so no refractive index is applied: the
 * change of air from shop to shop is below 1e-5. The height of a band is derived, never stored.
 * Half widths are what an uncertainty budget may take where nothing better is known of the lamp.
 */
export const lamps: Readonly<Record<LampId, Lamp>> = {
  helium: published(587.5618, `${lines}: helium, d line`),
  sodium: published(589.2938, `${lines}: sodium, mean of the D lines`, bothLines),
  'sodium-d1': remembered(589.592, 'NIST Atomic Spectra Database, sodium D1'),
  'sodium-d2': remembered(588.995, 'NIST Atomic Spectra Database, sodium D2'),
  'mercury-green': published(546.074, `${lines}: mercury, e line`),
  'mercury-blue': published(435.8343, `${lines}: mercury, g line`),
  'cadmium-red': published(643.8469, `${lines}: cadmium, C' line`),
  'helium-neon-red': published(632.8, `${lines}: helium-neon laser, red`),
  'helium-neon-green': published(543.5, `${lines}: helium-neon laser, green`),
  'green-led-520': practice(520, ledPractice),
  'green-led-525': practice(525, ledPractice),
  'green-led-530': practice(530, ledPractice),
  white: published(
    540,
    'Encyclopedia article on the plane test glass: about 0.27 µm a band',
    white,
  ),
}
