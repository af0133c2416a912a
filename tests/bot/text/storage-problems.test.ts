import { describe, expect, it } from 'vitest'
import { explain } from '../../../bot/chat/run/explain.ts'
import { speechIn } from '../../../bot/discord/show/language-for-discord.ts'
import { en } from '../../../bot/text/en/index.ts'
import { wordsOf } from '../../../bot/text/words-of.ts'
import type { StorageProblems } from '../../../store/storage-error.ts'

/** Nobody in Discord shall read these. */
const [FOLDER, HOST, PID, USER] = ['/srv/larder', 'shed', 48_151, '623426234262342623']
const path = `${FOLDER}/users/${USER}.json`

/** Every problem there is: a new one does not compile without. */
const PROBLEMS: { readonly [Key in keyof StorageProblems]: StorageProblems[Key] } = {
  locked: { folder: FOLDER, host: HOST, pid: PID, isHere: true },
  no_rights: { path },
  disk_full: { path },
  disk_failed: { path, code: 'EIO' },
  unsure: { path, code: 'EIO', jar: 'lemon', isRemembered: true },
  half_erased: { path, code: 'EIO' },
  too_large: { mostBytes: 256_000_000 },
  newer_version: { path, version: 9, known: 2 },
  unreadable: { path, userId: USER, day: '2026-11-24' },
  no_copy: { userId: USER, day: '2026-11-24', days: ['2026-11-23'] },
  bad_copy: { path },
  bad_user_id: {},
  closed: {},
}

const KEYS = Object.keys(PROBLEMS) as (keyof StorageProblems)[]

const failureOf = (problem: keyof StorageProblems, values: StorageProblems[typeof problem]) =>
  ({ ok: false, path: 'jar taste', kitchen: 'metric', error: { code: 'storage', problem, values } }) as const

const inDiscord = (key: keyof StorageProblems, values: StorageProblems[typeof key] = PROBLEMS[key]): string =>
  explain(failureOf(key, values), speechIn(en, 'UTC'))

const atTerminal = (key: keyof StorageProblems, values: StorageProblems[typeof key] = PROBLEMS[key]): string =>
  explain(failureOf(key, values), { words: wordsOf(en), commands: en.commands })

describe.each(KEYS)('%s', (key) => {
  it('names no path, process, host, person or error of the machine in Discord', () => {
    const other = { ...PROBLEMS[key], isHere: false, days: [], ...(key === 'unreadable' && { day: null }) }
    for (const values of [PROBLEMS[key], other]) {
      const sentence = inDiscord(key, values as StorageProblems[typeof key])
      expect(sentence).toMatch(/^[A-Z].*[.n]$/s)
      for (const secret of [FOLDER, HOST, String(PID), USER, 'users', '.json', 'EIO', 'process', 'npm ', 'undefined']) {
        expect(sentence).not.toContain(secret)
      }
    }
  })

  it('is a sentence at the terminal', () => {
    expect(atTerminal(key)).toMatch(/^[A-Z/].*[.\dn]$/s)
    expect(atTerminal(key)).not.toMatch(/undefined|null|;/)
  })
})

it('names the folder to empty where a lock may be left over', () => {
  const sentence = atTerminal('locked', { folder: FOLDER, host: HOST, pid: PID, isHere: false })
  expect(sentence).toContain(`empty the folder ${FOLDER}/lock.`)
  expect(sentence).toContain(`${HOST} is an old name of this machine`)
})
