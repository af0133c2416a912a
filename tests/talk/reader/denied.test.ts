import { describe, expect, it } from 'vitest'
import { talkerFor } from './told.ts'

const said = async (text: string, after: string | null = null) => (await talkerFor({ after })).say(text)

const PLAN = '/plan of:10 lemons spirit:1 l 95%'

describe('what is not there is not poured', () => {
  it.each([
    'what can I make with 2kg of plums and no vodka',
    'what can I make with 1 kg of plums without any vodka?',
    'what can I make with 1 kg of quinces, I have no vodka',
    'cosa posso fare con 1 kg di prugne senza vodka?',
    'cosa posso fare con 1 kg di prugne, non ho vodka',
  ])('%s', async (text) => {
    const { call } = await said(text)
    expect(call?.path).toBe('plan')
    expect(call?.options.spirit).not.toMatch(/vodka/)
  })

  it.each([
    ['I can’t get 95%, only vodka', /vodka 40%/],
    ['I ran out of vodka, can I use gin', /gin 40%/],
    ['no vodka but I’ve got rum', /rum 40%/],
    ['not gin, brandy', /brandy 40%/],
    ['use rum instead of brandy', /rum 40%/],
    ['non ho vodka, solo grappa', /grappa 40%/],
    ['without gin, with vodka instead', /vodka 40%/],
  ])('after a plan: %s', async (text, spirit) => {
    expect((await said(text, PLAN)).call?.options.spirit).toMatch(spirit)
  })

  it.each([
    ['10 lemons and a litre of 95%', /95%/],
    ['10 lemons, no wax, and a litre of vodka', /vodka/],
    ['10 lemons without pith in 700 ml gin', /gin/],
  ])('what is there is: %s', async (text, spirit) => {
    expect((await said(text)).call?.options.spirit).toMatch(spirit)
  })
})

describe('what somebody cannot stand is not wished', () => {
  it.each([
    'I hate it sweet',
    'I can’t stand sweet',
    'I don’t like it too sweet',
    'we’re not keen on sweet things',
    'lo odio dolce',
    'non mi piace dolce',
  ])('drier: %s', async (text) => {
    expect((await said(text, PLAN)).call?.options['to-sweetness']).toBe('dry')
  })

  it.each(['I like it sweet', 'make it sweet', 'lo voglio dolce'])('richer: %s', async (text) => {
    expect((await said(text, PLAN)).call?.options['to-sweetness']).toBe('rich')
  })

  it.each([
    ['I don’t like it dry', 'to-sweetness', /2\d\d g\/L/],
    ['I hate it strong', 'to-strength', /25%/],
    ['can’t stand it weak', 'to-strength', /35%/],
    ['non mi piace forte', 'to-strength', /25%/],
  ])('%s', async (text, option, value) => {
    expect((await said(text, PLAN)).call?.options[option]).toMatch(value)
  })
})
