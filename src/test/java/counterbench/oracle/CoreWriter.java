package counterbench.oracle;

import java.math.BigDecimal;
import java.time.Instant;
import java.time.LocalDate;
import java.util.List;

/** Removes the cores of a job, drains and plugs them, rightly or as the fault says. */
final class CoreWriter {

    private static final String LOOSE_PLUG = "HV-3390";

    private final Office office;
    private final JobStory story;
    private final BenchWriter bench;

    CoreWriter(Office office, JobStory story) {
        this.office = office;
        this.story = story;
        this.bench = new BenchWriter(office, story);
    }

    /**
     * @param from when the first core may be removed
     */
    void write(Instant from) {
        boolean fewer = story.is(Fault.CORE_MISSING);
        Instant at = from;
        List<Pack.CoreItem> items =
                story.pack.cores().stream().filter(i -> story.applies(i.when())).toList();
        for (Pack.CoreItem item : items) {
            for (int i = 0; i < item.quantity().intValue(); i++) {
                if (fewer) {
                    fewer = false;
                } else {
                    at = Office.plus(at, office.dice.between(1, 6));
                    core(item, at, story.cores.isEmpty());
                }
            }
        }
    }

    private void core(Pack.CoreItem item, Instant removed, boolean first) {
        String tag = office.next("C-");
        String serial =
                first && story.is(Fault.SERIAL_TWICE) && !office.lastSerial.isEmpty()
                        ? office.lastSerial
                        : "SN" + tag.substring(2);
        office.lastSerial = serial;
        event(tag, "removed", removed, "job", story.job, "serial", serial, "part", part(item));
        CoreLife life = new CoreLife(tag, item, removed);
        Instant ready =
                first && story.fault.isPresent() ? life.odd(story.fault.get()) : life.plain();
        story.cores.add(new JobStory.Removed(tag, serial, item, ready));
        plugsOnCore(tag, item);
    }

    private String part(Pack.CoreItem item) {
        return story.pack.cores().size() == 1 && office.dice.percent(30) ? "" : item.part();
    }

    private void plugsOnCore(String tag, Pack.CoreItem item) {
        String plug = story.line(Pack.Content::onCore).map(Pack.Content::part).orElse(LOOSE_PLUG);
        boolean only =
                story.pack.cores().size() == 1
                        && story.pack.cores().get(0).quantity().intValue() == 1;
        String named = only && office.dice.percent(60) ? "" : tag;
        String kit = story.kits.isEmpty() ? "" : story.kits.get(0).serial();
        if (plug.equals(LOOSE_PLUG)) {
            kit = "";
            bench.issueLoose(plug, item.plugs(), "");
        }
        bench.use(plug, item.plugs(), "on-core", kit, "core", named);
    }

    private void event(String tag, String event, Instant at, String... more) {
        String[] cells = {
            "core",
            tag,
            "event",
            event,
            "at",
            office.time(at),
            "by",
            office.technician(),
            "ref",
            office.ref("E")
        };
        String[] all = java.util.Arrays.copyOf(cells, cells.length + more.length);
        System.arraycopy(more, 0, all, cells.length, more.length);
        office.out.row("cores", all);
    }

    /**
     * Draining and plugging of one core; each way returns the moment from which it can be packed.
     */
    private final class CoreLife {

        private final String tag;
        private final int minutes;
        private final String plugs;
        private Instant at;

        CoreLife(String tag, Pack.CoreItem item, Instant removed) {
            this.tag = tag;
            this.minutes = item.drainMinutes().intValueExact();
            this.plugs = BenchWriter.plain(item.plugs());
            this.at = Office.plus(removed, 1);
        }

        Instant plain() {
            drain(minutes + office.dice.between(0, 25));
            return plug(plugs);
        }

        Instant odd(Fault fault) {
            return switch (fault) {
                case DRAIN_NONE, DRAIN_NONE_UNPACKED -> plug(plugs);
                case DRAIN_OPEN -> open();
                case DRAIN_END_ONLY -> endOnly();
                case DRAIN_SHORT, CORE_OF_OPEN_JOB, CORE_OF_ABANDONED ->
                        then(drain(minutes - 1), plugs);
                case DRAIN_EXACT, DRAIN_PLUG_AT_END -> exact(fault);
                case DRAIN_TOUCHING -> twice(minutes / 2, 0, minutes - minutes / 2);
                case DRAIN_APART -> twice(minutes - 1, 1, minutes - 1);
                case DRAIN_AFTER_PLUG -> afterPlug();
                case DRAIN_AGAIN -> again(minutes - 2, minutes);
                case DRAIN_AGAIN_LATE -> againLate();
                case DRAIN_BEGUN_TWICE -> begunTwice();
                case PLUGS_SHORT -> shortOfPlugs();
                case PLUGS_UNPLUGGED -> unplugged();
                default -> overnight() ? night() : plain();
            };
        }

        private Instant drain(int length) {
            event(tag, "drain-begun", at);
            at = Office.plus(at, length);
            event(tag, "drain-ended", at);
            return at;
        }

        private Instant plug(String quantity) {
            at = Office.plus(at, 1);
            event(tag, "plugged", at, "quantity", quantity);
            return Office.plus(at, 5);
        }

        private Instant then(Instant drained, String quantity) {
            at = drained;
            return plug(quantity);
        }

        private void unplug(String quantity) {
            at = Office.plus(at, 3);
            event(tag, "unplugged", at, "quantity", quantity);
            at = Office.plus(at, 1);
        }

        private Instant open() {
            event(tag, "drain-begun", at);
            at = Office.plus(at, minutes + 5L);
            return plug(plugs);
        }

        private Instant endOnly() {
            at = Office.plus(at, minutes + 5L);
            event(tag, "drain-ended", at);
            return plug(plugs);
        }

        private Instant exact(Fault fault) {
            Instant ended = drain(minutes);
            at = fault == Fault.DRAIN_PLUG_AT_END ? Office.plus(ended, -1) : ended;
            return plug(plugs);
        }

        private Instant twice(int one, int pause, int other) {
            drain(one);
            at = Office.plus(at, pause);
            drain(other);
            return plug(plugs);
        }

        /** Where readers may differ, nothing at all was drained before the plug. */
        private Instant afterPlug() {
            if (!office.contested) {
                drain(minutes - 2);
            }
            plug(plugs);
            at = Office.plus(at, 1);
            drain(minutes + 30);
            return Office.plus(at, 5);
        }

        private Instant again(int one, int other) {
            drain(one);
            plug(plugs);
            unplug(plugs);
            drain(other);
            return plug(plugs);
        }

        private Instant againLate() {
            drain(minutes - 2);
            plug(plugs);
            unplug(plugs);
            plug(plugs);
            at = Office.plus(at, 2);
            drain(minutes + 10);
            return Office.plus(at, 5);
        }

        private Instant begunTwice() {
            event(tag, "drain-begun", at);
            at = Office.plus(at, minutes);
            drain(minutes - 1);
            return plug(plugs);
        }

        private Instant shortOfPlugs() {
            drain(minutes);
            int fewer = new BigDecimal(plugs).intValueExact() - 1;
            return fewer > 0 ? plug("" + fewer) : Office.plus(at, 5);
        }

        private Instant unplugged() {
            drain(minutes + 1);
            plug(plugs);
            unplug("1");
            return Office.plus(at, 5);
        }

        private boolean overnight() {
            return story.is(Fault.DRAIN_NIGHT);
        }

        /**
         * Across the hour in which the clocks of the site change; short by a minute or just right.
         */
        private Instant night() {
            LocalDate next = office.clock.day(story.opened).plusDays(1);
            at = office.at(next, 1, 0).plusSeconds(60L * (60 - minutes / 2));
            drain(minutes - office.dice.between(0, 1));
            return plug(plugs);
        }
    }
}
