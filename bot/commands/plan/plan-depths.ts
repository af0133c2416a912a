import type { PlanHazard } from '../../../core/botanical/evidence/plan-hazards.ts'
import type { Reply } from '../../chat/reply.ts'
import type { Heading } from '../../text/more-text.ts'
import type { Message } from '../../text/words.ts'

type NoteKey = Message<'notes'>['key']

/** Under what the notes of a plan stand one question deeper. */
const HEADING: { readonly [Key in NoteKey]?: Heading } = {
  plan_typical: 'in_jar',
  plan_capped: 'in_jar',
  plan_zest: 'in_jar',
  plan_pieces: 'in_jar',
  plan_more_than_usual: 'in_jar',
  plan_less_than_usual: 'in_jar',
  plan_spirit_usual: 'in_jar',
  plan_diluted_first: 'in_jar',
  plan_out_of_season: 'in_jar',
  plan_care: 'in_jar',
  plan_crack: 'in_jar',
  plan_green: 'in_jar',
  plan_pectin: 'in_jar',
  plan_fruit_sugar: 'in_jar',
  plan_sugar_slow: 'in_jar',
  plan_measure: 'sweetening',
  plan_adjust: 'sweetening',
  plan_no_syrup: 'sweetening',
  plan_spent: 'sweetening',
  plan_water: 'sweetening',
  plan_citrus_cloud: 'sweetening',
  plan_anethole_cloud: 'sweetening',
  plan_caffeine: 'safety',
  flash_point: 'safety',
  plan_law: 'safety',
}

export const headed = (notes: Reply['notes']): Reply['notes'] =>
  notes.map((note) => {
    const heading = note.depth === 'more' ? HEADING[note.key] : undefined
    return heading === undefined ? note : { ...note, heading }
  })

/** Hazards of which the first screen says all there is. */
const SAID_WHOLE: ReadonlySet<PlanHazard> = new Set([
  'stone_kernels',
  'bitter_almond',
  'elder',
  'nutmeg',
  'lychee_seed',
  'conifer_lookalikes',
  'carrot_family',
  'jasmine_double',
  'locust_double',
  'veratrum_confusion',
  'burdock_double',
  'foraging',
  'grapefruit_interaction',
  'star_anise_adulteration',
  'bitter_gourd',
  'allergen_nuts',
  'allergen_peanut',
  'allergen_celery',
  'allergen_mustard',
  'allergen_sesame',
])

/** What plants can do is not said once more one question deeper, nor is it there that strong spirit burns. */
export function saidOnce(cautions: Reply['cautions']): Reply['cautions'] {
  const grave = cautions.find((caution) => caution.key === 'plan_grave')
  if (grave?.key !== 'plan_grave') return cautions
  const { hazards, burns } = grave.values
  return cautions.map((caution) => {
    const isSaid =
      (caution.key === 'flame' && burns) ||
      (caution.key === 'plan_hazard' &&
        SAID_WHOLE.has(caution.values.hazard) &&
        hazards.includes(caution.values.hazard))
    return isSaid ? { ...caution, depth: 'data' as const } : caution
  })
}
