import type { AskId } from '../../../core/botanical/ask-back.ts'
import { botanicalById } from '../../../core/botanical/catalogue/catalogue.ts'
import type { BotanicalProblems } from '../../../core/botanical/problems.ts'
import type { LiqueurPlant } from '../../../core/botanical/words/liqueur-names.ts'
import type { Format } from '../format.ts'
import { askedNames, isAskedName } from './asked-names.ts'
import { cookName } from './botanical/cook-name.ts'
import { overCeilingText } from './botanical/limit-words.ts'
import { foodText } from './food-text.ts'
import { reasonOf, refusalText } from './refusals.ts'

const nameOf = (id: string): string => cookName(id)

const either = (texts: readonly string[]): string =>
  texts.length < 2 ? texts.join('') : `${texts.slice(0, -1).join(', ')} or ${texts.at(-1)}`

/** What is asked where a word fits more than one thing. */
const questions: { readonly [Id in Exclude<AskId, keyof typeof askedNames>]: string } = {
  coffee: 'is it whole, cracked or ground',
  bay: 'is it fresh or dried',
  chilli: 'is it fresh or dried',
  cinnamon: 'is it Ceylon or cassia (not sure: say cassia, it has the stricter limit)',
  mint: 'is it peppermint or spearmint (never pennyroyal)',
  fennel: 'is it the seed or the fronds',
  tea: 'is it black, green, oolong or white',
  pine: 'is it the cones or the buds',
  citronella: 'is it lemongrass or lemon balm (never the oil)',
  pepper: 'is it a peppercorn, allspice, sweet pepper or chilli',
  coriander: 'is it the seed or the leaf',
  artemisia: 'is it wormwood or genepi (their amounts differ tenfold)',
  walnut: 'is it the ripe nut, or green and unripe',
  laurel: 'is it true bay, bought or surely known (a hedge laurel is poisonous)',
  wild_fennel: 'is it bought or from a garden (hemlock looks like the wild one)',
  elder: 'is it the flower (berries, leaves and bark make you ill)',
  crocus: 'is it bought saffron (a garden crocus can be deadly)',
  illicium: 'is it star anise, Illicium verum, from a food brand (other kinds are poisonous)',
  juniperus: 'is it berries of common juniper sold as food (garden junipers can be poisonous)',
  almond_kernel: 'is it sweet almonds sold as food (bitter ones give off cyanide)',
  stone_fruit: 'which fruit is it, without its stones (they give off cyanide)',
  rhubarb: 'is it the stalk (the leaf is poisonous, and I don’t know the root)',
  fig_tree: 'is it the fruit, fresh or dried (the leaf burns skin)',
  conifer: 'which tree is it surely (yew is deadly)',
  currant: 'is it black, red, or dried as raisins are',
  chocolate: 'is it dark chocolate, cocoa powder or nibs',
  green_pepper: 'is it the vegetable or the peppercorn',
  poppy: 'which part is it (seed, pods and straw all carry opium)',
}

/** What goes into a liqueur that was named, with about as much as a litre of spirit takes. Common practice, no source. */
const madeOf: { readonly [Id in LiqueurPlant]: string } = {
  lemon_peel: 'lemon peel: write that, as in 10 lemons',
  orange_peel: 'orange peel: write that, as in 8 oranges',
  mandarin_peel: 'mandarin peel: write that, as in 10 mandarins',
  green_walnut: 'green walnuts: write that, as in 20 green walnuts',
}

/** Volumes are known as well as a kitchen jug tells them. */
const VOLUME_TOOL_SHARE = 0.02

/** Grams, rounded down so that the amount said is still allowed. */
const gramsAtMost = (massG: number, format: Format): string => {
  const step = massG < 10 ? 0.1 : 1
  return `${format.plain(Math.floor(massG / step + 1e-9) * step, 1)} g`
}

const capital = (text: string): string => `${text.charAt(0).toUpperCase()}${text.slice(1)}`

/** Why a plant cannot be used, and what to do instead. */
export const botanicalProblems = {
  refused_botanical: (values) => refusalText(values, nameOf),
  near_refused: ({ typed, name, id }) =>
    `Did you mean ${name}? I don’t plan that. ${reasonOf(id)} If “${typed}” is something else, what else is it called?`,
  foraged_botanical: ({ id }) =>
    `Picked plants get mistaken for poisonous ones. Are you certain it’s ${nameOf(id)}, and fit to eat?` +
    ' Then leave out where you picked it. If not, buy it.',
  garden_botanical: ({ id, retype }) =>
    `Did you plant it yourself, as ${nameOf(id)}? Some look-alikes are poisonous. If you did, type: ${retype.line ?? retype.as}`,
  unclear_botanical: ({ typed, ask, choices }) => {
    if (ask !== null && isAskedName(ask)) return askedNames[ask].replace('THIS', capital(typed))
    const question = ask === null ? 'which do you mean' : questions[ask]
    return choices.length === 0
      ? `“${typed}”: ${question}?`
      : `“${typed}”: ${question}? Write ${either(choices.map(nameOf))}.`
  },
  unknown_botanical: ({ typed, nearest, liqueur, food }) => {
    if (food !== null) return foodText(food)
    if (liqueur !== null) return `“${typed}” is a liqueur, made of ${madeOf[liqueur]}.`
    const near = nearest.length === 0 ? '' : ` Nearest: ${either(nearest.map(nameOf))}.`
    return `I don’t know “${typed.replace(/[“”]/g, '"')}”. What else is it called?${near}`
  },
  over_food_bound: ({ name, mostG, volumeMl, mostGPerL }, format) =>
    `That’s more ${name} than I plan. ${capital(gramsAtMost(mostGPerL, format))} in a litre of spirit is the most of its kind,` +
    ` so ${gramsAtMost(mostG, format)} for your ${format.volume({ value: volumeMl, plusMinus: VOLUME_TOOL_SHARE * volumeMl })}.`,
  unknown_form: ({ id, state }) =>
    `I only know ${nameOf(id)} ${botanicalById(id).form.state}, not ${state}. Have you got it ${botanicalById(id).form.state}?`,
  unsaid_form: ({ id, states }) =>
    `${capital(either(states))} ${id.replaceAll('_', ' ')}? How much is safe depends on it. Write ${either(states.map((state) => `${state} ${id.replaceAll('_', ' ')}`))}.`,
  over_ceiling: overCeilingText,
} satisfies {
  readonly [Key in keyof BotanicalProblems]: (values: BotanicalProblems[Key], format: Format) => string
}
