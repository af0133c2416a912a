/** Where figures come from, by the key that data rows carry. */
export const sources = {
  ages_wild_garlic: 'AGES (Austria) wild garlic page: 3-4 autumn crocus leaves can be fatal',
  alamprese_2005: 'Alamprese & Pompei, Food Chem. 92:203-209 (2005), abstract',
  alenazi_2025: 'Alenazi et al., Environ Pollut Manag 2025;2:114-121 (80 citrus samples)',
  anses_confusion: 'ANSES, confusion between autumn crocus and wild garlic (2020-2022: 28 cases, 2 deaths)',
  anses_turmeric: 'ANSES 2022, adverse effects of food supplements with turmeric',
  archer_2024: 'Archer et al., Soft Matter 2024 (d4sm00332b) phase diagram water/ethanol/anethole',
  aromv: 'gesetze.digital AromV: quinine 300 mg/kg spirits, 85 mg/kg soft drinks',
  bailey_2013: 'Bailey, Dresser, Arnold, CMAJ 2013 (PMC3589309)',
  bfr_2012:
    'BfR press release 26/2012 and FAQ of 27 Sep 2012 (figures 60 kg adult 2 g/day, 15 kg child 0.5 g/day via news reports of the BfR statement)',
  buchanan: 'Buchanan forensic text',
  cdc_1984:
    'CDC MMWR, Poisoning from Elderberry Juice - California, April 1984 (cdc.gov/mmwr/preview/mmwrhtml/00000311.htm)',
  cfr_184_1408:
    '21 CFR 184.1408 limits as tabulated in Case Reports in Emerg Med 2020, 3727682 table 2 (0.10 % glycyrrhizin in alcoholic beverages)',
  chung_2019: 'Chung et al., Korean J. Food Preserv. 26(2):194-200 (2019) 10.11002/kjfp.2019.26.2.194, abstract',
  colorado_eggs:
    'Colorado State University, Food Smart Colorado: safe handling of eggs (home eggnog: heat to 160 F / 71 C, refrigerate, use within 2-3 days; alcohol does not make it safe)',
  com_2006_427: 'COM(2006)427 and COM(2007)671 annexes (proposal for the Flavourings Regulation), eumonitor.eu',
  common_practice: 'common practice',
  dfg_sklm_2004: 'DFG-SKLM opinion on glycyrrhizin 2004 (up to 14 % in root), doczz.com.br',
  ec_1334_2008:
    'Regulation (EC) 1334/2008 Annex III/IV (Annex III list of substances seen at legislation.gov.uk; Annex IV seen at gesetze.legal; several Annex III part B numbers from memory, cross-checked with COM(2006)427 annexes at eumonitor.eu, a Wikipedia copy for thujone and press for coumarin 15/50)',
  ec_88_388: 'Directive 88/388/EEC Annex II (repealed 20 Jan 2011), text at gesetze.legal',
  efsa_2016: 'EFSA CONTAM Panel, EFSA Journal 2016;14(4):4424',
  efsa_2019: 'EFSA CONTAM Panel, EFSA Journal 2019;17(4):5662',
  efsa_compendium:
    'EFSA Compendium of botanicals reported to contain substances of possible concern, EFSA Journal 2012;10(5):2663 (title and scope seen; individual entries from memory)',
  efsa_coumarin_2008: 'EFSA AFC Panel, coumarin, EFSA Journal 2008;793 (TDI 0.1 mg/kg bw kept)',
  efsa_imazalil_2018:
    'EFSA Journal 2018;16(10):5453 review of imazalil MRLs (existing EU MRL citrus 5 mg/kg; genotoxicity of metabolite R014821 not ruled out)',
  ema_thujone:
    'EMA/HMPC public statement on thujone 2011, as summarised by sciencepharma.com (3.5 mg/person/day wormwood, 5.0 mg sage, max 2 weeks); later 2017 monograph figures 3.0 mg from memory',
  ema_wormwood: 'EMA/HMPC/751484/2016 assessment report Artemisia absinthium (oil 0.2-1.5 %), fdocuments.net',
  emea_rue: 'EMEA/MRL/542/98-FINAL Ruta graveolens summary report March 1999',
  ertugrul_2019: 'Ertugrul, J New Results Eng Nat Sci 2019;9:1-10 (lemon balm 72.99-80.11 % wet basis)',
  eu_1169_2011:
    'Regulation (EU) 1169/2011 (Annex XII text at gesetze.legal; Annex II/III items from memory where marked)',
  eu_2023_2429:
    'Implementing Regulation (EU) 543/2011 (citrus standard, Annex I part B part 2), repealed and replaced by Delegated Regulation (EU) 2023/2429',
  foodex2:
    'EFSA FoodEx2 catalogue of foods (single facts only: that a plant is on it, and its Latin name), stored copy',
  foodon: 'FoodOn, plant parts, commit 41df311a2d6c29f2d321e7319cea7bb5915664e4 (2025-02-18), CC BY 4.0',
  fda_star_anise:
    'FDA advisory of 10 Sep 2003 (supplysidesj.com, nutraingredients-usa.com): about 40 cases incl. 15 infants',
  forycka_2019:
    'Forycka & Buchwald, Herba Polonica 2019;65(4):62-75, doi 10.2478/hepo-2019-0027 (essential oil and coumarins of Angelica archangelica)',
  fuller_2017: 'Fuller & Rao, Sci. Rep. 7 (2017), in water',
  gelsemium_case:
    'Case report 2015 (safetylit.org 674601_7): fatal Gelsemium elegans poisoning after home-made herbal liqueur',
  gi_amalfi:
    'Italian GI technical file "Liquore di limone della Costa d\'Amalfi", gazzettaufficiale.it 16A04482 (2016) / agraria.org',
  gi_galicia: 'Galician coffee liqueur GI, as noted in the coffee rows of the reference data',
  gi_genepi:
    'Italian GI technical file "Genepi del Piemonte", DM 24 Apr 2012 (GU 153, 3.7.2012), text via qualigeo.eu and doczz.it',
  gi_mirto:
    'Italian GI technical file "Mirto di Sardegna", gazzettaufficiale.it 13A03064 (2013) / agraria.org / typicalof.com for 40 % vol minimum of the steeping spirit',
  gi_pacharan:
    'Pacharan Navarro GI regulation (figures via espana.gastronomia.com, unila.enciclo.es, reynogourmet.com)',
  gi_sorrento:
    'Italian GI technical file "Liquore di limone di Sorrento", DM 12 Nov 2012 (GU 18, 22.01.2013), text via disciplinare.it / agraria.org / qualigeo.eu',
  haciseferogullari_2012: 'Haciseferogullari et al., J Food Sci Technol 2012;49(1):82-88 (PMC3550880)',
  henderson_2002: 'Henderson et al., Br J Clin Pharmacol 2002 (PMC1874438); MHRA Drug Safety Update March 2014',
  iacw: 'iacw.org',
  igws_pectin: 'igws.co.za pectin test protocol (1 part juice + 2 parts acidified alcohol)',
  irish_case_2021: 'Irish Medical Journal case, independent.ie 22 Jan 2021',
  italy_turmeric_2019: 'Italian Ministry of Health, July 2019, conclusions on Curcuma longa supplements',
  jfpe_12350:
    'Naviglio et al., J. Food Process Eng. 2016, 10.1111/jfpe.12350; Afr. J. Food Sci. 1:42 (2007), published summary',
  jsfa_10044: 'J. Sci. Food Agric. 2019, 10.1002/jsfa.10044, abstract',
  jsfa_7822: 'J. Sci. Food Agric. 2016, 10.1002/jsfa.7822, abstract',
  kjfp_2019: 'Korean J. Food Preserv. 26(5):545 Table 5 (2019)',
  knapp_2009: 'Knapp & Elston, Botanical briefs: garden Angelica, 2009 (phytophotodermatitis and contact allergy)',
  marakoglu_2005:
    'Marakoglu, Arslan, Ozcan, Haciseferogullari, J Food Eng 2005, doi 10.1016/j.jfoodeng.2004.05.024 (blackthorn fruit: 69.37 % moisture, mean 1.28 g)',
  menniti_2019:
    'Menniti-Ippolito et al., Ann Ist Super Sanita (turmeric food supplements and hepatotoxicity, annali.iss.it 1146)',
  mhra_cranberry:
    'UK Committee on Safety of Medicines / MHRA, Current Problems in Pharmacovigilance 2003;29:8 and 2004;30',
  myrtle_lipids: 'Myrtus communis var. italica lipid study abstract (72 % moisture whole fruit)',
  navarro_2019: 'Navarro-Martinez et al., Eur. Food Res. Technol. 245:41-50 (2019), abstract',
  nicotine_review: 'thefix.com and giovanniceccarelli.com quoting the nicotine dose review',
  nutmeg_review:
    'ALiEM/ACMT toxicology review (toxicity reported from 5 g; about 10 g usual for neuropsychiatric effects) ; Ehrenpreis et al. 2014 in jodrugs.com',
  oh_2019: 'Oh, Int. J. Eng. Adv. Technol. 9(1):430-433 (2019) 10.35940/ijeat.A9425.109119, abstract',
  ozcan_2017:
    'Ozcan et al., J Food Safety Food Qual 2017;68(4):96-100 (fructose and glucose of the fruit; basis not stated)',
  pillay_2019: 'Pillay & Sasidharan 2019',
  pink_pepper_2019:
    'Asia Pac Allergy 2019;9(3):e25, doi 10.5415/apallergy.2019.9.e25 (pink peppercorn, cashew and pistachio)',
  poison_garden: 'thepoisongarden.co.uk',
  sanchez_2017: 'Sanchez Santana, MSc thesis, Lund 2017, abstract',
  scf_2003: 'SCF opinion on glycyrrhizinic acid 2003 (100 mg/day), via qualfood.com and Danish Foedevarestyrelsen page',
  shen_2010: 'Shen et al., J Agric Food Chem 2010;58(13):8056-8060',
  son_2017:
    'Son et al., Ann Dermatol 2017;29(1):86-90, doi 10.5021/ad.2017.29.1.86 (five cases after a fig-leaf decoction)',
  toma_2025: 'Toma, Stegmueller, Richling, Eur Food Res Technol 2025;251:513-517, doi 10.1007/s00217-024-04648-z',
  turmeric_2021: 'J Food Process Eng, doi 10.1111/jfpe.13780 (fresh sliced turmeric 80 +- 0.12 % wet basis)',
  uk_cmo_2016: 'UK Chief Medical Officers low-risk drinking guidelines 2016 (drinkaware.co.uk, itv.com report)',
  unverified: 'national law / official guidance, from memory, unverified',
  usda_ndb:
    'USDA National Nutrient Database, FOOD_DES.txt (8,463 foods: SR26 by that count), stored copy of 2014-09-03; public domain',
  usda_sr:
    'USDA National Nutrient Database SR28 / FoodData Central SR Legacy (ABBREV and WEIGHT files). The NDB number is exact',
  vanilla_2013: 'second hand: copies citing a 2013 paper and Handbook of Vanilla ch. 9',
  veratrum_cases:
    'Wien Klin Wochenschr case report "Dietary poisoning with Veratrum album - two cases" (scilit) ; Verovnik, Zdrav Vestn 1999;68(3):157-60 ; Clin Toxicol 2010;48(9):949-52 (PubMed 21171854)',
  who_methanol:
    'WHO Information note, Methanol poisoning outbreaks, July 2014 (docslib copy); preventionweb.net CH0023',
  yolci_2022: 'Yolci Omeroglu et al., Foods 2022;11(23):3918 (oranges, household processing)',
  zaynoun_1984: 'Zaynoun et al., Contact Dermatitis 1984;11(1):21-25 (photoactive compounds of Ficus carica)',
} as const

export type SourceKey = keyof typeof sources
