import { lampIds, lamps } from '../science/optics/lamps.ts'
import { umToUin } from '../science/units/um-to-uin.ts'
import { appliedLimitOf } from './applied-limit-of.ts'
import { certifiedJudgement, certifiedLimit, printedRounding } from './certified-judgement.ts'
import type { CertifiedFace, CertifiedFlatness } from './certified-results.ts'
import { certifiedWholeFace } from './certified-whole-face.ts'
import { currentOnly } from './current-only.ts'
import { cycleBefore } from './cycle-before.ts'
import type { Evidence } from './evidence.ts'
import { figure, optionalFigure } from './figure.ts'
import type { FlatnessReading, ReadingCondition } from './flatness.ts'
import { judgeFlatness } from './judge-flatness.ts'
import { type Component, type FaceKind, faceKinds } from './seal.ts'
import { standingReadings } from './standing.ts'

/** Of records older than budgets; about 95 % for a normal distribution. */
const usualFactor = 2

/** Each lapped face of the seal with the readings that speak for it. */
export function certifiedFaces(evidence: Evidence): readonly CertifiedFace[] {
  const standing = standingReadings(evidence)
  return faceKinds.flatMap((kind) => {
    const component = evidence.seal.components.find((one) => one.kind === kind)
    return component === undefined ? [] : [certifiedFace(evidence, component, kind, standing)]
  })
}

function certifiedFace(
  evidence: Evidence,
  component: Component,
  kind: FaceKind,
  standing: readonly FlatnessReading[],
): CertifiedFace {
  const certify = (one: FlatnessReading): CertifiedFlatness => certifiedFlatness(one, evidence)
  const speaking = standing.filter((one) => one.componentId === component.id)
  const beside = speaking.filter(
    (one) =>
      one.sees === 'taper' &&
      speaking.some((other) => other !== one && other.condition === one.condition),
  )
  const standingOf = (condition: ReadingCondition): CertifiedFlatness | null => {
    const found = speaking.filter((one) => one.condition === condition)
    const first = found.find((one) => one.sees === 'whole-surface') ?? found[0]
    return first === undefined ? null : certify(first)
  }
  const limit = appliedLimitOf('flatness', evidence, { componentId: component.id })?.limit
  const mine = currentOnly(evidence.flatnessReadings).filter(
    (one) => one.componentId === component.id,
  )
  return {
    kind,
    material: component.material,
    outerDiameterMm: optionalFigure(component.outerDiameterMm, 'as-entered'),
    innerDiameterMm: optionalFigure(component.innerDiameterMm, 'as-entered'),
    limit: limit === undefined ? null : certifiedLimit(limit),
    asFound: standingOf('as-found'),
    asLeft: standingOf('as-left'),
    ...(beside.length === 0 ? {} : { beside: beside.map(certify) }),
    earlier: mine.filter((one) => !standing.includes(one)).map(certify),
  }
}

function certifiedFlatness(reading: FlatnessReading, evidence: Evidence): CertifiedFlatness {
  const { flatnessUm, standardUncertaintyUm, wavelengthNm, uncertainty } = reading
  const coverageFactor = uncertainty?.coverageFactor ?? usualFactor
  const before = cycleBefore(reading, {
    readings: evidence.flatnessReadings,
    cycles: evidence.lapCycles,
  })
  const expandedUm = standardUncertaintyUm === null ? null : coverageFactor * standardUncertaintyUm
  return {
    ...certifiedJudgement(judgeFlatness(reading, evidence)),
    condition: reading.condition,
    pattern: reading.pattern,
    form: reading.form,
    ringCentre: reading.ringCentre,
    unreadableCause: reading.unreadableCause,
    ...(reading.wholeFace === null ? {} : { wholeFace: certifiedWholeFace(reading.wholeFace) }),
    ...(before === null ? {} : { afterCycle: before.number }),
    directions: reading.directions.map(({ directionDeg, bands, bandsTyped }) => ({
      directionDeg,
      bands,
      bandsTyped,
    })),
    bands: optionalFigure(reading.bands, { decimals: 2 }),
    flatnessUm: optionalFigure(flatnessUm, printedRounding.flatness),
    flatnessUin: optionalFigure(
      flatnessUm === null ? null : umToUin(flatnessUm),
      printedRounding.uin,
    ),
    expandedUncertaintyUm: optionalFigure(expandedUm, { digits: 2 }),
    coverageFactor,
    lampId: lampIds.find((id) => lamps[id].wavelengthNm === wavelengthNm) ?? null,
    wavelengthNm: figure(wavelengthNm, 'as-entered'),
    bandHeightUm: figure(reading.bandHeightUm, { decimals: 4 }),
    // Of a photograph it follows from the shape of the edge.
    viewingAngleDeg: figure(
      reading.viewingAngleDeg,
      reading.wholeFace === null ? 'as-entered' : { decimals: 1 },
    ),
    soakMin: optionalFigure(reading.soakMin, 'as-entered'),
    temperatureC: optionalFigure(reading.temperatureC, 'as-entered'),
    note: reading.note,
    method: reading.method,
    lampNumber: reading.lamp.number,
    flatNumber: reading.flat.number,
    recordedByName: reading.recordedByName,
    recordedAt: reading.recordedAt,
  }
}
