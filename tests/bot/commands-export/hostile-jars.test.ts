import { describe, it } from 'vitest'
import { entry, type Json, leftOut, refused, type Sound, setting } from './refused.ts'

describe('/notebook import: leaves out, and takes in what is beside them, jars with', () => {
  it.each<[string, (sound: Sound) => void, RegExp]>([
    [
      '100,000 entries',
      ({ jars: [jar] }) => {
        jar!.entries = Array.from({ length: 100_000 }, () => ({}))
      },
      /“entries”/,
    ],
    [
      'no entries',
      ({ jars: [jar] }) => {
        jar!.entries = []
      },
      /“entries”/,
    ],
    [
      'entries out of number',
      (sound) => {
        entry(sound, 0, 2).seq = 7
      },
      /in entry 2, entries have to be numbered/,
    ],
    [
      'a start in the middle',
      (sound) => {
        sound.jars[0]!.entries[1] = { ...entry(sound, 0, 1), seq: 2 }
      },
      /in entry 2, it can’t come after/,
    ],
    [
      'no start',
      (sound) => {
        sound.jars[0]!.entries[0] = { ...entry(sound, 0, 2), seq: 1 }
      },
      /in entry 1, it can’t come after/,
    ],
    [
      'straining before the start',
      (sound) => {
        entry(sound, 0, 7).atMs = 1_600_000_000_000
        entry(sound, 0, 7).day = '2020-09-13'
      },
      /in entry 7, it can’t come after/,
    ],
    [
      'taking back what was taken back',
      (sound) => {
        entry(sound, 0, 6).of = 6
      },
      /in entry 6, it undoes or corrects/,
    ],
    [
      'taking back what is not the last',
      (sound) => {
        entry(sound, 0, 6).of = 2
      },
      /in entry 6, it undoes or corrects/,
    ],
    [
      'a correction of another kind',
      (sound) => {
        entry(sound, 0, 4).of = 2
      },
      /in entry 4, it undoes or corrects/,
    ],
    [
      'a day that is not its instant’s',
      (sound) => {
        entry(sound, 0, 2).day = '2026-01-01'
      },
      /in entry 2, its days/,
    ],
    [
      'a name that is none',
      (sound) => {
        entry(sound, 0, 1).name = '#x'
      },
      /in entry 1, a jar can’t have that name/,
    ],
    [
      'a name that moves the cursor',
      (sound) => {
        entry(sound, 0, 1).name = 'a\u001b[2J'
      },
      /in entry 1, a jar can’t have that name/,
    ],
    [
      'a plant of no catalogue',
      (sound) => {
        ;(entry(sound, 0, 1).plants as Json[])[0]!.id = 'constructor'
      },
      /in entry 1, I don’t know one of its plants/,
    ],
    [
      'a start in spirit of 0 %',
      (sound) => {
        ;(entry(sound, 0, 1).spirits as Json[])[0]!.abvPercent = { value: 0, plusMinus: 0.3 }
      },
      /in entry 1, an amount, strength or temperature/,
    ],
    [
      'an instant beyond the calendar',
      (sound) => {
        entry(sound, 0, 2).enteredMs = 8.64e15
      },
      /in entry 2, its days/,
    ],
    [
      'a note of a book',
      (sound) => {
        entry(sound, 0, 3).note = 'x'.repeat(1001)
      },
      /in entry 3, a text, a list/,
    ],
    [
      'a zone that is none',
      (sound) => {
        entry(sound, 0, 2).zone = 'Mars/X'
      },
      /in entry 2, its part “zone”/,
    ],
    [
      'more out than went in',
      (sound) => {
        entry(sound, 0, 7).measured = { amount: { value: 9000, plusMinus: 10 }, by: 'volume', atC: 20 }
      },
      /in entry 7, it can’t come after/,
    ],
  ])('%s', async (_, change, message) => {
    const { sound } = await setting()
    change(sound)
    await leftOut(JSON.stringify(sound), message)
  })
})

describe('/notebook import: refuses, with nothing changed, a file with', () => {
  it.each<[string, (sound: Sound) => void, RegExp]>([
    [
      '100,000 jars',
      (sound) => {
        sound.jars = Array.from({ length: 100_000 }, () => ({ entries: [] }))
      },
      /100000 jars, and I keep up to 1000/,
    ],
    [
      'settings that are none',
      (sound) => {
        ;(sound.settings as Json).atMinutes = 5000
      },
      /“settings.atMinutes”/,
    ],
    [
      'what is on its way to somebody',
      (sound) => {
        sound.nudges = []
      },
      /“nudges”/,
    ],
  ])('%s', async (_, change, message) => {
    const { sound } = await setting()
    change(sound)
    await refused(JSON.stringify(sound), message)
  })
})
