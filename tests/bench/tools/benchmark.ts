/** One benchmark, a file of its own in `tests/bench`, exported as `benchmark`. */
export type Benchmark = {
  /** The same as the name of its file. */
  readonly name: string
  readonly unit: string
  /** What it is measured against, in the same run. */
  readonly peerName: string
  readonly run: () => Promise<Measured>
}

/** Medians, both in the unit of the benchmark. */
export type Measured = { readonly value: number; readonly peerValue: number }

/** What the JSON line of a benchmark holds, in this order. */
export type ResultLine = {
  readonly bench: string
  readonly value: number
  readonly unit: string
  readonly peer: string
  readonly peerValue: number
  readonly ratio: number
}
