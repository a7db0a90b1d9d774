/** The command was understood and refused: exit 1. */
export class Refused extends Error {}
