import { jarStateOf } from '../../../core/jar/state/jar-state.ts'
import { once } from '../../../core/once.ts'
import { saidText } from '../../../core/quantity/said/said-text.ts'
import { dayAt } from '../../../core/quantity/time/zone.ts'
import type { Person } from '../../../store/person.ts'
import type { Path } from '../../calls/signatures.ts'
import type { Surroundings } from '../../talk/bits/bit.ts'
import { halvesCounted } from '../../talk/bits/halves-counted.ts'
import { piecesBefore } from '../../talk/bits/pieces-behind.ts'
import { sizesBefore } from '../../talk/bits/size-bracketed.ts'
import type { TalkReading } from '../../talk/frames/reading.ts'
import { entryTitled } from '../../talk/handbook/entry-titled.ts'
import { findEntry, rankEntries } from '../../talk/handbook/find-entry.ts'
import { findLikelierSymptom, findLikelySymptom, findSymptomTold } from '../../talk/handbook/find-symptom-told.ts'
import { findEntryRespelt } from '../../talk/handbook/respell.ts'
import { byHousehold } from '../../talk/household/by-household.ts'
import { hunch } from '../../talk/hunch/hunch.ts'
import { LEXICONS } from '../../talk/lexicon/lexicons.ts'
import { writtenOut } from '../../talk/lexicon/texted.ts'
import { whoAt } from '../../talk/memory/remembered.ts'
import { withMeasures } from '../../talk/reader/measures-beside.ts'
import { readSentence } from '../../talk/reader/read-sentence.ts'
import { linesUnread } from '../../talk/reader/recipe-lines.ts'
import { namingLines, recipeText, withoutIntroduction } from '../../talk/reader/recipe-text.ts'
import { withSteep } from '../../talk/reader/steep-beside.ts'
import { unitsIn } from '../../text/messages/kitchen.ts'
import type { Dispatch } from '../run/call-outcome.ts'
import { placeOf, usualOf } from '../run/kitchen-said.ts'
import { jarsTold, untold } from './jars-told.ts'
import { nudgedJobs } from './nudged-jobs.ts'
import { swapsMended } from './swaps-mended.ts'

/** The same jars and the same day for all that is asked of a line. */
const jarsAndDay = once(({ nowMs, assumedZone, place }: Dispatch) =>
  once((person: Person) => {
    const zone = person.settings.zone ?? assumedZone
    const jars = jarsTold(person, zone, nowMs)
    // How strong a jar is stands in no line that others read.
    const shown = place.kind === 'channel' ? jars.map(untold) : jars
    return { jars: shown, today: dayAt(zone, nowMs) }
  }),
)

/** What a line is read by: jars, day, measures. */
export const surroundingsOf = (dispatch: Dispatch, person: Person): Surroundings => ({
  lexicons: LEXICONS,
  ...jarsAndDay(dispatch)(person),
  isUs: unitsIn(usualOf(person, dispatch)).volume === 'us',
})

/** A line without swapped letters, what was texted written out. */
export const mended = (line: string, { language }: Dispatch, { jars }: Person): string => {
  const names = jars.flatMap(({ entries }) => saidText(jarStateOf(entries)?.name ?? '').tokens.map(({ text }) => text))
  return swapsMended(writtenOut(line), { lexicons: LEXICONS, handbook: language.handbook, names: new Set(names) })
}

/** How a sentence is understood by what is known of whoever says it. */
export function readingFor(line: string, dispatch: Dispatch, person: Person, command?: Path): TalkReading {
  const text = sizesBefore(halvesCounted(piecesBefore(withoutIntroduction(mended(line, dispatch, person)))))
  if (command !== undefined) return readingOf(text, dispatch, person, command)
  const titled = entryTitled(text, dispatch.language.handbook)
  if (titled !== null) return { kind: 'topic', entry: titled, more: [] }
  const surroundings = surroundingsOf(dispatch, person)
  const said = dispatch.talk?.of(whoAt(dispatch.userId, placeOf(dispatch)), dispatch.nowMs)
  const read = (whole: string): TalkReading =>
    byHousehold(whole, { surroundings, said, read: (each) => readingOf(each, dispatch, person) })
  const recipe = text.includes('\n') ? recipeText(text, surroundings) : null
  if (recipe !== null) return namingLines(read(recipe.text), recipe.unread)
  const steeped = (whole: string): TalkReading => withSteep(whole, read) ?? read(whole)
  return withMeasures(text, surroundings, steeped) ?? steeped(text)
}

function readingOf(text: string, dispatch: Dispatch, person: Person, command?: Path): TalkReading {
  const { nowMs, userId, talk } = dispatch
  const surroundings = surroundingsOf(dispatch, person)
  const who = whoAt(userId, placeOf(dispatch))
  const reading = readSentence(text, {
    ...surroundings,
    findEntry: (text) => findEntry(text, dispatch.language.handbook),
    findRespelt: (text) => findEntryRespelt(text, dispatch.language.handbook),
    rankEntries: (text) => rankEntries(text, dispatch.language.handbook),
    findSymptom: findSymptomTold,
    findLikelySymptom,
    findLikelierSymptom,
    hunch: dispatch.hunch ?? hunch,
    ...(talk !== undefined && { said: talk.of(who, nowMs) }),
    nudge: () => {
      const nudged = nudgedJobs(person, dispatch)
      return nudged === null ? null : { ...nudged, isNewer: nudged.toldMs >= (talk?.saidMs(who, nowMs) ?? 0) }
    },
    ...(command !== undefined && { command }),
  })
  return namingLines(reading, text.includes('\n') ? linesUnread(text, surroundings) : [])
}
