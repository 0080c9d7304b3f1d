package counterbench.stock;

import static org.assertj.core.api.Assertions.assertThat;

import counterbench.campaign.Condition;
import counterbench.campaign.KitLine;
import counterbench.campaign.KitTerms;
import counterbench.campaign.PartUnit;
import counterbench.shared.Address;
import counterbench.shared.Quantity;
import java.math.BigDecimal;
import java.time.Instant;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;

class SourceOfUseTest {
    private static final Instant AT = Instant.parse("2026-03-05T14:00:00Z");
    private static final String BOLT = "QM-4472";
    private static final String WASHER = "QM-4473";
    private static final KitTerms CONTENTS =
            new KitTerms("QM-4470-K", 1, Condition.ALWAYS, List.of(line(BOLT, 1), line(WASHER, 4)));

    @Test
    void a_named_kit_is_the_source_whether_issued_or_not() {
        assertThat(source(List.of("K-1")).kitOf(use(BOLT, Use.Condition.NEW, "K-9", null)))
                .contains("K-9");
    }

    @Test
    void a_use_without_a_kit_comes_from_the_one_issued_kit_that_holds_the_part() {
        assertThat(source(List.of("K-1")).kitOf(use(BOLT, Use.Condition.NEW, null, null)))
                .contains("K-1");
    }

    @Test
    void a_kit_issued_twice_is_one_kit() {
        assertThat(source(List.of("K-1", "K-1")).kitOf(use(BOLT, Use.Condition.NEW, null, null)))
                .contains("K-1");
    }

    @Test
    void with_two_kits_that_hold_the_part_nothing_is_presumed() {
        assertThat(source(List.of("K-1", "K-2")).kitOf(use(BOLT, Use.Condition.NEW, null, null)))
                .isEmpty();
    }

    @Test
    void a_kit_that_came_without_the_part_does_not_hold_it() {
        SourceOfUse source = source(List.of("K-1", "K-short"));

        assertThat(source.kitOf(use(WASHER, Use.Condition.NEW, null, null))).contains("K-1");
        assertThat(source.kitsWith(BOLT)).containsExactly("K-1", "K-short");
    }

    @Test
    void a_kit_that_came_with_some_of_the_part_still_holds_it() {
        Kit partly = kit("K-3", List.of(new PartQuantity(WASHER, Quantity.of(3))));

        assertThat(SourceOfUse.held(partly, CONTENTS, WASHER)).isEqualTo(Quantity.ONE);
    }

    @Test
    void a_part_that_no_kit_lists_comes_from_no_kit() {
        assertThat(source(List.of("K-1")).kitOf(use("QM-1", Use.Condition.NEW, null, null)))
                .isEmpty();
    }

    @Test
    void a_kit_that_nobody_knows_holds_nothing() {
        assertThat(source(List.of("K-9")).kitOf(use(BOLT, Use.Condition.NEW, null, null)))
                .isEmpty();
    }

    @Test
    void old_hardware_comes_from_no_kit_unless_one_is_named() {
        SourceOfUse source = source(List.of("K-1"));

        assertThat(source.kitOf(use(BOLT, Use.Condition.REUSED, null, null))).isEmpty();
        assertThat(source.kitOf(use(BOLT, Use.Condition.REUSED, "K-1", null))).contains("K-1");
        assertThat(source.kitOf(use(BOLT, Use.Condition.TAKEN_OFF, null, Use.Condition.REUSED)))
                .isEmpty();
    }

    @Test
    void what_is_taken_off_put_back_scrapped_or_put_on_the_core_has_a_source_like_what_is_fitted() {
        SourceOfUse source = source(List.of("K-1"));

        assertThat(source.kitOf(use(BOLT, Use.Condition.TAKEN_OFF, null, Use.Condition.NEW)))
                .contains("K-1");
        assertThat(source.kitOf(use(BOLT, Use.Condition.PUT_BACK, null, null))).contains("K-1");
        assertThat(source.kitOf(use(BOLT, Use.Condition.SCRAPPED, null, null))).contains("K-1");
        assertThat(source.kitOf(use(BOLT, Use.Condition.ON_CORE, null, null))).contains("K-1");
    }

    @Test
    void only_issues_that_name_a_kit_count() {
        Issue kit = new Issue(new Address(1, 1), "J-1", AT, "K-1", null, null, null);
        Issue loose = new Issue(new Address(1, 2), "J-1", AT, null, BOLT, Quantity.ONE, "L-7");

        SourceOfUse source = SourceOfUse.ofIssues(List.of(kit, loose), kits(), contents());

        assertThat(source.kitOf(use(BOLT, Use.Condition.NEW, null, null))).contains("K-1");
    }

    private static SourceOfUse source(List<String> issued) {
        return new SourceOfUse(issued, kits(), contents());
    }

    private static Map<String, Kit> kits() {
        return Map.of(
                "K-1", kit("K-1", List.of()),
                "K-2", kit("K-2", List.of()),
                "K-short", kit("K-short", List.of(new PartQuantity(WASHER, Quantity.of(4)))));
    }

    private static Map<String, KitTerms> contents() {
        return Map.of("K-1", CONTENTS, "K-2", CONTENTS, "K-short", CONTENTS);
    }

    private static Kit kit(String serial, List<PartQuantity> missing) {
        return new Kit(new Address(1, 1), serial, "QM-4470-K", AT, null, null, null, null, missing);
    }

    private static Use use(
            String part,
            Use.Condition condition,
            @Nullable String kit,
            Use.@Nullable Condition was) {
        return new Use(
                new Address(2, 1),
                "J-1",
                part,
                Quantity.ONE,
                condition,
                AT,
                kit,
                null,
                null,
                was,
                null,
                null);
    }

    private static KitLine line(String part, long quantity) {
        return new KitLine(
                part,
                part,
                PartUnit.EACH,
                Quantity.of(quantity),
                Quantity.of(quantity),
                false,
                false,
                false,
                false,
                List.of(),
                BigDecimal.ZERO,
                Condition.ALWAYS);
    }
}
