import { describe, expect, it } from 'vitest'
import { deskOf, walnutJar } from './desk.ts'
import { entry, type Json, mine, refused, setting } from './refused.ts'

describe('/notebook import: refuses, with nothing changed,', () => {
  it.each<[string, (file: string) => string | Uint8Array, RegExp]>([
    ['what was cut off', (file) => file.slice(0, -20), /no whole JSON file/],
    ['nothing', () => '', /no whole JSON file/],
    ['bytes that are no text', () => Uint8Array.of(0x89, 0x50, 0x4e, 0x47, 0xff, 0xfe), /no text/],
    ['deep nesting', () => `${'['.repeat(50_000)}${']'.repeat(50_000)}`, /nested more deeply/],
    [
      'deep nesting in a part of it',
      (file) => file.replace('"typed":[]', `"typed":${'['.repeat(30)}${']'.repeat(30)}`),
      /nested more deeply/,
    ],
    ['another JSON', () => '{"jars":[]}', /does not begin like one/],
    ['null', () => 'null', /does not begin like one/],
    ['NaN', (file) => file.replace('"value":1000', '"value":NaN'), /no whole JSON file/],
    ['a number beyond numbers', (file) => file.replace('"value":1000', '"value":1e999'), /“spirits\.0\.amount\.value”/],
    ['a huge number', (file) => file.replace('"value":1000', '"value":1e8'), /an amount, a strength/],
    [
      'a newer version',
      (file) => file.replace('"version":1', '"version":2'),
      /newer Larderbell \(version 2, I know up to 1\)/,
    ],
    [
      'a key of its own',
      (file) => file.replace('"version":1', '"version":1,"userId":"123456789012345678"'),
      /“userId”/,
    ],
    [
      'a key of its own in an entry',
      (file) => file.replace('"kind":"shaken"', '"kind":"shaken","owner":"x"'),
      /“lemon”.*of entry 2.*“owner”/,
    ],
    [
      '__proto__ outside',
      (file) => file.replace('"version":1', '"version":1,"__proto__":{"polluted":1}'),
      /“__proto__”/,
    ],
    [
      '__proto__ in an entry',
      (file) => file.replace('"kind":"shaken"', '"kind":"shaken","__proto__":{"kind":"x"}'),
      /of entry 2.*“__proto__”/,
    ],
    ['__proto__ in a jar', (file) => file.replace('"id":"aaaa1"', '"id":"aaaa1","__proto__":[]'), /“__proto__”/],
    ['an id with a path in it', (file) => file.replace('"id":"aaaa1"', '"id":"../.."'), /“id”/],
  ])('%s', async (_, change, message) => {
    const { file } = await setting()
    const changed = change(file)
    expect(changed).not.toBe(file)
    await refused(changed, message)
    expect(({} as Json).polluted).toBeUndefined()
  })
})

describe('/notebook import: refuses as well', () => {
  it('more running jars than are kept', async () => {
    const jars = Array.from({ length: 100 }, (_, index) =>
      walnutJar(`w ${index}`, `w${String(index).padStart(4, '0')}`),
    )
    const [file] = await (await deskOf({ jars })).filesOf('/notebook export:json')
    const desk = await deskOf({ jars: [mine] })
    expect((await desk.takeIn(file!)).error.code).toBe('limit')
    expect((await desk.person()).jars).toEqual([mine])
  })

  it('a sound jar beside one that is not: all or nothing', async () => {
    const { sound } = await setting()
    entry(sound, 1, 1).name = ''
    await refused(JSON.stringify(sound), /Jar 2 of this file/)
  })
})

it('knows no jar of another person’s: the same file, two people, two notebooks', async () => {
  const { file } = await setting()
  const [one, other] = [await deskOf({}, { userId: '111111111111111111' }), await deskOf({ jars: [mine] })]
  await one.takeIn(file)
  expect((await one.person()).jars.map(({ id }) => id)).toEqual(['aaaa1', 'bbbb2'])
  expect((await other.person()).jars).toEqual([mine])
})
