/**
 * Bad files as small changes of good ones: a name, what is replaced by what (line ends and tabs written out), and every fault line
 * that must come of it.
 */

export interface FaultRow {
  readonly name: string;
  readonly from: string;
  readonly to: string;
  readonly faults: readonly string[];
}

function rows(text: string): FaultRow[] {
  return text
    .trim()
    .split("\n\n")
    .map((block) => {
      const [name = "", change = "", ...faults] = block.split("\n");
      const [from = "", to = ""] = change.split(" => ").map(unescaped);
      return { name, from, to, faults };
    });
}

const unescaped = (text: string): string => text.replaceAll("\\n", "\n").replaceAll("\\t", "\t");

/** Changes of the good scene. */
export const SCENE_ROWS = rows(`
a heading past 360
heading: 090 => heading: 361
s.yaml:8:12 heading 361 is out of range; a heading is 000 to 360 degrees magnetic, such as 090

a heading in words
heading: 090 => heading: east
s.yaml:8:12 heading east is not a number; a heading is 000 to 360 degrees magnetic, such as 090

a heading left blank
heading: 090 => heading:
s.yaml:8:3 heading has no value; a heading is 000 to 360 degrees magnetic, such as 090

a heading that is a list
heading: 090 => heading: [90]
s.yaml:8:12 heading is a list where one value belongs; a heading is 000 to 360 degrees magnetic, such as 090

an altitude with a comma
altitude: 3500 => altitude: 3,500
s.yaml:9:13 altitude 3,500 is not a number; an altitude is feet above mean sea level, -1500 to 60000, such as 3500

an altitude that is not a number at all
altitude: 3500 => altitude: .nan
s.yaml:9:13 altitude .nan is not a number; an altitude is feet above mean sea level, -1500 to 60000, such as 3500

a course past 360
course: 070 => course: 361
s.yaml:13:41 NAV1 course 361 is out of range; a course is 000 to 360 degrees, such as 070

a key misspelt
course: 070 => coarse: 070
s.yaml:13:33 unknown key \`coarse\`; did you mean \`course\`?

a key by another name
altitude: 3500 => alt: 3500
s.yaml:9:3 unknown key \`alt\`; did you mean \`altitude\`?

a key in the wrong place
wind: 140/18 => heading: 140
s.yaml:11:1 unknown key \`heading\`; it belongs under aircraft:

a key that nobody knows
tas: 100 => flaps: 10
s.yaml:10:3 unknown key \`flaps\`; aircraft has at, heading, altitude and tas

a key that every object has
tas: 100 => constructor: 10
s.yaml:10:3 unknown key \`constructor\`; aircraft has at, heading, altitude and tas

a key given twice
tas: 100 => heading: 100
s.yaml:10:3 heading is given twice, first on line 8; keep one of the two

a key missing
  altitude: 3500\\n => 
s.yaml:7:3 aircraft has no altitude; an altitude is feet above mean sea level, -1500 to 60000, such as 3500

a receiver without a frequency
tune: 115.60,  => 
s.yaml:13:5 NAV1 has no tune; tune a frequency such as 115.60 or the ident of a station of the scene such as TXJ

a list of receivers misspelt
receivers: => recievers:
s.yaml:12:1 unknown key \`recievers\`; did you mean \`receivers\`?

a version of the future
scene: 1 => scene: 2
s.yaml:2:8 scene 2 is not a known version; write scene: 1

no first key
scene: 1\\n => 
s.yaml:2:1 the file has no scene; a scene file begins with scene: 1

a date in words
2026-06-01 => 1 June 2026
s.yaml:4:7 date 1 June 2026 is not understood; a date is year-month-day, such as 2026-06-01

a day that does not exist
2026-06-01 => 2026-02-30
s.yaml:4:7 date 2026-02-30 is not in the calendar; write a day that exists, such as 2026-06-01

no date
date: 2026-06-01\\n => 
s.yaml:2:1 the scene has no date; variation depends on it, so write one such as date: 2026-06-01

a radial past 360
TXJ 246/18 => TXJ 400/18
s.yaml:7:7 at: the radial in "TXJ 400/18" is 400; it must be 001 to 360

a radial of two figures
TXJ 246/18 => TXJ 46/18
s.yaml:7:7 at: the radial in "TXJ 46/18" is 46; a radial has three figures, 001 to 360

a place from an unknown station
TXJ 246/18 => TXK 246/18
s.yaml:7:7 at TXK 246/18: no station of this scene has the ident TXK; did you mean TXJ?

a place too far from its station
TXJ 246/18 => TXJ 246/400
s.yaml:7:7 at TXJ 246/400: 400 NM is too far; a position is at most 300 NM from its station

a latitude of 95
TXJ 246/18 => 95°18.8′S 002°03.7′E
s.yaml:7:7 at: latitude 95°18.8'S lies outside 90 S to 90 N

a latitude of 95 in a map
TXJ 246/18 => { lat: 95, lon: 2.06 }
s.yaml:7:14 at: latitude 95 lies outside 90 S to 90 N

a longitude in a map by another name
TXJ 246/18 => { lat: -10.3, lng: 2.06 }
s.yaml:7:21 unknown key \`lng\`; did you mean \`lon\`?

half a position
TXJ 246/18 => 10°18.8′S
s.yaml:7:7 at: "10°18.8′S" needs one letter N or S and one letter E or W; write it like 10°18.8′S 002°03.7′E or -10.313, 2.062

a position of three numbers
TXJ 246/18 => [-10.3, 2.06, 3500]
s.yaml:7:7 at is a list of 3 values; a position is two, [latitude, longitude], such as [-10.313, 2.062]

a place in words
TXJ 246/18 => over the sea
s.yaml:7:7 at: "over the sea" is not a position; write it like 10°18.8′S 002°03.7′E or -10.313, 2.062

a wind with a dash
140/18 => 140-18
s.yaml:11:7 wind 140-18 is not understood; write where the wind blows from, degrees true, and its knots, such as 140/18, or calm

a wind from 400
140/18 => 400/18
s.yaml:11:7 wind 400/18 blows from 400; a direction is 000 to 360 degrees true, such as 140/18

a localizer channel
115.60 => 108.10
s.yaml:13:25 NAV1 tune 108.10 is a localizer channel; VOR channels below 112 MHz have an even tenth, the nearest are 108.05 and 108.20

a frequency between the channels
115.60 => 115.63
s.yaml:13:25 NAV1 tune 115.63 is not on the 50 kHz steps of the navigation band; of the VOR channels the nearest are 115.60 and 115.65

a frequency with a comma
115.60 => "115,60"
s.yaml:13:25 NAV1 tune "115,60" is not a frequency in MHz; write it with a point and two decimals, such as 115.60

an unknown ident
tune: HJL => tune: XYZ
s.yaml:14:25 NAV2 tune XYZ is no station of this scene; its stations are HJL and TXJ

an ident misspelt
tune: HJL => tune: HJK
s.yaml:14:25 NAV2 tune HJK is no station of this scene; did you mean HJL?

an unknown face
face: hsi => face: hs1
s.yaml:14:49 NAV2 face hs1 is not known; did you mean hsi?

two receivers of one name
name: NAV2 => name: NAV1
s.yaml:14:13 two receivers are named NAV1; give each its own name, such as NAV2

a receiver named like a cover
name: NAV2 => name: panel
s.yaml:14:13 a receiver cannot be named panel, which is a cover of its own; name it NAV1 or the like

a cover on a receiver that is not there
NAV1.needle => ADF.needle
s.yaml:15:9 cover ADF.needle names ADF, which the scene does not have; its receivers are NAV1 and NAV2

a part of a receiver misspelt
NAV1.needle => NAV1.nedle
s.yaml:15:9 cover NAV1.nedle is no part of NAV1; did you mean NAV1.needle?

a view misspelt
NAV1.needle => chrat
s.yaml:15:9 cover chrat is nothing that can be covered; did you mean chart?

a station file that is not there
isles.yaml => iles.yaml
s.yaml:5:11 stations iles.yaml cannot be opened: no such file; write its path from the folder of this file

a land file in place of a station file
isles.yaml => isles.land.yaml
isles.land.yaml:1:1 this is a land file; a station file begins with stations: 1

a tab
  altitude: 3500 => \\taltitude: 3500
s.yaml:9:1 a tab indents this line; YAML is indented with spaces only

a colon without a space
altitude: 3500 => altitude:3500
s.yaml:9:3 this line is not key: value; write a colon and a space after the key, and indent the line like the keys beside it

a line one space too far in
  altitude: 3500 =>    altitude: 3500
s.yaml:9:4 this line is indented further than the line above it, whose value it seems to go on with; begin it at the same column

a line one space too far out
  altitude: 3500 =>  altitude: 3500
s.yaml:9:1 this line is not indented like the ones it belongs with; begin it at the same column

a colon in a title
Which way to the course? => Which way: left or right?
s.yaml:3:8 there is a second colon in this value; put the whole value in quotes if the colon is part of it, or give the next key a line of its own

a quotation mark that stays open
Which way to the course? => 'Which way?
s.yaml:3:8 the quotation mark opened here is never closed; add the closing one

a bracket that stays open
course: 070 } => course: 070
s.yaml:13:5 the bracket opened here is not closed; add the } it lacks

two documents
wind: 140/18 => wind: 140/18\\n---
s.yaml:12:1 a second document begins here; one file holds one scene, so put it in a file of its own

an alias
title: Which way to the course? => title: &name Which\\nabout: *name
s.yaml:4:8 *name stands for a value written elsewhere; write the value itself here

a tag
title: Which => title: !loud Which
s.yaml:3:14 the tag !loud has no meaning here; write the value without it

a receiver that is a word
- { name: NAV1, tune: 115.60, course: 070 } => - NAV1
s.yaml:13:5 a receiver is keys and values, but this is NAV1; write tune as key: value

receivers that are no list
receivers:\\n  - { name: NAV1, tune: 115.60, course: 070 }\\n  - { name: NAV2, tune: HJL, course: 180, face: hsi } => receivers: NAV1
s.yaml:12:12 receivers is not a list; write each under it as - { name: NAV1, tune: 115.60, course: 070 }

five receivers
cover: =>   - tune: TXJ\\n  - tune: TXJ\\n  - tune: TXJ\\ncover:
s.yaml:13:3 5 receivers are given; a scene has one to four

a tune far too long
115.60 => one hundred and fifteen
s.yaml:13:25 NAV1 tune is 23 characters long; tune a frequency such as 115.60 or the ident of a station of the scene such as TXJ

a signal that is a word
cover: => signal: doppler\\ncover:
s.yaml:15:9 signal is keys and values, but this is doppler; write a key of it such as kind: conventional under signal:, or take the key out

a signal left blank
cover: => signal:\\ncover:
s.yaml:15:1 signal is keys and values, but this is empty; write a key of it such as kind: conventional under signal:, or take the key out

a kind of signal misspelt
cover: => signal: { kind: dopler }\\ncover:
s.yaml:15:17 signal kind dopler is not known; did you mean doppler?

a kind of signal that nobody knows
cover: => signal: { kind: ils }\\ncover:
s.yaml:15:17 signal kind ils is not known; a station's kind of signal is conventional or doppler

noise past 80 dB
cover: => signal: { noise: 81 }\\ncover:
s.yaml:15:18 signal noise 81 is out of range; noise is 0 to 80 dB over thermal noise, such as 25, or none

noise in words
cover: => signal: { noise: loud }\\ncover:
s.yaml:15:18 signal noise loud is not a number; noise is 0 to 80 dB over thermal noise, such as 25, or none

a propeller's speed out of its place
cover: => signal: { speed: 1810 }\\ncover:
s.yaml:15:11 unknown key \`speed\`; it belongs under propeller:

a propeller too slow
cover: => signal: { propeller: { speed: 299, blades: 2 } }\\ncover:
s.yaml:15:31 propeller speed 299 is out of range; a propeller's speed is 300 to 3000 turns a minute, such as 1810

a propeller with one blade
cover: => signal: { propeller: { speed: 1810, blades: 1 } }\\ncover:
s.yaml:15:45 propeller blades 1 is out of range; a propeller has 2 to 6 blades, such as 2

a propeller without blades
cover: => signal: { propeller: { speed: 1810 } }\\ncover:
s.yaml:15:22 propeller has no blades; a propeller has 2 to 6 blades, such as 2

a reflector as strong as the station
cover: => signal: { reflectors: [{ station: TXJ, at: TXJ 300/2, amplitude: 1 }] }\\ncover:
s.yaml:15:66 reflector amplitude 1 is out of range; an amplitude is 0 to 0.9 of the direct signal, such as 0.1

a reflector of an unknown station
cover: => signal: { reflectors: [{ station: TXK, at: TXJ 300/2, amplitude: 0.1 }] }\\ncover:
s.yaml:15:35 reflector station TXK is no station of this scene; did you mean TXJ?

a reflector at a place from an unknown station
cover: => signal: { reflectors: [{ at: TXK 300/2, amplitude: 0.1 }] }\\ncover:
s.yaml:15:30 reflector at TXK 300/2: no station of this scene has the ident TXK; did you mean TXJ?

a reflector without a place
cover: => signal: { reflectors: [{ station: TXJ, amplitude: 0.1 }] }\\ncover:
s.yaml:15:24 reflector has no at; write where the reflector stands, such as at: TXJ 300/2

reflectors that are no list
cover: => signal: { reflectors: TXJ }\\ncover:
s.yaml:15:23 reflectors is not a list; write each under it as - { station: TXJ, at: TXJ 300/2, amplitude: 0.1 }

nine reflectors
cover: => signal: { reflectors: [{ at: TXJ 300/2, amplitude: 0.1 }, { at: TXJ 300/2, amplitude: 0.1 }, { at: TXJ 300/2, amplitude: 0.1 }, { at: TXJ 300/2, amplitude: 0.1 }, { at: TXJ 300/2, amplitude: 0.1 }, { at: TXJ 300/2, amplitude: 0.1 }, { at: TXJ 300/2, amplitude: 0.1 }, { at: TXJ 300/2, amplitude: 0.1 }, { at: TXJ 300/2, amplitude: 0.1 }] }\\ncover:
s.yaml:15:23 9 reflectors are given; a scene has at most 8

a propeller outside the signal
cover: => propeller: { speed: 1810, blades: 2 }\\ncover:
s.yaml:15:1 unknown key \`propeller\`; it belongs under signal:
`);

/** Changes of the good station file. */
export const STATION_ROWS = rows(`
a VOR on a localizer channel
113.90 => 108.10
isles.yaml:6:16 HJL frequency 108.10 is a localizer channel; VOR channels below 112 MHz have an even tenth, the nearest are 108.05 and 108.20

a channel that is not the paired one
113.90 => 113.90\\n    channel: 85X
isles.yaml:7:14 HJL channel 85X is not paired with 113.90 MHz; its channel is 86X

a channel that is none
113.90 => 113.90\\n    channel: 127X
isles.yaml:7:14 HJL channel "127X" is not a DME channel; it is a number from 1 to 126 with X or Y, such as 86X

a kind that is left out
VORTAC => NDB
isles.yaml:5:11 HJL kind NDB is not known; a kind is VOR, VOR-DME, VORTAC, DME, TACAN or VOT

a distance class without a distance part
VORTAC => VOR
isles.yaml:10:12 HJL class VH/DH names a distance part, but a VOR has none; leave DH out

an unknown class
VH/DH => VX
isles.yaml:10:12 HJL class VX is not known; a class is T, L, H, VL, VH, DL or DH, or one of each part such as VH/DH

a declination in words
10W => 10 degrees west
isles.yaml:9:18 HJL declination 10 degrees west is not understood; write degrees with E or W, such as 10W, or a number with east positive, such as -10

a declination of 200
10W => 200W
isles.yaml:9:18 HJL declination 200W is out of range; write 0 to 180 degrees with E or W, such as 10W

an elevation with its unit
elevation: 1240 => elevation: 1240 ft
isles.yaml:8:16 HJL elevation 1240 ft is not a number; an elevation is feet above mean sea level, -1500 to 30000, such as 1240

a station near the pole
10°20.0′S 001°27.0′E => 85°20.0′S 001°27.0′E
isles.yaml:7:9 HJL at: latitude 85°20.0′S is too near a pole for radials; a station stands from 80 S to 80 N

an ident in small letters
ident: HJL => ident: hjl
isles.yaml:3:12 ident hjl is not understood; an ident is one to four capital letters or digits, such as HJL

two stations of one ident
ident: TXJ => ident: HJL
s.yaml:7:7 at TXJ 246/18: no station of this scene has the ident TXJ; its stations are HJL
isles.yaml:11:12 ident HJL belongs to another station already, at isles.yaml line 3; give each station its own ident

a DME far from its VOR
10W => 10W\\n    dmeAt: 11°20.0′S 001°27.0′E
isles.yaml:10:12 HJL dmeAt lies 60 NM from the station; a DME stands within 10 NM of its VOR

a version of the future
stations: 1 => stations: 2
isles.yaml:1:11 stations 2 is not a known version; write stations: 1

its list misspelt
list: => lst:
isles.yaml:2:1 unknown key \`lst\`; did you mean \`list\`?

a DME site without a DME
kind: VORTAC\\n    frequency: 113.90\\n => kind: VOR\\n    frequency: 113.90\\n    dmeElevation: 1200\\n
isles.yaml:7:5 HJL dmeElevation is given, but a VOR has no DME; leave it out
isles.yaml:11:12 HJL class VH/DH names a distance part, but a VOR has none; leave DH out

a list that is none
list:\\n => list: HJL\\nabout:\\n
isles.yaml:2:7 list is not a list; write each station under it, beginning with - ident:
isles.yaml:4:3 about is a list where one value belongs; what the file holds is told in at most 4000 characters
`);
