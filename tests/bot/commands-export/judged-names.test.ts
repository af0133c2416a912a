import { expect, it } from 'vitest'
import { plant } from '../../core/jar/jars.ts'
import { walnutJar } from './desk.ts'
import { entry, type Sound, takenAfter } from './refused.ts'

/** What somebody has who takes in an export that was edited by hand: one jar that steeps. */
const taken = (edit: (sound: Sound) => void) => takenAfter([walnutJar('olea', 'aaaa1')], edit)

/** A plant of the catalogue by another name. */
const renamed = (sound: Sound): void => {
  entry(sound, 0, 1).plants = [plant('lemon_peel', { value: 50, plusMinus: 1 }, { name: 'oleander' })]
}

it('an imported jar with a plant of the catalogue under the name of a poison is said to be so', async () => {
  const { desk, reply } = await taken(renamed)
  expect(reply.cautions[0].key).toBe('jar_refused')
  for (const line of ['/jar show olea', '/jar label olea', '/jar tag olea']) {
    expect((await desk.jsonOf(line)).cautions[0]).toMatchObject({
      key: 'jar_refused',
      text: expect.stringContaining('oleander'),
    })
  }
  for (const line of ['/again olea', '/share olea']) expect((await desk.jsonOf(line)).error.code).toBe('refused')
})

it.each(['1 l vodka with oleander 40%', '1 l foxglove gin 40%'])(
  'an imported jar with %s is said to be so',
  async (spirit) => {
    const { reply } = await taken((sound) => {
      entry(sound, 0, 1).typed = [['spirit', spirit]]
    })
    expect(reply.cautions[0]).toMatchObject({ key: 'jar_refused', text: expect.stringContaining(spirit) })
  },
)

it.each(['1 l sloe gin 26%', '1 l wormwood vodka 40%', '1 l grappa 40%'])(
  'an imported jar with %s is not',
  async (spirit) => {
    const { reply } = await taken((sound) => {
      entry(sound, 0, 1).typed = [['spirit', spirit]]
    })
    expect(reply.cautions.map(({ key }: { key: string }) => key)).not.toContain('jar_refused')
  },
)
