import { describe, expect, it } from 'vitest'
import { en } from '../../../bot/text/en/index.ts'
import type { Answer } from './fake/answer.ts'
import { buttonsOf } from './fake/shown-text.ts'
import type { FakeMessage } from './fake/world.ts'
import { inChannel, keep, messagesIn, reminding, wait } from './reminding.ts'
import { bot, fake, onStage } from './stage.ts'

onStage()

const LEMON = { name: 'lemon', of: '10 lemons', spirit: '1 l 95%', 'to-strength': '30%', 'to-sweetness': '250 g/L' }
const AGAIN = en.discord.tryAgain()

const entriesOf = async () => (await bot.store.read(fake.user.id)).jars[0]!.entries
const kindsOf = async () => (await entriesOf()).map(({ kind }) => kind)

/** What stands in the fields of a form, empty where nothing does. */
const filledOf = ({ modal }: Answer): Record<string, string> =>
  Object.fromEntries(
    (modal!.components as readonly { component: { custom_id: string; value?: string } }[]).map(({ component }) => [
      component.custom_id,
      component.value ?? '',
    ]),
  )

const start = (options: Record<string, string> = {}) => fake.slash('jar start', { ...LEMON, ...options })
const strain = () => fake.slash('jar strain', { jar: 'lemon', measured: '920 ml', strength: '78%' })

describe('sweetening', () => {
  it('asks for the amounts that the jar’s own line names, and records what was poured', async () => {
    await start()
    const { message } = await strain()
    const asked = await fake.slash('jar sweeten', { jar: 'lem' })
    expect(asked.modal).toMatchObject({ title: 'Sweetening: lemon' })
    const { sugar, water } = filledOf(asked)
    const button = buttonsOf(message!.json).find(({ customId }) => customId?.includes('/jar sweeten'))!
    expect(button.customId).toContain(`sugar:${sugar} water:${water}`)
    await fake.submit(asked, { sugar: '600 g', water: '1.4 l' })
    expect((await entriesOf())[2]).toMatchObject({ kind: 'sweetened', sweetenings: [{ massG: { value: 600 } }] })
  })

  it('asks with empty fields where nothing was planned, opens again as it was, and takes one of the two', async () => {
    await fake.slash('jar start', { name: 'lemon', of: '10 lemons', spirit: '1 l 95%' })
    await strain()
    await fake.slash('jar sweeten', { jar: 'lemon', sugar: '700 g', water: '1 l' })
    const asked = await fake.slash('jar sweeten', { jar: 'lemon' })
    const failed = await fake.submit(asked, { sugar: 'two lemons' })
    const again = await fake.press(failed.message, AGAIN)
    expect(filledOf(again)).toEqual({ sugar: 'two lemons', water: '' })
    await fake.submit(again, { sugar: '50 g' })
    expect((await entriesOf()).at(-1)).toMatchObject({
      kind: 'sweetened',
      sweetenings: [{ massG: { value: 50 } }],
      waterG: { value: 0 },
    })
    const empty = await fake.submit(await fake.slash('jar sweeten', { jar: 'lemon' }), {})
    expect(empty.text).toContain('sugar:')
  })

  it('asks nothing where the jar cannot be sweetened, or the amounts are there', async () => {
    await start()
    expect((await fake.slash('jar sweeten', { jar: 'lemon' })).modal).toBeUndefined()
    await strain()
    expect((await fake.slash('jar sweeten', { jar: 'lemon', water: '1 l' })).modal).toBeUndefined()
  })
})

describe('bottling', () => {
  it('asks for as many of half a litre as it fills, and records what was filled', async () => {
    await start()
    await strain()
    const asked = await fake.slash('jar bottle', { jar: 'lemon' })
    expect(asked.modal).toMatchObject({ title: 'Bottling: lemon' })
    expect(filledOf(asked)).toEqual({ bottles: '1 x 500 ml' })
    const failed = await fake.submit(asked, { bottles: 'some' })
    const again = await fake.press(failed.message, AGAIN)
    expect(filledOf(again)).toEqual({ bottles: 'some' })
    await fake.submit(again, { bottles: '2 x 350 ml' })
    expect((await entriesOf()).at(-1)).toMatchObject({ kind: 'bottled', bottles: [{ count: 2, volumeMl: 350 }] })
  })

  it('asks for those that were planned, and for none where nothing is left', async () => {
    await start({ bottles: '3 x 250 ml' })
    await strain()
    expect(filledOf(await fake.slash('jar bottle', { jar: 'lemon' }))).toEqual({ bottles: '3 x 250 ml' })
    await fake.slash('jar bottle', { jar: 'lemon', bottles: '3 x 300 ml' })
    expect(filledOf(await fake.slash('jar bottle', { jar: 'lemon' }))).toEqual({ bottles: '' })
  })

  it('asks nothing where the jar is not strained yet', async () => {
    await start()
    const early = await fake.slash('jar bottle', { jar: 'lemon' })
    expect(early.modal).toBeUndefined()
    expect(early.text).toContain('strain')
  })
})

describe('a reminder to bottle', () => {
  const DAY_MS = 24 * 3_600_000

  /** Its message, of a jar that has been sweetened. */
  const reminded = async (options: Record<string, string> = {}) => {
    const here = reminding(fake, { store: bot.store as ReturnType<typeof reminding>['store'] })
    await keep(here.store, fake, { jars: [], settings: inChannel(fake.channel) })
    await start(options)
    await strain()
    await fake.slash('jar sweeten', { jar: 'lemon', sugar: '600 g', water: '1.4 l' })
    const isBottle = ({ json }: FakeMessage) =>
      buttonsOf(json).some(({ customId }) => customId?.includes('/jar bottle'))
    for (let days = 0; days < 60 && !messagesIn(fake.channel).some(isBottle); days++) {
      bot.pass(DAY_MS)
      await here.later(24 * 60)
    }
    return messagesIn(fake.channel).find(isBottle)!
  }
  const bottled = (message: Awaited<ReturnType<typeof reminded>>) =>
    fake.press(message, buttonsOf(message.json).find(({ customId }) => customId?.includes('/jar bottle'))!.label)

  it('asks for the bottles where none were named, and says what they were', async () => {
    const message = await reminded()
    const asked = await bottled(message)
    expect(asked.modal).toMatchObject({ title: 'Bottling: lemon' })
    await fake.submit(asked, { bottles: '4 x 250 ml' })
    await wait(() => message.edits === 1)
    expect((await entriesOf()).at(-1)).toMatchObject({ bottles: [{ count: 4, volumeMl: 250 }] })
  })

  it('records at once those that were named', async () => {
    const message = await reminded({ bottles: '500 ml' })
    expect((await bottled(message)).modal).toBeUndefined()
    expect(await kindsOf()).toEqual(['started', 'strained', 'sweetened', 'bottled'])
    await wait(() => message.edits === 1)
  })
})
