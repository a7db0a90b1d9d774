/** Every option that some command takes; each has a text. */
export const optionNames = [
  'name',
  'role',
  'customer',
  'display',
  'department',
  'user',
  'label',
] as const
export type OptionName = (typeof optionNames)[number]
export type Options = Readonly<Partial<Record<OptionName, string>>>
