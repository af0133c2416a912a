import type { DutyKind } from '../../../../core/jar/duty.ts'
import type { IsoDay } from '../../../../core/quantity/calendar.ts'
import { exactly, type Measured } from '../../../../core/quantity/measured.ts'
import type { Format } from '../../format.ts'
import { listed } from '../phrases.ts'
import { plantName } from '../plan/plan-words.ts'
import { dayWords } from './day-words.ts'

/** One jar that asks for something. */
export interface NudgedJar {
  readonly name: string
  /** The first day for straining, where one was planned. */
  readonly fromDay: IsoDay | null
  readonly byDay: IsoDay | null
  /** What is to be put in now; without id, a plant in the maker's words. */
  readonly plants: readonly { readonly id: string | null; readonly name: string }[]
  /** What is to sweeten it now, where that is known. */
  readonly syrup: { readonly waterMl: Measured; readonly sugarG: Measured } | null
}

/** Jars that ask for the same. */
export interface NudgedJars {
  readonly duty: DutyKind
  readonly jars: readonly NudgedJar[]
}

interface Named {
  readonly duty: DutyKind
  readonly names: readonly string[]
}

const MOST_NAMES = 6

const namesText = (names: readonly string[]): string =>
  names.length <= MOST_NAMES + 1
    ? listed(names)
    : `${names.slice(0, MOST_NAMES).join(', ')} and ${names.length - MOST_NAMES} more`

const DO: Readonly<Record<DutyKind, string>> = {
  shake: 'Shake',
  taste: 'Taste',
  add: 'Add the later plants to',
  strain: 'Strain',
  sweeten: 'Sweeten',
  filter: 'Filter',
  bottle: 'Bottle',
  ready: 'Drink',
}

const DONE: Readonly<Record<DutyKind, string>> = {
  shake: 'shaken',
  taste: 'tasted',
  add: 'added',
  strain: 'strained',
  sweeten: 'sweetened',
  filter: 'filtered',
  bottle: 'bottled',
  ready: 'opened',
}

/** `its window opened today, until 20 December`; empty where no days were planned. */
const windowText = ({ fromDay, byDay }: NudgedJar, today: IsoDay, format: Format): string => {
  if (byDay !== null && byDay < today) return `its window closed on ${dayWords(byDay, today, format)}`
  if (byDay === today) return 'its window closes today'
  const until = byDay === null ? '' : `, until ${dayWords(byDay, today, format)}`
  if (fromDay === today) return `its window opened today${until}`
  return byDay === null ? '' : `its window closes on ${dayWords(byDay, today, format)}`
}

const strainText = (jar: NudgedJar, today: IsoDay, format: Format): string => {
  const window = windowText(jar, today, format)
  return window === '' ? `Strain ${jar.name}.` : `Strain ${jar.name}: ${window}.`
}

const addText = ({ name, plants }: NudgedJar): string =>
  plants.length === 0
    ? `${DO.add} ${name}.`
    : `Add ${listed(plants.map((plant) => (plant.id === null ? plant.name : plantName(plant.id))))} to ${name}.`

/** `Sweeten lemon: 511 g sugar in 1.51 l water.` */
const sweetenText = ({ name, syrup }: NudgedJar, format: Format): string => {
  const { waterMl, sugarG } = syrup ?? { waterMl: exactly(0), sugarG: exactly(0) }
  const parts = [
    ...(sugarG.value > 0 ? [`${format.weigh(sugarG.value)} sugar`] : []),
    ...(waterMl.value > 0 ? [`${format.pour(waterMl.value)} water`] : []),
  ]
  return parts.length === 0 ? `${DO.sweeten} ${name}.` : `${DO.sweeten} ${name}: ${parts.join(' in ')}.`
}

const nudgedText = ({ duty, jars }: NudgedJars, today: IsoDay, format: Format): string => {
  if (duty === 'add') return jars.map(addText).join(' ')
  const names = namesText(jars.map(({ name }) => name))
  if (duty === 'ready') return `${names} ${jars.length === 1 ? 'is' : 'are'} ready to drink.`
  if (duty === 'strain' && jars.length <= MOST_NAMES) return jars.map((jar) => strainText(jar, today, format)).join(' ')
  if (duty === 'sweeten' && jars.length <= MOST_NAMES) return jars.map((jar) => sweetenText(jar, format)).join(' ')
  return `${DO[duty]} ${names}.`
}

const capital = (text: string): string => `${text.charAt(0).toUpperCase()}${text.slice(1)}`

/** How, where doing it wrong spoils the batch or hurts. */
const how = {
  taste: 'Taste a teaspoon of it in two of water, never strong spirit neat.',
  strain:
    'Strain through a sieve, then through a coffee filter, away from flame. Measure what comes out and say it with the answer, as in measured:920 ml.',
}

/** What a reminder says. */
export const nudgeSentences = {
  headlines: {
    nudge: ({ asked, today }: { readonly asked: readonly NudgedJars[]; readonly today: IsoDay }, format: Format) =>
      asked.map((each) => nudgedText(each, today, format)).join(' '),
  },

  notes: {
    nudge_how: ({ duty }: { readonly duty: 'taste' | 'strain' }) => how[duty],
    nudge_last: ({ duty, names }: Named) =>
      duty === 'shake'
        ? `Seven went unanswered, so reminders to shake ${namesText(names)} stop until you next say something of ${names.length === 1 ? 'it' : 'them'}.`
        : `This is the last reminder to ${DO[duty].toLowerCase()} ${namesText(names)}.`,
    nudge_seen: () => 'You may have seen this already: I was cut off while sending it.',
  },

  actions: {
    nudge_done: ({ duty, name }: { readonly duty: DutyKind; readonly name: string | null }) =>
      name === null ? capital(DONE[duty]) : `${name} ${DONE[duty]}`,
    nudge_syrup: ({ name }: { readonly name: string | null }) =>
      name === null ? 'Work out a syrup' : `Work out a syrup for ${name}`,
    nudge_tasted: ({ verdict, name }: { readonly verdict: 'good' | 'not_yet'; readonly name: string | null }) => {
      const said = verdict === 'good' ? 'tastes good' : 'is not right yet'
      return name === null ? `It ${said}` : `${name} ${said}`
    },
    nudge_later: () => 'Tomorrow',
    nudge_later_today: () => 'Later today',
    nudge_show: ({ isOneJar }: { readonly isOneJar: boolean }) => (isOneJar ? 'Show jar' : 'Show jars'),
  },
}
