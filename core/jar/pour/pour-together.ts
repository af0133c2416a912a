import { exactly, type Measured, times } from '../../quantity/measured/measured.ts'
import { timesSweetenings } from '../../recipe/sweetening.ts'
import type { Moment, PlantIn, PouredIn } from '../entry/entry.ts'
import { plantsPutIn } from '../entry/plants-put-in.ts'
import { isDriedForm } from '../entry/start-from-plan.ts'
import { heldIn } from '../limits/limits-passed.ts'
import { type Entered, type RecordedEntry, record } from '../record/record.ts'
import { finedWith, sweeteningsIn } from '../state/batch-facts.ts'
import { asPortion, contentsOf } from '../state/contents.ts'
import { type JarState, jarStateOf, type KeptJar } from '../state/jar-state.ts'

/** One jar poured into another. */
export interface Pouring {
  readonly target: Pick<KeptJar, 'entries'>
  readonly source: Pick<KeptJar, 'entries'>
  /** Of the source, 0 to 1; 1: it is done. */
  readonly share: Measured
  /** What the target is called from here on; null: as before. */
  readonly into: string | null
}

export interface PouredTogether {
  readonly target: RecordedEntry
  readonly source: RecordedEntry
}

const UNSAID = { count: null, isUsual: false, words: null, addOn: null } as const

/** Plants that the catalogue does not have, as they went in. */
const unknownPlants = ({ happened }: JarState): readonly PlantIn[] =>
  happened.flatMap(plantsPutIn).filter(({ id }) => id === null)

/** What a share of a jar brings into another: its liquid, and of its plants what cautions and limits go by. */
export function broughtBy(story: JarState, share: Measured): Omit<PouredIn, 'kind' | 'into'> {
  const { weighed, spiritMl } = heldIn(story)
  const portion = asPortion(contentsOf(story))
  const { value, plusMinus } = portion.amount
  const part = share.value
  const sweetenings = timesSweetenings(sweeteningsIn(story), part)
  const fined = finedWith(story)
  return {
    liquid: {
      ...portion,
      amount: { value: value * part, plusMinus: Math.hypot(plusMinus * part, value * share.plusMinus) },
    },
    plants: [
      ...weighed.map(({ botanical, massG }) => ({
        ...UNSAID,
        id: botanical.id,
        name: botanical.names.title,
        isDried: isDriedForm(botanical),
        massG: exactly(massG * part),
      })),
      ...unknownPlants(story).map((plant) => ({ ...plant, ...UNSAID, massG: times(plant.massG, part) })),
    ],
    ...(sweetenings.length > 0 && { sweetenings }),
    spiritMl: spiritMl * part,
    other: story.name,
    ...(fined.length > 0 && { fined }),
  }
}

/** A share of one jar, as it is, goes into another. Grams add up to what there was. Throws what `record` throws. */
export function pourTogether(
  { target, source, share, into }: Pouring,
  moment: Moment,
  entered: Entered,
): PouredTogether {
  const [from, to] = [jarStateOf(source.entries)!, jarStateOf(target.entries)!]
  const kept = { value: 1 - share.value, plusMinus: share.plusMinus }
  return {
    source: record(source.entries, { kind: 'parted', kept, other: into ?? to.name, isNew: false }, moment, entered),
    target: record(target.entries, { kind: 'poured_in', ...broughtBy(from, share), into }, moment, entered),
  }
}
