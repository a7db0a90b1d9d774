import { OperatorError, type OperatorFault } from '../../src/domain/operator-error.ts'

/** What a work that must be refused is refused for; every other error is thrown on. */
export function operatorFault(work: () => unknown): OperatorFault {
  try {
    work()
  } catch (error) {
    if (error instanceof OperatorError) return error.fault
    throw error
  }
  throw new Error('operatorFault requires a work that is refused')
}
