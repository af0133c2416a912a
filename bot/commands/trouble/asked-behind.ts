import type { Diagnosis } from '../../../core/trouble/diagnose.ts'
import type { Context } from '../../chat/command.ts'
import { inMore } from '../../chat/depth.ts'
import { whomToCall } from '../../chat/emergency-reply.ts'
import type { Reply } from '../../chat/reply.ts'
import type { Message } from '../../text/words.ts'
import { note } from '../reply/outcome-reply.ts'
import { ifDrunkCautions } from './if-drunk.ts'
import type { TroubleInput } from './known-facts.ts'

const SKIMMED = /skim|scoop/i
const OTHERS = /\bother\b/i
const BOTTLES = /\bbottles\b/i

/** Whether what is asked of it would keep it. */
export const isRefused = ({ about }: TroubleInput): boolean => about !== undefined && !BOTTLES.test(about.is)

const isOfGrowth = ({ verdict, question }: Diagnosis): boolean =>
  question === 'growth' || (verdict.kind === 'throw_away' && verdict.because === 'growth')

/** Whether it may harm: thrown away, held back, or a question stands before drinking it. */
const mayHarm = ({ verdict, stake }: Diagnosis): boolean =>
  verdict.kind === 'throw_away' || verdict.kind === 'hold' || (verdict.kind === 'ask' && stake !== null)

/** It pushes, hisses or fizzes. */
const isOfGas = ({ symptom, facts: { signs } }: Diagnosis): boolean =>
  symptom === 'pressure' || symptom === 'fermenting' || signs.fizz === true

/** Full bottles of what makes gas, which may burst, are told how to be handled. */
const isOfFullBottles = (diagnosis: Diagnosis, { about }: TroubleInput): boolean =>
  about !== undefined && BOTTLES.test(about.is) && isOfGas(diagnosis) && mayHarm(diagnosis)

/** How full bottles are handled takes the place of what is done with a jar. */
export const besideBottles = <Note extends { readonly key: string }>(
  notes: readonly Note[],
  diagnosis: Diagnosis,
  input: TroubleInput,
): readonly Note[] => (isOfFullBottles(diagnosis, input) ? notes.filter(({ key }) => key !== 'trouble_todo') : notes)

/** What is said to whoever would skim it, cook with it, or has more bottles of it. */
export function aboutNotes(diagnosis: Diagnosis, { about }: TroubleInput): readonly Message<'notes'>[] {
  if (about === undefined || !mayHarm(diagnosis)) return []
  if (isOfFullBottles(diagnosis, { about })) return [note('trouble_full_bottles')]
  if (OTHERS.test(about.is)) return [note(isOfGrowth(diagnosis) ? 'trouble_other_bottles' : 'trouble_same_bottles')]
  if (SKIMMED.test(about.is)) return [note('trouble_skimmed')]
  return diagnosis.verdict.kind === 'throw_away' ? [note('trouble_no_use')] : []
}

/**
 * What would keep it all the same is told no in one line, with why, where what is wrong was told before: the rest stands one question
 * deeper.
 */
export function noAtOnce(reply: Reply, diagnosis: Diagnosis, { about }: TroubleInput): Reply {
  const { verdict, question } = diagnosis
  const isOpen = verdict.kind === 'hold' || verdict.kind === 'ask'
  if (about === undefined || !isOpen || !mayHarm(diagnosis) || BOTTLES.test(about.is) || OTHERS.test(about.is))
    return reply
  const why = !SKIMMED.test(about.is) ? 'used' : isOfGas(diagnosis) ? 'gas' : 'skimmed'
  return {
    ...reply,
    headline: { group: 'headlines', key: 'trouble_no_yet', values: { why, question } },
    notes: inMore(reply.notes),
  }
}

/** Somebody else has some of it. */
export function givenCautions(
  diagnosis: Diagnosis,
  { given }: TroubleInput,
  context: Pick<Context, 'settings' | 'zone'>,
): readonly Message<'cautions'>[] {
  if (given === undefined || !mayHarm(diagnosis)) return []
  const { country, units } = context.settings
  const isCalled = ifDrunkCautions(diagnosis, context).length > 0
  const call = isCalled ? null : whomToCall({ country, zone: context.zone, units })
  return [{ group: 'cautions', key: 'trouble_given', values: { who: ANYBODY.test(given.is) ? null : given.is, call } }]
}

const ANYBODY = /^some(?:one|body)$/i
