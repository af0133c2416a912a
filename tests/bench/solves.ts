import { liquidFrom } from '../../core/liquid/liquid.ts'
import { exactly, type Measured } from '../../core/quantity/measured/measured.ts'
import type { Portion } from '../../core/recipe/portion.ts'
import { adjust } from '../../core/recipe/solve/adjust.ts'
import { dilute } from '../../core/recipe/solve/dilute.ts'
import { mix } from '../../core/recipe/solve/mix.ts'
import { syrup } from '../../core/recipe/solve/syrup.ts'
import { type SyrupWish, syrupFor } from '../../core/recipe/solve/syrup-for.ts'
import { whiteSugar } from '../../core/recipe/sweetening.ts'

type Row = [label: string, value: string, goal?: string]

const ROUND_MS = 150
const ROUNDS = 3

const give = (value: number, plusMinus: number): Measured => ({ value, plusMinus })

const portion = (ml: number, percent: number, gPerL = 0): Portion => ({
  amount: give(ml, 0.02 * ml),
  by: 'volume',
  atC: 20,
  abvPercent: give(percent, 0.5),
  abvAtC: 20,
  sugarGPerL: give(gPerL, 0.02 * gPerL),
})

/** The same inputs for everybody, a little different each time so that nothing can be remembered. */
const INPUTS = Array.from({ length: 64 }, (_, index) => ({
  ml: 700 + 7 * index,
  percent: 60 + index / 2,
  toPercent: 25 + index / 8,
  gPerL: 120 + 2 * index,
  ratio: 0.4 + index / 160,
}))

type Input = (typeof INPUTS)[number]

const both = ({ toPercent, gPerL }: Input): SyrupWish => ({
  by: 'strength_and_sweetness',
  abvPercent: toPercent,
  sugarGPerL: gPerL,
})
const strengthAndRatio = ({ toPercent, ratio }: Input): SyrupWish => ({
  by: 'strength_and_ratio',
  abvPercent: toPercent,
  sugarPerWater: ratio,
})
const sweetnessAndRatio = ({ ratio }: Input): SyrupWish => ({
  by: 'sweetness_and_ratio',
  sugarGPerL: 100,
  sugarPerWater: ratio / 2,
})

/** The naive baseline: strength falls as the volume grows, volumes add, a gram of sugar takes 0.6 ml. */
const ruleOfThree = ({ ml, percent, toPercent, gPerL }: Input): number => {
  const finalMl = (ml * percent) / toPercent
  const sugarG = (finalMl * gPerL) / 1000
  return finalMl - ml - 0.6 * sugarG + sugarG
}

const plainLiquid = ({ ml, percent }: Input) => liquidFrom({ volumeMl: ml, abvPercent: percent, sugarGPerL: 0 })

/** Each returns a number that is added up, so that no work can be left out. */
const CANDIDATES: readonly [label: string, work: (input: Input) => number][] = [
  ['rule of three (reference: no physics, no ±)', ruleOfThree],
  ['syrupFor alone, no ±: strength and sweetness', (input) => syrupFor(plainLiquid(input), both(input)).waterG],
  ['syrupFor alone, no ±: strength and ratio', (input) => syrupFor(plainLiquid(input), strengthAndRatio(input)).waterG],
  [
    'syrupFor alone, no ±: sweetness and ratio',
    (input) => syrupFor(plainLiquid(input), sweetnessAndRatio(input)).waterG,
  ],
  [
    'mix with ±',
    (input) =>
      mix({
        portions: [portion(input.ml, input.percent), portion(input.ml, 0)],
        sweetenings: whiteSugar(give(300, 1.5)),
      }).outcome.volumeMl.value,
  ],
  [
    'syrup with ±: strength and sweetness',
    (input) => syrup(portion(input.ml, input.percent), both(input)).waterG.value,
  ],
  [
    'syrup with ±: strength and ratio',
    (input) => syrup(portion(input.ml, input.percent), strengthAndRatio(input)).waterG.value,
  ],
  [
    'syrup with ±: sweetness and ratio',
    (input) => syrup(portion(input.ml, input.percent), sweetnessAndRatio(input)).waterG.value,
  ],
  ['dilute with ±', (input) => dilute([portion(input.ml, input.percent)], input.toPercent).waterG.value],
  [
    'adjust with ±',
    (input) =>
      adjust(portion(input.ml, input.toPercent + 3, 300), { abvPercent: input.toPercent, sugarGPerL: 250 }, exactly(95))
        .waterG.value,
  ],
]

const perSecond = (work: (input: Input) => number): number => {
  let sum = 0
  const startMs = performance.now()
  let times = 0
  let tookMs = 0
  do {
    for (const input of INPUTS) sum += work(input)
    times += INPUTS.length
    tookMs = performance.now() - startMs
  } while (tookMs < ROUND_MS)
  if (!Number.isFinite(sum)) throw new Error('a solve gave no number')
  return (1000 * times) / tookMs
}

const shown = (rate: number): string =>
  `${rate >= 1e6 ? `${(rate / 1e6).toFixed(1)} million` : Math.round(rate).toLocaleString('en-US')}/s`

/** Solves per second, the rule of three for the same inputs beside them; the best of three rounds each. */
export async function benchSolves(): Promise<{ name: string; rows: Row[] }> {
  for (const [, work] of CANDIDATES) perSecond(work)
  const rows: Row[] = CANDIDATES.map(([label, work]) => [
    label,
    shown(Math.max(...Array.from({ length: ROUNDS }, () => perSecond(work)))),
  ])
  return { name: 'solves', rows }
}
