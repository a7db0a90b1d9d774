import type { ToldMap } from '../../../src/domain/told-map.ts'
import { wholeFaceWords as w } from './whole-face.ts'
import { heightText } from './whole-face-texts.ts'

/** What is told of the three drawings to whoever doesn't see them, on pages and in documents. */
export function wholeFaceAlternatives({ highest, lowest, meanUm, around }: ToldMap): {
  readonly map: string
  readonly across: string
  readonly around: string
} {
  const um = (heightUm: number) => heightText(heightUm, 3)
  const { inner, outer } = around
  return {
    map: w.mapText(
      w.heightAt(um(highest.heightUm), String(highest.angleDeg)),
      w.heightAt(um(lowest.heightUm), String(lowest.angleDeg)),
    ),
    across: w.acrossText(um(meanUm.inner), um(meanUm.outer)),
    around: w.aroundText(
      w.fromTo(um(outer.lowestUm), um(outer.highestUm)),
      w.fromTo(um(inner.lowestUm), um(inner.highestUm)),
    ),
  }
}
