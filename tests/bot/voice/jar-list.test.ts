import { expect, it } from 'vitest'
import { whiteSugar } from '../../../core/recipe/sweetening.ts'
import { deskWith, jarOf, NOW_MS, startedAs } from '../commands-jar-views/jars.ts'
import { budgets } from './budgets.ts'
import { WIDTHS } from './first-screens.ts'
import { linesOf, longest, type MeasuredScreen, overBudget } from './measured-screens.ts'

/** Steeping since 1 November: to be tasted, strained and sweetened around the 20th, when the list is asked for. */
const DAYS = { tasteFrom: '2026-11-10', strainFrom: '2026-11-15', strainBy: '2026-11-25', restDays: 30 }
const none = { value: 0, plusMinus: 0 }

const strained = { kind: 'strained', measured: null, strength: null, rinseWaterG: none, on: '2026-11-16' } as const
const sweetened = {
  kind: 'sweetened',
  waterG: { value: 900, plusMinus: 10 },
  sweetenings: whiteSugar({ value: 400, plusMinus: 2 }),
  on: '2026-11-17',
} as const

type Stage = 'steeping' | 'strained' | 'sweetened'

const jarIn = (stage: Stage, index: number) => {
  const start = { ...startedAs(`${stage} ${index}`, {}, DAYS), on: '2026-11-01' }
  const later = { steeping: [], strained: [strained], sweetened: [strained, sweetened] }[stage]
  return jarOf(`jar${String(index).padStart(2, '0')}`, [start, ...later])
}

const many = (count: number, stages: readonly Stage[]) =>
  Array.from({ length: count }, (_, index) => jarIn(stages[index % stages.length]!, index))

const shelves: readonly (readonly [of: string, jars: ReturnType<typeof many>])[] = [
  ['no jar', []],
  ['three jars', many(3, ['steeping', 'strained', 'sweetened'])],
  ...(['steeping', 'strained', 'sweetened'] as const).map((stage) => [`ten jars ${stage}`, many(10, [stage])] as const),
  ['ten jars of all kinds', many(10, ['steeping', 'strained', 'sweetened'])],
  ['forty jars of all kinds', many(40, ['steeping', 'strained', 'sweetened'])],
]

it('lists every job once in its lines, however many jars there are', async () => {
  const screens: MeasuredScreen[] = []
  for (const [of, jars] of shelves) {
    for (const width of WIDTHS) {
      const text = await (await deskWith({ jars }, { width, nowMs: NOW_MS })).firstOf('/jar list')
      screens.push({ of, width, lines: linesOf(text), text })
    }
  }
  console.log(`longest of /jar list: ${longest(screens)}`)
  expect(overBudget(screens, budgets.jar_list)).toEqual([])
})

it('keeps every running jar, with its stage and its day, one question deeper', async () => {
  const desk = await deskWith({ jars: many(40, ['steeping', 'strained']) }, { width: 80, nowMs: NOW_MS })
  const text = await desk.textOf('/jar list')
  expect(text.match(/\bday 20\b/g)).toHaveLength(40)
  const first = await desk.firstOf('/jar list')
  expect(first).toMatch(/And .* more jobs\./)
  expect(first).not.toMatch(/\bday 20\b/)
})
