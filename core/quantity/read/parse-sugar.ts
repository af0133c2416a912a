import { DomainError } from '../../domain-error.ts'
import { isMaterialWord, materialNamed, materials, USUAL_MATERIAL } from '../materials.ts'
import type { Mass, SweeteningRead, Volume } from '../quantities.ts'
import { accepted, isWithin } from './accepted-ranges.ts'
import { amountAt } from './amount-at.ts'
import { expectEnd, readText, shown, type TypedText, textFrom } from './tokens.ts'

const OF: ReadonlySet<string> = new Set(['of', 'di'])

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

const refuseOtherSweetener = (typed: TypedText): void => {
  const first = typed.tokens.findIndex(({ text }) => OTHER_SWEETENERS.has(text) && !isMaterialWord(text))
  if (first === -1) return
  const sweetener = shown(textFrom(typed, first))
  throw new DomainError('bad_value', 'other_sweetener', { typed: shown(typed.text), sweetener })
}

const weighed = ({ volumeMl, halfDigitMl, statedMl, unit, assumed }: Volume, gPerMl: number): Mass => ({
  kind: 'mass',
  massG: volumeMl * gPerMl,
  halfDigitG: halfDigitMl * gPerMl,
  statedG: statedMl === null ? null : statedMl * gPerMl,
  byVolume: true,
  unit,
  assumed: [...assumed, 'sugar_by_volume'],
})

const asWeight = (mass: Mass): Mass =>
  mass.unit === 'oz' ? { ...mass, assumed: [...mass.assumed, 'sugar_ounces'] } : mass

/**
 * What sweetens, by mass, 0.01 g to 1,000 kg; a volume (`2 cups`) is weighed as it is poured and says so in `assumed`. The words of a
 * material may follow (`sugar`, `white sugar`, `zucchero` …), white sugar where none do; any other sweetener throws
 * `other_sweetener`.
 */
export const parseSugar = (text: string): SweeteningRead => {
  const typed = readText(text, 'sugar')
  refuseOtherSweetener(typed)
  const { amount, next } = amountAt(typed, 0)
  const words = typed.tokens.slice(next).map((token) => token.text)
  const material = materialNamed(words.filter((word) => !OF.has(word)))
  const end = words.findIndex((word) => !OF.has(word) && !isMaterialWord(word))
  if (material === null) expectEnd(typed, end === -1 ? next : next + end)
  const id = material ?? USUAL_MATERIAL
  const mass = amount.kind === 'mass' ? asWeight(amount) : weighed(amount, materials[id].pouredGPerMl)
  if (!isWithin(accepted.massG, mass.massG)) {
    throw new DomainError('bad_value', 'out_of_range', { typed: shown(text), wanted: 'sugar' })
  }
  return { ...mass, material: id }
}
