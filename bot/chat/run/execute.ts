import { ZodError } from 'zod'
import { DomainError } from '../../../core/domain-error.ts'
import { lazily } from '../../../core/once.ts'
import { holdsOnlyFinite } from '../../../core/only-finite.ts'
import { StorageError } from '../../../store/storage-error.ts'
import type { Call } from '../../calls/call.ts'
import { invocationOf } from '../../calls/call.ts'
import type { Invocation } from '../../calls/invocation.ts'
import { keptAfterAll } from '../../commands/jar/amend/kept-after-all.ts'
import { kitchenTyped } from '../../commands/options/input-units.ts'
import { withUsualBottles } from '../../commands/options/usual-bottles.ts'
import type { AllProblems } from '../../text/language.ts'
import { languageFor } from '../../text/language.ts'
import { isKitchenOf, type Kitchen, kitchenIn } from '../../text/messages/kitchen.ts'
import { ChatError } from '../chat-error.ts'
import type { Context } from '../command.ts'
import { parseLine } from '../grammar/grammar.ts'
import { personOf } from '../own-language.ts'
import { trace } from '../trace.ts'
import { verifyReply } from '../verify-reply.ts'
import type { CallOutcome, Dispatch, Failure, Problem } from './call-outcome.ts'
import { emergencyIn } from './emergency.ts'
import { expectNoDanger, notedCautions } from './expect-no-danger.ts'
import { withHeldInstead } from './held-instead.ts'
import { inDoubt } from './in-doubt.ts'
import { failureTriedIn } from './in-kitchen.ts'
import { withJarNumbers } from './jar-for-numbers.ts'
import { withKindsSpoken } from './kinds-spoken.ts'
import { kitchenOfWhoever, kitchenSaid, textOf, usualOf } from './kitchen-said.ts'
import { withLineInstead } from './line-instead.ts'
import { withLineMeant } from './line-meant.ts'
import { withLineTried } from './line-tried.ts'
import { lookUp } from './look-up.ts'
import { offeredIn } from './offered-in.ts'
import { onTrial } from './on-trial.ts'
import { withLine } from './retyped.ts'
import { withStrengthApart } from './strength-apart.ts'

const fromDomain = (error: DomainError, option: string | null): Problem => ({
  code: error.code,
  problem: error.problem,
  values: error.values,
  ...(option === null ? {} : { option }),
})

const fromChat = (error: ChatError): Problem => ({
  code: error.code,
  problem: error.problem,
  values: error.values,
  ...(error.option === null ? {} : { option: error.option }),
  ...(error.nearest === null ? {} : { nearest: error.nearest }),
})

/** The first option that cannot be taken, or null where the fault is ours. */
const fromSchema = (error: ZodError, call: Invocation): Problem | null => {
  const issue = error.issues[0]
  const option = typeof issue?.path[0] === 'string' ? issue.path[0] : null
  if (issue?.code === 'custom') {
    const cause: unknown = issue.params?.error
    if (cause instanceof DomainError) return fromDomain(cause, option)
  }
  if (option === null || Object.hasOwn(call.options, option)) return null
  const values = { command: call.path, option, example: null }
  return { code: 'missing_option', problem: 'missing_option', values, option }
}

/** With the jar that was named, for what shows a command in use. */
const ofJar = (problem: Problem, call: Invocation | null): Problem => {
  const jar = call?.options.jar ?? call?.options.name
  if (problem.problem !== 'missing_option' || jar === undefined) return problem
  return { ...problem, values: { ...(problem.values as AllProblems['missing_option']), jar } }
}

const known = (error: unknown, call: Invocation | null): Problem | null => {
  if (error instanceof DomainError) return fromDomain(error, null)
  if (error instanceof ChatError) return ofJar(fromChat(error), call)
  if (error instanceof StorageError) return { code: error.code, problem: error.problem, values: error.values }
  const problem = error instanceof ZodError && call !== null ? fromSchema(error, call) : null
  return problem === null || call === null ? problem : withLineInstead(withLine(ofJar(problem, call), call), call)
}

type Attempt<Result> = { readonly ok: true; readonly result: Result } | Failure

/** The one place that catches: what a person can mend becomes a problem, anything else is logged and excused. */
export const attempt = async <Result>(
  work: () => Result | Promise<Result>,
  called: () => Invocation | null,
  log: Dispatch['log'],
): Promise<Attempt<Result>> => {
  try {
    return { ok: true, result: await work() }
  } catch (error) {
    const call = called()
    const path = call?.path ?? (error instanceof ChatError ? error.command : null)
    const problem = known(error, call)
    const isTheirs = problem !== null && problem.code !== 'internal' && holdsOnlyFinite(problem.values)
    if (isTheirs) return { ok: false, path, error: problem, kitchen: 'metric' }
    log(`${path === null ? 'unread line' : `/${path}`}: ${trace(error)}`)
    return { ok: false, path, error: { code: 'internal', problem: 'internal', values: {} }, kitchen: 'metric' }
  }
}

/** A failure whose line is tried before it is offered. */
const mended = async (failure: Failure, called: Invocation | string, dispatch: Dispatch): Promise<Failure> => {
  const attempt = (meant: string | Invocation) => run(meant, onTrial(dispatch))
  if (typeof called === 'string') return { ...failure, error: await withLineMeant(failure.error, called, attempt) }
  const call = called
  try {
    const { jars } = await dispatch.store.read(dispatch.userId)
    return { ...failure, error: await withLineTried(failure.error, call, { jars, attempt }) }
  } catch (error) {
    if (error instanceof StorageError) return failure
    throw error
  }
}

/** What a jar was told of goes before what its step lacks. */
const heldFirst = async (problem: Problem, call: Invocation | null, dispatch: Dispatch): Promise<Problem> =>
  call === null ? problem : withHeldInstead(problem, call, (await personOf(dispatch)).jars)

/** Runs a line, an invocation made elsewhere, or a call, whose values are not read again. Never throws; a number that is not finite never leaves. */
export const execute = async (line: string | Invocation | Call, dispatch: Dispatch): Promise<CallOutcome> =>
  run(line, dispatch, mended)

const run = async (
  called: string | Invocation | Call,
  dispatch: Dispatch,
  mend: typeof mended = async (failure) => failure,
): Promise<CallOutcome> => {
  const { commands, log, ...asker } = dispatch
  const { userId, nowMs, doubts } = asker
  const isValued = typeof called !== 'string' && 'command' in called
  const line = isValued ? invocationOf(called) : called
  const values = isValued ? called.values : null
  const emergency = await emergencyIn(line, asker)
  if (emergency !== null) return emergency
  let call: Invocation | null = null
  let kitchen: Kitchen | null = null
  let attemptId: string | undefined
  const work = async () => {
    const parsed = typeof line === 'string' ? parseLine(line, commands) : line
    const typed = lookUp(parsed, commands)
    const apart = isValued ? parsed : withStrengthApart(parsed, typed)
    call = apart
    const person = await personOf(dispatch)
    const ofJar = isValued ? null : withJarNumbers(apart, person.jars)
    const read = ofJar?.call ?? apart
    const command = ofJar === null ? typed : lookUp(read, commands)
    call = read
    const { settings } = person
    const usualKitchen = lazily(() => usualOf(person, dispatch))
    kitchen = kitchenSaid(read, person, dispatch)
    expectNoDanger(command, read)
    const input = command.input.parse({ ...(values ?? read.options) })
    const isOfJar = 'jar' in input && input.jar !== undefined
    kitchen = kitchenIn(settings.units, ofJar?.kitchen ?? kitchenTyped(input, usualKitchen))
    const zone = settings.zone ?? asker.assumedZone
    const doubtful = doubts?.of(userId, read, nowMs) ?? null
    attemptId = doubtful ?? asker.newAttempt?.()
    const language = languageFor(asker, settings)
    const context: Context = {
      ...asker,
      language,
      settings,
      zone,
      kitchen,
      ...(attemptId !== undefined && { attempt: attemptId }),
    }
    const kept = doubtful === null ? null : await keptAfterAll(doubtful, context)
    const made = kept ?? (await command.run(withUsualBottles(input, kitchen), context))
    if (doubtful !== null) doubts?.settle(userId, read)
    const notes = [...(ofJar?.notes ?? []), ...made.notes]
    const reply = { ...made, notes, cautions: [...notedCautions(read), ...made.cautions] }
    verifyReply(reply)
    const isUntold = !isOfJar && isKitchenOf('metric', reply.kitchen)
    const own = ofJar?.kitchen ?? (isUntold ? kitchenTyped(input, usualKitchen) : reply.kitchen)
    const called = withKindsSpoken(kitchenIn(settings.units, own), command.path, dispatch)
    const inUnits = offeredIn({ ...reply, kitchen: called }, textOf(read))
    return { path: command.path, reply: inUnits, call: read, ...(ofJar !== null && { isReread: true as const }) }
  }
  const attempted = await attempt(work, () => call, log)
  if (attempted.ok) return { ok: true, ...attempted.result }
  const isRemembered = doubts !== undefined && attemptId !== undefined
  if (attempted.error.problem === 'unsure' && isRemembered && call !== null) doubts.add(userId, call, attemptId!, nowMs)
  const error = await heldFirst(inDoubt(attempted.error, call, isRemembered), call, dispatch)
  const failure = { ...attempted, error }
  const own = kitchen ?? (await kitchenOfWhoever(line, dispatch))
  const offered = await mend({ ...failure, kitchen: own }, call ?? line, dispatch)
  return mend === mended
    ? failureTriedIn(offered, textOf(call ?? line), (meant) => run(meant, onTrial(dispatch)))
    : offered
}
