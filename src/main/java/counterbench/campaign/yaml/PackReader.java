package counterbench.campaign.yaml;

import counterbench.campaign.ClaimTerms;
import counterbench.campaign.CoreTerms;
import counterbench.campaign.Pack;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;
import java.util.regex.Pattern;
import org.yaml.snakeyaml.nodes.MappingNode;
import org.yaml.snakeyaml.nodes.Node;

/** Reads a campaign pack: its text and its file's name in, the pack or every problem out. */
public final class PackReader {
    private static final List<String> KEYS =
            List.of(
                    "campaign",
                    "title",
                    "revision",
                    "in-force-from",
                    "vin-check-digit",
                    "attributes",
                    "vehicles",
                    "kit",
                    "cautions",
                    "procedure",
                    "core",
                    "claim");
    private static final Pattern FILE_NAME =
            Pattern.compile("[^/\\\\:*?\"<>|.][^/\\\\:*?\"<>|]*\\.(csv|xlsx)");

    private PackReader() {}

    /**
     * The pack, or everything that is wrong with it.
     *
     * @param text the pack in YAML
     * @param file the name by which problems call the file
     */
    public static PackReading read(String text, String file) {
        return read(text, file, name -> true);
    }

    /**
     * As {@link #read(String, String)}; that the list of vehicles is missing is a problem, too.
     *
     * @param beside whether a file of that name lies beside the pack
     */
    public static PackReading read(String text, String file, Predicate<String> beside) {
        Notes notes = new Notes(file);
        Optional<Pack> pack = YamlText.read(text, notes).flatMap(root -> pack(root, notes, beside));
        return notes.anyProblem()
                ? new PackReading(null, notes.problems(), notes.warnings())
                : new PackReading(pack.orElseThrow(), List.of(), notes.warnings());
    }

    private static Optional<Pack> pack(Node root, Notes notes, Predicate<String> beside) {
        if (root instanceof MappingNode map) {
            return Optional.of(pack(Fields.of(map, "the pack", KEYS, notes), beside));
        }
        notes.refuse(root, "the pack", "it is not a map", "begin with campaign: and its number");
        return Optional.empty();
    }

    private static Pack pack(Fields fields, Predicate<String> beside) {
        ConditionReader conditions = new ConditionReader(fields.get("attributes"));
        boolean coreIsDue = fields.has("core");
        List<CoreTerms> cores = new CoreReader(conditions).read(fields.get("core"));
        Optional<ClaimTerms> claim =
                new ClaimReader(conditions, coreIsDue).read(fields.get("claim"));
        return new Pack(
                word(fields, "campaign", "campaign: QM-26-014"),
                fields.need("title", "title: Transfer pump").flatMap(Value::text).orElse(""),
                word(fields, "revision", "revision: B"),
                fields.need("in-force-from", "in-force-from: 2026-02-02")
                        .flatMap(Value::day)
                        .orElse(LocalDate.EPOCH),
                fields.get("vin-check-digit").flatMap(Value::flag).orElse(true),
                conditions.attributes(),
                new KitReader(conditions, coreIsDue).read(fields.get("kit")),
                cautions(fields),
                new ProcedureReader(conditions).read(fields.get("procedure")),
                cores,
                claim.orElse(null),
                fields.get("vehicles").flatMap(list -> fileName(list, beside)).orElse(null));
    }

    private static String word(Fields fields, String key, String example) {
        return fields.need(key, example).flatMap(Value::word).orElse("");
    }

    private static List<String> cautions(Fields fields) {
        return fields.get("cautions").map(Value::items).orElse(List.of()).stream()
                .flatMap(item -> item.text().stream())
                .toList();
    }

    private static Optional<String> fileName(Value vehicles, Predicate<String> beside) {
        Optional<String> name = vehicles.word();
        Optional<String> good = name.filter(n -> FILE_NAME.matcher(n).matches());
        if (name.isPresent() && good.isEmpty()) {
            vehicles.refuse(
                    "it is not the name of a .csv or .xlsx file beside the pack",
                    "write the name alone, without a folder");
        }
        if (good.filter(beside.negate()).isPresent()) {
            vehicles.refuse(
                    "there is no such file beside the pack",
                    "put it there, or leave the key vehicles out and import the list as a sheet");
        }
        return good;
    }
}
