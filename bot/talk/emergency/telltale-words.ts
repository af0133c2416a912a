/** Words that tell of harm, as they are spelt; misspelt ones are read as these. */
export const telltaleWords: readonly string[] = (
  'drank drinking swallowed swallowing eaten eating licked licking lapped gulped guzzled chewed chewing ' +
  'nibbled ingested unconscious unresponsive consciousness fainted fainting collapsed passed waking ' +
  'breathing breathe breath choking choked seizure seizures convulsion convulsions convulsing fitting ' +
  'vomiting vomited vomit throwing puking dizzy drowsy sleepy wobbly staggering confused shaking trembling ' +
  'twitching foaming drooling bleeding blood burned burning burnt scalded boiling blistered blisters flames ' +
  'alight exploded exploding shattered burst blind blurred blurry vision eyesight swollen swelling toddler ' +
  'daughter children child grandson granddaughter husband neighbour neighbor puppy kitten rabbit parrot ' +
  'hamster alcohol spirit liqueur methylated antifreeze isopropyl denatured bottle ambulance hospital ' +
  'emergency poison poisoned poisoning swallow berries oleander hemlock foxglove nightshade stomach throat ' +
  'finger pregnant kitchen clothes sleeve bambino bambina bambini bimbo figlio figlia nipote marito moglie ' +
  'nonna nonno coniglio gattino cagnolino pappagallo bevuto bevuta ingoiato ingoiata inghiottito mangiato ' +
  'mangiata leccato assaggiato svenuto svenuta respira respirare sveglia svegliare vomita vomitando ' +
  'vomitato convulsioni bruciato bruciata scottato scottata ustionato ustione scoppiata scoppiato esplosa ' +
  'esploso fuoco fiamme incendio sangue sanguina tagliato tagliata occhio occhi vedo ambulanza ospedale ' +
  'avvelenato avvelenata bacche barattolo bottiglia alcool liquore spirito denaturato antigelo aiuto ' +
  'barcolla girlfriend boyfriend roommate flatmate housemate grandma grandpa grandmother grandfather granny ' +
  'mother father brother sister nephew niece friend friends partner colleague someone somebody everyone ' +
  'guest guests auntie uncle cousin teenager stepson stepdaughter babies kittens puppies terrier spaniel ' +
  'chicken chickens horse tortoise budgie overdose paralytic slurring collapsing responding moving bleach ' +
  'isopropanol sanitiser sanitizer screenwash moonshine allergic anaphylactic inhaled mouthful spoonful ' +
  'teaspoon seizing fratello sorella amico amica suocera ospite ospiti cugino cugina vicino neonato piccolo ' +
  'gatto cavallo gallina galline capra coniglietto candeggina detersivo metanolo collassato soffocando ' +
  'annebbiato offuscata sfocato bollente vertigini nausea febbre crampi'
).split(' ')
