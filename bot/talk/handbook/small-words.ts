import { plainWords } from '../../../core/spelling/normalise-name.ts'

const ENGLISH =
  'a an the this that these those it its them they their there here i im ive id me my mine we our us you your he his she her ' +
  'is isnt are arent was were be been being am do does dont doesnt did didnt done have has had havent hasnt can cant could ' +
  'couldnt will wont would wouldnt shall should shouldnt may might must need needs to of in into on onto at by for from with ' +
  'about as than then so if or and but not no nor any some all both each every one ones what whats which who whos when where ' +
  'wheres why how hows just only also too very really much many more most less least lot lots get gets got getting go goes ' +
  'going gone went put puts make makes made use used using want like ok okay right sure thing things stuff something anything ' +
  'alright fine good bad best better worse worth problem problems matter matters harm harmful difference way ways trick rubbish ' +
  'people person someone somebody anyone everybody friend friends mum dad granny sister brother neighbour family old new big ' +
  'small little nice normal usual few same other another instead day days week weeks time times today try tried help know think ' +
  'tell say said mean means find found work works happen happens wonder allowed possible necessary really actually maybe ' +
  'bit out up off down over again now still yet ever even well please thanks thank hi hello hey ll ve re s t d m ' +
  'heck hell devil gosh point else while always since though ought let lets job chance earth stick chuck bung tip pop throw shove due drop sip wondering idea ideas sort sorts kind actual exactly roughly'

const ITALIAN =
  'il lo la le gli un uno una l di del dello della dell dei degli delle a al allo alla all ai agli alle da dal dalla in nel ' +
  'nella nell nello su sul sulla con per tra fra e ed o ma se che chi cosa come quando quanto quanta quanti quante dove perche ' +
  'quale quali non mi ti si ci vi ne me te io tu lui noi voi loro mio mia miei mie questo questa quello quella ce c è sono sei ' +
  'siamo ho hai ha abbiamo hanno era essere avere fare faccio fa fatto posso puo possiamo devo deve bisogna va vanno vado bene ' +
  'anche ancora gia piu meno molto poco troppo solo proprio poi adesso ora cosi qui qua meglio buono buona male problema rischio modo lungo tempo giorno giorni settimana qualcuno gente nonna mamma amico stesso stessa altro altra provare sapere dire normale possibile serve servono metto mette mettere mettono uso usare usa usi forza succede riesco cambia conta basta vale pena funziona funzionano viene vengono venuto venuta esce escono deve devono sempre mai ogni due tutto tutti tutta tutte sapere capire capisco tocca conviene sarebbe sia senno oppure invece quindi grazie ciao buongiorno buonasera favore'

/** Words that stand in questions of every kind, and so tell little of what is asked. */
export const smallWords: ReadonlySet<string> = new Set([...plainWords(ENGLISH), ...plainWords(ITALIAN)])
