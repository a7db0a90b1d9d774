/** Nobody is signed in: a page leads to the sign-in page, the machine interface answers 401. */
export class SignedOut extends Error {}
