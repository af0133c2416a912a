import type { StandingTrouble } from '../jar/state/standing-troubles.ts'
import { isSymptom, symptomIn, symptomsIn } from './find-symptom.ts'
import type { SymptomId } from './symptoms.ts'
import { namesHarmless } from './was-nothing.ts'

/** What somebody sees in a jar, or sees move: pith, pectin, crystals or bubbles may be taken for it. */
const SEEN: ReadonlySet<string> = new Set<SymptomId>([
  ...(['cloudy_on_mixing', 'cloudy_in_cold', 'cloudy_later', 'oil_ring', 'separated', 'sediment', 'gelled'] as const),
  ...(['crystals', 'frozen', 'mould', 'pink_orange_slime', 'skin_on_top', 'floating_bits', 'insects'] as const),
  ...(['hairs_or_spines', 'brown', 'faded', 'black_or_metal', 'fruit_went_pale', 'leaves_went_black'] as const),
  ...(['curdled', 'fermenting', 'pressure', 'broken_glass', 'sugar_not_dissolving', 'leaking_lid'] as const),
])

/** Why something goes that nobody has seen in it, whatever it was told by. */
const UNSEEN: ReadonlySet<string> = new Set(['not_for_drinking', 'plant_unsure', 'contents_unknown', 'fuel', 'varnish'])

const maySettle = ({ symptom, because }: StandingTrouble): boolean =>
  SEEN.has(symptom) && !UNSEEN.has(because ?? '') && because !== 'burst'

/** Those that a text names, however it denies them: `it isn’t mould`, `smells of glue was nothing`. */
function namedIn(text: string, standing: readonly StandingTrouble[]): readonly StandingTrouble[] {
  const named = [...symptomsIn(text), symptomIn(text)]
  return standing.filter(({ symptom }) => isSymptom(symptom) && named.includes(symptom))
}

/**
 * What of that which stands is let off by a text that says what it was: what it names; where it names a harmless thing, what that
 * may be taken for; else what was told last. An answer settles no more than it is about; empty where it is about none of it.
 */
export function settledBy(text: string, standing: readonly StandingTrouble[]): readonly StandingTrouble[] {
  const named = namedIn(text, standing)
  if (named.length > 0) return named
  if (namesHarmless(text)) return standing.filter(maySettle)
  const last = standing.reduce<StandingTrouble | null>(
    (found, each) => (found === null || each.seq > found.seq ? each : found),
    null,
  )
  return last === null ? [] : [last]
}
