/**
 * Vehicle identification numbers: length, characters and check digit as 49 CFR 565.15 has them. The
 * tables and their source are in {@code shared/vin.csv}.
 */
@NullMarked
package counterbench.shared.vin;

import org.jspecify.annotations.NullMarked;
