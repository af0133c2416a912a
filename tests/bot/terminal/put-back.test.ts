import { readFile, truncate } from 'node:fs/promises'
import { join } from 'node:path'
import { describe, expect, it } from 'vitest'
import { putBack } from '../../../bot/doctor/put-back.ts'
import { doctorText } from '../../../bot/text/en/doctor.ts'
import { en } from '../../../bot/text/en/index.ts'
import { wordsOf } from '../../../bot/text/words-of.ts'
import { inFolder } from '../../store/in-folder.ts'
import { jarOf, personWith } from '../../store/some-people.ts'
import { personIn, storeIn } from '../../store/some-store.ts'

const restore = async (data: string, argv: readonly string[]) => {
  let [printed, complained] = ['', '']
  const store = storeIn(data)
  const code = await putBack(argv, {
    store,
    words: wordsOf(en),
    text: doctorText,
    out: (text) => {
      printed += text
    },
    err: (text) => {
      complained += text
    },
  })
  await store.close()
  return { code, printed, complained }
}

const FULL = personWith({ jars: [jarOf('k7f2a', 3)] })

const torn = (work: (folder: string) => Promise<void>): Promise<void> =>
  inFolder(async (folder) => {
    const store = storeIn(folder)
    await store.update('local', () => FULL)
    await store.nightly()
    await store.close()
    await truncate(join(folder, 'users', 'local.json'), 40)
    await work(folder)
  })

describe('doctor restore', () => {
  it('puts back what the sentence about the torn file names', () =>
    torn(async (folder) => {
      const told: string[] = []
      const store = storeIn(folder, {
        tellSetAside: (aside) => told.push(en.console.setAside({ ...aside, folder, userId: 'local' })),
      })
      await store.read('local')
      await store.close()
      const [, line = ''] = /npm run doctor -- (.*)$/.exec(told[0] ?? '') ?? []
      const [order, ...which] = line.split(' ')
      expect(order).toBe('restore')
      const { code, printed, complained } = await restore(folder, which)
      const aside = join(folder, 'users', 'local.replaced-2026-11-25T10-30-00-000Z.json')
      expect([code, complained]).toEqual([0, ''])
      expect(printed).toBe(
        `The copy of 2026-11-25 is back in place for local, with 1 jar and 3 entries. What stood there is kept as ${aside}.\n`,
      )
      expect(personIn(await readFile(join(folder, 'users', 'local.json'), 'utf8'))).toEqual(FULL)
    }))

  it('promises no copy that is not there', () =>
    torn(async (folder) => {
      const { rm } = await import('node:fs/promises')
      await rm(join(folder, 'copies'), { recursive: true })
      const told: string[] = []
      const store = storeIn(folder, {
        tellSetAside: (aside) => told.push(en.console.setAside({ ...aside, folder, userId: 'local' })),
      })
      await store.read('local')
      await store.close()
      expect(told[0]).toMatch(
        /No copy of it has a jar in it\. Only npm start makes copies, when it starts and every night\.$/,
      )
    }))

  it.each([[[]], [['local']], [['local', '2026-11-25', 'more']]])('says how it wants to be asked: %j', (argv) =>
    torn(async (folder) => {
      const { code, printed, complained } = await restore(folder, argv)
      expect([code, printed]).toEqual([2, ''])
      expect(complained).toContain('npm run doctor -- restore local 2026-11-24')
    }),
  )

  it.each([
    [
      ['local', '2026-11-24'],
      /^There’s no copy of local from 2026-11-24.* type: npm run doctor -- restore local 2026-11-25\n$/,
    ],
    [
      ['222222222222222222', '2026-11-25'],
      /^There’s no copy of 222222222222222222 .* none from another day either\.\n$/,
    ],
    [['../local', '2026-11-25'], /^I don’t know who that is/],
  ])('says why it cannot: %j', (argv, sentence) =>
    torn(async (folder) => {
      const { code, printed, complained } = await restore(folder, argv)
      expect([code, printed]).toEqual([1, ''])
      expect(complained).toMatch(sentence)
    }),
  )

  it('leaves it to a Larderbell that works there', () =>
    torn(async (folder) => {
      const store = storeIn(folder)
      await store.update('111111111111111111', (person) => person)
      expect((await restore(folder, ['local', '2026-11-25'])).complained).toMatch(/^Another Larderbell \(process \d+\)/)
      await store.close()
    }))
})
