import type { APIModalInteractionResponseCallbackData } from 'discord.js'
import type { Invocation } from '../../calls/invocation.ts'
import { pathTyped } from '../../chat/grammar/find-command.ts'
import { parseLine } from '../../chat/grammar/grammar.ts'
import { heard } from '../../chat/hear/heard.ts'

import { remember } from '../../chat/hear/remember.ts'
import { attempt, execute } from '../../chat/run/execute.ts'
import { help } from '../../chat/run/help.ts'
import { HELP } from '../../chat/run/help-page.ts'
import { helpIn } from '../../chat/run/in-kitchen.ts'
import { kitchenOfWhoever, placeOf } from '../../chat/run/kitchen-said.ts'
import { keepReply, moreOf } from '../../chat/run/more.ts'
import type { RegistrationText } from '../../text/discord-text.ts'
import type { AboutWord } from '../../text/help-text.ts'
import type { LineOfCommand } from '../buttons/marked-lines.ts'
import type { FilledFields, SentForm } from '../forms/form.ts'
import { formFor } from '../forms/form-for.ts'
import { retypeForm } from '../forms/retype.ts'
import { withUnsent } from '../nudges/unsent-reminders.ts'
import type { SentBefore } from './after-failure.ts'
import { type CallDispatch, formOffered, messagesOf, type SaidMessages, sentenceSaid } from './answer-messages.ts'

/** What is said to a call: messages, or a form before it can run, with what is said where a form comes too late. */
export type CallRun =
  | SaidMessages
  | {
      readonly kind: 'form'
      readonly form: APIModalInteractionResponseCallbackData
      readonly instead: () => Promise<SaidMessages>
    }

/** A form that was only opened, and what was refused, changed nothing. */
export const hasDone = (said: CallRun): boolean => said.kind === 'messages' && said.outcome?.ok !== false

const run = async (call: Invocation, dispatch: CallDispatch, sent: SentBefore | null): Promise<SaidMessages> => {
  const done = await execute(call, dispatch)
  // What is said next may be about it: `drier`, `undo`.
  remember({ heard: heard(done), reading: null }, dispatch, placeOf(dispatch))
  const { outcome, zone } = await withUnsent(done, dispatch)
  await keepReply(outcome, dispatch)
  return messagesOf(outcome, dispatch, { sent, zone })
}

/** The call's form, or null where it needs none; what it throws is said. */
const formSaid = async (
  call: Invocation,
  dispatch: CallDispatch,
  filled: FilledFields | null,
  sent: SentBefore | null = null,
): Promise<CallRun | null> => {
  const { language, log } = dispatch
  const form = await attempt(
    () => formFor(call, dispatch, language, filled),
    () => call,
    log,
  )
  if (!form.ok) return messagesOf(form, dispatch, { sent })
  if (form.result === null) return null
  return { kind: 'form', form: form.result, instead: async () => sentenceSaid(language.calls.formLate(), dispatch) }
}

/** The commands that only Discord has, of which help tells as of a word. */
const aboutOwn = (own: Pick<RegistrationText, 'ask' | 'help'>): readonly AboutWord[] =>
  (['ask', 'help'] as const).map((name) => ({
    words: [name],
    lines: own[name].examples.map((line) => ({ line, what: own[name].summary })),
  }))

/** What a line or a call asks for: help is said at once. What it throws is said. */
const readCall = async (read: () => Promise<string | Invocation>, dispatch: CallDispatch) => {
  const { commands, language, log } = dispatch
  return attempt(
    async () => {
      const call = await read()
      if (typeof call !== 'string') return call
      const about = () => [...language.help.about(), ...aboutOwn(language.registration)]
      const page = help(call, commands, { commands: language.commands, about })
      if (page === null || !page.ok) return page ?? parseLine(call, commands)
      return helpIn(page, await kitchenOfWhoever('', dispatch), language)
    },
    () => null,
    log,
  )
}

/**
 * Runs what somebody called, or shows the form for what the call lacks, and says what came of it. Never throws.
 *
 * @param read - the line or call; what it throws is said
 * @param typed - the line as it was typed, offered to be changed where it fails
 */
export async function saidTo(
  read: () => Promise<string | Invocation>,
  dispatch: CallDispatch,
  typed: LineOfCommand | null = null,
): Promise<CallRun> {
  const asked = await readCall(read, dispatch)
  if (!asked.ok) return messagesOf(asked, dispatch, { sent: typed })
  const call = asked.result
  if ('ok' in call) return messagesOf(call, dispatch, { sent: typed })
  return (await formSaid(call, dispatch, null, typed)) ?? run(call, dispatch, typed)
}

/** The rest of what a line was answered. Never throws. */
export async function saidMore(read: () => Promise<string>, dispatch: CallDispatch): Promise<SaidMessages> {
  const { commands, language, log } = dispatch
  const asked = await attempt(
    async () => parseLine(await read(), commands),
    () => null,
    log,
  )
  if (!asked.ok) return messagesOf(asked, dispatch)
  const { lead, outcome, shown } = await moreOf(asked.result, dispatch)
  if (!outcome.ok) return messagesOf(outcome, dispatch)
  if (lead === 'nothing') return sentenceSaid(language.more.nothing(), dispatch)
  return messagesOf(outcome, dispatch, { shown, ...(lead !== null && { lead: language.more[lead]() }) })
}

/** Opens a line in a form of one field, to be changed and sent. Never throws. */
export async function saidRetype(read: () => Promise<string>, dispatch: CallDispatch): Promise<CallRun> {
  const { language, userId, log } = dispatch
  const line = await attempt(read, () => null, log)
  if (!line.ok) return messagesOf(line, dispatch)
  const instead = async () => sentenceSaid(language.calls.formLate(), dispatch)
  return { kind: 'form', form: retypeForm(line.result, userId, language.retypeForm), instead }
}

/** Runs a line that a form was sent with, which no other form can answer: that is a press away. Never throws. */
export async function saidToTyped(line: string, dispatch: CallDispatch): Promise<SaidMessages> {
  const { commands } = dispatch
  const said = await saidTo(async () => line, dispatch, { line, path: pathTyped(line, commands) ?? HELP })
  return said.kind === 'messages' ? said : formOffered(parseLine(line, commands), dispatch)
}

/** Opens the form again that was sent before. Never throws. */
export async function saidAgain(read: () => Promise<SentForm>, dispatch: CallDispatch): Promise<CallRun> {
  const { commands, log } = dispatch
  const asked = await attempt(
    async () => {
      const sent = await read()
      return { sent, call: parseLine(sent.line, commands) }
    },
    () => null,
    log,
  )
  if (!asked.ok) return messagesOf(asked, dispatch)
  const { sent, call } = asked.result
  return (await formSaid(call, dispatch, sent.filled)) ?? run(call, dispatch, null)
}

/** Runs what a form was sent with, and offers it again where that fails. Never throws. */
export async function saidToForm(read: () => Promise<SentForm>, dispatch: CallDispatch): Promise<SaidMessages> {
  const { commands, log } = dispatch
  const asked = await attempt(
    async () => {
      const sent = await read()
      const { path, options } = parseLine(sent.line, commands)
      return { sent, call: { path, options: { ...options, ...sent.filled } } }
    },
    () => null,
    log,
  )
  if (!asked.ok) return messagesOf(asked, dispatch)
  return run(asked.result.call, dispatch, asked.result.sent)
}
