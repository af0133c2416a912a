import type { Person, Settings } from '../../../store/person.ts'
import type { Context } from '../../chat/command.ts'

/** Keeps what was chosen and leaves the rest; nothing is written where nothing changes. */
export const changeSettings = (
  { store, userId }: Pick<Context, 'store' | 'userId'>,
  chosen: Partial<Settings>,
): Promise<Person> =>
  store.update(userId, (person) => {
    const settings = { ...person.settings, ...chosen }
    const isSame = JSON.stringify(settings) === JSON.stringify(person.settings)
    return isSame ? null : { ...person, settings }
  })
