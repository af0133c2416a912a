import type { HazardKey } from '../../../core/botanical/evidence/hazards.ts'
import type { PlanHazard } from '../../../core/botanical/evidence/plan-hazards.ts'
import type { Feature, Part } from '../language.ts'
import type { HazardMessages, HazardOf } from '../messages/hazards.ts'
import { capital, listed } from './phrases.ts'
import { planNotes } from './plan.ts'
import { plantName } from './words.ts'

/** What a plant can do, or be taken for, said before the plants it is about; hazards of look alone have notes. */
const said: { readonly [Key in PlanHazard]: string } = {
  citrus_postharvest:
    'buy untreated fruit; hot water and scrubbing take off some of the wax and fungicide of others, not all',
  coumarin: 'holds coumarin, hard on the liver in some people; keep to the amount',
  thujone: 'holds thujone, which acts on the nerves; keep to the amount, not with epilepsy or in pregnancy',
  stone_kernels: 'leave out the stones, or leave them whole: cracked kernels give off cyanide',
  bitter_almond: 'sweet almonds only; bitter ones give off cyanide',
  elder: 'the flowers alone, off their stalks; leaves, bark and stalks give off cyanide',
  nutmeg: 'some grams of it poison; keep to the amount',
  liquorice: 'raises blood pressure; not with heart or kidney trouble, water tablets or in pregnancy',
  grapefruit_interaction: 'can change how medicines work; ask your doctor or pharmacist if you take any',
  phototoxic_peel: 'its oil can burn skin in sunlight; wash your hands (from memory)',
  star_anise_adulteration: 'buy a food brand; a poisonous Japanese kind looks the same',
  bay_lookalikes: 'bought, or surely true bay; a hedge laurel is poisonous',
  conifer_lookalikes: 'only where you are sure of the tree; yew is deadly',
  veratrum_confusion: 'bought dried root only; white hellebore has been dug for it',
  carrot_family: 'bought or from a garden; hemlock looks like its wild relatives (from memory)',
  jasmine_double: 'true jasmine only; yellow jessamine looks like it and has killed',
  locust_double: 'the flowers alone; bark, leaf and pod are poisonous, and so is laburnum, which looks like it',
  burdock_double: 'bought root only; deadly nightshade has been dug for it (from memory)',
  foraging: 'take only what you are sure of; picked plants have been taken for poisonous ones',
  ornamental_flowers: 'grown for food and unsprayed, never from a florist',
  juniper_species: 'berries sold as food; other junipers are poisonous (from memory)',
  saffron_dose: 'grams of saffron poison; keep to the amount (from memory)',
  asteraceae_allergy: 'can set off an allergy to the daisy family (from memory)',
  bile: 'not with gallstones or blocked bile ducts (from memory)',
  allergen_nuts: 'a nut allergen, and straining does not take it out; tell everybody who drinks it',
  allergen_celery: 'celery is an allergen, and straining does not take it out; tell everybody who drinks it',
  allergen_mustard: 'mustard is an allergen, and straining does not take it out; tell everybody who drinks it',
  allergen_peanut: 'peanut is an allergen, and straining does not take it out; tell everybody who drinks it',
  allergen_sesame: 'sesame is an allergen, and straining does not take it out; tell everybody who drinks it',
  allergen_milk_soya: 'may hold milk or soya, both allergens; read its pack',
  allergen_nuts_trace: 'may hold traces of nuts; read its pack',
  allergen_generic: 'can set off allergies; tell everybody who drinks it (from memory)',
  pregnancy_breastfeeding: 'not in pregnancy, and no alcohol then at all',
  anacardiaceae_allergy: 'kin to cashew and pistachio; dangerous with an allergy to those',
  celery_kin: 'kin to celery; can set off an allergy to it (from memory)',
  latex_fruit: 'can set off an allergy to latex (from memory)',
  legume_allergy: 'kin to peanut; not with an allergy to pulses (from memory)',
  lychee_seed: 'ripe flesh alone; the seed and the unripe fruit can poison (from memory)',
  bitter_gourd: 'taste a bit first; a bitter one is poisonous, so throw it out (from memory)',
  never_in_oil: 'in spirit it is fine, but never keep it in oil on a shelf: that grows botulism (from memory)',
  pinocamphone: 'acts on the nerves in large amounts; keep to the amount, not with epilepsy (from memory)',
  sedative_hops: 'makes drowsy; not with sleeping pills (from memory)',
  clover_medicines: 'ask your doctor if you take blood thinners or hormones (from memory)',
  cranberry_warfarin: 'ask your doctor if you take warfarin',
  turmeric_liver: 'not with a liver complaint',
  angelica_furocoumarins: 'its juice burns skin in sunlight; bought dried root only',
  rhubarb_oxalate: 'the stalk alone; the leaf is poisonous (from memory)',
  sulphites: 'dried fruit may hold sulphites, an allergen; read its pack (from memory)',
  oak_food_grade: 'chips sold for drinks, never other wood',
  glochids: 'fine spines: wear gloves, peel, strain through cloth',
  caffeine: 'caffeine hides how drunk one is; not for children or late at night (from memory)',
  capsaicin: 'burns eyes and skin; wash your hands, and taste it often',
}

/** The double of olive is another than that of bay. */
const leavesText = (ids: readonly string[]): string => {
  if (!ids.includes('olive_leaf')) return said.bay_lookalikes
  const leaf = ids.length === 1 ? 'an olive' : 'the right one'
  return `bought, or from a tree you know to be ${leaf}; oleander leaves look alike and kill`
}

/** What can hurt in a planned batch. */
const planCautions = {
  plan_hazard: ({ hazard, ids }) =>
    `${capital(listed(ids.map(plantName)))}: ${hazard === 'bay_lookalikes' ? leavesText(ids) : said[hazard]}.`,
} satisfies Part<HazardMessages['cautions']>

type LookHazard = 'pectin' | 'louche_anethole' | 'chlorophyll'

type OtherHazard = Exclude<HazardKey, PlanHazard | LookHazard>

/** What `/plan` does not say of plants; a hazard without words does not compile. */
const others: { readonly [Key in OtherHazard]: string } = {
  tonka: 'holds so much coumarin that I do not plan it',
  estragole: 'holds a little estragole, suspected of harm in large amounts; no daily drink of it (from memory)',
  methyleugenol: 'holds a little methyleugenol, suspected of harm in large amounts; no daily drink of it (from memory)',
  safrole: 'holds safrole, which harms the liver; I do not plan it',
  hydrocyanic: 'can give off cyanide where seed or kernel is broken; leave them out',
  ramsons_lookalikes: 'deadly autumn crocus and lily of the valley have been taken for it; I do not plan it',
  st_johns_wort: 'makes many medicines fail; I do not plan it',
  rue: 'burns skin in sunlight and can end a pregnancy; I do not plan it',
  tobacco: 'one small glass can poison; I do not plan it',
  mushrooms: 'deadly ones look like good ones; I do not plan them (from memory)',
  essential_oils: 'too concentrated for a dose at home; I do not plan them',
  pulegone: 'holds a little pulegone, which harms the liver in large amounts; keep to the amount (from memory)',
  teucrin_quassin: 'holds what harms the liver; I do not plan it',
  calamus: 'holds asarone, suspected of causing cancer; I do not plan it',
  stain: 'the juice stains skin and worktop; wear gloves (common practice)',
  protected_plant: 'may be protected where it grows wild; take it cultivated or bought',
  fig_leaf_furocoumarins: 'the sap burns skin in sunlight; I do not plan the leaf',
  dairy_egg: 'keep for days in the cold at most; I do not plan them',
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
  making_food_spirit: () =>
    'Only bought, taxed food spirit: industrial, denatured, rubbing or fuel alcohol blinds and kills, and nothing done at home makes it safe.',
  making_no_flame: () =>
    'Strong spirit burns, and from about 40 % vol on its vapour can catch fire in a warm room (derived): no flame, spark or hot plate near it, and never heat it.',
  making_children: () =>
    'Jars and bottles look and smell like sweets: label them and lock them away from children and animals. A little can poison a child (from memory, please check).',
  making_spent_plants: () => 'Spent plants burn and intoxicate: no flame or hot oven, no children, no animals.',
  making_no_distilling: () =>
    'Nothing here is distilling: that needs a licence nearly everywhere, and the vapour explodes.',
  making_no_lead: () =>
    'No leaded crystal, old glazed pottery, copper, brass or galvanised metal: spirit draws metal out (from memory, please check). Glass with a tight lid.',
  making_no_dairy_egg: () => 'I plan no milk, cream or egg: they spoil, and alcohol does not make them safe.',
} satisfies Part<HazardMessages['cautions']>

/** What plants, and the making of a liqueur, can do. */
export const hazardSentences = {
  notes: { botanical_look: hazardSentence },
  cautions: { ...planCautions, ...makingCautions, botanical_hazard: hazardSentence },
} satisfies Feature<HazardMessages>
