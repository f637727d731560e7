import { peopleVerbs } from './people-verbs.ts';

/** The verbs by the class of their subject, in the format of `peopleVerbs`. */
export const verbFrames: Readonly<Record<string, string>> = {
  people: peopleVerbs,
  runner: `
    run runs ran running | to {the walkGoal}^ ; past {the pass}^ ; up {the hill}^ ; in {the outdoor}^ ; along {the path}^
    trot trots trotted trotting | to {the walkGoal} ; past {the pass} ; along {the path} ; up {the hill}
    rush rushes rushed rushing | to {the walkGoal} ; past {the pass} ; up {the hill}
    dash dashes dashed dashing | to {the walkGoal} ; past {the pass} ; across {the grassPlace}
    jump jumps jumped jumping | over {the over} ; in {the playPlace}
    stand stands stood standing | by {the walkGoal} ; in {the farmPlace} ; on {the hill}
    stop stops stopped stopping | at {the walkGoal} ; by {the pass}
    walk walks walked walking | to {the walkGoal}^ ; past {the pass}^ ; along {the path}
    play plays played playing | in {the playPlace}~
    wait waits waited waiting | at {the gate} ; for {person}
    scamper scampers scampered scampering | to {the walkGoal} ; up {the hill}
    gallop gallops galloped galloping | up {the hill} ; across {the field}
    wander wanders wandered wandering | along {the path} ; past {the pass}
    follow follows followed following | {person} to {the walkGoal}
    sniff sniffs sniffed sniffing | {the grass} ; {the gate}
    look looks looked looking | at {person} ; at {the viewed}`,
  pet: `
    sit sits sat sitting | on {the seat} ; on my lap ; in {the sleepOutdoor} ; by {the walkGoal} ; with {person}
    nap naps napped napping | on {the soft} ; in {the sleepOutdoor} ; in {the basket} ; on my bed
    sleep sleeps slept sleeping | on {the soft} ; in {the sleepOutdoor} ; in {the basket} ; on my bed
    rest rests rested resting | on {the soft} ; in {the sleepOutdoor} ; on my lap
    hop hops hopped hopping | on {the soft} ; on my bed ; off {the seat}
    jump jumps jumped jumping | on {the seat} ; into {the petBox} ; off {the seat}
    get gets got getting | on {the seat} ; in {the petBox} ; in {the mud} ; wet in {the rain}
    run runs ran running | to {person} ; to my bed
    curl curls curled curling | up on {the soft} ; up in {the basket}
    snuggle snuggles snuggled snuggling | up on {the soft} ; up with {person}
    follow follows followed following | {person} to {the goal}
    love loves loved - | {person} ; to play in {the playPlace}
    like likes liked - | {person} ; to play in {the playPlace} ; to nap on {the soft}
    roll rolls rolled rolling | on {the soft} ; in {the playPlace}
    belong belongs belonged - | to {person}`,
  small: `
    hide hides hid hiding | under {the hideUnder} ; in {the hideIn} ; behind {the hideBehind}
    sit sits sat sitting | under {the hideUnder}
    creep creeps crept creeping | under {the hideUnder} ; into {the hideIn} ; past {the pass}
    peep peeps peeped peeping | out from {the hideIn}`,
  tiny: `
    sit sits sat sitting | on {the leaf} ; on {the crawlPlace} ; under {the hideUnder}
    hide hides hid hiding | under {the hideUnder} ; in {the hideIn}
    rest rests rested resting | on {the leaf} ; on {the rock}`,
  crawler: `
    crawl crawls crawled crawling | up {the crawlPlace} ; along {the crawlPlace} ; under {the hideUnder}
    creep creeps crept creeping | up {the crawlPlace} ; along {the crawlPlace} ; under {the hideUnder}
    slip slips slipped slipping | under {the hideUnder}
    move moves moved moving | along {the crawlPlace}`,
  hopper: `
    hop hops hopped hopping | on {the seat} ; to {the walkGoal} ; in {the outdoor} ; along {the path} ; past {the pass}
    jump jumps jumped jumping | over {the hopOver} ; on {the leaf} ; on {the rock}`,
  pondSwimmer: `
    swim swims swam swimming | in {the pond}^ ; in {the pondWater}^ ; across {the pondWater}
    dive dives dived diving | into {the pondWater}
    splash splashes splashed splashing | in {the pondWater}
    glide glides glided gliding | across {the pondWater}
    play plays played playing | in {the pondWater}`,
  seaSwimmer: `
    swim swims swam swimming | in {the sailWater}^ ; to {the boatStop}^ ; under {the sailed} ; past {the sailed}^ ; past {the boatStop}
    dive dives dived diving | into {the sailWater} ; under {the sailed}
    splash splashes splashed splashing | in {the sailWater}
    glide glides glided gliding | past {the boatStop} ; past {the sailed}
    play plays played playing | in {the sailWater}`,
  poolAnimal: `
    hide hides hid hiding | in {the seaIn} ; under {the seaHide}
    rest rests rested resting | under {the seaHide} ; on {the rock}`,
  crab: `
    run runs ran running | to {the sea} ; along {the beach} ; along {the dock} ; under {the seaHide}
    dig digs dug digging | in {the sand} ; a pit in {the sand}
    sit sits sat sitting | on {the rock} ; in {the seaIn} ; under {the seaHide}
    scuttle scuttles scuttled scuttling | along {the beach} ; under {the seaHide}
    snap snaps snapped snapping | at {the kelp}`,
  flyer: `
    fly flies flew flying | over {the flyOver}^ ; past {the boatStop}^ ; up to {the cliffTop} ; past {the pass}
    land lands landed landing | on {the cliffTop} ; on {the beach} ; by {the walkGoal}
    flap flaps flapped flapping | past {the pass} ; up to {the cliffTop} ; over {the flyOver}
    rest rests rested resting | on {the cliffTop}
    glide glides glided gliding | over {the flyOver} ; past {the boatStop}
    circle circles circled circling | over {the flyOver}`,
  perchBird: `
    sit sits sat sitting | on {the cliffTop} ; on {the sand} ; in {the nest}
    perch perches perched perching | on {the cliffTop}
    hop hops hopped hopping | on {the cliffTop} ; along {the path} ; up to {the cliffTop}
    peck pecks pecked pecking | at {the birdFood}
    build builds built building | a nest in {the nestPlace}`,
  songBird: `
    sing sings sang singing | in {the tree} ; on {the cliffTop}`,
  dog: `
    swim swims swam swimming | in {the openWater} ; to {the dock}
    dig digs dug digging | in {the mud} ; a pit in {the sand} ; {a pit} ; {a hole}
    bark barks barked barking | at {the barkedAt} ; by {the gate}
    wag wags wagged wagging | its tail
    fetch fetches fetched fetching | {the fetched} for {person}
    drop drops dropped dropping | {the fetched} on {the soft}
    sniff sniffs sniffed sniffing | {the bag} ; {the rug} ; {the walkGoal}
    lick licks licked licking | {person} ; its dish ; {the pan}
    chew chews chewed chewing | {the chewed}
    chase chases chased chasing | {the ball} ; its tail
    tug tugs tugged tugging | at {the rope} ; at {the rug}
    get gets got getting | {the fetched} ; {the ball} for {person}
    want wants wanted - | {a walk} ; to dig in {the mud}
    splash splashes splashed splashing | in {the openWater} ; in {the mud}`,
  cat: `
    lick licks licked licking | its milk ; its dish
    lap laps lapped lapping | up its milk
    purr purrs purred purring | on {the soft} ; on my lap
    tap taps tapped tapping | {the string} ; {the ball}
    stretch stretches stretched stretching | on {the soft}
    get gets got getting | up on {the shelf} ; a bit of fish`,
  hen: `
    sit sits sat sitting | on {an egg} ; on {=numbers} {=eggs} ; in {the pen}
    peck pecks pecked pecking | at {the birdFood} ; in {the yard}
    cluck clucks clucked clucking | in {the hut} ; at {person}
    lay lays laid laying | {an egg} ; {=numbers} {=eggs}
    flap flaps flapped flapping | in {the pen} ; in {the hut}`,
  duck: `
    quack quacks quacked quacking | at {person} ; on {the pond}
    bob bobs bobbed bobbing | on {the openWater} ; in {the tub}
    waddle waddles waddled waddling | to {the pond} ; along {the path}`,
  farmStand: `
    stand stands stood standing | in {the farmPlace} ; by {the gate} ; in {the mud}
    rest rests rested resting | in {the farmPlace}`,
  pig: `
    sit sits sat sitting | in {the mud}
    dig digs dug digging | in {the mud}
    nap naps napped napping | in {the mud} ; in {the pen}
    roll rolls rolled rolling | in {the mud}
    get gets got getting | in {the mud}`,
  grazer: `
    eat eats ate eating | {the =grazed} in {the field} ; {the =grazed}
    munch munches munched munching | {the =grazed}
    chew chews chewed chewing | {the =grazed}
    nibble nibbles nibbled nibbling | {the =grazed}`,
  bus: `
    stop stops stopped stopping | at {the busStop}~ ; by {the busStop} ; on {the hill}
    go goes went going | to {the busStop}~ ; up {the roadPlace} ; past {the busStop}~
    turn turns turned turning | at {the busStop}
    wait waits waited waiting | at {the busStop}~
    speed speeds sped speeding | past {the busStop}
    rattle rattles rattled rattling | up {the roadPlace} ; past {the busStop}`,
  ship: `
    sail sails sailed sailing | to {the boatStop}~ ; past {the boatStop}~ ; across {the sailWater}
    dock docks docked docking | at ten ; at six ; in the mist ; in {the harbour}~
    rock rocks rocked rocking | in {the wind} ; on {the sailWater}
    bob bobs bobbed bobbing | on {the sailWater}
    drift drifts drifted drifting | past {the boatStop} ; across {the sailWater}
    go goes went going | to {the boatStop}~ ; past {the boatStop}
    stop stops stopped stopping | at {the boatStop}~
    float floats floated floating | past {the boatStop}
    cross crosses crossed crossing | {the sailWater}~`,
  flag: `
    flap flaps flapped flapping | in the wind ; on {the mast} ; on {the ship}
    hang hangs hung hanging | on {the mast} ; by {the door}
    flutter flutters fluttered fluttering | in the wind`,
  bell: `
    ring rings rang ringing | at ten ; at noon ; at {the busStop}~ ; for lunch`,
  sun: `
    - sets set setting | at six ; at last
    - shines shone shining | on {the flyOver} ; on {the sailed}
    - rises rose rising | over {the flyOver}`,
  lamp: `
    shine shines shone shining | on {the path} ; on {the sailWater}
    glow glows glowed glowing | in {the indoor}`,
};

/**
 * The subjects of the verbs, and the words for each subject. A subject that is not listed here has the words of its own
 * class.
 */
export const subjectClasses: Readonly<Record<string, string>> = {
  crab: 'crab',
  dog: 'dog pup puppy',
  cat: 'cat kitten',
  hen: 'hen',
  duck: 'duck duckling',
  farmStand: 'hen pig cow lamb goat sheep horse donkey duck goose pony calf ram ox',
  pig: 'pig',
  grazer: 'cow lamb goat sheep horse donkey pony calf rabbit hare deer',
  bus: 'bus tram train truck van cab coach| lorry taxi tractor car minibus',
  ship: 'ship boat raft tug ferry yacht barge dinghy steamship',
  flag: 'flag banner',
  bell: 'bell',
  sun: 'sun',
  lamp: 'lamp lantern torch',
};
