/** Why a spirit is not for drinking; a language has a sentence for each. */
export type UndrinkableId =
  | 'denatured'
  | 'other_alcohol'
  | 'disinfectant'
  | 'laboratory'
  | 'fuel'
  | 'solvent'
  | 'cosmetic'
  | 'untaxed'
  | 'added'
  | 'heated'

export interface Undrinkable {
  readonly id: UndrinkableId
  /** Names of nothing else: looked for in every option. Joined with commas; `*` stands for any letters. */
  readonly anywhere: string
  /** Only beside a spirit: `technical` may be said of much else. */
  readonly beside: string
  /** Only beside a spirit, and not of a liqueur or a wine: those are made at home. */
  readonly made?: string
}

/** From memory, in the languages of the catalogue and those that refused plants are known in; no brands. */
export const undrinkables: readonly Undrinkable[] = [
  {
    id: 'denatured',
    anywhere:
      'metil, metil alkol, denatured, denaturated, denaturato, denaturata, denaturat, denatur*, denat, methylated, meths, metho, methyl, methyl*, metilato, ' +
      'metilico, metilic*, metylowy, metylow*, methanol, methanol*, metanolo, metanol, metanol*, метанол*, метилов*, wood alcohol, wood alcool, wood alcol, wood alchol, alcool di legno, alcol di legno, alcool dal legno, wood spirit, wood spirits, wood naphtha, ' +
      'spirito di legno, alcol di legno, holzgeist, holzalkohol, esprit de bois, alcool de bois, alcohol de madera, brennspiritus, vergallter, ' +
      'vergall*, alcool a bruler, bruler, alcool modifie, alcohol de quemar, alcol rosa, alcool rosa, alcohol rosa, spirito rosa, ' +
      'alcol * rosa, alcool * rosa, etanolo rosa, desnaturalizado, desnaturaliz*, desnaturado, desnatur*, денатурат*, денатур*, ' +
      'skazony, skazon*, ispirto, ispirto*, fotistiko, φωτιστικο, φωτιστικ*, μπλε οινοπνευμα, ble oinopnevma, rodsprit, rodspirit, t sprit, tsprit, t rod, ' +
      'lampsprit, lampesprit, rodspritt, kogesprit, husholdningssprit, brandspiritus, spiritus, denaturalt, industrial methylated, ims, ' +
      'ims 99, tsda, tsda*, sda, cda, idms, imsl, pink spirit, pink alcohol, purple spirit, purple alcohol, violet spirit, blue spirit, blue alcohol, ' +
      'alcol da bruciare, da bruciare, alcol da ardere, da ardere, bitrex, denatonium, campingsprit, lavasprit, marinol, kogespritt, dykdatska',
    beside:
      'pink spirits, purple spirits, modifie, quemar, modified, rosa 90, blu, azul, zabarvi*, mavi, skazene, lampspirit, lamp spirit',
  },
  {
    id: 'other_alcohol',
    anywhere:
      'ipa 99, ipa 91, 99 ipa, 91 ipa, isopropyl, isopropanol, isopropilico, isopropyl*, isoprop*, iso prop*, izoprop*, изопроп*, propanol, propanol*, propanolo, propyl, propyl*, propilic*, ' +
      'propan 2 ol, propan 1 ol, butanol, butanol*, butyl, butyl*, butilic*, amyl alcohol, amylalkohol, pentanol, hexanol, glycol, glycol*, glicole, glicol, ' +
      'glykol, glykol*, гликол*, etilenglicol*, ethylenglykol, fusel oil, fusel, fuselol, benzyl alcohol, allyl alcohol, furfuryl*, cetearyl, cetyl, lanolin alcohol',
    beside: 'ipa, propil*, n propanol, ipa 99',
  },
  {
    id: 'disinfectant',
    anywhere:
      'sanitiser, sanitizer, sanitis*, sanitiz*, igienizzante, igienizzant*, disinfettante, disinfett*, disinfectant, disinfect*, antiseptic, antiseptic*, antisept*, ' +
      'antisettic*, desinf*, handdesinfektion, flachendesinfektion, *desinfektion*, *desinfektion, dezinf*, dezynf*, dezenfek*, дезинф*, дезінф*, antyseptyczn*, антисепт*, αντισηπτικ*, απολυμαντικ*, ' +
      'hand gel, handgel, hand rub, handrub, gel mani, gel hydroalcoolique, hydroalcoolique, hydroalcoholic, idroalcolico, gel idroalcolico, hidroalcoholic*, antibacterial, antibacterial*, ' +
      'antibatteric*, rubbing alcohol, rubbing, surgical, surgical spirit, alcohol en gel, alcool gel, alcool em gel, alcool en gel, alcohol gel, alcohol en spray, antisseptic*, gel alcohol, gel antibacterial, ' +
      'franzbranntwein, canforato, canforat*, camphorated, camphor, camphor*, canfora, kamfor*, kampfer*, camphre, camphre*, camforad*, alcanfor*, canforad*, камфор*, salicylowy, salicyl*, ' +
      'салицил*, borny spirytus, spirytus borny, spirytus mrowkowy, муравьиный, муравьин*, борный, левомицет*, saponato, saponat*, wipes, swabs, prep pads, iodine, handsprit, ' +
      'kasidesi, alcol chirurgico, hand sanit*, chlorhexidin*, clorexidin*, benzalkonium, peroxide, perossido, *wunddesinf*',
    beside:
      'spray, gel, medical, medicinal, medicinale, medicinali, pharmacy, pharmacist*, pharma, pharmaceutical, drugstore, chemists, hospital, clinic, clinical, first aid, wound, wounds, skin, ' +
      'chirurgico, chirurgic*, ospedal*, ospedalier*, farmacia, farmaci*, farmaceutic*, apotheke, apotheken*, pharmacie, pharmaceutique, officinal*, botiquin, botica, curar, curas, sanitario, ' +
      'sanitari*, medizin*, medicinsk*, sanitar, chemist, the chemist, krankenhaus*, aptecz*, apteki, medyczn*, медицинск*, медицин*, аптеч*, медичн*, tibbi, eczane, eczaci, φαρμακ*, φαρμακευτικ*, ιατρικ*, farmakeftik*, iatrik*, sjukhus, apotek*, ' +
      'sygehus, sykehus, ziekenhuis, apotheek, medisch*, pronto soccorso, hygien*, igienic*, ordinacijsk*, lekarni*, lekarsk*, gyogyszer*, wundbenzin, sterile, sterili*, injection*, borowy, uso esterno, ' +
      'external use, externo, usage externe, ausserlich*, veterinar*',
  },
  {
    id: 'laboratory',
    anywhere:
      'reagent, reagent grade, hplc, hplc grade, acs grade, analytical grade, pro analysi, zur analyse, laborethanol, laboralkohol, ethanol absolut, alkohol absolut, absolute ethanol, absolute alcohol, ' +
      'alcohol absolute, ethanol absolute, anhydrous alcohol, anhydrous ethanol, dehydrated alcohol, dehydrated ethanol, dried alcohol, dried ethanol, benzene, cyclohexane, chloroform*, formaldehyd*, formalin*, toluene, toluol, xylene, xylol',
    beside:
      'lab, labs, laboratory, laborator*, laboratoire, laboratoires, labor, laboratorium*, лаборатор*, εργαστηρ*, laboratuvar*, reagens, reagenz*, reagent*, reagenti, reattiv*, reactiv*, odczynnik*, analytic*, analys*, analis*, ' +
      'analisi, analitic*, анализ*, p a, pa, acs, usp, ph eur, bp grade, nf grade, gc, lcms, lc ms, uv grade, spectro*, spektro*, uvasol, anhydrous, anidro, anidra, anhydre, anhidro, anhydro*, wasserfrei*, bezwodn*, безводн*, susuz, ανυδρ*, vattenfri*, vannfri*, watervrij*, ' +
      'absolute, assoluto, assoluta, absoluto, absolu, absolue, absoluter, absoluten, absolutes, absoluut, absolutny, абсолютн*, mutlak, απολυτ*, dehydrated, dehydrate, dried, dessicc*, desicc*, disidrat*, deshidrat*, ' +
      'deshydrat*, entwassert*, molecular, biology, biotech*, histolog*, pesticide, pesticide*, tech, technical, technically, tecnico, tecnica, technisch*, technique, techniczny, techniczn*, технич*, техническ*, teknisk*, teknis*, ' +
      'teknik, tekhnich*, tehnich*, tehnic*, technick*, technicke, muszaki, technologic*, industrial, industrial*, industriale, industriel*, industrie*, przemyslow*, промышлен*, промислов*, sanayi, endustriyel, βιομηχανικ*, ipari, ' +
      'grade, grado tecnico, benzol*, benzen*, cyclohex*, cicloes*, cykloheks*, ciclohex*, hexane, hexan*, heptane, heptan*, pentane, toluen*, xylen*, ether, etere, diethyl*, formic, electronic*, elektroni*, semiconductor*, synthesis, ' +
      'synthetic, sintetic*, synthetis*, syntetyczn*, синтетич*, hydroly*, гидролиз*, chromatograph*, cromatograf*, school, university, chemistry, chemical, chemicals, chimica, chimico, quimic*, chemie*, chemisch*, chemiczn*, химич*',
  },
  {
    id: 'fuel',
    anywhere:
      'fuel, biofuel, bioethanol, bio ethanol, bioetanolo, bio etanolo, bioetanol, bio alcohol, bio alcol, bioalcol, bioalcohol, bioethanol*, e85, e 85, e10, e 10, carburante, carburant*, combustibile, combustibili, ' +
      'combustibil*, combustivel, combustible, brennsprit, bioalkohol, grillanz*, sprinklersprit, lantern fluid, kaminethanol, etanol de posto, alcool de posto, biopaliwo, paliwo, paliw*, топлив*, petrol, gasoline, gasolina, benzina, benzina*, benzin, benzine, benzyna*, бензин*, ' +
      'kerosene, kerosin*, cherosene, paraffin, diesel, gasolio, gasoil, firelighter*, lighter fluid, lamp oil, stove alcohol, wasbenzine, motor*, meths burner, yakit, yakacak, καυσιμ*, drivmedel*, motorsprit',
    beside:
      'stove, stoves, fireplace, fireplaces, camino, camini, biocamino, kamin, kamine, cheminee, chimenea, lareira, kominek, kominka, kominkow*, камин*, camping, campeggio, camp, fondue, rechaud, lamp, lamps, lampada, lampade, burner, burners, burning, burn, ' +
      'lantern, torch, engine, engines, racing, race, de posto, do posto, gasolinera, heizung, ofen, brenner, fornello, fornelli, bruciatore, bruciatori, brulatore, hornillo, palnik*, гореть, горюч*, trangia*, tent, tiki, generator, firelighting, bbq, barbecue',
  },
  {
    id: 'solvent',
    anywhere:
      'tergicristalli, tergicristallo, lavavetri, liquido refrigerante, battery acid, battery water, car battery, battery fluid, screenwash, screen wash, windscreen, windshield, washer fluid, window cleaner, glass cleaner, deicer, de icer, antifreeze, antigelo, antigel, anticongelante, anticongelant*, frostschutz, *frostschutz, frostschutz*, ' +
      'scheibenreiniger, scheibenwasch*, lave glace, lavavetri, liquido lavavetri, spryskiwac*, стеклоомыва*, стеклоочист*, незамерза*, незамерзайка, nezamerz*, stekloom*, antifriz*, антифриз*, brake fluid, coolant, radiator fluid, radiator liquid, radiator flush, radiator water, radiator stuff, radiatorv*, radiatork*, radiatorf*, ' +
      'spolarvatska, spylervaeske, sprinklervaeske, ruitensproei*, ruitenwisser*, limpiaparabrisas, limpiacristales, limpia cristales, limpa vidros, paint thinner, paint thinners, white spirit, white spirits, mineral spirit, mineral spirits, ' +
      'mineral turpentine, turpentine, turpentin*, turps, terpentin*, terebent*, trementina, aguarras, acquaragia, diluente, diluant, verdunner, naphtha, nafta, solvent, solvents, solvente, solvant, disolvente, losungsmittel, losemittel, rozpuszczalnik*, ' +
      'растворител*, διαλυτικ*, varnish*, paint remover, paint stripper, bleach, candeggina, varechina, lejia, javel, drain cleaner, detergent, detergent*, detersiv*, reiniger, nail polish remover, nail varnish remover, polish remover, degreaser, sgrassa*, ' +
      'schoonmaakalcohol, schoonmaak*, brake cleaner, carburettor cleaner, ammonia, ammoniaca, battery acid, weedkiller, herbicide, insecticide, paraquat',
    beside:
      'french polish, furniture polish, polishing, polishes, thinner, thinners, cleaning, cleaner, cleaners, cleanser, cleaning alcohol, cleansing, paint, vernice, vernic*, verniciatura, shellac, gommalacca, lack, pulizia, pulizie, pulire, limpieza, limpi*, limpeza, menager, menagers, menage, nettoyage, nettoy*, bricolage, ' +
      'reinig*, putz*, czyszcz*, чистящ*, очистк*, temizl*, temizleme, καθαρισμ*, καθαριστικ*, rengorings*, rengjorings*, rens, household, domestico, haushalts*, gospodarcz*, degreas*, acetone, acetone*, aceton, nail, nails, smalto, ' +
      'undrinkable, not for drinking, non potabile, not for human, non bere, nicht trinkbar, non potable, no potable, hardware store, ferramenta, baumarkt, diy, hardware, workshop, garage forecourt, car, auto, printer, screen, ink, toner, glue',
  },
  {
    id: 'cosmetic',
    anywhere:
      'eau de cologne, eau de toilette, eau de parfum, aftershave, after shave, cologne, kolonya, kolonyasi, kolnisch*, kolnischwasser, одеколон*, odekolon, colonia, mouthwash, collutorio, mundwasser, bain de bouche, enjuague, hairspray, hair spray, ' +
      'haarspray, hair tonic, haarwasser, bay rum, body spray, deodorant, deodorante, nail polish, perfumers alcohol, perfumery alcohol, kosmetikalkohol, parfumalkohol',
    beside:
      'perfume, perfumer, perfumers, perfum*, parfum, parfum*, parfyme, parfymer*, profumo, profum*, парфюм*, perfumy, αρωματοποι*, cosmetic, cosmetic*, cosmet*, kosmet*, космет*, kozmet*, καλλυντικ*, lotion, lotions, lozione, loción, locion, hair, beauty, ' +
      'bath, bagno, toilet, tuvalet, scent, fragrance, soap, soapmaking, candle, candles, aromatherapy',
  },
  {
    id: 'untaxed',
    anywhere:
      'moonshine, hooch, poteen, poitin, potcheen, selbstgebrannter, schwarzgebrannter, selbstgebrannt*, schwarzgebrannt*, schwarzbrand, samogon, samogon*, samohon*, самогон*, самогін*, bimber, bimber*, bimbr*, ksiezycowk*, hembrand*, rotgut, firewater, pontikka, hembrant*, hjemmebrent, hjemmebraent, heimebrent, ' +
      'hjemmebren*, zelfgestookt*, kacak icki, bogma raki, turbo yeast, foreshots, feints, pruno, home distilled, homedistilled, home distil*',
    beside:
      'amateur, backroom, hobby, reflux, my alembic, kit still, still kit, kit vodka, kit gin, kit rum, cellar distil*, my distil*, our distil*, first cut, early cut, heart cut, forged, relabel*, gepanscht*, panscher*, gestreckt*, pancovan*, pancsolt, frelat*, trafique*, контрафакт*, sfuso, sfusa, ' +
      'battery, drain, crack, air still, airstill, frozen out, frozen off, freeze concentrat*, evaded, tax evad*, dodgy, suspicious, suspect, sketchy, dubious, iffy, refilled, decanted, unsealed, knock off, knockoff, village, villagers, villager, farmers, hillbilly, backwoods, i made, we made, i distilled, made by, surrogate, unrectified, crude, pirtu, white lightning, self distilled, self distil*, my own distil*, own distil*, own make, own still, my still, our still, his still, her still, their still, a still, the still, home still, still run, still strength, stripping run, spirit run, stilled, stillage, bathtub, backyard, garage, shed, barn, ' +
      'basement, jail, jailhouse, prison, kitchen, bucket, bootleg, bootleg*, smuggled, smuggl*, contraband*, contrabbando, contrebande, estraperlo, black market, illicit, illegal, illegally, clandestin*, drum, bulk, untaxed, unlicensed, unlabelled, ' +
      'unlabeled, un labelled, no label, without label, without a label, senza etichetta, ohne etikett, sans etiquette, sin etiqueta, sem rotulo, bez etykiety, без этикетки, unmarked, unbranded, unknown, mystery, nameless, anonymous, sconosciut*, unbekannt*, inconnu*, desconocid*, ' +
      'counterfeit, fake, falso, falsa, falsific*, falsche*, gefalscht*, faux, podrabian*, паленая, палёнка, поддельн*, kacak, sahte, νοθ*, μπομπα, contraffatt*, taroccat*, adulterat*, uncle, uncles, aunt, aunts, auntie, grandpa, grandpas, grandad, grandads, granddad, granddads, grandfather, ' +
      'grandfathers, grandma, grandmas, grandmother, grandmothers, neighbour, neighbours, neighbor, neighbors, cousin, cousins, friend, friends, mate, mates, brother, brothers, dad, dads, father, fathers, nonno, nonna, zio, zia, vicino, cugino, amico, ' +
      'opa, oma, onkel, nachbar*, grand pere, grandpere, oncle, voisin*, vecino, abuel*, dziad*, babci, sasiad*, wujek, wujka, dede, komsu*, сосед*, дед, деда, distilled by, distilled at, distilled in, distilled myself, distilled it, distillat* in casa, ' +
      'gnole, gniole, bouilleur*, alambic maison, hausgebrannt*, hausbrand, hausbrand*, haus gebrannt*, selbst gebrannt*, selbst destilliert*, selbst gebraut*, schwarz gebrannt*, eigenbrand, eigenbrannt*, turbo, sugar wash, wash, heads, foreshot, ' +
      'tails, first run, low wines, teste, vorlauf, nachlauf, rohbrand, rauhbrand, cabezas, colas, primeras, кубов*, головы, хвосты, prokup, freeze distilled, freeze distil*, freeze jacked, jacked, applejack home, home applejack, ice distilled, ' +
      'fractional*, raw spirit, raw alcohol, surowk*, сырец, plastic can, jerry can, jerrycan, canister, kanister, tanica, bidon, plastic bottle, plastic bag, plastic container, from a can, water bottle, roadside, χυμα, market stall, back of a van, ' +
      'man in a pub, man in the pub, car boot',
    made:
      'my own, our own, own, homemade, home made, home brew, home brewed, homebrew*, self made, selfmade, made at home, made by me, fatto in casa, fatta in casa, fatti in casa, fatto da me, casalinga, casalingo, casaling*, casereccia, casereccio, casarecc*, casera, casero, caser*, ' +
      'caseira, caseiro, caseir*, maison, fait maison, faite maison, hausgemacht*, selbstgemacht*, selbst gemacht*, domowy, domowej, domowa, domow*, domaca, domaci, domac*, domash*, домашн*, hazi, hjemmelavet, hjemmelaget, hemmagjord, huisgemaakt, zelfgemaakt, ' +
      'spitiko, spitik*, σπιτικ*, ev yapimi, evde, nostrana, nostrano, contadina, contadino, bauern*, vom bauern, de casa',
  },
  {
    id: 'added',
    anywhere:
      'ant poison, mouse poison, slug poison, slug pellets, veleno per topi, veleno per formiche, rat poison, ratsak, arsenic, cyanide, strychnine, ghb, rohypnol, date rape drug',
    beside:
      'poison, poisoned, poisonous, veleno, avvelenat*, veneno, vergiftet*, trucizn*, яд, spiked, roofied, laced, drugged, pill, pills, pillole, tablet, tablets, capsule, capsules, tabletten, comprimes, pastillas, таблет*, tincture, tinctures, ' +
      'tintura, tinktur, teinture, tinctura, nalewka lecznicza, настойка лекар*, cannabis, hemp, weed, marijuana, thc, cbd, hash, hashish, opium, laudanum, nicotine, vape, tobacco, morphine, mercury, iodine, iodio, jod, йод*, snake, scorpion, ' +
      'viper, formol',
  },
  {
    id: 'heated',
    anywhere: '',
    beside:
      'boiling, boiled, boil, boils, hot, warm, warmed, heated, heat, heating, simmering, simmered, simmer, flaming, flambe, flambeed, flamed, on fire, fire, alight, microwave, microwaved, hob, oven, pressure cooker, sous vide, steaming, bain marie, ' +
      'bollente, caldo, calda, riscaldat*, fiammeggiante, microonde, in fiamme, kochend*, heiss*, erhitzt*, bouillant*, chaud*, hirviendo, caliente, fervendo, fervente, quente, goracy, gorac*, горяч*, кипящ*, sicak, kaynar, ζεστ*, varm*, heet, hete',
  },
]

/** What such a word may stand beside, and is good: taken first. */
export const unharmed =
  'not denatured, non denatured, never denatured, undenatured, un denatured, non denaturato, non denaturata, nicht vergallt, nicht vergallter, unvergallt, unvergallter, non denature, no desnaturalizado, nao desnaturado, niet gedenatureerd, ' +
  'food grade, food grade spirit, food grade alcohol, drinking grade, potable grade, beverage grade, premium grade, top grade, high grade, edible grade, food grade ethanol, pot still, copper still, column still, coffey still, patent still, pink gin, gin rosa, cask strength, navy strength, barrel strength, ' +
  'uncles shop, uncles store, aunts shop, aunts store, aunties shop, aunties store, brothers shop, brothers store, sisters shop, sisters store, cousins shop, cousins store, friends shop, friends store, mates shop, mates store, neighbours shop, neighbours store, neighbors shop, neighbors store, grandads shop, grandads store, dads shop, dads store, mums shop, mums store, moms shop, moms store, ' +
  'absolut vodka, eau de cologne mint, cologne mint, own brand, own label, supermarket own, single malt, freezer cold, room temperature, boiled water'
