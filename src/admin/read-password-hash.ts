import { adminWords } from '../../views/words/en/admin.ts'
import { passwordLength } from '../domain/password-length.ts'
import { hashPassword } from '../web/password.ts'
import { readPassword } from './read-password.ts'
import { Refused } from './refused.ts'

/** Reads a password and gives its hash. @throws Refused where it is too short or too long */
export async function readPasswordHash(): Promise<string> {
  const password = await readPassword()
  const { min, max } = passwordLength
  if (password.length < min) throw new Refused(adminWords.shortPassword(min))
  if (password.length > max) throw new Refused(adminWords.longPassword(max))
  return hashPassword(password)
}
