/** Nouns that take the same adjectives: any of them goes with any of these. */
export interface NounKind {
  readonly adjectives: string;
  readonly nouns: string;
}

/**
 * Which adjectives go with which nouns: `a wet dog`, not `a ripe dog`. Nouns in no kind stand alone.
 * Adjectives that fit only some nouns of a kind are in `ownAdjectives`.
 */
export const nounKinds: Readonly<Record<string, NounKind>> = {
  adult: {
    adjectives:
      'tall kind old young happy busy strong glad proud clever jolly friendly cheerful helpful careful famous nervous generous',
    nouns:
      'man woman lady chef vet cook captain sailor baker farmer teacher doctor nurse painter driver singer king queen clown guard diver builder coach boss prince princess skipper gardener pilot artist musician plumber potter librarian postman fisherman knight scientist dentist mayor dancer drummer conductor explorer mechanic pirate shopkeeper cyclist inventor magician',
  },
  child: {
    adjectives:
      'small tall kind happy busy glad proud quick clever shy cheerful helpful polite little friendly lucky',
    nouns: 'kid lad boy girl child twin scout pupil lass',
  },
  fur: {
    adjectives:
      'big small little wet old sleepy happy hungry tame gentle playful quick quiet huge tiny muddy young plump enormous nervous',
    nouns:
      'dog cat pup kitten rabbit hamster pony horse donkey lamb calf goat sheep pig cow fox badger squirrel mouse rat otter mole hare deer puppy ram yak foal hedgehog monkey elephant giraffe camel',
  },
  bird: {
    adjectives: 'big small little wet plump hungry quick noisy happy tiny young proud old quiet',
    nouns:
      'hen duck gull robin chick swan goose wren crow owl puffin parrot pigeon sparrow thrush jay tern finch rook raven turkey bird heron seagull duckling stork penguin ostrich blackbird magpie nightingale',
  },
  sea: {
    adjectives: 'big small little quick shy huge tiny striped old enormous',
    nouns:
      'crab fish seal shrimp cod eel whale dolphin squid starfish lobster trout turtle octopus frog toad newt jellyfish prawn seahorse tadpole',
  },
  bug: {
    adjectives: 'big small little quick black red brown tiny shiny slow',
    nouns:
      'bug ant bee moth snail slug beetle worm ladybird butterfly cricket grub caterpillar grasshopper centipede',
  },
  thing: {
    adjectives:
      'big small red old new little blue green best clean dusty huge tiny yellow pink black white fine lovely useful bright purple grey orange pretty splendid',
    nouns:
      'pen tin jug box bag book ball bat net mop bell drum pot pan mug flag lamp fan brush comb doll ring rod rope sack shell spoon plate dish bowl fork key clock card basket bucket spade kite torch badge bottle pencil ruler ticket balloon toy whistle ladder candle cushion blanket pillow towel phone trumpet violin puzzle present parcel umbrella lantern telescope compass necklace cup kit tub bin chest desk bed shelf mat rug bench table chair stool sofa tray crate trunk jar lid fiddle flute piano guitar disc top jet robot marble sponge wheel gate door hatch picture notebook magnet kettle teapot vase saucer thimble calendar globe banner curtain scooter quilt ribbon tablet jigsaw dictionary stamp map poster locket diary microscope medal treasure racket teddy puppet skateboard pump plug sign bath sink cot pram gong horn harp',
  },
  cloth: {
    adjectives:
      'big small red old new little blue green best clean wet dry soft warm thick pink black white yellow smart cosy striped purple bright dusty lovely grey orange',
    nouns:
      'hat cap wig vest sock scarf coat belt jacket shirt boot glove mitten shoe slipper sandal helmet apron cloak jumper mask raincoat uniform bonnet sunhat gown hood sweater cardigan tie dress',
  },
  fruit: {
    adjectives: 'big ripe fresh sweet juicy soft little nice good small huge tasty',
    nouns:
      'fig plum pear apple peach banana melon cherry grape berry strawberry orange carrot tomato radish cucumber mango pineapple apricot blackberry',
  },
  bake: {
    adjectives: 'big hot fresh warm sweet soft little tasty good nice small yummy delicious huge',
    nouns:
      'bun cake pie roll muffin biscuit pancake waffle tart scone sandwich cupcake cookie bap crumpet flapjack cheesecake gingerbread pudding',
  },
  house: {
    adjectives: 'big old new little small tiny quiet grand huge fine',
    nouns:
      'shop shed hut tent camp barn house school station library castle cabin lighthouse hall gym mill museum hotel cottage market bakery café office church theatre workshop aquarium palace',
  },
  ground: {
    adjectives: 'big green wide wet quiet sunny huge lovely grassy',
    nouns: 'park farm garden field yard meadow orchard playground forest wood land',
  },
  hill: { adjectives: 'big steep green little high grassy tall', nouns: 'hill bank slope mound mountain' },
  path: {
    adjectives: 'long wide muddy wet dusty narrow steep bumpy straight',
    nouns: 'path track road lane street trail',
  },
  water: {
    adjectives: 'deep cold wide clear calm blue big still warm',
    nouns: 'pond lake river sea stream bay pool lagoon',
  },
  vehicle: {
    adjectives: 'big red old new fast little blue green slow yellow white fine small grand splendid',
    nouns:
      'bus van cab truck tram car train lorry bike taxi cart tractor coach ship boat ferry raft tug canoe dinghy yacht kayak barge sled plane wagon steamship punt skiff minibus submarine',
  },
  plant: { adjectives: 'big old green tall little', nouns: 'bush hedge tree plant flower rose' },
  nature: {
    adjectives: 'big wet flat old smooth little huge mossy',
    nouns: 'log rock stump stone boulder',
  },
  pier: {
    adjectives: 'big long old wet new wooden sunny',
    nouns: 'dock deck pier quay bridge step jetty wall wharf',
  },
};

/** Adjectives that fit one noun and not all of its kind. */
export const ownAdjectives: Readonly<Record<string, string>> = {
  hen: 'red brown speckled',
  robin: 'red',
  crab: 'red pink',
  fox: 'red',
  frog: 'green spotted',
  toad: 'green',
  pig: 'pink',
  dog: 'tan black brown white spotted shaggy fluffy furry loyal curious',
  pup: 'tan black brown spotted fluffy',
  puppy: 'black brown spotted fluffy curious',
  cat: 'tan black white grey fluffy ginger furry curious',
  kitten: 'black white grey fluffy ginger furry curious',
  rabbit: 'white grey brown fluffy',
  lamb: 'white woolly',
  sheep: 'woolly white',
  horse: 'black brown white graceful',
  pony: 'black brown white grey',
  cow: 'black brown',
  gull: 'white grey',
  swan: 'white graceful',
  crow: 'black',
  duck: 'white brown',
  owl: 'white brown wise',
  seal: 'grey shiny spotted',
  whale: 'blue grey',
  dolphin: 'grey playful',
  fish: 'red pink blue shiny spotted orange silver',
  moth: 'brown white',
  butterfly: 'blue white yellow beautiful',
  snail: 'brown',
  apple: 'red green',
  plum: 'red purple',
  pear: 'green',
  cherry: 'red',
  tomato: 'red',
  bun: 'jam currant',
  pie: 'plum apple fish',
  cake: 'plum jam lemon chocolate',
  tart: 'jam plum lemon',
  hut: 'log mud grass stone red blue',
  shed: 'red blue wooden',
  house: 'red blue white stone',
  barn: 'red',
  cottage: 'white pretty stone',
  lighthouse: 'white red',
  box: 'tin wooden oak',
  tin: 'flat',
  pot: 'tin',
  mug: 'tin',
  cup: 'tin silver',
  lid: 'tin',
  drum: 'tin',
  tub: 'tin',
  bell: 'brass ship',
  photo: 'big small old new little best lovely',
  ring: 'gold silver precious',
  shell: 'smooth',
  book: 'thick thin long',
  rope: 'long thick strong',
  rod: 'long',
  ball: 'round',
  bench: 'long wooden',
  bed: 'soft cosy',
  rug: 'soft thick',
  clock: 'loud',
  boat: 'rowing fishing',
  ship: 'long',
  train: 'long steam',
  knight: 'brave',
  king: 'wise',
  queen: 'wise',
  sailor: 'brave',
  diver: 'brave',
};

/** Plurals that no rule of spelling gives: `men`, while hats and boxes are ruled. */
export const irregularPlurals: Readonly<Record<string, string>> = {
  man: 'men',
  woman: 'women',
  child: 'children',
  postman: 'postmen',
  mailman: 'mailmen',
  fisherman: 'fishermen',
  mouse: 'mice',
  goose: 'geese',
  sheep: 'sheep',
  deer: 'deer',
  fish: 'fish',
  cod: 'cod',
  trout: 'trout',
  squid: 'squid',
  shrimp: 'shrimp',
  calf: 'calves',
  shelf: 'shelves',
  scarf: 'scarves',
  loaf: 'loaves',
  leaf: 'leaves',
  potato: 'potatoes',
  tomato: 'tomatoes',
  hero: 'heroes',
  jellyfish: 'jellyfish',
  starfish: 'starfish',
  snowman: 'snowmen',
  quiz: 'quizzes',
  octopus: 'octopuses',
};

/** Things that are not counted, in one number only and nobody's: `the sun`, never `my six suns`. */
export const onlyThe: ReadonlySet<string> = new Set(
  'sun wind sea rain mist snow mud grass hay sand moss kelp straw water beach moon tide ice shore land harbour seaweed coral string crumbs corn grain bread weeds town kitchen toast station steps rocks clouds stars beans peas bank chips tracks cliffs tyres stairs swings trees spelling weather waves thunder top washing clover breakfast boots hands windows plates eggs popcorn spelling thunder leaves seaweed driftwood music carrots cod chalk crumbs'.split(
    ' ',
  ),
);
