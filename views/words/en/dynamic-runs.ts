import type { RunCaution } from '../../../src/domain/compute-dynamic-run.ts'
import type { RunChannel } from '../../../src/domain/dynamic-run.ts'
import type { RunOddity } from '../../../src/domain/merge-run-samples.ts'
import type { CollectedCaution } from '../../../src/science/leak/collected-leak.ts'

/** A seal that runs on a rig: its readings and what they say. */
export const dynamicRunsWords = {
  sectionTitle: 'Runs on the rig',
  title: 'Run on the rig',
  notJudged:
    'Runs are told, not judged: no limit is held against them yet, and no certificate prints them.',
  link: (at: string) => `Run begun ${at}`,
  count: (count: number) => (count === 1 ? '1 reading' : `${count} readings`),
  cautionTitle: 'a rig that turns under pressure',
  caution: [
    'Guards closed and locked, nobody reaches in: a shaft that turns takes hold of gloves, sleeves and rags. Hot liquid and gas under pressure get out where a seal gives way.',
    'The site rules, local codes and the rig’s own interlocks come first. This page records; it stops no rig.',
  ],
  live: {
    on: 'Shown as it happens.',
    lost: 'The connection is lost, or you are signed out. It is tried again; what rigs send meanwhile is kept, and shown then.',
  },
  replaced: 'This run was replaced by a newer one. It stays to be read.',
  begun: (name: string, at: string) => `Begun ${at}, recorded by ${name}.`,
  liquid: 'Liquid',
  density: 'Density',
  densityText: (text: string) => `${text} kg/m³`,
  notStated: 'not stated',
  empty: 'No readings have come yet.',
  leakTitle: 'Leakage',
  steady: 'Steady leakage',
  gPerH: (text: string) => `${text} g/h`,
  mlPerH: (text: string) => `${text} mL/h`,
  interval: 'Interval, 95 %',
  intervalText: (low: string, high: string) => `${low} to ${high} g/h`,
  runIn: 'Run-in',
  runInText: (extra: string, minutes: string) =>
    `${extra} g more, with a time constant of ${minutes} min`,
  runInLess: (lacking: string, minutes: string) =>
    `${lacking} g less, with a time constant of ${minutes} min`,
  noRunIn: 'none seen',
  steadyFrom: 'Steady from',
  minutes: (text: string) => `${text} min`,
  never: 'not reached',
  noRate: 'No figure is given:',
  noMass: 'No mass was collected and weighed.',
  cautions: {
    'no-leak-while-heating':
      'No leakage can be told while torque or face temperature climbs: the film may be missing, and no leak is then no good news. Look before it runs on.',
    'clock-was-set':
      'Times ran backwards within a batch: the clock of the rig may have been set. Readings are told in the order of their times.',
  } satisfies Record<RunCaution, string>,
  leakCautions: {
    'still-running-in': 'The run-in had not come to its end.',
    'not-steady': 'Its rate changes from the first half to the second: there is no steady one.',
    'mass-falls': 'The mass falls: evaporation, a hand, or an exchanged cup.',
    knocks: 'Some weighings lie far off and were set aside.',
    'times-uneven': 'Its times are too uneven for a rate to be told.',
    'few-readings': 'Few weighings: a run-in can’t be told from them.',
  } satisfies Record<CollectedCaution, string>,
  odditiesTitle: 'What was odd about its readings',
  oddityText: (kind: string, count: number) => `${kind}: ${count}`,
  oddities: {
    duplicate: 'readings that came twice, counted once',
    conflict: 'readings of one time with another value: the first counts',
    late: 'batches that came late, put in their place',
    gap: 'gaps',
    'clock-back': 'times that ran backwards within a batch',
  } satisfies Record<RunOddity, string>,
  stepsTitle: 'Program',
  channelsTitle: 'What the rig read',
  columns: {
    channel: 'Channel',
    count: 'Readings',
    mean: 'Mean',
    least: 'Least',
    most: 'Most',
    last: 'Last',
  },
  channels: {
    massG: 'Collected mass, g',
    flowMlPerMin: 'Flow, mL/min',
    pressureKPaGauge: 'Sealed pressure, kPa gauge',
    chamberTemperatureC: 'Chamber, °C',
    faceTemperatureC: 'Face, °C',
    speedPerMin: 'Speed, per min',
    torqueNm: 'Torque, N·m',
    powerW: 'Power, W',
  } satisfies Record<RunChannel, string>,
  plotTitle: (channel: string) => `${channel}, over time`,
  steps: {
    name: 'Step',
    holdS: 'Hold, s',
    speedPerMin: 'Speed, per min',
    pressureKPaGauge: 'Pressure, kPa gauge',
    temperatureC: 'Temperature, °C',
  },
} as const
