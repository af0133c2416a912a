import { type MaterialId, materialOf } from '../../../core/quantity/materials.ts'
import type { ShoppingProblems } from '../../../core/shopping/problems.ts'
import type { PlantToBuy, SpiritToBuy } from '../../../core/shopping/shopping-list.ts'
import { lineTyped } from '../../calls/write-line.ts'
import type { Format } from '../format.ts'
import type { Feature, Written } from '../language.ts'
import type { ShopFor, ShopItem, ShoppingMessages } from '../messages/shopping.ts'
import { cookName, peeledText, piecesText } from './cook-names.ts'
import { capital, counted, either, listed, plural } from './phrases.ts'
import { scoopedText, sweetenerName, sweetenerText } from './sweeteners.ts'
import { drinkWord, jarText, packText, pouredMlOf, unknownName, vesselText } from './words.ts'

/** Help for `/shopping`. */
export const shoppingText = {
  summary: 'What to buy for several batches, in one list',
  options: {
    jars: 'Jars it’s for: lemon + ginger. Left out, all that are running',
    plans: 'Codes of plans it’s for, joined with +',
    have: 'What you’ve got at home: 500 g sugar + 1 l 95% + 4 bottles of 500 ml',
    bottles: 'Bottles you’re going to fill: 500 ml, or 6 x 200 ml',
    'spirit-size': 'The bottles your spirit is sold in: 700 ml',
  },
  examples: ['/shopping plans:11NCHSTJ8P501JQH0JNHC00VV9QPCFH0HFWJ262TYX have:500 g sugar'],
}

/** A plan is called after its first plant, `lemon`; a jar by its name. */
export const forName = ({ plantId, name }: ShopFor): string => (plantId === null ? name : peeledText(plantId, 1))

/** `10` and `unwaxed lemons` of what is counted; null where it is weighed. */
function pieces(plant: PlantToBuy, count: number, format: Format): readonly [amount: string, name: string] | null {
  const { id, ofZest, unit } = plant
  if (id === null || unit === null) return null
  const [amount = '', ...name] = piecesText({ id, count, unit, ofZest }, format, 'unwaxed ')!.split('\u00a0')
  return [amount, name.join('\u00a0')]
}

const weighedName = ({ id, name, isDried }: PlantToBuy): string =>
  id === null ? unknownName(name) : cookName(id, isDried ? 'dried' : undefined)

const plantParts = (plant: PlantToBuy, format: Format): readonly [amount: string, name: string] =>
  (plant.buyCount === null ? null : pieces(plant, plant.buyCount, format)) ?? [
    format.round.mass(plant.buyG),
    weighedName(plant),
  ]

const straining = (isClothWanted: boolean, isPaperWanted: boolean): string =>
  [...(isClothWanted ? ['a straining cloth'] : []), ...(isPaperWanted ? ['paper filters'] : [])].join(' and ')

const strengthOf = ({ abvPercent, drink }: SpiritToBuy, format: Format): string =>
  `${format.wished.strength(abvPercent, 1)} ${drinkWord({ drink })}`

/** Within brackets of its own: `14 oz`, `2 cups, 14 oz`. */
const takenText = (massG: number, material: MaterialId, format: Format): string =>
  [format.round.cups(massG, materialOf(material)), format.round.mass(massG)].filter((text) => text !== null).join(', ')

/** What is at hand is said by the amount that is bought, what is poured and weighed by what it takes. */
function itemParts(item: ShopItem, format: Format): readonly [amount: string, name: string] {
  switch (item.kind) {
    case 'plant':
      return plantParts(item.plant, format)
    case 'spirit': {
      const { abvPercent, sugarGPerL, toBuyMl, count, sizeMl, drink } = item.spirit
      const sweet =
        sugarGPerL >= 1 ? `liqueur (${format.wished.sweetness(sugarGPerL, 0)} of sugar)` : drinkWord({ drink })
      const name = `${format.wished.strength(abvPercent, 1)} ${sweet}`
      const isAll = Math.abs(count * sizeMl - toBuyMl) <= 0.01 * toBuyMl
      return [
        `${count}\u00a0× ${vesselText(sizeMl, format)}`,
        isAll ? name : `${name} (it takes ${format.round.volume(toBuyMl)})`,
      ]
    }
    case 'sweetener': {
      const { material, massG, buyG, bags } = item.sweetener
      const name = sweetenerName(material)
      if (bags !== null) {
        return [
          `${bags}\u00a0× ${packText(buyG / bags, format)}`,
          `${name} (it takes ${takenText(massG, material, format)})`,
        ]
      }
      const volumeMl = pouredMlOf({ material, massG: { value: buyG, plusMinus: 0 } })
      return [volumeMl === null ? scoopedText(buyG, material, format) : format.round.volume(volumeMl.value), name]
    }
    case 'bottles':
    case 'jars': {
      const { kind, vessels } = item
      const sizes = vessels.map(({ buyCount, volumeMl }) => `${buyCount}\u00a0× ${sizeText(kind, volumeMl, format)}`)
      const count = vessels.reduce((sum, { buyCount }) => sum + buyCount, 0)
      const name = plural(count, kind === 'bottles' ? 'bottle' : 'jar')
      return sizes.length === 1 ? [sizes[0]!, name] : [`${count}`, `${name}: ${sizes.join(', ')}`]
    }
    case 'straining':
      return ['Also', straining(item.isClothWanted, item.isPaperWanted)]
  }
}

const sizeText = (kind: 'bottles' | 'jars', volumeMl: number, format: Format): string =>
  kind === 'jars' ? jarText(volumeMl, format) : vesselText(volumeMl, format)

/** What it takes, exactly, of what is poured, weighed or counted. */
function takesText(item: ShopItem, format: Format): string {
  switch (item.kind) {
    case 'plant': {
      const { plant } = item
      const [amount, name] = (plant.count === null ? null : pieces(plant, plant.count, format)) ?? [
        format.round.mass(plant.massG),
        weighedName(plant),
      ]
      return `${amount} ${name}`
    }
    case 'spirit':
      return `${format.round.volume(item.spirit.volumeMl)} of ${strengthOf(item.spirit, format)}`
    case 'sweetener':
      return sweetenerText(item.sweetener.massG, item.sweetener.material, format)
    case 'bottles':
    case 'jars': {
      const count = item.vessels.reduce((sum, each) => sum + each.count, 0)
      const sizes = item.vessels.map((each) => `${each.count}\u00a0× ${sizeText(item.kind, each.volumeMl, format)}`)
      return `${sizes.join(' + ')} ${plural(count, item.kind === 'bottles' ? 'bottle' : 'jar')}`
    }
    case 'straining':
      return straining(item.isClothWanted, item.isPaperWanted)
  }
}

/** The thing alone: `sugar`, `95 % spirit`. */
function thingText(item: ShopItem, format: Format): string {
  switch (item.kind) {
    case 'plant':
      return pieces(item.plant, 2, format)?.[1].replace('unwaxed ', '') ?? weighedName(item.plant)
    case 'spirit':
      return strengthOf(item.spirit, format)
    case 'sweetener':
      return sweetenerName(item.sweetener.material)
    case 'bottles':
    case 'jars':
      return `${listed(item.vessels.map(({ volumeMl }) => sizeText(item.kind, volumeMl, format)))} ${item.kind}`
    case 'straining':
      return straining(item.isClothWanted, item.isPaperWanted)
  }
}

/** What `/shopping` says. */
export const shoppingSentences = {
  headlines: {
    shopping: ({ count, batches }) => {
      const what = listed([...new Set(batches.map(forName))])
      if (batches.length === 0) return 'Nothing to buy.'
      return count === 0
        ? `Nothing to buy for ${what}: you’ve got it all.`
        : `Buy ${counted(count, 'thing')} for ${what}.`
    },
    shopping_no_jars: () => 'You’ve no jar going, so there’s nothing to buy yet. What do you want to make?',
  },
  rows: {
    shop_item: (item, format) => itemParts(item, format)[0],
    shop_for: (batch) => capital(forName(batch)),
  },
  cells: {
    shop_item: (item, format) => itemParts(item, format)[1],
    shop_for: ({ items }, format) =>
      items.length === 0 ? 'nothing more' : items.map((item) => takesText(item, format)).join(', '),
  },
  notes: {
    shopping_assumed: ({ spiritMl, bottleMl, sugarG }, format) => {
      const spirit = either(spiritMl.map((sizeMl) => vesselText(sizeMl, format)))
      const counts = [
        ...(bottleMl === null ? [] : [`${vesselText(bottleMl, format)} bottles to fill`]),
        ...(spiritMl.length === 0 ? [] : [`spirit in ${spirit}`]),
        ...(sugarG === null ? [] : [`sugar in ${packText(sugarG, format)} bags`]),
      ]
      return `I counted ${listed(counts)}.`
    },
    shopping_other_sizes: ({ line }, format) => `Are yours another size? For example: ${format.call(line)}`,
    shopping_enough: ({ items }, format) =>
      `You’ve got enough ${listed(items.map((item) => thingText(item, format)))}.`,
    shopping_not_needed: ({ typed }) =>
      `Nothing here needs the ${listed(typed.map((each) => `“${each.replace(/[“”]/g, '"')}”`))} you’ve got.`,
    shopping_sugar_unknown: ({ jars }) =>
      `I can’t tell how much sugar ${listed(jars)} ${plural(jars.length, 'takes', 'take')}: nothing’s planned for after straining, or it can’t be reached.`,
    shopping_jar_done: ({ jars }) =>
      `${capital(listed(jars))} ${plural(jars.length, 'is', 'are')} done, so nothing’s bought for ${plural(jars.length, 'it', 'them')}.`,
    shopping_by_expectation: () =>
      'Sugar for jars that are still steeping is an estimate, until you’ve strained and measured.',
    shopping_at_home: ({ line }, format) => `Got some of it at home? Say so: ${format.call(line)}`,
  },
  actions: {
    shopping_cost: () => 'What it costs',
    shopping_plan: () => 'Shopping list',
  },
} satisfies Feature<ShoppingMessages>

/** What is asked about what is at hand. */
export const shoppingProblems = {
  pack_weight: ({ typed, example }) =>
    `How much is in “${typed}”? For example: ${lineTyped('shopping', { have: example })}`,
} satisfies Written<ShoppingProblems>
