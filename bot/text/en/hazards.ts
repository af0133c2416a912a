import type { HazardKey } from '../../../core/botanical/evidence/hazards.ts'
import type { PlanHazard } from '../../../core/botanical/evidence/plan-hazards.ts'
import type { Feature, Part } from '../language.ts'
import type { HazardMessages, HazardOf } from '../messages/hazards.ts'
import { plantName } from './cook-names.ts'
import { capital, either, listed } from './phrases.ts'
import { planNotes } from './plan.ts'

/** What a plant can do, or be mistaken for, said after the plants it is about. Hazards of look alone have notes. */
const said: { readonly [Key in PlanHazard]: string } = {
  citrus_postharvest: 'buy unwaxed. Scrubbing takes off only some of the wax',
  coumarin: 'it has coumarin, hard on the liver in some people. Keep to the amount',
  thujone: 'keep to the amount. Never with epilepsy or in pregnancy (thujone acts on the nerves)',
  stone_kernels: 'don’t crack the stones (cyanide). Whole fruit is fine',
  bitter_almond: 'sweet almonds only. Bitter ones give off cyanide',
  elder: 'the flowers alone, off their stalks. Leaves, bark and stalks give off cyanide',
  nutmeg: 'a few grams are poisonous. Keep to the amount',
  liquorice: 'it raises blood pressure. Not with heart or kidney trouble, water tablets or in pregnancy',
  grapefruit_interaction: 'it changes how medicines work. On any? Ask your pharmacist',
  phototoxic_peel: 'its oil can burn skin in sunlight. Wash your hands',
  star_anise_adulteration: 'buy a food brand. A poisonous Japanese kind looks the same',
  bay_lookalikes: 'shop-bought bay, or a tree you’re sure of. Hedge laurel is poisonous',
  conifer_lookalikes: 'only from a tree you’re sure of. Yew is deadly',
  veratrum_confusion: 'shop-bought dried root only. People have dug up white hellebore by mistake',
  carrot_family: 'from a shop or a garden, never picked wild. Hemlock looks like it',
  jasmine_double: 'true jasmine only. Yellow jessamine looks like it and has killed',
  locust_double: 'the flowers alone. Bark, leaf and pod are poisonous, and laburnum looks like it',
  burdock_double: 'shop-bought root only. People have dug up deadly nightshade by mistake',
  foraging: 'use only what you’re sure of. People have picked poisonous plants by mistake',
  ornamental_flowers: 'grown for food and unsprayed, never from a florist',
  juniper_species: 'berries sold as food. Other junipers are poisonous',
  saffron_dose: 'a few grams are poisonous. Keep to the amount',
  asteraceae_allergy: 'it can set off an allergy to the daisy family',
  bile: 'not with gallstones or blocked bile ducts',
  allergen_nuts: 'a nut allergen, and straining leaves it in. Tell everybody who drinks it',
  allergen_celery: 'celery is an allergen, and straining leaves it in. Tell everybody who drinks it',
  allergen_mustard: 'mustard is an allergen, and straining leaves it in. Tell everybody who drinks it',
  allergen_peanut: 'peanut is an allergen, and straining leaves it in. Tell everybody who drinks it',
  allergen_sesame: 'sesame is an allergen, and straining leaves it in. Tell everybody who drinks it',
  allergen_milk_soya: 'it may have milk or soya, both allergens. Read its pack',
  allergen_nuts_trace: 'it may have traces of nuts. Read its pack',
  allergen_generic: 'it can set off allergies. Tell everybody who drinks it',
  pregnancy_breastfeeding: 'not in pregnancy, and no alcohol then at all',
  anacardiaceae_allergy: 'dangerous with an allergy to cashew or pistachio',
  celery_kin: 'it can set off a celery allergy',
  latex_fruit: 'it can set off a latex allergy',
  legume_allergy: 'not with an allergy to pulses or peanut',
  lychee_seed: 'ripe flesh only. The seed and the unripe fruit are poisonous',
  bitter_gourd: 'taste a bit first. If it’s bitter it’s poisonous: bin it',
  never_in_oil: 'never keep it in oil on a shelf: that grows botulism. In spirit it’s fine',
  pinocamphone: 'it acts on the nerves in large amounts. Keep to the amount, not with epilepsy',
  sedative_hops: 'it makes you drowsy. Not with sleeping pills',
  clover_medicines: 'on blood thinners or hormones? Ask your doctor',
  cranberry_warfarin: 'on warfarin? Ask your doctor',
  turmeric_liver: 'not with liver trouble',
  angelica_furocoumarins: 'its juice burns skin in sunlight. Shop-bought dried root only',
  rhubarb_oxalate: 'the stalk alone. The leaf is poisonous',
  sulphites: 'dried fruit may have sulphites, an allergen. Read its pack',
  oak_food_grade: 'chips sold for drinks, never other wood',
  glochids: 'fine spines. Wear gloves, peel, strain through cloth',
  caffeine: 'caffeine masks how drunk you feel',
  capsaicin: 'it burns eyes and skin. Wash your hands, and taste often',
}

/** What straining leaves in, by its short name. */
const ALLERGENS: { readonly [Key in PlanHazard]?: string } = {
  allergen_nuts: 'nuts',
  allergen_peanut: 'peanut',
  allergen_celery: 'celery',
  allergen_mustard: 'mustard',
  allergen_sesame: 'sesame',
  allergen_milk_soya: 'perhaps milk or soya',
  anacardiaceae_allergy: 'kin of cashew',
}

/** What looks like a plant and kills. */
const DOUBLES: { readonly [Key in PlanHazard]?: string } = {
  conifer_lookalikes: 'yew',
  carrot_family: 'hemlock',
  jasmine_double: 'yellow jessamine',
  locust_double: 'laburnum',
  veratrum_confusion: 'white hellebore',
  burdock_double: 'deadly nightshade',
}

/** Who must not drink of it. */
const NOT_FOR: { readonly [Key in PlanHazard]?: string } = {
  pregnancy_breastfeeding: 'in pregnancy',
  thujone: 'with epilepsy',
}

const SHORT: { readonly [Key in PlanHazard]?: string } = {
  stone_kernels: 'Don’t crack the stones (cyanide).',
  bitter_almond: 'Sweet almonds only (bitter ones: cyanide).',
  elder: 'Elderflowers only, no leaf or stalk (cyanide).',
  nutmeg: 'A few grams of nutmeg or mace are poisonous.',
  lychee_seed: 'Ripe lychee flesh only: the seed is poisonous.',
  bitter_gourd: 'Taste a bit first: if it’s bitter, bin it.',
  star_anise_adulteration: 'Buy a food brand: poisonous star anise looks the same.',
  grapefruit_interaction: 'On medicines? Ask your pharmacist.',
}

const wordsIn = (table: { readonly [Key in PlanHazard]?: string }, hazards: readonly PlanHazard[]): readonly string[] =>
  hazards.flatMap((hazard) => table[hazard] ?? [])

/** One sentence for doubles, one for who must not drink of it, one for what straining leaves in. */
function graveText(hazards: readonly PlanHazard[], ids: readonly string[]): string {
  const bay = hazards.includes('bay_lookalikes') ? [ids.includes('olive_leaf') ? 'oleander' : 'hedge laurel'] : []
  const doubles = [...wordsIn(DOUBLES, hazards), ...bay]
  const [notFor, allergens] = [wordsIn(NOT_FOR, hazards), wordsIn(ALLERGENS, hazards)]
  return [
    ...(doubles.length === 0
      ? hazards.includes('foraging')
        ? ['Pick only what you’re sure of: poisonous plants look alike.']
        : []
      : [
          `Be sure of the plant: ${listed(doubles)} ${doubles.length === 1 ? 'looks like it and kills' : 'look like it and kill'}.`,
        ]),
    ...wordsIn(SHORT, hazards),
    ...(notFor.length === 0 ? [] : [`Not ${either(notFor)}.`]),
    ...(allergens.length === 0 ? [] : [`Has ${listed(allergens)}: tell everybody who drinks it.`]),
  ].join(' ')
}

/** The double of olive is another than that of bay. */
const leavesText = (ids: readonly string[]): string => {
  if (!ids.includes('olive_leaf')) return said.bay_lookalikes
  const leaf = ids.length === 1 ? 'an olive' : 'the right one'
  return `shop-bought, or from a tree you know to be ${leaf}. Oleander leaves look alike and kill`
}

/** What can hurt in a planned batch. */
const planCautions = {
  plan_grave: ({ hazards, ids, burns }) =>
    [graveText(hazards, ids), ...(burns ? ['Keep flames away.'] : [])].join(' ').trim(),
  plan_hazard: ({ hazard, ids }) =>
    `${capital(listed(ids.map(plantName)))}: ${hazard === 'bay_lookalikes' ? leavesText(ids) : said[hazard]}.`,
} satisfies Part<HazardMessages['cautions']>

type LookHazard = 'pectin' | 'louche_anethole' | 'chlorophyll'

type OtherHazard = Exclude<HazardKey, PlanHazard | LookHazard>

/** What `/plan` does not say of plants; a hazard without words does not compile. */
const others: { readonly [Key in OtherHazard]: string } = {
  tonka: 'it has so much coumarin that I don’t plan it',
  estragole: 'it has a little estragole, suspected of harm in large amounts. Not for every day',
  methyleugenol: 'it has a little methyleugenol, suspected of harm in large amounts. Not for every day',
  safrole: 'it has safrole, which harms the liver. I don’t plan it',
  hydrocyanic: 'broken pips and kernels can give off cyanide. Leave them out',
  ramsons_lookalikes: 'people mistake deadly autumn crocus and lily of the valley for it. I don’t plan it',
  st_johns_wort: 'it makes many medicines fail. I don’t plan it',
  rue: 'it burns skin in sunlight and can end a pregnancy. I don’t plan it',
  tobacco: 'one small glass can poison you. I don’t plan it',
  mushrooms: 'deadly ones look like good ones. I don’t plan them',
  essential_oils: 'too concentrated to measure at home. I don’t plan them',
  pulegone: 'it has a little pulegone, which harms the liver in large amounts. Keep to the amount',
  teucrin_quassin: 'it can harm the liver. I don’t plan it',
  calamus: 'it has asarone, suspected of causing cancer. I don’t plan it',
  stain: 'the juice stains skin and worktop. Wear gloves',
  protected_plant: 'it may be protected where it grows wild. Buy it, or use it from a garden',
  fig_leaf_furocoumarins: 'the sap burns skin in sunlight. I don’t plan the leaf',
  dairy_egg: 'they spoil within days, even in the fridge. I don’t plan them',
}

/** What `/plan` says of the look of a drink. */
const looks: { readonly [Key in LookHazard]: () => string } = {
  pectin: planNotes.plan_pectin,
  louche_anethole: planNotes.plan_anethole_cloud,
  chlorophyll: planNotes.plan_green,
}

const isOther = (hazard: HazardKey): hazard is OtherHazard => Object.hasOwn(others, hazard)

const isLook = (hazard: HazardKey): hazard is LookHazard => Object.hasOwn(looks, hazard)
/** `Ginger root and nutmeg: …`, in the words of `/plan` where it has any. */
const hazardSentence = ({ hazard, ids }: HazardOf): string => {
  if (isOther(hazard)) return `${capital(listed(ids.map(plantName)))}: ${others[hazard]}.`
  return isLook(hazard) ? looks[hazard]() : planCautions.plan_hazard({ hazard, ids })
}

/** What can hurt in any making of a liqueur, whatever plants are in it. */
const makingCautions = {
  making_food_spirit: () => 'Use only spirit sold for drinking: any other alcohol can blind or kill.',
  making_other_alcohol: () =>
    'Industrial, denatured, rubbing or fuel alcohol is poison, and nothing done at home makes it safe.',
  making_no_flame: () =>
    'Keep spirit and strained plants away from flames, sparks and hot plates. Never heat it, and cool the syrup first.',
  making_vapour: () => 'From about 40 % its vapour can catch fire in a warm room, and hot syrup drives it off.',
  making_children: () => 'Label it, and lock it away from children and pets: a little can poison a child.',
  making_not_for: () => 'Not in pregnancy, not for children, not before driving.',
  making_spent_plants: () =>
    'Strained plants still burn and intoxicate. Keep them from flames, hot ovens, children and pets.',
  making_no_distilling: () =>
    'Don’t distil. It’s illegal without a licence almost everywhere, and the vapour can explode.',
  making_no_lead: () =>
    'Use glass with a tight lid. Spirit draws metal out of leaded crystal, old glazed pottery, copper, brass and galvanised metal.',
  making_no_dairy_egg: () =>
    'I don’t plan cream, milk or egg liqueurs: they spoil within days, and alcohol doesn’t make them safe.',
} satisfies Part<HazardMessages['cautions']>

/** What plants, and the making of a liqueur, can do. */
export const hazardSentences = {
  notes: {
    botanical_look: hazardSentence,
    hazards_memory: ({ ids }) =>
      `Some of what I warn of for ${listed(ids.map(plantName))} is from memory, not from a source I’ve read.`,
    making_trust: () => 'What I say about metal is from memory. The 40 % is worked out, not measured.',
  },
  cautions: { ...planCautions, ...makingCautions, botanical_hazard: hazardSentence },
} satisfies Feature<HazardMessages>
