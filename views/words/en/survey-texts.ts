import { figure } from '../../../src/domain/figure.ts'

const um = (value: number): string => `${figure(value, { decimals: 1 }).text} µm`
const degrees = (value: number): string =>
  `${figure(Math.round(value * 10) / 10, 'as-entered').text}°`

/** What stands in the polar plot of a survey; no line longer than 44 letters, for phones. */
export const surveyTexts = {
  angle: degrees,
  mark: '0° at the mark',
  scale: (value: number): string => `${figure(value, 'as-entered').text} µm`,
  timesLarger: (times: number): string =>
    `drawn ${figure(Number(times.toPrecision(2)), 'as-entered').text} times larger`,
  turn: (turnIndex: number): string =>
    turnIndex < 4 ? `reading, turn ${turnIndex + 1}` : 'reading, turn 5 and later',
  closing: 'closing reading, the first place again',
  joined: 'mean of the turns, joined',
  fitted: (value: number, isFace: boolean): string =>
    isFace ? `fitted tilt, ${um(value)} up and down` : `fitted circle, ${um(value)} off the axis`,
  highest: (deg: number): string => `its highest place, ${figure(deg, { decimals: 0 }).text}°`,
  limit: (value: number): string => `limit of the total, ${um(value)}`,
  minimumZone: (value: number): string => `narrowest ring round all, ${um(value)}`,
}
