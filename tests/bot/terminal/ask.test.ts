import { describe, expect, it } from 'vitest'
import { z } from 'zod'
import { defineCommand } from '../../../bot/chat/command.ts'
import { ask } from '../../../bot/terminal/ask/ask.ts'
import { fakeReply } from '../chat/fakes.ts'
import { fakeDesk } from './fakes.ts'

const GOOD = '/mix spirit:1000 ml strength:95%'

const run = async (argv: readonly string[], input = '', more = {}) => {
  const { desk, printed } = fakeDesk(input, more)
  return { code: await ask(argv, desk), ...printed }
}

const json = (out: string) =>
  out
    .trimEnd()
    .split('\n')
    .map((line) => JSON.parse(line))

describe('ask', () => {
  it('prints the reply, in quotes or in pieces', async () => {
    expect(await run([GOOD])).toEqual({ code: 0, out: 'fake\n', err: '', log: '' })
    expect(await run(GOOD.split(' '))).toEqual({ code: 0, out: 'fake\n', err: '', log: '' })
  })

  it('says one sentence on standard error for bad input', async () => {
    const { code, out, err } = await run(['/mix spirit:1 l strenght:95%'])
    expect([code, out]).toEqual([2, ''])
    expect(err).toBe('I don’t know what to do with “strenght:”. Did you mean this?\n/mix spirit:1 l strength:95%\n')
  })

  it('shows the command in use where an option is missing', async () => {
    const { err } = await run(['/mix 1 l'])
    expect(err).toBe('How strong is it? For example: /mix spirit:1 l strength:95%\n')
  })

  it.each(['/nan', '/broken text:x'])('apologises once for a fault of ours: %s', async (line) => {
    const { code, out, err, log } = await run([line])
    expect([code, out]).toEqual([1, ''])
    expect(err).toBe('Sorry, something broke on my side. Please try again.\n')
    expect(log).toMatch(/^\/(nan|broken): /)
  })

  it('apologises likewise where the words fail', async () => {
    const headline = { group: 'headlines', key: 'fault', values: {} }
    const mute = defineCommand({
      path: 'mute',
      topic: 'sums',
      input: z.object({}),
      run: () => fakeReply({}, { headline }),
    })
    const { code, err, log } = await run(['/mute'], '', { commands: [mute] })
    expect([code, err]).toEqual([1, 'Sorry, something broke on my side. Please try again.\n'])
    expect(log).toMatch(/^\/mute: TypeError/)
  })

  it('prints JSON as the contract has it, errors too', async () => {
    const cautions = [{ group: 'cautions', key: 'strong', values: { text: 'Strong.' } }]
    const sour = defineCommand({
      path: 'sour',
      topic: 'sums',
      input: z.object({}),
      run: () => fakeReply({ a: 0.1, b: null }, { cautions }),
    })
    expect(json((await run(['--json', '/sour'], '', { commands: [sour] })).out)).toEqual([
      {
        command: 'sour',
        data: { a: 0.1, b: null },
        rows: [],
        sure: [],
        notes: [],
        cautions: [{ key: 'strong', text: 'Strong.', depth: 'first' }],
      },
    ])
    const { code, out, err } = await run(['/mix 1 l strenght:95%', '--json'])
    expect([code, err]).toEqual([2, ''])
    const message = 'I don’t know what to do with “strenght:”. Did you mean this? /mix 1 l strength:95%'
    expect(json(out)).toEqual([{ command: 'mix', error: { code: 'unknown_option', message, nearest: 'strength' } }])
    expect(json((await run(['/mix 1 l', '--json'])).out)[0].error).toMatchObject({
      code: 'missing_option',
      option: 'strength',
    })
  })

  it('reads every line of standard input, and ends with the worst', async () => {
    const input = `\ufeff# a comment\n\n${GOOD}\r\n/mxi\n  # another\n${GOOD}`
    const { code, out, err } = await run(['-'], input)
    expect([code, out]).toEqual([2, 'fake\n\n\nfake\n'])
    expect(err).toBe('Line 4: I don’t know “mxi”. Did you mean /mix? See: /help mix\n')
    expect((await run(['-'], `/nan\n/mxi\n${GOOD}`)).code).toBe(1)
    expect((await run(['-'], '')).code).toBe(0)
    const objects = json((await run(['-', '--json'], input)).out)
    expect(objects.map(({ command }) => command)).toEqual(['mix', null, 'mix'])
  })

  it('stops reading when nobody listens', async () => {
    expect((await run(['-'], '/nan\n/nan', { isHeard: () => false })).code).toBe(0)
  })

  it.each<[clock: string[], nowMs: number]>([
    [['--now', '2026-12-24T18:00:00Z'], Date.UTC(2026, 11, 24, 18)],
    [['--now=2026-12-24T18:00+01:00'], Date.UTC(2026, 11, 24, 17)],
    [[], 42],
  ])('takes %s for now', async (clock, nowMs) => {
    const when = defineCommand({
      path: 'when',
      topic: 'sums',
      input: z.object({}),
      run: (_, context) => fakeReply({ nowMs: context.nowMs }),
    })
    const { out } = await run([...clock, '--json', '/when'], '', { commands: [when], now: () => 42 })
    expect(json(out)[0].data).toEqual({ nowMs })
  })

  it.each(['', 'today', '2026-12-24', '2026-02-30T10:00:00Z', '2026-12-24T18:00:00', '2026-12-24T25:00:00Z'])(
    'does not take “%s” for now',
    async (instant) => {
      const { code, err } = await run(['--now', instant, GOOD])
      expect(code).toBe(2)
      expect(err).toMatch(/--now 2026-12-24T18:00:00Z/)
    },
  )

  it.each([[['/said', 'not', '-hot-', '-5', '-', '-hj']], [['/said not', '-hot- -5', '-', '-hj']]])(
    'takes words with a dash for words: %j',
    async (argv) => {
      const said = defineCommand({
        path: 'said',
        topic: 'sums',
        input: z.object({ words: z.string() }),
        run: ({ words }) => fakeReply({ words }),
      })
      const { code, out } = await run([...argv, '--json'], '', { commands: [said] })
      expect([code, json(out)[0].data]).toEqual([0, { words: 'not -hot- -5 - -hj' }])
    },
  )

  it.each(['--json=yes', '--json=', '--helpp', '--no-json', '--', '--json-'])('knows no flag %s', async (flag) => {
    const { code, err } = await run([flag, GOOD])
    expect([code, err]).toEqual([2, expect.stringContaining(`ask has no flag “${flag}”`)])
  })

  it('explains its use', async () => {
    expect(await run(['--help'])).toMatchObject({ code: 0, err: '' })
    expect((await run(['--help'])).out).toMatch(/npm run -s ask -- '\/mix/)
    const bare = await run([])
    expect([bare.code, bare.out]).toEqual([2, ''])
    expect(bare.err).toMatch(/^What should I answer\?[\s\S]*\n\nnpm run/)
    expect((await run(['--jsno', GOOD])).err).toBe('ask has no flag “--jsno”. Did you mean --json?\n')
    expect(json((await run(['--json'])).out)[0]).toMatchObject({ command: null, error: { code: 'missing_option' } })
  })

  it('helps, in words and as data', async () => {
    const first = await run(['/help'])
    expect([first.code, first.out]).toEqual([0, expect.stringContaining('/help all')])
    const all = await run(['/help all'])
    expect(all.code).toBe(0)
    expect(all.out).toMatch(/^Commands\n {2}\/mix +About mix\n/)
    const one = await run(['/help mix'])
    expect(one.out).toMatch(/\/mix: About mix\n\nOptions\n {2}spirit: +How much spirit \(needed\)\n/)
    expect(one.out).toMatch(/water: +How much water\n/)
    expect(one.out).toMatch(/Examples\n {2}\/mix 1 l strength:95%\n$/)
    const [{ command, data }] = json((await run(['--json', '/help /mix'])).out)
    expect([command, data.commands.length]).toEqual(['help', 1])
    expect(data.commands[0].options[0]).toEqual({ name: 'spirit', text: 'How much spirit', required: true })
    for (const line of ['/jar', 'JAR', '/help jar']) {
      const { code, out } = await run([line])
      expect([code, out]).toEqual([0, expect.stringMatching(/\/jar start .*\/jar list /s)])
      expect(out).not.toContain('/mix ')
    }
    expect((await run(['/help mxi'])).err).toBe('I don’t know “mxi”. Did you mean /mix? See: /help mix\n')
  })
})
