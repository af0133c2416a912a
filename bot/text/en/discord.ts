import type { Lacking } from '../../chat/lacking.ts'
import { listed } from './phrases.ts'

const rights: Readonly<Record<'view' | 'write' | 'history', string>> = {
  view: 'View Channel',
  write: 'Send Messages',
  history: 'Read Message History',
}

const FILE_FAILED = {
  not_made: 'could not be made',
  too_big: 'is too big for Discord',
  not_sent: 'did not get through to Discord',
}

const CHOOSE_PRIVATE = 'or choose place:private; nothing was changed'

/** Discord's own words: what its buttons say, and what stands around a reply. */
export const discordText = {
  showEverybody: () => 'Show everybody',
  /** Opens a form again as it was filled in. */
  tryAgain: () => 'Try again',
  /** Of a line that asks for a form, and on the button that opens it. */
  formNext: () => 'One more step: a short form asks for the rest.',
  openForm: () => 'Open the form',
  /** In the place of pictures of an answer shown to everybody. */
  picturesGone: () => 'The picture that belongs here could not be had from Discord any more; ask anew to see it.',
  cautioned: (text: string) => `⚠ ${text}`,
  rowLabel: (label: string) => `${label}:`,
  next: () => 'Next you can type:',
  action: (label: string, line: string) => `${label}: ${line}`,
  /** What was left out of a reply that is too long, and how to see it. */
  shortened: ({ count, path }: { readonly count: number; readonly path: string | null }) => {
    const left = `${count === 1 ? 'One more line does' : `${count} more lines do`} not fit here`
    if (path === 'help') return `${left}; /help and the name of a command shows what it takes.`
    if (path === 'jar list' || path === 'notebook') return `${left}; /jar show and a name tells of one jar.`
    return path === null ? `${left}.` : `${left}; /help command:${path} says how to ask for less.`
  },
  /** A button whose line is no longer kept. */
  tooOld: ({ path }: { readonly path: string }) =>
    `This button is too old for me to know what it was filled in with. Type /${path} again; nothing was changed.`,
  /** Under a nudge: what was recorded, of whom and when. */
  answered: ({ what, who, when }: { readonly what: string; readonly who: string; readonly when: string }) =>
    `✓ ${what} ${who}, ${when}`,
  /** In the place of that, once it was taken back. */
  takenBack: ({ what, who, when }: { readonly what: string; readonly who: string; readonly when: string }) =>
    `↩ ${what} ${who}, ${when}`,
  /** Over the zones to choose from, and beside each the time it is there. */
  chooseZone: () => 'Your time zone; /settings zone: takes any other city',
  zoneNow: ({ clock }: { readonly clock: string }) => `It is ${clock} there now`,
  placeClosed: ({ lacking }: { readonly lacking: readonly Lacking[] }) => {
    if (lacking.includes('server')) {
      return `I cannot remind you here, because I am not in this place myself: have me added to the server, ${CHOOSE_PRIVATE}.`
    }
    if (lacking.includes('messages')) {
      return 'Discord does not let me write to you: allow direct messages in the settings of a server we share, or choose place:here in a channel; nothing was changed.'
    }
    const needed = lacking.flatMap((each) => (each in rights ? [rights[each as keyof typeof rights]] : []))
    return `I cannot remind you here, because I lack the permission ${listed(needed)}: have it given to me in this channel, ${CHOOSE_PRIVATE}.`
  },
  fileFailed: ({ name, why }: { readonly name: string; readonly why: keyof typeof FILE_FAILED }) =>
    `The file ${name} ${FILE_FAILED[why]}; the answer holds without it.`,
  /** Sent to the place that somebody chose, so that they see it arrive. */
  proof: () => 'This is where I’ll remind you of your jars.',
  /** In the place of a batch that is shared no longer. */
  withdrawn: () => 'A batch was shared here; whoever made it shares it no longer.',
  /** For whoever asked, where the answer itself is one message further down, for all. */
  posted: () => 'Here it is, for everybody to see:',
  commands: () => 'Commands',
  more: () => '/help and the name of a command shows its options.',
  option: (text: string, required: boolean) => (required ? text : `${text} (may be left out)`),
  examples: () => 'Examples',
}

export type DiscordText = typeof discordText
