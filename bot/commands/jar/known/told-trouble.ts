import { undrinkableIn } from '../../../../core/botanical/refuse/refuse-spirit.ts'
import { isHolding, judgeJar } from '../../../../core/jar/limits/judge-jar.ts'
import type { JarState } from '../../../../core/jar/state/jar-state.ts'
import { type StandingTrouble, standingTroubles } from '../../../../core/jar/state/standing-troubles.ts'
import { isSymptom, symptomsIn } from '../../../../core/trouble/find-symptom.ts'
import { isSign, type Sign } from '../../../../core/trouble/signs.ts'
import { symptoms } from '../../../../core/trouble/symptoms.ts'
import { call } from '../../../calls/call.ts'
import { lineOf } from '../../../calls/write-line.ts'
import { ChatError } from '../../../chat/chat-error.ts'
import type { Context } from '../../../chat/command.ts'
import type { Action, Reply } from '../../../chat/reply.ts'
import type { Message } from '../../../text/words.ts'
import { jarRef, type Referred } from './jar-ref.ts'

/** A trouble that a jar was told of. */
type Told = Referred & { readonly story: JarState; readonly trouble: StandingTrouble }

/** The worst that a jar was told of and that stands; null where nothing does, or it has ended. */
export function toldIn(story: JarState): StandingTrouble | null {
  const found = judgeJar(story).find((danger) => 'trouble' in danger)
  return found === undefined || !('trouble' in found) ? null : found.trouble
}

/** What has to be so before it was nothing, where it may blind or kill. */
const TRUE_OF: Readonly<Partial<Record<string, string>>> = {
  not_for_drinking: 'bought for drinking, in a labelled bottle',
  plant_unsure: 'a plant that I know for sure',
}

/** What it turned out to be, as an example. */
function wasOf({ because, symptom }: StandingTrouble, story: JarState): string {
  if (because === 'growth') return 'only pith'
  const needed = TRUE_OF[because ?? '']
  if (needed !== undefined) return needed
  if (standingTroubles(story).length < 2 || !isSymptom(symptom)) return 'nothing'
  // A line that names what nobody may drink does not run.
  const ways = symptoms[symptom].en.map((name) => `${name} was nothing`)
  return ways.find((way) => symptomsIn(way).includes(symptom) && undrinkableIn(way) === null) ?? 'nothing'
}

/** What says that it was nothing. */
export const nothingAction = (held: Told, context: Pick<Context, 'place'>): Action => ({
  label: { group: 'actions', key: 'jar_was_nothing', values: { trouble: held.trouble } },
  call: call('jar note', { jar: jarRef(held, context), was: wasOf(held.trouble, held.story) }),
})

/** What answers the question that is open. */
function answerActions(held: Told, question: Sign, context: Pick<Context, 'place'>): readonly Action[] {
  const { symptom, yes, no } = held.trouble
  if (!isSymptom(symptom)) return []
  const asked = { symptom: [symptom], jar: jarRef(held, context) }
  const given = { ...(yes.length > 0 && { yes: yes.filter(isSign) }), ...(no.length > 0 && { no: no.filter(isSign) }) }
  return [
    {
      label: { group: 'actions', key: 'trouble_yes', values: undefined },
      call: call('trouble', { ...asked, ...given, yes: [...yes.filter(isSign), question] }),
    },
    {
      label: { group: 'actions', key: 'trouble_no', values: undefined },
      call: call('trouble', { ...asked, ...given, no: [...no.filter(isSign), question] }),
    },
  ]
}

/** Away with it. */
export const awayAction = (held: Referred, context: Pick<Context, 'place'>): Action => ({
  label: { group: 'actions', key: 'jar_throw_away', values: undefined },
  call: call('jar discard', { jar: jarRef(held, context) }),
})

/** What can be done about it: away with it, or it was nothing; or the answer that is lacking. */
export function toldActions(held: Told, context: Pick<Context, 'place'>): readonly Action[] {
  const { verdict, question } = held.trouble
  if (verdict === 'throw_away') return [awayAction(held, context), nothingAction(held, context)]
  if (verdict === 'hold') return [nothingAction(held, context), awayAction(held, context)]
  return question !== null && isSign(question) ? answerActions(held, question, context) : []
}

/** Why nothing is done that leads to drinking it, with the line that says that it was nothing. */
export const toldHeld = (story: JarState, trouble: StandingTrouble): ChatError<'jar_told_held'> =>
  new ChatError(
    'refused',
    'jar_told_held',
    {
      name: story.name,
      trouble,
      line: lineOf(call('jar note', { jar: story.name, was: wasOf(trouble, story) })),
    },
    { option: 'jar' },
  )

/** Throws `jar_told_held` where its maker was told to throw it away, or not to drink it, and has not taken that back. */
export function expectNothingTold(story: JarState): void {
  const trouble = toldIn(story)
  if (trouble !== null && trouble.verdict !== 'ask') throw toldHeld(story, trouble)
}

/** The same where a question is open too: what goes into a jar with a story of its own takes no question along. */
export function expectNothingOpen(story: JarState): void {
  const trouble = toldIn(story)
  if (trouble !== null) throw toldHeld(story, trouble)
}

const TOLD_KEYS: ReadonlySet<string> = new Set<Message<'cautions'>['key']>(['jar_to_throw_away', 'jar_not_yet'])

/** The same reply, where a jar was told to go or not to be drunk with that first, before what it answers. */
export function heldFirst(reply: Reply, stories: readonly JarState[]): Reply {
  const story = stories.find((each) => judgeJar(each).some((danger) => 'trouble' in danger && isHolding(danger)))
  const trouble = story === undefined ? null : toldIn(story)
  if (story === undefined || trouble === null) return reply
  const isSaid = ({ key, values }: Message<'cautions'>): boolean =>
    TOLD_KEYS.has(key) && (values as { readonly name?: string }).name === story.name
  const first = { group: 'headlines', key: 'jar_told_of', values: { name: story.name, trouble } } as const
  return {
    ...reply,
    headline: first,
    under: [reply.headline, ...(reply.under ?? [])],
    // It is said once; the day stands one question deeper.
    cautions: reply.cautions.map((each) => (isSaid(each) ? { ...each, depth: 'more' } : each)),
  }
}
