import { bandHeightUm } from '../science/optics/band-height-um.ts'
import { bandsToHeightUm } from '../science/optics/bands-to-height-um.ts'
import { heightToBands } from '../science/optics/height-to-bands.ts'
import { type Lamp, type LampId, lampIds, lamps } from '../science/optics/lamps.ts'
import { uinToUm } from '../science/units/uin-to-um.ts'
import { umToUin } from '../science/units/um-to-uin.ts'
import { type Fields, type Input, openFields } from './fields.ts'
import { flatnessBounds } from './flatness.ts'
import type { Parsed } from './parsed.ts'

export const bandQuantities = ['bands', 'um', 'uin'] as const
export type BandQuantity = (typeof bandQuantities)[number]

const heightBoundsUm = { min: 0, max: 1000 } as const
const boundsOf = {
  bands: { min: 0, max: 1000 },
  um: heightBoundsUm,
  uin: { min: 0, max: 39_000 },
} as const

/** How many bands the table beside the answer shows. */
const tableBands: readonly number[] = [1, 2, 3, 5, 9]

export type BandRow = { readonly bands: number; readonly um: number; readonly uin: number }

export type BandConversion = {
  readonly lampId: LampId
  readonly lamp: Lamp
  readonly quantity: BandQuantity
  readonly viewingAngleDeg: number
  readonly bandHeightUm: number
  /** The value asked in all three; null where none was entered. */
  readonly answer: BandRow | null
  readonly table: readonly BandRow[]
}

/**
 * Reads a question to the calculator and answers it: `lamp`, `quantity` (which of the three the
 * value is), `value`, and `viewingAngleDeg`. What is absent is helium, bands, nothing, 0.
 */
export function convertBands(input: Input): Parsed<BandConversion> {
  const fields = openFields(input)
  const lampId = fields.optionalChoice('lamp', lampIds) ?? 'helium'
  const quantity = fields.optionalChoice('quantity', bandQuantities) ?? 'bands'
  const value = fields.optionalDecimal('value', boundsOf[quantity])
  const viewingAngleDeg =
    fields.optionalDecimal('viewingAngleDeg', flatnessBounds.viewingAngleDeg) ?? 0
  const faulty = refused(fields)
  if (faulty !== undefined) return faulty
  const view = { wavelengthNm: lamps[lampId].wavelengthNm, viewingAngleDeg }
  const rowOf = (bands: number): BandRow => {
    const um = bandsToHeightUm({ bands, ...view })
    return { bands, um, uin: umToUin(um) }
  }
  const ofHeight = (um: number): BandRow => ({
    bands: heightToBands({ heightUm: um, ...view }),
    um,
    uin: umToUin(um),
  })
  const answerOf: Readonly<Record<BandQuantity, (value: number) => BandRow>> = {
    bands: rowOf,
    um: ofHeight,
    uin: (uin) => ({ ...ofHeight(uinToUm(uin)), uin }),
  }
  return {
    ok: true,
    value: {
      lampId,
      lamp: lamps[lampId],
      quantity,
      viewingAngleDeg,
      bandHeightUm: bandHeightUm(view),
      answer: value === null ? null : answerOf[quantity](value),
      table: tableBands.map(rowOf),
    },
  }
}

function refused(
  fields: Fields,
): { readonly ok: false; readonly faults: Fields['faults'] } | undefined {
  return fields.faults.length === 0 ? undefined : { ok: false, faults: fields.faults }
}
