import type { HappeningEntry } from '../../../core/jar/entry/entry.ts'
import type { CalendarDay } from '../../../core/quantity/quantities.ts'
import { dayFromIso, type IsoDay, isoTime } from '../../../core/quantity/time/calendar-day.ts'
import { choiceWords } from './choice-words.ts'
import { dayText, WEEKDAYS } from './day-text.ts'
import { englishFormat } from './format.ts'
import { happeningText } from './jar/happening-words.ts'
import { countryByCode } from './label/country-by-code.ts'

interface Registered {
  readonly count: number
  /** Null: everywhere. */
  readonly guildId: string | null
}

/** What Discord is told of the commands besides their own texts, and what is said of telling it. */
export const registrationText = {
  help: {
    summary: 'Every command, or one with its options and examples',
    options: { command: 'The command: syrup, jar start' },
    examples: ['/help', '/help syrup'],
  },
  /** Commands of two words, by the first. */
  groups: { jar: 'Your jars: what happened to them, and what comes next' },
  choices: choiceWords,
  registered: ({ count, guildId }: Registered) =>
    `${count} commands are registered ${guildId === null ? 'everywhere' : `in the server ${guildId}`}; whoever has Discord open may have to reload it to see them.`,
  faults: {
    wrong_token: () =>
      'Discord does not know this token: copy it again from the application’s page into DISCORD_TOKEN.',
    no_network: () => 'Discord cannot be reached: check the network, then try again.',
    server_fault: () => 'Discord answers with a fault of its own: try again in some minutes.',
    no_rights: ({ guildId }: { readonly guildId: string | null }) =>
      guildId === null
        ? 'Discord does not let this application register commands: check that the token belongs to it.'
        : `Discord does not let me register commands in the server ${guildId}: check DISCORD_GUILD_ID, and that I was invited there with the scope applications.commands.`,
    not_taken: () =>
      'Discord does not take the list of commands; that is a fault of mine, and the lines above say more.',
  },
}

type Style = 'dry' | 'everyday' | 'rich'

const STYLES: Readonly<Record<Style, string>> = {
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
export const suggestionText = {
  all: () => 'all of them',
  /** A jar that is empty or thrown away; several may have been called the same. */
  doneJar: ({ name, startedOn }: { readonly name: string; readonly startedOn: string }) =>
    `${name} (done, begun ${startedOn})`,
  /** A batch that is shared; without a name where its jar is gone, without a day where it was posted nowhere. */
  share: ({ id, name, day }: { readonly id: string; readonly name: string | null; readonly day: IsoDay | null }) =>
    `${name ?? 'a jar that is gone'}${day === null ? '' : `, ${dayText(dayFromIso(day))}`} (${id})`,
  /** `dry: 120 g/L`, and what it tastes like. */
  style: ({ style, gPerL }: { readonly style: Style; readonly gPerL: number }) =>
    `${style}: ${gPerL} g/L, ${STYLES[style]}`,
  /** What a sweetness comes to; nearest to one that has a name. */
  sweetness: ({ gPerL, nearest }: { readonly gPerL: number; readonly nearest: Style }) =>
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
        : `${count} ${count === 1 ? 'bottle' : 'bottles'} of ${volumeMl} ml`,
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

export type SuggestionText = typeof suggestionText

/** The form for a tasting note. */
export const tastingFormText = {
  title: ({ name }: { readonly name: string }) => `Tasting: ${name}`,
  rating: () => 'How good is it?',
  unrated: () => 'Not rated',
  note: () => 'What did you taste?',
  notePlaceholder: () => 'Bright, still a little sharp',
  ratings: { 1: choiceWords[1], 2: choiceWords[2], 3: choiceWords[3], 4: choiceWords[4], 5: choiceWords[5] },
}

export type TastingFormText = typeof tastingFormText

/** The form for what came out of straining. */
export const strainingFormText = {
  title: ({ name }: { readonly name: string }) => `Straining: ${name}`,
  measured: () => 'How much came out?',
  measuredPlaceholder: () => '920 ml; leave it out if you did not measure',
  strength: () => 'How strong is it, if you measured that?',
  strengthPlaceholder: () => '78%; left out, I reckon it',
}

export type StrainingFormText = typeof strainingFormText

/** The form for what was stirred in. */
export const sweeteningFormText = {
  title: ({ name }: { readonly name: string }) => `Sweetening: ${name}`,
  sugar: () => 'How much sugar?',
  sugarPlaceholder: () => '300 g',
  water: () => 'How much water?',
  waterPlaceholder: () => '200 ml; left out, none',
}

export type SweeteningFormText = typeof sweeteningFormText

/** The form for the bottles that were filled. */
export const bottlingFormText = {
  title: ({ name }: { readonly name: string }) => `Bottling: ${name}`,
  bottles: () => 'Which bottles did you fill?',
  bottlesPlaceholder: () => '4 x 500 ml, or 3 x 500 ml + 1 x 350 ml',
}

export type BottlingFormText = typeof bottlingFormText

/** The form of who wants to make a batch that somebody shared. */
export const makeFormText = {
  title: () => 'Make this too',
  spirit: () => 'How much spirit do you have?',
  spiritPlaceholder: () => '700 ml; left out, as much as it takes',
  strength: () => 'How strong is it?',
  strengthPlaceholder: () => '40%',
  bottles: () => 'How many bottles do you want?',
  bottlesPlaceholder: () => '4, of half a litre, or 4 x 350 ml; left out, as many as it fills',
  of: () => 'Fruit, if you have less',
  ofPlaceholder: () => '5 lemons',
  'to-strength': () => 'How strong is the drink to be? (to-strength)',
  'to-strengthPlaceholder': () => '22%; left out, as strong as that batch',
}

export type MakeFormText = typeof makeFormText

/** The form that holds a whole line. */
export const retypeFormText = {
  title: () => 'Change the line and send it',
  line: () => 'The whole line',
}

export type RetypeFormText = typeof retypeFormText
