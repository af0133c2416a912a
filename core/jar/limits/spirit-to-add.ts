import { exactly } from '../../quantity/measured/measured.ts'
import { onLabel } from '../../recipe/plan/weak-steep-advice.ts'
import { type Portion, strengthAt20 } from '../../recipe/portion.ts'
import { valuesOf } from '../../recipe/propagate.ts'
import { measuredOut } from '../../recipe/tool-precision.ts'
import type { HappeningEntry } from '../entry/entry.ts'
import { spiritsNamed } from '../entry/spirits-named.ts'
import type { JarState } from '../state/jar-state.ts'

/** Spirit that puts a jar right: as much of it as a jug measures, ml, and its strength, % vol. */
export interface SpiritToAdd {
  readonly spiritMl: number
  readonly abvPercent: number
  /** `gin`: what its maker called the same spirit; left out: spirit. */
  readonly drink?: string
}

/** The strongest spirit that is sold to drink, which everybody can ask for, % vol. */
const STRONG_PERCENT = 95
/** Nobody pours more than three times the jar in spirit to save it. Common practice, no source. */
const MOST_TIMES = 3
/** A small glass: less of it is at the edge, ml. Common practice, no source. */
export const LEAST_SPIRIT_ML = 35
const MOST_DOUBLINGS = 40
/** A rounded amount may fall just short, so a few larger ones are tried. */
const MOST_STEPS = 40

/** The story goes on with the spirit added, as if it had been recorded. */
export function withSpirit(story: JarState, { spiritMl, abvPercent }: SpiritToAdd): JarState {
  const last = story.happened.at(-1)!
  const added: HappeningEntry = {
    seq: Math.max(...story.happened.map(({ seq }) => seq)) + 1,
    enteredMs: last.enteredMs,
    typed: [],
    atMs: last.atMs,
    day: last.day,
    zone: last.zone,
    kind: 'added',
    plants: [],
    spirits: [
      {
        amount: measuredOut(spiritMl),
        by: 'volume',
        atC: 20,
        abvPercent: onLabel(abvPercent),
        abvAtC: null,
        sugarGPerL: exactly(0),
      },
    ],
    waterG: exactly(0),
    sweetenings: [],
  }
  return { ...story, happened: [...story.happened, added] }
}

/** A jug's marks, ml: amounts are rounded up to them, and to a small glass at least. */
export function jugMl(volumeMl: number): number {
  if (volumeMl <= LEAST_SPIRIT_ML) return LEAST_SPIRIT_ML
  const stepMl = volumeMl < 1000 ? 10 : volumeMl < 3000 ? 50 : 100
  return Math.ceil(volumeMl / stepMl - 1e-9) * stepMl
}

/** A strength in tenths, rounded down, % vol. */
const tenths = (portion: Portion): number => Math.floor(strengthAt20(valuesOf(portion)) * 10) / 10

/** The strength of the strongest spirit that went in, in tenths, % vol; 0 where none did. */
export const ownPercent = ({ happened }: JarState): number =>
  Math.max(
    0,
    ...happened
      .flatMap((entry) => (entry.kind === 'started' || entry.kind === 'added' ? entry.spirits : []))
      .map(tenths),
  )

/** What its maker called the spirit of that strength that went in, `gin`; null where nobody called it anything. */
export function ownDrink({ happened }: JarState, abvPercent: number): string | null {
  const named = happened.flatMap((entry) =>
    entry.kind === 'started' || entry.kind === 'added' ? spiritsNamed(entry) : [],
  )
  return named.find((portion) => tenths(portion) === abvPercent && portion.drink != null)?.drink ?? null
}

/** The least amount of one spirit, as a jug measures it, with which it is right; null where no amount is. */
function leastMl(isRight: (spiritMl: number) => boolean, jarMl: number): number | null {
  let high = Math.max(10, jarMl / 64)
  for (let doubling = 0; !isRight(high); doubling++) {
    if (doubling === MOST_DOUBLINGS || high > MOST_TIMES * jarMl) return null
    high *= 2
  }
  let low = 0
  while (high - low > 0.005 * high) {
    const middle = (low + high) / 2
    if (isRight(middle)) high = middle
    else low = middle
  }
  let found = jugMl(high)
  for (let step = 0; step < MOST_STEPS; step++) {
    if (isRight(found)) return found
    found = jugMl(found + 1)
  }
  return null
}

/** Spirit with which `isRight` holds, of the jar's own strength where that does, else of 95 % vol; null where none does. */
export function spiritToAdd(
  story: JarState,
  jarMl: number,
  isRight: (add: SpiritToAdd) => boolean,
): SpiritToAdd | null {
  const own = ownPercent(story)
  const strengths = own > 0 && own < STRONG_PERCENT ? [own, STRONG_PERCENT] : [STRONG_PERCENT]
  const found = strengths.flatMap((abvPercent): SpiritToAdd[] => {
    const spiritMl = leastMl((each) => isRight({ spiritMl: each, abvPercent }), jarMl)
    const drink = ownDrink(story, abvPercent)
    return spiritMl === null ? [] : [{ spiritMl, abvPercent, ...(drink !== null && { drink }) }]
  })
  return found.find(({ spiritMl }) => spiritMl <= MOST_TIMES * jarMl) ?? null
}
