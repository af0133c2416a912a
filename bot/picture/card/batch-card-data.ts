import {
  finedWith,
  ingredientsTold,
  ratingsOf,
  steepedDays,
  sweeteningsIn,
} from '../../../core/jar/state/batch-facts.ts'
import type { JarState } from '../../../core/jar/state/jar-state.ts'
import { isSamePlant, plantsTakenAsAdded } from '../../../core/jar/state/later-plants.ts'
import type { JarView } from '../../../core/jar/tasks/jar-view.ts'
import { plannedStrain, readyOf } from '../../../core/jar/tasks/ready-day.ts'
import { forGuests } from '../../../core/label/for-guests.ts'
import { abvPercent, sugarRoomMl, volumeMl } from '../../../core/liquid/liquid.ts'
import type { IsoDay } from '../../../core/quantity/time/calendar-day.ts'
import { dayNumber } from '../../../core/quantity/time/day-number.ts'
import type { BatchCardData, LaterPlant, Milestone, Shares } from '../../text/messages/pictures.ts'

export function batchCardData(view: JarView, today: IsoDay): BatchCardData {
  const { story, stage, contents, agenda } = view
  const { outcome, isEmpty, strength } = contents
  const inJar = ingredientsTold(story)
  return {
    name: story.name,
    stage,
    inJar,
    made: isEmpty
      ? null
      : { abvPercent: outcome.abvPercent, sugarGPerL: outcome.sugarGPerL, strength, shares: sharesOf(outcome.liquid) },
    planned: story.sweetened === null ? story.started.targets : null,
    day: agenda.day,
    steepedDays: steepedDays(story),
    laterPlants: laterPlants(story),
    ...forGuests(
      inJar.plants,
      sweeteningsIn(story).map(({ material }) => material),
      finedWith(story),
    ),
    rating: ratingsOf(story).at(-1) ?? null,
    milestones: milestonesOf(story, today),
    today,
  }
}

/** None while it steeps: then the day of each is told with what is in it. */
function laterPlants(story: JarState): readonly LaterPlant[] {
  const { started, happened, strained } = story
  if (strained === null) return []
  const added = happened
    .slice(0, happened.indexOf(strained))
    .flatMap((entry) => (entry.kind === 'added' ? entry.plants.map((plant) => ({ plant, from: entry.day })) : []))
  const taken = plantsTakenAsAdded(story).map((plant) => ({ plant, from: plant.addOn }))
  const first = started.plants.filter(({ addOn }) => addOn === null)
  const later = [...added, ...taken]
    .filter(({ plant, from }) => from > started.day && !first.some((each) => isSamePlant(each, plant)))
    .toSorted((one, other) => dayNumber(one.from) - dayNumber(other.from))
  return later
    .filter(({ plant }, index) => later.findIndex((each) => isSamePlant(each.plant, plant)) === index)
    .map(({ plant: { id, name }, from }) => ({ id, name, days: dayNumber(strained.day) - dayNumber(from) }))
}

type Outcome = JarView['contents']['outcome']

/** The alcohol as % vol counts it, the sugar by what it takes up, the rest is water. */
function sharesOf(liquid: Outcome['liquid']): Shares {
  const [alcohol, sugar] = [abvPercent(liquid) / 100, sugarRoomMl(liquid) / volumeMl(liquid)]
  return { alcohol, water: Math.max(0, 1 - alcohol - sugar), sugar }
}

function milestonesOf(story: JarState, today: IsoDay): readonly Milestone[] {
  const { started, strained, sweetened } = story
  const ready = readyOf(story, today)
  return [
    { kind: 'started', day: started.day, isDone: true },
    { kind: 'strained', day: strained?.day ?? plannedStrain(story, today), isDone: strained !== null },
    { kind: 'sweetened', day: sweetened?.day ?? null, isDone: sweetened !== null },
    { kind: 'ready', day: ready, isDone: story.readyOn !== null && story.readyOn <= today },
  ]
}
