import { NOBODY, type Settings } from '../../store/person.ts'
import { StorageError } from '../../store/storage-error.ts'
import { languageFor, type Spoken } from '../text/language.ts'
import type { Asker } from './command.ts'

/** Of the person who asks; the usual ones where the store cannot be read, which a command that needs it will say. */
export const settingsOf = async ({ store, userId }: Pick<Asker, 'store' | 'userId'>): Promise<Settings> => {
  try {
    return (await store.read(userId)).settings
  } catch (error) {
    if (error instanceof StorageError) return NOBODY.settings
    throw error
  }
}

/** Somebody who is answered in the language of their own. Nothing is read where there is no choice. */
export const inOwnLanguage = async <Who extends Spoken & Pick<Asker, 'store' | 'userId'>>(asker: Who): Promise<Who> =>
  asker.languageOf === undefined ? asker : { ...asker, language: languageFor(asker, await settingsOf(asker)) }
