package counterbench.campaign.yaml;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import counterbench.campaign.ClaimTerms;
import counterbench.campaign.ClaimTerms.Needs;
import counterbench.campaign.ClaimTerms.Operation;
import counterbench.campaign.Condition;
import counterbench.campaign.CoreTerms;
import counterbench.campaign.KitLine;
import counterbench.campaign.KitTerms;
import counterbench.campaign.Limits;
import counterbench.campaign.Pack;
import counterbench.campaign.PartUnit;
import counterbench.campaign.Step;
import counterbench.campaign.StepKind;
import counterbench.shared.Quantity;
import counterbench.shared.Refused;
import java.io.IOException;
import java.io.InputStream;
import java.math.BigDecimal;
import java.nio.charset.StandardCharsets;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import org.junit.jupiter.api.Test;

class PackReaderTest {
    private static final String HEAD =
            "campaign: QM-26-099\ntitle: Test\nrevision: A\nin-force-from: 2026-02-02\n";
    private static final Condition AUTOMATIC = new Condition(Map.of("transmission", "automatic"));

    private final Pack pump = pump();

    private static Pack pump() {
        try (InputStream yaml =
                PackReaderTest.class.getResourceAsStream(
                        "/counterbench/campaign/transfer-pump.yaml")) {
            byte[] bytes = Objects.requireNonNull(yaml).readAllBytes();
            return read(new String(bytes, StandardCharsets.UTF_8));
        } catch (IOException e) {
            throw new AssertionError(e);
        }
    }

    private static Pack read(String text) {
        PackReading reading = PackReader.read(text, "pack.yaml");
        assertThat(reading.warnings()).isEmpty();
        return reading.packOrRefuse();
    }

    private static Step step(String line) {
        return read(HEAD + "procedure:\n  - {id: a, do: A, " + line + "}\n").procedure().get(0);
    }

    private static BigDecimal decimal(String number) {
        return new BigDecimal(number);
    }

    @Test
    void the_head_is_read() {
        assertThat(pump.campaign()).isEqualTo("QM-26-014");
        assertThat(pump.title()).isEqualTo("Transfer pump and metering bolt");
        assertThat(pump.revision()).isEqualTo("B");
        assertThat(pump.inForceFrom()).isEqualTo(LocalDate.of(2026, 2, 2));
        assertThat(pump.vinCheckDigit()).isTrue();
        assertThat(pump.attributes())
                .isEqualTo(Map.of("transmission", List.of("automatic", "manual")));
        assertThat(pump.vehiclesFile()).isEqualTo("QM-26-014-vehicles.csv");
        assertThat(pump.cautions()).hasSize(1);
    }

    @Test
    void the_kit_is_read() {
        assertThat(pump.kits()).hasSize(1);
        KitTerms kit = pump.kits().get(0);
        assertThat(kit.part()).isEqualTo("QM-4470-K");
        assertThat(kit.quantity()).isEqualTo(1);
        assertThat(kit.when()).isEqualTo(Condition.ALWAYS);
        assertThat(kit.contents()).hasSize(6);
        assertThat(kit.contents().get(1))
                .isEqualTo(
                        new KitLine(
                                "QM-4472",
                                "Calibrated banjo bolt",
                                PartUnit.EACH,
                                Quantity.ONE,
                                Quantity.ONE,
                                true,
                                true,
                                false,
                                false,
                                List.of("QM-4402"),
                                BigDecimal.ZERO,
                                Condition.ALWAYS));
        assertThat(kit.contents().get(3).when()).isEqualTo(AUTOMATIC);
        assertThat(kit.contents().get(5).onCore()).isTrue();
    }

    @Test
    void a_measured_part_has_its_unit_and_its_least() {
        KitLine sealant = pump.kits().get(0).contents().get(4);
        assertThat(sealant.unit()).isEqualTo(PartUnit.ML);
        assertThat(sealant.quantity()).isEqualTo(Quantity.of("3.5"));
        assertThat(sealant.atLeast()).isEqualTo(Quantity.of("3"));
        assertThat(sealant.shelfLife()).isTrue();
    }

    @Test
    void a_torque_within_a_percentage_has_limits_on_both_sides() {
        assertThat(pump.step("clamp"))
                .contains(
                        new Step(
                                "clamp",
                                "Tighten the bracket bolts",
                                StepKind.TORQUE,
                                List.of("cold"),
                                4,
                                "N·m",
                                decimal("41"),
                                new Limits(decimal("36.9"), decimal("45.1")),
                                null,
                                null,
                                "30 lbf·ft",
                                Condition.ALWAYS));
    }

    @Test
    void a_torque_within_a_torque_has_limits_on_both_sides() {
        assertThat(pump.step("banjo").orElseThrow().limits())
                .isEqualTo(new Limits(decimal("24"), decimal("30")));
    }

    @Test
    void a_torque_within_another_unit_is_converted() {
        Step step = step("kind: torque, torque: 27 N·m, within: 2 lbf·ft");
        assertThat(step.unit()).isEqualTo("N·m");
        assertThat(step.limits().low()).isEqualByComparingTo("24.2883641033371992");
        assertThat(step.limits().high()).isEqualByComparingTo("29.7116358966628008");
    }

    @Test
    void a_limit_that_is_no_finite_decimal_still_decides_finely() {
        Step step = step("kind: torque, torque: 20 lbf·ft, within: 3 N·m");
        assertThat(step.unit()).isEqualTo("lbf·ft");
        // 3 N·m in lbf·ft, recomputed with an independent program: 2.2126864478417…
        assertThat(step.limits().admit(decimal("22.2126864478"))).isTrue();
        assertThat(step.limits().admit(decimal("22.2126864479"))).isFalse();
    }

    @Test
    void a_torque_may_state_its_limits() {
        Step step = step("kind: torque, low: 38 N·m, high: 44 N·m, also-low: 28 lbf·ft");
        assertThat(step.unit()).isEqualTo("N·m");
        assertThat(step.target()).isNull();
        assertThat(step.limits()).isEqualTo(new Limits(decimal("38"), decimal("44")));
        assertThat(step.also()).isEqualTo("low 28 lbf·ft");
        assertThat(step.fasteners()).isEqualTo(1);
    }

    @Test
    void a_plain_limit_is_in_the_unit_of_the_torque() {
        Step step = step("kind: torque, torque: 30 ft-lb, low: 28, high: 41 Nm");
        assertThat(step.unit()).isEqualTo("lbf·ft");
        assertThat(step.limits().low()).isEqualByComparingTo("28");
        assertThat(step.limits().admit(decimal("30.24"))).isTrue();
        assertThat(step.limits().admit(decimal("30.2401"))).isFalse();
    }

    @Test
    void a_reading_has_its_limits() {
        Step idle = pump.step("idle").orElseThrow();
        assertThat(idle.unit()).isEqualTo("rpm");
        assertThat(idle.limits()).isEqualTo(new Limits(decimal("610"), decimal("670")));
    }

    @Test
    void a_rise_has_the_step_that_it_rises_from() {
        Step open = pump.step("open").orElseThrow();
        assertThat(open.riseFrom()).isEqualTo("closed");
        assertThat(open.limits()).isEqualTo(new Limits(decimal("2.8"), null));
        assertThat(open.when()).isEqualTo(AUTOMATIC);
    }

    @Test
    void a_reading_may_bear_its_unit_at_the_limit_and_lie_below_zero() {
        Step step = step("kind: reading, low: -20 °C, also-low: -4 °F");
        assertThat(step.unit()).isEqualTo("°C");
        assertThat(step.limits()).isEqualTo(new Limits(decimal("-20"), null));
    }

    @Test
    void a_wait_has_its_minutes_and_a_safety_step_nothing() {
        assertThat(pump.step("purge").orElseThrow().minutes()).isEqualTo(decimal("0.5"));
        assertThat(pump.step("safe").orElseThrow().kind()).isEqualTo(StepKind.SAFETY);
    }

    @Test
    void core_and_claim_are_read() {
        assertThat(pump.cores())
                .containsExactly(
                        new CoreTerms(
                                "QM-4471",
                                1,
                                Condition.ALWAYS,
                                decimal("12"),
                                5,
                                "replacement",
                                30,
                                decimal("480.00")));
        assertThat(pump.claim())
                .isEqualTo(
                        new ClaimTerms(
                                List.of(new Operation("14-0260", decimal("2.6"), Condition.ALWAYS)),
                                decimal("30"),
                                60,
                                Needs.CORE_SHIPPED));
    }

    @Test
    void lists_of_kits_cores_and_operations_bear_conditions_and_quantities() {
        Pack pack =
                read(
                        HEAD
                                + """
                                vin-check-digit: no
                                attributes: {transmission: [automatic, manual]}
                                kit:
                                  - part: QM-1-K
                                    quantity: 2
                                    when: {transmission: automatic}
                                    contents: [{part: QM-1, name: Bolt, quantity: 2, value: 1.25}]
                                  - part: QM-2-K
                                    when: {transmission: manual}
                                    contents: [{part: QM-2, name: Paste, quantity: 12 g}]
                                core:
                                  - {part: QM-9, quantity: 2, when: {transmission: automatic}, drain-minutes: 0.5}
                                  - {part: QM-8, when: {transmission: manual}, drain-minutes: 3}
                                claim:
                                  operations:
                                    - {labour-operation: 14-1, hours: 2.6, when: {outcome: completed, transmission: manual}}
                                    - {labour-operation: 14-2, hours: 0.3, when: {outcome: not-needed}}
                                    - {labour-operation: 14-3, hours: 1.5, quantity: 2}
                                  parts-allowance: 12.5%
                                """);
        assertThat(pack.vinCheckDigit()).isFalse();
        assertThat(pack.kits()).extracting(KitTerms::quantity).containsExactly(2, 1);
        assertThat(pack.kits().get(0).when()).isEqualTo(AUTOMATIC);
        assertThat(pack.line("QM-1").orElseThrow().value()).isEqualTo(decimal("1.25"));
        assertThat(pack.cores()).extracting(CoreTerms::quantity).containsExactly(2, 1);
        assertThat(pack.cores().get(0).drainMinutes()).isEqualTo(decimal("0.5"));
        ClaimTerms claim = Objects.requireNonNull(pack.claim());
        assertThat(claim.operations())
                .containsExactly(
                        new Operation(
                                "14-1",
                                decimal("2.6"),
                                new Condition(
                                        Map.of("outcome", "completed", "transmission", "manual"))),
                        new Operation(
                                "14-2",
                                decimal("0.3"),
                                new Condition(Map.of("outcome", "not-needed"))),
                        new Operation("14-3", decimal("3.0"), Condition.ALWAYS));
        assertThat(claim.partsAllowancePercent()).isEqualTo(decimal("12.5"));
        assertThat(claim.needs()).isEqualTo(Needs.NONE);
        assertThat(claim.submitWithinDays()).isNull();
    }

    @Test
    void a_comma_in_a_text_does_not_end_it() {
        assertThat(pump.line("QM-4474").orElseThrow().name()).isEqualTo("Seal washer, automatic");
        Pack pack = read(HEAD + "procedure: [{id: a, do: Lift, turn,lock, kind: sign}]\n");
        assertThat(pack.procedure().get(0).what()).isEqualTo("Lift, turn,lock");
    }

    @Test
    void words_that_yaml_takes_for_truth_or_numbers_stay_words() {
        Pack pack =
                read(
                        """
                        campaign: 0026
                        title: 17
                        revision: 1
                        in-force-from: 2026-02-02
                        attributes: {abs: [yes, no]}
                        procedure: [{id: on, do: Go, kind: sign, when: {abs: yes}}]
                        """);
        assertThat(pack.campaign()).isEqualTo("0026");
        assertThat(pack.attributes()).isEqualTo(Map.of("abs", List.of("yes", "no")));
        assertThat(pack.step("on").orElseThrow().when())
                .isEqualTo(new Condition(Map.of("abs", "yes")));
    }

    @Test
    void windows_line_ends_and_a_byte_order_mark_do_not_matter() {
        assertThat(read("\uFEFF" + HEAD.replace("\n", "\r\n"))).isEqualTo(read(HEAD));
    }

    @Test
    void a_refusal_bears_every_problem() {
        PackReading reading = PackReader.read("title: x\n", "pack.yaml");
        assertThatThrownBy(reading::packOrRefuse)
                .isInstanceOfSatisfying(
                        Refused.class,
                        refused ->
                                assertThat(refused.problems())
                                        .hasSize(3)
                                        .allSatisfy(
                                                p ->
                                                        assertThat(p.message())
                                                                .startsWith("pack.yaml:1:1: ")));
    }

    @Test
    void a_control_character_is_refused_where_it_stands() {
        PackReading reading = PackReader.read(HEAD + "cautions: [\u0007]\n", "pack.yaml");
        assertThat(reading.problems())
                .containsExactly(
                        new PackProblem(
                                "pack.yaml",
                                5,
                                12,
                                "the file",
                                "a control character stands here",
                                "take it out"));
    }

    @Test
    void a_huge_file_is_refused() {
        PackReading reading = PackReader.read(HEAD + "#".repeat(1_000_000), "pack.yaml");
        assertThat(reading.pack()).isNull();
        assertThat(reading.problems()).hasSize(1);
    }

    @Test
    void a_procedure_has_at_most_five_hundred_steps() {
        String steps = "  - {id: a, do: A, kind: sign}\n".repeat(501);
        PackReading reading = PackReader.read(HEAD + "procedure:\n" + steps, "pack.yaml");
        assertThat(reading.problems())
                .extracting(PackProblem::why)
                .containsExactly("it has more than 500 steps");
    }
}
