import { describe, expect, it } from 'vitest'
import { untold } from '../../../store/due.ts'
import { memoryStore } from '../../../store/memory/memory-store.ts'
import { NOBODY, type Person, type Place } from '../../../store/person.ts'
import { at, jarOf, personWith, ZONE } from '../reminders/people.ts'
import { testDesk } from '../test-desk.ts'

const NOW_MS = at('2026-12-02', '10:00')
const TODAY = '2026-12-02'
const channel: Place = { kind: 'channel', channelId: '12345678901234500' }

const sit = async (place: Place = { kind: 'console' }, person: Person = NOBODY) => {
  const store = memoryStore(ZONE)
  await store.update('local', () => person)
  return { store, ...testDesk({ nowMs: NOW_MS, asker: { userId: 'local', place, assumedZone: ZONE, store } }) }
}

describe('/reminders', () => {
  it('shows what is set, and changes nothing', async () => {
    const desk = await sit()
    expect(await desk.jsonOf('/reminders')).toMatchObject({
      data: {
        place: 'console',
        channelId: null,
        time: '09:00',
        zone: ZONE,
        zoneAssumed: true,
        shake: 'daily',
        pausedUntil: null,
        next: null,
      },
      notes: [{ key: 'reminders_zone_assumed' }, { key: 'reminders_only_running' }],
    })
    expect(await desk.store.read('local')).toEqual(NOBODY)
  })

  it('changes what is given and keeps the rest', async () => {
    const desk = await sit()
    const text = await desk.textOf('/reminders time:18.30 zone:Tokyo shake:every other day pause-until:7 January')
    expect(text).toMatch(/^Noted: reminders start again on 7 January 2027 at 18:30\.\n/)
    await desk.run('/reminders shake:off')
    expect((await desk.store.read('local')).settings).toMatchObject({
      atMinutes: 1110,
      zone: 'Asia/Tokyo',
      shake: 'off',
      pausedUntil: '2027-01-07',
    })
    expect(await desk.textOf('/reminders pause-until:off zone:default')).toMatch(/^Noted: reminders come at 18:30\.\n/)
    expect((await desk.store.read('local')).settings).toMatchObject({ pausedUntil: TODAY, zone: null })
  })

  it('asks for nothing of the days before the rhythm was changed', async () => {
    const lemon = jarOf({ name: 'lemon', startedMs: at('2026-11-24', '18:00') })
    const desk = await sit({ kind: 'console' }, personWith([lemon], { shake: 'off' }))
    const shakesDue = async () =>
      untold(await desk.store.read('local'), ZONE).filter(({ duty }) => duty.kind === 'shake' && duty.dueMs <= NOW_MS)
    expect(await shakesDue()).toEqual([])
    await desk.textOf('/reminders shake:daily')
    expect((await shakesDue()).length).toBeLessThanOrEqual(1)
  })

  it('says what comes next, and moves it with the hour and the pause', async () => {
    const jars = ['lemon', 'walnut'].map((name) => jarOf({ name, startedMs: at('2026-12-01', '18:00') }))
    const told = jars.map((jar) => ({ ...jar, told: ['shake.2026-12-02'] }))
    const desk = await sit({ kind: 'console' }, personWith(told))
    const nextIn = async (line: string): Promise<string | undefined> => /Next +(.*)/.exec(await desk.textOf(line))?.[1]
    expect(await nextIn('/reminders')).toBe('tomorrow at 09:00: shake lemon and walnut')
    expect(await nextIn('/reminders time:11')).toBe('tomorrow at 11:00: shake lemon and walnut')
    expect(await nextIn('/reminders pause-until:9 December')).toBe('on 9 December at 11:00: shake lemon and walnut')
    expect((await desk.jsonOf('/reminders')).data.next).toEqual({
      dueAt: '2026-12-09T10:00:00.000Z',
      duties: [{ duty: 'shake', jars: ['lemon', 'walnut'] }],
    })
  })

  it('says what is due by now and was not said, such as when a pause ends early', async () => {
    const lemon = jarOf({ name: 'lemon', startedMs: at('2026-12-01', '18:00') })
    const desk = await sit({ kind: 'console' }, personWith([lemon], { pausedUntil: '2026-12-20' }))
    expect(await desk.textOf('/reminders pause-until:off')).toMatch(/Next +due now: shake lemon\n/)
  })

  it('names the jars whose last day for straining lies in a pause', async () => {
    const jars = ['2026-12-19', '2026-12-20', '2026-12-01'].map((strainBy, index) =>
      jarOf({
        name: `jar${index}`,
        startedMs: at('2026-11-20', '18:00'),
        plan: { strainFrom: '2026-11-29', strainBy },
      }),
    )
    const desk = await sit({ kind: 'console' }, personWith(jars))
    const { notes } = await desk.jsonOf('/reminders pause-until:20 December')
    expect(notes).toContainEqual({
      key: 'reminders_pause_hides',
      text: 'So I won’t remind you to strain jar0 (by 19 December). To see what’s due: /jar list',
      depth: 'first',
    })
    const keysOf = async (line: string) => (await desk.jsonOf(line)).notes.map(({ key }: { key: string }) => key)
    expect(await keysOf('/reminders pause-until:19 December')).not.toContain('reminders_pause_hides')
  })

  it('takes a pause of more than three months only with its year', async () => {
    const desk = await sit()
    expect((await desk.textOf('/reminders pause-until:1 December')).replaceAll('\n', ' ')).toMatch(
      /more than three months\. If you mean it, add the year\.$/,
    )
    expect((await desk.store.read('local')).settings.pausedUntil).toBeNull()
    expect(await desk.textOf('/reminders pause-until:1 December 2027')).toMatch(/start again on 1 December 2027 /)
    expect(await desk.textOf('/reminders pause-until:in 5 months')).toMatch(/start again on 2 May 2027 /)
    expect(await desk.textOf('/reminders pause-until:2 weeks')).toMatch(/start again on 16 December /)
  })

  it('takes the place it is written in', async () => {
    const desk = await sit(channel)
    expect((await desk.jsonOf('/reminders')).data).toMatchObject({ place: 'private', channelId: null })
    expect(await desk.textOf('/reminders place:here')).toMatch(/Where +this channel\n/)
    expect((await desk.store.read('local')).settings.place).toEqual(channel)
    await desk.run('/reminders place:private')
    expect((await desk.store.read('local')).settings.place).toEqual({ kind: 'private' })
    const terminal = await sit()
    await terminal.run('/reminders place:here')
    expect((await terminal.store.read('local')).settings.place).toEqual({ kind: 'console' })
  })

  it.each<[line: string, place: Place, message: RegExp]>([
    ['place:private', { kind: 'console' }, /^“private” only works in Discord/],
    ['place:console', channel, /^I can’t remind you at “console” from here\. Here or private\?$/],
    ['place:shed', channel, /^I don’t know the place “shed”/],
    ['time:25', channel, /^“25”: what time is that\? For example: \/reminders time:09:00$/],
    ['shake:hourly', channel, /daily, every other day, or off\. For example:\s\/reminders shake:every other day$/],
    ['pause-until:today', channel, /^“today” is over already/],
    ['pause-until:2 December 2025', channel, /^“2 December 2025” is over already/],
    ['pause-until:soon', channel, /^“soon”: which day is that\? For example: \/reminders pause-until:in 2 weeks$/],
    ['zone:Larderland', channel, /^I don’t know “Larderland”.*zone:London$/],
  ])('refuses %s in a sentence and keeps what is set', async (options, place, message) => {
    const desk = await sit(place)
    const outcome = await desk.run(`/reminders time:7 ${options}`.replace('time:7 time', 'time'))
    expect(outcome).toMatchObject({
      ok: false,
      error: { code: expect.stringMatching(/bad_value|not_found/), option: options.split(':')[0] },
    })
    expect(await desk.textOf(`/reminders ${options}`)).toMatch(message)
    expect(await desk.store.read('local')).toEqual(NOBODY)
    expect(desk.faults()).toEqual([])
  })
})
