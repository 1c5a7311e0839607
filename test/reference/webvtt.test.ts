import { describe, expect, it } from 'vitest';
import { readVtt } from '../../src/notes/vtt.ts';

/**
 * WebVTT: The Web Video Text Tracks Format (W3C), editor's draft as opened in its repository: examples of the introduction, without
 * names of persons, and rows of the section "WebVTT file structure". Cues as [from, to, text]; the number of cues that is expected is
 * that which the text of the section gives.
 */
const cuesOf = (text: string) => readVtt(text).cues.map(({ from_s, to_s, text: said }) => [from_s, to_s, said]);
const codesOf = (text: string): string[] => readVtt(text).troubles.map(({ told }) => told.code);

const liquid = [1, 4, 'Never drink liquid nitrogen.'];
const stomach = [5, 9, '— It will perforate your stomach.\n— You could die.'];

describe('examples of the WebVTT specification', () => {
  it('caption cues with multiple lines', () => {
    const text = `WEBVTT

00:01.000 --> 00:04.000
Never drink liquid nitrogen.

00:05.000 --> 00:09.000
— It will perforate your stomach.
— You could die.
`;
    expect(cuesOf(text)).toEqual([liquid, stomach]);
    expect(codesOf(text)).toEqual([]);
  });

  it('style blocks with a comment block between them, and a cue with an identifier', () => {
    const text = `WEBVTT

STYLE
::cue {
  background-image: linear-gradient(to bottom, dimgray, lightgray);
  color: papayawhip;
}
/* Style blocks cannot use blank lines nor "dash dash greater than" */

NOTE comment blocks can be used between style blocks.

STYLE
::cue(b) {
  color: peachpuff;
}

hello
00:00:00.000 --> 00:00:10.000
Hello <b>world</b>.

NOTE style blocks cannot appear after the first cue.
`;
    expect(cuesOf(text)).toEqual([[0, 10, 'Hello <b>world</b>.']]);
    expect(codesOf(text)).toEqual([]);
  });

  it('identifiers, one of them a number and one of several words', () => {
    const text = `WEBVTT

test
00:00.000 --> 00:02.000
This is a test.

123
00:00.000 --> 00:02.000
That's an, an, that's an L!

crédit de transcription
00:04.000 --> 00:05.000
Transcrit par Célestes™
`;
    expect(cuesOf(text).map(([from, to]) => [from, to])).toEqual([
      [0, 2],
      [0, 2],
      [4, 5],
    ]);
    expect(codesOf(text)).toEqual([]);
  });

  it('cue settings', () => {
    const text = `WEBVTT

00:00:00.000 --> 00:00:04.000 position:10%,line-left align:left size:35%
Where did he go?

00:00:03.000 --> 00:00:06.500 position:90% align:right size:35%
I think he went down this lane.
`;
    expect(cuesOf(text)).toEqual([
      [0, 4, 'Where did he go?'],
      [3, 6.5, 'I think he went down this lane.'],
    ]);
    expect(codesOf(text)).toEqual([]);
  });

  it('regions', () => {
    const text = `WEBVTT

REGION
id:fred
width:40%
lines:3
regionanchor:0%,100%
viewportanchor:10%,90%
scroll:up

00:00:00.000 --> 00:00:20.000 region:fred align:left
<v Fred>Hi, my name is Fred
`;
    expect(cuesOf(text)).toEqual([[0, 20, '<v Fred>Hi, my name is Fred']]);
    expect(codesOf(text)).toEqual([]);
  });

  it('an attributes block, and a comment of many lines', () => {
    const text = `WEBVTT

ATTRIBUTES
kind: subtitles
lang: es-mx

NOTE
Standard subtitles typically
translate spoken dialog or signage.

1
00:00:10.123 --> 00:00:15.432
¡Hola! ¿Qué tál?
`;
    expect(cuesOf(text)).toEqual([[10.123, 15.432, '¡Hola! ¿Qué tál?']]);
    expect(codesOf(text)).toEqual([]);
  });
});

describe('the file structure of the WebVTT specification', () => {
  const cue = '00:01.000 --> 00:04.000\nNever drink liquid nitrogen.\n';
  it.each([
    ['the string WEBVTT and two line ends', `WEBVTT\n\n${cue}`],
    ['a blank and any characters after the string', `WEBVTT - some text\n\n${cue}`],
    ['a tab and any characters after the string', `WEBVTT\t-*- mode -*-\n\n${cue}`],
    ['more than one empty line between blocks', `WEBVTT\n\n\n\n${cue}`],
    ['tabs and more blanks beside the arrow', `WEBVTT\n\n${cue.replace(' --> ', '\t -->  ')}`],
    ['hours of two digits and of three', `WEBVTT\n\n${cue.replace('00:01', '00:00:01').replace('00:04', '000:00:04')}`],
  ])('allows %s', (_, text) => {
    expect([cuesOf(text), codesOf(text)]).toEqual([[liquid], []]);
  });

  it('makes two cues where the empty line between them is skipped, as a parser does', () => {
    expect(
      cuesOf(`WEBVTT\n\n${cue}00:05.000 --> 00:09.000\n— It will perforate your stomach.\n— You could die.\n`),
    ).toEqual([liquid, stomach]);
  });

  it.each([
    ['without the string', cue, 'captions-header'],
    ['with other letters after the string', `WEBVTTX\n\n${cue}`, 'captions-header'],
    ['with the string in small letters', `webvtt\n\n${cue}`, 'captions-header'],
    ['with minutes above 59', `WEBVTT\n\n${cue.replace('00:01', '60:01')}`, 'captions-time'],
    ['with seconds above 59', `WEBVTT\n\n${cue.replace('00:01', '00:61')}`, 'captions-time'],
    ['with two digits of thousandths', `WEBVTT\n\n${cue.replace('01.000', '01.00')}`, 'captions-time'],
    ['with a comma before thousandths', `WEBVTT\n\n${cue.replace('01.000', '01,000')}`, 'captions-time'],
    ['with an hour of one digit', `WEBVTT\n\n${cue.replace('00:01', '0:00:01')}`, 'captions-time'],
    ['with an end that is not greater than the start', `WEBVTT\n\n${cue.replace('00:04', '00:01')}`, 'captions-end'],
    ['with an arrow in a comment', `WEBVTT\n\nNOTE old\n${cue}`, 'captions-time-in-note'],
    ['with text that has no timings', `WEBVTT\n\nNever drink liquid nitrogen.\n`, 'captions-no-time'],
  ])('refuses a file %s: %s', (_, text, code) => {
    expect([cuesOf(text), codesOf(text)]).toEqual([[], [code]]);
  });
});
