import type { ChoiceWord } from '../calls/option.ts'
import type { CommandText } from './command-text.ts'
import type { Lacking } from './messages/lacking.ts'
import type { Sayings } from './sayings.ts'

/** Why a file was not attached. */
export type FileFault = 'not_made' | 'too_big' | 'not_sent'

/** Why there is no connection. */
export type ConnectionFault =
  | 'wrong_token'
  | 'no_network'
  | 'server_fault'
  | 'refused'
  | 'too_often'
  | 'lost'
  | 'outgrown'
  | 'unknown'

export interface ConnectedServers {
  readonly name: string
  readonly id: string
  readonly servers: number
  /** How many connections there are. */
  readonly of: number
}

export interface ConnectionNumber {
  /** From 1. */
  readonly number: number
  readonly of: number
}

export interface RegisteredCommands {
  readonly count: number
  /** Null: everywhere. */
  readonly guildId: string | null
}

/** Discord's own words: what its buttons say, and what stands around a reply. */
export interface DiscordText extends Sayings<'showEverybody' | 'openForm' | 'next' | 'commands' | 'more' | 'examples'> {
  /** Where others read along, and on the button that answers whoever asked alone. */
  ownJars(): string
  answerPrivately(): string
  /** Opens a form again as it was filled in. */
  tryAgain(): string
  /** Of a line that asks for a form, and on the button that opens it. */
  formNext(): string
  /** In a server that the bot was just added to. */
  hello(): string
  /** In the place of pictures of an answer shown to everybody. */
  picturesGone(): string
  cautioned(text: string): string
  rowLabel(label: string): string
  action(label: string, line: string): string
  /** What was left out of a reply that is too long, and how to see it. */
  shortened(values: { readonly count: number; readonly path: string | null }): string
  /** A button whose line is no longer kept. */
  tooOld(values: { readonly path: string }): string
  /** Under a nudge: what was recorded, of whom and when. */
  answered(values: { readonly what: string; readonly who: string; readonly when: string }): string
  /** In the place of that, once it was taken back. */
  takenBack(values: { readonly what: string; readonly who: string; readonly when: string }): string
  /** Over the zones to choose from, and beside each the time it is there. */
  chooseZone(): string
  zoneNow(values: { readonly clock: string }): string
  placeClosed(values: { readonly lacking: readonly Lacking[] }): string
  fileFailed(values: { readonly name: string; readonly why: FileFault }): string
  /** Sent to the place that somebody chose, so that they see it arrive. */
  proof(): string
  /** In the place of a batch that is shared no longer. */
  withdrawn(): string
  /** For whoever asked, where the answer itself is one message further down, for all. */
  posted(): string
  option(text: string, required: boolean): string
}

/** What is said in Discord where there is no reply: about buttons, pace and stopping. */
export interface CallText extends Sayings<'notYours' | 'twice' | 'stopping'> {
  /** A button of which this version makes nothing. */
  unknownButton(): string
  /** Discord takes a form only as a first answer, which has to come soon. */
  formLate(): string
  tooFast(values: { readonly seconds: number }): string
}

/** What whoever runs the bot reads of its connection to Discord. */
export interface ConnectionText extends Sayings<'unchanged' | 'notLookedAt' | 'stopping' | 'stopped'> {
  connected(values: ConnectedServers): string
  allConnected(values: { readonly of: number; readonly servers: number }): string
  notRegistered(values: { readonly sentence: string }): string
  takenAway(values: { readonly guildId: string }): string
  dropped(which: ConnectionNumber): string
  resumed(which: ConnectionNumber): string
  oneLost(which: ConnectionNumber): string
  readonly faults: Sayings<ConnectionFault>
}

/** What Discord is told of the commands besides their own texts, and what is said of telling it. */
export interface RegistrationText {
  readonly help: CommandText
  readonly ask: CommandText
  /** Commands of two words, by the first. */
  readonly groups: Readonly<Record<string, string>>
  readonly choices: Readonly<Record<ChoiceWord, string>>
  registered(values: RegisteredCommands): string
  readonly faults: {
    wrong_token(): string
    no_network(): string
    server_fault(): string
    no_rights(values: { readonly guildId: string | null }): string
    not_taken(): string
  }
}
