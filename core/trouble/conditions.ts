import type { Measured } from '../quantity/measured/measured.ts'
import type { TroubleFacts } from './facts.ts'
import { type FactCondition, type Finding, holds, NO, open, type Why, yes } from './finding.ts'
import { not, surely } from './logic.ts'

const compared =
  (
    of: (facts: TroubleFacts) => Measured | null,
    limit: number,
    isOver: boolean,
    why: (value: Measured) => Why,
    ask: Finding,
  ): FactCondition =>
  (facts) => {
    const found = of(facts)
    if (found === null) return ask
    return (isOver ? found.value > limit : found.value < limit) ? yes(why(found)) : NO
  }

/** Now, % vol. */
export const stronger = (limit: number): FactCondition =>
  compared(
    ({ abvPercent }) => abvPercent,
    limit,
    true,
    (abvPercent) => ({ key: 'strength', abvPercent, limit, isOver: true }),
    open('strength'),
  )

export const weaker = (limit: number): FactCondition =>
  compared(
    ({ abvPercent }) => abvPercent,
    limit,
    false,
    (abvPercent) => ({ key: 'strength', abvPercent, limit, isOver: false }),
    open('strength'),
  )

export const sweeter = (limit: number): FactCondition =>
  compared(
    ({ sugarGPerL }) => sugarGPerL,
    limit,
    true,
    (sugarGPerL) => ({ key: 'sugar', sugarGPerL, limit, isOver: true }),
    open(),
  )

export const drier = (limit: number): FactCondition =>
  compared(
    ({ sugarGPerL }) => sugarGPerL,
    limit,
    false,
    (sugarGPerL) => ({ key: 'sugar', sugarGPerL, limit, isOver: false }),
    open(),
  )

const percent = (value: number): Measured => ({ value, plusMinus: 0 })

/** Was ever under it since the plants went in, % vol. */
export const everUnder =
  (limit: number): FactCondition =>
  ({ weakestPercent }) => {
    if (weakestPercent === null) return open('strength')
    return weakestPercent < limit ? yes({ key: 'weakest', abvPercent: weakestPercent, limit }) : NO
  }

/** While the plants were in, % vol. */
export const steepedUnder = (limit: number): FactCondition =>
  compared(
    ({ steepPercent }) => (steepPercent === null ? null : percent(steepPercent)),
    limit,
    false,
    ({ value }) => ({ key: 'steep_strength', abvPercent: value, limit, isOver: false }),
    open('strength'),
  )

export const steepedOver = (limit: number): FactCondition =>
  compared(
    ({ steepPercent }) => (steepPercent === null ? null : percent(steepPercent)),
    limit,
    true,
    ({ value }) => ({ key: 'steep_strength', abvPercent: value, limit, isOver: true }),
    open('strength'),
  )

/** Yeast may live in it: less than 20 % vol with no more than 85 Delle units, or under 15 % vol. */
export const mayFerment: FactCondition = ({ keeping, delleUnits, weakestPercent }) => {
  if (keeping === null || delleUnits === null || weakestPercent === null) return open('strength')
  return keeping === 'keeps' ? NO : yes({ key: 'units', units: delleUnits, abvPercent: weakestPercent })
}

/** From so many days on gas is not the air of the fruit. From memory, reviewed. */
const AIR_DAYS = 3

/** It fizzes past its first days, though nothing should live in it: nobody knows why. */
export const goesOnAllTheSame: FactCondition = ({ keeping, weakestPercent, ageDays, signs }) => {
  const isStrange = keeping === 'keeps' && weakestPercent !== null && signs.fizz === true
  if (!isStrange || (ageDays !== null && ageDays <= AIR_DAYS)) return NO
  return { is: 'maybe', whys: [{ key: 'should_not', abvPercent: weakestPercent }], asks: [] }
}

/** Gas that comes back once it was let out, though nothing should live in it: nobody knows why. */
export const comesBackAllTheSame: FactCondition = ({ keeping, weakestPercent, signs }) => {
  if (keeping !== 'keeps' || weakestPercent === null) return NO
  if (signs.fizz === true) return { is: 'maybe', whys: [{ key: 'should_not', abvPercent: weakestPercent }], asks: [] }
  return signs.recurs === undefined ? open('recurs') : NO
}

/** Under it at its weakest, or nobody knows, % vol. */
export const maybeUnder = (limit: number): FactCondition => not(surely(not(everUnder(limit))))

/** It fell in strength from the plants to the glass, past where oil stays dissolved: % vol. */
export const fell =
  (from: number, to: number): FactCondition =>
  ({ steepPercent, abvPercent }) => {
    if (steepPercent === null || abvPercent === null) return open()
    const isSo = steepPercent > from && abvPercent.value < to
    return isSo ? yes({ key: 'fell', from: steepPercent, to: abvPercent }) : NO
  }

const days =
  (key: 'rested' | 'steeped' | 'age', of: (facts: TroubleFacts) => number | null, isOver: boolean) =>
  (limit: number): FactCondition =>
  (facts) => {
    const found = of(facts)
    if (found === null) return open()
    return (isOver ? found > limit : found < limit) ? yes({ key, days: found, limit }) : NO
  }

/** The plants are still in it. */
export const steeping: FactCondition = ({ isSteeping }) => (isSteeping === null ? open() : holds(isSteeping))

/** Days since the syrup. */
export const restedUnder = days('rested', ({ restedDays }) => restedDays, false)
export const steepedDaysOver = days('steeped', ({ steepedDays }) => steepedDays, true)
export const olderThan = days('age', ({ ageDays }) => ageDays, true)
export const youngerThan = days('age', ({ ageDays }) => ageDays, false)

/** Ice can form in the person's own freezer. */
export const mayFreeze: FactCondition = ({ inFreezer }) => {
  if (inFreezer === null) return open()
  const { state, freezesAtC, freezerC } = inFreezer
  return state === 'pours' ? NO : yes({ key: 'freezes', freezesAtC, freezerC })
}

/** More sugar than surely stays dissolved. */
export const noRoom: FactCondition = ({ sugarState, largestGPerL, sugarGPerL }) => {
  if (sugarState === null || largestGPerL === null || sugarGPerL === null) return open()
  return sugarState === 'dissolved' ? NO : yes({ key: 'no_room', sugarGPerL, largestGPerL })
}

/** Weaker than it was planned, beyond its own ±. */
export const weakerThanPlanned: FactCondition = ({ abvPercent, plannedPercent }) => {
  if (abvPercent === null || plannedPercent === null) return open()
  return abvPercent.value + Math.max(0.5, abvPercent.plusMinus) < plannedPercent
    ? yes({ key: 'planned', abvPercent, plannedPercent })
    : NO
}

/** As strong as planned, or stronger. */
export const asPlanned: FactCondition = not(weakerThanPlanned)

/** More than the share `from` of it may be missing; more than `sure`, surely: plants keep what nobody measures. */
export const missing =
  (from: number, sure: number): FactCondition =>
  ({ missingShare }) => {
    if (missingShare === null) return open()
    if (missingShare > sure) return yes({ key: 'missing', share: missingShare })
    return missingShare > from ? open() : NO
  }

/** Its plants brought more sugar than this, g/L. */
export const plantSugarOver =
  (limit: number): FactCondition =>
  ({ plantSugarGPerL }) => {
    if (plantSugarGPerL === null) return open()
    return plantSugarGPerL > limit ? yes({ key: 'plant_sugar', sugarGPerL: plantSugarGPerL }) : NO
  }

/** Nobody can have spoiled what never went in. */
export const canHaveSyrup: FactCondition = ({ hasSyrup }) => holds(hasSyrup !== false)
export const canHaveSugar: FactCondition = ({ isSweetened }) => holds(isSweetened !== false)

/** Sugar was put in, whatever its plants brought. */
export const hasSugar: FactCondition = ({ isSweetened }) => holds(isSweetened === true)

export const oddlySweetened: FactCondition = ({ isOddlySweetened }) =>
  isOddlySweetened === null ? open() : holds(isOddlySweetened)

export const overCeiling: FactCondition = ({ isOverCeiling }) =>
  isOverCeiling === null ? open() : isOverCeiling ? yes({ key: 'over_ceiling' }) : NO
