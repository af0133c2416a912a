import { describe, expect, it } from 'vitest'
import { deskOf, walnutJar } from './desk.ts'
import { type Json, mine, refused, setting } from './refused.ts'

describe('/notebook import: refuses, with nothing changed,', () => {
  it.each<[string, (file: string) => string | Uint8Array, RegExp]>([
    ['what was cut off', (file) => file.slice(0, -20), /not a whole JSON file/],
    ['nothing', () => '', /not a whole JSON file/],
    ['bytes that are no text', () => Uint8Array.of(0x89, 0x50, 0x4e, 0x47, 0xff, 0xfe), /isn’t text/],
    ['deep nesting', () => `${'['.repeat(50_000)}${']'.repeat(50_000)}`, /nested deeper/],
    [
      'deep nesting in a part of it',
      (file) => file.replace('"typed":[]', `"typed":${'['.repeat(30)}${']'.repeat(30)}`),
      /nested deeper/,
    ],
    ['another JSON', () => '{"jars":[]}', /doesn’t start like one of mine/],
    ['null', () => 'null', /doesn’t start like one of mine/],
    ['NaN', (file) => file.replace('"value":1000', '"value":NaN'), /not a whole JSON file/],
    [
      'a newer version',
      (file) => file.replace('"version":5', '"version":6'),
      /newer Larderbell wrote this file \(version 6, I know up to 5\)/,
    ],
    [
      'a key of its own',
      (file) => file.replace('"version":5', '"version":5,"userId":"123456789012345678"'),
      /“userId”/,
    ],
    [
      '__proto__ outside',
      (file) => file.replace('"version":5', '"version":5,"__proto__":{"polluted":1}'),
      /“__proto__”/,
    ],
  ])('%s', async (_, change, message) => {
    const { file } = await setting()
    const changed = change(file)
    expect(changed).not.toBe(file)
    await refused(changed, message)
    expect(({} as Json).polluted).toBeUndefined()
  })
})

describe('/notebook import: leaves out a jar with', () => {
  it.each<[string, (file: string) => string, RegExp]>([
    ['a number beyond numbers', (file) => file.replace('"value":1000', '"value":1e999'), /“spirits\.0\.amount\.value”/],
    ['a huge number', (file) => file.replace('"value":1000', '"value":1e8'), /an amount, strength or temperature/],
    [
      'a key of its own in an entry',
      (file) => file.replace('"kind":"shaken"', '"kind":"shaken","owner":"x"'),
      /“lemon”.*in entry 2.*“owner”/,
    ],
    [
      '__proto__ in an entry',
      (file) => file.replace('"kind":"shaken"', '"kind":"shaken","__proto__":{"kind":"x"}'),
      /in entry 2.*“__proto__”/,
    ],
    ['__proto__ in a jar', (file) => file.replace('"id":"aaaa1"', '"id":"aaaa1","__proto__":[]'), /“__proto__”/],
    ['an id with a path in it', (file) => file.replace('"id":"aaaa1"', '"id":"../.."'), /“id”/],
  ])('%s', async (_, change, message) => {
    const { desk, file } = await setting()
    const changed = change(file)
    expect(changed).not.toBe(file)
    const { data, notes } = await desk.takeIn(changed)
    expect(desk.faults()).toEqual([])
    expect(data.left).toHaveLength(1)
    expect(notes.find(({ key }: { key: string }) => key === 'import_left').text).toMatch(message)
    expect(({} as Json).polluted).toBeUndefined()
  })
})

describe('/notebook import: counts', () => {
  const several = (count: number) =>
    Array.from({ length: count }, (_, index) => walnutJar(`w ${index}`, `w${String(index).padStart(4, '0')}`))

  it.each([
    [100, [mine], 99],
    [101, [], 100],
    [100, [], 100],
  ])('%i running jars beside others, and names those for which there is no room', async (count, jars, taken) => {
    const [file] = await (await deskOf({ jars: several(count) })).filesOf('/notebook export:json')
    const desk = await deskOf({ jars })
    const { data, notes } = await desk.takeIn(file!)
    expect(data.added).toHaveLength(taken)
    expect(data.left).toEqual(
      count === taken ? [] : [{ jar: count, name: `w ${count - 1}`, entry: null, why: 'running' }],
    )
    if (count > taken) {
      expect(notes.map(({ text }: { text: string }) => text)).toContain(
        `I left out one jar. Jar ${count} (“w ${count - 1}”): you already have as many running jars as I keep.`,
      )
    }
    expect((await desk.person()).jars).toHaveLength(100)
  })

  it('what is left out one by one up to eight', async () => {
    const { desk, sound } = await setting()
    const walnut = sound.jars[1]!
    sound.jars = Array.from({ length: 10 }, () => ({ ...walnut, entries: [{ ...walnut.entries[0], name: '' }] }))
    const { error } = await desk.takeIn(JSON.stringify(sound))
    expect(error.message.match(/Jar \d+: in entry 1, a jar can’t have that name/g)).toHaveLength(8)
    expect(error.message).toMatch(/And 2 more\. Nothing was changed\.$/)
  })
})

it('knows no jar of another person’s: the same file, two people, two notebooks', async () => {
  const { file } = await setting()
  const [one, other] = [await deskOf({}, { userId: '111111111111111111' }), await deskOf({ jars: [mine] })]
  await one.takeIn(file)
  expect((await one.person()).jars.map(({ id }) => id)).toEqual(['aaaa1', 'bbbb2'])
  expect((await other.person()).jars).toEqual([mine])
})
