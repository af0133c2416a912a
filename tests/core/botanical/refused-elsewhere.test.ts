import { describe, expect, test } from 'vitest'
import { allRefusedNames } from '../../../core/botanical/refuse/all-refused.ts'
import { expectNotRefused } from '../../../core/botanical/refuse/refusal.ts'
import { refusedIn } from '../../../core/botanical/refuse/refused-in.ts'
import { plainWords } from '../../../core/spelling/normalise-name.ts'
import { eachHolds } from '../../each-holds.ts'
import { refusal, refusedValues } from '../quantity/refusal.ts'

const refused = (text: string) =>
  [refusal(() => expectNotRefused(text)), refusedValues(() => expectNotRefused(text))] as const

describe('refused by what it is called elsewhere', () => {
  test.each([
    ['30 g Tollkirschen', 'nightshade'],
    ['trombone d’angelo', 'nightshade'],
    ['beleño', 'nightshade'],
    ['МАЙГЛЁКХЕН + ландыш', 'lily_valley'],
    ['8 lemons + muguet', 'lily_valley'],
    ['Eisenhut', 'aconite'],
    ['Herbstzeitlose', 'colchicum'],
    ['наперстянка', 'foxglove'],
    ['Schierling', 'hemlock'],
    ["fool's parsley", 'hemlock'],
    ['Aethusa cynapium', 'hemlock'],
    ['tejo', 'yew'],
    ['weißer Germer', 'veratrum'],
    ['weiße Nieswurz', 'veratrum'],
    ['fresh laurier-rose leaves', 'oleander'],
    ['10 g 夹竹桃', 'oleander'],
    ['Goldregen', 'laburnum_etc'],
    ['poppy seed pods', 'drugs'],
    ['Hahnenfuß', 'laburnum_etc'],
    ['dafne', 'garden_poisons'],
    ['ginestra', 'garden_poisons'],
    ['broom flowers', 'garden_poisons'],
    ['broom', 'garden_poisons'],
    ['ippocastano', 'garden_poisons'],
    ['castagne d’India', 'garden_poisons'],
    ['10 conkers', 'garden_poisons'],
    ['giglio', 'garden_poisons'],
    ['white lilies', 'garden_poisons'],
    ['calla', 'garden_poisons'],
    ['buckthorn berries', 'garden_poisons'],
    ['black locust bark', 'garden_poisons'],
    ['tulip petals', 'garden_poisons'],
    ['bucaneve', 'garden_poisons'],
    ['nux vomica', 'garden_poisons'],
  ])('%s is %s', (text, id) => {
    expect(refused(text)).toMatchObject(['refused refused_botanical', { id }])
  })

  test.each(['Tolkirsche', 'Maiglöckhen', 'mugueta', 'Herbstzeitlsoe', 'colchiqe'])('%s is asked back', (text) => {
    expect(refusal(() => expectNotRefused(text))).toBe('ambiguous near_refused')
  })
})

describe('the Polish name of the yew in a sentence', () => {
  test.each([
    'tis the season for sloes',
    "'Tis the season to be merry",
    '’tis a good year for plums',
    'tis nearly time to strain it',
    'tis not bitter enough',
    'and tis only lemon in there',
    'so tis done at last',
    'tis my best nocino yet',
    "I'd say 'tis too sweet",
    'tis true that cloves take over',
    "'tis ten lemons and a litre of vodka",
    'tis 10 lemons and a litre of vodka',
  ])('is not meant by English: %s', (text) => {
    expect(refusedIn(text)).toEqual([])
  })

  test.each([
    'steep tis in vodka',
    '30 g tis',
    "'tis berries in vodka",
    'vodka, 30 g of tis 10 lemons',
    'tis berries and sugar',
    '10 lemons, tis, sugar',
    'tis the season for sloes, so I add 30 g tis',
  ])('is refused where it names a plant: %s', (text) => {
    expect(refusedIn(text).map(({ id }) => id)).toEqual(['yew'])
  })
})

/** Good to eat or commonly steeped, in five languages; none of them may be taken for what is refused. */
const GOOD = (
  'meadowsweet, woodruff, Waldmeister, aspérule, sea buckthorn, sea buckthorn berries, Sanddorn, argousier, olivello spinoso, ' +
  "butcher's broom, pungitopo, sweet chestnut, chestnuts, castagne, marroni, marron, châtaigne, Esskastanie, Esskastanien, castaña, " +
  'daylily, day lily buds, water lily, hollyhock, hollyhocks, acacia flowers, robinia flowers, fiori di acacia, Robinienblüten, ' +
  'figue, figues, Feige, higo, Erdbeere, Erdbeeren, fraise, fresa, Himbeere, framboise, frambuesa, Heidelbeere, myrtille, arándano, ' +
  'Holunderblüten, fleurs de sureau, flor de saúco, Johannisbeere, Johannisbeeren, cassis, grosella, Stachelbeere, groseille, Quitte, ' +
  'coing, membrillo, Zitrone, citron, limón, naranja, mandarine, Pampelmuse, pomelo, Ingwer, gingembre, jengibre, Zimt, cannelle, ' +
  'canela, Nelke, girofle, clavo, Kardamom, Vanille, vainilla, Lavendel, lavande, Kamille, camomille, manzanilla, Minze, menthe, ' +
  'hierbabuena, Salbei, sauge, salvia, Rosmarin, romarin, romero, Thymian, thym, tomillo, Basilikum, basilic, albahaca, Wacholder, ' +
  'genièvre, enebro, Enzian, gentiane, genciana, Wermut, absinthe, ajenjo, Fenchel, fenouil, hinojo, Kümmel, carvi, Anis, Sternanis, ' +
  'badiane, Koriander, coriandre, cilantro, Kreuzkümmel, cumin, comino, Muskatnuss, noix de muscade, nuez moscada, nuez, nueces, ' +
  'Walnuss, noix, Haselnuss, noisette, avellana, Mandel, amande, almendra, Pflaume, prune, ciruela, Schlehe, prunelle, endrina, Kirsche, ' +
  'cerise, cereza, Pfirsich, pêche, melocotón, Aprikose, abricot, albaricoque, Birne, poire, Apfel, pomme, manzana, Rhabarber, ruibarbo, ' +
  'Granatapfel, grenade, granada, Hibiskus, jamaica, Zitronenmelisse, mélisse, toronjil, Zitronengras, citronnelle, Eisenkraut, verveine, ' +
  'hierbaluisa, Lorbeer, laurier, laurel cerca, Rose, rosa, Veilchen, violette, violeta, violets, primrose, cowslip, dandelion, pissenlit, ' +
  'Löwenzahn, tarassaco, nettle, ortica, Brennnessel, elderflower bloom, cherry blossom, Kirschblüten, jasmine, gelsomino, Jasmin, ' +
  'lime blossom, tiglio, tilleul, Lindenblüten, tila, yarrow, achillea, achillée, Schafgarbe, milenrama, hyssop, issopo, Ysop, tarragon, ' +
  'dragoncello, Estragon, marjoram, Majoran, oregano, savory, Bohnenkraut, chervil, Kerbel, lovage, Liebstöckel, dill, parsley, ' +
  'Petersilie, celery, sorrel, Sauerampfer, bayberry, bayberries, barberry, barberries, Berberitze, rowan, rowanberries, Vogelbeere, ' +
  'sorbo, medlar, Mispel, nespola, níspero, hawthorn, Weissdorn, aubépine, rosehip, Hagebutte, cynorrhodon, cloudberry, lingonberry, ' +
  'Preiselbeere, gooseberry, mulberry, Maulbeere, jostaberry, aronia, serviceberry, juneberry, persimmon, kaki, mango, ananas, pineapple, ' +
  'papaya, passion fruit, kiwi, melon, melone, watermelon, grape, uva, Weinbeere, Weinbeeren, raisin sec, banana, coconut, date, cacao, ' +
  'cocoa, coffee beans, Kaffee, thé, sarsaparilla, galangal, grains of paradise, cubeb, long pepper, sumac, tamarind, hops, houblon, ' +
  'Hopfen, luppolo, malt, oats, millet, miglio, rice, acorn, ghianda, fir tips, spruce tips, Fichtenspitzen, larch, lichen, seaweed, ' +
  'cardoon, chicory, burdock, marshmallow root, althea, mallow, malva, calendula, Ringelblume, souci, cornflower, Kornblume, bleuet, ' +
  'sunflower, nasturtium, cappuccina, pansy, marigold, tagetes, geranium, lilac, lilla, Flieder, honey locust, orris root, giaggiolo, ' +
  'raíz de lirio, Rauke, rucola, Lattich, lettuce, lattuga, polen, pulpe, poppy seed, semi di papavero, Mohnsamen, fenugreek, ' +
  'erba cipressina, erba luisa, cedrina, cedro, chinotto, pompelmo, mirto, corbezzolo, giuggiole, carrube, liquirizia, china berries tea'
).split(', ')

test('what is good is neither refused nor near', () =>
  eachHolds(
    GOOD.filter((name) => !['poppy seed', 'semi di papavero', 'Mohnsamen', 'china berries tea'].includes(name)),
    String,
    (name) => expectNotRefused(name),
  ))

test('no name is written twice, and each holds a letter', () => {
  const keys = allRefusedNames.map(({ name, refused: { id } }) => `${id} ${plainWords(name).join(' ')}`)
  expect(allRefusedNames.filter(({ name }) => !/\p{L}/u.test(name))).toEqual([])
  // Of one plant the list writes the same twice, with a mark and without.
  expect(keys.filter((key, at) => keys.indexOf(key) !== at)).toEqual(['st_johns_wort st johns wort'])
})
