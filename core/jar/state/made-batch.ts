import { isJuice, materialOf } from '../../quantity/materials.ts'
import { exactly } from '../../quantity/measured/measured.ts'
import { dayFromIso, daysBetween, type IsoDay } from '../../quantity/time/calendar-day.ts'
import { type Batch, withDays } from '../../recipe/batch.ts'
import type { NamedPortion } from '../../recipe/portion.ts'
import { joinSweetenings } from '../../recipe/sweetening.ts'
import type { Targets } from '../../recipe/targets.ts'
import type { Ingredients, PlantIn } from '../entry/entry.ts'
import { spiritsNamed } from '../entry/spirits-named.ts'
import { forTheWhole } from './batch-facts.ts'
import { contentsOf } from './contents.ts'
import type { JarState, Of } from './jar-state.ts'
import { plantsOfStart } from './later-plants.ts'

type PutInEntry = Of<'started'> | Of<'added'>

/** What was put in, in order: until it was strained everything, spirit also later. */
export function putIn({ happened, strained }: JarState): readonly (PutInEntry & Ingredients)[] {
  const entries = happened.filter((entry): entry is PutInEntry => entry.kind === 'started' || entry.kind === 'added')
  if (strained === null) return entries
  const until = happened.indexOf(strained)
  return entries.map((entry) => (happened.indexOf(entry) < until ? entry : { ...entry, plants: [] }))
}

/** Plants of an entry, each with the day on which it went in or is to. */
const plantsIn = (entry: PutInEntry, story: JarState): readonly PlantIn[] =>
  (entry.kind === 'added' ? entry.plants : plantsOfStart(story)).map((plant) => ({
    ...plant,
    addOn: plant.addOn ?? entry.day,
  }))

/** What it became, or is to become; null where that is not known. */
function targetsOf(story: JarState): Targets | null {
  const { sweetened, bottled, started } = story
  if (sweetened === null && bottled === null) return started.targets
  const { outcome, isEmpty } = contentsOf(story)
  if (isEmpty) return started.targets
  return { abvPercent: outcome.abvPercent.value, sugarGPerL: outcome.sugarGPerL.value }
}

/** What it was sweetened with where that was one thing; else as planned. */
function sweetenerOf({ happened, started }: JarState): Pick<Batch, 'sweetener'> {
  const used = happened.flatMap((entry) => (entry.kind === 'sweetened' ? entry.sweetenings : []))
  const [only, another] = joinSweetenings(used).filter(({ material, massG }) => massG.value > 0 && !isJuice(material))
  const sweetener = only === undefined || another !== undefined ? started.sweetener : only.material
  return sweetener === undefined ? {} : { sweetener }
}

/** What went in for the water of its syrup where that was one thing and no water did; else as planned. */
function fillerOf({ happened, started }: JarState): Pick<Batch, 'filler'> {
  const syrups = happened.filter((entry) => entry.kind === 'sweetened')
  const used = joinSweetenings(syrups.flatMap(({ sweetenings }) => sweetenings)).filter(({ material }) =>
    isJuice(material),
  )
  const [only, another] = used.filter(({ material }) => materialOf(material).isSyrup)
  const hasWater = syrups.some(({ waterG }) => waterG.value > 0)
  const filler = syrups.length === 0 ? started.filler : hasWater || another !== undefined ? undefined : only?.material
  return filler === undefined ? {} : { filler }
}

/** What it was sweetened with, and what stood for the water, where that was one thing each; else as planned. */
export const syrupOfJar = (story: JarState): Pick<Batch, 'sweetener' | 'filler'> => ({
  ...sweetenerOf(story),
  ...fillerOf(story),
})

/** As it was steeped, or is planned to be; no days where hours are enough. */
function daysOf({ started, strained }: JarState): Batch<IsoDay>['days'] {
  const { days } = started
  if (strained !== null) return { ...days, strainFrom: strained.day, strainBy: strained.day }
  return days.isHours ? { ...days, strainFrom: null, strainBy: null } : days
}

/**
 * A jar's batch as it really went: everything that went in, plants added later too, the days it steeped, what came out where it was
 * sweetened or bottled, else what is planned. Its days are counted from the first. Days of rest are those planned: the first glass
 * tells of a feast more than of the drink.
 */
export function madeBatch(story: JarState): Batch & { readonly spirits: readonly NamedPortion[] } {
  const { started, happened, strained } = story
  const all = putIn(story).map((entry) => forTheWhole({ ...entry, spirits: spiritsNamed(entry) }, story))
  const until = strained === null ? happened.length : happened.indexOf(strained)
  const steeped = all.filter(({ seq }) => happened.findIndex((entry) => entry.seq === seq) < until)
  const daysInto = (day: IsoDay): number => Math.max(0, daysBetween(dayFromIso(day), dayFromIso(started.day)))
  const { kind: _, name: _n, enzyme: _e, secondOf: _o, sweetener: _s, filler: _f, ...begun } = started
  const made: Batch<IsoDay> = {
    ...begun,
    plants: all.flatMap((entry) => plantsIn(entry, story)),
    spirits: all.flatMap(({ spirits }) => spirits),
    waterG: exactly(steeped.reduce((sum, { waterG }) => sum + waterG.value, 0)),
    sweetenings: steeped.flatMap(({ sweetenings }) => sweetenings),
    ...syrupOfJar(story),
    targets: targetsOf(story),
    days: daysOf(story),
  }
  return withDays(made, daysInto)
}
