import { readFileSync } from 'node:fs'
import { expect, it } from 'vitest'
import { judgeJar } from '../../../core/jar/limits/judge-jar.ts'
import { jarStateOf } from '../../../core/jar/state/jar-state.ts'
import { standingTroubles } from '../../../core/jar/state/standing-troubles.ts'
import type { Person } from '../../../store/person.ts'
import { readStored } from '../../../store/schema/read-stored.ts'
import { inFolder } from '../../store/in-folder.ts'
import { storeIn } from '../../store/some-store.ts'
import { newAsker } from '../asker.ts'
import { linesOf } from '../call-typed.ts'
import { deskOf } from '../commands-export/desk.ts'
import { jarDesk, LEMON } from '../commands-jar/desk.ts'
import { lemon, nudgedReply, walnut } from '../reminders/nudged.ts'
import { at, happened, personWith, ZONE } from '../reminders/people.ts'

const MOULDY = '/trouble mould jar:lemon yes:growth'
const TOLD = /^Throw lemon away: something grows in it/

const mouldy = async () => {
  const desk = jarDesk('2026-11-01')
  await desk.ask(LEMON)
  await desk.ask(MOULDY)
  return desk
}

it('stands after a restart, from the disk', () =>
  inFolder(async (folder) => {
    const first = storeIn(folder)
    const before = jarDesk('2026-11-01', { ...newAsker(), store: first })
    await before.ask(LEMON)
    await before.ask(MOULDY)
    await first.close()
    const second = storeIn(folder)
    const after = jarDesk('2026-11-02', { ...newAsker(), store: second })
    expect(await after.textOf('/jar show lemon')).toMatch(TOLD)
    expect((await after.refused('/share lemon')).message).toMatch(TOLD)
    await after.ask('/jar undo lemon')
    expect(await after.textOf('/jar show lemon')).not.toMatch(TOLD)
    await second.close()
  }))

it('goes along with a notebook that is taken in elsewhere, and is gone when all is forgotten', async () => {
  const desk = await mouldy()
  const own = await deskOf(await desk.person())
  const [file] = await own.filesOf('/notebook export:json')
  const other = await deskOf({})
  await other.takeIn(file!)
  expect(await other.textOf('/jar show lemon')).toMatch(TOLD)
  expect((await own.filesOf('/notebook export:csv'))[0]).toContain('to_throw_away')
  await other.textOf('/forget confirm:yes')
  expect((await other.person()).jars).toEqual([])
})

it('is read from a stored file, and holds its jar', () => {
  const stored = readStored(readFileSync(new URL('../../store/version-8.json', import.meta.url), 'utf8'))
  const jar = stored.kind === 'person' ? stored.person.jars.find(({ id }) => id === 'slo01') : undefined
  const story = jarStateOf(jar!.entries)!
  expect(standingTroubles(story)).toEqual([expect.objectContaining({ symptom: 'fermenting', verdict: 'hold' })])
  expect(judgeJar(story).map(({ kind }) => kind)).toContain('not_yet')
})

/** As `/trouble` keeps it. */
const told = (person: Person, verdict: 'throw_away' | 'hold' | 'ask'): Person =>
  happened(person, 'lemon', at('2026-12-02', '10:00'), {
    kind: 'noted',
    note: 'mould',
    where: null,
    vessel: null,
    trouble: { symptom: 'mould', verdict, because: 'growth', question: 'growth', yes: [], no: [] },
  })

it('has no reminder ask for anything of it but to throw it away', () => {
  const reply = nudgedReply(told(personWith([lemon, walnut]), 'throw_away'), {
    nowMs: at('2026-12-03'),
    assumedZone: ZONE,
  })
  expect(reply.headline).toMatchObject({ values: { held: ['lemon'] } })
  expect(JSON.stringify(reply.headline)).not.toContain('"name":"lemon"')
  expect(reply.cautions[0]!.key).toBe('jar_to_throw_away')
  expect(linesOf(reply.actions)).toEqual(
    expect.arrayContaining(['/jar discard lemon', '/jar note lemon was:only pith']),
  )
})

it('has a reminder say that a question is open, and ask as ever', () => {
  const reply = nudgedReply(told(personWith([lemon]), 'ask'), { nowMs: at('2026-12-03'), assumedZone: ZONE })
  expect(reply.headline).toMatchObject({ values: { held: [], asked: [{ duty: 'shake' }] } })
  expect(reply.cautions.map(({ key }) => key)).toEqual(['jar_in_question'])
})

it('still stands where what it is called is no longer known', async () => {
  const desk = await mouldy()
  await desk.asker.store.update(desk.asker.userId, (person) => ({
    ...person,
    jars: JSON.parse(JSON.stringify(person.jars).replaceAll('"mould"', '"gone_by_then"').replaceAll('"growth"', '"x"')),
  }))
  const text = await desk.textOf('/jar show lemon')
  expect(text).toMatch(/^Throw lemon away: you told me of “something wrong”\./)
  expect(text).not.toContain('undefined')
  await desk.ask('/jar note lemon was:nothing')
  expect(await desk.textOf('/jar show lemon')).not.toMatch(/^Throw lemon away/)
})
