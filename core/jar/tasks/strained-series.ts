import { dayNumber } from '../../quantity/time/day-number.ts'
import type { Of, Story } from '../state/jar-state.ts'
import { enteredDay, knownDay, type Series, series } from './reminder-days.ts'

/** From straining: the next day, then weekly. */
const SWEETEN_DAYS = [1, 8, 15]
/** From the last syrup, or from straining where none is wanted, for what clouds it to settle. Common practice, no source. */
export const FILTER_DAYS = 2
export const BOTTLE_DAYS = 3

/** Strengths nearer than this are one strength, % vol. */
const SAME_PERCENT = 0.5

/** Whether the plan adds water or sugar to what was strained; null where no target is known. */
export function wantsSyrup({ started, strained }: Story): boolean | null {
  const { targets } = started.plan
  if (targets === null) return null
  const strengthsPercent = started.spirits.map(({ abvPercent }) => abvPercent.value)
  const abvPercent = strained?.strength?.abvPercent.value ?? Math.max(0, ...strengthsPercent)
  return targets.sugarGPerL > 0 || abvPercent - targets.abvPercent > SAME_PERCENT
}

/** The entry from which filtering and bottling are counted: the last syrup, or straining where none is wanted. */
export const settlesFrom = (story: Story): Of<'sweetened'> | Of<'strained'> | null =>
  story.sweetened ?? (wantsSyrup(story) === false ? story.strained : null)

export const isSweetening = (story: Story): boolean =>
  story.sweetened === null && story.bottled === null && wantsSyrup(story) !== false

export const isFiltered = ({ happened, strained }: Story): boolean =>
  happened.findLast(({ kind }) => kind === 'filtered' || kind === 'strained') !== strained

/**
 * What a strained jar asks for. Without a known target it is asked once whether syrup is to come, and nothing more until
 * it does.
 */
export function strainedSeries(story: Story, strained: Of<'strained'>): readonly Series[] {
  const asked: Series[] = []
  if (isSweetening(story)) {
    const days = wantsSyrup(story) === null ? SWEETEN_DAYS.slice(0, 1) : SWEETEN_DAYS
    const known = knownDay(strained)
    asked.push(
      series(
        'sweeten',
        strained,
        days.map((day) => known + day),
      ),
    )
  }
  const settles = settlesFrom(story)
  if (settles !== null && story.bottled === null) {
    const known = knownDay(settles)
    if (!isFiltered(story)) asked.push(series('filter', settles, [known + FILTER_DAYS]))
    asked.push(series('bottle', settles, [known + BOTTLE_DAYS]))
  }
  return [...asked, ...readySeries(story)]
}

/** Not where a bottle has been opened, nor where the day had passed when it became known. */
function readySeries({ readyOn, sweetened, bottled, happened }: Story): readonly Series[] {
  const since = sweetened ?? bottled
  if (readyOn === null || since === null || happened.some(({ kind }) => kind === 'opened')) return []
  const day = dayNumber(readyOn)
  return day > enteredDay(since) ? [series('ready', since, [day])] : []
}
