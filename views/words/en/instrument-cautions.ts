import type { InstrumentKind } from '../../../src/domain/instrument.ts'
import type { LampId } from '../../../src/science/optics/lamps.ts'

export type InstrumentCaution = { readonly title: string; readonly text: readonly string[] }

const siteRules = 'The rules of your site and your local codes come first.'

const underPressure: InstrumentCaution = {
  title: 'under pressure',
  text: [
    'Vent and lock the line before it is screwed in or out. Trapped gas holds energy long after the valve is shut.',
    `Never go beyond its range, and don’t stand before its glass or its blow-out side. ${siteRules}`,
  ],
}

const onMachine: InstrumentCaution = {
  title: 'on a machine that can start',
  text: [
    'Lock out and tag out drive and process, and check that nothing moves, before it goes onto a shaft.',
    `Turn by hand only, with hands and sleeves clear. ${siteRules}`,
  ],
}

/** What to mind with an instrument of a kind; where work with one hurts nobody, nothing. */
export const instrumentCautions: Readonly<Partial<Record<InstrumentKind, InstrumentCaution>>> = {
  lamp: {
    title: 'hot bulb, high voltage',
    text: [
      'Switch it off, unplug it and let it cool before a bulb is touched or changed.',
      `Don’t look into it for long. A broken bulb is cleaned up and disposed of by your site’s rules. ${siteRules}`,
    ],
  },
  'optical-flat': {
    title: 'glass',
    text: [
      `A chipped edge cuts, and scratches the next face. Solvents need air and gloves. ${siteRules}`,
    ],
  },
  'dial-indicator': onMachine,
  'lever-indicator': onMachine,
  'pressure-gauge': underPressure,
  'pressure-transducer': underPressure,
  volume: underPressure,
  'flow-meter': underPressure,
  'test-rig': {
    title: 'pressure, and parts that turn',
    text: [
      'Guards are closed before it runs, and it is vented and locked before hands go in.',
      `Gas under pressure holds far more energy than water. ${siteRules}`,
    ],
  },
}

const sodium =
  'Its bulb holds metallic sodium, which burns on contact with water: keep a broken one dry and apart.'
const mercury =
  'Its bulb holds mercury and may send out ultraviolet light: keep its filter in place. If it breaks, leave the room, air it, and call whom your site’s rules name.'
const laser =
  'A laser: read its class on its label, and never look into the beam or its reflection.'

/** What a lamp holds or sends out, beside its heat. */
export const lampCautions: Readonly<Partial<Record<LampId, string>>> = {
  sodium,
  'sodium-d1': sodium,
  'sodium-d2': sodium,
  'mercury-green': mercury,
  'mercury-blue': mercury,
  'cadmium-red':
    'Its bulb holds cadmium, which is poisonous: don’t touch or breathe what comes out.',
  'helium-neon-red': laser,
  'helium-neon-green': laser,
}
