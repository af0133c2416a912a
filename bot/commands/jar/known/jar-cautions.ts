import { botanicalById } from '../../../../core/botanical/catalogue/catalogue.ts'
import { isAllergen, isAlwaysSaidInFull } from '../../../../core/botanical/evidence/plan-hazards.ts'
import { hasHoney, plantIdsIn } from '../../../../core/jar/state/batch-facts.ts'
import { contentsOf } from '../../../../core/jar/state/contents.ts'
import type { JarState } from '../../../../core/jar/state/jar-state.ts'
import { strengthServedNeat } from '../../../../core/jar/state/too-strong-neat.ts'
import { abvPercent } from '../../../../core/liquid/liquid.ts'
import { largestSoluble } from '../../../../core/recipe/sugar-stays.ts'
import type { Jar } from '../../../../store/person.ts'
import { type Deep, inMore } from '../../../chat/depth.ts'
import type { CautionName } from '../../../text/messages/jar-steps.ts'
import type { Message } from '../../../text/words.ts'
import { hazardCautions } from '../../plan/plan-hazards.ts'
import { caution, outcomeCautions, withoutKeeping } from '../../reply/outcome-reply.ts'

type Caution = Message<'cautions'>

/** Cautions that a few words remind of, once they were read. */
const SHORTENED: ReadonlySet<string> = new Set<CautionName>([
  'flame',
  'cool_first',
  'sugar_alone',
  'may_crystallise',
  'sugar_limit_not_known',
  'bottle_bursts',
  'plan_hazard',
  'honey_infant',
])

/** What is remembered of a caution that was read: itself, and of a plant's each plant. */
const keysOf = (caution: Caution): readonly string[] =>
  caution.key === 'plan_hazard'
    ? caution.values.ids.map((id) => `plan_hazard.${caution.values.hazard}.${id}`)
    : [caution.key]

/** Cautions as they are said of a jar, and the jar with what was said of it. */
export interface Cautioned {
  readonly jar: Jar
  readonly cautions: readonly Caution[]
}

/** Each in full the first time; afterwards a line reminds of it, but of poison and allergens in full every time. */
export function cautioned(jar: Jar, cautions: readonly Caution[]): Cautioned {
  const read = new Set(jar.cautioned)
  const isShort = (caution: Caution): boolean =>
    SHORTENED.has(caution.key) &&
    keysOf(caution).every((key) => read.has(key)) &&
    !(caution.key === 'plan_hazard' && isAlwaysSaidInFull(caution.values.hazard))
  const names = [...new Set(cautions.filter(isShort).map(({ key }) => key as CautionName))]
  const again: readonly Caution[] =
    names.length === 0 ? [] : [{ group: 'cautions', key: 'caution_again', values: { names } }]
  return {
    jar: { ...jar, cautioned: [...new Set([...jar.cautioned, ...cautions.flatMap(keysOf)])] },
    cautions: [...cautions.filter((caution) => !isShort(caution)), ...again],
  }
}

/** What has to be said of what a jar has become: also that its sugar surely falls out, as `/mix` refuses it. */
export function sweetenedCautions(story: JarState): readonly Caution[] {
  const { outcome, sugarStays } = contentsOf(story)
  if (sugarStays !== 'refused') {
    return [...honeyCautions(story), ...withoutKeeping(outcomeCautions(outcome, sugarStays, [], { freezerC: null }))]
  }
  const mostGPerL = largestSoluble(abvPercent(outcome.liquid))
  return [
    ...honeyCautions(story),
    { group: 'cautions', key: 'jar_sugar_crystallises', values: { outcome, mostGPerL } },
    ...withoutKeeping(outcomeCautions(outcome, 'dissolved', [], { freezerC: null })),
  ]
}

/** What plants can do, said when they go in. */
export const plantCautions = (ids: readonly string[]): readonly Caution[] => hazardCautions(ids.map(botanicalById))

/** That it is too strong to be drunk as it is, in bottles or from the jar. */
export function neatCautions(story: JarState): readonly Caution[] {
  const abvPercent = strengthServedNeat(story)
  if (abvPercent === null) return []
  const values = { abvPercent, isDiluted: story.sweetened !== null }
  return [{ group: 'cautions', key: 'jar_not_neat', values }]
}

/** Who must not drink of it, said when it is given away or opened. */
const allergenCautions = (story: JarState): readonly Caution[] =>
  hazardCautions(plantIdsIn(story).map(botanicalById)).filter(({ values }) => isAllergen(values.hazard))

export const honeyCautions = (story: JarState): readonly Caution[] => (hasHoney(story) ? [caution('honey_infant')] : [])

/** One question deeper, once its maker has read it of this jar. */
export const honeyTold = (story: JarState, cautioned: readonly string[]): readonly (Caution & Deep)[] =>
  cautioned.includes('honey_infant') ? inMore(honeyCautions(story)) : honeyCautions(story)

/** What has to be said of what is drunk or given away. */
export const servedCautions = (story: JarState): readonly Caution[] => [
  ...neatCautions(story),
  ...honeyCautions(story),
  ...allergenCautions(story),
]

/** What can be done wrong in the very step, and what kills or maims; all else has its place one question deeper. */
const FIRST: ReadonlySet<string> = new Set<Caution['key']>([
  'plan_grave',
  'low_acid_weak',
  'plan_unknown',
  'flame',
  'jar_not_neat',
  'fruit_may_ferment',
  'note_names',
  'honey_infant',
])

/** Cautions of a step, each at its depth: flame once, where it is said with what the plants can do. */
export function atTheirDepth(cautions: readonly Caution[]): readonly (Caution & Deep)[] {
  const isSaid = cautions.some((caution) => caution.key === 'plan_grave' && caution.values.burns)
  return cautions.map((caution) =>
    FIRST.has(caution.key) && !(isSaid && caution.key === 'flame') ? caution : { ...caution, depth: 'more' },
  )
}
