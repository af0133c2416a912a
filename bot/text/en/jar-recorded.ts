import type { BottlesOf, Happening, HappeningEntry, HappeningKind, ReadAmount } from '../../../core/jar/entry/entry.ts'
import type { Noted } from '../../../core/jar/entry/told.ts'
import { isFreezer } from '../../../core/jar/state/where-it-stands.ts'
import type { Measured } from '../../../core/quantity/measured/measured.ts'
import { dayFromIso, type IsoDay } from '../../../core/quantity/time/calendar-day.ts'
import type { Format } from '../format.ts'
import type { BecameSaid, RecordedStep } from '../messages/jar-recorded.ts'
import {
  addedText,
  didWords,
  filteredWords,
  fruitGaveText,
  happeningText,
  sweetsText,
  untilText,
} from './jar-entries.ts'
import { isAre, isnt, wasnt, wasWere } from './jar-verbs.ts'
import { capital, countWord, listed, plural } from './phrases.ts'
import { bottlesText, nameText, noteText, sweetWords, vesselText } from './words.ts'

/** With its year, so that a day typed without one can be checked; nothing where it is today. */
export const onDayText = (day: IsoDay | null, format: Format): string =>
  day === null ? '' : ` on ${format.day(dayFromIso(day))}`

/** From this share of it on an amount is a guess. */
const A_GUESS = 0.05

/** `2.71 l`; `about 1.3 l` of what was only expected. */
const roundVolume = (volumeMl: Measured, format: Format): string =>
  `${volumeMl.plusMinus > A_GUESS * volumeMl.value ? 'about ' : ''}${format.round.volume(volumeMl.value)}`

/** `2.71 l at 30 %, medium sweet`. */
export const drinkText = ({ volumeMl, abvPercent, sugarGPerL }: BecameSaid, format: Format): string => {
  const sweet = sweetWords(sugarGPerL.value, format)
  return `${roundVolume(volumeMl, format)} at ${format.round.strength(abvPercent)}${sweet === '' ? '' : `, ${sweet}`}`
}

/** ` on 9 December 2026` between a name and its verb: `lemon is`, `lemon was`. */
export const isText = (name: string, day: IsoDay | null): string => (day === null ? isAre(name) : wasWere(name))

const RECORDED_AS: { readonly [Kind in HappeningKind]?: string } = { emptied: 'empty', opened: 'open' }

/** What may be done to a jar more than once. */
const AS_DEED = { shaken: 'shake', filtered: 'filtering', bottled: 'bottling' } as const

const USED = { given: 'given away', opened: 'opened' } as const

const ADDED_TO = { added: 'Added to', layer: 'Layered into', top_up: 'Topped up' } as const

/** What was recorded, as a sentence. */
export function recordedText(
  { name, happening, day, became = null, leftMl = null, isBrief = false }: RecordedStep,
  format: Format,
): string {
  const when = onDayText(day, format)
  const done = `${name} ${isText(name, day)} ${(day === null ? RECORDED_AS[happening.kind] : undefined) ?? didWords[happening.kind]}${when}`
  const into = became === null ? '' : `: ${drinkText(became, format)}`
  if (isBrief && happening.kind !== 'put_off') return `${done}.`
  switch (happening.kind) {
    case 'tasted': {
      const { rating, note } = happening
      const said = [...(rating === null ? [] : [`${rating} of 5`]), ...(note === null ? [] : [noteText(note)])]
      return `Noted for ${name}${when}: ${said.join(', ')}.`
    }
    case 'added':
      return `${ADDED_TO[happening.as ?? 'added']} ${name}${when}: ${addedText(happening, format, 'typed' in happening ? happening.typed : [])}.`
    case 'strained': {
      const { measured, strength } = happening
      if (measured === null && strength === null) return `${done}, not measured.`
      const strong = strength === null ? null : format.round.strength(strength.abvPercent)
      if (measured === null) return `${done}: ${strong}, amount not measured.`
      return `${done}: ${amountRead(measured, format)}${strong === null ? '' : ` at ${strong}`}.`
    }
    case 'filtered':
      return `${name} ${isText(name, day)} ${filteredWords(happening)}${when}${happening.measured === null || became !== null ? into : `: ${amountRead(happening.measured, format)} left`}.`
    case 'bottles_out':
      return `${name}: ${bottlesText(happening.bottles, format)} ${USED[happening.use]}${when}.`
    case 'bottled':
      return `${done}: ${bottleWords(happening.bottles, format)}${leftMl === null ? '' : `, about ${format.round.volume(leftMl.value)} left over`}.`
    case 'put_off':
      return `I’ll remind you about ${name} again from ${untilText({ ...happening, zone: 'zone' in happening ? happening.zone : null }, format)}.`
    case 'emptied':
      return `${done}. The batch stays in your notebook.`
    case 'discarded':
      return `${done}. The batch stays in your notebook.`
    case 'sweetened':
      if (happening.ofFruit === undefined) return `${done}${into}.`
      return `${capital(fruitGaveText(happening, happening.ofFruit, format))} is back in ${name}${when}.${became === null ? '' : ` It’s now ${drinkText(became, format)}.`}`
    case 'noted':
      return notedSentences(name, happening, when).join(' ')
    case 'fruit_sugared':
      return `${sweetsText(happening.sweetenings, format, 'typed' in happening ? happening.typed : [])} ${day === null ? 'is' : 'went'} on the strained fruit of ${name}${when}.`
    case 'taken_out':
      return `Lifted the ${listed(happening.plants.map(nameText))} out of ${name}${when}.`
    case 'measured':
      return `Measured ${name}${when}: ${format.round.strength(happening.abvPercent)} and ${format.round.sweetness(happening.sugarGPerL.value)} of sugar.`
    case 'started':
    case 'renamed':
    case 'parted':
    case 'poured_in':
      return `${name}: ${happeningText(happening, format, when)}.`
    default:
      return `${done}${into}.`
  }
}

const goesOn = (name: string): string => (isAre(name) === 'is' ? 'goes on' : 'go on')

/** `Noted for lemon: “cloudy”. Where it is: cellar.`, `Noted where lemon is: cellar.` */
function notedSentences(name: string, { note, where, vessel, settled }: Noted, when: string): readonly string[] {
  const verb = when === '' ? isAre(name) : wasWere(name)
  const its = when === '' ? 'is' : 'was'
  const isFirst = note === null
  const place = where !== null && isFreezer(where) ? 'in the freezer' : where
  return [
    ...(settled === undefined ? [] : [`Good: ${name} ${goesOn(name)} as before.`]),
    ...(note === null ? [] : [`Noted for ${name}${when}: ${noteText(note)}.`]),
    ...(place === null
      ? []
      : [isFirst ? `Noted where ${name} ${verb}${when}: ${place}.` : `Where it ${its}: ${place}.`]),
    ...(vessel === null
      ? []
      : [
          isFirst && place === null
            ? `Noted what ${name} ${verb} in${when}: ${vessel}.`
            : `What it ${its} in: ${vessel}.`,
        ]),
  ]
}

const amountRead = ({ amount, by }: ReadAmount, format: Format): string =>
  by === 'mass' ? format.round.mass(amount.value) : format.round.volume(amount.value)

/** `five 500 ml bottles and one 200 ml bottle`. */
const bottleWords = (bottles: readonly BottlesOf[], format: Format): string =>
  listed(
    bottles.map(
      ({ count, volumeMl }) => `${countWord(count)} ${vesselText(volumeMl, format)} ${plural(count, 'bottle')}`,
    ),
  )

/** `those 2 bottles of lemon weren’t`, `that bottle of lemon wasn’t`. */
const thoseBottles = (bottles: readonly BottlesOf[], name: string): string => {
  const count = bottles.reduce((sum, each) => sum + each.count, 0)
  return count === 1 ? `that bottle of ${name} wasn’t` : `those ${count} bottles of ${name} weren’t`
}

/** What no longer counts. */
export function undoneText(
  names: readonly string[],
  happening: Happening | HappeningEntry | null,
  when: string,
  format: Format,
): string {
  const name = listed(names)
  if (happening === null) return `Undone: the last correction of ${name}${when}.`
  switch (happening.kind) {
    case 'tasted':
      return `Undone: your tasting of ${name}${when}.`
    case 'added':
      return `Undone: what was added to ${name}${when} (${addedText(happening, format)}).`
    case 'put_off':
      return `Undone: reminders for ${name} come as before.`
    case 'renamed':
      return `Undone: ${name} has its old name back.`
    case 'measured':
      return `Undone: what you measured of ${name}${when}.`
    case 'bottles_out':
      return `Undone: ${thoseBottles(happening.bottles, name)} ${USED[happening.use]}${when} after all.`
    case 'fruit_sugared':
      return `Undone: the sugar on the strained fruit of ${name}${when}.`
    case 'noted':
      return happening.trouble === undefined || happening.trouble.verdict === 'ask'
        ? `Undone: your note on ${name}${when}.`
        : `Undone: your note on ${name}${when}, so I don’t hold it back any more. If it’s still so, don’t drink it, and tell me again.`
    case 'taken_out': {
      const plants = happening.plants.map(nameText)
      return `Undone: the ${listed(plants)} ${isAre(plants)} back in ${name}.`
    }
    case 'parted':
    case 'poured_in':
      return `Undone: ${name} ${isAre(names)} as before.`
    case 'sweetened':
      return happening.ofFruit === undefined
        ? `Undone: the last sweetening of ${name}${when}.`
        : `Undone: pouring back what the sugared fruit of ${name} gave${when}.`
    case 'shaken':
    case 'filtered':
    case 'bottled':
      return `Undone: the last ${AS_DEED[happening.kind]} of ${name}${when}.`
    default:
      return `Undone: ${name} ${when === '' ? isnt(name) : wasnt(name)} ${(when === '' ? RECORDED_AS[happening.kind] : undefined) ?? didWords[happening.kind]}${when} after all.`
  }
}
