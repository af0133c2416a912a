import { describe, expect, it } from 'vitest'
import { talker } from './told.ts'

// What grew, or smells of solvent, stays in the drink: the sources of core/trouble. What is done all the same: common sense, no source.
describe('a danger that was told of no jar', () => {
  it.each([
    ['there’s green fur on my damsons', 'I’ve bottled it already'],
    ['there’s green fur on my damsons', 'bottled it anyway'],
    ['it smells of nail varnish', 'well, I already strained it'],
    ['puzza di acetone', 'l’ho già imbottigliato'],
  ])('%s, then %s: is said once more', async (danger, line) => {
    const one = talker()
    const { data } = await one.say(danger)
    const told = await one.say(line)
    expect(told).toMatchObject({ command: 'trouble', recorded: 0 })
    expect(told.data.discard).toMatchObject({ verdict: (data.discard as { verdict: string }).verdict })
  })

  it('is not said of what is bottled where none was told', async () => {
    expect((await talker().say('I’ve bottled it already')).command).not.toBe('trouble')
  })
})

it.each(['how long does an opened bottle of cream liqueur keep', 'how long will my egg liqueur last'])(
  'with cream or egg in it keeps as those do: %s',
  async (text) => {
    expect((await talker().say(text)).data.entry).toBe('keep_cream')
  },
)

it('lets nothing off that stands of a jar where another sign is harmless', async () => {
  const one = talker()
  await one.say('/jar start pears of:500 g pears spirit:700 ml 40%')
  await one.say('the pears smell of nail varnish')
  await one.say('the lid bulges')
  const { outcome } = await one.hear('no')
  expect(JSON.stringify(outcome)).toContain('trouble_alone_harmless')
  expect(JSON.stringify(outcome)).not.toContain('trouble_settled')
})
