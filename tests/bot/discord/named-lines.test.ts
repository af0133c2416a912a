import { expect, it } from 'vitest'
import { optionNames } from '../../../bot/chat/callable.ts'
import { parseLine } from '../../../bot/chat/grammar/grammar.ts'
import { jarNames } from '../../../bot/discord/show/jar-names.ts'
import { namedLines } from '../../../bot/discord/show/name-first-option.ts'
import { en } from '../../../bot/text/en/index.ts'
import { commands } from '../test-desk.ts'
import { buttonsOf } from './fake/shown-text.ts'
import { speech } from './rendering.ts'
import { bot, fake, onStage } from './stage.ts'

const { line, sentence } = namedLines(en.commands)

it('names the first option of every example, and changes nothing else', () => {
  for (const { path, input } of commands) {
    const text = en.commands[path as keyof typeof en.commands]!
    expect(Object.keys(text.options), path).toEqual(optionNames({ path, input }))
    for (const example of text.examples) {
      const named = line(example)
      expect(parseLine(named, commands)).toEqual(parseLine(example, commands))
      const rest = named.slice(path.length + 1).trim()
      if (rest !== '') expect(rest, named).toMatch(/^[a-z-]+:/)
    }
  }
})

it.each([
  ['/jar start lemon of:10 lemons', '/jar start name:lemon of:10 lemons'],
  ['/jar sweeten lemon peel water:…', '/jar sweeten jar:lemon peel water:…'],
  ['/jar taste #ah59y rating:4', '/jar taste jar:#ah59y rating:4'],
  ['/jar taste "water mint: two" rating:4', '/jar taste jar:"water mint: two" rating:4'],
  ['/help jar start', '/help command:jar start'],
  ['/jar list', '/jar list'],
  ['/plan of:10 lemons', '/plan of:10 lemons'],
  ['lemon', 'lemon'],
])('writes %j as %j', (typed, named) => {
  expect(line(typed)).toBe(named)
})

it.each([
  ['Add /jar taste lemon rating:4', { example: '/jar taste lemon rating:4' }, 'Add /jar taste jar:lemon rating:4'],
  ['If not, /jar undo lemon takes it back.', { name: 'lemon' }, 'If not, /jar undo jar:lemon takes it back.'],
  ['/jar show and a name tells more.', { name: 'lemon' }, '/jar show and a name tells more.'],
  ['/jar undo lemonade', { name: 'lemon' }, '/jar undo lemonade'],
  ['I cannot read “/jar show lemon”.', { typed: '/jar show lemon' }, 'I cannot read “/jar show lemon”.'],
  ['/plan of:10 lemons', { line: '/plan of:10 lemons' }, '/plan of:10 lemons'],
  ['Type: /plan 10 lemons spirit:1 l 95%', {}, 'Type: /plan of:10 lemons spirit:1 l 95%'],
  [
    'I don’t know this. /plan 6 limes spirit:1 l',
    { typed: 'a /plan 6 limes spirit:1 l' },
    'I don’t know this. /plan 6 limes spirit:1 l',
  ],
])('writes the lines in %j', (text, values, named) => {
  expect(sentence(text, values)).toBe(named)
})

it('does so in problems and notes alike', () => {
  expect(speech.words.problem('no_such_entry', { jar: 'lemon', seq: 9 }, 'metric')).toMatch(/ \/jar show jar:lemon$/)
})

onStage()

it('shows only lines that can be sent', async () => {
  await fake.slash('jar start', { name: 'lemon', of: '10 lemons', spirit: '1 l 95%', 'to-strength': '30%' })
  const help = await fake.slash('help', { command: 'jar start' })
  expect(help.text).toContain('/jar start name:')
  const empty = await fake.submit(await fake.slash('jar taste', { jar: 'lemon' }), {})
  expect(empty.text).toMatch(/\/jar taste jar:\S+ rating:4/)
})

it('tells of the commands that only Discord has', async () => {
  const { text } = await fake.slash('help', { command: 'ask' })
  expect(text).toContain('/ask text:10 lemons and a litre of 95%')
  expect(text).toContain(en.registration.ask.summary)
})

it('names a jar as its maker does where a line is read or typed, and keeps its id on the buttons', async () => {
  await fake.slash('jar start', { name: 'lemon', of: '10 lemons', spirit: '1 l 95%' })
  const [jar] = (await bot.store.read(fake.user.id)).jars
  const shown = jarNames([jar!])
  expect(shown(`/jar sweeten jar:#${jar!.id} sugar:160 g after:3`)).toBe('/jar sweeten jar:lemon sugar:160 g')
  expect(shown(`See /jar show jar:#${jar!.id}, or #zzzzz after 3 days`)).toBe(
    'See /jar show jar:lemon, or #zzzzz after 3 days',
  )
  expect(shown('/jar sweeten jar:lemon after:3')).toBe('/jar sweeten jar:lemon after:3')
  // Another jar of the name is not this one.
  expect(jarNames([jar!, { ...jar!, id: 'other' }])(`/jar show jar:#other`)).toBe('/jar show jar:#other')
  const strained = await fake.slash('jar strain', { jar: 'lemon', measured: '930 ml', strength: '87%' })
  expect(strained.text).not.toContain(`#${jar!.id}`)
  expect(
    buttonsOf(strained.message!.json)
      .map(({ customId }) => customId)
      .join(),
  ).toContain(`#${jar!.id}`)
})
