import { DomainError } from '../../../../core/domain-error.ts'
import type {
  Happening,
  HappeningEntry,
  HappeningKind,
  Ingredients,
  Started,
} from '../../../../core/jar/entry/entry.ts'
import { bottlesOfLeft } from '../../../../core/jar/state/jar-bottles.ts'
import type { JarState } from '../../../../core/jar/state/jar-state.ts'
import { isJuice, USUAL_MATERIAL } from '../../../../core/quantity/materials.ts'
import type { Mass, Volume, WaterRead } from '../../../../core/quantity/quantities.ts'
import { addDays, dayFromIso, isoDay } from '../../../../core/quantity/time/calendar-day.ts'
import { withDays } from '../../../../core/recipe/batch.ts'
import type { Bottles } from '../../../../core/recipe/plan/parse-bottles.ts'
import { isSweetened, type Sweetening } from '../../../../core/recipe/sweetening.ts'
import { asOptionProblem, type Given } from '../../../calls/option.ts'
import { amountOf, strengthRead, sweeteningsOf, waterG } from '../../options/input-to-portion.ts'
import { strengthText } from '../../plan/written-amounts.ts'
import { addedAnew, type PutInFixes, secondAnew, startedAnew } from './correct-put-in.ts'

/** What may be put right about an entry, beside its day. */
export interface Fixes extends PutInFixes {
  readonly measured?: Given<Volume | Mass> | undefined
  readonly rinse?: Given<Volume | Mass> | undefined
  readonly water?: Given<WaterRead> | undefined
  readonly rating?: Given<number> | undefined
  readonly note?: Given<string> | undefined
  readonly bottles?: Given<readonly Bottles[]> | undefined
}

/** The options that entries of each kind have. */
const OPTIONS: { readonly [Kind in HappeningKind]?: readonly (keyof Fixes)[] } = {
  started: ['of', 'spirit', 'strength', 'sugar'],
  tasted: ['rating', 'note'],
  added: ['of', 'spirit', 'strength', 'water', 'sugar'],
  strained: ['measured', 'strength', 'rinse'],
  filtered: ['measured'],
  sweetened: ['water', 'sugar'],
  fruit_sugared: ['sugar'],
  bottled: ['bottles'],
}

/** Whether some of it went in then. */
function wentIn({ plants, spirits, waterG, sweetenings }: Ingredients, option: string): boolean {
  if (option === 'of') return plants.length > 0
  const juices = sweetenings.filter(({ material }) => isJuice(material))
  if (option === 'water') return waterG.value > 0 || isSweetened(juices)
  return option === 'sugar' ? isSweetened(sweetenings.filter((each) => !juices.includes(each))) : spirits.length > 0
}

/** Of what went into the jar only an entry that says it, and the start after all others. */
const isFoundBy = (entry: HappeningEntry, wanted: readonly string[]): boolean =>
  wanted.every((option) => OPTIONS[entry.kind]?.includes(option as keyof Fixes)) &&
  ((entry.kind !== 'added' && entry.kind !== 'started') || wanted.every((option) => wentIn(entry, option)))

/** What may stay unsaid in an entry, so that an entry that says it is meant before one that does not. */
const isSaidIn = (entry: HappeningEntry, wanted: readonly string[]): boolean =>
  wanted.every((option) => !(option in entry) || entry[option as keyof typeof entry] !== null)

/** Of a strained jar a strength by itself is what was read of it, not that of the spirit. */
const isOfSpirit = ({ kind }: HappeningEntry, wanted: readonly string[], { strained }: JarState): boolean =>
  strained !== null && kind !== 'strained' && wanted.includes('strength') && !wanted.includes('spirit')

/** Tells nothing of its own; it goes with the plants. */
const ANSWER = 'unknown-ok'

/** The entry named, or the latest one that has all of these options; throws where none has. */
export function entryMeant(story: JarState, seq: number | null, options: readonly string[]): HappeningEntry {
  const wanted = options.filter((option) => option !== ANSWER)
  const { happened, name } = story
  if (seq === null) {
    const found = happened.filter((entry) => isFoundBy(entry, wanted) && !isOfSpirit(entry, wanted, story))
    const meant =
      wanted.length === 0 ? happened.at(-1) : (found.findLast((entry) => isSaidIn(entry, wanted)) ?? found.at(-1))
    if (meant !== undefined) return meant
    throw new DomainError('not_found', 'nothing_to_correct', { jar: name, seq, options: wanted })
  }
  const named = happened.find((entry) => entry.seq === seq)
  if (named === undefined) throw new DomainError('not_found', 'no_such_entry', { jar: name, seq })
  const lacking = wanted.filter((option) => !OPTIONS[named.kind]?.includes(option as keyof Fixes))
  if (lacking.length === 0) return named
  throw new DomainError('bad_value', 'nothing_to_correct', { jar: name, seq, options: lacking })
}

const without = (story: JarState, entry: HappeningEntry): JarState => ({
  ...story,
  happened: story.happened.filter(({ seq }) => seq !== entry.seq),
})

/** What happened, without when. */
const happeningIn = ({
  seq: _,
  enteredMs: _e,
  typed: _t,
  attempt: _i,
  atMs: _a,
  day: _d,
  zone: _z,
  ...happening
}: HappeningEntry) => happening as Happening

const isPutIn = ({ of, spirit, strength }: Fixes): boolean => [of, spirit, strength].some((fix) => fix !== undefined)

/** What sweetens as it is right, and what stands for the water; of what was not said, as it was. */
const putRight = (
  before: readonly Sweetening[],
  sugar: Fixes['sugar'],
  water: Fixes['water'],
): readonly Sweetening[] => [
  ...(sugar === undefined ? before.filter(({ material }) => !isJuice(material)) : sweeteningsOf(sugar)),
  ...(water === undefined ? before.filter(({ material }) => isJuice(material)) : sweeteningsOf(undefined, water)),
]

/** What went in with the plants, and what it is to be sweetened with. */
function sweetenedWith({ sweetener: before, ...started }: Started, sugar: NonNullable<Fixes['sugar']>): Started {
  const { amounts, sweetener } = sugar.is
  const named = sweetener ?? before
  return {
    ...started,
    ...(amounts.length > 0 && { sweetenings: putRight(started.sweetenings, sugar, undefined) }),
    ...(named !== undefined && named !== USUAL_MATERIAL && { sweetener: named }),
  }
}

/** Whether only the name of what sweetens was said: what is planned is put right, not what went in. */
export const isKindAlone = ({ sugar }: Fixes): boolean => sugar !== undefined && sugar.is.amounts.length === 0

/** The happening as it is with the fixes. */
export function fixed(entry: HappeningEntry, fixes: Fixes, story: JarState): Happening {
  const { measured, strength, rinse, water, sugar, rating, note, bottles } = fixes
  const happening = happeningIn(entry)
  switch (happening.kind) {
    case 'tasted':
      return { ...happening, ...(rating && { rating: rating.is }), ...(note && { note: note.is }) }
    case 'strained':
      return {
        ...happening,
        ...(measured && { measured: amountOf(measured.is) }),
        ...(strength && { strength: strengthRead(strength.is) }),
        ...(rinse && { rinseWaterG: waterG(rinse) }),
      }
    case 'filtered':
      return { ...happening, ...(measured && { measured: amountOf(measured.is) }) }
    case 'bottled':
      return bottles === undefined
        ? happening
        : { ...happening, bottles: asOptionProblem('bottles', () => bottlesOfLeft(bottles.is, without(story, entry))) }
    case 'fruit_sugared':
      return { ...happening, ...(sugar && { sweetenings: sweeteningsOf(sugar) }) }
    case 'started': {
      const isSecond = happening.secondOf !== undefined
      if (isPutIn(fixes) && !isSecond) return startedAnew(story, fixes)
      const right = isSecond ? secondAnew(happening, fixes) : happening
      return sugar === undefined ? right : sweetenedWith(right, sugar)
    }
    case 'added':
    case 'sweetened': {
      const right = {
        ...happening,
        ...(water && { waterG: waterG(water) }),
        ...((water || sugar) && { sweetenings: putRight(happening.sweetenings, sugar, water) }),
      }
      return right.kind === 'added' ? addedAnew(right, entry.seq, story, fixes) : right
    }
    default:
      return happening
  }
}

/** A start moved to another day takes the days that were planned from it along, but for a day that was named. */
export function startedOn(started: Started, days: number): Started {
  const { named } = started
  return { ...started, ...withDays(started, (day) => isoDay(addDays(dayFromIso(day), days))), named }
}

/** What an entry says of an option, corrections included, also a strength beside its spirit; null where nothing. */
export function saidIn(entry: HappeningEntry, option: string): string | null {
  if (option === 'strength' && (entry.kind === 'started' || entry.kind === 'added') && entry.spirits.length > 0) {
    return [...new Set(entry.spirits.map(strengthText))].join(' + ')
  }
  return entry.typed.findLast(([name]) => name === option)?.[1] ?? null
}
