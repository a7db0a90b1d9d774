import { alreadyReplaced, answeredMeanwhile } from './faults.ts'

type Details = Readonly<Record<string, string | number>>
type Sentence = (details: Details) => string

/** Titles by kind of refusal, for pages and problem details alike. */
export const errorTitles = {
  invalid: 'This was not accepted',
  'not-found': 'Not found',
  forbidden: 'Not for your role',
  conflict: 'Something else came first',
  'too-many': 'Too many tries',
  internal: 'Internal error',
  'too-large': 'Too large',
  'wrong-type': 'Wrong type',
  'signed-out': 'Sign in first',
} as const

/** One sentence for each reason that an AppError names. */
export const errorSentences: Readonly<Record<string, Sentence>> = {
  'not-a-form': () => 'Send the form of the page.',
  'serial-taken': (d) => `This customer has a seal with the serial ${d.serial} already.`,
  'tag-taken': (d) => `This customer has a position ${d.tag} already.`,
  'version-taken': (d) => `Version ${d.version} of ${d.name} stands already.`,
  'label-taken': (d) => `There is a live token with the label ${d.label} already.`,
  'reason-needed': () => 'Say why.',
  'no-page': () => 'There is no such page, or it is not yours to see.',
  'no-work-order': () => 'There is no such work order.',
  'no-result': () => 'There is no such result in this work order, or it is not released yet.',
  'no-survey': () => 'There is no such survey in this work order.',
  'no-run': () => 'There is no such run.',
  'no-certificate': () => 'There is no such certificate.',
  'no-seal': () => 'There is no such seal.',
  'no-customer': () => 'There is no such customer.',
  'no-equipment': () => 'There is no such position.',
  'no-instrument': () => 'There is no such instrument.',
  'no-doubt': () => 'No calibration found this instrument out of tolerance, or left it so.',
  'changed-meanwhile': () =>
    'An instrument or the order changed while the photograph was read. Go back, look at the form, and record it again.',
  'springs-changed-meanwhile': () =>
    'The check of the springs changed while this was entered: they are solid at this length. Go back, look at the working length, and record it again.',
  'not-of-face': () => 'That photograph is of another face.',
  'no-face-photo': () => 'There is no such photograph of this order.',
  'not-of-instrument': () => 'That calibration belongs to another instrument.',
  'not-in-doubt': () =>
    'One of these records is not in doubt by this calibration. Look at the list again.',
  'answered-meanwhile': () => answeredMeanwhile,
  'own-record': () => 'Nobody says of their own record that it stands: another inspector answers.',
  'no-limit-set-yet': () =>
    'No limit set is in force, so nothing could be judged. The manager or an inspector writes one on the page Limit sets, and another inspector approves it there.',
  'no-limit-set': () => 'There is no such limit set.',
  'limit-set-not-offered': (d) =>
    `The limit set ${d.name} is not in force on the day of receipt, or a newer version of it is. Choose another one.`,
  'limit-set-approved': () => 'This limit set is approved already.',
  'limit-set-retired': () => 'This limit set is retired.',
  'own-draft': () =>
    'Whoever wrote a limit set can’t approve it: another inspector looks through it.',
  'limits-tie': (d) =>
    `Two limits can hold for one result, and neither is more specific: “${d.first}” and “${d.second}”. Make one of them more specific in a new version.`,
  'no-user': () => 'There is no such person.',
  'no-file': () => 'This document is not in the records.',
  'no-token': () => 'There is no such token.',
  'wrong-role': () => 'Your role may not do this.',
  'cross-site': () => 'This request did not come from a page of this workshop.',
  'already-decided': (d) => `This hand-over was decided already, by ${d.by ?? 'someone else'}.`,
  'not-handed-over': () => 'This work order is not handed over, so there is nothing to decide.',
  'not-open': () => 'Work is recorded only while the order is on the bench.',
  'stage-not-next': () => 'The work order can’t go there from where it stands.',
  'decontamination-not-stated': () =>
    'State first that the seal is free of its last fluid: a seal in quarantine is not stripped, lapped or tested.',
  'in-quarantine': () =>
    'This seal is in quarantine: nobody has stated yet that it is free of what it sealed. State that first; nothing is opened or read before.',
  'already-measured': () =>
    'Something of this order is measured already: what it is compared by is agreed before.',
  'worked-on-order': () =>
    'Whoever lapped, tested or handed over an order can’t concede its results (after EN 10204:2004, type 3.1).',
  'no-use-exception': () => 'There is no such request for an exception.',
  'already-asked': () => 'This exception is asked for already, and no inspector has answered yet.',
  'already-answered': (d) => `This request was answered already, by ${d.by}.`,
  'own-request': () => 'Nobody allows an exception that they asked for: another inspector answers.',
  'concession-too-late': () => 'This order has come to its end: nothing is conceded on it now.',
  'nothing-to-concede': () =>
    'This result keeps its limit, or no longer speaks for the seal: there is nothing to concede.',
  'no-figure-to-concede': () => 'A face that can’t be read has no figure to concede.',
  'already-conceded': () => 'This result is conceded already.',
  'already-replaced': () => alreadyReplaced,
  'other-reader': () =>
    'Somebody else has signed in here since this was typed. It is recorded under no other name: sign in as whoever typed it.',
  'survey-ended': () => 'This survey has ended. Begin another one.',
  'spots-missing': () => 'Positions of this survey are not read yet. Read them, or give it up.',
  'not-in-order': () => 'That record belongs to another work order.',
  'something-missing': () => 'Something required is not recorded yet.',
  'bad-key': () => 'An Idempotency-Key has 1 to 150 characters.',
  'key-reused': () =>
    'This form was recorded already with other values. Open a fresh form for another record.',
  'evidence-changed': () => 'The record changed while you were deciding. Look at it again.',
  'number-taken': () => 'The number was taken meanwhile. Try again.',
  'name-taken': () => 'That name is taken.',
  'instrument-number-taken': (d) => `There is an instrument with the number ${d.number} already.`,
  'instrument-amended': (d) => `Somebody amended the instrument ${d.number} meanwhile.`,
  'instrument-not-changed': (d) => `Nothing is different from what stands of ${d.number}.`,
  'instrument-withdrawn': (d) => `The instrument ${d.number} is withdrawn from use.`,
  'due-not-later': () => 'A calibration falls due after the day on which it was made.',
  'not-oneself': () => 'Nobody ends their own access. Ask another manager.',
  'not-newest': () => 'A newer version of this limit set stands. Start from that one.',
  'not-inspector': () => 'Only an inspector decides.',
  'lapped-or-tested': () =>
    'Whoever lapped, tested or handed over an order can’t release it (after EN 10204:2004, type 3.1).',
  'result-fails': () =>
    'The agreed rule does not accept a result. It is reworked or measured anew, or conceded, before the release.',
  'instrument-in-doubt': () =>
    'An instrument was found out of tolerance since. Say on its page whether the records stand.',
  'instrument-not-acknowledged': (d) =>
    `Out of calibration on the day of use: ${d.numbers}. Say why the results stand.`,
  'trials-busy': () => 'Other trials are running. Try again in some seconds.',
  'trials-too-long': () =>
    'These trials took longer than 20 seconds and were stopped. Ask for fewer, or write the model shorter.',
  'unreadable-picture': () => 'This picture gives no honest figure.',
  'photo-heic': () =>
    'This is a HEIC picture, which can’t be read here. Set the camera to JPEG, or send it as JPEG.',
  'photo-not-a-photo': () => 'This file is no photograph. Send a JPEG, PNG or WebP.',
  'photo-damaged': () => 'This photograph is cut off or damaged. Take or send it again.',
  'photo-too-many-pixels': () =>
    'This photograph has more than 50 million pixels. Send a smaller one.',
  'photo-busy': () => 'Other photographs are being read. Try again in some seconds.',
  'photo-too-long': () =>
    'Reading this photograph took longer than a minute and was stopped. Try again, or send a smaller one.',
  'slow-down': (d) => `Too many failed tries. Wait ${d.waitS ?? 'some'} seconds.`,
  'too-large': () => 'The request is larger than is taken here.',
  'wrong-type': () => 'Send JSON, with content type application/json.',
  'signed-out': () => 'Sign in, or send a bearer token.',
  internal: (d) => `Something went wrong here. Give the number ${d.request ?? ''} to the operator.`,
}

/** The sentence for a reason; a reason without words is a fault of ours and says so. */
export function errorSentence(reason: string, details: Details): string {
  const sentence = errorSentences[reason]
  if (sentence === undefined) throw new Error(`no words for the reason "${reason}"`)
  return sentence(details)
}
