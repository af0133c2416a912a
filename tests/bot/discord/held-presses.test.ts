import { expect, it } from 'vitest'
import type { Answer } from './fake/answer.ts'
import { buttonsOf } from './fake/shown-text.ts'
import { fake, onStage } from './stage.ts'

// Whatever is known of a jar that has to go is said by every way that leads on with it: core/trouble, with its sources.
onStage()

const START = { name: 'lemon', of: '10 lemons', spirit: '1 l 95%', 'to-strength': '30%', 'to-sweetness': '250 g/L' }

/** A jar’s story up to a stage, and what was answered on the way, with its buttons. */
const STORIES: Readonly<Record<string, readonly (readonly [string, Readonly<Record<string, string>>])[]>> = {
  steeping: [['jar start', START]],
  strained: [
    ['jar start', START],
    ['jar strain', { jar: 'lemon', measured: '900 ml' }],
  ],
  bottled: [
    ['jar start', START],
    ['jar strain', { jar: 'lemon', measured: '900 ml' }],
    ['jar sweeten', { jar: 'lemon', sugar: '500 g', water: '1 l' }],
    ['jar bottle', { jar: 'lemon', bottles: '4 x 500 ml' }],
  ],
}

const DANGERS: readonly Readonly<Record<string, string>>[] = [
  { symptom: 'mould', yes: 'growth' },
  { symptom: 'smells of nail varnish', no: 'bought' },
  { symptom: 'smells of paint thinner', yes: 'fuel' },
]

/** Commands that lead on with a jar. */
const LEADING: readonly (readonly [string, Readonly<Record<string, string>>])[] = [
  ['jar shake', { jar: 'lemon' }],
  ['jar strain', { jar: 'lemon', measured: '900 ml' }],
  ['jar sweeten', { jar: 'lemon', sugar: '500 g', water: '1 l' }],
  ['jar filter', { jar: 'lemon' }],
  ['jar bottle', { jar: 'lemon', bottles: '2 x 500 ml' }],
  ['jar taste', { jar: 'lemon', rating: '4' }],
  ['jar label', { jar: 'lemon' }],
  ['jar tag', { jar: 'lemon' }],
  ['jar later', { jar: 'lemon', until: 'tomorrow' }],
  ['jar show', { jar: 'lemon' }],
  ['jar list', {}],
  ['bottles', { jar: 'lemon', given: '1' }],
  ['bottles', { jar: 'lemon', opened: '1' }],
  ['share', { jar: 'lemon' }],
  ['again', { jar: 'lemon' }],
  ['cost', { jar: 'lemon' }],
  ['shopping', { jars: 'lemon' }],
  ['syrup', { jar: 'lemon' }],
  ['adjust', { jar: 'lemon', 'to-strength': '25%' }],
  ['measure', { jar: 'lemon' }],
  ['keeping', { jar: 'lemon' }],
  ['calendar', { jar: 'lemon' }],
  ['notebook', {}],
]

const SAYS = /throw lemon away|don’t drink|isn’t for drinking/i

/** What is no matter of the jar, or shows again what was said before. */
const OF_NO_JAR = /\/(?:reminders|settings)\b|!(?:more|show)\b/

const cases = Object.keys(STORIES).flatMap((stage) => DANGERS.map((danger) => ({ stage, danger })))

async function toldOf(stage: string, danger: Readonly<Record<string, string>>): Promise<readonly Answer[]> {
  const answers: Answer[] = []
  for (const [line, options] of STORIES[stage]!) answers.push(await fake.slash(line, options))
  await fake.slash('trouble', { jar: 'lemon', ...danger })
  return answers
}

it.each(cases)('no command leads on with a $stage jar: $danger.symptom', async ({ stage, danger }) => {
  await toldOf(stage, danger)
  const silent: string[] = []
  for (const [line, options] of LEADING) {
    const answer = await fake.slash(line, options)
    if (!SAYS.test(answer.text)) silent.push(`${line}: ${answer.text}`)
  }
  expect(silent).toEqual([])
})

it.each(cases)('no button of before leads on with a $stage jar: $danger.symptom', async ({ stage, danger }) => {
  const answers = await toldOf(stage, danger)
  const silent: string[] = []
  let count = 0
  for (const { message } of answers)
    for (const { label, customId } of buttonsOf(message!.json)) {
      if (customId === undefined || OF_NO_JAR.test(customId)) continue
      const answer = await fake.press(message, { customId })
      count++
      const isForm = answer.modal !== undefined
      if (isForm || !SAYS.test(answer.text))
        silent.push(`${label}: ${isForm ? JSON.stringify(answer.modal) : answer.text}`)
    }
  for (const line of ['strain', 'sweeten', 'bottle', 'taste']) {
    const answer = await fake.slash(`jar ${line}`, { jar: 'lemon' })
    if (answer.modal !== undefined || !SAYS.test(answer.text)) silent.push(`/jar ${line}: ${answer.text}`)
  }
  expect(silent).toEqual([])
  expect(count).toBeGreaterThan(0)
})

it('asks for nothing of such a jar where reminders are shown', async () => {
  await toldOf('strained', DANGERS[0]!)
  const { text } = await fake.slash('reminders')
  expect(text).toMatch(SAYS)
  expect(text).not.toMatch(/sweeten lemon|bottle lemon/)
})
