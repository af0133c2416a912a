import { expect, it } from 'vitest'
import { jarDesk, LEMON } from '../commands-jar/desk.ts'

/** A lemon liqueur of 30 % vol, of a spirit that was named. */
const made = async () => {
  const desk = jarDesk('2026-10-01')
  await desk.ask(LEMON.replace('1 l 95%', '1 l neutral spirit 95%'))
  desk.at('2026-10-20')
  await desk.ask('/jar strain lemon measured:930 ml strength:87%')
  await desk.ask('/jar sweeten lemon water:1.46 l sugar:660 g')
  desk.at('2026-11-05')
  return desk
}

it('keeps a cloudy lemon, by its own fall in strength', async () => {
  const desk = await made()
  const { data } = await desk.ask('/trouble cloudy jar:lemon')
  expect(data.discard).toMatchObject({ verdict: 'keep', because: 'cloud', question: null })
  expect(data.causes).toMatchObject([{ id: 'oil', fits: 'yes', why: ['plants', 'fell'] }, { id: 'hot_syrup' }])
  expect(await desk.textOf('/trouble cloudy jar:lemon')).toMatch(/It fell from 89 % vol to 29\.\d % vol/)
})

it('asks one thing at a time, and takes the answer', async () => {
  const desk = await made()
  const first = await desk.ask('/trouble harsh jar:lemon')
  expect(first.data.discard).toMatchObject({ verdict: 'ask', question: 'fuel' })
  const second = await desk.ask('/trouble harsh jar:lemon no:fuel')
  expect(second.data.discard).toMatchObject({ verdict: 'ask', question: 'varnish' })
  const third = await desk.ask('/trouble harsh jar:lemon no:fuel + varnish')
  expect(third.data.discard).toMatchObject({ verdict: 'keep', question: null })
  const bad = await desk.ask('/trouble harsh jar:lemon yes:fuel')
  expect(bad.data.discard).toMatchObject({ verdict: 'throw_away', because: 'fuel', question: null })
})

it('believes a named spirit, and no strength alone', async () => {
  const desk = jarDesk('2026-10-01')
  await desk.ask(LEMON)
  expect((await desk.ask('/trouble bitter jar:lemon')).data.discard).toMatchObject({ question: 'bought' })
})

it('knows what came along from another jar, and what was lifted out early', async () => {
  const desk = await made()
  desk.at('2026-10-01')
  await desk.ask('/jar start fire of:60 g ginger spirit:700 ml vodka 40%')
  await desk.ask('/jar add fire of:5 g dried chillies')
  desk.at('2026-10-03')
  await desk.ask('/jar take-out fire of:chilli')
  desk.at('2026-10-15')
  const { data } = await desk.ask('/trouble too spicy jar:fire')
  const [, cause] = data.causes as readonly { readonly id: string; readonly why: readonly string[] }[]
  expect(cause).toMatchObject({ id: 'hot_plant' })
  // Two days of chilli are not too long.
  expect(await desk.textOf('/trouble too spicy jar:fire')).not.toMatch(/Chilli was in for/)
  await desk.ask('/jar strain fire measured:600 ml')
  desk.at('2026-11-05')
  await desk.ask('/jar combine lemon with:fire')
  const blended = await desk.ask('/trouble too spicy jar:lemon')
  expect(blended.data.causes).toMatchObject([{ id: 'in_the_eyes' }, { id: 'hot_plant', fits: 'yes' }])
  // The other jar's spirit is not this one's record.
  expect((await desk.ask('/trouble bitter jar:lemon')).data.discard).toMatchObject({ question: 'bought' })
})

it('answers from a line alone as far as that goes', async () => {
  const desk = jarDesk('2026-10-01')
  const weak = await desk.ask('/trouble fizzing of:plum strength:13%')
  expect(weak.data.discard).toMatchObject({ verdict: 'throw_away', because: 'fizzed_weak' })
  const sweet = await desk.ask('/trouble too sweet strength:28% sweetness:330 g/L')
  expect((sweet.data.causes as readonly unknown[])[0]).toMatchObject({ id: 'recipe', fits: 'yes', why: ['sugar'] })
  expect((await desk.ask('/trouble')).data).toEqual({ symptom: null, also: [], causes: [], discard: null })
})

it('says first how to get near what fizzes, and to leave shut what may carry botulism', async () => {
  const desk = jarDesk('2026-10-01')
  expect(await desk.textOf('/trouble fizzing of:plum strength:13%')).toMatch(
    /^Throw it away: it fizzed.*\n\n• Gloves, goggles/,
  )
  expect(await desk.textOf('/trouble lid bulging of:garlic strength:13%')).toContain('unopened and untasted')
})

it('brings first aid where somebody is ill', async () => {
  const desk = jarDesk('2026-10-01')
  const { data } = await desk.ask('/trouble someone ill')
  expect(data).toMatchObject({ id: 'methanol', symptom: 'someone_ill', discard: { verdict: 'emergency' } })
})

it('solves what makes it less sweet, as amounts that lead there', async () => {
  const desk = jarDesk('2026-11-01')
  const text = await desk.textOf('/trouble too sweet strength:28% sweetness:330 g/L')
  const line = /\/adjust .*/.exec(text)![0]
  const { data } = await desk.ask(line)
  expect(data.abvPercent).toBeCloseTo(28, 1)
  expect(data.sugarGPerL).toBeCloseTo(250, 0)
})

it('refuses with one question what it does not know', async () => {
  const desk = jarDesk('2026-11-01')
  expect((await desk.refused('/trouble zorble')).message).toBe(
    'I don’t know “zorble”. What do you see, smell or taste? Say cloudy, bitter or fizzing, for example.',
  )
  expect((await desk.refused('/trouble cloudy yes:zorble')).code).toBe('bad_value')
  expect((await desk.refused('/trouble cloudy jar:none')).code).toBe('not_found')
})

it.each([
  ['/jar taste lemon rating:2', '/trouble jar:lemon'],
  ['/jar taste lemon rating:3 note:still too sweet', '/trouble too sweet jar:lemon'],
  ['/jar taste lemon note:a bit bitter', '/trouble bitter jar:lemon'],
])('offers it after %s', async (line, offered) => {
  expect(await (await made()).textOf(line)).toContain(offered)
})

it.each(['/jar taste lemon rating:5 note:sharp and fine', '/jar taste lemon rating:3', '/jar taste lemon note:lovely'])(
  'offers nothing after %s',
  async (line) => {
    expect(await (await made()).textOf(line)).not.toContain('/trouble')
  },
)

it('writes down of a jar what must not be drunk yet, and the jar tells it', async () => {
  const desk = jarDesk('2026-11-01')
  await desk.ask('/jar start sloe of:1 kg sloes spirit:1 l gin 40%')
  const { actions, notes } = await desk.replyOf('/trouble fizzing jar:sloe')
  expect(actions.map(({ label }) => label.key)).toContain('jar_was_nothing')
  expect(notes.map(({ key }) => key)).toContain('trouble_kept')
  expect(await desk.textOf('/jar show sloe')).toContain('noted, “fizzing”, not to be drunk yet')
})

it('answers the worse of two that are told together, and names the other with its line', async () => {
  const desk = jarDesk('2026-11-01')
  await desk.ask('/jar start sloe of:1 kg sloes spirit:1 l gin 40%')
  for (const line of ['/trouble cloudy and fizzing jar:sloe', '/trouble fizzing, cloudy jar:sloe']) {
    const { data } = await desk.ask(line)
    expect(data).toMatchObject({ symptom: 'fermenting', also: ['cloudy_on_mixing'], discard: { verdict: 'hold' } })
    expect(await desk.textOf(line)).toContain('And it’s cloudy: /trouble cloudy jar:sloe')
  }
  const mouldy = '/trouble fizzing and mould jar:sloe yes:growth'
  expect((await desk.ask(mouldy)).data).toMatchObject({ symptom: 'mould', discard: { verdict: 'throw_away' } })
  // What fizzes is let out first, also where it goes for its mould.
  expect(await desk.textOf(mouldy)).toContain('loosen the lid once it’s cold')
  expect((await desk.ask('/trouble too sweet strength:28%')).data).toMatchObject({ also: [] })
})
