import { freeName } from '../../../../core/jar/entry/jar-name.ts'
import { nameAfter } from '../../../../core/jar/entry/name-after.ts'
import { startedFrom } from '../../../../core/jar/entry/start-from-plan.ts'
import { namesTaken } from '../../../../core/jar/state/running-jars.ts'
import { dayAt } from '../../../../core/quantity/time/zone.ts'
import { call } from '../../../calls/call.ts'
import { dayGiven } from '../../../calls/jar-options.ts'
import { type InputOf, signature } from '../../../calls/signatures.ts'
import { type Context, defineCommand } from '../../../chat/command.ts'
import { inMore } from '../../../chat/depth.ts'
import type { Action, Reply } from '../../../chat/reply.ts'
import type { Message } from '../../../text/words.ts'
import { missing } from '../../options/missing-option.ts'
import { farNotes } from '../../plan/far-notes.ts'
import { planAsked } from '../../plan/plan-asked.ts'
import { allInNotes, assumedNotes } from '../../plan/plan-notes.ts'
import { startRows } from '../../plan/plan-rows.ts'
import { unknownNotes } from '../../plan/plan-unknown.ts'
import { placeActions, whereNote } from '../../reply/reminders-actions.ts'
import { countMade } from '../../share/count-made.ts'
import { allInActions } from '../known/add-line.ts'
import { ingredientsSaid } from '../known/ingredients-said.ts'
import { todayOf } from '../known/view-of.ts'
import { change } from '../step/record-step.ts'
import { lateDay, stepReply } from '../step/step-reply.ts'
import { begin, kept } from './begin.ts'
import { hasOwnClock, keepingActions, startCautions, startDays, usualNotes, zoneNotes } from './start-said.ts'
import { startSecond } from './start-second.ts'

/** The same line with a name, which begins one more all the same. */
async function anotherActions(
  name: string,
  given: InputOf<'jar start'>,
  { store, userId }: Context,
): Promise<readonly Action[]> {
  const { jars } = await store.read(userId)
  const another = call('jar start', { ...given, name: freeName(name, namesTaken(jars)) })
  return [{ label: { group: 'actions', key: 'jar_begin_another', values: undefined }, call: another }]
}

async function startJar(given: InputOf<'jar start'>, context: Context): Promise<Reply> {
  if (given['second-of'] !== undefined) return startSecond(given, context)
  const { nowMs, zone, settings } = context
  const setting = { today: dayAt(zone, nowMs), country: settings.country }
  const day = dayGiven('when', given.when, setting)
  const asked = planAsked(given, {
    command: 'jar start',
    ...setting,
    start: day ?? setting.today,
    kitchen: context.kitchen,
  })
  const { input, wish, planned, notes } = asked
  const shared = given.from?.is ?? null
  const name = input.name?.is ?? nameAfter(planned)
  if (name === null) throw missing('jar start', 'name', 'name:lemon')
  const isNamed = input.name !== undefined
  const beginning = {
    started: { ...startedFrom(planned, wish, name), ...(input.enzyme !== undefined && { enzyme: input.enzyme.is }) },
    isNamed,
    day,
    cautions: startCautions(planned),
  }
  const begun = await change(context, (person) => begin(person, kept(input), beginning, context))
  if (shared !== null && begun.held === undefined) await countMade(shared, context)
  const isZoneTaken = begun.isFirst && settings.zone === null && !hasOwnClock(context)
  const isPlaceOpen = begun.isFirst && settings.place === null && context.place.kind !== 'console'
  const places = isPlaceOpen ? await placeActions(context) : []
  const { spirits } = ingredientsSaid(begun.story, settings)
  return stepReply(context, input, begun, {
    headline: {
      group: 'headlines',
      key: 'jar_started',
      values: {
        name: begun.story.name,
        started: begun.story.started,
        spirits,
        day: lateDay(begun.entry, context),
        isNamed,
      },
    },
    under: [{ group: 'headlines', key: 'jar_start_days', values: startDays(begun.story.started, todayOf(context)) }],
    isNextSaid: true,
    rows: () => startRows(planned),
    notes: [
      ...(isPlaceOpen ? [whereNote(places, context)] : []),
      // A button alone would not say what it is about.
      ...(isZoneTaken && context.place.kind !== 'console' ? zoneNotes(zone) : []),
      ...allInNotes(planned),
      ...(input.enzyme === undefined ? [] : [{ group: 'notes', key: 'enzyme_first', values: undefined } as const]),
      ...inMore<Message<'notes'>>([
        ...(isZoneTaken && context.place.kind === 'console' ? zoneNotes(zone) : []),
        ...(isNamed ? [] : [{ group: 'notes', key: 'jar_named', values: { name: begun.story.name } } as const]),
        ...notes,
        ...farNotes(planned),
        ...usualNotes(input, planned),
        ...unknownNotes(planned, null),
        ...assumedNotes(input, wish, planned),
      ]),
    ],
    actions: [...places, ...keepingActions(begun, isZoneTaken, context), ...allInActions(begun, context)],
    actionsHeld: begun.held === undefined ? [] : await anotherActions(name, given, context),
  })
}

export const jarStartCommand = defineCommand({
  ...signature('jar start'),
  topic: 'jars',
  run: (given, context) => startJar(given, context),
})
