import { hash, verify } from '@node-rs/argon2'

/** Argon2id with 64 MiB and three passes: 60 ms off the event loop. */
const cost = { memoryCost: 65_536, timeCost: 3, parallelism: 1 } as const

/** The PHC string of a password; the salt is drawn by the library. */
export function hashPassword(password: string): Promise<string> {
  return hash(password, cost)
}

/** Whether a password is the one behind the hash. */
export async function verifyPassword(passwordHash: string, password: string): Promise<boolean> {
  if (password.length > 1000) return false
  try {
    return await verify(passwordHash, password)
  } catch {
    return false // a malformed hash never signs anyone in
  }
}
