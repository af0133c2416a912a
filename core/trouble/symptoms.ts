/** What can be seen, smelt, tasted or read of a jar that is not as it should be. */
export type SymptomId = keyof typeof table

/** What people call it. */
export interface SymptomWords {
  /** In English, the name that completes it first. */
  readonly en: readonly string[]
  readonly it: readonly string[]
}

const words = (en: string, it: string): SymptomWords => ({ en: en.split(', '), it: it.split(', ') })

/**
 * The words people use, collected from what makers type. Each is of one symptom only: where a word may be of several,
 * it stands by the likeliest, whose causes send on to the others.
 */
// biome-ignore format: a table, a symptom a row
const table = {
  // What it looks like.
  cloudy_on_mixing: words(
    'cloudy, milky, murky, hazy, foggy, louche, opaque, not clear, went cloudy, cloudy with the syrup, ' +
      'went white when I poured the syrup in, hazy as soon as I added water, cloudy after sweetening',
    'torbido, lattiginoso, è diventato bianco con lo sciroppo, opaco, è venuto tutto opaco'),
  cloudy_in_cold: words(
    'cloudy in the cold, cloudy in the freezer, cloudy in the fridge, goes cloudy in the freezer, hazy when cold, ' +
      'foggy in the freezer, milky in the fridge, hazy when cold and clear at room temperature',
    'torbido da freddo, si intorbida in freezer, torbido in frigo'),
  cloudy_later: words(
    'cloudy later, went cloudy after weeks, clear at first, clear at first and hazy now, ' +
      'haze came back after filtering, cloudy again',
    'torbido dopo settimane, prima era limpido, di nuovo torbido'),
  oil_ring: words(
    'oil ring, greasy film on top, yellow drops floating, yellow ring round the neck, oily on top, oil on top, ' +
      'oil drops',
    'anello oleoso, olio in superficie, gocce di olio'),
  separated: words(
    'separated into layers, layers, split, two layers, separated, syrup at the bottom',
    'si è separato, a strati, due strati'),
  sediment: words(
    'sediment, bits at the bottom, dregs, flakes, sludge at the bottom, deposit, powder at the bottom, ' +
      'white sandy bits',
    'deposito, fondo, sedimento, deposito sul fondo, posa'),
  gelled: words(
    'set like jelly, gelled, jelly, gloopy, turned to gel, turned to jelly, thick strings, stringy, slimy and thick',
    'gelatina, si è gelificato, gelatinoso, denso come gelatina'),
  crystals: words(
    'crystals, sugar at the bottom, grainy, sugar crystals, needles in it, sugar came back out, rocks on the bottom',
    'cristalli, zucchero sul fondo, granuloso'),
  frozen: words(
    'froze, slushy, frozen, ice in the bottle, solid in the freezer, slush, icy, went solid in the freezer',
    'ghiacciato, si è ghiacciato, granita, si è congelato'),
  mould: words(
    'mould, mold, mouldy, moldy, fuzzy, furry, fluff, white fur on the fruit, floating fruit went green, ' +
      'furry on top, something is growing on it',
    'muffa, pelo bianco, peloso, ha fatto la muffa'),
  pink_orange_slime: words(
    'pink slime, orange slime, slime, red film, slimy lid, black spots, coloured slime',
    'patina rosa, melma, macchie nere, patina viscida'),
  skin_on_top: words(
    'skin on top, film on the surface, white layer, cream skin, wrinkled film, white film',
    'pellicola in superficie, velo bianco, pelle sopra'),
  floating_bits: words(
    'seeds floating, bits on top, fruit floats, things floating, floating bits, floating fruit, bits in it',
    'galleggia, pezzetti in superficie, la frutta galleggia'),
  insects: words(
    'fruit flies in it, insects, a worm, maggots, bugs, flies, worm, fly in it',
    'moscerini, insetti, un verme, larve'),
  hairs_or_spines: words(
    'hairs in it, rosehip itch, scratchy throat, prickly, spines, itchy, hairs',
    'peli, spine, pizzica in gola'),
  brown: words(
    'turned brown, brown, went brown, went dark, darker, turned dark',
    'imbrunito, è diventato marrone, scurito, marrone'),
  faded: words(
    'lost its colour, faded, red went pale, red went orange, pink went beige, lost its color, paler, colour gone',
    'scolorito, ha perso il colore, sbiadito'),
  black_or_metal: words(
    'went black, tastes of metal, grey, inky, green rim, rusty lid, metallic, black, rust',
    'nero, sa di metallo, grigio, coperchio arrugginito'),
  fruit_went_pale: words(
    'fruit went white, fruit went pale, peel turned white, fruit lost colour, berries are grey, pale peel, white peel',
    'frutta sbiancata, scorze bianche, frutta pallida'),
  leaves_went_black: words(
    'leaves turned black, basil went black, mint brown, herbs slimy, black leaves, herbs went black',
    'foglie nere, basilico nero, erbe annerite'),
  // What it tastes of.
  bitter: words(
    'bitter, tastes of pith, pithy, medicinal, harsh bitter, too bitter, tannic',
    'amaro, sa di bianco della buccia, troppo amaro'),
  harsh_hot: words(
    'harsh, burns, tastes like paint stripper, too hot, rough, too strong, rough as anything, fiery, burns the throat',
    'brucia, troppo alcolico in bocca, ruvido, brucia in gola, troppo forte'),
  too_sweet: words(
    'too sweet, cloying, sickly, sickly sweet, syrupy, way too sweet',
    'troppo dolce, stucchevole'),
  too_dry_or_sour: words(
    'not sweet enough, dry, thin, too dry, needs sugar, needs more sugar',
    'poco dolce, secco, manca zucchero'),
  too_weak: words(
    'too weak, weak, watery, no kick, diluted, watered down, not strong enough',
    'troppo leggero, annacquato, poco alcolico'),
  weak_taste: words(
    'no flavour, no taste, tastes of nothing, weak aroma, no aroma, no smell, lost its scent, no flavor, bland, ' +
      'faint, weak taste, not enough flavour',
    'non sa di niente, poco profumo, senza profumo, poco sapore'),
  too_sour: words(
    'sour, too sour, acidic, sharp, tart, too sharp',
    'acido, troppo aspro, aspro'),
  too_spicy: words(
    'too spicy, spicy, too hot from chilli, burns from ginger, pepper too strong, too much chilli, nuclear',
    'troppo piccante, piccante'),
  soapy_perfume: words(
    'tastes of soap, soapy, perfume, like perfume, like lavender soap, tastes like shampoo, like shampoo',
    'sa di sapone, sa di profumo, saponoso'),
  cloth_or_paper_taste: words(
    'tastes of cloth, smells of washing powder, paper taste, cardboard, tastes of paper, papery',
    'sa di carta, sa di panno, sa di detersivo'),
  plastic_taste: words(
    'tastes of plastic, tastes of rubber, rubber smell, smells of rubber, plastic bottle, hose taste, plastic',
    'sa di plastica, sa di gomma'),
  // What it smells of.
  vinegar: words(
    'smells of vinegar, vinegar, tastes of vinegar, gone to vinegar, vinegary',
    'sa di aceto, odore di aceto, aceto'),
  solvent: words(
    'smells of solvent, smells of nail varnish, smells of glue, smells of acetone, petrol smell, paint thinner, ' +
      'turpentine, nail polish remover, smells of petrol, nail varnish, nail polish, acetone',
    'sa di acetone, odore di colla, odore di benzina, solvente'),
  rotten_egg: words(
    'smells of rotten eggs, sulphur, smells of cabbage, smells of garlic, struck match, eggy, rotten egg, sulfur',
    'puzza di uova marce, zolfo, sa di uova marce'),
  musty: words(
    'musty, smells of cellar, corked, smells of wet cardboard, mouldy smell, damp smell',
    'sa di muffa, sa di cantina, sa di tappo'),
  // What it does.
  fermenting: words(
    'fizzing, fizzy, bubbles, bubbling, foam, lid popped, swollen, smells of bread, smells of yeast, fermenting, ' +
      'ferments, yeasty, frothy',
    'fermenta, bollicine, frizza, schiuma, sa di pane, sa di lievito'),
  pressure: words(
    'lid bulging, bulging, swollen lid, hiss when opened, hisses, hissed, cork pushed out, bottle burst, pressure',
    'coperchio gonfio, tappo spinto fuori, sfiata, pressione'),
  curdled: words(
    'curdled, lumps in the cream liqueur, cream went lumpy, lumpy, cream split',
    'cagliato, grumi nella crema, impazzito'),
  stuck_filter: words(
    "filter clogged, stuck filter, drips for hours, won't run through the coffee filter, filter is slow, clogged, " +
      'takes forever to filter',
    'filtro intasato, filtra lentamente, non passa dal filtro'),
  sugar_not_dissolving: words(
    'sugar will not dissolve, sugar stays solid, sugar does not dissolve, undissolved sugar',
    'lo zucchero non si scioglie, zucchero non sciolto'),
  leaking_lid: words(
    'lid leaks, leaking, sticky jar, level dropped, lid not tight, swing top loose, leaks',
    'perde dal coperchio, il livello è sceso, perde'),
  hydrometer_odd: words(
    'hydrometer reading impossible, alcoholmeter shows 5 %, reading below zero, hydrometer floats too high, ' +
      'measured strength is wrong, strange reading, wrong reading',
    'alcolometro sbagliato, misura impossibile, lettura strana'),
  // What happened to it.
  spilled_or_burnt: words(
    'it caught fire, caught fire, flames, steam, hot spirit, spilled, spilt, I burned myself',
    'ha preso fuoco, rovesciato, fiamme'),
  someone_ill: words(
    'I feel ill after drinking it, someone is ill, blurred vision, sick after a glass, child drank it, ' +
      'the dog ate the fruit',
    'sto male dopo averlo bevuto, vista offuscata, il bambino lo ha bevuto'),
  wrong_spirit: words(
    'used the wrong alcohol, used rubbing alcohol, methylated spirit, bioethanol, home-distilled, ' +
      'no label on the spirit, wrong spirit, wrong alcohol',
    'alcol sbagliato, alcol denaturato, ho usato alcol rosa'),
  unknown_plant: words(
    'not sure what the plant is, foraged, might be the wrong berry, someone gave me the leaves, ' +
      'found a strange leaf in it, wrong berry, unsure of the plant',
    'non sono sicuro della pianta, bacca sbagliata, foglia strana'),
  cracked_stones: words(
    'stones cracked, kernels in it, tastes of almond, tastes of marzipan, pips crushed, cracked stones, ' +
      'blended the cherries with the stones, stones in it',
    'noccioli rotti, sa di mandorla, semi tritati'),
  broken_glass: words(
    'glass chipped, jar cracked, cracked, bottle broke, splinter, glass in it, chipped, broken glass, cracked jar',
    'vetro scheggiato, vaso incrinato, bottiglia rotta, vetro rotto'),
  lead_crystal: words(
    'kept in a crystal decanter, crystal decanter, decanter, old decanter, glazed pot, pewter flask, ceramic jar',
    'caraffa di cristallo, fiasca di peltro, coccio smaltato'),
  garlic_or_vegetable: words(
    'garlic in it, onion, chilli in oil, mushroom, vegetable infusion, garlic turned blue, blue garlic',
    "aglio, cipolla, peperoncino sott'olio, aglio blu"),
  left_in_sun: words(
    'left in the sun, stood on the windowsill, in the hot car, near the stove, in the sun, got hot',
    'lasciato al sole, sul davanzale, in macchina al caldo'),
  forgotten: words(
    'forgot it for a year, forgotten, steeped far too long, found an old jar, no label on the jar, how old is this, ' +
      'old jar, too long on the fruit',
    'dimenticato, vaso vecchio, macerato troppo a lungo'),
} as const satisfies Readonly<Record<string, SymptomWords>>

export const symptoms: Readonly<Record<SymptomId, SymptomWords>> = table

export const symptomIds = Object.keys(table) as readonly SymptomId[]
