import type { LightChannel } from '../../../../src/science/photo/light-at.ts'
import { linearChannels } from '../../../../src/science/photo/linear-channels.ts'
import { paintRing } from '../paint-ring.ts'

export const outer = { cx: 161.3, cy: 158.8, rx: 120, ry: 118, rotationDeg: 25 }
export const inner = { ...outer, rx: 0.7 * outer.rx, ry: 0.7 * outer.ry }

/** A ring with eight bands over it, dark around and in its bore. */
export const painted = paintRing({
  width: 320,
  height: 320,
  outer,
  radiusRatio: 0.7,
  gap: (x, y) => 3 * x + 2.5 * y + 0.4 * (x * x - y * y) + 0.2,
})

export const channel: LightChannel = {
  light: linearChannels(painted).channels[0],
  width: painted.width,
  height: painted.height,
}

/** A grey picture without anything in it. */
export const blank: LightChannel = {
  light: new Float32Array(64 * 64).fill(0.2),
  width: 64,
  height: 64,
}
