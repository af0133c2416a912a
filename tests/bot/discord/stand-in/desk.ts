import type { Answer } from '../fake/answer.ts'
import type { FakeDiscord } from '../fake/fake-discord.ts'
import type { BotProcess } from './bot-process.ts'
import type { Scene } from './scene.ts'
import { shownMoment } from './show.ts'

/** What the lines work with. */
export interface Desk {
  readonly fake: FakeDiscord
  readonly scene: Scene
  readonly bot: BotProcess
  readonly zone: string
  /** The form that is open. */
  form: Answer | null
  /** How far the bot's clock and Discord's are ahead. */
  aheadMs: number
  /** Keeps how far that is for the next time. */
  readonly keepAhead: (aheadMs: number) => void
}

export const nowMs = ({ aheadMs }: Desk): number => Date.now() + aheadMs

export const sayTime = (desk: Desk): string => `It is ${shownMoment(nowMs(desk), desk.zone, 'F')} (${desk.zone}).`

/** Starts the bot again, its clock and Discord's so much later. */
export const restart = async (desk: Desk, laterMs = 0): Promise<string> => {
  const { bot, fake } = desk
  await bot.stop()
  desk.form = null
  desk.aheadMs += laterMs
  desk.keepAhead(desk.aheadMs)
  fake.clock.advance(laterMs)
  const isBack = await bot.start(desk.aheadMs)
  return isBack ? sayTime(desk) : `${sayTime(desk)} The bot does not come back: log tells why, restart tries again.`
}
