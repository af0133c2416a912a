import { expect, it } from 'vitest'
import { newDoubts } from '../../../bot/chat/doubts.ts'
import { memoryStore } from '../../../store/memory/memory-store.ts'
import { StorageError } from '../../../store/storage-error.ts'
import type { Store } from '../../../store/store.ts'
import { bot, fake, onStage } from './stage.ts'

const LEMON = { name: 'lemon', of: '10 lemons', spirit: '1 l 95%' }
const PATH = '/srv/larder/users/1.json'

let isFailing = false

/** Keeps what it is given, and once says that it may not have. */
const doubtful = (): Store => {
  const kept = memoryStore('UTC')
  return {
    ...kept,
    async update(userId, change) {
      const changed = await kept.update(userId, change)
      if (!isFailing) return changed
      isFailing = false
      throw new StorageError('unsure', { path: PATH, code: 'EIO' })
    },
  }
}

onStage(() => ({ store: doubtful(), doubts: newDoubts() }))

const ratings = async () =>
  (await bot.store.read(fake.user.id)).jars[0]!.entries.flatMap((entry) =>
    entry.kind === 'tasted' ? entry.rating : [],
  )

it('says what may have been kept without a path, and keeps it once when it is said again', async () => {
  await fake.slash('jar start', LEMON)
  isFailing = true
  const failed = await fake.slash('jar taste', { jar: 'lemon', rating: '4' })
  expect(failed.text).toContain('I may have kept it or not')
  expect(failed.text).toContain('/jar show')
  expect(failed.text).not.toMatch(/srv|EIO|json|nothing was changed/i)
  const again = await fake.slash('jar taste', { jar: 'lemon', rating: '4' })
  expect(again.text).toContain('That was saved after all: lemon.')
  expect(await ratings()).toEqual([4])
  const third = await fake.slash('jar taste', { jar: 'lemon', rating: '4' })
  expect(third.text).not.toContain('kept after all')
})

it('keeps the number of the interaction with what it recorded, which tells two of the same apart', async () => {
  for (const rating of ['4', '3']) {
    await fake.slash(rating === '4' ? 'jar start' : 'jar taste', rating === '4' ? LEMON : { jar: 'lemon', rating })
  }
  const attempts = (await bot.store.read(fake.user.id)).jars[0]!.entries.map(({ attempt }) => attempt)
  expect(new Set(attempts).size).toBe(2)
  for (const attempt of attempts) expect(attempt).toMatch(/^\d{17,20}$/)
})
