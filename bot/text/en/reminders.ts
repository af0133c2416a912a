import { type DutyKind, ENDLESS, type ShakeRhythm } from '../../../core/jar/tasks/duty.ts'
import { USUAL_MATERIAL } from '../../../core/quantity/materials.ts'
import { exactly } from '../../../core/quantity/measured/measured.ts'
import { dayFromIso, daysBetween, type IsoDay, isoTime } from '../../../core/quantity/time/calendar-day.ts'
import type { Place } from '../../../store/person.ts'
import { lineTyped } from '../../calls/write-line.ts'
import type { Format } from '../format.ts'
import type { Feature } from '../language.ts'
import type {
  NextReminder,
  NudgeMessages,
  RemindedJar,
  RemindedJars,
  RemindersMessages,
} from '../messages/reminders.ts'
import { plantName } from './cook-names.ts'
import { dutyVerbs, jobsText } from './jar-tasks.ts'
import { hasHave, isAre } from './jar-verbs.ts'
import { capital, counted, daysWords, dayWords, firstNames, listed, monthText, onDay, plural } from './phrases.ts'
import { fillerName, sweetenerText } from './sweeteners.ts'

const MOST_NAMES = 6

const MOST_CLOSING = 2

const namesText = (names: readonly string[]): string => firstNames(names, MOST_NAMES)

/** `Strain`, before the name of a jar. */
const order = (duty: DutyKind): string => (duty === 'add' ? 'Add the rest to' : capital(dutyVerbs[duty].todo))

/** `Strain basil: it’s ready, any day until 20 December.`, `Strain basil by 20 December.` */
const strainText = ({ name, fromDay, byDay }: RemindedJar, today: IsoDay, format: Format): string => {
  if (byDay !== null && byDay < today) return `Strain ${name} now: it was due by ${dayWords(byDay, today, format)}.`
  if (byDay === today) return `Strain ${name}: today is the last day.`
  const until = byDay === null ? '' : `, any day until ${dayWords(byDay, today, format)}`
  if (fromDay === today) return `Strain ${name}: it’s ready${until}.`
  return byDay === null ? `Strain ${name}.` : `Strain ${name} by ${dayWords(byDay, today, format)}.`
}

/** `Strain lemon and plum by 6 December.`, `basil should have been strained 1 day ago.` */
function strainAside(jars: readonly RemindedJar[], today: IsoDay, format: Format): string {
  const ofDay = (byDay: IsoDay | null): string => {
    const same = jars.filter((jar) => jar.byDay === byDay)
    const names = namesText(same.map(({ name }) => name))
    if (byDay === null) return `${names} can be strained.`
    if (byDay === today) return `Today is the last day to strain ${names}.`
    if (byDay > today) return `Strain ${names} by ${dayWords(byDay, today, format)}.`
    const late = daysWords(daysBetween(dayFromIso(today), dayFromIso(byDay)))
    return `${names} should have been strained ${late} ago.`
  }
  return [...new Set(jars.map(({ byDay }) => byDay))].map(ofDay).join(' ')
}

const addText = ({ name, plants }: RemindedJar): string =>
  plants.length === 0
    ? `${order('add')} ${name}.`
    : `Add ${listed(plants.map((plant) => (plant.id === null ? plant.name : plantName(plant.id))))} to ${name}.`

/** `Sweeten lemon: 511 g sugar in 1.51 l water.`, `Sweeten lemon: stir 565 g sugar into it, no water, …` */
const sweetenText = ({ name, syrup, kitchen }: RemindedJar, asked: Format): string => {
  const format = asked.in(kitchen)
  const none = {
    sweetener: USUAL_MATERIAL,
    filler: null,
    waterMl: exactly(0),
    sugarG: exactly(0),
    dissolvesG: null,
    isEstimated: false,
  }
  const { sweetener, filler, waterMl, sugarG, dissolvesG, isEstimated } = syrup ?? none
  const sugar = `${isEstimated ? 'about ' : ''}${sweetenerText(sugarG.value, sweetener, format)}`
  const water = `${format.round.volume(waterMl.value)} ${fillerName(filler)}`
  if (dissolvesG !== null) {
    const both = waterMl.value === 0 ? sugar : `${sugar} and ${water}`
    return `Sweeten ${name}: put ${both} straight into the jar, and shake it daily until it’s dissolved. Don’t heat it.`
  }
  const parts = [...(sugarG.value > 0 ? [sugar] : []), ...(waterMl.value > 0 ? [water] : [])]
  return parts.length === 0 ? `Sweeten ${name}.` : `Sweeten ${name}: ${parts.join(' in ')}.`
}

/** `lemon is ready to drink.`, `lemon has rested: 86 % vol, undiluted. Don’t drink it neat.` */
function readyText(jars: readonly RemindedJar[], format: Format): string {
  const mild = jars.filter(({ strong }) => strong === null).map(({ name }) => name)
  const ready = mild.length === 0 ? [] : [`${namesText(mild)} ${isAre(mild)} ready to drink.`]
  const rested = jars.flatMap(({ name, strong, kitchen }) => {
    if (strong === null) return []
    const { abvPercent, isDiluted } = strong
    return [
      `${name} ${hasHave(name)} rested: ${format.in(kitchen).strength(abvPercent)}${isDiluted ? '' : ', undiluted'}. Don’t drink it neat.`,
    ]
  })
  return [...ready, ...rested].join(' ')
}

/** `Drink lemon soon: 3 bottles are left, best until about November 2027.` */
const drinkText = ({ name, byDay, bottles }: RemindedJar): string => {
  const left = bottles === null ? 'bottles are' : `${counted(bottles, 'bottle')} ${plural(bottles, 'is', 'are')}`
  const best =
    byDay === null
      ? ''
      : `, at ${plural(bottles ?? 2, 'its', 'their')} best until about ${monthText(dayFromIso(byDay))}`
  return `Drink ${name} soon, or give some away: ${left} left${best}.`
}

const nudgedText = ({ duty, jars, isAside }: RemindedJars, today: IsoDay, format: Format): string => {
  if (isAside) return strainAside(jars, today, format)
  if (duty === 'add') return jars.map(addText).join(' ')
  const names = namesText(jars.map(({ name }) => name))
  if (duty === 'ready') return readyText(jars, format)
  if (duty === 'drink') return jars.map(drinkText).join(' ')
  if (duty === 'strain' && jars.length <= MOST_NAMES) return jars.map((jar) => strainText(jar, today, format)).join(' ')
  if (duty === 'sweeten' && jars.length <= MOST_NAMES) return jars.map((jar) => sweetenText(jar, format)).join(' ')
  return `${order(duty)} ${names}.`
}

/** How, where doing it wrong spoils the batch or hurts; an answer that is pressed asks for what is measured. */
const how = {
  taste: 'To taste, mix a teaspoon with two of water.',
  strain: 'Sieve away from flames and measure.',
}

/** What a reminder says. */
export const nudgeSentences = {
  headlines: {
    nudge: (values, format) => {
      const { asked, held, today } = values
      const first = held.length === 0 ? [] : [`Look after ${namesText(held)} first.`]
      return [...first, ...asked.map((each) => nudgedText(each, today, format))].join(' ')
    },
  },

  notes: {
    nudge_how: ({ duties }) => duties.map((duty) => how[duty]).join(' '),
    nudge_freezer: ({ names }) => `Take ${namesText(names)} out of the freezer 5 minutes before.`,
    nudge_last: ({ duty, names }) =>
      `My last reminder to ${order(duty).toLowerCase()} ${namesText(names)}${duty === 'shake' ? ' for now' : ''}.`,
    nudge_moved: () =>
      `I can no longer write in the channel you chose, so this comes in private. To choose another, type there: ${lineTyped('reminders', { place: 'here' })}`,
    nudge_seen: () => 'You may have seen this already: I was cut off while sending it.',
  },

  actions: {
    nudge_done: ({ duty, name }) => {
      if (name !== null) return `${name} ${dutyVerbs[duty].done}`
      return duty === 'sweeten' ? 'Sweetened as planned' : capital(dutyVerbs[duty].done)
    },
    nudge_bottle: ({ use, name }) => {
      const what = use === 'opened' ? 'opened a bottle' : 'gave one away'
      return name === null ? capital(what) : `${name}: ${what}`
    },
    nudge_all_shaken: () => 'All shaken',
    nudge_syrup: ({ name }) => (name === null ? 'Work out a syrup' : `Work out a syrup for ${name}`),
    nudge_tasted: ({ verdict, name }) => {
      if (name === null) return verdict === 'good' ? 'It tastes good' : 'Not right yet'
      return `${name}: ${verdict === 'good' ? 'good' : 'not yet'}`
    },
    nudge_later: () => 'Tomorrow',
    nudge_later_today: () => 'Later today',
    nudge_show: ({ isOneJar }) => (isOneJar ? 'Show jar' : 'Show jars'),
  },
} satisfies Feature<NudgeMessages>

const placeWords: Readonly<Record<Exclude<Place['kind'], 'channel'>, string>> = {
  console: 'this terminal, while I run here',
  private: 'private messages to you',
}

const rhythmWords: Readonly<Record<ShakeRhythm, string>> = {
  daily: 'daily',
  every_other_day: 'every other day',
  off: 'never',
}
const nextText = ({ day, today, atMinutes, isNow }: NextReminder, format: Format): string => {
  if (isNow) return 'due now'
  return format.moment(dayFromIso(day), atMinutes, `${onDay(day, today, format)} at ${isoTime(atMinutes)}`)
}

/** What `/reminders` says. */
export const remindersSentences = {
  headlines: {
    reminders: ({ isChanged, atMinutes, until, today }, format) => {
      if (until === ENDLESS) return `${isChanged ? 'Noted: I’ve' : 'I’ve'} stopped reminding you until you say so.`
      const who = isChanged ? 'Noted: reminders' : 'Reminders'
      return until === null
        ? `${who} come at ${isoTime(atMinutes)}.`
        : `${who} start again on ${dayWords(until, today, format)} at ${isoTime(atMinutes)}.`
    },
  },

  rows: {
    reminders_place: () => 'Where',
    reminders_time: () => 'When',
    reminders_shake: () => 'Shaking',
    reminders_drink: () => 'Bottles',
    reminders_pause: () => 'Pause',
    reminders_next: () => 'Next',
  },

  cells: {
    reminders_place: ({ place, isHere, isClosed }, format) => {
      if (place.kind === 'private' && isClosed) {
        return 'private messages, but Discord blocked my last one: allow messages from members of a server we share'
      }
      if (place.kind !== 'channel') return placeWords[place.kind]
      const where = isHere ? 'this channel' : format.channel(place.channelId)
      return isClosed ? `${where}, but I can’t write there any more: they come in private messages to you` : where
    },
    reminders_time: (values) => `${isoTime(values.atMinutes)} in ${values.zone}${values.isAssumed ? ' (assumed)' : ''}`,
    reminders_shake: ({ shake }) => rhythmWords[shake],
    reminders_drink: ({ drink }) => (drink === 'on' ? 'once, four weeks before they’re past their best' : 'never'),
    reminders_pause: ({ until, today }, format) =>
      until === null
        ? 'none'
        : until === ENDLESS
          ? 'until you start them again'
          : `until ${dayWords(until, today, format)}`,
    reminders_next: ({ next, isStopped }, format) =>
      next === null
        ? isStopped
          ? 'none while they’re stopped'
          : 'none: nothing is due'
        : `${nextText(next, format)}: ${jobsText(next.asked)}`,
  },

  notes: {
    reminders_zone_assumed: ({ zone, example }) =>
      `I’m using ${zone} time. To use a city near you: ${lineTyped('reminders', { zone: example })}`,
    /** What the pause keeps from being said in time. */
    reminders_pause_hides: ({ closing, today }, format) =>
      `So I won’t remind you to strain ${firstNames(
        closing.map(({ name, day }) => `${name} (by ${dayWords(day, today, format)})`),
        MOST_CLOSING,
      )}. To see what’s due: /jar list`,
    /** A message was sent to the place. */
    reminders_proved: () => 'I’ve just sent you a message there. Reminders come to the same place.',
    reminders_unproved: () => 'Discord didn’t take my test message just now. Try choosing the place again in a while.',
    /** At somebody's first jar, above the buttons. */
    reminders_where: ({ isPrivate, isHere }) => {
      if (isPrivate) return 'I’ll remind you here, in private. To try it, press the button.'
      return isHere
        ? 'Where shall I remind you, in private or here? Press a button and I’ll try it.'
        : 'I’ll remind you in private. To try it, press the button.'
    },
    reminders_only_running: () =>
      'Reminders appear here while this window is open. Anything missed shows up next time you start.',
  },

  actions: {
    reminders_private: () => 'Remind me in private',
    reminders_here: () => 'Remind me here',
    reminders_time: () => 'Time…',
    reminders_stop: () => 'Stop reminders',
    reminders_start: () => 'Start them again',
    nudge_reminders: () => 'Reminders…',
  },
} satisfies Feature<RemindersMessages>

/** Help for `/reminders`. */
export const remindersText = {
  summary: 'Where and when I remind you: see it, or change it',
  options: {
    place: 'here for where you’re writing, private for a message to you alone',
    time: 'Time of day: 9, 09:00, 9 am, 18.30',
    zone: 'A city near you or a zone: Rome, Europe/Rome, UTC. Type default to clear it',
    shake: 'How often I remind you to shake: daily, every other day, or off',
    drink: 'Whether I tell you about bottles soon past their best: yes or no',
    'pause-until': 'The day reminders start again: 7 January. “further notice” stops them, off ends the pause',
  },
  examples: ['/reminders', '/reminders time:18.30 shake:every other day', '/reminders pause-until:7 January'],
}
