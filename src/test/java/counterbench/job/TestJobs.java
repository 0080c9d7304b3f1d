package counterbench.job;

import counterbench.campaign.PackDraft;
import counterbench.shared.TestSites;
import java.time.Instant;
import java.time.LocalDateTime;
import org.jspecify.annotations.Nullable;

/** Invented jobs for tests, at the north garage. */
public final class TestJobs {
    /** From 49 CFR 565.15, a VIN whose check digit is right. */
    public static final String VIN = "1G4AH59H45G118341";

    public static final Instant OPENED = at("2026-03-05T08:00");
    public static final Instant COMPLETED = at("2026-03-05T15:00");
    public static final Instant AS_OF = at("2026-03-31T12:00");

    private TestJobs() {}

    /** An instant by the clock on the north garage's wall. */
    public static Instant at(String local) {
        return LocalDateTime.parse(local).atZone(TestSites.NORTH.zone()).toInstant();
    }

    /** A job with an end, or without one. */
    public static Job job(
            String name, String vin, @Nullable Instant end, @Nullable Outcome outcome) {
        return redo(name, vin, end, outcome, null);
    }

    /** Likewise, and it says which job it does again. */
    public static Job redo(
            String name,
            String vin,
            @Nullable Instant end,
            @Nullable Outcome outcome,
            @Nullable String redoOf) {
        return new Job(
                118, name, PackDraft.CAMPAIGN, vin, OPENED, null, null, end, outcome, redoOf, null);
    }

    public static JudgedJob judged(Job job) {
        return new JudgedJob(TestSites.NORTH, job, AS_OF);
    }

    public static JudgedJob completed() {
        return judged(job("J-118", VIN, COMPLETED, Outcome.COMPLETED));
    }

    public static JudgedJob abandoned() {
        return judged(job("J-118", VIN, COMPLETED, Outcome.ABANDONED));
    }

    public static JudgedJob notNeeded() {
        return judged(job("J-118", VIN, COMPLETED, Outcome.NOT_NEEDED));
    }

    public static JudgedJob open() {
        return judged(job("J-118", VIN, null, null));
    }
}
