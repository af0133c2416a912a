import type { AskId } from '../../../core/botanical/ask-back.ts'
import type { LimitKey } from '../../../core/botanical/botanical.ts'
import { botanicalById } from '../../../core/botanical/catalogue/catalogue.ts'
import type { LiqueurPlant } from '../../../core/botanical/liqueur-names.ts'
import type { BotanicalProblems } from '../../../core/botanical/problems.ts'
import type { RefusalId } from '../../../core/botanical/refused.ts'
import type { Format } from '../format.ts'

const nameOf = (id: string): string => botanicalById(id).names.title.toLowerCase()

const either = (texts: readonly string[]): string =>
  texts.length < 2 ? texts.join('') : `${texts.slice(0, -1).join(', ')} or ${texts.at(-1)}`

/** What a refused thing does, and what to take instead. */
const refusals: { readonly [Id in RefusalId]: string } = {
  tobacco: 'Spirit draws out nicotine, and one small glass can poison.',
  foxglove: 'It stops the heart; two leaves in a drink have sent someone to hospital.',
  oleander: 'Every part of it poisons the heart.',
  yew: 'It stops the heart, and nothing helps.',
  hemlock: 'It paralyses breathing, and it looks like wild carrot or fennel.',
  water_hemlock: 'It brings on fits and kills; it is taken for celery or parsnip.',
  aconite: 'A little of it kills, and home-made medicinal drinks of it have.',
  garden_poisons: 'It is a poisonous plant of gardens and hedges (from memory).',
  nightshade: 'It causes delirium, fits and death.',
  lily_valley: 'It poisons the heart, and its leaves are taken for wild garlic.',
  colchicum: 'Three or four leaves can kill; it is taken for wild garlic or saffron.',
  veratrum: 'It slows the heart dangerously; it has been dug for gentian and steeped at home.',
  hellebore: 'It poisons the heart.',
  jp_star_anise: 'It causes seizures. Take star anise (Illicium verum) from a food brand.',
  castor: 'A few chewed seeds can kill, and nothing undoes it.',
  rue: 'It burns skin in sunlight and can end a pregnancy. Rosemary gives a bitter, resinous note.',
  pennyroyal: 'It damages the liver. Take spearmint.',
  tansy: 'It is rich in thujone, which acts on the nerves.',
  tonka: 'It holds so much coumarin that a fraction of a bean is a day’s limit. Take vanilla.',
  calamus: 'It holds asarone, which is suspected of causing cancer; its richest form is banned from food.',
  sassafras: 'It holds safrole, which harms the liver and is limited in drinks.',
  kernels: 'Stones, pips and bitter almonds give off cyanide. Take sweet almonds, or the pitted flesh.',
  cherry_laurel: 'It gives off cyanide, and people have died of it. Take bay leaves sold for cooking.',
  elder_raw: 'Raw elder other than the flower gives off cyanide. Take elderflowers without their stalks.',
  mushrooms: 'Deadly ones look like good ones, and some turn poisonous with alcohol.',
  st_johns_wort: 'It makes many medicines fail, the pill and heart medicines among them.',
  germander: 'It damages the liver.',
  pa_plants: 'It holds alkaloids that damage the liver little by little.',
  aristolochia: 'It destroys the kidneys and causes cancer.',
  gelsemium: 'A home-made herbal liqueur with it has killed.',
  rhododendron: 'It holds grayanotoxins, which slow heart and breathing.',
  laburnum_etc: 'It is a poisonous garden plant.',
  mistletoe: 'Its berries and leaves are toxic, and no safe amount for a drink is known.',
  savin: 'Its oil is poisonous and can end a pregnancy. Take common juniper berries from a food shop.',
  drugs: 'Drugs and alcohol together cannot be dosed at home.',
  industrial_alcohol:
    'It is no food: it may hold methanol or what makes it undrinkable. Take bought, taxed food spirit.',
  animals: 'Animals and raw meat carry venom, parasites and germs.',
  rhubarb_tomato: 'These leaves and green potatoes are poisonous. Of rhubarb only the stalk is food.',
  quinine_bark: 'The quinine in bark varies, and too much harms hearing, sight and heart. Take a bought bitter.',
  fig_leaf: 'Its sap burns skin in sunlight, and no safe amount for a drink is known. Take ripe figs.',
  essential_oils: 'Oils and essences are so concentrated that a home dose cannot be judged. Take the plant itself.',
  foraged: 'Deadly plants look like good ones. Take a plant you can name for certain and that I know, or buy it.',
  unnamed_plant: 'A plant that cannot be named gets no amount and no dates.',
  wild_garlic: 'Autumn crocus and lily of the valley are taken for it, and people have died.',
  wild_carrot_family: 'Hemlock and water dropwort look like its wild relatives. Take it cultivated or bought.',
  self_dug_gentian: 'White hellebore is dug for it by mistake. Take bought dried root.',
  florist_flowers: 'Flowers sold for the vase are not grown for food. Take unsprayed, edible ones.',
  elderberry: 'Raw or dried elderberries make ill. Only cooked ones are food, and for those I plan no dates.',
  dairy_egg: 'Milk, cream and egg keep for days in the cold, so I do not plan them.',
  stone_fruit_leaves: 'Leaves of stone fruit give off cyanide, and no safe home amount is known. Take the flesh.',
  medicines: 'Medicine and alcohol never go together in a drink.',
}

/** What is asked where a word fits more than one thing. */
const questions: { readonly [Id in AskId]: string } = {
  coffee: 'is it whole, cracked or ground',
  bay: 'is it fresh or dried',
  chilli: 'is it fresh or dried',
  cinnamon: 'is it Ceylon or cassia (unsure: take cassia, the stricter)',
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
  wild_fennel: 'is it bought or from a garden (picked in the wild I refuse it: hemlock looks alike)',
  elder: 'is it the flower (berries, leaves and bark I refuse)',
  crocus: 'is it bought saffron (a garden crocus can be deadly)',
  illicium: 'is it star anise, Illicium verum, from a food brand (other kinds are poisonous)',
  juniperus: 'is it berries of common juniper sold as food (garden junipers can be poisonous)',
  almond_kernel: 'is it sweet almonds sold as food (bitter ones I refuse)',
  stone_fruit: 'which fruit is it, and only its flesh (kernels I refuse)',
  rhubarb: 'is it the stalk (the leaf is poisonous, and I do not know the root)',
  fig_tree: 'is it the fruit, fresh or dried (the leaf I refuse)',
  conifer: 'which tree is it surely (yew is deadly)',
  currant: 'is it black, red, or dried as raisins are',
  chocolate: 'is it dark chocolate, cocoa powder or nibs',
  green_pepper: 'is it the vegetable or the peppercorn',
  poppy: 'what is it (poppy seed I do not know; pods and straw I refuse)',
}

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

/** Why a plant cannot be taken, and what to do instead. */
export const botanicalProblems = {
  refused_botanical: ({ id, name }) => `I do not plan ${name}. ${refusals[id]}`,
  near_refused: ({ typed, name, id }) =>
    `“${typed}” is very near ${name}, which I refuse. ${refusals[id]} If you mean something else, write its full name.`,
  foraged_botanical: ({ id }) =>
    `Look-alikes picked in the wild kill. If you are certain that it is ${nameOf(id)} and fit to eat, write it without` +
    ' “wild” or where you picked it; otherwise buy it.',
  refused_spirit: ({ word }) =>
    `“${word}” is not for drinking: such alcohol can blind or kill, and nothing done at home makes it safe.` +
    ' Take bought, taxed food spirit.',
  near_refused_spirit: ({ typed, word }) =>
    `“${typed}” is very near “${word}”, which must not be drunk. Write what the bottle’s label says.`,
  unclear_botanical: ({ typed, ask, choices }) => {
    const question = ask === null ? 'which do you mean' : questions[ask]
    return choices.length === 0
      ? `“${typed}”: ${question}?`
      : `“${typed}”: ${question}? Write ${either(choices.map(nameOf))}.`
  },
  unknown_botanical: ({ typed, nearest, liqueur }) =>
    liqueur !== null
      ? `“${typed}” is no plant but a liqueur, made of ${madeOf[liqueur]}.`
      : `I do not know “${typed}” and give no amount for what I do not know.` +
        `${nearest.length === 0 ? '' : ` Nearest: ${either(nearest.map(nameOf))}.`}`,
  unknown_form: ({ id, state }) =>
    `I know ${nameOf(id)} only as ${botanicalById(id).form.state}, not ${state}, and do not guess an amount.`,
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
