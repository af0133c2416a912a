import type { RefusalId, Refused } from '../refused.ts'

/** Kinds of poison beside those of `refused-names.ts`: from memory. */
export const refusedMore: readonly Refused[] = [
  {
    id: 'heart_poisons',
    names:
      "Thevetia, Cascabela, Cascabela thevetia, lucky nut, lucky nuts, yellow oleander, be-still tree, Cerbera, pong pong, pong pong seed, suicide tree, sea mango, sea mangoes, Adenium, desert rose, desert roses, Strophanthus, ouabain, Acokanthera, bushman's poison, Drimia, Urginea, sea squill, red squill, squill, scilla marittima, Meerzwiebel, Adonis, pheasant's eye, adonide, Adonisröschen, Ornithogalum, star of Bethlehem, Asclepias, milkweed, milkweeds, Apocynum, dogbane, dogbanes, Calotropis, crown flower, crown flowers, Catharanthus, Vinca, periwinkle, periwinkles, pervinca, pervinche",
    instead: null,
    trust: 'memory',
    sources: ['efsa_compendium'],
  },
  {
    id: 'ergot',
    names: 'ergot, Claviceps, Mutterkorn, segale cornuta, sporysz, cornezuelo, ergot de seigle, cravagem',
    instead: null,
    trust: 'memory',
    sources: ['unverified'],
  },
  {
    id: 'chemicals',
    names:
      'antifreeze, motor oil, engine oil, petrol, gasoline, kerosene, diesel, lighter fluid, turpentine, bleach, ammonia, lye, caustic soda, soda caustica, candeggina, varechina, calcium carbide, carbide, carburo di calcio, carburo, borax, boric acid, methyl salicylate, salicylic acid, hydrogen peroxide, sodium chlorite, MMS, detergent, detergents, washing powder, soap, soaps, perfume, perfumes, nail polish, mothball, mothballs, moth ball, moth balls, rat poison, weed killer, weedkiller, slug pellet, slug pellets, slug killer, slug bait, snail pellets, lumachicida, topicida, mercury, lead, lead acetate, arsenic, antimony, cyanide, cinnabar, malachite, colloidal silver, copper wire, dry ice, liquid nitrogen, craft glitter, activated charcoal',
    instead: null,
    trust: 'memory',
    sources: ['unverified'],
  },
  {
    id: 'poisonous_raw',
    names:
      'red kidney bean, red kidney beans, kidney bean, kidney beans, raw kidney beans, lima bean, lima beans, cassava, cassavas, manioc, yuca, tapioca root, taro, taro leaf, taro leaves, ackee, ackees, akee, akees, garlic in oil, garlic oil, aglio sott olio',
    instead: null,
    trust: 'memory',
    sources: ['unverified'],
  },
  {
    id: 'poppy_seed',
    names:
      'poppy seed, poppy seeds, semi di papavero, blue poppy seed, Mohnsamen, graines de pavot, semillas de amapola',
    instead: 'hazelnut',
    trust: 'memory',
    sources: ['unverified'],
  },
  {
    id: 'milk_thistle',
    names:
      'milk thistle, milk thistles, milk thistle seed, milk thistle seeds, cardo mariano, Silybum, Silybum marianum',
    instead: null,
    trust: 'memory',
    sources: ['unverified'],
  },
  {
    id: 'cracked_stones',
    names: 'cracked cherry stones, crushed cherry stones, ground cherry stones',
    instead: null,
    trust: 'published',
    sources: ['efsa_2016'],
  },
  {
    id: 'plant_milk',
    names:
      'almond milk, coconut milk, oat milk, soya milk, soy milk, rice milk, almond butter, peanut butter, nut butter, cashew butter, hazelnut butter',
    instead: 'almond_sweet',
    trust: 'common_practice',
    sources: ['common_practice'],
  },
]

/**
 * More names of what is refused, in English, Italian and Latin and in languages that nobody has looked through: from memory.
 * A Latin genus refuses all its species but those that are food. A typo of one is looked for from seven letters on.
 */
export const refusedAdded: Readonly<Partial<Record<RefusalId, string>>> = {
  oleander:
    'lauro rosa, leandro, mazza di San Giuseppe, rose laurel, rose bay, espirradeira, loendro, cevadilha, zakkum, pikrodafni, πικροδάφνη, oleandr',
  heart_poisons: 'scilla, scille, cebula morska, miłek wiosenny, goritsvet',
  foxglove:
    "fairy thimbles, dead man's bells, witches gloves, dedaleira, naparstnica, naperstyanka, yüksük otu, vingerhoed, vingerhoedskruid, fingerborg, fingerbøl, gyűszűvirág, digoxin, digitoxin",
  yew: 'cis, cis pospolity, tis, tis yagodny, porsuk, porsuk ağacı, teixo, idegran, barlind, taks, tiszafa, itamos, ίταμος',
  hemlock:
    'dolle kervel, poison parsley, gevlekte scheerling, odört, skarntyde, bürök, szczwół, szczwół plamisty, boligolov, baldıran, koneio, κώνειο',
  water_hemlock:
    "dead man's fingers, beaver poison, carrot fern, dead tongue, dead men's fingers, five-finger root, fool's cicely, water parsnip, water parsnips, cicutaria, szalej, szalej jadowity, cykuta, vekh, tsikuta, su baldıranı, embude, Ferula, giant fennel",
  aconite:
    "wolf's bane, monk's hood, monnikskap, friar's cap, monk's cap, blue rocket, devil's helmet, luparia, erba luparia, fuzi, caowu, chuanwu, bikh, tojad, akonit, borets, kurtboğan, stormhat, venusvogn, sisakvirág, akoniton, Eranthis, winter aconite, stavesacre",
  nightshade:
    "jimson weed, jimson weeds, thorn apple, thorn apples, dwale, banewort, baneworts, devil's berry, devil's berries, naughty man's cherries, devil's cherries, devil's cherry, death cherry, death cherries, devil's trumpet, moonflower, moonflowers, locoweed, toloache, stinkweed, hell's bells, Scopolia, burundanga, scopolamine, atropine, Solandra, chalice vine, Jerusalem cherry, Jerusalem cherries, Solanum, horse nettle, apple of Sodom, buffalo bur, wilcza jagoda, pokrzyk, bieluń, lulek, psianka, krasavka, durman, belena, paslen, güzelavrat otu, tatula, şeytan elması, ban otu, adamotu, figueira-do-inferno, meimendro, trombeteira, noce metella, erba del diavolo, noce spinosa, tatoulas, dollkruid, wolfskers, doornappel, bilzekruid, bolmört, belladonnaurt, nadragulya, maszlag, hierba del diablo",
  lily_valley:
    "May bells, Our Lady's tears, lírio do vale, konwalia, landysh, müge, inci çiçeği, lelietje-van-dalen, liljekonvalj, liljekonval, gyöngyvirág",
  colchicum:
    'naked boys, meadow crocus, meadow crocuses, colchicine, zimowit, bezvremennik, acı çiğdem, açafrão-bravo, kolchiko, herfsttijloos, tidlösa, őszi kikerics, efimero, freddolina, strozzalupo, Zigadenus, Toxicoscordion, death camas, death camass, fly poison',
  veratrum: 'Indian poke, ciemiężyca, chemeritsa, nysrot',
  hellebore: 'Lenten rose, Lenten roses, ciemiernik, morozhnik, ellevoros',
  castor:
    "strychnos, ordeal bean, ordeal beans, castor oil, castor oil plant, castor oil bean, castor oil beans, risin, crab's eye, jumbie bead, precatory bean, precatory beans, prayer bead, prayer beads, Paternoster pea, rącznik, kleshchevina, mamona, carrapateira, hint yağı tohumu, Ricinus, Jatropha, physic nut, physic nuts, Croton tiglium, purging croton, croton, crotons, croton seed, croton seeds, croton oil, Hura, sandbox tree, tung nut, tung nuts, mescal bean, mescal beans, Calabar bean, Ignatius bean, curare",
  rhubarb_tomato: 'potato berry, potato berries, potato fruit, potato sprout, potato sprouts',
  mushrooms:
    "porcini, porcino, cep, ceps, chanterelle, chanterelles, morel, morels, shiitake, destroying angel, destroying angels, panther cap, panther caps, webcap, webcaps, Cortinarius, Galerina, funeral bell, autumn skullcap, Gyromitra, false morel, false morels, brain mushroom, ivory funnel, Clitocybe, sulphur tuft, devil's bolete, Satan's bolete, Coprinus, liberty cap, liberty caps, Psilocybe, shrooms, magic truffles, muscimol, Lepiota, Paxillus, yellow stainer, muchomor, mukhomor, muhomor, piestrzenica, lejkówka, tignosa, agarico muscario, Pantherpilz, Giftpilz, Lorchel, Frühlorchel, fausse oronge, falsa oronja, mata-moscas",
  kernels:
    'loquat seed, loquat seeds, loquat stone, loquat stones, loquat pit, loquat pits, nocciolo di nespola, noccioli di nespola, noccioli di nespole, nocciolini di nespole, semi di nespola, huesos de níspero, caroços de nêspera, caroços de cereja, caroços de pêssego, caroços de damasco, amêndoas amargas, pestki wiśni, pestki moreli, pestki brzoskwini, pestki śliw, pestki śliwek, gorzkie migdały, abrikosovye kostochki, gorky mindal, kayısı çekirdeği, acı badem, pikramygdalo, persipan, lychee seed, lychee seeds, longan seed, longan seeds, avocado pit, avocado pits, avocado stone, avocado stones, avocado seed, avocado seeds, cherry bark, wild cherry bark, peach bark, bitter apricot almonds, Chinese almond, Chinese almonds, apricot almond, apricot almonds, bitter apricot seeds, cherry pit, peach pit, plum pit, apple core, apple cores',
  cherry_laurel: 'cherry bay, laurel cherry, laurel cherries, Portuguese laurel, laurowiśnia, louro-cerejo, taflan',
  stone_fruit_leaves: 'liście wiśni, liście brzoskwini',
  elder_raw:
    'elder stem, elder stems, elder twig, elder twigs, elder shoot, elder shoots, vlierblad, vlierblaadjes, elderberry stem, elderberry stems, liście bzu, Sambucus racemosa, red elder, red elderberry, red elderberries',
  tonka: 'cumaru, coumarin, pure coumarin',
  calamus: 'sweet sedge, flag root, rat root, myrtle flag, tatarak, ajer, eğir otu, kalmoes, Acorus',
  sassafras: 'filé powder, gumbo filé, root beer bark, ague tree, safrole',
  aristolochia:
    "Asarum, asarabacca, hazelwort, Haselwurz, kopytnik, Dutchman's pipe, Virginia snakeroot, kokornak, kirkazon, mu tong, fangchi",
  pa_plants:
    "tussilago, lungwort, lungworts, polmonaria, Pulmonaria, crotalaria, rattlepod, rattlebox, knitbone, boneset, starflower, starflowers, hemp agrimony, Joe Pye weed, groundsel, hound's tongue, alkanet, gromwell, heliotrope, heliotropes, viper's bugloss, Echium, żywokost, okopnik, confrei, karakafes otu, podbiał, mat-i-machekha, lepiężnik, starzec, ogórecznik, borragem, hodan, Symphytum, Heliotropium",
  pennyroyal:
    'squaw mint, mosquito plant, pudding grass, poejo, poejos, mięta polej, polej, yarpuz, fliskouni, Flohkraut, pennyroyal tea',
  rue: 'arruda, sedef otu, apiganos, Peganum harmala, harmal, Syrian rue',
  tansy: 'golden buttons, bitter buttons, atanásia, wrotycz, pizhma, solucan otu, southernwood, sweet annie',
  savin:
    'red cedar, eastern red cedar, Juniperus virginiana, Juniperus phoenicea, cade juniper, jałowiec sabiński, white cedar leaf, white cedar, cypress, cypresses, cipresso, Cupressus',
  germander: 'ożanka, Larrea, chaparral',
  garden_poisons:
    'Kalmia, mountain laurel, sheep laurel, lambkill, calico bush, Texas mountain laurel, Dermatophyllum, Pieris, Leucothoe, andromeda, bog rosemary, Labrador tea, marsh tea, Ledum, bagulnik, bagno, mad honey, orman gülü, Buxus, box leaf, box leaves, Buchsbaum, bosso, buis, boj, bukszpan, Paris quadrifolia, herb Paris, Einbeere, uva di volpe, czworolist, Symphoricarpos, snowberry, snowberries, Schneebeere, śnieguliczka, Lonicera, Lonicera berry, Lonicera berries, honeysuckle berry, honeysuckle berries, fly honeysuckle, Heckenkirsche, Cotoneaster, Pyracantha, Aucuba, Skimmia, Nandina, Duranta, Sanguinaria, bloodroot, Podophyllum, mayapple, mayapples, Maiapfel, Phytolacca, pokeroot, inkberry, inkberries, poison oak, poison sumac, Clematis, vitalba, clematide, Pulsatilla, Küchenschelle, sasanka, Anemone, zawilec, Buschwindröschen, Aquilegia, columbine, columbines, Akelei, orlik, Lupinus, lupin, lupins, lupine, lupines, lupin seed, lupin seeds, lupini amari, Lupinensamen, Lathyrus, sweet pea, sweet peas, Ipomoea, morning glory, morning glories, amaryllis, Hippeastrum, Clivia, bluebell, bluebells, Caladium, Philodendron, elephant ear, elephant ears, Agrostemma, corn cockle, corn cockles, gittaione, Kornrade, kąkol, cascara, kruszyna, szakłak, Carolina allspice, Calycanthus, bluszcz, plyushch, sarmaşık, kissos, hera, tuja, wawrzynek, wilcze łyko, volchye lyko, barszcz Sosnowskiego, borshchevik, glistnik, jaskółcze ziele, chistotel, ostrokrzew, azevinho, wilczomlecz, molochay, trzmielina, ligustr, biryuchina, złotokap, jaskier, lyutik, ostróżka, przestęp, obrazki plamiste, narcyz, kasztanowiec, czerniec, Solanum pseudocapsicum',
  mistletoe: 'jemioła, omela, ökse otu, visco',
  gelsemium: 'Carolina jessamine, evening trumpetflower, evening trumpet flower',
  jp_star_anise: 'swamp star anise, Illicium parviflorum, Illicium',
  drugs:
    'coca, poppers, kanna, Sceletium, hemp, hemp leaf, hemp leaves, hemp seed, hemp seeds, CBD, CBD oil, hash oil, pot leaf, pot leaves, ganja, kief, sinsemilla, dagga, maconha, liamba, konopie, konoplya, kenevir, esrar, cañamo, chanvre, Hanf, laudanum, haşhaş, makowiny, słoma makowa, dormideira, adormidera, pavot, papoula, mate de coca, hoja de coca, Erythroxylum, GHB, GBL, rohypnol, fentanyl, morphine, tramadol, mescaline, San Pedro, peyotl, Banisteriopsis, caapi, DMT, jurema, ketum, qat, chat leaf, chat leaves, miraa, ma huang, Mormon tea, yohimbe, iboga, blue lotus, betel nut, betel nuts, areca nut, areca nuts, supari, LSA, Hawaiian baby woodrose, caffeine, pure caffeine, anhydrous caffeine, caffeine anhydrous, koffein, caffeina, caféine, cafeína, wild lettuce, Lactuca virosa, lettuce opium',
  tobacco:
    'nicotine, nicotine salts, nicotine oil, vape juice, e-liquid, e-cig liquid, shisha, snuff, tytoń, machorka, makhorka, tütün, kapnos, fumo de corda',
  medicines: 'senna, senna leaf, senna leaves, senna pod, senna pods, ilaç, lek, pain reliever, St John pills',
  essential_oils:
    'almond oil, bitter almond oil, neem oil, camphor oil, mugwort oil, menthol crystals, óleo essencial, olejek eteryczny, olejek, масло, yağ, gül yağı, aceite esencial, huile essentielle, ätherisches Öl, Öl',
  dairy_egg:
    'Milch, Sahne, Rahm, Ei, Eier, Eigelb, Eierlikör, lait, crème fraîche, oeuf, oeufs, beurre, leche, nata, huevo, huevos, yema, yemas, mantequilla, leite, natas, ovo, ovos, gema, gemas, manteiga, mleko, śmietana, jajko, jajka, żółtko, żółtka, masło, moloko, smetana, yaytsa, süt, yumurta, avga, mjölk, grädde, ägg, melk, eieren, tojás, whey, ghee, white chocolate',
  animals: 'alacrán, wąż, żmija, yılan, Schlange, Spanish fly, cantharides',
}
