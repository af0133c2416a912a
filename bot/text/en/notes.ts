import type { Measured } from '../../../core/quantity/measured/measured.ts'
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
  sugar_ounces: () => 'Ounces of sugar are a weight here, 28.35 g each; “fl oz” would be a volume.',
  sugar_by_volume: () => 'A US cup of granulated sugar weighs about 200 g (USDA), within 10 % as cups are filled.',
  volume_at_20: () => 'I brought the volume to 20 °C, as read in a glass jug.',
  strength_at_20: () =>
    'I brought the strength to 20 °C, as read on a glass hydrometer (one in proof is made for 60 °F).',
  strength_drifts: () =>
    'You named no new strength and no spirit, so I let the strength fall; add spirit-strength:95% to keep it.',
  as_before: ({ what }: { readonly what: 'strength' | 'sweetness' }) => `You named no new ${what}, so I kept it.`,
  unsweetened: () => 'You named no sweetness, so I took the liqueur as unsweetened.',

  plain_parts: () => 'A part without a strength counts as free of alcohol, one without a sweetness as free of sugar.',

  // How it is done.
  syrup_by_weight: ({ syrupG }: { readonly syrupG: Measured }, format: Format) =>
    `If you boil the syrup, top it up with water to ${format.weigh(syrupG.value)}: boiling loses water.`,
  strained_strength: () => '“strength:” is the strained liquid’s, not that of the bottle the spirit came in.',
  strength_expected: ({ abvPercent }: { readonly abvPercent: Measured }, format: Format) =>
    `Expected of what went in, not measured: the strained liquid has ${format.strength(abvPercent)} ± ${format.give.strength(abvPercent)}. If you have a hydrometer, read it and give strength: instead.`,
  fresh_plants: () =>
    '“strength:” is the strained liquid’s, not that of the bottle the spirit came in. Were fresh plants in it? Their water' +
    ' weakens it (lemon zest is 82 % water, ginger 79, basil 92: USDA), and this would add too much; measure it first.',
  settle: () => 'A fresh mix is warm and still shrinking; measure it when it has cooled.',
  bounded: ({ leftMl }: { readonly leftMl: number }, format: Format) =>
    `To end with that much, leave ${format.pour(leftMl)} of the infusion over.`,

  sweetness_law: ({ invertGPerL }: { readonly invertGPerL: number }, format: Format) => {
    const kind =
      invertGPerL < 99.95
        ? 'drier than an EU liqueur'
        : invertGPerL < 250
          ? 'a liqueur’s sweetness in the EU'
          : 'a crème de …’s sweetness in the EU'
    return (
      `${format.number(invertGPerL, 0)} g/L as invert sugar, as the law counts: ${kind} (a liqueur 100, which is 95 of table sugar;` +
      ' a crème de … 250: Regulation (EU) 2019/787).'
    )
  },
  sweet_reading: () =>
    'A hydrometer cannot read a sweet liqueur: 10 g/L of sugar moves it by 2 to 3.5 % vol. Give the strength you computed.',
}
