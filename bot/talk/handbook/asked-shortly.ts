import type { HandbookId } from '../../text/messages/handbook.ts'

/** How the entries are asked in the short plain way people speak, in English and Italian; parted by semicolons. */
export const askedShortly: Readonly<Partial<Record<HandbookId, string>>> = {
  steep_temperature:
    'is my kitchen too cold for the jar; is the house too hot for it; does the jar mind the cold in winter; attic in summer too warm; fa troppo caldo in casa per l’infuso; meglio in cantina o in cucina mentre macera; il caldo rovina la macerazione; d’estate sopra il frigo',
  steep_light:
    'wrap the jar in foil; cover it from the light; does it matter if the sun gets on it; leave it out on the worktop in daylight; devo coprirlo dalla luce; batte il sole sul vaso; avvolgere il vaso nella stagnola',
  steep_shaking:
    'what’s the point of shaking; is stirring necessary; turn the jar upside down; do i give it a shake daily; succede qualcosa se non lo scuoto; va rigirato ogni giorno; quante volte lo agito',
  keep_under:
    'the peel won’t stay down; something to hold the berries down; the top layer of fruit is dry; come le tengo giù; la frutta esce dall’alcol; tenere sommersi i lamponi; un peso per tenere giù le bucce',
  jar_fill:
    'will it all fit in a three litre jar; is the jar too big for it; half empty jar while it soaks a problem; il barattolo va riempito tutto; il vaso è troppo grande; ci sta tutto nel vaso da tre litri',
  spices_when:
    'cinnamon from day one or later; do i chuck everything in together; does the spice go in after a while; la cannella la metto subito o dopo; a che punto aggiungo i chiodi; le spezie insieme alla frutta',
  steep_done:
    'how will i know it is ready to come off the fruit; what are the signs that it is done; has it had enough; come faccio a sapere quando filtrarlo; da cosa capisco che ha finito; quando si può togliere la frutta',
  steep_too_long:
    'had it on the fruit eight months, is it ruined; is longer always better; can you overdo it; does it go bitter if left on the peel; l’ho tenuto un anno in infusione; se lo lascio di più è meglio; troppi mesi fanno male; dimenticato nel vaso',
  second_steep:
    'any life left in the fruit for another go; pour fresh gin on the same sloes; more vodka on the old fruit; is the peel finished after one go; si può rifare con le stesse bucce; usare di nuovo la stessa frutta; rimettere alcol sulle bucce usate',
  add_later:
    'found more raspberries, can they join the jar; throw in extra fruit a week on; too late to put more in; aggiungere altre fragole tra una settimana; metterne ancora a metà; ne ho trovate altre, le aggiungo',
  top_up:
    'fruit drank half of it; the level has dropped, pour in a splash more; il livello è sceso, aggiungo alcol; la frutta ha bevuto tutto; riempire di nuovo con la vodka',
  heat_to_speed: 'any way to rush it; hurry it along with heat; come si accelera; scaldare il vaso per fare prima',
  open_lid:
    'do i let the flavour out if i peek; have a sniff while it steeps; should the lid stay shut the whole time; il vaso perde profumo se lo apro; deve restare chiuso sempre',
  taste_strong:
    'have a sip while it is still ninety odd; try it without burning my tongue; lick of the strong stuff to see how it is going; provarne un goccio puro; assaggiarlo mentre è ancora fortissimo',
  keep_green:
    'my mint always goes brown; how do they get it so green; the green fades; il verde sparisce; mantengo verde il basilico; diventa subito scuro invece che verde',
  quick_ones:
    'what is ready fastest; i’ve only got ten days till the party; no time, what can still be done; cosa riesco a fare in dieci giorni; quale si fa in fretta; ho poco tempo',
  peel_how:
    'how thick should the strips be; what tool for the peel; can i grate it; le scorze devono essere sottili; con che attrezzo pelo i limoni; posso grattugiarla',
  pith: 'bit of white came off with the zest; is the white stuff under the skin bad; how careful with the white; c’è rimasto del bianco attaccato; il bianco sotto la buccia fa amaro; togliere tutta la parte bianca',
  unwaxed:
    'only got shiny lemons; how do i wash the wax off; waxy oranges; come tolgo la cera; limoni lucidi del supermercato; arance trattate vanno bene',
  peeled_fruit:
    'a dozen bald lemons sitting there; what’s the inside of the oranges good for; i’ve zested them all, use for the rest; naked lemons; limoni spellati; arance senza buccia rimaste; dentro dei limoni',
  juice_or_zest:
    'does the juice go in too or just the skin; why only the peel and not the flesh; can i put whole slices in; posso mettere le fette intere; ci va anche il succo; perché si usa solo la scorza',
  keep_peel:
    'we eat oranges all winter, save the skins; stash peel in the freezer; does dried peel work; le bucce si possono surgelare; metto da parte le scorze un po’ alla volta; seccare le bucce d’arancia sul termosifone',
  frozen_fruit: 'bags of frozen fruit from the shop; do i defrost it; la frutta congelata la scongelo',
  dried_for_fresh:
    'only got dried, how much less; can the dried stuff stand in for fresh; powder instead of root; quanta ne metto se è secca; lo zenzero in polvere',
  prick_fruit:
    'must i stab every single one; do damsons want pricking; bucare le susine una per una; bucarli con l’ago',
  stones_whole:
    'plums go in with the stones; do i pit them; stones in or out; take out the pips; con o senza nocciolo; tolgo i noccioli alle ciliegie; snocciolarle prima',
  crush_fruit:
    'do i squash them; should they be cut up; cut in half or leave whole; taglio la frutta o la lascio intera; vanno schiacciate; frullarla prima',
  wash_fruit:
    'should they be washed and dried; they are dusty, give them a wash; do you rinse them before they go in; si sciacquano; vanno lavate prima; va lavata; asciugarla dopo averla lavata',
  ripe_fruit:
    'my fruit is a bit squishy; can i use bruised ones; is unripe fruit any use; sono molto mature, vanno bene; si può usare un po’ ammaccata; acerbe vanno bene lo stesso',
  vanilla_split: 'do i cut the pod open; la vaniglia va incisa; apro il baccello o lo metto intero',
  coffee_grind: 'would espresso do; crack the beans or not; la moka; caffè già macinato',
  ginger_peel:
    'leave its skin on; does it need skinning; va pelato; lascio la buccia allo zenzero; a fette o grattugiato',
  chilli_seeds:
    'how do i stop it being lethal; not too hot please; one chilli seeds and all; farlo non troppo piccante; peperoncino intero o senza semi',
  green_walnut_when:
    'too late for green walnuts; what date do people pick them; fino a quando si raccolgono le noci verdi; a luglio le noci sono ancora buone; quando si prendono le noci per il nocino',
  flowers_prepare:
    'snip the stalks off; any old roses; shake the insects out of the flowers; i fiori si lavano; preparo i petali; tolgo i gambi ai fiori',
  cinnamon_kinds:
    'is supermarket cinnamon the right kind; cassia or proper cinnamon; che cannella devo comprare; che tipo di cannella',
  nuts_prepare: 'salted nuts ok; blanched or with skins; do they want toasting; con la pelle o senza; vanno tostate',
  which_spirit:
    'what booze should i buy; vodka or the strong stuff; what’s best to steep in; che alcol serve; meglio vodka o alcol puro',
  cheap_vodka:
    'will the cheapest do; worth splashing out on a good one; dear gin or cheap gin; ne basta una economica; vale la pena prenderne uno buono; quello del discount',
  low_strength_peel:
    'can’t get anything over 40, will peel work; is 37.5 enough for zest; con alcol a 40 le scorze rendono; si può fare con la vodka normale; basta a 40 gradi per la buccia',
  brown_spirit:
    'would brandy work instead; can i do plums in rum; swap the vodka for whisky; il rum come base; con la grappa viene bene; nel brandy al posto della vodka',
  dilute_first:
    'water the alcohol down before steeping; is 96 too strong for the fruit; full strength or thin it first; allungare l’alcol prima; macerare a 95 o a 60; troppo forte per la frutta',
  wine_base: 'red wine as the base; port instead of spirit; fare col vino; usare il marsala; vino rosso come base',
  fruit_water:
    'how much does the juice thin it; the berries watered it down; fruit made it weak; quanto si abbassa il grado con la frutta; la frutta annacqua l’alcol; meno forte della vodka che ho messo',
  charcoal: 'water filter jug for vodka; la caraffa filtrante; pulire la vodka col carbone',
  home_distilling:
    'thinking of buying a little still; make my own alcohol from sugar; fare la grappa in casa è vietato; mi compro un alambicco; produrre alcol da solo',
  freeze_stronger:
    'pull the ice out; freeze it and pour off the strong bit; togliere il ghiaccio per farlo più forte; concentrare col freddo',
  water_order:
    'which do i pour first; what goes into what; syrup on spirit or spirit on syrup; cosa va dentro cosa; verso l’acqua nell’alcol o il contrario',
  strain_cloth:
    'i’ve no muslin; kitchen paper to strain; a sieve enough; old t shirt to filter; va bene un canovaccio; non ho la garza; un colino basta',
  squeeze:
    'wring out the bag; squeeze the bag at the end; press the last drops out; strizzo alla fine; schiaccio bene o lascio gocciolare; spremere il sacchetto',
  filter_order:
    'through paper before the syrup or after; when does the filtering come; quando va filtrato, prima dello sciroppo; lo sciroppo prima o dopo la filtrazione',
  let_settle:
    'leave it standing so the muck drops; how many days to settle; let the gunk sink; quanti giorni per decantare; aspetto che il fondo scenda; lo lascio fermo così si deposita',
  slow_filter:
    'been filtering for hours; the paper keeps clogging, a trick; how to make it run through quicker; è lentissimo a filtrare; si intasa sempre la carta',
  kept_back:
    'put a litre in, got 850 out; where did my vodka go; how much do the berries drink; ne escono 800 da un litro; quanto alcol assorbe la frutta; ne manca un po’ dopo filtrato',
  rinse_plants:
    'slosh water over the peel to get the last of it out; is it worth rinsing after straining; recuperare l’alcol rimasto nelle scorze; lavo la frutta con lo sciroppo per recuperare',
  spent_fruit:
    'recipes for the sloes after; the fruit thats left in a pudding; jam from the boozy cherries; ciliegie ubriache; la frutta rimasta si mangia; ci faccio un dolce con le bucce avanzate',
  spent_away:
    'can the old fruit go down the drain; where do i chuck the used peel; on the compost heap; dove butto la frutta usata; le bucce usate nell’umido',
  fat_off:
    'greasy film, get rid of it; lift the fat off; levare l’unto dalla superficie; c’è olio sopra; come tolgo il grasso',
  dry_sugar:
    'tip the sugar in as is; do i really have to make syrup; granulated straight in the jar; serve per forza lo sciroppo; zucchero nel vaso senza scioglierlo prima',
  boil_syrup:
    'stir it cold or heat it; how do you cook the syrup; sugar water on the stove; come si fa lo sciroppo; basta sciogliere a freddo; quanto cuoce lo sciroppo',
  cool_syrup:
    'how cold should the syrup be; can the syrup go in hot; poured it in warm, did i mess up; va aggiunto freddo; versarlo ancora caldo; aspettare che si raffreddi lo sciroppo',
  which_water: 'our water is very hard; bottled or from the tap; l’acqua dura è un problema; che acqua per lo sciroppo',
  sugar_when:
    'sugar in with the fruit or after; when do you sweeten it; at what point does the sugar go in; quando metto lo zucchero; zucchero all’inizio o alla fine; si zucchera subito o dopo',
  honey:
    'does honey do the same job; how much honey for 500 g of sugar; quanto miele al posto di mezzo chilo di zucchero',
  brown_sugar:
    'does brown sugar change it; dark sugar for the rum one; cambia il sapore lo zucchero grezzo; quello scuro al posto del bianco',
  other_syrups: 'can agave go in; a tin of golden syrup; dolcificare con l’agave; sciroppo d’acero per addolcire',
  sweeteners: 'a sugar free one for my aunt; is stevia any good; usare la stevia; si può fare senza zucchero',
  icing_sugar: 'is caster ok; icing sugar dissolve quicker; zucchero fine si scioglie prima; a velo o semolato',
  glycerine:
    'how do i get it silkier; more body without more sugar; thicker in the mouth; la glicerina serve; farlo più vellutato; renderlo più corposo',
  sweetness_trial:
    'how do i find out how sweet we like it; test the sugar on a bit first; try it in a glass before doing the lot; provo quanto zucchero ci vuole; dolcificarne un po’ per prova; prova in un bicchiere',
  sweetness_words:
    'what counts as dry; how sweet is medium; grams of sugar in a normal liqueur; quanto è dolce uno dolce; cosa si intende per secco',
  split_batch: 'sweeten just half; one jar two versions; metà con zucchero e metà senza; farne due tipi',
  sweeten_again:
    'bottled it and it needs more sugar; is it too late to add syrup; can it be sweetened later on; è venuto poco dolce, si rimedia; aggiungo altro sciroppo adesso; zuccherare dopo imbottigliato',
  syrup_ratio:
    'equal sugar and water; what is simple syrup then; proporzione acqua e zucchero; quanta acqua per lo sciroppo',
  acid: 'would acid help, it tastes flabby; a squeeze of lemon to lift it; un po’ di succo di limone alla fine; ci vuole acidità; è piatto',
  syrup_keeps:
    'make the syrup tonight for saturday; how long is syrup good for; is last week’s syrup ok; farlo il giorno prima lo sciroppo; lo sciroppo avanzato dura',
  volumes_shrink:
    'mixed two and got less; why doesn’t it add up; some of it vanished when i mixed; il volume cala mescolando; ne manca un po’ dopo aver mescolato',
  usual_strength:
    'how strong should it end up; is 30 about right; what percent is a liqueur normally; che gradazione ha di solito un liquore; quanti gradi deve avere il limoncello; 30 gradi è giusto',
  weak_keeps:
    'how weak can i go before it goes off; lowest alcohol that is safe; will it keep at 16; sotto quanti gradi va a male; a 15 gradi dura',
  evaporation:
    'lid was off all night; do i lose alcohol while it sits; lasciato aperto tutta la notte; perde gradi stando fermo',
  obscuration:
    'hydrometer says nought once the sugar is in; measure it after sweetening; segna zero nel liquore; misurarlo dopo lo sciroppo',
  hydrometer_temperature:
    'it’s warm in here, is the reading out; measured it straight from the fridge; la temperatura cambia la lettura; misuro a 26 gradi di temperatura; misurato freddo',
  no_hydrometer:
    'no gadget to measure it; do i have to buy one; work out the strength without one; serve per forza l’alcolometro; senza strumento come so i gradi',
  refractometer:
    'got one from my beer stuff, any use; honey refractometer for alcohol; funziona il rifrattometro con l’alcol; i brix del liquore',
  proof: 'bottle says 100 proof; proof in normal percent; cosa vuol dire proof; 80 proof quanto fa',
  label_strength:
    'what percentage goes on the bottle; write about 30 on it; do i put 30 or 29.6 on the label; scrivo circa 30 gradi; gradi precisi sull’etichetta',
  citrus_cloud:
    'is cloudy limoncello ok; lemon liqueur never clear; supposed to be hazy; il limoncello torbido è normale; quello d’arancia deve essere limpido',
  clearing: 'want it clear as glass; get it bright; lose the haze; farlo diventare limpido; togliere la velatura',
  pectin_enzyme: 'what does pectic enzyme do; stop plums setting; serve l’enzima; perché non faccia gelatina',
  fining: 'would egg white clear it; la bentonite funziona; gelatina per renderlo chiaro',
  colouring: 'want it yellower; dye it green; a drop of food colour; farlo più giallo; dargli un po’ di colore',
  anise_cloud:
    'aniseed one goes white; clouds up with water, fennel; la sambuca si intorbida; finocchio con l’acqua diventa bianco',
  freezer_keep:
    'can it live in the freezer; do you keep it in the freezer; is it a freezer drink; si tiene nel freezer; sta sempre in congelatore',
  freezer_glass:
    'can the glass burst if it freezes; do bottles crack in there; si spacca se la congelo; scoppia il vetro',
  serve_temperature:
    'chilled or room temperature; how cold do you drink it; si serve freddo; a che temperatura si beve; ghiacciato o no',
  serving_size:
    'how much in a glass for a guest; what is a proper measure; how big are liqueur glasses; quanto se ne versa; quanto è un bicchierino; quanto per ospite',
  serve_mixed:
    'does it go with tonic; what do you drink it with; a cocktail for it; si allunga con la tonica; con che cosa lo bevo',
  cook_with:
    'splash in the trifle; does it cook off; in a pudding; lo uso nei dolci; l’alcol evapora in cottura; nella torta',
  thick_cold:
    'like oil out of the freezer; gloopy when cold but not solid; diventa sciropposo col freddo; esce denso dal congelatore',
  keep_time:
    'how long before it is past it; will it last years; quanto tempo si conserva; dura anni chiuso; quanto si mantiene',
  keep_opened: 'open bottle since easter; once opened how long; una volta aperto; bottiglia aperta da mesi',
  fridge: 'cupboard ok or fridge; keep it cold; si tiene fuori frigo; frigo o dispensa; va al fresco',
  keep_cream:
    'homemade irish cream shelf life; how long is the cream one good; la crema di limoncello scade; con la panna quanti giorni dura',
  rest: 'does it improve with age; drink it now or leave it; how long till it is nice; quanto aspetto prima di berlo; migliora col tempo; berlo subito',
  headspace: 'half a bottle left, goes off; gap at the top bad; air spoils it; l’aria lo rovina; bottiglia mezza vuota',
  store_bottles:
    'where do the bottles live; shed or garage for the bottles; flat or upright; dove conservo le bottiglie; in garage vanno bene le bottiglie; sdraiate o in piedi',
  label_date:
    'need a best before on it; when i made it on the bottle; devo mettere la scadenza; la data sull’etichetta',
  keep_strained:
    'strained it, can the sugar wait; leave it unsweetened for a bit; not got time to finish it; filtrato ma non ancora zuccherato; lo finisco tra due settimane; senza sciroppo un mese',
  keep_fresh_plants:
    'got fruit now but no vodka till friday; can damsons wait a week; hold on to the berries; ho la frutta ma non l’alcol; aspettano fino a sabato; come tengo la frutta fino a domenica',
  which_jar:
    'what sort of jar; does it need a clip lid; will a jam jar do; barattolo della marmellata; vaso ermetico o normale',
  plastic: 'plastic bucket; does strong alcohol melt plastic; posso usare la plastica; nella plastica un secchio',
  rubber_seal: 'does the rubber ring taint it; la gomma dà sapore; l’anello di gomma con l’alcol',
  metal_lid: 'jam jar lids ok; il tappo si arrugginisce; coperchio di latta',
  closures: 'what stoppers do i need; screw top or cork; sughero o a vite; tappo meccanico',
  lead_crystal: 'put it in gran’s decanter; is old crystal lead; nel decanter si può; il cristallo ha il piombo',
  pans: 'is a steel spoon fine; copper pan ok; il rame va bene; che pentola',
  clean_bottles:
    'sterilise them first; how clean do they have to be; boil the jars like for jam; come pulisco i vasi; basta la lavastoviglie; sterilizzarle',
  bottle_fill: 'how far up do i fill; right to the cork; lascio spazio sotto il tappo',
  reuse_bottles: 'getting labels off bottles; old wine bottles; stacco le etichette; bottiglie vecchie',
  wood: 'age it in oak; a bit of wood for flavour; oak chips in the jar; invecchiarlo in botte; legno nel vaso',
  flame: 'is it safe next to the gas; can the fumes catch fire; vicino ai fornelli; prende fuoco',
  methanol: 'any methanol in homemade; c’è metanolo in quello fatto in casa; la frutta fa metanolo',
  strong_neat:
    'is pure alcohol bad for you straight; how strong is too strong to drink; quanto forte si può bere liscio',
  medicines: 'is it ok with my tablets; on antibiotics; con le pillole; prendo medicine',
  driving: 'two glasses and the car; quanto aspetto per guidare; mettersi al volante',
  pregnancy: 'my sister is expecting, can she try it; un goccio in gravidanza; allatto',
  children:
    'ok for the kids to try; my fifteen year old wants a taste; keep it away from the little ones; tenerlo lontano dai bimbi',
  pets: 'is it bad for dogs; the cat licked it; fa male ai gatti; galline e frutta usata',
  foraging:
    'how can i be sure they are sloes; picked in the hedge, safe; sicuro che siano prugnoli; come riconosco la pianta; bacche raccolte nel bosco',
  sprayed:
    'farmer sprays that hedge; berries by the main road; pesticides on them; alberi trattati con veleni; lungo la strada; frutta spruzzata',
  essential_oils: 'vanilla extract rather than pods; drops of oil; usare gli aromi; aroma o estratto',
  garlic: 'botulism from herbs; aglio nella vodka; rischio botulino',
  plant_limits:
    'can you overdo wormwood; which herbs have a limit; l’assenzio è pericoloso; erbe con un limite; quanta se ne può mettere al massimo senza rischi',
  caffeine: 'will the coffee one keep me up; tiene svegli',
  how_much_drink: 'how much is too much; how many a week is alright; bere troppo; quanti a settimana',
  diabetes: 'is it ok for a diabetic; how sugary is a shot; quante calorie; un diabetico può berlo',
  spills:
    'spilt it on the table; knocked over the strong stuff; stains on my hands; macchiato il piano; rovesciato sul tavolo',
  cream: 'how do i make it creamy; when do i put the cream in; come faccio la crema; quando si mette la panna',
  condensed_milk: 'tin of milk do; latte in scatola; latte evaporato',
  egg: 'raw eggs ok; does the alcohol make eggs safe; l’alcol uccide la salmonella; i tuorli',
  plant_milk: 'vegan one; versione vegana; latte di cocco',
  selling:
    'can i flog it at the car boot; want to sell a few; charge money for it; vendere alla sagra; farmi pagare; posso venderlo',
  giving_away: 'legal to give it away; as a raffle prize; free samples; regalarlo alla festa; assaggi gratis',
  home_made_allowed:
    'am i breaking the law making this; do i need permission to make it; serve un permesso per farlo in casa; è vietato farlo',
  name_limoncello: 'is cassis a protected name; may i call it that; come lo chiamo sull’etichetta; nome protetto',
  gift_label: 'what goes on the tag of a present; cosa mettere sull’etichetta del regalo',
  allergens:
    'do i have to list allergens; is it ok for nut allergics; devo scrivere gli allergeni; un ospite è allergico',
  posting: 'will the courier take it; post a bottle to my cousin; portarlo in aereo; mandarlo col corriere; spedirlo',
  tasting_table: 'how do we do a tasting stall; cups for tasting; banco assaggi; bicchierini per assaggi',
  cost_rule: 'is it cheaper than buying; cheapest one to make; costa meno che comprarlo; quello più economico',
  presents: 'nice way to give bottles; wedding favours; idee per regalarlo; bottigliette regalo',
  cups: 'how big is a cup; pint in litres; una pinta quanti ml; quanto è una cup',
  no_scales: 'no scales in the house; measure sugar with a mug; zucchero a tazze; senza pesare',
  weigh_or_jug: 'is a jug accurate enough; peso o misuro; la brocca graduata basta',
  liqueur_words: 'what’s a ratafia; liqueur versus cordial; cos’è un amaro; cosa vuol dire infuso',
  when_to_start:
    'when should we start for december; last day to begin; entro quando devo partire; quanto prima della fiera',
  first_batch:
    'i’m new, what’s easy; what should i try first; è la prima volta, cosa faccio; il più facile per cominciare',
  scale_recipe: 'can i just double it all; a big batch; raddoppiare le dosi; farne metà',
  mark_jar: 'can’t remember what is in this one; labelling jars; non so più cosa c’è nel barattolo; segnare il vaso',
  mix_plants: 'what goes with plum; are two fruits together nice; cosa sta bene con l’arancia; che spezie ci stanno',
  without_alcohol: 'one for people who don’t drink; with no booze; per chi non beve; analcolico',
}
