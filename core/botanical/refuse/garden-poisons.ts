/**
 * Poisonous plants of gardens, hedges and pots that the refuse list leaves out, a plant a row: from memory. In English, Italian
 * and Latin, singular and plural, joined with commas; behind the bar in German, French and Spanish.
 */
const rows = [
  'nightshade, nightshades, black nightshade, woody nightshade, erba morella, morella, morelle, dulcamara, Solanum nigrum, Solanum dulcamara',
  'ivy, ivies, poison ivy, edera, edere, edera velenosa, Hedera helix, Toxicodendron radicans',
  'pokeweed, pokeweeds, pokeberry, pokeberries, fitolacca, fitolacche, Phytolacca americana',
  'wisteria, wisterias, glicine, glicini, Wisteria sinensis',
  'hogweed, giant hogweed, panace gigante, Heracleum mantegazzianum',
  'celandine, celandines, greater celandine, celidonia, Chelidonium majus',
  'holly, hollies, holly berry, holly berries, agrifoglio, agrifogli, Ilex aquifolium',
  'euphorbia, euphorbias, spurge, spurges, euforbia, euforbie, Euphorbia lathyris',
  'spurge laurel, laureola, mezereon, daphne, daphnes, dafne, Daphne laureola, Daphne mezereum',
  'white snakeroot, Ageratina altissima, Eupatorium rugosum | eupatoire rugueuse',
  'nux vomica, strychnine, strychnine tree, noce vomica, stricnina, Strychnos nux-vomica | Brechnuss, Brechnüsse, Strychnin, noix vomique, vomiquier, nuez vómica, estricnina, чилибуха, 马钱子',
  'gloriosa, flame lily, flame lilies, glory lily, glory lilies, Gloriosa superba | Ruhmeskrone, lis de Malabar',
  'manchineel, mancinella, Hippomane mancinella | Manchinelbaum, mancenillier, manzanilla de la muerte',
  'thuja, thujas, arborvitae, arbor vitae, tuia, tuie, Thuja occidentalis | Lebensbaum, Lebensbäume, thuya, tuya, туя',
  'snowdrop, snowdrops, bucaneve, Galanthus, Galanthus nivalis | Schneeglöckchen, perce-neige, campanilla de invierno, galanto, подснежник',
  'snowflake flower, snowflake flowers, campanellino, campanellini, Leucojum | Märzenbecher, Knotenblume, nivéole',
  'dumbcane, dumbcanes, dumb cane, dumb canes, dieffenbachia, dieffenbachias, diffenbachia | Dieffenbachie, Schweigrohr, дифенбахия',
  'black locust bark, black locust leaf, black locust leaves, black locust seeds, black locust pods, robinia bark, robinia leaves, robinia seeds, corteccia di robinia, foglie di robinia, semi di robinia | Robinienrinde, Robinienblätter, écorce de robinier, corteza de robinia',
  'purging buckthorn, alder buckthorn, spincervino, spino cervino, frangola, frangole, Rhamnus cathartica, Rhamnus frangula, Frangula alnus | Kreuzdorn, Faulbaum, Faulbaumrinde, nerprun, bourdaine, espino cerval, arraclán, крушина',
  'spindle berry, spindle berries, spindleberry, spindleberries, spindle tree, spindle trees, spindle, evonimo, evonimi, fusaggine, berretta da prete, Euonymus, Euonymus europaeus | Pfaffenhütchen, Spindelstrauch, fusain, bonetero, бересклет',
  'baneberry, baneberries, actea, actee, Actaea spicata, Actaea | Christophskraut, actée en épi, herbe de Saint-Christophe, hierba de San Cristóbal, воронец',
  'moonseed, moonseeds, Menispermum, Menispermum canadense | Mondsame, ménisperme, луносемянник',
  "horse chestnut, horse chestnuts, conker, conkers, buckeye, buckeyes, ippocastano, ippocastani, castagna d'India, castagne d'India, castagna matta, castagne matte, Aesculus, Aesculus hippocastanum | Rosskastanie, Rosskastanien, marron d'Inde, marronnier, castaño de Indias, castaña de Indias, конский каштан",
  'chinaberry, chinaberries, bead tree, albero dei rosari, albero dei paternostri, Melia azedarach | Zedrachbaum, Paternosterbaum, azédarach, lilas de Perse, мелия',
  'sago palm, sago palms, cycad, cycads, cicas, Cycas, Cycas revoluta | Palmfarn, Palmfarne, саговник, 苏铁',
  'lantana, lantanas, lantane, Lantana camara | Wandelröschen, lantanier',
  'lobelia, lobelias, lobelie, Indian tobacco, Lobelia inflata | Lobelien',
  'hyacinth, hyacinths, giacinto, giacinti, Hyacinthus, Hyacinthus orientalis | Hyazinthe, Hyazinthen, jacinthe, jacinto, гиацинт',
  'tulip, tulips, tulipano, tulipani, Tulipa | Tulpe, Tulpen, tulipe, tulipán, тюльпан, 郁金香',
  'Lilium | Lilie, Lilien, azucena, fleur de lys, лилия',
  'calla lily, calla lilies, arum lily, arum lilies, Zantedeschia, Zantedeschia aethiopica | Zimmercalla',
  'Scotch broom, Spanish broom, broom flower, broom flowers, broom blossom, broom blossoms, ginestra, ginestre, Cytisus scoparius, Spartium junceum, Genista | Ginster, Besenginster, genêt, genêt à balais, retama, hiniesta, дрок, ракитник',
  'pasque flower, pasque flowers, pasqueflower, pasqueflowers',
  'poinsettia, poinsettias, stella di Natale, stelle di Natale, Euphorbia pulcherrima | Weihnachtsstern, poinsettie',
  'marsh marigold, marsh marigolds, kingcup, kingcups, calta palustre, Caltha palustris | Sumpfdotterblume, populage',
  'skunk cabbage, skunk cabbages, Symplocarpus, Lysichiton | Stinkkohl',
  'golden rain, golden rain tree, golden chain, golden chain tree, goldenchain',
  'day jessamine, night jessamine, Cestrum | Hammerstrauch',
  'jack in the pulpit, Arisaema, Arisaema triphyllum',
  'darnel, loglio, loglio ubriacante, zizzania, Lolium temulentum | Taumellolch, ivraie enivrante, cizaña',
  'asparagus berry, asparagus berries, bacca di asparago, bacche di asparago',
  "Solomon's seal, sigillo di Salomone, Polygonatum | Salomonssiegel, sceau de Salomon",
  'firethorn, firethorns, firethorn berry, firethorn berries, agazzino | Feuerdorn',
  'bittersweet berry, bittersweet berries, bittersweet nightshade, climbing bittersweet, oriental bittersweet, Celastrus',
  'male fern, male ferns, bracken, brackens, felce maschio, felci maschio, felce aquilina, Dryopteris filix-mas, Pteridium aquilinum | Wurmfarn, Adlerfarn, fougère mâle, fougère aigle, helecho macho',
  'leylandii, leylandi, Leyland cypress, box hedge, box hedges, box hedge leaf, box hedge leaves',
] as const

const parts = rows.map((row) => row.split(' | '))

export const gardenPoisons = parts.map(([here]) => here).join(', ')
export const gardenPoisonsElsewhere = parts.flatMap(([, elsewhere]) => elsewhere ?? []).join(', ')
