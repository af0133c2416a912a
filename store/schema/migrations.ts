/** Makes a stored person of one version out of the one before; pure. */
export type Migration = (older: Readonly<Record<string, unknown>>) => Readonly<Record<string, unknown>>

/** The first makes version 2 out of 1, the next 3 out of 2. So far nobody wrote anything but version 1. */
export const MIGRATIONS: readonly Migration[] = []

/** A person of `version` (at least 1) brought to the newest that `migrations` lead to. */
export const migrate = (
  stored: Readonly<Record<string, unknown>>,
  version: number,
  migrations: readonly Migration[],
): Readonly<Record<string, unknown>> =>
  migrations.slice(version - 1).reduce((older, migration) => migration(older), stored)
