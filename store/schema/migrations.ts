import { entriesToVersion4 } from './to-version-4.ts'

/** Makes a stored person of one version out of the one before; pure. */
export type Migration = (older: Readonly<Record<string, unknown>>) => Readonly<Record<string, unknown>>

/** A file set aside is known with the day of the copy that holds more; an entry may say which attempt made it. */
const toVersion2: Migration = ({ setAside, ...older }) => ({
  ...older,
  version: 2,
  setAside: typeof setAside === 'string' ? { file: setAside, day: null } : setAside,
})

/** A jar may say when each reminder was said. */
const toVersion3: Migration = (older) => ({ ...older, version: 3 })

const isRecord = (value: unknown): value is Readonly<Record<string, unknown>> =>
  typeof value === 'object' && value !== null

/**
 * A person may have reminders that stand in Discord. A file begins with its check and with when its next reminder falls due.
 * What was typed of a batch, and means something, is fields of its entries: how plants were named, whose batch it was.
 */
const toVersion4: Migration = ({ jars, settings, ...older }) => ({
  ...older,
  settings,
  version: 4,
  jars: Array.isArray(jars)
    ? jars.map((jar) => {
        if (!isRecord(jar)) return jar
        const country = isRecord(settings) && typeof settings.country === 'string' ? settings.country : null
        return { ...jar, entries: entriesToVersion4(jar.entries, country) }
      })
    : jars,
})

/** A jar may be parted, poured into another, noted, and plants taken out of it. */
const toVersion5: Migration = (older) => ({ ...older, version: 5 })

/** A jar's entries tell more of what was done: the strained fruit sugared, layers, topping up, racking, a second steep. */
const toVersion6: Migration = (older) => ({ ...older, version: 6 })

/** A second steep tells what sweetens of what its plants had soaked up. */
const toVersion7: Migration = (older) => ({ ...older, version: 7 })

/** What is noted of a jar may be a trouble that it was told of, and what it turned out to be. */
const toVersion8: Migration = (older) => ({ ...older, version: 8 })

/** The first makes version 2 out of 1, the next 3 out of 2. */
export const MIGRATIONS: readonly Migration[] = [
  toVersion2,
  toVersion3,
  toVersion4,
  toVersion5,
  toVersion6,
  toVersion7,
  toVersion8,
]

/** A person of `version` (at least 1) brought to the newest that `migrations` lead to. */
export const migrate = (
  stored: Readonly<Record<string, unknown>>,
  version: number,
  migrations: readonly Migration[],
): Readonly<Record<string, unknown>> =>
  migrations.slice(version - 1).reduce((older, migration) => migration(older), stored)
