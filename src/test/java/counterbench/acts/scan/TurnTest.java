package counterbench.acts.scan;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import counterbench.acts.Act;
import counterbench.acts.IssueKit;
import counterbench.acts.bench.CompleteJob;
import counterbench.acts.bench.MarkStep;
import counterbench.acts.bench.RefitPart;
import counterbench.acts.bench.TakeFromBench;
import counterbench.acts.bench.TakeOff;
import counterbench.acts.rack.PlugCore;
import counterbench.acts.rack.RemoveCore;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What is done about a line. */
class TurnTest {
    private static Reply take(Bench bench, String line) {
        return new Turn(bench, BenchStory.YEAR).take(line);
    }

    private static Act act(Bench bench, String line) {
        Reply reply = take(bench, line);
        assertThat(reply.deed()).as(reply.say().toString()).isInstanceOf(Reply.Perform.class);
        return ((Reply.Perform) reply.deed()).act();
    }

    private static <T> T act(Bench bench, String line, Class<T> kind) {
        Act act = act(bench, line);
        assertThat(act).isInstanceOf(kind);
        return kind.cast(act);
    }

    private static void refused(Bench bench, String line, String why) {
        assertThatThrownBy(() -> take(bench, line)).hasMessageContaining(why);
    }

    private static BenchStory atClamp() {
        return new BenchStory().issued("K-1").marked("safe", "cold");
    }

    @Test
    void an_empty_line_marks_the_plain_step_that_is_next() {
        assertThat(act(new BenchStory().bench(), "", MarkStep.class).step()).isEqualTo("safe");
        assertThat(act(new BenchStory().marked("safe").bench(), "", MarkStep.class).step())
                .isEqualTo("cold");
        refused(atClamp().bench(), "", "step clamp waits for a reading");
        refused(new BenchStory().allMarked().bench(), "", "no step is left to mark");
    }

    @Test
    void a_kit_of_the_job_is_confirmed_and_another_one_is_issued() {
        Reply confirmed = take(atClamp().bench(), "K-1");
        assertThat(confirmed.deed()).isInstanceOf(Reply.Tell.class);
        assertThat(confirmed.say())
                .containsExactly(
                        "kit K-1 is this job's; on the bench: 1 QM-4471, 1 QM-4472, 4 QM-4473,"
                                + " 2 QM-4474, 3.5 mL QM-4475, 5 QM-4476");
        assertThat(act(atClamp().bench(), "K-9", IssueKit.class).kit()).isEqualTo("K-9");
    }

    @Test
    void a_part_is_taken_from_the_kit_that_was_scanned_last() {
        BenchStory story = atClamp().issued("K-2");
        Mind second = story.after("K-1", "K-2");
        assertThat(act(story.with(second), "QM-4471", TakeFromBench.class).hardware().kit())
                .isEqualTo("K-2");
        assertThat(act(story.bench(), "QM-4471", TakeFromBench.class).hardware().kit())
                .as("nothing is guessed")
                .isNull();
        Bench used = story.fitted("QM-4471", "1", "K-2").with(second);
        assertThat(act(used, "QM-4471", TakeFromBench.class).hardware().kit())
                .as("that kit's is on the vehicle")
                .isNull();
    }

    @Test
    void naming_an_instrument_that_is_overdue_says_so_even_where_the_next_step_reads_nothing() {
        assertThat(new Turn(new BenchStory().bench(), BenchStory.YEAR).take("with W-4").say())
                .containsExactly(
                        "read with W-4, in N·m",
                        "instrument W-4 was due for calibration on 2026-03-04; read with another"
                                + " one (with INSTRUMENT), or have it checked first");
        assertThat(new Turn(new BenchStory().bench(), BenchStory.YEAR).take("W-3").say())
                .containsExactly("read with W-3, in N·m");
    }

    @Test
    void a_number_goes_to_the_step_that_waits_with_the_instrument_that_was_scanned() {
        BenchStory story = atClamp();
        MarkStep mark = act(story.with(story.after("W-2")), "30", MarkStep.class);
        assertThat(mark.step()).isEqualTo("clamp");
        assertThat(mark.instrument()).isEqualTo("W-2");
        assertThat(act(story.with(story.after("M-1")), "41", MarkStep.class).instrument())
                .as("a meter for volts reads no torque")
                .isNull();
        refused(new BenchStory().bench(), "41", "the next step, safe, has nothing to read");
        refused(new BenchStory().allMarked().bench(), "41", "no step waits for one");
    }

    @Test
    void what_is_meant_for_the_step_that_was_shown_goes_to_no_other_one() {
        Turn before = new Turn(atClamp().bench(), BenchStory.YEAR);
        assertThat(before.take("41", "clamp 1/4").deed()).isInstanceOf(Reply.Perform.class);

        Bench since = atClamp().read("clamp", "W-1", "41").bench();
        Turn after = new Turn(since, BenchStory.YEAR);
        assertThatThrownBy(() -> after.take("41", "clamp 1/4"))
                .hasMessageStartingWith("reading \"41\": step clamp 1/4 was next when")
                .hasMessageContaining("recorded elsewhere meanwhile");
        assertThat(after.take("clamp 41", "clamp 1/4").deed())
                .as("a step that is named is meant")
                .isInstanceOf(Reply.Perform.class);

        Turn cold = new Turn(new BenchStory().marked("safe").bench(), BenchStory.YEAR);
        assertThatThrownBy(() -> cold.take("", "safe"))
                .hasMessageStartingWith("an empty line: step safe was next when");
        assertThatThrownBy(() -> cold.take("", ""))
                .hasMessageContaining("all steps were marked when the line was shown");
        assertThat(cold.take("", "cold").deed()).isInstanceOf(Reply.Perform.class);
    }

    @Test
    void a_marked_step_is_compared_and_not_marked_once_more() {
        Bench bench = atClamp().read("clamp", "W-1", "41", "40", "42", "41").bench();
        assertThat(take(bench, "clamp 41 40").deed()).isInstanceOf(Reply.Tell.class);
        refused(bench, "clamp 41 41", "step clamp is marked already");
        refused(bench, "clamp 44", "to read it once more: again clamp FASTENER");
        assertThat(take(bench, "safe").say()).containsExactly("step safe is marked already");
    }

    @Test
    void again_with_a_fastener_reads_that_one_and_without_all_of_them() {
        BenchStory story = atClamp().read("clamp", "W-1", "41", "40", "42", "41");

        Bench one = story.with(story.after("again clamp 2"));
        assertThat(act(one, "39", MarkStep.class).fastener()).isEqualTo(2L);
        assertThat(take(one, "39").mind().focused()).isEmpty();

        Bench all = story.with(story.after("again clamp"));
        assertThat(act(all, "39", MarkStep.class).fastener()).isEqualTo(1L);
        Mind then = take(all, "39").mind();
        assertThat(act(story.with(then), "40", MarkStep.class).fastener()).isEqualTo(2L);

        refused(story.bench(), "again clamp 5", "step clamp has 4");
    }

    @Test
    void what_is_not_said_is_asked_and_the_answer_ends_the_line() {
        BenchStory story = atClamp();
        Reply asked = take(story.bench(), "refit QM-4473");
        assertThat(asked.say()).containsExactly("why? say it in a few words");
        String whole = asked.mind().whole("one fell down");
        assertThat(act(story.bench(), whole, RefitPart.class).reason()).isEqualTo("one fell down");

        Reply howMuch = take(story.bench(), "QM-4475");
        assertThat(howMuch.say()).containsExactly("how many mL of QM-4475?");
        assertThat(act(story.bench(), howMuch.mind().whole("3.2"), TakeFromBench.class))
                .extracting(fit -> fit.hardware().quantity())
                .hasToString("3.2");

        Reply serial = take(story.bench(), "core C-1");
        assertThat(serial.say()).containsExactly("what is the serial on the plate of core C-1?");
        assertThat(act(story.bench(), serial.mind().whole("7P1"), RemoveCore.class).serial())
                .isEqualTo("7P1");
    }

    @Test
    void a_unit_behind_a_quantity_has_to_be_that_of_the_part() {
        Bench bench = atClamp().bench();
        for (String line : List.of("QM-4475 3.2", "QM-4475 3.2mL", "QM-4475 3.2 mL")) {
            assertThat(act(bench, line, TakeFromBench.class).hardware().quantity())
                    .as(line)
                    .hasToString("3.2");
        }
        refused(bench, "QM-4475 3.2 g", "\"3.2 g\" of QM-4475: the part is measured in mL");
        refused(bench, "QM-4475 0.15 fl oz", "say how many mL it is");
        refused(bench, "fit QM-4475 0.15floz", "say how many mL it is");
        refused(bench, "scrap QM-4475 1 oz spilt", "say how many mL it is");
        refused(bench, "QM-4473 2 mL", "the part is counted in pieces");
        assertThat(act(bench, "scrap QM-4475 1 mL spilt", TakeFromBench.class).reason())
                .isEqualTo("spilt");
    }

    @Test
    void what_nobody_can_place_behind_a_part_is_refused_and_not_left_out() {
        Bench bench = atClamp().bench();
        refused(bench, "QM-4473 2 old", "\"old\" behind QM-4473: only how much it is");
        refused(bench, "QM-4473 two", "\"two\" behind QM-4473: only how much it is");
        refused(bench, "(240)QM-4473(10)L-7 two", "\"two\" behind QM-4473");
        refused(bench, "fit QM-4473 2 old", "or begin with what was done: refit");
        refused(bench, "fit QM-4473 old", "\"old\" behind QM-4473");
        refused(atClamp().removed("C-1", "7P1").bench(), "QM-4476 2.5", "is counted in pieces");
    }

    @Test
    void a_reason_keeps_all_its_words() {
        Bench bench = atClamp().bench();
        assertThat(act(bench, "refit QM-4473 old one was good", RefitPart.class).reason())
                .isEqualTo("old one was good");
        assertThat(act(bench, "scrap QM-4473 1 new ring bent", TakeFromBench.class).reason())
                .isEqualTo("new ring bent");
        assertThat(act(bench, "take-off QM-4473 1 old split", TakeOff.class))
                .extracting(TakeOff::was, TakeOff::reason)
                .containsExactly(TakeOff.Was.REUSED, "split");
    }

    @Test
    void a_plug_goes_into_the_core_that_is_meant() {
        BenchStory story = atClamp().removed("C-1", "7P1");
        assertThat(act(story.bench(), "QM-4476 5", PlugCore.class).tag()).isEqualTo("C-1");
        story.removed("C-2", "7P2");
        refused(story.bench(), "QM-4476", "job J-7 has several: C-1, C-2");
        assertThat(act(story.with(story.after("C-2")), "plug", PlugCore.class).tag())
                .isEqualTo("C-2");
        refused(atClamp().bench(), "drain", "none of job J-7 is removed yet");
    }

    @Test
    void done_says_what_is_open_and_done_anyway_completes_all_the_same() {
        refused(atClamp().bench(), "done", "mend that, or complete it as it is: done anyway");
        assertThat(act(atClamp().bench(), "done anyway", CompleteJob.class).job()).isEqualTo("J-7");
        Bench whole =
                new BenchStory()
                        .issued("K-1")
                        .allMarked()
                        .fitted("QM-4471", "1", "K-1")
                        .fitted("QM-4472", "1", "K-1")
                        .fitted("QM-4473", "4", "K-1")
                        .fitted("QM-4474", "2", "K-1")
                        .fitted("QM-4475", "3.5", "K-1")
                        .removed("C-1", "7P1")
                        .bench();
        refused(whole, "done", "done: this is open: 5 of Orifice plug QM-4476 still on its");
        refused(atClamp().ended().bench(), "done anyway", "job J-7 was completed");
    }

    @ParameterizedTest
    @CsvSource({
        "(91)J-8, this is the bench of job J-7",
        "with W-9, the site knows none of that name",
        "refit W-1, it is no part that is known here",
        "mark clmap 41, did you mean clamp?",
        "(00)106141412345678908, shipments are no matter of the bench",
        "fit QM-9999, it is no part that is known here"
    })
    void a_wrong_scan_is_told(String line, String why) {
        refused(atClamp().bench(), line, why);
    }

    @Test
    void a_step_that_is_not_for_the_vehicle_is_refused_with_the_way_out() {
        Bench bench = atClamp().listedAs(Map.of("transmission", "manual")).bench();
        refused(bench, "closed 0.6", "mark J-7 closed outside the loop");
    }

    @Test
    void undo_where_help_and_quit_are_handed_on() {
        assertThat(take(atClamp().bench(), "undo a slip").deed())
                .isEqualTo(new Reply.Undo("a slip"));
        assertThat(take(atClamp().bench(), "undo").deed()).isEqualTo(new Reply.Undo(null));
        assertThat(take(atClamp().bench(), "J-7").deed()).isEqualTo(new Reply.Where());
        assertThat(take(atClamp().bench(), "help").deed()).isEqualTo(new Reply.Help());
        assertThat(take(atClamp().bench(), "stop").deed()).isEqualTo(new Reply.Leave());
    }
}
