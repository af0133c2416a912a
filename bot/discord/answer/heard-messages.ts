import type { Call } from '../../calls/call.ts'
import { callOfTexts } from '../../calls/call.ts'
import type { Invocation } from '../../calls/invocation.ts'
import { type Path, signatures } from '../../calls/signatures.ts'
import { lineOf } from '../../calls/write-line.ts'
import { byPath } from '../../chat/callable.ts'
import { ChatError } from '../../chat/chat-error.ts'
import type { Command } from '../../chat/command.ts'
import { parseLine } from '../../chat/grammar/grammar.ts'
import { ONLY_TYPED } from '../../chat/hear/exactly.ts'
import { hear } from '../../chat/hear/hear.ts'
import type { Heard } from '../../chat/hear/heard.ts'
import { personOf } from '../../chat/own-language.ts'
import type { Failure } from '../../chat/run/call-outcome.ts'
import { attempt } from '../../chat/run/execute.ts'
import { explain } from '../../chat/run/explain.ts'
import { HELP } from '../../chat/run/help-page.ts'
import { keepReply } from '../../chat/run/more.ts'
import { buttonIds } from '../buttons/button-ids.ts'
import { withUnsent } from '../nudges/unsent-reminders.ts'
import { jarNames } from '../show/jar-names.ts'
import { speechIn } from '../show/language-for-discord.ts'
import type { Button } from '../show/message-payload.ts'
import { LABEL_CHARACTERS } from '../show/message-payload.ts'
import { sentenceMessage } from '../show/to-messages.ts'
import { type CallDispatch, messagesOf, renderingFor, type SaidMessages } from './answer-messages.ts'

const invocationIn = (line: string, { commands }: CallDispatch): Invocation | null => {
  try {
    return line.startsWith('/') ? parseLine(line, commands) : null
  } catch (error) {
    if (error instanceof ChatError) return null
    throw error
  }
}

const callOf = ({ path, options }: Invocation): Call | null =>
  Object.hasOwn(signatures, path) ? callOfTexts(path as Path, Object.entries(options)) : null

/** Buttons that run lines for whoever asked, each with its line on it; nothing for those that cannot be kept. */
async function buttonsFor(
  lines: readonly string[],
  dispatch: CallDispatch,
  label?: string,
): Promise<readonly Button[]> {
  const calls = lines.flatMap((line) => {
    const call = invocationIn(line, dispatch)
    const valued = call === null ? null : callOf(call)
    return valued === null ? [] : [valued]
  })
  const { userId: owner, store, log } = dispatch
  const ids = await attempt(
    () => buttonIds(calls, { owner, nudgeId: null }, store),
    () => null,
    log,
  )
  if (!ids.ok) return []
  return calls.flatMap((call, at) => {
    const line = lineOf(call)
    const customId = ids.result.get(line)
    // What is thrown away, erased or shown to others says so on its button.
    const text = ONLY_TYPED.includes(call.command) ? line : (label ?? line)
    const short = text.length > LABEL_CHARACTERS ? `${text.slice(0, LABEL_CHARACTERS - 1)}…` : text
    return customId === undefined ? [] : [{ label: short, customId, isMain: at === 0 }]
  })
}

/** A sentence with buttons under it. */
async function sentenceWith(text: string, buttons: readonly Button[], dispatch: CallDispatch): Promise<SaidMessages> {
  const speech = speechIn(dispatch.language, dispatch.assumedZone)
  const byName = jarNames((await personOf(dispatch)).jars)
  const message = sentenceMessage(byName(text), renderingFor(dispatch, new Map()), speech, buttons)
  return { kind: 'messages', messages: [message], outcome: null, isPublic: false }
}

const sentenceOf = (failure: Failure, { language, assumedZone }: CallDispatch): string =>
  explain(failure, { words: speechIn(language, assumedZone).words, commands: language.commands })

/** What somebody said in their own words, as messages: how it was read, the answer, or a question whose answers are buttons. */
export async function saidToSentence(line: string, dispatch: CallDispatch): Promise<SaidMessages> {
  const { also = [], ...heard } = await hear(line, dispatch)
  const first = await saidOf(heard, dispatch)
  const others: SaidMessages[] = []
  for (const each of also) others.push(await saidOf(each, dispatch))
  // Deeds that were told in one sentence are answered one below the other.
  return { ...first, messages: [...first.messages, ...others.flatMap(({ messages }) => messages)] }
}

async function saidOf(heard: Heard, dispatch: CallDispatch): Promise<SaidMessages> {
  const { outcome, read, choices, shown, lead } = heard
  const { console, more } = dispatch.language
  if (!outcome.ok && outcome.error.code === 'not_understood') {
    const said = new Map(dispatch.language.help.said().map((each) => [each.said, each.line]))
    const buttons = await Promise.all(
      choices.map((each) => {
        const line = said.get(each)
        return line === undefined ? buttonsFor([each], dispatch) : buttonsFor([line], dispatch, each)
      }),
    )
    return sentenceWith(sentenceOf(outcome, dispatch), buttons.flat(), dispatch)
  }
  if (!outcome.ok && choices.length > 0) {
    return sentenceWith(sentenceOf(outcome, dispatch), await buttonsFor(choices, dispatch), dispatch)
  }
  if (!('reply' in outcome)) return messagesOf(outcome, dispatch)
  if (lead === 'nothing') return sentenceWith(more.nothing(), [], dispatch)
  const readAs = read === null ? null : jarNames((await personOf(dispatch)).jars)(console.readAs(read))
  const led = lead === undefined ? readAs : more[lead]()
  const { outcome: whole, zone } = await withUnsent(outcome, dispatch)
  await keepReply(whole, dispatch)
  return messagesOf(whole, dispatch, {
    zone,
    ...(shown !== undefined && { shown }),
    ...(led !== null && { lead: led }),
  })
}

/** Where others read along: what is of a person's own jars stands behind one button for each deed, which answers them alone. */
export const privatelyOffered = async (calls: readonly Invocation[], dispatch: CallDispatch): Promise<SaidMessages> => {
  const { discord } = dispatch.language
  // One says that it answers in private; of several each says what it does.
  const label = calls.length === 1 ? discord.answerPrivately() : undefined
  const buttons = await buttonsFor(
    calls.map((call) => lineOf(call)),
    dispatch,
    label,
  )
  return sentenceWith(discord.ownJars(), buttons, dispatch)
}

/** What is of one person alone, or is written down. */
export const isPersonal = ({ path, options, isOfJar }: Invocation, commands: readonly Command[]): boolean =>
  options.jar !== undefined || isOfJar === true || (path !== HELP && byPath(path, commands)?.isOfLineAlone !== true)
