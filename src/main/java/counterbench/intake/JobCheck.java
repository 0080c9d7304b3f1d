package counterbench.intake;

import counterbench.facts.FactRow;
import java.time.Instant;
import org.jspecify.annotations.Nullable;

/** Checks rows of {@code jobs}. */
final class JobCheck {
    private final Names names;

    JobCheck(Names names) {
        this.names = names;
    }

    void check(FactRow row, Complaints complaints) {
        @Nullable Instant completed = row.time("completed_at");
        @Nullable Instant opened = row.time("opened_at");
        if (completed != null && opened != null && completed.isBefore(opened)) {
            complaints.of("completed_at", "lies before opened_at", "correct one of the two times");
        }
        if (complaints.isEmpty("completed_at") && "completed".equals(row.text("outcome"))) {
            complaints.of("outcome", "no time of completion is said", "fill in completed_at");
        }
        checkRedo(row, complaints);
    }

    private void checkRedo(FactRow row, Complaints complaints) {
        String redone = row.text("redo_of");
        if (redone == null) {
            return;
        }
        if (redone.equals(row.text("job"))) {
            complaints.of(
                    "redo_of", "a job cannot be done again by itself", "name the earlier job");
        } else if (!names.isJobAnywhere(redone)) {
            complaints.of("redo_of", "there is no such job", "name the job that is done again");
        }
    }
}
