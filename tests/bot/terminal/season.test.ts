import { mkdtempSync, readdirSync, readFileSync, rmSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import stringWidth from 'string-width'
import { afterAll, describe, expect, it } from 'vitest'
import { playSeason } from '../../../bot/demo/play-demo.ts'
import { tour } from '../../../bot/demo/tour.ts'
import { seasonText } from '../../../bot/text/en/demo.ts'
import { jarStateOf, stageOf } from '../../../core/jar/state/jar-state.ts'
import { memoryStore } from '../../../store/memory/memory-store.ts'
import { newAsker } from '../asker.ts'
import { testDesk } from '../test-desk.ts'
import { play, stageOn, WIDTH } from './season-played.ts'

const EXAMPLES = join(import.meta.dirname, '..', '..', '..', 'bot', 'picture', 'examples')
const FIRST_DAY = '── 5 September 2026 ──\n'

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
    /\bginger\b.*\bstrain|\bstrain ginger/i,
    /\bready to drink\b/,
    /\blemon\b.*\b680 ml/,
    /\b3 October\b/,
    /\bcoffee\b.*\b910 ml/,
    /\blemon better than ginger: 5 to 4/i,
  ])('shows %s', async (beat) => {
    expect((await season).printed).toMatch(beat)
  })

  it('fits its columns, and says how to begin', async () => {
    const { printed } = await season
    expect(printed.split('\n').filter((line) => stringWidth(line) > WIDTH)).toEqual([])
    expect(printed.split('\n').length).toBeLessThan(460)
    expect(printed).toMatch(/To start yours: npm start\n$/)
  })

  it('follows one jar from the shop to the freezer first, with the replies as they are given', async () => {
    const { printed } = await season
    const [first, second] = printed.split(seasonText.acts[1]!.steps[0]!.remark!.slice(0, 20))
    expect(second).toBeDefined()
    const desk = testDesk({
      nowMs: Date.UTC(2026, 8, 5, 9),
      width: WIDTH,
      asker: { ...newAsker(), assumedZone: seasonText.zone, store: memoryStore(seasonText.zone) },
    })
    const plan = seasonText.acts[0]!.steps[0]!.lines[0]!
    expect(first).toContain((await desk.firstOf(plan)).split('\n   More: more')[0])
    expect(first).not.toContain('ginger')
  })

  it('waits before every day but the first', async () => {
    const { printed, waits } = await season
    expect(waits).toBe(printed.split('\n── ').length - 1)
    expect(waits).toBeGreaterThan(20)
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
    const acts = [{ steps: [{ at: '2026-09-05 10:00', lines: ['/jar shake lemon'] }], isWhole: false }]
    const stage = { ...stageOn({ out: () => {}, season: { ...seasonText, acts } }), store: memoryStore('UTC') }
    await expect(playSeason(stage)).rejects.toThrow('You have no jars yet')
  })
})

describe('npm run season', () => {
  it('ends in the middle when it is told to, and leaves nothing behind', async () => {
    const ended = new AbortController()
    let printed = ''
    const out = (text: string): void => {
      printed += text
      if (text.includes('larderbell> /jar tag') || text.includes('larderbell> /jar list')) ended.abort()
    }
    await tour({ ...stageOn({ out }), ended: ended.signal, parent: folder, now: () => 0 })
    expect(printed.startsWith(FIRST_DAY)).toBe(true)
    expect(printed).toContain('basil')
    expect(printed).not.toContain('ginger is ready')
    expect(readdirSync(folder)).toEqual([])
  })
})
