/** The few words of JSON Schema that our description speaks. */

type Bounds = { readonly min: number; readonly max: number }
export const num = (bounds?: Bounds) => ({
  type: 'number',
  ...(bounds === undefined ? {} : { minimum: bounds.min, maximum: bounds.max }),
})
export const whole = { type: 'integer' }
export const text = { type: 'string' }
export const oneOf = (values: readonly string[]) => ({ type: 'string', enum: values })
export const object = <T extends Record<string, unknown>>(
  properties: T,
  required: readonly string[] = [],
) => ({
  type: 'object',
  additionalProperties: false,
  properties,
  ...(required.length === 0 ? {} : { required }),
})
/** The same, where a property asks for others beside it. */
export const objectWith = <T extends Record<string, unknown>>(
  properties: T,
  required: readonly string[],
  dependentRequired: Readonly<Partial<Record<keyof T & string, readonly string[]>>>,
) => ({ ...object(properties, required), dependentRequired })
export const list = (items: unknown, bounds?: Bounds) => ({
  type: 'array',
  items,
  ...(bounds === undefined ? {} : { minItems: bounds.min, maxItems: bounds.max }),
})
/** An answer may grow: what stands here is promised, more may come. */
export const answer = (properties: Record<string, unknown>) => ({
  type: 'object',
  properties,
  required: Object.keys(properties),
})
