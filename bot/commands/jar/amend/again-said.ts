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
import { drier, stronger, sweeter, type Wish, weaker } from '../../plan/plan-actions.ts'

type Input = InputOf<'again'>

/** What the new batch takes of the last one, where that went otherwise than planned and nothing was said. */
export interface Choice {
  readonly last: LastTime
  /** As it went, not as it was planned: it was liked. */
  readonly isAsItWent: boolean
  /** Days from the start to straining; null: as planned. */
  readonly wentDays: number | null
  readonly targets: Targets | null
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
  }
}

const hasTargets = (own: Input): boolean => own['to-strength'] !== undefined || own['to-sweetness'] !== undefined

/** A few words of how it went last time, each where it changes what she does now. */
export function lastTimeNotes({ last, isAsItWent }: Choice, story: JarState, own: Input): readonly Message<'notes'>[] {
  const { wentDays, plannedDays, made, rating, note, pouredIn } = last
  const planned = story.started.targets
  return [
    ...(pouredIn.length === 0
      ? []
      : [{ group: 'notes', key: 'again_own_batch', values: { name: story.name, pouredIn } } as const]),
    ...(last.isDaysOff && own.days === undefined
      ? [
          {
            group: 'notes',
            key: 'again_strained',
            values: { wentDays: wentDays!, plannedDays: plannedDays!, isAsItWent: isAsItWent && wentDays! > 0 },
          } as const,
        ]
      : []),
    ...(last.isMadeOff && !hasTargets(own)
      ? [{ group: 'notes', key: 'again_came_out', values: { made: made!, planned: planned!, isAsItWent } } as const]
      : []),
    ...(isLikedLess(last)
      ? [{ group: 'notes', key: 'again_liked_less', values: { rating, note: symptomOf(last) && note } } as const]
      : []),
  ]
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

/** What makes up for a taste in the next batch; null where that is no matter of sugar or strength. */
function wishFor(symptom: SymptomId | null, { abvPercent, sugarGPerL }: Targets): Mend | null {
  const as = (key: Mend['key'], wish: Wish | null): Mend | null => (wish === null ? null : { key, wish })
  switch (symptom) {
    case 'too_sweet':
      return as('plan_drier', drier(sugarGPerL))
    case 'too_dry_or_sour':
      return as('again_sweeter', sweeter(sugarGPerL))
    case 'too_weak':
      return as('plan_stronger', stronger(abvPercent))
    case 'harsh_hot':
      return as('again_weaker', weaker(abvPercent))
    default:
      return null
  }
}

interface Mend {
  readonly key: 'plan_drier' | 'plan_stronger' | 'again_sweeter' | 'again_weaker'
  readonly wish: Wish
}

interface Offering {
  readonly own: Input
  readonly jar: string
  /** How strong it becomes where so much is wished, or the nearest to it, % vol; null where nothing can be planned. */
  readonly reachedAbvPercent: (wish: Wish) => number | null
}

/** The same once more, with what was not taken: each a whole call. */
export function otherwiseActions(choice: Choice, story: JarState, offering: Offering): readonly Action[] {
  const { own, jar, reachedAbvPercent } = offering
  const { last, isAsItWent } = choice
  const again = (more: CallValues<'again'>) => call('again', { ...own, jar, ...more })
  const isTold = hasTargets(own)
  const days = isAsItWent ? (last.plannedDays?.fromDays ?? 0) : (last.wentDays ?? 0)
  const isAimed = last.isMadeOff && !isTold
  const wish = isAsItWent ? story.started.targets : last.made && aimed(last.made)
  const abvPercent = isAimed && wish !== null ? reachedAbvPercent(targetsGiven(wish)) : null
  const other = wish === null || abvPercent === null ? null : { ...wish, abvPercent }
  const mend = isLikedLess(last) && !isTold ? mendAction(choice, offering) : null
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
    ...(mend === null ? [] : [mend]),
  ]
}

function mendAction({ last, targets }: Choice, { own, jar, reachedAbvPercent }: Offering): Action {
  const symptom = symptomOf(last)
  const mend = targets === null ? null : wishFor(symptom, targets)
  const nearest = mend === null ? null : reachedAbvPercent(mend.wish)
  const isReached = nearest !== null && nearest === (mend?.wish['to-strength']?.is.abvPercent ?? nearest)
  if (mend !== null && isReached) {
    const label = { group: 'actions', key: mend.key, values: undefined } as const
    return { label, call: call('again', { ...own, jar, ...mend.wish }) }
  }
  const values = { ...(symptom !== null && { symptom: [symptom] }), jar }
  return { label: { group: 'actions', key: 'trouble_offer', values: { symptom } }, call: call('trouble', values) }
}
