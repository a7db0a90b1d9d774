interface Plane {
  readonly values: Float32Array
  readonly width: number
  readonly height: number
}

/** One running mean of 2 half + 1 along rows, or along columns by stride. */
function runningMean(
  from: Float32Array,
  lines: number,
  length: number,
  half: number,
  jump: readonly [number, number],
): Float32Array {
  const to = new Float32Array(from.length)
  const [between, along] = jump
  for (let line = 0; line < lines; line++) {
    const at = (i: number) => line * between + Math.min(Math.max(i, 0), length - 1) * along
    let sum = 0
    for (let i = -half; i <= half; i++) sum += from[at(i)] as number
    for (let i = 0; i < length; i++) {
      to[at(i)] = sum / (2 * half + 1)
      sum += (from[at(i + half + 1)] as number) - (from[at(i - half)] as number)
    }
  }
  return to
}

/** A wide blur by three running means, which come close to a Gaussian. */
function wide({ values, width, height }: Plane, sigma: number): Float32Array {
  const half = Math.max(1, Math.round(sigma * 0.9))
  let now = values
  for (let pass = 0; pass < 3; pass++) {
    now = runningMean(now, height, width, half, [width, 1])
    now = runningMean(now, width, height, half, [1, width])
  }
  return now
}

function narrow({ values, width, height }: Plane, sigma: number): Float32Array {
  const half = Math.ceil(3 * sigma)
  const kernel = Array.from({ length: 2 * half + 1 }, (_, i) =>
    Math.exp(-0.5 * ((i - half) / sigma) ** 2),
  )
  const whole = kernel.reduce((a, b) => a + b, 0)
  const pass = (
    from: Float32Array,
    lines: number,
    length: number,
    between: number,
    along: number,
  ) => {
    const to = new Float32Array(from.length)
    for (let line = 0; line < lines; line++) {
      for (let i = 0; i < length; i++) {
        let sum = 0
        for (let k = -half; k <= half; k++) {
          const j = Math.min(Math.max(i + k, 0), length - 1)
          sum += (kernel[k + half] as number) * (from[line * between + j * along] as number)
        }
        to[line * between + i * along] = sum / whole
      }
    }
    return to
  }
  return pass(pass(values, height, width, width, 1), width, height, 1, width)
}

/** A plane out of focus, by the standard deviation in pixels. */
export function blurPlane(plane: Plane, sigma: number): Float32Array {
  if (sigma < 0.2) return plane.values
  return sigma > 4 ? wide(plane, sigma) : narrow(plane, sigma)
}

/** A plane moved during the exposure, along a line of so many pixels. */
export function smearPlane(plane: Plane, lengthPx: number, angle: number): Float32Array {
  const steps = Math.ceil(lengthPx)
  if (steps < 1) return plane.values
  const { values, width, height } = plane
  const to = new Float32Array(values.length)
  for (let k = 0; k <= steps; k++) {
    const dx = Math.round((k / steps - 0.5) * lengthPx * Math.cos(angle))
    const dy = Math.round((k / steps - 0.5) * lengthPx * Math.sin(angle))
    for (let y = 0; y < height; y++) {
      const row = Math.min(Math.max(y + dy, 0), height - 1) * width
      for (let x = 0; x < width; x++) {
        const from = row + Math.min(Math.max(x + dx, 0), width - 1)
        to[y * width + x] = (to[y * width + x] as number) + (values[from] as number) / (steps + 1)
      }
    }
  }
  return to
}
