/**
 * What a spirit may be called: drinks of the trade and words said beside them. Joined with commas; `*` stands for any letters.
 * From memory, in the languages of the catalogue and those of the taxed drinks themselves; no brands. Lower case, accents free.
 */

/** Drinks with a name of their own, unsweetened or nearly; the name on a bottle may stand before one. */
export const drinks =
  'vodka, vodkas, voddy, voddie, vod, wodka, wódka, votka, водка, водки, горілка, horilka, gorilka, βότκα, gin, gins, london dry, ginebra, genever, jenever, jonge jenever, oude jenever, genièvre, džin, джин, cin, τζιν, old tom gin, ' +
  'rum, rums, rhum, ron, ром, ρούμι, rhum agricole, rum agricole, brandy, brandies, бренди, μπράντι, brandewijn, cognac, coñac, konyak, коньяк, κονιάκ, armagnac, calvados, metaxa style brandy, weinbrand, branntwein, ' +
  'grappa, grappe, whisky, whiskey, whiskies, whiskeys, виски, wiski, viski, ουίσκι, scotch, scotch whisky, bourbon, bourbon whiskey, rye whiskey, corn whiskey, single malt, tequila, mezcal, mescal, raicilla, sotol, bacanora, ' +
  'cachaça, cachaca, pinga, aquavit, akvavit, akevitt, akvavitt, snaps, schnapps, schnaps, korn, doppelkorn, kornbrand, kornbranntwein, weizenkorn, ansatzkorn, ansatzschnaps, klarer, obstler, obstbrand, obstwasser, kirsch, kirschwasser, ' +
  'zwetschgenwasser, zwetschgenbrand, mirabellenbrand, mirabelle eau de vie, williams, williamsbrand, williams birne, birnenbrand, apfelbrand, himbeergeist, tresterbrand, trester, marc, marc de raisin, lie, eau de vie, eaux de vie, eau de vie de fruits, eau de vie de vin, ' +
  'eau de vie de poire, eau de vie de prune, eau de vie de marc, eau de vie de cidre, mirabelle, poire williams, vieille prune, pisco, singani, arrack, arak, araq, acquavite, acquavite di vino, acquavite di vinaccia, acquavite d uva, distillato di vino, distillato d uva, ' +
  'aguardiente, aguardiente de orujo, orujo, aguardente, aguardente vínica, aguardente bagaceira, bagaceira, bagaço, medronho, rakı, raki, rakija, rakia, ракия, ракија, šljivovica, slivovica, slivovitz, śliwowica, slivovice, loza, lozovača, pálinka, palinka, ' +
  'țuică, tuica, palincă, tsipouro, τσίπουρο, tsikoudia, τσικουδιά, ρακί, brännvin, brennevin, brændevin, brennivín, viina, starka, okowita, żytnia, gorzałka, shochu, baijiu, kirsch eau de vie, white dog, unsweetened schnapps, absinthe, ' +
  'komovica, lozova rakija, eau de vie pour fruits, szilvapálinka, barackpálinka, körtepálinka, almapálinka, meggypálinka, cseresznyepálinka, törkölypálinka, apple brandy, pear brandy, plum brandy, sweet potato vodka, sweet potato shochu, korenwijn, korenwyn, acquavite di vinacce, borovička, tuzemák, degtinė, viin, ρακή, white liquor, ホワイトリカー, 焼酎, 白酒, 담금주, 증류식 소주'

/** Alcohol as such; nothing unknown may stand before it. */
export const alcohols =
  'alcohol, alcohols, pure alcohol, food alcohol, neutral alcohol, grain alcohol, drinking alcohol, potable alcohol, edible alcohol, rectified alcohol, alcohol for liqueurs, alcohol for drinking, spirit, spirits, neutral spirit, neutral spirits, ' +
  'rectified spirit, rectified spirits, grain spirit, grain spirits, neutral grain spirit, neutral grain spirits, neutral grape spirit, grape spirit, potato spirit, cane spirit, molasses spirit, spirits of wine, spirit of wine, potable spirit, base spirit, liquor, ngs, ' +
  'food grade ethanol, food ethanol, food grade alcohol, food grade spirit, drinkable alcohol, alcol, alcool, alcole, alcol puro, alcool puro, alcol etilico, alcool etilico, alcol etilico puro, alcol etilico alimentare, alcol alimentare, alcol buongusto, ' +
  'alcool buongusto, buongusto, buon gusto, alcol neutro, alcol per liquori, alcool per liquori, alcol da liquori, alcool da liquori, alcol per dolci, alcool per dolci, alcol di cereali, alcol di vino, spirito, spirito di vino, etilico alimentare, distillato, etanolo alimentare, ' +
  'weingeist, primasprit, feinsprit, trinksprit, trinkalkohol, neutralalkohol, neutralsprit, ansatzalkohol, agraralkohol, reiner alkohol, reinen alkohol, alkohol, trinkbarer alkohol, lebensmittelalkohol, kornalkohol, ' +
  'alcool pour fruits, alcool de fruits, alcool pour liqueurs, alcool neutre, alcool surfin, alcool blanc, alcool rectifié, alcool de bouche, alcool alimentaire, alcool pur, alcool de vin, alcool de grain, alcool de betterave, trois six, esprit de vin, ' +
  'alcohol rectificado, alcohol neutro, alcohol potable, alcohol para licores, alcohol alimentario, alcohol vínico, alcohol de caña, alcohol de cereales, alcohol puro de caña, alcohol puro, álcool, álcool neutro, álcool potável, álcool vínico, álcool de cereais, ' +
  'álcool alimentar, álcool para licores, álcool puro, spirytus, spirytus rektyfikowany, spirytus spożywczy, spirytus rektyfikowany spożywczy, alkohol rektyfikowany, alkohol spożywczy, spirytus zbożowy, spirytus ziemniaczany, spirt, спирт, питьевой спирт, спирт питьевой, ' +
  'спирт ректификованный, ректификованный спирт, пищевой спирт, спирт пищевой, pitievoi spirt, rektifikat, neutrale alcohol, zuivere alcohol, drinkalcohol, konsumsprit, jemný líh, lihovina, finomszesz, finomított szesz, étkezési alkohol, ' +
  'καθαρό οινόπνευμα, οινόπνευμα ποτοποιίας, καθαρή αλκοόλη, αλκοόλη ποτοποιίας, katharo oinopnevma, saf alkol, etil alkol gıda, gıda alkolü, distillate, grape distillate, wine spirit, wine distillate, grape alcohol, alcool alimentar, alcool rafinat, alcohol etílico potable, alcohol etílico de caña, alcohol etílico neutro, álcool etílico potável, álcool de cereal, piiritus, food spirit'

/** Drinks with sugar in them, or mostly: their sweetness is asked for. */
export const sweetDrinks =
  'liqueur, liqueurs, liquore, liquori, licor, licores, liqueurs, likör, likor, liker, ликёр, ликер, likier, nalewka, nalewki, настойка, наливка, cordial, crème de *, creme de *, crema di *, cream liqueur, triple sec, curaçao, curacao, vermouth, vermut, ' +
  'wermut, vermout, вермут, port, port wine, porto, sherry, jerez, madeira, marsala, vin santo, moscato, muscat, wine, wines, red wine, white wine, rosé wine, sweet wine, dessert wine, fortified wine, fruit wine, mulled wine, ginger wine, vino, vino rosso, vino bianco, vin, ' +
  'vin doux, vin rouge, vin blanc, wein, rotwein, weisswein, wijn, вино, κρασί, şarap, wino, vinho, víno, bor, prosecco, champagne, spumante, sparkling wine, cava, sekt, cider, ciders, cidre, sidro, sidra, apfelwein, perry, beer, ale, stout, lager, birra, bière, bier, ' +
  'cerveza, cerveja, piwo, mead, meads, idromele, hydromel, miód pitny, met, sake, saké, limoncello, limoncelli, limoncino, arancello, arancino, mandarinetto, mandarinello, nocino, mirto, amaro, amari, bitter, bitters, amaretto, sambuca, ' +
  'rosolio, ratafia, ratafià, anisette, anís, anice secco, mistrà, pastis, ouzo, ούζο, rosoglio, génépi, genepy, advocaat, maraschino, cherry brandy, apricot brandy, peach schnapps, peppermint schnapps, apple schnapps, cherry heering style, pacharán, ginja, ginjinha, ' +
  'sloe gin, damson gin, rhubarb gin, raspberry gin, spiced rum, flavoured vodka, flavored vodka, flavoured gin, honey vodka, krupnik, bärenfang, punsch, aperitif, apéritif, aperitivo, aperitivi, pineau, soju, 소주, glögg, advocat, kahve likörü'

/** Words for alcohol that are on bottles to drink and on others: asked about. */
export const asked =
  'ethanol, ethanols, éthanol, etanol, etanolo, этанол, αιθανόλη, ethyl alcohol, ethylalkohol, äthanol, äthylalkohol, alcool éthylique, alcohol etílico, álcool etílico, alkohol etylowy, spirytus etylowy, етиловий спирт, спирт этиловый, этиловый спирт, ' +
  'etil alkol, οινόπνευμα, αιθυλική αλκοόλη, oinopnevma, sprit, líh, szesz, etylalkohol, ethyl, etilico, etílico, eth, etoh'

/** Said of any of them, and harmless. */
export const fillers =
  'leftover, leftovers, left over, remaining, remainder of, rest of, last of, opened, open, unopened, spare, unfinished, half empty, half full, a, an, the, of, my, our, some, this, that, about, one, good, nice, decent, fine, best, better, quality, premium, cheap, cheaper, cheapest, basic, ordinary, normal, plain, simple, standard, regular, usual, everyday, own brand, own label, supermarket own, organic, bio, biologico, ' +
  'biologica, kosher, vegan, gluten free, pure, puro, pura, pur, rein, reiner, reines, чистый, czysta, czysty, white, clear, colourless, colorless, transparent, silver, gold, golden, dark, black, amber, red label, aged, old, extra old, young, unaged, matured, mature, añejo, reposado, ' +
  'blanco, joven, bianco, bianca, blanc, blanche, weiss, weisser, weissen, klar, clair, dry, london, london dry, extra dry, plymouth, navy strength, full strength, overproof, over proof, high proof, cask strength, barrel strength, strong, stronger, neutral, rectified, refined, ' +
  'unflavoured, unflavored, flavourless, flavorless, food grade, drinking grade, potable grade, beverage grade, premium grade, top grade, high grade, edible grade, food, potable, drinking, edible, drinkable, taxed, duty paid, duty free, duty-free, bought, shop bought, store bought, shop, ' +
  'store, supermarket, off licence, liquor store, corner shop, bottle, bottles, bottled, bottle of, big bottle, litre bottle, miniature, small, large, big, half, single, double, triple, quadruple, distilled, double distilled, triple distilled, filtered, ' +
  'charcoal filtered, pot still, copper still, column still, coffey still, patent still, small batch, batch, craft, artisan, artisanal, artigianale, blended, blend, malt, single malt, grain, wheat, rye, corn, maize, barley, potato, potatoes, rice, grape, ' +
  'grapes, cane, sugar cane, sugarcane, beet, molasses, agave, wheat based, grain based, polish, russian, swedish, finnish, french, italian, english, scottish, scotch, irish, german, austrian, american, mexican, spanish, cuban, jamaican, caribbean, dutch, japanese, ' +
  'canadian, ukrainian, greek, turkish, hungarian, czech, welsh, danish, norwegian, brazilian, peruvian, chilean, barbados, demerara, martinique, kentucky, tennessee, islay, highland, speyside, lowland, italiano, italiana, francese, polacca, russa, tedesca, abv, vol, volume, by volume, by vol, alc, ' +
  'proof, strength, percent, at, di, da, del, della, dello, dell, d, de, du, des, la, le, il, lo, l, un, una, uno, di vinaccia, di vino, d uva, al, alla, allo, all, ai, agli, alle, aux, surfin, extra neutre, per liquori, da liquori, for liqueurs, for liqueur, for infusing, for infusions, for drinking, zum ansetzen, zum trinken, aus dem supermarkt, ' +
  'del supermercato, buona, buono, secca, secco, riserva, invecchiata, invecchiato, vecchia, vecchio, giovane, morbida, liscia, liscio, smooth, moderately priced, barricata, vs, vsop, xo, vo, reserve, réserve, vieux, vieille, alter, alte, alten, ' +
  'year, years, year old, years old, yo, yr, yrs, anni, ans, jahre, house, pink gin, gin rosa, not denatured, non denatured, never denatured, undenatured, un denatured, non denaturato, non denaturata, nicht vergällt, nicht vergällter, unvergällt, unvergällter, non dénaturé, ' +
  'no desnaturalizado, não desnaturado, niet gedenatureerd, freezer cold, room temperature, rektyfikowany, spożywczy, biała, white label, light, scuro, scura, chiaro, chiara, ambrato, ambrata, ambré, ambrée, añeja, mit, of the, from the supermarket, from the shop, from the store, from the off licence, from last year, from last christmas, dal supermercato, unopened, new, caña, de caña, puro de caña, quebranta, etilico alimentare, alimentare, neutro, neutre, neutra, neutraler, neutralen, buongusto'

/** Water, where liquids are poured together. */
export const waters =
  'water, acqua, tap water, cold water, spring water, still water, filtered water, boiled water, cooled water, distilled water, mineral water'

/** Says that there is no sugar in it. */
export const unsweetened =
  'unsweetened, no sugar, sugar free, without sugar, senza zucchero, non zuccherato, non zuccherata, ungesüsst, ungesüsster, sans sucre, sin azúcar, bez cukru'
