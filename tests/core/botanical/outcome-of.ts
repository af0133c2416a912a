import { DomainError } from '../../../core/domain-error.ts'
import { readPlants } from '../../../core/recipe/plan/find-plants.ts'
import { answeredFor } from '../../../core/recipe/plan/unknown-plant.ts'

/** `planned`, where the maker gives the amounts; else the code and the problem. */
export const outcomeOf = (text: string): string => {
  try {
    readPlants(text).unknown.map(answeredFor)
    return 'planned'
  } catch (error) {
    if (error instanceof DomainError) return `${error.code} ${error.problem}`
    throw error
  }
}

/** Whether nothing is planned of it. */
export const isHeld = (text: string): boolean => /^(?:refused|ambiguous|not_found|bad_value) /.test(outcomeOf(text))
