import type { HandbookId } from '../../text/messages/handbook.ts'

/**
 * More ways the entries are asked, in English and Italian, as somebody else would put them and in the short plain way people
 * speak; parted by semicolons.
 */
export const askedOtherwise: Readonly<Partial<Record<HandbookId, string>>> = {
  citrus_cloud:
    'why does limoncello go cloudy; is a cloudy lemon liqueur normal; should orange liqueur be clear; è normale che sia torbido; is cloudy limoncello ok; lemon liqueur never clear; supposed to be hazy; il limoncello torbido è normale; quello d’arancia deve essere limpido',
  clearing:
    'what can i do to make it look bright; how do i get it crystal clear; make it see-through; get rid of the haze; how do i clarify it; come lo rendo limpido; come si chiarifica; want it clear as glass; get it bright; lose the haze; farlo diventare limpido; togliere la velatura',
  pectin_enzyme:
    'when do i stir the enzyme in; is pectinase any use here; do i need pectic enzyme; pectolase for plums; enzyme against haze; serve l’enzima; what does pectic enzyme do; stop plums setting; serve l’enzima; perché non faccia gelatina',
  fining:
    'egg white to clear it; can i use bentonite; gelatine finings; chiarificare con l’albume; would egg white clear it; la bentonite funziona; gelatina per renderlo chiaro',
  colouring:
    'how do i make it a brighter red; natural ways to tint it; food colouring ok; can i make it greener; add a bit of colour; posso usare un colorante; want it yellower; dye it green; a drop of food colour; farlo più giallo; dargli un po’ di colore; tint it pink; colour it red; dargli colore; colorarlo',
  cream:
    'how do i make the cream version; adding cream to it; crema di limoncello con panna; come faccio la crema; how do i make it creamy; when do i put the cream in; come faccio la crema; quando si mette la panna; milk instead of cream; put milk in it; il latte al posto della panna',
  condensed_milk:
    'tin of condensed milk; carnation milk in it; latte condensato; tin of milk do; latte in scatola; latte evaporato',
  egg: 'advocaat at home; eggnog liqueur; raw yolks in it; liquore all’uovo; uova crude; raw eggs ok; does the alcohol make eggs safe; l’alcol uccide la salmonella; i tuorli; tuorli crudi; uova crude sono sicure; how long does an egg liqueur keep; quanto si conserva un liquore con le uova; quanto dura lo zabaione; how long does advocaat last',
  plant_milk:
    'oat milk instead of cream; vegan cream liqueur; coconut milk liqueur; latte di mandorla; vegan one; versione vegana; latte di cocco',
  keep_time:
    'how long does homemade liqueur keep; how long do liqueurs last; how long will my liqueur keep; does homemade liqueur keep; how long does a homemade bottle keep; an old bottle never opened, still good; a sealed bottle from some years ago; shelf life; does it ever go off; will it last till next christmas; use by; scade; quanto dura chiuso; how long before it is past it; will it last years; quanto tempo si conserva; dura anni chiuso; quanto si mantiene; fine in years if nobody opens it; as long as the bottle stays shut; unopened, how long; se nessuno la apre; chiusa quanto resta buona; good for how long if nobody opens it; how long is an unopened bottle good for',
  keep_opened:
    'started a bottle, when should it be finished; once a bottle is begun how long; a bottle on the go; half drunk bottle; quando la bottiglia è cominciata entro quando va bevuta; bottiglia iniziata; dopo aperta entro quando va consumata; half a bottle left, does it spoil; how long is it good once opened; opened a bottle months ago still good; half empty bottle; dopo aperto quanto dura; open bottle since easter; once opened how long; una volta aperto; bottiglia aperta da mesi; after cracking it open; once the seal is gone; una volta stappata; dopo aver aperto la bottiglia; an opened bottle keeps how long; how long does a bottle keep when it has been opened',
  fridge:
    'do i have to refrigerate the finished stuff; does it need to live in the fridge; fridge or shelf; va tenuto in frigo; cupboard ok or fridge; keep it cold; si tiene fuori frigo; frigo o dispensa; va al fresco; fridge or press; press or fridge; in the press or the fridge',
  keep_cream:
    'does cream liqueur go off; how long does the cream one last; quanto dura la crema di limoncello; homemade irish cream shelf life; how long is the cream one good; la crema di limoncello scade; con la panna quanti giorni dura; when does the cream one spoil; does cream liqueur turn; quando va a male la crema; quanto si conserva un liquore con la panna; with milk in it, how long does it last; how many days does the cream one last',
  rest: 'how long should it age; how many months of ageing; does it have to be aged; how long does it mature; does it need ageing; age it before drinking; how long in the bottle before it is good; is older better; when is it at its best after bottling; quanto deve invecchiare; quanto tempo lo faccio maturare; deve stagionare; how many weeks once the bottle is shut; how long to wait after bottling before the first glass; patience before the first glass; quante settimane dopo averlo imbottigliato; does it taste better after some months; does the taste improve if it stands; what does maturing do; why wait a month; can i drink it straight away; does it get better with age; posso berlo subito; perché deve riposare; does it improve with age; drink it now or leave it; how long till it is nice; quanto aspetto prima di berlo; migliora col tempo; berlo subito; is another month in the bottle any good; does it gain from another month; leave it a month longer; dopo quanto si beve; fa bene un altro mese; wait once the sugar is in; why wait after sweetening; when is it at its best; at its best after how long',
  headspace:
    'is a half empty bottle bad for it; does air in the bottle matter; top it right up or leave a gap; aria nella bottiglia; half a bottle left, goes off; gap at the top bad; air spoils it; l’aria lo rovina; bottiglia mezza vuota; half empty bottle, does that hurt it; air above the liqueur',
  store_bottles:
    'can they live on a sunny shelf; do i lay them flat like wine; where do i keep the bottles; garage or cellar for the bottles; lying down or standing up; dove tengo le bottiglie; where do the bottles live; shed or garage for the bottles; flat or upright; dove conservo le bottiglie; in garage vanno bene le bottiglie; sdraiate o in piedi',
  keep_strained:
    'how long can the strained stuff sit; can i leave the strained spirit and sweeten next week; no time to sweeten today; posso addolcire tra una settimana; strained it, can the sugar wait; leave it unsweetened for a bit; not got time to finish it; filtrato ma non ancora zuccherato; lo finisco tra due settimane; senza sciroppo un mese; strained now, sweetened at christmas; can the infusion wait unsweetened; infuso filtrato, aspetta',
  keep_fresh_plants:
    'picked today, starting at the weekend; can the berries wait; hold the fruit till saturday; got fruit now but no vodka till friday; can damsons wait a week; hold on to the berries; ho la frutta ma non l’alcol; aspettano fino a sabato; come tengo la frutta fino a domenica; not starting until next week, how do i keep the fruit; hold the elderberries over; come tengo le more fino al fine settimana',
  no_scales:
    'can i do it by cups if i don’t own a scale; sugar by volume instead of weight; ive no kitchen scales; without weighing; measure by eye; non ho la bilancia; no scales in the house; measure sugar with a mug; zucchero a tazze; senza pesare; don’t own a scale; there’s no scale at home; all by cups',
  weigh_or_jug:
    'should i weigh the spirit; scales or measuring jug; by weight or by volume; meglio pesare; is a jug accurate enough; peso o misuro; la brocca graduata basta',
  liqueur_words:
    'what makes it a liqueur and not a flavoured vodka; whats the difference between a liqueur and a cordial; is it a ratafia or a liqueur; difference between schnapps and liqueur; what’s a ratafia; liqueur versus cordial; cos’è un amaro; cosa vuol dire infuso',
  when_to_start:
    'is it too late to start for the fair; when do people start their sloe gin; when must i start for christmas; last day to start for a december present; quando comincio per natale; when should we start for december; last day to begin; entro quando devo partire; quanto prima della fiera; start now for easter; for easter, when to begin',
  first_batch:
    'da dove parto; da dove comincio; non l’ho mai fatto; where do i begin; where do i even start with this; i’m completely new, where to start; which recipe can’t go wrong; never done this before; easiest one for a beginner; where do i begin; sono alle prime armi; da dove comincio; i’m new, what’s easy; what should i try first; è la prima volta, cosa faccio; il più facile per cominciare; easiest for a novice; simplest one to begin with; il più semplice per cominciare',
  scale_recipe:
    'can i just double everything; twice as much; make half; raddoppiare le dosi; can i just double it all; a big batch; raddoppiare le dosi; farne metà',
  mix_plants:
    'what goes well with ginger; do orange and cardamom work together; good combos; cosa sta bene con il limone; what goes with plum; are two fruits together nice; cosa sta bene con l’arancia; che spezie ci stanno; do they go together; is that a nice pair; stanno bene insieme; two fruits in one jar; may fruits be mixed; mescolare due frutti',
  without_alcohol:
    'a version for people who dont drink; alcohol free; non alcoholic one; senza alcol; one for people who don’t drink; with no booze; per chi non beve; analcolico; with just water instead of alcohol; only water no alcohol; solo con acqua',
  peel_how:
    'zester, peeler or knife; how thin do i pare the lemons; how to get the peel off; con cosa pelo i limoni; how thick should the strips be; what tool for the peel; can i grate it; le scorze devono essere sottili; con che attrezzo pelo i limoni; posso grattugiarla; what do i take the peel off with; fat strips or fine zest; con cosa tolgo la scorza; come si toglie la buccia; only the yellow; just the coloured bit of the skin; solo il giallo; what do people peel lemons with; what do i pare them with',
  pith: 'why only the yellow part of the peel; why must i not use the white; what makes lemon peel bitter; why not the whole peel; why only the coloured part; just the yellow, why; do i have to take off all the white; why is the white no good; what does the white do to it; perché solo la parte gialla; perché senza il bianco; cosa rende amara la buccia; bits of white on my lemon skins; got some white on the peel; does the white part matter; scrape the pith off; è rimasto un po’ di bianco; bit of white came off with the zest; is the white stuff under the skin bad; how careful with the white; c’è rimasto del bianco attaccato; il bianco sotto la buccia fa amaro; togliere tutta la parte bianca; traces of white on the peel; how much white may stay; quanto bianco può restare; un po’ di bianco attaccato',
  unwaxed:
    'i limoni devono essere non trattati; servono per forza limoni biologici; must lemons be untreated; only waxed lemons in the shop; do they have to be organic; scrub the wax off; supermarket lemons any good; limoni del supermercato; only got shiny lemons; how do i wash the wax off; waxy oranges; come tolgo la cera; limoni lucidi del supermercato; arance trattate vanno bene; shiny lemons from the shop; lucidi di cera; limoni lucidi del negozio',
  peeled_fruit:
    'bald lemons left over; what to do with naked oranges; cosa faccio con il succo; a dozen bald lemons sitting there; what’s the inside of the oranges good for; i’ve zested them all, use for the rest; naked lemons; limoni spellati; arance senza buccia rimaste; dentro dei limoni; the bare lemons that are left; naked limes; bald oranges; limoni nudi; i frutti senza buccia',
  keep_peel:
    'peel tonight and start later; peel them now and use the peel at the weekend; peel in advance; can peeled zest wait till tomorrow; peel the day before; can i peel them now and only start saturday; peel today and start tomorrow; can i peel a few days before i start; freeze the peels until i have enough; save peel over weeks; can i peel them the day before; congelare le scorze e usarle dopo; we eat oranges all winter, save the skins; stash peel in the freezer; does dried peel work; le bucce si possono surgelare; metto da parte le scorze un po’ alla volta; seccare le bucce d’arancia sul termosifone',
  frozen_fruit:
    'berries from the freezer any good; frozen sloes work; do i thaw them first; frutti di bosco surgelati; bags of frozen fruit from the shop; do i defrost it; la frutta congelata la scongelo; more surgelate; usare frutti di bosco surgelati; ribes surgelati',
  dried_for_fresh:
    'i only have dried orange peel; dried lemon peel from a packet, will that do; dried peel for fresh; scorze secche invece di fresche; dry or fresh, how do i convert; dried instead of fresh; how much dried herb replaces fresh; erbe secche al posto delle fresche; only got dried, how much less; can the dried stuff stand in for fresh; powder instead of root; quanta ne metto se è secca; lo zenzero in polvere; nothing fresh, only dried; dried peel in place of fresh; solo erbe secche, quante',
  prick_fruit:
    'skip the pricking?; do i have to prick every sloe; stab each one with a fork; is pricking needed; bucarle tutte; must i stab every single one; do damsons want pricking; bucare le susine una per una; bucarli con l’ago',
  stones_whole:
    'with the bone inside or without; do the pits come out first; leave the nut in the apricot; con l’osso o senza; with the stone inside or out; pitted or unpitted; leave the stones in the cherries; do i stone the plums; are apricot kernels dangerous; tolgo i noccioli; plums go in with the stones; do i pit them; stones in or out; take out the pips; con o senza nocciolo; tolgo i noccioli alle ciliegie; snocciolarle prima; do the stones stay in; stones out or left in; kernels in the jar',
  crush_fruit:
    'how fine do i chop it; how small should the pieces be; chop it fine or coarse; big chunks or small dice; how big should the bits of quince be; how small do i cut it; mash the berries or leave them whole; cut the fruit up; blend it first; schiaccio la frutta; do i squash them; should they be cut up; cut in half or leave whole; taglio la frutta o la lascio intera; vanno schiacciate; frullarla prima',
  wash_fruit:
    'should i clean the damsons; do i need to wash the berries; rinse the mint; wet fruit ok; devo lavare la frutta; should they be washed and dried; they are dusty, give them a wash; do you rinse them before they go in; si sciacquano; vanno lavate prima; va lavata; asciugarla dopo averla lavata',
  ripe_fruit:
    'old lemons; lemons that have sat about for weeks; wrinkled oranges; shrivelled lemons, bin or use; lemons past their best; fruit a bit old; are last week’s lemons still good for it; peaches soft and bruised, usable; limoni vecchi; limoni raggrinziti, vanno bene; le pesche ammaccate si possono usare; frutta un po’ vecchia; bruised fruit ok; overripe plums; underripe fruit; windfalls; frutta ammaccata va bene; my fruit is a bit squishy; can i use bruised ones; is unripe fruit any use; sono molto mature, vanno bene; si può usare un po’ ammaccata; acerbe vanno bene lo stesso; a bit squashy, still good for it; hard unripe ones; pesche un po’ molli; frutta ammaccata',
  vanilla_split:
    'how do you prepare a vanilla bean; split the vanilla or leave it whole; slit the pod; vanilla cut lengthways; taglio la bacca di vaniglia; do i cut the pod open; la vaniglia va incisa; apro il baccello o lo metto intero; does the pod go in whole; second time round with a vanilla pod; cut the bean lengthways',
  coffee_grind:
    'whole beans or ground coffee; use instant coffee; do i crush the beans; caffè macinato o in grani; would espresso do; crack the beans or not; la moka; caffè già macinato; beans as they are or crushed; macinato o in chicchi; how coarse should it be ground; coarse or fine coffee',
  ginger_peel:
    'peel the ginger first; skin on the ginger; sbuccio lo zenzero; leave its skin on; does it need skinning; va pelato; lascio la buccia allo zenzero; a fette o grattugiato; scrape the ginger; scrub or skin it; raschiare lo zenzero',
  chilli_seeds:
    'do i deseed them; seeds in or out of the chilli; how do i keep chilli mild; tolgo i semi del peperoncino; how do i stop it being lethal; not too hot please; one chilli seeds and all; farlo non troppo piccante; peperoncino intero o senza semi; deseed the chilli; seeds of the chillies out; i semi del peperoncino si tolgono; togliere i semi',
  nuts_prepare:
    'toast the hazelnuts first; skin on almonds; tosto le nocciole; salted nuts ok; blanched or with skins; do they want toasting; con la pelle o senza; vanno tostate',
  flame:
    'could it explode; is it flammable; can i light a candle near it; hot sugar into strong alcohol near gas; può esplodere; è infiammabile; is it safe next to the gas; can the fumes catch fire; vicino ai fornelli; prende fuoco; near a gas ring; flambé with it; set it alight; vicino al gas; alla fiamma',
  methanol:
    'can i go blind from it; will there be methanol in it; is there wood alcohol from the fruit; si diventa ciechi; any methanol in homemade; c’è metanolo in quello fatto in casa; la frutta fa metanolo',
  denatured: 'can i use rubbing alcohol; pharmacy alcohol; cleaning alcohol ok; alcol della farmacia; alcol rosa',
  strong_neat:
    'can the 95 be drunk alone; this 95 can be drinked alone; one small glass of it alone for the stomach; can i drink the strong stuff straight; a sip of the 95; taste the pure alcohol; bere l’alcol puro; is pure alcohol bad for you straight; how strong is too strong to drink; quanto forte si può bere liscio; drink the 96 as it is; pure alcohol straight; sip it undiluted',
  medicines:
    'im on tablets can i drink it; ok with antibiotics; prendo farmaci posso berlo; is it ok with my tablets; on antibiotics; con le pillole; prendo medicine; together with pills; con le pastiglie; insieme alle medicine',
  driving:
    'can i drive after one glass; how long until i can drive; posso guidare dopo; two glasses and the car; quanto aspetto per guidare; mettersi al volante; after a glass, may i drive; dopo un bicchiere guido; se ne bevo uno guido',
  pregnancy:
    'expecting, can i have a sip; while breastfeeding; sono incinta; my sister is expecting, can she try it; un goccio in gravidanza; allatto',
  children:
    'can the kids have a bit on ice cream; a drop for the teenagers; bambini possono assaggiare; ok for the kids to try; my fifteen year old wants a taste; keep it away from the little ones; tenerlo lontano dai bimbi',
  pets: 'is it safe for the dog; boozy cherries for the hens; il cane può mangiare le ciliegie; is it bad for dogs; the cat licked it; fa male ai gatti; galline e frutta usata; can cats be near it; cats and the jar',
  foraging:
    'are hedgerow berries safe; picking wild elderflower; how do i know its the right plant; raccogliere bacche selvatiche; how can i be sure they are sloes; picked in the hedge, safe; sicuro che siano prugnoli; come riconosco la pianta; bacche raccolte nel bosco; berries from the woods, can they go in; found berries in the hedge; bacche trovate nel bosco; tell it from something poisonous',
  sprayed:
    'roses from the florist; berries by the road; sprayed fruit; fiori del fioraio; farmer sprays that hedge; berries by the main road; pesticides on them; alberi trattati con veleni; lungo la strada; frutta spruzzata',
  essential_oils:
    'a few drops of lemon oil instead of peel; use essence; flavouring from a bottle; olio essenziale di limone; vanilla extract rather than pods; drops of oil; usare gli aromi; aroma o estratto',
  caffeine:
    'will the coffee one keep me awake; caffeine in it; non fa dormire; will the coffee one keep me up; tiene svegli; caffeine in one glass; quanta caffeina',
  how_much_drink:
    'how many glasses are ok; is a glass a day too much; quanti bicchierini posso bere; how much is too much; how many a week is alright; bere troppo; quanti a settimana; how many glasses a day; quanti bicchieri al giorno; un bicchierino al giorno',
  diabetes:
    'im diabetic can i have some; how many carbs in it; sugar for diabetics; sono diabetico; calorie; is it ok for a diabetic; how sugary is a shot; quante calorie; un diabetico può berlo; somebody diabetic; per un diabetico; can diabetics have it',
  freezer_keep:
    'può stare sempre in congelatore o poi si guasta; in congelatore si guasta; can i keep it in the freezer all the time; leave it in the freezer for months; sempre in freezer; can it live in the freezer; do you keep it in the freezer; is it a freezer drink; si tiene nel freezer; sta sempre in congelatore; lo lascio in freezer; tenerlo in freezer; va messo nel congelatore',
  freezer_glass:
    'will the bottle crack in the freezer; glass burst when frozen; si rompe la bottiglia in freezer; can the glass burst if it freezes; do bottles crack in there; si spacca se la congelo; scoppia il vetro',
  serve_temperature:
    'do you serve it cold; ice cold or room temperature; va servito freddo; chilled or room temperature; how cold do you drink it; si serve freddo; a che temperatura si beve; ghiacciato o no; is it drunk cold; do people drink it cold; si beve freddo',
  serving_size:
    'how many bottles for so many heads; 50 heads, how many do i haul; how many bottles do i bring for the guests; how many fifths for the party; what’s a normal serving; how big is a normal glass of it; how much do i pour each; quanto se ne serve; how much in a glass for a guest; what is a proper measure; how big are liqueur glasses; quanto se ne versa; quanto è un bicchierino; quanto per ospite',
  serve_mixed:
    'can i put it in prosecco; what do you mix it with; cocktail with it; with prosecco or tonic; con cosa si beve; uno spritz con questo; does it go with tonic; what do you drink it with; a cocktail for it; si allunga con la tonica; con che cosa lo bevo; which mixer goes with it; what mixer; top it up with tonic; con cosa si allunga',
  cook_with:
    'can i bake with it; over ice cream; in a cake; nel tiramisù; in cucina; splash in the trifle; does it cook off; in a pudding; lo uso nei dolci; l’alcol evapora in cottura; nella torta',
  thick_cold:
    'why is it thick from the freezer; pours like oil when cold; denso dal freezer; like oil out of the freezer; gloopy when cold but not solid; diventa sciropposo col freddo; esce denso dal congelatore',
  selling:
    'raffle it off, allowed; is it legal to sell; flogging bottles at the market; legal to flog a few at the fair; e legale venderlo al mercato; can i sell it on the stall; sell a few bottles; do i need a licence; posso venderlo; can i flog it at the car boot; want to sell a few; charge money for it; vendere alla sagra; farmi pagare; posso venderlo; sell a few at the church; charge for bottles at the fete; money for the bottles',
  giving_away:
    'can i give it to friends; raffle prize; give it at the fair; posso regalarlo; legal to give it away; as a raffle prize; free samples; regalarlo alla festa; assaggi gratis',
  home_made_allowed:
    'is it legal to make this; am i allowed to make it at home; è legale farlo in casa; am i breaking the law making this; do i need permission to make it; serve un permesso per farlo in casa; è vietato farlo',
  name_limoncello:
    'may i call it limoncello; is the name protected; posso chiamarlo limoncello; is cassis a protected name; may i call it that; come lo chiamo sull’etichetta; nome protetto',
  gift_label:
    'what do i write on a bottle for a present; label for a gift; cosa scrivo sull’etichetta; what goes on the tag of a present; cosa mettere sull’etichetta del regalo; what goes on the tag',
  allergens:
    'somebody has a nut allergy; which allergens are in it; is it gluten free; allergia alle noci; do i have to list allergens; is it ok for nut allergics; devo scrivere gli allergeni; un ospite è allergico; does it contain allergens; che allergeni contiene',
  posting:
    'posso spedirlo per posta; lo posso spedire a mio figlio; can i post a bottle; send it abroad by mail; take it on the plane; hand luggage; spedire una bottiglia; in aereo; will the courier take it; post a bottle to my cousin; portarlo in aereo; mandarlo col corriere; spedirlo; fly home with bottles; take it on a plane; bottles in the suitcase; in valigia',
  cost_rule:
    'which spirit works out cheaper in the end; what does a bottle cost; how much is one bottle to make; is it dear to make; what do people pay for the ingredients; price of a homemade bottle; roughly what will a litre set me back; money for a batch; quanto viene a costare una bottiglia; conviene rispetto al negozio; quanto si spende a farlo; what does it cost roughly; quanto costa farlo; is it cheaper than buying; cheapest one to make; costa meno che comprarlo; quello più economico',
  presents:
    'nice bottles for christmas presents; how much to give; idee regalo; nice way to give bottles; wedding favours; idee per regalarlo; bottigliette regalo',
  which_spirit:
    'what alcohol do i need for walnuts; what alcohol do i need for fruit; which alcohol do i need; how strong should the vodka be; how strong should the spirit be; what strength of spirit do i need; what strength of alcohol do i need; which spirit is best for a beginner; which spirit should a beginner take; what alcohol is best; which spirit suits fruit best; best alcohol for fruit; what spirit for berries; miglior alcol per la frutta; vodka or grappa; which alcohol do i buy; what spirit works best; che alcol compro; what booze should i buy; vodka or the strong stuff; what’s best to steep in; che alcol serve; meglio vodka o alcol puro; what alcohol to buy; which bottle should i get; quale alcol compro; che alcol mi consigliate; is everclear alright; what is there besides vodka; why 95 rather than vodka; strong spirit or vodka, which',
  cheap_vodka:
    'does cheap vodka make it worse; does cheap vodka make worse liqueur; does it matter which vodka i get; do i need fancy vodka; is cheap vodka fine; does dear vodka taste better; supermarket own brand vodka; vodka economica; will the cheapest do; worth splashing out on a good one; dear gin or cheap gin; ne basta una economica; vale la pena prenderne uno buono; quello del discount; is a dear one money down the drain; supermarket own label; spendere di più per una buona; vodka da discount; una vodka da poco; get away with cheap stuff; the cheapest on the shelf',
  low_strength_peel:
    'is 40 percent strong enough for peel; is vodka strong enough for lemons; does 40 do for zest; will 38 % take the flavour out of the skins; is ordinary strength enough for orange peel; only vodka in the shop, does peel come out as well; le bucce rendono lo stesso con la vodka; al supermercato c’è solo vodka; is 40 enough for lemon peel; limoncello with vodka; basta la vodka per il limoncello; can’t get anything over 40, will peel work; is 37.5 enough for zest; con alcol a 40 le scorze rendono; si può fare con la vodka normale; basta a 40 gradi per la buccia',
  brown_spirit:
    'can i make it on white rum; will bourbon work; does brandy work with cherries; on a base of rum; rum rather than vodka for this; rum instead of vodka; can i use whisky; gin as the base; con il brandy; would brandy work instead; can i do plums in rum; swap the vodka for whisky; il rum come base; con la grappa viene bene; nel brandy al posto della vodka; with bourbon for a change; farlo con la grappa; con il rum al posto della vodka',
  dilute_first:
    'water the spirit down before steeping; thin it first; diluire l’alcol prima; water the alcohol down before steeping; is 96 too strong for the fruit; full strength or thin it first; allungare l’alcol prima; macerare a 95 o a 60; troppo forte per la frutta; is 96 too strong for berries; cut the strong stuff first; allungo prima l’alcol',
  wine_base:
    'made with wine; red wine instead of spirit; con il vino; red wine as the base; port instead of spirit; fare col vino; usare il marsala; vino rosso come base; begin with white wine; from a wine; partire da un vino; il vino come base',
  fruit_water:
    'does juicy fruit make it weaker; why is it weaker than i put in; how much does the juice thin it; the berries watered it down; fruit made it weak; quanto si abbassa il grado con la frutta; la frutta annacqua l’alcol; meno forte della vodka che ho messo',
  home_distilling:
    'a neighbour has a small still; burn our own spirit from plums; somebody with a still in the cellar; can i distil it myself; make my own spirit in a still; distillare in casa; thinking of buying a little still; make my own alcohol from sugar; fare la grappa in casa è vietato; mi compro un alambicco; produrre alcol da solo; run off my own spirit; where do i get a still; farmi la grappa con l’alambicco',
  freeze_stronger:
    'freeze it to make it stronger; take the ice out; pull the ice out; freeze it and pour off the strong bit; togliere il ghiaccio per farlo più forte; concentrare col freddo',
  water_order:
    'water into alcohol or alcohol into water; which goes in first; prima l’acqua o l’alcol; which do i pour first; what goes into what; syrup on spirit or spirit on syrup; cosa va dentro cosa; verso l’acqua nell’alcol o il contrario; the other way round, syrup into alcohol; which gets poured into which; cosa verso in cosa',
  steep_temperature:
    'can i put it in the fridge to steep; steep it in the refrigerator; infuse in the fridge or on the shelf; is the fridge too cold for the jar; leave the jar outside in the cold; a cold place while it infuses; should it steep chilled; jar in the fridge for the weeks; can it stand in an unheated room; in frigo mentre macera; posso lasciarlo macerare in frigorifero; troppo freddo in cantina per la macerazione; sits around 45 this time of year, that too cold for a jar; is that too cold for a jar; the barn is cold, ok for the jar; does it go faster if i keep it somewhere warm; is the airing cupboard ok for the jar; how warm should it stand; next to the boiler; cold garage ok; al caldo fa più in fretta; in una stanza fredda; is my kitchen too cold for the jar; is the house too hot for it; does the jar mind the cold in winter; attic in summer too warm; fa troppo caldo in casa per l’infuso; meglio in cantina o in cucina mentre macera; il caldo rovina la macerazione; d’estate sopra il frigo; next to the stove; near the heater; can it stand somewhere chilly; vicino al camino; il vaso accanto al termosifone',
  steep_light:
    'can i speed it up in the sun; will sunlight make it go faster; lo metto al sole così fa prima; why do i keep it in the dark; why must it be dark; what does light do to it; is daylight bad for it; why not on the windowsill; why wrap the jar; what happens if the sun gets to it; does it have to be dark; away from the light, why; perché al buio; perché lo tengo al buio; la luce gli fa male; is the windowsill bad; does it need darkness; must it sit in the dark; keep the jar in the dark while it steeps; deve stare al buio; can it stand on the kitchen window; does sunlight hurt it; clear glass on the shelf ok; on the sunny sill; sulla finestra della cucina; alla luce del giorno; wrap the jar in foil; cover it from the light; does it matter if the sun gets on it; leave it out on the worktop in daylight; devo coprirlo dalla luce; batte il sole sul vaso; avvolgere il vaso nella stagnola; away from daylight; hide the jar from the light; on the counter in daylight; al riparo dalla luce; sul davanzale alla luce',
  steep_shaking:
    'does it need to be shaken every day; how often do i shake it; is it bad if i forget to shake; turn the jar over daily; swirl it or leave it alone; is shaking necessary; every other day, is that enough shaking; do i have to stir it; what happens if nobody shakes it; bisogna agitarlo ogni giorno; ogni quanto lo scuoto; se mi dimentico di agitarlo; stirring or shaking; do i have to shake it; what if i forget to shake; is shaking really needed; se non lo scuoto; what’s the point of shaking; is stirring necessary; turn the jar upside down; do i give it a shake daily; succede qualcosa se non lo scuoto; va rigirato ogni giorno; quante volte lo agito; what is the point of turning it; what good does the shaking do; why bother shaking; does shaking do anything; a che serve scuoterlo; does shaking do owt; any use shaking',
  keep_under:
    'should the fruit be completely covered; does all of it have to be under the spirit; must the alcohol cover the fruit; a problem if the top layer is dry; fruit pokes out of the vodka; the liquid does not cover the fruit; how do i stop it bobbing up; cover the berries fully; peels not all under; la frutta deve essere coperta del tutto; l’alcol non copre le bucce; la frutta spunta fuori dall’alcol; fruit pokes out of the liquid; berries float above; weigh the fruit down; la frutta resta fuori; the peel won’t stay down; something to hold the berries down; the top layer of fruit is dry; come le tengo giù; la frutta esce dall’alcol; tenere sommersi i lamponi; un peso per tenere giù le bucce; pieces poke out above the liquid; fruit sticking out of the spirit; half of it sits above the vodka; la frutta affiora; spunta fuori dall’alcol',
  jar_fill:
    'what size jar do i need; how big a jar for a litre and a kilo of fruit; how full can the jar be; quanto grande il vaso; will it all fit in a three litre jar; is the jar too big for it; half empty jar while it soaks a problem; il barattolo va riempito tutto; il vaso è troppo grande; ci sta tutto nel vaso da tre litri',
  spices_when:
    'put everything in together; cloves at the start or later; metto tutto insieme; cinnamon from day one or later; do i chuck everything in together; does the spice go in after a while; la cannella la metto subito o dopo; a che punto aggiungo i chiodi; le spezie insieme alla frutta; all together or in stages; spezie subito o dopo',
  steep_done:
    'how long until i can strain; when can i strain it; how soon may it be strained; when is it time to take the fruit out; how do i know it has had long enough; how many weeks before straining; earliest i can strain; what day do i strain; when does the fruit come out; quando lo posso filtrare dalle bucce; tra quanto si cola; dopo quanto tempo si tolgono le bucce; how do i know when its ready to strain; is two weeks long enough; quando filtro; how will i know it is ready to come off the fruit; what are the signs that it is done; has it had enough; come faccio a sapere quando filtrarlo; da cosa capisco che ha finito; quando si può togliere la frutta; when can it be strained; signs that it is ready to strain; quando si può filtrare',
  steep_too_long:
    'can fruit sit in alcohol too long; can you leave the fruit in too long; forgot about the jar since last year; forgotten since christmas; si può lasciare dentro troppo a lungo; dimenticato nel vaso da mesi; can it steep too long; is a year too long; harm if i leave it another month; troppo in infusione; had it on the fruit eight months, is it ruined; is longer always better; can you overdo it; does it go bitter if left on the peel; l’ho tenuto un anno in infusione; se lo lascio di più è meglio; troppi mesi fanno male; dimenticato nel vaso; been in there for a year, spoilt; peel left in for months, ruined',
  second_steep:
    'get another bottle out of those peels; one more batch out of the same skins; squeeze a second lot from the same fruit; same peel used one more time for new spirit; can be used one more time; same zest again in new spirit; another go with the same sloes; can i use the peels twice; a second batch from the same fruit; riuso le scorze; any life left in the fruit for another go; pour fresh gin on the same sloes; more vodka on the old fruit; is the peel finished after one go; si può rifare con le stesse bucce; usare di nuovo la stessa frutta; rimettere alcol sulle bucce usate; the same berries round again; once more with the same peel; una seconda volta le stesse bucce; un altro giro con le stesse',
  add_later:
    'can i put more fruit in later; add another lemon now; aggiungo altri limoni; found more raspberries, can they join the jar; throw in extra fruit a week on; too late to put more in; aggiungere altre fragole tra una settimana; metterne ancora a metà; ne ho trovate altre, le aggiungo; more fruit turned up, may it go in too; ne aggiungo altra dopo; aggiungere altra frutta più avanti; keep adding as they ripen; keep putting more in as it ripens',
  top_up:
    'fill it up with more vodka; spirit no longer covers the fruit; rabbocco; fruit drank half of it; the level has dropped, pour in a splash more; il livello è sceso, aggiungo alcol; la frutta ha bevuto tutto; riempire di nuovo con la vodka; liquid has sunk, pour more in; spirit no longer covers the fruit; pour in more vodka over the fruit; rabbocco',
  heat_to_speed:
    'can i speed it up; can it be done faster; how can i hurry it along; make it go faster; speed things up; can i rush it; any way to rush the steeping; a trick for quicker steeping; does anything make it infuse faster; si può accelerare; come faccio a velocizzare; si può fare più in fretta; may i warm the jar to make it quicker; does warmth make it go faster; stand the jar in warm water to hurry it; sous vide; slow cooker; microwave it; scaldarlo a bagnomaria; any way to rush it; hurry it along with heat; come si accelera; scaldare il vaso per fare prima; warm the jar to hurry it along; on the stove to make it quicker; scaldare il vaso per fare prima',
  open_lid:
    'ok to open it and smell; will opening the jar spoil it; lid on or off; posso aprirlo ogni tanto; do i let the flavour out if i peek; have a sniff while it steeps; should the lid stay shut the whole time; il vaso perde profumo se lo apro; deve restare chiuso sempre; unscrew it to sniff; annusare aprendo',
  taste_strong:
    'how do i taste it when its so strong; put a drop in water to taste; come lo assaggio; have a sip while it is still ninety odd; try it without burning my tongue; lick of the strong stuff to see how it is going; provarne un goccio puro; assaggiarlo mentre è ancora fortissimo',
  keep_green:
    'how do i keep it green; basil stays green; perde il verde; my mint always goes brown; how do they get it so green; the green fades; il verde sparisce; mantengo verde il basilico; diventa subito scuro invece che verde; ends up khaki; goes a dull olive; stays bright green; a really green one',
  quick_ones:
    'what is quickest; ready by next week; need a present fast; qualcosa di veloce; what is ready fastest; i’ve only got ten days till the party; no time, what can still be done; cosa riesco a fare in dieci giorni; quale si fa in fretta; ho poco tempo; drinkable within a week; ready in a few days; pronto in pochi giorni; qualcosa di pronto la settimana prossima',
  strain_cloth:
    'will a coffee filter do; does a coffee filter work; is a sieve enough; a fine strainer alone; basta un colino; the holes of my sieve are too big; what else can i pour it through; my strainer lets bits past; no cheesecloth in the house, what then; can i use tights; strain through tights; coffee filter or muslin; what do i sieve it with; con cosa filtro; i’ve no muslin; kitchen paper to strain; a sieve enough; old t shirt to filter; va bene un canovaccio; non ho la garza; un colino basta; paper or a cloth; coffee paper or muslin; filter or cloth; carta o panno',
  squeeze:
    'squeeze the fruit out or let it drip; press the bag; strizzo la frutta; wring out the bag; squeeze the bag at the end; press the last drops out; strizzo alla fine; schiaccio bene o lascio gocciolare; spremere il sacchetto; press the pulp; squash what is in the sieve; spremere la polpa; la polpa si spreme',
  filter_order:
    'filter before or after adding sugar; filtro prima o dopo lo zucchero; through paper before the syrup or after; when does the filtering come; quando va filtrato, prima dello sciroppo; lo sciroppo prima o dopo la filtrazione',
  let_settle:
    'bits settled out can i pour it off; leave it to settle; pour off the clear part; lascio depositare; leave it standing so the muck drops; how many days to settle; let the gunk sink; quanti giorni per decantare; aspetto che il fondo scenda; lo lascio fermo così si deposita',
  slow_filter:
    'coffee filters are so slow any trick; speed up filtering; how do i filter faster; come filtro più in fretta; been filtering for hours; the paper keeps clogging, a trick; how to make it run through quicker; è lentissimo a filtrare; si intasa sempre la carta; it takes for ever to filter; tricks when the paper clogs; filtrare più in fretta; ci mette una vita a filtrare; velocizzare il filtraggio; bunged up filter paper',
  kept_back:
    'fruit drank half my gin; why is there less than i started with; why did i get less out than i put in; some of the spirit is gone; ne è uscito meno; put a litre in, got 850 out; where did my vodka go; how much do the berries drink; ne escono 800 da un litro; quanto alcol assorbe la frutta; ne manca un po’ dopo filtrato; where has the rest gone; got less out than i put in; less came out; ne è uscito di meno; ne esce meno; dove finisce il resto',
  rinse_plants:
    'rinse the peels with water to get the rest out; wash the fruit out with syrup; sciacquo le scorze con acqua; slosh water over the peel to get the last of it out; is it worth rinsing after straining; recuperare l’alcol rimasto nelle scorze; lavo la frutta con lo sciroppo per recuperare',
  spent_fruit:
    'eat them or throw them away; mangiarla o buttarla; the cherries left over from the jar in a cake; bake with the fruit that was in it; a tart with the fruit from the jar; la frutta che avanza dal vaso in una crostata; una torta con la frutta del vaso; le bucce dopo le butto o servono a qualcosa; le bucce poi si buttano o servono; do the peels go in the bin after or are they good for something; what do i do with the raspberries once they are strained; ideas for the leftover raspberries; cosa faccio con le ciliegie dopo aver filtrato; what do i do with the fruit afterwards; a lot of fruit is left after straining, what can one do with it; is the fruit still any good after; what do i do with the boozy fruit; eat the leftover cherries; jam from the fruit; cosa faccio con la frutta; recipes for the sloes after; the fruit thats left in a pudding; jam from the boozy cherries; ciliegie ubriache; la frutta rimasta si mangia; ci faccio un dolce con le bucce avanzate; what happens with the fruit afterwards; what are the boozy plums good for; in a trifle; the fruit when it is done; la frutta scolata; che faccio della frutta dopo',
  spent_away:
    'compost the peels; can the fruit go in the bin; feed it to the chickens; butto le scorze; can the old fruit go down the drain; where do i chuck the used peel; on the compost heap; dove butto la frutta usata; le bucce usate nell’umido; throw out the used peel; dispose of the old fruit; butto le bucce usate',
  fat_off:
    'butter or bacon fat in it; skim the fat; tolgo il grasso; greasy film, get rid of it; lift the fat off; levare l’unto dalla superficie; c’è olio sopra; come tolgo il grasso',
  volumes_shrink:
    'alcohol and water shrink; 1 litre plus 1 litre did not make 2; two halves didnt make a litre; mixed a litre and a litre, less than two litres; perche un litro e un litro non fanno due; one and one litre isnt two; why dont volumes add up; un litro più un litro non fa due; mixed two and got less; why doesn’t it add up; some of it vanished when i mixed; il volume cala mescolando; ne manca un po’ dopo aver mescolato; half a litre and half a litre is less than a litre; half and half comes out short',
  usual_strength:
    'how strong is it meant to be when it is finished; how strong should mine end up; what percent should the finished one have; how strong ought it to come out; what percent is normal; how many percent is usual; how many degrees is a normal one; che percentuale è normale; how strong should it be; what percent are liqueurs; quanti gradi deve avere; how strong should it end up; is 30 about right; what percent is a liqueur normally; che gradazione ha di solito un liquore; quanti gradi deve avere il limoncello; 30 gradi è giusto; how strong should it be; what strength do people make it; quanto forte deve essere; quanti gradi deve avere; which strength to aim for; aim for how many percent; a che gradazione puntare',
  weak_keeps:
    'what if i make it at 20%; is 20 percent too low; would 18 percent be too weak; at 15 % does it keep; how weak can i go; can it be lighter than 20; lowest abv that won’t go off; at what strength does it spoil; is a 17 % one safe in the cupboard; se lo faccio a 20 gradi; a 18 gradi si conserva; qual è la gradazione minima; will 18 percent keep; is 20 enough to keep; how low can i go; a 20 gradi si conserva; how weak can i go before it goes off; lowest alcohol that is safe; will it keep at 16; sotto quanti gradi va a male; a 15 gradi dura',
  evaporation:
    'does the alcohol evaporate; loses strength if open; evapora l’alcol; lid was off all night; do i lose alcohol while it sits; lasciato aperto tutta la notte; perde gradi stando fermo',
  obscuration:
    'hydrometer in a sweet liqueur; why does the floaty thing read wrong with sugar; l’alcolometro nel liquore dolce; hydrometer says nought once the sugar is in; measure it after sweetening; segna zero nel liquore; misurarlo dopo lo sciroppo',
  no_hydrometer:
    'how do i know the strength without a hydrometer; no alcoholmeter; senza alcolometro; no gadget to measure it; do i have to buy one; work out the strength without one; serve per forza l’alcolometro; senza strumento come so i gradi; own no hydrometer; nothing to measure the alcohol with; find out how strong it is without one; non possiedo un alcolometro; senza strumenti',
  proof:
    'proof versus percent; proof vs percent; what is 151 proof in percent; quanto è 100 proof; bottle says 100 proof; proof in normal percent; cosa vuol dire proof; 80 proof quanto fa',
  label_strength:
    'what percent do i put on the label; che gradi scrivo; what percentage goes on the bottle; write about 30 on it; do i put 30 or 29.6 on the label; scrivo circa 30 gradi; gradi precisi sull’etichetta',
  dry_sugar:
    'straight sugar without making a syrup; just tip the sugar in; zucchero direttamente; tip the sugar in as is; do i really have to make syrup; granulated straight in the jar; serve per forza lo sciroppo; zucchero nel vaso senza scioglierlo prima; must i make a syrup at all; have to make a syrup',
  boil_syrup:
    'do i bring it to the boil; do i have to boil the syrup; does the syrup need cooking; devo bollire lo sciroppo; stir it cold or heat it; how do you cook the syrup; sugar water on the stove; come si fa lo sciroppo; basta sciogliere a freddo; quanto cuoce lo sciroppo; does the syrup have to be cooked; simmer the sugar water; va bollito lo sciroppo; si fa bollire',
  cool_syrup:
    'syrup still hot straight in; straight from the pan; hot syrup into the spirit; how cold should the syrup be; can i add the syrup hot; pour it in warm; sciroppo ancora caldo; how cold should the syrup be; can the syrup go in hot; poured it in warm, did i mess up; va aggiunto freddo; versarlo ancora caldo; aspettare che si raffreddi lo sciroppo; stone cold or still warm; has the syrup got to be cold; lukewarm syrup; ancora tiepido',
  which_water:
    'tap water ok; distilled or bottled water; hard water; acqua del rubinetto; our water is very hard; bottled or from the tap; l’acqua dura è un problema; che acqua per lo sciroppo',
  sugar_when:
    'sugar at the start or at the end; add the sugar with the fruit; zucchero subito o dopo; sugar in with the fruit or after; when do you sweeten it; at what point does the sugar go in; quando metto lo zucchero; zucchero all’inizio o alla fine; si zucchera subito o dopo; sweeten now or later; at which stage does it get its sugar; subito o alla fine lo zucchero; sugar first or last; sugar before or after the strain',
  honey:
    'mountain honey in place of sugar; how much honey for the sugar; miele di montagna al posto dello zucchero; we keep bees, will honey do for the sugar; can i sweeten with honey; can i use honey; honey instead of sugar how much; posso usare il miele; miele al posto dello zucchero; does honey do the same job; how much honey for 500 g of sugar; quanto miele al posto di mezzo chilo di zucchero',
  brown_sugar:
    'jaggery in place of white sugar; jaggery i can put; panela, piloncillo or rapadura for white sugar; gur instead of sugar; brown sugar any good; demerara; dark sugar; zucchero di canna; does brown sugar change it; dark sugar for the rum one; cambia il sapore lo zucchero grezzo; quello scuro al posto del bianco',
  other_syrups:
    'maple syrup instead; agave; golden syrup; sciroppo d’acero; can agave go in; a tin of golden syrup; dolcificare con l’agave; sciroppo d’acero per addolcire',
  sweeteners:
    'can i make it without sugar; leave the sugar out altogether; could i skip the sugar; does it need sugar at all; no sugar in it, does that work; what if i put no sugar in; must there be sugar; is sugar necessary; unsweetened, is that fine; si può fare senza zucchero; se non metto lo zucchero; lo zucchero è necessario; xylitol any good; sugar free; stevia; erythritol; sweetener instead of sugar; senza zucchero; dolcificante; a sugar free one for my aunt; is stevia any good; usare la stevia; si può fare senza zucchero; no sugar version; with no sugar in it; sugar-free one for my dad; senza zuccheri',
  icing_sugar:
    'icing sugar ok; powdered sugar; zucchero a velo; is caster ok; icing sugar dissolve quicker; zucchero fine si scioglie prima; a velo o semolato',
  glycerine:
    'glycerine to make it smooth; thicker mouthfeel; how do i get it silkier; more body without more sugar; thicker in the mouth; la glicerina serve; farlo più vellutato; renderlo più corposo; what makes the bought ones so silky; come mai quelli comprati sono così vellutati',
  sweetness_trial:
    'how do i find how sweet i like it; try a small glass first; provo prima in un bicchiere; how do i find out how sweet we like it; test the sugar on a bit first; try it in a glass before doing the lot; provo quanto zucchero ci vuole; dolcificarne un po’ per prova; prova in un bicchiere',
  sweeten_again:
    'more sugar later or is it too late; can i add sugar after bottling; sweeten it a second time; posso aggiungere zucchero dopo; bottled it and it needs more sugar; is it too late to add syrup; can it be sweetened later on; è venuto poco dolce, si rimedia; aggiungo altro sciroppo adesso; zuccherare dopo imbottigliato; more sugar when it is already bottled; put extra sugar in the bottles; addolcire in un secondo momento; ancora zucchero dopo imbottigliato',
  syrup_ratio:
    'one to one or two to one syrup; how thick a syrup; rapporto zucchero acqua; equal sugar and water; what is simple syrup then; proporzione acqua e zucchero; quanta acqua per lo sciroppo',
  acid: 'would a pinch of citric acid help; does citric acid wake it up; flat and dull, would lemon juice help; how do i make it sharper; squeeze of lemon juice to balance it; citric acid; make it less flat with lemon; acido citrico; would acid help, it tastes flabby; a squeeze of lemon to lift it; un po’ di succo di limone alla fine; ci vuole acidità; è piatto; a squeeze of lemon to liven it up; a splash of juice to freshen it; ci sta un po’ di acido citrico',
  syrup_keeps:
    'make the syrup the day before; syrup made yesterday; lo sciroppo si conserva; make the syrup tonight for saturday; how long is syrup good for; is last week’s syrup ok; farlo il giorno prima lo sciroppo; lo sciroppo avanzato dura; syrup a week early; prepare the syrup ahead; lo sciroppo fatto prima',
  which_jar:
    'does it need an airtight lid; must the jar be airtight; is a loose lid all right on the jar; does the lid have to seal while it steeps; cling film over the jar instead of a lid; a jar without a proper lid; must it be shut tight while it steeps; is a plate on top of the jar enough; does the jar have to close tight; serve una chiusura ermetica; il vaso deve chiudere ermeticamente; basta un coperchio che non chiude bene; which jar should i use; jam jar ok; old pickle jar; che barattolo uso; what sort of jar; does it need a clip lid; will a jam jar do; barattolo della marmellata; vaso ermetico o normale',
  plastic:
    'tupperware for steeping; a plastic tub with a lid for steeping; in a lunch box; plastic tub for a week; is a plastic bottle ok; food grade bucket; va bene un barattolo di plastica; plastic bucket; does strong alcohol melt plastic; posso usare la plastica; nella plastica un secchio; a food bucket; pop bottles; fizzy drink bottles; plastic tub; secchio alimentare',
  rubber_seal:
    'does the rubber ring matter; orange rubber seal; guarnizione di gomma; does the rubber ring taint it; la gomma dà sapore; l’anello di gomma con l’alcol; does the ring perish; the orange rubber; la guarnizione si rovina; la gomma si scioglie',
  metal_lid:
    'tin lids ok; metal lid touching the spirit; rusty lid matter; i coperchi di latta vanno bene; jam jar lids ok; il tappo si arrugginisce; coperchio di latta; will the cap corrode; tin lids; un coperchio di latta è un problema; corrode; metal lid on the jar, does it matter; coperchio di metallo, importa',
  closures:
    'cork or screw cap; swing top bottles; tappo di sughero; what stoppers do i need; screw top or cork; sughero o a vite; tappo meccanico; va bene il sughero; un tappo di sughero; corks or caps',
  lead_crystal:
    'safe to store liqueur in a crystal decanter; does lead leach from crystal; can i keep it in a crystal decanter; granny’s decanter; caraffa di cristallo della nonna; put it in gran’s decanter; is old crystal lead; nel decanter si può; il cristallo ha il piombo; stand it in the cut glass decanter; keep it in gran’s decanter; cut glass any good',
  pans: 'aluminium pan for the syrup; metal spoon ok; pentola di alluminio; is a steel spoon fine; copper pan ok; il rame va bene; che pentola',
  clean_bottles:
    'unwashed jars; do the jars need washing first; jar straight from the cupboard without washing; a dirty jar; is a rinse enough for the jar; new jar from the shop, wash it first; dusty bottles from the loft; how do i sterilise the jar; sterilised or only washed; come sterilizzo i vasetti; come si sterilizzano le bottiglie; vasi non lavati; can i use milton; how do i sterilise the bottles; dishwasher enough; sterilizzare le bottiglie; sterilise them first; how clean do they have to be; boil the jars like for jam; come pulisco i vasi; basta la lavastoviglie; sterilizzarle',
  bottle_fill:
    'how full do i fill the bottle; leave a gap at the top; fino a dove riempio; how far up do i fill; right to the cork; lascio spazio sotto il tappo',
  reuse_bottles:
    'are old ketchup bottles ok to use again; are sauce, squash or juice bottles any good; can rinsed out gherkin and pickle jars be used; empty passata bottles; vinegar bottles; posso usare le bottiglie del succo; vanno bene le bottiglie della passata; bottiglie dell’olio; can i use old whisky bottles; reuse wine bottles; bottles from other spirits; riusare bottiglie di whisky; getting labels off bottles; old wine bottles; stacco le etichette; bottiglie vecchie',
  wood: 'oak chips in it; little barrel; legno o botte; age it in oak; a bit of wood for flavour; oak chips in the jar; invecchiarlo in botte; legno nel vaso',
  juice_or_zest:
    'bottled lemon juice instead of peel; lemon juice from a bottle; ready squeezed juice rather than skins; juice from a carton instead of zest; can the juice replace the peel; no peel, only juice; orange juice in place of orange peel; concentrate instead of zest; shop juice for the lemons; succo di limone in bottiglia al posto delle scorze; il succo al posto della buccia; posso usare solo il succo; is it peel only; does the juice go in too or just the skin; why only the peel and not the flesh; can i put whole slices in; posso mettere le fette intere; ci va anche il succo; perché si usa solo la scorza',
  green_walnut_when:
    'when can i start nocino; nocino season; when are the walnuts ready for nocino; what time of year are green walnuts picked; in which weeks is nocino made; can i still make nocino in july; when do people make nocino; best date for green walnuts; quando si fa il nocino; in che periodo si raccolgono le noci verdi; quando posso iniziare il nocino; too late for green walnuts; what date do people pick them; fino a quando si raccolgono le noci verdi; a luglio le noci sono ancora buone; quando si prendono le noci per il nocino; too late to gather them; can you still pierce them; quando raccolgo le noci per il nocino',
  flowers_prepare:
    'snip the stalks off; any old roses; shake the insects out of the flowers; i fiori si lavano; preparo i petali; tolgo i gambi ai fiori; take the flowers off their stems; getting petals ready; pick the blossoms off the stalks',
  cinnamon_kinds:
    'is supermarket cinnamon the right kind; cassia or proper cinnamon; che cannella devo comprare; che tipo di cannella',
  charcoal: 'water filter jug for vodka; la caraffa filtrante; pulire la vodka col carbone',
  sweetness_words:
    'what counts as dry; how sweet is medium; grams of sugar in a normal liqueur; quanto è dolce uno dolce; cosa si intende per secco; how sugary are shop ones; how much sugar is in a bought liqueur; quanto zucchero c’è in un liquore; quanto sono dolci quelli comprati',
  split_batch: 'sweeten just half; one jar two versions; metà con zucchero e metà senza; farne due tipi',
  hydrometer_temperature:
    'do i need to cool it before i measure; must it be at 20 degrees to measure; let it cool before the hydrometer; warm it up before reading it; my garage is cold, does that throw off the hydrometer; the room is warm, is the instrument off; does the heat spoil what the meter shows; il freddo del garage falsa l’alcolometro; it’s warm in here, is the reading out; measured it straight from the fridge; la temperatura cambia la lettura; misuro a 26 gradi di temperatura; misurato freddo; warm kitchen and the hydrometer; the hydrometer is made for 20 degrees; la temperatura quando si misura',
  refractometer:
    'got one from my beer stuff, any use; honey refractometer for alcohol; funziona il rifrattometro con l’alcol; i brix del liquore',
  anise_cloud:
    'aniseed one goes white; clouds up with water, fennel; la sambuca si intorbida; finocchio con l’acqua diventa bianco; aniseed with crystals in the cold; l’anice fa i cristalli',
  label_date:
    'need a best before on it; when i made it on the bottle; devo mettere la scadenza; la data sull’etichetta; put a best before on; does it need a sell by; scrivere la scadenza',
  garlic:
    'garlic and chilli in vodka, safe to keep; is garlic vodka safe to keep; does garlic keep in spirit; botulism from herbs; aglio nella vodka; rischio botulino',
  plant_limits:
    'can you overdo wormwood; which herbs have a limit; l’assenzio è pericoloso; erbe con un limite; quanta se ne può mettere al massimo senza rischi; how much is too much of a spice; quanta al massimo; limite per la noce moscata',
  spills:
    'spilt it on the table; knocked over the strong stuff; stains on my hands; macchiato il piano; rovesciato sul tavolo',
  tasting_table:
    'how do we do a tasting stall; cups for tasting; banco assaggi; bicchierini per assaggi; organise a tasting; run a tasting stall; organizzare una degustazione',
  cups: 'what’s an ounce in grams; a tablespoon of sugar weighs what; how big is a cup; pint in litres; una pinta quanti ml; quanto è una cup',
  mark_jar: 'can’t remember what is in this one; labelling jars; non so più cosa c’è nel barattolo; segnare il vaso',
  freezes:
    'will it freeze in my freezer; does it freeze solid; will mine turn to ice; at what strength does it freeze; how strong so that it won’t freeze; is 25 percent going to freeze; will a weak one turn to ice in the freezer; goes slushy in the freezer; can it freeze at minus 18; si congela in freezer; a che gradazione ghiaccia; diventa ghiaccio nel congelatore; at which strength does it stop freezing; when does it not freeze; da che gradazione non gela; a quanti gradi ghiaccia',
  illness: 'somebody with gout; with gastritis; a bad liver; con la gastrite; con l’ulcera; ho il fegato malato',
  dry_guests: 'cake for somebody who has given up drink; can a teetotaller eat it; un astemio può mangiarla',
}
