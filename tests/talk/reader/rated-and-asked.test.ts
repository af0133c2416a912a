import { describe, expect, it } from 'vitest'
import { talkerFor } from './told.ts'

/** What a mark with a question behind it writes down, and what is answered of it. */
const MARKS = [
  ['3 out of 5, a bit sharp, any way to fix it?', 3, 'trouble'],
  ['2 stars, bitter, what can i do', 2, 'trouble'],
  ['the lemon gets 2 stars - too sweet, how can I rescue it?', 2, 'trouble'],
  ['tried the lemon tonight: 3 stars, thin and watery, any suggestions?', 3, 'trouble'],
  ['rated the lemon 3, it’s harsh - what now?', 3, 'trouble'],
  ['2 stars for the lemon, too strong, what can I do?', 2, 'trouble'],
  ['due stelle, troppo dolce, come rimedio?', 2, 'trouble'],
  ['3 su 5, un po’ amaro: si può rimediare?', 3, 'trouble'],
  ['2 stars, what do I do now?', 2, null],
  ['only 2 out of 5, how do I save it?', 2, null],
] as const

describe('a mark with a question behind it is written down, and answered', () => {
  it.each(MARKS)('%s', async (said, rating, answer) => {
    const one = await talkerFor({ after: null, shelf: 'lemon_bottled' })
    const told = await one.say(said)
    const all = [told, ...told.also]
    const mark = all.find(({ command }) => command === 'jar taste')
    expect(mark?.call?.options.rating).toBe(String(rating))
    expect(mark?.call?.options.note ?? '').not.toMatch(/\?|fix|rescue|rimedi|what|cosa/)
    if (answer === null) expect(all).toHaveLength(1)
    else expect(all.map(({ command }) => command)).toContain(answer)
  })

  it.each(['if I give it 2 stars what should I do', 'what does 2 stars mean, can I change it?'])(
    '%s writes nothing down',
    async (said) => {
      const one = await talkerFor({ after: null, shelf: 'lemon_bottled' })
      expect((await one.say(said)).recorded).toBe(0)
    },
  )
})

describe('what is asked behind a low mark is answered of that jar', () => {
  it.each([
    ['tasted the lemon, too sweet, 2 out of 5', 'what can I do about it?', '/trouble too sweet jar:lemon'],
    ['tasted the lemon, too sweet, 2 out of 5', 'ok, what should I do?', '/trouble too sweet jar:lemon'],
    ['the lemon gets 3 out of 5, bit bitter', 'can I fix it?', '/trouble bitter jar:lemon'],
    ['rated the lemon 2 out of 5', 'what do I do about that?', '/trouble jar:lemon'],
    ['rated the lemon 2 out of 5', 'how do I fix the lemon?', '/trouble jar:lemon'],
    ['2 su 5 al limone', 'come rimedio?', '/trouble jar:lemon'],
    ['the lemon is too sweet', 'what can I do about it?', /^\/adjust jar:lemon to-sweetness:\d+ g\/L$/],
  ])('%s, then %s', async (first, asked, line) => {
    const one = await talkerFor({ after: null, shelf: 'lemon_bottled' })
    await one.say(first)
    const { read, recorded } = await one.say(asked)
    if (typeof line === 'string') expect(read).toBe(line)
    else expect(read).toMatch(line)
    expect(recorded).toBe(0)
  })

  it('is of no jar where none was judged', async () => {
    const one = await talkerFor({ after: null, shelf: 'lemon_bottled' })
    expect((await one.say('what can I do about it?')).read ?? '').not.toMatch(/^\/trouble/)
  })
})

describe('what is said beside a mark is noted with it', () => {
  it.each([
    ['lemon: bit thin, 3 out of 5', 'bit thin'],
    ['lemon a bit thin, 3 out of 5', 'a bit thin'],
    ['3 out of 5 for the lemon, bit watery', 'bit watery'],
    ['the lemon is harsh, 3 out of 5', 'harsh'],
    ['the lemon’s a touch sharp - 3 stars', 'a touch sharp'],
    ['lemon too weak, 2 stars', 'too weak'],
    ['rated the lemon 2 out of 5 yesterday, too bitter', 'too bitter'],
    ['the lemon gets 4 out of 5 today, rich and fruity', 'rich and fruity'],
    ['2 su 5 al limone, troppo dolce', 'troppo dolce'],
    ['limone, un po’ amaro, 3 su 5', 'un po’ amaro'],
    ['hi, lemon 4 stars', undefined],
    ['lemon 3 out of 5', undefined],
  ])('%s', async (said, note) => {
    const one = await talkerFor({ after: null, shelf: 'lemon_bottled' })
    const { call } = await one.say(said)
    expect(call?.path).toBe('jar taste')
    expect(call?.options.note).toBe(note)
  })
})
