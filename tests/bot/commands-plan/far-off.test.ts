import { expect, it } from 'vitest'
import { jarDesk } from '../commands-jar/desk.ts'
import { run } from './desk.ts'

const keysOf = async (line: string): Promise<readonly string[]> => {
  const { notes } = await jarDesk().ask(line)
  return notes.map(({ key }) => key).filter((key) => /^plan_(?:far_off|more_than_usual|less_than_usual)$/.test(key))
}

// The catalogue's dose of lemon zest, common practice: 50 to 250 g in a litre, usually 120; of a lemon 10.5 g.
it.each([
  ['of:200 lemons spirit:1 l 95%', ['plan_far_off']],
  ['of:72 lemons spirit:1 l 95%', ['plan_far_off']],
  ['of:70 lemons spirit:1 l 95%', ['plan_more_than_usual']],
  ['of:10 lemons spirit:1 l 95%', []],
  ['of:21 g lemon peel spirit:1 l 95%', ['plan_less_than_usual']],
  ['of:16 g lemon peel spirit:1 l 95%', ['plan_far_off']],
  ['of:10 lemons spirit:10 l 95%', ['plan_far_off']],
  ['of:10 lemons + 2 g ginger spirit:1 l 95%', []],
  ['of:10 lemons + 2 kg ginger spirit:1 l 95%', ['plan_far_off']],
])('%s', async (line, keys) => {
  expect(await keysOf(`/plan ${line}`)).toEqual(keys)
  expect(await keysOf(`/jar start q ${line}`)).toEqual(keys.filter((key) => key === 'plan_far_off'))
})

it('says how far off an amount is, and begins the jar all the same', async () => {
  const desk = jarDesk()
  const { notes, data } = await desk.ask('/jar start q of:200 lemons spirit:1 l 95%')
  expect(notes.find(({ key }) => key === 'plan_far_off')!.text.replaceAll('\u00a0', ' ')).toMatch(
    /^Peel of 200 lemons \(about 2\.1\d* kg\) is 1[78] times the usual 120 g\. Is the number right\?$/,
  )
  expect(data.stage).toBe('steeping')
  const less = await desk.ask('/jar start r of:1 g ginger spirit:1 l 95%')
  expect(less.notes.map(({ text }) => text).join()).toMatch(/is only 0\.\d.% of the usual/)
})

it.each([
  ['of:40 g basil spirit:1 l 40%', false],
  ['of:10 lemons spirit:1 l 30%', false],
  ['of:100 g sloes spirit:1 l 95%', true],
])('%s: diluting is advised where that helps', async (batch, canDilute) => {
  const { notes } = await jarDesk().ask(`/plan ${batch}`)
  const said = notes.find(({ key }) => key === 'plan_spirit_usual')?.text
  expect(said).toMatch(canDilute ? /To dilute it first: \/plan of:.* steep-at:\d+%$/ : /^Stronger spirit suits/)
})

it.each([
  ['of:10 lemons spirit:1 l 40% to-strength:35%', 'sweetness'],
  ['of:1 kg dates spirit:1 l 60%', 'dryness'],
  ['of:600 g raisins spirit:700 ml 40%', 'strength'],
])('says why %s is not what is usual: %s', async (wanted, nearest) => {
  const outcome = await run(`/plan ${wanted}`)
  const notes = outcome.ok && 'reply' in outcome ? outcome.reply.notes : []
  expect(notes.find(({ key }) => key === 'plan_assumed')).toMatchObject({ values: { nearest } })
})
