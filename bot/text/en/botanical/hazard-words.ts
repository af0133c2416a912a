import type { HazardKey } from '../../../../core/botanical/evidence/hazards.ts'
import type { PlanHazard } from '../../../commands/plan/plan-hazards.ts'
import { listed } from '../phrases.ts'
import { planCautions } from '../plan/plan-cautions.ts'
import { planNotes } from '../plan/plan-notes.ts'
import { plantName } from '../plan/plan-words.ts'

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

export interface HazardOf {
  readonly hazard: HazardKey
  readonly ids: readonly string[]
}

const capital = (text: string): string => `${text.charAt(0).toUpperCase()}${text.slice(1)}`

/** `Ginger root and nutmeg: …`, in the words of `/plan` where it has any. */
export const hazardSentence = ({ hazard, ids }: HazardOf): string => {
  if (isOther(hazard)) return `${capital(listed(ids.map(plantName)))}: ${others[hazard]}.`
  return isLook(hazard) ? looks[hazard]() : planCautions.plan_hazard({ hazard, ids })
}
