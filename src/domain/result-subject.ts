/** The records that carry results. */
export const resultKinds = ['flatness-reading', 'static-test', 'measured-value'] as const
export type ResultKind = (typeof resultKinds)[number]

/** Which record is spoken of. */
export type ResultSubject = { readonly subjectKind: ResultKind; readonly subjectId: number }
