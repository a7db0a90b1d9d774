import type { Stage } from '../../../src/domain/stage.ts'

export const mySealsWords = {
  title: 'My seals',
  lead: 'Your seals at this workshop, where each one stands, and their certificates.',
  none: 'No seal yet',
  noneText: 'When a seal of yours is received, it appears here.',
  atWork: 'In the workshop',
  done: 'Not in the workshop',
  due: (day: string) => `promised for ${day}`,
  noOrder: 'No order so far.',
  certificate: 'Certificate',
  /** What a stage means to the one who waits for the seal. */
  stage: {
    received: 'Received. It waits to be opened.',
    stripped: 'Taken apart and looked at.',
    lapping: 'Its faces are being lapped and read.',
    testing: 'On the test stand.',
    'handed-over': 'The work is done. An inspector checks it.',
    released: 'Released. The certificate is here.',
    dispatched: 'On its way to you.',
    refused: 'Back at the bench: the inspector wants more work on it.',
    withdrawn: 'The order was withdrawn.',
  } satisfies Readonly<Record<Stage, string>>,

  sealTitle: (serial: string) => `Seal ${serial}`,
  facts: {
    equipment: 'Position',
    arrangement: 'Arrangement',
    shaft: 'Shaft',
    drawing: 'Drawing',
    size: 'Size',
  },
  orders: 'Orders, newest first',
  noOrders: 'No order yet',
  received: (day: string) => `Received ${day}`,
  reason: (text: string) => `Reason for removal: ${text}`,
  staticTest: 'Static test',
  flatness: 'flatness',
  limit: (text: string) => `limit ≤ ${text}`,
  notReleased: 'The results are shown when the order is released.',
  nothingMeasured: 'Nothing was measured.',
} as const
