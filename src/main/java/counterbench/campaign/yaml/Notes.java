package counterbench.campaign.yaml;

import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import org.yaml.snakeyaml.nodes.Node;

/** Collects the problems and warnings of one file. */
final class Notes {
    private final String file;
    private final Set<PackProblem> problems = new LinkedHashSet<>();
    private final Set<PackProblem> warnings = new LinkedHashSet<>();

    Notes(String file) {
        this.file = file;
    }

    void refuse(Node where, String what, String why, String todo) {
        problems.add(at(where, what, why, todo));
    }

    void refuse(int line, int column, String what, String why, String todo) {
        problems.add(new PackProblem(file, line, column, what, why, todo));
    }

    void warn(Node where, String what, String why, String todo) {
        warnings.add(at(where, what, why, todo));
    }

    private PackProblem at(Node where, String what, String why, String todo) {
        return new PackProblem(file, lineOf(where), columnOf(where), what, why, todo);
    }

    static int lineOf(Node node) {
        return node.getStartMark().getLine() + 1;
    }

    private static int columnOf(Node node) {
        return node.getStartMark().getColumn() + 1;
    }

    boolean anyProblem() {
        return !problems.isEmpty();
    }

    List<PackProblem> problems() {
        return problems.stream().sorted(PackProblem.IN_ORDER).toList();
    }

    List<PackProblem> warnings() {
        return warnings.stream().sorted(PackProblem.IN_ORDER).toList();
    }
}
