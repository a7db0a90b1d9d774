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
export type Measured = {
  readonly value: number
  /** null where the peer is not there: then only our own figure is printed. */
  readonly peerValue: number | null
  /** What else was found out, in lines for people, printed above the table. */
  readonly notes?: readonly string[]
}

/** What the JSON line of a benchmark holds, in this order. */
export type ResultLine = {
  readonly bench: string
  readonly value: number
  readonly unit: string
  readonly peer: string
  readonly peerValue: number | null
  readonly ratio: number | null
}
