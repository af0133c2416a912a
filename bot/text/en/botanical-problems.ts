import type { AskId } from '../../../core/botanical/ask-back.ts'
import type { AddedAskId } from '../../../core/botanical/asked-names.ts'
import type { LimitKey } from '../../../core/botanical/botanical.ts'
import { botanicalById } from '../../../core/botanical/catalogue/catalogue.ts'
import type { LiqueurPlant } from '../../../core/botanical/liqueur-names.ts'
import type { BotanicalProblems } from '../../../core/botanical/problems.ts'
import type { RefusalId } from '../../../core/botanical/refused.ts'
import type { Format } from '../format.ts'
import { foodText } from './food-text.ts'
import { ifDrunk } from './if-drunk.ts'

const nameOf = (id: string): string => botanicalById(id).names.title.toLowerCase()

const either = (texts: readonly string[]): string =>
  texts.length < 2 ? texts.join('') : `${texts.slice(0, -1).join(', ')} or ${texts.at(-1)}`

/** What a refused thing does, and what to use instead. */
const refusals: { readonly [Id in RefusalId]: string } = {
  tobacco: 'Spirit draws out the nicotine, and one small glass can poison you.',
  foxglove: 'It stops the heart. Two leaves in a drink have put someone in hospital.',
  oleander: 'Every part of it poisons the heart.',
  heart_poisons: 'It poisons the heart, as foxglove and oleander do.',
  yew: 'It stops the heart, and there’s no cure.',
  hemlock: 'It paralyses your breathing, and it looks like wild carrot or fennel.',
  water_hemlock: 'It brings on fits and kills. It gets mistaken for celery or parsnip.',
  aconite: 'A little of it kills, and home-made drinks with it have.',
  garden_poisons: 'It’s a poisonous plant of gardens and hedges.',
  nightshade: 'It brings on delirium, fits and death.',
  lily_valley: 'It poisons the heart, and its leaves get mistaken for wild garlic.',
  colchicum: 'Three or four leaves can kill. It gets mistaken for wild garlic or saffron.',
  veratrum: 'It slows the heart until it stops. It has been dug up for gentian.',
  hellebore: 'It poisons the heart.',
  jp_star_anise: 'It brings on fits. Use star anise from a food brand.',
  castor: 'A few chewed seeds can kill, and there’s no cure.',
  rue: 'It burns skin in sunlight and can end a pregnancy. Rosemary gives a bitter, resinous note.',
  pennyroyal: 'It wrecks the liver. Use spearmint.',
  tansy: 'It’s rich in thujone, which acts on the nerves. Use rosemary.',
  tonka: 'A fraction of a bean holds a day’s limit of coumarin. Use vanilla.',
  calamus: 'It has asarone, which is suspected of causing cancer. Use angelica root from a shop.',
  sassafras: 'It has safrole, which harms the liver. Use star anise.',
  kernels: 'Stones, pips and bitter almonds give off cyanide. Use sweet almonds, or the fruit without its stones.',
  cracked_stones: 'Crushed stones give off cyanide. Take the stones out and say “stoned”, or leave the fruit whole.',
  cherry_laurel: 'It gives off cyanide, and people have died of it. Use bay leaves from a shop.',
  elder_raw: 'Only the flower of elder is food, the rest gives off cyanide. Use elderflowers off their stalks.',
  mushrooms: 'Deadly ones look like good ones, and some good ones turn poisonous with alcohol.',
  st_johns_wort: 'It makes many medicines fail, the pill and heart medicines too. Use lemon balm.',
  germander: 'It wrecks the liver. Use gentian root from a shop.',
  pa_plants: 'It damages the liver little by little. Use lemon balm or mint.',
  aristolochia: 'It destroys the kidneys and causes cancer.',
  gelsemium: 'A home-made liqueur with it has killed. Use elderflowers.',
  rhododendron: 'It slows the heart and the breath.',
  laburnum_etc: 'It’s a poisonous garden plant.',
  mistletoe: 'Its berries and leaves are poisonous, and nobody knows a safe amount.',
  savin: 'Its oil is poisonous and can end a pregnancy. Use juniper berries from a food shop.',
  drugs: 'Nobody can dose that with alcohol at home.',
  industrial_alcohol: 'It can hold methanol or additives that poison you. Use spirit sold for drinking.',
  chemicals: 'It’s no food, and it can poison you.',
  animals: 'Animals and raw meat carry venom, parasites and germs. I only plan plants.',
  rhubarb_tomato: 'These leaves and green potatoes are poisonous. Of rhubarb only the stalk is food.',
  poisonous_raw: 'Spirit doesn’t cook it, and it’s poisonous or dangerous uncooked.',
  quinine_bark: 'The quinine in bark varies, and too much harms ears, eyes and heart. Buy a bitter.',
  fig_leaf: 'Its sap burns skin in sunlight, and nobody knows a safe amount. Use ripe figs.',
  essential_oils: 'Oils and extracts are too strong to dose at home.',
  foraged: 'Deadly plants look like good ones. Buy it, or use a plant that I know.',
  unnamed_plant: 'Without its name I can’t tell whether it’s food. What is it called?',
  wild_garlic: 'Autumn crocus and lily of the valley get mistaken for it, and people have died.',
  wild_carrot_family: 'Hemlock and water dropwort look just like its wild relatives. Use bought ones.',
  self_dug_gentian: 'White hellebore gets dug up for it. Use bought dried gentian root.',
  florist_flowers: 'Flowers for the vase aren’t grown to be eaten. Use unsprayed, edible ones.',
  elderberry:
    'Raw or dried, they make you ill. Simmer the berries 20 minutes in water, off their stalks, and stir the juice in with /mix.',
  dairy_egg: 'Milk, cream and egg keep for days in the cold, so I don’t plan them.',
  plant_milk: 'It’s fat that spoils within days, and it can set off an allergy. Use the nuts themselves, toasted.',
  poppy_seed: 'The seed carries opium alkaloids, and spirit draws them out. Toasted hazelnuts give a nutty note.',
  milk_thistle: 'It’s a medicine for the liver, and nobody knows a safe amount for a drink. Use artichoke leaf.',
  stone_fruit_leaves: 'Leaves of stone fruit give off cyanide, and nobody knows a safe amount. Use the fruit.',
  medicines: 'Medicine never goes into a drink.',
}

/** What can kill whoever has had it. */
const DEADLY: ReadonlySet<RefusalId> = new Set<RefusalId>([
  'tobacco',
  'foxglove',
  'oleander',
  'heart_poisons',
  'yew',
  'hemlock',
  'water_hemlock',
  'aconite',
  'garden_poisons',
  'nightshade',
  'lily_valley',
  'colchicum',
  'veratrum',
  'hellebore',
  'jp_star_anise',
  'castor',
  'kernels',
  'cherry_laurel',
  'mushrooms',
  'pennyroyal',
  'savin',
  'gelsemium',
  'rhododendron',
  'laburnum_etc',
  'mistletoe',
  'drugs',
  'medicines',
  'industrial_alcohol',
  'chemicals',
])

/** What is asked where a word fits more than one thing. */
const questions: { readonly [Id in Exclude<AskId, AddedAskId>]: string } = {
  coffee: 'is it whole, cracked or ground',
  bay: 'is it fresh or dried',
  chilli: 'is it fresh or dried',
  cinnamon: 'is it Ceylon or cassia (not sure: say cassia, it has the stricter limit)',
  mint: 'is it peppermint or spearmint (never pennyroyal)',
  fennel: 'is it the seed or the fronds',
  tea: 'is it black or green',
  pine: 'is it the cones or the buds',
  citronella: 'is it lemongrass or lemon balm (never the oil)',
  pepper: 'is it black pepper, pink pepper, allspice or chilli',
  coriander: 'is it the seed (I don’t know the leaf)',
  artemisia: 'is it wormwood or genepi (their amounts differ tenfold)',
  walnut: 'is it green and unripe (I don’t know the ripe nut)',
  laurel: 'is it true bay, bought or surely known (a hedge laurel is poisonous)',
  wild_fennel: 'is it bought or from a garden (hemlock looks like the wild one)',
  elder: 'is it the flower (berries, leaves and bark make you ill)',
  crocus: 'is it bought saffron (a garden crocus can be deadly)',
  illicium: 'is it star anise, Illicium verum, from a food brand (other kinds are poisonous)',
  juniperus: 'is it berries of common juniper sold as food (garden junipers can be poisonous)',
  almond_kernel: 'is it sweet almonds sold as food (bitter ones give off cyanide)',
  stone_fruit: 'which fruit is it, without its stones (they give off cyanide)',
  rhubarb: 'is it the stalk (the leaf is poisonous, and I don’t know the root)',
  fig_tree: 'is it the ripe fruit (the leaf burns skin)',
  conifer: 'is it surely a pine, and its cones or its buds (yew is deadly)',
  poppy: 'which part is it (seed, pods and straw all carry opium)',
}

/** Whole questions, each with what to write. */
const added: { readonly [Id in AddedAskId]: string } = {
  rosebay:
    'Is that rosebay willowherb? Oleander has the same name, and it kills. Write “fireweed” if it’s the willowherb.',
  leopards_bane: 'That name is used for several plants, and some of them kill. What’s its Latin name?',
  almond_extract: 'Almond extract often comes from bitter kernels. Have you got sweet almonds? Write “100 g almonds”.',
  mahleb: 'Mahleb is ground cherry kernel, and that gives off cyanide. Would sweet almonds do? Write “100 g almonds”.',
  cherry_laurel_fruit:
    'Cherry laurel kills, and I can’t tell fruit from leaf here. Have you got cherries? Write “500 g sour cherries”.',
  coumarin_herb: 'It has coumarin, and I’ve no safe amount for it. Would vanilla do? Write “1 vanilla pod”.',
  wild_ginger: 'Is that root ginger from a shop? The wild plant destroys the kidneys. Write “100 g ginger”.',
  costmary: 'Is that costmary? Tansy has the same name, and it acts on the nerves. Write “costmary leaf”.',
  mugwort: 'Mugwort has thujone, and I’ve no safe amount for it. Would rosemary do? Write “20 g rosemary”.',
  skullcap:
    'Skullcap gets swapped for germander, which wrecks the liver. Would lemon balm do? Write “50 g lemon balm”.',
  pine_tips:
    'Are you sure it’s pine? Yew tips look alike, and yew kills. If they’re bought, or you know the tree, write “pine buds”.',
  berries_mixed: 'Which berries are in it? Give each its own grams, like “200 g raspberries + 100 g blackberries”.',
  spices_mixed:
    'Which spices are in it? Some have a limit. Give each its own grams, like “3 g Ceylon cinnamon + 2 g cloves”.',
  sweet_things:
    'That’s a sweetener, so it goes in after straining. Leave it out of the plants and stir it in at the end.',
  vanilla_made:
    'Have you got a pod? Extract, paste and vanilla sugar go in after straining, to taste. Write “1 vanilla pod”.',
}

const isAdded = (ask: AskId): ask is AddedAskId => Object.hasOwn(added, ask)

const limits: { readonly [Key in LimitKey]?: string } = {
  thujone: 'thujone',
  coumarin: 'coumarin',
  liquorice: 'glycyrrhizin',
  bitterness: 'bitterness',
  saffron_dose: 'saffron',
  nutmeg: 'nutmeg',
  capsaicin: 'heat',
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

const refusalText = ({ id, name, instead }: BotanicalProblems['refused_botanical']): string => {
  const use = id === 'essential_oils' && instead !== null ? ` Use ${nameOf(instead)} itself.` : ''
  return `I don’t plan ${name}. ${refusals[id]}${use}${DEADLY.has(id) ? ` ${ifDrunk()}` : ''}`
}

/** Why a plant cannot be used, and what to do instead. */
export const botanicalProblems = {
  refused_botanical: refusalText,
  near_refused: ({ typed, name, id }) =>
    `Did you mean ${name}? I don’t plan that. ${refusals[id]} If “${typed}” is something else, what else is it called?`,
  foraged_botanical: ({ id }) =>
    `Deadly plants look like ${nameOf(id)}. Are you certain it’s that, and fit to eat? Then leave out where you picked it.` +
    ' If not, buy it.',
  garden_botanical: ({ id, retype }) =>
    `Did you plant it yourself, as ${nameOf(id)}? Its doubles are poisonous. If you did, type: ${retype.line ?? retype.as}`,
  refused_spirit: ({ word }) =>
    `“${word}” is not for drinking: such alcohol can blind or kill, and nothing done at home makes it safe.` +
    ' Take bought, taxed food spirit.',
  near_refused_spirit: ({ typed, word }) =>
    `“${typed}” is very near “${word}”, which must not be drunk. Write what the bottle’s label says.`,
  unclear_botanical: ({ typed, ask, choices }) => {
    if (ask !== null && isAdded(ask)) return added[ask]
    const question = ask === null ? 'which do you mean' : questions[ask]
    return choices.length === 0
      ? `“${typed}”: ${question}?`
      : `“${typed}”: ${question}? Write ${either(choices.map(nameOf))}.`
  },
  unknown_botanical: ({ typed, nearest, liqueur, food }) => {
    if (food !== null) return foodText(food)
    if (liqueur !== null) return `“${typed}” is a liqueur, made of ${madeOf[liqueur]}.`
    const near = nearest.length === 0 ? '' : ` Nearest: ${either(nearest.map(nameOf))}.`
    return `I don’t know “${typed}”. What else is it called?${near}`
  },
  over_food_bound: ({ name, mostG, volumeMl, mostGPerL }, format) =>
    `That’s more ${name} than I plan. ${capital(gramsAtMost(mostGPerL, format))} in a litre of spirit is the most of its kind,` +
    ` so ${gramsAtMost(mostG, format)} for your ${format.volume({ value: volumeMl, plusMinus: VOLUME_TOOL_SHARE * volumeMl })}.`,
  unknown_form: ({ id, state }) =>
    `I only know ${nameOf(id)} ${botanicalById(id).form.state}, not ${state}. Have you got it ${botanicalById(id).form.state}?`,
  unsaid_form: ({ id, states }) =>
    `Is the ${nameOf(id)} ${either(states)}? How much is safe depends on it; write ${either(states.map((state) => `${state} ${id.replaceAll('_', ' ')}`))}.`,
  over_ceiling: ({ hazard, of, per, volumeMl }, format) => {
    const most = of.map(({ id, mostG }) => `${gramsAtMost(mostG, format)} of ${nameOf(id)}`)
    const where = per === 'spirit' ? 'of steeping spirit' : 'of finished drink'
    return (
      `Too much ${limits[hazard] ?? hazard}: in ${format.volume({ value: volumeMl, plusMinus: VOLUME_TOOL_SHARE * volumeMl })} ${where} take at most` +
      ` ${most.join(' with ')}.`
    )
  },
} satisfies {
  readonly [Key in keyof BotanicalProblems]: (values: BotanicalProblems[Key], format: Format) => string
}
