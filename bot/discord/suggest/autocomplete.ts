import { z } from 'zod'
import { StorageError } from '../../../store/storage-error.ts'
import { option, optionTextOf, type Suggested } from '../../calls/option.ts'
import { byPath } from '../../chat/callable.ts'
import type { Dispatch } from '../../chat/run/call-outcome.ts'
import { HELP } from '../../chat/run/help-page.ts'
import { trace } from '../../chat/trace.ts'
import type { SuggestionText } from '../../text/discord-forms-text.ts'
import { isolatedWithin } from '../show/isolate-rtl.ts'
import type { Offer } from './offer.ts'
import { ranked, rankOf } from './rank.ts'
import {
  type Habits,
  suggestBottles,
  suggestEntries,
  suggestPast,
  suggestSweetness,
  suggestUntil,
} from './suggest-amounts.ts'
import { suggestBotanicals } from './suggest-botanicals.ts'
import { suggestJarList, suggestJarOrAll, suggestJars } from './suggest-jars.ts'
import { suggestCountries, suggestZones } from './suggest-places.ts'
import { suggestShares } from './suggest-shares.ts'
import { suggestSymptoms } from './suggest-symptoms.ts'

/** Help is the chat's own, and a command only here. */
export const helpCommand = {
  path: HELP,
  input: z.object({
    command: option({ read: (text) => text, write: (path) => path, suggested: 'command' }).optional(),
  }),
} as const

/** An option that somebody is typing in. */
export interface Typing {
  /** `jar shake`, `help`. */
  readonly path: string
  readonly option: string
  /** Not trusted: anything at all. */
  readonly typed: string
  /** What is typed for `jar:` beside it. */
  readonly jar?: string
}

const MOST_OFFERS = 25
const MOST_CHARACTERS = 100

/** Control characters, which the grammar refuses, and halves of a pair, which Discord does. */
const UNREADABLE = /[\p{Cc}\p{Cs}]/u

interface Asked extends Pick<Dispatch, 'commands' | 'userId' | 'store' | 'assumedZone' | 'nowMs' | 'log'> {
  /** What Discord calls the person's language: `en-GB`. */
  readonly locale: string
}

/** And which jar is meant. */
interface Beside extends Asked {
  readonly jar: string
}

const jarsOf = async ({ store, userId }: Asked) => (await store.read(userId)).jars

const habitsOf = async ({ store, userId, assumedZone, nowMs }: Asked): Promise<Habits> => {
  const { zone, country } = (await store.read(userId)).settings
  return { zone: zone ?? assumedZone, country, nowMs }
}

const suggestCommands = (typed: string, { commands }: Asked): readonly Offer[] => {
  const key = typed.trim().replace(/^\//, '').toLowerCase()
  const paths = commands.map(({ path }) => path)
  return ranked(paths, (path) => rankOf(path, key)).map((path) => ({ name: path, value: path }))
}

type Suggest = (typed: string, asked: Beside, text: SuggestionText) => readonly Offer[] | Promise<readonly Offer[]>

const SUGGEST: Readonly<Record<Suggested, Suggest>> = {
  jar: async (typed, asked, text) => suggestJars(typed, await jarsOf(asked), text),
  jar_or_all: async (typed, asked, text) => suggestJarOrAll(typed, await jarsOf(asked), text),
  jars: async (typed, asked, text) => suggestJarList(typed, await jarsOf(asked), text),
  botanicals: (typed, { locale }) => suggestBotanicals(typed, locale),
  country: (typed, _, text) => suggestCountries(typed, text),
  zone: (typed, { nowMs, locale }, text) => suggestZones(typed, { nowMs, locale, most: MOST_OFFERS }, text),
  command: suggestCommands,
  symptom: (typed, { locale }) => suggestSymptoms(typed, locale),
  sweetness: (typed, _, text) => suggestSweetness(typed, text),
  past: async (typed, asked, text) => suggestPast(typed, await habitsOf(asked), text),
  until: async (typed, asked, text) => suggestUntil(typed, await habitsOf(asked), text),
  entry: async (typed, asked, text) => suggestEntries(typed, asked.jar, await jarsOf(asked), text),
  bottles: (typed, _, text) => suggestBottles(typed, text),
  share: async (typed, { store, userId, assumedZone }, text) =>
    suggestShares(typed, await store.read(userId), assumedZone, text),
}

const isShort = ({ name, value }: Offer): boolean => [name, value].every((text) => text.length <= MOST_CHARACTERS)

/**
 * What is offered to somebody who is typing an option: their own jars, entries and shares, plants, amounts, days, zones, countries, commands; 25 at most,
 * of 100 characters at most. Never throws: where something is wrong, nothing is offered, and a fault of ours is logged.
 */
export const suggest = async (
  { path, option, typed, jar = '' }: Typing,
  asked: Asked,
  text: SuggestionText,
): Promise<readonly Offer[]> => {
  try {
    const command = byPath(path, [...asked.commands, helpCommand])
    const shape: Readonly<Record<string, unknown>> = command?.input.shape ?? {}
    const { suggested } = Object.hasOwn(shape, option) ? optionTextOf(shape[option]) : {}
    if (suggested === undefined || typed.length > MOST_CHARACTERS || UNREADABLE.test(typed)) return []
    const offers = await SUGGEST[suggested](typed, { ...asked, jar }, text)
    const short = offers.filter(isShort).slice(0, MOST_OFFERS)
    return short.map(({ name, value }) => ({ name: isolatedWithin(name, MOST_CHARACTERS), value }))
  } catch (error) {
    // The command itself will say why the store cannot be read.
    if (!(error instanceof StorageError)) asked.log(`/${path} ${option}: ${trace(error)}`)
    return []
  }
}
