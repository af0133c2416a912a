import { DomainError } from '../../domain-error.ts'
import { isJuice, type MaterialId, materialIds, materialOf, materials, USUAL_MATERIAL } from '../materials.ts'
import { readText, shown } from './tokens.ts'

/** What joins words and says nothing: `of`, `d’acero`. */
const JOINTS: ReadonlySet<string> = new Set(['of', 'di', 'd', 'del', "'", '’', 'the'])

const named: ReadonlyMap<string, MaterialId> = new Map(
  materialIds.flatMap((id) => materialOf(id).names.map((name) => [name, id] as const)),
)

const kindsOf = (id: MaterialId): readonly string[] => materialOf(id).kinds.split(' ').filter(Boolean)

/** Every word that belongs to the name of a material, but for what is said of a bar syrup's parts. */
const WORDS: ReadonlySet<string> = new Set(
  materialIds
    .filter((id) => !id.startsWith('syrup_'))
    .flatMap((id) => [...materialOf(id).names.flatMap((name) => name.split(' ')), ...kindsOf(id)]),
)

export const isMaterialWord = (word: string): boolean => JOINTS.has(word) || WORDS.has(word)

const BAR_WORDS: ReadonlySet<string> = new Set(
  'syrup sciroppo simple rich sugar zucchero bar by in a per weight mass peso cup cups volume tazza tazze 1 2 : to'.split(
    ' ',
  ),
)
const BY_WEIGHT = ['weight', 'mass', 'peso']
const BY_CUP = ['cup', 'cups', 'volume', 'tazza', 'tazze']

type BarSyrup = Extract<MaterialId, `syrup_${string}`>

/** The ratio said of a bar syrup: `simple` is one to one in the trade, `rich` two to one. */
const ratiosOf = (text: string): readonly ('1_1' | '2_1')[] => {
  if (/\b1 (?::|to|a) 1\b/.test(text)) return ['1_1']
  if (/\b2 (?::|to|a) 1\b/.test(text)) return ['2_1']
  if (/\d/.test(text)) return []
  if (/\brich\b/.test(text)) return ['2_1']
  return /\bsimple\b/.test(text) ? ['1_1'] : ['1_1', '2_1']
}

/** The syrups of sugar and water that these words may mean; none where they mean none. */
function barSyrups(words: readonly string[]): readonly BarSyrup[] {
  if (!words.some((word) => word === 'syrup' || word === 'sciroppo')) return []
  if (!words.every((word) => BAR_WORDS.has(word))) return []
  const isBy = (ways: readonly string[]): boolean => words.some((word) => ways.includes(word))
  const [weight, cup] = [isBy(BY_WEIGHT), isBy(BY_CUP)]
  const ways = weight === cup ? (['weight', 'cup'] as const) : weight ? (['weight'] as const) : (['cup'] as const)
  return ratiosOf(words.join(' ')).flatMap((ratio) => ways.map((way) => `syrup_${ratio}_${way}` as const))
}

/**
 * The material that goes by all of these words, white sugar where there are none; null where none does. Throws `which_syrup` of sugar
 * and water in parts that were not said; `before` is what was typed before the words, `typed` all of it.
 */
export function materialNamed(all: readonly string[], before = '', typed = all.join(' ')): MaterialId | null {
  const words = all.filter((word) => !JOINTS.has(word))
  if (words.length === 0) return USUAL_MATERIAL
  const whole = named.get(words.join(' '))
  if (whole !== undefined) return whole
  const syrups = barSyrups(words)
  if (syrups.length > 1) {
    const choices = syrups.map((id) => `${before} ${materials[id].names[0]}`.trim())
    throw new DomainError('ambiguous', 'which_syrup', { typed: shown(typed), choices })
  }
  return syrups[0] ?? materialIds.find((id) => isNamedWithKinds(id, words)) ?? null
}

/** The material that a text names, for showing what is known of it; null where it names none, or only white sugar. */
export function sweetenerIn(text: string): MaterialId | null {
  const words = readText(text, 'sweetener').tokens.map((token) => token.text)
  const [syrup] = barSyrups(words.filter((word) => !JOINTS.has(word)))
  const material = syrup ?? materialNamed(words)
  return material === null || material === USUAL_MATERIAL || isJuice(material) ? null : material
}

/** White sugar may also go by its kind alone: `caster`. */
function isNamedWithKinds(id: MaterialId, words: readonly string[]): boolean {
  const kinds = kindsOf(id)
  const name = words.filter((word) => !kinds.includes(word)).join(' ')
  return named.get(name) === id || (id === USUAL_MATERIAL && name === '')
}
