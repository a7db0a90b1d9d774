import type { CertificateRecord } from '../../src/domain/certificate.ts'
import type {
  CertifiedFace,
  CertifiedFlatness,
  CertifiedStaticTest,
} from '../../src/domain/certified-results.ts'
import { standardBarometerKPa } from '../../src/domain/parse-static-test-common.ts'
import { certificateWords } from '../../views/words/en/certificate.ts'
import { lappingWords } from '../../views/words/en/lapping.ts'
import { tradeWords as trade } from '../../views/words/en/trade.ts'
import { wholeFaceWords } from '../../views/words/en/whole-face.ts'
import type { Block, Cell, Line, TableBlock } from '../document.ts'
import { lampName } from './flatness-results.ts'
import { printDay, printDuration, printMoment } from './print-when.ts'

const { conditions: words, results, item, ...common } = certificateWords

/** How each valid result came about: what was read, with what, under which conditions. */
export function conditionBlocks(record: CertificateRecord): readonly Block[] {
  const readings = record.faces.flatMap((face) => readingsOf(face))
  return [
    { kind: 'heading', text: words.heading },
    { kind: 'subheading', text: words.readings },
    ...(readings.length === 0
      ? [{ kind: 'paragraph', text: common.notMeasured } as const]
      : [
          table(
            words.readingColumns,
            [100, 126, 136, 98],
            readings.map(({ face, reading }) => row(readingCells(face, reading), reading.note)),
          ),
        ]),
    ...(record.staticTests.length === 0
      ? []
      : [
          { kind: 'subheading', text: words.tests } as const,
          table(
            words.testColumns,
            [104, 132, 120, 104],
            record.staticTests.map((test) => row(testCells(test), test.note)),
          ),
        ]),
  ]
}

function table(
  titles: readonly string[],
  shares: readonly number[],
  rows: TableBlock['rows'],
): TableBlock {
  const columns = titles.map((title, index) => ({ title, share: shares[index] ?? 1 }))
  return { kind: 'table', columns, rows }
}

function row(cells: readonly Cell[], note: string): TableBlock['rows'][number] {
  return note.trim() === '' ? { cells } : { cells, note: words.note(note) }
}

function cell(first: string, ...more: readonly string[]): Cell {
  const lines: readonly Line[] = [first, ...more].map((text) => ({ text }))
  return { lines }
}

function readingsOf(face: CertifiedFace) {
  return [face.asFound, ...face.earlier, ...(face.beside ?? []), face.asLeft]
    .filter((reading) => reading !== null)
    .sort((a, b) => Date.parse(a.recordedAt) - Date.parse(b.recordedAt))
    .map((reading) => ({ face, reading }))
}

function readingCells(face: CertifiedFace, reading: CertifiedFlatness): readonly Cell[] {
  const { flatnessUm, flatnessUin, bands, ringCentre, pattern, directions } = reading
  const counted = directions
    .map((one) => words.direction(one.directionDeg, one.bandsTyped || String(one.bands)))
    .join(', ')
  const isEarlier = face.earlier.includes(reading)
  const isBeside = face.beside?.includes(reading) === true
  return [
    {
      lines: [
        { text: item.componentKinds[face.kind], style: 'strong' },
        { text: reading.condition === 'as-found' ? results.asFound : results.asLeft },
        { text: printMoment(reading.recordedAt) },
        ...(reading.afterCycle === undefined
          ? []
          : [{ text: lappingWords.afterCycle(reading.afterCycle) }]),
        ...(isEarlier ? [{ text: words.overtaken, style: 'small' } as const] : []),
        ...(isBeside ? [{ text: words.beside, style: 'small' } as const] : []),
      ],
    },
    cell(
      words.pattern(words.patterns[pattern]),
      ...(ringCentre === null ? [] : [words.ringCentre[ringCentre]]),
      ...(reading.wholeFace === undefined
        ? [counted === '' ? words.noCount : words.directions(counted)]
        : [wholeFaceWords.kind[reading.wholeFace.kind]]),
      flatnessUm === null || flatnessUin === null || bands === null
        ? results.unreadable
        : words.result(flatnessUm.text, flatnessUin.text, bands.text),
    ),
    cell(
      words.lamp(lampName(reading), reading.lampNumber),
      words.bandHeight(reading.wavelengthNm.text, reading.bandHeightUm.text),
      words.flat(reading.flatNumber),
      words.viewing(reading.viewingAngleDeg.text),
    ),
    cell(
      reading.soakMin === null ? words.soakUnknown : words.soak(reading.soakMin.text),
      reading.temperatureC === null
        ? words.temperatureUnknown
        : words.temperature(reading.temperatureC.text),
      words.by(reading.recordedByName),
    ),
  ]
}

function testCells(test: CertifiedStaticTest): readonly Cell[] {
  const { typed, stabilisationS } = test
  return [
    {
      lines: [
        { text: results.sections[test.section], style: 'strong' },
        { text: printMoment(test.startedAt) },
        { text: words.recorded(printDay(test.recordedAt)), style: 'small' },
      ],
    },
    cell(
      words.pressureStep(test.startPressureKPaAbs.text, test.endPressureKPaAbs.text),
      words.gauge(test.startPressureKPaGauge.text),
      test.barometerKPa.value === standardBarometerKPa
        ? words.barometerTaken(test.barometerKPa.text)
        : words.barometer(test.barometerKPa.text),
      words.typed(
        typed.startPressure.trim(),
        typed.endPressure.trim(),
        typed.pressureUnit,
        words.references[typed.pressureReference],
      ),
    ),
    cell(
      words.temperatures(test.startTemperatureC.text, test.endTemperatureC.text),
      words.held(test.durationS.text, printDuration(test.durationS.value)),
      stabilisationS === null
        ? words.stabilisedUnknown
        : words.stabilised(stabilisationS.text, printDuration(stabilisationS.value)),
      words.uncompensated(test.uncompensatedPaM3PerS.text),
    ),
    cell(
      words.medium,
      test.expandedFromL === undefined || test.expandedFromL === null
        ? words.volume(test.volumeL.text)
        : words.expanded(test.volumeL.text, test.expandedFromL.text),
      test.leakPlace === undefined || test.leakPlace === null
        ? words.leakNotLookedFor
        : words.leakPlace(trade.leakPlace[test.leakPlace]),
      words.gaugeNumber(test.gaugeNumber),
      test.thermometerNumber === null
        ? words.noThermometer
        : words.thermometer(test.thermometerNumber),
      words.by(test.recordedByName),
    ),
  ]
}
