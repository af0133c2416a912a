import { nudgeAt, userId } from './some-people.ts'
import { storeIn } from './some-store.ts'

/**
 * Counts for three people up, from where their files stand, and prints `INDEX NUMBER` once each number is acknowledged;
 * never ends by itself.
 */
const store = storeIn(process.argv[2]!)

const count = async (index: number): Promise<void> => {
  for (;;) {
    const { nudges } = await store.update(userId(index), (person) => {
      const number = (person.nudges[0]?.nextMs ?? 0) + 1
      // A file of several blocks, so that it could be torn.
      return { ...person, nudges: Array.from({ length: 100 }, (_, place) => nudgeAt(number, `n${place}`)) }
    })
    console.log(`${index} ${nudges[0]!.nextMs}`)
  }
}

await Promise.all([0, 1, 2].map(count))
