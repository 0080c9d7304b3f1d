package counterbench.oracle;

import java.io.IOException;
import java.io.StringReader;
import java.io.UncheckedIOException;
import java.math.BigDecimal;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.yaml.snakeyaml.LoaderOptions;
import org.yaml.snakeyaml.Yaml;
import org.yaml.snakeyaml.nodes.MappingNode;
import org.yaml.snakeyaml.nodes.Node;
import org.yaml.snakeyaml.nodes.ScalarNode;
import org.yaml.snakeyaml.nodes.SequenceNode;

/** Reads a pack from YAML, every scalar as the text that was written. */
final class PackReader {

    private final Map<?, ?> top;

    private PackReader(Map<?, ?> top) {
        this.top = top;
    }

    static Pack read(Path file) {
        try {
            return parse(Files.readString(file), file);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** Reads a pack's text; a vehicle list that it names lies beside the file. */
    static Pack parse(String text, Path file) {
        Node top = new Yaml(new LoaderOptions()).compose(new StringReader(text));
        return new PackReader((Map<?, ?>) plain(top)).pack(file);
    }

    private Pack pack(Path file) {
        Map<?, ?> claim = map(top.get("claim"));
        return new Pack(
                text(top, "campaign", ""),
                text(top, "revision", ""),
                LocalDate.parse(text(top, "in-force-from", "")),
                !text(top, "vin-check-digit", "true").equals("false"),
                items(top.get("kit")).stream().map(this::kit).toList(),
                items(top.get("procedure")).stream().map(this::step).toList(),
                items(top.get("core")).stream().map(this::core).toList(),
                items(claim.get("operations")).stream().map(o -> when(o, "outcome")).toList(),
                Integer.parseInt(text(claim, "submit-within-days", "1000000")),
                text(claim, "needs", "none"),
                vehicles(file));
    }

    private Pack.KitItem kit(Map<?, ?> kit) {
        return new Pack.KitItem(
                text(kit, "part", ""),
                number(kit, "quantity", "1"),
                when(kit, ""),
                items(kit.get("contents")).stream().map(this::content).toList());
    }

    private Pack.Content content(Map<?, ?> line) {
        Amount quantity = Amount.parse(text(line, "quantity", "1"));
        return new Pack.Content(
                text(line, "part", ""),
                quantity,
                Amount.parse(text(line, "at-least", quantity.number().toPlainString())).number(),
                truth(line, "matched"),
                truth(line, "single-use"),
                truth(line, "shelf-life"),
                text(line, "on", "vehicle").equals("core"),
                texts(line.get("replaces")),
                when(line, ""));
    }

    private Pack.Step step(Map<?, ?> step) {
        String unit = text(step, "unit", "");
        Amount low = step.containsKey("low") ? limit(step, "low", unit) : null;
        Amount high = step.containsKey("high") ? limit(step, "high", unit) : null;
        if (step.containsKey("torque")) {
            Amount torque = Amount.parse(text(step, "torque", ""));
            BigDecimal within = within(torque, Amount.parse(text(step, "within", "")));
            unit = torque.unit();
            low = new Amount(torque.base().subtract(within), "N·m");
            high = new Amount(torque.base().add(within), "N·m");
        }
        return new Pack.Step(
                text(step, "id", ""),
                text(step, "kind", ""),
                texts(step.get("after")),
                Integer.parseInt(text(step, "fasteners", "1")),
                low,
                high,
                unit,
                text(step, "rise-from", ""),
                number(step, "minutes", "0"),
                when(step, ""));
    }

    private static BigDecimal within(Amount torque, Amount within) {
        return within.unit().equals("%")
                ? torque.base().multiply(within.number()).movePointLeft(2)
                : within.orUnit(torque.unit()).base();
    }

    private static Amount limit(Map<?, ?> step, String key, String unit) {
        return Amount.parse(text(step, key, "")).orUnit(unit);
    }

    private Pack.CoreItem core(Map<?, ?> core) {
        return new Pack.CoreItem(
                text(core, "part", ""),
                number(core, "quantity", "1"),
                when(core, ""),
                number(core, "drain-minutes", "0"),
                number(core, "plugs", "0"),
                text(core, "packaging", ""),
                Integer.parseInt(text(core, "return-within-days", "1000000")));
    }

    private static When when(Map<?, ?> line, String except) {
        Map<String, List<String>> asked = new LinkedHashMap<>();
        map(line.get("when")).forEach((k, v) -> asked.put(k.toString(), texts(v)));
        asked.remove(except);
        return new When(asked);
    }

    private Map<String, Map<String, String>> vehicles(Path pack) {
        Map<String, Map<String, String>> vehicles = new LinkedHashMap<>();
        Path list = pack.resolveSibling(text(top, "vehicles", "none"));
        if (Files.isRegularFile(list)) {
            Sheets sheets = Sheets.of("");
            try {
                sheets.add("vehicles", Files.readString(list));
            } catch (IOException e) {
                throw new UncheckedIOException(e);
            }
            sheets.rows("vehicles").forEach(r -> vehicles.put(Vin.plain(r.text("vin")), r.cells()));
        }
        return vehicles;
    }

    private static List<Map<?, ?>> items(Object one) {
        if (one == null) {
            return List.of();
        }
        return one instanceof List<?> many
                ? many.stream().<Map<?, ?>>map(PackReader::map).toList()
                : List.of(map(one));
    }

    private static Map<?, ?> map(Object value) {
        return value instanceof Map<?, ?> map ? map : Map.of();
    }

    private static List<String> texts(Object value) {
        if (value == null) {
            return List.of();
        }
        return value instanceof List<?> many
                ? many.stream().map(Object::toString).toList()
                : List.of(value.toString());
    }

    private static String text(Map<?, ?> map, String key, String otherwise) {
        return map.containsKey(key) ? map.get(key).toString() : otherwise;
    }

    private static BigDecimal number(Map<?, ?> map, String key, String otherwise) {
        return new BigDecimal(text(map, key, otherwise));
    }

    private static boolean truth(Map<?, ?> map, String key) {
        return text(map, key, "false").equals("true");
    }

    private static Object plain(Node node) {
        if (node instanceof MappingNode mapping) {
            Map<String, Object> map = new LinkedHashMap<>();
            mapping.getValue()
                    .forEach(
                            t ->
                                    map.put(
                                            plain(t.getKeyNode()).toString(),
                                            plain(t.getValueNode())));
            return map;
        }
        return node instanceof SequenceNode sequence
                ? sequence.getValue().stream().map(PackReader::plain).toList()
                : ((ScalarNode) node).getValue();
    }
}
