import { botanicalById } from '../../../../core/botanical/catalogue/catalogue.ts'
import { DomainError } from '../../../../core/domain-error.ts'
import type { Started } from '../../../../core/jar/entry/entry.ts'
import { spiritsNamed } from '../../../../core/jar/entry/spirits-named.ts'
import { jarKeeping } from '../../../../core/jar/limits/jar-keeping.ts'
import { type LeftInPlants, secondDays, secondOf } from '../../../../core/jar/pour/second-steep.ts'
import { contentsOf } from '../../../../core/jar/state/contents.ts'
import { findJar } from '../../../../core/jar/state/find-jar.ts'
import { jarStateOf } from '../../../../core/jar/state/jar-state.ts'
import { STRONG_PERCENT } from '../../../../core/liquid/flash-point.ts'
import { weaknessOf } from '../../../../core/liquid/keeping.ts'
import { exactly } from '../../../../core/quantity/measured/measured.ts'
import type { CalendarDay } from '../../../../core/quantity/quantities.ts'
import { dayAt } from '../../../../core/quantity/time/zone.ts'
import { strengthAt20 } from '../../../../core/recipe/portion.ts'
import { valuesOf } from '../../../../core/recipe/propagate.ts'
import type { Person } from '../../../../store/person.ts'
import { call, typedCall } from '../../../calls/call.ts'
import { dayGiven } from '../../../calls/jar-options.ts'
import { asOptionProblem, type Given } from '../../../calls/option.ts'
import type { InputOf } from '../../../calls/signatures.ts'
import { lineOf } from '../../../calls/write-line.ts'
import { ChatError } from '../../../chat/chat-error.ts'
import type { Context } from '../../../chat/command.ts'
import { inMore } from '../../../chat/depth.ts'
import type { Reply } from '../../../chat/reply.ts'
import type { Kitchen } from '../../../text/messages/kitchen.ts'
import type { Message } from '../../../text/words.ts'
import { spiritPortions, sweeteningsOf } from '../../options/input-to-portion.ts'
import { bottlesOf } from '../../plan/plan-wish.ts'
import { graveCautions } from '../../reply/grave-cautions.ts'
import { caution, measuredData } from '../../reply/outcome-reply.ts'
import { plantCautions } from '../known/jar-cautions.ts'
import { expectNothingOpen } from '../known/told-trouble.ts'
import { todayOf } from '../known/view-of.ts'
import { change } from '../step/record-step.ts'
import { lateDay, nowRows, stepReply } from '../step/step-reply.ts'
import { begin } from './begin.ts'
import { keepingActions, startDays } from './start-said.ts'

type StartInput = InputOf<'jar start'>

/** What only fresh plants want. */
const OF_FRESH = ['of', 'from', 'ready-by', 'steep-at', 'water', 'unknown-ok', 'days', 'all-in', 'enzyme'] as const

/** Throws where an option tells of fresh plants. */
function expectOnlySpirit(given: StartInput, jar: string): void {
  const option = OF_FRESH.find((each) => given[each] !== undefined)
  if (option === undefined) return
  const { spirit } = given
  const example = lineOf(call('jar start', { 'second-of': jar, ...(spirit !== undefined && { spirit }) }))
  throw new ChatError('too_many_options', 'second_alone', { option, example }, { option })
}

/** The batch of the second steep, without a name of its own. */
function startedAgain(given: StartInput, first: Given<string>, person: Person, start: CalendarDay, kitchen?: Kitchen) {
  const { jar, again, left } = asOptionProblem('second-of', () => {
    const found = findJar(first.is, person.jars)
    return { jar: found, ...secondOf(found, person.jars) }
  })
  const story = jarStateOf(jar.entries)!
  expectNothingOpen(story)
  const { spirit, strength, sugar } = given
  const [abvPercent, sugarGPerL] = [given['to-strength']?.is.abvPercent, given['to-sweetness']?.is.sugarGPerL]
  const before = story.started.targets
  const sweetener = sugar?.is.sweetener ?? story.started.sweetener
  const started: Started = {
    kind: 'started',
    name: given.name?.is ?? story.name,
    secondOf: again,
    plants: [],
    spirits: spiritPortions(spirit!.is, strength),
    waterG: exactly(0),
    sweetenings: sweeteningsOf(sugar),
    ...(sweetener !== undefined && { sweetener }),
    targets:
      before === null && (abvPercent === undefined || sugarGPerL === undefined)
        ? null
        : { abvPercent: abvPercent ?? before!.abvPercent, sugarGPerL: sugarGPerL ?? before!.sugarGPerL },
    days: secondDays(again.plants, start),
    bottles: bottlesOf(given, { kitchen }).map(({ count, volumeMl }) => ({ count, volumeMl })),
    named: {
      isStrengthNamed: abvPercent !== undefined,
      isSweetnessNamed: sugarGPerL !== undefined,
      areBottlesNamed: given.bottles !== undefined,
      isSpiritNamed: true,
      steepAtPercent: null,
      readyBy: null,
      steepFor: null,
    },
    origin: null,
  }
  return { started, left }
}

const isStrong = ({ spirits }: Started): boolean =>
  valuesOf(spirits).some((spirit) => strengthAt20(spirit) >= STRONG_PERCENT)

const isOfHoney = ({ sweetenings, secondOf }: Started): boolean =>
  [...sweetenings, ...(secondOf?.sweetenings ?? [])].some(({ material }) => material === 'honey')

/** Begins a jar on plants that steeped before: what is left in them is estimated, and said to be. */
export async function startSecond(given: StartInput, context: Context): Promise<Reply> {
  const first = given['second-of']!
  expectOnlySpirit(given, first.is)
  if (given.spirit === undefined) {
    const example = lineOf(typedCall('jar start', { 'second-of': first.is, spirit: '500 ml 60%' }))
    throw new ChatError('missing_option', 'second_spirit', { example }, { option: 'spirit' })
  }
  const { nowMs, zone, settings } = context
  const today = dayAt(zone, nowMs)
  const day = dayGiven('when', given.when, { today, country: settings.country })
  let left = null as LeftInPlants | null
  const begun = await change(context, (person) => {
    const made = startedAgain(given, first, person, day ?? today, context.kitchen)
    left = made.left
    const ids = made.started.secondOf!.plants.flatMap(({ id }) => id ?? [])
    const beginning = {
      started: made.started,
      isNamed: given.name !== undefined,
      day,
      cautions: [
        ...graveCautions(ids.map(botanicalById), isStrong(made.started)),
        ...(isStrong(made.started) ? [caution('flame')] : []),
        ...(isOfHoney(made.started) ? [caution('honey_infant')] : []),
        ...plantCautions(ids),
      ],
    }
    const done = begin(person, given, beginning, context)
    const { story } = done.made
    if (jarKeeping(story) === 'ferments') {
      throw new DomainError('unreachable', 'steep_too_weak', {
        ...weaknessOf(contentsOf(story).outcome),
        instead: null,
      })
    }
    return done
  })
  const { story } = begun
  const said = left!
  const reply = stepReply(context, given, begun, {
    headline: {
      group: 'headlines',
      key: 'jar_started',
      values: {
        name: story.name,
        started: story.started,
        spirits: spiritsNamed(story.started),
        day: lateDay(begun.entry, context),
        isNamed: given.name !== undefined,
      },
    },
    under: [
      { group: 'headlines', key: 'second_left', values: said },
      { group: 'headlines', key: 'jar_start_days', values: startDays(story.started, todayOf(context)) },
    ],
    isNextSaid: true,
    rows: (view) => nowRows(view),
    notes: inMore<Message<'notes'>>([{ group: 'notes', key: 'second_estimated', values: said }]),
    actions: keepingActions(begun, false, context),
  })
  return { ...reply, data: { ...reply.data, second: measuredData({ ...said }) } }
}
