import type { Invocation } from '../../calls/invocation.ts'
import { lineOf } from '../../calls/write-line.ts'
import type { Problem } from './call-outcome.ts'
import type { Try } from './example-tried.ts'

/** Options told otherwise; null: left out. */
type Changed = Readonly<Record<string, string | null>>

type Values = Readonly<Record<string, unknown>>

/** Whose option it is, and what jars there are. */
interface Known {
  readonly option: string | undefined
  readonly jars: readonly string[]
  readonly options: Invocation['options']
}

const withoutOption = (_: Values, { option }: Known): readonly Changed[] =>
  option === undefined ? [] : [{ [option]: null }]

const optionAs =
  (...texts: readonly string[]) =>
  (_: Values, { option }: Known): readonly Changed[] =>
    option === undefined ? [] : texts.map((text) => ({ [option]: text }))

/** What stands among the plants and is none, in its own option. */
function ownPlace({ thing, value, typed }: Values, { options: { of = '', sugar, spirit } }: Known): readonly Changed[] {
  const parts = of.split('+').map((part) => part.trim())
  const isIt = (part: string): boolean => part.toLowerCase().includes(String(typed).toLowerCase())
  const rest = parts.filter((part) => !isIt(part)).join(' + ')
  if (rest === '') return []
  if (thing === 'sugar')
    return sugar === undefined
      ? [
          { of: rest, sugar: String(value) },
          { of: rest, sugar: '500 g' },
        ]
      : []
  if (thing === 'water') return [{ of: rest }]
  const said = spirit === undefined ? '' : `${spirit} + `
  const texts = value === '' ? ['1 l 40%'] : [String(value), `${String(value)} 40%`]
  return texts.map((text) => ({ of: rest, spirit: `${said}${text}` }))
}

/** What may be meant, the likeliest first, by what is wrong. */
const CHANGES: Partial<Record<Problem['problem'], (values: Values, known: Known) => readonly Changed[]>> = {
  second_taken: ({ by }) => [{ 'second-of': String(by) }],
  pour_where: ({ free }) => [{ into: String(free) }],
  before_straining: () => [{ when: 'today' }, { when: 'yesterday' }],
  sweet_strength: () => [{ strength: null }],
  stronger_than_went_in: () => [{ strength: null }],
  in_the_future: withoutOption,
  not_ahead: optionAs('tomorrow'),
  not_ahead_today: optionAs('23:30', 'tomorrow'),
  amount_of_which: ({ typed }) => [{ of: `5 ${String(typed)}` }, { of: `100 g ${String(typed)}` }],
  jar_or_liqueur: withoutOption,
  jar_or_infusion: withoutOption,
  glass_or_wish: withoutOption,
  code_or_recipe: withoutOption,
  glass_of_jar: (_, { jars }) => jars.map((jar) => ({ jar })),
  glass_how_much: () => [{ glass: '50 ml' }],
  glass_of_what: () => [{ 'glass-sugar': '4 g' }, { 'glass-water': '5 ml' }],
  no_added_as: withoutOption,
  compare_two: (_, { jars: [one, other] }) => (other === undefined ? [] : [{ compare: `${one} + ${other}` }]),
  not_a_plant: ownPlace,
  bottles_not_read: optionAs('4 x 500 ml', '1 x 500 ml'),
  ready_by_unknown: () => [{ 'ready-by': null }],
  syrup_not_sweet_enough: () => [{ ratio: '2:1' }, { ratio: '3:1' }],
  filler_too_sweet: ({ leastGPerL }) => [{ 'to-sweetness': `${Math.ceil(Number(leastGPerL))} g/L` }],
  adjust_needs_spirit: () => [{ 'spirit-strength': '40%' }, { 'spirit-strength': '95%' }],
}

const changedCall = ({ path, options }: Invocation, changed: Changed): Invocation => ({
  path,
  options: Object.fromEntries(
    Object.entries({ ...options, ...changed }).filter((each): each is [string, string] => each[1] !== null),
  ),
})

/** Lines that are tried for one answer, which has to come soon. */
const MOST_TRIED = 4

/** A problem that another text, or none, for one of the options would solve, with the whole line, tried. */
export async function withChangeInstead(
  problem: Problem,
  call: Invocation,
  { attempt, jars }: { readonly attempt: Try; readonly jars: readonly string[] },
): Promise<Problem> {
  const changes =
    CHANGES[problem.problem]?.(problem.values as Values, {
      option: problem.option,
      jars,
      options: call.options,
    }) ?? []
  for (const changed of changes.slice(0, MOST_TRIED)) {
    const meant = changedCall(call, changed)
    const line = lineOf(meant, call.path === 'jar start')
    if ((await attempt(meant)).ok) return { ...problem, values: { ...problem.values, line } as Problem['values'] }
  }
  return problem
}
