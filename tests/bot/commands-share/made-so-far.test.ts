import { expect, it } from 'vitest'
import { shareRef } from '../../../bot/calls/share-ref.ts'
import { newAsker } from '../asker.ts'
import { testDesk } from '../test-desk.ts'

const OWNER = '123456789012345678'
const LEMON = '/jar start lemon of:10 lemons spirit:1 l 95% to-strength:30% to-sweetness:250 g/L'

it('tells of a shared batch who has begun it, whoever reads it apart', async () => {
  const one = newAsker()
  const deskOf = (userId: string) => testDesk({ asker: { ...one, userId }, nowMs: Date.UTC(2026, 10, 20), width: 200 })
  const [owner, maker, reader] = [OWNER, '223456789012345678', '323456789012345678'].map(deskOf)
  await owner!.jsonOf(LEMON)
  const { share, code } = (await owner!.jsonOf('/share lemon')).data
  const ref = shareRef({ owner: OWNER, shareId: share })
  const make = `/share make:${ref}`
  const begun = (count: string) => `People besides its maker have started ${count} of this batch so far.`

  await maker!.jsonOf(`/jar start first from:${code}@${ref}`)
  const own = await maker!.textOf(make)
  expect(own).toContain('You’ve started one jar of this batch so far.')
  expect(own).not.toContain('People besides')
  expect(await reader!.textOf(make)).toContain(begun('one jar'))
  expect(await owner!.textOf(make)).toContain(begun('one jar'))

  await reader!.jsonOf(`/jar start second from:${code}@${ref}`)
  expect(await maker!.textOf(make)).toContain(
    'You’ve started one jar of this batch so far. People besides its maker and you have started one jar of this batch so far.',
  )
  expect(await owner!.textOf(make)).toContain(begun('2 jars'))
})
