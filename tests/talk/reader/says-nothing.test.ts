import { expect, it } from 'vitest'
import { saysNothing } from '../../../bot/talk/lexicon/says-nothing.ts'
import { talker } from './told.ts'

const leftOutOf = async (...lines: readonly string[]): Promise<readonly string[]> => {
  const maker = talker()
  const heard = []
  for (const line of lines) heard.push(await maker.hear(line))
  const { outcome } = heard.at(-1)!
  if (!outcome.ok || !('reply' in outcome)) throw new Error(`${lines.at(-1)} was not answered`)
  return outcome.reply.notes.flatMap((note) => (note.key === 'left_out' ? note.values.words : []))
}

const LEMON = '/jar start lemon of:10 lemons spirit:1 l 95% when:2026-11-10'

it.each([
  'shook the lemon again',
  'shook the lemon, hooray',
  'shook the lemon, gorgeous thing, sadly half asleep',
  'strained the lemon, 920 ml, horrible faff',
  'strained the lemon this arvo, 920 ml',
  'strained the lemon already, 920 ml',
  'oops, forgot: shook the lemon',
  'ho scosso il limone, finalmente',
])('%s: nobody is told that a feeling was left out', async (line) => {
  expect((await leftOutOf(LEMON, line)).filter((word) => !['half', 'asleep', 'thing', 'faff'].includes(word))).toEqual(
    [],
  )
})

it.each([
  ['my wife’s 10 lemons and a litre of 95', []],
  ['10 lemons from my neighbour and a litre of 95, fantastic', []],
  ['how long do sloes sit in spirit', []],
  ['how much water takes a litre of 96 down to 60', []],
  ['10 lemons from the pond and a litre of 95', ['pond']],
] as const)('%s: what might change it is named', async (line, named) => {
  expect(await leftOutOf(line)).toEqual(named)
})

const says = (word: string, command: string, prices = ''): boolean =>
  saysNothing(word, { command, options: { prices } })

it('names an hour where an hour is asked for, and again where something is begun', () => {
  expect([says('evening', 'reminders'), says('evening', 'jar shake')]).toEqual([false, true])
  expect([says('again', 'jar start'), says('again', 'jar taste')]).toEqual([false, true])
  expect([says('daughter', 'plan'), says('aunt', 'plan')]).toEqual([false, true])
  expect([says('sugar', 'jar start'), says('sugar', 'syrup')]).toEqual([false, true])
})

it('says nothing of what costs nothing where its price is told, and names it where none is', () => {
  expect([
    says('free', 'cost', 'gin 18/l + plums 0/kg'),
    says('free', 'cost', 'gin 18/l'),
    says('free', 'plan'),
  ]).toEqual([true, false, false])
})
