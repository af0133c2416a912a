/** Who asks, or is asked for, in many words, and what is asked: every one of the one with every one of the other. */
export interface Whom {
  readonly name: string
  /** The entries that answer it. */
  readonly entries: readonly string[]
  readonly sentences: readonly string[]
}

const times = (whos: readonly string[], asked: readonly string[]): string[] =>
  whos.flatMap((who) => asked.map((ask) => ask.replaceAll('W', who)))

const IN_WORDS =
  'zero,one,two,three,four,five,six,seven,eight,nine,ten,eleven,twelve,thirteen,fourteen,fifteen,sixteen,seventeen'.split(
    ',',
  )
const IN_PAROLE =
  'zero,uno,due,tre,quattro,cinque,sei,sette,otto,nove,dieci,undici,dodici,tredici,quattordici,quindici,sedici,diciassette'.split(
    ',',
  )

const ages = [2, 5, 8, 9, 10, 11, 12, 13, 14, 15, 16, 17]

const agedInEnglish = ages.flatMap((age) => {
  const word = IN_WORDS[age]!
  const article = /^(?:8|11|18)$/.test(String(age)) ? 'an' : 'a'
  return [
    `my ${age} year old`,
    `my ${age}-year-old`,
    `my ${word} year old`,
    `our ${word}-year-old`,
    `my ${age}yo`,
    `my ${age} y/o`,
    `her ${age} yr old`,
    `my ${age}-year-old nephew`,
    `${article} ${age} year old friend`,
    `my mate who is ${age}`,
    `my mate who’s ${word}`,
    `a girl of ${age}`,
    `a boy aged ${age}`,
    `my cousin (${age})`,
    `my cousin, ${age},`,
    `my daughter’s friend, who’s only ${age},`,
    `somebody who is ${word} years old`,
    `the neighbour’s lad, he’s ${age},`,
  ]
})

const youngInEnglish = [
  'my teenage daughter',
  'our teenage grandson',
  'a teenager',
  'the teenagers',
  'my teen',
  'the teens at the fair',
  'a minor',
  'minors',
  'my underage cousin',
  'somebody under age',
  'an under-age friend',
  'someone under 18',
  'under 18s',
  'the under-eighteens',
  'my little sister',
  'my kid brother',
  'the kids',
  'our grandchildren',
  'my toddler',
  'a schoolgirl',
  'some schoolkids',
  'a pupil of mine',
  'the scouts',
  'my youngest',
  'the little one',
  'a tween',
  'my preteen',
  'a youngster',
]

const wishesInEnglish = [
  'W wants to try some',
  'W wants to try it',
  'W wants a taste',
  'W would like a sip',
  'W would love to taste the limoncello',
  'W asked if they can have a drop',
  'W is asking for a little glass',
  'W keeps begging for some',
  'can W have a sip',
  'can W try it',
  'can W have some',
  'may W taste the sloe gin',
  'could W drink a bit',
  'is it ok for W to drink some',
  'is it safe for W',
  'is a sip all right for W',
  'would a drop hurt W',
  'should i let W have a taste',
  'can i let W try it',
  'can i give W a glass',
  'can i give some to W',
  'could i pour W a small one',
  'how much can W have',
  'is W allowed some',
  'what about W, can they have a sip',
  'can i offer the liqueur to W',
]

const agedInItalian = ages.flatMap((age) => {
  const word = IN_PAROLE[age]!
  return [
    `mio figlio di ${age} anni`,
    `mia figlia di ${word} anni`,
    `mio nipote che ha ${age} anni`,
    `un mio amico che ha ${word} anni`,
    `una ragazza di ${age} anni`,
    `mia cugina (${age} anni)`,
    `il figlio dei vicini, ${age} anni,`,
  ]
})

const youngInItalian = [
  'mio figlio quindicenne',
  'un sedicenne',
  'la mia nipotina',
  'mia figlia adolescente',
  'un minorenne',
  'i minorenni',
  'un minore',
  'un ragazzino',
  'i bambini',
  'il mio bimbo',
  'i miei nipotini',
  'mio fratellino',
  'la mia sorellina',
  'gli adolescenti',
  'mio figlio minore',
  'chi ha meno di 18 anni',
  'chi non ha ancora 18 anni',
  'gli under 18',
]

const wishesInItalian = [
  'W vuole assaggiarlo',
  'W vuole provarne un po’',
  'W ne vuole un po’',
  'W ne vorrebbe un goccio',
  'W mi ha chiesto un sorso',
  'W può assaggiarlo?',
  'W può berne un sorso?',
  'posso farlo assaggiare a W?',
  'posso darne un goccetto a W?',
  'va bene un bicchierino per W?',
  'quanto ne può bere W?',
  'posso lasciare che W lo provi?',
  'è sicuro per W?',
]

/** Put to whoever is told of before: `my wife is pregnant, can she have a sip`. */
const ofThemInEnglish = [
  'W, can they have a sip',
  'W, can she have a glass',
  'W and would like to try some',
  'W, is a little taste ok',
  'W, may he have the boozy cherries',
  'W, how much is safe',
  'W so is it safe to drink',
  'W, would one glass hurt',
  'can i have some if W',
  'is a drop fine when W',
  'W. should they skip it',
  'W, can i give them a bottle all the same',
]

const ofThemInItalian = [
  'W, può berne un sorso?',
  'W, posso assaggiarlo?',
  'W e vorrebbe provarlo',
  'W, va bene un bicchierino?',
  'W, quanto se ne può bere?',
  'posso berne un po’ se W?',
  'W, un sorsetto si può?',
  'W, meglio evitare?',
]

const whose = (persons: readonly string[], says: readonly string[]): string[] =>
  persons.flatMap((person) => says.map((say) => say.replaceAll('P', person)))

const persons = ['my wife', 'my sister', 'a guest', 'my neighbour']
const persone = ['mia moglie', 'mia sorella', 'un’ospite', 'la vicina']

const pregnant = [
  ...whose(persons, [
    'P is pregnant',
    'P is five months pregnant',
    'P might be pregnant',
    'P is expecting',
    'P is expecting a baby',
    'P is having a baby in may',
    'P has a baby on the way',
    'P is breastfeeding',
    'P is breast-feeding',
    'P is nursing her baby',
    'P is trying for a baby',
    'P is trying to get pregnant',
    'P is due in march',
    'P is 20 weeks along',
    'P is in her second trimester',
    'P is doing ivf',
    'P is expressing milk',
  ]),
  'i’m pregnant',
  'i am 12 weeks pregnant',
  'i’m breastfeeding',
  'i am nursing',
  'i’m still feeding the baby myself',
  'we’re trying for a baby',
  'we are trying to conceive',
]
const pregnantNamed = [
  'my pregnant wife',
  'a pregnant guest',
  'a breastfeeding friend',
  'a nursing mother',
  'nursing mums',
  'mums-to-be',
  'an expectant mother',
  'women who are pregnant',
  'somebody who’s expecting',
]
const incinta = [
  ...whose(persone, [
    'P è incinta',
    'P è al quinto mese',
    'P è in gravidanza',
    'P aspetta un bambino',
    'P è in dolce attesa',
    'P allatta',
    'P sta allattando',
    'P partorisce a marzo',
  ]),
  'sono incinta',
  'sto allattando',
  'allatto ancora',
  'stiamo cercando un bambino',
  'cerchiamo di avere un figlio',
]
const incintaNamed = [
  'una donna incinta',
  'un’amica incinta',
  'una mamma che allatta',
  'una futura mamma',
  'le donne in gravidanza',
]

const onMedicines = [
  ...whose(
    ['i’m', 'my gran is', 'he’s', 'a guest is'],
    [
      'P on antibiotics',
      'P on warfarin',
      'P on statins',
      'P on blood thinners',
      'P on antidepressants',
      'P on medication',
      'P on tablets for the heart',
      'P taking amoxicillin',
      'P taking a pill for the thyroid',
      'P on insulin',
      'P on hrt',
      'P on beta blockers',
      'P on sleeping pills',
      'P on painkillers',
      'P on lithium',
      'P on ozempic',
      'P on the pill',
      'P having chemo',
      'P on meds',
      'P on sertraline',
      'P on a course of antibiotics',
      'P on valium',
      'P on steroids',
      'P on tramadol',
    ],
  ),
  'i take tablets for my blood pressure',
  'my dad takes metformin',
  'i just had a paracetamol',
  'i need an ibuprofen most evenings',
  'my aunt takes medicine every evening',
  'i’ve been prescribed tablets',
  'she takes antihistamines',
  'i’ve had a painkiller',
  'he’s had his jab of methotrexate',
]
const farmaci = [
  'prendo gli antibiotici',
  'sono sotto antibiotico',
  'mia nonna prende il cumadin',
  'prendo le pastiglie per la pressione',
  'prendo un farmaco per il cuore',
  'prende il cortisone',
  'sto facendo una cura',
  'prendo psicofarmaci',
  'ho preso una tachipirina',
  'ho preso un’aspirina',
  'prendo la pillola',
  'prende l’insulina',
  'è in terapia con gli anticoagulanti',
  'prendo il sonnifero',
  'prende medicine',
  'prendo gli antistaminici',
  'mio zio prende farmaci',
]

const drivingAsked = [
  'can i drive after a glass',
  'can i drive after tasting it',
  'i’m driving later, can i have a sip',
  'i have to drive, is one glass ok',
  'i’ve got to drive home, can i try it',
  'he’s driving us home, can he have a taste',
  'my brother drives, may he have one',
  'i’m the driver tonight, is a drop all right',
  'can the designated driver have a taste',
  'is one glass ok before driving',
  'one little glass and then the car, ok?',
  'how long after a glass can i drive',
  'when can i drive again after two glasses',
  'can i take the car after one',
  'can i have one if i’m taking the car',
  'i came by car, can i have a glass',
  'can i ride my motorbike after one',
  'can i cycle home after a glass',
  'can i go home on my bike after tasting',
  'i’m on my bike, is a sip ok',
  'can i use the chainsaw after a glass',
  'can i mow the lawn after a glass',
  'i’m working with a circular saw, can i taste it first',
  'i operate a forklift, is a sip ok',
  'can i run the tractor after one',
  'can i use power tools after a small one',
  'can i operate machinery after tasting',
  'i work with machines, can i have a glass at lunch',
  'i fly a plane tomorrow, can i have one tonight',
  'can i sail after a glass',
  'i’m driving the minibus to the fair, can i taste',
  'will i pass a breathalyser after one',
  'am i over the limit after one glass',
  'is a glass under the drink drive limit',
  'i have to pick up the kids by car later, can i have a glass',
  'can i go up a ladder after a glass',
  'can i go swimming after a glass',
]
const guida = [
  'posso guidare dopo un bicchiere?',
  'devo guidare, posso assaggiarlo?',
  'se guido posso berne un po’?',
  'chi guida può assaggiarlo?',
  'dopo un bicchierino posso prendere la macchina?',
  'sono in macchina, posso berne un goccio?',
  'vado in moto, un sorso va bene?',
  'posso usare la motosega dopo un bicchiere?',
  'lavoro con i macchinari, posso assaggiarlo?',
  'posso andare in bici dopo un bicchierino?',
  'quanto devo aspettare prima di guidare?',
  'posso mettermi al volante dopo un bicchiere?',
  'dopo quanto posso guidare?',
  'devo tornare in auto, un goccio va bene?',
  'sono il guidatore, posso provarlo?',
]

const animals = [
  'the dog',
  'my cat',
  'our hens',
  'the chickens',
  'the pigs',
  'my horse',
  'the rabbits',
  'our goats',
  'the ducks',
  'my parrot',
  'a puppy',
  'the birds',
  'the neighbour’s sheep',
  'my hamster',
  'the hedgehogs',
]
const givenToAnimals = [
  'can W have a lick',
  'can W eat the boozy fruit',
  'can i give the spent raspberries to W',
  'can i feed the sloes to W',
  'is the leftover fruit ok for W',
  'is it safe for W',
  'are the boozy cherries bad for W',
  'could W have the peels',
  'would a drop hurt W',
  'should i let W lick the spoon',
  'may i throw the fruit to W',
]
const animali = [
  'al cane',
  'al gatto',
  'alle galline',
  'ai maiali',
  'ai conigli',
  'alle capre',
  'al cavallo',
  'alle anatre',
  'al pappagallo',
]
const datoAgliAnimali = [
  'posso dare la frutta W?',
  'posso darne un po’ W?',
  'le ciliegie sotto spirito fanno male W?',
  'si possono dare le bucce W?',
  'va bene W la frutta avanzata?',
]

const allergic = [
  ...whose(
    ['my friend', 'a guest', 'my aunt'],
    [
      'P is allergic to nuts',
      'P has a nut allergy',
      'P can’t have nuts',
      'P can’t eat nuts',
      'P mustn’t have almonds',
      'P carries an epipen',
      'P is lactose intolerant',
      'P can’t have dairy',
      'P comes out in hives from strawberries',
      'P gets a rash from citrus',
      'P reacts to sulphites',
      'P is sensitive to sulphites',
      'P has allergies',
      'P is a coeliac',
      'P can’t have gluten',
      'P is gluten intolerant',
    ],
  ),
  'i’m allergic to walnuts',
  'i react badly to hazelnuts',
  'i’ve got a pollen allergy',
]
const allergie = [
  'mia zia è allergica alle noci',
  'un ospite ha un’allergia',
  'sono intollerante al lattosio',
  'un amico non può mangiare noci',
  'mia sorella non tollera il lattosio',
  'un’ospite è celiaca',
  'sono allergico alle fragole',
  'un’amica non può mangiare glutine',
  'mi viene uno sfogo con le fragole',
]

const recovering = [
  ...whose(
    ['my uncle', 'a friend', 'a guest', 'my dad'],
    [
      'P is a recovering alcoholic',
      'P is an alcoholic',
      'P is an ex-alcoholic',
      'P is in recovery',
      'P is sober',
      'P has been sober for three years',
      'P has been dry for a year',
      'P has quit drinking',
      'P gave up drinking',
      'P stopped drinking',
      'P doesn’t drink any more',
      'P is in aa',
      'P goes to alcoholics anonymous',
      'P is off the drink',
      'P is on the wagon',
      'P had a drink problem',
      'P has a drinking problem',
      'P used to drink too much',
      'P came out of rehab',
      'P is teetotal',
      'P was an alcoholic',
      'P is a former drinker',
    ],
  ),
  'i’m a recovering alcoholic',
  'i’m in recovery',
  'i’ve been sober for a year',
]
const exAlcolisti = [
  'mio zio è un ex alcolista',
  'un amico è un alcolista',
  'mio padre ha smesso di bere',
  'un’ospite non beve più',
  'mio cognato va agli alcolisti anonimi',
  'un amico aveva problemi con l’alcol',
  'un ospite è astemio',
  'ho smesso di bere',
  'mio zio è stato in comunità per l’alcol',
  'un amico è sobrio da un anno',
]

const nearlyGrownUp = [
  'my 18 year old',
  'my 19-year-old niece',
  'our twenty-year-old',
  'my mate who’s eighteen',
  'a student, she’s 20,',
  'somebody who is nineteen years old',
]
const quasiAdulti = ['mio figlio di 18 anni', 'una ragazza di diciannove anni', 'mio nipote che ha venti anni']

const CHILDREN = ['children']

export const whoms: readonly Whom[] = [
  { name: 'children of an age', entries: CHILDREN, sentences: times(agedInEnglish, wishesInEnglish) },
  { name: 'children', entries: CHILDREN, sentences: times(youngInEnglish, wishesInEnglish) },
  { name: 'children of an age, in Italian', entries: CHILDREN, sentences: times(agedInItalian, wishesInItalian) },
  { name: 'children, in Italian', entries: CHILDREN, sentences: times(youngInItalian, wishesInItalian) },
  { name: 'nearly grown up', entries: ['old_enough'], sentences: times(nearlyGrownUp, wishesInEnglish) },
  { name: 'nearly grown up, in Italian', entries: ['old_enough'], sentences: times(quasiAdulti, wishesInItalian) },
  {
    name: 'pregnancy and nursing',
    entries: ['pregnancy'],
    sentences: [...times(pregnant, ofThemInEnglish), ...times(pregnantNamed, wishesInEnglish)],
  },
  {
    name: 'pregnancy and nursing, in Italian',
    entries: ['pregnancy'],
    sentences: [...times(incinta, ofThemInItalian), ...times(incintaNamed, wishesInItalian)],
  },
  { name: 'medicines', entries: ['medicines', 'no_drop', 'illness'], sentences: times(onMedicines, ofThemInEnglish) },
  { name: 'medicines, in Italian', entries: ['medicines', 'illness'], sentences: times(farmaci, ofThemInItalian) },
  { name: 'driving and machines', entries: ['driving'], sentences: [...drivingAsked, ...guida] },
  { name: 'pets', entries: ['pets'], sentences: times(animals, givenToAnimals) },
  { name: 'pets, in Italian', entries: ['pets'], sentences: times(animali, datoAgliAnimali) },
  { name: 'allergies', entries: ['allergens', 'diabetes'], sentences: times(allergic, ofThemInEnglish) },
  { name: 'allergies, in Italian', entries: ['allergens', 'diabetes'], sentences: times(allergie, ofThemInItalian) },
  { name: 'recovery', entries: ['dry_guests'], sentences: times(recovering, ofThemInEnglish) },
  { name: 'recovery, in Italian', entries: ['dry_guests'], sentences: times(exAlcolisti, ofThemInItalian) },
]
