import { expect, it } from 'vitest'
import { escapeText } from '../../../bot/discord/show/escape-text.ts'
import { speechIn } from '../../../bot/discord/show/language-for-discord.ts'
import { stamped, unmarked } from '../../../bot/discord/show/timestamps.ts'
import { en } from '../../../bot/text/en/index.ts'

const secondsIn = (text: string): number => Number(/<t:(-?\d+):/.exec(text)?.[1])

const clockIn = (zone: string, seconds: number): string =>
  new Intl.DateTimeFormat('en-GB', { timeZone: zone, dateStyle: 'short', timeStyle: 'short' }).format(seconds * 1000)

it.each(['UTC', 'Europe/Rome', 'America/St_Johns', 'Pacific/Kiritimati', 'Pacific/Pago_Pago', 'Asia/Kathmandu'])(
  'a day is its noon in %s, a moment what the clocks show there',
  (zone) => {
    const format = stamped(zone)(en.format('metric'))
    for (const [month, day] of [
      [3, 29],
      [7, 1],
      [10, 25],
      [12, 9],
    ] as const) {
      const two = (value: number): string => String(value).padStart(2, '0')
      const date = `${two(day)}/${two(month)}/2026`
      const noon = escapeText(format.day({ year: 2026, month, day }))
      expect(noon).toMatch(/^<t:\d+:D>$/)
      expect(clockIn(zone, secondsIn(noon))).toBe(`${date}, 12:00`)
      const evening = escapeText(format.moment({ year: 2026, month, day }, 18 * 60 + 30, 'in the evening'))
      expect(evening).toMatch(/^<t:\d+:f>$/)
      expect(clockIn(zone, secondsIn(evening))).toBe(`${date}, 18:30`)
    }
  },
)

it('shows both days of a range in full', () => {
  const { words, plainWords } = speechIn(en, 'UTC')
  const from = { year: 2026, month: 12, day: 9 }
  const message = { group: 'cells', key: 'plan_days', values: { from, to: { ...from, day: 25 } } } as const
  expect(plainWords.say<'cells'>(message, 'metric')).toBe('from 9 to 25 December 2026')
  expect(escapeText(words.say<'cells'>(message, 'metric'))).toBe('from <t:1796817600:D> to <t:1798200000:D>')
})

it('names a channel as Discord does, and elsewhere without its number', () => {
  const id = '123456789012345678'
  expect(escapeText(`in ${stamped('UTC')(en.format('metric')).channel(id)}`)).toBe(`in <#${id}>`)
  expect(en.format('metric').channel(id)).toBe('a channel')
  const { words } = speechIn(en, 'UTC')
  const renamed = {
    group: 'headlines',
    key: 'jar_renamed',
    values: { before: `\ufdd0#${id}\ufdd1`, name: 'y' },
  } as const
  expect(escapeText(words.say<'headlines'>(renamed, 'metric'))).not.toContain('<#')
})

it('lets nobody type one', () => {
  const typed = 'x\ufdd01796817600:D\ufdd1 <t:1796817600:D>'
  const { words } = speechIn(en, 'UTC')
  const renamed = { group: 'headlines', key: 'jar_renamed', values: { before: typed, name: 'y' } } as const
  expect(escapeText(words.say<'headlines'>(renamed, 'metric'))).toBe(
    '“x1796817600:D \\<t\\:1796817600:D\\>” is now “y”.',
  )
  const problem = words.problem<'no_such_jar'>('no_such_jar', { typed, nearest: null }, 'metric')
  expect(escapeText(problem)).not.toMatch(/<t:/)
  expect(unmarked({ list: [typed, 1, null, { deep: typed }], none: undefined })).toEqual({
    list: [typed.replace(/[\ufdd0\ufdd1]/g, ''), 1, null, { deep: typed.replace(/[\ufdd0\ufdd1]/g, '') }],
    none: undefined,
  })
})
