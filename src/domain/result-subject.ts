/** The records that carry results. */
export const resultKinds = ['flatness-reading', 'static-test', 'measured-value'] as const
export type ResultKind = (typeof resultKinds)[number]

/** Records that an instrument is used for: results, and what is read on the strip bench. */
export const usedKinds = [...resultKinds, 'wear-track', 'spring-check'] as const
export type UsedKind = (typeof usedKinds)[number]
export type UsedSubject = { readonly subjectKind: UsedKind; readonly subjectId: number }

/** Which record is spoken of. */
export type ResultSubject = { readonly subjectKind: ResultKind; readonly subjectId: number }
