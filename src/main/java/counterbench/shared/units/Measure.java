package counterbench.shared.units;

import java.util.Arrays;
import java.util.Locale;

/** What a unit measures. Only units of one measure convert; torque is not energy. */
public enum Measure {
    TORQUE,
    ENERGY,
    PRESSURE,
    VOLTAGE,
    SPEED_OF_ROTATION,
    TEMPERATURE,
    VOLUME,
    MASS;

    /** The words for it: {@code speed of rotation}. */
    public String words() {
        return name().toLowerCase(Locale.ROOT).replace('_', ' ');
    }

    /** Whether a value below zero means anything: a frost, a vacuum, a reversed lead. */
    public boolean mayBeNegative() {
        return this == TEMPERATURE || this == PRESSURE || this == VOLTAGE;
    }

    static Measure of(String words) {
        return Arrays.stream(values())
                .filter(m -> m.words().equals(words))
                .findFirst()
                .orElseThrow(() -> new IllegalArgumentException("no measure: " + words));
    }
}
