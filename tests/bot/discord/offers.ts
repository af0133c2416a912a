import { suggest } from '../../../bot/discord/suggest/autocomplete.ts'
import type { Offer } from '../../../bot/discord/suggest/offer.ts'
import { en } from '../../../bot/text/en/index.ts'
import { memoryStore } from '../../../store/memory/memory-store.ts'
import type { Store } from '../../../store/store.ts'
import { jarDesk, LEMON } from '../commands-jar/desk.ts'
import { commands } from '../test-desk.ts'

export const ME = '123456789012345678'
export const OTHER = '223456789012345678'
const NOW_MS = Date.parse('2026-12-01T12:00:00Z')
const START = 'of:10 lemons spirit:1 l 95%'

/** Two people with jars, and what is offered to them. */
export const offersDesk = async () => {
  const store = memoryStore('UTC')
  const logged: string[] = []
  const personAt = (userId: string) =>
    jarDesk('2026-11-01', { userId, place: { kind: 'private' }, assumedZone: 'UTC', store })
  const me = personAt(ME)
  await me.ask(LEMON)
  await me.ask(`/jar start name:Walnut ${START}`)
  await me.ask(`/jar start name:old lemon ${START}`)
  await me.ask('/jar discard old lemon')
  await me.ask(`/jar start name:"@everyone **bold** <@1>" ${START}`)
  await me.ask(`/jar start name:gone ${START}`)
  await me.ask('/jar undo gone')
  await personAt(OTHER).ask(`/jar start name:lemon of theirs ${START}`)

  const offering =
    (locale: string) =>
    (path: string, option: string, typed: string, userId = ME, from: Store = store) =>
      suggest(
        { path, option, typed },
        { commands, userId, store: from, assumedZone: 'UTC', nowMs: NOW_MS, log: (text) => logged.push(text), locale },
        en.suggestions,
      )
  const offersOf = offering('en-GB')
  const listed =
    (key: keyof Offer) =>
    async (path: string, option: string, typed: string, locale = 'en-GB') =>
      (await offering(locale)(path, option, typed)).map((offer) => offer[key])
  return { store, logged, me, offersOf, namesOf: listed('name'), valuesOf: listed('value') }
}
