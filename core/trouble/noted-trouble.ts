import type { JarState } from '../jar/state/jar-state.ts'
import type { IsoDay } from '../quantity/time/calendar-day.ts'
import { symptomsIn } from './find-symptom.ts'
import type { SymptomId } from './symptoms.ts'

/** What must be cleared up before a jar is bottled or drunk; the worst first. */
const HELD: readonly SymptomId[] = [
  'wrong_spirit',
  'unknown_plant',
  'broken_glass',
  'mould',
  'pink_orange_slime',
  'pressure',
  'fermenting',
  'solvent',
  'rotten_egg',
]

/** A word that is denied, or of what has stopped: `no sign of mould`, `not fizzing any more`. */
const DENIED =
  /(?<!\p{L})(?:no|not|never|isn['’]?t|without|stopped|non|senza|smesso(?: di)?)\s+(?:(?:longer|more|any|a|the|signs? of|più|piu|di)\s+)*\p{L}+/giu

/** It is over: `the fizz is gone`, not `gone mouldy`; `all fine now`, not `fine white mould`. */
const OVER =
  /(?<!\p{L})(?:false alarm|was only|tutto bene|(?:gone|over|settled|cleared(?: up)?|fine|ok|okay|passat[oa]|a posto)(?=\s*(?:$|[,.;!)]|(?:down|now|again|since|today|ora|adesso)(?!\p{L}))))/iu

/** From so many points on it pleased. */
const PLEASED_RATING = 3

/** The worst that a text tells of; null where it is nothing that holds a jar up. */
function heldIn(text: string): SymptomId | null {
  const found = symptomsIn(text)
  return HELD.find((each) => found.includes(each)) ?? null
}

export interface NotedTrouble {
  readonly note: string
  readonly symptom: SymptomId
  readonly day: IsoDay
}

/**
 * What a jar's maker wrote down of it last that has to be cleared up before it is bottled; null where nothing was, where a later
 * note says that it is over, or where it was tasted and pleased since.
 */
export function notedTrouble({ happened }: JarState): NotedTrouble | null {
  for (const entry of happened.toReversed()) {
    if (entry.kind !== 'noted' && entry.kind !== 'tasted') continue
    const { note } = entry
    const symptom = note === null ? null : heldIn(note.replace(DENIED, ' '))
    const isOver = note !== null && (OVER.test(note) || (symptom === null && heldIn(note) !== null))
    if (symptom !== null && note !== null && !isOver) return { note, symptom, day: entry.day }
    const isPleasing = entry.kind === 'tasted' && entry.rating !== null && entry.rating >= PLEASED_RATING
    if (isOver || isPleasing) return null
  }
  return null
}
