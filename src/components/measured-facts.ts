import type { Batch } from '../model/batch.ts';
import type { Design, LogReference, Motor } from '../model/design.ts';
import type { Quantity } from '../quantities/quantity.ts';
import { dateInWords, words } from '../words.ts';
import { type Measure, measureOf } from './measure.ts';
import { asWritten, measureOfQuantity } from './quantity-text.ts';
import { type UnitPair, unitPairs } from './units-shown.ts';

/** One line of a table of facts: measures in both systems (several where a thing was measured often), or a text. */
export type FactRow =
  | { readonly label: string; readonly measures: readonly Measure[]; readonly inspected: boolean }
  | { readonly label: string; readonly text: string; readonly batch?: string };

/** Facts that belong together, such as those of the wing. */
export interface FactGroup {
  readonly id: string;
  readonly title: string;
  readonly rows: readonly FactRow[];
}

const say = words.facts;

/**
 * Everything that was measured on the airframe, in a fixed order; what was not given has no line. What an official
 * measured stands instead of the builder's own value.
 */
export function airframeFacts(design: Design): FactGroup[] {
  const groups: FactGroup[] = [
    { id: 'wing', title: say.groups.wing, rows: wingFacts(design) },
    { id: 'tail', title: say.groups.tail, rows: tailFacts(design) },
    { id: 'masses', title: say.groups.masses, rows: massFacts(design) },
    { id: 'thrust-line', title: say.groups.thrustLine, rows: thrustLineFacts(design) },
  ];
  return groups.filter(({ rows }) => rows.length > 0);
}

function wingFacts({ wing, inspected }: Design): FactRow[] {
  const rows = new Rows();
  rows.measure(say.span, inspected?.span ?? wing.span, unitPairs.span);
  rows.measure(say.wingArea, inspected?.wingArea ?? wing.area, unitPairs.area);
  rows.measure(say.chord, wing.chord, unitPairs.size);
  (wing.panels ?? []).forEach((panel, index) => {
    const number = index + 1;
    rows.measure(say.panel(number, say.panelLength), panel.length, unitPairs.size);
    rows.measure(say.panel(number, say.panelRoot), panel.root, unitPairs.size);
    rows.measure(say.panel(number, say.panelTip), panel.tip, unitPairs.size);
    rows.measure(say.panel(number, say.panelSweep), panel.sweep, unitPairs.size);
    rows.measure(say.panel(number, say.panelDihedral), panel.dihedral, unitPairs.angle);
  });
  rows.measure(say.incidence, wing.incidence, unitPairs.angle);
  rows.text(say.section, wing.section);
  return rows.all;
}

function tailFacts({ tailplane, fin }: Design): FactRow[] {
  const rows = new Rows();
  rows.measure(say.tailSpan, tailplane?.span, unitPairs.size);
  rows.measure(say.tailArea, tailplane?.area, unitPairs.area);
  rows.measure(say.tailArm, tailplane?.arm, unitPairs.size);
  rows.measure(say.tailIncidence, tailplane?.incidence, unitPairs.angle);
  if (fin !== null && fin.count !== 1) rows.count(say.finCount, fin.count);
  rows.measure(say.finArea, fin?.area, unitPairs.area);
  rows.measure(say.finArm, fin?.arm, unitPairs.size);
  return rows.all;
}

function massFacts(design: Design): FactRow[] {
  const { mass, inspected } = design;
  const balance = inspected?.balance ?? design.balance;
  const rows = new Rows();
  rows.measure(say.airframe, inspected?.airframe ?? mass.airframe, unitPairs.mass);
  rows.measure(say.flying, mass.flying, unitPairs.mass);
  rows.measure(say.rubberAll, inspected?.rubber, unitPairs.mass);
  for (const [part, quantity] of Object.entries(mass.parts))
    rows.measure(say.part(part), quantity, unitPairs.mass);
  if (balance?.kind === 'share') rows.measure(say.balanceShare, balance, unitPairs.share);
  else rows.measure(say.balance, balance, unitPairs.size);
  rows.measure(say.nose, design.nose, unitPairs.size);
  return rows.all;
}

function thrustLineFacts({ trim }: Design): FactRow[] {
  const rows = new Rows();
  rows.measure(say.downThrust, trim?.downThrust, unitPairs.angle);
  rows.measure(say.sideThrust, trim?.sideThrust, unitPairs.angle);
  return rows.all;
}

/** How it is built, steered and trimmed: what is told in words. */
export function builtFacts(design: Design): FactRow[] {
  const { control, onboard, layout, origin, structure, trim } = design;
  const rows = new Rows();
  rows.text(words.entry.control, words.control[control]);
  rows.text(
    words.entry.onboard,
    onboard.length === 0
      ? words.entry.nothingOnboard
      : onboard.map((device) => words.onboard[device]).join(', '),
  );
  rows.text(words.entry.layout, words.layout[layout]);
  rows.text(words.entry.origin, origin === null ? null : words.origin[origin]);
  for (const [part, how] of Object.entries(structure)) rows.text(part, how);
  rows.text(words.entry.turn, trim?.turn);
  rows.text(words.entry.warps, trim?.warps);
  return rows.all;
}

/** The recipe of one kind of motor: rubber, hooks and propeller. */
export function motorFacts(motor: Motor): FactRow[] {
  const { skein, propeller } = motor;
  const rows = new Rows();
  rows.text(say.rotation, motor.rotation === null ? null : words.rotation[motor.rotation]);
  rows.text(say.faces, motor.faces === null ? null : say[motor.faces]);
  const places = motor.at ?? [];
  if (places.some(({ value }) => value === 0)) rows.text(say.place, say.onCentre);
  rows.measures(
    motor.side === null ? say.at : say.side[motor.side],
    places.filter(({ value }) => value !== 0),
    unitPairs.size,
  );
  rows.measure(say.hooks, motor.hooks, unitPairs.size);
  rows.measure(say.stripWidth, skein?.strip?.width, unitPairs.size);
  rows.measure(say.stripThickness, skein?.strip?.thickness, unitPairs.size);
  rows.count(say.strands, skein?.strands);
  rows.measure(say.skeinLength, skein?.length, unitPairs.size);
  rows.measure(say.skeinMass, skein?.mass, unitPairs.mass);
  if (skein !== null && skein.batch !== null)
    rows.all.push({ label: say.batch, text: skein.batch, batch: skein.batch });
  rows.text(say.braided, skein === null || skein.braided === null ? null : skein.braided ? say.yes : say.no);
  rows.text(say.lubricant, skein?.lubricant);
  rows.text(say.brokenIn, skein?.brokenIn);
  rows.measures(say.breakTurns, motor.breakTurns, unitPairs.turns);
  rows.measure(say.diameter, propeller?.diameter, unitPairs.size);
  if (propeller !== null && propeller.pitch !== null) {
    if ('angle' in propeller.pitch) {
      rows.measure(say.bladeAngle, propeller.pitch.angle, unitPairs.angle);
      rows.measure(say.bladeAngleAt, propeller.pitch.at, unitPairs.size);
    } else rows.measure(say.pitch, propeller.pitch, unitPairs.size);
  }
  rows.count(say.blades, propeller?.blades);
  rows.text(
    say.after,
    propeller === null || propeller.after === null ? null : words.afterRun[propeller.after],
  );
  rows.text(say.thrustLog, logText(motor.thrustLog));
  rows.text(say.torqueLog, logText(motor.torqueLog));
  return rows.all;
}

function logText(log: LogReference | null): string | null {
  if (log === null) return null;
  return log.turns === null ? log.file : say.logAt(log.file, asWritten(log.turns, unitPairs.turns).metric);
}

/** What is known of a batch of rubber, without its tests. */
export function batchFacts(batch: Batch): FactRow[] {
  const rows = new Rows();
  rows.measure(words.rubber.width, batch.strip?.width, unitPairs.size);
  rows.measure(words.rubber.thickness, batch.strip?.thickness, unitPairs.size);
  rows.measure(words.rubber.density, batch.density, unitPairs.density);
  rows.text(words.rubber.made, batch.made === null ? null : dateInWords(batch.made));
  return rows.all;
}

class Rows {
  readonly all: FactRow[] = [];

  measure(label: string, quantity: Quantity | null | undefined, units: UnitPair): void {
    this.measures(label, quantity === null || quantity === undefined ? [] : [quantity], units);
  }

  measures(label: string, quantities: readonly Quantity[], units: UnitPair): void {
    if (quantities.length === 0) return;
    this.all.push({
      label,
      measures: quantities.map((quantity) => measureOfQuantity(quantity, units)),
      inspected: quantities.every(({ origin }) => origin === 'inspected'),
    });
  }

  count(label: string, count: number | null | undefined): void {
    if (count === null || count === undefined) return;
    this.all.push({ label, measures: [measureOf(count, 0, 'number', unitPairs.plain)], inspected: false });
  }

  text(label: string, text: string | null | undefined): void {
    if (text !== null && text !== undefined && text !== '') this.all.push({ label, text });
  }
}
