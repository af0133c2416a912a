import { mkdir, writeFile } from 'node:fs/promises'
import { join } from 'node:path'
import { describe, expect, it } from 'vitest'
import { isFine, verdictOn } from '../../../bot/doctor/reminder-health.ts'
import { checkUp } from '../../../bot/doctor/run-doctor.ts'
import type { ReminderVerdict } from '../../../bot/text/doctor-text.ts'
import { doctorText } from '../../../bot/text/en/doctor.ts'
import { en } from '../../../bot/text/en/index.ts'
import { wordsOf } from '../../../bot/text/words-of.ts'
import type { StatusRead } from '../../../store/maintenance.ts'
import { NOBODY } from '../../../store/person.ts'
import { inFolder } from '../../store/in-folder.ts'
import { storeIn } from '../../store/some-store.ts'
import { at, jarOf, MINUTE_MS, personWith } from '../reminders/people.ts'

const NOW_MS = at('2026-12-02', '08:30')
const GOOD_MS = NOW_MS - 3 * MINUTE_MS
const OLD_MS = GOOD_MS - 1

const ticked = (tickMs: number, heardMs: number | null = null): StatusRead => ({
  kind: 'status',
  status: { tickMs, sentMs: null, heardMs },
})
const held = (sinceMs: number, mayRun = true) => ({ pid: 7, host: 'shed', isHere: true, mayRun, sinceMs })

describe('the verdict', () => {
  it.each<[ReminderVerdict, 'fine' | 'bad', ReturnType<typeof held> | null, StatusRead]>([
    ['well', 'fine', held(OLD_MS), ticked(GOOD_MS)],
    ['well', 'fine', held(OLD_MS), ticked(NOW_MS + 2 * MINUTE_MS)],
    ['well', 'fine', held(OLD_MS), ticked(GOOD_MS, GOOD_MS)],
    ['deaf', 'bad', held(OLD_MS), ticked(GOOD_MS, OLD_MS)],
    ['deaf', 'bad', held(OLD_MS), ticked(GOOD_MS, NOW_MS + 60 * MINUTE_MS)],
    ['left', 'fine', null, ticked(GOOD_MS, OLD_MS)],
    ['stuck', 'bad', held(OLD_MS), ticked(OLD_MS, GOOD_MS)],
    ['stuck', 'bad', held(OLD_MS), ticked(OLD_MS)],
    ['stuck', 'bad', held(OLD_MS), ticked(NOW_MS + 60 * MINUTE_MS)],
    ['starting', 'fine', held(GOOD_MS), ticked(OLD_MS)],
    ['starting', 'fine', held(GOOD_MS), { kind: 'none' }],
    ['starting', 'fine', held(GOOD_MS), { kind: 'unreadable' }],
    ['stuck', 'bad', held(OLD_MS), { kind: 'none' }],
    ['stuck', 'bad', held(OLD_MS), { kind: 'unreadable' }],
    ['left', 'fine', null, ticked(GOOD_MS)],
    ['left', 'fine', held(OLD_MS, false), ticked(GOOD_MS)],
    ['stopped', 'bad', null, ticked(OLD_MS)],
    ['stopped', 'bad', held(GOOD_MS, false), ticked(OLD_MS)],
    ['ahead', 'bad', null, ticked(NOW_MS + 60 * MINUTE_MS)],
    ['idle', 'fine', null, { kind: 'none' }],
    ['unknown', 'bad', null, { kind: 'unreadable' }],
  ])('is %s, which is %s', (verdict, how, holder, status) => {
    expect(verdictOn({ holder, status }, NOW_MS)).toBe(verdict)
    expect(isFine(verdict)).toBe(how === 'fine')
  })
})

const examine = async (data: string, nowMs = NOW_MS, isTokenShown = false) => {
  let [printed, complained] = ['', '']
  const code = await checkUp({
    data,
    store: storeIn(data),
    zone: 'Europe/Rome',
    nowMs,
    isTokenShown,
    words: wordsOf(en),
    text: doctorText,
    width: 80,
    out: {
      write: (text) => {
        printed += text
      },
    },
    err: (text) => {
      complained += text
    },
  })
  return { code, printed, complained }
}

describe('the doctor', () => {
  it('says how a bot is that runs, with no name of anybody’s', () =>
    inFolder(async (folder) => {
      const store = storeIn(folder, { nowMs: () => NOW_MS })
      const lemon = jarOf({ name: 'lemon', startedMs: at('2026-12-01', '18:00') })
      await store.update('100000000000000007', () => personWith([lemon]))
      await store.update('local', () => ({ ...NOBODY, setAside: null, settings: { ...NOBODY.settings, units: 'us' } }))
      await store.nightly()
      await store.heartbeat({
        tickMs: NOW_MS - 40_000,
        sentMs: NOW_MS - 26 * 60 * MINUTE_MS,
        heardMs: NOW_MS - 61_000,
      })
      const { code, printed, complained } = await examine(folder)
      await store.close()
      expect([code, complained]).toEqual([0, ''])
      expect(printed.split('\n').filter((row) => !/^ {2}(?:Version|Node|Folder|Lock) /.test(row))).toEqual([
        'Reminders are running.',
        '',
        '  Rights       I read and write, and nobody else can look in',
        '  People       2',
        '  Jars         1 running, 1 in all',
        '  Set aside    none',
        '  Newest copy  2 December 2026',
        '  Next due     2 December 2026, 09:00 (in 30 minutes)',
        '  Last tick    2 December 2026, 08:29 (40 seconds ago)',
        '  Discord      heard of 2 December 2026, 08:28 (1 minute ago)',
        '  Last sent    1 December 2026, 06:30 (1 day ago)',
        '  Times        in Europe/Rome',
        '',
      ])
      expect(printed).toContain(`in use by process ${process.pid}, which is running`)
      expect(printed).not.toMatch(/lemon|100000000000000007/)
    }))

  it('ends with 1 where a bot stopped ticking, and 0 where there is nothing yet', () =>
    inFolder(async (folder) => {
      const data = join(folder, 'data')
      expect(await examine(data)).toMatchObject({ code: 0, complained: '' })
      const store = storeIn(data, { nowMs: () => NOW_MS })
      await store.heartbeat({ tickMs: NOW_MS, sentMs: null, heardMs: null })
      await store.close()
      expect(await examine(data, NOW_MS + 3 * MINUTE_MS)).toMatchObject({ code: 0 })
      const late = await examine(data, NOW_MS + 3 * MINUTE_MS + 1)
      expect([late.code, late.printed.split('\n')[0]]).toEqual([
        1,
        'No reminders: no Larderbell is running here. The last tick was more than three',
      ])
    }))

  it('ends with 1 where it ticks but Discord is not heard of for three minutes', () =>
    inFolder(async (folder) => {
      const store = storeIn(folder, { nowMs: () => NOW_MS })
      await store.heartbeat({ tickMs: NOW_MS, sentMs: null, heardMs: NOW_MS - 3 * MINUTE_MS })
      expect(await examine(folder)).toMatchObject({ code: 0 })
      const late = await examine(folder, NOW_MS + 1)
      await store.close()
      expect([late.code, late.printed]).toEqual([1, expect.stringMatching(/^Some or all get no answer in Discord/)])
    }))

  it('tells where others may read the token', () =>
    inFolder(async (folder) => {
      expect((await examine(folder)).printed).not.toContain('Token')
      expect((await examine(folder, NOW_MS, true)).printed).toMatch(/Token +others .* chmod 600 \.env/)
    }))

  it('says what it cannot read', () =>
    inFolder(async (folder) => {
      await mkdir(join(folder, 'users'))
      await writeFile(join(folder, 'status.json'), 'nonsense')
      const broken = await examine(folder)
      expect(broken.code).toBe(1)
      expect(broken.printed).toContain('I can’t tell whether reminders run')
      await writeFile(join(folder, 'file'), '')
      expect(await examine(join(folder, 'file'))).toEqual({
        code: 1,
        printed: '',
        complained: expect.stringMatching(/^The disk failed at .* \(ENOTDIR\).*\n$/),
      })
    }))
})
