import type {
  APIMessageTopLevelComponent,
  ButtonInteraction,
  Interaction,
  ModalSubmitInteraction,
  StringSelectMenuInteraction,
} from 'discord.js'
import { sentenceSaid } from '../answer/answer-messages.ts'
import type { Answered } from '../answer/interaction-responses.ts'
import { hasDone, saidAgain, saidMore, saidRetype, saidTo, saidToForm, saidToTyped } from '../answer/run-call.ts'
import { showToAll } from '../answer/show-to-all.ts'
import { readForm } from '../forms/form.ts'
import { formAgain } from '../forms/reopen-form.ts'
import { readTypedLine } from '../forms/retype.ts'
import { readZoneChoice } from '../suggest/zone-choice.ts'
import { keptLine, type Pressed, pressed } from './decode-button.ts'
import type { Presses, PressOf } from './ignore-double-press.ts'
import type { InteractionContext, InteractionDesk } from './interaction-context.ts'

type Runs = Extract<Pressed, { readonly kind: 'line' | 'again' | 'retype' | 'more' }>

/** Answers buttons, choices and forms; each belongs to the person that it was made for. */
export const componentsFor = (
  { commands, now, api }: InteractionDesk,
  presses: Presses,
): ((interaction: Interaction, turn: InteractionContext) => Promise<Answered>) => {
  const run = async (press: PressOf, read: Runs, { dispatch, respond }: InteractionContext): Promise<Answered> => {
    const act = () => {
      if (read.kind === 'again') return saidAgain(() => formAgain(read.line, dispatch), dispatch)
      const line = () => keptLine(read.line, dispatch)
      if (read.kind === 'more') return saidMore(line, dispatch)
      return read.kind === 'retype' ? saidRetype(line, dispatch) : saidTo(line, dispatch)
    }
    // What is only read may be read twice.
    const acted = presses.once(press, now(), act, read.kind === 'more' ? () => false : hasDone)
    const work = acted.then((once) => {
      // The answer goes out now: what is written on the reminder afterwards may take its time.
      once?.answered(now())
      return once?.result ?? sentenceSaid(dispatch.language.calls.twice(), dispatch)
    })
    return respond(work)
  }

  const show = async (
    interaction: ButtonInteraction,
    press: PressOf,
    { wire, dispatch, say }: InteractionContext,
  ): Promise<Answered> => {
    const { calls, discord } = dispatch.language
    const first = await presses.once(press, now(), async () => true, Boolean)
    if (first === null) return say(calls.twice())
    try {
      const components = interaction.message.components.map((each) => each.toJSON()) as APIMessageTopLevelComponent[]
      return await showToAll(components, { wire, api, picturesGone: discord.picturesGone() })
    } finally {
      first.answered(now())
    }
  }

  const press = async (interaction: ButtonInteraction, turn: InteractionContext): Promise<Answered> => {
    const { dispatch, say } = turn
    const { calls } = dispatch.language
    const read = pressed(interaction.customId, dispatch.userId)
    if (read.kind === 'not_yours') return say(calls.notYours())
    if (read.kind === 'unknown' || read.kind === 'typed') return say(calls.unknownButton())
    // What anybody may press, several may press at once.
    const { userId } = dispatch
    const pressOf = { button: `${interaction.message.id} ${interaction.customId} ${userId}`, userId }
    return read.kind === 'show' ? show(interaction, pressOf, turn) : run(pressOf, read, turn)
  }

  const submit = async (
    interaction: ModalSubmitInteraction,
    { dispatch, respond, say }: InteractionContext,
  ): Promise<Answered> => {
    const { calls } = dispatch.language
    const read = pressed(interaction.customId, dispatch.userId)
    if (read.kind === 'not_yours') return say(calls.notYours())
    if (read.kind === 'typed') {
      const typed = saidToTyped(readTypedLine(interaction.components), dispatch)
      presses.otherwise(dispatch.userId, typed.then(hasDone))
      return respond(typed)
    }
    if (read.kind !== 'line') return say(calls.unknownButton())
    const sent = async () => readForm(read.line, interaction.components, commands)
    const work = saidToForm(sent, dispatch)
    presses.otherwise(dispatch.userId, work.then(hasDone))
    return respond(work)
  }

  const choose = async (
    { customId, values }: StringSelectMenuInteraction,
    { dispatch, respond, say }: InteractionContext,
  ): Promise<Answered> => {
    const { calls } = dispatch.language
    const call = readZoneChoice(customId, values, dispatch.userId)
    if (call !== null) {
      const work = saidTo(async () => call, dispatch)
      presses.otherwise(dispatch.userId, work.then(hasDone))
      return respond(work)
    }
    return say(pressed(customId, dispatch.userId).kind === 'not_yours' ? calls.notYours() : calls.unknownButton())
  }

  return async (interaction, turn) => {
    if (interaction.isButton()) return press(interaction, turn)
    if (interaction.isModalSubmit()) return submit(interaction, turn)
    if (interaction.isStringSelectMenu()) return choose(interaction, turn)
    return turn.say(turn.dispatch.language.calls.unknownButton())
  }
}
