import type { GaugedOutcome, Gauging } from '../../../core/recipe/solve/gauged.ts'
import type { Data, Reply } from '../../chat/reply.ts'
import type { Message } from '../../text/words.ts'
import { caution, measuredData, note, row } from '../calculate/outcome-reply.ts'
import { assumptionNotes, kitchenOf } from '../options/input-units.ts'

/** An amount that nobody named. */
const UNKNOWN = { volumeMl: null, volumeMlPlusMinus: null, massG: null, massGPlusMinus: null } as const

export const gaugedData = ({ abvPercent, sugarGPerL, densityGPerMl, freezesAtC }: GaugedOutcome) => ({
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
export function methodSaid(gauging: Gauging, { abvPercent, sugarGPerL }: GaugedOutcome) {
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

/** What a liqueur is that was measured, of no jar. */
export function gaugedReply(input: object, gauging: Gauging, outcome: GaugedOutcome): Reply {
  const { abvPercent, sugarGPerL } = outcome
  const { sure, notes, cautions } = methodSaid(gauging, outcome)
  return {
    headline: { group: 'headlines', key: 'gauged', values: { abvPercent, sugarGPerL } },
    table: [],
    sure,
    notes: [...assumptionNotes(input), ...notes],
    cautions,
    actions: [],
    data: { ...gaugedData(outcome), method: gauging.method },
    kitchen: kitchenOf(input),
  }
}

/** How to boil off what was read; `line` is the one to type then. */
export const boilReply = (input: object, line: string): Reply => ({
  headline: { group: 'headlines', key: 'measure_boil', values: undefined },
  table: [],
  sure: [],
  notes: [note('measure_simmer'), note('measure_fill_up')],
  cautions: [caution('measure_boil')],
  actions: [{ label: { group: 'actions', key: 'measure_read_again', values: undefined }, line, isChangedFirst: true }],
  data: { ...nothingData, method: 'boiled' },
  kitchen: kitchenOf(input),
})

/** The ways to measure; `recipe` is the line that tells what a recipe says. */
export const waysReply = (recipe: string): Reply => ({
  headline: { group: 'headlines', key: 'measure_ways', values: undefined },
  table: [
    row('measure_two', cell('/measure brix:26.5 hydrometer:1.035')),
    row('measure_boiling', cell('/measure before:1.021 after:1.094')),
    row('measure_sugar', cell('/measure hydrometer:1.035 sweetness:180 g/L')),
    row('measure_recipe', cell(recipe)),
  ],
  sure: [],
  notes: [note('measure_scale')],
  cautions: [],
  actions: [],
  data: nothingData,
  kitchen: 'metric',
})

const cell = (line: string): Message<'cells'> => ({ group: 'cells', key: 'measure_line', values: { line } })
