import type { Refused } from '../refused.ts'

/** What is never planned, by every name it goes by. Whole words are compared, without case and accents. */
export const refusedNames: readonly Refused[] = [
  {
    id: 'tobacco',
    names:
      'tobacco, tobaccos, cigar, cigars, cigarette, cigarettes, snus, nicotine liquid, nicotine liquids, tabacco, tabacchi, sigaro, sigari, sigaretta, sigarette, nicotina liquida, Nicotiana, Nicotiana tabacum, Nicotiana rustica',
    instead: null,
    trust: 'published',
    sources: ['efsa_compendium', 'nicotine_review'],
  },
  {
    id: 'foxglove',
    names: 'foxglove, foxgloves, digitalis, digitale, digitali, Digitalis purpurea, Digitalis lanata',
    instead: null,
    trust: 'published',
    sources: ['irish_case_2021', 'efsa_compendium'],
  },
  {
    id: 'oleander',
    names:
      'oleander, oleanders, oleander leaf, oleander leaves, oleandro, oleandri, foglie di oleandro, Nerium, Nerium oleander',
    instead: null,
    trust: 'published',
    sources: ['pillay_2019'],
  },
  {
    id: 'yew',
    names: 'yew, yews, yew berry, yew berries, yew tip, yew tips, tasso, tassi, bacche di tasso, Taxus, Taxus baccata',
    instead: null,
    trust: 'memory',
    sources: ['efsa_compendium'],
  },
  {
    id: 'hemlock',
    names:
      "hemlock, hemlocks, poison hemlock, poison hemlocks, cicuta, cicute, cicuta maggiore, cicuta minore, fool's parsley, aglina, Conium, Conium maculatum, Aethusa, Aethusa cynapium",
    instead: null,
    trust: 'memory',
    sources: ['efsa_compendium'],
  },
  {
    id: 'water_hemlock',
    names:
      "water hemlock, water hemlocks, cowbane, cowbanes, water dropwort, water dropworts, cicuta acquatica, cicute acquatiche, enante, finocchio d'acqua, Cicuta virosa, Oenanthe, Oenanthe crocata",
    instead: null,
    trust: 'memory',
    sources: ['efsa_compendium'],
  },
  {
    id: 'aconite',
    names:
      'monkshood, monkshoods, aconite, aconites, wolfsbane, wolfsbanes, aconito, aconiti, napello, napelli, Aconitum, Aconitum napellus',
    instead: null,
    trust: 'memory',
    sources: ['efsa_compendium', 'buchanan'],
  },
  {
    id: 'nightshade',
    names:
      "deadly nightshade, deadly nightshades, belladonna, belladonnas, datura, daturas, jimsonweed, jimsonweeds, thornapple, thornapples, angel trumpet, angel trumpets, angel's trumpet, angel's trumpets, henbane, henbanes, mandrake, mandrakes, stramonio, stramoni, tromba degli angeli, trombe degli angeli, trombone d'angelo, tromboni d'angelo, giusquiamo, giusquiami, mandragora, mandragore, Atropa, Atropa belladonna, Datura stramonium, Brugmansia, Hyoscyamus, Hyoscyamus niger, Mandragora officinarum",
    instead: null,
    trust: 'memory',
    sources: ['efsa_compendium', 'pillay_2019'],
  },
  {
    id: 'lily_valley',
    names: 'lily of the valley, lilies of the valley, mughetto, mughetti, Convallaria, Convallaria majalis',
    instead: null,
    trust: 'published',
    sources: ['iacw', 'anses_confusion'],
  },
  {
    id: 'colchicum',
    names:
      'autumn crocus, autumn crocuses, meadow saffron, meadow saffrons, naked lady, colchico, colchici, falso zafferano, zafferano bastardo, Colchicum, Colchicum autumnale',
    instead: null,
    trust: 'published',
    sources: ['ages_wild_garlic', 'anses_confusion'],
  },
  {
    id: 'veratrum',
    names:
      'white hellebore, white hellebores, false hellebore, false hellebores, veratro, veratri, elleboro bianco, ellebori bianchi, Veratrum, Veratrum album',
    instead: null,
    trust: 'published',
    sources: ['veratrum_cases'],
  },
  {
    id: 'hellebore',
    names:
      'hellebore, hellebores, Christmas rose, Christmas roses, elleboro, ellebori, rosa di Natale, rose di Natale, Helleborus, Helleborus niger',
    instead: null,
    trust: 'memory',
    sources: ['efsa_compendium'],
  },
  {
    id: 'jp_star_anise',
    names:
      'Japanese star anise, Japanese star anises, Japanese anise, shikimi, Florida anise, anice stellato giapponese, anici stellati giapponesi, badiana giapponese, Illicium anisatum, Illicium religiosum, Illicium floridanum',
    instead: 'star_anise',
    trust: 'published',
    sources: ['fda_star_anise'],
  },
  {
    id: 'castor',
    names:
      'castor bean, castor beans, castor seed, castor seeds, rosary pea, rosary peas, jequirity, abrus, ricino, semi di ricino, seme di ricino, abro, Ricinus communis, Abrus precatorius',
    instead: null,
    trust: 'memory',
    sources: ['efsa_compendium'],
  },
  {
    id: 'rue',
    names: 'rue, rues, herb of grace, common rue, ruta, rute, foglie di ruta, Ruta graveolens, Ruta chalepensis',
    instead: 'rosemary',
    trust: 'published',
    sources: ['emea_rue'],
  },
  {
    id: 'pennyroyal',
    names:
      'pennyroyal, pennyroyals, American pennyroyal, puleggio, puleggi, pulegio, mentuccia, mentucce, menta puleggio, menta pulegio, Mentha pulegium, Hedeoma pulegioides',
    instead: 'spearmint',
    trust: 'memory',
    sources: ['efsa_compendium'],
  },
  {
    id: 'tansy',
    names: 'tansy, tansies, tanaceto, tanaceti, Tanacetum vulgare',
    instead: null,
    trust: 'memory',
    sources: ['efsa_compendium'],
  },
  {
    id: 'tonka',
    names: 'tonka bean, tonka beans, tonka, fava tonka, fave tonka, fava di tonka, fave di tonka, Dipteryx odorata',
    instead: 'vanilla',
    trust: 'published',
    sources: ['toma_2025'],
  },
  {
    id: 'calamus',
    names:
      'sweet flag, sweet flags, calamus, calamus root, calamus roots, calamo aromatico, calami aromatici, acoro, Acorus calamus',
    instead: null,
    trust: 'published',
    sources: ['ec_1334_2008', 'ec_88_388'],
  },
  {
    id: 'sassafras',
    names:
      'sassafras, sassafras root, sassafras roots, sassafras bark, sassafrasso, sassafrassi, sassofrasso, Sassafras albidum',
    instead: null,
    trust: 'published',
    sources: ['ec_88_388', 'ec_1334_2008'],
  },
  {
    id: 'kernels',
    names:
      'laetrile, apricot kernel, apricot kernels, peach kernel, peach kernels, cherry kernel, cherry kernels, plum kernel, plum kernels, stone fruit kernel, stone fruit kernels, apple seed, apple seeds, apple pip, apple pips, quince seed, quince seeds, bitter almond, bitter almonds, armellina, armelline, mandorla amara, mandorle amare, nocciolo di albicocca, noccioli di albicocca, nocciolo di pesca, noccioli di pesca, nocciolo di ciliegia, noccioli di ciliegia, nocciolo di prugna, noccioli di prugna, semi di mela, Prunus dulcis var. amara, Prunus amygdalus var. amara',
    instead: 'almond_sweet',
    trust: 'published',
    sources: ['efsa_2016', 'efsa_2019'],
  },
  {
    id: 'cherry_laurel',
    names:
      'cherry laurel, cherry laurels, cherry laurel leaf, cherry laurel leaves, laurel hedge, laurel hedges, laurel hedge leaf, laurel hedge leaves, English laurel, hedge laurel, hedge laurels, hedge laurel leaf, hedge laurel leaves, alloro da siepe, alloro della siepe, foglie di alloro da siepe, foglie di alloro della siepe, lauro da siepe, siepe di lauro, lauroceraso, laurocerasi, lauro ceraso, Prunus laurocerasus',
    instead: 'bay_leaf',
    trust: 'published',
    sources: ['poison_garden'],
  },
  {
    id: 'elder_raw',
    names:
      'raw elderberry, raw elderberries, elder leaf, elder leaves, elder bark, elder barks, elder root, elder roots, elder stalk, elder stalks, danewort, daneworts, dwarf elder, dwarf elders, bacca di sambuco cruda, bacche di sambuco crude, foglia di sambuco, foglie di sambuco, corteccia di sambuco, radice di sambuco, radici di sambuco, ebbio, ebbi, Sambucus ebulus',
    instead: 'elderflower',
    trust: 'published',
    sources: ['cdc_1984'],
  },
  {
    id: 'mushrooms',
    names:
      'puffball, puffballs, bolete, boletes, boletus, boleto, boleti, fly agaric, fly agarics, death cap, death caps, inky cap, inky caps, wild mushroom, wild mushrooms, foraged mushroom, foraged mushrooms, amanita, amanite, ovolo malefico, ovoli malefici, fungo selvatico, funghi selvatici, Amanita muscaria, Amanita phalloides, Coprinopsis, Coprinopsis atramentaria',
    instead: null,
    trust: 'memory',
    sources: ['unverified'],
  },
  {
    id: 'st_johns_wort',
    names:
      "St John's wort, St Johns wort, Saint John's wort, iperico, iperici, erba di San Giovanni, Hypericum, Hypericum perforatum",
    instead: null,
    trust: 'published',
    sources: ['henderson_2002'],
  },
  {
    id: 'germander',
    names:
      'wall germander, wall germanders, germander, germanders, camedrio, camedri, querciola, Teucrium, Teucrium chamaedrys',
    instead: null,
    trust: 'memory',
    sources: ['ec_1334_2008', 'com_2006_427'],
  },
  {
    id: 'pa_plants',
    names:
      'comfrey, comfreys, borage, borages, borage leaf, borage leaves, coltsfoot, coltsfoots, butterbur, butterburs, ragwort, ragworts, consolida maggiore, consolida, consolide, borragine, borragini, tussilagine, farfara, farfaraccio, farfaracci, senecione, senecioni, Symphytum officinale, Borago officinalis, Tussilago farfara, Petasites hybridus, Senecio, Jacobaea vulgaris',
    instead: null,
    trust: 'memory',
    sources: ['efsa_compendium'],
  },
  {
    id: 'aristolochia',
    names: 'birthwort, birthworts, aristolochia, aristolochie, Aristolochia clematitis',
    instead: null,
    trust: 'memory',
    sources: ['efsa_compendium'],
  },
  {
    id: 'gelsemium',
    names:
      'gelsemium, yellow jasmine, yellow jasmines, yellow jasmine flower, yellow jasmine flowers, false jasmine, gelsomino giallo, yellow jessamine, yellow jessamines, heartbreak grass, gelsemio, gelsomino della Carolina, Gelsemium sempervirens, Gelsemium elegans',
    instead: null,
    trust: 'published',
    sources: ['gelsemium_case'],
  },
  {
    id: 'rhododendron',
    names: 'rhododendron, rhododendrons, azalea, azaleas, rododendro, rododendri, azalee, Rhododendron ferrugineum',
    instead: null,
    trust: 'memory',
    sources: ['efsa_compendium'],
  },
  {
    id: 'laburnum_etc',
    names:
      'laburnum, laburnums, privet, privets, arum, arums, lords and ladies, cuckoo pint, bryony, bryonies, daffodil, daffodils, hydrangea, hydrangeas, larkspur, larkspurs, delphinium, delphiniums, buttercup, buttercups, cyclamen, cyclamens, maggiociondolo, maggiociondoli, ligustro, ligustri, gigaro, gigari, brionia, brionie, narciso, narcisi, ortensia, ortensie, speronella, speronelle, ranuncolo, ranuncoli, ciclamino, ciclamini, Laburnum anagyroides, Ligustrum vulgare, Arum maculatum, Arum italicum, Bryonia dioica, Narcissus, Hydrangea macrophylla, Consolida regalis, Ranunculus',
    instead: null,
    trust: 'memory',
    sources: ['efsa_compendium'],
  },
  {
    id: 'mistletoe',
    names: 'mistletoe, mistletoes, vischio, vischi, Viscum, Viscum album',
    instead: null,
    trust: 'memory',
    sources: ['efsa_compendium'],
  },
  {
    id: 'savin',
    names:
      'savin, savins, savine, savin juniper, savin junipers, sabina, sabine, ginepro sabina, ginepro sabino, Juniperus sabina',
    instead: 'juniper',
    trust: 'memory',
    sources: ['efsa_compendium'],
  },
  {
    id: 'drugs',
    names:
      "cannabis, hemp flower, hemp flowers, marijuana, kratom, kava, ephedra, khat, opium, opium poppy straw, poppy straw, poppy pod, poppy pods, poppy seed pod, poppy seed pods, poppy head, poppy heads, poppy capsule, poppy capsules, diviner's sage, psilocybin, magic mushroom, magic mushrooms, caffeine powder, pure caffeine powder, canapa, infiorescenze di canapa, efedra, oppio, capsula di papavero, capsule di papavero, testa di papavero, teste di papavero, caffeina in polvere, funghi allucinogeni, Cannabis sativa, Mitragyna speciosa, Piper methysticum, Ephedra sinica, Catha edulis, Papaver somniferum, Salvia divinorum",
    instead: null,
    trust: 'memory',
    sources: ['efsa_compendium'],
  },
  {
    id: 'industrial_alcohol',
    names:
      "denatured alcohol, denatured alcohols, methylated spirit, methylated spirits, rubbing alcohol, isopropanol, isopropyl alcohol, hand sanitiser, hand sanitizer, fuel ethanol, bioethanol, perfumer's alcohol, lab ethanol, laboratory ethanol, methanol, moonshine, home-distilled spirit, home-distilled spirits, alcol denaturato, alcool denaturato, alcol rosa, spirito denaturato, alcol isopropilico, bioetanolo, gel igienizzante, alcol da laboratorio, metanolo, distillato fatto in casa, distillati fatti in casa",
    instead: null,
    trust: 'published',
    sources: ['who_methanol'],
  },
  {
    id: 'animals',
    names:
      'snake, snakes, viper, vipers, scorpion, scorpions, insect, insects, raw meat, raw fish, serpente, serpenti, vipera, vipere, scorpione, scorpioni, insetto, insetti, carne cruda, pesce crudo, Vipera aspis',
    instead: null,
    trust: 'common_practice',
    sources: ['common_practice'],
  },
  {
    id: 'rhubarb_tomato',
    names:
      'rhubarb leaf, rhubarb leaves, rhubarb top, rhubarb tops, rhubarb with leaves, potato leaf, potato leaves, potato flower, potato flowers, potato plant, potato plants, aubergine leaf, aubergine leaves, eggplant leaf, eggplant leaves, tomato stem, tomato stems, tomato vine, tomato vines, tomato plant, tomato plants, pianta di pomodoro, foglia di melanzana, foglie di melanzana, tomato leaf, tomato leaves, green potato, green potatoes, foglia di rabarbaro, foglie di rabarbaro, foglia di patata, foglie di patata, foglia di pomodoro, foglie di pomodoro, patata verde, patate verdi',
    instead: null,
    trust: 'memory',
    sources: ['efsa_compendium'],
  },
  {
    id: 'quinine_bark',
    names:
      'cinchona bark, cinchona barks, cinchona, Peruvian bark, corteccia di china, cortecce di china, china calisaya, china rossa, Cinchona officinalis, Cinchona pubescens, Cinchona calisaya',
    instead: null,
    trust: 'published',
    sources: ['aromv'],
  },
  {
    id: 'fig_leaf',
    names: 'fig leaf, fig leaves, fig tree leaf, fig tree leaves, foglia di fico, foglie di fico',
    instead: 'fig',
    trust: 'published',
    sources: ['zaynoun_1984', 'son_2017'],
  },
]
