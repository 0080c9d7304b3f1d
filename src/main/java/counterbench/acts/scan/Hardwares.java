package counterbench.acts.scan;

import counterbench.acts.Parts;
import counterbench.acts.bench.Hardware;
import counterbench.acts.bench.PutBackKit;
import counterbench.acts.bench.RefitPart;
import counterbench.acts.bench.TakeFromBench;
import counterbench.acts.bench.TakeOff;
import counterbench.acts.rack.PlugCore;
import counterbench.campaign.PartUnit;
import counterbench.job.Requirement;
import counterbench.shared.Quantity;
import counterbench.shared.Refused;
import counterbench.stock.Source;
import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;

/** What is done about hardware that is scanned. */
final class Hardwares {
    private static final Pattern QUANTITY =
            Pattern.compile("([0-9]{1,9}(?:\\.[0-9]{1,3})?)(?:mL|ml|g|x)?");

    private final Bench bench;
    private final ReadMeaning reading;
    private final Cores cores;

    Hardwares(Bench bench, ReadMeaning reading, Cores cores) {
        this.bench = bench;
        this.reading = reading;
        this.cores = cores;
    }

    /** A quantity as people type it behind a part: {@code 2}, {@code 4.5}, {@code 4.5mL}. */
    static Optional<Quantity> quantity(String text) {
        var parts = QUANTITY.matcher(text);
        return parts.matches()
                ? Optional.of(new Quantity(new BigDecimal(parts.group(1))))
                : Optional.empty();
    }

    /** A part by itself: one of it is fitted, or a plug goes into the core. */
    Reply scanned(Meaning.Part part) {
        if (isPlug(part.part())) {
            long plugs = part.quantity() == null ? 1 : part.quantity().amount().longValue();
            String tag = cores.meant(null);
            return Reply.record(
                    new PlugCore(tag, plugs, bench.stamp()),
                    plugs + " " + part.part() + " into core " + tag,
                    bench.mind().withCore(tag));
        }
        return fit(part);
    }

    private boolean isPlug(String part) {
        return requirement(part).filter(requirement -> !requirement.onVehicle()).isPresent();
    }

    private Optional<Requirement> requirement(String part) {
        return bench.job().requirements().flatMap(requirements -> requirements.of(part));
    }

    private Reply fit(Meaning.Part part) {
        PartUnit unit = bench.situation().terms().partUnits().get(part.part());
        if (part.quantity() == null && unit != null && unit.isMeasured()) {
            return Reply.tell(
                    bench.mind().waitingAfter(Word.FIT.word() + " " + part.part()),
                    "how many " + unit.word() + " of " + part.part() + "?");
        }
        return Reply.record(
                new TakeFromBench(TakeFromBench.End.FITTED, hardware(part), null, bench.stamp()),
                words(part) + " fitted",
                bench.mind());
    }

    private Hardware hardware(Meaning.Part part) {
        return new Hardware(
                bench.name(),
                part.part(),
                part.quantity(),
                kitInMind(part.part()),
                null,
                part.lot());
    }

    /** The kit that was scanned last, if the bench still has the part from it. */
    private @Nullable String kitInMind(String part) {
        String kit = bench.mind().kit();
        boolean there =
                kit != null
                        && bench.job()
                                .freeOnBench(part, Source.kit(kit), bench.stamp().at())
                                .isPositive();
        return there ? kit : null;
    }

    private String words(Meaning.Part part) {
        Quantity quantity = part.quantity() == null ? Quantity.ONE : part.quantity();
        return Parts.of(bench.situation()).words(part.part(), quantity);
    }

    /** A word about hardware, with the part and what else is said behind it. */
    Reply command(Word word, String rest) {
        if (rest.isEmpty()) {
            return Reply.tell(
                    bench.mind().waitingAfter(word.word()), word.word() + " what? scan it");
        }
        List<String> words = ReadMeaning.words(rest);
        Meaning meaning =
                reading.meant(words.get(0), words.subList(0, 1)).orElseThrow(() -> noPart(words));
        if (meaning instanceof Meaning.Kit kit && word == Word.PUT_BACK) {
            return Reply.record(
                    new PutBackKit(bench.name(), kit.serial(), null, bench.stamp()),
                    "kit " + kit.serial() + " put back, all that was left",
                    bench.mind());
        }
        if (!(meaning instanceof Meaning.Part part)) {
            throw noPart(words);
        }
        return new Said(part, words.subList(1, words.size())).reply(word);
    }

    private static Refused noPart(List<String> words) {
        return new Refused(
                "scan \"" + words.get(0) + "\"",
                "it is no part that is known here",
                "scan the part's label, or type its number");
    }

    /** A part with the words behind it: a quantity, how it was fitted, a reason. */
    private final class Said {
        private final Meaning.Part part;
        private final TakeOff.@Nullable Was was;
        private final String reason;

        Said(Meaning.Part named, List<String> behind) {
            List<String> rest = behind;
            Quantity quantity = named.quantity();
            if (!rest.isEmpty() && quantity(rest.get(0)).isPresent()) {
                quantity = quantity(rest.get(0)).get();
                rest = rest.subList(1, rest.size());
            }
            TakeOff.Was how = rest.isEmpty() ? null : was(rest.get(0));
            rest = how == null ? rest : rest.subList(1, rest.size());
            this.part = new Meaning.Part(named.part(), quantity, named.lot());
            this.was = how;
            this.reason = String.join(" ", rest);
        }

        private TakeOff.@Nullable Was was(String word) {
            return switch (word) {
                case "new" -> TakeOff.Was.NEW;
                case "reused", "old" -> TakeOff.Was.REUSED;
                default -> null;
            };
        }

        Reply reply(Word word) {
            boolean needsReason = word == Word.REFIT || word == Word.SCRAP;
            if (needsReason && reason.isEmpty()) {
                String quantity = part.quantity() == null ? "" : " " + part.quantity();
                return Reply.tell(
                        bench.mind().waitingAfter(word.word() + " " + part.part() + quantity),
                        "why? say it in a few words");
            }
            return switch (word) {
                case REFIT ->
                        Reply.record(
                                new RefitPart(
                                        Hardware.of(bench.name(), part.part(), part.quantity()),
                                        reason,
                                        bench.stamp()),
                                words(part) + " refitted old",
                                bench.mind());
                case TAKE_OFF ->
                        Reply.record(
                                new TakeOff(
                                        Hardware.of(bench.name(), part.part(), part.quantity()),
                                        was,
                                        reason.isEmpty() ? null : reason,
                                        bench.stamp()),
                                words(part) + " taken off",
                                bench.mind());
                case PUT_BACK -> taken(TakeFromBench.End.PUT_BACK, " put back");
                case SCRAP -> taken(TakeFromBench.End.SCRAPPED, " scrapped");
                default -> scanned(part);
            };
        }

        private Reply taken(TakeFromBench.End end, String told) {
            return Reply.record(
                    new TakeFromBench(
                            end, hardware(part), reason.isEmpty() ? null : reason, bench.stamp()),
                    words(part) + told,
                    bench.mind());
        }
    }
}
