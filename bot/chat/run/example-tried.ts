import { sameName } from '../../../core/jar/entry/jar-name.ts'
import { contentsOf } from '../../../core/jar/state/contents.ts'
import { jarStateOf } from '../../../core/jar/state/jar-state.ts'
import type { JarProblems } from '../../../core/jar/state/problems.ts'
import type { Jar } from '../../../store/person.ts'
import type { Invocation } from '../../calls/invocation.ts'
import { lineOf } from '../../calls/write-line.ts'
import type { OptionsRead } from '../grammar/read-rest.ts'
import type { CallOutcome } from './call-outcome.ts'

/** Runs a call with nothing kept of it. */
export type Try = (line: string | Invocation) => Promise<CallOutcome>

/** Jars that are tried for an example. */
const MOST_TRIED = 8

const MEASURED: readonly OptionsRead[] = ['930 ml', '450 ml', '180 ml'].map((text) => [['measured', text]])

/** What may be said of a jar, the usual first. */
const OF_JAR: Readonly<Record<string, readonly OptionsRead[]>> = {
  again: [[['spirit', '1 l 95%']], []],
  'jar add': [[['of', '1 stick cinnamon, ceylon']]],
  'jar correct': [...MEASURED, [['when', 'yesterday']], [['rating', '4']], [['spirit', '1 l 95%']]],
  'jar filter': MEASURED,
  'jar later': [[['until', 'in 2 weeks']]],
  'jar rename': [[['to', 'midwinter lemon']]],
  'jar split': ['500 ml', '200 ml', '50 ml'].map((text) => [
    ['amount', text],
    ['into', 'the other half'],
  ]),
  'jar strain': MEASURED,
  'jar sweeten': [
    [
      ['water', '500 ml'],
      ['sugar', '450 g'],
    ],
    [
      ['water', '50 ml'],
      ['sugar', '20 g'],
    ],
  ],
  'jar taste': [[['rating', '4']]],
}

const BOTTLES_ML = [500, 200, 50] as const

const OWN_BOTTLES = /^\d+ x (?:500|200|50) ml$/

/** What may be said of one jar, by what is in it. */
function ofItself(path: string, name: string, jars: readonly Jar[]): readonly OptionsRead[] {
  if (path !== 'jar bottle') return OF_JAR[path] ?? [[]]
  const story = jars.flatMap(({ entries }) => jarStateOf(entries) ?? []).find((each) => sameName(each.name, name))
  const leftMl = story === undefined ? 0 : contentsOf(story).outcome.volumeMl.value - contentsOf(story).bottledMl
  return BOTTLES_ML.map((ml) => [['bottles', `${Math.max(1, Math.floor(leftMl / ml))} x ${ml} ml`]])
}

/** What else a line may lack, by its option. */
const LACKING: Readonly<Record<string, string>> = {
  infusion: '920 ml',
  liqueur: '1.8 l',
  of: '10 lemons',
  pour: '30 ml',
  spirit: '1 l 95%',
  strength: '95%',
  'to-strength': '30%',
}

/** What is poured into a glass is no spirit as it is bought. */
const LACKING_OF: Readonly<Record<string, Readonly<Record<string, string>>>> = { serving: { strength: '30%' } }

/** Whether a text is one of ours for an option. */
export const isExampleOf = (option: string, text: string): boolean =>
  LACKING[option] === text ||
  (option === 'bottles' && OWN_BOTTLES.test(text)) ||
  Object.values(OF_JAR).some((all) => all.some((each) => each.some(([name, own]) => name === option && own === text)))

export const withOptions = ({ path, options }: Invocation, more: OptionsRead): Invocation => ({
  path,
  options: { ...options, ...Object.fromEntries(more) },
})

/** A line that runs, or what kept the first from it. */
export type Tried = { readonly line: string } | { readonly line: null; readonly failed: CallOutcome | null }

/** The running jars, then the others, the latest first. */
export const names = (jars: readonly Jar[]): readonly string[] => {
  const stories = jars.flatMap(({ entries }) => jarStateOf(entries) ?? []).reverse()
  const running = stories.filter(({ ended }) => ended === null)
  return [...running, ...stories.filter((story) => !running.includes(story))].map(({ name }) => name)
}

/** The line of a call about a jar with what it lacks, of the jar that was named or of any. */
export async function exampleOfJar(call: Invocation, jars: readonly Jar[], attempt: Try): Promise<Tried> {
  const { jar } = call.options
  const all = names(jars).slice(0, MOST_TRIED)
  const others = (name: string): readonly OptionsRead[] =>
    all.filter((other) => !sameName(other, name)).map((other) => [['with', other]])
  let failed: CallOutcome | null = null
  for (const name of jar === undefined ? all : [jar]) {
    for (const more of call.path === 'jar combine' ? others(name) : ofItself(call.path, name, jars)) {
      const meant = withOptions(call, [['jar', name], ...more.filter(([option]) => !(option in call.options))])
      const tried = await attempt(meant)
      if (tried.ok) return { line: lineOf(meant) }
      failed ??= tried
    }
  }
  return { line: null, failed }
}

const MOST_ROUNDS = 5

/**
 * The line of any other call with what it lacks, a jar to be begun under a name that is free; null where that does not make
 * it run.
 */
export async function completed(call: Invocation, attempt: Try): Promise<string | null> {
  let meant = call
  for (let round = 0; round < MOST_ROUNDS; round++) {
    const tried = await attempt(meant)
    if (tried.ok) return lineOf(meant)
    const { problem, code, option, values } = tried.error
    if (problem === 'jar_name_taken') {
      meant = withOptions(meant, [['name', (values as JarProblems['jar_name_taken']).free]])
      continue
    }
    const text =
      code === 'missing_option' && option !== undefined
        ? (LACKING_OF[call.path]?.[option] ?? LACKING[option])
        : undefined
    if (text === undefined || option! in meant.options) return null
    meant = withOptions(meant, [[option!, text]])
  }
  return null
}
