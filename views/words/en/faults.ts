import type { Fault, FaultKind } from '../../../src/domain/fault.ts'
import { instrumentRangeText } from './instrument-range.ts'

type Details = Readonly<Record<string, string | number>>

/** Said beside a field, and where the whole request is refused. */
export const alreadyReplaced = 'This record was replaced already. Correct the newest one.'

const amendedMeanwhile =
  'Somebody amended it meanwhile. What stands now is shown above: look, and record again.'

export const answeredMeanwhile =
  'Another inspector answered about one of these meanwhile. Read that answer, then give yours.'

const sentences: Record<FaultKind, (details: Details) => string> = {
  empty: () => 'Enter a value.',
  'not-a-number': () => 'Enter a plain number, such as 2.25 or 2,25.',
  'not-a-whole-number': () => 'Enter a whole number.',
  'not-a-date': () => 'Enter a date that exists, as year-month-day, such as 2026-03-09.',
  'no-offset': () => 'Enter a time with its offset, such as 2026-03-09T14:30:00Z.',
  'not-a-choice': (d) => `Choose one of: ${d.choices ?? 'the list'}.`,
  'not-known': () => 'This is not in the records. Choose one from the list.',
  'too-long': (d) => `Enter at most ${d.max} characters.`,
  below: (d) => `Enter a value from ${d.min} to ${d.max}.`,
  above: (d) => `Enter a value from ${d.min} to ${d.max}.`,
  'beyond-window': (d) =>
    `This is outside the usual range of the trade, ${d.min} to ${d.max} (common practice, no source). Check the unit, or confirm below.`,
  'unknown-field': (d) => `There is no field "${d.name}" here.`,
  'not-later': () => 'The end must be later than the start.',
  'too-few': (d) => `Enter at least ${d.min}.`,
  'too-few-positions': (d) =>
    `Read at least ${d.min} different positions of the turn. 360° is the same position as 0°.`,
  'by-expansion': () =>
    'The volume follows from the expansion below. Leave this empty, or the fields of the expansion.',
  'not-with-expansion': () =>
    'The volume follows from the expansion. Choose none here, and enter the litres of a calibrated volume as the known one.',
  'not-between': () =>
    'After the opening the pressure must lie between the two before it. Check the three pressures.',
  'no-such-volume': (d) =>
    `These pressures would mean a volume outside ${d.min} to ${d.max} L. Check them.`,
  'no-channel': (d) => `Send one of these at least with each time: ${d.choices}.`,
  'later-than-now': () => 'This lies in the future. Check date, time and offset.',
  'too-many-positions': (d) => `Send at most ${d.max} positions of a turn.`,
  'positions-bunched': () =>
    'These positions lie too close together to say anything about a whole turn. Spread them round it.',
  'not-a-list': () => 'Send a list.',
  'not-an-object': () => 'Send an object with its fields by name.',
  'too-many': (d) => `Send at most ${d.max}.`,
  'not-carried': () =>
    'A bracket sags only where it is carried round. Leave this empty where the part turns under a standing indicator.',
  'no-lever': (d) => `${d.number} has no lever. Leave this empty.`,
  'position-twice': () => 'Two planes lie at the same place along the shaft. Give each its own.',
  'not-numbers': () => 'Enter plain numbers, separated by spaces, such as 0 45 90 135.',
  'too-many-numbers': (d) => `Enter at most ${d.max} numbers.`,
  'number-twice': () => 'One of these numbers stands here twice.',
  'not-of-old-part': () =>
    'Batch, paper, compound and cure date are of a new part. Choose “replaced”, or leave this empty.',
  'not-of-nothing': () =>
    'Where nothing was found there is neither severity nor place. Leave this empty, or say what was found.',
  'no-whole-turns': (d) =>
    `Send one turn, or the same positions again for each turn, up to ${d.max}; a turn may close with a reading at its first position.`,
  'no-such-spot': () => 'This survey asks for no reading there. Load the page again.',
  'load-not-rising': () =>
    'The load must rise as the spring gets shorter. Check lengths and loads.',
  'tolerance-needed': () =>
    'Enter the tolerance of what is asked for: without it nothing can be compared.',
  'shorter-than-solid': (d) =>
    `Too short: by the newest check of the springs they are solid at ${d.solidMm} mm. Look at both lengths.`,
  unreadable: () =>
    'No bands can be read. Clean and dry the face and the flat, let both come to one temperature, and read again.',
  taken: () => 'This is in the records already.',
  'wrong-password': () => 'The password is not right.',
  'too-short': (d) => `Enter at least ${d.min} characters.`,
  'not-json': () => 'Send a JSON object.',
  'inner-not-smaller': () => 'The inner diameter must be smaller than the outer diameter.',
  'below-absolute-zero': () => 'Nothing is colder than −273.15 °C.',
  'wrong-instrument': () => 'Choose an instrument of the right kind.',
  'withdrawn-instrument': (d) =>
    `${d.number} is withdrawn. Choose another, or ask an inspector for an exception.`,
  'overdue-instrument': (d) =>
    `${d.number} was due for calibration on ${d.dueOn}. Choose another, or ask an inspector for an exception.`,
  'never-calibrated-instrument': (d) =>
    `${d.number} has no calibration on record for that day. Choose another, or ask an inspector for an exception.`,
  'left-beyond-instrument': (d) =>
    `The last calibration of ${d.number} left it beyond its tolerance. Choose another, or ask an inspector for an exception.`,
  'out-of-range-instrument': (d) =>
    `${d.number} reads ${instrumentRangeText(d)}, and these readings are beyond that. Check them, choose another, or ask an inspector for an exception.`,
  'no-such-fault': (d) =>
    `That is not so for ${d.number} today: it needs no such exception. Choose what stands against it.`,
  'after-above-before': () => 'A face is no higher after lapping than before. Check both heights.',
  'not-above-start': () => 'The end of the range must lie above its beginning.',
  'no-unit': () =>
    'The record of the instrument says no unit, so a number would say nothing. Write it into the note.',
  'error-beyond': (d) =>
    `This error is larger than the ${d.max} that the instrument may have. Choose “beyond”.`,
  'file-empty': () => 'Choose a file that has something in it.',
  'file-type': () =>
    'This is none of the files that are kept here: JPEG, PNG or WebP pictures, PDF, CSV and plain text. Its content counts, not its name.',
  'file-too-large': (d) => `The file is larger than ${d.maxMB} MB.`,
  'file-broken': () => 'This picture is cut off or damaged. Take it again, or save it anew.',
  'photo-heic': () =>
    'This is a HEIC picture, which can’t be read here. Set the camera to JPEG, or choose a JPEG.',
  'photo-type': () => 'This file is no photograph. Choose a JPEG, PNG or WebP.',
  'photo-damaged': () => 'This photograph is cut off or damaged. Take it again.',
  'photo-too-many-pixels': () =>
    'This photograph has more than 50 million pixels. Take a smaller one.',
  'photo-busy': () => 'Other photographs are being read. Try again in some seconds.',
  'photo-too-long': () => 'Looking for the edges took too long and was stopped. Try again.',
  'not-text': () => 'Enter text.',
  'reason-needed': () => 'Say why the earlier record is replaced.',
  'already-replaced': () => alreadyReplaced,
  'unit-in-use': () =>
    'A calibration states numbers in the unit that stands. Keep it, or register another instrument.',
  'nothing-changed': () => 'Nothing is different from what stands.',
  'amended-meanwhile': () => amendedMeanwhile,
  'answered-meanwhile': () => answeredMeanwhile,
  'not-in-order': () => 'This does not belong to this work order.',
  'one-of-two': (d) => `Give either ${d.one} or ${d.other}.`,
  'not-here': () => 'Leave this empty here.',
  'no-graduation': (d) => `The record of ${d.number} says no graduation. Choose another unit.`,
  'same-name': () => 'Another quantity has this name.',
  'not-a-place': () => 'Give a place as [x, y], in pixels.',
  'not-whole-or-half': () =>
    'Give a whole number for a dark band, or a half one for the bright middle between two.',
  'contradicts-press': () =>
    'The second photograph says that the gap opens the other way. Look at both again, or say that you could not tell.',
  'edges-not-set': () =>
    'The edges of the face were not found in this photograph. Lay both rings onto them.',
  'edges-not-one-ring': () =>
    'Both edges must be those of one ring: about the same centre, and as far apart as the diameters say.',
  'view-too-oblique': () =>
    'The outer edge is too much of an ellipse. Photograph square-on, from eight diameters away or more.',
  'mark-off-land': () => 'This point does not lie between the edges.',
  'mark-does-not-fit': () =>
    'This point does not fit the others. Check the order of its band, or leave it out where the face has a defect.',
  'too-few-orders': (d) => `Mark at least ${d.min} bands of different order.`,
  'marks-leave-gap': (d) =>
    `No band is marked from ${d.fromDeg}° to ${d.toDeg}°, counter-clockwise from the right. Mark some there.`,
  'marks-leave-edge': (d) =>
    `Mark at least ${d.min} points near the outer edge, and as many near the inner edge.`,
  'not-a-name': () =>
    'A name begins with a letter, goes on with letters, digits and underscores, and is no function.',
  'model-empty': () => 'Write how the result comes from the quantities, for example a * b.',
  'model-too-long': () => 'The expression is too long: at most 2000 characters.',
  'model-too-deep': () => 'The expression is nested too deep.',
  'model-unexpected': (d) => `Something does not fit at character ${d.position}.`,
  'model-not-closed': (d) => `A parenthesis is not closed at character ${d.position}.`,
  'model-not-a-function': (d) =>
    `At character ${d.position}: the functions are sqrt, exp, log, sin, cos, tan, each with its parentheses.`,
  'model-unknown-name': (d) => `There is no quantity of the name ${d.name}.`,
  'model-not-finite': () =>
    'With these quantities the expression has no finite value everywhere, as in a division by zero or a root of what is negative.',
  'limit-needed': () => 'Enter an upper limit, a lower limit or both.',
  'lower-not-below': () => 'The lower limit must be below the upper limit.',
  'too-far-below-zero': () =>
    'This is further below zero than its uncertainty allows. Check both, or let the quantity be negative.',
  'agreed-with-customer': () =>
    'Another rule is agreed with this customer. An inspector or the manager states one for this order, on its page, before anything is measured.',
  'not-in-force': () => 'This is not in force today. Choose one of the list.',
  'all-or-none': () => 'Give a temperature with every reading or with none.',
}

/** One sentence that says what to enter. */
export function faultSentence(fault: Fault): string {
  return sentences[fault.kind](fault.with ?? {})
}
