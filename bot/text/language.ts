import type { Problems } from '../../core/domain-error.ts'
import type { Settings } from '../../store/person.ts'
import type { StorageProblems } from '../../store/storage-error.ts'
import type { CommandText } from './command-text.ts'
import type { SeasonText } from './demo-text.ts'
import type {
  BottlingFormText,
  MakeFormText,
  RetypeFormText,
  StrainingFormText,
  SuggestionText,
  SweeteningFormText,
  TastingFormText,
} from './discord-forms-text.ts'
import type { CallText, ConnectionText, DiscordText, RegistrationText } from './discord-text.ts'
import type { DoctorText } from './doctor-text.ts'
import type { Format } from './format.ts'
import type { HelpText } from './help-text.ts'
import type { ChatProblems } from './messages/chat-problems.ts'
import type { Handbook } from './messages/handbook.ts'
import type { Kitchen } from './messages/kitchen.ts'
import type { MoreText } from './more-text.ts'
import type { PictureText } from './picture-text.ts'
import type { ConsoleText } from './terminal-text.ts'

/** What each feature can say, by group and key; each file of `messages` adds its own, so that this one knows none of them. */
// biome-ignore lint/suspicious/noEmptyInterface: the features extend it
export interface MessagesByFeature {}

type All<Feature> = (Feature extends unknown ? (of: Feature) => void : never) extends (of: infer Every) => void
  ? Every
  : never

/** All that replies can say: by group and key, the values that the sentence needs; undefined where it needs none. */
export type Messages = All<MessagesByFeature[keyof MessagesByFeature]>

/** A sentence for every key of a group. */
export type Written<Group> = {
  readonly [Key in keyof Group]: Group[Key] extends undefined | Record<string, never>
    ? (values?: Group[Key], format?: Format) => string
    : (values: Group[Key], format: Format) => string
}

/** The sentences of a feature, by group. */
export type Feature<Of> = { readonly [Group in keyof Of]: Written<Of[Group]> }

/** Some sentences of a group, which are put together with others. */
export type Part<Group> = Partial<Written<Group>>

/** Every problem that can reach a person: core's, the chat's and the store's. */
export type AllProblems = Problems & ChatProblems & StorageProblems

/** Every word that a person reads. Each language is a folder that implements this. */
export interface Language {
  format(kitchen: Kitchen): Format
  /** A text as a kitchen that pours in cups says it, where it does otherwise; `own` are somebody's words in it. */
  readonly american?: (text: string, own: readonly string[]) => string
  /** A text with plants by what their maker calls them, by their ids; what is somebody's own stays. */
  readonly kinds?: (text: string, kinds: Readonly<Record<string, string>>, own: readonly string[]) => string
  readonly sentences: Feature<Messages>
  readonly problems: Written<AllProblems>
  /** In the place of those of the same key where others read along. */
  readonly problemsInDiscord: Written<StorageProblems>
  /** By the path of each command. */
  readonly commands: Readonly<Record<string, CommandText>>
  readonly console: ConsoleText
  readonly more: MoreText
  readonly help: HelpText
  readonly season: SeasonText
  readonly doctor: DoctorText
  readonly discord: DiscordText
  readonly calls: CallText
  readonly connection: ConnectionText
  readonly registration: RegistrationText
  readonly suggestions: SuggestionText
  readonly tastingForm: TastingFormText
  readonly strainingForm: StrainingFormText
  readonly sweeteningForm: SweeteningFormText
  readonly bottlingForm: BottlingFormText
  readonly makeForm: MakeFormText
  readonly retypeForm: RetypeFormText
  readonly pictures: PictureText
  readonly handbook: Handbook
}

/** The languages that people are answered in. */
export interface Spoken {
  /** Of whoever has chosen none, or whose choice is not known. */
  readonly language: Language
  /** By what a person has chosen; where it is left out, `language` it is. */
  readonly languageOf?: (settings: Settings) => Language
}

export const languageFor = ({ language, languageOf }: Spoken, settings: Settings): Language =>
  languageOf?.(settings) ?? language
