import type { StorageProblems } from '../../../store/storage-error.ts'

const PERSON = /^(.*)users[/\\]([^/\\]+)$/

/** Which nightly copy stands in for a person's file. */
export const copyBack = (path: string): string => {
  const [, folder = '', file = 'ID.json'] = PERSON.exec(path) ?? []
  return `To have the last copy back, end me and put ${folder}copies/DAY/${file} of the newest DAY there in place of ${path}.`
}

type Sentences = { readonly [Key in keyof StorageProblems]: (values: StorageProblems[Key]) => string }

/** What was wrong with the folder of data, and what to do about it. */
export const storageProblems: Sentences = {
  locked: ({ folder, host, pid, isHere }) =>
    isHere
      ? `Another Larderbell (process ${pid}) works on the jars in ${folder}: use that one, or end it first. Nothing was changed.`
      : `A Larderbell on ${host} works on the jars in ${folder}: end it there first. Nothing was changed.`,
  no_rights: ({ path }) =>
    `I am not allowed to read or write ${path}, so nothing was changed; give me the rights to it.`,
  disk_full: ({ path }) => `The disk that holds ${path} is full, so nothing was changed; make room and say it again.`,
  disk_failed: ({ path, code }) => `The disk failed at ${path} (${code}), so nothing was changed; say it again.`,
  newer_version: ({ path, version, known }) =>
    `${path} was written by a newer Larderbell (version ${version}; this one knows ${known}). Nothing was changed; update me.`,
  unreadable: ({ path }) =>
    `${path} cannot be read and could not be set aside either, so nothing was changed. ${copyBack(path)}`,
  bad_user_id: () => 'I do not know who you are, so I keep nothing for you.',
  closed: () => 'I am shutting down and write nothing any more; say it again when I am back.',
}
