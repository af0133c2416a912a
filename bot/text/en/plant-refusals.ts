import type { AddedAskId, AskId } from '../../../core/botanical/ask-back.ts'
import type { LimitKey } from '../../../core/botanical/botanical.ts'
import { botanicalById } from '../../../core/botanical/catalogue/catalogue.ts'
import type { FoodAnswer, FoodQuestion } from '../../../core/botanical/food.ts'
import type { BotanicalProblems, UnplannedFood } from '../../../core/botanical/problems.ts'
import type { RefusalId } from '../../../core/botanical/refused.ts'
import type { SpiritProblems } from '../../../core/botanical/spirit/problems.ts'
import type { UndrinkableId } from '../../../core/botanical/spirit/undrinkable.ts'
import type { LiqueurPlant } from '../../../core/botanical/words/liqueur-names.ts'
import { lineTyped, shortLineTyped } from '../../calls/write-line.ts'
import type { Format } from '../format.ts'
import type { Written } from '../language.ts'
import type { LimitProblems, PieceWeight } from '../messages/limit-problems.ts'
import { cookName } from './cook-names.ts'
import { capital, either, listed } from './phrases.ts'
import { gramsAtMost } from './words.ts'

/** Beside what can kill. */
export const ifDrunk = (): string => 'If anyone’s had some, call a poison centre or the emergency number now.'

/** What a refused thing does, and what to use instead. */
const refusals: { readonly [Id in RefusalId]: string } = {
  tobacco: 'Spirit draws out the nicotine, and one small glass can poison you.',
  foxglove: 'It stops the heart. Two leaves in a drink have put someone in hospital.',
  oleander: 'Every part of it poisons the heart.',
  heart_poisons: 'It poisons the heart, as foxglove and oleander do.',
  yew: 'It stops the heart, and there is no antidote.',
  hemlock: 'It stops your breathing. People mistake it for wild carrot or fennel.',
  water_hemlock: 'It causes seizures and death. People mistake it for celery or parsnip.',
  aconite: 'A little of it kills. Home-made drinks with it have killed.',
  garden_poisons: 'It’s a poisonous plant of gardens and hedges.',
  nightshade: 'It causes delirium, seizures and death.',
  lily_valley: 'It poisons the heart, and its leaves get mistaken for wild garlic.',
  colchicum: 'Three or four leaves can kill. People mistake it for wild garlic or saffron.',
  veratrum: 'It slows the heart until it stops. People dig it up for gentian.',
  hellebore: 'It poisons the heart.',
  jp_star_anise: 'It causes seizures. Use star anise from a food brand.',
  castor: 'A few chewed seeds can kill, and there is no antidote.',
  rue: 'It burns skin in sunlight and can end a pregnancy. Use rosemary.',
  pennyroyal: 'It wrecks the liver. Use spearmint.',
  tansy: 'It’s rich in thujone, which acts on the nerves. Use rosemary.',
  tonka: 'A fraction of a bean has a day’s limit of coumarin. Use vanilla.',
  calamus: 'It has asarone, which is suspected of causing cancer. Use angelica root from a shop.',
  sassafras: 'It has safrole, which harms the liver. Use star anise.',
  kernels: 'Stones, pips and bitter almonds give off cyanide. Use the flesh alone, or sweet almonds.',
  cracked_stones: 'Crushed stones give off cyanide. Take them out and say “stoned”, or leave the fruit whole.',
  cherry_laurel: 'It gives off cyanide, and people have died of it. Use bay leaves from a shop.',
  elder_raw: 'Only the flower of elder is food. The rest gives off cyanide.',
  ergot: 'It cuts off the blood to fingers and toes, and it causes seizures.',
  mushrooms: 'Deadly ones look like good ones, and some good ones poison you with alcohol.',
  st_johns_wort: 'It stops many medicines working, the pill and heart medicines too. Use lemon balm.',
  germander: 'It wrecks the liver. Use gentian root from a shop.',
  pa_plants: 'It damages the liver little by little. Use lemon balm or mint.',
  aristolochia: 'It destroys the kidneys and causes cancer.',
  gelsemium: 'A home-made liqueur with it has killed. Use elderflowers.',
  rhododendron: 'It slows the heart and the breath.',
  laburnum_etc: 'It’s a poisonous garden plant.',
  mistletoe: 'Its berries and leaves are poisonous.',
  savin: 'Its oil is poisonous and can end a pregnancy. Use juniper berries from a food shop.',
  drugs: 'Nobody can dose that with alcohol at home.',
  industrial_alcohol: 'It can contain methanol or additives that poison you. Use spirit sold for drinking.',
  chemicals: 'It’s not food, and it can poison you.',
  animals: 'Animals and raw meat carry venom, parasites and germs. I only plan plants.',
  rhubarb_tomato: 'Rhubarb leaf and all green of tomato and potato are poisonous. Use the stalk, or the ripe fruit.',
  poisonous_raw: 'Spirit doesn’t cook it, and it’s dangerous uncooked.',
  quinine_bark: 'The quinine in bark varies, and too much harms ears, eyes and heart. Buy a bitter.',
  fig_leaf: 'Its sap burns skin in sunlight, and nobody knows a safe amount. Use ripe figs.',
  essential_oils: 'Oils and extracts are too strong to dose at home.',
  foraged: 'Deadly plants look like good ones. Buy it, or use a plant that I know.',
  unnamed_plant: 'Without its name I can’t tell whether it’s food. What’s it called?',
  wild_garlic: 'Autumn crocus and lily of the valley get mistaken for it, and people have died.',
  wild_carrot_family: 'Hemlock and water dropwort look just like its wild relatives. Use bought ones.',
  self_dug_gentian: 'White hellebore gets dug up for it. Use bought dried gentian root.',
  florist_flowers: 'Flowers for the vase aren’t grown to be eaten. Use unsprayed, edible ones.',
  elderberry:
    'Raw or dried elderberries make people ill. Cooked ones are fine to eat, but I can’t plan a jar with them.',
  dairy_egg: 'Cream, milk and egg liqueurs spoil within days, even in the fridge.',
  plant_milk: 'It spoils within days, and it can set off an allergy. Use the nuts themselves, toasted.',
  poppy_seed: 'The seed has opium in it, and spirit draws it out. Toasted hazelnuts give a nutty note.',
  milk_thistle: 'It’s a medicine for the liver. Use artichoke leaf.',
  stone_fruit_leaves: 'Leaves of stone fruit give off cyanide. Use the fruit.',
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
  'ergot',
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
  'poisonous_raw',
])

/** Why it is refused, and what to use instead. */
const reasonOf = (id: RefusalId): string => refusals[id]

const refusalText = (
  { id, name, instead }: BotanicalProblems['refused_botanical'],
  nameOf: (id: string) => string,
): string => {
  const use = id === 'essential_oils' && instead !== null ? ` Use ${nameOf(instead)}.` : ''
  return `I don’t plan ${name.replace(/\.$/, '')}. ${refusals[id]}${use}${DEADLY.has(id) ? ` ${ifDrunk()}` : ''}`
}

/** Whole questions, each with what to write; THIS stands for what was typed. */
const askedNames: { readonly [Id in AddedAskId]: string } = {
  rosebay:
    'Is that rosebay willowherb? Oleander has the same name, and it kills. Write “fireweed” if it’s the willowherb.',
  leopards_bane: 'That name is used for several plants, and some of them kill. What’s its Latin name?',
  almond_extract: 'Almond extract often comes from bitter kernels. Have you got sweet almonds? Write “100 g almonds”.',
  mahleb: 'Mahleb is ground cherry kernel, and that gives off cyanide. Would sweet almonds do? Write “100 g almonds”.',
  cherry_laurel_fruit:
    'Cherry laurel kills, and I can’t tell fruit from leaf here. Have you got cherries? Write “500 g sour cherries”.',
  coumarin_herb: 'THIS has coumarin, and I’ve no safe amount for it. Would vanilla do? Write “1 vanilla pod”.',
  wild_ginger: 'Is that root ginger from a shop? The wild plant destroys the kidneys. Write “100 g ginger”.',
  costmary:
    'That’s a name of costmary and of tansy, and tansy acts on the nerves. Would rosemary do? Write “20 g rosemary”.',
  mugwort: 'Mugwort has thujone, and I’ve no safe amount for it. Would rosemary do? Write “20 g rosemary”.',
  skullcap:
    'Skullcap gets swapped for germander, which wrecks the liver. Would lemon balm do? Write “50 g lemon balm”.',
  pine_tips:
    'Are you sure it’s pine? Yew tips look alike, and yew kills. If they’re bought, or you know the tree, write “pine buds”.',
  berries_mixed: 'Which berries are in it? Give each its own grams, like “200 g raspberries + 100 g blackberries”.',
  spices_mixed:
    'Which spices are in it? Some have a limit. Give each its own grams, like “3 g Ceylon cinnamon + 2 g cloves”.',
  sweet_things:
    'THIS: that’s a sweetener, so leave it out of the plants. Honey, say, goes in at the end, as the sugar.',
  not_listed: 'THIS is on no list of foods that I have, so I’ve no amount for it. What else have you got?',
  blossom_cyanide:
    'THIS gives off a little cyanide, and I’ve no safe amount for it. Would elderflowers do? Write “50 g elderflowers”.',
  rhubarb_root:
    'The root is a laxative, and I’ve no safe amount for it. Have you got the stalks? Write “500 g rhubarb”.',
  eucalyptus: 'THIS is strong, and I’ve no safe amount for it. Would peppermint do? Write “50 g peppermint”.',
  asafoetida:
    'THIS comes from giant fennel, and I’ve no safe amount for it. Would fennel seed do? Write “20 g fennel seed”.',
  seaweed: 'Which seaweed is it? Some have arsenic in them. Write its name, like “10 g nori”.',
  wood_chips: 'Only chips sold for drinks are safe. Would oak do? Write “5 g oak chips”.',
  vanilla_made:
    'Have you got a pod? Extract, paste and vanilla sugar go in after straining, to taste. Write “1 vanilla pod”.',
  coffee_made:
    'Have you got beans? Instant coffee only dissolves: stir it in with the syrup, to taste. Write “50 g cracked coffee beans”.',
}

const isAskedName = (ask: AskId): ask is AddedAskId => Object.hasOwn(askedNames, ask)

/** Of `flesh`: what else there is of the fruit. */
const inside: Readonly<Record<string, string>> = {
  pips: 'core and pips out? They give off cyanide.',
  stones: 'stones out? They give off cyanide.',
  seeds: 'the ripe flesh only, seeds out? The seeds aren’t food.',
  rest: 'the flesh only? The rest of the plant isn’t food.',
}

const foodQuestions: { readonly [Answer in Exclude<FoodAnswer, 'flesh' | 'bought'>]: string } = {
  stoned: 'stones out? Whole ones are fine too, but cracked ones give off cyanide.',
  whole: 'pips whole? Crushed ones give off cyanide.',
  ripe: 'fully ripe? Unripe, it makes you ill.',
  husked: 'ripe, and out of the husk? The husk is poisonous.',
  peeled: 'peeled?',
  mild: 'mild, not bitter? A bitter one is poisonous.',
  cooked: 'cooked? Raw, it makes you ill.',
  roasted: 'roasted? Raw, it isn’t food.',
  pod: 'the pod?',
}

const boughtText = (double: string | null): string =>
  double === null
    ? 'bought as food, or planted by you?'
    : `bought, or planted by you? ${double.charAt(0).toUpperCase()}${double.slice(1)} looks alike and is poisonous.`

const questionText = ({ answer, about }: FoodQuestion): string => {
  if (answer === 'bought') return boughtText(about)
  return answer === 'flesh' ? inside[about ?? 'rest']! : foodQuestions[answer]
}

/** `20 g pineapple` typed with everything else, or alone. */
const lineOf = ({ line, as }: UnplannedFood['retype']): string =>
  line ?? lineTyped('plan', { of: as, spirit: '1 l 50%', 'unknown-ok': 'yes', days: '14' })

/** What is known of a food that has no amounts, and the line to type. */
const foodText = ({ name, question, retype }: UnplannedFood): string =>
  question === null
    ? `I have no figures for ${name}, so the amounts and days are yours. For example: ${lineOf(retype)}`
    : `${capital(name)}: ${questionText(question)} Then type: ${lineOf(retype)}`

type Over = BotanicalProblems['over_ceiling']

/** What there would be too much of. */
const substances: { readonly [Key in LimitKey]?: string } = {
  thujone: 'thujone',
  coumarin: 'coumarin',
  caffeine: 'caffeine',
  liquorice: 'glycyrrhizin',
  bitterness: 'bitterness',
  saffron_dose: 'saffron',
  nutmeg: 'nutmeg',
  capsaicin: 'heat',
  eugenol: 'eugenol',
  anethole: 'anethole',
  linalool: 'lavender',
  turmeric_liver: 'curcumin',
  angelica_furocoumarins: 'angelica',
}

/** `For 1.33 l of drink use at most 0.65 g nutmeg.` */
function mostText(over: Over, format: Format): string {
  const most = listed(over.of.map(({ id, state, mostG }) => `${gramsAtMost(mostG, format)} ${cookName(id, state)}`))
  return over.per === 'finished'
    ? `For ${format.round.volume(over.volumeMl)} of drink use at most ${most}.`
    : `For ${format.round.volume(over.spiritMl)} of spirit use at most ${most}.`
}

const pieceText = ({ id, piece, minG, maxG }: PieceWeight, format: Format): string => {
  const weighs = minG === maxG ? format.plain(minG, 2) : `${format.plain(minG, 2)} to ${format.plain(maxG, 2)}`
  const name = cookName(id)
  // `One clove`, `one star`: the name says already of what.
  const isNamed = name.includes(piece)
  const what = piece === 'each' || piece === 'nut' ? name : isNamed ? piece : `${piece} of ${name}`
  return ` One ${what} weighs ${weighs}\u00a0g.`
}

const tooMuch = (over: Over, pieces: readonly PieceWeight[], format: Format): string =>
  `That’s too much ${substances[over.hazard] ?? over.hazard}. ${mostText(over, format)}${pieces.map((each) => pieceText(each, format)).join('')}`

/** Why so much of a plant is not planned, how much is fine, and the line that is right. */
export const limitProblems = {
  plan_over_ceiling: ({ line, pieces, ...over }, format) =>
    `${tooMuch(over, pieces, format)}${insteadText(over)}${line === null ? '' : ` Type: ${line}`}`,
  jar_passes_ceiling: ({ jar, isPlants, line, already, pieces, ...over }, format) => {
    const most = tooMuch(over, pieces, format)
    if (line !== null) return `${most} Already in? Type: ${already}, or if not: ${line}`
    return `${most}${isPlants ? ` No more of it fits in ${jar}.` : ''} Is it in already? Then type: ${already}`
  },
} satisfies Written<LimitProblems>

/** Cassia alone: what a cook can use in its place, where there is room for it. */
const insteadText = (over: Over): string =>
  over.hazard === 'coumarin' && over.of.some(({ id }) => id === 'cinnamon_cassia')
    ? ' Ceylon cinnamon has next to none.'
    : ''

const overCeilingText = (over: Over, format: Format): string => tooMuch(over, [], format)

const nameOf = (id: string): string => cookName(id)

/** What is asked where a word fits more than one thing. */
const nameQuestions: { readonly [Id in Exclude<AskId, keyof typeof askedNames>]: string } = {
  coffee: 'Whole, cracked or ground?',
  bay: 'Kitchen bay, fresh or dried? Hedge laurel (cherry laurel) kills.',
  chilli: 'Is the chilli fresh or dried?',
  cinnamon: 'Which cinnamon? Most supermarket sticks are cassia: hard, in one thick curl.',
  mint: 'Peppermint or spearmint? (Never pennyroyal.)',
  fennel: 'Fennel seed or fronds?',
  tea: 'Black, green, oolong or white tea?',
  pine: 'Pine cones or buds?',
  citronella: 'Lemongrass or lemon balm? (Never the oil.)',
  pepper: 'Peppercorns, allspice, sweet pepper or chilli?',
  coriander: 'Coriander seed or leaf?',
  artemisia: 'Wormwood or genepi? They differ tenfold in strength.',
  walnut: 'Ripe walnuts, or green ones?',
  laurel: 'Kitchen bay or hedge laurel? Hedge laurel (cherry laurel) kills.',
  wild_fennel: 'From a shop or a garden? Hemlock looks like the wild one.',
  elder: 'Is it the flower? Berries, leaves and bark make you ill.',
  crocus: 'Is it saffron from a shop? A garden crocus can kill.',
  illicium: 'Is it star anise from a food brand? Other kinds are poisonous.',
  juniperus: 'Juniper berries from a food shop? Garden junipers can be poisonous.',
  almond_kernel: 'Sweet almonds from a food shop? Bitter ones give off cyanide.',
  stone_fruit: 'Which fruit is it? Without its stones: they give off cyanide.',
  rhubarb: 'Is it the stalk? The leaf is poisonous.',
  fig_tree: 'Is it the fruit? The leaf burns skin.',
  conifer: 'Which tree is it for certain? Yew kills.',
  currant: 'Black currants, red ones, or dried like raisins?',
  chocolate: 'Dark chocolate, cocoa powder or nibs?',
  green_pepper: 'The vegetable or the peppercorn?',
  poppy: 'Which part is it? Seed, pods and straw all carry opium.',
}

const planOf = (of: string): string => shortLineTyped('plan', { of, spirit: '1 l 95%' })

/** What goes into a liqueur that was named, with about as much as a litre of spirit takes. Common practice, no source. */
const madeOf: { readonly [Id in LiqueurPlant]: string } = {
  lemon_peel: `lemon peel: ${planOf('10 lemons')}`,
  orange_peel: `orange peel: ${planOf('8 oranges')}`,
  mandarin_peel: `mandarin peel: ${planOf('10 mandarins')}`,
  green_walnut: `green walnuts: ${planOf('20 green walnuts')}`,
}

/** Grams, rounded down so that the amount said is still allowed. */
const foodGramsAtMost = (massG: number, format: Format): string => {
  const step = massG < 10 ? 0.1 : 1
  return `${format.plain(Math.floor(massG / step + 1e-9) * step, 1)} g`
}

/** Why a plant cannot be used, and what to do instead. */
export const botanicalProblems = {
  refused_botanical: (values) => refusalText(values, nameOf),
  near_refused: ({ name, id }) =>
    `Did you mean ${name}? I don’t plan that. ${reasonOf(id)} If not, what else is it called?`,
  foraged_botanical: ({ id }) =>
    `Picked plants get mistaken for poisonous ones. Are you sure it’s ${nameOf(id)}?` +
    ' If so, leave out where you picked it. If not, buy it.',
  garden_botanical: ({ id, retype }) =>
    `Did you plant it yourself, as ${nameOf(id)}? Some look-alikes are poisonous. If you did, type: ${retype.line ?? retype.as}`,
  unclear_botanical: ({ typed, ask, choices, line = null }) => {
    if (ask !== null && isAskedName(ask)) return askedNames[ask].replace('THIS', capital(typed))
    const question = ask === null ? `Which “${typed}” do you mean?` : nameQuestions[ask]
    if (line !== null) return `${question} For example: ${line}`
    return choices.length === 0 ? question : `${question} Write ${either(choices.map(nameOf))}.`
  },
  unknown_botanical: ({ typed, nearest, liqueur, food }, format) => {
    if (food !== null) return foodText(food)
    if (liqueur !== null) return `${capital(typed)} starts with ${format.example(madeOf[liqueur])}`
    const near = nearest.length === 0 ? '' : ` Or did you mean ${either(nearest.map(nameOf))}?`
    return `I don’t know “${typed.replace(/[“”]/g, '"')}”. What else is it called?${near}`
  },
  over_food_bound: ({ name, mostG, volumeMl, mostGPerL }, format) =>
    `That’s more ${name} than I plan. ${capital(foodGramsAtMost(mostGPerL, format))} in a litre of spirit is the most I’d use of that kind,` +
    ` so ${foodGramsAtMost(mostG, format)} for your ${format.round.volume(volumeMl)}.`,
  unknown_form: ({ id, state }) =>
    `I only have figures for ${botanicalById(id).form.state} ${nameOf(id)}, not ${state}. Have you got it ${botanicalById(id).form.state}?`,
  unsaid_form: ({ id, states }) =>
    `${capital(either(states))} ${id.replaceAll('_', ' ')}? It matters here. Write ${either(states.map((state) => `${state} ${id.replaceAll('_', ' ')}`))}.`,
  over_ceiling: overCeilingText,
} satisfies Written<BotanicalProblems>

/** Why it is not for drinking. */
const reasons: { readonly [Id in UndrinkableId]: string } = {
  denatured: 'It’s poisoned on purpose: it can blind or kill.',
  other_alcohol: 'It’s not the alcohol in drinks, and it can kill.',
  disinfectant: 'It’s for skin and surfaces, and it can poison you.',
  laboratory: 'It’s made for a lab or a factory, often dried with poisons.',
  fuel: 'It can be petroleum or contain methanol, and either can kill.',
  solvent: 'It can be petroleum or contain methanol, and either can kill.',
  cosmetic: 'It’s for the skin, and it can poison you.',
  untaxed: 'Nobody has checked it, and methanol can blind or kill. Use spirit from a shop.',
  added: 'What’s in it can poison you, and alcohol makes that worse.',
  heated: 'Hot spirit gives off vapour that catches fire. Steep it cold, in a closed jar, away from the hob.',
}

/** Those that blind or kill. */
const isDeadly = (id: UndrinkableId): boolean => id !== 'heated'

const instead = (id: UndrinkableId): string => {
  if (id === 'heated') return ''
  return id === 'untaxed' ? ` ${ifDrunk()}` : ` Use spirit sold for drinking. ${ifDrunk()}`
}

const withLine = (ask: string, line: string | null | undefined): string =>
  line === null || line === undefined ? ask.replace(/:$/, '.') : `${ask} ${line}`

/** Why a spirit is not taken as it was said, and what to type instead. */
export const spiritProblems = {
  refused_spirit: ({ word, id }) =>
    isDeadly(id)
      ? `“${word}” isn’t for drinking. ${reasons[id]}${instead(id)}`
      : `I don’t plan with “${word}”. ${reasons[id]}`,
  near_refused_spirit: ({ typed, word }) =>
    `“${typed}” looks like “${word}”, which must not be drunk. What does the label say?`,
  unknown_drink: ({ typed, extra, meant, isPlant, line }) => {
    if (isPlant) return withLine(`“${extra}” isn’t a drink. Plants go under “of”. Is the rest right?`, line)
    const known = `I don’t know “${extra}” in “${typed}”.`
    if (meant !== null) return withLine(`${known} Did you mean ${meant}?`, line)
    return line === null || line === undefined
      ? `${known} What does the label call it?`
      : `${known} What does the label call it? If it’s a drink: ${line}`
  },
  ethanol_asked: ({ word, line }) =>
    withLine(`Is the “${word}” sold for drinking? Some of it is poisoned. If the label says food, type:`, line),
  drink_sweetness: ({ words, line }) =>
    withLine(
      `How sweet is ${words.startsWith('my ') ? words.replace('my ', 'your ') : `the ${words}`}? Write it after the spirit, 0 g/L if it has no sugar:`,
      line,
    ),
  spirit_too_strong: ({ mostAbvPercent, line }, format) =>
    withLine(
      `Anything over ${format.wished.strength(mostAbvPercent, 1)} is for a lab or for burning. Did you mean 190 proof, 95 %?`,
      line,
    ),
} satisfies Written<SpiritProblems>
