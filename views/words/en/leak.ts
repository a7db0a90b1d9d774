import type { LeakGas } from '../../../src/domain/leak-gas.ts'
import type { LeakUnit } from '../../../src/domain/leak-in-units.ts'

/** The state that a unit of leakage is of. */
type State = 'throughput' | 'volume' | '0C' | '15C' | '20C' | '60F' | '70F' | 'amount' | 'air'

/** A leak of gas in other units, and as an estimate for another gas or pressure. */
export const leakWords = {
  unitsTitle: 'The same leak in other units',
  leak: 'Leak',
  unit: 'Unit',
  state: 'Of gas at',
  units: {
    'Pa-m3-per-s': 'Pa·m³/s',
    'mbar-L-per-s': 'mbar·L/s',
    'Torr-L-per-s': 'Torr·L/s',
    'atm-cm3-per-s': 'atm·cm³/s',
    'mL-per-min': 'mL/min',
    'mL-per-h': 'mL/h',
    'L-per-min': 'L/min',
    'L-per-h': 'L/h',
    'ft3-per-h': 'ft³/h',
    'sccm-0C': 'sccm',
    'sccm-15C': 'sccm',
    'sccm-20C': 'sccm',
    'sccm-60F': 'sccm',
    'sccm-70F': 'sccm',
    'scfh-60F': 'scfh',
    'scfh-70F': 'scfh',
    'mol-per-s': 'mol/s',
    'g-per-h-air': 'g/h',
  } satisfies Record<LeakUnit, string>,
  stateOf: {
    'Pa-m3-per-s': 'throughput',
    'mbar-L-per-s': 'throughput',
    'Torr-L-per-s': 'throughput',
    'atm-cm3-per-s': 'volume',
    'mL-per-min': 'volume',
    'mL-per-h': 'volume',
    'L-per-min': 'volume',
    'L-per-h': 'volume',
    'ft3-per-h': 'volume',
    'sccm-0C': '0C',
    'sccm-15C': '15C',
    'sccm-20C': '20C',
    'sccm-60F': '60F',
    'sccm-70F': '70F',
    'scfh-60F': '60F',
    'scfh-70F': '70F',
    'mol-per-s': 'amount',
    'g-per-h-air': 'air',
  } satisfies Record<LeakUnit, State>,
  states: {
    throughput: (celsius) => `${celsius} °C`,
    volume: (celsius) => `${celsius} °C and 101.325 kPa`,
    '0C': () => '0 °C and 101.325 kPa',
    '15C': () => '15 °C and 101.325 kPa',
    '20C': () => '20 °C and 101.325 kPa',
    '60F': () => '60 °F and 101.325 kPa',
    '70F': () => '70 °F and 101.325 kPa',
    amount: () => 'any state',
    air: () => 'any state, as dry air',
  } satisfies Record<State, (celsius: string) => string>,

  estimateTitle: 'With another gas, or under another pressure',
  estimateLead:
    'An estimate, by laminar flow through a gap that does not change. It is no test and no result.',
  estimated: (leak: string, gas: string) => `About ${leak} of ${gas.toLowerCase()}: an estimate.`,
  assumption: (of: {
    readonly testGas: string
    readonly testViscosity: string
    readonly gas: string
    readonly viscosity: string
    readonly upstream: string
    readonly downstream: string
  }) =>
    `Assumed: an ideal gas that flows without turbulence through a gap that neither opens nor closes with the pressure, from the mean pressure of the hold down to the air around, and from ${of.upstream} to ${of.downstream} kPa absolute; viscosities at 20 °C: ${of.testGas.toLowerCase()} ${of.testViscosity} µPa·s, ${of.gas.toLowerCase()} ${of.viscosity} µPa·s. Leaks below about 10⁻⁶ Pa·m³/s flow otherwise.`,
  notDriven: 'The hold had less than 1 kPa above the air around: there is nothing to reckon from.',
  testGas: 'Tested with',
  gas: 'Wanted for',
  pressure: 'Under a pressure of',
  pressureUnit: 'kPa gauge',
  viscosities: 'Viscosities',
  viscosity: {
    testViscosityUPaS: 'Of the gas tested with',
    viscosityUPaS: 'Of the gas wanted',
  },
  viscosityHint: 'Empty: the usual one at 20 °C (from memory).',
  viscosityUnit: 'µPa·s',
  estimate: 'Estimate',
  gases: {
    air: 'Air',
    nitrogen: 'Nitrogen',
    helium: 'Helium',
    argon: 'Argon',
    'carbon-dioxide': 'Carbon dioxide',
    hydrogen: 'Hydrogen',
  } satisfies Record<LeakGas, string>,
} as const
