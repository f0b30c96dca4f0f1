import { mkdir, writeFile } from 'node:fs/promises';
import { join } from 'node:path';

/**
 * Writes a content folder with so many made-up entries, for measuring only: one challenge, each entry a twin of the
 * next but for its numbers. The sizes follow from a span of 1 to 3 m: areas with its square, masses and rubber with
 * its cube, so that the loadings stay those of light free-flight models. The same count gives the same bytes.
 */
export async function writeSyntheticContent(folder: string, count: number): Promise<void> {
  await mkdir(join(folder, 'challenges'), { recursive: true });
  await writeFile(join(folder, 'site.md'), siteText);
  await writeFile(join(folder, 'challenges', 'measured.md'), challengeText);
  for (let index = 0; index < count; index++) {
    const entry = join(folder, 'entries', 'measured', `model-${String(index).padStart(5, '0')}`);
    await mkdir(entry, { recursive: true });
    await writeFile(join(entry, 'entry.md'), entryText(index));
  }
}

const siteText = `---
format: 1
title: Measured
address: https://measured.example/speed/
featured: measured
---
Made-up entries for measuring how long a build takes.
`;

const challengeText = `---
title: Measured
opens: 2027-03-01
closes: 2027-10-31
target: { time: 40 s }
eligibility: { span: at least 0.9 m }
flying: { launch: [hand, ground], attempt-below: 4 s, evidence: { links: 1 } }
timing: { combine: mean, resolution: 0.1 s, round: down }
scoring: { method: best }
tie-break: [next-best-flight, larger span]
divisions:
  - { id: free, name: Free flight, control: free }
---
For measuring only.
`;

function entryText(index: number): string {
  // A fixed spread over the sizes: 0 to 1, without a pattern that repeats after few entries.
  const spread = (index * 0.618_033_988_749_895) % 1;
  const span = 1 + 2 * spread;
  const chord = span / 9;
  const airframe = 22 * span ** 3 + 40;
  const rubber = airframe * 0.15;
  const length = 0.25 * span + 0.2;
  const strands = Math.max(4, 2 * Math.round(rubber / (2 * length * 3.3)));
  const mass = strands * length * 3.3;
  const turns = Math.round(280 * length * Math.sqrt(80 / strands));
  const day = String(1 + (index % 28)).padStart(2, '0');
  const time = (18 + 30 * spread + (index % 7)).toFixed(2);
  return `---
name: Model ${index}
builder: { handle: builder-${index % 20}, name: Builder ${index % 20} }
entered: 2027-03-${day}
control: free
onboard: [dethermaliser]
origin: own
wing: { span: ${(span * 1000).toFixed(0)} mm, chord: ${(chord * 1000).toFixed(0)} mm, incidence: 3° }
tailplane: { span: ${(span * 320).toFixed(0)} mm, area: ${(span * chord * 20).toFixed(2)} dm2, arm: ${(span * 430).toFixed(0)} mm, incidence: 0° }
fin: { area: ${(span * chord * 8).toFixed(2)} dm2, arm: ${(span * 450).toFixed(0)} mm }
balance: ${(chord * 550).toFixed(0)} mm
mass: { airframe: ${airframe.toFixed(1)} g }
motors:
  - count: 1
    rotation: clockwise
    hooks: ${(length * 950).toFixed(0)} mm
    skein:
      strip: { width: 3.2 mm, thickness: 1.1 mm }
      strands: ${strands}
      length: ${(length * 1000).toFixed(0)} mm
      mass: ${mass.toFixed(1)} g
      lubricant: silicone
    propeller: { diameter: ${(span * 190).toFixed(0)} mm, pitch: ${(span * 230).toFixed(0)} mm, blades: 2, after: folds }
flights:
  - number: 1
    date: 2027-04-${day}
    watches: [${time} s, ${(Number(time) + 0.2).toFixed(2)} s]
    turns: ${Math.round(turns * 0.7)}
    launch: hand
    evidence: [https://video.example/${index}-1]
    changed: First flight, wound to seven tenths.
  - number: 2
    date: 2027-05-${day}
    time: ${(Number(time) + 4).toFixed(1)} s
    turns: ${turns}
    turns-left: ${Math.round(turns * 0.05)}
    launch: hand
    launch-height: 1.8 m
    evidence: [https://video.example/${index}-2]
    changed: Two degrees of down-thrust, full turns.
    weather: { wind: 1.2 m/s, temperature: 14 °C }
---
${bodyText(index)}`;
}

/** About a thousand characters of a builder's text, with a list and a table. */
function bodyText(index: number): string {
  return `## How model ${index} came about

The wing was built flat on the bench from **light balsa**, two halves joined at the centre with a ply brace, and covered with
tissue put on damp. A first cover went slack in the morning dew, so the second one got two thin coats of dope before the
tips were steamed up. The tailplane is a plain sheet frame with diagonal ribs against twist.

1. Balance at the mark, then throw it over long grass.
2. Wind to a third and watch the first ten seconds only.
3. Change *one* thing, write it down, throw again.

| flight | turns in | what was changed | how it went |
|--------|---------:|------------------|-------------|
| 1 | ${200 + (index % 90)} | nothing | climbed left, soft stall at the top |
| 2 | ${260 + (index % 90)} | two degrees of down-thrust | smooth, wide circle |
| 3 | ${300 + (index % 90)} | a sliver of warp washed in | tighter, no stall |

The skein is made up fresh for each day, rubbed with silicone and broken in with three gentle stretches. It is kept in a tin
in the dark, and a note in the lid says how often it was wound. See [the film](https://video.example/${index}-1) of the first day.
`;
}
