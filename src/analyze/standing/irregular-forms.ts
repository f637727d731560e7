/**
 * Bases and their irregular forms, a base a line: went belongs to go, children to child. Regular forms (wants)
 * are not here: the engine finds them. Facts of English grammar, from memory; a test asks a library for
 * their bases.
 */
const FORMS = `
arise arose arisen
awake awoke awoken
bad worse worst
be am is are was were been
bear bore borne
beat beaten
become became
begin began begun
bend bent
bite bit bitten
bleed bled
blow blew blown
break broke broken
breed bred
bring brought
build built
burn burnt
buy bought
calf calves
catch caught
child children
choose chose chosen
come came
creep crept
deal dealt
dig dug
do did does done
draw drew drawn
dream dreamt
drink drank drunk
drive drove driven
eat ate eaten
elf elves
fall fell fallen
far farther farthest further furthest
feed fed
feel felt
fight fought
find found
flee fled
fly flew flown
foot feet
forbid forbade forbidden
forget forgot forgotten
forgive forgave forgiven
freeze froze frozen
get got gotten
give gave given
go goes gone went
good better best
goose geese
grind ground
grow grew grown
half halves
hang hung
have had has
hear heard
hide hid hidden
hold held
hoof hooves
keep kept
kneel knelt
knife knives
know knew known
lay laid
lead led
leaf leaves
leap leapt
learn learnt
leave left
lend lent
life lives
light lit
little least less
loaf loaves
lose lost
louse lice
make made
man men
mean meant
meet met
mouse mice
much more most
ox oxen
pay paid
person people
ride rode ridden
ring rang rung
rise rose risen
run ran
say said
scarf scarves
see saw seen
seek sought
self selves
sell sold
send sent
shake shook shaken
shelf shelves
shine shone
shoot shot
show shown
shrink shrank shrunk
sing sang sung
sink sank sunk
sit sat
sleep slept
slide slid
smell smelt
speak spoke spoken
speed sped
spell spelt
spend spent
spin spun
spring sprang sprung
stand stood
steal stole stolen
stick stuck
sting stung
stink stank stunk
strike struck
string strung
swear swore sworn
sweep swept
swim swam swum
swing swung
take took taken
teach taught
tear tore torn
tell told
thief thieves
think thought
throw threw thrown
tooth teeth
understand understood
wake woke woken
wear wore worn
weave wove woven
weep wept
well better best
wife wives
win won
wind wound
wolf wolves
woman women
write wrote written
`;

const formsOf: ReadonlyMap<string, readonly string[]> = new Map(
  FORMS.trim()
    .split('\n')
    .map((line) => {
      const [base, ...forms] = line.split(' ');
      return [base!, forms];
    }),
);

/** The irregular forms of a base in lower case (go: goes gone went); none for a regular one (want). */
export function irregularForms(base: string): readonly string[] {
  return formsOf.get(base) ?? [];
}

/** Every base that has irregular forms. */
export function irregularBases(): readonly string[] {
  return [...formsOf.keys()];
}
