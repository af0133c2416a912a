import { expect } from 'vitest'
import type { Jar } from '../../../store/person.ts'
import { deskOf, lemonJar, walnutJar } from './desk.ts'

export type Json = Record<string, unknown>

/** What the person has who is given a file. */
export const mine = walnutJar('mine', 'mmmm1')

/** A desk with a jar, and a sound export of two others. */
export const setting = async () => {
  const from = await deskOf({ jars: [lemonJar(), walnutJar()] })
  const [file] = await from.filesOf('/notebook export:json')
  const desk = await deskOf({ jars: [mine] })
  return { desk, file: file!, sound: JSON.parse(file!) as { jars: { entries: Json[] }[] } & Json }
}

/** What somebody has who takes in an export of these jars that was edited by hand. */
export const takenAfter = async (jars: readonly Jar[], edit: (sound: Sound) => void) => {
  const from = await deskOf({ jars })
  const [file] = await from.filesOf('/notebook export:json')
  const sound = JSON.parse(file!) as Sound
  edit(sound)
  const desk = await deskOf({})
  const reply = await desk.takeIn(JSON.stringify(sound))
  expect(reply.error).toBeUndefined()
  return { desk, reply }
}

export type Sound = Awaited<ReturnType<typeof setting>>['sound']

/** Fails unless the file is refused in such a sentence, and nothing changed. */
export const refused = async (file: string | Uint8Array, message: string | RegExp) => {
  const { desk } = await setting()
  const before = await desk.person()
  const { error, data } = await desk.takeIn(file)
  expect(data).toBeUndefined()
  expect(error.message).toMatch(message)
  expect(error.message).toMatch(/othing was changed/)
  expect(error.code).not.toBe('internal')
  expect(desk.faults()).toEqual([])
  expect(await desk.person()).toBe(before)
}

export const entry = (sound: Sound, jar: number, seq: number): Json => sound.jars[jar]!.entries[seq - 1]!

/**
 * Fails unless one of the two jars of the file is left out in such a sentence, the other is taken in, and the one alone is
 * refused with nothing changed.
 */
export const leftOut = async (file: string, message: RegExp) => {
  const { desk } = await setting()
  const before = await desk.person()
  const { error, data, notes } = await desk.takeIn(file)
  expect(error).toBeUndefined()
  expect(desk.faults()).toEqual([])
  expect(notes.find(({ key }: { key: string }) => key === 'import_left').text).toMatch(message)
  expect(data.left).toHaveLength(1)
  expect(data.added).toHaveLength(1)
  const { jars } = await desk.person()
  expect(jars).toHaveLength(2)
  expect(jars[0]).toEqual(before.jars[0])
  const whole = JSON.parse(file)
  await refused(JSON.stringify({ ...whole, jars: [whole.jars[data.left[0].jar - 1]] }), /^I can’t import any jar/)
}
