import type { HandbookId } from '../../text/messages/handbook.ts'

/** More ways the entries are asked, in English and Italian, as somebody else would put them; parted by semicolons. */
export const askedOtherwise: Readonly<Partial<Record<HandbookId, string>>> = {
  citrus_cloud:
    'why does limoncello go cloudy; is a cloudy lemon liqueur normal; should orange liqueur be clear; è normale che sia torbido',
  clearing:
    'how do i get it crystal clear; make it see-through; get rid of the haze; how do i clarify it; come lo rendo limpido; come si chiarifica',
  pectin_enzyme: 'do i need pectic enzyme; pectolase for plums; enzyme against haze; serve l’enzima',
  fining: 'egg white to clear it; can i use bentonite; gelatine finings; chiarificare con l’albume',
  colouring: 'food colouring ok; can i make it greener; add a bit of colour; posso usare un colorante',
  cream: 'how do i make the cream version; adding cream to it; crema di limoncello con panna; come faccio la crema',
  condensed_milk: 'tin of condensed milk; carnation milk in it; latte condensato',
  egg: 'advocaat at home; eggnog liqueur; raw yolks in it; liquore all’uovo; uova crude',
  plant_milk: 'oat milk instead of cream; vegan cream liqueur; coconut milk liqueur; latte di mandorla',
  keep_time: 'shelf life; does it ever go off; will it last till next christmas; use by; scade; quanto dura chiuso',
  keep_opened:
    'how long is it good once opened; opened a bottle months ago still good; half empty bottle; dopo aperto quanto dura',
  fridge: 'does it need to live in the fridge; fridge or shelf; va tenuto in frigo',
  keep_cream: 'does cream liqueur go off; how long does the cream one last; quanto dura la crema di limoncello',
  rest: 'why wait a month; can i drink it straight away; does it get better with age; posso berlo subito; perché deve riposare',
  headspace: 'does air in the bottle matter; top it right up or leave a gap; aria nella bottiglia',
  store_bottles:
    'where do i keep the bottles; garage or cellar for the bottles; lying down or standing up; dove tengo le bottiglie',
  keep_strained:
    'can i leave the strained spirit and sweeten next week; no time to sweeten today; posso addolcire tra una settimana',
  keep_fresh_plants: 'picked today, starting at the weekend; can the berries wait; hold the fruit till saturday',
  no_scales: 'ive no kitchen scales; without weighing; measure by eye; non ho la bilancia',
  weigh_or_jug: 'scales or measuring jug; by weight or by volume; meglio pesare',
  liqueur_words:
    'whats the difference between a liqueur and a cordial; is it a ratafia or a liqueur; difference between schnapps and liqueur',
  when_to_start:
    'when must i start for christmas; last day to start for a december present; quando comincio per natale',
  first_batch:
    'never done this before; easiest one for a beginner; where do i begin; sono alle prime armi; da dove comincio',
  scale_recipe: 'can i just double everything; twice as much; make half; raddoppiare le dosi',
  mix_plants:
    'what goes well with ginger; do orange and cardamom work together; good combos; cosa sta bene con il limone',
  without_alcohol: 'a version for people who dont drink; alcohol free; non alcoholic one; senza alcol',
  peel_how: 'zester, peeler or knife; how thin do i pare the lemons; how to get the peel off; con cosa pelo i limoni',
  pith: 'got some white on the peel; does the white part matter; scrape the pith off; è rimasto un po’ di bianco',
  unwaxed:
    'i limoni devono essere non trattati; servono per forza limoni biologici; must lemons be untreated; only waxed lemons in the shop; do they have to be organic; scrub the wax off; supermarket lemons any good; limoni del supermercato',
  peeled_fruit: 'bald lemons left over; what to do with naked oranges; cosa faccio con il succo',
  keep_peel:
    'freeze the peels until i have enough; save peel over weeks; can i peel them the day before; congelare le scorze e usarle dopo',
  frozen_fruit: 'berries from the freezer any good; frozen sloes work; do i thaw them first; frutti di bosco surgelati',
  dried_for_fresh: 'dried instead of fresh; how much dried herb replaces fresh; erbe secche al posto delle fresche',
  prick_fruit: 'do i have to prick every sloe; stab each one with a fork; is pricking needed; bucarle tutte',
  stones_whole:
    'leave the stones in the cherries; do i stone the plums; are apricot kernels dangerous; tolgo i noccioli',
  crush_fruit: 'mash the berries or leave them whole; cut the fruit up; blend it first; schiaccio la frutta',
  wash_fruit: 'do i need to wash the berries; rinse the mint; wet fruit ok; devo lavare la frutta',
  ripe_fruit: 'bruised fruit ok; overripe plums; underripe fruit; windfalls; frutta ammaccata va bene',
  vanilla_split:
    'split the vanilla or leave it whole; slit the pod; vanilla cut lengthways; taglio la bacca di vaniglia',
  coffee_grind: 'whole beans or ground coffee; use instant coffee; do i crush the beans; caffè macinato o in grani',
  ginger_peel: 'peel the ginger first; skin on the ginger; sbuccio lo zenzero',
  chilli_seeds: 'seeds in or out of the chilli; how do i keep chilli mild; tolgo i semi del peperoncino',
  nuts_prepare: 'toast the hazelnuts first; skin on almonds; tosto le nocciole',
  flame:
    'could it explode; is it flammable; can i light a candle near it; hot sugar into strong alcohol near gas; può esplodere; è infiammabile',
  methanol:
    'can i go blind from it; will there be methanol in it; is there wood alcohol from the fruit; si diventa ciechi',
  denatured: 'can i use rubbing alcohol; pharmacy alcohol; cleaning alcohol ok; alcol della farmacia; alcol rosa',
  strong_neat: 'can i drink the strong stuff straight; a sip of the 95; taste the pure alcohol; bere l’alcol puro',
  medicines: 'im on tablets can i drink it; ok with antibiotics; prendo farmaci posso berlo',
  driving: 'can i drive after one glass; how long until i can drive; posso guidare dopo',
  pregnancy: 'expecting, can i have a sip; while breastfeeding; sono incinta',
  children: 'can the kids have a bit on ice cream; a drop for the teenagers; bambini possono assaggiare',
  pets: 'is it safe for the dog; boozy cherries for the hens; il cane può mangiare le ciliegie',
  foraging:
    'are hedgerow berries safe; picking wild elderflower; how do i know its the right plant; raccogliere bacche selvatiche',
  sprayed: 'roses from the florist; berries by the road; sprayed fruit; fiori del fioraio',
  essential_oils:
    'a few drops of lemon oil instead of peel; use essence; flavouring from a bottle; olio essenziale di limone',
  caffeine: 'will the coffee one keep me awake; caffeine in it; non fa dormire',
  how_much_drink: 'how many glasses are ok; is a glass a day too much; quanti bicchierini posso bere',
  diabetes: 'im diabetic can i have some; how many carbs in it; sugar for diabetics; sono diabetico; calorie',
  freezer_keep: 'can i keep it in the freezer all the time; leave it in the freezer for months; sempre in freezer',
  freezer_glass: 'will the bottle crack in the freezer; glass burst when frozen; si rompe la bottiglia in freezer',
  serve_temperature: 'do you serve it cold; ice cold or room temperature; va servito freddo',
  serving_size: 'how big is a normal glass of it; how much do i pour each; quanto se ne serve',
  serve_mixed:
    'what do you mix it with; cocktail with it; with prosecco or tonic; con cosa si beve; uno spritz con questo',
  cook_with: 'can i bake with it; over ice cream; in a cake; nel tiramisù; in cucina',
  thick_cold: 'why is it thick from the freezer; pours like oil when cold; denso dal freezer',
  selling:
    'is it legal to sell; flogging bottles at the market; legal to flog a few at the fair; e legale venderlo al mercato; can i sell it on the stall; sell a few bottles; do i need a licence; posso venderlo',
  giving_away: 'can i give it to friends; raffle prize; give it at the fair; posso regalarlo',
  home_made_allowed: 'is it legal to make this; am i allowed to make it at home; è legale farlo in casa',
  name_limoncello: 'may i call it limoncello; is the name protected; posso chiamarlo limoncello',
  gift_label: 'what do i write on a bottle for a present; label for a gift; cosa scrivo sull’etichetta',
  allergens: 'somebody has a nut allergy; which allergens are in it; is it gluten free; allergia alle noci',
  posting:
    'can i post a bottle; send it abroad by mail; take it on the plane; hand luggage; spedire una bottiglia; in aereo',
  cost_rule: 'is it cheaper than the shop; what does it cost roughly; quanto costa farlo',
  presents: 'nice bottles for christmas presents; how much to give; idee regalo',
  which_spirit:
    'which spirit suits fruit best; best alcohol for fruit; what spirit for berries; miglior alcol per la frutta; vodka or grappa; which alcohol do i buy; what spirit works best; che alcol compro',
  cheap_vodka: 'is cheap vodka fine; does dear vodka taste better; supermarket own brand vodka; vodka economica',
  low_strength_peel: 'is 40 enough for lemon peel; limoncello with vodka; basta la vodka per il limoncello',
  brown_spirit: 'rum instead of vodka; can i use whisky; gin as the base; con il brandy',
  dilute_first: 'water the spirit down before steeping; thin it first; diluire l’alcol prima',
  wine_base: 'made with wine; red wine instead of spirit; con il vino',
  fruit_water: 'does juicy fruit make it weaker; why is it weaker than i put in',
  home_distilling: 'can i distil it myself; make my own spirit in a still; distillare in casa',
  freeze_stronger: 'freeze it to make it stronger; take the ice out',
  water_order: 'water into alcohol or alcohol into water; which goes in first; prima l’acqua o l’alcol',
  steep_temperature:
    'does it go faster if i keep it somewhere warm; is the airing cupboard ok for the jar; how warm should it stand; next to the boiler; cold garage ok; al caldo fa più in fretta; in una stanza fredda',
  steep_light:
    'does it need darkness; must it sit in the dark; keep the jar in the dark while it steeps; deve stare al buio; can it stand on the kitchen window; does sunlight hurt it; clear glass on the shelf ok; on the sunny sill; sulla finestra della cucina; alla luce del giorno',
  steep_shaking: 'do i have to shake it; what if i forget to shake; is shaking really needed; se non lo scuoto',
  keep_under: 'fruit pokes out of the liquid; berries float above; weigh the fruit down; la frutta resta fuori',
  jar_fill:
    'what size jar do i need; how big a jar for a litre and a kilo of fruit; how full can the jar be; quanto grande il vaso',
  spices_when: 'put everything in together; cloves at the start or later; metto tutto insieme',
  steep_done: 'how do i know when its ready to strain; is two weeks long enough; quando filtro',
  steep_too_long: 'can it steep too long; is a year too long; harm if i leave it another month; troppo in infusione',
  second_steep: 'can i use the peels twice; a second batch from the same fruit; riuso le scorze',
  add_later: 'can i put more fruit in later; add another lemon now; aggiungo altri limoni',
  top_up: 'fill it up with more vodka; spirit no longer covers the fruit; rabbocco',
  heat_to_speed:
    'stand the jar in warm water to hurry it; sous vide; slow cooker; microwave it; scaldarlo a bagnomaria',
  open_lid: 'ok to open it and smell; will opening the jar spoil it; lid on or off; posso aprirlo ogni tanto',
  taste_strong: 'how do i taste it when its so strong; put a drop in water to taste; come lo assaggio',
  keep_green: 'how do i keep it green; basil stays green; perde il verde',
  quick_ones: 'what is quickest; ready by next week; need a present fast; qualcosa di veloce',
  strain_cloth: 'strain through tights; coffee filter or muslin; what do i sieve it with; con cosa filtro',
  squeeze: 'squeeze the fruit out or let it drip; press the bag; strizzo la frutta',
  filter_order: 'filter before or after adding sugar; filtro prima o dopo lo zucchero',
  let_settle: 'bits settled out can i pour it off; leave it to settle; pour off the clear part; lascio depositare',
  slow_filter:
    'coffee filters are so slow any trick; speed up filtering; how do i filter faster; come filtro più in fretta',
  kept_back: 'why did i get less out than i put in; some of the spirit is gone; ne è uscito meno',
  rinse_plants:
    'rinse the peels with water to get the rest out; wash the fruit out with syrup; sciacquo le scorze con acqua',
  spent_fruit:
    'what do i do with the boozy fruit; eat the leftover cherries; jam from the fruit; cosa faccio con la frutta',
  spent_away: 'compost the peels; can the fruit go in the bin; feed it to the chickens; butto le scorze',
  fat_off: 'butter or bacon fat in it; skim the fat; tolgo il grasso',
  volumes_shrink:
    '1 litre plus 1 litre did not make 2; two halves didnt make a litre; mixed a litre and a litre, less than two litres; perche un litro e un litro non fanno due; one and one litre isnt two; why dont volumes add up; un litro più un litro non fa due',
  usual_strength: 'how strong should it be; what percent are liqueurs; quanti gradi deve avere',
  weak_keeps: 'will 18 percent keep; is 20 enough to keep; how low can i go; a 20 gradi si conserva',
  evaporation: 'does the alcohol evaporate; loses strength if open; evapora l’alcol',
  obscuration:
    'hydrometer in a sweet liqueur; why does the floaty thing read wrong with sugar; l’alcolometro nel liquore dolce',
  no_hydrometer: 'how do i know the strength without a hydrometer; no alcoholmeter; senza alcolometro',
  proof: 'what is 151 proof in percent; quanto è 100 proof',
  label_strength: 'what percent do i put on the label; che gradi scrivo',
  dry_sugar: 'straight sugar without making a syrup; just tip the sugar in; zucchero direttamente',
  boil_syrup: 'do i have to boil the syrup; does the syrup need cooking; devo bollire lo sciroppo',
  cool_syrup: 'can i add the syrup hot; pour it in warm; sciroppo ancora caldo',
  which_water: 'tap water ok; distilled or bottled water; hard water; acqua del rubinetto',
  sugar_when: 'sugar at the start or at the end; add the sugar with the fruit; zucchero subito o dopo',
  honey: 'can i use honey; honey instead of sugar how much; posso usare il miele; miele al posto dello zucchero',
  brown_sugar: 'brown sugar any good; demerara; dark sugar; zucchero di canna',
  other_syrups: 'maple syrup instead; agave; golden syrup; sciroppo d’acero',
  sweeteners: 'sugar free; stevia; erythritol; sweetener instead of sugar; senza zucchero; dolcificante',
  icing_sugar: 'icing sugar ok; powdered sugar; zucchero a velo',
  glycerine: 'glycerine to make it smooth; thicker mouthfeel',
  sweetness_trial: 'how do i find how sweet i like it; try a small glass first; provo prima in un bicchiere',
  sweeten_again:
    'more sugar later or is it too late; can i add sugar after bottling; sweeten it a second time; posso aggiungere zucchero dopo',
  syrup_ratio: 'one to one or two to one syrup; how thick a syrup; rapporto zucchero acqua',
  acid: 'squeeze of lemon juice to balance it; citric acid; make it less flat with lemon; acido citrico',
  syrup_keeps: 'make the syrup the day before; syrup made yesterday; lo sciroppo si conserva',
  which_jar: 'which jar should i use; jam jar ok; old pickle jar; che barattolo uso',
  plastic: 'plastic tub for a week; is a plastic bottle ok; food grade bucket; va bene un barattolo di plastica',
  rubber_seal: 'does the rubber ring matter; orange rubber seal; guarnizione di gomma',
  metal_lid: 'tin lids ok; metal lid touching the spirit; rusty lid matter; i coperchi di latta vanno bene',
  closures: 'cork or screw cap; swing top bottles; tappo di sughero',
  lead_crystal:
    'safe to store liqueur in a crystal decanter; does lead leach from crystal; can i keep it in a crystal decanter; granny’s decanter; caraffa di cristallo della nonna',
  pans: 'aluminium pan for the syrup; metal spoon ok; pentola di alluminio',
  clean_bottles: 'how do i sterilise the bottles; dishwasher enough; sterilizzare le bottiglie',
  bottle_fill: 'how full do i fill the bottle; leave a gap at the top; fino a dove riempio',
  reuse_bottles:
    'can i use old whisky bottles; reuse wine bottles; bottles from other spirits; riusare bottiglie di whisky',
  wood: 'oak chips in it; little barrel; legno o botte',
}
