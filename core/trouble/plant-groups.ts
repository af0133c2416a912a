import type { Botanical } from '../botanical/botanical.ts'
import { isLowAcid } from '../botanical/limits/low-acid.ts'

/** Plants that do the same to a jar. */
export type PlantGroup = keyof typeof table

const ids = (text: string): ReadonlySet<string> => new Set(text.split(' '))

const stonesIn = ids(
  'sour_cherry sweet_cherry sloe plum cherry_plum cornelian_cherry apricot peach loquat mango lychee',
)
const anise = ids('aniseed star_anise fennel_seed fennel_fronds')
const fat = ids(
  'coffee_whole coffee_cracked coffee_ground cocoa_nibs cocoa_powder dark_chocolate coconut coconut_dried sesame peanut',
)
const tea = ids('tea_black tea_green tea_oolong tea_white earl_grey matcha yerba_mate rooibos')
const leafy = ids('basil peppermint spearmint lemon_verbena lemon_balm woodruff tarragon')

const isFruit = ({ kind }: Botanical): boolean => kind === 'fruit' || kind === 'berry'

const isOf =
  (group: ReadonlySet<string>) =>
  ({ id }: Botanical): boolean =>
    group.has(id)

const has =
  (hazard: Botanical['hazards'][number]) =>
  ({ hazards }: Botanical): boolean =>
    hazards.includes(hazard)

/** Which plants, from the catalogue's kinds and hazards where those tell it, else named: common practice, no source. */
const table = {
  citrus: ({ kind }) => kind === 'citrus',
  /** Oil comes out of them on mixing. */
  oily: (plant) =>
    plant.kind === 'citrus' || has('louche_anethole')(plant) || isOf(anise)(plant) || /mint$/.test(plant.id),
  anise: (plant) => has('louche_anethole')(plant) || isOf(anise)(plant) || /mint$/.test(plant.id),
  fruit: isFruit,
  pectin: (plant) => isFruit(plant) || plant.id === 'kumquat',
  fatty: (plant) => isOf(fat)(plant) || (plant.kind === 'nut' && plant.id !== 'green_walnut'),
  stone: isOf(stonesIn),
  /** Apples, pears and quinces, whose pips do it. */
  kernels: (plant) => isOf(stonesIn)(plant) || has('stone_kernels')(plant) || /^(apple|quince|pear)$/.test(plant.id),
  bitter: (plant) => plant.kind === 'bitter' || plant.id === 'green_walnut' || plant.id === 'hops',
  /** They turn bitter when they stay too long. */
  long: ({ kind, id }) =>
    kind === 'herb' ||
    kind === 'spice' ||
    kind === 'root' ||
    kind === 'wood' ||
    kind === 'bitter' ||
    tea.has(id) ||
    id === 'green_walnut',
  hot: isOf(
    ids(
      'chilli_fresh jalapeno birds_eye_chilli habanero chilli_dried chipotle cayenne paprika ginger galangal horseradish ' +
        'black_pepper white_pepper green_pepper long_pepper cubeb sichuan_pepper grains_of_paradise mustard_seed',
    ),
  ),
  chilli: isOf(ids('chilli_fresh jalapeno birds_eye_chilli habanero chilli_dried chipotle cayenne')),
  sour: isOf(
    ids(
      'sloe rhubarb_stalk cranberry cranberry_dried blackcurrant redcurrant gooseberry lingonberry sea_buckthorn ' +
        'sour_cherry passion_fruit hibiscus tamarind pomegranate cornelian_cherry cherry_plum raspberry kiwi',
    ),
  ),
  green: has('chlorophyll'),
  soft_herb: (plant) => plant.form.state === 'fresh' && (isOf(leafy)(plant) || plant.kind === 'herb'),
  pale: isOf(ids('apple pear banana apricot strawberry peach quince loquat fig melon')),
  red: isOf(
    ids(
      'strawberry raspberry blackberry blueberry cranberry blackcurrant redcurrant sour_cherry sweet_cherry sloe plum ' +
        'hibiscus rose_petals pomegranate mulberry aronia lingonberry violet beetroot myrtle_berries cornelian_cherry',
    ),
  ),
  tannic: (plant) =>
    isFruit(plant) ||
    tea.has(plant.id) ||
    plant.id === 'oak_chips' ||
    plant.id === 'walnut' ||
    plant.id === 'green_walnut',
  black: isOf(ids('green_walnut myrtle_berries blackcurrant blackberry blueberry aronia mulberry sloe coffee_ground')),
  mucilage: isOf(ids('mallow_flower quince linden okra')),
  low_acid: isLowAcid,
  garlic: isOf(ids('garlic onion chives')),
  perfumed: isOf(
    ids('lavender rose_petals violet coriander_leaf rosemary elderflower orange_blossom jasmine hyssop sage linden'),
  ),
  dried_fruit: isOf(ids('raisin apricot_dried fig_dried date cranberry_dried prune')),
  rosehip: isOf(ids('rosehip')),
  prickly: isOf(ids('prickly_pear')),
  nut: ({ kind }) => kind === 'nut',
} as const satisfies Readonly<Record<string, (plant: Botanical) => boolean>>

export const isInGroup = (plant: Botanical, group: PlantGroup): boolean => table[group](plant)

/** Whether another plant is easily taken for it where it was not bought. */
export const isTakenForOthers = ({ hazards }: Botanical): boolean =>
  hazards.some(
    (key) => key === 'foraging' || /_(?:lookalikes|double|confusion|species)$/.test(key) || key === 'carrot_family',
  )
