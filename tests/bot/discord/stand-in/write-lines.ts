import { setTimeout as sleep } from 'node:timers/promises'
import type { FakeMessage } from '../fake/world.ts'
import type { Desk } from './desk.ts'
import { readTarget } from './lines.ts'
import { Refusal } from './refusal.ts'

const PATIENCE_MS = 15_000
const LOOK_MS = 25

/** The bot's name behind an @ as Discord writes it once it is sent. */
const withMarks = (text: string, { fake: { bot } }: Desk): string =>
  text.replace(/@(\w+)/g, (typed, name) => (name.toLowerCase() === bot.name ? `<@${bot.id}>` : typed))

const send = async (text: string, desk: Desk, answered?: FakeMessage): Promise<string> => {
  const { fake, scene, bot } = desk
  if (!bot.isRunning()) throw new Refusal('The bot is not running: log tells why, restart starts it.')
  const before = scene.seenHere().length
  const marked = withMarks(text, desk)
  fake.write(scene.channel(), scene.user(), marked, answered)
  if (scene.room() !== null && answered === undefined && marked === text)
    return 'Everybody here reads it but the bot: name it with @ to ask it, or be in private.'
  for (const endMs = performance.now() + PATIENCE_MS; performance.now() < endMs; await sleep(LOOK_MS))
    if (scene.seenHere().length > before) return ''
  return 'The bot says nothing.'
}

export const write = async (text: string, desk: Desk): Promise<string> => {
  if (text === '') throw new Refusal(`Say what you write: write @${desk.fake.bot.name} 10 lemons, 1 l 95%`)
  return send(text, desk)
}

export const reply = async (typed: string, desk: Desk): Promise<string> => {
  const { number, words } = readTarget(typed, (known) => desk.scene.numbered(known) !== undefined)
  const answered = number === undefined ? undefined : desk.scene.numbered(number)
  if (!answered) throw new Refusal('Say which message you answer, and with what: reply 3 drier')
  if (answered.isDeleted) throw new Refusal(`Message ${number} is deleted.`)
  return send(words, desk, answered)
}
