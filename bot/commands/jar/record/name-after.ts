import { botanicalById } from '../../../../core/botanical/catalogue/catalogue.ts'
import { DomainError } from '../../../../core/domain-error.ts'
import { parseJarName } from '../../../../core/jar/entry/jar-name.ts'
import type { Plan } from '../../../../core/recipe/plan/plan.ts'

/** A jar called after its first plant: `lemon peel`; null where nothing fit for a name is left of it. */
export function nameAfter({ plants, unknown }: Pick<Plan, 'plants' | 'unknown'>): string | null {
  const [first] = plants
  const title =
    first === undefined ? (unknown[0]?.name ?? '') : botanicalById(first.botanical.id).names.title.toLowerCase()
  const name = title
    .replace(/\s*\([^)]*\)/gu, '')
    .replace(/\s*[(,/].*$/u, '')
    .replace(/^[#\s]+|[:\s]+$/gu, '')
  try {
    return parseJarName(name)
  } catch (error) {
    if (error instanceof DomainError) return null
    throw error
  }
}
