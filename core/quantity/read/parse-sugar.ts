import { DomainError } from '../../domain-error.ts'
import { isJuice, type MaterialId, materialOf, materials, USUAL_MATERIAL } from '../materials.ts'
import type { SweetenerRefused } from '../problems.ts'
import type { Assumption, Mass, SugarRead, SweeteningRead, Volume } from '../quantities.ts'
import { accepted, isWithin } from './accepted-ranges.ts'
import { amountAt } from './amount-at.ts'
import { isMaterialWord, materialNamed } from './material-named.ts'
import { splitAt } from './split-list.ts'
import { expectEnd, readText, shown, type TypedText, textFrom } from './tokens.ts'

/** Words of sweeteners that are no material yet: water, other sugars or none in them. */
const OTHER_SWEETENERS = new Set(
  (
    'honey miele maple acero syrup sciroppo agave brown canna bruno demerara muscovado mascobado turbinado raw grezzo ' +
    'panela jaggery molasses melassa treacle stevia erythritol eritritolo xylitol xilitolo sorbitol sorbitolo ' +
    'sucralose sucralosio aspartame aspartam saccharin saccarina sweetener dolcificante glucose glucosio dextrose ' +
    'destrosio fructose fruttosio lactose lattosio maltose maltosio isomalt invert invertito trimoline monk allulose ' +
    'icing powdered velo confectioners coconut cocco date dates palm corn golden vanilla jam marmellata condensed'
  ).split(' '),
)

/** From memory: a dog that gets a little xylitol, also of strained fruit, may die of it. */
const KILLS_DOGS = /xylitol|xilitolo/
/** They take the room of no sugar, give no body, and help nothing to keep. */
const NO_SUGAR =
  /stevia|er[yi]th?rit|sorbitol|sucralos|aspartam|sac+[ch]h?ari|sweetener|dolcificante|isomalt|monk|allulos|trehalos/

const whyNot = (sweetener: string): SweetenerRefused | null =>
  KILLS_DOGS.test(sweetener) ? 'kills_dogs' : NO_SUGAR.test(sweetener) ? 'no_sugar' : null

const otherSweetener = (typed: TypedText, sweetener: string): DomainError =>
  new DomainError('bad_value', 'other_sweetener', {
    typed: shown(typed.text),
    sweetener: shown(sweetener),
    why: whyNot(sweetener.toLowerCase()),
  })

const refuseOtherSweetener = (typed: TypedText): void => {
  const first = typed.tokens.findIndex(({ text }) => OTHER_SWEETENERS.has(text) && !isMaterialWord(text))
  if (first !== -1) throw otherSweetener(typed, textFrom(typed, first))
}

/** The material named from piece `at` on, to the end. */
function materialAt(typed: TypedText, at: number): MaterialId {
  const words = typed.tokens.slice(at).map(({ text }) => text)
  const material = materialNamed(words, textFrom(typed, 0, at), typed.text)
  if (material !== null) return material
  const end = words.findIndex((word) => !isMaterialWord(word))
  if (end !== -1 && !words.includes('syrup')) expectEnd(typed, at + end)
  throw otherSweetener(typed, textFrom(typed, at))
}

const poured = (material: MaterialId): Assumption =>
  material === USUAL_MATERIAL ? 'sugar_by_volume' : materials[material].isSyrup ? 'syrup_by_volume' : 'brown_by_volume'

function weighed({ volumeMl, halfDigitMl, statedMl, unit, assumed }: Volume, material: MaterialId): Mass {
  const gPerMl = materialOf(material).pouredGPerMl
  return {
    kind: 'mass',
    massG: volumeMl * gPerMl,
    halfDigitG: halfDigitMl * gPerMl,
    statedG: statedMl === null ? null : statedMl * gPerMl,
    byVolume: true,
    unit,
    assumed: [...assumed, poured(material)],
  }
}

const asWeight = (mass: Mass): Mass =>
  mass.unit === 'oz' ? { ...mass, assumed: [...mass.assumed, 'sugar_ounces'] } : mass

/** An amount of a material, of `known` whatever is said of it. */
export function sweeteningOf(typed: TypedText, known: MaterialId | null = null): SweeteningRead {
  refuseOtherSweetener(typed)
  const { amount, next } = amountAt(typed, 0)
  const material = known ?? materialAt(typed, next)
  const mass = amount.kind === 'mass' ? asWeight(amount) : weighed(amount, material)
  if (!isWithin(accepted.massG, mass.massG)) {
    throw new DomainError('bad_value', 'out_of_range', { typed: shown(typed.text), wanted: 'sugar' })
  }
  return { ...mass, material }
}

/**
 * What sweetens, by mass, 0.01 g to 1,000 kg; a volume (`2 cups`) is weighed as it is poured and says so in `assumed`. The words of a
 * material may follow (`sugar`, `honey`, `zucchero di canna` …), white sugar where none do; any other sweetener throws
 * `other_sweetener`, a bar syrup whose parts were not said `which_syrup`.
 */
export const parseSugar = (text: string): SweeteningRead => sweeteningOf(readText(text, 'sugar'))

/** Each of some that are joined with `+`. */
export const parseSugars = (text: string): readonly SweeteningRead[] =>
  splitAt(text, 'sugar').map((typed) => sweeteningOf(typed))

/** Whether it begins with an amount. */
export const hasAmount = ({ tokens }: TypedText): boolean => {
  const [first, second] = tokens
  // `1:1 syrup` is a name.
  return first?.kind === 'number' && second?.text !== ':' && second?.text !== 'to'
}

const kindOf = (typed: TypedText): MaterialId => {
  refuseOtherSweetener(typed)
  const material = materialAt(typed, 0)
  if (isJuice(material)) throw otherSweetener(typed, typed.text)
  return material
}

/** What sweetens, without an amount: that is worked out. Throws `amount_worked_out` where one was typed. */
export function parseSweetener(text: string): MaterialId {
  const typed = readText(text, 'sweetener')
  if (!hasAmount(typed)) return kindOf(typed)
  const { material } = sweeteningOf({ ...typed, wanted: 'sugar' })
  const fix = materialOf(material).names[0]!
  throw new DomainError('bad_value', 'amount_worked_out', { typed: shown(typed.text), fix })
}

/** Amounts that go in, and at most one name without an amount: what is taken where the amount is worked out. */
export function parseSugarOrKind(text: string): SugarRead {
  const items = splitAt(text, 'sugar')
  const amounts = items.filter(hasAmount).map((typed) => sweeteningOf(typed))
  const [sweetener = null, second] = items.filter((item) => !hasAmount(item)).map(kindOf)
  if (second !== undefined) throw new DomainError('bad_value', 'one_sweetener', { typed: shown(text) })
  return { amounts, sweetener }
}
