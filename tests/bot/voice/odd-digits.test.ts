import { describe, expect, it, test } from 'vitest'
import { atDepth } from '../../../bot/chat/depth.ts'
import { cookName } from '../../../bot/text/en/cook-names.ts'
import type { Botanical } from '../../../core/botanical/botanical.ts'
import { catalogue } from '../../../core/botanical/catalogue/catalogue.ts'
import { isFormAsked } from '../../../core/botanical/find/in-form.ts'
import { kitchenRounded, kitchenSweetness } from '../../../core/recipe/tool-precision.ts'
import { sampled } from '../../runs.ts'
import { newAsker } from '../asker.ts'
import { speech, testDesk } from '../test-desk.ts'
import { oddDigits } from './odd-digits.ts'

const START_MS = Date.UTC(2026, 8, 1, 9)
const DAY_MS = 86_400_000

const PLANS = [
  (name: string) => `/plan of:${name} spirit:1 l 70%`,
  (name: string) => `/plan of:${name} spirit:70 cl 40% to-sweetness:dry`,
  (name: string) => `/plan of:${name} spirit:500 ml 95% bottles:3 x 200 ml`,
  (name: string) => `/plan of:${name} spirit:1 l 95% steep-at:60%`,
]

const TYPED = '1 l 70% 300 g 800 ml 2 x 500 ml 5 x 500 ml'

/** What a jar of it is asked and told in its season. */
const SEASON: readonly (readonly [day: number, line: string])[] = [
  [2, '/jar taste jar rating:4'],
  [30, '/jar list'],
  [30, '/jar strain jar'],
  [30, '/jar show jar'],
  [30, '/syrup jar:jar'],
  [31, '/jar sweeten jar sugar:300 g water:800 ml'],
  [32, '/adjust jar:jar to-strength:25%'],
  [33, '/jar filter jar'],
  [33, '/jar bottle jar bottles:2 x 500 ml'],
  [60, '/jar show jar'],
  [60, '/notebook'],
  [60, '/share jar'],
  [60, '/again jar spirit:700 ml 60%'],
]

/** As a line asks for it, with its state where that matters. */
const nameOf = (botanical: Botanical): string => `${isFormAsked(botanical) ? 'dried ' : ''}${cookName(botanical.id)}`

/** On the first screen, and in the warnings one question deeper. */
async function oddIn(line: string, desk: ReturnType<typeof testDesk>, typed = line): Promise<readonly string[]> {
  const { outcome, text } = await desk.toldOf(line, 'first')
  if (!outcome.ok || !('reply' in outcome)) return [...oddDigits(text, typed), ...(outcome.ok ? [] : unlessAsked(text))]
  const { cautions, kitchen } = outcome.reply
  const deeper = atDepth(cautions, 'more').map((each) => speech.words.say<'cautions'>(each, kitchen))
  return [text, ...deeper].flatMap((each) => oddDigits(each, typed))
}

/** Nothing is refused here that was not meant to be. */
const unlessAsked = (text: string): readonly string[] =>
  /ferment|can’t take sugar out/.test(text) ? [] : [`refused: ${text}`]

describe('no digit on a first screen that a kitchen’s jug, scale or label cannot tell', () => {
  // The short run plans one plant of twelve, and leaves the others to the long one.
  it('in a plan of any plant', async () => {
    const odd: string[] = []
    for (const botanical of sampled(catalogue, 12)) {
      for (const plan of PLANS) {
        const line = plan(nameOf(botanical))
        odd.push(...(await oddIn(line, testDesk({ nowMs: START_MS }))).map((each) => `${line}: ${each}`))
      }
    }
    expect(odd).toEqual([])
  }, 600_000)

  it('in the season of a jar of any plant', async () => {
    const odd: string[] = []
    for (const botanical of sampled(catalogue, 24)) {
      const asker = newAsker()
      const name = nameOf(botanical)
      for (const [day, line] of [[0, `/jar start jar of:${name} spirit:1 l 70% to-strength:30%`] as const, ...SEASON]) {
        const desk = testDesk({ nowMs: START_MS + day * DAY_MS, asker })
        odd.push(...(await oddIn(line, desk, `${TYPED} ${line}`)).map((each) => `${name} ${line}: ${each}`))
      }
    }
    expect(odd).toEqual([])
  }, 600_000)

  it('in glasses, in other people’s codes and in what is asked about', async () => {
    const odd: string[] = []
    for (const line of [
      '/serving pour:30 ml strength:30% country:Italy',
      '/serving pour:0.1 ml strength:60 proof country:Japan',
      '/serving pour:5 cl strength:28 country:regno unito',
      '/plan from:11K4PHTR0001MYJ0JNHC00VV9QPCBAHF2JVV8AKP',
      '/plan of:2 cloves + 10 lemons spirit:2 x 700 ml 40%',
      '/plan of:1 lb 4 oz cucumber spirit:500 ml 96%',
      '/syrup infusion:920 ml strength:82%',
      '/dilute spirit:1 l 95% to-strength:38%',
      '/plan of:600 g plums spirit:700 ml 40%',
      '/plan of:900 g plums spirit:700 ml 40%',
      '/plan of:1.2 kg strawberries spirit:1 l 40% to-strength:15%',
      '/syrup infusion:920 ml strength:22% to-strength:16%',
      '/mix spirit:500 ml strength:40% water:600 ml sugar:100 g',
      '/trouble too sweet strength:28% sweetness:330 g/L',
    ]) {
      odd.push(...(await oddIn(line, testDesk({ nowMs: START_MS }))).map((each) => `${line}: ${each}`))
    }
    expect(odd).toEqual([])
  })
})

// By hand: a jug within 2 %, a scale within 1 g; about a hundredth from 100 on, 5 from 20 on, halves from 1 on.
test.each([
  [0.18, 0.2],
  [0.94, 0.9],
  [1.2, 1],
  [9.8, 10],
  [10.4, 10],
  [19.4, 19],
  [20.4, 20],
  [28.5, 30],
  [97, 95],
  [99, 100],
  [104, 100],
  [106, 110],
  [334, 330],
  [994, 990],
  [996, 1000],
  [1179, 1180],
  [1527, 1530],
  [10_440, 10_400],
])('%f ml or g is said as %f', (amount, said) => {
  expect(kitchenRounded(amount).value).toBeCloseTo(said, 9)
})

test.each([
  [0, 0],
  [4.4, 4],
  [5.1, 5],
  [187, 185],
  [188, 190],
])('%f g/L is said as %f', (sweetness, said) => {
  expect(kitchenSweetness(sweetness)).toBe(said)
})

it('knows an odd digit where it sees one', () => {
  const text = 'Stir in 334 ml water and 1.50 l spirit: 29.9 % and 212 g/L ± 5. Of 930 ml 300 g is left.'
  expect(oddDigits(text, 'measured:930 ml')).toHaveLength(5)
})
