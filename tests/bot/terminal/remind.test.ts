import { setImmediate } from 'node:timers/promises'
import { describe, expect, it } from 'vitest'
import { nudgeReply } from '../../../bot/reminders/nudge-reply.ts'
import { tick } from '../../../bot/reminders/tick.ts'
import { chat } from '../../../bot/terminal/chat/chat.ts'
import { consoleSurface } from '../../../bot/terminal/chat/terminal-delivery.ts'
import type { TerminalSession } from '../../../bot/terminal/chat/terminal-session.ts'
import { en } from '../../../bot/text/en/index.ts'
import { memoryStore } from '../../../store/memory/memory-store.ts'
import { NOBODY } from '../../../store/person.ts'
import { at, jarOf, MINUTE_MS, personWith, ZONE } from '../reminders/people.ts'
import { fakeDesk } from './fakes.ts'
import { fakeTerminal } from './terminal.ts'

const MORNING = at('2026-12-02')
const NUDGE = 'Shake the lemon jar.'

/** A chat at a terminal; `say` is there once it has begun. */
const sitDown = async (remind: TerminalSession['remind'] = async () => async () => {}) => {
  const terminal = fakeTerminal()
  let say = (_text: string): void => {}
  const stopped: string[] = []
  const ended = new AbortController()
  const { desk } = fakeDesk('', {
    input: terminal.input,
    terminal: terminal.output,
    out: terminal.print,
    ended: ended.signal,
    remind: async (given) => {
      say = given
      const stop = await remind(given)
      return async () => {
        stopped.push('stopped')
        await stop()
      }
    },
  })
  const over = chat(desk)
  const settle = async (): Promise<void> => {
    for (let turn = 0; turn < 10; turn++) await setImmediate()
  }
  await settle()
  return {
    ...terminal,
    say: (text: string) => say(text),
    /** Key by key; `\u001b[D` is one. */
    type: async (text: string) => {
      for (const key of text.match(/\p{Cc}\[[A-D]|./gsu) ?? []) terminal.input.write(key)
      await settle()
    },
    settle,
    stopped,
    ended,
    over,
  }
}

const leave = async (chatting: Awaited<ReturnType<typeof sitDown>>): Promise<void> => {
  await chatting.type('\u0005\u0015/quit\r')
  await chatting.over
}

describe('a nudge while somebody types', () => {
  it('stands above the prompt, and the typed text stays', async () => {
    const here = await sitDown()
    await here.type('/mix spirit:10')
    here.say(NUDGE)
    expect(here.screen()).toMatch(new RegExp(`\n${NUDGE}\n\nlarderbell> /mix spirit:10$`))
    expect(here.cursor().column).toBe('larderbell> /mix spirit:10'.length)
    await here.type('00 ml strength:95%\r')
    expect(here.screen()).toMatch(/\nfake\n\nlarderbell>$/)
    await leave(here)
  })

  it('leaves a line of several rows and the cursor within it as they were', async () => {
    const here = await sitDown()
    const before = here.cursor().row
    await here.type(`/mix spirit:${'1000 ml + '.repeat(6)}`)
    for (let step = 0; step < 50; step++) await here.type('\u001b[D')
    const { row, column } = here.cursor()
    const typed = here.screen().split('\n').slice(before)
    expect(typed.length).toBe(3)
    here.say(NUDGE)
    here.say(NUDGE)
    const rows = here.screen().split('\n')
    expect(rows.slice(-3)).toEqual(typed)
    expect(rows.slice(before, before + 4)).toEqual([NUDGE, '', NUDGE, ''])
    expect(here.cursor()).toEqual({ row: row + 4, column })
    await leave(here)
  })

  it('stands above a text that was pasted, too', async () => {
    const here = await sitDown()
    here.input.write(`/mix spirit:${'1000 ml + '.repeat(6)}`)
    await here.settle()
    here.say(NUDGE)
    expect(here.screen()).toMatch(new RegExp(`/help\n\n${NUDGE}\n\nlarderbell> /mix spirit:1000`))
    await leave(here)
  })

  it('is a block of its own where nobody sits at a terminal', async () => {
    const { desk, printed } = fakeDesk('', {
      remind: async (say) => {
        say(NUDGE)
        return async () => {}
      },
    })
    await chat(desk)
    expect(printed.out.endsWith(`\n${NUDGE}\n\n`)).toBe(true)
  })
})

describe('the chat', () => {
  it('says what fell due meanwhile before the first prompt', async () => {
    const here = await sitDown(async (say) => {
      say(NUDGE)
      return async () => {}
    })
    expect(here.screen()).toMatch(new RegExp(`/help\n\n${NUDGE}\n\nlarderbell>$`))
    await leave(here)
  })

  it('loses no line that comes before the reminders have been looked at', async () => {
    const { desk, printed } = fakeDesk('/mix spirit:1000 ml strength:95%\n', {
      remind: async () => {
        for (let turn = 0; turn < 20; turn++) await setImmediate()
        return async () => {}
      },
    })
    await chat(desk)
    expect(printed.out).toContain('fake')
  })

  it('ends the reminding at /quit and when it is told to end', async () => {
    const quit = await sitDown()
    await leave(quit)
    const told = await sitDown()
    told.ended.abort()
    await told.over
    expect([quit.stopped, told.stopped]).toEqual([['stopped'], ['stopped']])
  })
})

describe('the terminal as a surface', () => {
  const lemon = jarOf({ name: 'lemon', startedMs: at('2026-11-25') })
  const setUp = async (isHeard = () => true) => {
    const said: string[] = []
    const store = memoryStore(ZONE)
    await store.update('local', () => personWith([lemon]))
    await store.update('12345678901234567', () => personWith([lemon]))
    const screen = { width: 80, colour: false }
    const surface = consoleSurface({ userId: 'local', language: en, screen, say: (text) => said.push(text), isHeard })
    const pass = (nowMs: number) => tick({ store, nowMs, assumedZone: ZONE, surface, log: (text) => said.push(text) })
    return { said, store, surface, pass }
  }

  it('says a week that was missed in one message, once, and only to whoever sits there', async () => {
    const { said, store, pass } = await setUp()
    for (let minute = 0; minute < 10; minute++) await pass(MORNING + minute * MINUTE_MS)
    expect(said).toHaveLength(1)
    expect(said[0]).toMatch(/^Shake lemon\./)
    expect((await store.read('12345678901234567')).jars[0]?.told).toEqual([])
  })

  it('sends nothing where nobody reads any more', async () => {
    const { said, store, pass } = await setUp(() => false)
    await pass(MORNING)
    expect(said).toEqual([])
    expect((await store.read('local')).nudges).toMatchObject([{ state: 'waiting' }])
  })

  it('knows what it printed itself', async () => {
    const { surface } = await setUp()
    const nudge = {
      id: 'a1',
      place: { kind: 'console' },
      duties: [],
      state: 'sending',
      madeMs: 0,
      attempts: 1,
      nextMs: 0,
    } as const
    const sought = { nudgeId: 'a1', userId: 'local', place: nudge.place, madeMs: 0 }
    expect(await surface.findSent?.(sought)).toBe('unknown')
    const reply = nudgeReply(
      personWith([lemon]),
      nudge,
      { mayHaveBeenSeen: false, isMoved: false },
      { nowMs: MORNING, assumedZone: ZONE },
    )
    await surface.send({ ...sought, reply, settings: NOBODY.settings, mayHaveBeenSeen: false, attempt: 1 })
    expect(await surface.findSent?.(sought)).toBe('there')
  })
})
