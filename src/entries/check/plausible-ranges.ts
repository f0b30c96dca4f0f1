/** Between what values such a thing lies, in SI, with both ends in the words of a message. */
export interface PlausibleRange {
  readonly low: number;
  readonly high: number;
  readonly inWords: string;
}

const range = (low: number, high: number, inWords: string): PlausibleRange => ({ low, high, inWords });

const flightTime = range(0.5, 3600, 'flights on rubber last from about a second to an hour');
const airTemperature = range(233, 323, 'models are flown between about −40 °C and 50 °C');
const modelMass = range(0.0005, 10, 'models on rubber weigh from half a gram to 10 kg');
const chordLength = range(0.01, 1.5, 'chords of such wings measure from 10 mm to 1.5 m');
const balanceLength = range(-3, 3, 'models balance within 3 m of the leading edge');
const stripWidth = range(0.0003, 0.03, 'rubber strip is from 0.3 mm to 30 mm wide');
const stripThickness = range(0.0003, 0.005, 'rubber strip is from 0.3 mm to 5 mm thick');
const testLength = range(0.01, 5, 'pieces of rubber are tested at lengths from 10 mm to 5 m');
const testMass = range(0.00001, 0.5, 'pieces of rubber that are tested weigh from 0.01 g to 500 g');
const surfaceArm = range(0.02, 5, 'such arms measure from 20 mm to 5 m');
const turnsOfSkein = range(5, 10000, 'skeins are wound to between five and some thousand turns');

/**
 * Ranges by the field's path, places in lists left out; a setup's fields have those of the entry, a batch's path begins at
 * the batch. Wide on purpose: they catch slips of the unit, not unusual models. Common practice, no source.
 */
export const plausibleRanges: ReadonlyMap<string, PlausibleRange> = new Map([
  ['wing.span', range(0.15, 15, 'models on rubber span from 15 cm to 15 m')],
  ['wing.panels.length', range(0.02, 8, 'panels measure from 20 mm to 8 m')],
  ['wing.panels.root', chordLength],
  ['wing.panels.tip', chordLength],
  ['wing.panels.dihedral', range(-Math.PI / 6, Math.PI / 2.5, 'panels rise by up to about 70°')],
  ['wing.area', range(0.003, 10, 'such wings have from 0.3 dm² to 10 m²')],
  ['wing.chord', chordLength],
  ['wing.incidence', range(-0.35, 0.35, 'wings are set within 20° of the fuselage')],
  ['tailplane.span', range(0.03, 6, 'tailplanes span from 3 cm to 6 m')],
  ['tailplane.area', range(0.0003, 5, 'tailplanes have from 0.03 dm² to 5 m²')],
  ['tailplane.arm', surfaceArm],
  ['tailplane.incidence', range(-0.35, 0.35, 'tailplanes are set within 20° of the fuselage')],
  ['fin.area', range(0.00005, 2, 'fins have from 0.5 cm² to 2 m²')],
  ['fin.arm', surfaceArm],
  ['balance', balanceLength],
  ['flights.balance', balanceLength],
  ['glides.balance', balanceLength],
  ['nose', range(0.01, 3, 'noses measure from 10 mm to 3 m')],
  ['mass.airframe', modelMass],
  ['mass.flying', modelMass],
  ['trim.down-thrust', range(-0.35, 0.35, 'thrust lines are set within 20°')],
  ['trim.side-thrust', range(-0.35, 0.35, 'thrust lines are set within 20°')],
  ['motors.at', range(0, 7, 'motors sit within 7 m of the centre line')],
  ['motors.hooks', range(0.03, 3, 'hooks are from 30 mm to 3 m apart')],
  ['motors.skein.strip.width', stripWidth],
  ['motors.skein.strip.thickness', stripThickness],
  ['strip.width', stripWidth],
  ['strip.thickness', stripThickness],
  ['density', range(800, 1300, 'rubber has a density from 0.8 g/cm³ to 1.3 g/cm³')],
  ['stretch-tests.length', testLength],
  ['stretch-tests.mass', testMass],
  ['stretch-tests.temperature', airTemperature],
  ['torque-tests.length', testLength],
  ['torque-tests.mass', testMass],
  ['motors.skein.length', range(0.03, 5, 'skeins measure from 30 mm to 5 m')],
  ['motors.skein.mass', range(0.0001, 1, 'skeins weigh from a tenth of a gram to 1 kg')],
  ['motors.break-turns', turnsOfSkein],
  ['motors.propeller.diameter', range(0.03, 1.5, 'such propellers measure from 30 mm to 1.5 m')],
  ['motors.propeller.pitch', range(0.02, 3, 'such propellers have a pitch from 20 mm to 3 m')],
  ['glides.height', range(0, 20, 'test throws start from up to 20 m')],
  ['glides.distance', range(0, 500, 'test throws reach up to 500 m')],
  ['glides.time', range(0.2, 300, 'test throws last up to five minutes')],
  ['glides.wind', range(0, 20, 'models are flown in winds up to 20 m/s')],
  ['flights.time', flightTime],
  ['flights.watches', flightTime],
  ['flights.turns', turnsOfSkein],
  ['flights.wound-to', turnsOfSkein],
  ['flights.launch-torque', range(1e-5, 10, 'skeins pull with between 0.01 mN·m and 10 N·m')],
  ['flights.launch-height', range(0, 20, 'models are launched from up to 20 m')],
  ['flights.drop', range(-100, 200, 'landings lie within 200 m of the height of the launch')],
  ['flights.motor-run', range(0.5, 1800, 'motors run from a second to half an hour')],
  ['flights.height', range(0, 1000, 'models on rubber reach up to 1 km')],
  ['flights.mass', modelMass],
  ['flights.release.stagger', range(0, 60, 'motors are let go within a minute')],
  ['flights.weather.wind', range(0, 20, 'models are flown in winds up to 20 m/s')],
  ['flights.weather.humidity', range(0, 1, 'relative humidity goes from 0 % to 100 %')],
  ['flights.weather.temperature', airTemperature],
  ['flights.weather.pressure', range(50000, 110000, 'air at flying places has from 500 hPa to 1100 hPa')],
  [
    'flights.weather.elevation',
    range(-450, 5500, 'flying places lie from 450 m below to 5500 m above the sea'),
  ],
  ['flights.rubber.temperature', airTemperature],
  ['flights.rubber.stretched-to', range(1, 10, 'rubber is stretched to between 1 and 10 times its length')],
]);
