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
import type { AgainMessages } from './messages/again.ts'
import type { CalculateMessages } from './messages/calculate.ts'
import type { ChatProblems } from './messages/chat-problems.ts'
import type { CostMessages } from './messages/cost.ts'
import type { EmergencyMessages } from './messages/emergency.ts'
import type { Handbook } from './messages/handbook.ts'
import type { HazardMessages } from './messages/hazards.ts'
import type { DangerMessages } from './messages/jar-danger.ts'
import type { StepMessages } from './messages/jar-steps.ts'
import type { CompareMessages, ListMessages, NotebookMessages, ShowMessages } from './messages/jar-views.ts'
import type { KeepingMessages } from './messages/keeping.ts'
import type { Kitchen } from './messages/kitchen.ts'
import type { LabelMessages } from './messages/label.ts'
import type { MeasureMessages } from './messages/measure.ts'
import type { ExportMessages } from './messages/notebook-file.ts'
import type { PictureMessages } from './messages/pictures.ts'
import type { PlanMessages } from './messages/plan.ts'
import type { BotanicalMessages } from './messages/plants.ts'
import type { NudgeMessages, RemindersMessages } from './messages/reminders.ts'
import type { ServingMessages } from './messages/serving.ts'
import type { ForgetMessages, SettingsMessages } from './messages/settings.ts'
import type { CodeMessages, ShareMessages } from './messages/share.ts'
import type { ShoppingMessages } from './messages/shopping.ts'
import type { SweetenerMessages } from './messages/sweeteners.ts'
import type { TalkMessages } from './messages/talk.ts'
import type { TroubleMessages } from './messages/trouble.ts'
import type { MoreText } from './more-text.ts'
import type { PictureText } from './picture-text.ts'
import type { ConsoleText } from './terminal-text.ts'

/** All that replies can say: by group and key, the values that the sentence needs; undefined where it needs none. */
export type Messages = CalculateMessages &
  MeasureMessages &
  SweetenerMessages &
  ServingMessages &
  LabelMessages &
  PlanMessages &
  BotanicalMessages &
  HazardMessages &
  SettingsMessages &
  ForgetMessages &
  RemindersMessages &
  NudgeMessages &
  ListMessages &
  ShowMessages &
  NotebookMessages &
  CompareMessages &
  AgainMessages &
  StepMessages &
  DangerMessages &
  ExportMessages &
  CodeMessages &
  ShareMessages &
  PictureMessages &
  EmergencyMessages &
  TroubleMessages &
  KeepingMessages &
  ShoppingMessages &
  CostMessages &
  TalkMessages

/** A sentence for every key of a group. */
export type Written<Group> = {
  readonly [Key in keyof Group]: Group[Key] extends undefined | Record<string, never>
    ? () => string
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
