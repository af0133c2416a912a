import { describe, expect, it } from 'vitest'
import { talker } from './told.ts'

/** As makers would say it; none of these stands in the corpus. */
describe.each([
  // What an article stands before is not counted, and what is said again is no second amount.
  [
    'my aunt left a bag with 2 kg of plums and I thought two litres of vodka',
    '/plan of:2 kg plums spirit:2 litres vodka 40%',
  ],
  ['a handle of rum (1.75 l) and 2 kg pineapple', '/plan of:2 kg pineapple spirit:1 handle rum 40%'],
  ['1 kg sloes and a bottle of gin, thats 700 ml', '/plan of:1 kg sloes spirit:700 ml gin 40%'],
  ['handle of rum, 2 lb of figs', '/plan of:2 lb figs spirit:1 handle rum 40%'],
  ['a litre bottle of rum and 400 g of figs', '/plan of:400 g figs spirit:1 litre rum 40%'],
  ['1 kg raspberries and 2 litres of vod', '/plan of:1 kg raspberries spirit:2 litres vod 40%'],
  // Counted behind what it is of, and so much of each.
  ['got a basket of pears. five of them, and a litre of 60%', '/plan of:5 pears spirit:1 litre 60% have:5 pears'],
  ['my aunt wants lemons. seven big ones. she has 1 bottle vodka 37,5%', '/plan of:7 lemons spirit:700 ml vodka 37,5%'],
  ['alcol a 95 un litro, albicocche una cinquantina', '/plan of:50 albicocche spirit:1 litro 95%'],
  ['una trentina di limoni e 3 litri di alcol a 95', '/plan of:30 limoni spirit:3 litri 95%'],
  ['lemon and lime, 6 of each, in a litre of 95', '/plan of:6 lemon + 6 lime spirit:1 litre 95%'],
  [
    '200 g each of raspberries and blackberries with 700 ml gin',
    '/plan of:200 g raspberries + 200 g blackberries spirit:700 ml gin 40%',
  ],
  [
    'zenzero e curcuma, 40 g di ciascuno, mezzo litro di alcol a 60',
    '/plan of:40 g zenzero + 40 g curcuma spirit:0.5 litro 60%',
  ],
  ['half vodka half rum, 250 ml of each, on 400g figs', '/plan of:400 g figs spirit:250 ml vodka 40% + 250 ml rum 40%'],
  ['earl grey in vodka, 25 g of the tea and 50cl', '/plan of:25 g earl grey spirit:50 cl vodka 40%'],
  // A stone is 14 lb where it is of something.
  ['half a stone of pears and 3 litres of gin', '/plan of:7 lb pears spirit:3 litres gin 40%'],
  ['two stone of plums, 6 l of 60%', '/plan of:28 lb plums spirit:6 l 60%'],
  // How strong and how sweet it is to be.
  ['7 oranges, half a litre at 95, final strength 28', '/plan of:7 oranges spirit:0.5 litre 95% to-strength:28%'],
  ['limoni 8, alcol 95 un litro, gradazione finale 32', '/plan of:8 limoni spirit:1 litro 95% to-strength:32%'],
  ['pear one please, strong, say 38, 1 l of 95', '/plan of:pear spirit:1 l 95% to-strength:38%'],
  [
    'we dont want much sugar in it. plums, a kilo, and 1 litre of rum',
    '/plan of:1 kilo plums spirit:1 litre rum 40% to-sweetness:dry',
  ],
  [
    'how much sugar and water for 700 ml at 80, I want 28 and 180 a litre',
    '/syrup infusion:700 ml strength:80% to-strength:28% to-sweetness:180 g/L',
  ],
  [
    '1 litre at 84, syrup for 30 and 220 g a litre',
    '/syrup infusion:1 litre strength:84% to-strength:30% to-sweetness:220 g/L',
  ],
  // Bottles with their size, and how much is to come out.
  ['twelve small bottles of plum, 250 ml each', '/plan of:plum strength:40% bottles:12 x 250 ml'],
  ['30 minis, 50 ml, of ginger', '/plan of:ginger strength:40% bottles:30 x 50 ml'],
  [
    'six little bottles, 20cl each, of cherry, not too sweet',
    '/plan of:cherry strength:40% bottles:6 x 20 cl to-sweetness:dry',
  ],
  ['i need 8 half litre bottles of orange to give away', '/plan of:orange strength:95% bottles:8 x 0.5 litre'],
  [
    'make me three litres of plum for the fair, all I can buy is 95%',
    '/plan of:plum strength:95% bottles:1 x 3 litres',
  ],
  [
    'it is my mum’s 60th in April, thinking pear, 6 bottles, done by then',
    '/plan of:pear strength:40% bottles:6 ready-by:1 april',
  ],
  [
    'blueberries 1lb and 500 ml vodka by valentines day',
    '/plan of:1 lb blueberries spirit:500 ml vodka 40% ready-by:14 February',
  ],
  // What is planned with its amounts stands before what is asked of one of them.
  ['800 g di lamponi con 1 litro di alcol a 95, quanto zucchero serve?', '/plan of:800 g lamponi spirit:1 litro 95%'],
  [
    '1 kg apricots and one bottle of vodka 42%, tell me how much sugar',
    '/plan of:1 kg apricots spirit:700 ml vodka 42%',
  ],
  ['con 800 g di ciliegie e 1 l di grappa a 40 cosa ottengo', '/plan of:800 g ciliegie spirit:1 l grappa 40%'],
  ['500 ml of 40, 300 g cherries, 100 g sugar, what % is that', '/mix spirit:500 ml 40% sugar:100 g'],
  ['cherries 800g rum 1l', '/plan of:800 g cherries spirit:1 l rum 40%'],
  [
    'nine half-litre bottles of plum liqueur, not too strong, about 26',
    '/plan of:plum strength:40% bottles:9 x 0.5 litre to-strength:26%',
  ],
  [
    'eight 250ml bottles of pear at 28%, everyday sweet',
    '/plan of:pear strength:40% bottles:8 x 250 ml to-strength:28% to-sweetness:everyday',
  ],
  ['damsons 1 kilo 400, gin 2 litres 43 percent', '/plan of:1.4 kilo damsons spirit:2 litres gin 43%'],
  ['raspberries 4 punnets of 125g, with 600 ml of 60', '/plan of:500 g raspberries spirit:600 ml 60%'],
  ['lime + ginger, nine limes, ginger bout 40g, 1L 95%', '/plan of:9 limes + 40 g ginger spirit:1 L 95%'],
  ['2 kg di ciliegie, quanto alcol mi serve', '/plan of:2 kg ciliegie spirit:3 l alcol 96%'],
  [
    '600 ml a 80 gradi, lo vorrei a 28 e mediamente dolce',
    '/syrup infusion:600 ml strength:80% to-strength:28% to-sweetness:everyday',
  ],
  ['oranges. gin. go', '/plan of:oranges spirit:1 l gin 40%'],
  ['un bicchiere da 50 ml a 25 gradi quanto alcol contiene', '/serving pour:50 ml strength:25%'],
  ['whats good in march', '/botanical month:march'],
  ['anything worth doing with beetroot', '/plan of:beetroot spirit:1 l 40%'],
])('“%s”', (text, read) => {
  it(`is read as ${read}`, async () => {
    expect((await talker().say(text)).read).toBe(read)
  })
})

describe.each([
  ['damsons, stones in or out', 'stones_whole'],
  ['what the heck is pectic enzyme good for', 'pectin_enzyme'],
  ['the fruit is bobbing up out of the vodka, is that bad', 'keep_under'],
  ['how big is one glass of it', 'serving_size'],
  ['is mum’s crystal decanter any danger', 'lead_crystal'],
  ['only waxed oranges here, will a hot scrub do', 'unwaxed'],
  ['does stirring it matter', 'steep_shaking'],
  ['do bottles burst if they stand in the freezer', 'freezer_glass'],
])('“%s”', (text, entry) => {
  it(`is answered by ${entry}`, async () => {
    expect((await talker().say(text)).data.entry).toBe(entry)
  })
})

it('leaves a second amount that is another as it is', async () => {
  expect((await talker().say('mezzo litro a 40 e mezzo litro a 20 insieme quanto fanno')).read).toBe(
    '/blend parts:0.5 litro 40% + 0.5 litro 20%',
  )
})

it.each([
  ['quinces are in the market!! bought seven, have 1 l at 70', '7 quinces'],
  ['lemons were on offer, grabbed twelve, have 1 l at 95', '12 lemons'],
  ['oranges everywhere this week, we picked eight and have 1 l at 70', '8 oranges'],
  ['arance in offerta, comprate nove, ho 1 l a 95', '9 arance'],
])('counts what was bought of a plant that was named before: %s', async (text, of) => {
  expect((await talker().say(text)).read).toContain(`of:${of} `)
})

// Spirit is poured, bottles are told by what is in them, and a size needs no unit where only one is sold so; ours, no source.
it.each([
  ['20 oz dark rum and a pound of figs', '/plan of:1 pound figs spirit:20 fl oz dark rum 40%'],
  ['24 ounces of gin on half a pound of sloes', '/plan of:0.5 pound sloes spirit:24 fl oz gin 40%'],
  ['40 oz vodka and 2 lb cranberries', '/plan of:2 lb cranberries spirit:40 fl oz vodka 40%'],
  ['a forty ouncer of rum and 2 lb pineapple', '/plan of:2 lb pineapple spirit:1140 ml rum 40%'],
  ['a 26er of gin and a pound of cherries', '/plan of:1 pound cherries spirit:750 ml gin 40%'],
  ['1 lb cherries and a 1.75 of vodka', '/plan of:1 lb cherries spirit:1.75 l vodka 40%'],
  ['15 limoncellos of 250 ml', '/plan of:lemons strength:95% bottles:15 x 250 ml'],
  ['8 sloe gins, 350 ml each, for christmas', '/plan of:sloes strength:40% bottles:8 x 350 ml ready-by:25 December'],
  ['24 cute 100 ml bottles of limoncello', '/plan of:lemons strength:95% bottles:24 x 100 ml'],
  ['12 lil 2 oz bottles of limoncello', '/plan of:lemons strength:95% bottles:12 x 2 fl oz'],
  ['otto bottiglie da 50 di limoncello', '/plan of:limoni strength:95% bottles:8 x 50 cl'],
  ['9 limoni e una bottiglia di vodka da 75', '/plan of:9 limoni spirit:75 cl vodka 40%'],
  ['10 limoni e una bottiglia di alcol da 95', '/plan of:10 limoni spirit:700 ml 95%'],
  ['limoncello per la laurea di mio figlio, 10 bottiglie da 50 cl', '/plan of:limoni strength:95% bottles:10 x 50 cl'],
  ['1 kg plums, same weight of sugar and 1 litre vodka', '/plan of:1 kg plums spirit:1 litre vodka 40% sugar:1 kg'],
  [
    'mezzo chilo di more, altrettanto zucchero e 70 cl di vodka',
    '/plan of:0.5 chilo more spirit:70 cl vodka 40% sugar:0.5 chilo',
  ],
  [
    'something gentle with cherries, 22ish, i have a litre of 95',
    '/plan of:cherries spirit:1 litre 95% have:1 litre 95% to-strength:22%',
  ],
  ['600 g of gooseberries and a bottle of gin, 41.5 it says', '/plan of:600 g gooseberries spirit:700 ml gin 41.5%'],
  ['8 bottles 500 ml of quince, strong like 38', '/plan of:quince strength:40% bottles:8 x 500 ml to-strength:38%'],
  ['one big pineapple and a litre of rum', '/plan of:1 pineapple spirit:1 litre rum 40%'],
  ['half a crate of lemons, call it 30, and a litre of 95', '/plan of:30 lemons spirit:1 litre 95%'],
  ['5 ruby red grapefruits and a litre of vodka', '/plan of:5 grapefruits spirit:1 litre vodka 40%'],
])('%s', async (text, read) => {
  expect((await talker().say(text)).read).toBe(read)
})

// What is worked out, asked with its amounts; ours, no source.
it.each([
  [
    '70 cl vodka, cup of sugar, cup of water, how strong is that',
    '/mix spirit:70 cl vodka 40% water:1 cup sugar:1 cup',
  ],
  [
    '2 l of liqueur i have, 32 %, 300 g sugar in it, want 26',
    '/adjust liqueur:2 l strength:32% sweetness:150 g/L to-strength:26%',
  ],
  ['infuso 900 ml a 85, vorrei scendere a 28', '/syrup infusion:900 ml strength:85% to-strength:28%'],
  ['diluire 900 ml di alcol da 95 a 45', '/dilute spirit:900 ml strength:95% to-strength:45%'],
  ['one 30 ml glass at 28%, how many units is that', '/serving pour:30 ml strength:28%'],
  ['300 g of plums and a litre of 50% spirit from my cousin’s shop', '/plan of:300 g plums spirit:1 litre 50%'],
])('%s', async (text, read) => {
  expect((await talker().say(text)).read).toBe(read)
})
