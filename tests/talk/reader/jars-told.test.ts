import { expect, it } from 'vitest'
import { type ByShelf, eachIsRecorded, eachIsShown } from './by-shelf.ts'
import { talkerFor } from './told.ts'

/** Deeds that are told by what stands beside a jar's name, and the line that records each. */
const TOLD: ByShelf = {
  lemon: [
    ["lemon's out, eight hundred and ninety, 85 on the float", '/jar strain lemon measured:890 ml strength:85%'],
    ['poured it off the peel, 0.94 l', '/jar strain lemon measured:0.94 l'],
    ['poured off the lemon this morning, roughly 900 ml', '/jar strain lemon measured:900 ml'],
    ['decanted the lemon off, came to 0.92 l', '/jar strain lemon measured:0.92 l'],
    ['drew it off today, 890 ml', '/jar strain lemon measured:890 ml'],
    ['poured off 200 ml of the lemon', '/jar split lemon amount:200 ml into:lemon 2'],
    ['poured the lemon off into another jar, 300 ml', '/jar split lemon amount:300 ml into:lemon 2'],
    ['tipped the lemon thru an old tea towel, 905 ml', '/jar strain lemon measured:905 ml'],
    ['let teh lemon drip through a jelly bag, got 91 cl', '/jar strain lemon measured:91 cl'],
    ['peeled two more lemons into the jar', '/jar add lemon of:2 lemons'],
    ['scorze fuori, ne restano 905 ml', '/jar strain lemon measured:905 ml'],
    ["three more lemons' worth of peel in", '/jar add lemon of:3 lemons'],
    ['slung in another 150 ml of the 95', '/jar add lemon spirit:150 ml 95%'],
    ['another 100 ml of vodka went on the lemon', '/jar add lemon spirit:100 ml vodka 40%'],
    ['gave the lemon a good old jiggle', '/jar shake lemon'],
    ["lemon's had its daily shake", '/jar shake lemon'],
    ['sloshed it round a bit', '/jar shake lemon'],
    ['turned the jar over a few times', '/jar shake lemon'],
    ['al limone ho dato una bella mescolata', '/jar shake lemon'],
    ['ho shakerato il limone', '/jar shake lemon'],
  ],
  fair: [
    ['two raspberries gone to the neighbours', '/bottles raspberry given:2'],
    ['handed a raspberry to the vicar', '/bottles raspberry given:1'],
    ['brought two bottles of the raspberry to the party', '/bottles raspberry given:2'],
    ['mandata una bottiglia di lamponi a mia cugina', '/bottles raspberry given:1'],
    ['the choir had two bottles of raspberry off us', '/bottles raspberry given:2'],
    ['my cousin went home with a bottle of raspberry', '/bottles raspberry given:1'],
    ['la zia ha portato via una bottiglia di lampone', '/bottles raspberry given:1'],
    ['we got through a bottle of raspberry', '/bottles raspberry opened:1'],
    ['abbiamo bevuto una bottiglia di lamponi', '/bottles raspberry opened:1'],
    ['siphoned 500 ml of the orange off, called it zest', '/jar split orange amount:500 ml into:zest'],
    ['kept back 300 ml of the orange in a jar of its own', '/jar split orange amount:300 ml into:orange 2'],
    ['half the orange is in another jar now', '/jar split orange amount:half into:orange 2'],
    ['travasati 300 ml di arancia in un vaso nuovo chiamato sole', '/jar split orange amount:300 ml into:sole'],
    ['poured 200 ml off the orange and named it bitter', '/jar split orange amount:200 ml into:bitter'],
    ['separati 200 ml di arancia, li chiamo aspro', '/jar split orange amount:200 ml into:aspro'],
    ['the lemon and the orange share a jar now', '/jar combine lemon with:orange'],
    ['the orange has joined the lemon', '/jar combine orange with:lemon'],
    ['limone e arancia sono in un vaso solo', '/jar combine lemon with:orange'],
    ['stirred the orange into the lemon', '/jar combine lemon with:orange'],
    ['lemon and orange are in one jar now', '/jar combine lemon with:orange'],
    ['ho versato l’arancia nel limone', '/jar combine lemon with:orange'],
    ['shoved the sloe behind the sofa', '/jar note sloe where:behind the sofa'],
    ['sloe’s gone down the cellar', '/jar note sloe where:cellar'],
    ['le prugnole stanno sotto il lavello', '/jar note sloe where:sotto il lavello'],
  ],
  lemon_ginger: [
    ['ginger is strained, six forty, 57 on the meter', '/jar strain ginger measured:640 ml strength:57%'],
    ['lemon strained. nine twenty', '/jar strain lemon measured:920 ml'],
    ['limone filtrato, 920 ml, alcolometro 86', '/jar strain lemon measured:920 ml strength:86%'],
    ['lemon is a boring name, make it old cloudy', '/jar rename lemon to:old cloudy'],
    ['change the name of the ginger to burning bush', '/jar rename ginger to:burning bush'],
    ['lo zenzero da oggi si chiama torbido', '/jar rename ginger to:torbido'],
    ['chucked another 50 g ginger in', '/jar add ginger of:50 g ginger'],
    ['the ginger had another 200 ml of the 60', '/jar add ginger spirit:200 ml 60%'],
    ["each one's had a shake", '/jar shake all'],
    ["didn't shake the ginger, only the lemon", '/jar shake lemon'],
    ["I haven't shaken the lemon but I did the ginger", '/jar shake ginger'],
    ["il limone no, lo zenzero l'ho scosso", '/jar shake ginger'],
  ],
  lemon_sweetened: [
    ['corked and capped, five 500 ml bottles', '/jar bottle lemon bottles:5 x 500 ml'],
    ['bottled it, four 500 ml bottles', '/jar bottle lemon bottles:4 x 500 ml'],
    ['fatte 5 bottiglie da 500 ml', '/jar bottle lemon bottles:5 x 500 ml'],
    ['tappate quattro bottiglie da 500 ml, finito', '/jar bottle lemon bottles:4 x 500 ml'],
  ],
  lemon_bottled: [['opened the first bottle after supper', '/jar open lemon']],
  spiced: [
    ["the cinnamon's come out of the pear", '/jar take-out pear of:cinnamon'],
    ['took both the cinnamon and the chilli out', '/jar take-out pear of:cinnamon + chilli'],
    ['pulled the chilli, the pears are still in', '/jar take-out pear of:chilli'],
    ['pulled the cinnamon and left the pears', '/jar take-out pear of:cinnamon'],
    ['it made my eyes water, so out came the chilli', '/jar take-out pear of:chilli'],
    ['fuori la cannella dalle pere', '/jar take-out pear of:cannella'],
    ['tolta la cannella dalle pere', '/jar take-out pear of:cannella'],
    ['cannella fuori, le pere restano', '/jar take-out pear of:cannella'],
  ],
}

eachIsRecorded(TOLD)

eachIsShown({
  lemon_ginger: [
    ["how strong's the ginger right now", '/jar show ginger'],
    ["where's the ginger at", '/jar show ginger'],
    ["what's going on with the lemon", '/jar show lemon'],
    ['how many days has the lemon been in', '/jar show lemon'],
    ['can the lemon come out yet', '/jar show lemon'],
    ['when did the ginger go in', '/jar show ginger'],
    ['il limone come va?', '/jar show lemon'],
    ['da quanto sta lì lo zenzero', '/jar show ginger'],
    ['lo zenzero va filtrato o lo lascio ancora', '/jar show ginger'],
  ],
  lemon: [['devo colarlo o aspetto', '/jar show lemon']],
})

it('takes a piece that only one of several has for that one, and strains nothing for another', async () => {
  const one = await talkerFor({ after: null, shelf: 'spiced' })
  expect(await one.say('fished the stick out of the pear')).toMatchObject({
    read: '/jar take-out pear of:ceylon cinnamon',
    recorded: 1,
  })
  const other = await talkerFor({ after: null, shelf: 'spiced' })
  expect(await other.say('fished the bag out of the pear')).toMatchObject({ recorded: 0 })
})

it.each(['shook the lemon, which was hard with 3 and 40 ml bottles', 'six fifty ml bottles of lemon'])(
  '%s: no hundreds are made of how many there are',
  async (text) => {
    const { read } = await (await talkerFor({ after: null, shelf: 'lemon' })).say(text)
    expect(read ?? '').not.toContain('650')
  },
)

it.each([
  'took a bottle of raspberry out of the freezer',
  'should i bring two bottles of the raspberry to the party?',
  'didn’t put 300 ml of the orange in another jar',
  'stir the orange into the lemon?',
  'will send a bottle of raspberry to my cousin',
])('%s: nothing is given, split or poured together', async (text) => {
  const told = await (await talkerFor({ after: null, shelf: 'fair' })).say(text)
  expect(told).toMatchObject({ recorded: 0 })
})

it.each([
  ['half a pound of dasmons and a bottle of gin', '/plan of:0.5 pound damsons spirit:700 ml gin 40%'],
  ['10 lemons and 1 litre of vdoka', '/plan of:10 lemons spirit:1 litre vodka 40%'],
  ['10 lemons and 2 lirtes of vodka', '/plan of:10 lemons spirit:2 litres vodka 40%'],
])('%s: a slip in a plant, a spirit or a unit is mended', async (text, read) => {
  expect(await (await talkerFor({ after: null })).say(text)).toMatchObject({ read, code: null })
})
