import { type Danger, type DangerKind, isPoison, judgeJar } from '../../../../core/jar/limits/judge-jar.ts'
import type { SpiritToAdd } from '../../../../core/jar/limits/spirit-to-add.ts'
import { type JarState, jarStateOf } from '../../../../core/jar/state/jar-state.ts'
import { householdAtLeast } from '../../../../core/quantity/write/household.ts'
import { volumeTyped } from '../../../../core/quantity/write/made-amounts.ts'
import type { DrinkPart } from '../../../../core/recipe/drinks-in.ts'
import { drinksIn } from '../../../../core/recipe/drinks-in.ts'
import { measuredOut } from '../../../../core/recipe/tool-precision.ts'
import type { Call } from '../../../calls/call.ts'
import { call } from '../../../calls/call.ts'
import { ChatError } from '../../../chat/chat-error.ts'
import type { Context } from '../../../chat/command.ts'
import type { Deep } from '../../../chat/depth.ts'
import type { Action } from '../../../chat/reply.ts'
import type { Kitchen } from '../../../text/messages/kitchen.ts'
import { type MixedKitchen, unitsIn } from '../../../text/messages/kitchen.ts'
import type { Message } from '../../../text/words.ts'
import { type JarAsker, kitchenAmong } from './jar-kitchen.ts'
import { afterNow, jarRef, type Referred } from './jar-ref.ts'
import { awayAction, toldActions, toldHeld, toldIn } from './told-trouble.ts'

type Held = Referred & { readonly story: JarState }

/** The worst first. */
const ORDER: readonly DangerKind[] = [
  'refused_plant',
  'refused_spirit',
  'unknown_plant',
  'to_throw_away',
  'not_yet',
  'over_ceiling',
  'ferments',
  'weak_low_acid',
  'in_question',
  'undecided',
]

function cautionOf(danger: Danger, name: string, own: { readonly kitchen?: Kitchen }): Message<'cautions'> {
  const { kind } = danger
  switch (kind) {
    case 'refused_plant':
    case 'refused_spirit':
      return { group: 'cautions', key: 'jar_refused', values: { name, typed: danger.typed } }
    case 'unknown_plant':
      return { group: 'cautions', key: 'jar_unknown_plant', values: { name, typed: danger.typed } }
    case 'over_ceiling':
      return {
        group: 'cautions',
        key: 'jar_over_ceiling',
        values: { name, over: danger.over, add: danger.add, ...own },
      }
    case 'ferments':
    case 'undecided': {
      const { abvPercent, sugarGPerL, add } = danger
      return { group: 'cautions', key: `jar_${kind}`, values: { name, abvPercent, sugarGPerL, add, ...own } }
    }
    case 'weak_low_acid': {
      const { plants, abvPercent, add } = danger
      return { group: 'cautions', key: 'jar_weak_low_acid', values: { name, plants, abvPercent, add, ...own } }
    }
    case 'to_throw_away':
    case 'not_yet':
    case 'in_question':
      return { group: 'cautions', key: `jar_${kind}`, values: { name, trouble: danger.trouble } }
  }
}

/** Throws `jar_not_for_drinking` where something is wrong with a jar by which it must not be gone on with. */
export function expectDrinkableJar(story: JarState, isWrong: (danger: Danger) => boolean): void {
  const found = judgeJar(story).find(isWrong)
  if (found === undefined) return
  const { kind } = found
  if ('trouble' in found) throw toldHeld(story, found.trouble)
  const values = { jar: story.name, kind, typed: 'typed' in found ? found.typed : null }
  const option = kind === 'refused_spirit' ? 'spirit' : kind === 'refused_plant' ? 'of' : undefined
  throw new ChatError('refused', 'jar_not_for_drinking', values, option === undefined ? {} : { option })
}

const worstFirst = <Of extends { readonly story: JarState }>(all: readonly Of[]) =>
  all
    .flatMap((of) => judgeJar(of.story).map((danger) => ({ ...of, danger })))
    .toSorted((one, other) => ORDER.indexOf(one.danger.kind) - ORDER.indexOf(other.danger.kind))

/** What is said of jars as they are judged today, the worst first; said anew by every reply. With `settings` each is told in its own units. */
export const dangerCautions = (
  stories: readonly JarState[],
  settings: Pick<Context['settings'], 'units'> | null = null,
): readonly Message<'cautions'>[] =>
  worstFirst(stories.map((story) => ({ story }))).map(({ danger, story }) =>
    cautionOf(danger, story.name, settings === null ? {} : { kitchen: kitchenAmong(story, settings) }),
  )

type Changed = Pick<Held, 'jar' | 'story'>

/** What is said and goes on. */
const isWeak = ({ kind }: Danger): boolean => kind === 'undecided' || kind === 'weak_low_acid'

/** What is so weak that nobody can say was said with the entry that made it so, and once more when it was bottled. */
function isWeakTold({ jar: { entries }, story }: Changed, of: Danger): boolean {
  const before = jarStateOf(entries.slice(0, -1))
  if (before === null || (before.bottled === null) !== (story.bottled === null)) return false
  return judgeJar(before).some(({ kind }) => kind === of.kind)
}

/** The same after an entry: what was said before, and holds nothing back, stands one question deeper. */
export const dangersAfter = (changed: readonly Changed[]): readonly (Message<'cautions'> & Deep)[] =>
  worstFirst(changed).map(({ danger, ...of }) => ({
    ...cautionOf(danger, of.story.name, {}),
    ...(isWeak(danger) && isWeakTold(of, danger) && { depth: 'more' as const }),
  }))

/** The same where somebody is reminded: of what was said before, and holds nothing back, in a few words. */
export const dangersReminded = (stories: readonly JarState[], settings: Pick<Context['settings'], 'units'>) =>
  dangerCautions(stories, settings).map(
    (each): Message<'cautions'> =>
      each.key === 'jar_undecided'
        ? { group: 'cautions', key: 'jar_still_weak', values: { name: each.values.name } }
        : each,
  )

/** As much of it as is shown, and never less than mends it. */
export const spiritIn = (
  { spiritMl, abvPercent, drink }: SpiritToAdd,
  { volume }: MixedKitchen,
): readonly DrinkPart[] => {
  const jug = measuredOut(spiritMl)
  return drinksIn(
    `${volumeTyped(jug, volume, householdAtLeast(jug, volume))}${drink === undefined ? '' : ` ${drink}`} ${abvPercent}%`,
    { blends: false },
  )
}

/** The call that puts a jar right with spirit; null where none does. */
export function spiritCall(
  { story }: Pick<Held, 'story'>,
  jar: string,
  settings: JarAsker['settings'],
  after: ReturnType<typeof afterNow> = {},
): Call | null {
  const add = judgeJar(story).flatMap((danger) => ('add' in danger && danger.add !== null ? [danger.add] : []))[0]
  return add === undefined
    ? null
    : call('jar add', { jar, spirit: spiritIn(add, unitsIn(kitchenAmong(story, settings))), ...after })
}

/** The same of a jar as it stands, for whoever asks. */
export const mendingSpirit = (held: Held, asker: JarAsker): Call | null =>
  spiritCall(held, jarRef(held, asker), asker.settings, afterNow(held.jar.entries, asker.place))

/** What to do about a jar: what answers for what it was told of, the spirit that puts it right, or away with it. */
export function dangerActions(held: Held, context: JarAsker): readonly Action[] {
  const trouble = toldIn(held.story)
  return trouble === null || held.story.ended !== null
    ? mendingActions(held, context)
    : toldActions({ ...held, trouble }, context)
}

/** The same of what is wrong with what is in it. */
export function mendingActions(held: Held, context: JarAsker): readonly Action[] {
  const [worst] = judgeJar(held.story).filter((danger) => !('trouble' in danger))
  if (worst === undefined || held.story.ended !== null) return []
  const mend = isPoison(worst) ? null : mendingSpirit(held, context)
  const key = worst.kind === 'over_ceiling' ? 'jar_dilute' : 'jar_add_spirit'
  return [
    ...(mend === null ? [] : [{ label: { group: 'actions', key, values: undefined }, call: mend } as const]),
    ...(isWeak(worst) ? [] : [awayAction(held, context)]),
  ]
}
