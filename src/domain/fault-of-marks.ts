import type { MarksRefusal } from '../science/marks/marks-refusal.ts'
import type { Fault } from './fault.ts'

/** Which field a refusal of marks is about, with what its sentence needs. */
export function faultOfMarks({ reason, markIndex, limit, gapDeg }: MarksRefusal): Fault {
  const point = `points[${markIndex ?? 0}]`
  switch (reason) {
    case 'edges-not-one-ring':
      return { field: 'inner', kind: reason }
    case 'view-too-oblique':
      return { field: 'outer', kind: reason }
    case 'mark-off-land':
      return { field: point, kind: reason }
    case 'mark-does-not-fit':
      return { field: `${point}.order`, kind: reason }
    case 'too-few-marks':
      return { field: 'points', kind: 'too-few', with: { min: limit } }
    case 'too-few-orders':
      return { field: 'points', kind: reason, with: { min: limit } }
    case 'marks-leave-gap': {
      const [fromDeg, toDeg] = gapDeg ?? [0, 360]
      const ends = { fromDeg: Math.round(fromDeg), toDeg: Math.round(toDeg) }
      return { field: 'points', kind: reason, with: ends }
    }
    case 'marks-leave-edge':
      return { field: 'points', kind: reason, with: { min: limit } }
  }
}
