import { abvPercent, volumeMl } from '../../../core/liquid/liquid.ts'
import type { Measured } from '../../../core/quantity/measured/measured.ts'
import { liquidOf, type Portion } from '../../../core/recipe/portion.ts'
import { propagate, valuesOf } from '../../../core/recipe/propagate.ts'
import type { Style } from '../../../core/recipe/solve/styles.ts'
import { quoted } from '../../calls/write-line.ts'
import type { Action, Reply } from '../../chat/reply.ts'
import type { Message } from '../../text/words.ts'
import { assumptionNotes, kitchenOf } from '../options/input-units.ts'
import { freezerSaid, outcomeCautions, row } from '../reply/outcome-reply.ts'
import { strengthNotes, syrupData, type Typed } from '../reply/syrup-reply.ts'

/** A target as it can be typed back: enough digits to come out the same, none that is noise. */
const typed = (value: number): string => String(Number(value.toPrecision(12)))

const wished = (wish: Style['wish']): string =>
  ('abvPercent' in wish ? ` to-strength:${typed(wish.abvPercent)}%` : '') +
  ('sugarGPerL' in wish ? ` to-sweetness:${typed(wish.sugarGPerL)} g/L` : '') +
  ('sugarPerWater' in wish ? ` ratio:${typed(wish.sugarPerWater)}:1` : '')

const strengthLine = ({ strength, of, spirit }: Typed): string =>
  strength === undefined ? ` of:${of?.typed ?? ''} spirit:${spirit?.typed ?? ''}` : ` strength:${strength.typed}`

const infusionLine = (input: Typed): string =>
  input.held === null
    ? ` infusion:${input.infusion?.typed ?? ''}${strengthLine(input)}`
    : ` jar:${quoted(input.held.name)}`

function lineOf(input: Typed, { wish }: Style): string {
  const atMost = input['at-most'] ? ` at-most:${input['at-most'].typed}` : ''
  return `/syrup${infusionLine(input)}${wished(wish)}${atMost}`
}

const targetsOf = ({ syrup: { outcome } }: Style) => ({
  abvPercent: outcome.abvPercent.value,
  sugarGPerL: outcome.sugarGPerL.value,
})

/** What any of the styles needs said, once each, worst first. */
function cautionsOfAll(styles: readonly Style[], infusion: Portion, freezerC: number): readonly Message<'cautions'>[] {
  const handled = [liquidOf(valuesOf(infusion))]
  const all = styles.flatMap(({ syrup: { outcome, sugarStays } }) =>
    outcomeCautions(outcome, sugarStays, handled, { freezerC }),
  )
  const first = new Map(all.map((each) => [each.key, all.find(({ key }) => key === each.key)!]))
  return CAUTION_ORDER.flatMap((key) => first.get(key) ?? [])
}

const CAUTION_ORDER = [
  'flame',
  'can_ferment',
  'keeps_undecided',
  'sugar_limit_not_known',
  'may_crystallise',
  'bottle_bursts',
] as const

/** The reply where too little was said: worked styles, each as a ready command. */
export function stylesReply(input: Typed, infusion: Portion, styles: readonly Style[], freezerC: number): Reply {
  const central: { readonly volumeMl: Measured; readonly abvPercent: Measured } = propagate({ infusion }, (values) => {
    const liquid = liquidOf(values.infusion)
    return { volumeMl: volumeMl(liquid), abvPercent: abvPercent(liquid) }
  })
  const actions = styles.map(
    (style): Action => ({
      label: { group: 'actions', key: 'style', values: targetsOf(style) },
      line: lineOf(input, style),
    }),
  )
  return {
    headline: {
      group: 'headlines',
      key: 'styles',
      values: { infusionMl: central.volumeMl, abvPercent: central.abvPercent, count: styles.length },
    },
    table: styles.map(({ key, syrup }) =>
      row(key, {
        group: 'cells',
        key: 'style',
        values: {
          sugarG: syrup.sugarG,
          waterMl: syrup.waterMl,
          infusionMl: syrup.leftMl > 0 ? syrup.infusionMl : null,
          volumeMl: syrup.outcome.volumeMl,
          abvPercent: syrup.outcome.abvPercent,
          sugarGPerL: syrup.outcome.sugarGPerL,
          freezer: freezerSaid(syrup.outcome, freezerC),
        },
      }),
    ),
    sure: [],
    notes: [...assumptionNotes(input), ...strengthNotes(input, infusion)],
    cautions: cautionsOfAll(styles, infusion, freezerC),
    actions,
    data: {
      styles: styles.map((style) => ({ key: style.key, line: lineOf(input, style), ...syrupData(style.syrup) })),
    },
    kitchen: kitchenOf(input),
  }
}
