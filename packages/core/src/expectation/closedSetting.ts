import { checkKind } from '../fields.js';
import { between, finiteBetween } from '../guard.js';
import type { Degrees, Volts } from '../units.js';

/** How the angle per volt, here and now, is known. */
export type AnglePerVolt =
  /** The sensor's body was turned by `degrees`, and then read `volts`. */
  | {
      readonly kind: 'second-reading';
      /** How far the body was turned, degrees, from −360 to 360; 0 tells nothing. */
      readonly degrees: Degrees;
      /** The reading after it, V, from −10⁶ to 10⁶. */
      readonly volts: Volts;
    }
  /** The throttle turns by `degreesOfTravel` in all, and the curve here rises by `voltsPerTravel` over a whole travel. */
  | {
      readonly kind: 'slope';
      /** The throttle's angle from stop to stop, degrees, from −360 to 360; 0 tells nothing. */
      readonly degreesOfTravel: Degrees;
      /** The curve's slope here, V per whole travel, from −10⁶ to 10⁶; 0 tells nothing. */
      readonly voltsPerTravel: Volts;
    };

const volts = between(-1e6, 1e6, 'V');
const angle = between(-360, 360, '°');

const angleRules = {
  'second-reading': { degrees: angle, volts },
  slope: { degreesOfTravel: angle, voltsPerTravel: volts },
};

/** How far to turn a sensor with slotted holes, or why that can't be told. */
export type ClosedSetting =
  | {
      readonly kind: 'turn';
      /** Degrees to turn from where `reading` was taken, any; its sign is told at {@link closedSetting}. */
      readonly degrees: Degrees;
      /** How far that may be off for the readings' uncertainty, degrees, 0 or more. */
      readonly uncertainty: Degrees;
      /** Degrees of turning for each volt of the reading, any but 0; its sign is that of the curve. */
      readonly degreesPerVolt: number;
    }
  /** The two readings were taken at one angle or differ by no more than their uncertainty, or the curve is flat. */
  | { readonly kind: 'not-determined'; readonly reason: 'no-change' };

/**
 * How far to turn a sensor with slotted mounting holes for a wanted closed reading.
 *
 * Sign: after two readings, positive is the way that was counted positive when the second was taken; turn that far
 * from where the *first* was taken. From a slope, positive is the way that does to the reading what opening the
 * throttle does. The straight line through here is taken: near the wanted reading that is enough; farther off turn,
 * read again and repeat.
 *
 * Method: linear interpolation; uncertainties of the readings added as root sum of squares through its derivatives.
 *
 * @param reading The closed reading now, V.
 * @param wanted The wanted closed reading, V.
 * @param anglePerVolt Two readings at two angles, or degrees of travel and slope; angles within ±360°.
 * @param uncertainty Standard uncertainty of each reading, V; 0 when left out.
 * @throws InputError at `reading`, `wanted`, `anglePerVolt…` or `uncertainty`.
 *
 * @example
 * closedSetting(0.62, 0.5, { kind: 'second-reading', degrees: 2, volts: 0.7 }).degrees // => ≈ -3
 * closedSetting(0.62, 0.5, { kind: 'slope', degreesOfTravel: 80, voltsPerTravel: 3.2 }).degrees // => ≈ -3
 */
export function closedSetting(
  reading: Volts,
  wanted: Volts,
  anglePerVolt: AnglePerVolt,
  uncertainty: Volts = 0,
): ClosedSetting {
  volts(reading, 'reading');
  volts(wanted, 'wanted');
  finiteBetween(uncertainty, 0, 1e6, 'uncertainty', 'V');
  const { degrees, change, doubt } = lever(anglePerVolt, reading);
  if (degrees === 0 || Math.abs(change) <= 2 * doubt * uncertainty) {
    return { kind: 'not-determined', reason: 'no-change' };
  }
  const degreesPerVolt = degrees / change;
  const share = (wanted - reading) / change;
  const factor = doubt === 0 ? 1 : Math.hypot(1 - share, share);
  return {
    kind: 'turn',
    degrees: degreesPerVolt * (wanted - reading),
    uncertainty: Math.abs(degreesPerVolt) * factor * uncertainty,
    degreesPerVolt,
  };
}

/** The known change of reading with its angle; `doubt`: by how much a reading's uncertainty grows in that change. */
function lever(by: AnglePerVolt, reading: Volts) {
  checkKind(by, 'anglePerVolt', angleRules);
  if (by.kind === 'second-reading') {
    return { degrees: by.degrees, change: by.volts - reading, doubt: Math.SQRT2 };
  }
  return { degrees: by.degreesOfTravel, change: by.voltsPerTravel, doubt: 0 };
}
