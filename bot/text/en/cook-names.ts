import type { PlantState } from '../../../core/botanical/botanical.ts'
import { botanicalById } from '../../../core/botanical/catalogue/catalogue.ts'
import type { OneAndSeveral } from '../../../core/botanical/names/kind-typed.ts'
import type { Format } from '../format.ts'
import type { PlantSaid } from '../messages/ingredients.ts'
import { inEighths } from './format.ts'
import { plural } from './phrases.ts'

/** What a cook says instead of the catalogue's title; each can be typed. */
const SAID: Readonly<Record<string, string>> = {
  apricot: 'apricots',
  artichoke_leaf: 'artichoke leaves',
  bay_leaf: 'dried bay leaves',
  bay_leaf_fresh: 'fresh bay leaves',
  birds_eye_chilli: 'bird’s eye chilli',
  blueberry: 'blueberries',
  brazil_nut: 'Brazil nuts',
  caraway: 'caraway',
  cinnamon_cassia: 'cassia',
  citron_peel: 'citron peel',
  cocoa_nibs: 'cocoa nibs',
  coffee_cracked: 'cracked coffee',
  coffee_whole: 'coffee beans',
  cumin: 'cumin',
  fenugreek: 'fenugreek',
  fig: 'figs',
  ginger: 'ginger',
  hibiscus: 'hibiscus',
  horseradish: 'horseradish',
  kiwi: 'kiwis',
  kumquat: 'kumquats',
  lemongrass: 'lemongrass',
  mandarin_peel: 'mandarin peel',
  oak_chips: 'oak chips',
  olive_leaf: 'olive leaves',
  orange_peel: 'orange peel',
  peach: 'peaches',
  pear: 'pears',
  pine_buds: 'pine buds',
  pine_cones: 'pine cones',
  plum: 'plums',
  prickly_pear: 'prickly pears',
  quince: 'quinces',
  rhubarb_stalk: 'rhubarb',
  sesame: 'sesame',
  sichuan_pepper: 'Sichuan pepper',
  turmeric: 'turmeric',
}

/** A name of a person or a place keeps its capital: `Earl Grey tea`. */
const PROPER = /^\p{Lu}\p{Ll}+ \p{Lu}/u

/** As a cook calls it, which can be typed: `dried chilli`, `Ceylon cinnamon`, `star anise`. */
export function cookName(id: string, state?: PlantState): string {
  const { names, form } = botanicalById(id)
  const [noun = '', ...kinds] = names.title.replace(/ \(.*?\)/, '').split(', ')
  const named = PROPER.test(noun) ? noun : noun.charAt(0).toLowerCase() + noun.slice(1)
  const name = SAID[id] ?? [...kinds, named].join(' ')
  return state === undefined || state === form.state ? name : `${state} ${name}`
}

/** The plant's name within a sentence. */
export const plantName = (id: string): string => cookName(id)

/** Fruit bought for its peel. */
const FRUIT: Readonly<Record<string, OneAndSeveral>> = {
  bergamot_peel: ['bergamot', 'bergamots'],
  bitter_orange_peel: ['bitter orange', 'bitter oranges'],
  citron_peel: ['citron', 'citrons'],
  grapefruit_peel: ['grapefruit', 'grapefruits'],
  lemon_peel: ['lemon', 'lemons'],
  lime_peel: ['lime', 'limes'],
  mandarin_peel: ['mandarin', 'mandarins'],
  orange_peel: ['orange', 'oranges'],
  pomelo_peel: ['pomelo', 'pomelos'],
  tangelo_peel: ['tangelo', 'tangelos'],
  yuzu_peel: ['yuzu', 'yuzus'],
}

/** One of what is counted and several, where that is no more than the plant's own word. */
const COUNTED: Readonly<Record<string, OneAndSeveral>> = {
  almond_sweet: ['almond', 'almonds'],
  apple: ['apple', 'apples'],
  apricot: ['apricot', 'apricots'],
  apricot_dried: ['dried apricot', 'dried apricots'],
  banana: ['banana', 'bananas'],
  bay_leaf: ['dried bay leaf', 'dried bay leaves'],
  bay_leaf_fresh: ['fresh bay leaf', 'fresh bay leaves'],
  beetroot: ['beetroot', 'beetroots'],
  birds_eye_chilli: ['bird’s eye chilli', 'bird’s eye chillies'],
  black_cardamom: ['black cardamom pod', 'black cardamom pods'],
  blueberry: ['blueberry', 'blueberries'],
  brazil_nut: ['Brazil nut', 'Brazil nuts'],
  cardamom: ['cardamom pod', 'cardamom pods'],
  carrot: ['carrot', 'carrots'],
  cashew: ['cashew', 'cashews'],
  cherry_plum: ['cherry plum', 'cherry plums'],
  chilli_dried: ['dried chilli', 'dried chillies'],
  chilli_fresh: ['fresh chilli', 'fresh chillies'],
  chipotle: ['chipotle', 'chipotles'],
  cinnamon_cassia: ['cassia stick', 'cassia sticks'],
  cinnamon_ceylon: ['Ceylon cinnamon stick', 'Ceylon cinnamon sticks'],
  citrus_leaf: ['citrus leaf', 'citrus leaves'],
  clove: ['clove', 'cloves'],
  coffee_whole: ['coffee bean', 'coffee beans'],
  cornelian_cherry: ['cornelian cherry', 'cornelian cherries'],
  cucumber: ['cucumber', 'cucumbers'],
  date: ['date', 'dates'],
  elderflower: ['elderflower head', 'elderflower heads'],
  fig: ['fig', 'figs'],
  fig_dried: ['dried fig', 'dried figs'],
  gooseberry: ['gooseberry', 'gooseberries'],
  green_walnut: ['green walnut', 'green walnuts'],
  guava: ['guava', 'guavas'],
  habanero: ['habanero', 'habaneros'],
  hazelnut: ['hazelnut', 'hazelnuts'],
  jalapeno: ['jalapeño', 'jalapeños'],
  juniper: ['juniper berry', 'juniper berries'],
  kiwi: ['kiwi', 'kiwis'],
  kumquat: ['kumquat', 'kumquats'],
  lemongrass: ['lemongrass stalk', 'lemongrass stalks'],
  loquat: ['loquat', 'loquats'],
  lychee: ['lychee', 'lychees'],
  macadamia: ['macadamia', 'macadamias'],
  makrut_lime_leaf: ['makrut lime leaf', 'makrut lime leaves'],
  mango: ['mango', 'mangoes'],
  myrtle_berries: ['myrtle berry', 'myrtle berries'],
  onion: ['onion', 'onions'],
  passion_fruit: ['passion fruit', 'passion fruit'],
  peach: ['peach', 'peaches'],
  peanut: ['peanut', 'peanuts'],
  pear: ['pear', 'pears'],
  pecan: ['pecan', 'pecans'],
  persimmon: ['persimmon', 'persimmons'],
  pine_cones: ['pine cone', 'pine cones'],
  pistachio: ['pistachio', 'pistachios'],
  plum: ['plum', 'plums'],
  pomegranate: ['pomegranate', 'pomegranates'],
  prickly_pear: ['prickly pear', 'prickly pears'],
  prune: ['prune', 'prunes'],
  quince: ['quince', 'quinces'],
  raisin: ['raisin', 'raisins'],
  raspberry: ['raspberry', 'raspberries'],
  rhubarb_stalk: ['rhubarb stalk', 'rhubarb stalks'],
  rosehip: ['rosehip', 'rosehips'],
  sage: ['sage leaf', 'sage leaves'],
  sloe: ['sloe', 'sloes'],
  sour_cherry: ['sour cherry', 'sour cherries'],
  star_anise: ['star anise', 'star anise'],
  strawberry: ['strawberry', 'strawberries'],
  sweet_cherry: ['sweet cherry', 'sweet cherries'],
  sweet_pepper: ['sweet pepper', 'sweet peppers'],
  tomato: ['tomato', 'tomatoes'],
  vanilla: ['vanilla pod', 'vanilla pods'],
  walnut: ['walnut', 'walnuts'],
}

/** One of it and several, where it is counted; null where it is only weighed. */
export const countedName = (id: string): OneAndSeveral | null => FRUIT[id] ?? COUNTED[id] ?? null

/** Pieces that are said before their plant: `2 sprigs of mint`. */
const OF: Readonly<Record<string, string>> = {
  bunch: 'bunches',
  finger: 'fingers',
  head: 'heads',
  pinch: 'pinches',
  slice: 'slices',
  sprig: 'sprigs',
  strip: 'strips',
  teaspoon: 'teaspoons',
  cup: 'cups',
  thumb: 'thumbs',
}

/** What such pieces are pieces of, where that is not the name by weight. */
const WHOLE: Readonly<Record<string, string>> = {
  basil: 'basil',
  lemon_balm: 'lemon balm',
  peppermint: 'peppermint',
  spearmint: 'spearmint',
  dill: 'dill',
  parsley: 'parsley',
  coriander_leaf: 'coriander',
}

const SEVERAL: Readonly<Record<string, string>> = { leaf: 'leaves', berry: 'berries' }

const wholeName = (id: string): string => WHOLE[id] ?? plantName(id)

/** `a small fresh chilli`: sizes stand before the word itself. */
const SIZES: readonly string[] = ['small', 'medium']

const isOf = (unit: string, id: string): boolean =>
  Object.hasOwn(OF, unit) && !(unit === 'head' && id === 'elderflower')

/** The words after a number: `Ceylon cinnamon sticks`, `sprigs of mint`, `basil leaves`. */
function pieceName(id: string, unit: string | null, count: number): string {
  const of = (pair: OneAndSeveral): string => pair[count <= 1 ? 0 : 1]
  if (unit !== null && isOf(unit, id)) return `${of([unit, OF[unit]!])} of ${wholeName(id)}`
  const known = COUNTED[id]
  const size = unit !== null && SIZES.includes(unit) ? `${unit} ` : ''
  if (known !== undefined) return `${size}${of(known)}`
  if (unit === 'piece') return `${of(['piece', 'pieces'])} of ${wholeName(id)}`
  if (unit === null || unit === 'each') return plantName(id)
  return `${wholeName(id)} ${of([unit, SEVERAL[unit] ?? `${unit}s`])}`
}

/** A cup or a spoon: what it measures is told as they are marked, and bought by no whole number. */
export const isMeasured = (unit: string | null | undefined): boolean => unit === 'cup' || unit === 'teaspoon'

/** So many of what has no name for one of it, as `2 orange peel` would be: it is weighed. */
const isNameless = ({ id, count, unit }: Pick<PlantSaid, 'id' | 'count' | 'unit'>): boolean =>
  (unit == null || unit === 'each') &&
  COUNTED[id] === undefined &&
  !(count !== null && count > 1 && areWord(id) === 'are')

/** `10 lemons`, `10 unwaxed lemons` where they are to be bought, `1 Ceylon cinnamon stick`; null where it is weighed. */
export function piecesText(
  { id, count, unit, ofZest }: Pick<PlantSaid, 'id' | 'count' | 'unit' | 'ofZest'>,
  format: Format,
  quality = '',
): string | null {
  if (count === null) return null
  if (!ofZest && isNameless({ id, count, unit })) return null
  const number = isMeasured(unit) ? inEighths(count) : format.plain(count, 1)
  const fruit = ofZest ? FRUIT[id] : undefined
  const said = fruit === undefined ? pieceName(id, unit ?? null, count) : `${quality}${fruit[count <= 1 ? 0 : 1]}`
  return `${number}\u00a0${said}`
}

/** `lemons`, after `the`; the peel itself where no fruit are counted. */
export const peeledText = (id: string, count: number): string => FRUIT[id]?.[count <= 1 ? 0 : 1] ?? plantName(id)

/** `is` of one thing and of what is weighed, `are` of several. */
export const areWord = (id: string): string =>
  /(?:[^s]s|leaves)$/.test(plantName(id)) ? 'are' : plural(1, 'is', 'are')

/** `vanilla pod` of one of it, `dried chillies` of several, else the name by weight: what stands after `the`. */
export function pieceOrName({ id, count, unit }: Pick<PlantSaid, 'id' | 'count' | 'unit'>): string {
  const known = count === null || (unit != null && unit in OF) ? undefined : COUNTED[id]
  return (count === 1 ? known?.[0] : count !== null && count > 1 ? known?.[1] : undefined) ?? plantName(id)
}
