/** Words that the operator reads where the server is started. */
export const serverWords = {
  exposedDemo: (host: string) =>
    `RINGPROOF_HOST is ${host} and the data folder holds the invented workshop, whose passwords ` +
    'are public: use another RINGPROOF_DATA, or say RINGPROOF_EXPOSE_DEMO=yes.',
  exposedDemoAsked: (host: string) =>
    `RINGPROOF_HOST is ${host} and RINGPROOF_DEMO=on would load the invented workshop, whose ` +
    'passwords are public: say RINGPROOF_DEMO=off, or RINGPROOF_EXPOSE_DEMO=yes.',
  demoNotBuilt: 'The invented workshop is not built: run "npm start".',
  portInUse: (host: string, port: number) =>
    `Port ${port} of ${host} is in use: stop what listens there, or set RINGPROOF_PORT.`,
  cannotListen: (host: string, port: number, why: string) =>
    `Can’t listen on ${host}, port ${port} (see RINGPROOF_HOST and RINGPROOF_PORT): ${why}`,
  cannotOpen: (file: string, why: string) => `Can’t open the database ${file}: ${why}`,
  noOrigin: 'Set RINGPROOF_ORIGIN to the address that others use: certificates carry it as a link.',
  cannotUseFolder: (folder: string, why: string) =>
    `Can’t use the data folder ${folder} (see RINGPROOF_DATA): ${why}`,
} as const
