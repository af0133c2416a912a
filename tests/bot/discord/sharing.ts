import { beforeEach } from 'vitest'
import { en } from '../../../bot/text/en/index.ts'
import type { Answer } from './fake/answer.ts'
import type { FakeUser } from './fake/world.ts'
import { bot, fake, onStage } from './stage.ts'

export const MAKE = en.sentences.actions.make_too()
export const LEMON = { of: '10 lemons', spirit: '1 l 95%', 'to-strength': '30%', 'to-sweetness': '250 g/L' }
export const NAME = 'secret-cellar lemon'

/** Somebody who makes what the owner of a batch has shared. */
export let friend: FakeUser

/** What both do. */
export let acts: ReturnType<typeof sharing>

/** As `onStage`, with a friend in the same server. */
export const onSharingStage = (): void => {
  onStage()
  beforeEach(() => {
    friend = fake.newUser('sorrel')
    fake.join(fake.guild, friend)
    acts = sharing()
  })
}

const sharing = () => {
  const owner = () => bot.store.read(fake.user.id)
  const pressMake = (answer: Answer, user = friend) => fake.press(answer.message, MAKE, { user })
  return {
    owner,
    shareOf: async (at = 0) => (await owner()).shares[at]!,
    pressMake,
    /** An answer with what stands one question deeper. */
    wholeOf: async (answer: Answer, user = friend): Promise<string> => {
      bot.pass(3000)
      return `${answer.text}\n${(await fake.press(answer.message, en.more.button(), { user })).text}`
    },
    make: async (answer: Answer, typed: Readonly<Record<string, string>>, user = friend) => {
      bot.pass(3000)
      return fake.submit(await pressMake(answer, user), typed, { user })
    },
    share: async (name = NAME): Promise<Answer> => {
      await fake.slash('jar start', { ...LEMON, name })
      await fake.slash('jar taste', { jar: name, note: 'my private remark' })
      return fake.slash('share', { jar: name })
    },
  }
}
