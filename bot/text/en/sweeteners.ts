import { type MaterialId, materialOf, sugarsShare } from '../../../core/quantity/materials.ts'
import type { Format } from '../format.ts'
import type { Feature } from '../language.ts'
import type { SweetenerMessages } from '../messages/sweeteners.ts'
import { capital } from './phrases.ts'

/** What sweetens, after its amount; what is written alone in a line is its first name in core. */
const NAMES: { readonly [Id in MaterialId]: string } = {
  white_sugar: 'sugar',
  invert_syrup: 'invert syrup',
  honey: 'honey',
  maple_syrup: 'maple syrup',
  agave_syrup: 'agave syrup',
  demerara: 'demerara sugar',
  brown_sugar: 'brown sugar',
  muscovado: 'muscovado',
  glucose_syrup: 'glucose syrup',
  golden_syrup: 'golden syrup',
  date_syrup: 'date syrup',
  syrup_1_1_weight: '1:1 syrup (by weight)',
  syrup_1_1_cup: '1:1 syrup (by the cup)',
  syrup_2_1_weight: '2:1 syrup (by weight)',
  syrup_2_1_cup: '2:1 syrup (by the cup)',
  orange_juice: 'orange juice',
  apple_juice: 'apple juice',
  grape_juice: 'grape juice',
  pineapple_juice: 'pineapple juice',
  pomegranate_juice: 'pomegranate juice',
  lemon_juice: 'lemon juice',
  lime_juice: 'lime juice',
  raspberry_puree: 'raspberry purée',
  strawberry_puree: 'strawberry purée',
  peach_puree: 'peach purée',
  coffee: 'brewed coffee',
  tea: 'brewed tea',
  citric_acid: 'citric acid',
}

/** `honey`, as it stands after an amount or alone. */
export const sweetenerName = (material: MaterialId): string => NAMES[material]

/** So much of it, g: `540 g`; where cups are poured in them first, `2 ¾ cups (1 lb 3 oz)`. */
export function scoopedText(massG: number, material: MaterialId, format: Format): string {
  const cups = format.round.cups(massG, materialOf(material))
  return cups === null ? format.round.mass(massG) : `${cups} (${format.round.mass(massG)})`
}

/** `540 g sugar`, `2 ¾ cups (1 lb 3 oz) sugar`. */
export const sweetenerText = (massG: number, material: MaterialId, format: Format): string =>
  `${scoopedText(massG, material, format)} ${sweetenerName(material)}`

/** The same where there is room for one amount: `540 g sugar`, `2 ¾ cups sugar`. */
export const sweetenerShort = (massG: number, material: MaterialId, format: Format): string =>
  `${format.round.cups(massG, materialOf(material)) ?? format.round.mass(massG)} ${sweetenerName(material)}`

/** What stands for the water, or water. */
export const fillerName = (filler: MaterialId | null): string => (filler === null ? 'water' : NAMES[filler])

/** `0.8`, `1`: as well as it is known. */
const tenths = (value: number): string => String(Number(value.toFixed(1)))

/** On a label and in a caution alike. */
export const honeyWarning = 'Not for children, and honey is never for a baby under one.'

export const sweetenerSentences: Feature<SweetenerMessages> = {
  notes: {
    brown_by_volume: () => 'I’ve assumed packed cups: about 220 g of brown sugar to a US cup.',
    syrup_by_volume: () => 'I’ve used its usual weight for that volume. A scale is more exact.',
    juice_turns: () =>
      'Juice goes off, and clouds. Use it strained and pasteurised, and keep the drink at 20 % or more, in the cold.',
    honey_haze: () => 'Honey clouds it at first. Let it settle for some weeks, then pour off the clear part.',
    sweetener_counted: ({ material }) => {
      const { per100G, sugarsPlusMinusG, acidPer100G = 0, trust } = materialOf(material)
      const sugars = `${Math.round(100 * sugarsShare(material))} ± ${Math.ceil(sugarsPlusMinusG)} g of sugars`
      const acid = acidPer100G > 0 ? `, ${Math.max(1, Math.round(acidPer100G))} g of acid` : ''
      const memory = trust === 'memory' ? ' (from memory)' : ''
      return `I’ve counted ${sweetenerName(material)} with ${sugars}${acid} and about ${Math.round(per100G.water)} g of water in 100 g${memory}.`
    },
    ratio_as_weighed: ({ material }) => `I’ve read the ratio as ${sweetenerName(material)} to added water, by weight.`,
    sweetener_taste: ({ material }) => {
      const { low, high } = materialOf(material).sweetness
      const share = sugarsShare(material)
      const [least, most] = [tenths(low / share), tenths(high / share)]
      const how = least === most ? least : `${least} to ${most}`
      return (
        `${capital(sweetenerName(material))} tastes about ${how} times as sweet as the same sugars from the bag. ` +
        'Stir in four fifths, taste it cold, then add the rest.'
      )
    },
  },
  cautions: {
    honey_infant: () => honeyWarning,
  },
}
