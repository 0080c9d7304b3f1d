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
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/** What is done about hardware that is scanned. */
final class Hardwares {
    private final Bench bench;
    private final ReadMeaning reading;
    private final Cores cores;

    Hardwares(Bench bench, ReadMeaning reading, Cores cores) {
        this.bench = bench;
        this.reading = reading;
        this.cores = cores;
    }

    /** A part by itself: one of it is fitted, or a plug goes into the core. */
    Reply scanned(Meaning.Part part) {
        if (isPlug(part.part())) {
            Quantity quantity = part.quantity() == null ? Quantity.ONE : part.quantity();
            Parts.of(bench.situation()).mustBeSome(part.part(), quantity);
            long plugs = quantity.amount().longValueExact();
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
        PartUnit unit = bench.partUnit(part.part());
        if (part.quantity() == null && unit.isMeasured()) {
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
        return new Said(word, part, words.subList(1, words.size())).reply();
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
        private final Word word;

        Said(Word word, Meaning.Part named, List<String> said) {
            List<String> rest = said;
            Quantity quantity = named.quantity();
            Optional<Amount> amount = Amount.of(rest);
            if (amount.isPresent()) {
                quantity = amount.get().of(named.part(), bench.partUnit(named.part()));
                rest = amount.get().rest();
            }
            boolean asksHow = word == Word.TAKE_OFF && !rest.isEmpty();
            TakeOff.Was how = asksHow ? was(rest.get(0)) : null;
            rest = how == null ? rest : rest.subList(1, rest.size());
            this.word = word;
            this.part = new Meaning.Part(named.part(), quantity, named.lot());
            this.was = how;
            this.reason = String.join(" ", rest);
        }

        private TakeOff.@Nullable Was was(String how) {
            return switch (how) {
                case "new" -> TakeOff.Was.NEW;
                case "reused", "old" -> TakeOff.Was.REUSED;
                default -> null;
            };
        }

        Reply reply() {
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
                default -> fitted();
            };
        }

        private Reply fitted() {
            if (!reason.isEmpty()) {
                throw Amount.stray(part.part(), List.of(reason));
            }
            return scanned(part);
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
