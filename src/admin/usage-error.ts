/** The command was called wrongly: exit 2. */
export class UsageError extends Error {}
