import { botanicalById } from '../../botanical/catalogue/catalogue.ts'
import { kindTyped } from '../../botanical/names/kind-typed.ts'
import { unlessRefused } from '../../domain-error.ts'
import type { Plan } from '../../recipe/plan/plan.ts'
import { parseJarName } from './jar-name.ts'

/** A jar called after its first plant: `lemon peel`; null where nothing fit for a name is left of it. */
export function nameAfter({ plants, unknown }: Pick<Plan, 'plants' | 'unknown'>): string | null {
  const [first] = plants
  const kind = first?.words == null ? null : kindTyped(botanicalById(first.botanical.id), first.words.noun)
  const title =
    first === undefined
      ? (unknown[0]?.name ?? '')
      : (kind?.[1] ?? botanicalById(first.botanical.id).names.title.toLowerCase())
  const name = title
    .replace(/\s*\([^)]*\)/gu, '')
    .replace(/\s*[(,/].*$/u, '')
    .replace(/^[#\s]+|[:\s]+$/gu, '')
  return unlessRefused(() => parseJarName(name))
}
