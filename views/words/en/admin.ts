/** Words of the operator's commands. */
export const adminWords = {
  help: `Ringproof, commands of the operator

  npm run -s admin -- VERB

  user add --name N --role technician|inspector|customer|manager
           [--customer NAME] [--display NAME] [--department NAME]
                        adds a person; the password is read from standard input
  user password --name N
                        sets a forgotten password, read from standard input
  token add --user N --label L
                        makes a bearer token and prints it, once
  token revoke --user N --label L
                        ends a token
  backup FILE           copies the whole database, also while the server runs
  restore FILE          brings a backup into an empty data folder
  verify                checks the whole database: exit 0, or 1 and what is wrong
  demo                  loads the invented workshop into an empty data folder
  --help                this

  The data folder is RINGPROOF_DATA (default ./data).
  Exit: 0 done, 1 refused or found wrong, 2 wrong usage.`,
  usage: (what: string) => `${what} See: npm run -s admin -- --help`,
  noVerb: 'Say what to do.',
  unknownVerb: (verb: string) => `There is no command "${verb}".`,
  foreignOption: (option: string) => `${option} does not go with this command.`,
  surplus: (word: string) => `"${word}" is one word too many.`,
  tooLong: (option: string, max: number) => `${option} takes at most ${max} characters.`,
  missing: (option: string) => `${option} is missing.`,
  badRole: (role: string) => `There is no role "${role}".`,
  customerNeeded: 'A customer’s user needs --customer NAME.',
  customerOnly: '--customer goes with the role customer alone.',
  noCustomer: (name: string) => `There is no customer "${name}" in the records.`,
  shortPassword: (min: number) =>
    `The password, read from standard input, needs at least ${min} characters.`,
  longPassword: (max: number) =>
    `The password, read from standard input, may have at most ${max} characters.`,
  askPassword: 'Password (not shown as you type): ',
  userAdded: (name: string, role: string) => `${name} can sign in as ${role}.`,
  passwordSet: (name: string) => `${name} has a new password, and is signed out everywhere.`,
  revoked: (label: string, user: string) => `The token "${label}" of ${user} is ended.`,
  noStore: (file: string) => `There is no database at ${file}.`,
  backedUp: (file: string) => `The backup stands at ${file}.`,
  fileExists: (file: string) => `${file} exists already; a backup overwrites nothing.`,
  restored: (folder: string) => `The backup stands in ${folder}.`,
  folderNotEmpty: (folder: string) => `${folder} is not empty; nothing in it is overwritten.`,
  sound: 'The database is sound: records, audit trail, stored files and certificates agree.',
  unsound: (file: string, count: number, first: string) =>
    `The database ${file} is not sound, ${count === 1 ? '1 fault' : `${count} faults`}: ${first}${
      count === 1 ? '' : ' (all of them are on standard output)'
    }`,
  unreadable: (why: string) => `it can’t be read to its end: ${why}`,
  demoLoaded: (folder: string) => `The invented workshop stands in ${folder}.`,
} as const
