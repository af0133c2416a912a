import type { Settings } from '../store/person.ts'
import type { CommandTexts } from './commands/command-texts.ts'
import { en } from './text/en/index.ts'
import type { Language } from './text/language.ts'

/** The languages that are spoken, by their codes (ISO 639). */
export type LanguageId = 'en'

/** The only place that knows them. One without a text for a command, or for one of its options, does not compile. */
export const languages: Readonly<Record<LanguageId, Language & { readonly commands: CommandTexts }>> = { en }

/** For what is said to nobody in particular: in the log, to whoever runs the bot. */
export const usualLanguage: Language = languages.en

/** The language that somebody is answered in: of one, there is no choice. */
export const languageOf = (_settings: Settings): Language => usualLanguage
