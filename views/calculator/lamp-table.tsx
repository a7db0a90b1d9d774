import type { FC } from 'hono/jsx'
import type { BandConversion } from '../../src/domain/band-conversion.ts'
import { formatFixed } from '../../src/science/rounding/format-fixed.ts'
import { DataTable } from '../components/data-table.tsx'
import { Facts } from '../components/facts.tsx'
import { numberText } from '../figures/number-text.ts'
import { words } from '../words/en.ts'
import { printed } from './answer.tsx'

/** The lamp's wavelength with its source, and the counts that are asked most. */
export const LampTable: FC<{
  conversion: BandConversion | null
  isSwap?: boolean
}> = ({ conversion, isSwap }) => {
  return (
    <section
      class="stack lamp-table"
      id="lamp-table"
      {...(isSwap ? { 'hx-swap-oob': 'true' } : {})}
    >
      {conversion === null ? null : <Shown conversion={conversion} />}
    </section>
  )
}

const Shown: FC<{ conversion: BandConversion }> = ({ conversion }) => {
  const { calculator: w, trade } = words
  const { lamp, lampId, viewingAngleDeg, table } = conversion
  const height = formatFixed({ value: conversion.bandHeightUm, decimals: 4 })
  const atAngle = viewingAngleDeg === 0 ? '' : `, ${w.atAngle(numberText(viewingAngleDeg))}`
  return (
    <>
      <h2 class="section-head">{w.tableTitle(trade.lamp[lampId])}</h2>
      <Facts
        layout="rows"
        pairs={[
          { label: w.wavelength, value: `${numberText(lamp.wavelengthNm)} ${trade.unit.nm}` },
          { label: w.bandHeight, value: `${height} ${trade.unit.um}${atAngle}` },
          { label: w.basis, value: trade.limitBasis[lamp.basis] },
          { label: w.source, value: lamp.source },
        ]}
      />
      <DataTable
        caption={w.tableTitle(trade.lamp[lampId])}
        isCaptionHidden
        keepsColumns
        columns={[
          { label: w.bands, kind: 'number' },
          { label: trade.unit.um, kind: 'number' },
          { label: trade.unit.uin, kind: 'number' },
        ]}
        rows={table.map((row) => ({
          cells: [numberText(row.bands), printed(row, 'um').value, printed(row, 'uin').value],
        }))}
      />
      <p class="small soft">{w.note}</p>
    </>
  )
}
