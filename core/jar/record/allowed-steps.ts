import { DomainError } from '../../domain-error.ts'
import { isSweetened } from '../../recipe/sweetening.ts'
import type { HappeningEntry, HappeningKind } from '../entry/entry.ts'
import { endedAs, type JarState, jarStateOf, type Of, type Stage, sugarOnFruit } from '../state/jar-state.ts'
import { isUnsweetened } from '../state/left-unsweetened.ts'

/** What is allowed, and worth a word. */
export type UnusualKey =
  | 'shaken_after_straining'
  | 'added_spirit_after_straining'
  | 'enzyme_after_spirit'
  | 'strained_early'
  | 'sweetened_again'
  | 'bottled_unsweetened'
  | 'changed_after_bottling'
  | 'opened_unbottled'
  | 'opened_early'
  | 'tasted_after_end'

/** What has happened up to a step. */
export interface Walk {
  readonly happened: readonly HappeningEntry[]
  readonly name: string
  readonly started: Of<'started'> | null
  readonly strained: Of<'strained'> | null
  readonly sweetened: Of<'sweetened'> | null
  readonly bottled: Of<'bottled'> | null
  readonly ended: JarState['ended']
  readonly hasSugar: boolean
}

export const BEFORE_ALL: Walk = {
  happened: [],
  name: '',
  started: null,
  strained: null,
  sweetened: null,
  bottled: null,
  ended: null,
  hasSugar: false,
}

/** The walk one step on. */
export function walkOn(walk: Walk, entry: HappeningEntry): Walk {
  const next = { ...walk, happened: [...walk.happened, entry] }
  switch (entry.kind) {
    case 'started':
      return { ...next, name: entry.name, started: entry, hasSugar: isSweetened(entry.sweetenings) }
    case 'added':
      return { ...next, hasSugar: walk.hasSugar || isSweetened(entry.sweetenings) }
    case 'strained':
      return { ...next, strained: entry }
    case 'sweetened':
      return {
        ...next,
        sweetened: entry,
        hasSugar: walk.hasSugar || isSweetened(entry.sweetenings) || entry.ofFruit !== undefined,
      }
    case 'bottled':
      return { ...next, bottled: entry }
    case 'renamed':
      return { ...next, name: entry.name }
    case 'poured_in':
      return {
        ...next,
        name: entry.into ?? walk.name,
        hasSugar: walk.hasSugar || entry.liquid.sugarGPerL.value > 0,
      }
    case 'parted':
      return entry.kept.value === 0 ? { ...next, ended: entry } : next
    case 'emptied':
    case 'discarded':
      return { ...next, ended: entry }
    default:
      return next
  }
}

const stageIn = ({ strained, sweetened, bottled, ended }: Walk): Stage => {
  if (ended !== null) return endedAs(ended)
  if (strained === null) return 'steeping'
  if (bottled !== null) return 'resting'
  return sweetened === null ? 'strained' : 'sweetened'
}

const NEEDS_STRAINING: readonly HappeningKind[] = [
  'filtered',
  'sweetened',
  'fruit_sugared',
  'measured',
  'bottled',
  'opened',
  'emptied',
  'poured_in',
]
/** What can be said of a jar whatever has become of it. */
const ALWAYS: readonly HappeningKind[] = ['tasted', 'renamed', 'noted']
/** What is in bottles is poured apart and together no more. */
const BEFORE_BOTTLES: readonly HappeningKind[] = ['parted', 'poured_in']

/** Sugar goes on plants that were strained, and what it drew comes of sugar that lies on them. */
function fruitRefusal({ happened, name }: Walk, entry: HappeningEntry): DomainError | null {
  if (entry.kind === 'fruit_sugared') {
    const hasPlants = happened.some(
      (each) => (each.kind === 'started' || each.kind === 'added') && each.plants.length > 0,
    )
    return hasPlants ? null : new DomainError('wrong_stage', 'no_fruit', { jar: name })
  }
  const isDrawn = entry.kind === 'sweetened' && entry.ofFruit !== undefined
  if (!isDrawn || sugarOnFruit(happened) !== null) return null
  return new DomainError('wrong_stage', 'fruit_not_sugared', { jar: name })
}

/** Why a step cannot be the next one, or null where it can. */
export function refusalOf(walk: Walk, entry: HappeningEntry): DomainError | null {
  const { started, strained, bottled, ended } = walk
  if (started === null) {
    if (entry.kind === 'started') return null
    return new DomainError('wrong_stage', 'before_start', { jar: walk.name, day: entry.day })
  }
  const refused = (first: HappeningKind | null, inTheWay: HappeningEntry | null): DomainError =>
    new DomainError('wrong_stage', 'cannot_follow', {
      jar: walk.name,
      did: entry.kind,
      stage: stageIn(walk),
      first,
      day: inTheWay?.day ?? null,
      ...(inTheWay?.kind === 'parted' && { into: inTheWay.other }),
    })
  if (entry.kind === 'started') return refused(null, started)
  if (ALWAYS.includes(entry.kind)) return null
  if (ended !== null) return refused(null, ended)
  if (bottled !== null && BEFORE_BOTTLES.includes(entry.kind)) return refused(null, bottled)
  if (bottled === null && entry.kind === 'bottles_out') return refused('bottled', null)
  if (strained === null) return NEEDS_STRAINING.includes(entry.kind) ? refused('strained', null) : null
  const fruit = fruitRefusal(walk, entry)
  if (fruit !== null) return fruit
  const isTooLate =
    entry.kind === 'strained' || entry.kind === 'taken_out' || (entry.kind === 'added' && entry.plants.length > 0)
  return isTooLate ? refused(null, strained) : null
}

/** What is worth a word in a step that can be the next one. */
export function unusualIn(walk: Walk, entry: HappeningEntry): readonly UnusualKey[] {
  const { started, strained, sweetened, bottled, ended } = walk
  const keys: UnusualKey[] = []
  const say = (key: UnusualKey, isSo: boolean): void => {
    if (isSo) keys.push(key)
  }
  switch (entry.kind) {
    case 'shaken':
      say('shaken_after_straining', strained !== null)
      break
    case 'tasted':
      say('tasted_after_end', ended !== null)
      break
    case 'added':
      say('added_spirit_after_straining', strained !== null && entry.spirits.length > 0)
      say('enzyme_after_spirit', entry.enzyme !== undefined)
      say('changed_after_bottling', bottled !== null)
      break
    case 'strained': {
      const from = started?.days.strainFrom ?? null
      say('strained_early', from !== null && entry.day < from)
      break
    }
    case 'filtered':
      say('changed_after_bottling', bottled !== null)
      break
    case 'sweetened':
      say('changed_after_bottling', bottled !== null)
      say('sweetened_again', sweetened !== null && sweetened.ofFruit === undefined && entry.ofFruit === undefined)
      break
    case 'bottled':
      say('bottled_unsweetened', !walk.hasSugar && started?.targets?.sugarGPerL !== 0 && !isUnsweetened(walk.happened))
      break
    case 'opened': {
      const readyOn = jarStateOf(walk.happened)?.readyOn ?? null
      say('opened_unbottled', bottled === null)
      say('opened_early', readyOn !== null && entry.day < readyOn)
      break
    }
  }
  return keys
}
