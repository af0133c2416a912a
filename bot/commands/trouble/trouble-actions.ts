import { judgeJar } from '../../../core/jar/limits/judge-jar.ts'
import { ownPercent } from '../../../core/jar/limits/spirit-to-add.ts'
import { asPortion } from '../../../core/jar/state/contents.ts'
import { runningJars } from '../../../core/jar/state/running-jars.ts'
import { isFinished } from '../../../core/jar/tasks/jar-view.ts'
import { exactly } from '../../../core/quantity/measured/measured.ts'
import { gramsPerLitre, millilitres, percentVol } from '../../../core/quantity/write/made-amounts.ts'
import type { Diagnosis } from '../../../core/trouble/diagnose.ts'
import { type Mendable, type SolvedRemedy, solveRemedy } from '../../../core/trouble/remedy.ts'
import type { RemedyKind } from '../../../core/trouble/row.ts'
import { isSign, type Sign } from '../../../core/trouble/signs.ts'
import { type Call, type CallValues, call } from '../../calls/call.ts'
import { findListed } from '../../calls/named-plants.ts'
import { inMore } from '../../chat/depth.ts'
import type { Action } from '../../chat/reply.ts'
import type { Message } from '../../text/words.ts'
import { mendingActions, mendingSpirit } from '../jar/known/jar-dangers.ts'
import { jarRef } from '../jar/known/jar-ref.ts'
import type { Asking } from './asking.ts'
import { discardOf, nothingOf, undoOf } from './kept-actions.ts'
import type { TroubleInput } from './known-facts.ts'
import { isForGood } from './told-first.ts'

type PlainAction = Extract<Message<'actions'>, { values: undefined }>['key']

const label = (key: PlainAction): Message<'actions'> =>
  ({ group: 'actions', key, values: undefined }) as Message<'actions'>

/** The same question with more told. */
function again({ input, held, context }: Asking, more: CallValues<'trouble'>): Call {
  const { jar, about: _about, given: _given, ...rest } = input
  const named = held === null ? {} : { jar: jarRef(held, context) }
  return call('trouble', { ...rest, ...named, ...more })
}

const withSign = (given: TroubleInput['yes'], sign: Sign) => [...(given?.is ?? []), sign]

/** What answers the question that is open. */
function answers(asking: Asking, question: Diagnosis['question']): readonly Action[] {
  if (question === null) return []
  if (question === 'plants' || !isSign(question)) {
    const more = question === 'plants' ? { of: findListed('lemon') } : { strength: percentVol(30) }
    const key = question === 'plants' ? 'trouble_plants' : 'trouble_strength'
    return [{ label: label(key), call: again(asking, more), isChangedFirst: true }]
  }
  const { yes, no } = asking.input
  return [
    { label: label('trouble_yes'), call: again(asking, { yes: withSign(yes, question) }) },
    { label: label('trouble_no'), call: again(asking, { no: withSign(no, question) }) },
  ]
}

/** Its jar, where none was named: what runs, at most three. */
export async function jarChoices({ input, held, context }: Asking): Promise<readonly Action[]> {
  // Whoever tells what is in it has no jar of it here.
  if (held !== null || input.of !== undefined || input.strength !== undefined) return []
  const { jars } = await context.store.read(context.userId)
  return runningJars(jars)
    .slice(0, 3)
    .map((each) => ({
      label: { group: 'actions', key: 'trouble_of_jar', values: { name: each.story.name } },
      call: call('trouble', { ...input, jar: jarRef(each, context) }),
    }))
}

/** What there is to put right; null where nothing is. */
function mendable({ held, facts }: Asking): Mendable | null {
  if (held !== null) {
    const isOpen = held.story.strained !== null && !isFinished(held) && !held.contents.isEmpty
    return isOpen ? { liqueur: asPortion(held.contents), spiritPercent: ownPercent(held.story), facts } : null
  }
  const { abvPercent, sugarGPerL } = facts
  if (abvPercent === null || sugarGPerL === null) return null
  const liqueur = { amount: exactly(1000), by: 'volume', atC: 20, abvPercent, abvAtC: null, sugarGPerL } as const
  return { liqueur, spiritPercent: 0, facts }
}

const round = (value: number, step: number): number => Number((Math.round(value / step) * step).toFixed(3))

/** The call that works out, and shows, what a remedy takes: of its jar, or of a litre. */
function adjustCall(
  { kind, targets, spiritPercent }: SolvedRemedy,
  { liqueur }: Mendable,
  { held, context }: Asking,
): Call {
  const isOfStrength = kind === 'weaker' || kind === 'stronger'
  const wish = isOfStrength
    ? { 'to-strength': percentVol(round(targets.abvPercent, 0.1)) }
    : { 'to-sweetness': gramsPerLitre(round(targets.sugarGPerL, 1)) }
  if (held !== null) return call('adjust', { jar: jarRef(held, context), ...wish })
  return call('adjust', {
    liqueur: millilitres(round(liqueur.amount.value, 10)),
    strength: percentVol(round(liqueur.abvPercent.value, 0.1)),
    sweetness: gramsPerLitre(round(liqueur.sugarGPerL.value, 1)),
    ...wish,
    ...(spiritPercent !== null && { 'spirit-strength': percentVol(spiritPercent) }),
  })
}

/** What can be recorded of a jar against it. */
function recordable(kind: RemedyKind, { held, context }: Asking): Action | null {
  if (held === null || isFinished(held)) return null
  const jar = jarRef(held, context)
  const { strained } = held.story
  if (kind === 'strain' && strained === null)
    return { label: label('trouble_strain'), call: call('jar strain', { jar }) }
  if (kind === 'filter' && strained !== null)
    return { label: label('trouble_filter'), call: call('jar filter', { jar }) }
  if (kind === 'measure' && strained !== null)
    return { label: label('trouble_measure'), call: call('measure', { jar }) }
  if (kind === 'correct') return { label: label('trouble_correct'), call: call('jar show', { jar }) }
  return null
}

/** Against one cause, what the bot can work out or record, and what that takes. */
export function remediesFor(wanted: readonly RemedyKind[], asking: Asking) {
  const { held, context, facts } = asking
  // What fizzes though it is strong enough is not made safe by more spirit.
  const kinds =
    facts.signs.fizz === true && facts.keeping === 'keeps' ? wanted.filter((kind) => kind !== 'stronger') : wanted
  const there = mendable(asking)
  const solved: SolvedRemedy[] = []
  const actions = kinds.flatMap((kind): Action[] => {
    const found = there === null ? null : solveRemedy(kind, there)
    if (found !== null) {
      solved.push(found)
      return [
        {
          label: { group: 'actions', key: 'trouble_remedy', values: { kind } },
          call: adjustCall(found, there!, asking),
        },
      ]
    }
    if (kind === 'stronger' && held !== null && held.story.ended === null) {
      const spirit = mendingSpirit(held, context)
      return spirit === null ? [] : [{ label: label('jar_add_spirit'), call: spirit }]
    }
    const recorded = recordable(kind, asking)
    return recorded === null ? [] : [recorded]
  })
  return { actions, solved, isPerLitre: held === null }
}

/** What else was told, each by itself: it is not answered yet. */
const alsoOf = (asking: Asking): readonly Action[] =>
  asking.also.map((symptom) => ({
    label: { group: 'actions', key: 'trouble_also', values: { symptom } },
    call: again(asking, { symptom: [symptom], yes: undefined, no: undefined }),
  }))

/** What can be typed next: the answer first, then what mends it. */
export function troubleActions(diagnosis: Diagnosis, asking: Asking, remedies: readonly Action[]): readonly Action[] {
  const { verdict, question, causes } = diagnosis
  if (verdict.kind === 'throw_away') {
    return [...discardOf(asking), ...nothingOf(asking), ...undoOf(asking), ...inMore(alsoOf(asking))]
  }
  const see = causes[0]?.cause.leadsTo ?? null
  const more: readonly Action[] =
    see === null
      ? []
      : [
          {
            label: { group: 'actions', key: 'trouble_see', values: { symptom: see } },
            call: again(asking, { symptom: [see] }),
          },
        ]
  const putsRight = asking.held === null ? [] : mendingActions(asking.held, asking.context)
  const isPoison = asking.held !== null && judgeJar(asking.held.story).some(({ kind }) => kind.startsWith('refused'))
  const open = answers(asking, question)
  if (isForGood(diagnosis)) return [...discardOf(asking), ...open, ...inMore(nothingOf(asking)), ...undoOf(asking)]
  const mending = isPoison ? discardOf(asking) : putsRight.length > 0 ? putsRight : remedies
  const [best, ...others] = mending
  const shown = best === undefined ? [] : [best, ...inMore(others)]
  const noted =
    verdict.kind === 'hold'
      ? [...(verdict.because === 'danger' || verdict.because === 'fizz' ? discardOf(asking) : []), ...nothingOf(asking)]
      : verdict.kind === 'cannot_tell'
        ? nothingOf(asking).flatMap((nothing) => [nothing, ...discardOf(asking)])
        : []
  // What is not settled yet is written down once it is.
  const mends = open.length === 0 ? [...shown, ...noted] : inMore([...noted, ...mending])
  return [...open, ...mends, ...undoOf(asking), ...alsoOf(asking), ...inMore(more)]
}
