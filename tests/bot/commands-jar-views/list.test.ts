import stringWidth from 'string-width'
import { describe, expect, it } from 'vitest'
import type { Asker } from '../../../bot/chat/command.ts'
import type { Nudge } from '../../../store/person.ts'
import { NOBODY } from '../../../store/person.ts'
import { StorageError } from '../../../store/storage-error.ts'
import { newAsker } from '../asker.ts'
import { testDesk } from '../test-desk.ts'
import { deskWith, jarOf, NOW_MS, startedAs } from './jars.ts'

/** Steeping since 8 November, to be tasted from the 15th and strained from 1 to 10 December. */
const WINDOW = { tasteFrom: '2026-11-15', strainFrom: '2026-12-01', strainBy: '2026-12-10', restDays: 30 }
const steeping = (id: string, name: string, on = '2026-11-08') => jarOf(id, [{ ...startedAs(name, {}, WINDOW), on }])

const NAMES = [
  'lemon',
  'walnuts from the old tree, second basket',
  'лимон и имбирь',
  'ليمون وزنجبيل',
  '生姜レモン',
  '柠檬皮和姜片泡在九十五度的酒里放在窗台下面的第三个架子上的那个大玻璃罐子',
  'नींबू का अर्क',
  '🍋🍋',
  '👩‍🌾 plum',
  'é'.repeat(40),
  '葉'.repeat(40),
  'e\u0301tude',
]
const twenty = Array.from({ length: 20 }, (_, index) => {
  const day = String(1 + index).padStart(2, '0')
  const name = index < NAMES.length ? NAMES[index]! : `jar ${index}`
  return steeping(`jar${String(index).padStart(2, '0')}`, name, `2026-11-${day}`)
})

describe('/jar list', () => {
  it('says how to begin where there is no jar', async () => {
    const desk = await deskWith({})
    expect(await desk.textOf('/jar list')).toMatch(/^No jars yet\.\n\n.*: \/plan of:10 lemons spirit:1 l 95%$/)
    expect((await desk.jsonOf('/jar list')).data).toEqual({ jars: [] })
  })

  it('says first what to do today and what is next, then a row for each running jar', async () => {
    const desk = await deskWith({
      jars: [
        steeping('aaaa1', 'lemon'),
        jarOf('aaaa2', [
          { ...startedAs('walnut', {}, WINDOW), on: '2026-11-01' },
          { kind: 'shaken', on: '2026-11-20' },
          { kind: 'tasted', rating: 3, note: null, on: '2026-11-20' },
        ]),
        jarOf('aaaa3', [
          { ...startedAs('last year'), on: '2025-11-01' },
          { kind: 'discarded', on: '2025-12-01' },
        ]),
      ],
    })
    const text = await desk.textOf('/jar list')
    expect(text).toMatch(
      /^Two jobs today\.\n\n {2}lemon +taste {3}\/jar taste lemon rating:4\n {2}shake +lemon {3}\/jar shake lemon\n/,
    )
    expect(text).toMatch(/^• Coming: .* on 1 December\.$/m)
    expect(text).toContain('  lemon   steeping  ███░░░░░░░ day 13 of 33  ')
    expect(text).toContain('  walnut  steeping  █████░░░░░ day 20 of 40  ')
    expect(text.indexOf('  lemon ')).toBeLessThan(text.indexOf('  walnut '))
    expect(text).not.toContain('last year')
    expect(text).toMatch(/^• One .*\/notebook$/m)
  })

  it.each([40, 80])('fits %i columns with twenty jars and names in any script', async (width) => {
    const desk = await deskWith({ jars: twenty }, { width })
    const text = await desk.textOf('/jar list')
    // A line to type is never broken.
    for (const line of text.split('\n').filter((each) => !/^ *\//.test(each)))
      expect(stringWidth(line), line).toBeLessThanOrEqual(width)
    for (const name of ['lemon', 'jar 19', '🍋🍋']) expect(text).toContain(name)
    expect(text.match(/[█░]{10}/g)).toHaveLength(20)
    expect(text).toContain('and 18 more')
    expect(desk.faults()).toEqual([])
  })

  it('puts the parts of its rows under each other, whatever the script', async () => {
    const desk = await deskWith({ jars: twenty.filter((_, index) => [0, 2, 4, 7, 19].includes(index)) })
    const lines = (await desk.textOf('/jar list')).split('\n').filter((line) => /[█░]/.test(line))
    const places = lines.map((line) => ({
      bar: stringWidth(line.slice(0, line.search(/[█░]/))),
      day: stringWidth(line.slice(0, line.indexOf('day '))),
    }))
    expect(lines).toHaveLength(5)
    expect(new Set(places.map(({ bar }) => bar)).size).toBe(1)
    expect(new Set(places.map(({ day }) => day)).size).toBe(1)
  })

  it('puts them so where names are emoji of one character or many', async () => {
    const names = ['lemon', '⚗️', '☕', '❤️', '👩🏽‍🌾', '❤️ plum ☕']
    const desk = await deskWith({ jars: names.map((name, index) => steeping(`jar0${index}`, name)) })
    const lines = (await desk.textOf('/jar list')).split('\n').filter((line) => /[█░]/.test(line))
    expect(lines).toHaveLength(names.length)
    // Drawn two columns wide each by terminals, whatever their characters (Unicode TR 51, UAX 11).
    const columnsOf = (name: string): number => (name === 'lemon' ? 5 : name.includes('plum') ? 10 : 2)
    const spaces = lines.map((line) => /^ {2}(\S.*?)( {2,})steeping/.exec(line)![2]!.length)
    expect(spaces.map((count, index) => count + columnsOf(names[index]!))).toEqual(names.map(() => spaces[5]! + 10))
  })

  it('lists the names of a row with their data complete', async () => {
    const desk = await deskWith({ jars: [steeping('aaaa1', 'lemon')] })
    const { jars } = (await desk.jsonOf('/jar list')).data
    expect(jars).toEqual([
      {
        id: 'aaaa1',
        dangers: [],
        name: 'lemon',
        stage: 'steeping',
        day: 13,
        ofDays: 33,
        next: { duty: expect.any(String), dueAt: expect.stringMatching(/^2026-11-\d\dT09:00:00\.000Z$/) },
      },
    ])
  })

  it('tells of a pause until it is over', async () => {
    const settings = { ...NOBODY.settings, pausedUntil: '2026-12-03' }
    const paused = await deskWith({ jars: [steeping('aaaa1', 'lemon')], settings })
    expect(await paused.textOf('/jar list')).toMatch(/• .*3 December[\s\S]*\/reminders/)
    const over = await deskWith({ jars: [], settings }, { nowMs: Date.UTC(2026, 11, 3, 12) })
    expect(await over.textOf('/jar list')).not.toContain('pause')
  })
})

const KEPT: Nudge = {
  id: 'n1',
  place: { kind: 'private' },
  duties: [
    { jarId: 'aaaa1', kind: 'shake', key: 'shake.2026-11-18' },
    { jarId: 'aaaa2', kind: 'shake', key: 'shake.2026-11-18' },
    { jarId: 'gone5', kind: 'shake', key: 'shake.2026-11-18' },
  ],
  state: 'kept',
  madeMs: 0,
  attempts: 9,
  nextMs: 0,
}
const WAITING: Nudge = { ...KEPT, id: 'n2', state: 'waiting', nextMs: NOW_MS + 1 }

describe('what /jar list says once', () => {
  const person = {
    jars: [steeping('aaaa1', 'lemon'), steeping('aaaa2', 'walnut')],
    nudges: [KEPT, WAITING],
    setAside: { file: 'local.unreadable-2026-11-19T08-00-00-000Z.json', day: '2026-11-18' },
  }

  it('is what could not be sent and which file was set aside', async () => {
    const desk = await deskWith(person, { width: 200 })
    const first = await desk.textOf('/jar list')
    expect(first).toContain('couldn’t send: shake lemon and walnut (18 Nov).')
    expect(first).toContain('is kept as local.unreadable-2026-11-19T08-00-00-000Z.json')
    expect(first).toContain('npm run doctor -- restore local 2026-11-18')
    const second = await desk.textOf('/jar list')
    expect(second).not.toMatch(/could not|couldn’t/)
    const { nudges, setAside, jars } = await desk.asker.store.read('local')
    expect(nudges).toEqual([WAITING])
    expect(setAside).toBeNull()
    expect(jars.map(({ told }) => told)).toEqual([['shake.2026-11-18'], ['shake.2026-11-18']])
  })

  it('names no file and no command of the machine in Discord', async () => {
    const asker: Asker = { ...newAsker(), userId: '623426234262342623', place: { kind: 'private' } }
    await asker.store.update(asker.userId, () => ({ ...NOBODY, ...person }))
    const desk = testDesk({ asker, nowMs: NOW_MS, width: 200 })
    const said = await desk.textOf('/jar list')
    expect(said).toContain('The copy of 18 November 2026 still has jars. Whoever runs me can bring it back.')
    expect(said).not.toMatch(/unreadable|\.json|npm/)
  })

  it('is said again, and the list all the same, where nothing can be written', async () => {
    const asker = newAsker()
    await asker.store.update('local', () => ({ ...NOBODY, ...person }))
    const locked = new StorageError('locked', { folder: 'data', host: 'shed', pid: 7, isHere: true })
    const store = { ...asker.store, update: () => Promise.reject(locked) }
    const desk = testDesk({ asker: { ...asker, store }, nowMs: NOW_MS, width: 200 })
    for (const line of ['/jar list', '/jar list']) {
      expect(await desk.textOf(line)).toContain('couldn’t send: shake lemon and walnut (18 Nov).')
    }
  })
})
