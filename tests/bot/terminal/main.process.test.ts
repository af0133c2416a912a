import { spawn, spawnSync } from 'node:child_process'
import { existsSync, readdirSync, readFileSync } from 'node:fs'
import { join } from 'node:path'
import { describe, expect, it } from 'vitest'
import { inFolder } from '../../store/in-folder.ts'
import { storeIn } from '../../store/some-store.ts'
import { stampHolds } from '../../store/stamps.ts'
import { DAY_MS, jarOf, personWith } from '../reminders/people.ts'

const root = join(import.meta.dirname, '..', '..', '..')

/** The whole program, as npm starts it. Slow: what can be tested inside has its own tests. */
const start = (argv: readonly string[], input = '', settings: Record<string, string> = {}) => {
  const { status, stdout, stderr } = spawnSync(process.execPath, ['bot/start.cjs', ...argv], {
    cwd: root,
    input,
    encoding: 'utf8',
    env: {
      ...process.env,
      LARDERBELL_WIDTH: '80',
      LARDERBELL_DATA: join(root, 'node_modules', '.none'),
      DISCORD_TOKEN: '',
      ...settings,
    },
  })
  return { status, stdout, stderr }
}

describe('the program', () => {
  it('asks, and ends with the worst of its lines', () => {
    const { status, stdout, stderr } = start(['ask', '-', '--json'], '/help\n/hlep\n')
    expect([status, stderr]).toEqual([2, ''])
    const [help, error] = stdout
      .trimEnd()
      .split('\n')
      .map((line) => JSON.parse(line))
    expect(help.data.commands.length).toBeGreaterThan(0)
    expect(error.error).toMatchObject({ code: 'unknown_command', nearest: 'help' })
  })

  it('chats through a pipe to its last line', () => {
    const { status, stdout, stderr } = start([], '/help\n/hlep\n/help')
    expect([status, stderr]).toEqual([0, ''])
    expect(stdout.match(/^Start here$/gm)).toHaveLength(2)
    expect(stdout).toContain('Did you mean /help?')
  })

  it('stamps what it keeps under the rules of its own code, the same every time', () =>
    inFolder(async (folder) => {
      const rules = ['/jar start lemon of:10 lemons spirit:1 l strength:95%', '/jar shake lemon'].map((line) => {
        expect(start(['ask', line], '', { LARDERBELL_DATA: folder })).toMatchObject({ status: 0, stderr: '' })
        const text = readFileSync(join(folder, 'users', 'local.json'), 'utf8')
        expect(stampHolds(text)).toBe(true)
        return JSON.parse(text).due.rules
      })
      expect(rules[0]).toBe(rules[1])
    }))

  it('is as wide as the shell says where its output is a pipe', () => {
    const widest = (settings: Record<string, string>) =>
      Math.max(
        ...start(['ask', '10 lemons and a litre of 95%'], '', settings)
          .stdout.split('\n')
          .filter((line) => !line.includes(' /'))
          .map((line) => line.length),
      )
    const narrow = widest({ LARDERBELL_WIDTH: '', COLUMNS: '44' })
    const usual = widest({ LARDERBELL_WIDTH: '', COLUMNS: '' })
    expect([narrow <= 44 || narrow, usual > 60 || usual]).toEqual([true, true])
  })

  it('says in a sentence what it cannot take', () => {
    const unknown = start(['aks'])
    expect(unknown).toMatchObject({ status: 2, stdout: '', stderr: 'I don’t know “aks”. Did you mean ask?\n' })
    const { status, stderr } = start(['ask', '/help'], '', { LARDERBELL_WIDTH: '7' })
    expect(status).toBe(2)
    expect(stderr).toMatch(/^LARDERBELL_WIDTH can’t be “7”\. .*\n$/)
  })
})

/** A chat whose end is not foreseen; `said` waits for a text on its output. */
const open = (folder: string) => {
  const child = spawn(process.execPath, ['bot/start.cjs'], {
    cwd: root,
    env: { ...process.env, LARDERBELL_WIDTH: '80', LARDERBELL_DATA: folder, LARDERBELL_ZONE: 'UTC', DISCORD_TOKEN: '' },
  })
  let [out, err] = ['', '']
  child.stdout.on('data', (chunk) => {
    out += chunk
  })
  child.stderr.on('data', (chunk) => {
    err += chunk
  })
  const gone = new Promise<number | null>((resolve) => child.on('close', resolve))
  return {
    child,
    gone,
    printed: () => ({ out, err }),
    said: async (text: string): Promise<void> => {
      while (!out.includes(text) && child.exitCode === null)
        await new Promise((resolve) => child.stdout.once('data', resolve))
    },
  }
}

describe('the folder of data', () => {
  it('is not made by looking, nor by what needs none', () =>
    inFolder(async (folder) => {
      const data = join(folder, 'data')
      const settings = { LARDERBELL_DATA: data }
      const store = storeIn(data)
      expect(start(['ask', '-'], '/mix spirit:1 l strength:95%\n/reminders\n/jar list\n', settings).status).toBe(0)
      expect(start([], '/mix spirit:1 l strength:95%\n', settings)).toMatchObject({ status: 0, stderr: '' })
      expect(existsSync(data)).toBe(false)
      expect(start(['ask', '/reminders time:8'], '', settings).status).toBe(0)
      expect((await store.read('local')).settings.atMinutes).toBe(8 * 60)
      expect(await store.inspect()).toMatchObject({ people: 1, holder: null })
    }))

  it('gives what fell due to the chat, once, and to no ask', () =>
    inFolder(async (folder) => {
      const store = storeIn(folder)
      const startedMs = Date.now() - 3 * DAY_MS
      const plan = { strainFrom: new Date(startedMs + DAY_MS).toISOString().slice(0, 10) }
      await store.update('local', () => personWith([jarOf({ name: 'lemon', startedMs, plan })], { shake: 'off' }))
      await store.close()
      const settings = { LARDERBELL_DATA: folder, LARDERBELL_ZONE: 'UTC' }
      expect(start(['ask', '/reminders'], '', settings).stdout).not.toContain('Strain lemon')
      const [first, second] = [start([], '', settings), start([], '', settings)]
      expect(first.stdout.match(/Strain lemon\./g)).toHaveLength(1)
      expect(second.stdout).not.toContain('Strain lemon')
      expect([first.stderr, second.stderr]).toEqual(['', ''])
    }))

  it('is let go of at SIGTERM, and what another one does is said in a line', () =>
    inFolder(async (folder) => {
      expect(start(['ask', '/reminders time:8'], '', { LARDERBELL_DATA: folder }).status).toBe(0)
      const holder = open(folder)
      holder.child.stdin.write('/help\n')
      await holder.said('Start here')
      expect(readdirSync(join(folder, 'lock'))).toHaveLength(1)
      const other = start([], '/reminders\n/reminders time:9\n', { LARDERBELL_DATA: folder })
      expect(other.status).toBe(0)
      expect(other.stdout.match(/^Reminders come from the other Larderbell/gm)).toHaveLength(1)
      expect(other.stdout).toContain('Reminders come at 08:00.')
      expect(other.stdout).toMatch(/Another Larderbell .* works on the jars/s)
      holder.child.kill('SIGTERM')
      expect(await holder.gone).toBe(0)
      expect(holder.printed().err).toBe('')
      expect(readdirSync(join(folder, 'lock'))).toEqual([])
    }))

  it('gets a copy back by the doctor, who takes no other order', () =>
    inFolder(async (folder) => {
      const settings = { LARDERBELL_DATA: folder }
      const { status, stdout, stderr } = start(['doctor', 'restore', 'local', '2026-11-24'], '', settings)
      expect([status, stdout]).toEqual([1, ''])
      expect(stderr).toMatch(/^There’s no copy of local from 2026-11-24/)
      expect(start(['doctor', 'restor'], '', settings)).toMatchObject({
        status: 2,
        stderr: 'I don’t know “restor”. Did you mean restore?\n',
      })
    }))

  it('must be one that can be worked on, and the zone one that there is', () => {
    const { status, stderr } = start([], '', { LARDERBELL_ZONE: 'Europe/Rom' })
    expect([status, stderr]).toEqual([2, 'LARDERBELL_ZONE can’t be “Europe/Rom”. Did you mean Europe/Rome?\n'])
  })
})
