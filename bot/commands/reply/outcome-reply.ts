import { flashPointC, STRONG_PERCENT } from '../../../core/liquid/flash-point.ts'
import { FREEZER_C, inFreezer } from '../../../core/liquid/freezer.ts'
import { type Keeping, keepingOf } from '../../../core/liquid/keeping.ts'
import { abvPercent, type Liquid } from '../../../core/liquid/liquid.ts'
import { isGlassToDilute } from '../../../core/liquid/neat.ts'
import type { Measured } from '../../../core/quantity/measured/measured.ts'
import type { Outcome } from '../../../core/recipe/solve/outcome.ts'
import type { SugarStays } from '../../../core/recipe/sugar-stays.ts'
import type { Context } from '../../chat/command.ts'
import type { Data, Reply, Row } from '../../chat/reply.ts'
import type { Message } from '../../text/words.ts'

/** Numbers and, beside each, `<name>PlusMinus`. */
export const measuredData = (record: { readonly [name: string]: Measured }): { readonly [name: string]: Data } =>
  Object.fromEntries(
    Object.entries(record).flatMap(([name, { value, plusMinus }]) => [
      [name, value],
      [`${name}PlusMinus`, plusMinus],
    ]),
  )

export const outcomeData = ({ liquid: _, ...numbers }: Outcome) => measuredData(numbers)

/** The person's own freezer, °C, or a usual one. */
export const freezerOf = ({ settings }: Pick<Context, 'settings'>): number => settings.freezerC ?? FREEZER_C

/** What that freezer makes of it. */
export const freezerSaid = ({ liquid, freezesAtC }: Outcome, freezerC: number) => ({
  state: inFreezer(liquid, freezerC, freezesAtC.plusMinus).state,
  freezerC,
})

/** What a headline says of the result. */
export const made = (outcome: Outcome, freezerC: number) => ({
  volumeMl: outcome.volumeMl,
  abvPercent: outcome.abvPercent,
  sugarGPerL: outcome.sugarGPerL,
  freezer: freezerSaid(outcome, freezerC),
})

export const row = (key: Message<'rows'>['key'], cell: Message<'cells'>): Row => ({
  label: { group: 'rows', key, values: undefined } as Message<'rows'>,
  cell,
})

export const note = (key: PlainKey<'notes'>): Message<'notes'> =>
  ({ group: 'notes', key, values: undefined }) as Message<'notes'>
export const caution = (key: PlainKey<'cautions'>): Message<'cautions'> => ({
  group: 'cautions',
  key,
  values: undefined,
})

/** The sentences of a group that need no values. */
type PlainKey<Group extends 'notes' | 'cautions'> = Extract<Message<Group>, { values: undefined }>['key']

/** The rows about what comes out. */
export const outcomeRows = (outcome: Outcome, freezerC: number): readonly Row[] => [
  row('volume', { group: 'cells', key: 'volume_spread', values: { volumeMl: outcome.volumeMl } }),
  row('strength', { group: 'cells', key: 'strength_spread', values: { abvPercent: outcome.abvPercent } }),
  row('sweetness', { group: 'cells', key: 'sweetness_spread', values: { sugarGPerL: outcome.sugarGPerL } }),
  row('freezes', {
    group: 'cells',
    key: 'freezes',
    values: { freezesAtC: outcome.freezesAtC, freezer: freezerSaid(outcome, freezerC) },
  }),
]

/** How sure an outcome is; `byVolume` where a weighed amount would have been sharper. */
export const sureOf = ({ abvPercent, sugarGPerL }: Outcome, byVolume: boolean): Reply['sure'] =>
  abvPercent.value === 0 && sugarGPerL.value === 0
    ? []
    : [{ group: 'sure', key: 'spread', values: { abvPercent, sugarGPerL, byVolume } }]

const NOT_KEEPING: { readonly [Word in Exclude<Keeping, 'keeps'>]: 'can_ferment' | 'keeps_undecided' } = {
  ferments: 'can_ferment',
  undecided: 'keeps_undecided',
}

/** That it may not keep; of what has no alcohol nothing is said. */
function keepingCautions(outcome: Outcome): readonly Message<'cautions'>[] {
  const { abvPercent, sugarGPerL } = outcome
  const keeping = abvPercent.value === 0 ? 'keeps' : keepingOf(outcome)
  if (keeping === 'keeps') return []
  return [{ group: 'cautions', key: NOT_KEEPING[keeping], values: { abvPercent, sugarGPerL } }]
}

/** Where it is said of the jar, or of what is wished for, instead. */
export const withoutKeeping = (all: readonly Message<'cautions'>[]): readonly Message<'cautions'>[] =>
  all.filter(({ key }) => !Object.values<string>(NOT_KEEPING).includes(key))

/** From which warmth on the strongest of them burns. */
export function flashNotes(handled: readonly Liquid[]): readonly Message<'notes'>[] {
  const strong = handled.filter((liquid) => abvPercent(liquid) >= STRONG_PERCENT)
  const lowC = Math.min(...strong.map((liquid) => flashPointC(liquid)?.lowC ?? Number.POSITIVE_INFINITY))
  return Number.isFinite(lowC) ? [{ group: 'notes', key: 'flash_point', values: { lowC } }] : []
}

/** `freezerC`: null where nobody speaks of a freezer. */
interface Asked {
  readonly freezerC: number | null
  readonly isSyrup?: boolean
}

/** Of what is made to be drunk; a spirit that is thinned may be one to steep in. */
export const notNeatCautions = ({ abvPercent }: Pick<Outcome, 'abvPercent'>): readonly Message<'cautions'>[] =>
  isGlassToDilute(wholePercent(abvPercent.value))
    ? [{ group: 'cautions', key: 'not_neat', values: { abvPercent } }]
    : []

/** As a label would say it: a wish for 60 is met by 59.97. */
const wholePercent = (percent: number): number => Math.round(percent)

/** Cautions that belong to a result, worst first; `handled` are the liquids that go into it. */
export function outcomeCautions(
  outcome: Outcome,
  stays: SugarStays,
  handled: readonly Liquid[],
  { freezerC, isSyrup = false }: Asked,
): readonly Message<'cautions'>[] {
  const isStrong = [outcome.liquid, ...handled].some((liquid) => abvPercent(liquid) >= STRONG_PERCENT)
  const freezer = freezerC === null ? null : freezerSaid(outcome, freezerC).state
  return [
    ...(isStrong ? [caution('flame')] : []),
    ...(isSyrup ? [caution('cool_first')] : []),
    ...keepingCautions(outcome),
    ...(stays === 'dissolved'
      ? []
      : [caution(stays === 'may_crystallise' ? 'may_crystallise' : 'sugar_limit_not_known')]),
    ...(freezer === 'slush' || freezer === 'solid' ? [caution('bottle_bursts')] : []),
  ]
}

/** The same of what is made to be drunk. */
export const neatAnd = (...asked: Parameters<typeof outcomeCautions>): readonly Message<'cautions'>[] => [
  ...notNeatCautions(asked[0]),
  ...outcomeCautions(...asked),
]
