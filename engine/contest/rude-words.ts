/**
 * Words that no name on a classroom's board may say, in the languages that Fairturn speaks: English, German, Spanish,
 * French. Not shown anywhere. Which way of writing them is seen through is the work of `looks-rude.ts`.
 *
 * Four lists, because a short word is part of many good names: what is rude wherever it stands, what is rude at the
 * beginning of a word, and what is rude only as a whole word. The fourth has the good names that hold one all the same.
 * Written in plain letters without accents. What people are called who are (a faith, a people, whom one loves) is no
 * rude word here; the slurs for it are.
 * Source: own list, common practice of moderated nicknames, no single source.
 */

/** Rude wherever it stands, with other letters around it too. */
export const RUDE_ANYWHERE: readonly string[] = `
  fuck fvck fuxk fxck phuck motherfuc bitch biatch beetch whore cunt slut nigga nigger niggr faggot asshole arsehole ashole
  asswipe jackass dumbass smartass bigass badass kissmyass lickmyass dickhead dickface suckmy cocksuck bastard
  bullshit horseshit dipshit dumbshit jackshit holyshit eatshit batshit apeshit littleshit wanker twat bollock penis vagina
  pussy boobs boobies pornhub pornstar pornog blowjob handjob rimjob dildo masturbat ejacul hentai pedophil paedophil
  gangbang deepthroat creampie cumshot buttplug butthole anallick hitler himmler goebbels siegheil neonazi
  retard goddamn sandnig raghead towelhead wetback killyourself suicid whitepower 1488
  arschloch arschgeig arschfick arschgesicht gefick mutterfick durchfick fickdich hurensohn hurntochter hurenkind
  scheis schais beschiss gewichs wichser fotze votze schlampe schwuchtel spasti missgeburt vollidiot kanacke kanake
  judensau judenschwein drecksau dreckschwein miststueck miststuck dummkopf hakenkreuz untermensch
  hijodeput hijoput putamadre putisim mierd pendej cabron gilipoll maricon chingada chingatu chingar
  negrata subnormal mogolic mongolic pelotud chupapoll chupapij mamaguev mamahuev malparid carechimb
  merde putain salope salopard salaud connard connass encul enfoir filsdeput trouduc troudebal niquetam niquesam nictamer
  couille poufiass pouffiass petasse grognass branleur branlett bougnoul youpin negress sucemoi sucemab groscon
  salecon ducon tamerelap vatefair
`
  .trim()
  .split(/\s+/)

/** Rude at the beginning of a word, whatever follows. */
export const RUDE_AT_FIRST: readonly string[] = `
  shit fick wichs wixx wixer wixt pimmel titten huren nutten vergas negerk kackwurst kackhauf
  idiot stupid imbecil estupid
  putita putit putada putazo puton follame follad chupala chupame chupamel mecago cagate jodet jodid culiad culiao
  niqueu niquer niquet suceb chiott
  sexy sexmasch sexgott sexgod
`
  .trim()
  .split(/\s+/)

/** Rude only as a whole word, or as the whole name. */
export const RUDE_AS_WORD: readonly string[] = `
  fuk fuc fuq fck fcku shyt sht btch cnt dck wtf stfu gtfo kys kkk milf thot ass asses arse anal anus cum cums cumming
  sex sexual sexi sexo sexe sexuel tit tits titty titties cock cocks cok dick dicks dik prick pricks clit clits jizz spunk boner
  turd piss pissed pisser pissoff crap crappy poop poopy poophead fag fags homo tranny paki chink gook spic coon
  nazi nazis rape raped rapist rapes raper porn porno pornos horny nude nudes naked pedo paedo moron morons nigg
  bellend knobhead minge wank wanking hoes scrotum heroin cocaine
  arsch aersche hure nutte muschi spast spacko spacken mongo trottel dumm doof schwanz penner kacke kacker pisse neger
  negerin bimbo bumsen bumser wix moese poppen
  puta putas puto putos culo culos culero joder coger verga polla pollas pollon pinche zorra zorras perra
  maricas pene penes caca cagon cagar cagada violador cachondo cachonda mamada tetas follar huevon weon wevon
  carajo hdp hjdp boludo boluda pija putilla ojete
  pute putes ptn fdp ntm nique bite bites chatte chattes chier chieur chieuse suceur suceuse sucer cul culs conne connes conard tapette gouine bicot
  batard batards bordel salop debile abruti cretin foutre nichon nichons zob teub bamboula violeur
`
  .trim()
  .split(/\s+/)

/** Rude as a whole word with this very accent; without it the word is harmless or a name. */
export const RUDE_WITH_ACCENT: readonly string[] = ['coño', 'coños', 'möse', 'pédé', 'pédés', 'nègre']

/** Given names, surnames, places and good words that hold one of those above: left out before anything is looked for. */
export const KIND_AFTER_ALL: readonly string[] = `
  scunthorpe shital shitij shitiz shitansh shitara shitong shitaye shitta shitsu fickert fickel fickle hurenko
  pussycat slutsky slutzky slutskaya slutski tittensor penistone vergast bastardo wichselbaum dildor
`
  .trim()
  .split(/\s+/)

/** Given names that say something rude together with the first letter of a family name, which is cut off: "Phúc K." */
export const KIND_BEFORE_A_LETTER: readonly string[] = ['phuc', 'chieu', 'duco', 'jodi', 'kanak', 'marica', 'bastar']
