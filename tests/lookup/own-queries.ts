/**
 * Queries of our own, of the same six classes as the outside list, each batch
 * written before the look-up had seen it. `tuned` was looked at while building;
 * of `untouched` only the totals ever were, so no miss of it led to a change.
 * Where the glossary has since gained an entry that is as right, it was added.
 * One query a line: query | right headwords | class.
 */
import type { QueryClass, RightQuery } from "./measure";

const TUNED = `
rall | rallentando | abbreviation
dim. | diminuendo | abbreviation
decresc. | decrescendo | abbreviation
marc. | marcato | abbreviation
stacc. | staccato | abbreviation
ppp | pianississimo | abbreviation
fp | fortepiano | abbreviation
sfp | sforzando piano | abbreviation
D.S. al Fine | dal segno al fine | abbreviation
dc al fine | da capo al fine | abbreviation
gliss | glissando | abbreviation
trem. | tremolo | abbreviation
tr | trill; trillo | abbreviation
con sord. | con sordino | abbreviation
sul pont | sul ponticello | abbreviation
G.P. | grand pause; Generalpause | abbreviation
a2 | a due | abbreviation
8vb | ottava bassa; octave line below | abbreviation
u.c. | una corda | abbreviation
m.d. | mano destra | abbreviation
cresc poco a poco | crescendo poco a poco; crescendo; poco a poco | abbreviation
poco rit | poco rit. | abbreviation
ped | pedale; Pedal; pedal | abbreviation
tempo I | tempo primo | abbreviation
non div | non divisi | abbreviation
fortissamo | fortissimo | misspelling
crecendo | crescendo | misspelling
diminuindo | diminuendo | misspelling
ritardendo | ritardando | misspelling
accelorando | accelerando | misspelling
adaggio | adagio | misspelling
andanteeno | andantino | misspelling
vivachay | vivace | misspelling
vivachi | vivace | misspelling
largow | largo | misspelling
allegrow | allegro | misspelling
kantabile | cantabile | misspelling
stackato | staccato | misspelling
tenootoe | tenuto | misspelling
spickato | spiccato | misspelling
pitsicato | pizzicato | misspelling
majestoso | maestoso | misspelling
dolcheh | dolce | misspelling
skertso | scherzo | misspelling
sotto vochay | sotto voce | misspelling
metsa vochay | mezza voce | misspelling
con fwoco | con fuoco | misspelling
con breeo | con brio | misspelling
trankwillo | tranquillo | misspelling
subeeto | subito | misspelling
sempray | sempre | misspelling
tooty | tutti | misspelling
semplichay | semplice | misspelling
pesantay | pesante | misspelling
fortay | forte | misspelling
metzo forte | mezzo forte | misspelling
dal senyo | dal segno | misspelling
feenay | fine | misspelling
tasset | tacet | misspelling
attaka | attacca | misspelling
arko | arco | misspelling
devisi | divisi | misspelling
doosmon | doucement | misspelling
veet | vite | misspelling
laybhaft | lebhaft | misspelling
roohig | ruhig | misspelling
zair langsam | sehr langsam; sehr; langsam | misspelling
mit owsdruck | mit Ausdruck | misspelling
tray lent | très lent; très; lent | misspelling
lay say vibray | laissez vibrer | misspelling
agitati | agitato | inflection
tranquilla | tranquillo | inflection
misteriose | misterioso | inflection
leggierissimo | leggiero | inflection
calma | calmo; con calma | inflection
prestissima | prestissimo; presto | inflection
vivaci | vivace | inflection
lentissima | lentissimo; lento | inflection
graziosi | grazioso | inflection
feurige | feurig | inflection
ruhige | ruhig | inflection
schnelle | schnell | inflection
gracieuse | gracieux | inflection
mystérieuse | mystérieux | inflection
légère | léger | inflection
marcate | marcato | inflection
delicatissimo | delicato | inflection
energicamente | energico; con energia | inflection
pesantemente | pesante | inflection
soutenue | soutenu | inflection
bewegte | bewegt | inflection
rapidement | rapide | inflection
tristement | triste | inflection
andante grazioso | andante; grazioso | compound
allegro assai | allegro; assai | compound
più lento | più; lento | compound
molto cresc. | molto; crescendo; crescendo molto | compound
dim. e rit. | diminuendo; ritardando; ritenuto | compound
pp subito | pianissimo; subito | compound
mf cantabile | mezzo forte; cantabile | compound
sehr lebhaft | sehr; lebhaft | compound
etwas langsamer | etwas; langsamer; langsam | compound
nicht zu schnell | nicht zu; schnell; nicht | compound
un peu plus lent | un peu; plus lent; un peu plus | compound
vivace ma non tropo | vivace; ma non troppo | compound
presto con fuoco | presto; con fuoco | compound
pizz. sempre | pizzicato; sempre | compound
poco a poco dim. | poco a poco; diminuendo | compound
sempre più forte | sempre più; più forte; sempre; forte | compound
allegreto grazioso | allegretto; grazioso | compound
tempo di minuetto | tempo di menuetto | compound
arco sul tasto | arco; sul tasto | compound
cresc. ed accel. | crescendo; accelerando | compound
quasi recitativo | quasi; recitativo | compound
fff tutta forza | fortississimo; tutta forza | compound
mit Dämpfer und sehr zart | mit Dämpfer; sehr; zart | compound
molto legatto e cantabile | molto; legato; cantabile | compound
slow down little by little | ritardando; rallentando; lentando; slentando; zögernd; ralentir; nachlassend | meaning
get faster | accelerando; stringendo; affrettando; più mosso; schneller; plus vite | meaning
get softer | diminuendo; decrescendo; calando; leiser | meaning
suddenly soft | subito piano | meaning
suddenly loud | subito forte | meaning
loud | forte; laut | meaning
soft | piano; leise; doux; weich | meaning
medium soft | mezzo piano | meaning
very loud | fortissimo | meaning
very fast | presto; prestissimo; allegro molto; très vite; vivacissimo; velocissimo | meaning
very slow | largo; grave; sehr langsam; très lent; larghissimo; lentissimo; adagissimo | meaning
slow | lento; adagio; langsam; lent | meaning
the end | fine; Schluss | meaning
french for slow | lent; lentement | meaning
german for fast | schnell; rasch; geschwind | meaning
sad | triste; mesto; traurig; tristamente; con tristezza; doloroso | meaning
playful | scherzando; giocoso; scherzoso; scherzhaft; capriccioso | meaning
angry | irato; furioso; con rabbia; rabbioso | meaning
in a hurry | frettoloso; con fretta; affrettando; eilig | meaning
with energy | energico; con energia; energisch; énergique; con brio | meaning
take the mute off | senza sordino; ohne Dämpfer; ôtez la sourdine | meaning
use a mute | con sordino; mit Dämpfer; sourdine; sordino; mute | meaning
right hand | mano destra; main droite | meaning
play freely, you choose the speed | ad libitum; a piacere; rubato; tempo rubato; a capriccio; liberamente; frei; libre; senza misura; a bene placito | meaning
split into two groups | divisi; divisés; geteilt | meaning
same speed | l'istesso tempo; même mouvement | meaning
let it ring | laissez vibrer; lasciare vibrare; klingen lassen | meaning
hold the note for its full length | tenuto; tenu; gehalten; sostenuto | meaning
like a march | alla marcia; marschmässig; tempo di marcia; marziale; marcia | meaning
dreamy | sognando; träumerisch; rêveur | meaning
bounce the bow | spiccato; saltando; sautillé; jeté | meaning
play over the fingerboard | sul tasto; am Griffbrett; sur la touche | meaning
go straight on without a break | attacca; segue | meaning
little by little | poco a poco; nach und nach; peu à peu | meaning
but not too much | ma non troppo; non troppo | meaning
as loud as possible | fortississimo; forte possibile; tutta forza | meaning
dying away | morendo; en mourant; ersterbend; mancando; smorzando; perdendosi; verklingend | meaning
in strict time | streng; a battuta; alla misura; in tempo; im Takt; tempo giusto; im Tempo | meaning
dot under a note | staccato dot; staccato | symbol
dash over a note | tenuto line; tenuto | symbol
greater than sign over note | accent | symbol
upside down v over note | hat accent; marcato | symbol
v above a violin note | up-bow; Aufstrich; poussez | symbol
three slashes through the stem | tremolo; flutter tongue; roll | symbol
curved line between two same notes | tie | symbol
half circle with a dot in it | fermata | symbol
two slashes at the top of the staff | caesura | symbol
S lying on its side | turn; gruppetto | symbol
squiggle with a line through it | mordent; mordente | symbol
apostrophe above the staff | breath mark | symbol
C time signature | common time | symbol
wedge getting narrower | closing hairpin; diminuendo; hairpin; decrescendo | symbol
box with number 1 over the bars | first ending; prima volta | symbol
3 over a group of notes | triplet | symbol
target sign | coda; to coda | symbol
x instead of a note head | x notehead | symbol
diamond shaped note | diamond notehead; harmonic | symbol
star under the piano staff | pedal release | symbol
letter in a box | rehearsal mark | symbol
slash and two dots like a percent sign | measure repeat; one-bar repeat | symbol
dot and line together over a note | line with dot; portato | symbol
little triangle over note | staccatissimo wedge; staccatissimo | symbol
thin line then thick line at the very end | final barline | symbol
line falling off the end of a note | fall-off | symbol
small number above a note for a finger | fingering | symbol
smorz. | smorzando | abbreviation
stringendo molto | stringendo; molto | compound
perd. | perdendosi | abbreviation
allarg | allargando | abbreviation
affrett. | affrettando | abbreviation
D.S. | dal segno | abbreviation
da capo al coda abbr dc al coda | da capo al coda; da capo | abbreviation
ord. | modo ordinario | abbreviation
nat. | naturale | abbreviation
col leg | col legno | abbreviation
Ped. | pedale; Pedal; pedal | abbreviation
tutti unis. | tutti; unisono | compound
rinf. | rinforzando | abbreviation
sffz | sforzatissimo | abbreviation
mp cresc | mezzo piano; crescendo | compound
trattenooto | trattenuto | misspelling
lahrgo | largo | misspelling
lahrghetto | larghetto | misspelling
lentoh | lento | misspelling
prestow | presto | misspelling
scherzandoe | scherzando | misspelling
skertsando | scherzando | misspelling
jokoso | giocoso | misspelling
graziozo | grazioso | misspelling
maystoso | maestoso | misspelling
leggeeairo | leggiero | misspelling
kon moto | con moto | misspelling
kon sordino | con sordino | misspelling
andantey | andante | misspelling
moltoh | molto | misspelling
assigh | assai | misspelling
nontropo | non troppo | misspelling
poko a poko | poco a poco | misspelling
pew mosso | più mosso | misspelling
alargand | allargando | misspelling
ritenooto | ritenuto | misspelling
accellarando | accelerando | misspelling
diminuendoe | diminuendo | misspelling
morrendo | morendo | misspelling
calondo | calando | misspelling
portammento | portamento | misspelling
trillow | trillo; trill | misspelling
tremelow | tremolo | misspelling
glissondo | glissando | misspelling
obligatto | obbligato | misspelling
capriciosso | capriccioso | misspelling
religiozo | religioso | misspelling
sostenutoe | sostenuto | misspelling
veevo | vivo | misspelling
tray veet | très vite; très; vite | misspelling
lontemon | lentement | misspelling
mowderay | modéré | misspelling
sourdeen | sourdine | misspelling
ainyg | innig | misspelling
gemutlick | gemütlich | misspelling
krefftig | kräftig | misspelling
langsum | langsam | misspelling
mit ausdruk | mit Ausdruck | misspelling
etvas | etwas | misspelling
zart lich | zärtlich | misspelling
ariosa | arioso | inflection
bewegten | bewegt | inflection
animez | animez; animé | inflection
capricciosa | capriccioso | inflection
dolorosamente | doloroso | inflection
feierlichen | feierlich | inflection
gravi | grave | inflection
lebhaftes | lebhaft | inflection
mesta | mesto | inflection
nobili | nobile | inflection
pomposa | pomposo | inflection
rallentato | rallentando | inflection
religiosa | religioso | inflection
rythmée | rythmé | inflection
sostenuti | sostenuto | inflection
sonora | sonoro | inflection
tenera | teneramente | inflection
tranquillamente | tranquillo | inflection
vigorosa | vigoroso | inflection
zartes | zart | inflection
poco meno allegro | poco; meno; allegro | compound
pizz. e marc. | pizzicato; marcato | compound
assez lent | assez; lent | compound
con moto ma non troppo | con moto; ma non troppo | compound
doux et expressif | doux; expressif | compound
etwas bewegter | etwas; bewegter | compound
ff sempre | fortissimo; sempre | compound
largo e sostenuto | largo; sostenuto | compound
leicht und zart | leicht; zart | compound
mp espressivo | mezzo piano; espressivo | compound
più mosso e con fuoco | più mosso; con fuoco | compound
plus animé et plus fort | plus animé; plus | compound
poco rall. | poco; rallentando | compound
senza rit. | senza; ritardando; ritenuto | compound
sul G espressivo | sul G; espressivo | compound
tutti pizz | tutti; pizzicato | compound
vivo e leggero | vivo; leggiero | compound
a slow waltz | ländlermäßig; waltz; valse; tempo di valse; lento | meaning
become faster and faster | accelerando; stringendo; affrettando | meaning
with the wood of the bow | col legno | meaning
play short notes | staccato; staccatissimo | meaning
press the soft pedal | una corda | meaning
very short and detached | staccatissimo | meaning
a little faster | poco più mosso; più mosso | meaning
moderate speed | moderato; mässig; modéré; tempo ordinario | meaning
with spirit | con spirito; spiritoso; con brio | meaning
in the style of a march | alla marcia; marschmässig; marcia; marziale; tempo di marcia | meaning
without vibrato | senza vibrato | meaning
expressively | espressivo; con espressione; expressif; ausdrucksvoll; mit Ausdruck | meaning
heavy and slow | pesante; grave; schwer; schleppend | meaning
very lively | vivacissimo; vivace; allegro vivace | meaning
sweet and gentle | dolce; douce; soave; dolcemente; doux | meaning
whispering | sussurrando; sotto voce; flüsternd; mormorando | meaning
play as written again, not an octave up | loco | meaning
every player gets their own line | divisi | meaning
agitated | agitato; agité; aufgeregt | meaning
bring this part out | en dehors; hervortretend; Hauptstimme | meaning
broadening | allargando; slargando; élargir; verbreitern; élargissez | meaning
bouncy bow | spiccato; saltando; sautillé; jeté | meaning
calm | calmo; tranquillo; ruhig; calme; quieto; tranquille | meaning
joyful | gioioso; joyeux; freudig; giocoso; fröhlich | meaning
noble | noble; nobile; nobilmente | meaning
passionate | appassionato; passionato; leidenschaftlich; passionné; con passione | meaning
less loud | meno forte | meaning
same as before | simile; come prima; come sopra; wie vorher | meaning
first time through only | first ending; prima volta; second time only | meaning
skip to the ending section | coda; al coda; to coda | meaning
everyone plays the same notes | unisono; tutti; zusammen | meaning
sliding between notes | glissando; portamento | meaning
quickly repeat the same note | tremolo; tremolando | meaning
switch back and forth quickly with the note above | trill; trillo; Triller | meaning
half as loud | mezzo forte; mezza voce; mezzo | meaning
at a comfortable speed | comodo; tempo comodo | meaning
french for very | très | meaning
german for lively | lebhaft; munter; belebt | meaning
german word for always | immer | meaning
italian for sweet | dolce | meaning
french for soft | doux; douce; doucement | meaning
bold and determined | risoluto; deciso; entschlossen | meaning
in a mysterious way | misterioso; geheimnisvoll; mystérieux | meaning
circle above a note on trumpet | open | symbol
plus sign above trumpet note | stopped | symbol
dot inside half circle | fermata | symbol
line with a dot under it above a note | line with dot; portato | symbol
little hat over a note | hat accent; marcato | symbol
long curved line over a whole phrase | phrase mark; slur | symbol
two vertical lines one thick | final barline | symbol
letter n upside down square | down-bow | symbol
zigzag line next to a chord | arpeggio | symbol
wiggle above a note with a stroke | mordent | symbol
S with a line and dots | segno | symbol
oval with a cross in it | coda | symbol
tick above the staff | breath tick; breath mark | symbol
big rest with number 8 above | multimeasure rest | symbol
letter tr and wavy line | trill; trill line | symbol
8va with dashed line below the notes | octave line below; ottava bassa | symbol
two note heads equal sign swing | swing | symbol
half note equals 60 | metronome mark | symbol
3 with a bracket | triplet | symbol
diagonal line between two notes | glissando; portamento; slide line | symbol
double dots and thin thick lines | repeat sign | symbol
curve from one note to the same note | tie | symbol
tiny note before the main note | grace note; acciaccatura; appoggiatura | symbol
dot to the right of a note | dotted note | symbol
c on the staff with slash | cut time | symbol
lines through the stem of a note | tremolo; measured tremolo; roll; flutter tongue | symbol
number in a box | rehearsal mark | symbol
f under the staff | forte | symbol
get quieter little by little | diminuendo; decrescendo; calando; abnehmend; en diminuant | meaning
increase the speed | accelerando; affrettando; stringendo; pressez; beschleunigen | meaning
suddenly quiet | subito piano | meaning
very quiet | pianissimo; très doux | meaning
moderately loud | mezzo forte; poco forte | meaning
extremely loud | fortississimo; fortissimo; ffff | meaning
as soft as possible | pianississimo; pianissimo possibile; quasi niente | meaning
strong accent on one note | sforzando; forzando; sforzato; accent; marcato; forzato | meaning
not so fast | meno mosso; moins vite; non troppo; nicht zu; nicht zu schnell; ma non troppo | meaning
medium tempo | moderato; mässig; modéré; tempo ordinario | meaning
fast and cheerful | allegro; vivace; allegretto; gai | meaning
rather slow | andante; larghetto; adagietto; assez; andantino | meaning
very slow and solemn | grave; largo | meaning
faster than allegro | presto; vivace; allegro molto; allegrissimo; vivacissimo | meaning
slower than adagio | largo; adagissimo; grave; lento; larghissimo | meaning
go back to the beginning and stop at the end mark | da capo al fine | meaning
go to the coda | al coda; to coda; coda; da capo al coda; dal segno al coda | meaning
repeat from the sign | dal segno | meaning
play it twice | bis; repeat sign; number of times | meaning
don't hurry | nicht eilen; sans presser | meaning
without dragging | nicht schleppen; sans traîner; sans lenteur | meaning
keep a steady beat | tempo giusto; in tempo; im Takt; a battuta; alla misura | meaning
slightly | poco; un poco; etwas; un peu; ein wenig; pochettino | meaning
very much | molto; assai; sehr; très; beaucoup; di molto | meaning
more and more | sempre più; immer mehr; poco a poco; de plus en plus | meaning
with | con; avec; mit | meaning
but | ma; mais; aber | meaning
almost | quasi; presque; fast | meaning
only | nur; solo; seulement | meaning
very expressive | très expressif; espressivo; molto espressivo | meaning
with tenderness | con tenerezza; teneramente; tendrement; affettuoso; zart; zärtlich; tendre | meaning
with grace | con grazia; grazioso; gracieux; avec grâce | meaning
with strength | con forza; kräftig; forza; mit Kraft | meaning
with great energy | con energia; energico; energisch; énergique; con brio | meaning
in a rage | con rabbia; rabbioso; irato; furioso; con furia | meaning
mournful | mesto; doloroso; dolente; funebre; triste; lamentoso; elegiaco; klagend | meaning
sorrowful | doloroso; dolente; mesto; con dolore; con duolo; triste; schmerzlich; douloureux | meaning
religious | religioso | meaning
proud | fiero; fier; stolz | meaning
brilliant and showy | brillante; con bravura | meaning
simple | semplice; einfach; simplement; schlicht; simple | meaning
dry and short | secco; sec | meaning
light | leggiero; léger; leicht | meaning
joking | scherzando; scherzoso; scherzhaft; scherzo; burlesco; giocoso | meaning
like a song | cantabile; cantando; arioso; chantant; gesangvoll; aria | meaning
majestically | maestoso; majestätisch; majestueux; con maestà | meaning
far away | lontano; lointain | meaning
restless | inquieto; agitato; unruhig; agité; inquiet | meaning
stormy | tempestoso; stürmisch; tumultuoso; orageux; impetuoso | meaning
tenderly | teneramente; tendrement; zart; zärtlich; affettuoso; con tenerezza; tendre | meaning
free and improvised solo | cadenza; fantasia; ad libitum | meaning
the whole orchestra plays | tutti; alle; tous | meaning
each player takes a different note | divisi; divisés; geteilt | meaning
muted | con sordino; gedämpft; mit Dämpfer; mute; sourdine; gestopft | meaning
cover the bell with your hand | stopped; gestopft; bouché; half-stopped | meaning
hit the rim and the drum together | rim shot | meaning
draw the bow down | down-bow; Abstrich; tirez | meaning
push the bow up | up-bow; Aufstrich; poussez | meaning
bow near the frog | al tallone; am Frosch; au talon | meaning
tip of the bow | punta d'arco; an der Spitze; à la pointe | meaning
every note with its own bow stroke | détaché | meaning
bounce the stick fast on the drum | roll; buzz roll; drag | meaning
make your sound wobble | vibrato | meaning
hold the last note as long as you want | fermata | meaning
stop and breathe | breath mark; caesura; breath tick | meaning
no playing for the whole movement | tacet | meaning
quick little ornament above the note | inverted mordent; mordent; Pralltriller; trill; turn; appoggiatura; grace note | meaning
three notes in the space of two | triplet | meaning
long silence for everybody | grand pause; Generalpause; lunga pausa | meaning
play in unison | unisono; zusammen; a due; all'unisono | meaning
half note gets the beat | cut time; alla breve | meaning
a dot on top of the note head | staccato dot; staccato | symbol
little dash above the note | tenuto line; tenuto | symbol
arrowhead over the note pointing right | accent | symbol
pointed roof above the note | hat accent; marcato | symbol
dot and accent on the same note | accent with dot | symbol
arc over several notes | slur; phrase mark | symbol
same note joined by a curved line | tie | symbol
dot under an arch | fermata | symbol
two slanted lines at the top of the staff | caesura | symbol
comma over the staff | breath mark | symbol
squiggly line in front of a chord | arpeggio | symbol
sideways s over the staff | turn | symbol
short wavy line above a note | inverted mordent; mordent; trill line; Pralltriller; trill | symbol
small crossed out note | acciaccatura | symbol
long angle opening up under the notes | opening hairpin; crescendo; hairpin | symbol
> stretched out under the staff | closing hairpin; diminuendo; hairpin; decrescendo | symbol
s with two dots | segno | symbol
crosshairs | coda; to coda | symbol
dots before a double bar | repeat sign | symbol
dots after a double bar | start repeat; repeat sign | symbol
bracket above the staff with 1. | first ending; prima volta | symbol
bar rest with a number over it | multimeasure rest | symbol
v over note on the cello | up-bow | symbol
staple shape over a note | down-bow | symbol
small o over a violin note | harmonic; open string | symbol
small cross over a violin note | left-hand pizzicato; stopped | symbol
stem with three slashes | tremolo; roll; flutter tongue; measured tremolo | symbol
lines between two half notes | fingered tremolo | symbol
dotted line with 8va | ottava | symbol
8 under the staff with dots | octave line below; ottava bassa | symbol
letter p twice | pianissimo | symbol
fancy letter f | forte | symbol
letters sfz | sforzando | symbol
mf under the notes | mezzo forte | symbol
A in a square | rehearsal mark | symbol
c with a vertical stroke | cut time | symbol
quarter note = 96 | metronome mark | symbol
number 3 over three notes | triplet | symbol
x shaped note | x notehead | symbol
round brackets around a note | ghost note | symbol
percent sign in a measure | measure repeat | symbol
eyeglasses | watch the conductor | symbol
bracket over bars with a 1 | first ending; prima volta | symbol
wedge getting smaller | closing hairpin; diminuendo; hairpin; decrescendo | symbol
two dots and a thin then thick line | repeat sign | symbol
curve over same notes | tie | symbol
curved line over two notes that are the same | tie | symbol
line under note | tenuto line; tenuto | symbol
wedge over note | staccatissimo wedge; staccatissimo; accent | symbol
hat on top of note | hat accent; marcato | symbol
v shape over a string note | up-bow; Aufstrich; poussez | symbol
zigzag with a line through it | mordent | symbol
s on its side above a note | turn; gruppetto | symbol
big oval with a plus sign | coda | symbol
three lines across a note stem | tremolo; roll; measured tremolo; flutter tongue | symbol
8 with a dotted line under the notes | octave line below; ottava bassa | symbol
bird's eye | fermata | symbol
squiggle going up next to a chord | arpeggio | symbol
curved line with dots under it | dots under a slur; portato | symbol
fancy P under the piano part | pedal; pedale; Pedal | symbol
thick black bar with a number | multimeasure rest | symbol
double line with two dots | repeat sign; start repeat | symbol
big C with a line down the middle | cut time | symbol
french for fast | vite; rapide; vif | meaning
german for loud | laut; stark | meaning
german for soft | leise; sanft; weich; schwach | meaning
italian for loud | forte | meaning
get softer bit by bit | diminuendo; decrescendo; calando; abnehmend; en diminuant; get softer | meaning
slow down gradually | ritardando; rallentando; ralentir; lentando; slentando | meaning
soft then suddenly loud | piano forte; piano-forte; subito forte | meaning
with mute | con sordino; mit Dämpfer; sourdine; mute; sordino | meaning
without a mute | senza sordino; ohne Dämpfer; ôtez la sourdine | meaning
with force | con forza | meaning
with movement | con moto | meaning
with passion | con passione; appassionato; con fuoco; passionato | meaning
with expression | con espressione; espressivo; mit Ausdruck; avec expression | meaning
with tenderness and love | con amore; con tenerezza; amoroso; affettuoso; teneramente; zärtlich; tendre | meaning
long pause | lunga pausa; fermata; lunga; long fermata | meaning
play in the normal way again | modo ordinario; naturale; position ordinaire | meaning
more motion | più mosso | meaning
less motion | meno mosso | meaning
a bit faster | poco più mosso; più mosso | meaning
twice as fast | doppio movimento; doppelt so schnell | meaning
getting slower and softer | calando; en mourant; perdendosi; morendo | meaning
getting slower and louder | allargando | meaning
robbed time | rubato; tempo rubato | meaning
like a dance | alla polka; tempo di valse; alla siciliana; dansant; danzante; tanzend; im Tanzschritt | meaning
octave higher | ottava; ottava alta | meaning
octave lower | ottava bassa; octave line below | meaning
two octaves higher | quindicesima | meaning
play what is written | loco | meaning
use the bow again | arco; Bogen; archet; gestrichen | meaning
hit with the wood | col legno; col legno battuto | meaning
at the tip of the bow | punta d'arco; an der Spitze; à la pointe | meaning
bowed over the fingerboard | sul tasto; am Griffbrett; sur la touche | meaning
glassy sound | sul ponticello; ponticello; am Steg; sur le chevalet | meaning
trembling | tremante; tremolo; tremolando | meaning
second time through | second ending; seconda volta; second time only | meaning
keep going without a pause | attacca; segue | meaning
very marked | marcatissimo; marcato | meaning
very smooth | legatissimo; legato; sempre legato | meaning
lightly | leggiero; leicht; léger | meaning
quietly | piano; leise; softly | meaning
gracefully | grazioso; con grazia; gracieux; anmutig | meaning
quickly | presto; vite; schnell; veloce; allegro; rasch; quick; rapide; geschwind | meaning
smoothly | legato; lié; gebunden | meaning
boldly | risoluto; animoso; con bravura; con ardire; ardito; kühn; keck | meaning
get quieter slowly | diminuendo; decrescendo; calando; morendo; get softer | meaning
speed it up | accelerando; stringendo; affrettando; più mosso; animando | meaning
keep the same tempo | l'istesso tempo; même mouvement; im gleichen Tempo | meaning
very loudly | fortissimo | meaning
not loud | piano; meno forte; mezzo piano | meaning
loud and strong | forte; con forza; stark; fortissimo | meaning
soft and sweet | dolce; doux; douce | meaning
sadly | triste; mesto; tristamente; traurig; tristement | meaning
cheerful | gai; gaio; allegro; giocoso; fröhlich; heiter; lustig | meaning
fiery | con fuoco; focoso; feurig; fuoco; fuocoso; ardente | meaning
dignified | maestoso; nobile; nobilmente; würdig; noble; dignitoso | meaning
solemn | solenne; feierlich; grave; gravement; solennel | meaning
in a walking pace | andante; gehend | meaning
medium speed | moderato; mässig; modéré | meaning
slow and sad | grave; mesto; lento; triste; adagio; doloroso; lugubre; funebre | meaning
fast and light | allegretto; leggiero; volante; presto; vivace; veloce | meaning
with life | con spirito; vivace; con anima; con vivacità; animato; vivo; con vita | meaning
with humor | mit Humor; scherzando; giocoso; humorvoll | meaning
with warmth | con calore; caldo; warm; caloroso; con amore; affettuoso | meaning
tenderly and softly | teneramente; dolce; zart; tendrement; con tenerezza | meaning
very detached | staccatissimo; staccato | meaning
bowed again after plucking | arco; archet; gestrichen | meaning
pick the string with your finger | pizzicato | meaning
bow close to the bridge | sul ponticello; ponticello; am Steg; sur le chevalet | meaning
tap the strings with the wood | col legno; col legno battuto | meaning
mute off | senza sordino; ohne Dämpfer; ôtez la sourdine | meaning
mute on | con sordino; mit Dämpfer; sourdine; sordino; mute | meaning
stop the horn with your hand | stopped; gestopft; bouché | meaning
flutter tonguing | flutter tongue; Flatterzunge; frullato | meaning
start over from the top | da capo | meaning
go to the sign | dal segno; al segno | meaning
skip to the coda | al coda; to coda; coda | meaning
the end of the piece | fine; final barline; Schluss | meaning
stay silent in this movement | tacet | meaning
immediately start the next section | attacca; segue | meaning
page turn | volti subito | meaning
everyone together | tutti; unisono; zusammen | meaning
by yourself | solo; seul; allein | meaning
split the section | divisi; divisés; geteilt | meaning
a lot | molto; assai; beaucoup; viel; sehr | meaning
too much | troppo; trop; zu; zu viel; zu sehr | meaning
a little more | un peu plus; poco più; poco più mosso; etwas mehr; un poco più | meaning
in the same way | simile | meaning
french for always | toujours | meaning
french for without | sans | meaning
german for with | mit | meaning
german for very | sehr | meaning
italian for always | sempre | meaning
italian for suddenly | subito | meaning
two slashes | caesura; measured tremolo; two-bar repeat | symbol
dots over notes | staccato dot; staccato; dots under a slur | symbol
triangle over note | staccatissimo wedge; staccatissimo; short fermata | symbol
curly line over a note | turn; trill; mordent; trill line; inverted mordent; gruppetto | symbol
sideways s shape | turn; gruppetto | symbol
curved arrow falling after the note | fall-off | symbol
small circle above note on violin | harmonic; open string | symbol
plus sign over a violin note | left-hand pizzicato | symbol
circle with plus sign at the end of piece | coda; to coda | symbol
c time signature at beginning | common time | symbol
line joining two notes of same pitch | tie | symbol
long hairpin opening to the right | opening hairpin; crescendo; hairpin | symbol
number 2 bracket over the music | second ending; seconda volta | symbol
three dashes through a stem | tremolo; roll; flutter tongue; measured tremolo | symbol
big number over empty bar | multimeasure rest | symbol
dot with half circle above | fermata | symbol
v above note | up-bow; hat accent; marcato; accent | symbol
letter T R with wavy line | trill; trill line; trillo | symbol
rectangle bracket on string note | down-bow | symbol
vertical squiggle before chord | arpeggio | symbol
fancy S with line | segno | symbol
double bar with dots | repeat sign; start repeat | symbol
little notes in small print | cue notes; grace note; ossia | symbol
diamond note head | diamond notehead; harmonic | symbol
slanted line through note stem | acciaccatura; tremolo; measured tremolo; beat repeat | symbol
circled plus | coda; half-stopped; damp; to coda | symbol
apostrophe | breath mark | symbol
`;

const UNTOUCHED = `
accel. | accelerando | abbreviation
leg. | legato | abbreviation
rfz | rinforzando | abbreviation
sul tast. | sul tasto | abbreviation
cantab | cantabile | abbreviation
15ma | quindicesima | abbreviation
unis | unisono | abbreviation
arp. | arpeggio | abbreviation
mod. | moderato | abbreviation
maest | maestoso | abbreviation
vib. | vibrato | abbreviation
f | forte | abbreviation
dolciss. | dolcissimo | abbreviation
poco a p. | poco a poco | abbreviation
pianisimmo | pianissimo | misspelling
decrecendo | decrescendo | misspelling
ralentando | rallentando | misspelling
alegretto | allegretto | misspelling
moderatto | moderato | misspelling
leggato | legato | misspelling
grandiozo | grandioso | misspelling
espresivo | espressivo | misspelling
leggierro | leggiero | misspelling
simmilay | simile | misspelling
furiozo | furioso | misspelling
da cappo | da capo | misspelling
voltee subito | volti subito | misspelling
shnell | schnell | misspelling
rinfortzando | rinforzando | misspelling
col lenyo | col legno | misspelling
tremmolo | tremolo | misspelling
grahvay | grave | misspelling
meno mosa | meno mosso | misspelling
maynoe mosso | meno mosso | misspelling
cheddy | cédez | misspelling
lejato | legato | misspelling
portamentoh | portamento | misspelling
vigarous vigoroso | vigoroso | misspelling
leggierooo | leggiero | misspelling
animati | animato | inflection
dolcissima | dolcissimo; dolce | inflection
espressiva | espressivo | inflection
cantabili | cantabile | inflection
lebhafte | lebhaft | inflection
expressives | expressif | inflection
appassionate | appassionato | inflection
ritmica | ritmico | inflection
breite | breit | inflection
zarte | zart | inflection
calmement | calme | inflection
staccati | staccato | inflection
meno allegro | meno; allegro | compound
f marcato | forte; marcato | compound
très vif | très; vif | compound
adagio cantabile | adagio; cantabile | compound
larghetto espressivo | larghetto; espressivo | compound
con sord. e dolce | con sordino; dolce | compound
lento e mesto | lento; mesto | compound
senza vib. sul tasto | senza vibrato; sul tasto; senza; vibrato | compound
moderato ma con anima | moderato; con anima; ma | compound
tempo primo ma piu tranquilo | tempo primo; più; tranquillo | compound
andantino con grazia | andantino; con grazia | compound
sfz sempre marc. | sforzando; sempre; marcato | compound
speed up | accelerando; affrettando; stringendo; pressez; beschleunigen | meaning
happy | giocoso; gioioso; gai; fröhlich; gaio; allegro; joyeux; freudig; lustig; gaiement | meaning
mysterious | misterioso; geheimnisvoll; mystérieux | meaning
flutter your tongue | flutter tongue; Flatterzunge; frullato | meaning
more | più; mehr; plus | meaning
less | meno; moins; weniger | meaning
without | senza; sans; ohne | meaning
as before | come prima; wie vorher | meaning
one player alone | solo; seul | meaning
with love | con amore; amoroso | meaning
gradually louder | crescendo; accrescendo; aumentando; anschwellend; zunehmend; augmentez; en augmentant; crescendo poco a poco | meaning
a bit slower | poco meno mosso; meno mosso; poco rit. | meaning
everyone stops playing at once | grand pause; Generalpause | meaning
play an octave higher | ottava alta; ottava | meaning
on the G string | sul G | meaning
gentle | dolce; doux; sanft; soave; doucement; douce | meaning
like a waltz | tempo di valse; walzerartig; valse; waltz | meaning
fast and lively | vivace; allegro; vivo; vif; lebhaft; allegro vivace | meaning
half voice | mezza voce | meaning
begin the next movement right away | attacca | meaning
detached notes | staccato; détaché; gestossen; sciolto; staccatissimo | meaning
the loudest | fortississimo; ffff; ffffff; forte possibile | meaning
italian for slow | lento; adagio | meaning
put the mute on | con sordino; mit Dämpfer; sourdine; sordino; mute | meaning
crossed out C | cut time | symbol
less than sign under the notes | opening hairpin; crescendo; hairpin | symbol
o over a string note | harmonic; open string | symbol
fancy ped under piano notes | pedal; pedale | symbol
wiggly line up the side of a chord | arpeggio | symbol
pair of glasses | watch the conductor | symbol
tiny notes with another instrument's name | cue notes | symbol
letter z on the stem | buzz roll | symbol
15 with a dotted line above | quindicesima | symbol
dotted line after cresc | dashed line | symbol
dot next to a note | dotted note | symbol
two thin lines together in the middle of the piece | double barline | symbol
arch over two different notes | slur; phrase mark | symbol
sideways s above note | turn; gruppetto | symbol
4 lines through note stem | tremolo; measured tremolo; roll; flutter tongue | symbol
circle with a line sticking up over a cello note | snap pizzicato; thumb position | symbol
curly s with a line through it | segno | symbol
square with a dot over the note | long fermata | symbol
plus over note | stopped; left-hand pizzicato | symbol
bracket with 1 | first ending; prima volta | symbol
`;

function readRows(text: string): RightQuery[] {
  return text
    .trim()
    .split("\n")
    .map((line) => {
      const [query = "", right = "", kind = ""] = line.split("|").map((cell) => cell.trim());
      return { query, right: right.split("; "), kind: kind as QueryClass };
    });
}

export const OWN_TUNED: readonly RightQuery[] = readRows(TUNED);
export const OWN_UNTOUCHED: readonly RightQuery[] = readRows(UNTOUCHED);
