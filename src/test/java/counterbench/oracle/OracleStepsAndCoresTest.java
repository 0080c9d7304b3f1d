package counterbench.oracle;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

/** Small papers about marks and cores, whose findings follow by hand from the text. */
class OracleStepsAndCoresTest {

    private static final String DRAIN = "core=C1|event=";

    @Test
    void a_step_is_early_before_all_fasteners_were_first_read_and_not_at_that_moment() {
        Paper between = new Paper().change("marks", "step=hold", "at=2026-03-05 10:15");
        assertThat(between.findings()).containsExactly("step-early J1 hold");
        assertThat(new Paper().change("marks", "step=hold", "at=2026-03-05 10:20").findings())
                .isEmpty();
        between.without("marks", "fastener=2");
        assertThat(between.findings()).containsExactly("torque-count J1 bolts");
    }

    @Test
    void the_latest_reading_of_a_fastener_counts_in_whatever_unit() {
        // 13.3 lbf·ft is 18.03 N·m, 13.2 lbf·ft is 17.90 N·m; the lower limit is 18 N·m.
        Paper paper =
                new Paper().change("marks", "fastener=2", "value=13.2|unit=lb-ft|instrument=");
        assertThat(paper.findings()).containsExactly("torque-outside J1 bolts");
        paper.add(
                "marks", "job=J1|step=bolts|fastener=2|at=2026-03-05 10:25|value=13.3|unit=lbf·ft");
        assertThat(paper.findings()).isEmpty();
    }

    @Test
    void a_reading_nearer_to_the_limit_than_the_uncertainty_is_borderline() {
        assertThat(new Paper().change("marks", "fastener=1", "value=21.5").findings()).isEmpty();
        assertThat(new Paper().change("marks", "fastener=1", "value=21.51").findings())
                .containsExactly("torque-borderline J1 bolts");
        assertThat(new Paper().change("marks", "fastener=1", "value=22").findings())
                .containsExactly("torque-borderline J1 bolts");
    }

    @Test
    void a_rise_is_the_difference_of_the_latest_readings() {
        assertThat(new Paper().change("marks", "step=high", "value=3.24").findings())
                .containsExactly("reading-outside J1 high");
        assertThat(new Paper().without("marks", "step=low").findings())
                .containsExactly("step-missing J1 low");
    }

    @Test
    void an_instrument_may_be_used_on_the_day_it_falls_due() {
        assertThat(
                        new Paper()
                                .change("calibrations", "instrument=W", "due_on=2026-03-04")
                                .findings())
                .containsExactly("instrument-overdue J1 bolts");
        assertThat(
                        new Paper()
                                .change("calibrations", "instrument=W", "calibrated_on=2026-03-06")
                                .findings())
                .containsExactly("instrument-overdue J1 bolts");
    }

    @Test
    void drain_periods_that_touch_are_joined_and_others_are_not() {
        Paper touching =
                new Paper()
                        .change("cores", DRAIN + "drain-ended", "at=2026-03-05 09:15")
                        .add("cores", DRAIN + "drain-begun|at=2026-03-05 09:15")
                        .add("cores", DRAIN + "drain-ended|at=2026-03-05 09:20");
        assertThat(touching.findings()).isEmpty();
        touching.change("cores", DRAIN + "drain-begun|at=2026-03-05 09:15", "at=2026-03-05 09:16");
        assertThat(touching.findings()).containsExactly("drain-short C1");
    }

    @Test
    void a_begin_while_one_is_open_replaces_it() {
        Paper paper = new Paper().add("cores", DRAIN + "drain-begun|at=2026-03-05 09:12");
        assertThat(paper.findings()).containsExactly("drain-short C1");
    }

    @Test
    void a_period_that_ends_after_the_deciding_plug_does_not_count() {
        Paper paper = new Paper().change("cores", DRAIN + "plugged", "at=2026-03-05 09:19");
        assertThat(paper.findings()).containsExactly("drain-not-logged C1");
        paper.add("cores", DRAIN + "unplugged|at=2026-03-05 09:20|quantity=2")
                .add("cores", DRAIN + "plugged|at=2026-03-05 09:30|quantity=2");
        assertThat(paper.findings()).isEmpty();
    }

    @Test
    void a_drain_across_the_change_of_clocks_is_measured_in_real_minutes() {
        Paper spring =
                new Paper()
                        .change("cores", DRAIN + "drain-begun", "at=2026-03-08 01:55")
                        .change("cores", DRAIN + "drain-ended", "at=2026-03-08 03:04")
                        .change("cores", DRAIN + "plugged", "at=2026-03-08 03:10")
                        .change("cores", DRAIN + "packed", "at=2026-03-08 09:00");
        assertThat(spring.findings()).contains("drain-short C1");
        spring.change("cores", DRAIN + "drain-ended", "at=2026-03-08 03:05");
        assertThat(spring.findings()).doesNotContain("drain-short C1");
    }

    @Test
    void plugs_are_those_put_in_less_those_taken_out() {
        Paper paper = new Paper().add("cores", DRAIN + "unplugged|at=2026-03-05 09:40|quantity=1");
        assertThat(paper.findings()).containsExactly("plugs-short C1");
    }

    @Test
    void a_core_is_overdue_after_the_last_day_and_shipping_later_does_not_mend_it() {
        Paper never = new Paper().without("cores", "event=shipped").without("claims", "claim=CL1");
        never.without("credits", "claim=CL1").without("acknowledgements", "core=C1");
        assertThat(never.asOf("2026-04-05T04:59:59Z").findings()).isEmpty();
        assertThat(never.asOf("2026-04-05T05:00:00Z").findings())
                .containsExactly("core-overdue C1");
        never.add("cores", DRAIN + "shipped|at=2026-04-05 00:00|shipment=SH1");
        assertThat(never.asOf("2026-04-06T12:00:00Z").findings())
                .containsExactly("core-overdue C1");
    }

    @Test
    void of_accepted_and_rejected_the_latest_holds() {
        Paper paper =
                new Paper()
                        .add(
                                "acknowledgements",
                                "shipment=SH1|at=2026-03-16 10:00|event=rejected|core=C1");
        assertThat(paper.findings()).containsExactly("core-rejected C1");
        paper.add("acknowledgements", "shipment=SH1|at=2026-03-17 10:00|event=accepted|serial=S1");
        assertThat(paper.findings()).isEmpty();
        paper.add("acknowledgements", "shipment=SH1|at=2026-03-17 10:00|event=received|serial=S2");
        assertThat(paper.findings()).containsExactly("acknowledgement-stray SH1");
    }
}
