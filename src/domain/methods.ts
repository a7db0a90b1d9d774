/**
 * Name and version of the methods that computed columns are made by; stored with each result, so
 * that it can be recomputed years later. A change of formula is a new version.
 */
export const methods = {
  conformity: 'acceptance/conformity 1',
  uncertaintyModel: 'uncertainty/model 1',
  flatnessCounted: 'flatness/counted 2',
  flatnessPhoto: 'flatness/photo 1',
  flatnessMarked: 'flatness/marked 1',
  flatnessLineGrid: 'flatness/line-grid 1',
  flatnessCombined: 'flatness/combined 1',
  leakPressureChange: 'leak/pressure-change 1',
  leakCollected: 'leak/collected 1',
  leakConvert: 'leak/convert 1',
  dynamicRun: 'leak/dynamic-run 1',
  storedEnergy: 'leak/stored-energy 1',
  dialFigure: 'dial/figure 2',
  runOut: 'run-out/survey 1',
  straightness: 'run-out/straightness 1',
  wornTrack: 'run-out/worn-track 1',
  springLoad: 'spring/working-load 1',
  roughnessFigure: 'roughness/figure 2',
  heightFigure: 'height/figure 2',
} as const
