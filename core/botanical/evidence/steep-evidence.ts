import type { SourceKey } from './sources.ts'
import type { Trust } from './trust.ts'

/**
 * What has been measured of when steeping is done; nothing here is a curve. `doneAfterDays` is the time after which no
 * more was found, null where no number can be read.
 */
export interface SteepEvidence {
  readonly key:
    | 'peel_seven_days_conventional'
    | 'peel_dose_over_strength'
    | 'peel_by_analogy'
    | 'coffee_beans_three_weeks'
    | 'coffee_ground_hours_in_water'
    | 'ginger_hours_not_enough'
    | 'chilli_fast_when_hot'
    | 'basil_colour_only'
    | 'vanilla_ageing_rule'
    | 'walnut_little_after_15_days'
    | 'herbs_three_weeks'
    | 'seeds_three_weeks_at_70'
  readonly botanicals: readonly string[]
  readonly doneAfterDays: number | null
  /** % vol at which it was measured; null where it was water, hot, or not said. */
  readonly atPercent: number | null
  readonly trust: Trust
  readonly sources: readonly SourceKey[]
}

const row = (
  key: SteepEvidence['key'],
  botanicals: string,
  doneAfterDays: number | null,
  atPercent: number | null,
  trust: Trust,
  sources: readonly SourceKey[],
): SteepEvidence => ({ key, botanicals: botanicals.split(' '), doneAfterDays, atPercent, trust, sources })

const OTHER_PEEL =
  'orange_peel bitter_orange_peel mandarin_peel lime_peel grapefruit_peel bergamot_peel citron_peel ' +
  'tangelo_peel pomelo_peel'

export const steepEvidence: readonly SteepEvidence[] = [
  row('peel_seven_days_conventional', 'lemon_peel', null, 96, 'published', ['jfpe_12350']),
  row('peel_dose_over_strength', 'yuzu_peel', null, null, 'published', ['chung_2019']),
  row('peel_by_analogy', OTHER_PEEL, null, null, 'derived', ['navarro_2019', 'jfpe_12350']),
  row('coffee_beans_three_weeks', 'coffee_whole', 21, 80, 'published', ['oh_2019']),
  row('coffee_ground_hours_in_water', 'coffee_ground', 1, null, 'published', ['fuller_2017']),
  row('ginger_hours_not_enough', 'ginger', null, null, 'published', ['kjfp_2019']),
  row('chilli_fast_when_hot', 'chilli_fresh chilli_dried', null, null, 'published', ['sanchez_2017']),
  row('basil_colour_only', 'basil', null, null, 'not_found', ['shen_2010']),
  row('vanilla_ageing_rule', 'vanilla', null, 70, 'memory', ['vanilla_2013']),
  row('walnut_little_after_15_days', 'green_walnut', 15, null, 'published', ['alamprese_2005']),
  row(
    'herbs_three_weeks',
    'wormwood peppermint spearmint sage lemon_balm fennel_fronds caraway',
    21,
    null,
    'published',
    ['jsfa_10044'],
  ),
  row('seeds_three_weeks_at_70', 'chamomile coriander_seed liquorice_root', 21, 70, 'published', ['jsfa_7822']),
]

export const steepEvidenceOf = (id: string): readonly SteepEvidence[] =>
  steepEvidence.filter(({ botanicals }) => botanicals.includes(id))
