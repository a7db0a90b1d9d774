/** A reading that waits to be recorded, with what a person needs to know it again. */
export type WaitingReading = {
  readonly action: string
  readonly body: string
  /** Of its own: what is sent twice is recorded once. */
  readonly formKey: string
  /** Of its spot. */
  readonly spot: string
  readonly value: string
  readonly where: string
  readonly by: string
}

/** Readings of a survey that wait in this browser, each under the name of who read it. */
export type SurveyQueue = {
  readonly list: () => readonly WaitingReading[]
  /** At the end, or in place of the one that it corrects. */
  readonly add: (fresh: WaitingReading, instead?: string) => void
  readonly drop: (formKey: string) => void
  /** How many wait of whom else; those are theirs to send. */
  readonly ofOthers: () => readonly { readonly by: string; readonly count: number }[]
  /** From before names were kept: bodies as they were typed. */
  readonly nameless: () => readonly URLSearchParams[]
  readonly dropNameless: () => void
}

/**
 * Opens the readings of one survey. They stand under the person's id, so that whoever takes the
 * tablet next sends none of them under another name. A reading is dropped by its key, never by its
 * place: another page of the same survey may have sent the first one meanwhile.
 */
export function openSurveyQueue(path: string, readerId: string): SurveyQueue {
  const own = `survey ${readerId} ${path}`
  const old = `survey ${path}`
  const at = <T>(name: string) => JSON.parse(localStorage.getItem(name) ?? '[]') as T[]
  const list = () => at<WaitingReading>(own)
  const keep = (waiting: readonly WaitingReading[]) => {
    if (waiting.length === 0) localStorage.removeItem(own)
    else localStorage.setItem(own, JSON.stringify(waiting))
  }
  return {
    list,
    add: (fresh, instead) => {
      const before = list()
      const isThere = before.some((one) => one.formKey === instead)
      if (isThere) keep(before.map((one) => (one.formKey === instead ? fresh : one)))
      else keep([...before, fresh])
    },
    drop: (formKey) => keep(list().filter((one) => one.formKey !== formKey)),
    ofOthers: () =>
      Object.keys(localStorage)
        .filter((name) => /^survey \d+ /.test(name) && name.endsWith(` ${path}`) && name !== own)
        .map((name) => at<WaitingReading>(name))
        .flatMap((theirs) =>
          theirs[0] === undefined ? [] : [{ by: theirs[0].by, count: theirs.length }],
        ),
    nameless: () => at<{ readonly body: string }>(old).map(({ body }) => new URLSearchParams(body)),
    dropNameless: () => localStorage.removeItem(old),
  }
}
