/**
 * The verbs of people, one a line: `base third past ing | rest ; rest`.
 * - A slot in the rest names a class of words. `{pet}` takes any article, `{the seat}` and `{a job}` take the article
 * shown, `{one cup}` takes the and no plural, and `{=foods}` takes the words as they are.
 * - `~` ends a rest that a time may follow (`at ten`), and `^` ends a rest that a manner may follow (`with care`).
 * So that every sentence makes sense, a verb goes only with things it can be done to: `dig {a dug}` gives a pit, never
 * a lamp.
 */
export const peopleVerbs = `
    sit sits sat sitting | on {the seat}~ ; in {the restPlace} ; by {the walkGoal}~ ; with {my pet}~
    run runs ran running | to {the goalTo}^ ; up {the hill}^ ; along {the path}^ ; past {the pass}^ ; in {the playPlace}~
    walk walks walked walking | to {the goalTo}^ ; up {the hill}^ ; along {the path}~ ; past {the pass} ; in {the outdoor}~
    go goes went going | to {the goalTo}~ ; up {the hill}~ ; past {the pass}~ ; on {the rideable}~ ; into {the indoor}~
    jog jogs jogged jogging | to {the goalTo}^ ; up {the hill}^ ; along {the path}~ ; past {the pass}^
    rush rushes rushed rushing | to {the goalTo}~ ; up {the hill} ; past {the pass}
    dash dashes dashed dashing | to {the goalTo}~ ; up {the hill} ; past {the pass} ; along {the path}
    skip skips skipped skipping | to {the goalTo}~ ; along {the path}~ ; in {the playPlace}~ ; past {the pass}
    hop hops hopped hopping | on {the soft}~ ; to {the walkGoal} ; over {the over} ; along {the path}
    jump jumps jumped jumping | over {the over} ; on {the soft} ; in {the playPlace}~
    race races raced racing | to {the goalTo}~ ; up {the hill} ; along {the path}
    hurry hurries hurried hurrying | to {the goalTo}~ ; past {the pass} ; along {the path}
    stroll strolls strolled strolling | to {the goal}~ ; along {the path}~ ; past {the pass}
    march marches marched marching | to {the goalTo}~ ; up {the hill} ; past {the pass}
    wander wanders wandered wandering | along {the path}~ ; past {the pass}~ ; in {the outdoor}~
    swim swims swam swimming | in {the openWater}~ ; to {the boatStop}^ ; past {the boatStop}
    dive dives dived diving | into {the openWater}^
    paddle paddles paddled paddling | in {the openWater}~ ; to {the boatStop}
    camp camps camped camping | in {the outdoor} ; on {the hill}~ ; by {the openWater}~
    rest rests rested resting | on {the seat}~ ; in {the restPlace}~ ; by {the walkGoal}~
    nap naps napped napping | on {the soft}~ ; in {the restPlace}~
    sleep sleeps slept sleeping | on {the soft} ; in {the restPlace}
    stand stands stood standing | on {the seat} ; by {the walkGoal}~ ; in {the outdoor}~
    stop stops stopped stopping | at {the goal}~ ; by {the pass}
    stay stays stayed staying | at {the goal}~ ; in {the indoor}~
    hide hides hid hiding | behind {the hideBehind} ; in {the indoor} ; under {the bed}
    play plays played playing | {the played}~ ; in {the playPlace}~ ; with {the pet}~ ; {=played_games}~
    get gets got getting | {a hold} ; on {the rideable}~ ; {a gift} from {person}
    hold holds held holding | {hold} ; {the hold} for {person}
    pick picks picked picking | {a fruit} ; up {the hold} ; {a gift} for {person}
    drop drops dropped dropping | {the tinyThing} in {the container} ; {the tinyThing} on {the soft}
    carry carries carried carrying | {the hold} to {the goal} ; {the hold} for {person}
    bring brings brought bringing | {a hold} to {the goal} ; {a gift} for {person}~
    take takes took taking | {the hold} to {the goal}~ ; {my pet} to {the goal}~ ; {a hold} from {the surface}
    put puts put putting | {the tinyThing} in {the container} ; {the placed} on {the surface} ; on {my clothing}
    pack packs packed packing | {the container}^ ; {the tinyThing} in {the bigContainer} ; {the clothing} for {a trip}
    unpack unpacks unpacked unpacking | {the bigContainer}^
    repack repacks repacked repacking | {the bigContainer}^
    fill fills filled filling | {the fillable}^ ; {the foodBox} with {=foods} ; {the foodBox} with {=collected} ; {the fillable} with {=water}
    refill refills refilled refilling | {the fillable}^ ; {the foodBox} with {=foods}
    find finds found finding | {found} in {the container} ; {a found} on {the path} ; {the found}~ ; {a shoreFind} in {the sand}
    ring rings rang ringing | {the bell}~ ; {the bell} for {person}
    hit hits hit hitting | {the ball} to {person} ; {the instrumentHit}
    tap taps tapped tapping | {the instrumentHit} ; on {the shut}
    sing sings sang singing | {a sung}^ ; {the sung} to {person} ; to {my pet}
    hum hums hummed humming | {a sung} ; {the sung} to {person}
    dig digs dug digging | {a dug}~ ; in {the mud}~ ; up {=shoreFinds} ; in {the sand}~
    cut cuts cut cutting | {the cutFood}^ ; {the cutFood} for {person}
    chop chops chopped chopping | {=chopped}~ ; {the =chopped}^
    cook cooks cooked cooking | {=cooked}~ ; {the =cooked}^ ; {=cooked} for {person}~
    bake bakes baked baking | {a baked}~ ; {a baked} for {person}
    mix mixes mixed mixing | {the =mixed}^
    stir stirs stirred stirring | {the =mixed}^
    whisk whisks whisked whisking | {the eggs}
    eat eats ate eating | {food}~ ; {=meal}~ ; {the food} in {the indoor} ; {the food} by {the walkGoal} ; {=meal} on {the seat}
    drink drinks drank drinking | {=drink}~ ; {the =drink}~ ; {=drink} from {the drinkPot}
    sip sips sipped sipping | {the =drink}^ ; {=drink} from {the drinkPot}
    share shares shared sharing | {the food} with {person} ; {the =meal} with {person}
    fix fixes fixed fixing | {the fixed}^ ; {the fixed} for {person}
    mend mends mended mending | {the fixed}^ ; {the fixed} for {person}
    repair repairs repaired repairing | {the fixed}^
    paint paints painted painting | {the painted}^ ; {a drawn}^ ; {the painted} for {person}
    repaint repaints repainted repainting | {the painted}^
    clean cleans cleaned cleaning | {the cleaned}^ ; {the cleaned} for {person}
    wash washes washed washing | {the washed}^ ; {the washed} for {person} ; {the washed} in {the tub}
    scrub scrubs scrubbed scrubbing | {the cleaned}^ ; {the washed}^
    rinse rinses rinsed rinsing | {the dish}^
    dust dusts dusted dusting | {the dustable}^
    polish polishes polished polishing | {the dustable}^
    mop mops mopped mopping | {the deck}~ ; up {the =drink} ; {the hut}
    sweep sweeps swept sweeping | {the deck}~ ; {the hut}^ ; {the steps}~
    feed feeds fed feeding | {the pet}~ ; {the farmAnimal}~ ; {the pet} in {the hut}
    pet pets petted petting | {the pet}^ ; {the pony}
    pat pats patted patting | {the pet}^ ; {the pony}^
    stroke strokes stroked stroking | {the pet}^
    hug hugs hugged hugging | {the pet} ; {person}~ ; {my relation}~
    brush brushes brushed brushing | {the furry}^ ; {the mat}
    milk milks milked milking | {the cow}^
    ride rides rode riding | {the rideable} to {the goal} ; {the bike} along {the path} ; {the pony} up {the hill}
    drive drives drove driving | {the driven} to {the busStop} ; {the driven} up {the roadPlace} ; {the driven} past {the pass}
    park parks parked parking | {the driven} by {the busStop}
    steer steers steered steering | {the steered} to {the boatStop} ; {the steered} past {the boatStop}
    sail sails sailed sailing | to {the boatStop}~ ; {the sailed} past {the boatStop} ; across {the sailWater}~
    tie ties tied tying | {the tied}^ ; {the boat} to {the dock}
    untie unties untied untying | {the tied}^
    catch catches caught catching | {the caught}~ ; {a fish} in {the net} ; {the ball} for {person}
    throw throws threw throwing | {the thrown} to {person} ; {a stick} for {the dog}
    toss tosses tossed tossing | {the thrown} to {person} ; {the tinyThing} in {the container} ; {a stick} for {the dog}
    kick kicks kicked kicking | {the ball} to {person} ; {the ball} in {the playPlace}
    pass passes passed passing | {the gift} to {person} ; {the goal}~ ; {the ball} to {person}
    tell tells told telling | {person} {a storyLike} ; {my relation} {a storyLike}
    write writes wrote writing | {a written}^ ; {a sent} to {person} ; {a written} for {person}
    draw draws drew drawing | {a drawn}^ ; {a drawn} on {the paper} ; {a drawn} for {person}
    trace traces traced tracing | {the drawn}^
    print prints printed printing | {a printed}~ ; {a printed} for {person}
    spell spells spelt|spelled spelling | {the word}^
    plant plants planted planting | {a planted}~ ; {a planted} in {the bedSoil} ; {a planted} for {person}
    water waters watered watering | {the watered}^
    pull pulls pulled pulling | {the pulled} up {the hill} ; {the pulled} to {the walkGoal} ; on {my clothing}
    tug tugs tugged tugging | {the rope} ; {the pulled} to {the walkGoal} ; {the pulled} up {the hill}
    drag drags dragged dragging | {the pulled} to {the walkGoal} ; {the pulled} up {the hill}
    push pushes pushed pushing | {the pushed}^ ; {the pushed} to {the walkGoal} ; {the cart} up {the hill}
    roll rolls rolled rolling | {the ball} to {person} ; {the log} to {the walkGoal}
    lift lifts lifted lifting | {the lifted}^ ; {the lifted} for {person} ; up {the pet}
    open opens opened opening | {the opened}^ ; {the opened} for {person}
    shut shuts shut shutting | {the shut}^ ; {the shut} for {person}
    close closes closed closing | {the shut}^
    lock locks locked locking | {the locked}~
    unlock unlocks unlocked unlocking | {the locked}^
    hang hangs hung hanging | {the hung} on {the hook} ; up {the hung}
    wrap wraps wrapped wrapping | {the wrapped}^ ; {the wrapped} for {person}
    unwrap unwraps unwrapped unwrapping | {the wrapped}
    climb climbs climbed climbing | {the climbed}^ ; up {the climbed} ; to {the top}
    wave waves waved waving | to {person}~ ; {the flag}~ ; at {the boatOrTrain}
    wink winks winked winking | at {person}
    grin grins grinned grinning | at {person} ; at {the pet}
    smile smiles smiled smiling | at {person} ; at {the pet}
    nod nods nodded nodding | at {person} ; to {person}
    help helps helped helping | {person}~ ; {person} to {=chore} ; {person} with {the fixed} ; in {the workPlace}~
    ask asks asked asking | {person} for {food} ; {person} for {a hold} ; {person} to {=chore}
    thank thanks thanked thanking | {person} for {the gift} ; {person} for {the trip} ; {person} for {=thankFoods}
    meet meets met meeting | {person} at {the goal} ; {person}~ ; {my relation} on {the path}
    visit visits visited visiting | {person}~ ; {the visited}~
    call calls called calling | {person}~ ; {my pet}
    phone phones phoned phoning | {person}~
    chat chats chatted chatting | with {person}~
    talk talks talked talking | to {person}~ ; with {my relation}~
    speak speaks spoke speaking | to {person}~
    whisper whispers whispered whispering | to {person}
    shout shouts shouted shouting | to {person} ; from {the hill}
    yell yells yelled yelling | to {person} ; from {the hill}
    listen listens listened listening | to {the sung}~ ; to {person} ; to {the band}
    buy buys bought buying | {a sold} at {the shopPlace} ; {=foods} at {the shopPlace} ; {a gift} for {person}
    sell sells sold selling | {=foods} at {the shopPlace} ; {=crafts} at {the shopPlace} ; {the sold} to {person}
    pay pays paid paying | for {the sold} ; for {=foods}
    give gives gave giving | {person} {a gift} ; {the gift} to {person}
    send sends sent sending | {person} {a sent} ; {the sent} to {person}
    post|mail posts|mails posted|mailed posting|mailing | {the sent} to {person}
    hand hands handed handing | {person} {the hold} ; {the hold} to {person}
    lend lends lent lending | {person} {a own} ; {the hold} to {person}
    show shows showed showing | {person} {the own} ; {the gift} to {person}
    wait waits waited waiting | for {the waited}~ ; for {person} at {the goal} ; at {the goal}~
    look looks looked looking | at {the viewed}~ ; for {the tinyThing} ; in {the container}
    watch watches watched watching | {the viewed}~
    gaze gazes gazed gazing | at {the viewed}
    spot spots spotted spotting | {a sight}~ ; {a sight} from {the viewPlace}
    see sees saw - | {a sight}~ ; {a sight} from {the viewPlace} ; {person} at {the goal}
    win wins won winning | {the won}~ ; {a won}~
    build builds built building | {a built}^ ; {a built} by {the walkGoal} ; {a built} for {person}
    make makes made making | {a made}^ ; {a made} for {person} ; {=meal} for {person} ; {the bed}
    knit knits knitted knitting | {a knitted} for {person} ; {a knitted}~
    sew sews sewed sewing | {a sewn}~ ; {a sewn} for {person}
    stitch stitches stitched stitching | {the sewn}^
    iron irons ironed ironing | {the shirt}^
    fold folds folded folding | {the folded}^
    count counts counted counting | {the =counted}^ ; {=numbers} {=counted}
    sort sorts sorted sorting | {the =collected}^
    collect collects collected collecting | {=collected}~ ; {=collected} for {person}
    gather gathers gathered gathering | {=collected}~
    peel peels peeled peeling | {the peeled}^
    crack cracks cracked cracking | {an egg} ; {the nut}^
    toast toasts toasted toasting | {the toasted}~
    smell smells smelt|smelled smelling | {the smelt}
    sniff sniffs sniffed sniffing | {the smelt}
    taste tastes tasted tasting | {the =cooked} ; {the food}
    enjoy enjoys enjoyed enjoying | {the enjoyed}~ ; {the =meal}
    clap claps clapped clapping | for {person} ; at the end of the song
    cheer cheers cheered cheering | for {person}
    dance dances danced dancing | in {the dancePlace}~ ; with {person}~ ; to {the sung}
    fly flies flew flying | {the kite}~ ; {the kite} on {the beach}
    light lights lit lighting | {the lit}~ ; {the lit} for {person}
    plan plans planned planning | {a trip} ; {the trip} with {person}
    explore explores explored exploring | {the explored}~
    deliver delivers delivered delivering | {a sent} to {person} ; {the parcel}~
    decorate decorates decorated decorating | {the decorated}^
    admire admires admired admiring | {the viewed}
    practise practises practised practising | {the played}~
    celebrate celebrates celebrated celebrating | with {a baked}~ ; with {person}
    photograph photographs photographed photographing | {the viewed}
    remember remembers remembered remembering | {my bag}~ ; to {=chore}
    return returns returned returning | {the hold} to {person} ; to {the goalTo}~
    float floats floated floating | on {the openWater}~
    row rows rowed rowing | to {the boatStop}~ ; {the rowed} to {the boatStop}
    load loads loaded loading | {the loaded}^ ; {the =collected} on {the cart}
    unload unloads unloaded unloading | {the loaded}^
    hunt hunts hunted hunting | for {=shoreFinds} on {the beach} ; for {the tinyThing}
    search searches searched searching | for {the tinyThing}~ ; in {the container}
    check checks checked checking | {the checked}^ ; {the checked} for {person}
    rub rubs rubbed rubbing | {the lamp}^ ; {the pony}
    mash mashes mashed mashing | {the mashed}^
    boil boils boiled boiling | {an egg} ; {the kettle}
    grill grills grilled grilling | {the fish}~
    fry fries fried frying | {=fried}~ ; {=fried} for {person}
    spread spreads spread spreading | {=jam} on {the toast}
    slide slides slid sliding | down {the hill}~ ; on {the ice}
    skate skates skated skating | on {the rink}^
    cross crosses crossed crossing | {the crossed}^
    follow follows followed following | the path to {the goal} ; {the map} to {the goal}
    lead leads led leading | {the ledAnimal} to {the walkGoal} ; {the ledAnimal} up {the hill}
    set sets set setting | {the table}~ ; {the placed} on {the surface}
    use uses used using | {the hold}^
    keep keeps kept keeping | {the tinyThing} in {the container}
    fetch fetches fetched fetching | {the hold} for {person} ; {the hold} from {the indoor}
    welcome welcomes welcomed welcoming | {person} to {the fair}
    surprise surprises surprised surprising | {person} with {a gift}
    tickle tickles tickled tickling | {the pet}
    join joins joined joining | {the club}~ ; {person} at {the goal}
    teach teaches taught teaching | {person} {a sung} ; {the dog} to sit
    train trains trained training | {the dog}^
    weigh weighs weighed weighing | {the fish} ; {the parcel}
    measure measures measured measuring | {the made}^
    remind reminds reminded reminding | {person} to {=chore}
    promise promises promised promising | to {=chore}
    try tries tried trying | to {=skill} ; on {the clothing} ; {the food}
    learn learns learnt|learned learning | {a sung}~ ; to {=skill}
    begin begins began beginning | to {=skill}
    forget forgets forgot forgetting | to {=chore}`;
