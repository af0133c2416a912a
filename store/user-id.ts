import { StorageError } from './storage-error.ts'

const ID = '(local|\\d{17,20})'
const WHOLE = new RegExp(`^${ID}$`)
const PERSON = new RegExp(`^${ID}\\.json$`)

/** Throws `bad_user_id` for what is neither `local` nor 17 to 20 digits, before it can become a path. */
export function checkUserId(userId: string): void {
  if (!WHOLE.test(userId)) throw new StorageError('bad_user_id', {})
}

export const personFileName = (userId: string): string => `${userId}.json`

/** Whose file this is, or null for a file that is none of a person's. */
export const userIdOf = (fileName: string): string | null => PERSON.exec(fileName)?.[1] ?? null

/** A name that no other write of ours has had: one process writes, `count` counts its writes. */
export const temporaryName = (userId: string, pid: number, count: number): string => `.${userId}.${pid}-${count}.tmp`

const TEMPORARY = new RegExp(`^\\.${ID}\\.\\d+-\\d+\\.tmp$`)

export const isTemporary = (fileName: string): boolean => TEMPORARY.test(fileName)

/** Why a file was set aside: it could not be read, or a copy was put back in its place. */
export type AsideReason = 'unreadable' | 'replaced'

/** `stamp` tells when it was set aside; `count` keeps two of one moment apart. */
export const setAsideName = (userId: string, reason: AsideReason, stamp: string, count: number): string =>
  `${userId}.${reason}-${stamp}${count === 0 ? '' : `-${count}`}.json`

const SET_ASIDE = new RegExp(`^${ID}\\.(?:unreadable|replaced)-`)

export const isSetAside = (fileName: string): boolean => SET_ASIDE.test(fileName)

/** True for what a person has beside the file itself: temporaries and what was set aside. */
export const isLeftOf = (userId: string, fileName: string): boolean =>
  (isSetAside(fileName) && fileName.startsWith(`${userId}.`)) ||
  (isTemporary(fileName) && fileName.startsWith(`.${userId}.`))
