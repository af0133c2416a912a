import { expect, it } from 'vitest'
import { readOffTopic } from './corpus.ts'
import { ASKED } from './handbook-asked.ts'
import { talker } from './reader/told.ts'

const answered = async (text: string): Promise<string> => String((await talker().say(text)).data.entry ?? '')

/** What was measured, less three of the forty-eight. */
it.each([
  ['English', 1, 0.85],
  ['Italian', 2, 0.68],
] as const)('questions in plain %s are answered by their entry', async (_, at, least) => {
  let right = 0
  for (const row of ASKED) if ((await answered(row[at])) === row[0]) right++
  console.log(`${right} of ${ASKED.length}`)
  expect(right / ASKED.length).toBeGreaterThanOrEqual(least)
})

it.each([
  ['do you keep limoncello in the freezer', 'freezer_keep'],
  ['how do they get basil liqueur so green', 'keep_green'],
  ['le fragole si lavano prima', 'wash_fruit'],
  ['should the plums be washed and dried', 'wash_fruit'],
  ['posso usare la stevia', 'sweeteners'],
  ['how thick should the strips be', 'peel_how'],
  ['does pectic enzyme do anything', 'pectin_enzyme'],
  ['non ho l’alcolometro', 'no_hydrometer'],
])(
  'what is asked of any jar stands before a word that would be a trouble, a plan or a setting: %s',
  async (text, entry) => {
    expect(await answered(text)).toBe(entry)
  },
)

it.each([
  ['how long have we got once the bottle is cracked open', 'keep_opened'],
  ['is a brass pan alright to melt the sugar in', 'pans'],
  ['are tin lids alright on jars for jelly', 'metal_lid'],
  ['can you press the pulp or is that bad', 'squeeze'],
])(
  'what is asked stands before a word that would be a trouble, where the sentence looks asked: %s',
  async (text, entry) => {
    expect(await answered(text)).toBe(entry)
  },
)

it.each([
  ['should it all go in together or by stages', 'spices_when'],
  ['would it matter whether the syrup goes into the alcohol or the other way about', 'water_order'],
])('what is surely asked needs less to be found: %s', async (text, entry) => {
  expect(await answered(text)).toBe(entry)
})

it.each([
  ['can i make limoncello with vodka', 'plan'],
  ['è troppo dolce, come rimedio?', 'trouble'],
  ['musty, like a cellar', 'trouble'],
  ['what needs doing today', 'jar list'],
])('and what is told, planned or looked up stays: %s', async (text, command) => {
  expect(await talker().say(text)).toMatchObject({ command })
})

it('answers hardly anything of jam, beer, bars, gardens or carpets', async () => {
  const wrongly: string[] = []
  for (const { text } of readOffTopic().slice(-62)) {
    if ((await talker().say(text)).code !== 'not_understood') wrongly.push(text)
  }
  console.log(wrongly)
  expect(wrongly.length).toBeLessThanOrEqual(5)
})
