import type { FakeDiscord } from '../fake/fake-discord.ts'
import type { FakeChannel, FakeMessage, FakeUser } from '../fake/world.ts'

/** Who is there, who one is and where, and the bot's messages by the number they are shown under. */
export const newScene = (fake: FakeDiscord) => {
  const people = new Map([[fake.user.name, fake.user]])
  const channels = new Map([[fake.channel.name, fake.channel]])
  const messages: FakeMessage[] = []
  const shown = new Map<FakeMessage, string>()
  let user = fake.user
  let room: FakeChannel | null = fake.channel

  const channel = (): FakeChannel => room ?? fake.dm(user)
  /** Changes when anything of the message does. */
  const stateOf = ({ edits, isDeleted }: FakeMessage): string => `${edits} ${isDeleted}`
  const meet = (found: Iterable<FakeMessage | undefined>): void => {
    for (const message of found)
      if (message && message.author === fake.bot && !messages.includes(message)) messages.push(message)
  }
  const look = (): void => {
    const rooms = [...channels.values(), ...[...people.values()].map((person) => fake.dm(person))]
    meet(rooms.flatMap((place) => [...place.messages.values()]).sort((one, other) => one.sentMs - other.sentMs))
  }
  return {
    user: (): FakeUser => user,
    channel,
    /** Where one is, in words. */
    place: (): string => (room ? `#${room.name}` : 'private'),
    /** Becomes somebody, who joins the server when new. */
    become: (name: string): void => {
      const person = people.get(name) ?? fake.newUser(name)
      if (!people.has(name)) fake.join(fake.guild, person)
      people.set(name, person)
      user = person
    },
    /** Goes to a channel, which is made when it is new; `null` is one's direct messages with the bot. */
    go: (name: string | null): void => {
      room = name === null ? null : (channels.get(name) ?? fake.newChannel(fake.guild, name))
      if (room) channels.set(room.name, room)
    },
    room: (): FakeChannel | null => room,
    roomOf: (name: string): FakeChannel | undefined => channels.get(name),
    nameOfRoom: (id: string): string | undefined => [...channels.values()].find((place) => place.id === id)?.name,
    nameOfPerson: (id: string): string | undefined => [...people.values()].find((person) => person.id === id)?.name,
    meet,
    numberOf: (message: FakeMessage): number => messages.indexOf(message) + 1,
    numbered: (number: number): FakeMessage | undefined => messages[number - 1],
    /** What one sees here, the newest last. */
    seenHere: (): readonly FakeMessage[] => {
      look()
      return messages.filter(
        (message) =>
          !message.isDeleted && message.channel === channel() && (!message.onlyFor || message.onlyFor === user),
      )
    },
    /** What is new or has changed since it was shown. */
    news: (): readonly FakeMessage[] => {
      look()
      return messages.filter((message) => !message.channel.isDeleted && shown.get(message) !== stateOf(message))
    },
    /** Whether it was shown otherwise before. */
    hasChanged: (message: FakeMessage): boolean => shown.has(message) && shown.get(message) !== stateOf(message),
    markShown: (message: FakeMessage): void => {
      shown.set(message, stateOf(message))
    },
  }
}

export type Scene = ReturnType<typeof newScene>
