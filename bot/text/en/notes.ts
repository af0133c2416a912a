import type { Measured } from '../../../core/quantity/measured.ts'
import type { Format } from '../format.ts'

/** What a maker should know, besides the answer. */
export const notes = {
  // Readings taken where the text left room for another.
  percent_vol: () => 'I took the bare strength as % vol.',
  grams_per_litre: () => 'I took the bare sweetness as grams of sugar in a litre.',
  us_measure: () => 'Cups, fluid ounces, pints, quarts and gallons are US ones here; write “imp pint” for imperial.',
  us_proof: () => 'Proof is US proof here: twice the % vol at 60 °F.',
  decimal_point: () => 'I read the comma or point with three digits after it as a decimal sign.',
  thousands_separator: () => 'I read the comma or point with three digits after it as a thousands sign.',
  sugar_by_volume: () => 'A US cup of granulated sugar weighs about 200 g (USDA), within 10 % as cups are filled.',
  brought_to_20: () => 'Brought to 20 °C, for a glass hydrometer and a glass jug made for 20 °C.',
  as_before: ({ what }: { readonly what: 'strength' | 'sweetness' }) => `You named no new ${what}, so I kept it.`,
  unsweetened: () => 'You named no sweetness, so I took the liqueur as unsweetened.',

  plain_parts: () => 'A part without a strength counts as free of alcohol, one without a sweetness as free of sugar.',

  // How it is done.
  syrup_by_weight: ({ syrupG }: { readonly syrupG: Measured }, format: Format) =>
    `If you boil the syrup, top it up with water to ${format.mass(syrupG)}: boiling loses water.`,
  strained_strength: () => '“strength:” is the strained liquid’s, not that of the bottle the spirit came in.',
  fresh_plants: () =>
    '“strength:” is the strained liquid’s, not that of the bottle the spirit came in. Were fresh plants in it? Their water' +
    ' weakens it (lemon zest is 82 % water, ginger 79, basil 92: USDA), and this would add too much; measure it first.',
  settle: () => 'A fresh mix is warm and still shrinking; measure it when it has cooled.',
  bounded: () => 'The bound you set leaves some infusion over.',

  sweetness_law: ({ invertGPerL }: { readonly invertGPerL: number }, format: Format) =>
    `${invertGPerL < 100 ? 'Drier than a liqueur in EU law' : invertGPerL < 250 ? 'As sweet as a liqueur in EU law' : 'As sweet as a crème de … in EU law'}:` +
    ` ${format.number(invertGPerL, 0)} g/L counted as invert sugar. A liqueur has at least 100 (95 of table sugar), a crème de … 250` +
    ' (Regulation (EU) 2019/787).',
  sweet_reading: () =>
    'A hydrometer cannot read a sweet liqueur: 10 g/L of sugar moves it by 2 to 3.5 % vol. Give the strength you computed.',
}
