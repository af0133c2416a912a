import { DomainError } from '../../../core/domain-error.ts'
import { findJar } from '../../../core/jar/state/find-jar.ts'
import type { JarProblems } from '../../../core/jar/state/problems.ts'
import type { Jar } from '../../../store/person.ts'
import type { Invocation } from '../../calls/invocation.ts'
import { lineOf } from '../../calls/write-line.ts'
import type { ChatProblems } from '../../text/messages/chat-problems.ts'
import { readBatch, readRest } from '../grammar/read-rest.ts'
import type { CallOutcome, Problem } from './call-outcome.ts'
import { withChangeInstead } from './changed-instead.ts'
import { completed, exampleOfJar, names, type Try, withOptions } from './example-tried.ts'
import { withSpiritInstead } from './jar-stronger-instead.ts'
import { withTargetsInstead } from './targets-instead.ts'
import { withValueInstead } from './value-instead.ts'

interface Known {
  readonly jars: readonly Jar[]
  readonly attempt: Try
}

/** What is wrong with the name of a jar; null where it is one. */
function unknownJar(typed: string, jars: readonly Jar[]): Problem | null {
  try {
    findJar(typed, jars)
    return null
  } catch (error) {
    if (!(error instanceof DomainError)) throw error
    const { code, problem, values } = error
    return { code, problem, values, option: 'jar' }
  }
}

/** The line as it was meant, or what stands in its way; without a line where nobody can tell. */
async function withRest(problem: Problem, call: Invocation, { attempt }: Known): Promise<Problem> {
  const values = problem.values as JarProblems['no_such_jar']
  const { begun } = values
  if (begun === undefined) return call.path === 'measure' ? withColons(problem, call, attempt) : problem
  const rest = call.options.jar!.trim().normalize('NFC').slice(begun.name.length).trim()
  const read = readRest(call.path, rest)
  if (read === null || read.some(([option]) => Object.hasOwn(call.options, option))) return problem
  const meant = withOptions(call, [['jar', begun.name], ...read])
  const tried = await attempt(meant)
  if (tried.ok) return { ...problem, values: { ...values, begun: { ...begun, line: lineOf(meant) } } }
  return tried.error.code === 'wrong_stage' ? tried.error : problem
}

/** Readings without colons, where no jar was named; the line as it was meant. */
async function withColons(problem: Problem, call: Invocation, attempt: Try): Promise<Problem> {
  const { jar = '', ...given } = call.options
  const read = readRest(call.path, jar)
  if (read === null || read.some(([option]) => Object.hasOwn(given, option))) return problem
  const meant = { path: call.path, options: { ...Object.fromEntries(read), ...given } }
  const tried = await attempt(meant)
  if (!tried.ok && tried.error.code !== 'missing_option') return problem
  return { code: 'unknown_option', problem: 'colons_missing', values: { example: lineOf(meant) } }
}

/** An amount, which no jar is named after. */
const HAS_AMOUNT = /\d\s?(?:ml|cl|dl|l|kg|g|%)(?!\p{L})/iu

/** A start that lacks something: plants and spirit may stand with the name. */
async function ofStart(option: string, call: Invocation, { attempt }: Known): Promise<string | null> {
  const { name, ...others } = call.options
  if (name === undefined) return completed(call, attempt)
  const isKnown = others.spirit !== undefined || others.from !== undefined
  const read = option === 'of' ? readBatch(name, isKnown) : null
  if (read !== null) {
    const given = { ...(read.name !== null && { name: read.name }), ...Object.fromEntries(read.options), ...others }
    const batch = await completed({ path: call.path, options: given }, attempt)
    if (batch !== null) return batch
  }
  return completed(HAS_AMOUNT.test(name) ? { path: call.path, options: others } : call, attempt)
}

/** A jar that is named or to be named, and what is lacking to say of it. */
async function ofJar(problem: Problem, call: Invocation, known: Known): Promise<Problem> {
  const { jars, attempt } = known
  const typed = call.options.jar
  if (typed === 'all' || jars.length === 0) return jars.length === 0 ? (unknownJar('', jars) ?? problem) : problem
  const unknown = typed === undefined ? null : unknownJar(typed, jars)
  if (unknown !== null) return withRest(unknown, call, known)
  const { line, ...tried } = await exampleOfJar(call, jars, attempt)
  if (line !== null) return withExample(problem, line)
  const { failed } = tried as { failed: CallOutcome | null }
  if (failed !== null && !failed.ok && isInTheWay(failed.error)) return failed.error
  return problem.problem === 'missing_option' ? withExample(problem, '') : problem
}

/** What no other amount would change. */
const isInTheWay = ({ code, problem }: Problem): boolean => code === 'wrong_stage' || problem === 'no_such_entry'

const withExample = (problem: Problem, example: string): Problem => ({
  ...problem,
  values: { ...(problem.values as ChatProblems['missing_option']), example },
})

/** Problems that show how something is said. */
const SHOWING: readonly Problem['problem'][] = ['missing_option', 'what_to_correct']

/** The line that a problem offers in place of what was typed, and whether the sentence can do without it. */
function lineInstead(values: object): { readonly line: string; readonly isNeeded: boolean } | null {
  const { fix, line, retype, food } = values as Partial<Instead>
  if (typeof fix === 'string' && typeof line === 'string') return { line, isNeeded: false }
  const whole = (retype ?? food?.retype)?.line
  return typeof whole === 'string' ? { line: whole, isNeeded: true } : null
}

interface Instead {
  readonly fix: string | null
  readonly line: string | null
  readonly retype: { readonly line?: string | null }
  readonly food: { readonly retype: { readonly line?: string | null } } | null
}

/** Another question may follow; what can never be is not offered, and where only the jar is wrong that is said. */
async function withInstead(problem: Problem, call: Invocation, known: Known): Promise<Problem> {
  const offered = lineInstead(problem.values)
  if (offered === null) {
    const { attempt } = known
    const valued = await withValueInstead(problem, call, attempt)
    const read = await withSpiritInstead(await withTargetsInstead(valued, call, attempt), call, attempt)
    return withChangeInstead(read, call, { attempt, jars: names(known.jars) })
  }
  const tried = await known.attempt(offered.line)
  if (tried.ok) return problem
  const { code, problem: key } = tried.error
  if (offered.isNeeded && (key === 'no_such_jar' || key === 'no_jars')) return withLineTried(tried.error, call, known)
  if (offered.isNeeded && code === 'wrong_stage') return tried.error
  if (offered.isNeeded || code === 'ambiguous' || code === 'missing_option') return problem
  return { ...problem, values: { ...problem.values, line: null } as Problem['values'] }
}

/** A problem whose line names a jar, or shows what is lacking, with one that was tried and runs. */
export async function withLineTried(problem: Problem, call: Invocation, known: Known): Promise<Problem> {
  const isUnknown = problem.problem === 'no_such_jar' || problem.problem === 'no_jars'
  if (isUnknown && call.options.jar !== undefined) return withRest(problem, call, known)
  if (!SHOWING.includes(problem.problem) || problem.option === undefined) return withInstead(problem, call, known)
  if (call.path === 'jar start' || call.path === 'plan') {
    const line = await ofStart(problem.option, call, known)
    return line === null ? withoutName(problem, call) : withExample(problem, line)
  }
  if (problem.option === 'jar' || call.options.jar !== undefined) return ofJar(problem, call, known)
  const line = await completed(call, known.attempt)
  return line === null ? problem : withExample(problem, line)
}

/** The usual example, where a name would be one by accident. */
const withoutName = (problem: Problem, { options: { name } }: Invocation): Problem => {
  const { jar: _, ...unnamed } = problem.values as ChatProblems['missing_option']
  return name !== undefined && HAS_AMOUNT.test(name) ? { ...problem, values: unnamed } : problem
}
