package counterbench.acts.scan;

import counterbench.acts.Act;
import counterbench.acts.CoreCase;
import counterbench.acts.rack.BeginDrain;
import counterbench.acts.rack.EndDrain;
import counterbench.acts.rack.PackCore;
import counterbench.acts.rack.PlugCore;
import counterbench.acts.rack.RemoveCore;
import counterbench.acts.rack.UnplugCore;
import counterbench.cores.CoreHistory;
import counterbench.cores.CoreStatus;
import counterbench.labels.Scan;
import counterbench.labels.ScanReader;
import counterbench.shared.Minutes;
import counterbench.shared.Refused;
import counterbench.shared.Site;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/** What is done about the cores of the job. */
final class Cores {
    private final Bench bench;
    private final ScanReader labels;

    Cores(Bench bench, int year) {
        this.bench = bench;
        this.labels = new ScanReader(year);
    }

    /** A tag by itself: the core is meant from now on, or was just taken off the vehicle. */
    Reply scanned(String tag) {
        Optional<CoreCase> known = bench.situation().findCore(tag);
        if (known.isEmpty()) {
            return Reply.tell(
                    bench.mind().waitingAfter(Word.CORE.word() + " " + tag),
                    "what is the serial on the plate of core " + tag + "?");
        }
        refuseOther(known.get());
        return Reply.tell(bench.mind().withCore(tag), state(bench.situation().site(), known.get()));
    }

    /** How a core stands, in one line. */
    static String state(Site site, CoreCase core) {
        CoreHistory history = core.core();
        CoreStatus status = CoreStatus.of(history, null);
        String plugs =
                core.terms()
                        .map(terms -> ", " + history.plugs() + " of " + terms.plugs() + " plugs")
                        .orElse("");
        String until =
                core.drainOver(Instant.MAX)
                        .map(over -> ", until " + site.wallTime(Minutes.over(over)))
                        .orElse("");
        String drained =
                history.drainPeriods()
                        .longest()
                        .map(time -> ", drained " + Minutes.text(time))
                        .orElse("");
        return "core "
                + history.core()
                + " "
                + status.state().word()
                + " since "
                + site.wallTime(status.since())
                + core.where().besides(site.site())
                + until
                + drained
                + plugs;
    }

    private void refuseOther(CoreCase core) {
        if (!core.job().name().equals(bench.name())) {
            throw new Refused(
                    "core \"" + core.core().core() + "\"",
                    "it is of job "
                            + core.job().name()
                            + ", and this is the bench of "
                            + bench.name(),
                    "scan a core of this job");
        }
    }

    /** The core that is meant: the one said, the one scanned last, or the only one. */
    String meant(@Nullable String said) {
        if (said != null) {
            Scan scan = labels.read(said);
            String tag = scan instanceof Scan.Core core ? core.tag() : said;
            refuseOther(bench.situation().core(tag));
            return tag;
        }
        if (bench.mind().core() != null) {
            return bench.mind().core();
        }
        List<String> tags = bench.job().cores().stream().map(CoreHistory::core).toList();
        if (tags.size() == 1) {
            return tags.get(0);
        }
        throw new Refused(
                "the core",
                tags.isEmpty()
                        ? "none of job " + bench.name() + " is removed yet"
                        : "job " + bench.name() + " has several: " + String.join(", ", tags),
                tags.isEmpty() ? "type core TAG SERIAL" : "scan its tag first");
    }

    /** A word about a core. */
    Reply command(Word word, String rest) {
        List<String> words = new ArrayList<>(rest.isEmpty() ? List.of() : ReadMeaning.words(rest));
        return switch (word) {
            case CORE -> remove(words);
            case DRAIN -> drain(words);
            case PACK -> pack(words);
            default -> plug(word, words);
        };
    }

    private Reply remove(List<String> words) {
        if (words.isEmpty()) {
            return Reply.tell(
                    bench.mind().waitingAfter(Word.CORE.word()), "which core? scan its tag");
        }
        Scan scan = labels.read(words.get(0));
        String tag = scan instanceof Scan.Core core ? core.tag() : words.get(0);
        if (words.size() == 1) {
            return scanned(tag);
        }
        String part = words.size() > 2 ? words.get(2) : null;
        return recorded(
                new RemoveCore(tag, bench.name(), words.get(1), part, bench.stamp()),
                tag,
                "removed");
    }

    private Reply drain(List<String> words) {
        String how = words.isEmpty() ? "" : words.get(0);
        boolean said = how.equals("begin") || how.equals("end");
        List<String> rest = said ? words.subList(1, words.size()) : words;
        String tag = meant(rest.isEmpty() ? null : rest.get(0));
        CoreCase core = bench.situation().core(tag);
        Optional<Instant> open = core.core().drainOpenAt(bench.stamp().at());
        if (!said && open.isPresent()) {
            throw new Refused(
                    "drain of core \"" + tag + "\"",
                    state(bench.situation().site(), core),
                    "scan drain end once it is over");
        }
        return how.equals("end")
                ? recorded(new EndDrain(tag, bench.stamp()), tag, "has drained")
                : recorded(new BeginDrain(tag, bench.stamp()), tag, "drains");
    }

    private Reply pack(List<String> words) {
        if (words.isEmpty()) {
            return Reply.tell(
                    bench.mind().waitingAfter(Word.PACK.word()), "what is the core packed in?");
        }
        String tag = meant(words.size() > 1 ? words.get(1) : null);
        return recorded(new PackCore(tag, words.get(0), null, bench.stamp()), tag, "packed");
    }

    private Reply plug(Word word, List<String> words) {
        Long number = null;
        if (!words.isEmpty() && words.get(0).matches("[0-9]{1,6}")) {
            number = Long.valueOf(words.remove(0));
        }
        String tag = meant(words.isEmpty() ? null : words.get(0));
        return word == Word.PLUG
                ? recorded(new PlugCore(tag, number, bench.stamp()), tag, "plugged")
                : recorded(new UnplugCore(tag, number, bench.stamp()), tag, "unplugged");
    }

    private Reply recorded(Act act, String tag, String told) {
        return Reply.record(act, "core " + tag + " " + told, bench.mind().withCore(tag));
    }
}
