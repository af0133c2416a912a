import { expect, it } from 'vitest'
import { type ByShelf, eachIsRecorded, eachIsShown } from './by-shelf.ts'
import { talkerFor } from './told.ts'

/** A sentence that tells of one deed, and the line that records it. */
const DEEDS_TOLD: ByShelf = {
  lemon: [
    ['splashed some more in, 120 ml of the 95', '/jar add lemon spirit:120 ml 95%'],
    ['name it aurora', '/jar rename lemon to:aurora'],
    ["the lemon's under the stairs these days", '/jar note lemon where:under the stairs'],
    ['lemon through the cloth: 915 ml at 86', '/jar strain lemon measured:915 ml strength:86%'],
    ['peels are out. 940 ml, 87 on the alcoholmeter', '/jar strain lemon measured:940 ml strength:87%'],
    ['strained the lemon, 3 and a half cups, 86%', '/jar strain lemon measured:3.5 cups strength:86%'],
    ['strained it, 900 ml, didn’t measure the strength', '/jar strain lemon measured:900 ml'],
    ['put in a vanilla pod', '/jar add lemon of:1 vanilla pod'],
    ['dropped in a star anise', '/jar add lemon of:1 star anise'],
    ['strained it and got point nine of a litre', '/jar strain lemon measured:0.9 litre'],
    ['layered 100 g cherries into the lemon', '/jar add lemon of:100 g cherries as:layer'],
    ['topped up the lemon with 200 ml water', '/jar add lemon water:200 ml as:top-up'],
    ['moved it to a 2 l jar', '/jar note lemon vessel:2 l jar'],
    ['it stands in the cellar now', '/jar note lemon where:cellar'],
    ['sta in dispensa adesso', '/jar note lemon where:dispensa'],
    ['write down that the peels were thin', '/jar note lemon note:the peels were thin'],
  ],
  lemon_ginger: [
    ['ginger done, 640 ml at 57%', '/jar strain ginger measured:640 ml strength:57%'],
    ['lemon now out, 905 ml, the ginger stays', '/jar strain lemon measured:905 ml'],
    ['got 640 ml out of the ginger, it reads 57', '/jar strain ginger measured:640 ml strength:57%'],
    ['call the ginger batch ember from now on', '/jar rename ginger to:ember'],
    ['the lemon is to be called sour days', '/jar rename lemon to:sour days'],
    ['ginger: call it fire', '/jar rename ginger to:fire'],
    ['split a third of the ginger off, call it fire', '/jar split ginger amount:a third into:fire'],
    ['split a third off the ginger, call it fire', '/jar split ginger amount:a third into:fire'],
    ["ginger's in the larder", '/jar note ginger where:larder'],
    ['shook the two of them', '/jar shake all'],
    ['put the ginger under the stairs', '/jar note ginger where:under the stairs'],
    ['the lemon is on the top shelf of the pantry now', '/jar note lemon where:top shelf of the pantry'],
    ['note for the ginger: smells a bit of earth', '/jar note ginger note:smells a bit of earth'],
    ['drained off the ginger, six hundred and fifty', '/jar strain ginger measured:650 ml'],
  ],
  spiced: [
    ['took the chilli out', '/jar take-out pear of:chilli'],
    ['removed the cinnamon stick from the pear', '/jar take-out pear of:cinnamon stick'],
    ['ho tolto la cannella', '/jar take-out pear of:cannella'],
  ],
  lemon_strained: [
    ['set 350 ml of the lemon aside in another jar called tart', '/jar split lemon amount:350 ml into:tart'],
    ['put 200 g sugar on the strained lemon peels', '/jar sweeten lemon sugar:200 g on-fruit:yes'],
    ['ho messo 200 g di zucchero sulle bucce', '/jar sweeten lemon sugar:200 g on-fruit:yes'],
    ['second go with the lemon peels in 500 ml vodka', '/jar start second-of:lemon spirit:500 ml vodka 40%'],
    [
      'seconda infusione delle bucce di limone in 500 ml di vodka',
      '/jar start second-of:lemon spirit:500 ml vodka 40%',
    ],
    ['syrup is in, 480 g and 1.4 l', '/jar sweeten lemon sugar:480 g water:1.4 l'],
    ['sugared the lemon: 500 g in 1.5 l', '/jar sweeten lemon sugar:500 g water:1.5 l'],
    ['sciroppo messo, 500 g e 1,5 l', '/jar sweeten lemon sugar:500 g water:1,5 l'],
    ['syrup went in: 450 and 1300 ml', '/jar sweeten lemon sugar:450 g water:1300 ml'],
    ['split the lemon, 400 ml into a second jar', '/jar split lemon amount:400 ml into:lemon 2'],
    ['poured 300 ml of the lemon off into another jar called sharp', '/jar split lemon amount:300 ml into:sharp'],
  ],
  lemon_sweetened: [
    ['ran it through coffee filters, 2.2 l now', '/jar filter lemon measured:2.2 l'],
    ['racked the lemon, 2.3 l left', '/jar filter lemon measured:2.3 l racked:yes'],
    ['ho travasato il limone', '/jar filter lemon racked:yes'],
    ['racked the lemon and fined it with egg white', '/jar filter lemon racked:yes fining:egg white'],
    ['fined the lemon with the whites of eggs', '/jar filter lemon fining:whites of eggs'],
    ['cleared the lemon with egg white', '/jar filter lemon fining:egg white'],
    ['cleared the lemon with bentonite yesterday', '/jar filter lemon fining:bentonite when:yesterday'],
    ['ho travasato il limone e l’ho chiarificato con albume', '/jar filter lemon racked:yes fining:albume'],
    ['ho chiarificato il limone con la colla di pesce', '/jar filter lemon fining:colla di pesce'],
    ['filtered the lemon, 2.3 l left', '/jar filter lemon measured:2.3 l'],
    ['bottled it today: four 700s', '/jar bottle lemon bottles:4 x 700 ml'],
    ['lemon done and bottled, 4 x 500 and a 250', '/jar bottle lemon bottles:4 x 500 ml + 1 x 250 ml'],
    ['bottled up at last. 2.5 litres in five bottles', '/jar bottle lemon bottles:5 x 500 ml'],
    ['in bottiglia! sei da 35cl e una da 20', '/jar bottle lemon bottles:6 x 35 cl + 1 x 20 cl'],
    ['imbottigliato! quattro da mezzo litro', '/jar bottle lemon bottles:4 x 0.5 litro'],
    ['all bottled, ten of the quarter litre ones', '/jar bottle lemon bottles:10 x 0.25 litre'],
  ],
  fair: [
    ["sloe's on the low shelf in the garage", '/jar note sloe where:low shelf in the garage'],
    ['got stuck into one of the raspberry bottles', '/bottles raspberry opened:1'],
    ['broke into a bottle of the raspberry', '/bottles raspberry opened:1'],
    ['put the orange in bottles, two 70cl', '/jar bottle orange bottles:2 x 70 cl'],
    ['decanted the orange into 6 quarter litre bottles', '/jar bottle orange bottles:6 x 0.25 litre'],
    ['mixed the lemon and the orange together in one jar', '/jar combine lemon with:orange'],
    ['ho messo insieme il limone e l’arancia', '/jar combine lemon with:orange'],
    ['tipped the orange into the lemon', '/jar combine lemon with:orange'],
    ['gave away two bottles of the raspberry', '/bottles raspberry given:2'],
    ['gave one raspberry to the church raffle', '/bottles raspberry given:1'],
    ['ho regalato una bottiglia dei lamponi a mia zia', '/bottles raspberry given:1'],
    ['opened a bottle of raspberry', '/bottles raspberry opened:1'],
    ['popped the cork on the first raspberry', '/jar open raspberry'],
    ['stappata la prima di lamponi', '/jar open raspberry'],
    ['orange: 5/5!!', '/jar taste orange rating:5'],
  ],
}

eachIsRecorded(DEEDS_TOLD)

it.each(['poured the two together', 'ho unito i due vasi'])('%s: both are meant', async (text) => {
  const one = await talkerFor({ after: null, shelf: 'lemon_ginger' })
  // Jars that still steep are not poured together: the command says so.
  expect(await one.say(text)).toMatchObject({
    read: '/jar combine lemon with:ginger',
    code: 'wrong_stage',
    recorded: 0,
  })
})

it('starts a jar that is asked to be started, with all that goes in', async () => {
  const one = await talkerFor({ after: null })
  expect(await one.say('start a jar: 8 lemons in 700 ml of 95')).toMatchObject({
    read: '/jar start of:8 lemons spirit:700 ml 95%',
    code: null,
    recorded: 1,
  })
})

it.each(['i want to start a jar of 8 lemons in 700 ml of 95', 'should i start a jar of 8 lemons in 700 ml of 95?'])(
  '%s: nothing is started',
  async (text) => {
    expect(await (await talkerFor({ after: null })).say(text)).toMatchObject({ recorded: 0 })
  },
)

it.each([
  ['what if i poured the two together?'],
  ['should i move the lemon to the cellar?'],
  ['can i keep the ginger in the fridge'],
  ['would you take the ginger out of the jar'],
  ["the ginger's off, 650 ml of it"],
  ['ginger off and smells, 650 ml in there'],
  ['is the lemon out yet, 900 ml?'],
  ['lemons out, bought 700 ml of gin'],
  ['lets call it a day'],
  ['what do i call the lemon from now on'],
  ['10 lemons out of the bag, 700 ml of 95'],
  ['put aside 500 ml vodka for the lemon'],
  ['set aside 300 g sugar for the ginger'],
])('%s: nothing is written down', async (text) => {
  const one = await talkerFor({ after: null, shelf: 'lemon_ginger' })
  expect(await one.say(text)).toMatchObject({ recorded: 0 })
})

eachIsShown({
  fair: [
    ['how many raspberry bottles have we got left', '/bottles raspberry'],
    ['any news of the sloe', '/jar show sloe'],
    ['how long have the sloes to go', '/jar show sloe'],
  ],
  lemon_ginger: [
    ['should i strain the ginger now or leave it be', '/jar show ginger'],
    ['list everything on the go', '/jar list'],
  ],
})

it('asks of a count that nothing takes, where orange is no colour', async () => {
  const one = await talkerFor({ after: null, shelf: 'lemon' })
  expect(await one.say('in went 2 ribs of orange peel')).toMatchObject({ command: 'jar add', code: 'question' })
})
