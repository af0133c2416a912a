import fc from 'fast-check'
import type { Entry, Happening, JarEntry } from '../../core/jar/entry/entry.ts'
import { materialIds } from '../../core/quantity/materials.ts'
import type { Nudge, Person, Place, SentNudge, Share } from '../../store/person.ts'
import {
  amount,
  atMs,
  count,
  day,
  ingredients,
  is,
  measured,
  noted,
  orNull,
  planned,
  plant,
  portion,
  readAmount,
  someOf,
  strength,
  sweetenings,
  tasted,
  text,
  zone,
} from './any-values.ts'

const happening: fc.Arbitrary<Happening> = fc.oneof(
  fc
    .record({
      ...is('started'),
      ...ingredients,
      ...planned,
      name: text,
      sweetener: orNull(fc.constantFrom(...materialIds)),
      filler: orNull(fc.constantFrom(...materialIds)),
      enzyme: orNull(text),
      secondOf: orNull(
        fc.record(
          { other: text, otherId: text, soaked: portion, sweetenings, plants: someOf(plant) },
          { requiredKeys: ['other', 'otherId', 'soaked', 'plants'] },
        ),
      ),
    })
    .map(({ sweetener, filler, enzyme, secondOf, ...started }) => ({
      ...started,
      ...(secondOf !== null && { secondOf }),
      ...(enzyme !== null && { enzyme }),
      ...(sweetener !== null && { sweetener }),
      ...(filler !== null && { filler }),
    })),
  fc.record(is('shaken')),
  tasted,
  fc
    .tuple(
      fc.record({ ...is('added'), ...ingredients }),
      fc.constantFrom({}, { as: 'layer' as const }, { as: 'top_up' as const, enzyme: '1 tsp' }),
    )
    .map(([added, how]) => ({ ...added, ...how })),
  fc.record({ ...is('strained'), measured: orNull(readAmount), strength: orNull(strength), rinseWaterG: measured }),
  fc
    .tuple(
      fc.record({ ...is('filtered'), measured: orNull(readAmount) }),
      fc.constantFrom({}, { isRacked: true }, { isRacked: false, fining: 'egg_white' as const }),
    )
    .map(([filtered, how]) => ({ ...filtered, ...how })),
  fc
    .tuple(
      fc.record({ ...is('sweetened'), waterG: measured, sweetenings }),
      fc.oneof(fc.constant({}), fc.record({ ofFruit: fc.record({ measured: orNull(readAmount) }) })),
    )
    .map(([sweetened, ofFruit]) => ({ ...sweetened, ...ofFruit })),
  fc.record({ ...is('fruit_sugared'), sweetenings }),
  fc.record({ ...is('taken_out'), plants: someOf(fc.record({ id: orNull(text), name: text, massG: measured })) }),
  fc.record({ ...is('parted'), kept: measured, other: text, isNew: fc.boolean() }),
  fc.record({
    ...is('poured_in'),
    liquid: fc
      .tuple(
        portion,
        fc.constantFrom({}, { dissolved: {} }, { dissolved: { extractGPerL: 1, sucroseEquivalentShare: 1.2 } }),
      )
      .map(([poured, dissolved]) => ({ ...poured, ...dissolved })),
    plants: someOf(plant),
    spiritMl: amount,
    other: text,
    into: orNull(text),
    fined: fc.constantFrom([], ['milk' as const]),
  }),
  fc.record({
    ...is('bottles_out'),
    use: fc.constantFrom('given', 'opened'),
    bottles: fc.array(fc.record({ count: fc.integer({ min: 1, max: 99 }), volumeMl: fc.constantFrom(200, 500) })),
  }),
  noted,
  fc.record({ ...is('bottled'), bottles: someOf(fc.record({ count, volumeMl: amount })) }),
  fc.oneof(fc.record(is('opened')), fc.record(is('emptied')), fc.record(is('discarded'))),
  fc.record({ ...is('renamed'), name: text }),
  fc.record({ ...is('put_off'), untilDay: day, untilMs: orNull(atMs) }),
)

const moment = fc.record({ atMs, day, zone })
const of = fc.integer({ min: 1, max: 1000 })
const attempt = fc.constantFrom(
  {},
  { attempt: '1234567890123456789' },
  { attempt: '3f0e9c1a-77aa-4d1b-8a55-0d6a2c9d1e01' },
)
const entry: fc.Arbitrary<Entry> = fc
  .tuple(moment, fc.record({ seq: of, enteredMs: atMs, typed: someOf(fc.tuple(text, text)) }), attempt)
  .map(([when, entered, attempted]) => ({ ...when, ...entered, ...attempted }))

const jarEntry: fc.Arbitrary<JarEntry> = fc
  .tuple(
    entry,
    fc.oneof(
      { weight: 6, arbitrary: happening },
      { weight: 1, arbitrary: fc.record({ ...is('corrected'), of, by: happening, moved: orNull(moment) }) },
      { weight: 1, arbitrary: fc.record({ ...is('undone'), of }) },
    ),
  )
  .map(([one, happened]) => ({ ...one, ...happened }))

const key = fc.stringMatching(/^[a-z_.0-9-]{1,30}$/)
const jarId = fc.stringMatching(/^[a-z0-9]{5}$/)
const place: fc.Arbitrary<Place> = fc.oneof(
  fc.record(is('console')),
  fc.record(is('private')),
  fc.record({ ...is('channel'), channelId: fc.stringMatching(/^\d{17,20}$/) }),
)
const kind = fc.constantFrom('shake', 'taste', 'add', 'strain', 'sweeten', 'filter', 'bottle', 'ready', 'drink')
const nudge: fc.Arbitrary<Nudge> = fc.record({
  id: key,
  place,
  duties: someOf(fc.record({ jarId, kind, key })),
  state: fc.constantFrom('sending', 'waiting', 'kept'),
  madeMs: atMs,
  attempts: count,
  nextMs: atMs,
})

const snowflake = fc.stringMatching(/^\d{17,20}$/)
const postedIn = fc.record({ channelId: snowflake, messageId: snowflake })
const asked = fc.record({ kind, day, by: orNull(day), isLast: fc.boolean(), isAside: fc.boolean() })
const sentNudge: fc.Arbitrary<SentNudge> = fc.record({
  id: key,
  postedIn,
  sentMs: atMs,
  isMoved: fc.boolean(),
  mayHaveBeenSeen: fc.boolean(),
  jars: someOf(fc.record({ jarId, seq: count, asked: someOf(asked) })),
})
const share: fc.Arbitrary<Share> = fc.record({
  id: fc.stringMatching(/^[a-z0-9]{8}$/),
  jarId,
  code: fc.stringMatching(/^[0-9A-Z]{16,300}$/),
  postedIn: orNull(postedIn),
  withdrawn: fc.boolean(),
  made: count,
})

/** What nobody can read any more is kept too. */
const priceText = fc.string({ maxLength: 60 })

const settings = fc.record(
  {
    units: fc.constantFrom(null, 'metric', 'us', 'imperial'),
    country: fc.constantFrom(null, 'IT', 'GB'),
    zone: orNull(zone),
    place: orNull(place),
    atMinutes: fc.nat(1439),
    shake: fc.constantFrom('daily', 'every_other_day', 'off'),
    pausedUntil: orNull(day),
    freezerC: orNull(fc.integer({ min: -40, max: 0 })),
    drink: fc.constantFrom('on', 'off'),
    prices: someOf(fc.record({ of: priceText, amount: priceText, per: priceText })),
  },
  { requiredKeys: ['units', 'country', 'zone', 'place', 'atMinutes', 'shake', 'pausedUntil'] },
)

/** Any person that the types allow and the bot could write, in no sensible story. */
export const anyPerson: fc.Arbitrary<Person> = fc.record(
  {
    version: fc.constant(8),
    settings,
    jars: someOf(
      fc.record(
        { id: jarId, entries: someOf(jarEntry), told: someOf(key), toldMs: someOf(atMs), cautioned: someOf(key) },
        { requiredKeys: ['id', 'entries', 'told', 'cautioned'] },
      ),
    ),
    nudges: someOf(nudge),
    sentNudges: someOf(sentNudge),
    lines: someOf(fc.record({ id: fc.stringMatching(/^[0-9a-f]{12}$/), line: text })),
    shares: someOf(share),
    setAside: orNull(
      fc.record({ file: fc.constant('local.unreadable-2026-11-25T10-30-00-000Z.json'), day: orNull(day) }),
    ),
  },
  { requiredKeys: ['version', 'settings', 'jars', 'nudges', 'lines', 'shares', 'setAside'] },
)
