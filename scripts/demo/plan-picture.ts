import type { Design, Motor } from '../../src/model/design.ts';
import { escaped, paper } from './paper.ts';

const width = 1200;
const height = 800;
const margin = 90;

/** A place on the model in mm: across from the centre line (right positive), aft of the wing's leading edge there. */
type Point = readonly [across: number, aft: number];

/** The model from above, drawn to scale from what its entry measured. */
export function planPicture(name: string, design: Design, wash: string): string {
  const { wing, tailplane } = design;
  const panels = (wing.panels ?? []).map((panel) => {
    const dihedral = panel.dihedral?.value ?? 0;
    return {
      across: panel.length.value * 1000 * Math.cos(dihedral),
      root: panel.root.value * 1000,
      tip: panel.tip.value * 1000,
      sweep: (panel.sweep?.value ?? 0) * 1000,
    };
  });
  const half = panels.reduce((sum, panel) => sum + panel.across, 0);
  const root = panels[0]?.root ?? 0;
  const nose = (design.nose?.value ?? 0.12 * 2 * (half / 1000)) * 1000;
  const tail =
    tailplane?.span && tailplane.area && tailplane.arm
      ? {
          span: tailplane.span.value * 1000,
          chord: (tailplane.area.value / tailplane.span.value) * 1000,
          at: (design.layout === 'canard' ? -1 : 1) * tailplane.arm.value * 1000 + root / 4,
        }
      : null;
  const front = tail !== null && tail.at < 0 ? tail.at - tail.chord : -nose;
  const back = tail !== null && tail.at > 0 ? tail.at + tail.chord : root * 1.9;
  const scale = Math.min((width - 2 * margin) / (2 * half), (height - 250) / (back - front));
  const top = 120 + (height - 250 - (back - front) * scale) / 2;
  const place = ([across, aft]: Point): string =>
    `${(width / 2 + across * scale).toFixed(1)},${(top + (aft - front) * scale).toFixed(1)}`;
  const line = (a: Point, b: Point, style: string): string => `<path d="M${place(a)}L${place(b)}" ${style}/>`;

  const leading: Point[] = [];
  const trailing: Point[] = [];
  const ribs: string[] = [];
  let across = 0;
  let aft = 0;
  for (const panel of panels) {
    if (leading.length === 0) {
      leading.push([0, 0]);
      trailing.push([0, panel.root]);
    }
    const count = Math.max(4, Math.round(panel.across / (half / 16)));
    for (let rib = 0; rib <= count; rib++) {
      const share = rib / count;
      const x = across + panel.across * share;
      const y = aft + panel.sweep * share;
      const chord = panel.root + (panel.tip - panel.root) * share;
      const style = rib === 0 || rib === count ? 'class="edge"' : 'class="rib"';
      for (const side of [-1, 1]) ribs.push(line([side * x, y], [side * x, y + chord], style));
    }
    across += panel.across;
    aft += panel.sweep;
    leading.push([across, aft]);
    trailing.push([across, aft + panel.tip]);
  }
  const right = [...leading, ...trailing.toReversed()];
  const wingShapes = [-1, 1].map(
    (side) => `<path class="skin" d="M${right.map(([x, y]) => place([side * x, y])).join('L')}Z"/>`,
  );

  const tailShape =
    tail === null
      ? ''
      : `<path class="skin" d="M${(
          [
            [-tail.span / 2, tail.at - tail.chord / 4],
            [tail.span / 2, tail.at - tail.chord / 4],
            [tail.span / 2, tail.at + (tail.chord * 3) / 4],
            [-tail.span / 2, tail.at + (tail.chord * 3) / 4],
          ] as const
        )
          .map(place)
          .join('L')}Z"/>`;
  const bodyFrom = front;
  const bodyTo = tail !== null && tail.at > 0 ? tail.at + tail.chord / 2 : root;
  const booms = design.fin?.count === 2 && tail !== null && tail.at > 0 ? [-0.22, 0.22] : [0];
  const bodies = booms.map((share) => {
    const x = share * (tail?.span ?? 0) * 2;
    const start = share === 0 ? bodyFrom : root * 0.1;
    return line([x, start], [x, bodyTo], 'class="body"');
  });
  const nosePost = booms.length === 2 ? line([0, bodyFrom], [0, root], 'class="body"') : '';

  const motors = design.motors
    .flatMap((motor) => placesOf(motor).map((x) => ({ motor, x })))
    .map(({ motor, x }) => {
      const pusher = motor.faces === 'pusher';
      const onNose = x === 0 && !pusher;
      const [sweepHere, chordHere] = wingAt(panels, Math.abs(x));
      const hub = onNose ? -nose : pusher ? sweepHere + chordHere + 40 : sweepHere - 0.28 * chordHere - 30;
      const length = (motor.hooks?.value ?? motor.skein?.length?.value ?? 0.4) * 1000;
      const peg = pusher ? hub - length : hub + length;
      const radius = (motor.propeller?.diameter?.value ?? 0.3) * 500;
      const turning = motor.rotation === 'anticlockwise' ? -1 : 1;
      return (
        line([x, hub], [x, peg], 'class="motor"') +
        line(
          [x - radius, hub + turning * radius * 0.07],
          [x + radius, hub - turning * radius * 0.07],
          'class="blade"',
        ) +
        `<circle cx="${place([x, hub]).split(',')[0]}" cy="${place([x, hub]).split(',')[1]}" r="4" class="hub"/>`
      );
    });

  const balance = design.balance?.kind === 'length' ? design.balance.value * 1000 : null;
  const mark =
    balance === null
      ? ''
      : (() => {
          const [x, y] = place([0, balance]).split(',');
          return `<g transform="translate(${x} ${y})"><circle r="9" fill="#fffdf6" class="edge"/><path d="M0 0V-9A9 9 0 0 1 9 0ZM0 0V9A9 9 0 0 1-9 0Z" fill="#2f2a26"/></g>`;
        })();

  const spanY = height - 96;
  const [left] = place([-half, 0]).split(',');
  const [rightEnd] = place([half, 0]).split(',');
  const dimension = `<path d="M${left} ${spanY}H${rightEnd}M${left} ${spanY - 9}V${spanY + 9}M${rightEnd} ${spanY - 9}V${spanY + 9}" class="thin"/><text x="${width / 2}" y="${spanY - 10}" text-anchor="middle" class="small">span ${(2 * half).toFixed(0)} mm</text>`;
  // A letter of the serif face is about half as wide as it is high: a long name is set smaller, never cut.
  const titleSize = Math.min(34, (width - 120) / (0.56 * [...name].length));
  return paper(
    width,
    height,
    `<style>.skin{fill:${wash};stroke:#2f2a26;stroke-width:2.2;stroke-linejoin:round}</style>` +
      `<text x="60" y="70" class="title" style="font-size:${titleSize.toFixed(1)}px">${escaped(name)}</text>` +
      `${bodies.join('')}${nosePost}${tailShape}${wingShapes.join('')}${ribs.join('')}${motors.join('')}${mark}${dimension}`,
  );
}

/** Where the motors of one item sit, across from the centre line, in mm. */
function placesOf(motor: Motor): number[] {
  const at = (motor.at ?? []).map((each) => each.value * 1000);
  if (motor.side === 'left') return at.map((each) => -each);
  if (motor.side === 'right') return at;
  return at.flatMap((each) => (each === 0 ? [0] : [-each, each]));
}

/** Leading edge and chord of the wing at a distance from the centre line. */
function wingAt(
  panels: readonly { across: number; root: number; tip: number; sweep: number }[],
  x: number,
): [aft: number, chord: number] {
  let start = 0;
  let aft = 0;
  for (const panel of panels) {
    if (x <= start + panel.across) {
      const share = (x - start) / panel.across;
      return [aft + panel.sweep * share, panel.root + (panel.tip - panel.root) * share];
    }
    start += panel.across;
    aft += panel.sweep;
  }
  return [0, panels[0]?.root ?? 0];
}
