/** Things, food, weather, by what can be done with them; as `wordClasses`. */
export const thingClasses: Readonly<Record<string, string>> = {
  // Things
  hold: 'cup pen hat map tin jug box bag book bat net mop bell drum pan lid mug flag lamp fan brush rug ring rod rope shell spoon plate dish bowl key clock card basket bucket spade kite torch badge bottle pencil ruler ticket balloon whistle candle cushion blanket pillow towel photo trumpet violin puzzle present parcel umbrella lantern telescope compass kit disc top jet sponge teapot banner flute fiddle jar notebook robot magnet ribbon stick cap vest scarf coat belt jacket helmet sack jigsaw quilt tablet poster microscope stamp medal teddy puppet racket harp horn kettle calendar',
  own: 'cup pen hat map bag book bat net drum mug flag lamp rug ring rod brush kite torch badge pencil balloon whistle blanket pillow photo trumpet violin puzzle umbrella telescope bike cap vest scarf coat belt jacket helmet kit top jet robot doll notebook bed desk boat sled scooter skateboard fiddle flute teddy puppet racket dog cat pup kitten rabbit pony hamster jumper raincoat guitar piano microscope canoe',
  gift: 'cup pen hat map book bat net drum mug flag lamp ring kite torch badge pencil balloon whistle photo trumpet violin puzzle present telescope cap scarf belt shell plum bun fig card doll top jet robot apple peach cake pie muffin ticket notebook fish magnet ribbon jigsaw medal teddy puppet rose biscuit',
  tinyThing:
    'pen pin cap cup map ring shell key coin badge ticket spoon pencil card letter lid mug plum nut fig egg sock photo whistle button brush comb peg net string bun magnet candle marble stamp ribbon sponge brooch note chalk ball bell top hat',
  container: 'bag box tin bin chest basket sack crate tub bucket trunk case suitcase cupboard',
  foodBox: 'bag box tin basket sack bowl tub bucket crate dish jar tray',
  bigContainer: 'bag box chest basket sack crate tub bucket trunk case suitcase cupboard',
  surface:
    'desk bed shelf mat rug bench table chair step deck dock log rock tray sofa stool sand chest box wall cupboard worktop|counter floor',
  placed:
    'cup pen hat map tin jug box bag book net bell drum pan lid mug lamp brush ring spoon plate dish bowl key card basket torch badge bottle pencil ruler ticket whistle candle photo trumpet violin puzzle present parcel umbrella lantern telescope compass cap kit vest scarf top jet teapot flute jar notebook magnet coat jacket letter kettle vase jigsaw stamp',
  fillable: 'jug cup mug tub bath pot pan bottle bucket bowl tin glass kettle sink pool',
  clothing:
    'hat cap wig vest belt scarf coat jacket shirt helmet apron cloak jumper mask raincoat uniform sunhat hood sweater cardigan',
  washed:
    'cup pan pot mug dog van cap vest hat sock dish plate bowl spoon jug lid bus cab truck sheet shirt rug deck bike car glass scarf tub jumper coat apron boots hands net windows spade sink',
  cleaned:
    'cup pan pot mug van deck hut shed tank desk bench lamp shelf bath window bike boat car tent kitchen chair table glass cage brush bin lighthouse drum kennel steps jug sink plates aquarium',
  fixed:
    'fan clock lamp net tap bus van bike boat cart shed truck fence gate drum kite pump bed tent desk pipe sail bench lock hut dock wheel rope chair light swing radio plug ladder engine bell machine bridge telescope sign ship toy latch scooter roof oar shelf',
  painted:
    'shed hut ship box gate fence boat flag door bench wall pot van deck house map mug sign egg chest lighthouse picture ceiling plate window kite bridge stool bus rock pebble cart mask',
  made: 'mat rug kite flag hat mask den pot cup lamp net box map boat bed tent raft card puppet cake crown bracelet necklace wig bag drum bench scarf sled poster cushion toy lantern badge robot bridge snowman swing sandcastle jug quilt model basket stool banner chair',
  built:
    'hut shed raft den barn ship bench shelf cabin bridge house boat wall castle fence kennel sandcastle dam snowman tower cottage porch',
  drawn:
    'map ship dog cat crab fish boat flag fox hen pig bus kite mask bug sun hat shell castle lighthouse picture bridge bird whale train snail pony swan horse robot planet elephant dolphin owl dragon giraffe flower rose triangle circle square',
  readable:
    'book map letter sign card note story poem comic menu list poster label page message notice text recipe newspaper ticket diary dictionary',
  written:
    'list letter card story poem note song sign message label book play text diary postcard recipe name',
  played: 'drum trumpet violin flute piano fiddle guitar whistle harp horn banjo saxophone',
  thrown: 'ball rope net stick hat cap disc bag cushion',
  instrumentHit: 'drum gong',
  dug: 'pit hole garden tunnel ditch well trench pond path',
  lit: 'lamp candle lantern torch stove',
  opened:
    'box tin bag lid gate door chest tent shop hatch bottle basket window jar parcel book map letter trunk present suitcase umbrella cupboard envelope shed',
  shut: 'box tin bag lid gate door chest tent shop hatch window basket jar book trunk cupboard shed suitcase',
  locked: 'box gate door chest shed shop hut trunk van cabin bike house hatch cupboard barn',
  pulled: 'cart sled rope net box sack tub boat raft log crate bag trunk wagon basket',
  lifted:
    'box bag lid log net sack tub rock drum pot jug chest crate basket bucket ladder parcel stone bench flag cup bin trunk anchor lamp',
  hung: 'hat cap bag net coat mug scarf towel apron jacket flag lamp map photo picture rope shirt pan banner lantern curtain uniform calendar bell medal mask',
  hook: 'peg hook wall line hatstand door nail',
  won: 'cup race prize medal badge quiz match game ribbon hat kite trophy contest ticket book',
  wrapped: 'box gift present parcel book mug scarf bun cake fish cup shell puzzle pie sandwich lamp bell',
  climbed:
    'hill mast steps rock log rope ladder tree wall bank cliff mountain stairs fence slope dune stile|',
  pushed:
    'cart bike pram van sled box bin swing truck trolley| boat raft gate door desk button bell barrow wheelbarrow chair',
  planted: 'nut bulb plum tree seed bush rose bean pip pea hedge flower onion pumpkin sunflower acorn',
  knitted: 'hat scarf sock vest jumper blanket rug bag glove mitten cap cardigan sweater bonnet',
  sewn: 'hat vest flag bag mask cushion apron quilt curtain costume sail banner shirt pocket',
  caught: 'bus ball tram train ferry fish crab cod bug cab frog moth kite trout boat coach| eel',
  found:
    'map ring shell pen hat cap bag badge coin key rock net cup box sock bell pin fossil ticket book glove pearl crab egg nest mug tin rope scarf button letter torch compass feather boot treasure photo pencil magnet stamp whistle pebble',
  shoreFind:
    'shell crab rock ring net hat cap rope bag kelp log coin pebble feather fossil starfish stone bottle driftwood treasure boot flag map',
  sold: 'pen hat map mug fan bag book kite lamp cup rug ring net jug box pot fish bun cake plum pie drum bike boat umbrella ticket clock cap vest scarf coat bell brush tub van car peach rose apple tent violin toy chair basket candle teapot shell crab cod trout lobster',
  shopPlace: 'shop market dock quay fair harbour bakery stall museum station pier supermarket',
  waited: 'bus tram train ferry boat ship cab van taxi coach| bell sun vet chef captain band tide parade',
  viewed:
    'map ship sun kite crab gull boat flag sea band moth robin swan film|movie clock moon frog hen train parade rainbow picture duck fish stars seal lighthouse photo statue clouds butterfly whale dolphin snow puffin',
  sight:
    'ship crab gull dog cat hen fox frog boat rat van truck bus pig duck tent hut flag bell map kite robin swan seal lighthouse moth fish ferry train lamb pony rainbow whale dolphin castle bug owl tram rabbit deer nest shell cave bridge snail horse goat tug island squirrel puffin rocket cloud moon light',
  rideable:
    'bus tram bike pony horse train donkey ferry scooter sled tractor cart truck boat canoe skateboard carriage',
  driven: 'van bus cab truck tram car lorry tractor train coach| taxi minibus',
  sailed: 'ship boat raft yacht dinghy tug ferry submarine',
  steered: 'ship boat raft tug ferry canoe barge punt sled kayak van',
  tied: 'boat raft rope flag sack net knot ribbon lace bag balloon parcel canoe pony scarf',
  sent: 'letter card note map box photo parcel present message book postcard text gift poem badge',
  played_games: 'tag catch football chess cards cricket|baseball tennis games netball rounders marbles snap',
  sung: 'song hymn tune rhyme carol verse shanty anthem lullaby chorus',
  enjoyed:
    'song film|movie show band trip picnic party game match play swim concert story fair parade dance festival competition lesson holiday adventure celebration music',
  trip: 'trip swim picnic walk run ride jog quiz party lesson game holiday sail',
  collected:
    'shells rocks stamps badges cards eggs nuts pins sticks cups pens hats maps bells stones pebbles coins photos feathers leaves fossils figs plums apples tickets magnets postcards ribbons acorns',
  counted:
    'shells rocks cups pens hats ships hens pigs ducks boats crabs bugs eggs nuts sheep stars gulls plums pins bells pegs bags sacks socks lambs steps birds stones pebbles coins seats figs boxes mugs tickets tents',

  // Food
  food: 'bun fig plum pear apple peach cake pie roll muffin biscuit sandwich banana carrot pancake egg tart scone waffle cookie cherry strawberry melon pudding orange tomato sausage cupcake nut radish flapjack crumpet mango',
  fruit: 'fig plum pear apple peach banana melon cherry berry strawberry orange mango apricot blackberry',
  foods:
    'buns figs plums nuts eggs chips pears apples peaches cakes pies carrots peas beans cherries grapes berries strawberries muffins pancakes bananas biscuits sausages tarts oranges noodles scones sandwiches crisps rolls radishes potatoes tomatoes',
  meal: 'ham jam fish bread toast soup rice cheese porridge stew salad pudding chips crab cod pasta jelly trout |corn beans lunch dinner supper breakfast melon cake pie buns eggs plums figs nuts sausages pancakes cereal yogurt snacks peas noodles custard popcorn',
  drink: 'milk tea water juice cocoa lemonade squash| pop coffee',
  cooked:
    'fish ham eggs cod rice soup pasta lunch dinner supper crab beans sausages |corn stew peas brunch pancakes carrots breakfast noodles trout chips| porridge cabbage',
  baked: 'bun cake pie tart loaf roll muffin pudding fish apple biscuit scone gingerbread',
  cutFood:
    'ham bun cake melon bread rope fish grass pie tart hedge ribbon cheese plum string fig peach paper cord hay lemon card pastry',
  chopped:
    'logs nuts carrots ham eggs figs plums apples kelp onions wood fish cod beans leeks cabbage tomatoes chives potatoes mushrooms vegetables',
  mixed: 'paint mud eggs batter soup cake stew dough sauce salad punch custard cement',
  smelt:
    'bun cake fish soup jam ham bread stew pie rose tea toast ham supper lunch grass dinner cheese pudding flower popcorn',

  // Weather and time
  weatherAdjective:
    'hot wet grand good bad fresh cold sunny windy rainy dry fine warm mild stormy snowy misty foggy cloudy bright lovely chilly frosty long busy quiet perfect fantastic wonderful glorious',
  greatAdjective:
    'fun grand good lovely fine great brilliant| exciting wonderful fantastic perfect splendid marvellous|marvelous glorious fabulous',
  happyAdjective:
    'glad hot wet ill busy happy kind strong quick fit proud quiet merry shy tired lucky ready cold early late hungry careful polite thirsty helpful cheerful thoughtful excited delighted famous patient sensible nervous generous curious cautious',
  joy: 'glad happy proud lucky delighted thrilled ready excited pleased',
  festival: 'fair market party picnic match parade concert festival camp show wedding carnival',

  // The rest, by the verbs they stand with
  watered: 'plum tree bulb rose bush bean plant garden flower hedge pot grass',
  shoreFinds: 'shells rocks clams crabs bugs coins pebbles fossils crabs',
  drinkPot: 'cup mug jug glass bottle flask',
  dustable: 'desk lamp shelf bell clock table drum bench trumpet piano chest picture mirror trophy medal',
  storyLike: 'joke story rhyme secret fact riddle',
  paper: 'pad card slate paper sand path wall page',
  printed: 'map list card poster photo ticket label sign',
  word: 'word name',
  bedSoil: 'pot bed garden tub mud field box yard',
  boatOrTrain: 'ship bus train ferry tram boat truck',
  workPlace: 'shop shed garden kitchen library barn market café bakery classroom',
  thankFoods: 'lunch dinner supper tea help',
  crafts:
    'hats pots mugs rugs cups lamps bags kites baskets scarves candles cards toys cushions bracelets vests nets',
  viewPlace:
    'hill ship deck dock bridge cliff beach quay pier boat shore lighthouse window bench castle shed',
  folded: 'vest napkin map shirt sheet blanket scarf towel rug letter flag coat jumper tent bag card',
  peeled: 'fig plum pear egg apple peach carrot banana orange mango potato',
  toasted: 'bun muffin bread scone crumpet sandwich bap',
  dancePlace: 'hall rain sun street kitchen barn mud snow park',
  explored: 'cave castle island ship town forest beach cliffs wood museum path coast',
  decorated: 'cake hall tent tree bun boat hat card bike room classroom',
  rowed: 'boat raft dinghy canoe',
  loaded: 'van truck ship cart boat bus lorry tram raft ferry train tractor wagon barge sled',
  checked:
    'map net clock list tent rope bag bus van oven tank lock gate sum| lamp ticket tyres compass spelling weather bill',
  mashed: 'plum fig egg banana potato carrot peas beans',
  fried: 'eggs fish ham cod chips| onions rice sausages mushrooms noodles',
  crossed: 'bridge road path river street track deck field stream yard sand dock tracks',
  visited: 'vet farm castle lighthouse museum library island market shop chef bakery zoo aquarium dentist',
  petBox: 'box bag bed basket tub cab sink bath kennel crate',
  crawlPlace: 'rock log stem wall path leaf plant step deck branch mat desk tree rug twig',
  hopOver: 'log rock twig stick leaf puddle stone branch rope',
  seaIn: 'kelp sand shell net tin cave mud seaweed rocks weeds',
  seaHide: 'kelp sand rock shell net rocks stone tin seaweed cave mud weeds reef coral',
  nestPlace: 'tree hut shed bush barn roof hedge wall porch cliff box lighthouse',
  birdFood: 'nut bun crumbs plum chips grain corn seed bread log net apple',
  barkedAt:
    'cat gull duck bus fox van crab moth ship hen truck train wind seagull waves thunder rabbit kite parade',
  fetched: 'stick ball rope net sock glove bone hat slipper twig',
  chewed: 'stick bone rope rug slipper sock mat log twig shoe',
  grazed: 'grass hay straw corn clover carrots weeds leaves',
  eggs: 'eggs',
  festivalPlace: 'dock park shop hall beach school farm quay harbour pier town lighthouse village',
  toy: 'kite ball drum top robot jet doll bat net puppet balloon',
  fair: 'fair market party picnic match parade concert festival show',
  colour:
    'red big wet black tan best blue green new old white yellow pink clean brown grey orange purple lovely beautiful muddy dusty',
  petFeels:
    'happy glad hot big fast soft sleepy hungry small quiet tired muddy gentle playful clever tiny noisy',
  tasty: 'hot good fresh tasty ready cold delicious nutritious nice yummy warm great',
  indoorFeels: 'hot cold dark warm damp quiet noisy busy chilly wet',
  weatherFeels: 'hot wet cold dark warm damp windy quiet sunny misty chilly noisy busy bright sandy icy',
  thankFood: 'lunch dinner supper tea bed school brunch breakfast',
  faster: 'tram truck van train ship bike jet plane car cab boat ferry',
};
