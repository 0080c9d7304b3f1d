package counterbench.campaign.yaml;

import counterbench.shared.units.Measure;
import counterbench.shared.units.Stated;
import counterbench.shared.units.Unit;
import java.util.Optional;
import java.util.function.UnaryOperator;

/** Reads a value that repeats another in a second unit, and warns where the two do not agree. */
final class SecondUnit {
    private SecondUnit() {}

    /**
     * @param key where the repetition stands
     * @param mainKey where the value itself stands
     * @param main the value itself
     * @param as how the repetition is to be taken, such as for a difference
     */
    static Optional<Stated> read(
            Fields fields,
            String key,
            String mainKey,
            Optional<Stated> main,
            UnaryOperator<Stated> as) {
        Optional<Value> value = fields.get(key);
        if (value.isPresent() && !fields.has(mainKey)) {
            value.get()
                    .refuseName(
                            "it repeats %s, and there is no %s".formatted(mainKey, mainKey),
                            "state " + mainKey + ", or leave this out");
        }
        Measure wanted = main.map(Stated::unit).map(Unit::measures).orElse(null);
        Optional<Stated> also = value.flatMap(v -> StatedReader.read(v, null, wanted)).map(as);
        if (also.isPresent() && main.isPresent()) {
            compare(value.get(), also.get(), mainKey, main.get());
        }
        return also;
    }

    private static void compare(Value value, Stated also, String mainKey, Stated main) {
        if (!also.agreesWith(main)) {
            value.warn(
                    "it does not agree with %s %s: %s is %s, and %s is %s"
                            .formatted(mainKey, main, main, main.in(also), also, also.in(main)),
                    "check both against the maker's procedure");
        }
    }
}
