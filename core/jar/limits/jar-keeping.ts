import { delleUnits, type Keeping, keepingOf, type StrengthAndSugar } from '../../liquid/keeping.ts'
import { abvPercent, liquidFrom, massG, mix, sugarGPerL, volumeMl } from '../../liquid/liquid.ts'
import type { Measured } from '../../quantity/measured/measured.ts'
import { valuesOf } from '../../recipe/propagate.ts'
import { contentsOf } from '../state/contents.ts'
import type { JarState } from '../state/jar-state.ts'
import { liquidAfter } from '../state/liquid-after.ts'
import { stepsOf } from '../state/liquid-steps.ts'
import { jugMl, type SpiritToAdd, spiritToAdd, withSpirit } from './spirit-to-add.ts'

/** A jar of catalogued plants this strong keeps, % vol: its ± is never a third of it. */
const SURELY_KEEPS_PERCENT = 30

const MORE = [1, 1.02, 1.05, 1.1, 1.2, 1.4, 2]

/** A batch that may not keep as it is. */
export interface NotKeeping extends StrengthAndSugar {
  readonly keeping: Exclude<Keeping, 'keeps'>
  /** The spirit with which it keeps; null where none does. */
  readonly add: SpiritToAdd | null
}

/** Whether what is in a jar, or came of it, keeps; null where there is nothing in it. */
export function jarKeeping(story: JarState): Keeping | null {
  // As it was read: whether reading or recipe is better known moves nothing that is so far from the line.
  const steps = stepsOf(story.happened).map(({ step }) => step)
  const { liquid } = liquidAfter(valuesOf(steps))
  if (massG(liquid) === 0) return null
  const isKnown = story.happened.every(
    (entry) => (entry.kind !== 'started' && entry.kind !== 'added') || entry.plants.every(({ id }) => id !== null),
  )
  // Only what is near a line is worth working out with its ±, which takes a hundred times as long.
  if (isKnown && abvPercent(liquid) >= SURELY_KEEPS_PERCENT) return 'keeps'
  return keepingOf(contentsOf(story).outcome)
}

/** Delle units that a rounding may take from what is no weaker than before. */
const ROUNDING_UNITS = 1e-6

const unitsOf = (story: JarState): number => {
  const { abvPercent, sugarGPerL } = contentsOf(story).outcome
  return delleUnits(abvPercent.value, sugarGPerL.value)
}

/** Whether a jar ferments that did not before, or that comes nearer to it than before. */
export const fermentsNearer = (before: JarState, after: JarState): boolean =>
  jarKeeping(after) === 'ferments' &&
  (jarKeeping(before) !== 'ferments' || unitsOf(after) < unitsOf(before) - ROUNDING_UNITS)

/** What does not surely keep, with the spirit that puts it right; null where it does. */
export function notKeeping(story: JarState): NotKeeping | null {
  const keeping = jarKeeping(story)
  if (keeping === null || keeping === 'keeps') return null
  const { abvPercent, sugarGPerL } = contentsOf(story).outcome
  return { keeping, abvPercent, sugarGPerL, add: enoughSpirit(story) }
}

const share = ({ value, plusMinus }: Measured): number => (value === 0 ? 0 : plusMinus / value)

/** The mixture is first taken to be as uncertain as the jar, a little more than it will be, then judged as the jar itself. */
function enoughSpirit(story: JarState): SpiritToAdd | null {
  const { liquid, abvPercent: strength, sugarGPerL: sweetness } = contentsOf(story).outcome
  const keepsAbout = ({ spiritMl, abvPercent: percent }: SpiritToAdd): boolean => {
    const made = mix(liquid, liquidFrom({ volumeMl: spiritMl, abvPercent: percent, sugarGPerL: 0 }))
    const with_ = (value: number, of: Measured): Measured => ({ value, plusMinus: value * share(of) })
    return (
      keepingOf({
        abvPercent: with_(abvPercent(made), strength),
        sugarGPerL: with_(sugarGPerL(made), sweetness),
      }) === 'keeps'
    )
  }
  const about = spiritToAdd(story, volumeMl(liquid), keepsAbout)
  if (about === null) return null
  // The jug adds its own ±, so that a little more may be needed.
  for (const times of MORE) {
    const add = { ...about, spiritMl: jugMl(about.spiritMl * times) }
    if (jarKeeping(withSpirit(story, add)) === 'keeps') return add
  }
  return null
}
