import { jarKeeping } from '../../../../core/jar/limits/jar-keeping.ts'
import { ratingsOf } from '../../../../core/jar/state/batch-facts.ts'
import { bestUntil } from '../../../../core/jar/state/best-until.ts'
import type { JarState } from '../../../../core/jar/state/jar-state.ts'
import { isFinished, type JarView } from '../../../../core/jar/tasks/jar-view.ts'
import { readyBy } from '../../../../core/jar/tasks/ready-by.ts'
import { steepingDays } from '../../../../core/jar/tasks/steeping-days.ts'
import { KEEPS_ABV_PERCENT, type StrengthAndSugar } from '../../../../core/liquid/keeping.ts'
import { type IsoDay, isoDay } from '../../../../core/quantity/time/calendar-day.ts'
import { dayAt } from '../../../../core/quantity/time/zone.ts'
import type { Jar } from '../../../../store/person.ts'
import { asOptionProblem } from '../../../calls/option.ts'
import { signature } from '../../../calls/signatures.ts'
import { quoted } from '../../../calls/write-line.ts'
import { type Context, defineCommand } from '../../../chat/command.ts'
import { inMore } from '../../../chat/depth.ts'
import type { Reply, Row } from '../../../chat/reply.ts'
import type { JarStanding } from '../../../text/messages/jar-views.ts'
import type { Message } from '../../../text/words.ts'
import { freezerOf, freezerSaid, row } from '../../reply/outcome-reply.ts'
import { fillNotes, fillsData } from '../known/fill-notes.ts'
import { ingredientsSaid } from '../known/ingredients-said.ts'
import { honeyTold, neatCautions } from '../known/jar-cautions.ts'
import { dangerActions, dangerCautions } from '../known/jar-dangers.ts'
import { jarData } from '../known/jar-data.ts'
import { kitchenOfJar } from '../known/jar-kitchen.ts'
import { jarMeant } from '../known/jar-named.ts'
import { notedCautions } from '../known/noted-cautions.ts'
import { heldFirst } from '../known/told-trouble.ts'
import { todayOf } from '../known/view-of.ts'
import { nextActions, nextNamed, nextSaid } from '../step/next-said.ts'
import { readyLater } from './ready-later.ts'
import { storyRows } from './story-rows.ts'

/** Said of what is near a line only: of the rest nobody asks. */
function keepingRows(story: JarState, of: StrengthAndSugar): readonly Row[] {
  const keeping = jarKeeping(story)
  if (keeping === null || of.abvPercent.value >= KEEPS_ABV_PERCENT) return []
  return [row('jar_keeping', { group: 'cells', key: 'jar_keeping', values: { keeping, ...of } })]
}

function bestRows(story: JarState): readonly Row[] {
  const until = bestUntil(story)
  return until === null ? [] : [row('jar_best', { group: 'cells', key: 'jar_best', values: { until } })]
}

function contentRows({ contents, story }: JarView, { settings }: Context): readonly Row[] {
  const { outcome, volume, strength, isEmpty } = contents
  const { volumeMl, abvPercent, sugarGPerL } = outcome
  const { targets } = story.started
  return [
    row('jar_holds', { group: 'cells', key: 'jar_holds', values: ingredientsSaid(story, settings) }),
    ...(isEmpty
      ? []
      : [
          row('jar_volume', { group: 'cells', key: 'jar_volume', values: { volumeMl, source: volume } }),
          row('jar_strength', { group: 'cells', key: 'jar_strength', values: { abvPercent, source: strength } }),
          row('jar_sweetness', { group: 'cells', key: 'jar_sweetness', values: { sugarGPerL } }),
          ...keepingRows(story, { abvPercent, sugarGPerL }),
        ]),
    ...bestRows(story),
    ...(targets === null ? [] : [row('jar_planned', { group: 'cells', key: 'jar_planned', values: targets })]),
  ]
}

/** Of a long story the start and the last lines are told first. */
const MOST_TOLD = 9

function toldRows(rows: readonly Row[]): readonly Row[] {
  if (rows.length <= MOST_TOLD) return rows
  const last = rows.length - MOST_TOLD + 1
  return [...rows.slice(0, 1), ...inMore(rows.slice(1, last)), ...rows.slice(last)]
}

/** The first line tells what to do and when, or first whether it will be ready by a day; how it stands comes after that. */
function answered(shown: JarStanding, view: JarView<Jar>, by: IsoDay | null, context: Context) {
  const { story, dangers } = view
  const today = todayOf(context)
  const standing = { group: 'headlines', key: 'jar_shown', values: shown } as const
  if (by !== null && dangers.length === 0 && !isFinished(view)) {
    const values = { name: story.name, by, told: readyBy(story, by, today), today }
    return {
      headline: { group: 'headlines', key: 'jar_ready_by', values } as const,
      under: [...nextSaid(view, context), standing],
    }
  }
  const next = nextNamed(view, readyLater(view, today), context)
  if (next === null) return { headline: standing, under: [] }
  return { headline: next, under: [{ group: 'headlines', key: 'jar_stands', values: shown } as const] }
}

/** What a freezer makes of it. */
function frozenData(outcome: JarView['contents']['outcome'], context: Context) {
  const { state, freezerC } = freezerSaid(outcome, freezerOf(context))
  const { value, plusMinus } = outcome.freezesAtC
  return { state, freezerC, freezesAtC: value, freezesAtCPlusMinus: plusMinus }
}

/** What a jar was, is and asks for: its story; one question deeper its numbers. */
function jarReply(view: JarView<Jar>, by: IsoDay | null, context: Context): Reply {
  const { jar, story, stage, agenda, contents } = view
  const { day, ofDays } = agenda
  const today = todayOf(context)
  const ratings = ratingsOf(story)
  const ratingRow =
    ratings.length === 0 ? [] : [row('jar_rating', { group: 'cells', key: 'jar_rating', values: { ratings } })]
  const { volumeMl, abvPercent, sugarGPerL } = contents.outcome
  const isSteeping = story.strained === null
  const became = isSteeping || contents.isEmpty ? null : { volumeMl, abvPercent, sugarGPerL }
  const steepsAt = isSteeping && !contents.isEmpty ? abvPercent : null
  const [holds, ...numbers] = contentRows(view, context)
  const mending = dangerActions(view, context)
  const steeping = steepingDays(story)
  const noted = notedCautions(story)
  const values = { name: story.name, stage, day, ofDays, became, steepsAt }
  const isNoted = noted.length > 0
  const { headline, under } = isNoted
    ? { headline: { group: 'headlines', key: 'jar_shown', values } as const, under: [] }
    : answered(values, view, by, context)
  const reply: Reply = {
    headline,
    under,
    table: [
      holds!,
      ...inMore([...numbers, ...ratingRow]),
      ...toldRows(storyRows(jar.entries, { today, nowMs: context.nowMs })),
    ],
    sure: [],
    notes: inMore<Message<'notes'>>([
      ...fillNotes(story),
      { group: 'notes', key: 'jar_corrects', values: { name: quoted(story.name) } },
    ]),
    cautions: [
      ...dangerCautions([story]),
      ...notedCautions(story),
      ...neatCautions(story),
      ...honeyTold(story, jar.cautioned),
    ],
    actions: mending.length > 0 || isNoted ? mending : nextActions(view, context),
    data: {
      ...jarData(view),
      fills: fillsData(story),
      steeping: steeping === null ? null : { today, ...steeping },
      freezer: contents.isEmpty ? null : frozenData(contents.outcome, context),
    },
    kitchen: kitchenOfJar({}, story),
  }
  return heldFirst(reply, [story])
}

export const jarShowCommand = defineCommand({
  ...signature('jar show'),
  topic: 'jars',
  async run({ jar, 'ready-by': by }, context) {
    const setting = { today: dayAt(context.zone, context.nowMs), country: context.settings.country }
    const day = by === undefined ? null : asOptionProblem('ready-by', () => isoDay(by.is.read(setting)))
    return jarReply(await jarMeant(jar?.is, context), day, context)
  },
})
