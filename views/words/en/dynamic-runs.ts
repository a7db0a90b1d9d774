import type { RunCaution } from '../../../src/domain/compute-dynamic-run.ts'
import type { RunChannel } from '../../../src/domain/dynamic-run.ts'
import type { CollectedCaution } from '../../../src/science/leak/collected-leak.ts'
import type { TimeEventKind } from '../../../src/science/traces/time-base.ts'

/** A seal that runs on a rig: its readings and what they say. */
export const dynamicRunsWords = {
  sectionTitle: 'Runs on the rig',
  title: 'Run on the rig',
  none: 'No run recorded',
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
    lost: 'The connection is lost. It is tried again, and nothing that was sent meanwhile is missed.',
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
  noRunIn: 'none seen',
  steadyFrom: 'Steady from',
  minutes: (text: string) => `${text} min`,
  never: 'not reached',
  unsettled: 'It still runs in: no figure is given. Let it run on.',
  noMass: 'No mass was collected and weighed.',
  cautions: {
    'no-leak-while-heating':
      'No leakage can be told while torque or face temperature climbs: the film may be missing, and no leak is then no good news. Look before it runs on.',
    'clock-was-set':
      'The clock of the logger was set during the run: only the longest stretch of one clock is reckoned with.',
  } satisfies Record<RunCaution, string>,
  leakCautions: {
    'still-running-in': 'The run-in had not come to its end.',
    'mass-falls': 'The mass falls: evaporation, a hand, or an exchanged cup.',
    knocks: 'Some weighings lie far off and were set aside.',
    'few-readings': 'Few weighings: a run-in can’t be told from them.',
  } satisfies Record<CollectedCaution, string>,
  eventsTitle: 'What was odd about its times',
  eventText: (kind: string, count: number) => `${kind}: ${count}`,
  events: {
    duplicate: 'readings that came twice',
    conflict: 'readings of one time with other values',
    'out-of-order': 'readings that came late, put in their place',
    gap: 'gaps',
    'clock-back': 'clock set back',
    'clock-forward': 'clock set forward',
    'jump-unknown': 'jumps of an hour, gap or clock',
  } satisfies Record<TimeEventKind, string>,
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
