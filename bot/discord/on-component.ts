import type {
  APIMessageTopLevelComponent,
  ButtonInteraction,
  Interaction,
  ModalSubmitInteraction,
  StringSelectMenuInteraction,
} from 'discord.js'
import { formAgain } from './again.ts'
import { readForm } from './form.ts'
import type { InTurn } from './in-turn.ts'
import { keptLine, type Pressed, pressed } from './pressed.ts'
import { newPresses } from './presses.ts'
import { type Said, saidAgain, saidTo, saidToForm } from './said.ts'
import { sentenceSaid } from './said-messages.ts'
import { nudgeBehind, sayOnNudge } from './say-on-nudge.ts'
import { showToAll } from './show-to-all.ts'
import type { InteractionDesk, Turn } from './turn.ts'
import type { Answered } from './wire.ts'
import { readZoneChoice } from './zone-choice.ts'

type Runs = Extract<Pressed, { readonly kind: 'line' | 'again' }>

/** A form that was only opened, and what was refused, changed nothing. */
const hasDone = (said: Said): boolean => said.kind === 'messages' && said.outcome?.ok !== false

/** Answers buttons, choices and forms; each belongs to the person that it was made for. */
export const componentsFor = (
  { commands, language, now, log, rest, api }: InteractionDesk,
  inTurn: InTurn,
): ((interaction: Interaction, turn: Turn) => Promise<Answered>) => {
  const { calls, discord } = language
  const presses = newPresses()
  const editing = { rest, inTurn, log }

  const run = async (
    interaction: ButtonInteraction,
    button: string,
    { kind, line }: Runs,
    { dispatch, respond }: Turn,
  ): Promise<Answered> => {
    const act = () =>
      kind === 'again'
        ? saidAgain(() => formAgain(line, dispatch), dispatch)
        : saidTo(() => keptLine(line, dispatch), dispatch)
    const acted = presses.once(button, now(), act, hasDone)
    const work = acted.then((said) => said ?? sentenceSaid(calls.twice(), dispatch))
    try {
      return await respond(work)
    } finally {
      await sayOnNudge(nudgeBehind(interaction, dispatch), work, dispatch, editing)
      if ((await acted) !== null) presses.answered(button, now())
    }
  }

  const show = async (interaction: ButtonInteraction, button: string, { wire, say }: Turn): Promise<Answered> => {
    const isFirst = await presses.once(button, now(), async () => true, Boolean)
    if (isFirst === null) return say(calls.twice())
    try {
      const components = interaction.message.components.map((each) => each.toJSON()) as APIMessageTopLevelComponent[]
      return await showToAll(components, { wire, api, picturesGone: discord.picturesGone() })
    } finally {
      presses.answered(button, now())
    }
  }

  const press = async (interaction: ButtonInteraction, turn: Turn): Promise<Answered> => {
    const { dispatch, say } = turn
    const read = pressed(interaction.customId, dispatch.userId)
    if (read.kind === 'not_yours') return say(calls.notYours())
    if (read.kind === 'unknown') return say(calls.unknownButton())
    // What anybody may press, several may press at once.
    const button = `${interaction.message.id} ${interaction.customId} ${dispatch.userId}`
    return read.kind === 'show' ? show(interaction, button, turn) : run(interaction, button, read, turn)
  }

  const submit = async (interaction: ModalSubmitInteraction, { dispatch, respond, say }: Turn): Promise<Answered> => {
    const read = pressed(interaction.customId, dispatch.userId)
    if (read.kind === 'not_yours') return say(calls.notYours())
    if (read.kind !== 'line') return say(calls.unknownButton())
    const nudge = nudgeBehind(interaction, dispatch)
    const sent = async () => {
      const form = readForm(read.line, interaction.components, commands)
      return { ...form, nudge: (await nudge)?.button ?? null }
    }
    const work = saidToForm(sent, dispatch)
    try {
      return await respond(work)
    } finally {
      await sayOnNudge(nudge, work, dispatch, editing)
    }
  }

  const choose = async (
    { customId, values }: StringSelectMenuInteraction,
    { dispatch, respond, say }: Turn,
  ): Promise<Answered> => {
    const call = readZoneChoice(customId, values, dispatch.userId)
    if (call !== null) return respond(saidTo(async () => call, dispatch))
    return say(pressed(customId, dispatch.userId).kind === 'not_yours' ? calls.notYours() : calls.unknownButton())
  }

  return async (interaction, turn) => {
    if (interaction.isButton()) return press(interaction, turn)
    if (interaction.isModalSubmit()) return submit(interaction, turn)
    if (interaction.isStringSelectMenu()) return choose(interaction, turn)
    return turn.say(calls.unknownButton())
  }
}
