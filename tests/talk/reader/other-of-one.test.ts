import { describe, expect, it } from 'vitest'
import { talker, talkerFor } from './told.ts'

// Nothing is recorded of a jar that is not there: what was told of another one would stand in the wrong story.

async function ofOneJar(...texts: readonly string[]) {
  const one = talker()
  await one.say('started a jar with 4 lemons in 500 ml of 95% alcohol')
  for (const text of texts.slice(0, -1)) await one.say(text)
  const before = texts.at(-1)!
  const { outcome } = await one.hear(before)
  return { one, problem: outcome.ok ? 'done' : outcome.error.problem, outcome }
}

describe('another jar than the only one', () => {
  it.each([
    'strained the other one',
    'gave my second jar a good shake',
    'the other batch is strained, 450 ml',
    'shook the third one',
    'the second one’s been strained',
    'I bottled my other jar',
    'tasted the other one, too sharp',
    'ho filtrato l’altro vaso',
    'ho scosso il secondo',
    'l’altro l’ho filtrato oggi',
    'filtrata l’altra',
  ])('is not taken for it: %s', async (text) => {
    const { problem, outcome } = await ofOneJar(text)
    expect(problem).toBe('talk_only_jar')
    expect(outcome.ok ? null : outcome.error.values).toMatchObject({ jar: 'lemon' })
  })

  it('is that one once its maker says so', async () => {
    const { one } = await ofOneJar('shook the other one')
    expect(await one.say('yes')).toMatchObject({ recorded: 1, call: { path: 'jar shake' } })
  })

  it('is that one where there are two', async () => {
    const one = await talkerFor({ after: null, shelf: 'lemon_ginger' })
    const { outcome } = await one.hear('shook the other one')
    expect(outcome.ok ? 'done' : outcome.error.problem).not.toBe('talk_only_jar')
  })

  it.each([
    ['shook it the other day', 'jar shake'],
    ['strained it into the other jar, 480 ml', 'jar strain'],
    ['shook it for the second time', 'jar shake'],
    ['l’ho scosso l’altro ieri', 'jar shake'],
    ['started the other jar: 5 oranges in a litre of gin', 'jar start'],
  ])('is not told of by a day, a vessel or a beginning: %s', async (text, path) => {
    const { one } = await ofOneJar('shook it')
    expect(await one.say(text)).toMatchObject({ call: { path } })
  })
})
