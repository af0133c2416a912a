import { describe, expect, it } from 'vitest'
import { talkerFor } from './told.ts'

describe('reminders turned off', () => {
  it.each([
    ['please switch my reminders off', 'in 2 weeks'],
    ['turn off all notifications', 'in 2 weeks'],
    ['can you stop messaging me', 'in 2 weeks'],
    ['cancel the nudges', 'in 2 weeks'],
    ['basta promemoria', 'in 2 weeks'],
    ['disattiva gli avvisi', 'in 2 weeks'],
    ['no nudges over the holidays', '2 January'],
    ['stop the reminders during Christmas', '2 January'],
    ['niente avvisi per Natale', '2 January'],
    ['suspend reminders for Thanksgiving', 'in 2 weeks'],
  ])('asks until which day, as none was said: %s', async (text, sample) => {
    const one = await talkerFor({ after: null, shelf: 'fair' })
    const told = await one.say(text)
    expect(told).toMatchObject({ code: 'question', recorded: 0 })
    expect(told.choices[0]).toBe(`/reminders pause-until:${sample}`)
    expect((await one.store.read('local')).settings.pausedUntil).toBeNull()
    expect((await one.say(told.choices[0]!)).code).toBeNull()
  })

  it.each([
    ['until january 9', '2027-01-09'],
    ['for ten days', '2026-12-09'],
    ['fino al 9 gennaio', '2027-01-09'],
  ])('takes the day as the answer: %s', async (text, day) => {
    const one = await talkerFor({ after: null, shelf: 'fair' })
    await one.say('turn the reminders off')
    await one.say(text)
    expect((await one.store.read('local')).settings.pausedUntil).toBe(day)
  })

  it.each([
    ['turn the reminders off', 'for good'],
    ['turn the reminders off for good', null],
    ['disattiva gli avvisi per sempre', null],
    ['stop reminding me until further notice', null],
  ])('stops for good where that is said: %s, %s', async (text, answer) => {
    const one = await talkerFor({ after: null, shelf: 'fair' })
    await one.say(text)
    if (answer !== null) await one.say(answer)
    expect((await one.store.read('local')).settings.pausedUntil).toBe('2199-12-31')
  })

  it('takes a day that was said at once', async () => {
    const one = await talkerFor({ after: null, shelf: 'fair' })
    expect((await one.say('mute notifications till january 9')).read).toBe('/reminders pause-until:january 9')
  })

  it('keeps the others awake where one jar is named', async () => {
    const one = await talkerFor({ after: null, shelf: 'fair' })
    expect((await one.say('no more nudges about the orange until friday')).read).toBe('/jar later orange until:friday')
    expect((await one.store.read('local')).settings.pausedUntil).toBeNull()
  })
})

it.each([
  'switch my reminders back on',
  'enable notifications',
  'resume the nudges please',
  'turn on reminders again',
  'riattiva gli avvisi',
  'riaccendi i promemoria',
])('turns reminders on: %s', async (text) => {
  const one = await talkerFor({ after: null, shelf: 'fair' })
  await one.say('/reminders pause-until:in 3 weeks')
  expect(await one.say(text)).toMatchObject({ read: '/reminders pause-until:none', code: null })
  // From today on, as what was before it is past.
  expect((await one.store.read('local')).settings.pausedUntil).toBe('2026-11-29')
})

it('turns nothing on where it is only asked', async () => {
  const one = await talkerFor({ after: null, shelf: 'fair' })
  await one.say('/reminders pause-until:in 3 weeks')
  await one.say('are my reminders on?')
  expect((await one.store.read('local')).settings.pausedUntil).toBe('2026-12-20')
})

it.each(['remind me on tuesday', 'nudge me in two weeks', 'ricordami giovedì'])(
  'holds nothing back for one day where no jar runs: %s',
  async (text) => {
    const one = await talkerFor({ after: null })
    expect(await one.say(text)).toMatchObject({ code: 'question', choices: ['/reminders'] })
    expect((await one.store.read('local')).settings.pausedUntil).toBeNull()
  },
)

// The sentences are ours; no source.
describe('what is asked and said of reminders in other words', () => {
  it.each([
    ['i shake it anyway, no need for the shaking messages', '/reminders shake:off'],
    ['i don’t need telling to shake', '/reminders shake:off'],
    ['you can drop the shaking bit', '/reminders shake:off'],
    ['turn the shaking reminders back on', '/reminders shake:daily'],
    ['riattiva i promemoria per scuotere', '/reminders shake:daily'],
    ['could the morning message come at 6:45 instead', '/reminders time:6:45 am'],
    ['i’d rather hear from you at 7.30', '/reminders time:7.30'],
    ['what days do you message me and when', '/reminders'],
    ['how often are you going to ping me?', '/reminders'],
    ['a che ora mi scrivi?', '/reminders'],
    ['no shaking messages please, just the other things', '/reminders shake:off'],
    ['skip the shake ones but keep the rest', '/reminders shake:off'],
    ['I don’t need to be told about shaking, only straining and such', '/reminders shake:off'],
    ['niente messaggi per scuotere, solo il resto', '/reminders shake:off'],
    ['I’m home, feel free to nag me again', '/reminders pause-until:none'],
    ['holiday’s over, start pestering me again', '/reminders pause-until:none'],
    ['ok you may message me again', '/reminders pause-until:none'],
    ['when are you planning to nag me', '/reminders'],
    ['quando mi disturbi la prossima volta?', '/reminders'],
    // No silence with an end is of every week.
    ['don’t message me on sundays', '/reminders'],
    ['non scrivermi la domenica', '/reminders'],
  ])('%s', async (text, read) => {
    expect(await (await talkerFor({ after: null, shelf: 'lemon_ginger' })).say(text)).toMatchObject({
      read,
      recorded: 0,
    })
  })

  it('holds back that of one jar, and of no other', async () => {
    const one = await talkerFor({ after: null, shelf: 'lemon_ginger' })
    expect((await one.say('don’t bother me about the lemon till friday')).read).toBe('/jar later lemon until:friday')
    expect((await one.store.read('local')).settings.pausedUntil).toBeNull()
  })

  it.each([
    ['shaken both, leave the ginger be till sunday', '/jar later ginger until:sunday'],
    ['shook the pair, don’t bother me about lemon till friday', '/jar later lemon until:friday'],
    ['scossi tutti e due, lo zenzero lascialo stare fino a lunedì', '/jar later ginger until:lunedi'],
  ])('takes no day up to which one is let be for that of a deed: %s', async (text, later) => {
    const { read, also } = await (await talkerFor({ after: null, shelf: 'lemon_ginger' })).say(text)
    expect([read, ...also.map((each) => each.read)]).toEqual(['/jar shake all', later])
  })
})
