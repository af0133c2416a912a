import type { HappeningEntry } from '../../../core/jar/entry/entry.ts'
import type { CalendarDay } from '../../../core/quantity/quantities.ts'
import { dayFromIso, type IsoDay, isoTime } from '../../../core/quantity/time/calendar-day.ts'
import type { ChoiceWord } from '../../calls/option.ts'
import { lineTyped } from '../../calls/write-line.ts'
import type {
  BottlingFormText,
  MakeFormText,
  RetypeFormText,
  StrainingFormText,
  SuggestionText,
  SweeteningFormText,
  SweetnessStyle,
  TastingFormText,
} from '../discord-forms-text.ts'
import type {
  CallText,
  ConnectedServers,
  ConnectionNumber,
  ConnectionText,
  DiscordText,
  FileFault,
  RegisteredCommands,
  RegistrationText,
} from '../discord-text.ts'
import type { Lacking } from '../messages/lacking.ts'
import { englishFormat } from './format.ts'
import { happeningText } from './jar-entries.ts'
import { counted, dayText, listed, WEEKDAYS } from './phrases.ts'
import { countryByCode } from './words.ts'

/** What a list of choices shows for each word that may be chosen. */
const choiceWords: Readonly<Record<ChoiceWord, string>> = {
  yes: 'yes',
  no: 'no',
  metric: 'metric',
  us: 'US',
  uk: 'UK',
  eu: 'EU',
  imperial: 'imperial',
  'as typed': 'as typed',
  daily: 'daily',
  'every other day': 'every other day',
  off: 'off',
  here: 'here',
  private: 'in private messages',
  layer: 'layer',
  'top-up': 'top-up',
  json: 'JSON, to read back in',
  csv: 'CSV, for a spreadsheet',
  1: '1, poor',
  2: '2, fair',
  3: '3, good',
  4: '4, very good',
  5: '5, superb',
}

const rights: Readonly<Record<'view' | 'write' | 'history', string>> = {
  view: 'View Channel',
  write: 'Send Messages',
  history: 'Read Message History',
}

const FILE_FAILED: Readonly<Record<FileFault, string>> = {
  not_made: 'couldn’t be made',
  too_big: 'is too big for Discord',
  not_sent: 'didn’t get through to Discord',
}

const CHOOSE_PRIVATE = `or have them in private: ${lineTyped('reminders', { place: 'private' })}`

/** Discord's own words: what its buttons say, and what stands around a reply. */
export const discordText: DiscordText = {
  showEverybody: () => 'Show everybody',
  /** Opens a form again as it was filled in. */
  tryAgain: () => 'Try again',
  /** Of a line that asks for a form, and on the button that opens it. */
  formNext: () => 'One more step: I’ll ask for the rest in a form.',
  openForm: () => 'Open the form',
  ownJars: () => 'That’s about your own jars, so I’ll answer you alone.',
  answerPrivately: () => 'Answer me privately',
  /** In the place of pictures of an answer shown to everybody. */
  hello: () =>
    'Hello! I help you make liqueurs at home: what to buy, when to strain, how much syrup. What are you making? ' +
    `Type: ${lineTyped('plan', { of: '10 lemons', spirit: '1 l 95%' })}`,
  picturesGone: () => 'The picture has gone from Discord. Ask again to see it.',
  cautioned: (text: string) => `⚠ ${text}`,
  rowLabel: (label: string) => `${label}:`,
  next: () => 'Next you can type:',
  action: (label: string, line: string) => `${label}: ${line}`,
  /** What was left out of a reply that is too long, and how to see it. */
  shortened: ({ count, path }: { readonly count: number; readonly path: string | null }) => {
    const left = `${count === 1 ? 'One more line doesn’t' : `${count} more lines don’t`} fit here.`
    if (path === 'help') return `${left} For one command: /help command:plan`
    if (path === 'jar list' || path === 'notebook') return `${left} For one jar: /jar show and its name.`
    return path === null ? left : `${left} To ask for less, see: /help command:${path}`
  },
  /** A button whose line is no longer kept. */
  tooOld: ({ path }: { readonly path: string }) =>
    `I no longer know what this button was filled in with. Nothing was changed. Type /${path} again.`,
  /** Under a nudge: what was recorded, of whom and when. */
  answered: ({ what, who, when }: { readonly what: string; readonly who: string; readonly when: string }) =>
    `✓ ${what} ${who}, ${when}`,
  /** In the place of that, once it was taken back. */
  takenBack: ({ what, who, when }: { readonly what: string; readonly who: string; readonly when: string }) =>
    `↩ ${what} ${who}, ${when}`,
  /** Over the zones to choose from, and beside each the time it is there. */
  chooseZone: () => `Your time zone, or any city with ${lineTyped('settings', { zone: '' })}`,
  zoneNow: ({ clock }: { readonly clock: string }) => `It’s ${clock} there now`,
  placeClosed: ({ lacking }: { readonly lacking: readonly Lacking[] }) => {
    if (lacking.includes('server')) {
      return `I can’t remind you here, and nothing was changed. I’m not in this server myself. Add me, ${CHOOSE_PRIVATE}`
    }
    if (lacking.includes('messages')) {
      return `Discord won’t let me write to you. Nothing was changed. Allow direct messages in the settings of a server we share, or type this in a channel: ${lineTyped('reminders', { place: 'here' })}`
    }
    const needed = lacking.flatMap((each) => (each in rights ? [rights[each as keyof typeof rights]] : []))
    return `I can’t remind you here: I need the permission ${listed(needed)}. Nothing was changed. Give me that, ${CHOOSE_PRIVATE}`
  },
  fileFailed: ({ name, why }: { readonly name: string; readonly why: keyof typeof FILE_FAILED }) =>
    `The file ${name} ${FILE_FAILED[why]}. Everything else here is right.`,
  /** Sent to the place that somebody chose, so that they see it arrive. */
  proof: () => 'This is where I’ll remind you of your jars.',
  /** In the place of a batch that is shared no longer. */
  withdrawn: () => 'A batch was shared here. Its maker has taken it down.',
  /** For whoever asked, where the answer itself is one message further down, for all. */
  posted: () => 'Here it is, for everybody to see:',
  commands: () => 'Commands',
  more: () => 'For one command: /help command:syrup',
  option: (text: string, required: boolean) => (required ? `${text} (needed)` : text),
  examples: () => 'Examples',
}

/** What is said in Discord where there is no reply: about buttons, pace and stopping. */
export const callText: CallText = {
  notYours: () => 'This button is somebody else’s. Ask me yourself: /help',
  /** A button of which this version makes nothing. */
  unknownButton: () => 'I no longer know this button. Nothing was changed. Type the command instead: /help',
  twice: () => 'You pressed that twice, so I did it once. Press it again if you meant it twice.',
  /** Discord takes a form only as a first answer, which has to come soon. */
  formLate: () => 'I was too slow to show you the form. Nothing was changed. Please ask again.',
  tooFast: ({ seconds }: { readonly seconds: number }) =>
    `That’s a lot at once. This one wasn’t done. Please ask again in ${seconds === 1 ? 'a second' : `${seconds} seconds`}.`,
  stopping: () => 'I’m restarting. Please try again in a minute.',
}

const inServers = (servers: number): string => (servers === 1 ? 'one server' : `${servers} servers`)

const connectionNamed = ({ number, of }: ConnectionNumber): string =>
  of === 1 ? 'The connection to Discord' : `Connection ${number} of ${of} to Discord`

/** What whoever runs the bot reads of its connection to Discord. */
export const connectionText: ConnectionText = {
  connected: ({ name, id, servers, of }: ConnectedServers) =>
    `Connected to Discord as ${name} (${id}), ${of === 1 ? `in ${inServers(servers)}` : `over the first of ${of} connections`}.`,
  allConnected: ({ of, servers }: { readonly of: number; readonly servers: number }) =>
    `All ${of} connections to Discord are there, in ${inServers(servers)}.`,
  unchanged: () => 'The commands are registered already.',
  notRegistered: ({ sentence }: { readonly sentence: string }) =>
    `The commands couldn’t be registered. The ones from before still work. ${sentence}`,
  takenAway: ({ guildId }: { readonly guildId: string }) =>
    `The server ${guildId} still had commands of its own from an earlier DISCORD_GUILD_ID. I took them away, so each is offered once.`,
  notLookedAt: () =>
    'I couldn’t look for commands left over from an earlier DISCORD_GUILD_ID. The next start looks again.',
  dropped: (which: ConnectionNumber) => `${connectionNamed(which)} is interrupted. I keep trying.`,
  resumed: (which: ConnectionNumber) => `${connectionNamed(which)} is back.`,
  oneLost: (which: ConnectionNumber) =>
    `Discord has ended connection ${which.number} of ${which.of} for good. Its servers get no answer until you start me again.`,
  stopping: () => 'Stopping. I’ll answer what’s open first.',
  stopped: () => 'Stopped.',
  faults: {
    wrong_token: () => 'Discord doesn’t take this token. Copy it again from the application’s page into DISCORD_TOKEN.',
    no_network: () =>
      'Discord can’t be reached. Check the network (and DISCORD_API, if it’s set), then start me again.',
    server_fault: () => 'Discord has a fault of its own. Start me again in a few minutes.',
    refused: () => 'Discord refuses the connection. Check on the application’s page that its bot is still there.',
    too_often: () =>
      'Discord takes no more connections of this application today: it was started too often. Try again tomorrow.',
    lost: () => 'Discord has ended the connection for good. If the token was renewed, copy it into DISCORD_TOKEN.',
    outgrown: () =>
      'The bot is in more servers than its connections allow. Start me again and I’ll open as many as Discord asks for.',
    unknown: () => 'The connection to Discord failed. The lines above say where.',
  },
}

/** What Discord is told of the commands besides their own texts, and what is said of telling it. */
export const registrationText: RegistrationText = {
  help: {
    summary: 'Where to start, a topic, or one command',
    options: { command: 'A command or a topic: syrup, jars, all' },
    examples: ['/help', '/help syrup'],
  },
  ask: {
    summary: 'Say it in your own words',
    options: { text: 'What you have, did, or want to know' },
    examples: ['/ask text:10 lemons and a litre of 95%'],
  },
  /** Commands of two words, by the first. */
  groups: { jar: 'Your jars: what you did, and what comes next' },
  choices: choiceWords,
  registered: ({ count, guildId }: RegisteredCommands) =>
    `${count} commands are registered ${guildId === null ? 'everywhere' : `in the server ${guildId}`}. If you don’t see them, reload Discord.`,
  faults: {
    wrong_token: () => 'Discord doesn’t know this token. Copy it again from the application’s page into DISCORD_TOKEN.',
    no_network: () => 'Discord can’t be reached. Check the network, then try again.',
    server_fault: () => 'Discord has a fault of its own. Try again in a few minutes.',
    no_rights: ({ guildId }: { readonly guildId: string | null }) =>
      guildId === null
        ? 'Discord won’t let this application register commands. Check that the token belongs to it.'
        : `Discord won’t let me register commands in the server ${guildId}. Check DISCORD_GUILD_ID, and that I was invited with the scope applications.commands.`,
    not_taken: () => 'Discord doesn’t take the list of commands. The fault is mine, and the lines above say more.',
  },
}

const STYLES: Readonly<Record<SweetnessStyle, string>> = {
  dry: 'less sweet',
  everyday: 'medium sweet',
  rich: 'sweet as a dessert',
}

const nearDay = (daysAhead: number): readonly string[] => {
  if (daysAhead === 0) return ['today']
  if (daysAhead === 1) return ['tomorrow']
  if (daysAhead === -1) return ['yesterday']
  return daysAhead < 0 && daysAhead > -8 ? [`${-daysAhead} days ago`] : []
}

const weekdayText = (day: CalendarDay): string =>
  `${WEEKDAYS[(new Date(Date.UTC(day.year, day.month - 1, day.day)).getUTCDay() + 6) % 7]} ${dayText(day)}`

/** What is offered while an option is typed. */
export const suggestionText: SuggestionText = {
  all: () => 'all of them',
  /** A jar that is empty or thrown away; several may have been called the same. */
  doneJar: ({ name, startedOn }: { readonly name: string; readonly startedOn: string }) =>
    `${name} (done, started ${startedOn})`,
  /** A batch that is shared; without a name where its jar is gone, without a day where it was posted nowhere. */
  share: ({ id, name, day }: { readonly id: string; readonly name: string | null; readonly day: IsoDay | null }) =>
    `${name ?? 'a jar that’s gone'}${day === null ? '' : `, ${dayText(dayFromIso(day))}`} (${id})`,
  /** `dry: 120 g/L`, and what it tastes like. */
  style: ({ style, gPerL }: { readonly style: SweetnessStyle; readonly gPerL: number }) =>
    `${style}: ${gPerL} g/L, ${STYLES[style]}`,
  /** What a sweetness comes to; nearest to one that has a name. */
  sweetness: ({ gPerL, nearest }: { readonly gPerL: number; readonly nearest: SweetnessStyle }) =>
    `${Math.round(gPerL)} g/L, nearest to ${nearest}`,
  /** `yesterday, Tuesday 24 November 2026`. */
  day: ({ day, daysAhead }: { readonly day: CalendarDay; readonly daysAhead: number }) =>
    [...nearDay(daysAhead), weekdayText(day)].join(', '),
  /** `minutes` of the day; null: in the morning, when reminders come. */
  until: ({
    day,
    daysAhead,
    minutes,
  }: {
    readonly day: CalendarDay
    readonly daysAhead: number
    readonly minutes: number | null
  }) => (minutes === null ? weekdayText(day) : `${isoTime(minutes)}, ${[...nearDay(daysAhead), weekdayText(day)][0]}`),
  entry: ({ entry }: { readonly entry: HappeningEntry }) =>
    `${entry.seq}: ${happeningText(entry, englishFormat('metric'))}, ${dayText(dayFromIso(entry.day))}`,
  bottles: ({
    bottles,
  }: {
    readonly bottles: readonly { readonly count: number | null; readonly volumeMl: number }[]
  }) => {
    const each = bottles.map(({ count, volumeMl }) =>
      count === null
        ? `bottles of ${volumeMl} ml, as many as it fills`
        : `${counted(count, 'bottle')} of ${volumeMl} ml`,
    )
    const wholeMl = bottles.every(({ count }) => count !== null)
      ? bottles.reduce((sum, { count, volumeMl }) => sum + (count ?? 0) * volumeMl, 0)
      : null
    return `${each.join(' + ')}${wholeMl === null ? '' : `: ${Number((wholeMl / 1000).toFixed(2))} l`}`
  },
  country: countryByCode,
  /** `minutes` of the day it is there now. */
  zone: ({ zone, minutes }: { readonly zone: string; readonly minutes: number }) =>
    `${zone.replaceAll('_', ' ')} (${isoTime(minutes)} now)`,
}

/** The form for a tasting note. */
export const tastingFormText: TastingFormText = {
  title: ({ name }: { readonly name: string }) => `Tasting: ${name}`,
  rating: () => 'How good is it?',
  unrated: () => 'Not rated',
  note: () => 'What did you taste?',
  notePlaceholder: () => 'Bright, still a little sharp',
  ratings: { 1: choiceWords[1], 2: choiceWords[2], 3: choiceWords[3], 4: choiceWords[4], 5: choiceWords[5] },
}

/** The form for what came out of straining. */
export const strainingFormText: StrainingFormText = {
  title: ({ name }: { readonly name: string }) => `Straining: ${name}`,
  measured: () => 'How much came out?',
  measuredPlaceholder: () => '920 ml, or nothing if you didn’t measure',
  strength: () => 'How strong is it, if you measured that?',
  strengthPlaceholder: () => '78%, or nothing and I’ll work it out',
}

/** The form for what was stirred in. */
export const sweeteningFormText: SweeteningFormText = {
  title: ({ name }: { readonly name: string }) => `Sweetening: ${name}`,
  sugar: () => 'How much sugar?',
  sugarPlaceholder: () => '300 g',
  water: () => 'How much water?',
  waterPlaceholder: () => '200 ml, or nothing for none',
}

/** The form for the bottles that were filled. */
export const bottlingFormText: BottlingFormText = {
  title: ({ name }: { readonly name: string }) => `Bottling: ${name}`,
  bottles: () => 'Which bottles did you fill?',
  bottlesPlaceholder: () => '4 x 500 ml, or 3 x 500 ml + 1 x 350 ml',
}

/** The form of who wants to make a batch that somebody shared. */
export const makeFormText: MakeFormText = {
  title: () => 'Make this too',
  spirit: () => 'How much spirit do you have?',
  spiritPlaceholder: () => '700 ml, or nothing for as much as it needs',
  strength: () => 'How strong is it?',
  strengthPlaceholder: () => '40%',
  bottles: () => 'How many bottles do you want?',
  bottlesPlaceholder: () => '4, or 4 x 350 ml, or nothing for as many as it fills',
  of: () => 'Fruit, if you have less',
  ofPlaceholder: () => '5 lemons',
  'to-strength': () => 'How strong should it be? (to-strength)',
  'to-strengthPlaceholder': () => '22%, or nothing for the same as that batch',
}

/** The form that holds a whole line. */
export const retypeFormText: RetypeFormText = {
  title: () => 'Change the line and send it',
  line: () => 'The whole line',
}
