package counterbench.shell.counter;

import counterbench.labels.Goods;
import counterbench.labels.Scan;
import counterbench.shared.Refused;
import counterbench.shared.Site;
import counterbench.shell.Invocation;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.TreeSet;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;

/**
 * Kits as their labels name them, or as somebody typed them, and what the labels say together.
 *
 * @param labels what those that were scanned say of their goods
 */
record KitLabels(List<String> serials, List<Goods> labels) {
    KitLabels {
        serials = List.copyOf(serials);
        labels = List.copyOf(labels);
    }

    /** Those on the line. */
    static KitLabels of(Invocation in, Site site) {
        List<Goods> labels = new ArrayList<>();
        for (String text : in.all(CounterOptions.KITS)) {
            if (Scanned.of(in, site, text) instanceof Scan.Kit kit) {
                labels.add(kit.goods());
            }
        }
        return new KitLabels(Scanned.kits(in, site), labels);
    }

    /** The kit part that the line says, or else the labels. */
    String part(Optional<String> said) {
        return Optional.ofNullable(one("part", said, Goods::part))
                .orElseThrow(
                        () ->
                                new Refused(
                                        "kit \"" + serials.get(0) + "\"",
                                        "nothing says which kit it is",
                                        "say its part number with --part"));
    }

    /** The lot that the line says, or else the labels. */
    @Nullable String lot(Optional<String> said) {
        return one("lot", said, Goods::lot);
    }

    /** The last usable day that the line says, or else the labels. */
    @Nullable LocalDate expiry(Optional<LocalDate> said) {
        return one("last usable day", said, Goods::expiresOn);
    }

    private <T extends Comparable<? super T>> @Nullable T one(
            String what, Optional<T> said, Function<Goods, @Nullable T> field) {
        TreeSet<T> all = new TreeSet<>();
        said.ifPresent(all::add);
        labels.stream().map(field).filter(Objects::nonNull).forEach(all::add);
        if (all.size() > 1) {
            throw new Refused(
                    what + " \"" + all.first() + "\" and \"" + all.last() + "\"",
                    "labels and line do not say the same",
                    "receive kits that differ apart, or look at the label again");
        }
        return all.isEmpty() ? null : all.first();
    }
}
