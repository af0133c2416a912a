import { describe, expect, it } from 'vitest'
import { newDoubts } from '../../../bot/chat/doubts.ts'
import { inFolder } from '../../store/in-folder.ts'
import { storeIn } from '../../store/some-store.ts'
import { failure, watchedDisk } from '../../store/watched-disk.ts'
import type { TestAsker } from '../asker.ts'
import { testDesk } from '../test-desk.ts'

const NOW_MS = Date.UTC(2026, 10, 25, 10, 30)
const MINUTE_MS = 60_000
const LEMON = '/jar start lemon of:10 lemons spirit:1 l strength:95%'

interface Trouble {
  /** Calls of the disk that fail, by name, each once it is asked for; the rest of it works. */
  fail: string | null
}

/** A bot whose disk can fail after it has put a file in place, and the same folder as another process would find it. */
const inTrouble = (
  work: (desk: {
    readonly at: (minutes: number) => ReturnType<typeof testDesk>
    readonly trouble: Trouble
    readonly entries: () => Promise<readonly string[]>
  }) => Promise<void>,
  isRemembered = true,
): Promise<void> =>
  inFolder(async (folder) => {
    const trouble: Trouble = { fail: null }
    const disk = watchedDisk((name, path) => {
      if (name === trouble.fail && (name !== 'syncFolder' || path === 'users')) throw failure('EIO')
    })
    const store = storeIn(folder, { disk })
    let attempts = 0
    const asker: TestAsker = {
      userId: 'local',
      place: { kind: 'console' },
      assumedZone: 'UTC',
      store,
      newAttempt: () => `a${++attempts}`,
      ...(isRemembered && { doubts: newDoubts() }),
    }
    await store.update('local', (person) => person)
    await work({
      trouble,
      at: (minutes) => testDesk({ asker, nowMs: NOW_MS + minutes * MINUTE_MS, width: 200 }),
      entries: async () => {
        const { jars } = await storeIn(folder).read('local')
        return jars.flatMap(({ entries }) => entries.map(({ kind }) => kind))
      },
    })
    await store.close()
  })

describe('what may have been kept', () => {
  it.each([
    ['a step', [LEMON], '/jar taste lemon rating:4', ['started', 'tasted'], '/jar show lemon'],
    ['a start', [], LEMON, ['started'], '/jar show lemon'],
    ['an addition', [LEMON], '/jar add lemon of:2 lemons', ['started', 'added'], '/jar show lemon'],
    [
      'an undo',
      [LEMON, '/jar taste lemon rating:4', '/jar taste lemon rating:3'],
      '/jar undo lemon',
      null,
      '/jar show lemon',
    ],
    ['a correction', [LEMON, '/jar taste lemon rating:4'], '/jar correct lemon rating:2', null, '/jar show lemon'],
    ['a step of all', [LEMON], '/jar shake all', ['started', 'shaken'], '/jar list'],
  ])('is said, with a line that shows it, and %s said again is not doubled', (_, before, line, after, look) =>
    inTrouble(async ({ at, trouble, entries }) => {
      for (const each of before) expect((await at(0).jsonOf(each)).error).toBeUndefined()
      trouble.fail = 'syncFolder'
      const { error } = await at(1).jsonOf(line)
      trouble.fail = null
      expect(error.code).toBe('storage')
      expect(error.message).not.toMatch(/nothing was changed/i)
      expect(error.message).toContain(`may have kept it or not. See ${look}. You can try again`)
      const kept = await entries()
      if (after !== null) expect(kept).toEqual(after)
      expect(kept).toHaveLength(before.length + 1)
      expect((await at(2).jsonOf(look)).error).toBeUndefined()
      const again = await at(3).run(line)
      expect(again).toMatchObject({ ok: true, reply: { headline: { key: 'jar_kept_after_all' } } })
      expect(await entries()).toEqual(kept)
      // Said a third time it is meant.
      const third = await at(4).run(line)
      expect(third).not.toMatchObject({ reply: { headline: { key: 'jar_kept_after_all' } } })
    }),
  )

  it('is written once it is said again, where it was not kept', () =>
    inTrouble(async ({ at, trouble, entries }) => {
      await at(0).jsonOf(LEMON)
      trouble.fail = 'rename'
      expect((await at(1).jsonOf('/jar taste lemon rating:4')).error.message).toMatch(/nothing was changed/i)
      trouble.fail = null
      expect(await entries()).toEqual(['started'])
      expect((await at(2).jsonOf('/jar taste lemon rating:4')).data.events).toHaveLength(2)
      expect(await entries()).toEqual(['started', 'tasted'])
    }))

  it('stays in doubt while the disk goes on failing, and nothing is added by it', () =>
    inTrouble(async ({ at, trouble, entries }) => {
      await at(0).jsonOf(LEMON)
      trouble.fail = 'syncFolder'
      for (const minutes of [1, 2, 3]) {
        expect((await at(minutes).jsonOf('/jar taste lemon rating:4')).error.message).toContain(
          'may have kept it or not',
        )
      }
      expect(await entries()).toEqual(['started', 'tasted'])
      trouble.fail = null
      expect(await at(4).run('/jar taste lemon rating:4')).toMatchObject({ ok: true })
      expect(await entries()).toEqual(['started', 'tasted'])
    }))

  it('is forgotten after ten minutes, and by another call', () =>
    inTrouble(async ({ at, trouble, entries }) => {
      await at(0).jsonOf(LEMON)
      trouble.fail = 'syncFolder'
      await at(1).jsonOf('/jar taste lemon rating:4')
      trouble.fail = null
      await at(2).jsonOf('/jar taste lemon rating:3')
      await at(12).jsonOf('/jar taste lemon rating:4')
      expect(await entries()).toEqual(['started', 'tasted', 'tasted', 'tasted'])
    }))

  it('is not promised to be known again where nobody remembers', () =>
    inTrouble(async ({ at, trouble }) => {
      await at(0).jsonOf(LEMON)
      trouble.fail = 'syncFolder'
      const { error } = await at(1).jsonOf('/jar taste lemon rating:4')
      expect(error.message).toMatch(/See \/jar show lemon before you try again\.$/)
    }, false))

  it('is said of erasing, which is not all or nothing', () =>
    inTrouble(async ({ at, trouble }) => {
      await at(0).jsonOf(LEMON)
      trouble.fail = 'syncFolder'
      const { error } = await at(1).jsonOf('/forget confirm:yes')
      trouble.fail = null
      expect(error.message).toMatch(
        /while I was erasing, so some of it may be gone already\. Type \/forget confirm:yes/,
      )
      expect((await at(2).jsonOf('/forget confirm:yes')).data).toMatchObject({ erased: true })
    }))
})
