import type { Person, Settings } from '../../../store/person.ts'
import type { Context } from '../../chat/command.ts'

/** Keeps what was chosen, or what comes of those that are kept, and leaves the rest; nothing is written where nothing changes. */
export const changeSettings = (
  { store, userId }: Pick<Context, 'store' | 'userId'>,
  chosen: Partial<Settings> | ((kept: Settings) => Partial<Settings>),
): Promise<Person> =>
  store.update(userId, (person) => {
    const settings = { ...person.settings, ...(typeof chosen === 'function' ? chosen(person.settings) : chosen) }
    const isSame = JSON.stringify(settings) === JSON.stringify(person.settings)
    return isSame ? null : { ...person, settings }
  })
