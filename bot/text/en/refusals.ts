import type { BotanicalProblems } from '../../../core/botanical/problems.ts'
import type { RefusalId } from '../../../core/botanical/refused.ts'
import { ifDrunk } from './if-drunk.ts'

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
  kernels: 'Stones, pips, bark and bitter almonds give off cyanide. Use sweet almonds, or just the flesh of the fruit.',
  cracked_stones: 'Crushed stones give off cyanide. Take the stones out and say “stoned”, or leave the fruit whole.',
  cherry_laurel: 'It gives off cyanide, and people have died of it. Use bay leaves from a shop.',
  elder_raw: 'Only the flower of elder is food, the rest gives off cyanide. Use elderflowers off their stalks.',
  ergot: 'It cuts the blood off from fingers and toes, and it brings on fits.',
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
  rhubarb_tomato:
    'Rhubarb leaf is poisonous, and so is all green of tomato and potato. Use the stalk, or the ripe fruit.',
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
export const reasonOf = (id: RefusalId): string => refusals[id]

export const refusalText = (
  { id, name, instead }: BotanicalProblems['refused_botanical'],
  nameOf: (id: string) => string,
): string => {
  const use = id === 'essential_oils' && instead !== null ? ` Use ${nameOf(instead)}.` : ''
  return `I don’t plan ${name.replace(/\.$/, '')}. ${refusals[id]}${use}${DEADLY.has(id) ? ` ${ifDrunk()}` : ''}`
}
