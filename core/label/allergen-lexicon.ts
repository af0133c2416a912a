import type { Allergen } from './allergens.ts'

type Names = Readonly<Partial<Record<Allergen, string>>>

/** Names in English, Italian and Latin, then German, French and Spanish; plurals in -s are found of themselves. */
export const ALLERGEN_LEXICON: Names = {
  peanut:
    'peanut, groundnut, monkey nut, goober, arachide, arachidi, nocciolina, noccioline, Arachis hypogaea, Erdnuss, Erdnüsse, cacahuète, cacahuete, cacahuate',
  walnut:
    'walnut, black walnut, green walnut, noce, noci, noce verde, noci verdi, mallo di noce, Juglans regia, Juglans nigra, Walnuss, Walnüsse, nuez, nueces, noix',
  almond:
    'almond, mandorla, mandorle, marzipan, marzapane, frangipane, amaretto, amaretti, orgeat, orzata di mandorla, Prunus dulcis, Prunus amygdalus, Mandel, Mandeln, amande, almendra',
  hazelnut:
    'hazelnut, hazel nut, cobnut, cob nut, filbert, nocciola, nocciole, gianduja, gianduia, noisette, Corylus avellana, Haselnuss, Haselnüsse, avellana',
  cashew: 'cashew, anacardo, anacardi, Anacardium occidentale, cajou',
  pecan: 'pecan, hickory nut, noce pecan, noci pecan, noix de pécan, nuez pecana, Carya illinoinensis',
  brazil_nut:
    'Brazil nut, para nut, noce del Brasile, noci del Brasile, noce brasiliana, noci brasiliane, Bertholletia excelsa, Paranuss, Paranüsse, noix du Brésil, nuez de Brasil',
  pistachio: 'pistachio, pistacchio, pistacchi, Pistacia vera, Pistazie, Pistazien, pistache, pistacho',
  macadamia: 'macadamia, Queensland nut, noce macadamia, noci macadamia, Macadamia integrifolia',
  nut: 'nut, mixed nut, tree nut, frutta a guscio, frutta secca, praline, pralina, nougat, torrone',
  sesame: 'sesame, sesamo, benne, gingelly, til seed, tahini, tahina, halva, Sesamum indicum, Sesam, sésame, sésamo',
  mustard: 'mustard, senape, Sinapis alba, Brassica nigra, Brassica juncea, Senf, moutarde, mostaza',
  celery: 'celery, celeriac, sedano, sedani, sedano rapa, Apium graveolens, Sellerie, céleri, apio',
  lupin: 'lupin, lupine, lupino, lupini, Lupinus albus, lupins, altramuz, altramuces',
  soya: 'soya, soy, soybean, edamame, tofu, miso, soia, Glycine max, Soja',
  wheat:
    'wheat, spelt, kamut, khorasan, emmer, einkorn, durum, semolina, bulgur, couscous, bran, frumento, grano, farro, semola, crusca, Triticum aestivum, Weizen, Dinkel, blé, épeautre, trigo, espelta',
  rye: 'rye, segale, Secale cereale, Roggen, seigle, centeno',
  barley: 'barley, malt, orzo, malto, Hordeum vulgare, Gerste, Malz, orge, cebada',
  oats: 'oat, oatmeal, oatstraw, avena, Avena sativa, Hafer, avoine',
  gluten: 'gluten, seitan, bread, pane, breadcrumb',
  sulphites:
    'raisin, sultana, prune, uvetta, uva passa, uva sultanina, uvetta sultanina, zibibbo, prugna secca, prugne secche, Rosine, Rosinen, candied peel, candied fruit, mixed peel, canditi, frutta candita, scorza candita, scorze candite, Trockenfrucht, Trockenfrüchte',
  nut_traces: 'cocoa, cacao, chocolate, cioccolato',
  milk_traces: 'chocolate, cioccolato',
  soya_traces: 'chocolate, cioccolato',
}

/** Names in which the word of an allergen means something else. */
export const NO_ALLERGEN =
  'noce moscata, noci moscate, nuez moscada, noix de muscade, noce di cocco, noci di cocco, noix de coco, nuez de coco, ' +
  'noce di cola, noci di cola, noix de cola, nuez de cola, kola nut, cola nut, tiger nut, pine nut, water chestnut, ' +
  'sedano di monte, sedano di montagna, sedano montano, pesca noce, pesche noci, pesche noce, grano saraceno, grano turco, grano di pepe, blé noir, trigo sarraceno'

/** Fruit that is sold sulphured where it is dried or candied. */
export const SULPHURED_FRUIT =
  'apricot, fig, peach, nectarine, pear, apple, mango, papaya, pineapple, banana, plum, damson, cherry, sour cherry, cranberry, blueberry, mulberry, goji, ' +
  'date, kiwi, currant, grape, strawberry, melon, persimmon, coconut, fruit, orange, lemon, citron, ginger, tomato, ' +
  'albicocca, albicocche, fico, fichi, pesca, pesche, pera, pere, mela, mele, ananas, susina, susine, prugna, prugne, ciliegia, ciliegie, amarena, amarene, ' +
  'dattero, datteri, uva, fragola, fragole, melone, cachi, mirtillo, mirtilli, gelso, gelsi, frutta, arancia, arance, limone, limoni, cedro, zenzero, scorza, scorze'
export const DRIED =
  'dried, dry, sun-dried, sundried, semi-dried, candied, crystallised, crystallized, glacé, secco, secca, secchi, secche, essiccato, essiccata, essiccati, essiccate, candito, candita, canditi, candite, disidratato, disidratata, disidratati, disidratate'

/** What is said of fruit that was dried without sulphur. */
export const UNSULPHURED =
  'unsulphured, unsulfured, unsulphurated, un-sulphured, non-sulphured, non sulphured, not sulphured, sulphite-free, sulfite-free, sulphite free, sulfite free, no sulphite, no sulfite, ' +
  'without sulphite, without sulfite, non solforato, non solforata, non solforati, non solforate, senza solfiti, senza solforosa, ungeschwefelt, non soufré'
