import { NOBODY, type Person, type Settings } from '../../store/person.ts'
import { StorageError } from '../../store/storage-error.ts'
import { languageFor, type Spoken } from '../text/language.ts'
import type { Asker } from './command.ts'

/** The person who asks; nobody where the store cannot be read, which a command that needs it will say. */
export const personOf = async ({ store, userId }: Pick<Asker, 'store' | 'userId'>): Promise<Person> => {
  try {
    return await store.read(userId)
  } catch (error) {
    if (error instanceof StorageError) return NOBODY
    throw error
  }
}

/** What they have chosen. */
export const settingsOf = async (asker: Pick<Asker, 'store' | 'userId'>): Promise<Settings> =>
  (await personOf(asker)).settings

/** Somebody who is answered in the language of their own. Nothing is read where there is no choice. */
export const inOwnLanguage = async <Who extends Spoken & Pick<Asker, 'store' | 'userId'>>(asker: Who): Promise<Who> =>
  asker.languageOf === undefined ? asker : { ...asker, language: languageFor(asker, await settingsOf(asker)) }
