import { unlessRefused } from '../../domain-error.ts'
import { keepingAt } from '../../liquid/keeping.ts'
import { once } from '../../once.ts'
import type { MaterialId } from '../../quantity/materials.ts'
import { exactly, type Measured } from '../../quantity/measured/measured.ts'
import type { Portion } from '../../recipe/portion.ts'
import { type Syrup, syrup } from '../../recipe/solve/syrup.ts'
import { withoutTrace } from '../../recipe/solve/without-trace.ts'
import { sugars, waterInG } from '../../recipe/sweetening.ts'
import type { Targets } from '../../recipe/targets.ts'
import { asPortion, contentsOf } from './contents.ts'
import type { JarState, Of } from './jar-state.ts'
import { isLeftAsItIs } from './left-unsweetened.ts'

interface PlannedSyrup {
  readonly infusion: Portion
  readonly syrup: Syrup
}

/** Whether targets that were planned before such plans were refused would ferment. */
export const wouldFerment = ({ abvPercent, sugarGPerL }: Targets): boolean =>
  keepingAt(abvPercent, sugarGPerL) === 'ferments'

const plannedOf = (story: JarState, sweetener: MaterialId | undefined): PlannedSyrup | null => {
  const { targets, filler } = story.started
  if (targets === null || wouldFerment(targets) || story.onFruit !== null) return null
  if (isLeftAsItIs(story.happened)) return null
  const infusion = asPortion(contentsOf(story))
  return unlessRefused(() => ({
    infusion,
    syrup: syrup(infusion, { by: 'strength_and_sweetness', ...targets }, null, { sweetener, filler }),
  }))
}

// One reply looks at it from five places: its lines, its buttons, its cautions, what is still to do, the duties.
const plannedAsStarted = once((story: JarState) => plannedOf(story, story.started.sweetener))

/** The syrup that makes of a strained jar what was planned, of what was planned where nothing else is named; null where nothing was, it cannot be, it would ferment, or sugar still draws on its fruit. */
export const plannedSyrup = (story: JarState, sweetener = story.started.sweetener): PlannedSyrup | null =>
  sweetener === story.started.sweetener ? plannedAsStarted(story) : plannedOf(story, sweetener)

/** The syrup that is still to go into a strained jar; null where none was planned, or where it is done. */
export const syrupToAdd = (story: JarState, sweetener = story.started.sweetener): Syrup | null =>
  story.strained === null || story.ended !== null ? null : (plannedSyrup(story, sweetener)?.syrup ?? null)

export interface SweetenedWith {
  readonly waterG: Measured
  readonly sugarG: Measured
}

/** What went in, its sweetenings by the sugars they bring. */
export const sweetenedWith = ({
  waterG,
  sweetenings,
}: Pick<Of<'sweetened'>, 'waterG' | 'sweetenings'>): SweetenedWith => ({
  waterG: { value: waterG.value + waterInG(sweetenings), plusMinus: waterG.plusMinus },
  sugarG: sugars(sweetenings),
})

/** What a syrup that was worked out puts in, likewise. */
const plannedWith = ({ filler, waterG, sweetener, sugarG }: Syrup): SweetenedWith => {
  const sugar = { material: sweetener, massG: sugarG }
  return filler === null
    ? sweetenedWith({ waterG, sweetenings: [sugar] })
    : sweetenedWith({ waterG: exactly(0), sweetenings: [sugar, { material: filler, massG: waterG }] })
}

/** How far what went in lies from a syrup that was worked out, told with its traces or without them. */
export function distanceFromSyrup(poured: SweetenedWith, syrup: Syrup): 'near' | 'far' | 'far_off' {
  const found = [syrup, withoutTrace(syrup)].map((each) => distanceFromPlanned(poured, plannedWith(each)))
  return (['near', 'far'] as const).find((each) => found.includes(each)) ?? 'far_off'
}

/** An amount that differs from the planned one by more than this share of it was another syrup, or a slip. Common practice, no source. */
const SLIP_SHARE = 1 / 3
/** More than this many times as much, or less than that part of it, is rather a slip. Common practice, no source. */
const SLIP_TIMES = 2

const isFar = (value: number, planned: number): boolean => Math.abs(value - planned) > SLIP_SHARE * planned

const isFarOff = (value: number, planned: number): boolean =>
  value > SLIP_TIMES * planned || value < planned / SLIP_TIMES

/** How far what went in lies from what was worked out; the further of water and sugar counts. */
export function distanceFromPlanned(
  { waterG, sugarG }: SweetenedWith,
  planned: SweetenedWith,
): 'near' | 'far' | 'far_off' {
  const isSo = (test: typeof isFar): boolean =>
    test(waterG.value, planned.waterG.value) || test(sugarG.value, planned.sugarG.value)
  if (isSo(isFarOff)) return 'far_off'
  return isSo(isFar) ? 'far' : 'near'
}
