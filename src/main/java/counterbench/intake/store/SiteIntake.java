package counterbench.intake.store;

import counterbench.db.Scratch;
import counterbench.facts.Canonical;
import counterbench.facts.FactKind;
import counterbench.facts.FactRow;
import counterbench.intake.Complaints;
import counterbench.intake.HeldRows;
import counterbench.intake.KeyedMerge;
import counterbench.intake.RowCheck;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;

/** Judges the rows of one site in one import: refused, known already, or to be recorded. */
final class SiteIntake {
    private static final Set<FactKind> ON_JOBS =
            Set.of(FactKind.ISSUES, FactKind.USES, FactKind.MARKS);

    private final StoredNames names;
    private final RowCheck check;
    private final HeldFacts held;
    private final boolean asNew;
    private final HeldRows heldRows;
    private final Map<String, Boolean> loaded;
    private final RememberedRows byKey;
    private final RememberedRows byRef;

    /**
     * @param scratch where it remembers the rows of the import
     */
    SiteIntake(StoredNames names, HeldFacts held, boolean asNew, Scratch scratch) {
        this.names = names;
        this.check = new RowCheck(names);
        this.held = held;
        this.asNew = asNew;
        this.heldRows = new HeldRows(scratch.map(), scratch.map());
        this.loaded = scratch.map();
        this.byKey = new RememberedRows(scratch.map());
        this.byRef = new RememberedRows(scratch.map());
    }

    /** What becomes of a row. */
    sealed interface Judged {
        record Take(FactRow row) implements Judged {}

        record Known() implements Judged {}

        record Refuse(List<Complaints.Complaint> complaints) implements Judged {}
    }

    StoredNames names() {
        return names;
    }

    /** Forgets the rows of a kind that has been read. */
    void endOfKind() {
        heldRows.clear();
        loaded.clear();
        byKey.clear();
        byRef.clear();
    }

    Judged judge(FactRow said) {
        FactRow row = completed(said);
        List<Complaints.Complaint> complaints = check.check(row);
        if (!complaints.isEmpty()) {
            return new Judged.Refuse(complaints);
        }
        Judged judged = judgeKnown(row);
        if (!(judged instanceof Judged.Refuse)) {
            names.bring(row);
        }
        return judged;
    }

    /**
     * What else is wrong with a row of which some cells could not be read.
     *
     * @param rest what its other cells say
     * @param unread the headings of those cells
     */
    List<Complaints.Complaint> complaints(FactRow rest, Set<String> unread) {
        List<Complaints.Complaint> complaints = check.check(rest, unread);
        boolean keyed =
                rest.kind().hasKey() && rest.kind().key().stream().noneMatch(unread::contains);
        return complaints.isEmpty() && keyed ? differing(rest) : complaints;
    }

    private List<Complaints.Complaint> differing(FactRow rest) {
        return known(rest)
                .map(known -> KeyedMerge.put(known, rest))
                .filter(KeyedMerge.Outcome.Differs.class::isInstance)
                .map(KeyedMerge.Outcome.Differs.class::cast)
                .map(differs -> differs(rest, differs).complaints())
                .orElse(List.of());
    }

    /** What is known under the key of a row. */
    private Optional<FactRow> known(FactRow row) {
        return byKey.find(row.kind(), Canonical.key(row))
                .or(() -> KeyedMerge.together(held.byKey(row)));
    }

    /** A job with a time of completion and no outcome was completed. */
    private static FactRow completed(FactRow row) {
        boolean unsaid =
                row.kind() == FactKind.JOBS
                        && row.get("completed_at") != null
                        && row.get("outcome") == null;
        return unsaid ? row.with("outcome", "completed") : row;
    }

    private Judged judgeKnown(FactRow row) {
        if (row.kind().hasKey()) {
            return judgeKeyed(row);
        }
        return row.ref() == null ? judgePlain(row) : judgeWithRef(row, row.ref());
    }

    private Judged judgeKeyed(FactRow row) {
        String key = Canonical.key(row);
        FactRow known = known(row).orElse(null);
        if (known == null) {
            byKey.put(key, row);
            return new Judged.Take(row);
        }
        KeyedMerge.Outcome outcome = KeyedMerge.put(known, row);
        if (outcome instanceof KeyedMerge.Outcome.Differs differs) {
            return differs(row, differs);
        }
        if (outcome instanceof KeyedMerge.Outcome.Fills fills) {
            byKey.put(key, fills.merged());
            return new Judged.Take(row);
        }
        byKey.put(key, known);
        return new Judged.Known();
    }

    private Judged.Refuse differs(FactRow row, KeyedMerge.Outcome.Differs differs) {
        Complaints complaints = new Complaints(row, names.zone());
        complaints.differs(differs.column(), differs.said(), differs.known());
        return new Judged.Refuse(complaints.all());
    }

    private Judged judgeWithRef(FactRow row, String ref) {
        Optional<FactRow> inImport = byRef.find(row.kind(), ref);
        if (inImport.isPresent()) {
            return sameRef(row, inImport.get(), false);
        }
        Optional<HeldFacts.WithRef> stored = held.byRef(row.kind(), ref);
        Judged judged =
                stored.isPresent()
                        ? sameRef(row, stored.get().row(), stored.get().reversed())
                        : new Judged.Take(row);
        byRef.put(ref, row);
        return judged;
    }

    private Judged sameRef(FactRow row, FactRow known, boolean reversed) {
        List<String> differences = HeldFacts.differences(known, row);
        if (differences.isEmpty()) {
            return new Judged.Known();
        }
        if (reversed) {
            return new Judged.Take(row);
        }
        Complaints complaints = new Complaints(row, names.zone());
        complaints.of(
                differences.get(0),
                "differs from the row that ref \"" + row.ref() + "\" was recorded with",
                "give the row a ref of its own; if the earlier one was wrong, reverse it first");
        return new Judged.Refuse(complaints.all());
    }

    private Judged judgePlain(FactRow row) {
        HeldRows.Outcome outcome = heldFor(row).match(row);
        if (outcome == HeldRows.Outcome.KNOWN) {
            return new Judged.Known();
        }
        if (outcome == HeldRows.Outcome.NEW || asNew) {
            return new Judged.Take(row);
        }
        Complaints complaints = new Complaints(row, names.zone());
        HeldFacts.Standing held = this.held.alike(row, jobOf(row)).orElseThrow();
        complaints.corrects(held.address(), held.row(), HeldFacts.differences(held.row(), row));
        return new Judged.Refuse(complaints.all());
    }

    private HeldRows heldFor(FactRow row) {
        FactKind kind = row.kind();
        if (held.hasNone(kind)) {
            return heldRows;
        }
        String job = jobOf(row);
        if (loaded.putIfAbsent(kind.word() + " " + job, true) == null) {
            if (job.isEmpty()) {
                held.importedAtSite(kind, heldRows);
            } else {
                held.importedOnJob(kind, job, heldRows);
            }
        }
        return heldRows;
    }

    private String jobOf(FactRow row) {
        if (ON_JOBS.contains(row.kind())) {
            return Objects.requireNonNull(row.text("job"));
        }
        return row.kind() == FactKind.CORES
                ? names.jobOfCore(Objects.requireNonNull(row.text("core")))
                        .orElseGet(() -> Objects.requireNonNull(row.text("job")))
                : "";
    }
}
