import { expect, it } from 'vitest'
import { until } from '../bot/discord/connected.ts'
import { textOf } from '../bot/discord/fake/shown-text.ts'
import { bot, fake, onStage } from '../bot/discord/stage.ts'

onStage()

const answers = () => [...fake.channel.messages.values()].filter(({ author }) => author === fake.bot)

/** Writes it where all can read it, and waits for the answer. */
const said = async (text: string): Promise<string> => {
  const before = answers().length
  fake.write(fake.channel, fake.user, `<@${fake.bot.id}> ${text}`)
  await until(() => answers().length > before)
  return textOf(answers().at(-1)!.json)
}

it.each([
  ['20 g of fox glove in a litre of gin', /heart/],
  ['hemlok root', /breathing/],
  ['my mum is on warfarin, can she have cranberry liqueur', /pharmacist/],
  ['grappa fatta in casa dal vicino 1 litro e prugne', /methanol/],
  ['put the coffee jar in the microwave for two minutes', /never heat it/],
  ['my toddler drank some of the lemon', /^\W*Call your emergency number/],
])('names the danger in a channel: %s', async (text, danger) => {
  const answer = await said(text)
  expect(answer).toMatch(danger)
  expect(answer).not.toMatch(/\bBuy \d|Strain when/)
  expect((await bot.store.read(fake.user.id)).jars).toEqual([])
})
