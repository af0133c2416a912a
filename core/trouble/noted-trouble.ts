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

/** It is over, or it never was. */
const OVER =
  /(?<!\p{L})(?:no|not|never|none|stopped|over|gone|away|settled|cleared|fine|ok|okay|false alarm|was only|non|senza|smesso|passat[oa]|a posto|tutto bene)(?!\p{L})/iu

/** From so many points on it pleased. */
const PLEASED_RATING = 3

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
    const found = note === null ? [] : symptomsIn(note)
    const symptom = HELD.find((each) => found.includes(each)) ?? null
    const isOver = note !== null && OVER.test(note)
    if (symptom !== null && note !== null && !isOver) return { note, symptom, day: entry.day }
    const isPleasing = entry.kind === 'tasted' && entry.rating !== null && entry.rating >= PLEASED_RATING
    if (isOver || isPleasing) return null
  }
  return null
}
