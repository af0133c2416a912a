import type { Person } from '../../../store/person.ts'
import type { Store } from '../../../store/store.ts'

/** As `store`, but what is changed is forgotten with it: for one line that is tried before it is offered. */
export const withoutKeeping = (store: Store): Store => {
  const changed = new Map<string, Person>()
  const read: Store['read'] = async (userId) => changed.get(userId) ?? store.read(userId)
  return {
    ...store,
    read,
    async update(userId, change) {
      const person = await read(userId)
      const next = change(person) ?? person
      changed.set(userId, next)
      return next
    },
  }
}
