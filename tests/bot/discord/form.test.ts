import { expect, it } from 'vitest'
import { decodeCustomId } from '../../../bot/discord/buttons/custom-id.ts'
import { strainingForm } from '../../../bot/discord/forms/amounts-form.ts'
import { jarAlone, readForm, type SentForm, tastingForm } from '../../../bot/discord/forms/form.ts'
import { en } from '../../../bot/text/en/index.ts'
import { commands } from '../test-desk.ts'
import { bareClient } from './fake/bare-client.ts'
import { checkPayload } from './fake/check-payload.ts'
import { startFake } from './fake/fake-discord.ts'

const OWNER = '123456789012345678'

const formOf = (jarName: string) => tastingForm({ owner: OWNER, jarId: 'k7f2a', jarName }, en.tastingForm)

const problemsOf = (data: unknown) => checkPayload('POST', `/interactions/${OWNER}/token/callback`, { type: 9, data })

it.each(['lemon', 'x'.repeat(40), '👩‍👩‍👧‍👦'.repeat(40), '@everyone **bold**', '\u0301'.repeat(40)])(
  'is a form that Discord takes for a jar called %j',
  (name) => {
    const form = formOf(name)
    expect(problemsOf(form)).toEqual([])
    expect(form.title.length).toBeLessThanOrEqual(45)
    expect(form.title).not.toMatch(/\p{Cs}/u)
  },
)

it('shortens a name between characters that people see', () => {
  expect(formOf('midwinter lemon').title).toBe('Tasting: midwinter lemon')
  expect(formOf('👩‍👩‍👧‍👦'.repeat(40)).title).toBe(`Tasting: ${'👩‍👩‍👧‍👦'.repeat(3)}…`)
})

it('would be found out with a longer title', () => {
  expect(problemsOf({ ...formOf('lemon'), title: 'x'.repeat(46) }).length).toBeGreaterThan(0)
})

it('opens again as it was filled in, with what fits', () => {
  const asked = { owner: OWNER, jarId: 'k7f2a', jarName: 'lemon' }
  const again = tastingForm(asked, en.tastingForm, { rating: '2', note: 'x'.repeat(1200), jar: 'other' })
  expect(problemsOf(again)).toEqual([])
  expect(JSON.stringify(again)).toContain('"value":"2","default":true')
  expect(JSON.stringify(again)).toContain(`"value":"${'x'.repeat(1000)}"`)
  const straining = strainingForm(asked, en.strainingForm, { measured: 'banana' })
  expect(problemsOf(straining)).toEqual([])
  expect(straining).toMatchObject({ title: 'Straining: lemon' })
  expect(JSON.stringify(straining).match(/"value":[^,}]*/g)).toEqual(['"value":"banana"'])
})

it('belongs to its owner, and names the jar by its id', () => {
  expect(decodeCustomId(formOf('lemon').custom_id)).toMatchObject({ owner: OWNER, line: '/jar taste #k7f2a' })
})

it('is asked for by a tasting that says nothing yet', () => {
  expect(jarAlone({ path: 'jar taste', options: { jar: '#k7f2a' } })).toBe('#k7f2a')
  expect(jarAlone({ path: 'jar taste', options: { jar: '#k7f2a', rating: '4' } })).toBeNull()
  expect(jarAlone({ path: 'jar taste', options: { rating: '4' } })).toBeNull()
})

const LINE = '/jar taste #k7f2a'
const sent = (rating: readonly string[], note: string) => [
  { type: 18, component: { type: 3, customId: 'rating', values: rating } },
  { type: 18, component: { type: 4, customId: 'note', value: note } },
]

it('reads what was filled in', () => {
  expect(readForm(LINE, sent(['4'], 'bright, jar:x "still" sharp\nnext line'), commands)).toEqual({
    line: LINE,
    filled: { rating: '4', note: 'bright, jar:x "still" sharp\nnext line' },
  })
  expect(readForm(LINE, sent(['5'], '  '), commands).filled).toEqual({ rating: '5' })
  expect(readForm(LINE, sent([], ''), commands).filled).toEqual({})
})

it('takes nothing but its own two fields', () => {
  const strange = { type: 18, component: { type: 4, customId: '__proto__', value: 'x' } }
  const other = { type: 18, component: { type: 4, customId: 'jar', value: 'another' } }
  expect(readForm(LINE, [strange, other, { type: 10 }], commands).filled).toEqual({})
})

it('goes from a real client to a person and back', async () => {
  const fake = await startFake()
  const bot = bareClient(fake)
  try {
    const calls: SentForm[] = []
    bot.answer(async (interaction) => {
      if (interaction.isChatInputCommand()) {
        await interaction.showModal(
          tastingForm({ owner: fake.user.id, jarId: 'k7f2a', jarName: 'lemon' }, en.tastingForm),
        )
      }
      if (interaction.isModalSubmit()) {
        calls.push(readForm(decodeCustomId(interaction.customId)!.line, interaction.components, commands))
        await interaction.reply({ content: 'Noted.', flags: 64 })
      }
    })
    await bot.ready()
    await bot.client.application!.commands.set([{ name: 'taste', description: 'Shows the form' }])
    const note = 'bright, still a little sharp\n\u202e@everyone'
    await fake.submit(await fake.slash('taste'), { rating: '4', note })
    await fake.submit(await fake.slash('taste'), {})
    expect(calls).toEqual([
      { line: LINE, filled: { rating: '4', note } },
      { line: LINE, filled: {} },
    ])
    expect(bot.errors).toEqual([])
    expect(fake.faults()).toEqual([])
  } finally {
    await bot.client.destroy()
    await fake.stop()
  }
})
