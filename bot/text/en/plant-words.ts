import type { BotanicalKind, PieceKind, PlantCut, PlantState, SourcedShare } from '../../../core/botanical/botanical.ts'
import { botanicalById } from '../../../core/botanical/catalogue/catalogue.ts'
import type { Preparation } from '../../../core/botanical/evidence/preparation.ts'
import type { ProductFile } from '../../../core/botanical/evidence/product-files.ts'
import type { SourceKey } from '../../../core/botanical/evidence/sources.ts'
import type { SteepEvidence } from '../../../core/botanical/evidence/steep-evidence.ts'
import type { Trust } from '../../../core/botanical/evidence/trust.ts'
import type { Format } from '../format.ts'
import { listed, MONTHS, plural } from './phrases.ts'

const HOURS_PER_DAY = 24

export const kindNames: { readonly [Kind in BotanicalKind]: string } = {
  citrus: 'Citrus',
  berry: 'Berries',
  fruit: 'Fruit',
  vegetable: 'Vegetables',
  herb: 'Herbs',
  spice: 'Spices',
  root: 'Roots',
  bitter: 'Bitters',
  flower: 'Flowers',
  nut: 'Nuts',
  coffee_tea_cocoa: 'Coffee, tea',
  wood: 'Trees',
}

export const stateWords: { readonly [State in PlantState]: string } = {
  fresh: 'fresh',
  dried: 'dried',
  roasted: 'roasted',
  cured: 'cured',
}

export const cutWords: { readonly [Cut in PlantCut]: string } = {
  whole: 'whole',
  cracked: 'cracked',
  ground: 'ground',
}

/** One of what is counted. */
export const pieceWords: { readonly [Piece in PieceKind]: string } = {
  each: 'one',
  small: 'a small one',
  medium: 'a medium one',
  bean: 'a bean',
  berry: 'a berry',
  bunch: 'a bunch',
  clove: 'a clove',
  cone: 'a cone',
  finger: 'a finger',
  head: 'a head',
  leaf: 'a leaf',
  nut: 'a nut',
  pinch: 'a pinch',
  pod: 'a pod',
  slice: 'a slice',
  sprig: 'a sprig',
  stalk: 'a stalk',
  star: 'a star',
  stick: 'a stick',
  strip: 'a strip',
  teaspoon: 'a teaspoon',
  cup: 'a US cup',
  thumb: 'a thumb',
}

const trustWords: { readonly [Key in Trust]: string } = {
  published: '',
  derived: 'derived',
  common_practice: 'common practice',
  estimated: 'estimated',
  memory: 'from memory',
  not_found: 'no source found',
}

/** ` (common practice)`; nothing where it is published. */
export const trusted = (trust: Trust): string => (trustWords[trust] === '' ? '' : ` (${trustWords[trust]})`)

const sourceNames: { readonly [Key in SourceKey]?: string } = {
  usda_sr: 'USDA',
  haciseferogullari_2012: 'J. Food Sci. Technol. 2012',
  myrtle_lipids: 'a study of the fruit’s fats',
  marakoglu_2005: 'J. Food Eng. 2005',
  ertugrul_2019: 'J. New Results Eng. Nat. Sci. 2019',
  turmeric_2021: 'J. Food Process Eng. 2021',
  ozcan_2017: 'J. Food Safety Food Qual. 2017',
}

/** `79 % (USDA, row 11216)`, `74 % (estimated after a like plant; USDA)`. */
export const shareText = ({ value, trust, sources, ndb, proxyOf }: SourcedShare, format: Format): string => {
  const names = sources.flatMap((key) => sourceNames[key] ?? [])
  const source = [listed(names), ndb === null ? '' : `row ${ndb}`].filter((part) => part !== '').join(', ')
  const how = proxyOf === null ? trustWords[trust] : `${trustWords[trust]} after a like plant`
  const said = [how, source].filter((part) => part !== '').join(', ')
  return `${format.plain(value * 100, value < 0.1 ? 1 : 0)} %${said === '' ? '' : ` (${said})`}`
}

/** `50 to 400`, or one number where both are the same. */
export const rangeText = (min: number, max: number, format: Format): string =>
  min === max ? format.plain(min) : `${format.plain(min)} to ${format.plain(max)}`

const isHours = (days: number): boolean => days > 0 && days < 1

const spanOf = (days: number, format: Format): string =>
  isHours(days) ? `${format.plain(days * HOURS_PER_DAY, 0)} hours` : `${format.plain(days, 1)} ${plural(days, 'day')}`

/** `14 to 21 days`, `5 to 12 hours`, `12 hours to 2 days`. */
export const spanText = (min: number, max: number, format: Format): string => {
  if (min === max) return spanOf(max, format)
  if (isHours(min) !== isHours(max)) return `${spanOf(min, format)} to ${spanOf(max, format)}`
  const [low, high] = isHours(max) ? [min * HOURS_PER_DAY, max * HOURS_PER_DAY] : [min, max]
  const decimals = isHours(max) ? 0 : 1
  return `${format.plain(low, decimals)} to ${format.plain(high, decimals)} ${isHours(max) ? 'hours' : 'days'}`
}

/** The first of its English names, by which it can be asked for: `lemon`, `green walnut`. */
export const shortName = (id: string): string => {
  const { names } = botanicalById(id)
  return names.en[0] ?? names.title
}

const after = (month: number): number => (month % 12) + 1

const before = (month: number): number => ((month + 10) % 12) + 1

/** `October to March`, `May`, `April and September to October`: runs of months, over the new year too. */
export const monthsText = (months: readonly number[]): string => {
  const starts = months.filter((month) => !months.includes(before(month)))
  const runs = starts.map((start) => {
    let end = start
    while (months.includes(after(end)) && after(end) !== start) end = after(end)
    return end === start ? `${MONTHS[start - 1]}` : `${MONTHS[start - 1]} to ${MONTHS[end - 1]}`
  })
  return runs.length === 0 ? 'all year' : listed(runs)
}

const HALF_YEAR = 6

/** The same season south of the equator. */
export const southern = (months: readonly number[]): readonly number[] =>
  months.map((month) => ((month - 1 + HALF_YEAR) % 12) + 1)

/** What has been measured of when steeping is done, and how little that says. */
export const evidenceWords: { readonly [Key in SteepEvidence['key']]: string } = {
  peel_seven_days_conventional:
    'A paper on lemon peel in 96 % spirit calls at least 7 days the usual steep (J. Food Process Eng. 2016, read in summary). It doesn’t say how much is out on which day.',
  peel_dose_over_strength:
    'After 30 days in 10 to 50 % vol the amount of yuzu peel counted for more than the strength (Korean J. Food Preserv. 2019, abstract). There are no figures by the day.',
  peel_by_analogy: 'Nobody I know of has measured this peel by the day, so I go by lemon (derived).',
  coffee_beans_three_weeks:
    'Caffeine from mostly whole beans peaked at 21 days in 80 % vol. 14 were too few and 30 gave no more (Int. J. Eng. Adv. Technol. 2019, abstract).',
  coffee_ground_hours_in_water:
    'In cold water ground coffee is done in 6 to 7 hours (Sci. Rep. 2017). Nobody has measured it in spirit.',
  ginger_hours_not_enough:
    'Two hours of stirring drew 23 % of what boiling drew from ginger, probably dried powder (Korean J. Food Preserv. 2019): hours aren’t enough. Nobody has measured the days.',
  chilli_fast_when_hot:
    'Hot and stirred, dried chilli gives most of its heat in 20 minutes (thesis, Lund 2017). Nobody has measured it at room temperature, so taste.',
  basil_colour_only:
    'I found no measurement of how basil steeps, only of how fast its green fades (J. Agric. Food Chem. 2010).',
  vanilla_ageing_rule: 'The 60 days often named for vanilla are a rule of ageing, not a measured end (from memory).',
  walnut_little_after_15_days:
    'Between 15 and 90 days little more came out of green walnuts. How ripe they were counted for more (Food Chem. 2005, abstract). Longer is for taste.',
  herbs_three_weeks:
    'Of eight herbs, this one among them, some plant acids came out early and others late within a month (J. Sci. Food Agric. 2019, abstract). Nobody measured the scent, so it’s no reason to steep longer.',
  seeds_three_weeks_at_70:
    'In grape spirit 40 g/L for 3 weeks at 70 % vol came out best, tasters’ liking counted in (J. Sci. Food Agric. 2016, abstract).',
}

const drinks: { readonly [Id in ProductFile['id']]: string } = {
  sorrento: 'the protected lemon liqueur of Sorrento',
  amalfi: 'the protected lemon liqueur of the Costa d’Amalfi',
  galicia: 'the protected coffee liqueur of Galicia',
  pacharan: 'the protected sloe drink of Navarre',
  mirto: 'the protected myrtle liqueur of Sardinia',
  genepi: 'the protected genepi of Piedmont',
}

interface Bounds {
  readonly min: number | null
  readonly max: number | null
}

const within = ({ min, max }: Bounds, format: Format): string => {
  if (min === null) return `at most ${format.plain(max ?? 0)}`
  return max === null ? `at least ${format.plain(min)}` : `${format.plain(min)} to ${format.plain(max)}`
}

const daysWithin = ({ min, max }: { readonly min: number; readonly max: number | null }, format: Format): string =>
  max === null ? `at least ${spanText(min, min, format)}` : spanText(min, max, format)

/** What the legal file of a protected drink asks for, per litre of finished drink. */
export const productFileWords = (file: ProductFile, format: Format): string => {
  const { finishedGPerL: dose, steepDays, spiritPercent, drinkPercent, sugarGPerL } = file
  const asked = [
    ...(dose === null
      ? []
      : [
          `${within(dose, format)} g of ${dose.of === 'plant' ? 'the plant' : 'whole fruit'} in a litre of finished drink`,
        ]),
    ...(steepDays === null ? [] : [`${daysWithin(steepDays, format)} of steeping`]),
    ...(spiritPercent === null ? [] : [`spirit of ${within(spiritPercent, format)} % vol`]),
    ...(drinkPercent === null ? [] : [`${within(drinkPercent, format)} % vol in the drink`]),
    ...(sugarGPerL === null ? [] : [`${within(sugarGPerL, format)} g/L of sugar`]),
  ]
  const other = dose === null ? '' : ' That’s per litre of drink, not of spirit as above.'
  return `The file of ${drinks[file.id]} asks for ${listed(asked)}.${other}`
}

/** What to do with a plant before it goes in, or to look for when buying it. */
export const preparationWords: { readonly [Key in Preparation]: string } = {
  a_pinch_does: 'A pinch will do.',
  allergen_stays: 'Straining leaves the allergen in.',
  arils_no_membrane: 'Use the red seeds only, none of the white skin between them.',
  bought_dried_root: 'Buy the root dried, from a shop that sells it as food.',
  bought_root_scrub_slice: 'Buy the root, scrub it and slice it.',
  break_blades_weigh: 'Break the blades up and weigh them.',
  bruise_and_slice: 'Bruise it and slice it.',
  buy_food_grade: 'Buy it where it’s sold as food.',
  buy_from_food_shop: 'Buy it in a food shop.',
  carries_bergamot: 'It brings bergamot along, so go easy on other peel.',
  check_picking_rules: 'Ask what may be picked where you are.',
  chill_and_filter_fat: 'It’s oily: chill after straining and filter off the fat.',
  chop_small: 'Chop them small.',
  colour_within_hours: 'It gives its colour within hours.',
  core_no_pips: 'Cut out the core and leave no pips in.',
  crack_lightly: 'Crack it lightly.',
  crack_not_grind: 'Crack the beans, don’t grind them.',
  crack_once: 'Crack each berry once.',
  crack_pods: 'Crack the pods open.',
  crush_lightly: 'Crush it lightly.',
  cultivated_fronds: 'Use fronds from a garden or a shop.',
  cultivated_only: 'Use it grown in a garden, not picked in the mountains.',
  cut_off_white_heel: 'Cut off the white heel of each petal: it’s bitter.',
  cut_root_not_extract: 'Use the cut root, not an extract.',
  dark_cold_strain_early: 'Keep the jar dark and cold, and strain early.',
  discard_bruised: 'Throw out bruised fruit.',
  dominates_easily: 'It takes over: use very little.',
  few_leaves: 'A few leaves are enough.',
  few_sprigs_turns_resinous: 'A few sprigs are enough. More turns resinous.',
  fill_up_at_once: 'Cover it with spirit at once: cut flesh goes brown.',
  flesh_never_seed: 'Shell them and use the flesh. The seed never goes in.',
  flowers_no_green_stalk: 'Pull the flowers off. No green stalk goes in.',
  flowers_only_rest_poisonous: 'Strip the flowers off their stalks. The rest of the tree is poisonous.',
  fresh_never_rancid: 'Taste one: a rancid nut spoils the jar. Crush the rest.',
  fully_ripe: 'Use it fully ripe.',
  gloves: 'Wear gloves.',
  gloves_keep_from_eyes: 'Wear gloves and keep your fingers from your eyes.',
  grate_never_whole: 'Grate what you weigh off. Never put a whole nut in.',
  grate_or_slice_browns: 'Grate or slice it. It will go brown: that’s normal.',
  green_leaf_washed: 'Use the green leaf, washed, and not the head.',
  green_pods: 'Use green pods.',
  green_turns_brown: 'The green turns brown sooner or later.',
  grind_coarse: 'Grind it coarse.',
  halve_and_take_pips_out: 'Halve it and remove the pips.',
  halve_or_crush_lightly: 'Halve the berries or crush them lightly.',
  halve_scrape_hairs: 'Halve them and scrape out seeds and hairs, which itch.',
  harsh_within_hours: 'It turns harsh within hours: set an alarm.',
  hull_wash_dry: 'Wash, dry and hull them.',
  know_cassia_bark: 'Cassia is one thick, hard curl of bark.',
  know_ceylon_quills: 'Ceylon is a quill of many thin, brittle layers.',
  known_unsprayed_citrus: 'Use leaves of a citrus tree you know, unsprayed.',
  known_unsprayed_olive: 'Use leaves of a tree you know to be an olive, and unsprayed.',
  leaf_never_seed: 'Use the leaf, never the seed.',
  leave_beans_whole: 'Leave the beans whole.',
  leaves_before_flowering: 'Pick the leaves before it flowers.',
  leaves_no_woody_stems: 'Use the leaves and soft tips, no woody stems.',
  leaves_only: 'Use the leaves only.',
  loose_leaf: 'Use loose leaf, not bags.',
  lower_stalk_only: 'Use the lower, pale part of the stalk.',
  natural_roast: 'Use a plain roast without added sugar or flavouring.',
  needle_goes_through: 'Pick them while a needle still goes right through.',
  never_african_violet: 'Use violets or pansies grown for food, never African violets.',
  never_crack_stones: 'Never crack the stones.',
  never_dig: 'Never dig it yourself.',
  never_dig_hemlock: 'Never dig it yourself: deadly hemlocks look like it.',
  never_forage_hemlock: 'Never pick it wild: hemlock looks like it.',
  never_kernels: 'Never add the kernels.',
  never_kernels_or_leaves: 'Never add the kernels or the leaves.',
  never_marsh_marigold: 'Use pot marigold, never marsh marigold.',
  never_oleander: 'Be certain it’s not oleander, which kills.',
  never_other_elder_parts: 'No other part of the elder goes in.',
  never_pennyroyal: 'Never use pennyroyal instead.',
  never_plain_buckthorn: 'Use sea buckthorn, never plain buckthorn.',
  never_ponderosa_in_pregnancy: 'Never use ponderosa pine, and none at all in pregnancy.',
  never_potted_azalea: 'Use ling heather, and no rhododendron or azalea with it.',
  never_powder_or_decorative: 'Never use powder, or stars sold for decoration.',
  never_savin: 'Never use savin or another garden juniper.',
  never_sweet_clover: 'Use red clover, never sweet clover.',
  never_the_leaf: 'Never add the leaf.',
  never_unknown_laurel: 'Never use leaves of a laurel you don’t know.',
  never_wormwood_oil: 'Never use its oil.',
  no_milk_chopped: 'Use chocolate without milk, and chop it.',
  no_skin_no_stone: 'Leave out the stone and the skin: its sap irritates.',
  no_white_pith: 'Peel thinly, leaving the white pith behind.',
  not_blood_pressure_or_pregnancy: 'Not for anybody with high blood pressure or pregnant.',
  not_cashew_allergy: 'Not for anybody who is allergic to cashew or pistachio.',
  not_crush_hard: 'Don’t crush them hard.',
  not_pregnancy_or_epilepsy: 'Not in pregnancy and not with epilepsy.',
  not_with_gallstones: 'Not with gallstones.',
  nut_allergen_stays: 'Straining leaves the nut allergen in.',
  oil_ring_no_fault: 'Its oil makes an orange ring on top. That’s fine.',
  only_chips_for_drinks: 'Use only chips sold for drinks.',
  only_common_juniper: 'Use only common juniper, sold as food.',
  only_sure_pine_never_yew: 'Only where you’re certain it’s pine, never yew.',
  only_sweet_almonds: 'Use sweet almonds only.',
  only_thin_yellow_layer: 'Use only the thin yellow layer.',
  only_true_bay: 'Use only true bay.',
  only_true_jasmine: 'Buy it, or pick it from a jasmine you planted. Never yellow jessamine.',
  open_window_stings_eyes: 'Open a window: it stings the eyes.',
  peel_and_cut_up: 'Peel it and cut it up.',
  peel_and_halve: 'Peel and halve it.',
  peel_just_before: 'Peel just before it goes in.',
  peel_slice_grating_sharper: 'Peel and slice it. Grated it’s sharper.',
  peel_slice_stains_red: 'Peel and slice it. It stains red.',
  peel_strain_seeds: 'Peel it, and strain the seeds off.',
  petals_no_green: 'Pull off the petals: the green parts are bitter.',
  pick_leaves_wash_dry: 'Pick off the leaves, wash them and dry them well.',
  pick_over_not_crush: 'Pick them over, but don’t crush them.',
  pick_over_rinse_briefly: 'Pick them over and rinse them briefly.',
  pick_over_wash_dry: 'Pick them over, wash and dry them.',
  pit_or_leave_stones_whole: 'Stone them, or leave the stones uncracked.',
  prefer_ceylon: 'Ceylon cinnamon is the safer choice.',
  prefer_untreated: 'Use fruit sold as untreated.',
  prick_each_off_stalks: 'Pull them off the stalks and prick each one.',
  prick_or_crush_lightly: 'Prick the berries or crush them lightly.',
  prick_or_freeze: 'Prick them, or freeze them first.',
  pulp_no_seeds: 'Use the pulp, without shell and seeds.',
  quarter_with_gloves_stains: 'Wear gloves to quarter them: the juice stains for weeks.',
  real_stigmas: 'Use real threads, not powder.',
  red_husks_no_seeds: 'Use the red husks, and pick out black seeds.',
  remove_leaves_and_stalks: 'Pull off leaves and stalks.',
  remove_seeds_and_ribs: 'Cut out seeds and ribs.',
  remove_spines: 'Remove every spine.',
  rinse_dry_no_woody_stems: 'Rinse and dry it. No woody stems.',
  rinse_dry_split: 'Rinse and dry them, and split them.',
  rinse_dust_taste_weekly: 'Rinse off the dust, and taste every week.',
  ripe_firm_core_slice: 'Use it ripe but firm, core it and slice it.',
  ripe_no_leaf_or_stem: 'Use ripe fruit, with no leaf or stem. Cut it up.',
  ripe_no_milky_sap: 'Use it ripe, with no milky sap left at the stalk.',
  ripe_pulp_no_rind: 'Use ripe fruit, scoop out the pulp and leave the rind.',
  roast_and_crush: 'Roast and crush them.',
  rub_off_down_wash: 'Rub off the down and wash it.',
  scrub_and_slice: 'Scrub it and slice it.',
  scrub_hot_and_dry: 'Scrub it under hot water and dry it.',
  scrub_peel_slice: 'Scrub it, peel it and slice it thin.',
  scrub_slice_stains_yellow: 'Scrub and slice it. It stains yellow.',
  seeds_out_cut_up: 'Remove the seeds and cut it up, without the rind.',
  settles_strain_paper: 'It settles: pour it off through paper.',
  shake_out_insects: 'Shake insects out, but don’t wash the scent away.',
  shelled_unsalted: 'Use them shelled, roasted and unsalted, and crush them.',
  snip_short: 'Wash it, dry it and snip it short.',
  soapy_taste_daily: 'It soon tastes of soap: try it every day.',
  soft_enough_to_cut: 'Pick them while they’re soft enough to cut.',
  soft_tips_never_yew: 'Pick the soft, light green tips of a tree you’re certain of, never yew.',
  split_lengthwise: 'Split the pods lengthwise.',
  stalks_no_leaf: 'Use the stalks, with no leaf on them.',
  start_with_one_pod: 'Start with one pod.',
  steep_cold: 'Steep it without heat.',
  steep_cold_taste_daily: 'Steep it without heat and taste every day.',
  stone_out_and_chop: 'Stone them and chop them.',
  strain_through_cloth: 'Strain it through cloth.',
  strip_from_stalks_crush: 'Strip them from their stalks and crush them.',
  strong_spirit_so_wet: 'It’s nearly all water: use strong spirit.',
  strong_start_low: 'It’s strong: start with little.',
  taste_after_a_day_then_daily: 'Taste after a day, then every day.',
  taste_after_hours_strain_paper: 'Taste after some hours, and strain through paper.',
  taste_daily_strain_paper: 'Taste every day, and strain through paper.',
  thin_peel_scrape_pith: 'The peel is thin and soft: scrape the pith off it.',
  tiny_dose_only: 'Only a tiny amount.',
  toast_lightly: 'Toast it lightly in a dry pan and let it cool.',
  top_tail_and_prick: 'Top and tail the berries and prick them.',
  turns_bitter_daily: 'It turns bitter fast: try it every day.',
  unoiled_unsulphured: 'Use them without oil or sulphur.',
  unsprayed_never_florist: 'Use unsprayed flowers, never from a florist.',
  unsweetened_cocoa: 'Use it unsweetened.',
  unsweetened_flakes: 'Use it unsweetened, without sulphites if you can.',
  use_roasted_nibs: 'Use roasted nibs.',
  very_bitter_start_low: 'It’s very bitter: start with little.',
  wash_dry_prick_or_halve: 'Wash and dry them, then prick or halve them.',
  wash_dry_strain_early: 'Wash and dry it, and strain early.',
  wash_dry_tear: 'Wash, dry and tear the leaves.',
  wash_halve_stone: 'Wash, halve and stone them.',
  wash_stone_slice: 'Wash, stone and slice them.',
  wash_trim_slice: 'Wash, trim and slice it.',
  white_flesh_grated: 'Grate the white flesh, without its brown skin.',
  whole_pods_food_brand: 'Use whole stars of a brand sold as food.',
  young_leaves_unsprayed: 'Pick young leaves, unsprayed.',
}
