import { en } from '../../../bot/text/en/index.ts'
import type { Connected } from './connected.ts'
import type { Answer } from './fake/answer.ts'
import type { FakeDiscord } from './fake/fake-discord.ts'
import type { FakeUser } from './fake/world.ts'

export const MAKE = en.sentences.actions.make_too()
export const LEMON = { of: '10 lemons', spirit: '1 l 95%', 'to-strength': '30%', 'to-sweetness': '250 g/L' }
export const NAME = 'secret-cellar lemon'

/** What the owner of a batch and a friend do; `bot` is whichever runs now. */
export const sharing = (fake: FakeDiscord, friend: FakeUser, bot: () => Connected) => {
  const owner = () => bot().store.read(fake.user.id)
  const pressMake = (answer: Answer, user = friend) => fake.press(answer.message, MAKE, { user })
  return {
    owner,
    shareOf: async (at = 0) => (await owner()).shares[at]!,
    pressMake,
    make: async (answer: Answer, typed: Readonly<Record<string, string>>, user = friend) => {
      bot().pass(3000)
      return fake.submit(await pressMake(answer, user), typed, { user })
    },
    share: async (name = NAME): Promise<Answer> => {
      await fake.slash('jar start', { ...LEMON, name })
      await fake.slash('jar taste', { jar: name, note: 'my private remark' })
      return fake.slash('share', { jar: name })
    },
  }
}
