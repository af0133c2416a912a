import type { APIModalInteractionResponseCallbackData } from 'discord.js'
import { attempt, execute } from '../chat/execute.ts'
import { parseLine } from '../chat/grammar.ts'
import { help } from '../chat/help.ts'
import type { Invocation } from '../chat/invocation.ts'
import type { KeptForm } from './again.ts'
import type { Filled } from './form.ts'
import { formFor } from './form-for.ts'
import { withKept } from './kept-nudges.ts'
import { type CallDispatch, messagesOf, type SaidMessages, sentenceSaid } from './said-messages.ts'

/** What is said to a call: messages, or a form before it can run, with what is said where a form comes too late. */
export type Said =
  | SaidMessages
  | {
      readonly kind: 'form'
      readonly form: APIModalInteractionResponseCallbackData
      readonly instead: () => Promise<SaidMessages>
    }

/** A form that was only opened, and what was refused, changed nothing. */
export const hasDone = (said: Said): boolean => said.kind === 'messages' && said.outcome?.ok !== false

const run = async (call: Invocation, dispatch: CallDispatch, sent: KeptForm | null): Promise<SaidMessages> =>
  messagesOf(await withKept(await execute(call, dispatch), dispatch), dispatch, sent)

/** The call's form, or null where it needs none; what it throws is said. */
const formSaid = async (call: Invocation, dispatch: CallDispatch, filled: Filled | null): Promise<Said | null> => {
  const { language, log } = dispatch
  const form = await attempt(
    () => formFor(call, dispatch, language, filled),
    () => call,
    log,
  )
  if (!form.ok) return messagesOf(form, dispatch)
  if (form.result === null) return null
  return { kind: 'form', form: form.result, instead: async () => sentenceSaid(language.calls.formLate(), dispatch) }
}

/**
 * Runs what somebody called, or shows the form for what the call lacks, and says what came of it. Never throws.
 *
 * @param read - the line or call; what it throws is said
 */
export async function saidTo(read: () => Promise<string | Invocation>, dispatch: CallDispatch): Promise<Said> {
  const { commands, language, log } = dispatch
  const readCall = async () => {
    const call = await read()
    if (typeof call !== 'string') return call
    return help(call, commands, language.commands) ?? parseLine(call, commands)
  }
  const asked = await attempt(readCall, () => null, log)
  if (!asked.ok) return messagesOf(asked, dispatch)
  const call = asked.result
  if ('ok' in call) return messagesOf(call, dispatch)
  return (await formSaid(call, dispatch, null)) ?? run(call, dispatch, null)
}

/** Opens the form again that was sent before. Never throws. */
export async function saidAgain(read: () => Promise<KeptForm>, dispatch: CallDispatch): Promise<Said> {
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
export async function saidToForm(read: () => Promise<KeptForm>, dispatch: CallDispatch): Promise<SaidMessages> {
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
