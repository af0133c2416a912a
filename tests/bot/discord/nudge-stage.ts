import { afterEach, expect } from 'vitest'
import type { Jar } from '../../../store/person.ts'
import { buttonsOf } from './fake/shown-text.ts'
import type { FakeMessage } from './fake/world.ts'
import { inChannel, keep, lemonJar, messagesIn, reminding, wait } from './reminding.ts'
import { fake, onStage } from './stage.ts'

/** The reminders of the test that runs. */
export let here: ReturnType<typeof reminding>

/** As `onStage`, with reminders beside the bot that log no fault. */
export const onNudgeStage = (): void => {
  onStage((discord) => {
    here = reminding(discord)
    return { store: here.store }
  })

  afterEach(() => {
    expect(here.logged.filter((line) => /\n\s+at /.test(line))).toEqual([])
  })
}

export const labels = (message: FakeMessage): readonly string[] => buttonsOf(message.json).map(({ label }) => label)

export const edited = (message: FakeMessage, times = 1): Promise<void> => wait(() => message.edits === times)

/** The nudge of jars, of lemon where none are given, in the channel. */
export const nudge = async (jars: readonly Jar[] = [lemonJar(fake)]): Promise<FakeMessage> => {
  await keep(here.store, fake, { jars, settings: inChannel(fake.channel) })
  await here.tick()
  return messagesIn(fake.channel)[0]!
}
