import { type Characteristic, faceCharacteristics } from './characteristic.ts'

/** Is it measured on a face? Its limits may then ask for material and face. */
export function belongsToFace(characteristic: Characteristic): boolean {
  return faceCharacteristics.some((one) => one === characteristic)
}
