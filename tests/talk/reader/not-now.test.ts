import { expect, it } from 'vitest'
import { talkerFor } from './told.ts'

it.each(['not now, I’m busy', 'not now', 'can’t do it now', 'too busy right now', 'non adesso, sono occupato'])(
  '%s puts off what was asked, until later',
  async (said) => {
    const one = await talkerFor({ after: null, shelf: 'lemon' })
    expect((await one.say(said)).call).toEqual({ path: 'jar later', options: { jar: 'lemon', until: 'later' } })
    const two = await talkerFor({ after: null, shelf: 'lemon_ginger' })
    expect((await two.say(said)).call).toEqual({ path: 'jar later', options: { jar: 'all', until: 'later' } })
  },
)
