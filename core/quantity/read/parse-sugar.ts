import { DomainError } from '../../domain-error.ts'
import type { Mass, Volume } from '../quantities.ts'
import { accepted, isWithin } from './accepted-ranges.ts'
import { amountAt } from './amount-at.ts'
import { expectEnd, readText, shown, type TypedText, textFrom } from './tokens.ts'

/**
 * Granulated sugar as it is poured, g/ml: 200 g in a US cup of 236.588 ml.
 * Source: USDA FoodData Central, SR Legacy, NDB 19335 (sugars, granulated), 1 cup = 200 g.
 */
export const POURED_SUGAR_G_PER_ML = 200 / 236.5882365

const SUGAR_WORDS = new Set(
  'sugar white caster castor granulated table fine superfine cane beet zucchero bianco semolato extrafine of di'.split(
    ' ',
  ),
)

/** Words of sweeteners that are not white sugar: water, other sugars or none in them. */
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
  const first = typed.tokens.findIndex(({ text }) => OTHER_SWEETENERS.has(text))
  if (first === -1) return
  const sweetener = shown(textFrom(typed, first))
  throw new DomainError('bad_value', 'other_sweetener', { typed: shown(typed.text), sweetener })
}

const weighed = ({ volumeMl, halfDigitMl, statedMl, unit, assumed }: Volume): Mass => ({
  kind: 'mass',
  massG: volumeMl * POURED_SUGAR_G_PER_ML,
  halfDigitG: halfDigitMl * POURED_SUGAR_G_PER_ML,
  statedG: statedMl === null ? null : statedMl * POURED_SUGAR_G_PER_ML,
  byVolume: true,
  unit,
  assumed: [...assumed, 'sugar_by_volume'],
})

const asWeight = (mass: Mass): Mass =>
  mass.unit === 'oz' ? { ...mass, assumed: [...mass.assumed, 'sugar_ounces'] } : mass

/**
 * White sugar by mass, 0.01 g to 1,000 kg; a volume (`2 cups`) is weighed at 0.845 g/ml and says so in `assumed`.
 * The words `sugar`, `white sugar`, `zucchero` … may follow; any other sweetener throws `other_sweetener`.
 */
export const parseSugar = (text: string): Mass => {
  const typed = readText(text, 'sugar')
  refuseOtherSweetener(typed)
  const { amount, next } = amountAt(typed, 0)
  const end = typed.tokens.findIndex((token, at) => at >= next && !SUGAR_WORDS.has(token.text))
  expectEnd(typed, end === -1 ? typed.tokens.length : end)
  const mass = amount.kind === 'mass' ? asWeight(amount) : weighed(amount)
  if (!isWithin(accepted.massG, mass.massG)) {
    throw new DomainError('bad_value', 'out_of_range', { typed: shown(text), wanted: 'sugar' })
  }
  return mass
}
