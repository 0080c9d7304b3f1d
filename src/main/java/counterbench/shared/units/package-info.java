/**
 * Units of torque, pressure, voltage, speed of rotation, temperature, volume and mass, with exact
 * conversion. A value is kept in the unit in which it was stated and converted for comparing only.
 *
 * <p>Every factor leads to a base unit in which it is a finite decimal, so that two values can be
 * compared without rounding. The factors and their sources are in {@code shared/units.csv}.
 */
@NullMarked
package counterbench.shared.units;

import org.jspecify.annotations.NullMarked;
