package counterbench.campaign;

import java.time.LocalDate;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;
import org.jspecify.annotations.Nullable;

/**
 * The terms of one campaign in one revision.
 *
 * @param campaign the campaign's number
 * @param title what people call it
 * @param revision the revision's letter
 * @param inForceFrom the first day on which it holds
 * @param vinCheckDigit whether a wrong check digit makes a VIN invalid
 * @param attributes what a condition may ask of a vehicle, and the answers there are
 * @param kits kits that a job needs
 * @param cautions what may hurt somebody
 * @param procedure the steps, in the order of the pack
 * @param cores cores that a job returns; empty where none is due
 * @param claim claim terms, if jobs can be claimed
 * @param vehiclesFile the file of the affected vehicles beside the pack, if it names one
 */
public record Pack(
        String campaign,
        String title,
        String revision,
        LocalDate inForceFrom,
        boolean vinCheckDigit,
        SortedMap<String, List<String>> attributes,
        List<KitTerms> kits,
        List<String> cautions,
        List<Step> procedure,
        List<CoreTerms> cores,
        @Nullable ClaimTerms claim,
        @Nullable String vehiclesFile) {
    public Pack {
        Objects.requireNonNull(campaign, "campaign");
        Objects.requireNonNull(title, "title");
        Objects.requireNonNull(revision, "revision");
        Objects.requireNonNull(inForceFrom, "inForceFrom");
        attributes = java.util.Collections.unmodifiableSortedMap(new TreeMap<>(attributes));
        kits = List.copyOf(kits);
        cautions = List.copyOf(cautions);
        procedure = List.copyOf(procedure);
        cores = List.copyOf(cores);
    }

    /** A pack that names no file of vehicles. */
    public Pack(
            String campaign,
            String title,
            String revision,
            LocalDate inForceFrom,
            boolean vinCheckDigit,
            SortedMap<String, List<String>> attributes,
            List<KitTerms> kits,
            List<String> cautions,
            List<Step> procedure,
            List<CoreTerms> cores,
            @Nullable ClaimTerms claim) {
        this(
                campaign,
                title,
                revision,
                inForceFrom,
                vinCheckDigit,
                attributes,
                kits,
                cautions,
                procedure,
                cores,
                claim,
                null);
    }

    /** The step of that name. */
    public Optional<Step> step(String id) {
        return procedure.stream().filter(s -> s.id().equals(id)).findFirst();
    }

    /** The kit of that part number. */
    public Optional<KitTerms> kit(String kitPart) {
        return kits.stream().filter(k -> k.part().equals(kitPart)).findFirst();
    }

    /** The first line of any kit for that part number, or for a part that it replaces. */
    public Optional<KitLine> line(String part) {
        return kits.stream()
                .flatMap(k -> k.contents().stream())
                .filter(l -> l.part().equals(part) || l.replaces().contains(part))
                .findFirst();
    }
}
