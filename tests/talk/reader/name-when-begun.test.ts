import { describe, expect, it } from 'vitest'
import { talkerFor } from './told.ts'

const SLOES = 'of:300 g sloes spirit:700 ml gin 40%'

describe('the name that a jar is given when it is begun', () => {
  it.each([
    ['I started 300 g sloes in 700 ml gin, call it Hedge', `/jar start Hedge ${SLOES}`],
    ['started 300 g sloes in 700 ml gin and I’m calling this one Old Hedge', `/jar start Old Hedge ${SLOES}`],
    ['started 300 g sloes in 700 ml gin, name it Hedge please', `/jar start Hedge ${SLOES}`],
    ['started 300 g sloes in 700 ml gin, naming it after aunt Rosa', `/jar start aunt Rosa ${SLOES}`],
    ['started 300 g sloes in 700 ml gin in Rosa’s jar', `/jar start Rosa ${SLOES}`],
    ['300 g sloes in 700 ml gin started on 5 November call it Hedge', `/jar start Hedge ${SLOES} when:5 november`],
  ])('is kept: %s', async (text, read) => {
    const one = await talkerFor({ after: null })
    expect(await one.say(text)).toMatchObject({ read, code: null, recorded: 1 })
  })

  it('is kept in Italian', async () => {
    const one = await talkerFor({ after: null })
    const said = await one.say('ho iniziato 10 limoni in un litro di alcol ieri, chiamalo Nonna Pia')
    expect(said).toMatchObject({ code: null, recorded: 1 })
    expect(said.read).toMatch(/^\/jar start Nonna Pia of:10 limoni /)
    const two = await talkerFor({ after: null })
    expect((await two.say('iniziato 10 limoni in un litro di alcol, nel vaso di Rosa')).read).toMatch(
      /^\/jar start Rosa /,
    )
  })

  it('is kept while the amount is asked for', async () => {
    const one = await talkerFor({ after: null })
    const said = await one.say('10 lemons started on 5 November call it Nonna')
    expect(said).toMatchObject({ code: 'question', recorded: 0 })
    expect((await one.say('a litre of 95%')).read).toMatch(/^\/jar start Nonna /)
  })

  it('begins a jar, and goes into none that stands there', async () => {
    const one = await talkerFor({ after: null, shelf: 'lemon' })
    expect((await one.say('put 300 g sloes in 700 ml gin, call it Hedge')).read).toMatch(/^\/jar start Hedge /)
  })
})
