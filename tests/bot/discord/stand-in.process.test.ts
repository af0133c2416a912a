import { spawn } from 'node:child_process'
import { once } from 'node:events'
import { readdirSync } from 'node:fs'
import { readFile } from 'node:fs/promises'
import { join } from 'node:path'
import { expect, it } from 'vitest'
import { inFolder } from '../../store/in-folder.ts'
import { startFake } from './fake/fake-discord.ts'
import { answerer } from './stand-in/answer-line.ts'
import { readFields, readMoment, readSpan } from './stand-in/lines.ts'
import { newScene } from './stand-in/scene.ts'

const root = join(import.meta.dirname, '..', '..', '..')
const PATIENCE_MS = 60_000

/** Pipes lines through `npm run stand-in`; what follows each of them, and the exit code. */
const pipe = async (lines: readonly string[], folder: string) => {
  const { scripts } = JSON.parse(await readFile(join(root, 'package.json'), 'utf8'))
  const [, ...argv] = (scripts['stand-in'] as string).split(' ')
  const env = { ...process.env, LARDERBELL_ZONE: 'Europe/Rome', TMPDIR: folder }
  // A group of its own, so that its bot ends with it whatever happens.
  const child = spawn(process.execPath, argv, { cwd: root, env, detached: true, stdio: ['pipe', 'pipe', 'inherit'] })
  let said = ''
  child.stdout.setEncoding('utf8').on('data', (text) => {
    said += text
  })
  const closed = once(child, 'close')
  const late = setTimeout(() => process.kill(-child.pid!, 'SIGKILL'), PATIENCE_MS)
  child.stdin.end(lines.join('\n'))
  const [code] = await closed
  clearTimeout(late)
  const [greeting = '', ...answers] = said.split(/^> .*\n/m)
  return { code, greeting, answers }
}

it('lets one try the bot without Discord, line by line', { timeout: 2 * PATIENCE_MS }, () =>
  inFolder(async (folder) => {
    const lines = [
      '/jar start name:lemon of:10 lemons spirit:1 l 95%',
      '/reminders place:here',
      '/jar list',
      'type /jar show jar:le',
      '/jar start lemon',
      'pres Shaken',
      'until tomorrow 09:00',
      'press shaken',
      '/jar taste jar:lemon',
      'fill rating=4; note="sharp; dry"',
      'as sorrel',
      'press 1 Undo',
      'write 10 lemons, 1 l 95%',
      'write @Larderbell 10 lemons, 1 l 95%',
      'reply 8 drier',
      'in private',
      'a litre of vodka, how many sloes?',
      'quit',
      '/jar list',
    ]
    const { code, greeting, answers } = await pipe(lines, folder)
    expect(code).toBe(0)
    expect(greeting).toContain('You are wren, in #shelf.')
    expect(answers).toHaveLength(lines.length - 2)
    const [
      started,
      here,
      list,
      offered,
      unnamed,
      unknown,
      morning,
      pressed,
      form,
      filled,
      sorrel,
      refused,
      ...written
    ] = answers
    expect(started).toMatch(/^── 1 · only wren sees it\n\*\*Lemon is started[\s\S]*strain from \d+ \w+ 20\d\d to/)
    expect(started).toContain('[Undo] [More] [Show everybody]\n  choose (')
    expect(here).toContain('this channel')
    expect(list).toMatch(/ {2}picture: \S+\/files\/\d-larderbell-shelf\.png \(One jar/)
    expect(offered).toMatch(/^ {2}offered: lemon \(sends #\w+\)\n/)
    expect(unnamed).toContain('In Discord every option has its name; “lemon” has none.')
    expect(unknown).toContain('Did you mean press?')
    expect(morning).toMatch(
      /at 09:00 \(Europe\/Rome\)\.\n── \d+ · everybody in #shelf sees it\n@wren\n\*\*Shake lemon\.\*\*/,
    )
    expect(morning).toContain('buttons: [Shaken]')
    expect(pressed).toMatch(/── \d+ · everybody in #shelf sees it · edited\n[\s\S]*✓ Lemon is shaken\. @wren/)
    expect(form).toMatch(/^── a form opens for wren: Tasting: lemon\n {2}rating= /)
    expect(filled).toMatch(/4 of 5[\s\S]*“sharp; dry”/)
    expect(sorrel).toBe('You are sorrel, in #shelf.\n\n')
    expect(refused).toContain('Discord would not let you send that: only its owner sees this message.')
    const [unnamedBot, named, replied, , alone] = written
    expect(unnamedBot).toMatch(/^Everybody here reads it but the bot/)
    expect(named).toMatch(/everybody in #shelf sees it\n[\s\S]*1\sl of 95/)
    expect(replied).toContain('to-sweetness:120 g/L')
    expect(alone).toMatch(/direct message to sorrel\n[\s\S]*sloes/)
    expect(answers.join('')).not.toMatch(/DISCORD WOULD REFUSE|itself failed/)
    expect(readdirSync(folder).filter((name) => name.startsWith('larderbell-stand-in'))).toEqual([])
  }),
)

it('says loudly what Discord would refuse, and goes on without a bot', () =>
  inFolder(async (folder) => {
    const fake = await startFake()
    const bot = {
      start: async () => false,
      stop: async () => {},
      kill: () => {},
      isRunning: () => false,
      log: () => 'no network\n',
    }
    const scene = newScene(fake)
    const ahead: number[] = []
    const keepAhead = (ms: number) => ahead.push(ms)
    const answer = answerer(
      { fake, scene, bot, zone: 'UTC', form: null, aheadMs: 0, keepAhead },
      { scene, zone: 'UTC', files: folder },
    )
    const headers = { authorization: `Bot ${fake.token}`, 'content-type': 'application/json' }
    const body = JSON.stringify({ content: 'x'.repeat(2001), allowed_mentions: { parse: [] } })
    await fetch(`${fake.api}/v10/channels/${fake.channel.id}/messages`, { method: 'POST', headers, body })
    expect(await answer('')).toMatch(/^!!! DISCORD WOULD REFUSE THIS: POST .*\n!!! .*2000/)
    expect(await answer('')).toBe('')
    expect(await answer('later 1d')).toContain('The bot does not come back')
    expect(ahead).toEqual([86_400_000])
    expect(await answer('log')).toBe('no network')
    expect(await answer('/jar list')).toMatch(/^The bot is not running/)
    expect(await answer('delete channel')).toBe('#shelf is deleted. You are wren, in private with the bot.')
    expect(await answer('in shelf')).toContain('was deleted')
    await fake.stop()
  }))

it('reads fields, spans and times', () => {
  expect(readFields('a=1; note="x; \\"y\\" = z" ;b-c = two words;')).toEqual({
    a: '1',
    note: 'x; "y" = z',
    'b-c': 'two words',
  })
  expect(() => readFields('rating 4')).toThrow('write field=value')
  expect(readSpan('1d 12h')).toBe(36 * 3_600_000)
  expect(() => readSpan('3 moons')).toThrow('no span of time')
  const nowMs = Date.UTC(2026, 10, 25, 9, 0, 10)
  expect(readMoment('10:00', 'Europe/Rome', nowMs)).toBe(Date.UTC(2026, 10, 26, 9, 0, 5))
  expect(readMoment('10:01', 'Europe/Rome', nowMs)).toBe(Date.UTC(2026, 10, 25, 9, 1, 5))
  expect(readMoment('tomorrow 10:01', 'Europe/Rome', nowMs)).toBe(Date.UTC(2026, 10, 26, 9, 1, 5))
  expect(() => readMoment('25:00', 'Europe/Rome', nowMs)).toThrow('no time')
})
