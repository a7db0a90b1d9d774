/** The answer that a resent request gets again: the status, and the text or path answered with. */
export type KeptAnswer = { readonly status: number; readonly body: string }
