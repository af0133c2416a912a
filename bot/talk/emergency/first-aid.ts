import type { AidId } from './aid-words.ts'
import type { HarmId } from './harm.ts'

interface Cited {
  /** `published`: read in the sources, as stored copies, on 29 November 2026. `memory`: from memory. */
  readonly trust: 'published' | 'memory'
  readonly source: string
}

const published = (source: string): Cited => ({ trust: 'published', source })

/** What to do, by key; the sentences are in `bot/text/en/emergency.ts`. */
export const firstAidSteps = {
  no_waiting: published('chop.edu; poisonhelp.hrsa.gov; CHOP poison centre on the blood sugar of young children'),
  no_vomiting: published('poisons.ie/public; poisons.co.nz first aid; kidsafevic.com.au; oklahomapoison.org'),
  nothing_by_mouth: published('poisons.ie first aid; poisons.co.nz; NHS poisoning text'),
  have_ready_child: published('poisons.ie/public; poisons.co.nz/calling; goeg.at VIZ'),
  stay_with_them: published('NHS-based text, healthandcare.portsmouth.gov.uk/overdose'),
  sit_them_up: published('portsmouth.gov.uk; nenc-healthiertogether.nhs.uk'),
  no_home_cures: published('portsmouth.gov.uk; nenc-healthiertogether.nhs.uk'),
  no_sleeping_off: published('older NHS text copied at uk.i-liveradio.com/alcohol-poisoning'),
  side_and_check: published('NHS (old nhs.uk copy); nenc-healthiertogether.nhs.uk'),
  only_time: {
    trust: 'memory',
    source:
      'the body burns alcohol at its own pace; no coffee and no cold shower: portsmouth.gov.uk; nenc-healthiertogether.nhs.uk',
  },
  check_again: published('older NHS text copied at uk.i-liveradio.com/alcohol-poisoning; how to check: memory'),
  rinse_mouth: published('poisoncontrol.utah.edu; poisons.ie/public; poisons.co.nz'),
  call_though_well: published('NHS poisoning text (richmondgpalliance.co.uk)'),
  keep_plant: published('poisons.ie first aid; oklahomapoison.org'),
  check_breathing: published('NHS poisoning text; stjohn.org.nz poisoning'),
  on_their_side: published('NHS (old nhs.uk copy, richmondgpalliance.co.uk); poisons.co.nz'),
  keep_checking: published('NHS poisoning text; nenc-healthiertogether.nhs.uk'),
  give_nothing: published('NHS (old nhs.uk copy); nenc-healthiertogether.nhs.uk'),
  rinse_eye: published('vdh.virginia.gov 9.11.2021; poisonhelp.hrsa.gov; sja.org.uk (at least 20 minutes)'),
  lenses_out: published('apsinuodijau.lt; sja.org.uk'),
  only_water: published('poisons.ie first aid; healthinfo.org.nz'),
  no_rinsing_glass: published('baycare.org first aid for a cut or punctured eye'),
  cool_burn: published('kent.fire-uk.org; southashford.org.uk; lambethccg.nhs.uk'),
  clothing_off: published('kent.fire-uk.org; nbt.nhs.uk burns first aid'),
  no_ice: published('kent.fire-uk.org; nbt.nhs.uk'),
  cover_burn: published('kent.fire-uk.org; nbt.nhs.uk; for small children nbt.nhs.uk'),
  stop_and_roll: published('wmfs.net; dwfire.org.uk; sja.org.uk how to manage a fire'),
  smother: published('sja.org.uk; informationnow.org.uk'),
  then_cool: published('kent.fire-uk.org'),
  heat_off_lid: published('tipking.co.uk pan fires; general web texts on ethanol fires'),
  no_water_on_it: published('biologyinsights.com; bioethanol guidance (general web texts only)'),
  everyone_out: published('dwfire.org.uk; derbys-fire.gov.uk'),
  pale_flame: published('biologyinsights.com; thetechy.life (general web texts only)'),
  go_at_once: published('UK Foreign Office text; WHO note 2014; methanolpoisoning.msf.org'),
  late_signs: published('WHO information note July 2014 (docslib.org copy); UK Foreign Office text (newszop copy)'),
  keep_bottle: published('NHS poisoning text; telling the others: memory'),
  watch_for_days: {
    trust: 'memory',
    source: 'signs of botulism (CDC MMWR 61(39):782–784 tells of cases); days: memory',
  },
  no_other_spirit: { trust: 'memory', source: 'an antidote is given in hospital (methanolpoisoning.msf.org)' },
  vet_at_once: published('lortsmith.com; heronbank.co.uk; calendar-australia.com'),
  no_vomiting_pet: published('vpisglobal.com 19.12.2023; lortsmith.com'),
  keep_warm_pet: published('lortsmith.com'),
  tell_vet: published(
    'animalpoisonline.co.uk 26.10.2021 (fruit, amount, stones); yolondagraydvm.blogspot.com 2011 (raisins, grapes); weight: memory',
  ),
  leave_room: published('cunnan.lochac.sca.org glass grenade; beerandbrewing.com 27.11.2016'),
  press_wound: published('irishhealth.com; fatetraining.co.uk'),
  glass_stays_in: published('irishhealth.com; fatetraining.co.uk'),
  cover_eye: published('baycare.org; clinicalondon.co.uk'),
  not_alone: { trust: 'memory', source: 'common advice of crisis lines' },
  out_of_reach: { trust: 'memory', source: 'common advice of crisis lines' },
  keep_what_it_was: published('NHS poisoning text (take the substance along)'),
} as const satisfies Readonly<Record<string, Cited>>

export type StepKey = keyof typeof firstAidSteps

/** At most four for each harm, the most urgent first. */
export const stepsFor: Readonly<Record<HarmId, readonly StepKey[]>> = {
  swallowed_spirit_child: ['no_waiting', 'no_vomiting', 'nothing_by_mouth', 'have_ready_child'],
  swallowed_spirit_adult: ['stay_with_them', 'sit_them_up', 'no_home_cures', 'no_sleeping_off'],
  swallowed_plant: ['rinse_mouth', 'no_vomiting', 'call_though_well', 'keep_plant'],
  swallowed_undrinkable: ['rinse_mouth', 'no_vomiting', 'watch_for_days', 'keep_bottle'],
  unconscious_after_drinking: ['check_breathing', 'on_their_side', 'keep_checking', 'give_nothing'],
  spirit_in_eye: ['no_rinsing_glass', 'rinse_eye', 'lenses_out', 'only_water'],
  burn: ['cool_burn', 'clothing_off', 'no_ice', 'cover_burn'],
  clothes_on_fire: ['stop_and_roll', 'smother', 'then_cool', 'clothing_off'],
  spirit_fire: ['everyone_out', 'heat_off_lid', 'no_water_on_it', 'pale_flame'],
  methanol: ['go_at_once', 'late_signs', 'keep_bottle', 'no_other_spirit'],
  pet: ['vet_at_once', 'no_vomiting_pet', 'keep_warm_pet', 'tell_vet'],
  glass_burst: ['press_wound', 'glass_stays_in', 'cover_eye', 'leave_room'],
  self_harm: ['not_alone', 'out_of_reach'],
  someone_hurt: ['check_breathing', 'on_their_side', 'nothing_by_mouth', 'keep_what_it_was'],
}

/** What to do where something is asked of somebody who drank too much: at most three, the most urgent first. */
export const stepsForAid: Readonly<Record<AidId, readonly StepKey[]>> = {
  make_sick: ['side_and_check', 'stay_with_them'],
  sleep: ['side_and_check', 'check_again', 'no_sleeping_off'],
  position: ['on_their_side', 'check_again', 'sit_them_up'],
  shower: ['only_time', 'sit_them_up', 'stay_with_them'],
  coffee: ['only_time', 'sit_them_up', 'stay_with_them'],
  go_home: ['stay_with_them', 'no_sleeping_off'],
  alone: ['side_and_check', 'check_again', 'no_sleeping_off'],
  walk_about: ['only_time', 'sit_them_up', 'stay_with_them'],
  water_or_food: ['sit_them_up', 'no_home_cures', 'stay_with_them'],
  sober_up: ['only_time', 'side_and_check', 'stay_with_them'],
  when_to_call: ['side_and_check', 'check_again', 'no_home_cures'],
  being_sick: ['side_and_check', 'stay_with_them', 'no_home_cures'],
  snoring: ['side_and_check', 'check_again', 'give_nothing'],
  asleep: ['side_and_check', 'check_again', 'stay_with_them', 'give_nothing'],
  can_wake: ['side_and_check', 'check_again', 'give_nothing'],
  breathes: ['side_and_check', 'check_again', 'give_nothing'],
  fine_now: ['check_again', 'no_sleeping_off', 'no_home_cures'],
  fire_out: ['cool_burn', 'clothing_off', 'no_ice', 'cover_burn'],
  on_burn: ['cool_burn', 'clothing_off', 'no_ice', 'cover_burn'],
}

/** Harms of which a poison centre knows. */
export const isPoisoning = (harm: HarmId): boolean =>
  !['burn', 'clothes_on_fire', 'spirit_fire', 'glass_burst'].includes(harm)
