const PILLS =
  '(?:pills?|tablets?|medications?|meds|medicines?|painkillers?|antidepressants?|tranquill?i[sz]ers?|paracetamol|ibuprofen|valium|xanax|pastigli[ae]|pillol[ae]|sonnifer[oi]|farmac[oi]|compress[ae]|tranquillant[ei]|medicin[ae]|gocce)(?! (?:cabinet|box|bottles?|cups?|jars?|di (?:limone|vaniglia|angostura)))'

/** Signs and deeds that say enough without anybody being named. Pieces of regular expressions over plain words. */
export const aloneWords = {
  /** Somebody means to harm themselves. */
  selfHarm: [
    '(?:want|wants|wanted|wanna|going|gonna|plan|planning|thinking|trying|tried|ready|about|threatens|threatening) (?:\\w+ )?(?:to |of |about )?(?:just )?(?:die(?! (?:for|of (?:laughing|shame|embarrassment|happiness)))|(?:kill|killing|hurt|harm|hang|drown) (?:myself|himself|herself|themselves)|end(?:ing)? (?:it all|it tonight|my life|his life|her life|everything))',
    '(?:killing|hanging|drowning|cutting) (?:myself|himself|herself)|(?:dont|do not|doesnt|not|no longer) (?:really )?want(?:s)? to (?:live|be alive|be here any ?more|go on living)|(?:no reason|nothing left|tired of) (?:to live|living|to live for)|suicid(?:e|al)(?! (?:chill?i(?:e?s)?|peppers?|sauce|wings|shots?|squeeze))',
    '(?:voglio|vorrei|vuole|volevo|stavo per|sto per) (?:solo )?(?:morire|ammazzarmi|uccidermi|ammazzarsi|uccidersi|farla finita|farmi del male)(?! (?:dal ridere|dalle risate|di gusto))|mi (?:voglio |vorrei )?(?:ammazzo|ammazzare|uccido|uccidere)|si (?:vuole )?(?:ammazza|ammazzare|uccide|uccidere)|non (?:voglio|vuole) piu vivere|farla finita|suicid(?:io|armi|arsi|a)',
  ],
  /** Pills and alcohol together. */
  pills: [
    `(?:took|taken|takes|swallowed|mixed|mixing|preso|prese|presi|ingoiat\\w+|mischiato|mescolato) (?:\\w+ ){0,6}${PILLS}|${PILLS} (?:\\w+ ){0,3}(?:and|with|plus|e|con|dopo|after) (?:\\w+ ){0,4}(?:drank|drunk|had|bevuto) (?:\\w+ )?|(?:drank|drunk|drinking|took|bevuto|preso) (?:\\w+ ){0,5}(?:with|con|insieme|on top of|after|dopo) (?:\\w+ ){0,3}${PILLS}`,
  ],
  /** Pain and weakness that nobody waits with. */
  collapse: [
    'chest pains?|pain in (?:my|his|her|the) chest|(?:my|his|her) chest (?:hurts?|is tight|feels tight|is hurting)|(?:my |his |her |their )?heart (?:is |was |s |rate is )?(?:racing|pounding|hammering|skipping|stopped|going (?:crazy|mad|very fast))(?= (?:after|since|and|help|please|a lot|like|now|from|what|[.,]|$))|palpitations|dolor[ei] al petto|male al petto|tachicardia|palpitazioni|cuore (?:gli |le |mi )?(?:a mille|batte (?:forte|fortissimo|all impazzata))',
    '(?:hit|banged|smashed|cracked|bumped|knocked) (?:my|his|her|their|the back of (?:my|his|her)) head(?! (?:around|off))|(?:battuto|sbattuto|picchiato) (?:la|forte la) testa',
    '(?:skin|hands|lips|body) (?:\\w+ )?(?:is |are |s |feels? |so |very |all )*(?:cold and )?clammy|(?:cold|clammy) and (?:clammy|pale|grey|blue|shaking|snoring)|skin (?:is |feels |so )?cold and (?:he|she|they)\\w*|snoring (?:\\w+ )?(?:weird|weirdly|funny|strange|strangely|oddly|odd|wrong|and wont)|gurgling (?:noise|sound|breath\\w*)',
    '(?:stiamo|stanno|sto|state) (?:(?:tutti|tutte|molto|davvero|cosi|proprio|tanto) ){0,2}(?:male|malissimo)(?! (?:a|con|di) )|(?:mi|si|ci) (?:sento|sente|sentiamo) (?:(?:molto|tanto|davvero|proprio) )?(?:male|malissimo|mancare|svenire)|(?:lui|lei|bambin[oa]|figli[oa]|mamma|papa|nonn[oa]|amic[oa]) sta (?:(?:molto|davvero|tanto) )?(?:male|malissimo)',
  ],
  /** Gas and blasts. */
  blast: [
    '(?:an|gas|big|huge|loud|the|a|small|violent|un|una|grossa|grande|forte) (?:explosion|esplosione)(?! (?:of|in (?:my|your|the) mouth|di (?:gusto|sapor\\w|profum\\w|aroma|colore|agrumi)|in bocca))',
    'carbon monoxide|monossido(?: di carbonio)?|co alarm|gas leak|fuga di gas|(?:smell|smells|smelling) (?:of )?gas(?! (?:mark|oven))|puzza di gas|odore di gas',
  ],
  /** Spirit that hits a face. */
  intoFace: [
    '(?:splash(?:ed|es)?|squirt(?:ed)?|spray(?:ed)?|spurt(?:ed)?|spilled|spilt|threw|thrown|shot) (?:\\w+ ){0,4}(?:in|into|on|all over|over|up) (?:to )?(?:my|his|her|their|our) face|schizzat\\w+ (?:\\w+ ){0,3}(?:in faccia|sul viso|in viso|sulla faccia)',
  ],
} as const
