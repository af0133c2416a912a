import { describe, expect, it } from 'vitest'
import { viewOf } from '../../../bot/commands/jar/known/view-of.ts'
import { bottleLabel } from '../../../bot/picture/label/bottle-label.ts'
import { bottleLabelData } from '../../../bot/picture/label/bottle-label-data.ts'
import { jarTag } from '../../../bot/picture/tag/jar-tag.ts'
import { jarTagData } from '../../../bot/picture/tag/jar-tag-data.ts'
import { NOBODY } from '../../../store/person.ts'
import { plant } from '../../core/jar/jars.ts'
import { linesOf } from '../call-typed.ts'
import { pen } from '../picture/pixels.ts'
import { type deskOf, lemonJar, NOW_MS, walnutJar } from './desk.ts'
import { entry, type Json, type Sound, takenAfter } from './refused.ts'

/** What somebody has who takes in an export that was edited by hand: one jar that steeps, one that is sweetened. */
const taken = (edit: (sound: Sound) => void) => takenAfter([walnutJar('olea', 'aaaa1'), lemonJar('nut', 'bbbb2')], edit)

const oleander = (sound: Sound): void => {
  const started = entry(sound, 0, 1)
  started.plants = [plant(null, { value: 50, plusMinus: 1 }, { name: 'oleander leaves' })]
  started.typed = [['of', '50 g oleander leaves']]
}
const methylated = (sound: Sound): void => {
  entry(sound, 0, 1).typed = [['spirit', '1 l methylated 95%']]
}
const plants =
  (id: string, massG: number) =>
  (sound: Sound): void => {
    for (const at of [0, 1]) {
      ;(entry(sound, at, 1).plants as Json[])[0] = {
        id,
        name: id,
        massG: { value: massG, plusMinus: 1 },
        count: null,
        isDried: false,
        isUsual: false,
        words: null,
        addOn: null,
      }
    }
  }

type Desk = Awaited<ReturnType<typeof deskOf>>
const first = async (desk: Desk, line: string): Promise<{ key: string; text: string }> => {
  const { cautions, error } = await desk.jsonOf(line)
  expect([line, error]).toEqual([line, undefined])
  return cautions[0]
}

const VIEWS = [
  '/jar show olea',
  '/jar list',
  '/notebook',
  '/jar tag olea',
  '/jar label olea',
  '/calendar',
  '/notebook compare:olea + nut',
]
const STEPS = [
  '/jar shake olea',
  '/jar taste olea rating:2',
  '/jar later olea until:tomorrow',
  '/jar strain olea measured:900 ml',
  '/jar undo olea',
]

const viewIn = async (desk: Desk, name: string) => {
  const { jars } = await desk.person()
  const now = { nowMs: NOW_MS, settings: NOBODY.settings, zone: 'UTC', assumedZone: 'UTC' }
  return jars.map((jar) => viewOf(jar, now)!).find(({ story }) => story.name === name)!
}

describe.each([
  ['a plant that is poison', oleander, 'oleander leaves'],
  ['spirit that is not for drinking', methylated, '1 l methylated 95%'],
])('an imported jar with %s', (_, edit, typed) => {
  it('is said to be so in every view and after every step, first of all', async () => {
    const { desk, reply } = await taken(edit)
    expect(reply.cautions[0].key).toBe('jar_refused')
    for (const line of [...VIEWS, ...STEPS]) {
      const { key, text } = await first(desk, line)
      expect([line, key]).toEqual([line, 'jar_refused'])
      expect(text).toContain(typed)
      expect(text).toMatch(/Don’t drink it or give it away\..*poison centre.*Throw it away\./)
    }
    const { data } = await desk.jsonOf('/jar list')
    expect(data.jars[0]).toMatchObject({
      name: 'olea',
      dangers: [`refused_${edit === oleander ? 'plant' : 'spirit'}`],
      next: null,
    })
    expect(await desk.textOf('/jar list picture:no')).toMatch(/^Look after olea first\./)
  })

  it('is neither finished, shared nor made again, and is thrown away by the line that is offered', async () => {
    const { desk } = await taken(edit)
    await desk.jsonOf('/jar strain olea measured:900 ml')
    for (const line of ['/syrup jar:olea', '/share olea', '/again olea']) {
      const { error } = await desk.jsonOf(line)
      expect([line, error.code]).toEqual([line, 'refused'])
      expect(error.message).toMatch(/for drinking|do not plan/)
    }
    const shown = await desk.run('/jar show olea')
    const lines = shown.ok ? linesOf(shown.reply.actions) : []
    expect(lines).toEqual(['/jar discard olea'])
    await desk.jsonOf(lines[0]!)
    const { cautions } = await desk.jsonOf('/jar list')
    expect(cautions).toEqual([])
  })

  it('says so on its tag and its label', async () => {
    const { desk } = await taken(edit)
    const view = await viewIn(desk, 'olea')
    const drawn = [jarTag(jarTagData(view), await pen()), bottleLabel(bottleLabelData(view, 500), await pen())]
    for (const { alt, svg } of drawn) {
      expect(alt).toContain('DO NOT DRINK OR GIVE AWAY')
      expect(svg).toContain('DO NOT DRINK OR GIVE AWAY')
      expect(alt).not.toMatch(/Best before|Strain /)
    }
  })
})

describe('an imported jar that holds more than is safe today', () => {
  it.each([
    ['nutmeg', 300],
    ['wormwood', 200],
    ['nutmeg', 3],
  ])('of %s, %f g', async (id, massG) => {
    const { desk } = await taken(plants(id, massG))
    for (const line of VIEWS.filter((each) => each !== '/calendar')) {
      const { key, text } = await first(desk, line)
      expect([line, key]).toEqual([line, 'jar_over_ceiling'])
      expect(text).toContain('is the most')
      expect(text).toContain('Don’t drink it or give it away as it is.')
    }
    const { error } = await desk.jsonOf('/share nut')
    expect(error.code).toMatch(/refused|over_ceiling/)
  })

  it('is brought within by the spirit that is offered', async () => {
    const { desk } = await taken(plants('nutmeg', 3))
    const shown = await desk.run('/jar show olea')
    const [fix] = shown.ok ? linesOf(shown.reply.actions) : []
    expect(fix).toMatch(/^\/jar add olea spirit:[\d.]+ m?l 95%$/)
    const { cautions, data } = await desk.jsonOf(fix!)
    expect(data.dangers).toEqual([])
    expect(cautions.map(({ key }: { key: string }) => key)).not.toContain('jar_over_ceiling')
  })

  it('is only to be thrown away where no spirit helps', async () => {
    const { desk } = await taken(plants('nutmeg', 300))
    const shown = await desk.run('/jar show olea')
    expect(shown.ok && linesOf(shown.reply.actions)).toEqual(['/jar discard olea'])
  })
})

describe('an imported jar with nothing wrong', () => {
  it('has no danger', async () => {
    const { desk } = await taken(() => undefined)
    const { data } = await desk.jsonOf('/jar list')
    expect(data.jars.map(({ dangers }: { dangers: unknown }) => dangers)).toEqual([[], []])
  })

  it('that was planned to become what ferments is warned of when it is strained', async () => {
    const { desk } = await taken((sound) => {
      entry(sound, 0, 1).targets = { abvPercent: 8, sugarGPerL: 100 }
    })
    const { notes, data } = await desk.jsonOf('/jar strain olea measured:900 ml')
    expect(data.syrup).toBeNull()
    expect(notes.map(({ key }: { key: string }) => key)).toContain('jar_targets_ferment')
    const { alt } = bottleLabel(bottleLabelData(await viewIn(desk, 'olea'), 500), await pen())
    expect(alt).toContain('FRIDGE, LID LOOSE')
  })
})
