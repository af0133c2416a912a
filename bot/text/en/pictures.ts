import type { IngredientsTold } from '../../../core/jar/state/batch-facts.ts'
import type { Stage } from '../../../core/jar/state/jar-state.ts'
import { wholePercents } from '../../../core/quantity/measured/whole-percents.ts'
import { dayFromIso, type IsoDay } from '../../../core/quantity/time/calendar-day.ts'
import type { Targets } from '../../../core/recipe/targets.ts'
import { shortLineTyped } from '../../calls/write-line.ts'
import type { Format } from '../format.ts'
import type { Feature } from '../language.ts'
import type {
  BatchCardData,
  Milestone,
  MilestoneKind,
  PictureMessages,
  Shares,
  ShelfData,
  ShelfJar,
} from '../messages/pictures.ts'
import type { PictureText } from '../picture-text.ts'
import { dangerWords } from './jar-danger.ts'
import { tasksText } from './jar-tasks.ts'
import { dayOfText } from './jar-views.ts'
import { adviceAndKeepAway, allAllergenWords, allergenWords, strangerWords } from './label.ts'
import { daysWords, listed, MONTHS, shortDayWords } from './phrases.ts'
import { labelText, tagText } from './printed.ts'
import { altList, altText, inJarText, nameText } from './words.ts'

type MadeOnCard = NonNullable<BatchCardData['made']>

const PARTS: readonly (keyof Shares)[] = ['alcohol', 'water', 'sugar']

const stages: Readonly<Record<Stage, string>> = {
  steeping: 'steeping',
  strained: 'strained',
  sweetened: 'sweetened',
  resting: 'resting',
  ready: 'ready to drink',
  emptied: 'all drunk',
  discarded: 'thrown away',
}

/** `2 × star anise` is not broken after its sign. */
const inIt = (inJar: IngredientsTold, format: Format): string =>
  inJarText(inJar, format).replaceAll(' × ', '\u00a0×\u00a0')

const percent = (whole: number): string => `${whole}\u00a0%`

/** In whole per cents that sum to 100. */
const sharesText = (shares: Shares): readonly string[] =>
  wholePercents(PARTS.map((part) => shares[part])).map((whole, at) => `${percent(whole)} ${PARTS[at]}`)

/** As `30.0 % vol` is drawn above `± 0.4 % vol`. */
const besides = (spread: string): readonly [value: string, plusMinus: string] => {
  const [value = '', plusMinus = ''] = spread.split(' ± ')
  return [value, `± ${plusMinus}`]
}

const strength = ({ abvPercent }: MadeOnCard, format: Format): string =>
  abvPercent.value === 0 ? 'none' : besides(format.spread.strength(abvPercent))[0]

const sweetness = ({ sugarGPerL }: MadeOnCard, format: Format): string =>
  sugarGPerL.value === 0 ? 'no sugar' : besides(format.spread.sweetness(sugarGPerL))[0]

/** `± 0.4 % vol, estimated`. */
const strengthDoubt = ({ abvPercent, strength }: MadeOnCard, format: Format): string =>
  abvPercent.value === 0 ? '' : `${besides(format.spread.strength(abvPercent))[1]}, ${strength}`

const sweetnessDoubt = ({ sugarGPerL }: MadeOnCard, format: Format): string =>
  sugarGPerL.value === 0 ? '' : besides(format.spread.sweetness(sugarGPerL))[1]

const planned = ({ abvPercent, sugarGPerL }: Targets, format: Format): string =>
  `aiming for ${format.wished.strength(abvPercent, 1)}, ${format.wished.sweetness(sugarGPerL, 0)}`

const days = ({ steepedDays, day }: Pick<BatchCardData, 'steepedDays' | 'day'>): string =>
  steepedDays === null ? `day ${day}` : daysWords(steepedDays)

const MOST_LATER = 2

/** `coffee beans, whole: 4 days`, a line each; of many in one line, `3 plants: 2 to 4 days`. */
const laterDays = ({ laterPlants }: Pick<BatchCardData, 'laterPlants'>, most = MOST_LATER): readonly string[] => {
  if (laterPlants.length <= most) return laterPlants.map((plant) => `${nameText(plant)}: ${daysWords(plant.days)}`)
  const days = laterPlants.map((plant) => plant.days)
  const [least, longest] = [Math.min(...days), Math.max(...days)]
  return [`${laterPlants.length} plants: ${least === longest ? '' : `${least} to `}${daysWords(longest)}`]
}

/** What it is of, where its own name cannot be drawn. */
const plants = ({ inJar, name }: Pick<BatchCardData, 'inJar' | 'name'>): string => {
  const said = listed([...new Set(inJar.plants.map(nameText))])
  return said === '' ? name : said.replace(/^./, (letter) => letter.toUpperCase())
}

const steeped = (batch: BatchCardData): string => {
  const later = laterDays(batch, Number.POSITIVE_INFINITY)
  return `Steeped ${[days(batch), ...later].join(', ')}.`
}

const MILESTONE_PLANNED: Readonly<Record<MilestoneKind, string>> = {
  started: 'start',
  strained: 'strain by',
  sweetened: 'sweeten',
  ready: 'ready',
}

const milestoneDay = ({ day }: Milestone, today: IsoDay, format: Format): string =>
  day === null ? '–' : shortDayWords(day, today, format)

const milestoneSaid = (milestone: Milestone, today: IsoDay, format: Format): readonly string[] => {
  const { kind, day, isDone } = milestone
  if (day === null) return []
  const on = milestoneDay(milestone, today, format)
  return [isDone ? `${kind} ${on}` : `${MILESTONE_PLANNED[kind]} ${on} (planned)`]
}

const ofIts = ({ shares }: MadeOnCard): string => `By volume ${sharesText(shares).join(', ')}.`

function alt(batch: BatchCardData, format: Format): string {
  const { name, stage, inJar, made, rating, milestones, today } = batch
  const line = milestones.flatMap((milestone) => milestoneSaid(milestone, today, format))
  const doubtful = (shown: string, doubt: string): string => (doubt === '' ? shown : `${shown} ${doubt}`)
  return altText([
    `${name}, ${stages[stage]}.`,
    ...(made === null
      ? []
      : [
          `Strength ${doubtful(strength(made, format), strengthDoubt(made, format))}.`,
          `Sugar ${doubtful(sweetness(made, format), sweetnessDoubt(made, format))}.`,
          ofIts(made),
        ]),
    ...(batch.planned === null ? [] : [`It’s ${planned(batch.planned, format)}.`]),
    batch.steepedDays === null ? `Steeping: ${days(batch)}.` : steeped(batch),
    allergenWords(batch.allergens),
    adviceAndKeepAway(batch),
    strangerWords(batch.unknown),
    rating === null ? 'Not rated.' : `Rated ${rating} of 5.`,
    line.length === 0 ? '' : `${line.join(', ')}.`.replace(/^./, (letter) => letter.toUpperCase()),
    `In it: ${inJarText(inJar, format)}.`,
  ])
}

/** What stands on the picture of a batch. */
const cardText: PictureText['card'] = {
  stage: (stage: Stage) => stages[stage],
  inIt,
  part: { alcohol: 'alcohol', water: 'water', sugar: 'sugar' } as Readonly<Record<keyof Shares, string>>,
  share: percent,
  strengthLabel: () => 'Strength',
  strength,
  strengthDoubt,
  sweetnessLabel: () => 'Sweetness',
  sweetness,
  sweetnessDoubt,
  daysLabel: ({ steepedDays }: Pick<BatchCardData, 'steepedDays'>) => (steepedDays === null ? 'Steeping' : 'Steeped'),
  days,
  laterDays: (batch: Pick<BatchCardData, 'laterPlants'>) => laterDays(batch),
  plants,
  ratingLabel: () => 'Rating',
  unrated: () => 'not yet rated',
  planned,
  allergens: allAllergenWords,
  advice: adviceAndKeepAway,
  nothing: () => 'The jar is empty.',
  milestone: { started: 'started', strained: 'strained', sweetened: 'sweetened', ready: 'ready' } as Readonly<
    Record<MilestoneKind, string>
  >,
  milestoneDay,
  milestonePlanned: MILESTONE_PLANNED,
  between: daysWords,
  alt,
}
const counted = (count: number): string => (count === 1 ? 'one jar' : `${count} jars`)

const due = ({ tasks, danger }: Pick<ShelfJar, 'tasks' | 'danger'>, today: IsoDay, format: Format): string =>
  [danger === null ? '' : dangerWords[danger], tasksText(tasks, today, format)].filter((text) => text !== '').join(', ')

const withTask = (jar: ShelfJar, stands: string, today: IsoDay, format: Format): string => {
  const asked = due(jar, today, format)
  return asked === '' ? stands : `${stands}: ${asked}`
}

const empty = 'No jars yet.'

/** What stands on the picture of all jars. */
const shelfText: PictureText['shelf'] = {
  title: () => 'My larder shelf',
  count: (count: number) => (count === 0 ? 'empty' : counted(count)),
  today: (today: IsoDay, format: Format) => `today, ${shortDayWords(today, today, format)}`,
  month: (month: number) => (MONTHS[month - 1] ?? '').slice(0, 3),
  due,
  phase: { steeping: 'steeping', straining: 'time to strain', resting: 'after straining' },
  ready: () => 'ready',
  more: (count: number) => `and ${count} more`,
  empty: () => empty,
  howToBegin: () => `Start with ${shortLineTyped('plan', { of: '10 lemons', spirit: '1 l 95%' })}`,
  alt: ({ jars, today }: ShelfData, format: Format) => {
    const { year } = dayFromIso(today)
    const on = `${shortDayWords(today, today, format)} ${year}`
    if (jars.length === 0) return `An empty larder shelf on ${on}. ${empty}`
    const said = `${counted(jars.length)} on the larder shelf on ${on}:`
    return altList(
      said.replace(/^./, (letter) => letter.toUpperCase()),
      [
        jars.map((jar) => withTask(jar, `${jar.name}, ${jar.stage}, ${dayOfText(jar)}`, today, format)),
        jars.map((jar) => withTask(jar, jar.name, today, format)),
      ],
      (count) => `and ${count} more`,
    )
  },
}

/** What stands on pictures, and what is said of them to who cannot see them. */
export const pictureText: PictureText = {
  card: cardText,
  shelf: shelfText,
  tag: tagText,
  label: labelText,
  undrawn: () => '▯ stands for a character this font doesn’t have.',
}

/** What is on a picture, for whoever cannot see it. */
export const pictureSentences = {
  files: { batch_card: cardText.alt, shelf: shelfText.alt, jar_tag: tagText.alt, bottle_label: labelText.alt },
} satisfies Feature<PictureMessages>
