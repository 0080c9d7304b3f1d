package counterbench.stock;

import counterbench.shared.Quantity;
import java.util.TreeSet;
import org.jspecify.annotations.Nullable;

/** What acts on jobs do to the book: loose parts issued, hardware used, the rest scrapped. */
final class BenchActs {
    private final Book book;
    private final KitShelf shelf;
    private final KitActs kits;
    private final KitsOfJobs kitsOfJobs;

    BenchActs(Book book, KitShelf shelf, KitActs kits, KitsOfJobs kitsOfJobs) {
        this.book = book;
        this.shelf = shelf;
        this.kits = kits;
        this.kitsOfJobs = kitsOfJobs;
    }

    void issue(Issue issue, Book.Pen pen) {
        Account bench = Account.bench(issue.job());
        if (issue.kit() != null) {
            kits.issue(issue.kit(), issue.job(), pen);
        } else if (issue.part() != null && issue.quantity() != null) {
            Source source = Source.lot(issue.lot());
            pen.move(Account.STORE, bench, issue.part(), source, issue.quantity());
        }
    }

    void use(Use use, Book.Pen pen) {
        switch (use.condition()) {
            case NEW -> offBench(use, Account.vehicle(use.job()), pen);
            case SCRAPPED -> offBench(use, Account.SCRAP, pen);
            case ON_CORE -> offBench(use, Account.core(use.core()), pen);
            case PUT_BACK -> putBack(use, pen);
            case TAKEN_OFF -> takeOff(use, pen);
            case REUSED -> {
                // an old part stays what it was: nothing moves
            }
        }
    }

    private void putBack(Use use, Book.Pen pen) {
        if (use.kit() == null) {
            offBench(use, Account.STORE, pen);
        } else {
            offBench(use, Account.kit(use.kit()), pen);
            shelf.stands(use.kit());
        }
    }

    private void takeOff(Use use, Book.Pen pen) {
        if (use.was() == Use.Condition.NEW) {
            Account vehicle = Account.vehicle(use.job());
            pen.draw(vehicle, Account.SCRAP, use.part(), preferred(use), use.quantity());
        }
    }

    private void offBench(Use use, Account to, Book.Pen pen) {
        Account bench = Account.bench(use.job());
        String named = use.kit();
        if (named == null) {
            pen.draw(bench, to, use.part(), preferred(use), use.quantity());
            return;
        }
        if (!kitsOfJobs.wasIssued(named, use.job())) {
            kits.gather(named, use.part(), use.quantity(), bench, pen);
        }
        pen.move(bench, to, use.part(), Source.kit(named), use.quantity());
    }

    private @Nullable Source preferred(Use use) {
        return kitsOfJobs
                .kitOf(use)
                .map(Source::kit)
                .orElseGet(() -> use.lot() == null ? null : Source.lot(use.lot()));
    }

    /** Scraps what is left on the bench of each measured part, all sources together. */
    void end(JobEnd end, Book.Pen pen) {
        Account bench = Account.bench(end.job());
        for (String part : new TreeSet<>(end.measured())) {
            Quantity left = book.held(bench, part);
            if (left.isPositive()) {
                pen.draw(bench, Account.SCRAP, part, null, left);
            }
        }
    }
}
