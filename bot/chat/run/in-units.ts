import type { UnitSystem } from '../../../core/quantity/read/parse-units.ts'
import type { Asker } from '../command.ts'
import { withoutKeeping } from './without-keeping.ts'

/** The same asker for one answer that is said again in other measures, as if those were chosen for everything; nothing is kept of it. */
export function inUnits<Of extends Pick<Asker, 'store'>>(dispatch: Of, units: UnitSystem): Of {
  const store = withoutKeeping(dispatch.store)
  return {
    ...dispatch,
    store: {
      ...store,
      async read(userId) {
        const person = await store.read(userId)
        return { ...person, settings: { ...person.settings, units } }
      },
    },
  }
}
