import type { IngredientsTold } from '../../core/jar/state/batch-facts.ts'
import type { Stage } from '../../core/jar/state/jar-state.ts'
import type { ForGuests } from '../../core/label/for-guests.ts'
import type { IsoDay } from '../../core/quantity/time/calendar-day.ts'
import type { Targets } from '../../core/recipe/targets.ts'
import type { Format } from './format.ts'
import type {
  BatchCardData,
  BottleLabelData,
  JarTagData,
  Milestone,
  MilestoneKind,
  Phase,
  Shares,
  ShelfData,
  ShelfJar,
} from './messages/pictures.ts'

type MadeOnCard = NonNullable<BatchCardData['made']>

/** What stands on pictures, and what is said of them to who cannot see them. */
export interface PictureText {
  readonly card: {
    stage(stage: Stage): string
    inIt(inJar: IngredientsTold, format: Format): string
    readonly part: Readonly<Record<keyof Shares, string>>
    /** In whole per cents. */
    share(percent: number): string
    strengthLabel(): string
    strength(made: MadeOnCard, format: Format): string
    strengthDoubt(made: MadeOnCard, format: Format): string
    sweetnessLabel(): string
    sweetness(made: MadeOnCard, format: Format): string
    sweetnessDoubt(made: MadeOnCard, format: Format): string
    daysLabel(of: Pick<BatchCardData, 'steepedDays'>): string
    days(of: Pick<BatchCardData, 'steepedDays' | 'day'>): string
    laterDays(batch: Pick<BatchCardData, 'laterPlants'>): readonly string[]
    plants(of: Pick<BatchCardData, 'inJar' | 'name'>): string
    ratingLabel(): string
    unrated(): string
    planned(targets: Targets, format: Format): string
    allergens(of: Pick<ForGuests, 'allergens' | 'unknown'>): string
    advice(of: Pick<ForGuests, 'advice'>): string
    nothing(): string
    readonly milestone: Readonly<Record<MilestoneKind, string>>
    milestoneDay(milestone: Milestone, today: IsoDay, format: Format): string
    readonly milestonePlanned: Readonly<Record<MilestoneKind, string>>
    between(count: number): string
    alt(batch: BatchCardData, format: Format): string
  }
  readonly shelf: {
    title(): string
    count(count: number): string
    today(today: IsoDay, format: Format): string
    month(month: number): string
    due(of: Pick<ShelfJar, 'tasks' | 'danger'>, today: IsoDay, format: Format): string
    readonly phase: Readonly<Record<Phase, string>>
    ready(): string
    more(count: number): string
    empty(): string
    howToBegin(): string
    alt(shelf: ShelfData, format: Format): string
  }
  readonly tag: {
    started(of: Pick<JarTagData, 'started'>): string
    strain(of: Pick<JarTagData, 'strainFrom' | 'strainBy'>): string
    /** Empty where nobody knows. */
    best(of: Pick<JarTagData, 'bestUntil'>): string
    /** Empty where it has none. */
    honey(of: Pick<JarTagData, 'hasHoney'>): string
    strength(of: Pick<JarTagData, 'abvPercent'>, format: Format): string
    inIt(inJar: IngredientsTold, format: Format): string
    /** Empty where nothing is known to be in it. */
    allergens(of: Pick<ForGuests, 'allergens' | 'unknown'>): string
    flammable(): string
    warning(of: Pick<JarTagData, 'danger'>): string
    alt(tag: JarTagData, format: Format): string
  }
  readonly label: {
    kind(of: Pick<BottleLabelData, 'kind'>): string
    maker(of: Pick<BottleLabelData, 'maker'>): string
    strength(bottle: BottleLabelData, format: Format): string
    volume(bottle: BottleLabelData, format: Format): string
    bottled(bottle: BottleLabelData): string
    bestBefore(bottle: BottleLabelData): string
    inIt(bottle: BottleLabelData): string
    /** Empty where nothing is known to be in it. */
    allergens(of: Pick<ForGuests, 'allergens' | 'unknown'>): string
    advice(of: Pick<BottleLabelData, 'advice'>): string
    warning(of: Pick<BottleLabelData, 'danger'>): string
    neat(bottle: BottleLabelData): string
    keepAway(): string
    alt(bottle: BottleLabelData, format: Format): string
  }
  undrawn(): string
}
