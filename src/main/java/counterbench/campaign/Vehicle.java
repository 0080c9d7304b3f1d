package counterbench.campaign;

import counterbench.shared.vin.Vin;
import java.util.Arrays;
import java.util.Collections;
import java.util.Map;
import java.util.Objects;
import java.util.TreeMap;
import org.jspecify.annotations.Nullable;

/**
 * A vehicle on a campaign's list.
 *
 * @param campaign the campaign
 * @param vin as compared: upper case without spaces
 * @param model what people call it
 * @param attributes what conditions may ask
 */
public record Vehicle(
        String campaign, String vin, @Nullable String model, Map<String, String> attributes) {
    public Vehicle {
        Objects.requireNonNull(campaign, "campaign");
        vin = compared(vin);
        attributes = Collections.unmodifiableMap(new TreeMap<>(attributes));
    }

    /**
     * Attributes and their answers as a list's cell holds them once it is read: {@code
     * transmission=automatic; doors=4}.
     */
    public static Map<String, String> attributesOf(@Nullable String text) {
        Map<String, String> attributes = new TreeMap<>();
        if (text != null && !text.isEmpty()) {
            Arrays.stream(text.split("; "))
                    .map(item -> item.split("=", 2))
                    .forEach(item -> attributes.put(item[0], item[1]));
        }
        return attributes;
    }

    /** A VIN as it is compared: upper case without spaces. */
    public static String compared(String vin) {
        return Vin.compared(vin);
    }
}
