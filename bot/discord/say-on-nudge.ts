import type { APIMessageTopLevelComponent, ButtonInteraction, ModalSubmitInteraction } from 'discord.js'
import { buttonsIn } from './buttons-in.ts'
import { decodeCustomId } from './custom-id.ts'
import { editNudge, type NudgeEditing } from './press-nudge.ts'
import { type CallDispatch, type Said, zoneOf } from './said.ts'
import { speechIn } from './speech.ts'

/** The nudge's button: the one pressed, or the one that opened the form. */
function nudgeButton(customId: string, components: readonly APIMessageTopLevelComponent[]): string | null {
  const pressed = decodeCustomId(customId)
  const button = buttonsIn(components).find(({ custom_id: id }) => {
    const read = decodeCustomId(id)
    return read !== null && read.nudgeId !== null && (id === customId || read.line === pressed?.line)
  })
  return button?.custom_id ?? null
}

/** Where the button of a nudge led to this: the nudge says so. Never throws. */
export async function sayOnNudge(
  interaction: ButtonInteraction | ModalSubmitInteraction,
  work: Promise<Said>,
  dispatch: CallDispatch,
  editing: NudgeEditing,
): Promise<void> {
  const said = await work
  const { message, channelId } = interaction
  if (said.kind === 'form' || said.outcome === null || message === null || channelId === null) return
  const components = message.components.map((each) => each.toJSON()) as APIMessageTopLevelComponent[]
  const customId = nudgeButton(interaction.customId, components)
  if (customId === null) return
  const { userId, nowMs, language } = dispatch
  const { outcome } = said
  const speech = speechIn(language, await zoneOf(dispatch))
  await editNudge({ channelId, messageId: message.id, components, customId, userId, outcome, nowMs, speech }, editing)
}
