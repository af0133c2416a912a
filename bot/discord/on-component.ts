import type { ButtonInteraction, Interaction, ModalSubmitInteraction, StringSelectMenuInteraction } from 'discord.js'
import { readForm } from './form.ts'
import type { InTurn } from './in-turn.ts'
import { forEverybody } from './message-payload.ts'
import { keptLine, pressed } from './pressed.ts'
import { newPresses } from './presses.ts'
import { saidTo } from './said.ts'
import { sayOnNudge } from './say-on-nudge.ts'
import { shownAgain } from './shown-again.ts'
import type { InteractionDesk, Turn } from './turn.ts'
import type { Answered } from './wire.ts'
import { readZoneChoice } from './zone-choice.ts'

/** Answers buttons, choices and forms; each belongs to the person that it was made for. */
export const componentsFor = (
  { commands, language, now, log, rest }: InteractionDesk,
  inTurn: InTurn,
): ((interaction: Interaction, turn: Turn) => Promise<Answered>) => {
  const { calls } = language
  const presses = newPresses()
  const editing = { rest, inTurn, log }

  const run = async (interaction: ButtonInteraction, line: string, { dispatch, respond }: Turn): Promise<Answered> => {
    const work = saidTo(() => keptLine(line, dispatch), true, dispatch)
    try {
      return await respond(work)
    } finally {
      await sayOnNudge(interaction, work, dispatch, editing)
    }
  }

  const press = async (interaction: ButtonInteraction, turn: Turn): Promise<Answered> => {
    const { wire, dispatch, say } = turn
    const read = pressed(interaction.customId, dispatch.userId)
    if (read.kind === 'not_yours') return say(calls.notYours())
    if (read.kind === 'unknown') return say(calls.unknownButton())
    // What anybody may press, several may press at once.
    const button = `${interaction.message.id} ${interaction.customId} ${dispatch.userId}`
    if (!presses.begin(button, now())) return say(calls.twice())
    try {
      if (read.kind === 'line') return await run(interaction, read.line, turn)
      const components = interaction.message.components.map((each) => shownAgain(each.toJSON()))
      return await wire.message(forEverybody(components))
    } finally {
      presses.end(button, now())
    }
  }

  const submit = async (interaction: ModalSubmitInteraction, { dispatch, respond, say }: Turn): Promise<Answered> => {
    const read = pressed(interaction.customId, dispatch.userId)
    if (read.kind === 'not_yours') return say(calls.notYours())
    if (read.kind !== 'line') return say(calls.unknownButton())
    const work = saidTo(async () => readForm(read.line, interaction.components, commands), false, dispatch)
    try {
      return await respond(work)
    } finally {
      await sayOnNudge(interaction, work, dispatch, editing)
    }
  }

  const choose = async (
    { customId, values }: StringSelectMenuInteraction,
    { dispatch, respond, say }: Turn,
  ): Promise<Answered> => {
    const call = readZoneChoice(customId, values, dispatch.userId)
    if (call !== null) return respond(saidTo(async () => call, false, dispatch))
    return say(pressed(customId, dispatch.userId).kind === 'not_yours' ? calls.notYours() : calls.unknownButton())
  }

  return async (interaction, turn) => {
    if (interaction.isButton()) return press(interaction, turn)
    if (interaction.isModalSubmit()) return submit(interaction, turn)
    if (interaction.isStringSelectMenu()) return choose(interaction, turn)
    return turn.say(calls.unknownButton())
  }
}
