import type { APIMessageTopLevelComponent, ButtonInteraction, ModalSubmitInteraction } from 'discord.js'
import { attempt } from '../../chat/execute.ts'
import type { NudgeButton } from '../forms/form.ts'
import { formAgain, opensAgain } from '../forms/reopen-form.ts'
import { decodeCustomId } from '../receive/custom-id.ts'
import type { Said } from '../receive/run-call.ts'
import { type CallDispatch, zoneOf } from '../show/answer-messages.ts'
import { speechIn } from '../show/language-for-discord.ts'
import { buttonsIn } from './buttons-in.ts'
import { editNudge, type NudgeEditing, redrawNudge, takenBackText } from './mark-nudge-answered.ts'
import { type Behind, isTrace, traceIn } from './nudge-undo.ts'
import { nudgeTakenBack } from './restore-nudge.ts'

/** The nudge's button: the one pressed, or the one that opened the form. */
function nudgeButton(customId: string, components: readonly APIMessageTopLevelComponent[]): string | null {
  const pressed = decodeCustomId(customId)
  const button = buttonsIn(components).find(({ custom_id: id }) => {
    const read = decodeCustomId(id)
    return (
      read !== null &&
      read.nudgeId !== null &&
      !isTrace(read.nudgeId) &&
      (id === customId || read.line === pressed?.line)
    )
  })
  return button?.custom_id ?? null
}

/** The nudge that a form was opened for before it was opened again by a button of this message. */
async function nudgeBefore(
  components: readonly APIMessageTopLevelComponent[],
  dispatch: CallDispatch,
): Promise<NudgeButton | null> {
  const lines = buttonsIn(components).flatMap(({ custom_id: id }) => decodeCustomId(id)?.line ?? [])
  const line = lines.find(opensAgain)
  if (line === undefined) return null
  const kept = await attempt(
    () => formAgain(line, dispatch),
    () => null,
    dispatch.log,
  )
  return kept.ok ? kept.result.nudge : null
}

type Answered = Pick<ButtonInteraction | ModalSubmitInteraction, 'customId' | 'channelId' | 'message'>

/** The button of a nudge that led to this; null where none did. Never throws. */
export async function nudgeBehind(interaction: Answered, dispatch: CallDispatch): Promise<Behind | null> {
  const { message, channelId } = interaction
  if (message === null || channelId === null) return null
  const components = message.components.map((each) => each.toJSON()) as APIMessageTopLevelComponent[]
  const customId = nudgeButton(interaction.customId, components)
  if (customId !== null) return { button: { channelId, messageId: message.id, customId }, components }
  const button = await nudgeBefore(components, dispatch)
  return button === null ? null : { button, components: null }
}

/** Where the button of a nudge led to this: the nudge says so. Never throws. */
export async function sayOnNudge(
  behind: Promise<Behind | null>,
  work: Promise<Said>,
  dispatch: CallDispatch,
  editing: NudgeEditing,
): Promise<void> {
  const [nudge, said] = [await behind, await work]
  if (nudge === null || said.kind === 'form' || said.outcome === null) return
  const { userId, nowMs, language } = dispatch
  const { outcome } = said
  const speech = speechIn(language, await zoneOf(dispatch))
  await editNudge({ ...nudge.button, components: nudge.components, userId, outcome, nowMs, speech }, editing)
}

/** What taking back came to where it did take something back. */
const TAKEN_BACK: readonly string[] = ['jar_undone', 'jar_gone', 'jar_all_undone']

/** Where a button took back what a press on a nudge had recorded: the nudge says so and asks again. Never throws. */
export async function takeBackOnNudge(
  nudgeId: string | null,
  work: Promise<Said>,
  dispatch: CallDispatch,
  editing: NudgeEditing,
): Promise<void> {
  const said = await work
  if (nudgeId === null || !isTrace(nudgeId) || said.kind === 'form' || !said.outcome?.ok) return
  const { reply } = said.outcome
  if (!TAKEN_BACK.includes(reply.headline.key)) return
  const kept = await attempt(
    async () => traceIn(await dispatch.store.read(dispatch.userId), nudgeId),
    () => null,
    dispatch.log,
  )
  if (!kept.ok || kept.result === null) return
  const { result: trace } = kept
  const speech = speechIn(dispatch.language, await zoneOf(dispatch))
  const text = takenBackText(reply, { ...dispatch, speech })
  await redrawNudge({ ...trace.button, components: null }, (shown) => nudgeTakenBack(shown, trace, text), editing)
}
