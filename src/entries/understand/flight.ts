import type { Flight, Glide } from '../../model/entry.ts';
import type { EntryFields } from './setup-designs.ts';

type FlightFields = NonNullable<EntryFields['flights']>[number];
type GlideFields = NonNullable<EntryFields['glides']>[number];

/** What the fields of a flight mean. Not said how it was timed: by hand-held watches. */
export function understandFlight(fields: FlightFields): Flight {
  const { weather, rubber, release } = fields;
  return {
    number: fields.number,
    date: fields.date,
    watches: fields.watches ?? (fields.time === undefined ? [] : [fields.time]),
    timedBy: fields['timed-by'] ?? 'watch',
    turns: fields.turns ?? [],
    woundTo: fields['wound-to'] ?? [],
    turnsLeft: fields['turns-left'] ?? [],
    launchTorque: fields['launch-torque'] ?? [],
    launch: fields.launch ?? null,
    launchHeight: fields['launch-height'] ?? null,
    drop: fields.drop ?? null,
    motorsRun: fields['motors-run'] ?? null,
    release: release === undefined ? null : { how: release.how ?? null, stagger: release.stagger ?? null },
    motorRun: fields['motor-run'] ?? null,
    height: fields.height ?? null,
    behaviour: fields.behaviour ?? [],
    ended: fields.ended ?? null,
    changed: fields.changed ?? null,
    damage: fields.damage ?? null,
    balance: fields.balance ?? null,
    mass: fields.mass ?? null,
    setup: fields.setup === 'none' ? null : fields.setup,
    round: fields.round ?? null,
    weather:
      weather === undefined
        ? null
        : {
            wind: weather.wind ?? null,
            temperature: weather.temperature ?? null,
            pressure: weather.pressure ?? null,
            humidity: weather.humidity ?? null,
            elevation: weather.elevation ?? null,
            surface: weather.surface ?? null,
          },
    rubber:
      rubber === undefined
        ? null
        : {
            windsBefore: rubber['winds-before'] ?? null,
            stretchedTo: rubber['stretched-to'] ?? null,
            temperature: rubber.temperature ?? null,
            wait: rubber.wait ?? null,
          },
    timekeepers: fields.timekeepers ?? [],
    flyer: fields.flyer ?? null,
    evidence: fields.evidence ?? [],
    note: fields.note ?? null,
    withdrawn: fields.withdrawn ?? false,
  };
}

/** What the fields of a glide mean. */
export function understandGlide(fields: GlideFields): Glide {
  return {
    date: fields.date ?? null,
    height: fields.height ?? null,
    distance: fields.distance ?? null,
    time: fields.time ?? null,
    wind: fields.wind ?? null,
    direction: fields.direction ?? null,
    balance: fields.balance ?? null,
    behaviour: fields.behaviour ?? [],
    note: fields.note ?? null,
  };
}
