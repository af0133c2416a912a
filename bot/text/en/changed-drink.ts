import { shopSweetnessGPerL } from '../../../core/quantity/read/sweetness-at.ts'
import { NOTICED, type Targets } from '../../../core/recipe/targets.ts'
import type { Format } from '../format.ts'

/** Below it no sugar is told of, g/L. */
const SOME_SUGAR = NOTICED.sugarGPerL

const { least, most } = shopSweetnessGPerL

/** What it compares to, by the least that it has, g/L. The words are our judgement. */
const LIKE = [
  [most + SOME_SUGAR, 'sweeter than a shop liqueur'],
  [least, 'like a shop liqueur'],
  [155, 'a bit drier than a shop liqueur'],
  [80, 'much drier than a shop liqueur'],
  [SOME_SUGAR, 'barely sweet'],
] as const

/** `120 g/L … instead of 190`: the unit once, where both have the same. */
function insteadOf(now: string, was: string): string {
  const [unit] = /[^\d½¼¾⅓⅔⅛⅜⅝⅞.,\s].*$/u.exec(now) ?? ['']
  const other = unit !== '' && was.endsWith(unit) ? was.slice(0, -unit.length).trimEnd() : was
  return `${now} instead of ${other}`
}

function sweetnessChanged(was: number, now: number, format: Format): string | null {
  if (Math.abs(was - now) < NOTICED.sugarGPerL) return null
  const word = now > was ? 'Sweeter' : 'Drier'
  const { sweetness } = format.round
  if (now < SOME_SUGAR) return `${word}: no sugar instead of ${sweetness(was)}.`
  const like = LIKE.find(([from]) => now >= from)![1]
  const change = was < SOME_SUGAR ? `${sweetness(now)} instead of none` : insteadOf(sweetness(now), sweetness(was))
  return `${word}: ${change}, ${like}.`
}

function strengthChanged(was: number, now: number, format: Format): string | null {
  if (Math.abs(was - now) < NOTICED.abvPercent) return null
  const text = (abvPercent: number): string => format.round.strength({ value: abvPercent, plusMinus: 0.5 })
  return `${now > was ? 'Stronger' : 'Weaker'}: ${insteadOf(text(now), text(was))}.`
}

/** `Drier: 120 g/L instead of 190, much drier than a shop liqueur.` */
export const drinkChanged = (was: Targets, now: Targets, format: Format): string =>
  [sweetnessChanged(was.sugarGPerL, now.sugarGPerL, format), strengthChanged(was.abvPercent, now.abvPercent, format)]
    .filter((text) => text !== null)
    .join(' ')
