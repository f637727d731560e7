/** People, animals and places by what they do and their activities; as `wordClasses`. */
export const placeClasses: Readonly<Record<string, string>> = {
  adult:
    'man lady chef vet cook captain sailor baker farmer teacher doctor nurse painter driver singer king queen clown guard diver builder prince princess skipper gardener pilot artist musician plumber potter librarian postman fisherman scientist dentist mayor dancer drummer explorer mechanic shopkeeper pirate boss woman inventor magician',
  child: 'kid lad boy girl child twin scout pupil lass',
  relation: 'mum dad gran grandad brother sister aunt uncle pal friend twin cousin granny',
  job: 'chef vet cook captain sailor baker farmer teacher doctor nurse painter driver singer clown guard diver builder coach skipper gardener pilot artist musician plumber potter librarian scientist dentist dancer drummer mechanic shopkeeper',

  pet: 'dog cat pup kitten rabbit hamster puppy',
  farmAnimal: 'hen pig cow lamb goat sheep horse donkey duck goose pony calf chick ram turkey ox',
  runner:
    'dog cat pup rat pig fox hen rabbit pony horse lamb goat squirrel mouse hare deer puppy kitten donkey cow calf badger foal ram duck goose',
  small: 'cat pup kitten rabbit hamster mouse rat frog toad mole chick duckling hen hedgehog puppy squirrel',
  tiny: 'bug ant snail slug beetle worm ladybird cricket caterpillar moth frog mouse',
  hopper: 'frog rabbit robin toad hare bug cricket sparrow wren grasshopper chick blackbird',
  pondSwimmer: 'duck frog otter swan goose trout newt duckling fish tadpole',
  seaSwimmer: 'fish seal dolphin whale squid eel turtle octopus jellyfish penguin cod',
  seaAnimal: 'crab fish seal dolphin whale squid eel turtle starfish lobster octopus jellyfish shrimp',
  poolAnimal: 'crab fish shrimp starfish prawn eel seahorse lobster',
  flyer:
    'gull duck robin goose swan crow owl puffin parrot pigeon sparrow thrush jay tern finch rook raven moth bee bat butterfly bird heron seagull stork blackbird magpie wren hawk',
  bird: 'hen duck gull robin chick swan goose wren crow owl puffin parrot pigeon sparrow thrush jay tern finch rook bird heron seagull blackbird magpie raven',
  perchBird:
    'gull robin wren crow owl puffin parrot pigeon sparrow thrush jay tern finch rook bird seagull blackbird magpie raven',
  crawler: 'bug ant snail slug beetle worm caterpillar ladybird',
  ledAnimal: 'dog pony horse lamb donkey puppy goat calf',
  songBird: 'robin wren thrush sparrow blackbird finch nightingale',
  furry: 'dog cat pup kitten rabbit pony horse lamb puppy donkey',
  seen: 'dog cat pup rabbit fox hen duck gull robin swan frog crab pony lamb goat sheep squirrel owl deer seal ship boat bus tram train truck van',

  // Places and ways
  goal: 'shop shed hut dock pond park farm barn house school beach market harbour station library castle cabin garden lighthouse quay bridge pier tent gate well zoo museum hall gym bank mill deck cliff shore hotel cottage bakery café playground village town bench church river lake sea swings workshop island aquarium club rink',
  mealPlace:
    'hut dock pond park farm house school beach market harbour castle cabin garden lighthouse quay pier tent zoo museum hall mill shore hotel cottage café playground village river lake sea island fair camp inn club',
  goalTo:
    'shop shed hut dock pond park farm barn house school beach market harbour station library castle cabin garden lighthouse quay bridge pier tent gate well zoo museum hall gym bank mill deck cliff shore hotel cottage bakery café playground village town bench church river lake sea swings workshop train island aquarium bus ship boat ferry tram van train tree bench theatre club rink',
  walkGoal:
    'shed hut pond barn bush hedge gate well tree log rock path dock shop house garden field bench stream cart stable fence yard',
  indoor:
    'shed hut tent barn house cabin hall lighthouse cottage kitchen shop castle library museum station bus tram cave bakery classroom workshop van',
  outdoor: 'park field garden yard meadow orchard playground wood forest sand sun wind mist snow rain mud',
  playPlace: 'park field garden yard meadow playground mud sand snow sun',
  grassPlace: 'park field garden yard meadow sand grass playground mud beach',
  farmPlace: 'pen shed barn field yard meadow farm mud hut stable',
  hill: 'hill bank slope mound mountain',
  path: 'path track road lane street trail dock deck beach sand shore quay pier cliff wall',
  shorePath: 'dock deck beach sand shore quay pier path trail',
  pass: 'shop shed hut dock pond tent barn house school market bench well mill castle station library church ship bus gate clock lighthouse bridge café tree bush truck van museum bakery statue',
  over: 'log rock mat bridge step rope hedge gate sand hill stone puddle fence wall box mud ditch',
  pondWater: 'pond lake river stream pool',
  openWater: 'pond lake river sea stream bay pool harbour',
  sailWater: 'sea bay river lake harbour',
  seat: 'mat rug log rock bed bench step sand grass sofa chair dock deck stool wall cushion carpet hill moss swing stump blanket stone towel box jetty chest bank pier quay quilt',
  soft: 'mat rug bed sofa cushion blanket carpet grass sand moss quilt pillow straw hay towel bedspread',
  hideUnder:
    'mat rug log rock bed bench hut shed bush hedge step leaf plant desk stone table shelf dock blanket boat net box truck hat porch stump bridge basket',
  hideIn:
    'shed hut box sand mud den log bush tent hedge grass tub shell barn hole basket cave kelp bucket straw sack kitchen',
  hideBehind:
    'rock log shed hut box bush tree bin chest bench plant stone hedge barn sofa gate wheel chair curtain fence lamp wall',
  cliffTop:
    'rock log mast hut shed deck dock bush post roof fence branch gate wall pier pole branch lighthouse rail cliff perch ledge nest statue',
  flyOver:
    'hut shed ship pond hill deck dock sand boat sea bay beach roof park farm field lighthouse bridge harbour town island trees river cliff lake mill market',
  boatStop: 'dock quay pier harbour jetty island lighthouse shore rock beach wharf port',
  busStop:
    'shop school park station market bridge beach museum farm castle library church lighthouse stop dock hill gate hotel hall zoo bank mill',
  roadPlace: 'hill road lane street track',
  restPlace: 'sun shed grass barn hut yard garden kitchen field sand tent park shade meadow',
  sleepOutdoor: 'sun shed grass barn hut yard garden basket kitchen field sand tent box',
};
