import { afterEach, beforeEach, expect } from 'vitest'
import { type Connected, connecting, type Setting } from './connected.ts'
import { type FakeDiscord, startFake } from './fake/fake-discord.ts'

/** Of the test that runs. */
export let fake: FakeDiscord
export let bot: Connected

/** Gives every test a Discord of its own, and no bot. At its end nothing has been sent that Discord would refuse. */
export const onFake = (): void => {
  beforeEach(async () => {
    fake = await startFake()
  })

  afterEach(async () => {
    await fake.stop()
    expect(fake.faults()).toEqual([])
  })
}

/** In the place of the one that there is. */
export const anotherFake = async (setting: Parameters<typeof startFake>[0]): Promise<void> => {
  await fake.stop()
  fake = await startFake(setting)
}

/** The bot as `setting` says, connected to the Discord of the test that runs; whoever asks for it ends it. */
export const readied = async (setting: Setting = {}): Promise<Connected> => {
  const connected = connecting(fake, setting)
  await connected.ready()
  return connected
}

const connect = async (setting: Setting): Promise<void> => {
  bot = await readied(setting)
}

/** Stops the bot and starts it anew, with the people it had. */
export const restart = async (setting: Setting = {}): Promise<void> => {
  expect(await bot.end()).toBe(0)
  await connect({ store: bot.store, ...setting })
}

/**
 * Gives every test a Discord of its own and the bot in it. At its end the bot has to stop well, to have sent nothing that
 * Discord would refuse, and to have logged no fault of its own.
 */
export const onStage = (settingFor: (fake: FakeDiscord) => Setting = () => ({})): void => {
  beforeEach(async () => {
    fake = await startFake()
    await connect(settingFor(fake))
  })

  afterEach(async () => {
    expect(await bot.end()).toBe(0)
    await fake.stop()
    expect(fake.faults()).toEqual([])
    expect(bot.logged.filter((line) => /\n\s+at /.test(line))).toEqual([])
  })
}
