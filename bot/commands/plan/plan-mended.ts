import { z } from 'zod'
import { DomainError } from '../../../core/domain-error.ts'
import { KEEPS_ABV_PERCENT } from '../../../core/liquid/keeping.ts'
import { exactly } from '../../../core/quantity/measured/measured.ts'
import { amountSaid } from '../../../core/quantity/write/write-quantity.ts'
import type { Portion } from '../../../core/recipe/portion.ts'
import { checkUnknown } from '../../calls/check-unknown.ts'
import { planShape } from '../../calls/signatures.ts'
import { lineOf } from '../../calls/write-line.ts'
import { ChatError } from '../../chat/chat-error.ts'
import { spiritsCalled, sweeteningsOf } from '../options/input-to-portion.ts'
import type { Planned, Setting } from './plan-wish.ts'
import { portionText, pouredText, sugarText, sugarWritten, written } from './written-amounts.ts'

type Options = Readonly<Record<string, string>>
/** Options that are typed otherwise; null: left out. */
type Patch = Readonly<Record<string, string | null>>
type TooSweet = DomainError<'already_sweeter'>
type TooWeak = DomainError<'steep_too_weak'> | DomainError<'drink_ferments'>

/** What makes a plan of the input. */
type Make<Result> = (input: Planned, setting: Setting) => Result

const isTooWeak = (error: unknown): error is TooWeak =>
  error instanceof DomainError && (error.problem === 'steep_too_weak' || error.problem === 'drink_ferments')

const reading = z.object(planShape).superRefine(checkUnknown)

/** The plan; of one that would ferment, the problem names a line that was tried and does not. */
export function orMended<Result>(make: Make<Result>, input: Planned, setting: Setting): Result {
  try {
    return make(input, setting)
  } catch (error) {
    if (isTooSweet(error)) throw lessSweet(error, make, input, setting)
    if (!isTooWeak(error)) throw error
    throw new ChatError('unreachable', 'plan_ferments', {
      ...fermenting(error),
      line: lineInstead(patchesFor(error, input), make, input, setting),
    })
  }
}

const isTooSweet = (error: unknown): error is TooSweet =>
  error instanceof DomainError && error.problem === 'already_sweeter'

/** Of one whose sugar can still be less, the line with as much as may go in. */
function lessSweet<Result>(error: TooSweet, make: Make<Result>, input: Planned, setting: Setting): Error {
  const { sugarGPerL, toSugarGPerL } = error.values as TooSweet['values']
  if (sweeteningsOf(input.sugar).length === 0) return error
  const shares = LESS_STILL.map((share) => (share * toSugarGPerL) / sugarGPerL)
  const line = lineInstead(sugarShares(shares, input), make, input, setting)
  return line === null ? error : new ChatError('unreachable', 'plan_too_sweet', { sugarGPerL, toSugarGPerL, line })
}

function fermenting(error: TooWeak) {
  if (error.problem === 'drink_ferments') {
    const { abvPercent, sugarGPerL } = error.values as DomainError<'drink_ferments'>['values']
    return { where: 'drink', abvPercent, lowAbvPercent: null, sugarGPerL } as const
  }
  const { instead: _, ...weak } = error.values as DomainError<'steep_too_weak'>['values']
  return { where: 'jar', ...weak } as const
}

const typedOptions = (input: object): Options =>
  Object.fromEntries(
    Object.entries(input).flatMap(([option, given]) => {
      const typed = (given as { readonly typed?: unknown } | undefined)?.typed
      return typeof typed === 'string' ? [[option, typed] as const] : []
    }),
  )

const patched = (options: Options, patch: Patch): Options =>
  Object.fromEntries(
    Object.entries({ ...options, ...patch }).filter((option): option is [string, string] => option[1] !== null),
  )

/** The first that is planned, with the name and the day that were given. */
function lineInstead<Result>(
  patches: readonly Patch[],
  make: Make<Result>,
  input: Planned,
  setting: Setting,
): string | null {
  const typed = typedOptions(input)
  const works = (options: Options): boolean => {
    try {
      const known = Object.entries(options).filter(([option]) => Object.hasOwn(planShape, option))
      make(reading.parse(Object.fromEntries(known)), { ...setting, isTrial: true })
      return true
    } catch {
      return false
    }
  }
  const found = patches.map((patch) => patched(typed, patch)).find(works)
  return found === undefined ? null : lineOf({ path: setting.command, options: found })
}

/** As much of each spirit, of one strength; how much was `said` of it is said again. */
const ofStrength = (spirits: readonly Portion[], percent: number, said: readonly (string | null)[] = []): Patch => ({
  spirit: spirits
    .map((portion, at) => `${said[at] ?? inLitres(portion)} ${written(percent)}%${sugarText(portion)}`)
    .join(' + '),
  strength: null,
})

const LITRE_ML = 1000
/** Two figures after the point of a litre. */
const TOLD_ML = 10

const inLitres = (portion: Portion): string => {
  const { amount, by, atC } = portion
  const isRound = by === 'volume' && (atC ?? 20) === 20 && amount.value >= LITRE_ML && amount.value % TOLD_ML === 0
  return isRound ? `${written(amount.value / LITRE_ML)} l` : pouredText(portion)
}

/** So many times as much of each. */
const times = (spirits: readonly Portion[], factor: number): readonly Portion[] =>
  spirits.map(({ amount, ...each }) => ({
    ...each,
    amount: { ...amount, value: Number((amount.value * factor).toPrecision(2)) },
  }))

const asTheyAre = (spirits: readonly Portion[]): Patch => ({
  spirit: spirits.map((portion) => portionText(portion).replace(pouredText(portion), inLitres(portion))).join(' + '),
  strength: null,
})

const sugarShares = (shares: readonly number[], { sugar }: Planned): readonly Patch[] =>
  shares.map((share) => ({
    sugar: sugarWritten(
      sweeteningsOf(sugar).map(({ material, massG }) => ({
        material,
        massG: exactly(Number((massG.value * share).toPrecision(2))),
      })),
      sugar?.is.sweetener,
    ),
  }))

/** Shares of the sugar that goes in with the plants, down to none. */
const lessSugar = ({ sugar }: Planned): readonly Patch[] => [
  ...sugarShares(LESS, { sugar }),
  { sugar: sugarWritten([], sugar?.is.sweetener) || null },
]

/** With less sugar there is a little less of the drink as well. */
const LESS_STILL = [1, 0.95, 0.9, 0.8, 0.5]
const LESS = [1 / 2, 1 / 4, 1 / 8, 1 / 16]
const MORE = [1.5, 2, 3, 4, 6, 10]
/** Of the strongest that is sold, where nothing else does. */
const MUCH_MORE = [2, 5, 10, 30, 100]
const STRONGEST_PERCENT = 96
/** Spirits that are sold, % vol. */
const SOLD_PERCENT = [40, 50, 60, 70, 80, 96]

/** What may be typed otherwise, the least change first. */
function patchesFor(error: TooWeak, input: Planned): readonly Patch[] {
  const spirits = input.spirit === undefined ? null : spiritsCalled(input.spirit.is, input.strength)
  const said = input.spirit?.is.map(({ amount }) => amountSaid(amount))
  const stronger = (percent: number): Patch =>
    spirits === null ? { strength: `${percent}%` } : ofStrength(spirits, percent, said)
  const sold = SOLD_PERCENT.map(stronger)
  const more =
    spirits === null
      ? []
      : [
          ...MORE.map((factor) => asTheyAre(times(spirits, factor))),
          ...MUCH_MORE.map((factor) => ofStrength(times(spirits, factor), STRONGEST_PERCENT)),
        ]
  if (error.problem === 'drink_ferments') {
    const { keepsFromPercent } = error.values as DomainError<'drink_ferments'>['values']
    const wishes: readonly Patch[] = [
      { 'to-strength': `${keepsFromPercent}%` },
      { 'to-strength': `${KEEPS_ABV_PERCENT}%` },
      { 'to-strength': null },
      { 'to-strength': null, 'to-sweetness': null },
    ]
    return [...wishes, ...[...sold, ...more].flatMap((patch) => [patch, { ...wishes[0], ...patch }])]
  }
  const { instead } = error.values as DomainError<'steep_too_weak'>['values']
  const wanted = [
    ...(instead?.steepAtPercent == null ? [] : [{ 'steep-at': `${instead.steepAtPercent}%` }]),
    ...(instead?.spiritAbvPercent == null ? [] : [stronger(instead.spiritAbvPercent)]),
    ...(instead?.lessSugar === true ? lessSugar(input) : []),
    ...sold,
    ...more,
    ...sold.map((patch) => ({ ...patch, 'steep-at': null })),
  ]
  return [...wanted, ...wanted.map((patch) => ({ ...patch, 'to-strength': null, 'to-sweetness': null }))]
}
