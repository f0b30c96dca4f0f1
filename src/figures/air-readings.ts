import { humidAirDensity } from '../flight/humid-air.ts';
import type { Glider } from '../flight/polar.ts';
import { type Atmosphere, standardAtmosphere } from '../flight/standard-atmosphere.ts';
import { airViscosity } from '../flight/viscosity.ts';
import type { Weather } from '../model/entry.ts';
import type { Reader } from './definition.ts';
import type { Subject } from './subject.ts';

/**
 * The air of the flight: its weather, and for what was not measured the standard atmosphere at the field's elevation, or at
 * sea level, half saturated.
 */
export function readAir(from: Reader, subject: Subject): Pick<Glider, 'density' | 'viscosity'> {
  const weather = subject.flown?.flight.weather ?? null;
  const { temperature, pressure } = readAtmosphere(from, weather);
  const humidity = weather?.humidity ?? null;
  return {
    density: humidAirDensity(
      temperature,
      pressure,
      humidity === null ? from.assume('air-humidity') : from.value(humidity, "the air's humidity"),
    ),
    viscosity: airViscosity(temperature),
  };
}

function readAtmosphere(from: Reader, weather: Weather | null): Atmosphere {
  const temperature = weather?.temperature ?? null;
  const pressure = weather?.pressure ?? null;
  if (temperature !== null && pressure !== null)
    return { temperature: readTemperature(from, temperature), pressure: readPressure(from, pressure) };
  const standard = readStandardAtmosphere(from, weather);
  return {
    temperature:
      temperature === null
        ? standard.temperature + from.assume('air-temperature')
        : readTemperature(from, temperature),
    pressure:
      pressure === null ? standard.pressure + from.assume('air-pressure') : readPressure(from, pressure),
  };
}

function readTemperature(from: Reader, temperature: NonNullable<Weather['temperature']>): number {
  return from.value(temperature, "the air's temperature");
}

function readPressure(from: Reader, pressure: NonNullable<Weather['pressure']>): number {
  return from.value(pressure, "the air's pressure");
}

function readStandardAtmosphere(from: Reader, weather: Weather | null): Atmosphere {
  const elevation = weather?.elevation ?? null;
  if (elevation === null) from.suppose('the field lies at sea level');
  const altitude = elevation === null ? 0 : from.value(elevation, "the field's elevation");
  return standardAtmosphere(altitude) ?? from.absent('needs a field within the standard atmosphere');
}
