import type { CommandTexts } from './commands/command-texts.ts'
import { en } from './text/en/index.ts'
import type { Language, Spoken } from './text/language.ts'

/** The languages that are spoken, by their codes (ISO 639). */
export type LanguageId = 'en'

/** The only place that knows them. One without a text for a command, or for one of its options, does not compile. */
export const languages: Readonly<Record<LanguageId, Language & { readonly commands: CommandTexts }>> = { en }

/** What people are answered in. Of one language there is no choice, so nobody's settings are read for it. */
export const spoken: Spoken = { language: languages.en }
