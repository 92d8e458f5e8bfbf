/**
 * Plain English for what a marking asks. One concept a line: its name, then
 * the words and phrases people use for it. Names before the first colon are
 * those that `ask-concepts.ts` gives to entries, so "speed up" reaches every
 * entry that asks for faster, whatever its own words. Made by hand from the
 * axes and characters of `lib/glossary/vocabulary.ts`; common practice.
 */
export const ENGLISH_CONCEPTS = `
slow: slow, slowly, slow speed, slow pace, unhurried, sluggish, not fast
fast: fast, quick, rapid, swift, speedy, brisk, at speed, not slow
moderate: moderate, medium, middling, average, in between, half, fairly, middle
slower: decrease the speed, decrease speed, slower, slow down, slow up, slowing, slowing down, get slow, getting slow, become slow, decelerate, hold back, held back, pull back, ease off, slacken, put the brakes on, drag, dragging, less fast, lose speed, relax the speed, reduce speed, reduce the speed, wind down
faster: increase the speed, increase speed, increase the tempo, faster, quicker, speed up, speeding up, hurry, hurry up, hurrying, accelerate, accelerating, rush, push forward, push on, press on, press forward, move on, moving on, move forward, pick up speed, gain speed, gather speed, get fast, getting fast, become fast, less slow, pick up the pace, urge on, drive on, drive forward
louder: louder, get loud, getting loud, grow loud, become loud, turn up the volume, turn it up, increase volume, increase, increasing, more volume, more sound, swell, grow, growing, less soft, more loud, build, build up, crank up
softer: softer, die out, quieter, get soft, getting soft, get quiet, getting quiet, grow soft, become soft, become quiet, turn down, turn it down, decrease, decreasing, less loud, less volume, less sound, more soft, more quiet, shrink, lessen, fade, fade away, fade out, die, die away, die down, dying
back-to-speed: original speed, original tempo, speed before, earlier speed, previous speed, previous tempo, old speed, normal speed, regular speed, usual speed, back in time, back to tempo, back to speed, back to the speed, back to the tempo, speed again, tempo again, in time again, resume speed, resume tempo, former speed
first-speed: first speed, first tempo, opening speed, opening tempo, starting speed, starting tempo, beginning speed, original speed, original tempo, speed of the beginning, speed the piece began, speed of the opening, speed at the start, speed at the beginning, main speed
free-time: free, freely, free time, own time, out of time, without a beat, no steady beat, without counting, no set speed, no strict time, not in strict time, not strictly in time, take your time, own pace, whatever speed, any speed, as you like, as you please, as you want, as you wish, you choose, up to you, player chooses, flexible, stretch time, stretch the time, push and pull, bend the time, give and take
strict-time: strict, strict time, strictly, strictly in time, exact time, steady, steady beat, keep time, keep in time, keep steady, exactly in time, on the beat, metronomic, like a clock
same-speed: same speed, same tempo, keep the speed, same beat, speed does not change, keep the same speed, steady speed
double-speed: twice as fast, double speed, double tempo, double time, doubly fast, two times as fast
gradually: gradually, slowly, little by little, bit by bit, step by step, by degrees, slowly but surely, over time, a little at a time, more and more, progressively, small steps, in stages, gently over
at-once: sudden, suddenly, all of a sudden, at once, right away, straight away, straightaway, immediate, immediately, instantly, instant, no warning, without warning, abruptly, right here, on the spot, all at once, in one go, quick as a flash, out of nowhere, right off, right after
slightly: a little, little bit, a little bit, a bit, slightly, slight, somewhat, a touch, small amount, a tad, kind of, sort of, just a bit, a small bit
very: very, much, a lot, lots, really, extremely, super, great, greatly, highest degree, ever so, a great deal, incredibly, highly, quite a lot
most: most, possible, as possible, as can be, as you can, to the highest degree, utmost, extreme, as much as possible
more: more
less: less, fewer, not so
rather: rather, fairly, quite, pretty
enough: enough, sufficiently
not-too-much: not too much, not so much, not overly, do not overdo it, without overdoing it, in moderation, but not too, not too, within limits, in bounds
always: always, all the time, the whole time, throughout, all the way through, constantly, continually, continuously, forever, until told otherwise, keep it up
again: again, once more, another time, still
also: also, too, as well
like: as if, like a, in the style of, in the manner of, similar to, in style of, sounding like
almost: almost, nearly, as though, just about, practically
only: only, just, nothing but, solely
without: without, no, not have, minus, take off, take away, remove, off
but: but, yet, however
until: until, till, up to, as far as, all the way to
first: first, 1st
second: second, 2nd
every: every, each
all: all, whole, everything, entire
everyone: everybody, everyone, all players, whole group, whole orchestra, full orchestra, whole band, full band, whole section, all together, everyone together, all of us, whole ensemble
alone: alone, by yourself, on your own, one player, single player, only one, one person, unaccompanied, by itself, solo
split: split, divide, divided, dividing, separate parts, two groups, share out, in parts, into parts
together: together, on the same note, at the same time, same time, in unison, one line, same notes, same line, same part
level-p: soft, softly, quiet, quietly, not loud, low volume
level-f: loud, loudly, strong, strongly, noisy, high volume, full volume
short: short, shortly, clipped, brief, cut short, crisp, cut off
separated: separate, separated, separately, detached, apart, spaced, gap, gaps, unconnected, not connected, not joined, disconnected, not smooth, spread apart
joined: joined, join, joined up, connected, connect, smooth, smoothly, no gaps, no gap, without a gap, without gaps, tied together, bound, linked, glued, slurred, seamless
full-length: full length, full value, whole length, whole value, held, hold, sustain, sustained, hold out, held out, keep the tone going, all of its length
long: long, lengthened, longer, lengthen
accented: accent, accented, stress, stressed, emphasis, emphasize, emphasise, emphasized, stand out, marked, strong start, extra force, attack, hit harder, punch, lean on
hard-start: hammered, hammer, hit hard, hard start, hard, strike, struck, pound, bite, biting
soft-start: soft start, gentle start, light start
break: break, stop the sound, silence between, cut, pause briefly, short silence
pause: pause, wait, hold, held, hold on, stop and wait, stay, hang on, linger
silence: no playing, not playing, nothing to play, silent, silence, do not play, not play, stop playing, stops playing, rest, sit out, be quiet, quiet everyone, say nothing, stay silent, nobody plays, no one plays, no sound
nothing: nothing, no sound left, disappear, vanish, into silence, until gone, gone, out of hearing, cannot be heard, inaudible, lost
repeat: repeat, play again, play it again, play twice, do it again, go back and play, over again, go round again
to-start: go back to the start, go back to the beginning, back to the start, back to the beginning, back to the top, from the top, from the beginning, from the start, from the head, return to the beginning, return to the start, restart, start over, start again, beginning again, jump to the start, jump to the beginning
to-sign: back to the sign, from the sign, to the sign, go to the sign, return to the sign, jump to the sign, repeat from the sign
to-coda: to the coda, jump to the coda, go to the coda, skip to the coda, skip to the ending, jump to the ending
ending: ending, tail, closing section, final section
end: end, finish, finished, stop here, close, conclusion, the end, finale
go-on: go straight on, keep going, carry on, continue, straight on, without stopping, without a break, without a pause, without pause, no pause, no break, do not stop, next movement, next section, immediately on, non stop
same-way: same way, in the same way, likewise, similarly, keep doing, continue the same, as just marked, same as before, same pattern, keep doing it, carry on like that, carry on the same way
before: before, earlier, previously, at first, first time
page: page, turn the page, turn page, page turn, turn over
sad: sad, sadly, unhappy, sorrowful, sorrow, sorrowfully, mournful, gloomy, grief, grieving, melancholy, tearful, downcast, weeping, crying, tears, lamenting, plaintive, pain, painful, miserable, depressed, heartbroken, blue
happy: happy, happily, cheerful, cheerfully, merry, merrily, jolly, joyful, joyfully, joyous, joy, glad, gleeful, jovial, fun, full of fun, delighted, good mood
lively: lively, livelier, animated, animation, full of life, life, alive, vivacious, bouncing, wide awake, perky, peppy, with pep, liven up, enliven
energetic: energetic, energy, energetically, vigorous, vigor, vigour, drive, forceful, force, dynamic energy, powerful, power, strength, strong, spirited, spirit, gusto
calm: calm, calmly, peaceful, peacefully, tranquil, tranquility, relaxed, serene, restful, still, untroubled, at peace, peace, placid, soothing
sweet: sweet, sweetly, sweetness, charming, lovely, honeyed
gentle: gentle, gently, tender, tenderly, tenderness, delicate, mild, kind
loving: loving, love, lovingly, affection, affectionate, affectionately, fond, heart
majestic: majestic, majestically, majesty, stately, royal, regal, kingly, dignified, dignity, noble, nobly, grand, grandly, pompous, pomp, grandeur, like a king, like a queen, splendid, imposing
heavy: heavy, heavily, weight, weighty, ponderous, massive, weighed down
light: light, lightly, lightness, airy, nimble, delicate, feathery, dainty, weightless
fiery: fire, fiery, burning, flaming, flame, blazing, hot
passionate: passion, passionate, passionately, ardent, intense, intensely, strong feeling
angry: angry, anger, angrily, furious, furiously, fury, rage, raging, mad, fierce, fiercely, ferocious, savage
playful: playful, playfully, joking, joke, jokingly, humor, humour, humorous, funny, comic, teasing, jesting, mischievous, whimsical, cheeky, silly, like a game, jest
mysterious: mysterious, mysteriously, mystery, secret, secretly, spooky, hidden, eerie
dreamy: dreamy, dreaming, dream, dreamily, sleepy, lost in thought
singing: singing, sing, song, songlike, song like, in a singing style, vocal, lyrical, melodious, singable, singer
graceful: graceful, gracefully, grace, elegant, elegantly, elegance, charm, charming, dainty, pretty
broad: broad, broadly, wide, spacious, broadening, broaden, widen, widening, stretched, roomy
expressive: expressive, expressively, expression, feeling, feelings, emotion, emotional, emotionally, sensitive, with meaning
solemn: solemn, solemnly, serious, seriously, grave, gravely, ceremonial, ceremony, funeral, reverent
marching: march, marching, military, soldier, soldierly, martial, army
simple: simple, simply, plain, plainly, unadorned, nothing fancy, without decoration, nothing added
dark: dark, gloomy, shadowy, dim, black
bright: bright, brightly, brilliant, brilliantly, brilliance, sparkling, sparkle, sparkly, shining, shiny, glittering, glitter, showy, dazzling
bold: bold, boldly, brave, bravely, heroic, hero, daring, courage, determined, determination, decided, decisive, resolute, sure, confident, confidently, firm, firmly
restless: restless, agitated, excited, excitedly, excitement, troubled, nervous, anxious, stirred up, worked up, worried, upset, unsettled, agitation
whispering: whisper, whispering, whispered, hushed, hush, under your breath, undertone, murmur, murmuring, low voice, hushed voice, quiet voice, under the voice
heartfelt: heartfelt, soul, soulful, from the heart, inward, sincere
rough: rough, roughly, harsh, harshly, coarse, gruff
rhythmic: rhythmic, rhythm, rhythmical, with a strong beat
speaking: speaking, speak, speech, talking, talk, spoken
distant: distant, far away, far off, from a distance, in the distance, faraway
longing: longing, yearning, wistful, homesick
prayerful: prayer, prayerful, religious, devout, hymn, holy, church
stormy: storm, stormy, wild, wildly, tumult, tempest, violent, impetuous, rushing
comfortable: comfortable, comfortably, comfort, at ease, easy going, leisurely, cozy, cosy, leisure
flowing: flowing, flow, running along, like water, flowing along
dry: dry, dryly, no ring
triumphant: triumph, triumphant, victorious, victory
proud: proud, proudly, pride
fading: fade, fading, die, dying, vanishing, fade away, fade out, die away, die out, lose itself
hurried: hurry, hurried, haste, hasty, hastily, rush, rushed, in a hurry, in a rush
movement: movement, motion, moving, move, moved
then: then, followed by, and then
walking: walk, walking, walking speed, walking pace, strolling, stroll
dance: dance, dancing, dance like
night: night, evening
pluck: pluck, plucked, plucking, pick the string, pick the strings, with finger, with fingers, use your fingers, pull the string, pull the strings
bow: bow, bowed, bowing
wood: wood, wooden, stick, back of the bow, wood of the bow, stick of the bow
bounce: bounce, bouncing, bouncy, bounced, hop, hopping, spring, springing, jump, jumping
tip: tip, point of the bow, top of the bow
frog: frog, heel, nut
mute: mute, muted, muting
bridge: bridge
fingerboard: fingerboard, finger board, neck
string: string, strings, violin, viola, cello, fiddle, double bass, bass, stringed
brass: brass, horn, trumpet, trombone, tuba, cornet, euphonium
wind: wind, woodwind, flute, clarinet, oboe, bassoon, sax, saxophone, recorder
percussion: percussion, drum, snare, cymbal, timpani, drums, stick
keyboard: keyboard, piano, organ
ordinary: normal way, normally, ordinary, ordinarily, usual way, regular way, naturally, natural, normal, nothing special
octave: octave
higher: higher, up
lower: lower, down
left: left
right: right
hand: hand
voice: voice
tongue: tongue, tonguing, tongued
breathe: breathe, breath, breathing, take a breath
ring: ring, ringing, let it ring, let ring, let it sound, vibrate, keep sounding
slide: slide, sliding, glide, gliding, smear, slither
shake: shake, trill, switch, switch back and forth, back and forth, alternate, alternating, switch fast, flutter
waver: wobble, wobbly, waver, wavering, pitch swing, swing the pitch, shake the pitch, shaking sound
tremble: trembling, tremble, shaking, shiver, shivering
spread: spread, roll, rolled, one after another, one after the other, like a harp, harp
follow: follow, following, stay with
main: main, important, most important
bring-out: bring out, brought out, stand out, foreground, heard above
optional: instead, alternative, another version, or else, choose
count: count, counting, beats
speed: speed, tempo, pace, time
begin: begin, beginning, start, starting, opening, top
above: above, over, on top, on top of, atop, up top
below: below, under, underneath, beneath, at the bottom
beside: beside, next to, by the side, alongside, close, close to, by, right of, left of, side, to the right, to the left, near, each side, in front of, before, after, behind
between: between, each side, either side, both sides
note-to-note: between two notes, between notes, note to note, one note to another, one note to the next, joining two notes, joins two notes, notehead to the next, to the next note, two notes
dot: dot, dots, point, spot, period, full stop, speck, dotted
line: line, lines, dash, stroke, bar, stick, streak, straight line, underline
dashed: dashed, dashes, broken line, dotted line, row of dashes, dashed line
zigzag: zigzag, zig zag, squiggle, squiggly, jagged, wiggle, saw tooth, teeth, lightning
wavy: curly, wavy, wave, wiggle, wiggly, squiggle, squiggly, snake, snaky, worm
curve: curve, curved, curved line, arc, arch, rainbow, bow shaped, smile, curvy, swoop, loop, banana, bend
circle: circle, ring, round, o, zero, ball, circular, oval, loop
half-circle: half circle, semicircle, half moon, dome, eyebrow
hat: hat, roof, tent, caret, upside down v, pointed hat, housetop, pointy, pointed, arrow head pointing up, teepee, mountain, inverted v
sideways-v: sideways v, greater than, greater than sign, v on its side, v lying on its side, arrow head, arrowhead, less than, less than sign, like an arrow, >, <
wedge: wedge, hairpin, opening, closing, triangle, carrot, teardrop
widening: getting wider, opens, opening, opening up, widening, spreading, get bigger, getting bigger, spread apart, less than, opens to the right
narrowing: getting narrower, closes, closing, narrowing, get smaller, getting smaller, comes together, run together, greater than
cross: cross, crossed, plus, plus sign, x, cross shaped, crosshair, crosshairs, target, +
slash: line down, line down the middle, vertical stroke, cut in half, slash, slashes, slashed, slanted line, slanting line, diagonal, diagonal line, slanted, slanting, stroke through, line through, crossed by, cut by, line through it, struck through, crossed out, strikethrough, crossing, stroke across
tracks: railroad, railway, train, tracks, tram, rails
comma: comma, apostrophe, tick, check mark, quote mark
bracket: bracket, square bracket, brackets, parentheses, staple
box: box, square, boxed, rectangle, table
star: star, asterisk, flower, snowflake
eye: eye, bird, birds eye, bird eye
letter: letter, letters
number: number, numeral, digit, numbers, figure
equals: equals, equal, =
small: smaller, small print, small, tiny, little, miniature, mini, short, baby, teeny
big: big, large, capital, huge, fancy big
falling: falling, falls, drop, dropping, droop, drooping, going down, goes down, downward, downwards, sliding down
rising: rising, rise, going up, goes up, upward, upwards, sliding up, slides up
fancy: fancy, curly, swirly, ornate, curvy, script
thick: thick, fat, heavy line, bold line, solid, dark line
thin: thin
two: two, double, pair, couple, twice, 2
three: three, triple, trio, 3
four: four, 4
upright: upright, vertical, standing, up and down, straight up
upside-down: upside down, turned over, inverted, backwards, flipped, reversed
sideways: sideways, lying on its side, on its side, lying down, lying, on the side
stem: stem, stalk, note stem
notehead: notehead, note head, head
sticking-out: sticking out, sticks out, poking out, pokes out, coming out, comes out, through its top, out of the top, out of its top, with a tail
diamond: diamond, rhombus
chord: chord, stack, stacked
percent: percent, percent sign
staff: staff, stave
measure: measure, measures, bars
barline: barline, bar line, barlines, bar lines, double line, double bar, thin line, thick line, thin and thick line
empty: empty, blank, no notes
same: same pitch, same note, same notes, two same, same, the same
different: different, different notes, different pitch
grace: tiny note, small note, little note, mini note, baby note, miniature note
`;

/** Concepts that modifiers are made of. */
export const HOW_MUCH = new Set(
  (
    "gradually at-once slightly very most more less rather enough not-too-much always again also " +
    "like almost only without but until first second every all"
  ).split(" "),
);

/** Concepts that a description of a sign names or leaves out as it happens. */
export const BY_THE_WAY = new Set(
  "small big above below beside between staff letter short long note stem".split(" "),
);

/** Concepts of speed and of loudness: who asks for one wants a term of that kind. */
export const SPEED_CONCEPTS = new Set(
  (
    "slow fast moderate slower faster back-to-speed first-speed free-time strict-time same-speed " +
    "double-speed walking speed"
  ).split(" "),
);
export const LOUDNESS_CONCEPTS = new Set("level-p level-f louder softer".split(" "));

/** Concepts that only a sign's looks can mean; without one of them a query describes no sign. */
export const SHAPE_CONCEPTS = new Set(
  (
    "dot line dashed zigzag wavy curve circle half-circle hat sideways-v wedge widening narrowing " +
    "cross slash tracks comma bracket box star eye letter number equals thick thin upright " +
    "upside-down sideways stem notehead diamond percent staff barline grace sticking-out"
  ).split(" "),
);

/** Words that say nothing by themselves in a query or a meaning. */
export const ENGLISH_FILLER = new Set(
  (
    "a an the of to it its this that these those you your i me my we is are be been am was were will " +
    "in into for by from as or and at on up there here then than so do does did doing done get " +
    "gets getting become becomes make makes making play plays playing played perform performed go " +
    "goes going went be being some any kind thing stuff way very something someone when where which " +
    "who how what if let put use used using one note notes music piece part have has looks look " +
    "shaped shape sign symbol mark marking it's sound sounds can could would should like other style manner through across along around about out"
  ).split(" "),
);

/** Words round the thing asked for: "what does … mean", "the word for …". */
export const QUESTION_WORDS = new Set(
  (
    "what whats what's does do is are the a an mean means meaning of define definition sign symbol " +
    "term word words music musical for in called how you say please that looks like marking mark " +
    "notation translate translation"
  ).split(" "),
);
