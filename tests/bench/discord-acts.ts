import { en } from '../../bot/text/en/index.ts'
import type { Answer } from '../bot/discord/fake/answer.ts'
import type { FakeDiscord } from '../bot/discord/fake/fake-discord.ts'
import type { FakeUser } from '../bot/discord/fake/world.ts'
import { userId } from '../store/some-people.ts'

const APOLOGIES = [en.problems.internal(), en.calls.tooFast({ seconds: 1 }).slice(0, 20)]

const people = new Map<number, FakeUser>()
const personOf = (index: number): FakeUser => {
  const known = people.get(index)
  if (known !== undefined) return known
  const made = { id: userId(index), name: 'wren', locale: 'en-GB', isBot: false, hasClosedDms: false }
  people.set(index, made)
  return made
}

/** What people do, in turn: two of five read their jars, one writes, one only computes, one is typing. */
export const act = (fake: FakeDiscord, turn: number, person: number): Promise<Answer> => {
  const by = { user: personOf(person), quietMs: 0, patienceMs: 60_000 }
  const jar = `Shelf ${person % 500} jar ${turn % 4}`
  switch (turn % 5) {
    case 0:
      return fake.slash('jar list', {}, by)
    case 1:
      return fake.slash('jar show', { jar }, by)
    case 2:
      return fake.slash('jar taste', { jar, rating: '4', note: 'bright' }, by)
    case 3:
      return fake.slash('syrup', { infusion: '920 ml', strength: '90%', 'to-strength': '30%', ratio: '1:1' }, by)
    default:
      return fake.autocomplete('jar shake', { jar: 'shelf' }, 'jar', by)
  }
}

/** Throws where the answer is an apology: that would be no measurement. */
export const ask = async (fake: FakeDiscord, turn: number, person: number): Promise<Answer> => {
  const answer = await act(fake, turn, person)
  const isAnswered = turn % 5 === 4 ? answer.choices.length > 0 : answer.text !== ''
  if (!isAnswered || APOLOGIES.some((sentence) => answer.text.includes(sentence))) {
    throw new Error(`turn ${turn}: ${answer.text}`)
  }
  return answer
}
