import { expect, it } from 'vitest'
import { bot, fake, onStage } from './stage.ts'

onStage()

const LEMON = { name: 'lemon', of: '10 lemons', spirit: '1 l 95%' }
const CALL = /^\*\*Call your emergency number \(112 in the EU\)/

it('answers what a slash command tells of somebody harmed at once, to them alone, and runs nothing', async () => {
  const answer = await fake.slash('jar start', { ...LEMON, of: 'my cat drank it' })
  expect(answer).toMatchObject({ isPrivate: true })
  expect(answer.calls.map(({ route }) => route)).toEqual(['callback'])
  expect(answer.text).toMatch(/^\*\*Call your vet now\.\*\*\n\*\*Person hurt\?:\*\* Call your emergency number/)
  expect(answer.text).toContain('/settings country:IE')
  expect((await fake.slash('jar list', {})).text).not.toContain('cat')
})

it('says the numbers of the country that was chosen', async () => {
  await fake.slash('settings', { country: 'Austria' })
  expect((await fake.slash('help', { command: 'il bambino ha bevuto la grappa' })).text).toMatch(
    /^\*\*Call 112 if[^\n]*\n+\*\*Poison centre:?\*\* 01 406 43 43, day and night/,
  )
})

it('answers before a form is opened, and what a form was sent with', async () => {
  await fake.slash('jar start', LEMON)
  expect((await fake.slash('jar taste', { jar: 'my son drank from the jar' })).text).toMatch(CALL)
  const asked = await fake.slash('jar taste', { jar: 'lemon' })
  expect(asked.modal).toBeDefined()
  expect((await fake.submit(asked, { note: 'my husband passed out' })).text).toMatch(CALL)
  expect((await fake.slash('jar show', { jar: 'lemon' })).text).not.toContain('passed out')
})

it('answers whoever has sent too much for anything else', async () => {
  for (let count = 0; count < 30; count++) await fake.slash('help', {})
  expect((await fake.slash('help', {})).text).not.toContain('**')
  expect((await fake.slash('plan', { of: 'he wont wake up', spirit: '1 l' })).text).toMatch(CALL)
  expect(bot.logged.join('\n')).not.toMatch(/wake|harm/)
})
