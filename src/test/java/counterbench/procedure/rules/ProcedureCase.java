package counterbench.procedure.rules;

import counterbench.campaign.PackDraft;
import counterbench.campaign.StepDraft;
import counterbench.job.JudgedJob;
import counterbench.job.TestJobs;
import counterbench.judgement.Finding;
import counterbench.judgement.Findings;
import counterbench.judgement.Judge;
import counterbench.procedure.Calibration;
import counterbench.procedure.Instrument;
import counterbench.procedure.Mark;
import counterbench.shared.Address;
import java.math.BigDecimal;
import java.time.Instant;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collections;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/** One job's marks for tests, in the order of the calls, at half past eight unless said. */
final class ProcedureCase {
    private final PackDraft pack = new PackDraft();
    private final List<Mark> marks = new ArrayList<>();
    private final Map<String, Instrument> instruments = new HashMap<>();
    private Map<String, String> attributes = Map.of();
    private JudgedJob judged = TestJobs.completed();
    private Instant now = TestJobs.at("2026-03-05T08:30");
    private @Nullable String instrument;
    private int line = 1;

    ProcedureCase(StepDraft... steps) {
        for (StepDraft step : steps) {
            pack.step(step);
        }
    }

    ProcedureCase on(JudgedJob job) {
        judged = job;
        return this;
    }

    ProcedureCase vehicle(String attribute, String answer) {
        attributes = Map.of(attribute, answer);
        return this;
    }

    /** What follows happens at this time of the wall clock. */
    ProcedureCase at(String local) {
        now = TestJobs.at(local);
        return this;
    }

    /** What follows is read with this instrument. */
    ProcedureCase with(@Nullable String name) {
        instrument = name;
        return this;
    }

    ProcedureCase known(String name, String unit, Calibration... calibrations) {
        instruments.put(
                name, new Instrument(name, "torque wrench", unit, null, List.of(calibrations)));
        return this;
    }

    ProcedureCase mark(String step) {
        return add(step, null, null, 1, null);
    }

    ProcedureCase read(String step, String value) {
        return add(step, value, null, 1, null);
    }

    ProcedureCase read(String step, String value, String unit) {
        return add(step, value, unit, 1, null);
    }

    ProcedureCase fastener(String step, int fastener, String value) {
        return add(step, value, null, fastener, null);
    }

    ProcedureCase waited(String step, String minutes) {
        return add(step, null, null, 1, minutes);
    }

    /** The findings, which must be the same in whatever order the marks come. */
    List<Finding> findings(Judge<ProcedureFacts> judge) {
        List<Mark> backwards = new ArrayList<>(marks);
        Collections.reverse(backwards);
        List<Finding> found = judge(judge, marks);
        if (!found.equals(judge(judge, backwards))) {
            throw new AssertionError("the order of the marks changes the findings");
        }
        return found;
    }

    /** The evidence of what is found. */
    List<String> evidence(Judge<ProcedureFacts> judge) {
        return findings(judge).stream().map(Finding::evidence).toList();
    }

    /** The steps of what is found. */
    List<String> steps(Judge<ProcedureFacts> judge) {
        return findings(judge).stream().map(f -> String.valueOf(f.subject().step())).toList();
    }

    static Calibration calibration(
            String on, String due, @Nullable String percent, @Nullable String amount) {
        return new Calibration(
                LocalDate.parse(on),
                LocalDate.parse(due),
                null,
                percent == null ? null : new BigDecimal(percent),
                amount == null ? null : new BigDecimal(amount));
    }

    private List<Finding> judge(Judge<ProcedureFacts> judge, List<Mark> rows) {
        Findings findings = new Findings();
        judge.judge(
                new ProcedureFacts(judged, pack.pack(), attributes, rows, instruments), findings);
        return findings.found();
    }

    private ProcedureCase add(
            String step,
            @Nullable String value,
            @Nullable String unit,
            int fastener,
            @Nullable String minutes) {
        marks.add(
                new Mark(
                        new Address(1, line++),
                        step,
                        now,
                        value == null ? null : new BigDecimal(value),
                        unit,
                        fastener,
                        minutes == null ? null : new BigDecimal(minutes),
                        instrument,
                        null));
        return this;
    }
}
