package counterbench.intake.store;

import counterbench.campaign.Packs;
import counterbench.campaign.store.JooqPacks;
import counterbench.db.Scratch;
import counterbench.facts.FactRow;
import counterbench.intake.Complaints;
import counterbench.journal.store.AllPosted;
import counterbench.shared.Problem;
import counterbench.shared.Refused;
import counterbench.shared.Site;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import org.jooq.DSLContext;

/** Holds the rows of an act to what the rows of an import are held to. */
public final class CheckAct {
    private CheckAct() {}

    /**
     * The rows as they are recorded.
     *
     * @param asked what was asked, as a refusal begins
     * @throws Refused if a row cannot be right, or says only what is known already
     */
    public static List<FactRow> checked(
            DSLContext sql, Site site, String asked, List<FactRow> rows) {
        try (Scratch scratch = new Scratch()) {
            return checked(intake(sql, site, scratch), asked, rows);
        }
    }

    private static SiteIntake intake(DSLContext sql, Site site, Scratch scratch) {
        AllPosted posted = new AllPosted(sql);
        Packs packs = JooqPacks.all(sql, posted);
        return new SiteIntake(
                new StoredNames(sql, site, posted, packs, new HashMap<>(), scratch),
                new HeldFacts(sql, site.no(), posted),
                true,
                scratch);
    }

    private static List<FactRow> checked(SiteIntake intake, String asked, List<FactRow> rows) {
        List<FactRow> taken = new ArrayList<>();
        List<Problem> problems = new ArrayList<>();
        for (FactRow row : rows) {
            SiteIntake.Judged judged = intake.judge(row);
            if (judged instanceof SiteIntake.Judged.Take take) {
                taken.add(take.row());
            } else if (judged instanceof SiteIntake.Judged.Refuse refuse) {
                refuse.complaints().forEach(c -> problems.add(problem(asked, c)));
            } else {
                problems.add(known(asked));
            }
        }
        if (!problems.isEmpty()) {
            throw new Refused(problems);
        }
        return taken;
    }

    private static Problem known(String asked) {
        return new Problem(
                asked,
                "it is recorded already, in every word",
                "nothing is left to do; if it happened twice, say when with --at");
    }

    private static Problem problem(String asked, Complaints.Complaint complaint) {
        String what =
                complaint.heading().isEmpty()
                        ? asked
                        : asked + ", " + complaint.heading() + " \"" + complaint.value() + "\"";
        return new Problem(what, complaint.wrong(), complaint.right());
    }
}
