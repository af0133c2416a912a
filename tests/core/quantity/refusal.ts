import { DomainError } from '../../../core/domain-error.ts'

/** What a call throws, as `code problem`; fails if it throws anything else or nothing. */
export const refusal = (call: () => unknown): string => {
  try {
    call()
  } catch (error) {
    if (error instanceof DomainError) return `${error.code} ${error.problem}`
    throw error
  }
  throw new Error('nothing was refused')
}

/** The values of what a call throws. */
export const refusedValues = (call: () => unknown): unknown => {
  try {
    call()
  } catch (error) {
    if (error instanceof DomainError) return error.values
    throw error
  }
  throw new Error('nothing was refused')
}
