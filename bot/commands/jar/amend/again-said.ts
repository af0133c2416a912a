import type { JarState } from '../../../../core/jar/state/jar-state.ts'
import { type LastTime, lastTime } from '../../../../core/jar/state/last-time.ts'
import type { Targets } from '../../../../core/recipe/targets.ts'
import { kitchenSweetness } from '../../../../core/recipe/tool-precision.ts'
import { symptomIn } from '../../../../core/trouble/find-symptom.ts'
import type { SymptomId } from '../../../../core/trouble/symptoms.ts'
import { type CallValues, call } from '../../../calls/call.ts'
import type { InputOf } from '../../../calls/signatures.ts'
import type { Action } from '../../../chat/reply.ts'
import type { Message } from '../../../text/words.ts'
import { percentGiven, sweetnessGiven, wholeDaysGiven } from '../../plan/batch-options.ts'
import type { Wish } from '../../plan/plan-actions.ts'
import { byDepth } from '../../reply/first-screen.ts'
import { type Mended, steppedFrom } from './again-stepped.ts'

type Input = InputOf<'again'>

/** What the new batch takes of the last one, where that went otherwise than planned and nothing was said. */
export interface Choice {
  readonly last: LastTime
  /** As it went, not as it was planned: it was liked. */
  readonly isAsItWent: boolean
  /** Days from the start to straining; null: as planned. */
  readonly wentDays: number | null
  readonly targets: Targets | null
  /** A step from what it was, for how it tasted; null: none. */
  readonly mended: Mended | null
  /** So much of the sugar that went in with the plants; left out: all of it. */
  readonly sugarShare?: number
}

/** From so many points on it pleased. */
const LIKED_RATING = 4
/** Up to so many it did not. */
const LOW_RATING = 2

export function choiceOf(story: JarState): Choice {
  const last = lastTime(story)
  const isAsItWent = last.rating !== null && last.rating >= LIKED_RATING
  const isGone = last.wentDays !== null && last.wentDays > 0
  const { targets: planned } = story.started
  const made = last.made && aimed(last.made)
  return {
    last,
    isAsItWent,
    wentDays: isGone && (isAsItWent || !last.isDaysOff) ? last.wentDays : null,
    targets: last.made !== null && (planned === null || (isAsItWent && last.isMadeOff)) ? made : planned,
    mended: null,
  }
}

/** How it may be planned, the first that can be: a step from what it was where that was too sweet or too weak, and nobody says otherwise now. */
export function choicesOf(story: JarState, own: Input): readonly Choice[] {
  const choice = choiceOf(story)
  const { last } = choice
  const from = (last.made && aimed(last.made)) ?? story.started.targets
  const isSaid = hasTargets(own) || (own.sugar?.is.amounts.length ?? 0) > 0
  const symptom = isLikedLess(last) && !isSaid ? symptomOf(last) : null
  const step = symptom === null || from === null ? null : steppedFrom(symptom, from)
  if (step === null || from === null) return [choice]
  const { to, sugarShare } = step
  const stepped: Choice = { ...choice, targets: to, mended: { from, to, isMade: last.made !== null } }
  // What sugar in the jar makes of it is not known before.
  const lighter = sugarShare === null ? [] : [{ ...stepped, targets: null, sugarShare }]
  return [stepped, ...lighter, choice]
}

const hasTargets = (own: Input): boolean => own['to-strength'] !== undefined || own['to-sweetness'] !== undefined

/** A few words of how it went last time, each where it changes what she does now. */
export function lastTimeNotes(
  { last, isAsItWent, mended }: Choice,
  story: JarState,
  own: Input,
): readonly Message<'notes'>[] {
  const { wentDays, plannedDays, made, rating, note } = last
  const planned = story.started.targets
  const said = note === null ? null : briefly(note)
  return [
    ...(last.isDaysOff && own.days === undefined
      ? [
          {
            group: 'notes',
            key: 'again_strained',
            values: { wentDays: wentDays!, plannedDays: plannedDays!, isAsItWent: isAsItWent && wentDays! > 0 },
          } as const,
        ]
      : []),
    ...(mended === null ? [] : [{ group: 'notes', key: 'again_mended', values: { ...mended, note: said! } } as const]),
    ...(last.isMadeOff && !hasTargets(own) && mended === null
      ? [{ group: 'notes', key: 'again_came_out', values: { made: made!, planned: planned!, isAsItWent } } as const]
      : []),
    ...(isLikedLess(last) && mended === null
      ? [{ group: 'notes', key: 'again_liked_less', values: { rating, note: symptomOf(last) && said } } as const]
      : []),
    ...(isLikedLess(last) && note !== null && said !== note
      ? [{ group: 'notes', key: 'again_noted', values: { note } } as const]
      : []),
  ]
}

/** Of a longer note the first screen has its beginning. */
const MOST_NOTE_CHARACTERS = 24

function briefly(note: string): string {
  const all = [...note]
  if (all.length <= MOST_NOTE_CHARACTERS) return note
  const cut = all.slice(0, MOST_NOTE_CHARACTERS - 1).join('')
  return `${cut.replace(/[\s.,;:!?]+\S*$/, '')}…`
}

/** What decides what is done now, the first of them that is told. */
const RANK = ['again_nearest', 'again_mended', 'again_came_out', 'again_liked_less', 'again_strained', 'again_noted']

/** The one that changes most; the rest one question deeper. */
export function toldByDepth(told: readonly Message<'notes'>[]) {
  const [most] = told.toSorted((one, other) => RANK.indexOf(one.key) - RANK.indexOf(other.key))
  return byDepth(told, (each) => each === most)
}

const symptomOf = ({ note }: LastTime): SymptomId | null => (note === null ? null : symptomIn(note))

const isLikedLess = (last: LastTime): boolean => {
  const { rating } = last
  return rating === null
    ? symptomOf(last) !== null
    : rating <= LOW_RATING || (rating < LIKED_RATING && symptomOf(last) !== null)
}

/** What was made, as a kitchen can aim for it. */
const aimed = ({ abvPercent, sugarGPerL }: Targets): Targets => ({
  abvPercent: Math.round(abvPercent),
  sugarGPerL: kitchenSweetness(sugarGPerL),
})

export const targetsGiven = ({ abvPercent, sugarGPerL }: Targets) => ({
  'to-strength': percentGiven(abvPercent),
  'to-sweetness': sweetnessGiven(sugarGPerL),
})

interface Offering {
  readonly own: Input
  readonly jar: string
  /** How strong it becomes where so much is wished, or the nearest to it, % vol; null where nothing can be planned. */
  readonly reachedAbvPercent: (wish: Wish) => number | null
}

/** The same once more, with what was not taken: each a whole call. */
export function otherwiseActions(choice: Choice, story: JarState, offering: Offering): readonly Action[] {
  const { own, jar, reachedAbvPercent } = offering
  const { last, isAsItWent, mended } = choice
  const again = (more: CallValues<'again'>) => call('again', { ...own, jar, ...more })
  const isTold = hasTargets(own)
  const days = isAsItWent ? (last.plannedDays?.fromDays ?? 0) : (last.wentDays ?? 0)
  const isAimed = (last.isMadeOff || mended !== null) && !isTold
  const wish =
    isAsItWent || (mended !== null && last.isMadeOff)
      ? story.started.targets
      : (mended?.from ?? (last.made && aimed(last.made)))
  const abvPercent = isAimed && wish !== null ? reachedAbvPercent(targetsGiven(wish)) : null
  const other = wish === null || abvPercent === null ? null : { ...wish, abvPercent }
  return [
    ...(last.isDaysOff && own.days === undefined && days > 0
      ? [
          {
            label: { group: 'actions', key: 'again_days', values: { days } },
            call: again({ days: wholeDaysGiven(days) }),
          } as const,
        ]
      : []),
    ...(other !== null
      ? [
          {
            label: { group: 'actions', key: 'again_targets', values: other },
            call: again(targetsGiven(other)),
          } as const,
        ]
      : []),
    ...(isLikedLess(last) && !isTold && mended === null ? [troubleAction(choice, jar)] : []),
  ]
}

/** What was not taken to is looked into. */
function troubleAction({ last }: Choice, jar: string): Action {
  const symptom = symptomOf(last)
  const values = { ...(symptom !== null && { symptom: [symptom] }), jar }
  return { label: { group: 'actions', key: 'trouble_offer', values: { symptom } }, call: call('trouble', values) }
}
