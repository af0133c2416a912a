import fc from 'fast-check'
import { expect, it } from 'vitest'
import { StorageError } from '../../../store/storage-error.ts'
import type { Store } from '../../../store/store.ts'
import { runs, SEED } from '../../runs.ts'
import { checkPayload } from './fake/check-payload.ts'
import { ME, offersDesk } from './offers.ts'

const { store, logged, offersOf } = await offersDesk()

const HOSTILE = [
  '@everyone <@123> `rm -rf /`; DROP TABLE jars; --',
  '\u202e\u200b\u2066lemon',
  '👩‍👩‍👧‍👦'.repeat(9),
  'x'.repeat(6000),
  '+'.repeat(200),
  ', '.repeat(100),
  '8 lemons + '.repeat(18),
  '__proto__',
  '(?:a+)+$',
  '\0\u001b[31m',
  '\ud800',
  'İ',
]

const asked = [
  'jar show jar',
  'jar shake jar',
  'notebook compare',
  'plan of',
  'botanical of',
  'serving country',
].concat(['settings zone', 'help command'])

const expectValid = async (path: string, option: string, typed: string): Promise<void> => {
  const offers = await offersOf(path, option, typed)
  const body = { type: 8, data: { choices: offers } }
  const found = checkPayload('POST', `/interactions/${ME}/token/callback`, body)
  if (found.length > 0) throw new Error(`/${path} ${option}:${typed} → ${JSON.stringify(found)}`)
}

it.each(asked)('answers hostile texts in %s by what Discord takes', async (place) => {
  const at = place.lastIndexOf(' ')
  const [path, option] = [place.slice(0, at), place.slice(at + 1)]
  for (const typed of HOSTILE) await expectValid(path, option, typed)
  const text = fc.oneof(fc.string({ unit: 'binary', maxLength: 210 }), fc.constantFrom(...HOSTILE))
  await fc.assert(
    fc.asyncProperty(text, (typed) => expectValid(path, option, typed)),
    { seed: SEED, numRuns: runs(30, 2000) },
  )
  expect(logged).toEqual([])
})

it('offers nothing where there is nothing to offer', async () => {
  expect(await offersOf('plan', 'spirit', '1 l')).toEqual([])
  expect(await offersOf('plan', 'constructor', '')).toEqual([])
  expect(await offersOf('no such', 'of', 'lem')).toEqual([])
  expect(await offersOf('plan', 'of', '8\ud800 lem')).toEqual([])
  expect(await offersOf('plan', 'of', '8 \u001b[31m lem')).toEqual([])
  expect(await offersOf('__proto__', '__proto__', '')).toEqual([])
})

it('offers nothing where the store cannot be read, and logs only what is a fault of ours', async () => {
  const failing = (error: Error): Store => ({ ...store, read: () => Promise.reject(error) })
  expect(await offersOf('jar show', 'jar', '', ME, failing(new StorageError('closed', {})))).toEqual([])
  expect(logged).toEqual([])
  expect(await offersOf('jar show', 'jar', 'secret', ME, failing(new TypeError('secret')))).toEqual([])
  expect(logged).toHaveLength(1)
  expect(logged.splice(0).join()).toMatch(/^\/jar show jar: TypeError/)
})
