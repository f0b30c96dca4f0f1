import type { Batch } from '../model/batch.ts';
import type { Design, Motor } from '../model/design.ts';
import type { Quantity } from '../quantities/quantity.ts';
import { words } from '../words.ts';
import { type Measure, measureOfQuantity } from './measure.ts';
import { type UnitPair, unitPairs } from './units-shown.ts';

/** One line of a table of facts: a measure in both systems, or a text that has no unit. */
export type FactRow =
  | { readonly label: string; readonly measure: Measure; readonly inspected: boolean }
  | { readonly label: string; readonly text: string; readonly batch?: string };

const say = words.facts;

/**
 * Everything that was measured on the airframe, in a fixed order; what was not given has no line. What an official
 * measured stands instead of the builder's own value.
 */
export function airframeFacts(design: Design): FactRow[] {
  const { wing, tailplane, fin, mass, trim, inspected } = design;
  const balance = inspected?.balance ?? design.balance;
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
  rows.measure(say.tailSpan, tailplane?.span, unitPairs.size);
  rows.measure(say.tailArea, tailplane?.area, unitPairs.area);
  rows.measure(say.tailArm, tailplane?.arm, unitPairs.size);
  rows.measure(say.tailIncidence, tailplane?.incidence, unitPairs.angle);
  rows.text(say.finCount, fin !== null && fin.count !== 1 ? String(fin.count) : null);
  rows.measure(say.finArea, fin?.area, unitPairs.area);
  rows.measure(say.finArm, fin?.arm, unitPairs.size);
  if (balance?.kind === 'share') rows.measure(say.balanceShare, balance, unitPairs.share);
  else rows.measure(say.balance, balance, unitPairs.size);
  rows.measure(say.nose, design.nose, unitPairs.size);
  rows.measure(say.airframe, inspected?.airframe ?? mass.airframe, unitPairs.mass);
  rows.measure(say.flying, mass.flying, unitPairs.mass);
  rows.measure(say.rubberAll, inspected?.rubber, unitPairs.mass);
  for (const [part, quantity] of Object.entries(mass.parts))
    rows.measure(say.part(part), quantity, unitPairs.mass);
  rows.measure(say.downThrust, trim?.downThrust, unitPairs.angle);
  rows.measure(say.sideThrust, trim?.sideThrust, unitPairs.angle);
  return rows.all;
}

/** The recipe of one kind of motor: rubber, hooks and propeller. */
export function motorFacts(motor: Motor): FactRow[] {
  const { skein, propeller } = motor;
  const rows = new Rows();
  rows.text(say.count, String(motor.count));
  rows.text(say.rotation, motor.rotation === null ? null : words.rotation[motor.rotation]);
  rows.text(say.faces, motor.faces === null ? null : say[motor.faces]);
  for (const place of motor.at ?? []) {
    if (place.value === 0) rows.text(say.place, say.onCentre);
    else rows.measure(motor.side === null ? say.at : say.side[motor.side], place, unitPairs.size);
  }
  rows.measure(say.hooks, motor.hooks, unitPairs.size);
  rows.measure(say.stripWidth, skein?.strip?.width, unitPairs.size);
  rows.measure(say.stripThickness, skein?.strip?.thickness, unitPairs.size);
  rows.text(say.strands, skein === null || skein.strands === null ? null : String(skein.strands));
  rows.measure(say.skeinLength, skein?.length, unitPairs.size);
  rows.measure(say.skeinMass, skein?.mass, unitPairs.mass);
  if (skein !== null && skein.batch !== null)
    rows.all.push({ label: say.batch, text: skein.batch, batch: skein.batch });
  rows.text(say.braided, skein === null || skein.braided === null ? null : skein.braided ? say.yes : say.no);
  rows.text(say.lubricant, skein?.lubricant);
  rows.text(say.brokenIn, skein?.brokenIn);
  for (const turns of motor.breakTurns) rows.measure(say.breakTurns, turns, unitPairs.turns);
  rows.measure(say.diameter, propeller?.diameter, unitPairs.size);
  if (propeller !== null && propeller.pitch !== null) {
    if ('angle' in propeller.pitch) {
      rows.measure(say.bladeAngle, propeller.pitch.angle, unitPairs.angle);
      rows.measure(say.bladeAngleAt, propeller.pitch.at, unitPairs.size);
    } else rows.measure(say.pitch, propeller.pitch, unitPairs.size);
  }
  rows.text(say.blades, propeller === null || propeller.blades === null ? null : String(propeller.blades));
  rows.text(
    say.after,
    propeller === null || propeller.after === null ? null : words.afterRun[propeller.after],
  );
  rows.text(say.thrustLog, motor.thrustLog?.file);
  rows.text(say.torqueLog, motor.torqueLog?.file);
  return rows.all;
}

/** What is known of a batch of rubber, without its tests. */
export function batchFacts(batch: Batch): FactRow[] {
  const rows = new Rows();
  rows.measure(words.rubber.width, batch.strip?.width, unitPairs.size);
  rows.measure(words.rubber.thickness, batch.strip?.thickness, unitPairs.size);
  rows.measure(words.rubber.density, batch.density, unitPairs.density);
  rows.text(words.rubber.made, batch.made);
  return rows.all;
}

class Rows {
  readonly all: FactRow[] = [];

  measure(label: string, quantity: Quantity | null | undefined, units: UnitPair): void {
    if (quantity === null || quantity === undefined) return;
    const measure = measureOfQuantity(quantity, units);
    this.all.push({ label, measure, inspected: quantity.origin === 'inspected' });
  }

  text(label: string, text: string | null | undefined): void {
    if (text !== null && text !== undefined && text !== '') this.all.push({ label, text });
  }
}
