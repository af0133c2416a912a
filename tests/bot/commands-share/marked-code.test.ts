import fc from 'fast-check'
import { expect, it } from 'vitest'
import { parseSharedCode, shareRef } from '../../../bot/calls/share-ref.ts'
import { countMade } from '../../../bot/commands/share/count-made.ts'
import { findShare } from '../../../bot/commands/share/find-share.ts'
import { DomainError } from '../../../core/domain-error.ts'
import { decodeBatch } from '../../../core/recipe/code/batch-code.ts'
import { NOBODY, type Share } from '../../../store/person.ts'
import { StorageError } from '../../../store/storage-error.ts'
import { runs, SEED } from '../../runs.ts'
import { newAsker } from '../asker.ts'

const OWNER = '123456789012345678'
const CODE = '11NCHSTJ8P501JQH0JNHC00VV9SW4FH0HFQ0EJ3MBV'
const REF = shareRef({ owner: OWNER, shareId: '3m8qv0zt' })!
const MARKED = `${CODE}@${REF}`
const SHARE: Share = { id: '3m8qv0zt', jarId: 'k7f2a', code: CODE, postedIn: null, withdrawn: false, made: 0 }

const contextOf = async (shares: readonly Share[] = [SHARE]) => {
  const asker = newAsker()
  await asker.store.update(OWNER, () => ({ ...NOBODY, shares }))
  const { settings } = NOBODY
  return { ...asker, userId: '987654321098765432', nowMs: 0, settings, zone: 'UTC' }
}

it('reads the same recipe out of a marked code however it is mutilated, or none', () => {
  const recipe = decodeBatch(CODE)
  let [read, refused] = [0, 0]
  const mutation = fc.record({
    at: fc.nat(MARKED.length),
    away: fc.nat(3),
    put: fc.oneof(fc.string({ maxLength: 3 }), fc.constantFrom('@', '.', 'Z', '0', '@@', ' ')),
  })
  fc.assert(
    fc.property(fc.array(mutation, { maxLength: 3 }), (mutations) => {
      const text = mutations.reduce((so, { at, away, put }) => so.slice(0, at) + put + so.slice(at + away), MARKED)
      try {
        expect(parseSharedCode(text).recipe).toEqual(recipe)
        read++
      } catch (error) {
        if (!(error instanceof DomainError)) throw error
        refused++
      }
    }),
    { seed: SEED, numRuns: runs(2000, 20_000) },
  )
  expect(Math.min(read, refused)).toBeGreaterThan(50)
})

it('counts only what was shared under that id, for another than its owner', async () => {
  const context = await contextOf()
  const madeBy = async () => (await context.store.read(OWNER)).shares[0]!.made
  const shared = parseSharedCode(MARKED)
  await countMade({ ...shared, recipe: { ...shared.recipe, waterTenthG: 10 } }, context)
  await countMade({ ...shared, shareId: 'abcdefgh' }, context)
  await countMade({ ...shared, owner: null }, context)
  await countMade(shared, { ...context, userId: OWNER })
  await countMade({ ...shared, owner: '111111111111111111' }, context)
  expect(await madeBy()).toBe(0)
  await countMade(shared, context)
  expect(await madeBy()).toBe(1)
  expect(await context.store.read('111111111111111111')).toEqual(NOBODY)
})

it('begins the jar all the same where the owner’s file cannot be written', async () => {
  const context = await contextOf()
  const update = () => Promise.reject(new StorageError('disk_full', { path: 'somewhere' }))
  await countMade(parseSharedCode(MARKED), { ...context, store: { ...context.store, update } })
})

it.each([
  ['withdrawn', [{ ...SHARE, withdrawn: true }], 'share_withdrawn'],
  ['forgotten', [], 'share_gone'],
])('says of a share that was %s only that', async (_, shares, problem) => {
  const { store } = await contextOf(shares)
  await expect(findShare({ owner: OWNER, shareId: SHARE.id }, store)).rejects.toMatchObject({ problem })
})

it('tells nothing of an owner’s file that cannot be read', async () => {
  const read = () =>
    Promise.reject(new StorageError('unreadable', { userId: 'local', day: null, path: `users/${OWNER}.json` }))
  await expect(findShare({ owner: OWNER, shareId: SHARE.id }, { read })).rejects.toMatchObject({
    problem: 'share_gone',
  })
})
