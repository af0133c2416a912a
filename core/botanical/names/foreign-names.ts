import type { AskId } from '../ask-back.ts'

/**
 * Plants that have a limit in German, French and Spanish, so that the limit holds under these names too: those that were
 * thought of, from memory. Singular and plural where they differ by more than an s, joined with commas. Words that are first
 * of all a drink (`Absinth`, `anís`) or sweets (`Lakritz`) are left out.
 */
export const namesElsewhere: Readonly<Record<string, string>> = {
  sage: 'Salbei, Salbeiblatt, Salbeiblätter, Gartensalbei, sauge, sauge officinale, feuille de sauge, feuilles de sauge, hoja de salvia, hojas de salvia',
  rosemary: 'Rosmarin, Rosmarinzweig, Rosmarinzweige, romarin, romero',
  fennel_seed:
    'Fenchelsamen, Fenchelsaat, graine de fenouil, graines de fenouil, semilla de hinojo, semillas de hinojo',
  aniseed:
    "Anissamen, Anissaat, grüner Anis, graine d'anis, graines d'anis, anis vert, anís verde, semilla de anís, semillas de anís",
  star_anise: 'Sternanis, Echter Sternanis, anis étoilé, badiane de Chine, anís estrellado',
  cinnamon_ceylon: 'Ceylonzimt, Ceylon-Zimt, echter Zimt, cannelle de Ceylan, canela de Ceilán, canela de Ceylán',
  cinnamon_cassia:
    'Kassiazimt, Kassia-Zimt, Cassiazimt, Cassia-Zimt, Kassienzimt, Zimtkassie, Zimt (Kassie), chinesischer Zimt, cannelle de Chine, cannelle casse, canela china, canela de la China, canela casia',
  clove:
    'Gewürznelke, Gewürznelken, Nelke, Nelken, clou de girofle, clous de girofle, girofle, clavo de olor, clavos de olor, clavo, clavos',
  allspice:
    'Pimentkörner, Nelkenpfeffer, Jamaikapfeffer, Neugewürz, piment de la Jamaïque, poivre de la Jamaïque, pimienta de Jamaica',
  chilli_fresh:
    'frische Chili, frische Chilis, frische Chilischoten, piment frais, piments frais, guindilla fresca, guindillas frescas',
  chilli_dried:
    'getrocknete Chili, getrocknete Chilis, getrocknete Chilischoten, Chilipulver, piment séché, piments séchés, guindilla seca, guindillas secas, chile seco, chiles secos',
  saffron: 'Safran, Safranfäden, filaments de safran, azafrán, hebras de azafrán',
  nutmeg:
    'Muskatnuss, Muskatnuß, Muskatnüsse, noix de muscade, noix muscade, muscade, nuez moscada, nueces moscadas, noz-moscada',
  turmeric: 'Kurkuma, Kurkumawurzel, Gelbwurz, Gelbwurzel, racine de curcuma, cúrcuma, raíz de cúrcuma',
  liquorice_root:
    'Süßholz, Süssholz, Suessholz, Süßholzwurzel, Süssholzwurzel, réglisse, racine de réglisse, bâton de réglisse, bâtons de réglisse, regaliz, raíz de regaliz, palo de regaliz, orozuz',
  angelica_root:
    "Engelwurz, Angelika, Angelikawurzel, angélique, racine d'angélique, racines d'angélique, angélica, raíz de angélica",
  gentian_root:
    'Enzian, Enzianwurzel, gelber Enzian, gentiane, gentiane jaune, racine de gentiane, racines de gentiane, genciana, raíz de genciana',
  wormwood: 'Wermut, Wermutkraut, absinthe, grande absinthe, armoise absinthe, ajenjo, ajenjo mayor',
  genepi: 'Edelraute, schwarze Edelraute, génépi blanc, génépi noir, genepí',
  lavender:
    'Lavendel, Lavendelblüte, Lavendelblüten, fleur de lavande, fleurs de lavande, flor de lavanda, flores de lavanda, espliego',
  coffee_whole:
    'Kaffeebohne, Kaffeebohnen, grain de café, grains de café, café en grains, grano de café, granos de café',
  coffee_ground: 'gemahlener Kaffee, Kaffeepulver, café moulu, café molido',
  tea_black: 'Schwarztee, schwarzer Tee, té negro',
  tea_green: 'Grüntee, grüner Tee',
  mace: 'Muskatblüte, Muskatblüten, Mazis, fleur de muscade, fleurs de muscade, macís',
  woodruff: 'Waldmeister, aspérule odorante, reine des bois, asperilla, asperilla olorosa',
  bison_grass: 'Mariengras, Büffelgras, Bisongras, herbe aux bisons, avoine odorante, hierba de bisonte',
  hyssop: 'Ysop, hysope, hisopo',
  yerba_mate: 'Mate-Tee, Matetee, maté, hierba mate',
}

/** The same of words that call for a question. */
export const asksElsewhere: Readonly<Partial<Record<AskId, string>>> = {
  cinnamon:
    'Zimt, Zimtstange, Zimtstangen, Zimtrinde, bâton de cannelle, bâtons de cannelle, canela, canela en rama, rama de canela, ramas de canela',
  coffee: 'Kaffee, café, cafés',
  chilli: 'Chilis, Chilischote, Chilischoten, piment fort, piments forts, guindilla, guindillas',
  pepper: 'piment, piments, Pfeffer, poivre, pimienta',
  tea: 'Tee',
}
