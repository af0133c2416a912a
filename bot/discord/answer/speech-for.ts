import type { Asker } from '../../chat/command.ts'
import { personOf } from '../../chat/own-language.ts'
import { jarNames } from '../show/jar-names.ts'
import { type DiscordLanguage, speechIn } from '../show/language-for-discord.ts'

/** How somebody is answered: in the days of a zone, where it is not known in their own, and their jars by name. */
export async function speechFor(asker: Asker, zone: string | null): Promise<DiscordLanguage> {
  const { settings, jars } = await personOf(asker)
  return speechIn(asker.language, zone ?? settings.zone ?? asker.assumedZone, jarNames(jars))
}
