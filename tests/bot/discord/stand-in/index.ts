import { mkdirSync, mkdtempSync, rmSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join, resolve } from 'node:path'
import { createInterface } from 'node:readline'
import { parseZone } from '../../../../core/quantity/time/parse-zone.ts'
import { startFake } from '../fake/fake-discord.ts'
import { answerer } from './answer-line.ts'
import { botProcess } from './bot-process.ts'
import { type Desk, restart } from './desk.ts'
import { idFor, keepAheadMs, readAheadMs } from './kept-world.ts'
import { youAre } from './place-lines.ts'
import { newScene } from './scene.ts'

const QUIT = /^\s*\/?(?:quit|exit)\s*$/i

/** Ends with a sentence about what was given at the start. */
const giveUp = (sentence: string): never => {
  process.stderr.write(`${sentence}\n`)
  process.exit(2)
}

const zoneOf = (typed: string): string => {
  try {
    return parseZone(typed)
  } catch {
    return giveUp(`LARDERBELL_ZONE cannot be “${typed}”; give a zone such as Europe/Rome.`)
  }
}

const folderOf = (named: string | undefined): string => {
  try {
    const folder = named === undefined ? mkdtempSync(join(tmpdir(), 'larderbell-stand-in-')) : resolve(named)
    mkdirSync(join(folder, 'files'), { recursive: true })
    return folder
  } catch (error) {
    return giveUp(`The folder cannot be used: ${(error as Error).message}.`)
  }
}

// As the bot does in Discord where no zone is set.
const zone = zoneOf(process.env.LARDERBELL_ZONE?.trim() || 'UTC')
const [named] = process.argv.slice(2)
const folder = folderOf(named)
const say = (text: string): void => {
  process.stdout.write(`${text}\n\n`)
}

const fake = await startFake({ nowMs: Date.now, idFor })
const bot = botProcess(fake, folder, zone)
// However this ends, no bot is left behind.
process.once('exit', () => {
  bot.kill()
  if (named === undefined) rmSync(folder, { recursive: true, force: true, maxRetries: 5 })
})
for (const signal of ['SIGINT', 'SIGTERM', 'SIGHUP'] as const) process.once(signal, () => process.exit(1))
process.stdout.on('error', () => process.exit(1))
process.on('uncaughtException', (error) => say(`The stand-in itself failed: ${error.stack}`))

const scene = newScene(fake)
const desk: Desk = { fake, scene, bot, zone, form: null, aheadMs: 0, keepAhead: (ms) => keepAheadMs(folder, ms) }
const answer = answerer(desk, { scene, zone, files: join(folder, 'files') })

say('This is no Discord, but the bot believes it is. help tells what you can type.')
say(`${await restart(desk, readAheadMs(folder))} ${youAre(desk)}`)
const news = await answer('')
if (news !== '') say(news)

const isTyped = process.stdin.isTTY === true && process.stdout.isTTY === true
const lines = createInterface({ input: process.stdin, ...(isTyped && { output: process.stdout }), terminal: isTyped })
const prompt = (): void => {
  if (!isTyped) return
  lines.setPrompt(`${scene.user().name}, ${scene.place()}> `)
  lines.prompt()
}
lines.on('SIGINT', () => lines.close())
prompt()
for await (const line of lines) {
  if (QUIT.test(line)) break
  if (!isTyped && line.trim() !== '') process.stdout.write(`> ${line}\n`)
  const text = await answer(line)
  if (text !== '') say(text)
  prompt()
}
lines.close()
await bot.stop()
await fake.stop()
process.exit()
