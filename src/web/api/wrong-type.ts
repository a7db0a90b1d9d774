/** The body is not JSON by its content type: answered 415. */
export class WrongType extends Error {}
