import { isHolding } from '../../../core/jar/limits/judge-jar.ts'
import { exactly } from '../../../core/quantity/measured/measured.ts'
import { isSyrup } from '../../../core/recipe/solve/syrup.ts'
import { expectedSyrup } from '../../../core/shopping/needs-of-jar.ts'
import type { Given } from '../../calls/option.ts'
import type { InputOf } from '../../calls/signatures.ts'
import type { Context } from '../../chat/command.ts'
import type { Reply } from '../../chat/reply.ts'
import { dangerActions, dangerCautions, expectDrinkableJar } from '../jar/known/jar-dangers.ts'
import { kitchenOfJar } from '../jar/known/jar-kitchen.ts'
import { jarNamed } from '../jar/known/jar-named.ts'
import { withLowAcid } from '../reply/low-acid-cautions.ts'
import { measuredData } from '../reply/outcome-reply.ts'

type Input = InputOf<'syrup'>

/** What is worked out of an infusion that is there. */
const OF_INFUSION = ['infusion', 'strength', 'of', 'spirit', 'water', 'sugar', 'ratio', 'at-most'] as const

/** The syrup of a jar that still steeps, as it is expected by what went in; null where it is strained, or nobody can tell. */
export async function expectedReply(input: Input, jar: Given<string>, context: Context): Promise<Reply | null> {
  if (OF_INFUSION.some((option) => input[option] !== undefined)) return null
  const view = await jarNamed(jar.is, context)
  const { story } = view
  const wished = {
    ...(input['to-strength'] && { abvPercent: input['to-strength'].is.abvPercent }),
    ...(input['to-sweetness'] && { sugarGPerL: input['to-sweetness'].is.sugarGPerL }),
  }
  const expected = expectedSyrup(story, wished)
  if (expected === null) return null
  expectDrinkableJar(story, isHolding)
  const { sweetener, filler, sugarG, waterG, waterMl, syrupG, targets } = expected
  const { name } = story
  const values = { name, sweetener, filler, sugarG, waterMl, syrupG: isSyrup(expected) ? syrupG : null }
  const reply: Reply = {
    headline: { group: 'headlines', key: 'syrup_expected', values },
    under: [{ group: 'headlines', key: 'syrup_expected_of', values: targets }],
    table: [],
    sure: [],
    notes: [],
    cautions: dangerCautions([story]),
    actions: dangerActions(view, context),
    data: {
      jar: name,
      expected: { sweetener, filler: filler ?? 'water', ...measuredData({ sugarG, waterG, waterMl }), ...targets },
    },
    kitchen: kitchenOfJar(input, story),
  }
  return withLowAcid(reply, story, [{ abvPercent: exactly(targets.abvPercent) }])
}
