import type { HappeningEntry, HappeningKind } from '../../../../core/jar/entry/entry.ts'
import { momentOf } from '../../../../core/jar/record/entry-time.ts'
import { correct } from '../../../../core/jar/record/record.ts'
import { findJar } from '../../../../core/jar/state/find-jar.ts'
import { type JarState, jarStateOf } from '../../../../core/jar/state/jar-state.ts'
import { isFarFromExpected } from '../../../../core/jar/state/judge-measurement.ts'
import { dayFromIso, daysBetween } from '../../../../core/quantity/time/calendar-day.ts'
import { dayAt } from '../../../../core/quantity/time/zone.ts'
import { millilitres } from '../../../../core/quantity/write/made-amounts.ts'
import type { Person } from '../../../../store/person.ts'
import { call } from '../../../calls/call.ts'
import { dayGiven } from '../../../calls/jar-options.ts'
import { asOptionProblem } from '../../../calls/option.ts'
import { type InputOf, signature, signatures } from '../../../calls/signatures.ts'
import { lineOf } from '../../../calls/write-line.ts'
import { ChatError } from '../../../chat/chat-error.ts'
import { type Context, defineCommand } from '../../../chat/command.ts'
import type { Reply } from '../../../chat/reply.ts'
import { foodCautions } from '../../plan/plan-unknown.ts'
import { cautioned, plantCautions, sweetenedCautions } from '../known/jar-cautions.ts'
import { troubleNoted } from '../known/kept-of-note.ts'
import { swallowedNotes } from '../known/note-swallowed-option.ts'
import { expectPoured } from '../step/already.ts'
import { change, enteredBy, expectJar, type Recorded, withJar } from '../step/record-step.ts'
import { becameSaid, nowRows, stepReply } from '../step/step-reply.ts'
import { strainedCautions, strainedReply } from '../step/strained-reply.ts'
import { expectWithinLimits } from '../step/within-jar-limits.ts'
import { correctedPlants } from './corrected-plants.ts'
import { entryMeant, fixed, isKindAlone, saidIn, startedOn } from './correction.ts'
import { expectAmounts } from './expect-amounts.ts'

const OPTIONS = Object.keys(signatures['jar correct'].shape)

type Correcting = InputOf<'jar correct'>

/** The options that say what is right. */
const wantedIn = ({ jar: _, entry: _e, already: _a, ...fixes }: Correcting) =>
  Object.entries(fixes).flatMap(([option, given]) => (given === undefined ? [] : [{ option, now: given.typed }]))

/** Entries that tell what is in a jar. */
const LIQUID: ReadonlySet<HappeningKind> = new Set(['started', 'added', 'strained', 'filtered'])

/** With what sweetened it, too. */
const TELLS: ReadonlySet<HappeningKind> = new Set([...LIQUID, 'sweetened'])

/** What plants that are named anew can do, and what the syrup wants that is worked out anew. */
function cautionsOf(story: JarState, { kind }: HappeningEntry, { of }: Correcting): Recorded['cautions'] {
  const names = of?.is.unknown.map(({ name }) => name) ?? []
  const isOpen = story.strained !== null && story.sweetened === null && story.ended === null
  return [
    ...foodCautions(names),
    ...plantCautions(of?.is.plants.map(({ botanical }) => botanical.id) ?? []),
    ...(isOpen && LIQUID.has(kind) ? strainedCautions(story) : []),
    ...(kind === 'sweetened' ? sweetenedCautions(story) : []),
  ]
}

/** The jar with the entry put right, and what was typed for it before. */
function correctedIn(person: Person, input: Correcting, context: Context) {
  const { nowMs, zone, settings } = context
  const jar = findJar(input.jar.is, person.jars)
  const story = jarStateOf(jar.entries)!
  const wanted = wantedIn(input)
  const options = wanted.map(({ option }) => option).filter((option) => option !== 'when')
  // Before anything sweetened it, its name alone is what was planned.
  const isPlanned = isKindAlone(input) && story.sweetened === null
  const at = input.entry?.is ?? (isPlanned ? story.started.seq : null)
  const meant = entryMeant(story, at, options)
  asOptionProblem('sugar', () => expectAmounts(meant, input, story.name))
  const day = dayGiven('when', input.when, { today: dayAt(zone, nowMs), country: settings.country })
  const others = meant.kind === 'started' ? [] : jar.entries
  const moved = day === null ? null : momentOf(day, { nowMs, zone, entries: others })
  const meta = { ...enteredBy(input, context), zone }
  const fixes = fixed(meant, input, story)
  // A note that is put right may tell of what went wrong.
  const right = fixes.kind === 'tasted' ? { ...fixes, ...troubleNoted(input.note?.is ?? null, story, context) } : fixes
  const plantNotes = input.of === undefined ? [] : correctedPlants(meant, right, story.strained !== null)
  const by =
    right.kind === 'started' && day !== null ? startedOn(right, daysBetween(day, dayFromIso(meant.day))) : right
  const { entries, entry, unusual } = correct(jar.entries, meant.seq, by, moved, meta)
  if (meant.kind === 'started' || meant.kind === 'added') {
    expectWithinLimits('jar correct', { before: story, story: jarStateOf(entries)!, seq: meant.seq }, input)
  }
  expectPoured('jar correct', story, jarStateOf(entries)!, input)
  const changes = wanted.map(({ option, now }) => {
    const was = option === 'when' ? meant.day : saidIn(meant, option)
    return { option, was, now: option === 'when' ? entry.day : now }
  })
  const said = cautioned({ ...jar, entries }, cautionsOf(jarStateOf(entries)!, entry, input))
  const recorded: Recorded = {
    ...said,
    story: jarStateOf(entries)!,
    entry,
    unusual: unusual.filter((each) => each.key !== 'reading_surprising' || isFarFromExpected(entry, each.expected)),
    isAlready: false,
  }
  return { person: withJar(person, said.jar), made: { recorded, changes, plantNotes } }
}

export const jarCorrectCommand = defineCommand({
  ...signature('jar correct'),
  topic: 'jars',
  async run(input, context) {
    if (wantedIn(input).length === 0) {
      await expectJar(context, input.jar)
      const example = lineOf(call('jar correct', { jar: input.jar.is, measured: millilitres(930) }))
      const options = OPTIONS.filter((option) => option !== 'jar' && option !== 'entry' && option !== 'already')
      throw new ChatError('missing_option', 'what_to_correct', { options, example }, { option: 'measured' })
    }
    const { recorded, changes, plantNotes } = await change(context, (person) => correctedIn(person, input, context))
    const { story, entry } = recorded
    const { kind } = entry
    const headline: Reply['headline'] = {
      group: 'headlines',
      key: 'jar_corrected',
      values: { name: story.name, kind, changes },
    }
    // What was worked out when it was strained holds no longer.
    const isOpen = story.strained !== null && story.sweetened === null && story.ended === null
    const reply =
      isOpen && LIQUID.has(kind)
        ? strainedReply(context, input, recorded, headline)
        : stepReply(context, input, recorded, {
            headline,
            under: TELLS.has(kind) ? becameSaid(story) : [],
            // What it is now stands there; what comes next is one question deeper.
            isNextSaid: TELLS.has(kind),
            rows: nowRows,
            notes: swallowedNotes(input.note, OPTIONS),
          })
    return { ...reply, notes: [...plantNotes, ...reply.notes] }
  },
})
