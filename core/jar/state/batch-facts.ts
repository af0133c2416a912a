import type { FiningId } from '../../label/fining.ts'
import { plus } from '../../quantity/measured/measured.ts'
import { dayFromIso, daysBetween, type IsoDay } from '../../quantity/time/calendar-day.ts'
import { scale } from '../../recipe/batch.ts'
import type { NamedPortion } from '../../recipe/portion.ts'
import { joinSweetenings, type Sweetening, timesSweetenings } from '../../recipe/sweetening.ts'
import { weighedOut } from '../../recipe/tool-precision.ts'
import type { HappeningEntry, Ingredients, PlantIn, PouredIn } from '../entry/entry.ts'
import { plantsPutIn } from '../entry/plants-put-in.ts'
import { spiritsNamed } from '../entry/spirits-named.ts'
import type { JarState, Of } from './jar-state.ts'
import { plantsOfStart } from './later-plants.ts'

const isTasted = (entry: JarState['happened'][number]): entry is Of<'tasted'> => entry.kind === 'tasted'

/** The ratings given, in order. */
export const ratingsOf = ({ happened }: JarState): readonly number[] =>
  happened.filter(isTasted).flatMap(({ rating }) => (rating === null ? [] : [rating]))

/** What was noted at tastings, as typed. */
export const notesOf = ({ happened }: JarState): readonly string[] =>
  happened.filter(isTasted).flatMap(({ note }) => (note === null ? [] : [note]))

/** What is left of the batch when this is entered, 0 to 1: the rest of it has a jar of its own. */
function shareLeft({ happened }: JarState, seq: number): number {
  const until = happened.findIndex((entry) => entry.seq === seq)
  return happened
    .slice(0, until)
    .filter((entry): entry is Of<'parted'> => entry.kind === 'parted')
    .reduce((left, { kept }) => left * kept.value, 1)
}

/** What was added to a part of a batch, as much of it as the whole would take. */
export function forTheWhole<Entry extends Of<'started'> | Of<'added'>>(entry: Entry, story: JarState): Entry {
  const share = shareLeft(story, entry.seq)
  return share === 1 || share === 0 ? entry : scale(entry, 1 / share)
}

/**
 * What went in before it was strained: at the start, and what was added while it steeped. Plants that the plan puts in later
 * are told by their `addOn` until they are in.
 */
export const ingredientsOf = (story: JarState): Ingredients => putTogether(story, (added) => added, asKept)

/** The same of the whole batch, where a part of it has a jar of its own. */
export const ingredientsOfWhole = (story: JarState): IngredientsNamed =>
  putTogether(story, (added) => forTheWhole(added, story), spiritsNamed)

/** What went in, its spirits as their maker called them. */
export interface IngredientsNamed extends Ingredients {
  readonly spirits: readonly NamedPortion[]
}

/** Without a look at what was typed, which takes time. */
const asKept = ({ spirits }: Of<'started'> | Of<'added'>): readonly NamedPortion[] => spirits

function putTogether(
  story: JarState,
  as: (added: Of<'added'>) => Of<'added'>,
  spiritsOf: (entry: Of<'started'> | Of<'added'>) => readonly NamedPortion[],
): IngredientsNamed {
  const { started, happened, strained } = story
  const plants = plantsOfStart(story).map((plant) => (strained === null ? plant : { ...plant, addOn: null }))
  const until = strained === null ? happened.length : happened.indexOf(strained)
  const added = happened.slice(0, until).filter((entry): entry is Of<'added'> => entry.kind === 'added')
  return added
    .map((entry) => as({ ...entry, spirits: spiritsOf(entry) }))
    .reduce<IngredientsNamed>(
      (all, more) => ({
        plants: [...all.plants, ...more.plants],
        spirits: [...all.spirits, ...more.spirits],
        waterG: plus(all.waterG, more.waterG),
        sweetenings: joinSweetenings([...all.sweetenings, ...more.sweetenings]),
      }),
      { plants, spirits: spiritsOf(started), waterG: started.waterG, sweetenings: started.sweetenings },
    )
}

const daysFrom = (from: IsoDay, to: IsoDay): number => daysBetween(dayFromIso(to), dayFromIso(from))

/** Whole days on the plants; null while they are in. */
export const steepedDays = ({ started, strained }: JarState): number | null =>
  strained === null ? null : daysFrom(started.day, strained.day)

/** From the last syrup, or straining where there was none, to the first glass or the end; null before. */
export function restedDays({ strained, sweetened, happened, ended }: JarState): number | null {
  const from = sweetened ?? strained
  const to = happened.find(({ kind, atMs }) => kind === 'opened' && from !== null && atMs >= from.atMs) ?? ended
  return from === null || to === null ? null : daysFrom(from.day, to.day)
}

/** What came of other jars: of what steeped there, the part that is here, with their liquid or to steep once more. */
export const plantsPouredIn = ({ happened }: JarState): readonly PlantIn[] =>
  happened
    .flatMap((entry) => {
      if (entry.kind === 'started') return entry.secondOf?.plants ?? []
      return entry.kind === 'poured_in' ? entry.plants : []
    })
    // A share of what was weighed is no better known than that.
    .map((plant) => ({ ...plant, massG: weighedOut(plant.massG.value) }))

/** What it was fined with, here or in a jar that was poured in, each once. */
export const finedWith = ({ happened }: JarState): readonly FiningId[] => [
  ...new Set(
    happened.flatMap((entry) => {
      if (entry.kind === 'poured_in') return entry.fined ?? []
      return entry.kind === 'filtered' && entry.fining !== undefined ? [entry.fining] : []
    }),
  ),
]

/** What is told of a jar. */
export interface IngredientsTold extends IngredientsNamed {
  /** Liquid of other jars, by the names that they had. */
  readonly poured: readonly Pick<PouredIn, 'other' | 'liquid'>[]
}

/** What is told of a jar: what went in, and the liquid of others with the plants that came with it. */
export function ingredientsTold(story: JarState): IngredientsTold {
  const own = putTogether(story, (added) => added, spiritsNamed)
  const poured = story.happened.filter((entry): entry is Of<'poured_in'> => entry.kind === 'poured_in')
  return { ...own, plants: [...own.plants, ...plantsPouredIn(story)], poured }
}

const sweeteningsOf = (entry: HappeningEntry): readonly Sweetening[] => {
  const own = 'sweetenings' in entry ? entry.sweetenings : []
  return entry.kind === 'started' ? [...own, ...(entry.secondOf?.sweetenings ?? [])] : own
}

/** What sweetens it, as much as is here, each material once: of what was parted from it the part that stayed. */
export function sweeteningsIn({ happened }: JarState): readonly Sweetening[] {
  let all: readonly Sweetening[] = []
  for (const entry of happened) {
    all = entry.kind === 'parted' ? timesSweetenings(all, entry.kept.value) : all.concat(sweeteningsOf(entry))
  }
  return joinSweetenings(all).filter(({ massG }) => massG.value > 0)
}

/** Whether honey is in it, whichever jar that came from. */
export const hasHoney = (story: JarState): boolean => sweeteningsIn(story).some(({ material }) => material === 'honey')

/** The plants of the catalogue that ever went in, each once, also those that were to go in later. */
export const plantIdsIn = ({ happened }: JarState): readonly string[] => [
  ...new Set(happened.flatMap(plantsPutIn).flatMap(({ id }) => id ?? [])),
]
