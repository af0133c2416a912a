import { parseBrix, parseHydrometer } from '../../../core/quantity/read/parse-reading.ts'
import { gramsPerLitre } from '../../../core/quantity/write/made-amounts.ts'
import type { GaugedOutcome, Gauging } from '../../../core/recipe/solve/gauged.ts'
import type { Call, CallValues } from '../../calls/call.ts'
import { call } from '../../calls/call.ts'
import type { Action, Data, Reply } from '../../chat/reply.ts'
import type { Message } from '../../text/words.ts'
import { assumptionNotes, kitchenOf } from '../options/input-units.ts'
import { caution, measuredData, note } from '../reply/outcome-reply.ts'

/** An amount that nobody named. */
const UNKNOWN = { volumeMl: null, volumeMlPlusMinus: null, massG: null, massGPlusMinus: null } as const

const gaugedData = ({ abvPercent, sugarGPerL, densityGPerMl, freezesAtC }: GaugedOutcome) => ({
  ...UNKNOWN,
  ...measuredData({ abvPercent, sugarGPerL, densityGPerMl, freezesAtC }),
  ethanolG: null,
  ethanolGPlusMinus: null,
})

const nothingData: { readonly [name: string]: Data } = {
  ...UNKNOWN,
  ...Object.fromEntries(
    ['abvPercent', 'sugarGPerL', 'densityGPerMl', 'freezesAtC', 'ethanolG'].flatMap((name) => [
      [name, null],
      [`${name}PlusMinus`, null],
    ]),
  ),
  method: null,
}

/** What is said beside the numbers: how well the method knows them, and how it is done. */
export function methodSaid(
  gauging: Gauging,
  { abvPercent, sugarGPerL }: Pick<GaugedOutcome, 'abvPercent' | 'sugarGPerL'>,
) {
  const sure: Message<'sure'> = {
    group: 'sure',
    key: `gauged_${gauging.method}`,
    values: { abvPercent, sugarGPerL },
  }
  switch (gauging.method) {
    case 'two_instruments':
      return {
        sure: [sure],
        notes: [gauging.brix.atC === null ? note('measure_both') : note('measure_brix_warm')],
        cautions: [],
      }
    case 'boiled':
      return { sure: [sure], notes: [note('measure_boiled_so')], cautions: [caution('measure_boil')] }
    case 'known_sugar':
      return { sure: [sure], notes: [note('measure_floats')], cautions: [] }
  }
}

/** Sweetened drinks stronger than this are rare, % vol: a reading is rather wrong. Judgement. */
const RARELY_OVER_PERCENT = 50
/** Less sugar than this may be no syrup at all, g/L. Judgement. */
const SWEETENED_G_PER_L = 30

/** That what was read makes a drink that hardly anybody has. */
const doubtNotes = ({ abvPercent, sugarGPerL }: Pick<GaugedOutcome, 'abvPercent' | 'sugarGPerL'>) =>
  abvPercent.value > RARELY_OVER_PERCENT && sugarGPerL.value > SWEETENED_G_PER_L ? [note('measure_doubtful')] : []

/** What a liqueur is that was measured, of no jar. */
export function gaugedReply(input: object, gauging: Gauging, outcome: GaugedOutcome): Reply {
  const { abvPercent, sugarGPerL } = outcome
  const { sure, notes, cautions } = methodSaid(gauging, outcome)
  return {
    headline: { group: 'headlines', key: 'gauged', values: { abvPercent, sugarGPerL } },
    table: [],
    sure,
    notes: [...assumptionNotes(input), ...doubtNotes(outcome), ...notes],
    cautions,
    actions: [],
    data: { ...gaugedData(outcome), method: gauging.method },
    kitchen: kitchenOf(input),
  }
}

/** How to boil off what was read; `then` is what to type then. */
export const boilReply = (input: object, then: Call): Reply => ({
  headline: { group: 'headlines', key: 'measure_boil', values: undefined },
  table: [],
  sure: [],
  notes: [note('measure_simmer'), note('measure_fill_up')],
  cautions: [caution('measure_boil')],
  actions: [
    { label: { group: 'actions', key: 'measure_read_again', values: undefined }, call: then, isChangedFirst: true },
  ],
  data: { ...nothingData, method: 'boiled' },
  kitchen: kitchenOf(input),
})

/** The ways to measure; `recipe` tells what the recipe of a jar says, null where there is none. */
export const waysReply = (recipe: Call | null): Reply => ({
  headline: { group: 'headlines', key: 'measure_ways', values: undefined },
  table: [],
  sure: [],
  notes: recipe === null ? [note('measure_scale')] : [],
  cautions: [],
  actions: [
    way('measure_two', { brix: parseBrix('26.5'), hydrometer: parseHydrometer('1.035') }),
    way('measure_boiling', { before: parseHydrometer('1.059'), after: parseHydrometer('1.096') }),
    way('measure_sugar', { hydrometer: parseHydrometer('1.035'), sweetness: gramsPerLitre(180) }),
    ...(recipe === null ? [] : [{ label: actionLabel('measure_recipe'), call: recipe }]),
  ],
  data: nothingData,
  kitchen: 'metric',
})

type ActionKey = 'measure_two' | 'measure_boiling' | 'measure_sugar' | 'measure_recipe' | 'measure_read_again'

const actionLabel = (key: ActionKey): Message<'actions'> => ({ group: 'actions', key, values: undefined })

const way = (key: ActionKey, values: CallValues<'measure'>): Action => ({
  label: actionLabel(key),
  call: call('measure', values),
  isChangedFirst: true,
})
