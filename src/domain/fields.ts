import type { Fault, FaultKind } from './fault.ts'
import { parseDecimal } from './parse-decimal.ts'
import type { Parsed } from './parsed.ts'

/** What came in, from a form (texts) or a JSON body (texts, numbers, lists, objects). */
export type Input = Readonly<Record<string, unknown>>

export type Bounds = { readonly min: number; readonly max: number }

/**
 * Reads the fields of one input and collects what is wrong with them. Each reader answers a
 * stand-in where its field is faulty; `finish` gives the whole only when nothing was.
 */
export type Fields = {
  /** A decimal within bounds (inclusive). */
  decimal(name: string, bounds: Bounds): number
  /** The same, or null where nothing was entered. */
  optionalDecimal(name: string, bounds: Bounds): number | null
  /**
   * A decimal that should lie in the trade's window; beyond it the user must have confirmed.
   * Beyond `possible` no confirmation helps.
   */
  windowed(name: string, window: Bounds, possible?: Bounds): number
  optionalWindowed(name: string, window: Bounds, possible?: Bounds): number | null
  whole(name: string, bounds: Bounds): number
  optionalWhole(name: string, bounds: Bounds): number | null
  /** Trimmed text of at most `max` characters, not empty. */
  text(name: string, max: number): string
  /** The same, '' where nothing was entered. */
  optionalText(name: string, max: number): string
  choice<T extends string>(name: string, choices: readonly T[]): T
  optionalChoice<T extends string>(name: string, choices: readonly T[]): T | null
  /** A calendar day, `2026-11-25`. */
  day(name: string): string
  optionalDay(name: string): string | null
  /** An instant, RFC 3339 with offset, or a local `2026-11-25T13:45` taken as UTC. */
  instant(name: string): string
  /** The text as it was typed, untrimmed; '' where absent. */
  typed(name: string): string
  isGiven(name: string): boolean
  /** The parts of a list field, each with its own fields; a fault where there are too few. */
  list(name: string, count: Bounds): Fields[]
  /** An object field. */
  group(name: string): Fields
  fault(name: string, kind: FaultKind, details?: Readonly<Record<string, string | number>>): void
  /** Refuses every field that is none of these, by name. */
  only(...names: readonly string[]): void
  readonly faults: readonly Fault[]
  finish<T>(value: T): Parsed<T>
}

/** Opens an input for reading. `isConfirmed`: the user said that values beyond the window stand. */
export function openFields(input: Input, isConfirmed = false): Fields {
  return fieldsAt(input, '', [], isConfirmed)
}

function fieldsAt(input: Input, path: string, faults: Fault[], isConfirmed: boolean): Fields {
  const at = (name: string) => (path === '' ? name : `${path}.${name}`)
  const source: Source = {
    input,
    isConfirmed,
    fault: (name, kind, details) => {
      faults.push({ field: at(name), kind, ...(details === undefined ? {} : { with: details }) })
    },
    isFaulty: (name) => faults.some((one) => one.field === at(name)),
  }
  const { fault } = source
  const maybe = <T>(name: string, read: () => T): T | null =>
    isGiven(input, name) || isWrongType(input, name) ? read() : null
  const decimal: Fields['decimal'] = (name, bounds) => readDecimal(source, name, bounds)
  const windowed: Fields['windowed'] = (name, window, possible = anyDecimal) =>
    readWindowed(source, name, window, possible)
  const whole: Fields['whole'] = (name, bounds) => {
    const value = decimal(name, bounds)
    if (!Number.isInteger(value) && !source.isFaulty(name)) fault(name, 'not-a-whole-number')
    return value
  }
  const choice: Fields['choice'] = (name, choices) => readChoice(source, name, choices)
  const day: Fields['day'] = (name) => readDay(source, name)
  return {
    decimal,
    windowed,
    whole,
    choice,
    day,
    fault,
    faults,
    typed: (name) => typedText(input, name),
    isGiven: (name) => isGiven(input, name),
    optionalDecimal: (name, bounds) => maybe(name, () => decimal(name, bounds)),
    optionalWindowed: (name, ...bounds) => maybe(name, () => windowed(name, ...bounds)),
    optionalWhole: (name, bounds) => maybe(name, () => whole(name, bounds)),
    optionalText: (name, max) => readText(source, name, max),
    text: (name, max) => {
      const value = readText(source, name, max)
      if (value === '' && !source.isFaulty(name)) fault(name, 'empty')
      return value
    },
    optionalChoice: (name, choices) => maybe(name, () => choice(name, choices)),
    optionalDay: (name) => maybe(name, () => day(name)),
    instant: (name) => readInstant(typedText(input, name).trim(), (kind) => fault(name, kind)),
    list: (name, count) => readList(input[name], at(name), count, faults, isConfirmed),
    group: (name) => {
      const value = input[name]
      if (isInput(value)) return fieldsAt(value, at(name), faults, isConfirmed)
      fault(name, value === undefined || value === null ? 'empty' : 'not-an-object')
      return fieldsAt({}, at(name), [], isConfirmed)
    },
    only: (...names) => {
      for (const name of Object.keys(input)) {
        if (!names.includes(name)) fault(name, 'unknown-field', { name })
      }
    },
    finish: (value) => (faults.length === 0 ? { ok: true, value } : { ok: false, faults }),
  }
}

/** One level of the input, and where its faults go. */
type Source = {
  readonly input: Input
  readonly isConfirmed: boolean
  readonly fault: Fields['fault']
  readonly isFaulty: (name: string) => boolean
}

function typedText(input: Input, name: string): string {
  const value = input[name]
  if (typeof value === 'number' && Number.isFinite(value)) return plainDecimal(value)
  return typeof value === 'string' ? value : ''
}

function isGiven(input: Input, name: string): boolean {
  return typedText(input, name).trim() !== ''
}

function isWrongType(input: Input, name: string): boolean {
  const value = input[name]
  return value !== undefined && value !== null && !['string', 'number'].includes(typeof value)
}

function readDecimal({ input, fault }: Source, name: string, bounds: Bounds): number {
  if (isWrongType(input, name)) return stand(fault, name, 'not-a-number')
  if (!isGiven(input, name)) return stand(fault, name, 'empty')
  const given = input[name]
  // Adding 0 makes one zero of two.
  const value = typeof given === 'number' ? given + 0 : parseDecimal(typedText(input, name))
  if (value === undefined) return stand(fault, name, 'not-a-number')
  if (value < bounds.min) fault(name, 'below', { min: bounds.min, max: bounds.max })
  else if (value > bounds.max) fault(name, 'above', { min: bounds.min, max: bounds.max })
  return value
}

const anyDecimal = { min: -1e9, max: 1e9 } as const

function readWindowed(source: Source, name: string, window: Bounds, possible: Bounds): number {
  const value = readDecimal(source, name, possible)
  const isBeyond = value < window.min || value > window.max
  if (isBeyond && !source.isConfirmed && !source.isFaulty(name)) {
    source.fault(name, 'beyond-window', { ...window })
  }
  return value
}

function readText({ input, fault }: Source, name: string, max: number): string {
  if (isWrongType(input, name)) fault(name, 'not-text')
  const value = typedText(input, name).trim()
  if (value.length > max) fault(name, 'too-long', { max })
  return value
}

function readChoice<T extends string>(
  { input, fault }: Source,
  name: string,
  choices: readonly T[],
): T {
  const value = choices.find((one) => one === typedText(input, name))
  if (value !== undefined) return value
  const isMissing = !isGiven(input, name) && !isWrongType(input, name)
  fault(name, isMissing ? 'empty' : 'not-a-choice', { choices: choices.join(', ') })
  return choices[0] as T
}

function readDay({ input, fault }: Source, name: string): string {
  const value = typedText(input, name).trim()
  if (value === '') fault(name, 'empty')
  else if (!isDay(value)) fault(name, 'not-a-date')
  return value
}

function stand(fault: Fields['fault'], name: string, kind: FaultKind): number {
  fault(name, kind)
  return 0
}

function readList(
  value: unknown,
  path: string,
  count: Bounds,
  faults: Fault[],
  isConfirmed: boolean,
): Fields[] {
  // Copied, so that a hole in a list (readings[0] and [2] posted) is an empty part, not none.
  const parts: readonly unknown[] = Array.isArray(value) ? Array.from(value) : []
  const isAbsent = value === undefined || value === null || value === ''
  if (!isAbsent && !Array.isArray(value)) {
    faults.push({ field: path, kind: 'not-a-list' })
  } else if (parts.length < count.min) {
    faults.push({ field: path, kind: parts.length === 0 ? 'empty' : 'too-few', with: { ...count } })
  }
  if (parts.length > count.max) {
    faults.push({ field: path, kind: 'too-many', with: { max: count.max } })
    return []
  }
  return parts.map((part, index) => {
    if (isInput(part)) return fieldsAt(part, `${path}[${index}]`, faults, isConfirmed)
    const kind = part === undefined || part === null ? 'empty' : 'not-an-object'
    faults.push({ field: `${path}[${index}]`, kind })
    return fieldsAt({}, `${path}[${index}]`, [], isConfirmed)
  })
}

/** A JSON number as a plain decimal: 1e-7 must not fail where 0.0000001 passes. */
function plainDecimal(value: number): string {
  const text = String(value)
  return text.includes('e') ? value.toLocaleString('en', longDecimal) : text
}

const longDecimal = { useGrouping: false, maximumSignificantDigits: 17 } as const

function readInstant(text: string, fault: (kind: FaultKind) => void): string {
  const local = /^\d{4}-\d{2}-\d{2}T\d{2}:\d{2}(:\d{2}(\.\d+)?)?$/
  const withOffset = /^\d{4}-\d{2}-\d{2}T\d{2}:\d{2}(:\d{2}(\.\d+)?)?(Z|[+-]\d{2}:\d{2})$/
  const ms = Date.parse(local.test(text) ? `${text}Z` : text)
  const isInstant = (local.test(text) || withOffset.test(text)) && Number.isFinite(ms)
  if (text === '') fault('empty')
  else if (!isInstant || !isDay(text.slice(0, 10))) fault('not-a-date')
  return isInstant ? new Date(ms).toISOString() : text
}

function isDay(text: string): boolean {
  if (!/^\d{4}-\d{2}-\d{2}$/.test(text)) return false
  const ms = Date.parse(`${text}T00:00:00Z`)
  return Number.isFinite(ms) && new Date(ms).toISOString().startsWith(text)
}

function isInput(value: unknown): value is Input {
  return typeof value === 'object' && value !== null && !Array.isArray(value)
}
