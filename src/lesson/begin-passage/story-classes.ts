/** What stories name, by the part it plays; as `wordClasses` of the sentences. Words a setting lacks are drawn from these. */
export const storyClasses: Readonly<Record<string, string>> = {
  treasure:
    'cap hat map ring bell pen top cup jet kit shell badge coin scarf vest book kite locket watch ticket whistle flute fiddle torch compass medal marble magnet notebook letter necklace photo diary puppet puzzle brush comb drum bat pencil cape clock glove toy key robot trumpet telescope racket horn mitten jigsaw teddy quilt cushion card jar ribbon microscope dictionary calendar lantern purse pearl crystal jewel phone picture magazine feather shield sword wrench sketch crayon tray trophy disc coin doll quill gong mirror bicycle chocolate package invitation medallion guitar wire sculpture whisk chain scroll sponge bookmark mask wand wig skateboard lunchbox jacket wallet paintbrush toy key globe rattle ruby clasp',
  giftBox: 'box tin chest basket case crate trunk suitcase',
  guess:
    'cat dog pup pen hat map jug cup bat net drum mug flag lamp fan rug ring rod brush shell spoon bowl key clock kite torch badge bottle pencil ruler ticket balloon whistle candle cushion blanket pillow photo trumpet violin puzzle umbrella lantern telescope compass kit disc top jet teapot flute fiddle jar notebook robot magnet vest scarf coat jacket jigsaw quilt poster microscope stamp medal teddy puppet racket harp horn kettle calendar doll toy book snail frog rabbit hamster plum fig cake pie peach tart muffin biscuit rose bike train boat cap belt bun egg mask crown plant watch necklace cape globe saucer thimble dictionary mirror guitar piano jumper cardigan purse pearl crystal jewel phone picture magazine feather shield sword wrench trampoline surfboard sketch crayon tray trophy doll quill gong bicycle chocolate medallion sweater jersey scroll wand wig skateboard lunchbox wallet cookie doughnut shirt skirt chick toaster rattle ruby scooter sledge paintbrush box fox ox hen pig duck monkey donkey turkey elephant jaguar penguin stallion rhino salmon calf bear hare mare boar reindeer tractor lizard cougar butterfly fly wolf whale shark ship bus turtle dragon bull skunk oyster squid dolphin python hyena machine boulder onion cabbage sausage web wig yak gull vet chest witch anchor mouse bird fern spring bridge sphinx nail wasp',
  snack:
    'bun fig plum pear apple peach cake pie roll muffin biscuit sandwich banana carrot pancake egg tart scone waffle cookie cherry strawberry orange tomato nut flapjack crumpet mango crust pastry cookie doughnut sausage onion pretzel oyster',
  petFood: 'nut bun egg bone fig plum carrot biscuit muffin snack fish treat',
  petBed: 'mat rug bed sofa cushion blanket carpet quilt towel pillow sack chair',
  wash: 'tub sink bath bucket pond stream pool barrel',
  pet: 'dog cat pup kitten puppy rabbit hamster lamb goat pig duck hen goose',
  ownPet: 'dog cat pup kitten puppy rabbit hamster duck hen lamb',
  bag: 'bag box tin sack chest basket case trunk suitcase backpack',
  packed:
    'cup pen hat map tin jug book bat net bell pan mug flag lamp fan brush rug rod rope spoon plate dish bowl key clock kite torch bottle pencil ticket whistle candle cushion blanket pillow towel trumpet puzzle umbrella lantern telescope compass kit disc top jet flute fiddle jar notebook robot magnet vest scarf coat jacket helmet jigsaw quilt teddy puppet racket kettle cap belt sock glove ball mop mask spade comb raincoat jumper camera sponge teapot guitar phone mirror purse sweater shirt skirt doll jersey crayon toothbrush hairbrush magazine picture sketch strap string spring tray trophy keyboard sword shield wig feather skateboard toaster hairdryer',
  kit: 'map bag hat cap kit net flag rug rope drum stick book pen kite torch telescope flute basket camera compass whistle umbrella scarf coat lantern bottle blanket jacket helmet pencil notebook guitar racket spade cape camera phone mirror scarf wrench guitar purse sketch whisk key web trumpet chair',
  junk: 'tin boot cup hat sock mug pan cap sack bag log rug lid jug bell fan belt net mop box wig plate spoon coat glove bottle wheel chair clock shoe kettle brush vest rope chain bucket umbrella bike flag stick helmet slipper scarf toy candle jar teapot basket sink tank trunk wire tyre wrench phone purse sweater shirt skirt doll trolley mirror machine anchor skateboard feather sword wig ring spring strap string disc trumpet wok chest sledge bicycle',
  netThing: 'net rod bucket line',
  catch:
    'crab fish cod eel trout squid starfish prawn shrimp whale lobster octopus turtle jellyfish salmon oyster sardine',
  lurker:
    'cat dog pup hen rat bug frog kitten mouse rabbit spider snail duck goat lamb owl bird robin moth beetle toad hamster fox hedgehog squirrel puppy turtle butterfly crab fly lizard parrot chick goose newt mole',
  plenty:
    'gulls hens pigs ducks crabs bugs cats dogs bees birds ponies puppies butterflies foxes trees flags kites bikes tents daisies lilies berries cherries bunnies frogs rabbits ants moths snails swans sheep goats lambs geese robins owls clouds roses buses benches cats shells rocks logs bells carts flies chicks toads crows sparrows finches ladybirds',
  weather: 'hot sunny dry fine warm mild bright lovely perfect wonderful grand good',
};

/** Ends of sentences and lists, as they are written. */
export const storyPhrases: Readonly<Record<string, readonly string[]>> = {
  meals: [
    'ham and eggs',
    'buns and jam',
    'bread and jam',
    'fish and chips|chips',
    'lunch',
    'tea and cake',
    'milk and a bun',
    'soup',
    'hot soup',
    'toast and jam',
    'toast',
    'a snack',
    'a picnic',
    'figs and nuts',
    'plums and figs',
    'a bun and jam',
    'jam and a bun',
    'ham and a bun',
    'a big bun',
    'ham in a bun',
    'cake',
    'pie and peas',
    'rice and beans',
    'ice cream',
    'a cup of tea',
    'a jug of milk',
    'cheese and bread',
    'popcorn',
    'noodles',
    'pancakes',
    'porridge',
    'sausages',
    'sandwiches',
    'a slice of cake',
    'grapes and cheese',
    'cold lemonade',
    'fresh bread',
    'roast carrots',
    'chocolate cake',
  ],
  playing: [
    'hop and skip',
    'run and jump',
    'sit and chat',
    'dig in the mud',
    'play tag',
    'sing and skip',
    'sing a song',
    'tell jokes',
    'play chess',
    'play football',
    'fly a kite',
    'play cricket|baseball',
    'race and jump',
    'paint',
    'dance',
    'draw and paint',
    'climb',
    'toss a ball',
    'kick a ball',
    'hum a tune',
    'play marbles',
    'count clouds',
    'juggle',
    'explore',
    'whistle',
    'look for bugs',
    'spot birds',
    'read',
    'catch a ball',
    'throw a ball',
  ],
};

/** One place for a story, and the things found there. */
export interface Setting {
  readonly id: string;
  /** `dock on`: a place, and how one is at it; `sea by to` with how one goes there, where that is not `to`. */
  readonly places: string;
  /** The places that are by water. */
  readonly water: string;
  /** As `storyClasses`, for this setting. */
  readonly classes: Readonly<Record<string, string>>;
  /** What jobs are done with or on. */
  readonly worked: string;
}

export const settings: readonly Setting[] = [
  {
    id: 'sea',
    places:
      'dock on ; beach on ; quay on ; pier on ; jetty on ; harbour at ; shore on ; bay at ; lighthouse at ; wharf on',
    water: 'dock beach quay pier jetty harbour shore bay wharf',
    classes: {
      keeper:
        'box tin tub net bin boat basket crate bucket sack hut barrel shed chest trunk raft tent cave tank hatch barge backpack lunchbox case',
      den: 'hut shed boat tub box net cave ship tent cabin barrel van crate truck ferry lighthouse porch barge',
      shelter: 'hut shed tent cave van cabin boat café shop lighthouse bus ferry truck',
      sight:
        'skunk oyster sailor captain turtle anchor bird girl boy swordfish albatross ship crab gull dog cat boat rat van truck tug seal fish ferry whale dolphin raft sail flag puffin shell cliff yacht dinghy barge jellyfish starfish rainbow tern cloud crane heron penguin submarine lobster shark cave island lighthouse statue canoe kayak',
      seats: 'rocks sand steps dock deck log bench mat rug step rock wall pier box stone',
    },
    worked:
      'net boat ship raft deck sail bell lamp shed hut tin tub bag box flag rope cup pot pan mug oar dock latch lock bucket bench boots steps fish crab lighthouse cabin anchor windows ferry chest nets spade paint',
  },
  {
    id: 'farm',
    places:
      'farm on ; barn in ; shed in ; field in ; yard in ; meadow in ; orchard in ; mill at ; stable in ; garden in',
    water: '',
    classes: {
      keeper:
        'box tin tub bin sack pen cart basket bucket barn shed crate hut trough hay barrel hedge nest pot tank ditch hutch kennel churn stable trunk chest backpack',
      den: 'pen hut shed barn bush tub cart hedge box hay van truck stable sack crate bin ditch porch kennel cellar',
      shelter: 'hut shed barn van pen truck tent mill cart stable tractor',
      sight:
        'bull ox fly bird mare boar lizard monkey kid mink girl boy farmer vet bear nurse hen pig cow lamb goat sheep horse donkey duck goose pony calf chick ram dog cat fox rat rabbit deer owl snail bug robin crow hare foal badger tractor moth worm hedgehog butterfly turkey bee squirrel mouse swallow peacock cockerel nest',
      seats: 'log grass hay mat step rug wall bench gate rock sack straw stump box',
    },
    worked:
      'hen pig cow lamb goat sheep horse duck pony shed barn pen gate fence cart truck van tractor hut lock latch tub sack box logs nuts plums apples eggs hay hedge plum seed bean rose tree bush bulb pit yard boots spade bin bucket figs carrots lamp',
  },
  {
    id: 'town',
    places:
      'park in ; shop in ; market at ; station at ; library in ; playground in ; school at ; museum in ; castle at ; club at ; hall in ; zoo at ; café in ; bakery in ; theatre in ; gym in',
    water: '',
    classes: {
      keeper:
        'box tin bin basket bush cart hut tub crate case tent trunk drawer cupboard van bucket trolley suitcase package purse pouch locker handbag backpack lunchbox chest sandpit',
      den: 'bush hut shed box tub van tent bin hedge cupboard cart bus cabin tunnel porch tower garage',
      shelter: 'hut tent van bus shop hall tram café station cab library taxi tunnel museum castle',
      sight:
        'bird girl boy nurse judge mayor doctor clerk sailor guard scientist guide tailor mechanic orchestra coach monkey bear singer painter postman pianist tourist musician magician queen king dog cat van bus truck cab tram bike band flag fox rat robin pup bug clown parade tent drum duck statue train clock pram taxi juggler moth cyclist chef queen king vet knight drummer dancer balloon rainbow peacock elephant lion parrot penguin sculpture fountain squirrel coach pigeon',
      seats: 'bench grass step mat log rug wall steps rock chair box swing',
    },
    worked:
      'cup pan pot mug dish plate bowl jug desk bench lamp shelf window chair table clock fan bin box bag hat van bus bike cart book map card list poster sign flag tent shop steps drum rug lock windows bell bun cake pie bread gate mat jam',
  },
  {
    id: 'camp',
    places:
      'hut in ; hill on ; pond at ; lake at ; wood in ; camp at ; river at ; path on ; forest in ; island on ; stream by ; cabin at ; woods in ; trail on',
    water: 'pond lake river stream',
    classes: {
      keeper:
        'box tin tent bush log hut den sack tub pot bin net cabin basket bucket boat nest backpack tree cave trunk ditch pouch trench case lunchbox chest kettle',
      den: 'bush hut tent den log shed cave cabin tub hedge van boat box tree ditch trench tower',
      shelter: 'hut tent den cabin cave shed van boat truck',
      sight:
        'fly bear skunk mink fern boulder lizard bird reindeer monkey chipmunk girl boy fox rabbit deer bug frog duck owl fish swan robin moth squirrel hare snail otter badger toad newt hen rat ant nest kite cliff raft boat rainbow eagle trout beetle butterfly hedgehog mouse tadpole goose heron stag cloud dragonfly canoe woodpecker bat crow wren jay swallow',
      seats: 'log grass rock moss mat rug step stump bank bench sand stone hill box',
    },
    worked:
      'pot pan tin mug cup tent bag rope net fish eggs logs wood hut den raft boat kettle lamp jug tub box rug mat pit hole ham fire soup bed beans oar lantern flag bucket blanket map wheel lid spoon',
  },
  {
    id: 'home',
    places:
      'hut in ; kitchen in ; house in ; cottage in ; den in ; garden in ; yard in ; cabin in ; workshop in',
    water: '',
    classes: {
      keeper:
        'box tin tub bin bed pot sack chest basket drawer cupboard sink jug crate bucket suitcase wardrobe oven purse tank trunk fridge hutch pouch kettle toybox bathtub handbag case',
      den: 'shed hut bed box tub tent bush bin chest cupboard den hedge wardrobe porch cellar garage bathtub',
      shelter: 'hut shed den tent porch house kitchen van cabin cottage',
      sight:
        'fly bird monkey lizard girl boy parrot cat dog pup kitten rabbit hamster bug hen rat moth fox duck mouse frog snail robin hedgehog bee ant spider owl ladybird butterfly toad wren worm',
      seats: 'bed mat rug step bench grass box chair sofa steps log cushion stool carpet',
    },
    worked:
      'cup pan pot mug dish plate bowl jug desk bench lamp shelf window chair table clock fan bin box bag hat tap sink bed rug mat sheet shirt vest sock net bun cake pie bread jam eggs ham soup beans nuts plums figs carrots bulb rose plum bush bean tree hen dog cat rabbit door gate lock drum book tin tub lid floor steps lunch dinner towel blanket rice stew mirror cushion cupboard kettle',
  },
];

/** Verbs of the sentences that are jobs, whichever of their frames fit the place. */
export const jobVerbs: ReadonlySet<string> = new Set(
  'fix mend repair paint repaint clean wash scrub rinse dust polish mop sweep feed brush milk water chop cut cook bake mix stir peel pack unpack fill refill fold iron sort count load unload lock shut plant dig stack mash fry grill check light knit sew build make hang wrap collect gather measure weigh decorate pick lift'.split(
    ' ',
  ),
);
