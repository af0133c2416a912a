import type { RefusalId } from '../refused.ts'

/**
 * What is refused in German, French and Spanish, and some in Russian and Chinese: those that were thought of, from memory.
 * Singular and plural where they differ by more than an s, joined with commas.
 */
export const refusedElsewhere: Readonly<Partial<Record<RefusalId, string>>> = {
  tobacco: 'Tabak, Zigarre, Zigarren, Zigarette, Zigaretten, tabac, cigare, tabaco, cigarro, cigarrillo, табак, 烟草',
  foxglove:
    'Fingerhut, Fingerhüte, roter Fingerhut, gant de Notre-Dame, gantelée, dedalera, dedaleras, наперстянка, 洋地黄',
  oleander:
    'Oleanderblatt, Oleanderblätter, laurier-rose, lauriers-roses, oléandre, adelfa, baladre, laurel rosa, олеандр, 夹竹桃',
  yew: "Eibe, Eiben, Eibenbeere, Eibenbeeren, Eibennadeln, if commun, if à baies, baie d'if, tejo, texo, тис, 红豆杉",
  hemlock:
    'Schierling, gefleckter Schierling, Hundspetersilie, ciguë, grande ciguë, petite ciguë, ciguë des jardins, cicuta menor, болиголов',
  water_hemlock:
    'Wasserschierling, Rebendolde, Safranrebendolde, ciguë aquatique, ciguë vireuse, œnanthe safranée, navet du diable, cicuta acuática, nabo del diablo, вех ядовитый, цикута',
  aconite:
    'Eisenhut, blauer Eisenhut, Sturmhut, Wolfswurz, aconit, napel, casque-de-Jupiter, tue-loup, matalobos, аконит, 乌头, 附子',
  nightshade:
    'Tollkirsche, Tollkirschen, schwarze Tollkirsche, Stechapfel, Engelstrompete, Engelstrompeten, Bilsenkraut, Alraune, Alraunen, belladone, stramoine, pomme épineuse, trompette des anges, jusquiame, belladona, estramonio, floripondio, trompeta de ángel, beleño, beleño negro, красавка, белладонна, дурман, белена, мандрагора, 曼陀罗, 颠茄',
  lily_valley:
    'Maiglöckchen, Maigloeckchen, muguet, muguet de mai, muguete, lirio de los valles, lirio del valle, convalaria, ландыш, 铃兰',
  colchicum:
    'Herbstzeitlose, Herbstzeitlosen, Zeitlose, colchique, safran des prés, safran bâtard, cólquico, azafrán bastardo, azafrán loco, безвременник, 秋水仙',
  veratrum:
    'Germer, weisser Germer, weisse Nieswurz, vératre, hellébore blanc, eléboro blanco, vedegambre, чемерица, 藜芦',
  hellebore:
    'Nieswurz, Christrose, Christrosen, Schneerose, Schneerosen, ellébore, rose de Noël, eléboro, heléboro, rosa de Navidad, морозник',
  jp_star_anise:
    'japanischer Sternanis, anis étoilé japonais, anis étoilé du Japon, badiane japonaise, badiane du Japon, anís estrellado japonés, 莽草',
  castor:
    'Rizinus, Rizinussamen, Wunderbaum, Paternostererbse, ricin, graine de ricin, haricot paternoster, semilla de ricino, higuerilla, клещевина, 蓖麻',
  rue: 'Raute, Weinraute, Gartenraute, rue officinale, rue fétide, ruda, ruda común, рута',
  pennyroyal: 'Polei, Poleiminze, menthe pouliot, pouliot, poleo, menta poleo, poleo menta, мята болотная',
  tansy: 'Rainfarn, tanaisie, hierba lombriguera, пижма',
  tonka: 'Tonkabohne, Tonkabohnen, fève tonka, haba tonka, sarapia, тонка',
  calamus: 'Kalmus, Kalmuswurzel, acore, acore odorant, acore calame, cálamo, аир, 菖蒲',
  sassafras: 'Fenchelholz, Sassafraswurzel, sasafrás, сассафрас',
  kernels:
    "Aprikosenkern, Aprikosenkerne, Marillenkern, Marillenkerne, Pfirsichkern, Pfirsichkerne, Kirschkern, Kirschkerne, Pflaumenkern, Pflaumenkerne, Zwetschgenkern, Zwetschgenkerne, Apfelkern, Apfelkerne, Quittenkern, Quittenkerne, Bittermandel, Bittermandeln, amande amère, amande d'abricot, pépin de pomme, pépin de coing, almendra amarga, hueso de albaricoque, hueso de melocotón, hueso de cereza, hueso de ciruela, semilla de manzana, горький миндаль",
  cherry_laurel:
    'Kirschlorbeer, Lorbeerkirsche, Lorbeerkirschen, laurier-cerise, laurier-palme, laurel cerezo, лавровишня',
  elder_raw:
    'Holunderblatt, Holunderblätter, Holunderrinde, Holunderwurzel, Zwergholunder, Attich, feuille de sureau, écorce de sureau, sureau hièble, hièble, hoja de saúco, corteza de saúco, yezgo, saúco menor',
  elderberry: 'Holunderbeere, Holunderbeeren, Fliederbeere, Fliederbeeren, baie de sureau, baya de saúco, ягоды бузины',
  mushrooms:
    'Fliegenpilz, Fliegenpilze, Knollenblätterpilz, Knollenblätterpilze, Faltentintling, wilde Pilze, amanite tue-mouches, amanite phalloïde, coprin, champignon sauvage, matamoscas, oronja verde, seta silvestre, hongo silvestre, мухомор, бледная поганка',
  st_johns_wort: 'Johanniskraut, millepertuis, hierba de San Juan, hipérico, corazoncillo, зверобой',
  germander: 'Gamander, Edelgamander, germandrée, дубровник',
  pa_plants:
    'Beinwell, Borretsch, Huflattich, Pestwurz, Kreuzkraut, Greiskraut, Jakobskreuzkraut, consoude, bourrache, tussilage, pétasite, séneçon, séneçon jacobée, consuelda, borraja, tusílago, petasita, hierba de Santiago, окопник, огуречник, мать-и-мачеха, белокопытник, крестовник',
  aristolochia: 'Osterluzei, aristoloche, aristoloquia, кирказон, 马兜铃',
  gelsemium: 'Carolina-Jasmin, gelber Jasmin, jasmin de Caroline, jazmín de Carolina, 钩吻, 断肠草',
  rhododendron: 'Alpenrose, Alpenrosen, Azaleen, Rhododendren, рододендрон, азалия, багульник',
  laburnum_etc:
    "Goldregen, Liguster, Aronstab, Zaunrübe, Zaunrüben, Narzisse, Narzissen, Osterglocke, Osterglocken, Hortensie, Rittersporn, Hahnenfuss, Butterblume, Butterblumen, Alpenveilchen, cytise, faux ébénier, troène, gouet, pied-de-veau, bryone, narcisse, jonquille, hortensia, pied-d'alouette, dauphinelle, renoncule, bouton d'or, lluvia de oro, codeso, aligustre, nueza, junquillo, espuela de caballero, botón de oro, ciclamen, нарцисс, лютик, гортензия, бирючина, бобовник, 水仙",
  mistletoe: 'Mistel, Misteln, gui, muérdago, омела, 槲寄生',
  savin: 'Sadebaum, Sebenbaum, genévrier sabine, enebro sabina, можжевельник казацкий',
  drugs:
    'Mohnkapsel, Mohnkapseln, Mohnstroh, Schlafmohn, Hanfblüte, Hanfblüten, Meerträubel, tête de pavot, capsule de pavot, pavot à opium, fleur de chanvre, cápsula de adormidera, cabeza de adormidera, opio, flor de cáñamo, опийный мак, конопля, эфедра, 麻黄, 罂粟',
  rhubarb_tomato:
    'Rhabarberblatt, Rhabarberblätter, Kartoffelblatt, Kartoffelblätter, Tomatenblatt, Tomatenblätter, grüne Kartoffel, grüne Kartoffeln, feuille de rhubarbe, feuille de tomate, pomme de terre verte, hoja de ruibarbo, hoja de tomate',
  quinine_bark: 'Chinarinde, quinquina, écorce de quinquina, quina, corteza de quina, хинная кора',
  fig_leaf: 'Feigenblatt, Feigenblätter, feuille de figuier, hoja de higuera',
  wild_garlic: 'Bärlauch, ail des ours, ajo de oso, ajo silvestre, черемша',
  wild_carrot_family: 'wilde Möhre, Wiesenkerbel, carotte sauvage, cerfeuil sauvage, zanahoria silvestre',
  stone_fruit_leaves:
    'Kirschblatt, Kirschblätter, Pfirsichblatt, Pfirsichblätter, feuille de pêcher, feuille de cerisier, hoja de melocotonero, hoja de cerezo',
  garden_poisons:
    "Nachtschatten, schwarzer Nachtschatten, bittersüsser Nachtschatten, morelle noire, douce-amère, hierba mora, паслён, Efeu, Giftefeu, lierre, sumac vénéneux, hiedra, плющ, 常春藤, Kermesbeere, Kermesbeeren, phytolaque, raisin d'Amérique, fitolaca, hierba carmín, лаконос, Glyzinie, Glyzinien, Blauregen, glycine de Chine, glicinia, глициния, Bärenklau, Riesenbärenklau, berce du Caucase, perejil gigante, борщевик, Schöllkraut, chélidoine, чистотел, Stechpalme, Stechpalmen, houx, acebo, падуб, Wolfsmilch, euphorbe, lechetrezna, молочай, Seidelbast, Lorbeerseidelbast, bois-joli, bois-gentil, torvisco, волчье лыко, волчник",
}
