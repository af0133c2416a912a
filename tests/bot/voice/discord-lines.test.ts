import { expect, it } from 'vitest'
import { cookName } from '../../../bot/text/en/cook-names.ts'
import { catalogue } from '../../../core/botanical/catalogue/catalogue.ts'
import { sampled } from '../../runs.ts'
import { newAsker, type TestAsker } from '../asker.ts'
import { deskWith, jarOf, NOW_MS, startedAs } from '../commands-jar-views/jars.ts'
import { messagesOf, textsOf } from '../discord/rendering.ts'
import { testDesk } from '../test-desk.ts'
import { budgets } from './budgets.ts'
import { drawnLines, PHONE_COLUMNS } from './discord-screens.ts'

/** Ends the message that opens the rest, as Discord has it wherever something stands deeper. */
const MORE = { more: '!more' } as const

interface Drawn {
  readonly line: string
  readonly lines: readonly string[]
}

async function drawn(line: string, nowMs: number, given: TestAsker = newAsker()): Promise<Drawn> {
  const asker: TestAsker = { ...given, place: { kind: 'private' } }
  const messages = await messagesOf(await testDesk({ nowMs, asker }).run(line), MORE)
  return { line, lines: messages.flatMap(drawnLines) }
}

/** Those longer than they may be; the longest by name. */
function over(of: string, screens: readonly Drawn[], most: number): readonly string[] {
  const byLength = screens.toSorted((one, other) => other.lines.length - one.lines.length)
  console.log(`longest ${of} in Discord: ${byLength[0]?.line} (${byLength[0]?.lines.length})`)
  return byLength
    .filter(({ lines }) => lines.length > most)
    .slice(0, 3)
    .map(({ line, lines }) => `${lines.length} lines: ${line}\n${lines.join('\n')}`)
}

const START_MS = Date.parse('2026-09-01T12:00:00Z')

it(`draws no line of more than ${PHONE_COLUMNS} columns, and markdown as it is seen`, async () => {
  const { lines } = await drawn('/plan of:10 lemons spirit:1 l 95%', START_MS)
  expect(lines.every((line) => line.length <= PHONE_COLUMNS)).toBe(true)
  expect(lines.join('\n')).not.toMatch(/\*\*|<t:|<\/|^-# /m)
})

it('plans any plant on one screen', async () => {
  const plants = sampled(catalogue, 16)
  const screens: Drawn[] = []
  for (const { id } of plants) screens.push(await drawn(`/plan of:${cookName(id)} spirit:1 l 70%`, START_MS))
  expect(over('plan', screens, budgets.plan[44])).toEqual([])
}, 120_000)

it('tells of any plant on one screen', async () => {
  const screens: Drawn[] = []
  for (const { id } of sampled(catalogue, 16)) screens.push(await drawn(`/botanical of:${cookName(id)}`, START_MS))
  expect(over('plant', screens, budgets.botanical[44])).toEqual([])
}, 120_000)

it.each([
  ['syrup', '/syrup infusion:920 ml strength:82% to-strength:30% to-sweetness:250 g/L'],
  ['syrup_styles', '/syrup infusion:920 ml strength:82%'],
  ['mixture', '/mix spirit:1 l strength:95% water:750 ml sugar:500 g'],
  ['mixture', '/dilute spirit:1 l 95% to-strength:40%'],
  [
    'mixture',
    '/adjust liqueur:2 l strength:30% sweetness:190 g/L to-strength:35% to-sweetness:250 g/L spirit-strength:95%',
  ],
  ['settings', '/settings'],
  ['reminders', '/reminders'],
  ['first_jar', '/jar start lemon of:10 lemons spirit:1 l 95%'],
  ['refusal', '/plan of:10 lemons spirit:a bottle'],
  ['refusal', '/plan of:foxglove spirit:1 l 95%'],
  ['refusal', '/jar strain lemon'],
  ['measure', '/trouble too sweet strength:28% sweetness:330 g/L'],
] as const)('answers in the lines of %s: %s', async (key, line) => {
  expect(over(key, [await drawn(line, START_MS)], budgets[key][44])).toEqual([])
})

it('answers each step of a jar in a few lines', async () => {
  const asker = newAsker()
  const steps = [
    ['first_jar', 0, '/jar start ginger of:150 g ginger spirit:700 ml 60%'],
    ['jar_start', 0, '/jar start lemon of:10 lemons spirit:1 l 95%'],
    ['jar_step', 1, '/jar shake lemon'],
    ['jar_step', 7, '/jar taste lemon rating:4 note:bright'],
    ['jar_strain', 15, '/jar strain lemon measured:960 ml strength:88%'],
    ['jar_step', 15, '/jar sweeten lemon water:1.6 l sugar:530 g'],
    ['jar_step', 16, '/jar bottle lemon bottles:5 x 500 ml'],
    ['jar_step', 60, '/jar open lemon'],
    ['jar_show', 60, '/jar show lemon'],
    ['jar_step', 90, '/jar empty lemon'],
    ['notebook', 90, '/notebook'],
  ] as const
  for (const [key, day, line] of steps) {
    const screen = await drawn(line, START_MS + day * 86_400_000, asker)
    const more = key === 'jar_show' ? 7 * budgets.jar_show.more[44] : 0
    expect(over(key, [screen], budgets[key][44] + more)).toEqual([])
  }
})

it('lists forty jars on one screen, and each of them in pages', async () => {
  const jars = Array.from({ length: 40 }, (_, index) =>
    jarOf(`jar${String(index).padStart(2, '0')}`, [{ ...startedAs(`number ${index}`), on: '2026-11-01' }]),
  )
  const desk = await deskWith({ jars }, { nowMs: NOW_MS })
  const outcome = await desk.run('/jar list')
  const lines = (await messagesOf(outcome, MORE)).flatMap(drawnLines)
  expect(over('list of 40 jars', [{ line: '/jar list', lines }], budgets.jar_list[44])).toEqual([])
  const pages = await messagesOf(outcome, { shown: 'more' })
  const text = pages.flatMap(textsOf).join('\n')
  for (let index = 0; index < 40; index++) expect(text).toContain(`**number ${index}:**`)
})
