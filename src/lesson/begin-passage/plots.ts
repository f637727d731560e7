/** A small story: what happens in it, beat by beat. */
export interface Plot {
  readonly id: string;
  /** Titles, the best first. A title that the group can read is taken. */
  readonly titles: readonly string[];
  /**
   * `thing:treasure` is a thing and its class (`story-classes.ts`). The thing is drawn once and keeps its name to the
   * end.
   */
  readonly things: string;
  /** The settings the plot may be in; all settings where none are named. */
  readonly settings?: string;
  /** Whether the plot needs a place by the water. */
  readonly water?: true;
  /** Whether the plot is told only if the other plots do not practise enough. */
  readonly last?: true;
  /**
   * The beats, one a line.
   * - ` / ` separates ways to say a beat. The ways after ` // ` are used only where the group can read no better one.
   * - `?` begins a beat that may be left out. `¶` begins a paragraph.
   * - `{A}` and `{B}` are the people. `{A.he}`, `{A.him}`, `{A.his}` are their pronouns.
   * - `{thing}` is the drawn thing, `{a thing}` has its article, `{a+ thing}` has an adjective too, and `{thing.adj}`
   * is an adjective alone.
   * - `{at place}`, `{to place}`, `{place}` are the setting. `{=foods}` gives words of a class as written.
   * - `{base j1}`, `{past j1}` are a job in that form.
   * - In brackets, `A>place` means that A goes there, and `A@place` means that A is there.
   */
  readonly beats: string;
}

const START =
  '{A} and {B} were {at place}. / {A} met {B} {at place}. / {A} and {B} sat {at place}. / It was a {=weather} day. {A} and {B} went {to place}. / {A} and {B} ran {to place}. / One {=weather} day, {A} and {B} went {to place}. / {A} and {B} were sitting {at place}. / {A} and {B} were playing {at place}. [A,B>place]';

const FUN =
  '? {A} and {B} ran and ran. / {A} and {B} had fun in the sun. / {A} and {B} liked to {=playing}. / They began to {=playing}. / {A} and {B} had a chat. / They were having a lot of fun. / {A} and {B} were singing and jumping. / {A} and {B} were telling jokes. / {A} and {B} had {=foods}. [A,B@place]';

export const plots: readonly Plot[] = [
  {
    id: 'lost',
    titles: ['The lost {thing}', "{A}'s {thing}", '{A} and the {thing}', '{A} and {B}', 'The {thing}'],
    things: 'thing:treasure c1:keeper c2:keeper c3:keeper pet:ownPet food:snack food2:snack',
    beats: `
¶ ${START}
{A} had {a+ thing}. / {A} had {a+ thing} with {A.him}. / {A} had {a+ thing} from {A.his} gran. / {A} was holding {a+ thing}. [thing>A]
? It was {thing.adj}. / {A} was fond of it. / “I like the {thing},” said {B}. / “That is the best {thing}!” said {B}. / “It is a gift from my mum,” said {A}. / “Be careful with it,” said {B}. / “It's the best {thing}!” said {B}. / It was a birthday gift. / “It is such a fun {thing}!” said {B}. / “I like it so much,” said {A}. / {A} had a chat with {B}.
${FUN}
¶ But then {A} did not have it. / Then {A} said, “I can't see my {thing}!” / Then {A} felt in {A.his} bag. The {thing} was not in it! / But then the {thing} was lost! / “Where is my {thing}?” said {A}. / Then {A} looked sad. “Where is my {thing}?” {A.he} asked. / But the {thing} got lost! / But then it fell, and {A} did not see it. / But it was not in {A.his} bag! / But then {A}'s {thing} was lost! / It was not in {A}'s bag! / “I can't see my {thing}!” cried {A}. / But it wasn't in {A.his} bag! / “My {thing} has gone!” said {A}. / But then {A} did not have the {thing}. / But when {A} had a look, it was not there! / But {A} had lost the {thing}! // But {A} did not see the {thing}. / “I do not see the {thing},” said {A}. [thing>c3]
{A} had a look in the {c1}. It was not in the {c1}. / {A} looked in the {c1}, but it was not there. / “Is it in the {c1}?” said {B}. It was not. / “Look in the {c1}!” said {B}. But it was not in the {c1}. / They looked in the {c1}. The {thing} was not there. / {A} started looking in the {c1}. It was not there. / {A} was looking in the {c1}. It was not there. / {A} hurried to look in the {c1}. It was not there. / {A} looked quickly in the {c1}. It was not there. / {A} checked the {c1}. It was not there. / {A} had to check the {c1}. It was not in it. / When {A} had a look in the {c1}, it was not in it. // {A} dug in the {c1}, but it was not in it. / {A} felt in the {c1}, but did not get it. [A@place]
{B} had a look in the {c2}. It was not in the {c2}. / {B} looked in the {c2}. It was not there. / “Is it in the {c2}?” said {A}. It was not. / {B} tried the {c2}. It was not in there. / {B} was looking in the {c2}. It was not in it. / {B} searched the {c2}. It was not there. / Sadly, it was not in the {c2}. / It wasn't in the {c2}. / {B} hunted in the {c2}. It was not there. / “Which bag did you have it in?” said {B}. It was not in the {c2}. / {B} had to check the {c2}. It was not in it. / “Check the {c2}!” said {A}. It was not in it. // {B} dug in the {c2}. It was not in it. / {B} felt in the {c2}, but did not get it. [B@place]
? “It is a bad day,” said {A}. / {A} was sad. / {A} had to sit and think. / “Don't be sad,” said {B}. “We'll find it!” / {A} sat on the {=seats} and felt sad. / {A} was feeling sad. / {A} was upset. / {A} felt hopeless. / {A} was looking and looking for it. / “It's lost!” cried {A}. / {A} was unhappy. / {A} felt gloomy. / “Let's keep looking,” said {B}.
¶ Then {B} had a look in the {c3}. The {thing} was in it! / “It is in the {c3}!” said {B}. / At last {B} looked in the {c3}. There was the {thing}! / Then {B} had a look in the {c3}. “I see it!” said {B}. / But {B} had a look in the {c3}. The {thing} was in it! / “It is in the {c3}!” cried {B}. / “It's in the {c3}!” said {B}. / In the end {A} looked in the {c3}. The {thing} was there! // But then {B} felt in the {c3} and got it! / {B} ran to the {c3}. The {thing} was in it! [thing@c3]
? {a+ pet} sat next to it! / {a+ pet} sat on top of it. / {a+ pet} had it! / {a+ pet} was napping on it! / {a+ pet} was sleeping on top of it. / {a+ pet} was in there with it! / {a+ pet} was resting on it! / {a+ pet} was playing with it!
{A} was so glad to get the {thing} back. / {A} got the {thing} and had a big grin. / {A} was glad to have it back. / {A} got it. {A} was glad. / {A} gave {B} a hug. / “It's my {thing}! Thanks, {B}!” said {A}. / {A} smiled and hugged the {thing}. / {A} got it. “It is my {thing}!” said {A}. / {A} was happy to have it back. / {A} gladly hugged the {thing}. / {A} was thankful. / It was {A}'s {thing}! {A} was glad. // {A} got it and had a hug. / {A} had a hug for {B}. / {A} got it and had fun. [thing>A]
? “You did it, {B}!” said {A}. / “I had to look and look for it,” said {A}. / “Thank you, {B},” said {A}. / “I will not let go of it,” said {A}. / “You were so helpful,” said {A}. / “That was kind of you,” said {A}. / “I'll take good care of it,” said {A}. / “Thank you so much!” said {A}. / {A} had a grin on {A.his} chin. / “I had such a bad shock,” said {A}.
? {A} had {a food} and {B} had {a food2}. / Then {A} and {B} had {=meals}. / Then {A} and {B} ran back in the sun. / {A} and {B} had {=meals} in the sun. / Then {A} and {B} had a nap in the sun. / {A} had {=foods} and {B} had {=foods}. / {A} and {B} went back singing. / {A} and {B} were singing and skipping.`,
  },
  {
    id: 'guess',
    titles: ['In the {box}', 'The {box}', 'A gift for {B}', '{A} and {B}'],
    things: 'box:giftBox g1:guess g2:guess g3:guess prize:treasure',
    beats: `
¶ ${START}
{A} had {a+ box}. / {A} had {a+ box} with {A.him}. / {A} was holding {a+ box}. [box>A]
? It was {box.adj}. / It had a lid on top. / {A} set it on the {=seats}. / {A} put the {box} on the {=seats}. / It was shut.
“Is it for me?” said {B}. “It is for you,” said {A}. / “What is in it?” said {B}. “It is for you,” said {A}. / {B} had a look at the {box}. “Is it for me?” said {B}. / “What is in the {box}?” asked {B}. “It is a gift for you,” said {A}. / “What have you got?” asked {B}. “It's a gift for you!” said {A}. / “Is it for me?” asked {B}. “Yes,” said {A}. “Can you guess it?” / “Is it a pet?” said {B}. “It is not,” said {A}. / “What is in it?” asked {B}. {A} gave a grin. “You have to guess!”
¶ “Is it {a g1}?” said {B}. “It is not {a g1},” said {A}. / “Is it {a g1}?” said {B}. “No,” said {A}, “it is not {a g1}.” / “Is it {a g1}?” asked {B}. {A} shook {A.his} head.
“Is it {a g2}?” said {B}. “It is not,” said {A}. / “Is it {a g2}?” said {B}. “No!” said {A}. / “Can it be {a g2}?” said {B}. “It cannot be {a g2},” said {A}. / “Is it {a+ g2}?” said {B}. “It isn't {a g2},” said {A}.
? {B} gave the {box} a tap. / {B} gave the {box} a sniff. / {B} lifted the {box} up. It was not big. / {B} picked it up and shook it. / {B} had to think. / {B} was thinking. / “Which is it?” said {B}. / {B} had a look at it from the back. / “Chill,” said {A}. “You can check it.” / {B} had {B.his} hand on {B.his} chin.
? “Is it {a+ g3}?” said {B}. “It is not {a g3}!” said {A}. / “Is it {a+ g3}?” asked {B}. “No,” said {A}. “You can look.”
¶ {B} got the lid off. / {B} had a look in the {box}. / {B} lifted the lid. / {B} opened it up and looked in. / Then {B} undid the lid. // {B} dug in the {box}. / {B} cut the top of it.
It was {a+ prize}! / In it was {a+ prize}! / In the {box} was {a+ prize}! / “It is {a+ prize}!” said {B}.
“I like it a lot!” said {B}. / {B} was so glad. / {B} had a big grin. / {B} gave {A} a hug. / “It is the best gift!” said {B}. / “I'm so glad!” said {B}. / {B} was grinning and hugging {A}. / “Thank you, {A}!” said {B}. / “I like it so much!” said {B}. / “It is such a good gift!” said {B}. // “It is fun!” said {B}. / {B} had a hug for {A}. / {B} had it on {B.his} lap.
? {A} was glad as well. / {A} and {B} had a lot of fun with it. / {B} had fun with the {prize}. / “I am glad you like it,” said {A}. / {A} was smiling.
? The {prize} is {B}'s best thing. / {B} put the {prize} back in the {box}. / “I will not lend it to the cat!” said {B}. / “I will look after it,” said {B}.`,
  },
  {
    id: 'seek',
    titles: ['Hide and seek', '{A} hid', '{B} had to look', '{A} and {B}'],
    things: 'c1:den c2:den c3:den pet:pet s1:lurker s2:lurker',
    beats: `
¶ ${START}
“I will hide and you can look,” said {A}. / {A} hid. {B} had to look for {A.him}. / “I can hide,” said {A}. “You can look for me!” / “Let's play hide and seek,” said {A}. {A} ran off to hide. / {A} ran off to hide. {B} had to look for {A.him}. [A>c3]
{B} had to sit and count to ten. / {B} sat on the {=seats} and counted to ten. / {B} had to sit for a bit. Then {B.he} got up. / {B} shut {B.his} eyes and began counting. / {B} sat in the sun. Then {B.he} got up. // {B} sat on the {=seats}. / {B} had to sit in the sun.
¶ {B} ran to the {c1}. {A} was not in it. / {B} had a look in the {c1}. {A} was not in it. / “Is {A} in the {c1}?” said {B}. But {A} was not in it. / {B} peeked in the {c1}. {A} was not there. / {B} went looking in the {c1}. No {A}! [B@place]
? In the {c1} was {a+ s1}, but not {A}. / In it was {a+ s1}. It was not {A}! / {a+ s1} was in there. That was not {A}!
{B} ran to the {c2}. {A} was not in it. / {B} had a look in the {c2}. {A} was not in it. / {B} looked in the {c2}, but {A} was not there. / “Are you in the {c2}?” said {B}. But {A} was not there. [B@place]
? In the {c2} was {a+ s2}. / {B} saw {a+ s2} in it.
? {B} got hot. {B} had to sit. / “I can't see {A},” said {B}. / “{A}! {A}!” yelled {B}. / {B} had a rest. / “I give up!” said {B}. / {B} was getting hot and cross|mad. / “{A} is good at hiding,” said {B}. / {B} felt sad.
¶ Then {a+ pet} ran to the {c3} and sat. / Then {B} saw a hat. / Then {B} had a look in the {c3}. / At last {B} ran to the {c3}. / Then {B} spotted a leg. / Then {a+ pet} went running to the {c3}. It sat and looked in. / Then the {c3} had a fit of giggles! / {B} ran to the {c3} and had a look. // But {a+ pet} ran to the {c3}. [pet>c3]
{A} was in the {c3}! / “I see you, {A}!” said {B}. {A} was in the {c3}. / “I see you in the {c3}!” said {B}. / “You are in the {c3}!” said {B}. [A@c3]
{A} got up. “You got me!” said {A}. / “You did it!” said {A}. / {A} ran to {B}. “You got me!” said {A}. / {A} jumped out. “You found me!” said {A}. / {A} was grinning. “You got me!” said {A}. [A>place]
? {A} had mud on {A.his} legs. / {A} had a bug in {A.his} hat! / {A} had mud on {A.his} chin. / {A} was red and hot. / {A} had dust on {A.his} cap.
“Let me hide,” said {B}. / “It was fun,” said {B}. / “Can I hide?” said {B}. / Then {B} ran off to hide. / “Now it is my turn to hide,” said {B}. / “I'll hide next!” said {B}. / “That was fun,” said {B}. “Now I am hiding!”
? {A} and {B} hid and ran and had fun. / It was a lot of fun. / {A} sat on the {=seats} and counted to ten. / {A} and {B} did not stop till it was six.`,
  },
  {
    id: 'jobs',
    titles: ['A big job', 'Jobs to do', 'A lot to do', 'The {pet}', '{A} and {B}'],
    things: 'j1:job j2:job j3:job j4:job pet:pet c1:keeper food:snack food2:snack',
    beats: `
¶ {A} and {B} had a big job to do {at place}. / It was a {=weather} day. {A} and {B} had a lot to do {at place}. / {A} and {B} had a lot of jobs to do {at place}. / {A} and {B} were {at place}. It was a big mess! / {A} and {B} ran {to place}. It was a mess. / {A} and {B} had a big job {at place}. // {A} and {B} had a job {at place}. [A,B>place]
{A} had to {base j1}. / First {A} {past j1}. / {A} {past j1}. / “I will {base j1},” said {A}. / {A} began to {base j1}. / {A} was {ing j1}. [A@place]
{B} had to {base j2}. / {B} {past j2}. / “I can {base j2},” said {B}. / “Then I will {base j2},” said {B}. / {B} was {ing j2}. [B@place]
{A} had to {base j3}. / Then {A} {past j3}. / Then {A} had to {base j3}. / “Can you help me {base j3}?” said {A}. / Then {A} was {ing j3}. [A@place]
? {B} had to {base j4}. / {B} {past j4} as well. / {B} {past j4}.
? {A} got hot. {B} got hot as well. / “It is a big job,” said {A}. / “It is a lot to do!” said {B}. / It was hot, but they did not stop. / {A} and {B} were working well. / {A} and {B} had a chat. / “That is so much!” said {B}. / “Which job is next?” said {B}.
¶ But then {a pet} ran in. It was wet! / But then {a+ pet} ran in with mud on it. / Then {a+ pet} ran past. / But then {a pet} came running in. It was wet! // But {a pet} ran in. It was wet! / {a pet} ran in. It was wet! [pet>place]
It sat in the {c1}. / It got in the {c1}! / It got mud on the {c1}! / It hid in the {c1} and did not get out. / It jumped in the {c1} with a thud. / It was hopping in and out of the {c1}! [pet>c1]
“Stop!” said {A}. / “Get out!” said {A}. / “Look at that!” said {A}. / “No, no!” said {B}. / “Bad {pet}!” said {A}. / “Don't do that!” said {A}. / “You can't sit there!” said {A}. // {A} had a fit. / {A} was mad. / {A} had to yell.
{B} had {a food}. The {pet} ran to {B} to get it. / {B} got the {pet} and gave it a rub. / {B} got it out and gave it a pat. / {B} held out {a food} and the {pet} ran to {B.him}. / {B} got the {pet} out with {a food}. [pet>B]
? {A} had to {base j1} again. / So {A} had to fix it up. / {A} had to mop up the mud. / It was fun to look at, but it was a mess. / {A} and {B} had to grin.
¶ At last the jobs were done. / At last it was all done. / {A} and {B} did it! / Then the job was done. / By six the job was done. / {A} and {B} got the job done.
{A} and {B} sat in the sun with {a food2}. / {A} and {B} had {a food2}. / {A} had {a food2} in the sun. / They sat {at place} and had {=meals}. [A,B@place]
? The {pet} had a nap. / The {pet} had a bit of it as well. / The {pet} had a nap in the sun. / The {pet} was sleeping in the sun. / The {pet} sat with {B.him}.
? “It was a big job, but it was fun,” said {A}. / “You did well, {B},” said {A}. / “We did it,” said {A}. / “That was a big job,” said {B}. / “I am glad that's done!” said {B}. / “That was such a big job,” said {B}.`,
  },
  {
    id: 'trip',
    settings: 'sea farm town camp',
    titles: ['The trip', 'A trip', 'Wet!', 'A fun day', '{A} and {B}'],
    things: 's1:sight s2:sight s3:sight s4:sight food:snack food2:snack kit:kit shelter:shelter pet:pet',
    beats: `
¶ It was a {=weather} day. {A} and {B} went {to place}. / {A} and {B} went {to place}. / {A} and {B} got the bus {to place}. / {A} and {B} ran {to place}. / {A} and {B} had a trip {to place}. / {A} and {B} were going {to place}. [A,B>place]
? {A} had {a+ kit} with {A.him}. / {A} had {a+ kit}. / {A} had {a+ kit} in {A.his} bag. / {A} took {a+ kit}.
{A} saw {a+ s1}. / “I see {a+ s1}!” said {A}. / “Look, {a+ s1}!” said {A}. / “Look at the {s1}!” said {A}. / {A} was looking at {a+ s1}. // “{a+ s1}!” said {A}. / {A} ran past {a+ s1}. / {A} went past {a+ s1}. [A@place]
{B} saw {a+ s2} and {a+ s3}. / “I see {a+ s2}!” said {B}. / “Look, {a+ s2}!” said {B}. / “And I see {a+ s2},” said {B}. / “I can see {a s2} and {a+ s3},” said {B}. // “{a+ s2}!” said {B}. / {B} ran past {a+ s2}. / {B} went past {a+ s2} and {a s3}. [B@place]
? “Is that {a s4}?” said {A}. “It is {a+ s4}!” said {B}. / Then {A} saw {a+ s4} as well. / “Is it {a s4}?” said {A}. It was {a+ s4}! / Then {a+ s4} went past. / They were glad to see {a+ s4}. / They saw {=numbers} {=plenty}. / There were {=plenty} as well. / “Look at the {=plenty}!” said {B}. / They saw lots of {=plenty}.
${FUN}
¶ {A} and {B} sat on the {=seats}. / Then {A} and {B} had a rest on the {=seats}. / {A} and {B} were sitting on the {=seats}. / “Let's sit on the {=seats},” said {B}. [A,B@place]
{A} had {a+ food} and {B} had {a+ food2}. / {A} had {a+ food}. {B} had {a+ food2}. / {A} had {a food} and {a food2}. {B} had {=meals}. / {A} bit into {a+ food}. {B} had {=meals}.
¶ But then the sun went in. It got wet. / Then the wind hit. / But then it began to rain. / But the wind got up and it got wet. / But then it was raining! / Then it rained and rained. / Then there was a storm. // But the sun hid and it got wet. / But it got wet! / But then it got wet.
“Run!” said {A}. / “Get up and run!” said {B}. / “We will get wet!” said {A}. / “I am wet!” said {B}. / “We're getting wet!” said {A}. // {A} got wet. {B} got wet. / {A} was wet. {B} was wet.
{A} and {B} ran to the {shelter} and got in. / {A} and {B} hid in the {shelter}. / {A} and {B} ran to the {shelter}. / They ran and hid in the {shelter}. / They went running to the {shelter}. [A,B>shelter]
? In the {shelter} was {a+ pet}. It was wet as well! / {a+ pet} was in there. It was wet as well! / {a+ pet} was in the {shelter}. / {a+ pet} was hiding in there as well. [pet>shelter]
? {A} had to rub {A.his} legs. / {A} sat and told jokes. / They sang a song in the {shelter}. / {B} got {B.his} wet cap off. / {A} was telling jokes to {B}. [A,B@shelter]
¶ At last the sun came out. / Then the sun got up and it was hot. / Then the sun was back. / Then the sun was hot. / Then the sun was shining. // The sun got up. It was hot. / The sun got hot.
“It was a fun trip,” said {A}. “But I am wet!” / “I got wet, but it was fun,” said {B}. / “It was fun, but I am wet!” said {A}. / {A} and {B} had fun, but they got wet. / “It's not a bad trip,” said {A}. / {A} and {B} went back with wet legs. / {A} and {B} got wet, but it was fun. // {A} had fun. {B} had fun as well. / {A} and {B} got wet, but had fun.`,
  },
  {
    id: 'pet',
    settings: 'farm camp',
    titles: ['The {pet} in the mud', 'Mud!', 'The {pet}', '{A} and {B}'],
    things: 'pet:ownPet c1:den c2:den wash:wash food:petFood bed:petBed',
    beats: `
¶ {A} had {a+ pet}. / {A} had {a+ pet} as a pet. / {A} had got {a+ pet}.
? It was {pet.adj}. / {B} was fond of it. / The {pet} was fun. / “I like the {pet},” said {B}.
{A} and {B} ran {to place} with it. / {A} and {B} went {to place} with the {pet}. / {A} and {B} let it run {at place}. / {A} and {B} were {at place} with it. / {A} and {B} were walking {to place} with the {pet}. [A,B,pet>place]
The {pet} ran and ran. / It had a sniff at the {=seats}. / It ran up and down in the sun. / It dug in the mud. / It was running up and down. / It jumped up and down. [pet@place]
¶ Then the {pet} ran off! / But then it ran off! / Then the {pet} was not there! / But then it went running off! / Then the {pet} raced off! / But it ran and hid! // But it ran and ran. / But the {pet} ran and ran! [pet>mud]
“Stop!” said {A}. But it did not stop. / “Stop, stop!” said {A}. / {A} ran. {B} ran. / “Get the {pet}!” said {A}. / “Come back!” {A} yelled. / “Come back!” said {A}. / “Where did it go?” said {B}. / {A} hurried after it. / “Stop!” cried {A}. / “Be careful!” said {B}. / {A} was running as well. / “It's so quick!” said {B}. // {A} ran to get it. {B} ran as well. / {A} and {B} ran to get it.
{A} had a look in the {c1}. It was not in the {c1}. / Was it in the {c1}? It was not. / {A} looked in the {c1}. It was not there. / “Is it in the {c1}?” said {B}. It was not. / {A} was looking in the {c1}. It was not there. // {A} dug in the {c1}, but it was not in it. / {A} felt in the {c1}, but did not get it. [A@place]
{B} had a look in the {c2}. It was not in it. / Was it in the {c2}? It was not. / {B} looked in the {c2}. No {pet}! / {B} ran to the {c2}. It was not in it. / {B} was looking in the {c2}. No {pet}! // {B} dug in the {c2}, but it was not in it. / {B} felt in the {c2}, but did not get it. [B@place]
? {A} was sad. / “It is lost,” said {A}. / “I can't see it,” said {A}. / “Don't be sad,” said {B}. / {A} felt bad. / {A} was feeling sad. / {A} was upset. / {A} felt hopeless. / “It's lost!” cried {A}. / “We can't find it,” said {A}.
¶ It was in the mud! / “It is in the mud!” said {B}. / Then {B} saw a wet leg. The {pet} was in the mud! / At last {B} saw it. It was stuck in the mud! / “Look! It's in the mud!” said {B}. / It was sitting in the mud! // It sat in the mud! / It got in the mud and sat! [pet@mud]
{A} had to dig and tug to get it out. / {A} and {B} had to tug and tug. / {A} got it out of the mud. / {A} and {B} dug it out. / {A} and {B} were digging and tugging. Then it was out. / {A} had to get in the mud to get it. [pet>A]
¶ {A} and {B} set the {pet} in the {wash}. / They got it in the {wash} to get the mud off it. / {A} put it in the {wash}. / Then {A} washed it in the {wash}. // {A} had to get it in the {wash}. [pet>wash]
{B} gave it a good rub with a rag. / {B} had to scrub it. / {B} got the mud off it. / {B} was rubbing it with a rag. / {B} rubbed it and rinsed it. // {B} had to rub and rub.
? {A} was wet and {B} was wet. / They all got wet. / It did not like it! / {A} got mud on {A.his} chin. // {A} got wet. {B} got wet.
Then the {pet} had {a food}. / {A} let it have {a food}. / It had {a food} and was glad. / {A} fed it {a food}. / {B} gave it {a food}.
It sat on the {bed} and had a nap. / Then it had a nap on the {bed}. / Then it got on the {bed} and slept. / It was soon sleeping on the {bed}. [pet>bed]
? “No mud on the {bed}!” said {A}. / “You are a bad {pet},” said {A}, “but I like you.” / “You can nap,” said {A}. / “That's the end of the mud,” said {B}.`,
  },
  {
    id: 'pack',
    settings: 'sea farm town camp',
    titles: ['Pack the {bag}', 'The {bag}', '{A} and {B}'],
    things: 'bag:bag p1:packed p2:packed p3:packed p4:packed food:snack bag2:bag pet:pet',
    beats: `
¶ {A} and {B} had to pack for a trip {to place}. / “Let us go {to place},” said {A}. / “We can go {to place}!” said {A}. / It was a {=weather} day for a trip {to place}. / {A} and {B} were packing for a trip {to place}. / {A} and {B} had a plan to go {to place}. / {A} and {B} had to get set to go {to place}. [A,B>home]
{A} got {a+ bag}. / {A} had {a+ bag}. / “I have {a+ bag},” said {A}. / {A} had {a+ bag} to pack.
{A} put {a+ p1} in it. / {A} got {a+ p1} to go in the {bag}. / {A} put {a+ p1} in the {bag}. / In it {A} had {a+ p1}. / {A} packed {a+ p1}. / {A} was packing {a+ p1}. [p1>bag]
{B} got {a+ p2} to go in it. / {B} put in {a+ p2} and {a p3}. / {B} got {a+ p2} and {a p3} to go in it. / {B} packed {a+ p2} and {a p3}. / {B} was packing {a+ p2}. [p2>bag]
? Then {A} put in some {=foods}. / Then {A} got {a food} to go in it. / {A} packed some {=foods} for lunch. / {A} packed {a food}. / Then in went the {=foods}.
? “Is that it?” said {A}. “Not yet!” said {B}. / “I will get {a+ p4},” said {B}. / “I'll get {a+ p4},” said {B}. / “I can fit in {a+ p4},” said {B}. / {B} ran to get {a+ p4} as well. / “Which pen can I pack?” said {B}. / “That is so much!” said {A}. / {A} and {B} had a chat.
¶ But the {bag} did not shut. / But the {bag} was so full that it did not shut. / “It is too full!” said {A}. / But it was hard to shut the {bag}. / “It won't shut!” said {A}. // “It is so big!” said {A}.
{A} sat on it. / {A} had to sit on it. / {A} sat on top of it. / {A} and {B} sat on top of it. / {A} was sitting on it. / {A} pushed and pushed. [A@home]
? {B} had to tug at it. / {B} had to tug and tug. / {B} sat on it as well. / {B} got on top of it and had a hop. / {B} was tugging at it. / {B} jumped on top.
¶ Pop! / Bang! / Snap! / Crash! // Rip!
The {p1} fell on {B}. / The {p1} hit the {=seats}. / Out fell the {p1}! / The {p1} landed on {B}. // The {p1} hit {B} on the leg! [p1>home]
? {a+ pet} ran off with the {p2}! // The {p2} hit {A} on the chin!
“Look at that! The {bag} is such a mess!” said {B}. / “It is a mess!” said {B}. / “It was too full,” said {B}. / “It is no good,” said {A}. / “Look at that mess!” said {A}. / {A} and {B} could not stop giggling. / “That's a mess!” said {B}.
¶ {B} got {a+ bag2}. “This can go in it,” said {B}. / {B} ran to get {a+ bag2}. / {B} had {a+ bag2} as well. / Then {B} got {a+ bag2}. / {B} went to get {a+ bag2} as well.
The {p1} went in the {bag2}. / {A} put the {p1} in the {bag2}. / {B} packed the {p1} in the {bag2}. / “The {p1} can go in that,” said {A}. / {A} got the {p1} to go in the {bag2}. [p1>bag2]
? {A} had the {bag}. {B} had the {bag2}. / {A} lifted the {bag} and {B} lifted the {bag2}. / {A} carried the {bag}. {B} carried the {bag2}. / {A} was carrying the {bag}.
Then {A} and {B} ran {to place}. / At last {A} and {B} went {to place}. / Then they had the best trip {to place}. / So {A} and {B} got the bus {to place}. / At last they were going {to place}! [A,B>place]
? It was a lot of fun. / They had fun in the sun.`,
  },
  {
    id: 'net',
    titles: ['A big tug', 'The {net}', '{A} and {B}'],
    things: 'net:netThing k1:junk k2:junk fish:catch food:snack',
    water: true,
    beats: `
¶ {A} and {B} sat {at place}. / It was a {=weather} day. {A} and {B} sat {at place}. / {A} and {B} were sitting {at place}. / {A} and {B} ran {to place}. / {A} and {B} went fishing {at place}. [A,B>place]
{A} had {a+ net}. / {A} had {a+ net} to get fish. / {A} had {a+ net} with {A.him}. / {A} was holding {a+ net}.
{A} let it dip in. / {A} let the {net} sink. / {A} dipped it in and waited. / {A} dropped it in. / {A} was dipping it in and out. // {A} let it get wet and sat. / {A} set it in the wet mud and sat.
{A} had to sit and sit. / {A} sat and sat. / {B} sat and had {a food}. / {B} had {a food}. / They waited and waited. / {B} was eating {a food}. [A,B@place]
¶ Then {A} felt a tug! / Then it had a tug. / “A tug!” said {A}. / “I got it!” said {A}. / “I felt a tug!” said {A}. / Then something was tugging at it!
But it was not a fish. It was {a+ k1}! / It was {a+ k1}! / “It is not a fish,” said {B}. “It is {a+ k1}!” / “It's not a fish!” said {B}. “It's {a+ k1}!” / In it was {a+ k1}, not a fish! [k1>place]
Then {B} had a go. / “Can I have a go?” said {B}. / “Let me have a go,” said {B}. / Then it was {B}'s turn. / “I'll try,” said {B}. / Then {B} was dipping it in. // {B} had the {net}.
{B} got {a+ k2}! / “I got {a+ k2}!” said {B}. / It was {a+ k2}. / But {B} got {a+ k2}. / {B} lifted up {a+ k2}. / “It's {a+ k2},” said {B}. [k2>place]
? “That is a lot of junk,” said {A}. / “Is that all?” said {A}. / {A} was sad. / {A} and {B} had to grin. / {A} couldn't stop grinning. / “It's just junk!” said {A}. / “That is not a fish!” said {A}.
¶ Then {A} had a big tug. / Then {A} felt a big, big tug. / “A big tug!” said {A}. / “It is big!” said {A}. / Then {A} was feeling a big tug.
{A} and {B} had to tug and tug. / {A} had to tug and tug. / {B} had to help {A} tug. / They tugged and tugged. / {A} and {B} were tugging and tugging.
Up came {a+ fish}! / It was {a+ fish}! / {A} got {a+ fish}! / “It is {a+ fish}!” said {A}. / “It's {a+ fish}!” yelled {A}. [fish>net]
? It was {fish.adj}. / “Look at it!” said {B}. / “It is so big!” said {B}. / It was jumping and flapping. / The {fish} looked cross|mad.
“Let it go,” said {B}. / “We will let it go,” said {A}. / “It is sad,” said {B}. “Let it go.” / “Let's let it go,” said {B}. // {A} was sad for it. / It was mad!
So {A} let it go. / {A} let the {fish} go. / {A} let it go and it swam off. / {A} dropped it back in. / Splash! It was swimming off. // {A} set it back in the mud. / {A} let it get off. [fish>water]
? {A} and {B} had the {k1} and the {k2}, but no fish. / {A} put the {k1} and the {k2} in the bin. / {A} and {B} had to get the junk in a bin. / Then {A} and {B} had {=meals}, but it was not fish! / “I'll mend the {k1},” said {B}.`,
  },
  {
    id: 'words',
    titles: ['A set of cards', 'The word game', '{A} and {B}'],
    things: 'w1:word w2:word w3:word w4:word w5:word w6:word w7:word w8:word pet:pet food:snack food2:snack',
    last: true,
    beats: `
¶ ${START}
{A} had a set of cards. Each card had a word on it. / {A} had a set of cards with {A.him}. On each card was a word. / {A} had a game with words on cards. / {A} had a box of cards. A word was on each card.
? “Let's play,” said {A}. / “You go first,” said {A}. / “Let me go first!” said {B}. / “If you get it, you keep it,” said {A}.
¶ The first word was ‘{w1}’. {B} got it. / The first card said ‘{w1}’. {B} got it. / {B} picked the word ‘{w1}’. / {B} had the word ‘{w1}’. {B} got it.
The next word was ‘{w2}’. {B} got that as well. / Then {B} got the word ‘{w2}’. / The next card said ‘{w2}’. {B} got that too. / Then {B} had the word ‘{w2}’. {B} got it.
{A} picked ‘{w3}’ and then ‘{w4}’. / {A} got ‘{w3}’ and ‘{w4}’. / Then it was {A}'s turn. {A} got ‘{w3}’ and ‘{w4}’.
? But then {B} got stuck on ‘{w5}’. / “Help!” said {B}. {B} was stuck on ‘{w5}’. / But ‘{w5}’ was hard for {B}. / Then {B} got stuck. The word was ‘{w5}’.
? {A} gave {B.him} a hint, and then {B} got it. / {B} had to think. Then {B} did get it. / “Look at the end of it,” said {A}. {B} got it.
¶ Then {a+ pet} ran in and grabbed a card! / But then {a+ pet} ran up and sat on the cards! / Then {a+ pet} jumped up and ran off with a card! / Then the wind hit the cards and they fell! / But then the wind got up and the cards fell.
“Stop!” yelled {A}. “That is ‘{w6}’!” / “Stop!” said {A}. “We need ‘{w6}’!” / “Stop that! That card is ‘{w6}’!” said {B}. / “Get ‘{w6}’ back!” said {B}. / “Quick!” said {B}. “Get ‘{w6}’!”
{A} and {B} ran and got it back. / {B} had to run to get it. / {A} ran to get the card. / In the end they got all the cards back. / {A} ran and got it back.
¶ The last words were ‘{w7}’ and ‘{w8}’. {B} got them. / {B} got ‘{w7}’, and then {B} got ‘{w8}’. / At the end {B} had ‘{w7}’ and ‘{w8}’.
“You win!” said {A}. / So {B} was the winner. / “I win!” said {B}. “It was fun.” / “That was fun,” said {A}. “You win!” / {B} did win, but {A} was glad as well.
? Then {A} and {B} had {=meals}. / {A} had {a food} and {B} had {a food2}. / They ran back in the sun. / “The next time, I will win!” said {A}. / They put the cards back in the box.`,
  },
];
