/** NIST SP 800-63B, 5.1.1.2: at least 8 characters, and long ones are allowed. */
export const passwordLength = { min: 8, max: 200 } as const
