import { pressureChangeBounds } from '../../domain/parse-pressure-change-request.ts'
import { leakPlaces, staticTestBounds, testSections } from '../../domain/static-test.ts'
import { correction } from './correction-schema.ts'
import { list, num, object, oneOf, text, whole } from './json-schema.ts'

const state = object(
  {
    timeS: num(),
    pressureKPaAbs: num(pressureChangeBounds.pressureKPaAbs),
    temperatureC: num(pressureChangeBounds.temperatureC),
  },
  ['timeS', 'pressureKPaAbs'],
)
const leakUncertainties = {
  volumeRelative: num(pressureChangeBounds.relative),
  pressurePa: num(pressureChangeBounds.pressurePa),
  temperatureK: num(pressureChangeBounds.uncertainty),
  timeS: num(),
}
const displaySteps = {
  resolutionPa: num(pressureChangeBounds.pressurePa),
  resolutionK: num(pressureChangeBounds.uncertainty),
}

/** What a change of pressure and a static test take. */
export const pressureRequestSchemas = {
  apiPressureChangeRequest: object(
    {
      volumeL: num(pressureChangeBounds.volumeL),
      referenceTemperatureC: num(pressureChangeBounds.temperatureC),
      start: state,
      end: state,
      trace: list(state, pressureChangeBounds.sampleCount),
      uncertainties: object({ ...leakUncertainties, ...displaySteps }),
    },
    ['volumeL'],
  ),
  apiCreateStaticTestRequest: object(
    {
      section: oneOf(testSections),
      volumeL: num(staticTestBounds.volumeL),
      referenceTemperatureC: num(),
      start: state,
      end: state,
      startedAt: { type: 'string', format: 'date-time' },
      stabilisationS: num(staticTestBounds.stabilisationS),
      leakPlace: oneOf(leakPlaces),
      expansion: object(
        {
          knownVolumeL: num(staticTestBounds.volumeL),
          filledKPaAbs: num(staticTestBounds.pressureKPaAbs),
          beforeKPaAbs: num(staticTestBounds.pressureKPaAbs),
          joinedKPaAbs: num(staticTestBounds.pressureKPaAbs),
        },
        ['knownVolumeL', 'filledKPaAbs', 'beforeKPaAbs', 'joinedKPaAbs'],
      ),
      gaugeInstrumentId: whole,
      thermometerInstrumentId: whole,
      volumeInstrumentId: whole,
      uncertainties: object({ ...leakUncertainties, ...displaySteps }),
      note: text,
      ...correction,
    },
    ['start', 'end', 'gaugeInstrumentId'],
  ),
} as const
