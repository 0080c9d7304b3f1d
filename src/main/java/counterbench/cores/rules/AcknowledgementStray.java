package counterbench.cores.rules;

import counterbench.cores.Acknowledgement;
import counterbench.cores.CoreHistory;
import counterbench.cores.ShipmentFacts;
import counterbench.judgement.Findings;
import counterbench.judgement.Judge;
import counterbench.judgement.Rule;
import java.util.List;
import java.util.Objects;
import java.util.stream.Stream;

/**
 * The return centre names a core or a serial that is not on the shipment. Where a row names a core
 * of the shipment whose serial we do not know, its serial cannot be called wrong.
 */
public final class AcknowledgementStray implements Judge<ShipmentFacts> {
    @Override
    public Rule rule() {
        return Rule.ACKNOWLEDGEMENT_STRAY;
    }

    @Override
    public void judge(ShipmentFacts facts, Findings findings) {
        List<String> strays =
                facts.acknowledgements().stream()
                        .flatMap(row -> Stream.of(strayCore(row, facts), straySerial(row, facts)))
                        .filter(name -> !name.isEmpty())
                        .distinct()
                        .sorted()
                        .toList();
        if (!strays.isEmpty()) {
            String names = String.join(", ", strays);
            findings.add(
                    facts.finding(
                            rule(),
                            "the return centre names what is not on it: " + names,
                            "not on it: " + names));
        }
    }

    private static String strayCore(Acknowledgement row, ShipmentFacts facts) {
        String core = row.core();
        return core == null || facts.cores().stream().anyMatch(c -> c.core().equals(core))
                ? ""
                : "core " + core;
    }

    private static String straySerial(Acknowledgement row, ShipmentFacts facts) {
        String serial = row.serial();
        return serial == null || facts.cores().stream().anyMatch(c -> mayBe(c, row, serial))
                ? ""
                : "serial " + serial;
    }

    private static boolean mayBe(CoreHistory core, Acknowledgement row, String serial) {
        String known = core.serial();
        return known == null ? Objects.equals(row.core(), core.core()) : known.equals(serial);
    }
}
