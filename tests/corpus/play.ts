import { cpSync, mkdtempSync, rmSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join, resolve } from 'node:path'
import { loadBot } from './bot-loaded.ts'
import { playInDiscord } from './in-discord.ts'
import { DATA, keptIn, playInTerminal } from './in-terminal.ts'
import type { Played } from './played.ts'
import { readSessions } from './sessions.ts'

// Plays every n-th session with the bot of one bundle, and writes what was said: BUNDLE OUT FROM STEP.
const [bundle = '', out = '', from = '0', step = '1'] = process.argv.slice(2)
const startBot = loadBot(resolve(bundle))
const place = mkdtempSync(join(tmpdir(), 'larderbell-corpus-'))
const outPath = resolve(out)
cpSync(join(import.meta.dirname, 'files'), join(place, 'kept'), { recursive: true })
process.chdir(place)

const played: Record<string, Played> = {}
for (const [index, session] of readSessions().entries()) {
  if (index % Number(step) !== Number(from)) continue
  const text80 = await playInTerminal(session, startBot, { width: 80, mode: 'chat' })
  const text44 = await playInTerminal(session, startBot, { width: 44, mode: 'ask' })
  const json = await playInTerminal(session, startBot, { width: 80, mode: 'json' })
  const kept = keptIn(DATA)
  const discord = session.isInDiscord ? await playInDiscord(session, startBot) : {}
  const keptInDiscord = session.isInDiscord ? keptIn(DATA) : {}
  played[session.name] = { text80, text44, json, discord, kept: { 0: kept }, keptInDiscord: { 0: keptInDiscord } }
}
// Its name is another one every time.
writeFileSync(outPath, JSON.stringify(played).replaceAll(place, '/tmp/place'))
process.chdir(tmpdir())
rmSync(place, { recursive: true, force: true })
process.exit(0)
