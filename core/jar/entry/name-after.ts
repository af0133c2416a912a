import type { Botanical } from '../../botanical/botanical.ts'
import { botanicalById } from '../../botanical/catalogue/catalogue.ts'
import { kindTyped } from '../../botanical/names/kind-typed.ts'
import { unlessRefused } from '../../domain-error.ts'
import type { Plan } from '../../recipe/plan/plan.ts'
import { parseJarName } from './jar-name.ts'

/** What part of a plant it is, and which of two kinds is the usual one: at home it is `the lemon` and `the cherries`. */
const PART =
  /^sweet |(?: outer)? (?:peel|leaf|leaves|root|seed|flowers|pods|berries|beans|stalk|fronds|petals|arils|flesh|pulp|calyces)$/gu

const plainly = ({ names }: Botanical, title: string): string => {
  const short = title.replaceAll(PART, '')
  return names.en.some((name) => name.toLowerCase() === short) ? short : title
}

/** A jar called after its first plant: `lemon`; null where nothing fit for a name is left of it. */
export function nameAfter({ plants, unknown }: Pick<Plan, 'plants' | 'unknown'>): string | null {
  const [first] = plants
  const kind = first?.words == null ? null : kindTyped(botanicalById(first.botanical.id), first.words.noun)
  const botanical = first === undefined ? null : botanicalById(first.botanical.id)
  const title = kind?.[1] ?? botanical?.names.title.toLowerCase() ?? unknown[0]?.name ?? ''
  const whole = title
    .replace(/\s*\([^)]*\)/gu, '')
    .replace(/\s*[(,/].*$/u, '')
    .replace(/^[#\s]+|[:\s]+$/gu, '')
  const name = botanical === null ? whole : plainly(botanical, whole)
  return unlessRefused(() => parseJarName(name))
}
