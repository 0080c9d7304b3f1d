package counterbench.facts;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Arrays;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;

class ConcernTest {
    @ParameterizedTest
    @CsvSource({
        "JOBS, job vin",
        "MARKS, job",
        "CLAIMS, job claim",
        "CORES, job core shipment",
        "KITS, kit",
        "RECEIPTS, part",
        "MOVES, kit part",
        "COUNTS, kit",
        "ACKNOWLEDGEMENTS, core serial shipment",
        "CREDITS, claim core credit",
        "MATCHES, claim credit",
        "ISSUES, job kit",
        "USES, job kit"
    })
    void a_fact_concerns_what_it_names(FactKind kind, String things) {
        Concern concern = Concern.of(filled(kind));
        assertThat(words(concern)).isEqualTo(Set.of(things.split(" ", -1)));
        assertThat(concern.all()).isFalse();
    }

    @Test
    void loose_hardware_concerns_the_shelf_where_it_leaves_it_or_comes_back() {
        FactRow use = filled(FactKind.USES).with("kit", null);
        assertThat(words(Concern.of(use.with("condition", "new")))).containsExactly("job");
        assertThat(words(Concern.of(use.with("condition", "put-back"))))
                .containsExactlyInAnyOrder("job", "part");
        assertThat(words(Concern.of(filled(FactKind.ISSUES).with("kit", null))))
                .containsExactlyInAnyOrder("job", "part");
    }

    @Test
    void what_a_fact_leaves_out_is_not_named() {
        Concern concern = Concern.of(filled(FactKind.ACKNOWLEDGEMENTS).with("core", null));
        assertThat(concern.name(Thing.CORE)).isEmpty();
        assertThat(concern.name(Thing.SERIAL)).contains("a serial");
    }

    @Test
    void a_count_of_loose_parts_concerns_the_part() {
        assertThat(words(Concern.of(filled(FactKind.COUNTS).with("kit", null))))
                .containsExactly("part");
    }

    @ParameterizedTest
    @EnumSource(names = {"VEHICLES", "INSTRUMENTS", "CALIBRATIONS", "PARTS_LIST", "PACKS"})
    void what_holds_for_all_jobs_concerns_all(FactKind kind) {
        assertThat(Concern.of(filled(kind))).isEqualTo(new Concern(Map.of(), true));
    }

    @ParameterizedTest
    @EnumSource(names = {"PEOPLE", "RATES", "ORDERS", "CONTACTS", "SHIPMENTS", "SETTLEMENTS"})
    void what_no_rule_reads_concerns_nothing(FactKind kind) {
        assertThat(Concern.of(filled(kind))).isEqualTo(new Concern(Map.of(), false));
    }

    private static FactRow filled(FactKind kind) {
        FactRow row = FactRow.of(kind);
        for (Column column : kind.columns()) {
            boolean names =
                    Arrays.stream(Thing.values())
                            .anyMatch(
                                    thing ->
                                            column.heading().equals(thing.word())
                                                    || column.heading().equals("remittance"));
            row = names ? row.with(column.heading(), "a " + column.heading()) : row;
        }
        return row;
    }

    private static Set<String> words(Concern concern) {
        return concern.names().keySet().stream().map(Thing::word).collect(Collectors.toSet());
    }
}
