import { spawnSync } from 'node:child_process'
import { mkdtempSync, readdirSync, readFileSync, rmSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import stringWidth from 'string-width'
import { afterAll, describe, expect, it } from 'vitest'
import { playSeason } from '../../../bot/demo/play-demo.ts'
import { noPause, PAUSE_MS, tour } from '../../../bot/demo/tour.ts'
import { seasonText } from '../../../bot/text/en/demo.ts'
import { en } from '../../../bot/text/en/index.ts'
import { jarStateOf, stageOf } from '../../../core/jar/state/jar-state.ts'
import { agenda } from '../../../core/jar/tasks/agenda.ts'
import { dutySettings } from '../../../store/due.ts'
import { memoryStore } from '../../../store/memory/memory-store.ts'
import { commands } from '../test-desk.ts'

const WIDTH = 80
const EXAMPLES = join(import.meta.dirname, '..', '..', '..', 'bot', 'picture', 'examples')
const FIRST_DAY = '── 5 September 2026 ──\n'

const stageOn = (more: { readonly out: (text: string) => void; readonly season?: typeof seasonText }) => ({
  season: seasonText,
  commands,
  language: en,
  screen: { width: WIDTH, colour: false },
  log: (text: string): void => {
    throw new Error(text)
  },
  isHeard: () => true,
  saveFile: null,
  pause: noPause,
  ended: new AbortController().signal,
  ...more,
})

/** The season in memory: what it prints, what it leaves, and what was late whenever the clock stopped. */
const play = async () => {
  let printed = ''
  const late: string[] = []
  const store = memoryStore(seasonText.zone)
  const { zone } = seasonText
  const watched: typeof store = {
    ...store,
    async claimDue(untilMs, limit, leaseMs) {
      const { jars, settings } = await store.read('local')
      for (const { entries } of jars) {
        const { today } = agenda(entries, dutySettings(settings, zone), untilMs)
        for (const { kind, state } of today) if (state === 'overdue') late.push(`${jarStateOf(entries)?.name} ${kind}`)
      }
      return store.claimDue(untilMs, limit, leaseMs)
    },
  }
  const out = (text: string): void => {
    printed += text
  }
  let pauses = 0
  const pause = async (): Promise<void> => {
    pauses += 1
  }
  await playSeason({ ...stageOn({ out }), pause, store: watched })
  return { printed, late, pauses, person: await store.read('local') }
}

const season = play()

const folder = mkdtempSync(join(tmpdir(), 'larderbell-test-'))
afterAll(() => rmSync(folder, { recursive: true, force: true }))

describe('the season', () => {
  it('brings four jars from their start to a rated glass', async () => {
    const { person } = await season
    const stories = person.jars.map(({ entries }) => jarStateOf(entries)!)
    expect(stories.map(({ name }) => name)).toEqual(['lemon', 'ginger', 'coffee', 'basil'])
    for (const story of stories) {
      const kinds = new Set(story.happened.map(({ kind }) => kind))
      for (const kind of ['started', 'shaken', 'tasted', 'strained', 'filtered', 'sweetened', 'bottled', 'opened']) {
        expect([story.name, [...kinds]]).toEqual([story.name, expect.arrayContaining([kind])])
      }
      const last = story.happened.findLast((entry) => entry.kind === 'tasted')
      expect(last?.kind === 'tasted' && last.rating).toBeGreaterThan(0)
      expect(['ready', 'emptied']).toContain(stageOf(story, '2026-12-12'))
    }
  })

  it('leaves nothing overdue unanswered, and no nudge on its way', async () => {
    const { late, person } = await season
    expect(late).toEqual([])
    expect(person.nudges).toEqual([])
  })

  it.each([
    /^Shake lemon/m,
    /\bTaste basil\./,
    /\bAdd coffee/,
    /\bStrain ginger: its window opened today/,
    /\bSweeten basil: /,
    /\bFilter basil\./,
    /\bBottle basil\./,
    /^ginger is ready to drink\./m,
    /^lemon: taken back: strained, 680 ml/m,
    /^Quiet until 3 October 2026: lemon and coffee\.$/m,
    /^coffee, strained: measured: 910 ml, no longer 940 ml\./m,
    /^You liked lemon better than ginger: 5 to 4\./m,
    /Ginger root +– \| 214 g a litre of spirit/,
    /^ {2}lemon +ready +█+ day 99$/m,
  ])('shows %s', async (beat) => {
    expect((await season).printed).toMatch(beat)
  })

  it('fits its columns, and says how to begin', async () => {
    const { printed } = await season
    expect(printed.split('\n').filter((line) => stringWidth(line) > WIDTH)).toEqual([])
    expect(printed.split('\n').length).toBeLessThan(300)
    expect(printed).toMatch(/Type\s+npm start to begin yours\.\n$/)
  })

  it('waits after whatever is shown, less than twenty seconds in all', async () => {
    const { pauses } = await season
    expect(pauses).toBeGreaterThan(40)
    expect(pauses * PAUSE_MS).toBeLessThan(17_000)
  })

  it('draws the pictures that the README shows', async () => {
    const drawn = new Map<string, Uint8Array>()
    const saveFile = async (name: string, bytes: Uint8Array): Promise<string> => {
      drawn.set(name, bytes)
      return name
    }
    await playSeason({ ...stageOn({ out: () => {} }), saveFile, store: memoryStore(seasonText.zone) })
    // What is compressed may differ from one Node to the next; what it opens to has the same head: width, height, kind.
    const headOf = (bytes: Uint8Array): string => Buffer.from(bytes.subarray(0, 33)).toString('hex')
    const shown = { card: 'batch', shelf: 'shelf', tag: 'jar-tag', label: 'label-1' }
    for (const [example, name] of Object.entries(shown)) {
      const kept = readFileSync(join(EXAMPLES, `${example}.png`))
      expect(headOf(drawn.get(`larderbell-${name}.png`) ?? new Uint8Array())).toBe(headOf(kept))
    }
    expect(drawn.size).toBe(4)
  })

  it('stops at a line that is refused', async () => {
    const steps = [{ at: '2026-09-05 10:00', lines: ['/jar shake lemon'] }]
    const stage = { ...stageOn({ out: () => {}, season: { ...seasonText, steps } }), store: memoryStore('UTC') }
    await expect(playSeason(stage)).rejects.toThrow('You have no jars yet')
  })
})

describe('npm run season', () => {
  it('prints the same wherever and whenever it runs, and leaves nothing behind', async () => {
    const { status, stdout, stderr } = spawnSync(process.execPath, ['bot/start.cjs', 'season'], {
      cwd: join(import.meta.dirname, '..', '..', '..'),
      encoding: 'utf8',
      env: { ...process.env, TZ: 'Pacific/Apia', LARDERBELL_WIDTH: String(WIDTH), TMPDIR: folder, LARDERBELL_ZONE: '' },
    })
    expect([status, stderr]).toEqual([0, ''])
    expect(stdout).toBe((await season).printed)
    expect(readdirSync(folder)).toEqual([])
  })

  it('ends in the middle when it is told to, and leaves nothing behind', async () => {
    const ended = new AbortController()
    let printed = ''
    const out = (text: string): void => {
      printed += text
      if (text.includes('larderbell> /jar list')) ended.abort()
    }
    await tour({ ...stageOn({ out }), ended: ended.signal, parent: folder, now: () => 0 })
    expect(printed.startsWith(FIRST_DAY)).toBe(true)
    expect(printed).toContain('basil')
    expect(printed).not.toContain('ginger is ready')
    expect(readdirSync(folder)).toEqual([])
  })
})
