import { everUnder } from './conditions.ts'
import { plants } from './conditions-of-plants.ts'
import { all, any, denied, likely, not, notBought, said, surely } from './logic.ts'
import type { StopId, Stops } from './row.ts'

/** What has the whole jar thrown away whatever the symptom, as far as it is known. */
export const firstStops: Stops = {
  not_for_drinking: notBought,
  plant_unsure: denied('sure'),
  // What smells of nail varnish is not asked about petrol.
  fuel: any(surely(said('fuel')), all(said('fuel'), likely(not(said('varnish'))))),
  varnish: all(said('varnish'), any(notBought, everUnder(20), said('fizz'))),
  growth: said('growth'),
  burst: said('burst'),
  glass: said('glass'),
  kernels: said('stones'),
  dairy: said('dairy'),
  weak_low_acid: all(plants('low_acid'), any(everUnder(20), said('oil'))),
  metal: said('metal'),
  fizzed_weak: all(said('fizz'), everUnder(15)),
}

/** What kills first is asked first. */
export const STOP_ORDER: readonly StopId[] = [
  'burnt',
  'not_for_drinking',
  'plant_unsure',
  'contents_unknown',
  'fuel',
  'varnish',
  'burst',
  'growth',
  'glass',
  'kernels',
  'over_ceiling',
  'dairy',
  'weak_low_acid',
  'gas_low_acid',
  'metal',
  'plastic',
  'perfume',
  'cleaner',
  'soap',
  'spoiled_fruit',
  'insects',
  'vinegar',
  'rotten',
  'fizzed_weak',
  'fizzed',
  'too_weak',
]
