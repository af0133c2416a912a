import { expect, it } from 'vitest'
import { buttonsOf } from './fake/shown-text.ts'
import { bot, fake, onStage } from './stage.ts'

onStage()

const NOTHING = '/jar note lemon was:only pith'

const kindsNow = async () => (await bot.store.read(fake.user.id)).jars[0]!.entries.map(({ kind }) => kind)

it('offers under what is held back one press that says it was nothing, and then goes on', async () => {
  await fake.slash('jar start', { name: 'lemon', of: '10 lemons', spirit: '1 l 95%' })
  const told = await fake.slash('trouble', { symptom: 'mould', jar: 'lemon', yes: 'growth' })
  expect(told.text).toContain('Throw it away')
  expect(buttonsOf(told.message!.json).map(({ label }) => label)).toEqual(
    expect.arrayContaining(['Throw it away', 'It was only pith', 'Undo']),
  )
  expect(await kindsNow()).toEqual(['started', 'noted'])
  const held = await fake.slash('share', { jar: 'lemon' })
  expect(held.text).toContain('Throw lemon away: something grows in it')
  expect(buttonsOf(held.message!.json).map(({ label }) => label)).toContain(NOTHING)
  const letOff = await fake.press(held.message, NOTHING)
  expect(letOff.text).toContain('lemon goes on as before')
  expect((await fake.slash('share', { jar: 'lemon' })).text).not.toContain('Throw lemon away')
})

it('takes back with Undo what was kept of it', async () => {
  await fake.slash('jar start', { name: 'lemon', of: '10 lemons', spirit: '1 l 95%' })
  const told = await fake.slash('trouble', { symptom: 'mould', jar: 'lemon', yes: 'growth' })
  await fake.press(told.message, 'Undo')
  expect((await fake.slash('jar show', { jar: 'lemon' })).text).not.toContain('Throw lemon away')
})
