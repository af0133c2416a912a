import type { SymptomId } from '../../../core/trouble/symptoms.ts'

/** How each trouble is told in whole sentences, in English and in Italian, parted by semicolons. */
export const symptomsTold: Readonly<Record<SymptomId, string>> = {
  cloudy_on_mixing:
    'looks like milk since the syrup; muddy since i sweetened it; turned to skimmed milk when i added water; lost its clarity when mixed; it looks like dishwater; like barley water; you cant see through it any more; pearly; not see-through; smoky looking; chalky; pastis look; sembra latte da quando ho messo lo sciroppo; sembra acqua sporca; non si vede attraverso; non è limpido dopo lo zucchero; biancastro appena unito lo sciroppo; latte',
  cloudy_in_cold:
    'cloudy once chilled; fogs up in the fridge; milky from the freezer clear on the table; mists over when cold; in frigo diventa opaco; torbido quando è freddo; appannato dal freezer',
  cloudy_later:
    'clear for a month and now dull; fine for weeks then turned cloudy; lost its shine after bottling; hazy again after filtering; era limpido e adesso è opaco; dopo un mese si è intorbidito',
  oil_ring:
    'greasy ring at the top of the bottle; oil slick; slick on the surface; shiny film like oil; yellow blobs on top; fatty layer; oily drops in the neck; una macchia d’olio in superficie; goccioline gialle in alto; alone oleoso nel collo; grasso in superficie',
  separated:
    'two layers now; a heavy layer at the bottom and a thin one on top; come apart in the bottle; split in two; half clear half dark; bands in the bottle; syrup has sunk; dense stuff sunk to the bottom; due strati nella bottiglia; lo sciroppo è sceso sul fondo; sotto denso e sopra liquido; si è diviso in due',
  sediment:
    'gunk at the bottom; mud at the bottom; silt in the bottle; brown stuff has sunk; residue on the bottom; a layer of dust at the base; crud in the bottom; grounds in the last glass; fanghiglia sul fondo; polvere in fondo alla bottiglia; residui nel fondo; della roba depositata; a white thing on the bottom; something white lies at the bottom',
  gelled:
    'gone like jam; jellified; wont pour, its a jelly; thick as custard; wobbly; set solid like jelly at room temperature; pours like snot; ropey; like frogspawn; è diventato marmellata; budino; una gelatina che non cola; filante; denso come una marmellata',
  crystals:
    'sugary lumps in the bottle; sugar has come out again; glassy bits at the bottom; rock candy in the bottle; gritty; crunchy bits; like sand in it; crystal needles; zucchero ricristallizzato; granelli duri in fondo; aghi nella bottiglia; sassolini di zucchero',
  frozen:
    'turned to sorbet in the freezer; a block of ice; its a slushie; iced up; solid as a brick in the freezer; wont pour out of the freezer; ice lolly; frozen stiff; like a granita; in freezer è diventato un blocco; si è fatto ghiaccio; è diventata una granita; non esce dalla bottiglia, è ghiaccio; pezzi di ghiaccio',
  mould:
    'a beard on the fruit; bluish beard on the cherries; green stuff growing on the fruit; white cotton wool on top; spots of mildew; mildew; whiskers on the peel; fluffy patch; grey coat on the berries that stick out; cresce una roba verde; una peluria bianca; macchie verdi sulla frutta; cotone bianco sopra; verdastra sopra le ciliegie',
  pink_orange_slime:
    'pinkish goo; orange goo under the lid; slimy coating; rosy slime; viscido rosa; bava arancione; patina viscida sul vaso; orange slime on the lid; pink stuff under the rim',
  skin_on_top:
    'a film across the top; wrinkly skin has formed; a veil on the surface; thin white layer floating; una pellicola sulla superficie; un velo in alto; una crosta sottile sopra; a wrinkled film has settled on it',
  floating_bits:
    'specks swimming about; bits swimming in it; pips on top; little things bobbing about; pulp floating; pezzettini che nuotano; semini a galla; roba che galleggia',
  insects:
    'gnats in the jar; a wasp fell in; ants in the syrup; something crawling in it; a beetle among the berries; earwig in the jar; una vespa nel vaso; formiche; un bruco nella frutta; un insetto dentro',
  hairs_or_spines:
    'tickles the throat; tiny hairs floating from the rosehips; fuzz from the fruit in my throat; prickles from prickly pears; spine nel liquore; peluzzi che grattano la gola; le spine dei fichi',
  brown:
    'gone the colour of tea; looks like old tea; rusty brown now; has darkened; turned the colour of mud; the pears browned; amber turned dark; color del tè; è diventato scuro; ha preso un colore marrone; annerito un po',
  faded:
    'the red has gone; washed out; not as bright as it was; pale as straw now; the pink has vanished; the green has gone out of it; lost its lovely red; non è più rosso; il colore è sparito; ha perso il rosso; sbiadita; the colour has gone from it; colour is away',
  black_or_metal:
    'gone grey as slate; inky black since the metal lid; tastes like a coin; like licking a spoon; tinny; tastes of tin; blood taste; sa di ferro; sapore di monete; è diventato nero; gusto di latta',
  fruit_went_pale:
    'the peels have gone white; berries have lost all colour; ghostly fruit; raspberries look bleached; le bucce sono bianche; i lamponi sono sbiancati; frutta senza colore',
  leaves_went_black:
    'the mint leaves look like seaweed; basil leaves are black; herb leaves have turned dark; le foglie sono diventate nere; il basilico si è annerito; la menta è marrone',
  bitter:
    'tastes like aspirin; leaves a bitter aftertaste; sharp bitterness; like chewing pith; bitter as gall; medicine taste; furry tongue from tannin; amarissimo; lascia l’amaro in bocca; sa di medicina; retrogusto amaro',
  harsh_hot:
    'burns all the way down; takes the roof off your mouth; rocket fuel; like drinking fire; rough as old boots; raw alcohol taste; tastes only of alcohol; catches in the throat; too boozy; brucia tutto; si sente solo l’alcol; è una bomba; gratta in gola; sa solo di alcol; blows your head off',
  too_sweet:
    'like drinking pure sugar; sugar bomb; sets my teeth on edge with sugar; more like syrup than liqueur; so sweet you cant drink it; overdid the sugar; too much sugar in it; tooth achingly sweet; sickeningly sweet; talmente dolce che non si beve; è uno sciroppo; ho esagerato con lo zucchero; fa venire il diabete; zuccheratissimo',
  too_dry_or_sour:
    'could do with more sugar; needs sweetening; hardly sweet at all; mean on sugar; a bit thin and not sweet; lacks body; ci vuole più zucchero; è poco dolce; manca di corpo; non è abbastanza dolce',
  too_weak:
    'no punch; not boozy enough; like squash; you cant taste the alcohol; its like cordial; thin on alcohol; feeble; no alcohol left in it; non si sente l’alcol; sembra succo; poco forte; acquoso; è leggero',
  weak_taste:
    'tastes of absolutely nothing; barely any raspberry in it; no lemon to speak of; hardly any flavour; you cant taste the fruit; where has the flavour gone; tastes of vodka and nothing else; the smell has gone; no scent; nowt; non si sente il limone; profuma poco; il sapore è debole; si sente poco la frutta; senza gusto; sa di poco; it tastes of little; can’t make out the fruit',
  too_sour:
    'makes my mouth pucker; puckers the mouth; so sour; like sucking a lemon; far too tart; face pulling; acid; fa strizzare gli occhi; è acidissimo; aspro da morire; allappa',
  too_spicy:
    'the chilli blew my head off; way too much heat from the chilli; ginger burn; overdid the chillies; mouth on fire from pepper; il peperoncino brucia troppo; ho messo troppo peperoncino; troppo zenzero pizzica; the chilli is overpowering; all you get is chilli; the chilli is a killer',
  soapy_perfume:
    'like granny’s soap; smells like a perfume counter; tastes like bath water; like potpourri; like washing-up liquid; sa di saponetta; come profumo da donna; sembra sapone',
  cloth_or_paper_taste:
    'tastes like the filter; like wet paper; like laundry; like cardboard box; a papery note; sa di filtro; sapore di carta; di bucato; di cartone',
  plastic_taste:
    'tastes of the bottle; tastes like a hosepipe; like a balloon; like a rubber band; like new shoes; sa di bottiglia di plastica; sapore di gomma; di tubo',
  vinegar:
    'smells like chip shop; gone off like vinegar; turned to vinegar; pickly smell; like salad dressing; è diventato aceto; odore d’aceto; sa di sottaceti',
  solvent:
    'reeks of nail salon; whiff of nail varnish; smells like paint; smells of glue; model aeroplane glue; varnish smell; petrol station smell; like white spirit; odore di smalto; sa di vernice; puzza di solvente; odore di diluente',
  rotten_egg:
    'smells like a fart; stinks of eggs; sulphur smell; smells like drains; stink bomb; boiled cabbage smell; puzza di uovo; odore di zolfo; puzza di fogna',
  musty:
    'like a cellar; smells of old books; damp smell; like wet dog; smells like a loft; stale smell; fusty; odore di chiuso; sa di cantina; odore di umido; sa di vecchio',
  fermenting:
    'it is fizzing; pops when i open it; frothing up; foaming at the top; little bubbles rising; smells like beer; smells like a bakery; its alive; gassy; prickles on the tongue; sparkling now; fa le bolle; ha fatto la schiuma; odore di birra; è diventato frizzante; sa di vino',
  pressure:
    'the lid is domed; lid blew off; cork shot out; bottle exploded; hisses like cola when i open it; swing top jumped; the jar is bulging; il tappo è saltato; il coperchio è bombato; fa psss quando apro; è esplosa la bottiglia',
  curdled:
    'cream went like cottage cheese; looks like scrambled egg; bits of curd; cream has turned to lumps; cottage cheesy; grainy cream; split like bad mayo; la crema è impazzita; ha fatto i grumi; sembra ricotta; la panna si è stracciata',
  stuck_filter:
    'coffee filter takes all day; drip drip drip; paper is blocked; it wont go through the filter; one drop a minute; filter paper keeps clogging; il filtro è bloccato; scende goccia a goccia; non passa più niente; ci mette ore a filtrare; the filter has stopped; nothing comes through the filter any more',
  sugar_not_dissolving:
    'sugar just sits there; cant get the sugar to melt; sugar wont melt; stirred for ages and sugar still there; lo zucchero resta sul fondo anche se mescolo; non si scioglie lo zucchero; zucchero ancora intero; sugar stays at the bottom however much i stir; won’t go into solution',
  leaking_lid:
    'dribbling from the lid; sticky puddle under the jar; jar is weeping; level has gone down; seal is leaking; puddle on the shelf; gocciola dal coperchio; il vaso perde; è sceso il livello; pozza sotto al vaso',
  hydrometer_odd:
    'the floaty thing shows nonsense; alcoholmeter reads zero; hydrometer sits far too high; the meter says 5; reading makes no sense; the glass thing shows less than before; l’alcolometro segna zero; la misura non torna; segna un valore assurdo; the hydrometer shows 5 in a liqueur of 30; hydrometer says 8 for what should be 30; the meter reads 10 in a finished liqueur; reads far less than it should',
  spilled_or_burnt:
    'it went up in flames; knocked the jar over; spilt spirit on the hob; pan caught light; set fire to it; ho rovesciato tutto; si è incendiato; è andato a fuoco',
  someone_ill:
    'felt terrible after one glass; he was sick after drinking it; cant see properly after drinking; grandad is poorly from it; sto male; ha vomitato dopo averlo bevuto; vede doppio',
  wrong_spirit:
    'think i used the wrong alcohol; turns out it was cleaning alcohol; it was meths; grabbed the surgical spirit; bottle had no label, not sure its drinking alcohol; era alcol per pulizie; ho preso l’alcol rosa; non so se è alcol alimentare',
  unknown_plant:
    'not certain these are sloes; might be the wrong berries; a leaf i dont recognise got in; picked something and not sure what; non so se sono prugnoli; non riconosco la bacca; c’è una foglia che non conosco',
  cracked_stones:
    'crushed the stones by mistake; a stone broke in the jar; blitzed the plums stones and all; pits got smashed; kernel fell in; cracked a stone in with the plums; ho rotto i noccioli; frullato con i noccioli; si è spaccato un nocciolo',
  broken_glass:
    'the jar has a crack in it; shards in the jar; chip off the rim; neck of the bottle broke off; bit of glass missing; il vaso si è crepato; manca un pezzo di vetro; scheggia nel liquore; si è rotto il collo della bottiglia',
  lead_crystal:
    'kept in a cut glass decanter for months; been in grandmas decanter; left in a pewter jug; lasciato nella caraffa di cristallo; tenuto nel peltro',
  garlic_or_vegetable:
    'garlic cloves went blue in it; put garlic in oil with it; beetroot in it smells; aglio diventato verde; ho messo la cipolla',
  left_in_sun:
    'stood in full sun all week; left it in the conservatory; the car boiled it; forgot it on the radiator; rimasto al sole; stava sul termosifone; in auto sotto il sole',
  forgotten:
    'found it at the back of the cupboard; been steeping since last year; from three years ago; clean forgot about it; left the fruit in for ages; steeped two years; ritrovato in fondo alla dispensa; lasciato lì dall’anno scorso; l’ho scordato in cantina; found a jar at the back of the loft; a jar from two years back',
}
