import { contentsOf } from '../../../core/jar/state/contents.ts'
import { ifWeighed } from '../../../core/jar/state/if-weighed.ts'
import type { JarView } from '../../../core/jar/tasks/jar-view.ts'
import type { GaugedOutcome, Gauging } from '../../../core/recipe/solve/gauged.ts'
import type { Given } from '../../calls/option.ts'
import type { InputOf } from '../../calls/signatures.ts'
import type { Context } from '../../chat/command.ts'
import { inMore } from '../../chat/depth.ts'
import type { Reply } from '../../chat/reply.ts'
import { jarData } from '../jar/known/jar-data.ts'
import { kitchenOfJar } from '../jar/known/jar-kitchen.ts'
import { heldFirst } from '../jar/known/told-trouble.ts'
import { type Recorded, recordStep } from '../jar/step/record-step.ts'
import { nowRows, recordedHeadline, stepReply } from '../jar/step/step-reply.ts'
import { strainedReply } from '../jar/step/strained-reply.ts'
import { note, outcomeData } from '../reply/outcome-reply.ts'
import { methodSaid } from './measure-reply.ts'

type Measuring = InputOf<'measure'> & { readonly jar: Given<string> }

/** A jar that takes a strength that was told as it is: by a laboratory, or worked out elsewhere. */
export async function toldJarReply(
  input: Measuring,
  { abvPercent, sugarGPerL }: Pick<GaugedOutcome, 'abvPercent' | 'sugarGPerL'>,
  context: Context,
): Promise<Reply> {
  // How it was found is nobody's reading; with its sugar known it is put right for nothing.
  const happening = () => ({ kind: 'measured', method: 'known_sugar', abvPercent, sugarGPerL }) as const
  const recorded = await recordStep(context, input, { happening })
  const { story } = recorded
  const headline = recordedHeadline(recorded, context)
  // What comes next in a jar that waits for its syrup is that, worked out anew.
  const isWaiting = story.strained !== null && story.sweetened === null
  const reply = isWaiting
    ? strainedReply(context, input, recorded, headline)
    : stepReply(context, input, recorded, { headline, rows: nowRows })
  const notes = reply.notes.filter(({ key }) => key !== 'jar_reading_surprising')
  const { outcome } = contentsOf(story)
  return {
    ...reply,
    notes: [...notes, ...surprisingNotes(story.name, recorded.unusual)],
    data: { ...reply.data, ...outcomeData(outcome), method: 'known_sugar' },
  }
}

/** A jar that takes what was measured of it. */
export async function measuredJarReply(
  input: Measuring,
  gauging: Gauging,
  { abvPercent, sugarGPerL }: GaugedOutcome,
  context: Context,
): Promise<Reply> {
  const recorded = await recordStep(context, input, {
    happening: () => ({ kind: 'measured', method: gauging.method, abvPercent, sugarGPerL }),
  })
  const { sure, notes, cautions } = methodSaid(gauging, { abvPercent, sugarGPerL })
  const reply = stepReply(context, input, recorded, {
    headline: recordedHeadline(recorded, context),
    rows: nowRows,
    notes: inMore(notes),
  })
  const { outcome } = contentsOf(recorded.story)
  return {
    ...reply,
    notes: [
      ...reply.notes.filter(({ key }) => key !== 'jar_reading_surprising'),
      ...surprisingNotes(recorded.story.name, recorded.unusual),
    ],
    sure: [...reply.sure, ...sure],
    cautions: [...reply.cautions, ...cautions],
    data: { ...reply.data, ...outcomeData(outcome), method: gauging.method },
  }
}

/** Another strength than the jar was taken to have; what takes a slip back is not what takes back one of straining. */
const surprisingNotes = (name: string, unusual: Recorded['unusual']): Reply['notes'] =>
  unusual.flatMap((each) =>
    each.key !== 'reading_surprising' || each.expected.abvPercent === null
      ? []
      : [
          {
            group: 'notes',
            key: 'measure_surprising',
            values: { name, abvPercent: each.expected.abvPercent },
          } as const,
        ],
  )

/** Weighing helps where it takes at least so much of the ±. */
const WORTH_SHARE = 0.9

/** What a jar is by its recipe, how far that may be off, and what a scale would make of it. */
export function recipeReply(view: JarView): Reply {
  const { story, contents } = view
  const { outcome } = contents
  const { abvPercent, sugarGPerL } = outcome
  const weighed = ifWeighed(story)
  const isWorth = (['abvPercent', 'sugarGPerL'] as const).some(
    (name) => weighed[name].plusMinus < WORTH_SHARE * outcome[name].plusMinus,
  )
  const reply: Reply = {
    headline: {
      group: 'headlines',
      key: 'measure_by_recipe',
      values: { name: story.name, abvPercent, sugarGPerL, isMeasured: contents.strength === 'measured' },
    },
    table: [],
    sure: [{ group: 'sure', key: 'measure_off_by', values: { abvPercent, sugarGPerL } }],
    notes: [
      ...(isWorth
        ? [
            {
              group: 'notes',
              key: 'measure_if_weighed',
              values: { abvPercent: weighed.abvPercent, sugarGPerL: weighed.sugarGPerL },
            } as const,
          ]
        : [note('measure_weighing_no_help')]),
      note('measure_scale'),
    ],
    cautions: [],
    actions: [],
    data: {
      ...jarData(view),
      ...outcomeData(outcome),
      method: 'recipe',
      weighedAbvPercentPlusMinus: weighed.abvPercent.plusMinus,
      weighedSugarGPerLPlusMinus: weighed.sugarGPerL.plusMinus,
    },
    kitchen: kitchenOfJar({}, story),
  }
  return heldFirst(reply, [story])
}
