import { expect, it } from 'vitest'
import { talker } from '../../talk/reader/told.ts'

const shelfOf = async (name: string) => {
  const one = talker()
  await one.say(`/jar start name:${name} of:9 lemons spirit:1 l 95% when:30 days ago`)
  return one
}

// As makers type them; no source.
const STEPS = [
  ['/jar strain', '880 ml'],
  ['/jar strain', 'measured:880 ml'],
  ['/jar taste', '4 a bit sharp'],
  ['/jar add', '2 lemons'],
  ['/jar later', 'in 4 days'],
  ['/jar split', '200 ml'],
] as const

const OTHERS = [
  'other',
  'the other one',
  'other lemon',
  'second',
  'old one',
  'our big jar',
  'l’altro',
  'quello vecchio',
]

it.each(['jar', 'lemon'])('does nothing to the only jar, %s, where a line tells another', async (name) => {
  const wrong: string[] = []
  for (const [step, rest] of STEPS) {
    for (const other of OTHERS) {
      const one = await shelfOf(name)
      const said = await one.hear(`${step} ${other} ${rest}`)
      const isRight = !said.outcome.ok && said.outcome.error.problem === 'no_such_jar'
      if (!isRight) wrong.push(`${step} ${other} ${rest} => ${said.read}`)
      else
        expect(said.outcome).toMatchObject({
          error: { values: { typed: expect.stringMatching(`^${other}`), all: [name] } },
        })
    }
  }
  expect(wrong).toEqual([])
})

it.each([
  ['jar', '/jar strain 880 ml', '/jar strain jar measured:880 ml'],
  ['jar', '/jar strain it 880 ml', '/jar strain jar measured:880 ml'],
  ['lemon', '/jar strain the jar 880 ml', '/jar strain lemon measured:880 ml'],
  ['lemon', '/jar add another 2 lemons', '/jar add lemon of:2 lemons'],
  ['second', '/jar strain second 880 ml', '/jar strain second measured:880 ml'],
  ['the old one', '/jar strain old one 880 ml', '/jar strain the old one measured:880 ml'],
])('still does to %s what is told of it: %s', async (name, line, read) => {
  const told = await (await shelfOf(name)).say(line)
  expect({ read: told.read, recorded: told.recorded }).toEqual({ read, recorded: 1 })
})
