import { setTimeout as sleep } from 'node:timers/promises'
import { act } from './acts.ts'
import type { Desk } from './desk.ts'
import { Refusal } from './refusal.ts'
import { type Showing, showMessage } from './show.ts'

const QUIET_MS = 50
const MOST_WAITING_MS = 2000

/** Waits until the bot asks nothing more of Discord for a while, such as the change of another message. */
const calm = async ({ fake }: Desk): Promise<void> => {
  let seen = -1
  for (const endMs = performance.now() + MOST_WAITING_MS; performance.now() < endMs; ) {
    const count = fake.requests().length
    if (count === seen) return
    seen = count
    await sleep(QUIET_MS)
  }
}

const said = (error: unknown): string => {
  if (error instanceof Refusal) return error.message
  return `The stand-in itself failed: ${error instanceof Error ? error.stack : String(error)}`
}

/** Answers lines: what they say, every message that is new or changed, and whatever Discord would not have taken. */
export const answerer = (desk: Desk, showing: Showing) => {
  let faults = 0
  let wasRunning = desk.bot.isRunning()

  const newFaults = (): readonly string[] => {
    const found = desk.fake.faults().slice(faults)
    faults += found.length
    return found.map(
      ({ method, path, problems }) =>
        `!!! DISCORD WOULD REFUSE THIS: ${method} ${path}\n!!! ${problems.join('\n!!! ')}`,
    )
  }
  const ended = (): readonly string[] => {
    const isGone = wasRunning && !desk.bot.isRunning()
    wasRunning = desk.bot.isRunning()
    return isGone ? ['The bot has ended: log tells why, restart starts it again.'] : []
  }
  /** What has happened since the last line. */
  const news = async (): Promise<readonly string[]> => {
    await calm(desk)
    return [...desk.scene.news().map((message) => showMessage(message, showing)), ...newFaults(), ...ended()]
  }
  return async (line: string): Promise<string> => {
    const isCommand = /^\s*(?:\/|press|choose|fill)/i.test(line)
    const answer = await act(line, desk, showing).catch(said)
    const told = [...(answer === '' ? [] : [answer]), ...(await news().catch((error) => [said(error)]))]
    return told.length === 0 && isCommand ? 'Nothing happens that anybody sees.' : told.join('\n')
  }
}
