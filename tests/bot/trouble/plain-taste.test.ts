import { describe, expect, it } from 'vitest'
import { newAsker } from '../asker.ts'
import { flat } from '../flat.ts'
import { testDesk } from '../test-desk.ts'

const RASP = '/jar start rasp of:500 g raspberries spirit:700 ml 60%'

const told = async (start: string, symptom: string): Promise<string> => {
  const desk = testDesk({ nowMs: Date.UTC(2026, 7, 2, 12), asker: newAsker() })
  expect((await desk.run(start)).ok, start).toBe(true)
  return flat(await desk.firstOf(`/trouble ${symptom} jar:rasp`))
}

describe('a steeping jar that is called too sweet', () => {
  it('is kept: no syrup is in yet, and how much sugar its fruit brought is said', async () => {
    const text = await told(RASP, 'too sweet')
    expect(text).toContain('Keep it: it’s only a matter of taste.')
    expect(text).toMatch(/the fruit’s own sugar, as no syrup is in yet\. The plants brought about \d+ g\/L/)
    expect(text).toContain('“drier”')
  })

  it('or its sugar, where some went in with the fruit', async () => {
    const text = await told(`${RASP} sugar:200 g`, 'too sweet')
    expect(text).toContain('Most likely: the sugar that’s in the jar already.')
    expect(text).not.toContain('no syrup is in yet')
  })

  it('or a plant that has no sugar to speak of', async () => {
    const ginger = '/jar start rasp of:5 g liquorice spirit:700 ml 60%'
    expect(await told(ginger, 'too sweet')).toContain('a plant that tastes sweet, as no sugar is in yet')
  })
})

it.each(['too sweet', 'tastes of nothing'])(
  '%s is nothing to throw away for, whatever is in the jar',
  async (symptom) => {
    for (const start of [RASP, `${RASP} sugar:200 g`, '/jar start rasp of:5 g liquorice spirit:700 ml 60%'])
      expect(await told(start, symptom), start).not.toMatch(/throw/i)
  },
)

it('calls no syrup scorched where none is in', async () => {
  expect(await told(RASP, 'bitter')).not.toContain('scorched')
})
