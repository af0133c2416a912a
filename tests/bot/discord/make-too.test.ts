import { describe, expect, it } from 'vitest'
import { shareRef } from '../../../bot/calls/share-ref.ts'
import { en } from '../../../bot/text/en/index.ts'
import { decodeBatch } from '../../../core/recipe/code/batch-code.ts'
import { newAsker } from '../asker.ts'
import { testDesk } from '../test-desk.ts'
import type { FakeUser } from './fake/world.ts'
import { acts, friend, LEMON, MAKE, NAME, onSharingStage } from './sharing.ts'
import { bot, fake, restart } from './stage.ts'

onSharingStage()

const START = en.sentences.actions.start_jar()
const { notes } = en.sentences
const format = en.format('metric')

describe('make this too', () => {
  it('asks a friend what there is, and plans in private by it', async () => {
    const shown = await acts.share()
    const asked = await acts.pressMake(shown)
    expect(asked.modal).toMatchObject({ title: MAKE })
    const planned = await fake.submit(asked, { spirit: '700 ml', strength: '40%', bottles: '2' }, { user: friend })
    expect(planned).toMatchObject({ isPrivate: true })
    expect(planned.text).toMatch(/Buy .*700\sml of 40\s% spirit/)
    const whole = await acts.wholeOf(planned)
    expect(whole).toContain(notes.code_weaker({ abvPercent: 40, recipeAbvPercent: 95 }, format))
    for (const secret of [NAME, 'secret', 'private', fake.user.id, 'wren']) expect(whole).not.toContain(secret)
    expect(JSON.stringify(asked.modal)).not.toContain(NAME)
  })

  it('says with 70 % spirit and half of the fruit what that makes', async () => {
    const shown = await acts.share()
    const planned = await acts.make(shown, { spirit: '2 l', strength: '70%', of: '5 lemons' })
    expect(planned.text).toMatch(/Buy 5\s.*lemons/)
    expect(await acts.wholeOf(planned)).toContain(
      notes.code_from({ factor: 0.5, by: 'plant', id: 'lemon_peel', isSpiritLeft: true }, format),
    )
  })

  it('says kindly why it cannot be the same', async () => {
    await fake.slash('jar start', { ...LEMON, 'to-strength': '38%', name: NAME })
    const shown = await fake.slash('share', { jar: NAME })
    const refused = await acts.make(shown, { spirit: '1 l', strength: '40%' })
    expect(refused.isPrivate).toBe(true)
    expect(refused.text).toMatch(/^40.*spirit is too weak for/)
    const strength = /to-strength:([\d.]+%)/.exec(refused.text)![1]!
    const weaker = await acts.make(shown, { spirit: '1 l', strength: '40%', 'to-strength': strength })
    expect(weaker.text).toMatch(/^\*\*Buy/)
    expect((await acts.make(shown, { spirit: 'a lot' })).text).toContain('a lot')
    expect((await acts.make(shown, { spirit: '1 l' })).text).toContain('strength')
    expect((await acts.make(shown, {})).text).toMatch(/^\*\*Buy 10\s.*1\sl of 95/)
  })

  it('starts the friend’s jar, and counts what others begin, of every share, and never the owner’s', async () => {
    const shown = await acts.share()
    const start = async (user: FakeUser, from = shown) => {
      const planned = await acts.make(from, { spirit: '700 ml', strength: '95%' }, user)
      const started = await fake.press(planned.message, START, { user })
      expect(started.text).toContain('Started.')
      const jar = (await bot.store.read(user.id)).jars.at(-1)!
      await fake.slash('jar discard', { jar: `#${jar.id}` }, { user })
      return jar
    }
    const { code, id } = await acts.shareOf()
    const jar = await start(friend)
    expect(Object.fromEntries(jar.entries[0]!.typed).from).toBe(`${code}@${id}`)
    const stored = JSON.stringify(await bot.store.read(friend.id))
    for (const mine of [fake.user.id, `${BigInt(fake.user.id).toString(36)}.`, NAME]) {
      expect(JSON.stringify(jar)).not.toContain(mine)
    }
    expect(stored).not.toContain(NAME)
    expect((await acts.shareOf()).made).toBe(1)
    await start(fake.user)
    expect((await acts.shareOf()).made).toBe(1)
    await start(friend)
    expect((await acts.shareOf()).made).toBe(2)
    expect(JSON.stringify((await acts.owner()).shares)).not.toContain(friend.id)
    const again = await fake.slash('share', { jar: NAME })
    expect(again.text).toContain('others have started 2 jars of this batch so far')
    await start(fake.newUser('rue'), again)
    expect(await Promise.all([0, 1].map(async (at) => (await acts.shareOf(at)).made))).toEqual([2, 1])
    for (const each of [shown, again]) {
      const { text } = await acts.make(each, { spirit: '1 l 95%' })
      expect(text).toContain('You’ve started 2 jars of this batch so far')
      expect(text).toContain('People besides its maker and you have started one jar of this batch so far')
    }
    expect((await fake.slash('share')).text).toContain(`Others have started 3 jars of ${NAME}.`)
    expect((await fake.slash('share', { jar: NAME })).text).toContain('others have started 3 jars of this batch so far')
  })

  it('counts from the jars: as many as came of it', async () => {
    const shown = await acts.share()
    const people = ['rue', 'tansy', 'borage'].map((name) => fake.newUser(name))
    await Promise.all(
      people.map(async (user) => {
        const planned = await acts.make(shown, { spirit: '1 l', strength: '95%' }, user)
        await fake.press(planned.message, START, { user })
      }),
    )
    const { id, made } = await acts.shareOf()
    const files = await Promise.all(people.map((user) => bot.store.read(user.id)))
    const rebuilt = files.filter(({ jars }) =>
      jars.some(({ entries }) => entries[0]!.typed.some(([name, text]) => name === 'from' && text.endsWith(`@${id}`))),
    )
    expect(rebuilt).toHaveLength(3)
    expect(made).toBe(3)
  })

  it('works after a restart, for several at once, and for its owner too', async () => {
    const shown = await acts.share()
    await restart()
    const rue = fake.newUser('rue')
    const asked = await Promise.all([friend, rue, fake.user].map((user) => acts.pressMake(shown, user)))
    for (const answer of asked) expect(answer.modal).toBeDefined()
    const planned = await fake.submit(asked[1]!, { spirit: '1 l 95%' }, { user: rue })
    expect(await acts.wholeOf(planned, rue)).toContain('on the plants, as that batch was planned')
    // A form is its asker's own.
    expect((await fake.submit(asked[0]!, {}, { user: rue })).text).toBe(en.calls.notYours())
  })

  it('goes by the code to a terminal elsewhere', async () => {
    await acts.share()
    const { code } = await acts.shareOf()
    const desk = testDesk({ asker: newAsker(), nowMs: Date.UTC(2026, 10, 25), width: 200 })
    const { data, error } = await desk.jsonOf(`/plan from:${code.toLowerCase()} spirit:700 ml 40%`)
    expect(error).toBeUndefined()
    expect(data.abvPercent).toBeCloseTo(30, 6)
    const marked = `${code}@${shareRef({ owner: fake.user.id, shareId: (await acts.shareOf()).id })}`
    expect((await desk.jsonOf(`/jar start lemon from:${marked} spirit:700 ml 40%`)).error).toBeUndefined()
    expect(JSON.stringify((await desk.asker.store.read('local')).jars)).not.toContain(BigInt(fake.user.id).toString(36))
    expect(JSON.stringify(decodeBatch(code))).not.toMatch(/secret|private/)
  })
})
