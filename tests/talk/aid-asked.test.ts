import { describe, expect, it } from 'vitest'
import { aidAsked, isStillOfThem } from '../../bot/talk/emergency/aid-asked.ts'
import type { AidId } from '../../bot/talk/emergency/aid-words.ts'
import type { DangerSaid } from '../../bot/talk/emergency/danger-said.ts'
import type { HarmId } from '../../bot/talk/emergency/harm.ts'
import { findHarmAfter } from '../../bot/talk/emergency/harm-after.ts'

const of = (harm: HarmId): DangerSaid => ({ of: 'person', harm, isBeyondDoubt: true, answersSince: 0 })
const DRUNK = of('swallowed_spirit_adult')

const asked = (text: string, danger: DangerSaid | null) => aidAsked(text, findHarmAfter(text, danger), danger)

/** What each comes to stands in `first-aid.ts` with its sources. */
const BEHIND: readonly (readonly [text: string, aids: readonly AidId[]])[] = [
  ['would it be all right if he slept it off?', ['sleep']],
  ['is it safe for her to sleep?', ['sleep']],
  ['shall I put him to bed', ['sleep']],
  ['must I wake her every hour?', ['sleep']],
  ['lo metto a letto?', ['sleep']],
  ['la faccio dormire?', ['sleep']],
  ['lay her on her side or her back?', ['position']],
  ['la giro su un fianco?', ['position']],
  ['what about a quick shower', ['shower']],
  ['splash cold water on his face?', ['shower']],
  ['sotto la doccia?', ['shower']],
  ['would a strong espresso do any good', ['coffee']],
  ['un caffè forte lo aiuta?', ['coffee']],
  ['can we leave her here for an hour', ['alone']],
  ['is he safe on his own', ['alone']],
  ['posso lasciarla da sola?', ['alone']],
  ['she insists on driving', ['go_home']],
  ['he wants to walk home alone', ['go_home']],
  ['vuole andare a casa in bici', ['go_home']],
  ['walk her round the block?', ['walk_about']],
  ['una passeggiata, un po’ d’aria fresca?', ['walk_about']],
  ['may he have some bread', ['water_or_food']],
  ['le do un po’ d’acqua?', ['water_or_food']],
  ['what sobers him up fastest', ['sober_up']],
  ['fingers down her throat?', ['make_sick']],
  ['lo faccio vomitare?', ['make_sick']],
  ['should we take him to hospital', ['when_to_call']],
  ['quando devo chiamare il 118?', ['when_to_call']],
  ['he’s been sick twice', ['being_sick']],
  ['she seems much better', ['fine_now']],
  ['si è svegliato', ['fine_now']],
  ['coffee, or a cold shower?', ['coffee', 'shower']],
  ['she nodded off in the armchair', ['asleep']],
  ['sta dormendo per terra', ['asleep']],
  ['he’s asleep but I can wake him', ['can_wake']],
  ['she opens her eyes when I call', ['can_wake']],
  ['he mumbles if I shake him', ['can_wake']],
  ['riesco a svegliarlo', ['can_wake']],
  ['mi risponde', ['can_wake']],
  ['her breathing is steady', ['breathes']],
  ['respira normalmente', ['breathes']],
  ['he’s sleeping and breathing fine', ['asleep']],
  ['she’s fine, just asleep', ['asleep']],
]

describe('what is asked behind the answer that told whom to call', () => {
  it.each(BEHIND)('is known: %s', (text, aids) => {
    expect(asked(text, DRUNK)).toMatchObject({ aids })
    // Nobody having been harmed, it asks of something else.
    expect(asked(text, null)).toSatisfy(
      (found: ReturnType<typeof asked>) => found === null || /slept it off/.test(text),
    )
  })

  it('counts for whoever is worse off with the numbers and steps of that', () => {
    expect(asked('can he sleep it off', of('methanol'))).toEqual({ aids: ['sleep'], harm: 'methanol' })
    expect(asked('he won’t wake up, should I leave him to sleep?', DRUNK)).toMatchObject({
      harm: 'unconscious_after_drinking',
    })
    expect(asked('he is snoring loudly', DRUNK)).toEqual({ aids: ['snoring'], harm: 'unconscious_after_drinking' })
  })

  it.each([
    ['he doesn’t respond to me', 'can_wake'],
    ['I can’t wake her', 'can_wake'],
    ['she hardly opens her eyes', 'can_wake'],
    ['he isn’t breathing normally', 'breathes'],
    ['non respira bene', 'breathes'],
    ['non riesco a svegliarla', 'can_wake'],
  ] as const)('takes no denial for relief: %s', (text, aid) => {
    expect(asked(text, DRUNK)?.aids ?? []).not.toContain(aid)
  })

  it('tells who sleeps from who can’t be woken', () => {
    const SENSELESS = of('unconscious_after_drinking')
    expect(asked('she is asleep on the settee', DRUNK)?.harm).toBe('swallowed_spirit_adult')
    expect(asked('she is asleep and won’t wake up', DRUNK)?.harm ?? findHarmAfter('won’t wake up', DRUNK)).toBe(
      'unconscious_after_drinking',
    )
    expect(asked('she is asleep', of('swallowed_spirit_child'))?.harm).toBe('unconscious_after_drinking')
    expect(asked('she is asleep', of('methanol'))?.harm).toBe('unconscious_after_drinking')
    expect(asked('he still sleeps', SENSELESS)?.harm).toBe('unconscious_after_drinking')
    expect(asked('he’s awake now', SENSELESS)?.harm).toBe('swallowed_spirit_adult')
    expect(asked('he answers when I poke him', SENSELESS)?.harm).toBe('swallowed_spirit_adult')
    expect(asked('he’s awake now', { ...SENSELESS, behind: 'methanol' })?.harm).toBe('methanol')
    expect(asked('he’s breathing fine', SENSELESS)?.harm).toBe('unconscious_after_drinking')
  })

  it.each(['she is not fine', 'will he be fine'])('takes no doubt for relief: %s', (text) => {
    expect(asked(text, DRUNK)?.aids ?? []).not.toContain('fine_now')
  })

  it.each([
    'how long do I steep coffee for a litre',
    'can I leave the jar alone for a week',
    'when can we drink it',
    'what’s on?',
    '10 lemons and a litre of 95%',
    '/jar note lemon left him alone',
  ])('lets be what is of a drink: %s', (text) => {
    expect(asked(text, DRUNK)).toBeNull()
    expect(isStillOfThem(text, DRUNK)).toBe(false)
  })
})

describe('where a sentence tells of somebody drunk itself', () => {
  it.each<[string, AidId]>([
    ['my uncle drank half a bottle of damson gin and is asleep on the bench', 'asleep'],
    ['our treasurer got plastered and has nodded off', 'asleep'],
    ['mia zia è ubriaca e dorme', 'asleep'],
    ['my brother in law is legless, can he go to bed?', 'sleep'],
    ['a friend had far too much to drink, will coffee help?', 'coffee'],
    ['one of our helpers is drunk and wants to drive home', 'go_home'],
    ['how can I sober my cousin up', 'sober_up'],
    ['mia zia ha bevuto troppo, la lascio sola?', 'alone'],
    ['mio cognato è ubriaco, una doccia aiuta?', 'shower'],
  ])('answers what is asked: %s', (text, aid) => {
    expect(asked(text, null)?.aids).toContain(aid)
  })

  it.each([
    'how many coffees keep you awake when you get drunk',
    'coffee liqueur so that nobody gets drunk',
    'does it taste of coffee? I had too much sugar in it',
    'can my uncle sleep here after the fair',
  ])('lets be what tells of nobody: %s', (text) => {
    expect(asked(text, null)).toBeNull()
  })
})

describe('behind a fire or a burn', () => {
  it.each<[string, AidId]>([
    ['we got it out, her fringe is singed', 'fire_out'],
    ['flames are out now', 'fire_out'],
    ['just the apron got scorched', 'fire_out'],
    ['his thumb is a bit sore', 'fire_out'],
    ['è spento, nessuno si è fatto male', 'fire_out'],
    ['toothpaste on it?', 'on_burn'],
    ['may I burst the blister', 'on_burn'],
    ['ci metto il burro?', 'on_burn'],
  ])('says what to do about it: %s', (text, aid) => {
    for (const harm of ['clothes_on_fire', 'spirit_fire', 'burn'] as const) {
      expect(asked(text, of(harm))).toMatchObject({ aids: [aid], harm: 'burn' })
    }
    expect(asked(text, null)).toBeNull()
    expect(asked(text, DRUNK)?.aids ?? []).not.toContain(aid)
  })

  it('stays with what was worse before', () => {
    expect(asked('he ate nightshade berries as well, can I let him sleep?', of('methanol'))?.harm).toBe('methanol')
  })

  it('gives way to whatever is worse', () => {
    expect(asked('it’s out but he can’t breathe', of('spirit_fire'))).toBeNull()
  })
})

describe('a few words of him or her', () => {
  it.each(['his hands are ice cold', 'she’s crying and wants her mum'])('are of whoever was spoken of: %s', (text) => {
    expect(isStillOfThem(text, DRUNK)).toBe(true)
    expect(isStillOfThem(text, { ...DRUNK, answersSince: 3 })).toBe(false)
    expect(isStillOfThem(text, null)).toBe(false)
    expect(isStillOfThem(text, of('burn'))).toBe(false)
  })

  it.each(['she loves it', 'he has 12 lemons', 'her jar smells odd'])(
    'are not, where they are of a drink: %s',
    (text) => {
      expect(isStillOfThem(text, DRUNK)).toBe(false)
    },
  )
})
