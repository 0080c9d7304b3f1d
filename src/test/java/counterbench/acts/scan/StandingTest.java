package counterbench.acts.scan;

import static org.assertj.core.api.Assertions.assertThat;

import counterbench.acts.bench.FitState;
import java.util.Map;
import org.junit.jupiter.api.Test;

/** The line under a person's eyes, and how a job stands at length. */
class StandingTest {
    private static final int WIDE = 200;

    private static BenchStory atClamp() {
        return new BenchStory().issued("K-1").marked("safe", "cold");
    }

    private static String line(Bench bench, int width) {
        return new Standing(bench).line(width);
    }

    /** 41 N·m within 10 %, by 1.355 818 N·m to the lbf·ft (NIST SP 811, appendix B.8). */
    @Test
    void the_step_s_value_stands_in_the_instrument_s_unit_with_the_other_beside_it() {
        BenchStory story = atClamp();
        assertThat(line(story.with(story.after("W-1")), WIDE))
                .startsWith(
                        "clamp 1/4: 36.9 to 45.1 N·m (27.22 to 33.26 lbf·ft) with W-1, Tighten");
        assertThat(line(story.with(story.after("W-2")), WIDE))
                .startsWith(
                        "clamp 1/4: 27.22 to 33.26 lbf·ft (36.9 to 45.1 N·m) with W-2, Tighten");
    }

    /** The job is worked on on 5 March: due that day is in time, due the day before is not. */
    @Test
    void an_instrument_that_is_out_of_calibration_is_told_before_anything_is_read_with_it() {
        BenchStory story = atClamp();
        Bench due = story.with(story.after("W-3"));
        assertThat(line(due, WIDE)).contains(" with W-3, Tighten");
        assertThat(new Standing(due).warning()).isEmpty();
        Bench overdue = story.with(story.after("W-4"));
        assertThat(line(overdue, WIDE)).contains(" with W-4 (overdue), Tighten");
        String warning =
                "instrument W-4 was due for calibration on 2026-03-04; read with another one (with"
                        + " INSTRUMENT), or have it checked first";
        assertThat(new Standing(overdue).warning()).contains(warning);
        assertThat(new Standing(overdue).atLength()).contains(warning);
        assertThat(new Standing(story.with(story.after("W-5"))).warning())
                .contains(
                        "instrument W-5 was not calibrated yet, as far as its sheets say; read with"
                                + " another one (with INSTRUMENT), or have it checked first");
    }

    @Test
    void the_instrument_of_the_latest_reading_is_told_as_well() {
        Bench bench = atClamp().read("clamp", "W-4", "41").bench();
        assertThat(new Standing(bench).warning()).isPresent();
        assertThat(line(bench, 80)).contains("clamp 2/4: ").contains(" with W-4 (overdue)");
    }

    @Test
    void what_is_still_to_fit_stands_behind_it() {
        assertThat(line(atClamp().fitted("QM-4473", "3", "K-1").bench(), WIDE))
                .endsWith(" | fit 1 QM-4471, 1 QM-4472, 1 QM-4473, 2 QM-4474, 3 mL QM-4475");
    }

    @Test
    void in_a_narrow_terminal_words_give_way_then_the_list_of_parts_and_the_value_stays() {
        Bench bench = atClamp().bench();
        String value = "clamp 1/4: 36.9 to 45.1 N·m (27.22 to 33.26 lbf·ft)";
        for (int width = value.length(); width < WIDE; width++) {
            assertThat(line(bench, width)).startsWith(value).hasSizeLessThanOrEqualTo(width);
        }
        assertThat(line(bench, value.length())).isEqualTo(value);
        assertThat(line(bench, value.length() + 17)).isEqualTo(value + " | 5 parts to fit");
    }

    @Test
    void once_all_is_marked_it_says_how_much_is_open() {
        assertThat(line(new BenchStory().allMarked().bench(), 70))
                .startsWith("all steps are marked; 6 things are open; where tells them");
        assertThat(line(new BenchStory().allMarked().ended().bench(), WIDE))
                .isEqualTo("job J-7 has ended; undo takes your own act back, quit leaves");
    }

    @Test
    void cautions_come_before_the_work_and_end_with_the_maker_s_procedure() {
        Standing before = new Standing(new BenchStory().bench());
        assertThat(before.isBeforeWork()).isTrue();
        assertThat(before.cautions())
                .first()
                .isEqualTo(
                        "caution: Fuel under pressure can pierce skin. Wear goggles; never feel for"
                                + " a leak by hand.");
        assertThat(before.cautions()).last().asString().contains("The maker's own procedure");
        assertThat(new Standing(atClamp().bench()).isBeforeWork()).isFalse();
    }

    @Test
    void at_length_it_tells_marks_bench_cores_and_what_is_open() {
        Bench bench =
                atClamp()
                        .fitted("QM-4475", "3.2", "K-1")
                        .read("clamp", "W-1", "41", "40")
                        .removed("C-1", "7P1")
                        .bench();
        assertThat(new Standing(bench).atLength())
                .contains(
                        "job J-7, campaign QM-26-014, vehicle 0LKRF8D41RN004526",
                        "marked safe",
                        "marked clamp: 41 40 N·m",
                        "on the bench: 1 QM-4471, 1 QM-4472, 4 QM-4473, 2 QM-4474, 0.3 mL QM-4475,"
                                + " 5 QM-4476",
                        "open: step clamp: 2 of 4 fasteners read")
                .anyMatch(told -> told.startsWith("core C-1 removed since 2026-03-05 08:"));
    }

    @Test
    void of_a_part_that_the_vehicle_does_not_need_it_is_said_so() {
        BenchStory story = atClamp().fitted("QM-4474", "1", "K-1");
        assertThat(told(story)).isEqualTo(", 1 of 2 on the vehicle");
        assertThat(told(story.listedAs(Map.of("transmission", "manual"))))
                .isEqualTo(", 1 on the vehicle, which needs none");
        assertThat(told(story.listedAs(Map.of())))
                .isEqualTo(", 1 on the vehicle; whether it needs any cannot be told");
    }

    private static String told(BenchStory story) {
        Bench bench = story.bench();
        return FitState.told(bench.job(), bench.situation().now(), "QM-4474");
    }
}
