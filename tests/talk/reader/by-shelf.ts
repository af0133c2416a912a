import { describe, expect, it } from 'vitest'
import type { Shelf } from '../shelves.ts'
import { talkerFor } from './told.ts'

/** Sentences by the jars they are said before, and the line that each is read as. */
export type ByShelf = Readonly<Partial<Record<Shelf, readonly (readonly [text: string, read: string])[]>>>

/** Each of them is recorded by its line. */
export function eachIsRecorded(told: ByShelf): void {
  describe.each(Object.entries(told))('with the jars of %s', (shelf, sentences) => {
    it.each(sentences)('%s', async (text, read) => {
      const one = await talkerFor({ after: null, shelf: shelf as Shelf })
      const answer = await one.say(text)
      expect(answer).toMatchObject({ read, code: null, erased: false })
      expect(answer.recorded).toBeGreaterThan(0)
    })
  })
}

/** Each of them is answered by its line, and nothing is recorded; of a trouble what its maker is told to do may be kept. */
export function eachIsShown(asked: ByShelf): void {
  describe.each(Object.entries(asked))('with the jars of %s', (shelf, sentences) => {
    it.each(sentences)('%s is shown', async (text, read) => {
      const one = await talkerFor({ after: null, shelf: shelf as Shelf })
      const told = await one.say(text)
      expect(told).toMatchObject({ read, code: null })
      if (told.command !== 'trouble') expect(told.recorded).toBe(0)
    })
  })
}
