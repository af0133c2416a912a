import { expect, it } from 'vitest'
import { talkerFor } from './told.ts'

const said = async (text: string) => (await talkerFor({ after: null })).say(text)

// Rome and Dublin name a zone of the IANA list, Milan, Cork and Leeds name none.
it.each([
  ['I’m in Rome', '/settings zone:rome'],
  ['we live in Dublin', '/settings zone:dublin'],
  ['I’m in Italy', '/settings country:italy'],
])('%s', async (text, read) => {
  expect(await said(text)).toMatchObject({ read, code: null })
})

it.each(['I’m in Milan', 'I live in Milan', 'I’m from Leeds', 'sono a Milano', 'abito a San Remo'])(
  'asks for the time zone of a place that names none: %s',
  async (text) => {
    const one = await talkerFor({ after: null })
    const told = await one.say(text)
    expect(told).toMatchObject({ command: 'settings', code: 'question', choices: ['/settings zone:Rome'], recorded: 0 })
    expect((await one.say(told.choices[0]!)).code).toBeNull()
  },
)

it('takes the city that is named then', async () => {
  const one = await talkerFor({ after: null })
  await one.say('I’m in Milan')
  expect(await one.say('Rome')).toMatchObject({ read: '/settings zone:Rome', code: null })
})

it.each(['I’m in the shed', 'I’m in bed', 'sono in cantina'])('is no place of the kind: %s', async (text) => {
  expect((await said(text)).command).not.toBe('settings')
})

const ofShelf = async (text: string) => (await talkerFor({ after: null, shelf: 'lemon_bottled' })).say(text)

it.each([
  'my freezer is at cucchiaino di lemon',
  'my freezer is at lemon',
  'our chest freezer is now at lemon',
  'my freezer is down to lemon',
  'the fridge stays at lemon',
  'my freezer is kept at lemon',
  'my freezer now at lemon',
  'la cantina ora è a lemon',
])('takes a place that is spoken of itself for no place of a jar: %s', async (text) => {
  expect(await ofShelf(text)).toMatchObject({ recorded: 0 })
})

it('takes it for how cold the place is', async () => {
  expect(await ofShelf('my freezer is at minus 20 for the lemon')).toMatchObject({ read: '/settings freezer:-20 C' })
})

it.each([
  ['the lemon is in the freezer', 'freezer'],
  ['put the lemon in our chest freezer', 'chest freezer'],
  ['in my freezer is now at last the lemon', 'freezer'],
])('%s', async (text, where) => {
  expect(await ofShelf(text)).toMatchObject({ read: `/jar note lemon where:${where}`, recorded: 1 })
})
