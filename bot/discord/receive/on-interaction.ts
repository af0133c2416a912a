import type { AutocompleteInteraction, Interaction } from 'discord.js'
import { queueByKey } from '../../../store/queue.ts'
import { inOwnLanguage } from '../../chat/own-language.ts'
import { emergencyIn } from '../../chat/run/emergency.ts'
import { trace } from '../../chat/trace.ts'
import { messagesOf } from '../answer/answer-messages.ts'
import { saidToSentence } from '../answer/heard-messages.ts'
import type { Answered } from '../answer/interaction-responses.ts'
import { hasDone, saidTo } from '../answer/run-call.ts'
import { typedInForm } from '../forms/form.ts'
import { redrawNudges } from '../nudges/redraw-nudges.ts'
import { atMost } from '../rest/timeout.ts'
import { ASK } from '../suggest/ask-command.ts'
import { suggest } from '../suggest/autocomplete.ts'
import { callOf, helpLine, lineTyped, pathOf, typedFor, typedIn } from './call-of.ts'
import { newPresses } from './ignore-double-press.ts'
import {
  type InteractionContext,
  type InteractionDesk,
  mayHaveRecorded,
  nameOf,
  turnOf,
} from './interaction-context.ts'
import { componentsFor } from './on-component.ts'
import { hearMessage, type MessageForBot } from './on-message.ts'
import { newRate } from './rate-limit.ts'

export interface Interactions {
  /** Answers it. Never throws, and nobody waits for anybody else. */
  readonly handle: (interaction: Interaction) => void
  /** Answers a message that is for the bot. Never throws. */
  readonly hear: (message: MessageForBot, botId: string) => void
  /** From now on everything is answered with a sentence; resolves when what is open has been answered, or after `mostMs`. */
  readonly stop: (mostMs: number) => Promise<void>
}

/** What a person has typed into it. */
const typedOf = (interaction: Interaction): string => {
  if (interaction.isChatInputCommand()) return typedIn(interaction)
  return interaction.isModalSubmit() ? typedInForm(interaction.components) : ''
}

/** Answers slash commands, completions, buttons, choices and forms. */
export const interactionsFor = (desk: InteractionDesk): Interactions => {
  const { commands, after, log } = desk
  const rate = newRate()
  const presses = newPresses()
  const { inTurn } = queueByKey()
  const answerComponent = componentsFor(desk, presses)
  const open = new Set<Promise<void>>()
  let isStopping = false

  const complete = async (
    interaction: AutocompleteInteraction,
    { wire, dispatch }: InteractionContext,
  ): Promise<Answered> => {
    const { name, value } = interaction.options.getFocused(true)
    const typing = { path: pathOf(interaction), option: name, typed: value, jar: typedFor(interaction, 'jar') }
    return wire.choices(isStopping ? [] : await suggest(typing, dispatch, dispatch.language.suggestions))
  }

  const answer = async (interaction: Interaction): Promise<Answered> => {
    const own = await inOwnLanguage({ ...desk, userId: interaction.user.id })
    const turn = turnOf(interaction, own, inTurn)
    const { dispatch, respond, say } = turn
    const { calls } = dispatch.language
    if (interaction.isAutocomplete()) return complete(interaction, turn)
    // Somebody harmed is answered also where nothing else is.
    const emergency = await emergencyIn(typedOf(interaction), dispatch)
    if (emergency !== null) return respond(messagesOf(emergency, dispatch))
    if (isStopping) return say(calls.stopping())
    const seconds = rate.take(dispatch.userId, dispatch.nowMs)
    if (seconds > 0) return say(calls.tooFast({ seconds }))
    if (!interaction.isChatInputCommand()) return answerComponent(interaction, turn)
    if (pathOf(interaction) === ASK) {
      const work = saidToSentence(typedIn(interaction), dispatch)
      presses.otherwise(dispatch.userId, work.then(hasDone))
      return respond(work)
    }
    const read = async () => helpLine(interaction) ?? callOf(interaction, commands)
    const work = saidTo(read, dispatch, lineTyped(interaction))
    presses.otherwise(dispatch.userId, work.then(hasDone))
    return respond(work)
  }

  const guarded = async (interaction: Interaction): Promise<void> => {
    try {
      if ((await answer(interaction)) === 'too_late') log(`${nameOf(interaction)}: answered too late`)
    } catch (error) {
      log(`${nameOf(interaction)}: ${trace(error)}`)
    }
  }

  const heard = async (message: MessageForBot, botId: string): Promise<void> => {
    const said = await hearMessage(message, botId, { desk, rate, isStopping: () => isStopping })
    if (said !== null && mayHaveRecorded(said)) await redrawNudges(message.author.id, message.id, { ...desk, inTurn })
  }

  return {
    handle: (interaction) => {
      const work = guarded(interaction).finally(() => open.delete(work))
      open.add(work)
    },
    hear: (message, botId) => {
      const work = heard(message, botId).finally(() => open.delete(work))
      open.add(work)
    },
    stop: async (mostMs) => {
      isStopping = true
      await atMost(mostMs, Promise.all(open), after)
    },
  }
}
